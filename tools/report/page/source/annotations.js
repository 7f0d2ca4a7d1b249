// What is written beside the moving finger: pins, forces, slack; of a hand the fingers' names in place of the pins'. One
// list of label slots made once; a renderer sets their places. `update` fills texts and positions from the motion's
// present instant.

import { digits } from "./numbers.js";
import { toGround } from "./motion.js";

/// The outermost body of each finger, and the place on it that is farthest from its pin.
function fingertips(motion) {
  return motion.fingers.map((finger) => {
    const body = motion.bodies.findLastIndex((one) => one.role === "phalanx" && one.name.startsWith(`${finger}.`));
    const ends = (motion.bodies[body]?.shapes ?? []).flatMap((shape) => (shape.kind === "capsule" ? [shape.from, shape.to] : shape.points ?? [shape.center]));
    return { text: finger, body, at: ends.reduce((far, end) => (Math.hypot(...end) > Math.hypot(...far) ? end : far), [0, 0, 0]) };
  }).filter(({ body }) => body >= 0);
}

const RANK = { finger: 3, load: 2, contact: 1, pin: 0.5, slack: 0 };

/// Of the many labels of several fingers those that would cover a weightier one are left out.
/// @param labels  in sight; boxOf: label -> [left, top, right, bottom]
export function withRoom(labels, boxOf) {
  const taken = [];
  const kept = new Set();
  for (const label of [...labels].sort((a, b) => RANK[b.kind] - RANK[a.kind] || (b.weight ?? 0) - (a.weight ?? 0))) {
    const box = boxOf(label);
    if (taken.some((other) => box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3])) continue;
    taken.push(box);
    kept.add(label);
  }
  return kept;
}

/// least: the smallest force worth a label, as a share of the largest.
export function makeLabels(motion, scales, least = 0.004) {
  const labels = [];
  if (motion.fingers.length) for (const { text, body, at } of fingertips(motion)) labels.push({ kind: "finger", at: [0, 0, 0], text, shown: true, source: { body, at } });
  else for (const pin of motion.pins) labels.push({ kind: "pin", at: [0, 0, 0], text: pin.joint, shown: true, source: pin });
  for (const arrow of motion.arrows) labels.push({ kind: arrow.kind, at: [0, 0, 0], text: "", shown: false, source: arrow });
  for (const cord of motion.cords) labels.push({ kind: "slack", at: [0, 0, 0], text: "", shown: false, source: cord });

  function update(piecesOf) {
    for (const label of labels) {
      const { source } = label;
      if (label.kind === "pin" || label.kind === "finger") {
        const body = motion.bodies[source.body];
        if (body) toGround(body.pose.now, source.at, label.at);
      } else if (label.kind === "slack") {
        const slack = source.slack.now[0] || 0;
        const pieces = piecesOf(source);
        label.shown = slack > 0.02;
        if (!label.shown) continue;
        label.text = motion.fingers.length ? `${digits(slack, 2)} mm slack` : `${source.name}: ${digits(slack, 2)} mm slack`;
        if (pieces.slackAt >= 0) for (let c = 0; c < 3; ++c) label.at[c] = pieces.slackPoint[c];
        else for (let c = 0; c < 3; ++c) label.at[c] = source.points.now[c];
      } else {
        const f = source.force.now, p = source.point.now;
        const size = Math.hypot(f[0], f[1], f[2]);
        label.shown = size > least * scales.mostForce;
        if (!label.shown) continue;
        // A little beyond the tip, so that the text does not cover the head.
        const reach = scales.mmPerNewton + 3.5 / size;
        for (let c = 0; c < 3; ++c) label.at[c] = p[c] + f[c] * reach;
        label.text = `${digits(size, 2)} N`;
        label.weight = size / scales.mostForce;
      }
    }
  }
  return { labels, update };
}
