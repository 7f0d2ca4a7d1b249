// Small charts of what a study found: how outcomes are spread, the yield over a bound, bars of indices and effects, the search.

import { el, name, svg } from "./dom.js";
import { floats, tidy } from "./numbers.js";
import { boundsIn, extentOf, frame, roomFor } from "./plot_frame.js";

export const labelOf = (column) => (column.unit ? `${column.title} [${column.unit}]` : column.title);

const percent = (share) => `${tidy(100 * share)} %`;
const figure = (title, chart, ...more) => el("figure", { class: "study-figure" }, el("figcaption", {}, name(title)), chart, more);

export function spreadChart(column, spread, of) {
  const { low, high, counts } = spread.histogram;
  if (!counts.length) return figure(labelOf(column), el("p", { class: "muted small" }, "No row has it."));
  const far = Number.isFinite(spread.drawn) && high - low > 0.25 * (Math.max(high, spread.drawn) - Math.min(low, spread.drawn));
  const x = { ...extentOf(far ? [low, high, spread.drawn] : [low, high], column.bounds), label: labelOf(column) };
  const most = Math.max(...counts) / of;
  const at = frame({ x, y: { low: 0, high: 1.2 * most, format: (v) => percent(v) }, label: `spread of ${column.title}`, left: 50 });
  const width = high > low ? (high - low) / counts.length : 0.04 * (x.high - x.low);
  const start = high > low ? low : low - width / 2;
  at.node.append(
    ...boundsIn(at, x, column.bounds, true).flat().filter(Boolean),
    ...counts.map((count, k) => svg("rect", { class: "bar", x: at.px(start + width * k).toFixed(2), width: Math.max(0.5, at.px(start + width) - at.px(start) - 0.6).toFixed(2), y: at.py(count / of).toFixed(2), height: (at.bottom - at.py(count / of)).toFixed(2) })));
  if (Number.isFinite(spread.drawn) && spread.drawn > x.low && spread.drawn < x.high) at.node.append(svg("path", { class: "as-drawn", d: `M${at.px(spread.drawn)} ${at.top}V${at.bottom}` }));
  return figure(column.title, at.node);
}

export function yieldChart(column, curve) {
  const values = floats(curve.points);
  const rows = [];
  for (let k = 0; k + 4 < values.length; k += 5) rows.push(values.subarray(k, k + 5));
  const x = { low: rows[0][0], high: rows.at(-1)[0], label: `${labelOf(column)}: ${curve.at_least ? "at least" : "at most"}` };
  const at = frame({ x, y: { low: 0, high: 1.04, format: (v) => percent(v) }, label: `yield over the bound of ${column.title}`, left: 50 });
  const path = (k) => rows.map((row, i) => `${i ? "L" : "M"}${at.px(row[0]).toFixed(1)} ${at.py(row[k]).toFixed(1)}`).join("");
  const back = [...rows].reverse().map((row) => `L${at.px(row[0]).toFixed(1)} ${at.py(row[3]).toFixed(1)}`).join("");
  const place = at.px(curve.value), rightHalf = place > (at.left + at.right) / 2;
  at.node.append(
    svg("path", { class: "band", d: `${path(4)}${back}Z` }), svg("path", { class: "alone", d: path(1) }), svg("path", { class: "all", d: path(2) }),
    svg("path", { class: "bound", d: `M${place} ${at.top}V${at.bottom}` }),
    svg("text", { class: "bound-text", x: place + (rightHalf ? -4 : 4), y: at.bottom - 8, "text-anchor": rightHalf ? "end" : "start" }, curve.text));
  return figure(`Yield if the bound on ${column.title} stood elsewhere`, at.node);
}

/// Bars with names before them. @param rows  {title, bars: [{value, low?, high?, kind}], text}
export function bars(rows, { low, high, label, axis, textTitle }) {
  const width = roomFor(560), lane = 30, left = Math.min(150, width / 3), right = 14, top = 6, bottom = 34;
  const height = top + lane * rows.length + bottom;
  const at = frame({ width, height, left, right, top, bottom, x: { low, high, label: axis }, y: { low: 0, high: 1, options: [] }, label });
  const clamp = (value) => Math.min(Math.max(value, low), high);
  rows.forEach((row, k) => {
    const y = top + lane * k + 3, each = (lane - 6) / row.bars.length;
    at.node.append(svg("text", { class: "row-name", x: left - 6, y: top + lane * k + lane / 2 + 4, "text-anchor": "end" }, row.title.length > left / 7.4 ? `${row.title.slice(0, Math.floor(left / 7.4) - 1)}…` : row.title, svg("title", {}, `${row.title}${textTitle ? `: ${textTitle} ` : ": "}${row.text}`)));
    row.bars.forEach((bar, b) => {
      if (!Number.isFinite(bar.value)) return;
      const from = at.px(clamp(0)), to = at.px(clamp(bar.value));
      at.node.append(svg("rect", { class: `bar ${bar.kind}`, x: Math.min(from, to).toFixed(1), width: Math.max(0.7, Math.abs(to - from)).toFixed(1), y: (y + each * b + 0.5).toFixed(1), height: (each - 1).toFixed(1) }));
      if (Number.isFinite(bar.low) && Number.isFinite(bar.high)) {
        const middle = y + each * (b + 0.5);
        at.node.append(svg("path", { class: "whisker", d: `M${at.px(clamp(bar.low))} ${middle}H${at.px(clamp(bar.high))}M${at.px(clamp(bar.low))} ${middle - 3}v6M${at.px(clamp(bar.high))} ${middle - 3}v6` }));
      }
    });
  });
  return at.node;
}

