// The designs of a study: a chart of any column over any other, a table that sorts, and filters that hold for both.

import { el, name, setText, svg } from "./dom.js";
import { mark } from "./sheet.js";
import { digits, floats } from "./numbers.js";
import { tensionCss, tensionGradient } from "./colours.js";
import { onTheme } from "./theme.js";
import { boundsIn, extentOf, frame, roomFor } from "./plot_frame.js";
import { labelOf } from "./study_charts.js";

const STATES = [["good", "meets all"], ["bad", "misses a requirement"], ["unknown", "no valid model"], ["unknown", "could not go on"]];
const PAGE = 50;   // rows of the table at first, and with each "show more"

/// The rows with their numbers: {number, state, reason, values}.
export function tableOf(study) {
  const columns = study.rows.values.map(floats);
  study.columns.forEach((column, place) => { column.place = place; });
  return {
    columns: study.columns,
    rows: study.rows.row.map((number, k) => ({ number, state: study.rows.state[k], reason: study.rows.reasons[study.rows.reason[k]] ?? "", values: columns.map((column) => column[k]) })),
  };
}

export const textOf = (column, value) => Number.isNaN(value) ? "–" : column.options ? column.options[value] ?? "–" : digits(value);

function select(label, options, chosen, change) {
  const box = el("select", { "aria-label": label, on: { change: () => change(box.value) } }, options.map(([value, text]) => el("option", { value, selected: String(value) === String(chosen) }, text)));
  return el("label", { class: "field" }, el("span", { class: "cell-title" }, label), box);
}

/// What stands on the axes at first: two goals, else an outcome over the first key.
function firstAxes(study) {
  const outcomes = study.columns.filter((column) => column.role === "outcome");
  const goals = study.goals.map((goal) => outcomes[goal.outcome]);
  const keys = study.columns.filter((column) => column.role === "key");
  if (goals.length > 1) return [goals[0].place, goals[1].place];
  return [(keys.find((key) => !key.options) ?? keys[0]).place, (goals[0] ?? outcomes[0]).place];
}

