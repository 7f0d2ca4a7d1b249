// The same curves as lines of a drawing, for paper: sharp at any size and the full width of the page.

import { el, name, svg } from "./dom.js";
import { curveColour } from "./colours.js";
import { dashOf } from "./curves.js";
import { roundBelow } from "./numbers.js";

const WIDTH = 700, HEIGHT = 165, LEFT = 52, BOTTOM = 20, TOP = 6, RIGHT = 6;
const DASHES = ["", "7 4", "2 3", "10 3 2 3"];

function ticks(low, high, about) {
  if (!(high > low)) return [low];
  const step = [1, 2, 2.5, 5, 10].map((s) => s * roundBelow((high - low) / about)).find((s) => (high - low) / s <= about + 1);
  const list = [];
  for (let t = Math.ceil(low / step - 1e-9) * step; t <= high + 1e-9 * step; t += step) list.push(+t.toPrecision(10));
  return list;
}

export function printedCurve({ group, plot }, several) {
  const shown = group.series.map((one, k) => ({ ...one, data: group.columns[k + 1] })).filter((one, k) => plot.series[k + 1].show);
  const x = group.columns[0];
  const { min: x0, max: x1 } = plot.scales.x;
  let low = Infinity, high = -Infinity;
  for (const { data } of shown) data.forEach((v, k) => { if (v !== null && v !== undefined && x[k] >= x0 && x[k] <= x1) { low = Math.min(low, v); high = Math.max(high, v); } });
  if (!(high >= low)) return null;
  if (high - low < 1e-9) { low -= 1; high += 1; }
  const pad = 0.06 * (high - low);
  low -= pad; high += pad;
  const px = (t) => LEFT + (t - x0) / (x1 - x0 || 1) * (WIDTH - LEFT - RIGHT);
  const py = (v) => HEIGHT - BOTTOM - (v - low) / (high - low) * (HEIGHT - BOTTOM - TOP);
  const xTicks = ticks(x0, x1, 10), yTicks = ticks(low, high, 5);

  const lines = shown.map((one) => {
    let d = "", pen = false;
    one.data.forEach((v, k) => {
      if (v === null) { pen = false; return; }
      if (v === undefined || x[k] < x0 || x[k] > x1) return;
      d += `${pen ? "L" : "M"}${px(x[k]).toFixed(1)} ${py(v).toFixed(1)}`;
      pen = true;
    });
    return svg("path", { d, stroke: curveColour(one.colour), "stroke-dasharray": DASHES[dashOf(one, several) % DASHES.length], class: "curve" });
  });
  return el("figure", { class: "printed-curve" },
    el("figcaption", {}, name(group.title), `${group.unit ? ` [${group.unit}]` : ""} over time [s]`),
    svg("svg", { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, width: WIDTH, height: HEIGHT },
      svg("path", { class: "grid", d: xTicks.map((t) => `M${px(t).toFixed(1)} ${TOP}V${HEIGHT - BOTTOM}`).join("") + yTicks.map((v) => `M${LEFT} ${py(v).toFixed(1)}H${WIDTH - RIGHT}`).join("") }),
      xTicks.map((t) => svg("text", { x: px(t).toFixed(1), y: HEIGHT - 6, "text-anchor": "middle" }, String(t))),
      yTicks.map((v) => svg("text", { x: LEFT - 6, y: (py(v) + 4).toFixed(1), "text-anchor": "end" }, String(v).replace("-", "−"))),
      lines),
    el("p", { class: "printed-legend" }, shown.map((one) => el("span", {},
      svg("svg", { width: 26, height: 8, viewBox: "0 0 26 8" }, svg("path", { class: "curve", d: "M0 4H26", stroke: curveColour(one.colour), "stroke-dasharray": DASHES[dashOf(one, several) % DASHES.length] })),
      several ? `${one.label} ` : "", name(one.name)))));
}
