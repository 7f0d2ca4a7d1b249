// The model as a drawing: outlines, axes of the pins, dimension lines with arrows, all in mm.

import { el, name, svg } from "./dom.js";
import { recordHeading } from "./sheet.js";

const WIDTH = 900;       // px of the picture at full size
const LANE = 24;         // px between dimension lines
const TEXT = 13;         // px

const f = (v) => v.toFixed(2);

/// Where everything lies, y up.
function extent(view) {
  const points = [
    ...(view.polygons ?? []).flatMap((p) => p.points),
    ...(view.cords ?? []).flatMap((c) => c.points),
    ...(view.circles ?? []).flatMap((c) => [[c.at[0] - c.radius, c.at[1] - c.radius], [c.at[0] + c.radius, c.at[1] + c.radius]]),
    ...(view.dimensions ?? []).flatMap((d) => [d.from, d.to]),
    ...(view.names ?? []).flatMap(({ at }) => [at, [at[0] + 20, at[1]]]),
  ];
  const xs = points.map((p) => p[0]), ys = points.map((p) => p[1]);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/// The lowest lane that is free between two places; short dimensions first, so that they stay near the part.
function laneOf(lanes, low, high) {
  for (let k = 0; ; ++k) {
    lanes[k] ??= [];
    if (lanes[k].every(([a, b]) => high <= a + 0.01 || low >= b - 0.01)) { lanes[k].push([low, high]); return k; }
  }
}

function picture(view) {
  const box = extent(view);
  if (!Number.isFinite(box.left)) return null;
  const span = (d, axis) => Math.abs(d.to[axis] - d.from[axis]);
  const across = (view.dimensions ?? []).filter((d) => d.axis !== "y").sort((a, b) => span(a, 0) - span(b, 0));
  const upright = (view.dimensions ?? []).filter((d) => d.axis === "y").sort((a, b) => span(a, 1) - span(b, 1));
  const acrossLanes = [], uprightLanes = [];
  const placedAcross = across.map((d) => ({ d, lane: laneOf(acrossLanes, Math.min(d.from[0], d.to[0]), Math.max(d.from[0], d.to[0])) }));
  const placedUpright = upright.map((d) => ({ d, lane: laneOf(uprightLanes, Math.min(d.from[1], d.to[1]), Math.max(d.from[1], d.to[1])) }));

  const notes = [...(view.notes ?? [])].sort((a, b) => a.at[0] - b.at[0]);
  const sides = 20 + (uprightLanes.length ? uprightLanes.length * (LANE + 14) + 16 : 0);
  const scale = (WIDTH - sides - 30) / (box.right - box.left || 1);
  const X = (x) => sides + (x - box.left) * scale;
  // Notes stand in rows above the part, each as near its point as its neighbours let it.
  const textWidth = (text) => 0.6 * TEXT * text.length + 12;
  const rowEnds = [];
  const placedNotes = notes.map((note) => {
    const width = textWidth(note.text);
    const wish = Math.min(X(note.at[0]) + 10, WIDTH - width - 4);
    let row = rowEnds.findIndex((end) => end <= wish);
    if (row < 0) row = rowEnds.length < 4 ? rowEnds.length : rowEnds.indexOf(Math.min(...rowEnds));
    const x = Math.max(wish, rowEnds[row] ?? 0);
    rowEnds[row] = x + width;
    return { note, x, row, width };
  });
  const head = 14 + rowEnds.length * 20 + (rowEnds.length ? 14 : 0);
  const Y = (y) => head + (box.top - y) * scale;
  const foot = Y(box.bottom);
  const height = foot + 20 + acrossLanes.length * LANE + 14;

  const path = (points, close) => points.map((p, k) => `${k ? "L" : "M"}${f(X(p[0]))} ${f(Y(p[1]))}`).join("") + (close ? "Z" : "");
  const arrows = (x1, y1, x2, y2) => {
    const length = Math.hypot(x2 - x1, y2 - y1), ux = (x2 - x1) / (length || 1), uy = (y2 - y1) / (length || 1);
    const tip = (x, y, s) => `M${f(x)} ${f(y)}L${f(x + s * 8 * ux - 2.4 * uy)} ${f(y + s * 8 * uy + 2.4 * ux)}L${f(x + s * 8 * ux + 2.4 * uy)} ${f(y + s * 8 * uy - 2.4 * ux)}Z`;
    // Too narrow for arrows inside: they point in from outside.
    return length > 20 ? tip(x1, y1, 1) + tip(x2, y2, -1) : tip(x1, y1, -1) + tip(x2, y2, 1);
  };

  const dimension = (x1, y1, x2, y2, extension, text, upright) => {
    const mx = (x1 + x2) / 2, my = (y1 + y2) / 2;
    return svg("g", { class: "dimension" },
      svg("path", { class: "thin", d: `${extension}M${f(x1)} ${f(y1)}L${f(x2)} ${f(y2)}` }),
      svg("path", { class: "head", d: arrows(x1, y1, x2, y2) }),
      svg("text", { x: f(mx), y: f(my - 4), "text-anchor": "middle", ...(upright ? { transform: `rotate(-90 ${f(mx)} ${f(my)})` } : {}) }, text));
  };

  return svg("svg", { class: "model-drawing", viewBox: `0 0 ${WIDTH} ${f(height)}`, width: WIDTH, height: f(height), role: "img", "aria-label": `drawing of the model, ${view.name}`, "font-size": TEXT },
    (view.polygons ?? []).filter((p) => p.role === "contact").map((p) => svg("path", { class: "outline contact", d: path(p.points, true) })),
    (view.polygons ?? []).filter((p) => p.role !== "contact").map((p) => svg("path", { class: "outline solid", d: path(p.points, true) })),
    (view.cords ?? []).map((cord) => svg("path", { class: `drawn-cord ${cord.kind}`, d: path(cord.points, false) })),
    (view.circles ?? []).map((c) => {
      const x = X(c.at[0]), y = Y(c.at[1]), r = Math.max(c.radius * scale, 1.5), arm = r + 6;
      return svg("g", {}, svg("circle", { class: `round ${c.role}`, cx: f(x), cy: f(y), r: f(r) }),
        svg("path", { class: "centre-line", d: `M${f(x - arm)} ${f(y)}H${f(x + arm)}M${f(x)} ${f(y - arm)}V${f(y + arm)}` }));
    }),
    placedAcross.map(({ d, lane }) => {
      const y = foot + 24 + lane * LANE;
      const from = d.from[0] <= d.to[0] ? d.from : d.to, to = from === d.from ? d.to : d.from;
      const ext = [from, to].map((p) => `M${f(X(p[0]))} ${f(Y(p[1]) + 4)}V${f(y + 5)}`).join("");
      return dimension(X(from[0]), y, X(to[0]), y, ext, d.text, false);
    }),
    placedUpright.map(({ d, lane }) => {
      const x = sides - 18 - lane * (LANE + 14);
      const from = d.from[1] <= d.to[1] ? d.from : d.to, to = from === d.from ? d.to : d.from;
      const ext = [from, to].map((p) => `M${f(X(p[0]) - 4)} ${f(Y(p[1]))}H${f(x - 5)}`).join("");
      return dimension(x, Y(from[1]), x, Y(to[1]), ext, d.text, true);
    }),
    (view.names ?? []).map(({ at, text }) => svg("text", { class: "drawn-name", x: f(X(at[0]) + 10), y: f(Y(at[1]) + 5) }, text)),
    placedNotes.map(({ note, x, row, width }) => {
      const y = 16 + row * 20, px = X(note.at[0]), py = Y(note.at[1]);
      return svg("g", { class: "note" },
        svg("path", { class: "thin", d: `M${f(px)} ${f(py)}L${f(x)} ${f(y + 4)}H${f(x + width - 8)}` }),
        svg("circle", { class: "dot", cx: f(px), cy: f(py), r: 2 }),
        svg("text", { x: f(x + 2), y: f(y) }, note.text));
    }));
}

export function drawing(sheet, data) {
  const { records } = data;
  const several = records.length > 1;
  const views = (record) => (record.drawing?.views ?? []).map((view) => el("figure", { class: "drawing-figure" },
    el("div", { class: "drawing-box", tabindex: 0, role: "group", "aria-label": "drawing, can be scrolled sideways" }, picture(view)),
    el("figcaption", {}, "View: ", name(view.name), ", posture straight; mm")));
  const alike = several && records.every((record) => JSON.stringify(record.drawing) === JSON.stringify(records[0].drawing));

  // Facts of all records that say the same thing become one row.
  const groups = new Map();
  records.forEach((record, k) => {
    for (const fact of record.facts ?? []) {
      if (!groups.has(fact.group)) groups.set(fact.group, new Map());
      const group = groups.get(fact.group);
      if (!group.has(fact.title)) group.set(fact.title, new Array(records.length).fill("–"));
      group.get(fact.title)[k] = fact.text;
    }
  });
  // Like parts of a hand's fingers share their facts.
  const fingers = [...new Set(records.flatMap((record) => record.fingers ?? []))];
  const shared = new Map();
  for (const [group, rows] of groups) {
    const finger = fingers.find((one) => group.includes(` ${one}.`));
    const part = finger ? group.replace(` ${finger}.`, " ") : group;
    const key = `${part}\n${JSON.stringify([...rows])}`;
    if (!shared.has(key)) shared.set(key, { part, of: [], rows });
    if (finger) shared.get(key).of.push(finger);
  }
  const named = ({ part, of }) => (of.length ? `${part} of ${of.join(", ")}` : part);
  const facts = [...shared.values()].map((one) => [named(one), one.rows]).map(([group, rows]) => el("div", { class: "fact-group" }, el("h4", { class: "sub" }, name(group)),
    el("table", { class: "facts" },
      several && el("thead", {}, el("tr", {}, el("th", {}), records.map((record) => el("th", { scope: "col" }, record.label)))),
      el("tbody", {}, [...rows].map(([title, texts]) => el("tr", { class: several && new Set(texts).size > 1 ? "differs" : "" },
        el("th", { scope: "row" }, name(title)), texts.map((text) => el("td", { class: "figure" }, name(text)))))))));

  if (!facts.length && !records.some((record) => record.drawing?.views?.length)) return;
  sheet.section("model", "The model",
    alike || !several ? views(records[0]) : records.map((record) => [recordHeading(record), views(record)]),
    several && alike && el("p", { class: "muted small" }, "The drawing is the same for all records."),
    facts.length > 0 && el("div", { class: "fact-groups" }, facts));
}
