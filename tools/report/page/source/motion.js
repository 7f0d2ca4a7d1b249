// Where everything is at an instant: straight lines between the kept rows, into buffers made once.

import { floats, locate } from "./numbers.js";

function channel(array) {
  const data = floats(array);
  const width = array?.width ?? 1;
  return { data, width, now: new Float64Array(width) };
}

function mix({ data, width, now }, { row, part }) {
  const a = row * width, b = a + width;
  for (let k = 0; k < width; ++k) {
    const from = data[a + k], to = b + k < data.length ? data[b + k] : from;
    // No value on one side (a contact that just began): the other side's holds.
    now[k] = from !== from ? to : to !== to ? from : from + part * (to - from);
  }
}

function mixPose(pose, { row, part }) {
  mix(pose, { row, part });
  const { data, now } = pose;
  const a = row * 7 + 3, b = a + 7;
  if (b + 3 < data.length) {
    const dot = data[a] * data[b] + data[a + 1] * data[b + 1] + data[a + 2] * data[b + 2] + data[a + 3] * data[b + 3];
    if (dot < 0) for (let k = 0; k < 4; ++k) now[3 + k] = (1 - part) * data[a + k] - part * data[b + k];
  }
  const length = Math.hypot(now[3], now[4], now[5], now[6]) || 1;
  for (let k = 3; k < 7; ++k) now[k] /= length;
}

export function makeMotion(record) {
  const scene = record.scene ?? {};
  const times = floats(record.time);
  const place = { row: 0, part: 0 };
  const bodies = (scene.bodies ?? []).map((body) => ({ ...body, pose: channel(body.poses) }));
  const cords = (scene.cords ?? []).map((cord) => ({
    ...cord,
    points: channel(cord.points),
    tension: channel(cord.tension),
    slack: channel(cord.slack),
  }));
  const arrows = [
    ...(scene.contacts ?? []).map((force) => ({ ...force, kind: "contact" })),
    ...(scene.loads ?? []).map((force) => ({ ...force, kind: "load" })),
  ].map((force) => ({ ...force, point: channel(force.point), force: channel(force.force) }));
  const pulleys = (scene.pulleys ?? []).map((pulley) => ({ ...pulley, angle: channel(pulley.angle) }));
  const rest = [...cords.flatMap((c) => [c.points, c.tension, c.slack]), ...arrows.flatMap((a) => [a.point, a.force]),
    ...pulleys.map((p) => p.angle)];

  return {
    times, fingers: record.fingers ?? [], crowded: (record.shown_as ?? "finger") !== "finger", bodies, cords, arrows, pulleys, pins: scene.pins ?? [], guides: scene.guides ?? [], box: scene.box,
    at(time) {
      locate(times, time, place);
      for (const body of bodies) mixPose(body.pose, place);
      for (const one of rest) mix(one, place);
    },
  };
}

/// A point fixed in a body -> ground, into out.
export function toGround(pose, point, out) {
  const [px, py, pz, x, y, z, w] = pose;
  const [a, b, c] = point;
  const u = 2 * (y * c - z * b), v = 2 * (z * a - x * c), t = 2 * (x * b - y * a);
  out[0] = px + a + w * u + y * t - z * v;
  out[1] = py + b + w * v + z * u - x * t;
  out[2] = pz + c + w * t + x * v - y * u;
  return out;
}

/// A direction fixed in a body -> ground, into out.
export function turn(pose, direction, out) {
  toGround(pose, direction, out);
  out[0] -= pose[0]; out[1] -= pose[1]; out[2] -= pose[2];
  return out;
}
