// Curves over time, one time cursor across all. A click sets the time, a drag zooms all charts alike, the time line
// itself can be dragged; on a touch screen a sideways drag sets the time.

import uPlot from "uplot";
import { el, name, setAttribute, setText } from "./dom.js";
import { COLOURS, curveColour } from "./colours.js";
import { digits, floats, seconds } from "./numbers.js";
import { isDark, onTheme, paint } from "./theme.js";

/// Series of one chart over all records: with several records on one common time axis, A solid and B dashed.
export function gather(records, id) {
  const tables = [], series = [], places = new Map();
  let title = "", unit = "";
  for (const [k, record] of records.entries()) {
    const chart = (record.charts ?? []).find((one) => one.id === id);
    if (!chart) continue;
    title = chart.title; unit = chart.unit;
    const columns = [Array.from(floats(record.time))];
    // What is shown at first takes the first colours, so that no two of it are alike.
    for (const one of [...chart.series].sort((a, b) => (b.shown !== false) - (a.shown !== false))) if (!places.has(one.name)) places.set(one.name, places.size);
    for (const one of chart.series) {
      columns.push(Array.from(floats(one.data), (v) => (v === v ? v : null)));
      series.push({ ...one, record: k, label: record.label, colour: places.get(one.name) });
    }
    tables.push(columns);
  }
  const columns = tables.length > 1 ? uPlot.join(tables, tables.map((t) => t.map(() => 1))) : tables[0];
  return { id, title, unit, series, columns };
}

/// Which dashes a curve has: with several records each has its own, else curves whose colour is taken already.
export const dashOf = (one, several) => (several ? one.record : Math.floor(one.colour / COLOURS));

export const chartIds = (records) => [...new Set(records.flatMap((record) => (record.charts ?? []).map((chart) => chart.id)))];

export function curves(records, player) {
  const several = records.length > 1;
  const { duration } = player.state;
  const sync = uPlot.sync("curves");
  const charts = [];
  const box = el("div", { class: "curves" });
  const dashes = [[], [7, 4], [2, 3], [10, 3, 2, 3]];
  let zooming = false;

  const reset = el("button", { type: "button", id: "zoom-out", hidden: true, on: { click: () => zoom(0, duration) } }, "Show the whole run");
  function zoom(low, high) {
    zooming = true;
    for (const { plot } of charts) plot.setScale("x", { min: low, max: high });
    zooming = false;
    reset.hidden = low <= 0 && high >= duration;
    place();
  }

  for (const id of chartIds(records)) {
    const group = gather(records, id);
    const holder = el("div", { class: "chart-plot" });
    const legend = el("div", { class: "chart-legend" });
    const note = el("span", { class: "chart-time" });
    const figure = el("figure", { class: "chart", "data-chart": id },
      el("figcaption", {}, el("span", {}, name(group.title), group.unit && el("span", { class: "muted" }, ` [${group.unit}]`)), note), holder, legend);
    box.append(figure);

    const axis = (more) => ({
      stroke: () => paint("--ink-soft"), grid: { stroke: () => paint("--grid"), width: 1 }, ticks: { stroke: () => paint("--grid"), width: 1, size: 4 },
      font: "11px system-ui, sans-serif", ...more,
    });
    const plot = new uPlot({
      width: 400, height: 190, legend: { show: false }, padding: [8, 18, 0, 0],
      scales: { x: { time: false, range: (u, low, high) => [low, Math.max(high, low + 1e-6)] } },
      axes: [
        axis({ size: 26, space: 60, values: (u, ticks) => ticks.map((t, k) => (k === ticks.length - 1 && false ? "" : `${+t.toPrecision(6)} s`)) }),
        axis({ size: 48, space: 30, values: (u, ticks) => ticks.map((t) => String(+t.toPrecision(6)).replace("-", "−")) }),
      ],
      series: [{}, ...group.series.map((one) => ({
        label: one.name, show: one.shown !== false, stroke: () => curveColour(one.colour), width: 1.6, dash: dashes[dashOf(one, several) % dashes.length],
        spanGaps: several, points: { show: false },
      }))],
      cursor: { sync: { key: sync.key, setSeries: false }, drag: { x: true, y: false, dist: 5 }, y: false, points: { size: 6 } },
      hooks: {
        setScale: [(u, key) => { if (key === "x" && !zooming && charts.length) zoom(u.scales.x.min, u.scales.x.max); }],
        setCursor: [() => write()],
      },
    }, group.columns, holder);
    const hand = el("div", { class: "time-cursor" }, el("span", { class: "time-grip" }));
    plot.over.append(hand);

    const entries = group.series.map((one, k) => {
      const value = el("span", { class: "figure" });
      const swatch = el("span", { class: "swatch-line", "data-dash": dashOf(one, several) });
      const entry = el("button", {
        type: "button", class: "series", "aria-pressed": String(one.shown !== false), title: one.description || one.name,
        on: { click: () => {
          const shown = !plot.series[k + 1].show;
          plot.setSeries(k + 1, { show: shown });
          entry.setAttribute("aria-pressed", String(shown));
          write();
        } },
      }, swatch, several ? `${one.label} ` : "", name(one.name), value);
      legend.append(entry);
      return { value, swatch, colour: one.colour };
    });
    // Long lists (every span of every cord) stay folded away until asked for.
    if (entries.length > 8 && group.series.some((one) => one.shown === false)) {
      legend.classList.add("folded");
      const more = el("button", { type: "button", class: "more", "aria-expanded": "false", on: { click: () => {
        const folded = legend.classList.toggle("folded");
        more.setAttribute("aria-expanded", String(!folded));
        more.textContent = folded ? `all ${entries.length} curves` : "fewer";
      } } }, `all ${entries.length} curves`);
      legend.append(more);
    }
    const chart = { id, plot, group, figure, hand, entries, note, holder, time: NaN };
    charts.push(chart);

    pointing(plot, hand, player);
    new ResizeObserver(() => {
      const width = Math.floor(holder.clientWidth);
      if (width > 50 && width !== plot.width) { plot.setSize({ width, height: plot.height }); place(); }
    }).observe(holder);
  }

  function recolour() {
    for (const { plot, entries } of charts) {
      for (const one of entries) one.swatch.style.color = curveColour(one.colour);
      plot.redraw(false);
    }
  }
  onTheme(recolour);

  /// Puts the time cursor where the playback is.
  function place() {
    const { time } = player.state;
    for (const { plot, hand, figure } of charts) {
      const { min, max } = plot.scales.x;
      const seen = time >= min - 1e-9 && time <= max + 1e-9;
      hand.hidden = !seen;
      if (seen) hand.style.transform = `translateX(${plot.valToPos(time, "x").toFixed(2)}px)`;
      setAttribute(figure, "data-time", time.toFixed(6));
    }
  }

  /// The values under the mouse, or else at the playback's time.
  function write() {
    for (const { plot, group, entries, note } of charts) {
      const hovered = plot.cursor.left >= 0 && plot.cursor.idx !== null && plot.cursor.idx !== undefined;
      const x = group.columns[0];
      const time = hovered ? x[plot.cursor.idx] : player.state.time;
      setText(note, hovered ? `mouse: ${seconds(time, duration)}` : seconds(time, duration));
      for (const [k, one] of entries.entries()) {
        if (!plot.series[k + 1].show) { setText(one.value, ""); continue; }
        const value = hovered && !several ? group.columns[k + 1][plot.cursor.idx] : between(x, group.columns[k + 1], time);
        setText(one.value, value === null || value === undefined ? "–" : `${digits(value)} ${group.unit}`.trim());
      }
    }
  }
  let wrote = 0;
  player.listen(({ playing }) => {
    place();
    // Numbers that change sixty times a second cannot be read.
    const now = performance.now();
    if (playing && now - wrote < 100) return;
    wrote = now;
    write();
  });
  recolour();
  return { box, reset, charts };
}

