// What is written beside the moving finger: pins, forces, slack. One list of label slots made once; a renderer sets
// their places. `update` fills texts and positions from the motion's present instant.

import { digits } from "./numbers.js";
import { toGround } from "./motion.js";

/// least: the smallest force worth a label, as a share of the largest.
export function makeLabels(motion, scales, least = 0.004) {
  const labels = [];
  for (const pin of motion.pins) labels.push({ kind: "pin", at: [0, 0, 0], text: pin.joint, shown: true, source: pin });
  for (const arrow of motion.arrows) labels.push({ kind: arrow.kind, at: [0, 0, 0], text: "", shown: false, source: arrow });
  for (const cord of motion.cords) labels.push({ kind: "slack", at: [0, 0, 0], text: "", shown: false, source: cord });

  function update(piecesOf) {
    for (const label of labels) {
      const { source } = label;
      if (label.kind === "pin") {
        const body = motion.bodies[source.body];
        if (body) toGround(body.pose.now, source.at, label.at);
      } else if (label.kind === "slack") {
        const slack = source.slack.now[0] || 0;
        const pieces = piecesOf(source);
        label.shown = slack > 0.02;
        if (!label.shown) continue;
        label.text = `${source.name}: ${digits(slack, 2)} mm slack`;
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
      }
    }
  }
  return { labels, update };
}
