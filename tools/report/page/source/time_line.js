// The time line: a slider with the moments of the run above it. Labels take the lowest free lane; where none is free
// the moment keeps its mark, and its text in the list of events.

import { el, name, setText } from "./dom.js";
import { seconds } from "./numbers.js";

const LANES = 4;
const isFault = (event) => event.kind === "fault";

export function timeLine(data, player, { onKey }) {
  const { records } = data;
  const several = records.length > 1;
  const { duration } = player.state;
  const events = merged(records, duration);
  const share = (time) => duration > 0 ? time / duration : 0;

  const lanes = el("div", { class: "lanes" });
  const marks = el("div", { class: "event-marks" });
  const slider = el("input", {
    type: "range", min: 0, max: duration, step: "any", value: 0, class: "scrub", "aria-label": "time of the run",
    on: { input: () => { player.seek(slider.valueAsNumber); }, keydown: onKey },
  });
  const box = el("div", { class: "time-line" }, lanes, el("div", { class: "track" }, marks, slider));

  const text = (event) => `${several ? `${event.letters}: ` : ""}${event.text}`;
  const go = (event) => () => { player.seek(event.time); };
  const labelled = events.filter((event) => event.weight >= 3).sort((a, b) => a.time - b.time);
  const buttons = labelled.map((event) => el("button", {
    type: "button", class: `event ${isFault(event) ? "fault" : ""}`, "data-jump": event.time, title: `${text(event)}, ${seconds(event.time, duration)}`, on: { click: go(event) },
  }, name(text(event))));
  lanes.append(...buttons);
  for (const event of events.filter((one) => one.weight >= 2))
    marks.append(el("span", { class: `event-mark weight-${event.weight} ${isFault(event) ? "fault" : ""}`, style: { left: `${100 * share(event.time)}%` } }));

  /// Gives each label its lane; again whenever the width changes.
  function lay() {
    const width = lanes.clientWidth;
    if (!width) return;
    const lanesHere = width < 500 ? 3 : LANES;
    // From the last to the first: an earlier label stands above later ones, so that no leader crosses a text.
    const takenFrom = new Array(lanesHere).fill(Infinity);
    const leaders = [];
    for (let k = buttons.length - 1; k >= 0; --k) {
      const button = buttons[k];
      button.hidden = false;
      const size = button.offsetWidth;
      // The leader stands at the left end of the label, or at its right end near the end of the run.
      const x = share(labelled[k].time) * width;
      const flip = x + size > width;
      const left = flip ? Math.max(x - size, 0) : x;
      const lane = takenFrom.findIndex((taken, floor) => left + size + 4 <= taken && leaders.every((one) => one.lane <= floor || one.x < left || one.x > left + size));
      button.hidden = lane < 0;
      if (lane < 0) continue;
      takenFrom[lane] = left;
      leaders.push({ lane, x });
      button.classList.toggle("flip", flip);
      button.style.left = `${left}px`;
      button.style.bottom = `${lane * 22}px`;
      button.style.setProperty("--leader", `${lane * 22 + 6}px`);
    }
    const used = takenFrom.filter((taken) => taken < Infinity).length;
    lanes.style.height = `${used * 22}px`;
  }
  new ResizeObserver(lay).observe(lanes);

  const important = labelled.map((event) => event.time);
  player.listen(({ time }) => {
    slider.value = time;
    const last = labelled.findLast((event) => event.time <= time + 1e-9);
    slider.setAttribute("aria-valuetext", `${seconds(time, duration)}${last ? `, after ${text(last)}` : ""}`);
  });

  return {
    box, slider, labelled, text,
    next: () => important.find((time) => time > player.state.time + 1e-6),
    previous: () => important.findLast((time) => time < player.state.time - 1e-6),
  };
}

/// Events of all records; what happens in several at nearly the same time is one event.
function merged(records, duration) {
  const events = [];
  for (const record of records) for (const event of record.events ?? []) {
    if (event.weight < 2) continue;
    const same = events.find((one) => one.text === event.text && !one.letters.includes(record.label) && Math.abs(one.time - event.time) < 0.005 * duration);
    if (same) { same.letters += ` ${record.label}`; same.weight = Math.max(same.weight, event.weight); }
    else events.push({ ...event, letters: record.label });
  }
  return events;
}

/// Every event in words, for those who want them all.
export function eventList(data, player) {
  const { records } = data;
  const { duration } = player.state;
  return records.map((record) => {
    const list = [...(record.events ?? [])].sort((a, b) => a.time - b.time);
    if (!list.length) return null;
    const most = 400;   // a chattering run has thousands; the record holds them all
    const shown = list.length > most ? list.filter((event) => event.weight > 1).slice(0, most) : list;
    return el("details", { class: "events" },
      el("summary", {}, records.length > 1 ? `Events of ${record.label}` : "All events", ` (${list.length}${shown.length < list.length ? `, the ${shown.length} main ones shown` : ""})`),
      el("ul", {}, shown.map((event) => el("li", {},
        el("button", { type: "button", class: "jump", "data-jump": event.time, on: { click: () => { player.seek(event.time); } } }, seconds(event.time, duration)),
        " ", name(event.text)))));
  });
}