/// Value at a time, by a straight line between the nearest rows that have one.
function between(x, y, time) {
  let low = 0, high = x.length - 1;
  while (low < high) { const middle = (low + high + 1) >> 1; if (x[middle] <= time) low = middle; else high = middle - 1; }
  let a = low, b = Math.min(low + 1, x.length - 1);
  while (a > 0 && y[a] === undefined) --a;
  while (b < x.length - 1 && y[b] === undefined) ++b;
  if (y[a] === null || y[a] === undefined) return null;
  if (y[b] === null || y[b] === undefined || x[b] <= x[a]) return y[a];
  return y[a] + (y[b] - y[a]) * Math.min(Math.max((time - x[a]) / (x[b] - x[a]), 0), 1);
}

/// Click, grip and touch.
function pointing(plot, hand, player) {
  const { over } = plot;
  const timeAt = (event) => plot.posToVal(event.clientX - over.getBoundingClientRect().left, "x");
  const set = (event) => { player.seek(timeAt(event)); };
  over.style.touchAction = "pan-y";
  let down = null;
  over.addEventListener("pointerdown", (event) => {
    down = { x: event.clientX, touch: event.pointerType !== "mouse" };
  });
  over.addEventListener("pointermove", (event) => { if (down?.touch) set(event); });
  over.addEventListener("pointerup", (event) => {
    if (down && Math.abs(event.clientX - down.x) < 4) set(event);
    down = null;
  });
  over.addEventListener("pointercancel", () => { down = null; });

  const grip = hand.firstChild;
  grip.addEventListener("mousedown", (event) => event.stopPropagation());   // no zoom
  grip.addEventListener("pointerdown", (event) => { event.stopPropagation(); event.preventDefault(); grip.setPointerCapture(event.pointerId); });
  grip.addEventListener("pointermove", (event) => { if (grip.hasPointerCapture(event.pointerId)) { event.stopPropagation(); set(event); } });
  grip.addEventListener("pointerup", (event) => event.stopPropagation());
  grip.addEventListener("click", (event) => event.stopPropagation());
}
