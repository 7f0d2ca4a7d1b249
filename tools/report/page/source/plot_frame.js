// A small chart's frame: axes with round numbers, a grid, and where a value lies.

import { svg } from "./dom.js";
import { tidy } from "./numbers.js";

/// Round numbers from low to high, about `wanted` of them.
export function roundTicks(low, high, wanted) {
  const rough = (high - low) / Math.max(1, wanted);
  if (!(rough > 0) || !Number.isFinite(rough)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((k) => k * power >= rough * 0.999) ?? 10);
  const ticks = [];
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; ++k) ticks.push(+(k * step).toPrecision(12));
  return ticks;
}

/// An axis that holds these values with a little room, and the bounds unless they would squeeze the values into less than a quarter.
export function extentOf(values, bounds = []) {
  let low = Infinity, high = -Infinity;
  for (const value of values) if (Number.isFinite(value)) { if (value < low) low = value; if (value > high) high = value; }
  const span = high - low;
  for (const { value } of bounds) {
    const withLow = Math.min(low, value), withHigh = Math.max(high, value);
    if (!(span > 0) || span >= 0.25 * (withHigh - withLow)) { low = withLow; high = withHigh; }
  }
  if (!(low <= high)) return { low: 0, high: 1 };
  const size = Math.max(Math.abs(low), Math.abs(high)), least = size > 0 ? 0.02 * size : 1;
  if (high - low < least) return { low: (low + high) / 2 - least, high: (low + high) / 2 + least };
  return { low: low - 0.07 * (high - low), high: high + 0.07 * (high - low) };
}

/// Width of a chart that wants so much [px], on whatever screen this is.
export const roomFor = (wanted) => Math.min(wanted, Math.max(320, document.documentElement.clientWidth - 44));

const short = (text, most) => (text.length > most ? `${text.slice(0, most - 1)}…` : text);

/// @param x, y  {low, high, label, options?, format?}; options are names at 0, 1, ….
export function frame({ width = 420, height = 210, x, y, label, left = 58, right = 14, top = 12, bottom = 40, className = "" }) {
  const px = (value) => left + (value - x.low) / (x.high - x.low) * (width - left - right);
  const py = (value) => height - bottom - (value - y.low) / (y.high - y.low) * (height - top - bottom);
  const format = (axis) => axis.format ?? ((value) => tidy(value));
  const ticks = (axis, room) => axis.options ? axis.options.map((_, k) => k) : roundTicks(axis.low, axis.high, room);
  const xTicks = ticks(x, (width - left - right) / 80), yTicks = ticks(y, (height - top - bottom) / 40);
  const optionRoom = x.options ? Math.max(3, Math.floor((width - left - right) / x.options.length / 7)) : 0;
  const node = svg("svg", { class: `study-chart ${className}`, viewBox: `0 0 ${width} ${height}`, width, height, role: "img", "aria-label": label },
    svg("path", { class: "grid", d: xTicks.map((v) => `M${px(v).toFixed(1)} ${top}V${height - bottom}`).join("") + yTicks.map((v) => `M${left} ${py(v).toFixed(1)}H${width - right}`).join("") }),
    xTicks.map((v, k) => svg("text", { x: px(v).toFixed(1), y: height - bottom + 15, "text-anchor": "middle" }, x.options ? short(x.options[k], optionRoom) : format(x)(v))),
    yTicks.map((v, k) => svg("text", { x: left - 6, y: (py(v) + 4).toFixed(1), "text-anchor": "end" }, y.options ? short(y.options[k], 8) : format(y)(v))),
    svg("text", { class: "axis-name", x: (left + width - right) / 2, y: height - 5, "text-anchor": "middle" }, short(x.label ?? "", Math.floor((width - left - right) / 6.4))),
    y.label && svg("text", { class: "axis-name", transform: `translate(12 ${(top + height - bottom) / 2}) rotate(-90)`, "text-anchor": "middle" }, short(y.label, Math.floor((height - top - bottom + 30) / 6.4))),
    svg("path", { class: "frame", d: `M${left} ${top}V${height - bottom}H${width - right}` }));
  return { node, px, py, left, right: width - right, top, bottom: height - bottom, width, height };
}


/// Where a requirement is not met, with its words. @param across  the outcome lies along the page.
export function boundsIn(at, axis, bounds, across) {
  return (bounds ?? []).map((bound, k) => {
    if (bound.value < axis.low || bound.value > axis.high) return null;
    const place = across ? at.px(bound.value) : at.py(bound.value);
    const edge = across ? (bound.at_least ? at.left : at.right) : (bound.at_least ? at.bottom : at.top);
    const box = across
      ? { x: Math.min(place, edge), y: at.top, width: Math.abs(place - edge), height: at.bottom - at.top }
      : { x: at.left, y: Math.min(place, edge), width: at.right - at.left, height: Math.abs(place - edge) };
    const line = across ? `M${place} ${at.top}V${at.bottom}` : `M${at.left} ${place}H${at.right}`;
    const text = across
      ? { x: place + (bound.at_least ? 4 : -4), y: at.top + 10 + 12 * k, "text-anchor": bound.at_least ? "start" : "end" }
      : { x: at.right - 3, y: place + (bound.at_least ? 11 : -4), "text-anchor": "end" };
    return [svg("rect", { class: "not-allowed", ...box }), svg("path", { class: "bound", d: line }), svg("text", { class: "bound-text", ...text }, bound.text)];
  });
}

