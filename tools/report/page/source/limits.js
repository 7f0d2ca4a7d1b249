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

/// In which plane of the world the directions lie.
const planeOf = (limit) => (limit.plane ? `, round the plane of ${limit.plane.map((axis) => axis.replace(/^[+−]/, "")).join(" and ")}: 0° along ${limit.plane[0]}, 90° along ${limit.plane[1]}` : "");

/// Pulls round a plane, drawn as far out as they are held: one closed line a variant, its worst point ringed.
function polar(limit) {
  if (limit.method !== "directions" || !limit.in_plane) return null;
  const n = limit.axes[limit.axes.length - 1].values.length, held = limit.rows.filter((row) => row.found !== false && Number.isFinite(row.value));
  if (!held.length) return null;
  const W = 340, R = 112, C = W / 2, top = 1.08 * Math.max(...held.map((row) => row.value), 1e-12);
  const at = (k, value) => [C + value / top * R * Math.cos(2 * Math.PI * k / n), C - value / top * R * Math.sin(2 * Math.PI * k / n)];
  const ring = (r) => `M${C + r} ${C}A${r} ${r} 0 1 0 ${C - r} ${C}A${r} ${r} 0 1 0 ${C + r} ${C}`;
  const beyond = (k) => {
    const [x, y] = at(k, top);
    return `M${(x - 4).toFixed(1)} ${(y + 3).toFixed(1)}h8l-4 -7Z`;
  };
  const parts = [svg("path", { class: "grid", d: [0.25, 0.5, 0.75, 1].map((s) => ring(s * R)).join("") + [0, 1, 2, 3].map((q) => `M${C} ${C}L${C + R * Math.cos(q * Math.PI / 2)} ${C - R * Math.sin(q * Math.PI / 2)}`).join("") })];
  // What the plane's own axes are in the world stands beside their angles.
  const opposite = (axis) => (axis.startsWith("+") ? axis.replace("+", "−") : axis.replace("−", "+"));
  const [across, up] = limit.plane?.every((axis) => !axis.startsWith("(")) ? limit.plane : ["", ""];
  for (const [k, text] of [`0° ${across}`, `90° ${up}`, `180° ${opposite(across)}`, `270° ${opposite(up)}`].entries())
    parts.push(svg("text", { x: C + (R + 10) * Math.cos(k * Math.PI / 2), y: C + 4 - (R + 14) * Math.sin(k * Math.PI / 2), "text-anchor": ["start", "middle", "end", "middle"][k] }, text.trim()));
  for (const s of [0.5, 1]) parts.push(svg("text", { x: C + s * R * Math.cos(1.25) + 3, y: C - s * R * Math.sin(1.25), "text-anchor": "start" }, digits(s * top, 2)));
  for (let from = 0; from < limit.rows.length; from += n) {
    const rows = limit.rows.slice(from, from + n), points = rows.map((row, k) => ({ row, k })).filter(({ row }) => row.found !== false && Number.isFinite(row.value));
    // A gap in the curve where all that was tried is held; the line closes where its neighbours are there.
    let path = "";
    for (let k = 0; k <= n; ++k) {
      const row = rows[k % n];
      if (row.found === false || !Number.isFinite(row.value)) continue;
      const joined = k > 0 && rows[k - 1].found !== false && Number.isFinite(rows[k - 1].value);
      path += `${joined ? "L" : "M"}${at(k, row.value).map((v) => v.toFixed(2)).join(" ")}`;
    }
    parts.push(svg("path", { class: "line", d: path }));
    for (const { row, k } of points) parts.push(svg("circle", { cx: at(k, row.value)[0], cy: at(k, row.value)[1], r: 2.5 }));
    parts.push(svg("path", { class: "beyond", d: rows.map((row, k) => (row.found === false ? beyond(k) : "")).join("") }));
    const worst = points.reduce((a, b) => (b.row.value < a.row.value ? b : a), points[0]);
    if (worst) parts.push(svg("circle", { class: "worst", cx: at(worst.k, worst.row.value)[0], cy: at(worst.k, worst.row.value)[1], r: 6 }));
  }
  const sample = (shape) => svg("svg", { class: "limit-chart", viewBox: "-8 -8 16 16", width: 16, height: 16, "aria-hidden": "true" }, shape);
  return el("figure", { class: "polar" },
    svg("svg", { class: "limit-chart", viewBox: `0 0 ${W} ${W}`, width: W, height: W, role: "img", "aria-label": `${limit.name}, by direction${planeOf(limit)}` }, parts),
    el("figcaption", { class: "small muted" },
      el("p", {}, `Distance from the middle: ${limit.quantity} [${limit.unit}]${planeOf(limit)}.`),
      el("p", { class: "design-legend" }, el("span", { class: "legend-entry" }, sample(svg("circle", { class: "worst", r: 6 })), "the worst"),
        limit.rows.some((row) => row.found === false) && el("span", { class: "legend-entry" }, sample(svg("path", { class: "beyond", d: "M-4 3h8l-4 -7Z" })), "holds all that was tried"))));
}

export function limits(sheet, data) {
  if (!data.limits?.length) return;
  sheet.section("limits", "Limits", data.limits.map((limit) => el("div", { class: "limit" },
    el("h3", {}, name(limit.name)),
    el("p", { class: "lead" }, name(limit.quantity), limit.unit ? ` [${limit.unit}]` : "", limit.method ? el("span", { class: "muted" }, ", found by ", name(limit.method)) : ""),
    el("div", { class: "limit-body" },
      table([...(limit.axes ?? []).map((axis) => name(axis.name)), "limit", "error", limit.method === "directions" ? "the finger that gives first" : "remark"], limit.rows.map((row) => el("tr", { class: row.found === false && limit.method !== "directions" ? "missed" : "" },
        (row.place ?? []).map((text) => el("td", { class: "figure nowrap" }, name(text))),
        el("td", { class: "figure nowrap" }, el("b", {}, name(row.text))), el("td", { class: "figure nowrap" }, name(row.error_text)), el("td", { class: "small" }, name([row.gave, row.note].filter(Boolean).join("; "))))), { label: `limit ${limit.name}` }),
      polar(limit) ?? chart(limit)))));
}