export function designs(study, id) {
  const table = tableOf(study);
  const best = new Set(study.best);
  const [firstX, firstY] = firstAxes(study);
  const checked = table.rows.some((row) => row.number >= study.designs);
  const wish = { x: firstX, y: firstY, colour: -1, state: "all", text: "", low: [NaN, NaN], high: [NaN, NaN], sort: -1, down: false, shown: PAGE, picked: null };
  const column = (place) => table.columns[place];

  // ---- filters
  const holds = (row) => {
    if (wish.state === "made" ? row.number < study.designs : checked && row.number >= study.designs) return false;
    if (wish.state === "best" && !best.has(row.number)) return false;
    if (wish.state === "met" && row.state !== 0) return false;
    if (wish.state === "missed" && row.state !== 1) return false;
    if (wish.state === "broken" && row.state < 2) return false;
    for (const [k, place] of [wish.x, wish.y].entries()) {
      if (wish.low[k] > row.values[place] || wish.high[k] < row.values[place]) return false;
      if ((!Number.isNaN(wish.low[k]) || !Number.isNaN(wish.high[k])) && Number.isNaN(row.values[place])) return false;
    }
    if (!wish.text) return true;
    const words = [row.reason, STATES[row.state][1], ...table.columns.filter((one) => one.options).map((one) => textOf(one, row.values[one.place]))].join("\n").toLowerCase();
    return words.includes(wish.text.toLowerCase());
  };

  // ---- chart
  const chartBox = el("div", { class: "design-chart" });
  const legendBox = el("p", { class: "small design-legend" });
  let at = null;
  const jitter = (row, options) => (options ? 0.5 * ((row.number * 0.6180339887) % 1) - 0.25 : 0);
  const place = (row) => {
    const x = row.values[wish.x] + jitter(row, column(wish.x).options);
    const y = row.values[wish.y];
    // What could not be run has its keys, but no outcome: it stands at the foot.
    if (row.state >= 2) return Number.isNaN(x) ? null : [at.px(x), Number.isNaN(y) ? at.bottom - 6 : at.py(y + jitter(row, column(wish.y).options))];
    if (!Number.isFinite(x) || !Number.isFinite(y)) return null;
    return [at.px(x), at.py(y + jitter(row, column(wish.y).options))];
  };
  const axisOf = (place, rows) => {
    const one = column(place);
    const range = one.options ? { low: -0.6, high: one.options.length - 0.4 } : extentOf([...rows.map((row) => row.values[place]), one.drawn], one.bounds);
    return { ...range, label: labelOf(one), options: one.options };
  };
  function drawChart() {
    const inKind = table.rows.filter((row) => (wish.state === "made") === (checked && row.number >= study.designs) || !checked);
    const x = axisOf(wish.x, inKind), y = axisOf(wish.y, inKind);
    at = frame({ width: roomFor(1110), height: Math.min(430, roomFor(1110)), x, y, label: `${y.label} over ${x.label}, a point for each design`, left: 66, className: "designs" });
    at.node.append(...boundsIn(at, y, column(wish.y).bounds, false).flat().filter(Boolean), ...boundsIn(at, x, column(wish.x).bounds, true).flat().filter(Boolean));
    const layers = new Map();
    const add = (key, attributes, d) => { const layer = layers.get(key) ?? { attributes, d: "" }; layer.d += d; layers.set(key, layer); };
    const tones = wish.colour >= 0 ? extentOf(inKind.map((row) => row.values[wish.colour])) : null;
    for (const row of inKind) {
      const point = place(row);
      if (!point) continue;
      const [px, py] = point.map((v) => v.toFixed(1));
      if (!holds(row)) { add("0", { class: "dots faint" }, `M${px} ${py}h0`); continue; }
      if (row.state >= 2) { add("1", { class: "crosses" }, `M${px - 3} ${py - 3}l6 6m0 -6l-6 6`); continue; }
      const shape = row.state === 0 ? `M${px} ${py}h0` : `M${px - 3} ${py}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0`;
      const kind = row.state === 0 ? "dots met" : "rings missed";
      if (!tones) add(row.state === 0 ? "3" : "2", { class: kind }, shape);
      else {
        const value = row.values[wish.colour];
        const tone = Number.isFinite(value) ? Math.round(9 * (value - tones.low) / (tones.high - tones.low)) : -1;
        add(`${row.state === 0 ? 3 : 2}:${tone}`, { class: kind, style: tone < 0 ? {} : { stroke: tensionCss(tone / 9) } }, shape);
      }
      if (best.has(row.number)) add("4", { class: "rings best" }, `M${px - 5.5} ${py}a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0`);
      if (row.number === study.chosen) add("5", { class: "rings chosen" }, `M${px - 9} ${py}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0`);
    }
    for (const key of [...layers.keys()].sort()) { const layer = layers.get(key); at.node.append(svg("path", { ...layer.attributes, d: layer.d })); }
    const { drawn: drawnX } = column(wish.x), { drawn: drawnY } = column(wish.y);
    if (Number.isFinite(drawnX) && Number.isFinite(drawnY)) at.node.append(svg("path", { class: "drawn-design", d: `M${at.px(drawnX)} ${at.py(drawnY) - 7}l7 7l-7 7l-7 -7z` }));
    const picked = wish.picked && place(wish.picked);
    if (picked) at.node.append(svg("path", { class: "rings picked", d: `M${picked[0] - 8} ${picked[1]}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0` }));
    at.node.append(brush);
    listen(at.node);
    chartBox.replaceChildren(at.node);
    const entry = (shape, text) => el("span", { class: "legend-entry" }, svg("svg", { class: "study-chart", width: 20, height: 20, viewBox: "0 0 20 20", "aria-hidden": "true" }, shape), text);
    legendBox.replaceChildren(
      entry(svg("path", { class: "dots met", d: "M10 10h0" }), "meets all requirements"),
      entry(svg("path", { class: "rings missed", d: "M7 10a3 3 0 1 0 6 0a3 3 0 1 0 -6 0" }), "misses one"),
      ...(inKind.some((row) => row.state >= 2) ? [entry(svg("path", { class: "crosses", d: "M7 7l6 6m0 -6l-6 6" }), "could not be run")] : []),
      ...(best.size ? [entry(svg("path", { class: "rings best", d: "M4.5 10a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0" }), best.size > 1 ? "on the front" : "the best")] : []),
      ...(study.chosen !== null ? [entry(svg("path", { class: "rings chosen", d: "M1 10a9 9 0 1 0 18 0a9 9 0 1 0 -18 0" }), "checked as made")] : []),
      ...(Number.isFinite(drawnX) && Number.isFinite(drawnY) ? [entry(svg("path", { class: "drawn-design", d: "M10 3l7 7l-7 7l-7 -7z" }), "as drawn")] : []),
      ...(tones ? [el("span", { class: "legend-entry" }, el("span", { class: "tension-bar", style: { background: tensionGradient() } }), name(`${labelOf(column(wish.colour))}, ${textOf({}, tones.low)} to ${textOf({}, tones.high)}`))] : []));
  }

  // A click picks the nearest design, a drag keeps what lies in the box.
  const brush = svg("rect", { class: "brush", width: 0, height: 0 });
  function listen(node) {
    let start = null;
    const spot = (event) => {
      const box = node.getBoundingClientRect();
      return [(event.clientX - box.left) * at.width / box.width, (event.clientY - box.top) * at.height / box.height];
    };
    node.addEventListener("pointerdown", (event) => { start = spot(event); node.setPointerCapture(event.pointerId); });
    node.addEventListener("pointermove", (event) => {
      if (!start) return;
      const end = spot(event);
      for (const [key, value] of Object.entries({ x: Math.min(start[0], end[0]), y: Math.min(start[1], end[1]), width: Math.abs(end[0] - start[0]), height: Math.abs(end[1] - start[1]) })) brush.setAttribute(key, value);
    });
    const clear = () => { start = null; brush.setAttribute("width", 0); };
    node.addEventListener("pointercancel", clear);
    node.addEventListener("pointerup", (event) => {
      if (!start) return;
      const from = start, to = spot(event);
      clear();
      if (Math.abs(to[0] - from[0]) < 5 || Math.abs(to[1] - from[1]) < 5) { pickNearest(to); return; }
      const back = (axis, pixels) => {
        const [low, high] = axis === 0 ? [at.left, at.right] : [at.bottom, at.top];
        const range = axis === 0 ? axisOf(wish.x, table.rows.filter((row) => checked ? (wish.state === "made") === (row.number >= study.designs) : true)) : axisOf(wish.y, table.rows.filter((row) => checked ? (wish.state === "made") === (row.number >= study.designs) : true));
        return range.low + (pixels - low) / (high - low) * (range.high - range.low);
      };
      for (const axis of [0, 1]) {
        const ends = [back(axis, from[axis]), back(axis, to[axis])].sort((a, b) => a - b);
        [wish.low[axis], wish.high[axis]] = ends.map((value) => +value.toPrecision(4));
      }
      refresh();
    });
  }
  function pickNearest(spot) {
    let nearest = null, least = 18;
    for (const row of table.rows) {
      const point = holds(row) && place(row);
      const far = point ? Math.hypot(point[0] - spot[0], point[1] - spot[1]) : Infinity;
      if (far < least) { least = far; nearest = row; }
    }
    pick(nearest);
  }
  const card = el("p", { class: "picked-design small", role: "status" });
  function pick(row) {
    wish.picked = row;
    drawChart();
    card.replaceChildren(...(row ? [el("b", {}, `Design ${row.number}`), ` ${STATES[row.state][1]}: `, ...table.columns.filter((one) => !Number.isNaN(row.values[one.place]))
      .flatMap((one, k) => [k ? ", " : "", name(one.title), " ", name(textOf(one, row.values[one.place])), one.unit ? ` ${one.unit}` : ""]), row.reason ? [". ", name(row.reason)].flat() : ""].flat() : ["Click a point for its numbers; drag a box to keep only what lies in it."]));
    for (const tr of body.children) tr.classList.toggle("picked", row !== null && tr.dataset.row === String(row.number));
  }

  // ---- table
  const body = el("tbody");
  const count = el("span", { class: "muted", role: "status" });
  const heads = [];
  const shownColumns = () => table.columns.filter((one) => one.role !== "made" || wish.state === "made").filter((one) => one.role !== "key" || wish.state !== "made");
  const headRow = el("tr");
  const more = el("button", { type: "button", class: "more controls", on: { click: () => { wish.shown += PAGE; drawTable(); } } });
  const sorted = () => {
    const rows = table.rows.filter(holds);
    const key = wish.sort === -1 ? (row) => row.number : wish.sort === -2 ? (row) => row.state : (row) => row.values[wish.sort];
    return rows.sort((a, b) => {
      const [x, y] = [key(a), key(b)];
      if (Number.isNaN(x) || Number.isNaN(y)) return Number.isNaN(x) - Number.isNaN(y) || a.number - b.number;   // what has no value comes last, either way
      return (wish.down ? y - x : x - y) || a.number - b.number;
    });
  };
  function drawTable() {
    const columns = shownColumns();
    heads.length = 0;
    const head = (sort, text, numeric) => {
      const cell = el("th", { scope: "col", class: numeric ? "figure" : "", "aria-sort": wish.sort === sort ? (wish.down ? "descending" : "ascending") : "none" },
        el("button", { type: "button", class: "sort", on: { click: () => { wish.down = wish.sort === sort && !wish.down; wish.sort = sort; drawTable(); headRow.querySelector(`[data-sort="${sort}"]`)?.focus(); } }, "data-sort": sort },
          name(text), el("span", { class: "arrow-mark", "aria-hidden": "true" }, wish.sort === sort ? (wish.down ? " ▾" : " ▴") : "")));
      return cell;
    };
    headRow.replaceChildren(head(-1, "row", true), head(-2, "state", false), ...columns.map((one) => head(one.place, labelOf(one), !one.options)));
    const rows = sorted();
    body.replaceChildren(...rows.slice(0, wish.shown).map((row) => el("tr", { "data-row": row.number, class: `${row.state === 1 ? "misses" : row.state >= 2 ? "broke" : ""} ${best.has(row.number) ? "best" : ""} ${wish.picked === row ? "picked" : ""}`, on: { click: () => { pick(row); } } },
      el("th", { scope: "row", class: "figure nowrap" }, row.number, row.number === study.chosen ? " ★" : best.has(row.number) ? " ●" : ""),
      el("td", { class: "nowrap", title: row.reason || null }, mark(STATES[row.state][0]), STATES[row.state][1]),
      columns.map((one) => el("td", { class: one.options ? "" : "figure" }, name(textOf(one, row.values[one.place])))))));
    setText(count, `${rows.length} of ${table.rows.length} rows`);
    more.hidden = rows.length <= wish.shown;
    setText(more, `Show ${Math.min(PAGE, rows.length - wish.shown)} more`);
  }

  // ---- fields
  const bounds = [0, 1].map((axis) => ["low", "high"].map((end) => {
    const input = el("input", { type: "number", step: "any", class: "bound-field", on: { change: () => { wish[end][axis] = input.value === "" ? NaN : Number(input.value); refresh(); } } });
    return input;
  }));
  const reset = el("button", { type: "button", on: { click: () => { wish.low = [NaN, NaN]; wish.high = [NaN, NaN]; wish.state = "all"; wish.text = ""; search.value = ""; stateField.querySelector("select").value = "all"; refresh(); } } }, "Show all");
  const search = el("input", { type: "search", "aria-label": "words in a row's options, state or reason", on: { input: () => { wish.text = search.value; wish.shown = PAGE; refresh(); } } });
  const axes = (role) => table.columns.filter((one) => role.includes(one.role)).map((one) => [one.place, labelOf(one)]);
  const stateField = select("rows", [["all", checked ? "all designs tried" : "all"], ["met", "that meet all requirements"], ["missed", "that miss one"], ["broken", "that could not be run"],
    ...(best.size ? [["best", best.size > 1 ? "on the front" : "the best"]] : []), ...(checked ? [["made", "the chosen one as made"]] : [])], "all", (value) => {
    const wasMade = wish.state === "made";
    wish.state = value; wish.shown = PAGE;
    if (wasMade !== (value === "made")) {   // the made ones have keys of their own
      const made = table.columns.find((one) => one.role === "made");
      setAxis("x", value === "made" && made ? made.place : firstX);
      setAxis("y", value === "made" ? table.columns.find((one) => one.role === "outcome").place : firstY);
      wish.sort = -1;
    }
    refresh();
  });
  const choices = axes(["key", "made", "outcome"]);
  const fieldX = select("along", choices, wish.x, (value) => setAxis("x", Number(value), true)), fieldY = select("up", choices, wish.y, (value) => setAxis("y", Number(value), true));
  function setAxis(which, value, redraw) {
    wish[which] = value;
    (which === "x" ? fieldX : fieldY).querySelector("select").value = String(value);
    const axis = which === "x" ? 0 : 1;
    wish.low[axis] = wish.high[axis] = NaN;
    if (redraw) refresh();
  }
  function refresh() {
    bounds.forEach((pair, axis) => pair.forEach((input, end) => {
      const value = wish[end ? "high" : "low"][axis];
      input.value = Number.isNaN(value) ? "" : value;
      input.setAttribute("aria-label", `${column(axis ? wish.y : wish.x).title}, ${end ? "at most" : "at least"}`);
    }));
    drawChart();
    drawTable();
  }
  const range = (title, pair) => el("div", { class: "field" }, el("span", { class: "cell-title" }, title), el("span", { class: "range-fields" }, pair[0], " to ", pair[1]));
  const content = [
    el("p", { class: "lead" }, name(study.rows.text)),
    el("div", { class: "fields controls" }, fieldX, range("along, from", bounds[0]), fieldY, range("up, from", bounds[1]),
      select("colour", [[-1, "none"], ...choices], -1, (value) => { wish.colour = Number(value); drawChart(); }), stateField,
      el("label", { class: "field" }, el("span", { class: "cell-title" }, "words"), search), reset),
    chartBox, legendBox, card,
    el("p", { class: "controls" }, count),
    el("div", { class: "table-box", tabindex: 0, role: "group", "aria-label": "designs" }, el("table", { class: "designs-table", id }, el("thead", {}, headRow), body)), more,
  ];
  pick(null);
  refresh();
  onTheme(drawChart);
  addEventListener("resize", drawChart);
  return content;
}
