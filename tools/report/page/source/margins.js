// Margins, smallest first: capacity against demand of every part, the instant and the load that governs, and what was
// not checked.

import { el, name } from "./dom.js";
import { jump, mark, table } from "./sheet.js";
import { logBar } from "./log_bar.js";
import { seconds } from "./numbers.js";

const FIRST = 12;
const PRINTED = 40;   // of a hand's, which would fill a score of pages

/// Rows of all records that check the same thing become one row.
function merged(records) {
  const rows = new Map();
  records.forEach((record, k) => {
    for (const value of record.margins?.values ?? []) {
      if (!rows.has(value.name)) rows.set(value.name, { check: value.check, least: Infinity, of: [] });
      const row = rows.get(value.name);
      row.of[k] = value;
      row.least = Math.min(row.least, value.ratio);
    }
  });
  return [...rows.values()].sort((a, b) => a.least - b.least);
}

/// Parts of a hand's fingers that are alike in all that is told of them become one row; what is told of them all goes
/// without the finger's name.
function alike(rows, fingers) {
  const found = new Map();
  for (const row of rows) {
    const finger = fingers.find((one) => row.of.some((value) => value?.name.includes(`${one}.`)));
    const bare = (text) => text.replaceAll(`${finger}.`, "");
    const plain = finger ? { ...JSON.parse(bare(JSON.stringify(row))), least: row.least } : row;
    const key = finger ? JSON.stringify([plain.check, plain.of.map((value) => value && { ...value, name: "", ratio: 0 })]) : row.check;
    if (!found.has(key)) found.set(key, { row, plain, of: [] });
    if (finger) found.get(key).of.push(finger);
  }
  return [...found.values()].map(({ row, plain, of }) => (of.length > 1 ? { ...plain, fingers: of } : row));
}

/// The least margin of each finger of a hand, and of its palm.
function byFinger(rows, fingers) {
  const least = new Map();
  for (const row of rows) {
    const whose = fingers.find((one) => row.of.some((value) => value?.name.includes(`${one}.`))) ?? "palm and what all share";
    if (!least.has(whose)) least.set(whose, row);
  }
  return [...fingers, "palm and what all share"].filter((whose) => least.has(whose)).map((whose) => ({ whose, row: least.get(whose) }));
}

/// Records that the same instant and load govern share a line.
function together(values) {
  const lines = [];
  const same = (a, b) => ["time", "load", "posture", "lost_at", "lost_load"].every((key) => a[key] === b[key]);
  values.forEach((value, j) => {
    if (!value) return;
    const line = lines.find((one) => same(one.value, value));
    if (line) line.of.push(j);
    else lines.push({ value, of: [j] });
  });
  return lines;
}

