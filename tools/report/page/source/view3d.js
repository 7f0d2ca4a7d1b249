// The finger in three dimensions. All views are orthographic, so that a length in the picture plane is to scale.

import * as THREE from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";
import { el, name, setText } from "./dom.js";
import { tensionColour } from "./colours.js";
import { toGround, turn } from "./motion.js";
import { cutCord, makePieces, PIECE } from "./cord_pieces.js";
import { makeLabels, withRoom } from "./annotations.js";
import { TOWARDS } from "./sights.js";
import { paint, onTheme } from "./theme.js";

const OUTLINE = 0.3;       // mm, the dark line around every solid
const THINNEST_CORD = 0.6; // mm, radius; thinner cords are drawn thicker than they are (the legend says so)

export function webglWorks() {
  try {
    const context = document.createElement("canvas").getContext("webgl2");
    context?.getExtension("WEBGL_lose_context")?.loseContext();
    return Boolean(context);
  } catch { return false; }
}

const along = (from, to) => new THREE.Quaternion().setFromUnitVectors(
  new THREE.Vector3(0, 1, 0), new THREE.Vector3(to[0] - from[0], to[1] - from[1], to[2] - from[2]).normalize());

/// One shape as a mesh geometry in its body's frame, grown outwards by `grow`.
function geometryOf(shape, grow) {
  let geometry;
  switch (shape.kind) {
    case "capsule": {
      const { from, to, radius } = shape;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
      geometry = new THREE.CapsuleGeometry(radius + grow, length, 12, 40);
      if (length > 0) geometry.applyQuaternion(along(from, to));
      geometry.translate((from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2);
      break;
    }
    case "sphere":
      geometry = new THREE.SphereGeometry(shape.radius + grow, 40, 24);
      geometry.translate(...shape.center);
      break;
    case "cylinder":
      geometry = new THREE.CylinderGeometry(shape.radius + grow, shape.radius + grow, shape.length + 2 * grow, 64);
      geometry.applyQuaternion(along([0, 0, 0], shape.axis));
      geometry.translate(...shape.center);
      break;
    case "box": {
      geometry = new THREE.BoxGeometry(...shape.size.map((s) => s + 2 * grow));
      const r = shape.rotation ?? [1, 0, 0, 0, 1, 0, 0, 0, 1];
      geometry.applyMatrix4(new THREE.Matrix4().set(
        r[0], r[1], r[2], shape.center[0], r[3], r[4], r[5], shape.center[1], r[6], r[7], r[8], shape.center[2], 0, 0, 0, 1));
      break;
    }
    case "hull": {
      const centre = [0, 1, 2].map((c) => shape.points.reduce((sum, p) => sum + p[c], 0) / shape.points.length);
      const corner = (index) => {
        const p = shape.points[index].map((v, c) => v - centre[c]);
        const size = Math.hypot(...p) || 1;
        return p.map((v, c) => centre[c] + v * (1 + grow / size));
      };
      geometry = new THREE.BufferGeometry();
      geometry.setAttribute("position", new THREE.Float32BufferAttribute(shape.faces.flatMap((face) => face.flatMap(corner)), 3));
      geometry.computeVertexNormals();
      break;
    }
    default: return null;
  }
  return geometry;
}

export function makeView3d(holder, motion, scales, { labelText, from = "side" }) {
  const renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true });
  renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
  const canvas = renderer.domElement;
  canvas.setAttribute("aria-hidden", "true");
  const overlay = el("div", { class: "labels", "aria-hidden": "true" });
  holder.append(canvas, overlay);

  const scene = new THREE.Scene();
  const camera = new THREE.OrthographicCamera(-1, 1, 1, -1, 0.1, 4000);
  const sky = new THREE.HemisphereLight(0xffffff, 0xc4c4c4, 2.5);
  const lamp = new THREE.DirectionalLight(0xffffff, 0.9);
  lamp.position.set(-0.4, 1, 0.8);
  scene.add(sky, lamp);

  const material = (colour, more) => {
    const made = new THREE.MeshLambertMaterial(more);
    made.userData.variable = colour;
    return made;
  };
  const flat = (colour, more) => {
    const made = new THREE.MeshBasicMaterial(more);
    made.userData.variable = colour;
    return made;
  };
  const materials = {
    phalanx: material("--phalanx"),
    pad: material("--pad"),
    palm: material("--palm"),
    object: material("--object", { transparent: true, opacity: 0.5, depthWrite: false }),
    outline: flat("--outline", { side: THREE.BackSide }),
    edge: new THREE.LineBasicMaterial(),
    metal: material("--metal", { depthTest: false, transparent: true }),
    ring: flat("--outline", { depthTest: false, transparent: true }),
    pulley: material("--pulley", { depthTest: false, transparent: true }),
    contact: flat("--force", { depthTest: false, transparent: true }),
    load: flat("--load", { depthTest: false, transparent: true }),
  };
  materials.edge.userData.variable = "--object-edge";

  // Solids, each with an outline: the same shape a little larger, of which only the far side is drawn.
  const groups = motion.bodies.map((body) => {
    const group = new THREE.Group();
    for (const shape of body.shapes ?? []) {
      const geometry = geometryOf(shape, 0);
      if (!geometry) continue;
      const which = body.role === "object" ? "object" : body.role === "palm" ? "palm" : shape.role === "contact" ? "pad" : "phalanx";
      group.add(new THREE.Mesh(geometry, materials[which]));
      if (which === "object") group.add(new THREE.LineSegments(new THREE.EdgesGeometry(geometry, 30), materials.edge));
      else group.add(new THREE.Mesh(geometryOf(shape, OUTLINE), materials.outline));
    }
    scene.add(group);
    return group;
  });

  // Pins, guides and pulleys are seen through the solids, as hidden parts are on a drawing.
  const fixedIn = (body, mesh, at, axis, order) => {
    mesh.position.set(...at);
    mesh.quaternion.copy(along([0, 0, 0], axis));
    mesh.renderOrder = order;
    (groups[body] ?? scene).add(mesh);
    return mesh;
  };
  const roller = (part, look, order) => {
    fixedIn(part.body, new THREE.Mesh(new THREE.CylinderGeometry(part.radius + 0.25, part.radius + 0.25, part.length, 32), materials.ring), part.at, part.axis, order);
    return fixedIn(part.body, new THREE.Mesh(new THREE.CylinderGeometry(part.radius, part.radius, part.length + 0.2, 32), look), part.at, part.axis, order + 1);
  };
  for (const pin of motion.pins) roller(pin, materials.metal, 10);
  for (const guide of motion.guides) roller(guide, materials.metal, 10);
  const turning = motion.pulleys.map((pulley) => {
    roller(pulley, materials.pulley, 6);
    const mark = new THREE.Group();
    const line = new THREE.Mesh(new THREE.BoxGeometry(pulley.radius, pulley.length + 0.4, 0.7), materials.ring);
    line.position.x = pulley.radius / 2;
    mark.add(line);
    line.renderOrder = 8;
    fixedIn(pulley.body, mark, pulley.at, pulley.axis, 8);
    return { mark, rest: mark.quaternion.clone(), angle: pulley.angle };
  });

  // Cords: a straight cylinder for each piece with a ball at each joint. Where a solid hides a cord it shows through, fainter.
  const rod = new THREE.CylinderGeometry(1, 1, 1, 12);
  const ball = new THREE.SphereGeometry(1, 12, 8);
  const cords = motion.cords.map((cord) => {
    const pieces = makePieces(cord);
    const most = Math.max(pieces.data.length / PIECE, 1);
    const instanced = (geometry, look, order) => {
      const mesh = new THREE.InstancedMesh(geometry, look, most);
      mesh.instanceColor = new THREE.InstancedBufferAttribute(new Float32Array(3 * most), 3);
      mesh.frustumCulled = false;
      mesh.renderOrder = order;
      scene.add(mesh);
      return mesh;
    };
    const seen = new THREE.MeshBasicMaterial();
    const hidden = new THREE.MeshBasicMaterial({ transparent: true, opacity: 0.8, depthFunc: THREE.GreaterDepth, depthWrite: false });
    return {
      cord, pieces, radius: Math.max(cord.radius || 0, THINNEST_CORD) * (cord.kind === "rubber" ? 1.15 : 1),
      rods: [instanced(rod, hidden, 2), instanced(rod, seen, 3)],
      balls: [instanced(ball, hidden, 2), instanced(ball, seen, 3)],
    };
  });
  const piecesOf = (cord) => cords.find((one) => one.cord === cord).pieces;

  const arrows = motion.arrows.map((arrow) => {
    const look = materials[arrow.kind];
    const shaft = new THREE.Mesh(new THREE.CylinderGeometry(0.55, 0.55, 1, 12), look);
    const head = new THREE.Mesh(new THREE.ConeGeometry(1.7, 4.2, 20), look);
    shaft.renderOrder = head.renderOrder = 20;
    scene.add(shaft, head);
    return { arrow, shaft, head };
  });

  const { labels, update: updateLabels } = makeLabels(motion, scales);
  const tags = labels.map((label) => {
    const tag = name(label.text, { class: `tag tag-${label.kind}` });
    overlay.append(tag);
    return tag;
  });

  // --- the camera
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = false;
  controls.zoomSpeed = 1.2;
  canvas.style.touchAction = "pan-y";   // one finger up or down scrolls the page, sideways turns the finger
  canvas.addEventListener("wheel", (event) => {
    if (!event.ctrlKey && !event.metaKey) event.stopImmediatePropagation();   // the page scrolls
  }, { capture: true });
  const distance = 4 * Math.hypot(...scales.high.map((v, c) => v - scales.low[c]));
  const target = new THREE.Vector3(...scales.centre);
  let width = 1, height = 1, fitted = 1, wanted = false;

  const corner = new THREE.Vector3();
  const inCamera = (p) => corner.set(...p).applyMatrix4(camera.matrixWorldInverse).toArray();
  /// Puts the middle of what is seen into the middle of the picture.
  function centre() {
    camera.updateMatrixWorld();
    const { low, high } = scales.within(inCamera);
    const shift = new THREE.Vector3((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, 0).applyQuaternion(camera.quaternion);
    camera.position.add(shift);
    controls.target.add(shift);
  }
  function fit() {
    camera.updateMatrixWorld();
    const { low, high } = scales.within(inCamera);
    const half = (c) => Math.max(1, Math.abs(low[c]), Math.abs(high[c]));
    fitted = Math.max(2 * half(0) / width, 2 * half(1) / height) * 1.05;
    frame();
  }
  function frame() {
    camera.left = -width * fitted / 2; camera.right = width * fitted / 2;
    camera.top = height * fitted / 2; camera.bottom = -height * fitted / 2;
    camera.updateProjectionMatrix();
    invalidate();
  }
  function look(direction) {
    camera.up.set(0, 1, 0);
    const [x, y, z] = TOWARDS[direction];
    controls.target.copy(target);
    camera.position.set(x, y, z).normalize().multiplyScalar(distance).add(target);
    camera.zoom = 1;
    camera.lookAt(target);
    centre();
    controls.update();
    fit();
  }

  const cameraListeners = [];
  controls.addEventListener("change", () => { invalidate(); for (const listener of cameraListeners) listener(camera, controls); });

  // --- drawing, only when something changed
  const up = new THREE.Vector3(0, 1, 0), direction = new THREE.Vector3();
  const matrix = new THREE.Matrix4(), turned = new THREE.Quaternion(), place = new THREE.Vector3(), size = new THREE.Vector3();
  const axisY = new THREE.Vector3(0, 1, 0), spin = new THREE.Quaternion(), rgb = [0, 0, 0], colour = new THREE.Color();
  const slackColour = new THREE.Color();

  function update() {
    motion.bodies.forEach((body, k) => {
      const p = body.pose.now;
      groups[k].position.set(p[0], p[1], p[2]);
      groups[k].quaternion.set(p[3], p[4], p[5], p[6]);
    });
    for (const one of turning) {
      spin.setFromAxisAngle(axisY, (one.angle.now[0] || 0) * Math.PI / 180);
      one.mark.quaternion.copy(one.rest).multiply(spin);
    }
    for (const { cord, pieces, radius, rods, balls } of cords) {
      cutCord(cord, pieces);
      const d = pieces.data;
      for (let k = 0; k < pieces.count; ++k) {
        const at = k * PIECE;
        direction.set(d[at + 3] - d[at], d[at + 4] - d[at + 1], d[at + 5] - d[at + 2]).normalize();
        turned.setFromUnitVectors(up, direction);
        place.set((d[at] + d[at + 3]) / 2, (d[at + 1] + d[at + 4]) / 2, (d[at + 2] + d[at + 5]) / 2);
        size.set(radius, d[at + 7], radius);
        matrix.compose(place, turned, size);
        if (d[at + 6] < 0) colour.copy(slackColour);
        else { tensionColour(d[at + 6] / scales.mostTension, rgb); colour.setRGB(rgb[0], rgb[1], rgb[2], THREE.SRGBColorSpace); }
        for (const mesh of rods) { mesh.setMatrixAt(k, matrix); mesh.setColorAt(k, colour); }
        place.set(d[at + 3], d[at + 4], d[at + 5]);
        size.set(radius, radius, radius);
        matrix.compose(place, turned, size);
        for (const mesh of balls) { mesh.setMatrixAt(k, matrix); mesh.setColorAt(k, colour); }
      }
      for (const mesh of [rods[0], rods[1], balls[0], balls[1]]) {
        mesh.count = pieces.count;
        mesh.instanceMatrix.needsUpdate = true;
        mesh.instanceColor.needsUpdate = true;
      }
    }
    for (const { arrow, shaft, head } of arrows) {
      const f = arrow.force.now, p = arrow.point.now;
      const force = Math.hypot(f[0], f[1], f[2]);
      const shown = force > 0.004 * scales.mostForce && p[0] === p[0];
      shaft.visible = head.visible = shown;
      if (!shown) continue;
      const length = force * scales.mmPerNewton, tip = Math.min(4.2, 0.6 * length);
      direction.set(f[0] / force, f[1] / force, f[2] / force);
      shaft.quaternion.setFromUnitVectors(up, direction);
      head.quaternion.copy(shaft.quaternion);
      shaft.position.set(p[0], p[1], p[2]).addScaledVector(direction, (length - tip) / 2);
      shaft.scale.set(1, Math.max(length - tip, 1e-3), 1);
      head.position.set(p[0], p[1], p[2]).addScaledVector(direction, length - tip / 2);
      head.scale.setScalar(tip / 4.2);
    }
    updateLabels(piecesOf);
    invalidate();
  }

  function placeLabels() {
    const writing = labelText() ? labels.filter((label) => label.shown) : [];
    for (const label of writing) {
      place.set(label.at[0], label.at[1], label.at[2]).project(camera);
      label.x = (place.x + 1) / 2 * width;
      label.y = (1 - place.y) / 2 * height;
    }
    const kept = motion.crowded ? withRoom(writing, ({ x, y, text }) => [x - 3.3 * text.length, y - 6, x + 3.3 * text.length, y + 6]) : new Set(writing);
    for (let k = 0; k < labels.length; ++k) {
      const label = labels[k], tag = tags[k], shown = kept.has(label);
      if (tag.hidden === shown) tag.hidden = !shown;
      if (!shown) continue;
      setText(tag, label.text);
      tag.style.transform = `translate(-50%, -50%) translate(${label.x.toFixed(1)}px, ${label.y.toFixed(1)}px)`;
    }
  }

  function draw() {
    wanted = false;
    renderer.render(scene, camera);
    placeLabels();
  }
  function invalidate() {
    if (wanted) return;
    wanted = true;
    requestAnimationFrame(draw);
  }

  function recolour() {
    for (const one of Object.values(materials)) one.color.set(paint(one.userData.variable));
    slackColour.set(paint("--slack"));
    update();
  }
  onTheme(recolour);

  const observer = new ResizeObserver(() => {
    const box = holder.getBoundingClientRect();
    if (box.width < 1 || box.height < 1) return;
    const zoom = camera.zoom;
    width = box.width; height = box.height;
    renderer.setSize(width, height, false);
    camera.zoom = 1;
    fit();
    camera.zoom = zoom;
    camera.updateProjectionMatrix();
  });
  observer.observe(holder);
  recolour();
  look(from);

  return {
    kind: "3d",
    update, look, invalidate,
    zoomBy(factor) { camera.zoom = Math.min(Math.max(camera.zoom * factor, 0.3), 20); camera.updateProjectionMatrix(); controls.update(); for (const l of cameraListeners) l(camera, controls); invalidate(); },
    pixelsPerMm: () => camera.zoom / fitted,
    onCamera(listener) { cameraListeners.push(listener); },
    follow(other, otherControls) {
      if (camera.position.equals(other.position) && camera.zoom === other.zoom && controls.target.equals(otherControls.target)) return;
      camera.position.copy(other.position);
      camera.quaternion.copy(other.quaternion);
      controls.target.copy(otherControls.target);
      camera.zoom = other.zoom;
      camera.updateProjectionMatrix();
      controls.update();
      invalidate();
    },
  };
}
