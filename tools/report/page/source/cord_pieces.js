// A cord as it is drawn: straight pieces where it is taut; where it is slack a sagging, dashed line that is longer
// than the straight one by the slack. The sag shows how much cord is loose, not where gravity would put it.

const DASHES = 5;
const STRIDE = 8;   // x y z of both ends, tension (-1: slack), length

export const makePieces = (cord) => {
  const segments = Math.max(cord.points.width / 3 - 1, 0);
  return { data: new Float64Array(segments * DASHES * STRIDE), count: 0, slackAt: -1, slackPoint: [0, 0, 0] };
};
export const PIECE = STRIDE;

export function cutCord(cord, pieces) {
  const p = cord.points.now;
  const segments = p.length / 3 - 1;
  const slack = cord.slack.now[0] || 0;
  const faint = 2e-3 * (cord.most_tension || 1);
  const tensionOf = (k) => cord.tension.now[cord.span_of?.[k] ?? 0] ?? 0;
  const lengthOf = (k) => Math.hypot(p[3 * k + 3] - p[3 * k], p[3 * k + 4] - p[3 * k + 1], p[3 * k + 5] - p[3 * k + 2]);

  let loose = 0, longest = 0;
  pieces.slackAt = -1;
  if (slack > 0.02) {
    for (let k = 0; k < segments; ++k) if (tensionOf(k) < faint) {
      const length = lengthOf(k);
      loose += length;
      if (length > longest) { longest = length; pieces.slackAt = k; }
    }
  }

  let n = 0;
  const add = (x1, y1, z1, x2, y2, z2, tension) => {
    const at = n++ * STRIDE, d = pieces.data;
    d[at] = x1; d[at + 1] = y1; d[at + 2] = z1; d[at + 3] = x2; d[at + 4] = y2; d[at + 5] = z2;
    d[at + 6] = tension; d[at + 7] = Math.hypot(x2 - x1, y2 - y1, z2 - z1);
  };
  for (let k = 0; k < segments; ++k) {
    const at = 3 * k, tension = tensionOf(k);
    if (!(p[at] === p[at]) || !(p[at + 3] === p[at + 3])) continue;
    if (!(loose > 0 && tension < faint)) {
      add(p[at], p[at + 1], p[at + 2], p[at + 3], p[at + 4], p[at + 5], tension);
      continue;
    }
    // A flat arc of sag f over length l is longer than l by 8 f² / 3 l.
    const length = lengthOf(k);
    const sag = Math.sqrt(3 / 8 * length * slack * length / loose);
    if (k === pieces.slackAt) for (let c = 0; c < 3; ++c) pieces.slackPoint[c] = 0.5 * (p[at + c] + p[at + 3 + c]) - (c === 1 ? sag : 0);
    for (let dash = 0; dash < DASHES; ++dash) {
      const s = dash / DASHES, e = (dash + 0.6) / DASHES;
      const drop = (u) => sag * 4 * u * (1 - u);
      const mid = (u, c) => p[at + c] + u * (p[at + 3 + c] - p[at + c]);
      add(mid(s, 0), mid(s, 1) - drop(s), mid(s, 2), mid(e, 0), mid(e, 1) - drop(e), mid(e, 2), -1);
    }
  }
  pieces.count = n;
}
