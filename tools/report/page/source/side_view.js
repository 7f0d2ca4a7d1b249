// The finger as a drawing of lines: on paper, as small pictures of key instants, and in place of the three-dimensional
// view where the browser has no WebGL. Looks along -z, x to the right, y up; a hand, whose fingers cover each other
// there, from other sides too.

import { el, setAttribute, setText, svg } from "./dom.js";
import { toGround, turn } from "./motion.js";
import { tensionCss } from "./colours.js";
import { cutCord, makePieces, PIECE } from "./cord_pieces.js";
import { makeLabels, withRoom } from "./annotations.js";
import { cornersOf } from "./shapes.js";
import { sightOf } from "./sights.js";
import { onTheme } from "./theme.js";

/// Convex hull of points [x, y], counter-clockwise.
function hull(points) {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list) => {
    const out = [];
    for (const p of list) {
      while (out.length > 1) {
        const [a, b] = [out[out.length - 2], out[out.length - 1]];
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        out.pop();
      }
      out.push(p);
    }
    out.pop();
    return out;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

const f = (value) => value.toFixed(2);
const polygon = (points) => points.map((p, k) => `${k ? "L" : "M"}${f(p[0])} ${f(-p[1])}`).join("") + "Z";

function circle(centre, r) {
  const x = centre[0], y = -centre[1];
  return `M${f(x - r)} ${f(y)}a${f(r)} ${f(r)} 0 1 0 ${f(2 * r)} 0a${f(r)} ${f(r)} 0 1 0 ${f(-2 * r)} 0Z`;
}

/// Each round end is two quarter circles: of a half circle, whose ends are as far apart as it is wide, rounding the
/// coordinates would move the top by tenths of a millimetre.
function stadium(from, to, r) {
  const dx = to[0] - from[0], dy = to[1] - from[1], length = Math.hypot(dx, dy);
  if (length < 1e-6) return circle(from, r);
  const ux = dx / length * r, uy = dy / length * r;
  const at = (p, x, y) => `${f(p[0] + x)} ${f(-p[1] - y)}`;
  const arc = (p, x, y) => `A${f(r)} ${f(r)} 0 0 1 ${at(p, x, y)}`;
  return `M${at(from, -uy, ux)}L${at(to, -uy, ux)}${arc(to, ux, uy)}${arc(to, uy, -ux)}L${at(from, uy, -ux)}${arc(from, -ux, -uy)}${arc(from, -uy, ux)}Z`;
}

function outline(shape, pose, sight) {
  const seen = (p) => sight(toGround(pose, p, [0, 0, 0]));
  if (shape.kind === "capsule") return stadium(seen(shape.from), seen(shape.to), shape.radius);
  if (shape.kind === "sphere") return circle(seen(shape.center), shape.radius);
  const corners = cornersOf(shape);
  return corners ? polygon(hull(corners.map(seen))) : "";
}

/// A pin, a guide or a pulley: a circle along its axis, else a cylinder.
function roller({ at, axis, radius, length }, pose, sight) {
  const along = sight(turn(pose, axis, [0, 0, 0]));
  if (Math.hypot(along[0], along[1]) < 1e-3) return circle(sight(toGround(pose, at, [0, 0, 0])), radius);
  return outline({ kind: "cylinder", center: at, axis, radius, length }, pose, sight);
}

const ORDER = { palm: 0, object: 1, phalanx: 2 };

/// How near the reader the middle of a body lies.
function depthOf(body, sight) {
  let sum = 0, count = 0;
  for (const shape of body.shapes ?? [])
    for (const p of shape.kind === "capsule" ? [shape.from, shape.to] : shape.points ?? [shape.center]) {
      sum += sight(toGround(body.pose.now, p, [0, 0, 0]))[2];
      ++count;
    }
  return count ? sum / count : 0;
}

const colour = (line) => setAttribute(line, "stroke", line.share < 0 ? "currentColor" : tensionCss(line.share));

/// options.textSize: height of the writing, in mm of a drawing as wide as a finger; options.live: follows the motion;
/// options.from: side, iso or palm.
export function makeSideView(holder, motion, scales, { textSize: wishedSize = 3.2, labelText = () => true, live = true, from = "side" } = {}) {
  const margin = 4;
  const hand = motion.fingers.length > 0;
  let sight, x, y, w, h, textSize;
  const root = svg("svg", { class: `side-view ${hand ? "hand" : ""}`, "aria-hidden": "true" });
  holder.append(root);
  function look(direction) {
    sight = sightOf(direction);
    const { low, high } = scales.within(sight);
    x = low[0] - margin; y = -high[1] - margin;
    w = high[0] - low[0] + 2 * margin; h = high[1] - low[1] + 2 * margin;
    // A hand has more to write. What moves stands in a wide frame, which a high drawing does not fill.
    textSize = !hand ? wishedSize : live ? 0.75 * wishedSize * Math.max(w, 1.64 * h) / 150 : wishedSize * w / 150;
    setAttribute(root, "viewBox", `${f(x)} ${f(y)} ${f(w)} ${f(h)}`);
    setAttribute(root, "font-size", f(textSize));
  }
  look(from);

  // What lies nearer covers what lies farther; of one finger all is in a plane, and the pads lie behind the solids.
  const solids = [];
  const solidsGroup = svg("g");
  root.append(solidsGroup);
  const byRole = motion.bodies.map((body) => body).sort((p, q) => (ORDER[p.role] ?? 0) - (ORDER[q.role] ?? 0));
  for (const pass of ["contact", "solid"])
    for (const body of byRole) for (const shape of body.shapes ?? []) {
      if ((body.role === "phalanx" ? shape.role ?? "solid" : "contact") !== pass) continue;
      const path = svg("path", { class: `shape ${body.role} ${body.role === "phalanx" ? pass : ""}` });
      solidsGroup.append(path);
      solids.push({ path, shape, body, pass });
    }
  function sortByDepth() {
    const depths = new Map(motion.bodies.map((body) => [body, body.role === "palm" ? -Infinity : depthOf(body, sight)]));
    const sorted = [...solids].sort((p, q) => depths.get(p.body) - depths.get(q.body) || (p.pass < q.pass ? -1 : p.pass > q.pass ? 1 : 0));
    if (sorted.some(({ path }, k) => solidsGroup.children[k] !== path)) solidsGroup.append(...sorted.map(({ path }) => path));
  }

  const pulleys = motion.pulleys.map((pulley) => {
    const disc = svg("path", { class: "pulley" });
    const mark = svg("line", { class: "pulley-mark" });
    root.append(disc, mark);
    return { pulley, disc, mark };
  });
  const cords = motion.cords.map((cord) => {
    const pieces = makePieces(cord);
    const group = svg("g", { class: `cord ${cord.kind}`, "stroke-width": f(Math.max(2 * (cord.radius || 0), 1.1)) });
    root.append(group);
    return { cord, pieces, group, lines: [] };
  });
  const piecesOf = (cord) => cords.find((one) => one.cord === cord).pieces;
  const rounds = [...motion.pins, ...motion.guides].map((pin) => {
    const disc = svg("path", { class: "pin" });
    root.append(disc);
    return { pin, disc };
  });
  const arrows = motion.arrows.map((arrow) => {
    const path = svg("path", { class: `arrow ${arrow.kind}` });
    root.append(path);
    return { arrow, path };
  });
  const { labels, update: updateLabels } = makeLabels(motion, scales, live ? undefined : 0.1);
  const texts = labels.map((label) => {
    const text = svg("text", { class: `tag-${label.kind}` });
    root.append(text);
    return text;
  });

  const at = [0, 0, 0], axis = [0, 0, 0];
  function update() {
    for (const { path, shape, body } of solids) setAttribute(path, "d", outline(shape, body.pose.now, sight));
    if (hand) sortByDepth();
    for (const { pulley, disc, mark } of pulleys) {
      const pose = motion.bodies[pulley.body]?.pose.now;
      if (!pose) continue;
      setAttribute(disc, "d", roller(pulley, pose, sight));
      sight(toGround(pose, pulley.at, at));
      sight(turn(pose, pulley.axis, axis));
      setAttribute(mark, "visibility", Math.abs(axis[2]) > 0.99 ? "visible" : "hidden");
      const angle = (pulley.angle.now[0] || 0) * Math.PI / 180 * (axis[2] < 0 ? -1 : 1);
      setAttribute(mark, "x1", f(at[0])); setAttribute(mark, "y1", f(-at[1]));
      setAttribute(mark, "x2", f(at[0] + pulley.radius * Math.cos(angle))); setAttribute(mark, "y2", f(-at[1] - pulley.radius * Math.sin(angle)));
    }
    for (const one of cords) {
      cutCord(one.cord, one.pieces);
      const d = one.pieces.data;
      for (let k = 0; k < one.pieces.count; ++k) {
        let line = one.lines[k];
        if (!line) { line = svg("line"); one.group.append(line); one.lines.push(line); }
        const p = k * PIECE;
        const start = sight([d[p], d[p + 1], d[p + 2]]), end = sight([d[p + 3], d[p + 4], d[p + 5]]);
        setAttribute(line, "x1", f(start[0])); setAttribute(line, "y1", f(-start[1]));
        setAttribute(line, "x2", f(end[0])); setAttribute(line, "y2", f(-end[1]));
        const slack = d[p + 6] < 0;
        setAttribute(line, "class", slack ? "slack" : "taut");
        line.share = slack ? -1 : d[p + 6] / scales.mostTension;
        colour(line);
        setAttribute(line, "visibility", "visible");
      }
      for (let k = one.pieces.count; k < one.lines.length; ++k) setAttribute(one.lines[k], "visibility", "hidden");
    }
    for (const { pin, disc } of rounds) {
      const pose = motion.bodies[pin.body]?.pose.now;
      if (!pose) continue;
      setAttribute(disc, "d", roller(pin, pose, sight));
    }
    for (const { arrow, path } of arrows) {
      const F = sight([...arrow.force.now]), p = sight([...arrow.point.now]);
      const size = Math.hypot(F[0], F[1]);
      if (!(size > 0.004 * scales.mostForce) || !(p[0] === p[0])) { setAttribute(path, "d", ""); continue; }
      const length = size * scales.mmPerNewton, head = Math.min(4, 0.6 * length);
      const ux = F[0] / size, uy = F[1] / size, tx = p[0] + ux * length, ty = p[1] + uy * length;
      const bx = tx - ux * head, by = ty - uy * head, half = 0.4 * head;
      setAttribute(path, "d", `M${f(p[0])} ${f(-p[1])}L${f(bx)} ${f(-by)}M${f(tx)} ${f(-ty)}L${f(bx - uy * half)} ${f(-by - ux * half)}L${f(bx + uy * half)} ${f(-by + ux * half)}Z`);
    }
    updateLabels(piecesOf);
    const writing = labelText() ? labels.filter((label) => label.shown) : [];
    for (const label of writing) {
      const p = sight([...label.at]);
      // Stays inside the picture.
      label.half = (hand ? 0.33 : 0.3) * textSize * label.text.length;
      label.x = Math.min(Math.max(p[0], x + label.half), x + w - label.half);
      label.y = -p[1] + 0.35 * textSize + (label.kind === "pin" ? -2.2 - 0.2 * textSize : label.kind === "slack" ? textSize : 0);
    }
    const kept = motion.crowded ? withRoom(writing, (label) => [label.x - label.half, label.y - textSize, label.x + label.half, label.y]) : new Set(writing);
    labels.forEach((label, k) => {
      const shown = kept.has(label);
      setAttribute(texts[k], "visibility", shown ? "visible" : "hidden");
      if (!shown) return;
      setText(texts[k], label.text);
      setAttribute(texts[k], "x", f(label.x));
      setAttribute(texts[k], "y", f(label.y));
    });
  }
  // A picture that stands still keeps its instant and changes only its colours.
  onTheme(live ? update : () => { for (const one of cords) one.lines.forEach(colour); });
  return {
    kind: "2d", root, update,
    look(direction) { look(direction); update(); }, invalidate() {}, zoomBy() {}, onCamera() {}, follow() {},
    pixelsPerMm: () => {
      const box = root.getBoundingClientRect();
      return Math.min(box.width / w, box.height / h);
    },
  };
}
