// The finger in motion: pictures, controls, legend.

import { el, name, setText, svg } from "./dom.js";
import { digits, roundBelow, seconds } from "./numbers.js";
import { tensionGradient } from "./colours.js";
import { onTheme } from "./theme.js";
import { makeView3d, webglWorks } from "./view3d.js";
import { makeSideView } from "./side_view.js";
import { eventList, timeLine } from "./time_line.js";
import { keys } from "./keys.js";

const SPEEDS = [0.02, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 60];

/// The speed at which the run takes about eight seconds to watch.
const fittingSpeed = (duration) => SPEEDS.reduce((best, speed) =>
  Math.abs(Math.log(duration / speed / 8)) < Math.abs(Math.log(duration / best / 8)) ? speed : best, 1);

/// What the page calls what moves: "finger", "fingers" or "hand".
const shownAs = (records) => records.map((record) => record.shown_as ?? "finger").reduce((a, b) => (a === b ? a : "fingers"));

function legend(scales, hasSlack, hasLoads, what) {
  const bar = el("span", { class: "tension-bar" });
  onTheme(() => { bar.style.background = tensionGradient(); });
  bar.style.background = tensionGradient();
  const arrow = (kind) => svg("svg", { class: "arrow-sample", viewBox: "0 -5 34 10", width: 34, height: 10 }, svg("path", { class: `arrow ${kind}`, d: "M0 0H26M34 0L25 -4L25 4Z" }));
  return el("div", { class: "legend" },
    el("div", { class: "legend-tension" }, el("span", { class: "cell-title" }, "cord tension"), bar,
      el("span", { class: "tension-ends" }, el("span", {}, "0"), el("span", {}, digits(scales.mostTension / 2, 3)), el("span", {}, `${digits(scales.mostTension, 3)} N`))),
    el("ul", {},
      hasSlack && el("li", {}, svg("svg", { class: "slack-sample", viewBox: "0 0 34 10", width: 34, height: 10 }, svg("path", { d: "M0 2Q17 14 34 2" })), "slack cord: sag shows the loose length"),
      scales.mostForce > 0 && el("li", {}, arrow("contact"), `force on the ${what}, ${digits(scales.mmPerNewton, 1)}\u00a0mm\u00a0per\u00a0N`),
      hasLoads && el("li", {}, arrow("load"), "load from outside, same scale"),
      el("li", {}, el("span", { class: "swatch pad" }), "pad that touches"),
      el("li", {}, el("span", { class: "swatch pulley" }), "pulley, mark turns with it"),
      el("li", { class: "muted" }, "All to scale except thin cords, drawn at least 1.2 mm thick")));
}

