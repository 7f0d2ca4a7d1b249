// Where the pictures are seen from: the way towards the reader, of which all are orthographic.

export const TOWARDS = { side: [0, 0, 1], iso: [0.75, 0.55, 1], palm: [0, -1, 0.0001], hand: [0.75, -1, -0.85] };

/// What turns a point, in place, to x right, y up and z towards the reader; the world's y stays upright.
export function sightOf(direction) {
  const size = Math.hypot(...TOWARDS[direction]);
  const [a, b, c] = TOWARDS[direction].map((v) => v / size);
  const flat = Math.hypot(a, c);
  const right = [c / flat, 0, -a / flat];
  const up = [b * right[2], c * right[0] - a * right[2], -b * right[0]];
  return (p) => {
    const [x, y, z] = p;
    p[0] = right[0] * x + right[2] * z;
    p[1] = up[0] * x + up[1] * y + up[2] * z;
    p[2] = a * x + b * y + c * z;
    return p;
  };
}