export function indexChart(column, indices) {
  if (!indices.keys.length) return figure(column.title, el("p", { class: "muted" }, name(indices.note), "."));
  const all = indices.keys.flatMap((key) => [key.first, key.total]).flatMap((share) => [share.value, share.low, share.high]).filter(Number.isFinite);
  const chart = bars(indices.keys.map((key) => ({ title: key.key, text: `by itself ${key.first.text}, in all ${key.total.text}`, bars: [{ ...key.first, kind: "first" }, { ...key.total, kind: "total" }] })),
    { low: Math.min(0, ...all), high: Math.max(1, ...all) * 1.02, label: `shares of the variance of ${column.title}`, axis: "share of the variance" });
  return figure(column.title, chart, indices.note && el("p", { class: "small muted" }, name(indices.note), "."));
}

export function effectChart(column, effects) {
  const most = Math.max(...effects.keys.map((key) => key.size ?? 0));
  if (!(most > 0)) return figure(column.title, el("p", { class: "muted" }, "Does not change, or too few rows have it."));
  const chart = bars(effects.keys.map((key) => ({ title: key.key, text: `size ${key.texts[0]}, with sign ${key.texts[1]}, deviation ${key.texts[2]}`,
    bars: [{ value: key.mean, kind: key.mean < 0 ? "less" : "more" }, { value: key.mean < 0 ? -key.size : key.size, kind: "size" }] })),
  { low: -1.05 * most, high: 1.05 * most, label: `changes of ${column.title}`, axis: `change over the whole spread of a key${column.unit ? ` [${column.unit}]` : ""}` });
  return figure(column.title, chart);
}

/// Every design in the order of trying, and the best so far of those that meet all requirements.
export function progressChart(column, progress, table, designs) {
  const tried = table.rows.filter((row) => row.number < designs);
  const values = tried.filter((row) => row.state < 2).map((row) => row.values[column.place]);
  const passing = tried.filter((row) => row.state === 0).map((row) => row.values[column.place]);
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  const middle = sorted.length ? [sorted[Math.floor(0.05 * (sorted.length - 1))], sorted[Math.ceil(0.95 * (sorted.length - 1))]] : [];
  const y = { ...extentOf([...passing, ...middle, column.drawn]), label: `${labelOf(column)}, ${progress.more ? "more" : "less"} is better` };
  const at = frame({ width: roomFor(1110), height: 230, x: { low: -0.01 * designs, high: 1.01 * designs, label: "design, in the order of trying" }, y, label: `search for ${column.title}` });
  const inside = (row) => row.values[column.place] >= y.low && row.values[column.place] <= y.high;
  const dots = (list) => list.map((row) => `M${at.px(row.number).toFixed(1)} ${at.py(row.values[column.place]).toFixed(1)}h0`).join("");
  const out = tried.filter((row) => Number.isFinite(row.values[column.place]) && !inside(row)).length;
  at.node.append(svg("path", { class: "dots missed", d: dots(tried.filter((row) => row.state === 1 && inside(row))) }), svg("path", { class: "dots met", d: dots(tried.filter((row) => row.state === 0 && inside(row))) }));
  if (Number.isFinite(column.drawn)) at.node.append(svg("path", { class: "as-drawn", d: `M${at.left} ${at.py(column.drawn)}H${at.right}` }));
  if (progress.steps.length) {
    let d = "";
    progress.steps.forEach(([row, value], k) => { d += k ? `H${at.px(row).toFixed(1)}V${at.py(value).toFixed(1)}` : `M${at.px(row).toFixed(1)} ${at.py(value).toFixed(1)}`; });
    at.node.append(svg("path", { class: "best-line", d: `${d}H${at.px(designs).toFixed(1)}` }));
  }
  return figure(labelOf(column), at.node, out > 0 && el("p", { class: "small muted" }, `${out} designs lie outside the frame.`));
}
