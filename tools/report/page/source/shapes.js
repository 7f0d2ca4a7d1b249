// What the outline of a shape is made of, from whichever side it is seen.

/// Points of a shape whose hull, seen from any side, is its outline; none for shapes made of balls.
export function cornersOf(shape) {
  if (shape.kind === "hull") return shape.points;
  if (shape.kind === "box") {
    const r = shape.rotation ?? [1, 0, 0, 0, 1, 0, 0, 0, 1];
    return [0, 1, 2, 3, 4, 5, 6, 7].map((k) => {
      const u = [k & 1 ? 0.5 : -0.5, k & 2 ? 0.5 : -0.5, k & 4 ? 0.5 : -0.5].map((s, c) => s * shape.size[c]);
      return [0, 1, 2].map((i) => shape.center[i] + r[3 * i] * u[0] + r[3 * i + 1] * u[1] + r[3 * i + 2] * u[2]);
    });
  }
  if (shape.kind === "cylinder") {
    const size = Math.hypot(...shape.axis), a = shape.axis.map((v) => v / size);
    const other = Math.abs(a[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0];
    const cross = (p, q) => [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]];
    let u = cross(a, other);
    const n = Math.hypot(...u);
    u = u.map((v) => v / n);
    const v = cross(a, u);
    const points = [];
    for (let k = 0; k < 48; ++k) for (const end of [-0.5, 0.5]) {
      const angle = 2 * Math.PI * k / 48;
      points.push([0, 1, 2].map((c) => shape.center[c] + end * shape.length * a[c] + shape.radius * (Math.cos(angle) * u[c] + Math.sin(angle) * v[c])));
    }
    return points;
  }
  return null;
}

/// Balls [x, y, z, radius] that fill the same room as a shape, for any side.
export const ballsOf = (shape) => shape.kind === "capsule" ? [[...shape.from, shape.radius], [...shape.to, shape.radius]]
  : shape.kind === "sphere" ? [[...shape.center, shape.radius]]
    : (cornersOf(shape) ?? []).map((p) => [...p, 0]);
