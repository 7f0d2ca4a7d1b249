// The sheet: numbered sections, and the small marks that say a state in a shape and a word.

import { el, name, svg } from "./dom.js";

export function makeSheet(main) {
  const index = [];
  return {
    index,
    section(id, title, ...content) {
      const number = index.length + 1;
      index.push({ id, title, number });
      const section = el("section", { id, "aria-labelledby": `${id}-title` },
        el("h2", { id: `${id}-title` }, el("span", { class: "balloon", "aria-hidden": "true" }, number), el("span", {}, title)),
        ...content);
      main.append(section);
      return section;
    },
  };
}

const MARKS = {
  good: ["M2 8.5 L6.5 13 L14 3.5", "open"],
  bad: ["M3 3 L13 13 M13 3 L3 13", "open"],
  unknown: ["M3 8 L13 8", "open"],
};

/// A check, a cross or a bar, for the eye alone: a word always stands beside it.
export function mark(state) {
  if (!MARKS[state]) return null;
  return svg("svg", { class: `mark ${state}`, viewBox: "0 0 16 16", width: 14, height: 14, "aria-hidden": "true" }, svg("path", { d: MARKS[state][0] }));
}

/// A button that takes the playback to a time.
export const jump = (player, time, text, more) => el("button", {
  type: "button", class: "jump", "data-jump": time, title: "show this instant", ...more,
  on: { click: () => { player.seek(time); } },
}, text);

export const label = (record, several) => several ? el("span", { class: "record-letter" }, record.label) : null;

export const table = (head, rows, attributes) => el("div", { class: "table-box", tabindex: 0, role: "group", "aria-label": attributes?.label ?? "table" },
  el("table", { class: attributes?.class },
    el("thead", {}, el("tr", {}, head.map((cell) => el("th", { scope: "col" }, cell)))),
    el("tbody", {}, rows)));

export const recordHeading = (record) => el("h3", { class: "record-heading" },
  el("span", { class: "record-letter" }, record.label), " ", name(record.name), el("span", { class: "muted" }, " · ", name(record.file)));
