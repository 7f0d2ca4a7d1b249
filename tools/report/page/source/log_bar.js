// A margin as a bar on a logarithmic axis that starts at 1: to the right what is in hand, to the left what is short.

import { svg } from "./dom.js";

const WIDTH = 120, HEIGHT = 14;

export function logBar(ratio, { low = 0.5, high = 20 } = {}) {
  const at = (value) => WIDTH * Math.log(Math.min(Math.max(value, low), high) / low) / Math.log(high / low);
  const one = at(1), end = at(ratio);
  const holds = ratio >= 1;
  const ticks = [0.2, 0.5, 2, 5, 10, 20].filter((t) => t > low && t < high);
  return svg("svg", { class: `log-bar ${holds ? "good" : "bad"}`, viewBox: `0 0 ${WIDTH} ${HEIGHT}`, width: WIDTH, height: HEIGHT, "aria-hidden": "true" },
    svg("path", { class: "ticks", d: ticks.map((t) => `M${at(t).toFixed(1)} 0V${HEIGHT}`).join("") }),
    Number.isFinite(ratio) && svg("rect", { class: "bar", x: Math.min(one, end).toFixed(1), y: 3, width: Math.max(Math.abs(end - one), 1).toFixed(1), height: HEIGHT - 6 }),
    ratio > high && svg("path", { class: "beyond", d: `M${WIDTH - 5} 1L${WIDTH} ${HEIGHT / 2}L${WIDTH - 5} ${HEIGHT - 1}` }),
    svg("path", { class: "one", d: `M${one.toFixed(1)} 0V${HEIGHT}` }));
}
