// Scales that all records share, so that two pictures side by side can be compared by eye.

import { toGround } from "./motion.js";
import { roundBelow } from "./numbers.js";
import { ballsOf } from "./shapes.js";

/// The tips of all arrows of the run belong into the picture.
function growByTips({ point, force }, mmPerNewton, low, high) {
  for (let k = 0; k < force.data.length; ++k) {
    const tip = point.data[k] + force.data[k] * mmPerNewton * 1.08;
    if (tip < low[k % 3]) low[k % 3] = tip;
    if (tip > high[k % 3]) high[k % 3] = tip;
  }
}

/// Balls [x, y, z, radius] of everything that a hand shows during the run, at some forty instants: the corners of a room
/// that holds it all would leave much of an oblique picture empty.
function seenDuring(motion, mmPerNewton) {
  const balls = [];
  const rows = motion.times.length, stride = Math.max(1, Math.floor(rows / 40));
  for (let row = 0; row < rows; row += stride) {
    motion.at(motion.times[row]);
    for (const body of motion.bodies) for (const shape of body.shapes ?? [])
      for (const ball of ballsOf(shape)) balls.push([...toGround(body.pose.now, ball, [0, 0, 0]), ball[3]]);
    for (const pulley of motion.pulleys) {
      const pose = motion.bodies[pulley.body]?.pose.now;
      if (pose) balls.push([...toGround(pose, pulley.at, [0, 0, 0]), pulley.radius]);
    }
    for (const { points } of motion.cords) for (let k = 0; k + 2 < points.now.length; k += 3) balls.push([points.now[k], points.now[k + 1], points.now[k + 2], 1]);
    for (const { point, force } of motion.arrows) balls.push([0, 1, 2].map((c) => point.now[c] + 1.08 * mmPerNewton * force.now[c]).concat(0));
  }
  return balls.filter((ball) => ball.every(Number.isFinite));
}

export function sharedScales(motions) {
  let mostTension = 0, mostForce = 0;
  const low = [Infinity, Infinity, Infinity], high = [-Infinity, -Infinity, -Infinity];
  for (const motion of motions) {
    for (const cord of motion.cords) mostTension = Math.max(mostTension, cord.most_tension || 0);
    for (const arrow of motion.arrows) mostForce = Math.max(mostForce, arrow.most || 0);
    for (let c = 0; c < 3; ++c) {
      low[c] = Math.min(low[c], motion.box?.low?.[c] ?? -50);
      high[c] = Math.max(high[c], motion.box?.high?.[c] ?? 50);
    }
  }
  const extent = Math.hypot(high[0] - low[0], high[1] - low[1]);
  const mmPerNewton = mostForce > 0 ? roundBelow(0.26 * extent / mostForce) : 1;
  for (const motion of motions) for (const arrow of motion.arrows) growByTips(arrow, mmPerNewton, low, high);
  const room = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => [0, 1, 2].map((c) => ((k >> c) & 1 ? high[c] : low[c])).concat(0));
  const balls = motions.some((motion) => motion.fingers.length) ? motions.flatMap((motion) => seenDuring(motion, mmPerNewton)) : room;
  return {
    mostTension: mostTension || 1, mostForce, mmPerNewton,
    sampleForce: mostForce > 0 ? roundBelow(mostForce) : 0,
    low, high,
    centre: low.map((value, c) => 0.5 * (value + high[c])),
    /// How far everything reaches, as it is seen.
    within(sight) {
      const reach = { low: [Infinity, Infinity, Infinity], high: [-Infinity, -Infinity, -Infinity] };
      for (const [x, y, z, radius] of balls) {
        const p = sight([x, y, z]);
        for (let c = 0; c < 3; ++c) {
          reach.low[c] = Math.min(reach.low[c], p[c] - radius);
          reach.high[c] = Math.max(reach.high[c], p[c] + radius);
        }
      }
      return reach;
    },
  };
}
