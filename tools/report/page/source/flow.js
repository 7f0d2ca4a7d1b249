// Where the energy goes, as a stream: what comes from the supply flows down, every loss leaves to the right, its width
// to scale; what reaches the end is the arrow at the bottom.

import { el, name, svg } from "./dom.js";
import { digits } from "./numbers.js";
import { recordHeading } from "./sheet.js";

const WIDTH = 150;   // of the whole stream, px
const REACH = 34;    // of an arrow beyond the stream, px

const percent = (share) => (share >= 0.0995 ? `${(100 * share).toFixed(0)} %` : `${digits(100 * share, 2)} %`);

/// The band that turns off to the right: it leaves a stream `before` wide and is `width` wide.
function branch(before, width, kind) {
  const thick = Math.max(width, 1.2), x1 = before, x0 = before - thick;
  const outer = thick + 6, height = thick + 12, end = WIDTH + REACH - 14;
  // A quarter turn with an inner radius of 6, then straight to the head.
  const d = `M${x0} 0A${outer} ${outer} 0 0 0 ${x0 + outer} ${outer}H${end}v6l13 ${-(thick / 2 + 6)}l-13 ${-(thick / 2 + 6)}v6H${x1 + 6}A6 6 0 0 1 ${x1} 0Z`;
  return svg("svg", { class: `branch ${kind}`, width: WIDTH + REACH, height, viewBox: `0 0 ${WIDTH + REACH} ${height}`, "aria-hidden": "true" }, svg("path", { d }));
}

function parts(list, unit) {
  const seen = (list ?? []).filter((part) => part.share > 0).sort((a, b) => b.share - a.share);
  if (!seen.length) return null;
  return el("ul", { class: "parts" }, seen.map((part) => el("li", {}, name(part.name), " ", el("span", { class: "figure" }, percent(part.share)))));
}

function picture(losses) {
  const { unit, total } = losses;
  const row = (entry, before, kind) => {
    const width = Math.max(entry.share, 0) * WIDTH;
    // The text stands at the height of the arrow's middle.
    return el("div", { class: `flow-row ${kind}`, style: { "--least": `${Math.ceil(width) + 26}px`, "--drop": `${Math.max(width / 2 - 5, 0).toFixed(1)}px` } },
      el("div", { class: "stream-cell" },
        el("div", { class: "stream", style: { width: `${Math.max(before - width, 0).toFixed(2)}px` } }),
        branch(before, width, kind)),
      el("div", { class: "flow-text" },
        el("p", {}, el("b", {}, name(entry.name)), " ", el("span", { class: "figure" }, percent(entry.share)), " ", el("span", { class: "figure muted" }, `${digits(entry.value, 3)} ${unit}`)),
        parts(entry.parts, unit)));
  };
  const rows = [];
  let rest = WIDTH;
  for (const flow of losses.flows ?? []) {
    if (!(flow.share > 0)) continue;
    rows.push(row(flow, rest, "loss"));
    rest -= flow.share * WIDTH;
  }
  for (const flow of losses.useful ?? []) {
    if (!(flow.share > 0)) continue;
    rows.push(row(flow, rest, "useful"));
    rest -= flow.share * WIDTH;
  }
  if (Math.abs(rest) > 0.005 * WIDTH) rows.push(el("p", { class: "muted" }, `The parts named do not add up to the whole: ${percent(Math.abs(rest) / WIDTH)} ${rest > 0 ? "is missing" : "too much"}.`));
  return el("div", { class: "flow" },
    el("div", { class: "flow-row source" },
      el("div", { class: "stream-cell" }, el("div", { class: "stream", style: { width: `${WIDTH}px` } })),
      el("div", { class: "flow-text" }, el("p", {}, el("b", {}, "from the supply"), " ", el("span", { class: "figure" }, "100 %"), " ", el("span", { class: "figure muted" }, `${digits(total, 4)} ${unit}`)))),
    rows);
}

export function flow(sheet, data) {
  const { records } = data;
  const several = records.length > 1;
  if (!records.some((record) => record.losses)) return;
  sheet.section("losses", "Where the energy goes",
    el("div", { class: several ? "columns" : "" }, records.map((record) => el("div", {},
      several && recordHeading(record),
      record.losses ? [el("p", { class: "lead" }, name(record.losses.title)), picture(record.losses)]
        : el("p", { class: "muted" }, "This run draws nothing from a supply, so there is no energy to follow.")))));
}