export function stage(sheet, data, motions, scales, player) {
  const { records } = data;
  const several = records.length > 1;
  const { duration } = player.state;
  let showNames = true;
  const three = webglWorks();
  const what = shownAs(records);
  const verb = what === "fingers" ? "are" : "is";
  // The fingers of a hand cover each other from the side.
  const from = what === "hand" ? "hand" : "side";
  const views = [];

  const pictures = el("div", { class: `pictures count-${Math.min(records.length, 3)}` });
  records.forEach((record, k) => {
    const holder = el("div", { class: "picture-holder" });
    const scale = el("div", { class: "scale-bar", "aria-hidden": "true" }, el("span", {}), el("b", {}));
    const picture = el("figure", {
      class: "picture", tabindex: 0, role: "group", "data-view": three ? "3d" : "2d",
      "aria-label": `${several ? `${record.label}: ` : ""}the ${what} in motion; space plays, arrow keys step, Home and End go to the ends`,
    }, holder, scale,
      several && el("figcaption", { class: "picture-name" }, el("span", { class: "record-letter" }, record.label), " ", name(record.name)),
      el("span", { class: "picture-state", "aria-hidden": "true" }));
    pictures.append(picture);
    const options = { labelText: () => showNames, from };
    let view = null;
    if (three) {
      try { view = makeView3d(holder, motions[k], scales, options); } catch (error) { holder.textContent = ""; }
    }
    view ??= makeSideView(holder, motions[k], scales, options);
    picture.dataset.view = view.kind;
    views.push({ view, motion: motions[k], picture, scale, end: motions[k].times.at(-1) ?? 0 });
  });

  // One camera for all pictures.
  for (const { view } of views) view.onCamera((camera, controls) => {
    for (const other of views) if (other.view !== view) other.view.follow(camera, controls);
    drawScaleBars();
  });
  function drawScaleBars() {
    for (const { view, scale } of views) {
      const perMm = view.pixelsPerMm();
      if (!(perMm > 0) || !Number.isFinite(perMm)) continue;
      const mm = roundBelow(110 / perMm);
      scale.firstChild.style.width = `${(mm * perMm).toFixed(1)}px`;
      setText(scale.lastChild, `${mm} mm`);
    }
  }

  const button = (id, text, title, click, more) => el("button", { type: "button", id, title, "aria-label": title, on: { click }, ...more }, text);
  const icon = (d) => svg("svg", { viewBox: "0 0 16 16", width: 16, height: 16, "aria-hidden": "true" }, svg("path", { d }));
  const PLAY = "M4 2L14 8L4 14Z", PAUSE = "M3 2H7V14H3ZM9 2H13V14H9Z";
  const playIcon = icon(PLAY);
  const playWord = el("span", {}, "Play");
  const play = el("button", { type: "button", id: "play", class: "play", on: { click: () => player.toggle() } }, playIcon, playWord);

  const onKey = keys(player, () => line);
  const line = timeLine(data, player, { onKey });
  const jumpTo = (time) => { if (time !== undefined) { player.seek(time); } };
  const speed = el("select", { id: "speed", "aria-label": "speed of the playback", on: { change: () => player.setSpeed(Number(speed.value)) } },
    SPEEDS.filter((s) => duration / s > 0.7 && duration / s < 600 || (s >= 0.1 && s <= 2)).map((s) => el("option", { value: s }, s === 1 ? "real time" : s < 1 ? `${s}× slow` : `${s}× fast`)));
  player.setSpeed(fittingSpeed(duration));
  speed.value = String(player.state.speed);
  const loop = el("input", { type: "checkbox", id: "loop", on: { change: () => player.setLoop(loop.checked) } });
  const clock = el("output", { class: "clock", "aria-live": "off" });
  const names = el("input", { type: "checkbox", id: "names", checked: true, on: { change: () => { showNames = names.checked; refresh(); } } });

  const looks = [["side", "Side"], [what === "hand" ? "hand" : "iso", "Oblique"], ["palm", "Palm"]].map(([id, text]) =>
    el("button", { type: "button", class: "look", "data-look": id, "aria-pressed": String(id === from), on: { click: () => {
      views[0].view.look(id);
      for (const { view } of views.slice(1)) view.look(id);
      for (const one of looks) one.setAttribute("aria-pressed", String(one.dataset.look === id));
      drawScaleBars();
    } } }, text));
  const viewTools = three
    ? el("div", { class: "view-tools controls", role: "group", "aria-label": "view" }, looks,
      button("closer", "+", "closer", () => { views[0].view.zoomBy(1.25); }), button("farther", "−", "farther", () => { views[0].view.zoomBy(0.8); }),
      el("label", {}, names, " names"),
      el("span", { class: "hint" }, "drag to turn, Ctrl + wheel to zoom"))
    : el("div", { class: "view-tools controls", role: "group", "aria-label": "view" }, what === "hand" && looks, el("label", {}, names, " names"),
      el("span", { class: "hint no-webgl" }, what === "hand" ? "This browser has no WebGL, so the hand is drawn as flat outlines." : `This browser has no WebGL, so the ${what} ${verb} drawn from the side only.`));

  const controls = el("div", { class: "transport controls" },
    el("div", { class: "transport-buttons" },
      play,
      button("to-previous", icon("M3 2H5V14H3ZM14 2L6 8L14 14Z"), "to the event before", () => jumpTo(line.previous() ?? 0)),
      button("step-back", icon("M12 2L4 8L12 14Z"), "one row of the record back", () => player.step(-1)),
      button("step-on", icon("M4 2L12 8L4 14Z"), "one row of the record on", () => player.step(1)),
      button("to-next", icon("M2 2L10 8L2 14ZM11 2H13V14H11Z"), "to the next event", () => jumpTo(line.next() ?? duration)),
      clock,
      el("label", { class: "speed" }, speed),
      el("label", {}, loop, " repeat")),
    line.box);

  function refresh() {
    const { time } = player.state;
    for (const { view, motion, picture, end } of views) {
      motion.at(time);
      view.update();
      setText(picture.querySelector(".picture-state"), time > end + 1e-9 ? `ended at ${seconds(end, duration)}` : "");
    }
  }
  player.listen((state) => {
    refresh();
    const now = line.labelled.findLast((event) => event.time <= state.time + 1e-9);
    setText(clock, seconds(state.time, duration));
    clock.title = now ? `after: ${line.text(now)}` : "";
    setText(playWord, state.playing ? "Pause" : "Play");
    playIcon.firstChild.setAttribute("d", state.playing ? PAUSE : PLAY);
    const main = document.getElementById("review");
    main.dataset.time = state.time.toFixed(6);
    main.dataset.playing = String(state.playing);
  });
  new ResizeObserver(drawScaleBars).observe(pictures);

  const hasSlack = records.some((record) => (record.scene?.cords ?? []).length > 0);
  const hasLoads = motions.some((motion) => motion.arrows.some((arrow) => arrow.kind === "load"));
  const section = sheet.section("motion", `The ${what} in motion`, viewTools,
    el("div", { class: `stage-body ${several ? "several" : ""}` }, pictures, legend(scales, hasSlack, hasLoads, what)),
    instants(records, motions, scales, player), eventList(data, player));
  section.addEventListener("keydown", onKey);
  requestAnimationFrame(drawScaleBars);
  return { section, controls, onKey };
}

/// The instants that matter as small pictures; they are what is printed of the motion.
function instants(records, motions, scales, player) {
  return records.map((record, k) => {
    const list = record.instants ?? [];
    if (!list.length) return null;
    const strip = el("div", { class: "instants" }, list.map((instant) => {
      const box = el("button", {
        type: "button", class: "instant", "data-jump": instant.time,
        on: { click: () => { player.seek(instant.time); } },
      });
      const holder = el("span", { class: "instant-picture" });
      box.append(holder, el("span", { class: "instant-text" }, el("b", {}, seconds(instant.time, player.state.duration)), " ", name(instant.what)));
      motions[k].at(instant.time);
      makeSideView(holder, motions[k], scales, { textSize: 7.5, live: false, from: motions[k].fingers.length ? "hand" : "side" }).update();
      return box;
    }));
    motions[k].at(player.state.time);   // what is drawn anew next is the present again
    return [el("h4", { class: "sub" }, records.length > 1 ? `Key instants of ${record.label}` : "Key instants"), strip];
  });
}
