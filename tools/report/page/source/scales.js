// Scales that all records share, so that two pictures side by side can be compared by eye.

import { roundBelow } from "./numbers.js";

/// The tips of all arrows of the run belong into the picture.
function growByTips({ point, force }, mmPerNewton, low, high) {
  for (let k = 0; k < force.data.length; ++k) {
    const tip = point.data[k] + force.data[k] * mmPerNewton * 1.08;
    if (tip < low[k % 3]) low[k % 3] = tip;
    if (tip > high[k % 3]) high[k % 3] = tip;
  }
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
  return {
    mostTension: mostTension || 1, mostForce, mmPerNewton,
    sampleForce: mostForce > 0 ? roundBelow(mostForce) : 0,
    low, high,
    centre: low.map((value, c) => 0.5 * (value + high[c])),
    /// The same room as it is seen from elsewhere.
    within(sight) {
      const seen = { low: [Infinity, Infinity, Infinity], high: [-Infinity, -Infinity, -Infinity] };
      for (let k = 0; k < 8; ++k) {
        const corner = sight([0, 1, 2].map((c) => ((k >> c) & 1 ? high[c] : low[c])));
        for (let c = 0; c < 3; ++c) {
          seen.low[c] = Math.min(seen.low[c], corner[c]);
          seen.high[c] = Math.max(seen.high[c], corner[c]);
        }
      }
      return seen;
    },
  };
}
