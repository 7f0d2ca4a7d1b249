// Searches for limits that were attached: at which load or value something gives way.

import { el, name, svg } from "./dom.js";
import { table } from "./sheet.js";
import { digits } from "./numbers.js";

/// With one axis of numbers the answers make a curve.
function chart(limit) {
  if ((limit.axes ?? []).length !== 1) return null;
  const points = limit.rows.filter((row) => row.found !== false && Number.isFinite(row.value))
    .map((row) => ({ x: parseFloat(row.place[0]), y: row.value })).filter((p) => Number.isFinite(p.x)).sort((a, b) => a.x - b.x);
  if (points.length < 2) return null;
  const W = 420, H = 200, L = 50, B = 36, T = 10, R = 14;
  const xs = points.map((p) => p.x), low = Math.min(...xs), high = Math.max(...xs), top = 1.1 * Math.max(...points.map((p) => p.y), 1e-12);
  if (!(high > low)) return null;
  const px = (x) => L + (x - low) / (high - low) * (W - L - R), py = (y) => H - B - y / top * (H - B - T);
  return svg("svg", { class: "limit-chart", viewBox: `0 0 ${W} ${H}`, width: W, height: H, role: "img", "aria-label": `${limit.name} over ${limit.axes[0].name}` },
    svg("path", { class: "grid", d: [0, 0.25, 0.5, 0.75, 1].map((s) => `M${L} ${py(s * top / 1.1)}H${W - R}`).join("") }),
    [0, 0.5, 1].map((s) => svg("text", { x: L - 6, y: py(s * top / 1.1) + 4, "text-anchor": "end" }, digits(s * top / 1.1, 3))),
    points.map((p) => svg("text", { x: px(p.x), y: H - B + 15, "text-anchor": "middle" }, String(p.x))),
    svg("text", { x: (L + W - R) / 2, y: H - 4, "text-anchor": "middle" }, limit.axes[0].name),
    svg("path", { class: "line", d: points.map((p, k) => `${k ? "L" : "M"}${px(p.x)} ${py(p.y)}`).join("") }),
    points.map((p) => svg("circle", { cx: px(p.x), cy: py(p.y), r: 3 })));
}

export function limits(sheet, data) {
  if (!data.limits?.length) return;
  sheet.section("limits", "Limits", data.limits.map((limit) => el("div", { class: "limit" },
    el("h3", {}, name(limit.name)),
    el("p", { class: "lead" }, name(limit.quantity), limit.unit ? ` [${limit.unit}]` : "", limit.method ? el("span", { class: "muted" }, ", found by ", name(limit.method)) : ""),
    el("div", { class: "limit-body" },
      table([...(limit.axes ?? []).map((axis) => name(axis.name)), "limit", "error", "remark"], limit.rows.map((row) => el("tr", { class: row.found === false ? "missed" : "" },
        (row.place ?? []).map((text) => el("td", { class: "figure" }, name(text))),
        el("td", { class: "figure" }, el("b", {}, name(row.text))), el("td", { class: "figure" }, name(row.error_text)), el("td", { class: "small" }, name(row.note)))), { label: `limit ${limit.name}` }),
      chart(limit)))));
}
