// A grid over two keys as fields of colour: one map for each outcome, one cursor in all of them. The table of designs
// holds the same numbers for those who would rather read them there.

import { el, name, setText, svg } from "./dom.js";
import { tensionColour, tensionCss, tensionGradient } from "./colours.js";
import { digits, tidy } from "./numbers.js";
import { onTheme } from "./theme.js";
import { roomFor } from "./plot_frame.js";
import { labelOf } from "./study_charts.js";

const WRITTEN = 14;   // fields along an axis with numbers in them
const TOP = 6, BOTTOM = 40, RIGHT = 8;

const valueText = (column, value) => (column.options ? column.options[value] ?? "–" : `${tidy(value)}${column.unit ? ` ${column.unit}` : ""}`);

/// Whether dark writing stands out from a colour of the scale.
function isLight(share) {
  const [r, g, b] = tensionColour(share, [0, 0, 0]).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b > 0.21;   // where dark and white writing stand out alike
}

/// Where fields of which all rows meet the requirements touch others.
function border({ nx, ny, whole }) {
  const lines = [];
  for (let j = 0; j < ny; ++j) for (let i = 0; i < nx; ++i) {
    if (i + 1 < nx && whole(i, j) !== whole(i + 1, j)) lines.push([i + 1, j, i + 1, j + 1]);
    if (j + 1 < ny && whole(i, j) !== whole(i, j + 1)) lines.push([i, j + 1, i + 1, j + 1]);
  }
  return lines;
}