export function margins(sheet, data, player) {
  const { records } = data;
  const several = records.length > 1;
  const fingers = [...new Set(records.flatMap((record) => record.fingers ?? []))];
  const every = merged(records);
  const rows = fingers.length ? alike(every, fingers) : every;
  const { duration } = player.state;
  const missing = records.flatMap((record) => (record.margins?.not_checked ?? []).map((one) => ({ ...one, label: record.label })));
  const unique = (list, key) => [...new Map(list.map((one) => [key(one), one])).values()];
  const notChecked = unique(missing, (one) => one.check + "|" + (one.missing ?? []).join());
  const cautions = unique(records.flatMap((record) => record.margins?.cautions ?? []), (one) => one);
  const unloaded = unique(records.flatMap((record) => record.margins?.unloaded ?? []), (one) => one);

  const bars = (row) => el("td", { class: "margin-cell" }, row.of.map((value, j) => value && el("div", { class: "bar-line" },
    several && el("span", { class: "record-letter" }, records[j].label),
    logBar(value.ratio), el("span", { class: `figure ${value.ratio < 1 ? "short" : ""}` }, name(value.ratio_text)))));
  const tableRows = rows.map((row, k) => el("tr", { class: `${row.least < 1 ? "missed" : ""} ${k >= FIRST ? "later" : ""} ${fingers.length && k >= PRINTED ? "only-screen" : ""}` },
    el("td", { class: "figure number-cell" }, k + 1),
    el("th", { scope: "row" }, name(row.check), row.fingers && el("span", { class: "muted" }, ` of ${row.fingers.join(", ")}`)),
    bars(row),
    el("td", { class: "figure" }, row.of.map((value) => value && el("div", { class: "pair" }, name(value.capacity), el("span", { class: "muted" }, " / "), name(value.demand)))),
    el("td", {}, together(row.of).map(({ value, of }) => el("div", { class: "governs" },
      several && of.map((j) => [el("span", { class: "record-letter" }, records[j].label), " "]),
      Number.isFinite(value.time) && jump(player, value.time, seconds(value.time, duration)), " ",
      el("span", { class: "small" }, name(value.load), value.posture ? el("span", { class: "muted posture" }, " · ", name(value.posture)) : ""),
      value.lost_at !== null && Number.isFinite(value.lost_at) && el("div", { class: "lost" }, mark("bad"), " falls below 1 at ", jump(player, value.lost_at, seconds(value.lost_at, duration)), " ", el("span", { class: "small" }, name(value.lost_load ?? ""))))))));

  const box = rows.length ? table(["", "what could fail", "margin", "capacity / demand", "governed at, by"], tableRows, { class: "margins short", label: "margins" })
    : el("p", { class: "muted" }, "The record holds no margins.");
  const more = rows.length > FIRST && el("button", { type: "button", class: "more controls", "aria-expanded": "false", on: { click: () => {
    const short = box.querySelector("table").classList.toggle("short");
    more.textContent = short ? `Show all ${rows.length} margins` : `Show the ${FIRST} smallest`;
    more.setAttribute("aria-expanded", String(!short));
  } } }, `Show all ${rows.length} margins`);

  return sheet.section("margins", "Margins: what breaks first",
    el("p", { class: "lead" }, "How many times over each part would bear what the run asked of it, at the worst instant of the run. Below 1 it fails. Bars on a logarithmic axis from 0.5 to 20, starting at 1; smallest first."),
    fingers.length > 0 && every.length > 0 && [
      table(["smallest of", "margin", "what could fail"], byFinger(every, fingers).map(({ whose, row }) => el("tr", { class: row.least < 1 ? "missed" : "" },
        el("th", { scope: "row" }, name(whose)), bars(row), el("td", {}, name(row.check)))), { class: "by-finger", label: "smallest margin of each finger" }),
      el("h4", { class: "sub" }, "All margins, like parts of several fingers in one row")],
    box, more,
    fingers.length > 0 && rows.length > PRINTED && el("p", { class: "only-print small" }, `${rows.length - PRINTED} more rows, none below ${rows[PRINTED].of.find(Boolean).ratio_text}, are in the HTML file and in the record.`),
    el("div", { class: "not-checked" },
      el("h3", {}, mark("unknown"), " Not checked"),
      notChecked.length
        ? [el("p", {}, `${notChecked.length === 1 ? "This check was" : `These ${notChecked.length} checks were`} not made, because the model lacks the data. Nothing is known about them: they are not safe, they are unknown.`),
          el("ul", {}, notChecked.map((one) => el("li", {}, name(one.check), one.missing?.length ? el("span", { class: "muted" }, " — needs ", one.missing.map((text, k) => [k ? ", " : "", name(text)])) : "")))]
        : el("p", {}, rows.length ? "Every check that the program knows of had the data it needs. Failures that it does not know of are not covered." : "No part was checked in this record.")),
    unloaded.length > 0 && el("details", {}, el("summary", {}, `Never loaded in this run (${unloaded.length})`), el("p", { class: "small" }, unloaded.map((text, k) => [k ? " · " : "", name(text)]))),
    cautions.length > 0 && el("div", { class: "caution-list" }, el("h3", {}, "Cautions about the margins"), el("ul", {}, cautions.map((text) => el("li", {}, name(text))))));
}