function map(grid, panel, width) {
  const { nx, ny, x, y } = grid;
  const left = 58 + (y.options ? 24 : 0), wide = (width - left - RIGHT) / nx, high = Math.min(Math.max(200 / ny, 8), 34);
  const height = TOP + high * ny + BOTTOM;
  const px = (i) => left + i * wide, py = (j) => TOP + (ny - j) * high;
  const known = panel.values.filter((value) => value !== null);
  const low = panel.low ?? Math.min(...known), most = panel.high ?? Math.max(...known);
  const share = (value) => (most > low ? (value - low) / (most - low) : 0.5);
  const written = nx <= WRITTEN && ny <= WRITTEN && high > 13 && wide > 6.6 * Math.max(...known.map((value) => tidy(value).length));

  const fields = panel.values.map((value, k) => {
    const i = k % nx, j = Math.floor(k / nx);
    const box = { x: px(i).toFixed(2), y: py(j + 1).toFixed(2), width: wide.toFixed(2), height: high.toFixed(2) };
    return { value, field: svg("rect", { class: value === null ? "field none" : "field", "data-field": k, ...box }),
      text: written && value !== null && svg("text", { class: "field-text", x: (px(i) + wide / 2).toFixed(1), y: (py(j + 0.5) + Math.min(8, high / 4)).toFixed(1), "text-anchor": "middle" }, tidy(value)) };
  });
  const spot = svg("rect", { class: "field-cursor", width: wide, height: high, visibility: "hidden" });
  // A cross in the corner of the field, so that the number beside it can be read; in the middle where there is none.
  const crosses = grid.failed.map((k) => {
    const i = k % nx, j = Math.floor(k / nx), r = written ? 2.6 : Math.min(3.5, wide / 3, high / 3);
    const cx = written ? px(i + 1) - r - 2.5 : px(i + 0.5), cy = written ? py(j + 1) + r + 2.5 : py(j + 0.5);
    return `M${(cx - r).toFixed(1)} ${(cy - r).toFixed(1)}l${2 * r} ${2 * r}m0 ${-2 * r}l${-2 * r} ${2 * r}`;
  }).join("");
  const lines = border(grid).map(([a, b, c, d]) => `M${px(a).toFixed(1)} ${py(b).toFixed(1)}L${px(c).toFixed(1)} ${py(d).toFixed(1)}`).join("");
  const short = (text, most) => (text.length > most ? `${text.slice(0, most - 1)}…` : text);
  const axisText = (axis, k) => (axis.options ? axis.options[axis.values[k]] ?? "–" : tidy(axis.values[k]));
  const every = (count, room) => Math.max(1, Math.ceil(count / room));
  const stepX = every(nx, (width - left) / (x.options ? 62 : 40)), stepY = every(ny, high * ny / 15);
  const node = svg("svg", { class: "study-chart study-map", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" },
    fields.map(({ field }) => field), fields.map(({ text }) => text),
    svg("path", { class: "cross-ground", d: crosses }), svg("path", { class: "failed-cross", d: crosses }),
    svg("path", { class: "border-ground", d: lines }), svg("path", { class: "passing-border", d: lines }), spot,
    x.values.map((_, k) => k % stepX === 0 && svg("text", { x: px(k + 0.5).toFixed(1), y: height - BOTTOM + 15, "text-anchor": "middle" }, short(axisText(x, k), 10))),
    y.values.map((_, k) => k % stepY === 0 && svg("text", { x: left - 6, y: (py(k + 0.5) + 4).toFixed(1), "text-anchor": "end" }, short(axisText(y, k), y.options ? 10 : 7))),
    svg("text", { class: "axis-name", x: (left + width - RIGHT) / 2, y: height - 5, "text-anchor": "middle" }, labelOf(x)),
    svg("text", { class: "axis-name", transform: `translate(12 ${TOP + high * ny / 2}) rotate(-90)`, "text-anchor": "middle" }, short(labelOf(y), Math.max(8, Math.floor(high * ny / 6.4)))));
  const bar = el("span", { class: "tension-bar" });
  const colour = () => {
    for (const { value, field, text } of fields) {
      if (value === null) continue;
      field.setAttribute("fill", tensionCss(share(value)));
      if (text) text.setAttribute("class", `field-text ${isLight(share(value)) ? "on-light" : "on-dark"}`);
    }
    bar.style.background = tensionGradient();
  };
  onTheme(colour);
  colour();
  return {
    node, fields,
    show(k) {
      spot.setAttribute("visibility", k < 0 ? "hidden" : "visible");
      if (k < 0) return;
      spot.setAttribute("x", px(k % nx).toFixed(2));
      spot.setAttribute("y", py(Math.floor(k / nx) + 1).toFixed(2));
    },
    figure: el("figure", { class: "study-figure" }, el("figcaption", {}, name(panel.title)), node,
      known.length ? el("div", { class: "map-scale" }, el("span", {}, tidy(low)), bar, el("span", {}, `${tidy(most)}${panel.unit ? ` ${panel.unit}` : ""}`))
        : el("p", { class: "muted small" }, "No design has it.")),
  };
}

export function studyMaps(study, outcomes) {
  const { map: given } = study;
  if (!given) return null;
  const axis = ({ column, values, all }) => ({ ...study.columns[column], values, all });
  const x = axis(given.x), y = axis(given.y), nx = x.values.length, ny = y.values.length;
  const judged = study.requirements.length > 0, several = given.over.length > 0;
  const whole = (i, j) => given.rows[j * nx + i] > 0 && given.met[j * nx + i] === given.rows[j * nx + i];
  const grid = { x, y, nx, ny, whole: judged ? whole : () => true, failed: judged ? given.rows.map((rows, k) => (rows > 0 && given.met[k] === 0 ? k : -1)).filter((k) => k >= 0) : [] };
  const panels = outcomes.map((outcome, c) => ({ title: `${several ? "mean " : ""}${labelOf(outcome)}`, unit: outcome.unit, values: given.means[c] }));
  if (several && judged) panels.unshift({ title: "meet all requirements [%]", unit: "%", low: 0, high: 100, values: given.rows.map((rows, k) => (rows ? 100 * given.met[k] / rows : null)) });
  const maps = panels.map((panel) => map(grid, panel, roomFor(nx > 20 ? 540 : 420)));

  let at = -1;
  const HINT = "Point at a field for its numbers, or focus the maps and use the arrow keys.";
  const words = el("p", { class: "picked-design small", role: "status" }, HINT);
  function text(k) {
    const place = `${x.title} ${valueText(x, x.values[k % nx])}, ${y.title} ${valueText(y, y.values[Math.floor(k / nx)])}`;
    const numbers = panels.map((panel) => `${panel.title.replace(/ \[.*\]$/, "")} ${panel.values[k] === null ? "none" : `${digits(panel.values[k])}${panel.unit ? ` ${panel.unit}` : ""}`}`).join(", ");
    const met = !given.rows[k] ? "not run" : !judged ? "" : several ? `${given.met[k]} of ${given.rows[k]} designs meet all requirements` : given.met[k] ? "meets all requirements" : "misses a requirement, or could not be run";
    return `${place}: ${numbers}${met ? `; ${met}` : ""}.`;
  }
  function show(k) {
    at = k;
    for (const one of maps) one.show(k);
    setText(words, k < 0 ? HINT : text(k));
  }
  const onKey = (event) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!step || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const within = (value, count) => Math.min(Math.max(value, 0), count - 1);
    show(at < 0 ? 0 : within(Math.floor(at / nx) + step[1], ny) * nx + within(at % nx + step[0], nx));
  };
  const box = el("div", {
    class: "study-figures maps", tabindex: 0, role: "application", "aria-label": `maps over ${x.title} and ${y.title}; arrow keys go from field to field`,
    on: {
      keydown: onKey, focus: () => { if (at < 0) show(0); },
      pointermove: (event) => { const k = event.target.dataset?.field; if (k !== undefined) show(Number(k)); },
      pointerdown: (event) => { const k = event.target.dataset?.field; if (k !== undefined) show(Number(k)); },
    },
  }, maps.map(({ figure }) => figure));
  const sample = (...shapes) => svg("svg", { class: "study-chart", width: 20, height: 14, viewBox: "0 0 20 14", "aria-hidden": "true" }, shapes);
  return [
    el("h3", {}, `Outcomes over ${x.title} and ${y.title}`),
    several && el("p", { class: "lead small" }, "Each field is the mean over ", name(given.over.join(", ")), "."),
    (nx < x.all || ny < y.all) && el("p", { class: "lead small" }, `${nx} × ${ny} of ${x.all} × ${y.all} values are shown.`),
    box, words,
    judged && el("p", { class: "small design-legend" },
      el("span", { class: "legend-entry" }, sample(svg("path", { class: "failed-cross", d: "M6 3l8 8m0 -8l-8 8" })), several ? "no design there meets all requirements" : "misses a requirement, or could not be run"),
      el("span", { class: "legend-entry" }, sample(svg("path", { class: "passing-border", d: "M1 7H19" })), several ? "border of where every design meets them" : "border of the designs that meet them all"),
      el("span", { class: "legend-entry" }, sample(svg("rect", { class: "field none", x: 1, y: 1, width: 18, height: 12 })), "no value")),
  ];
}
