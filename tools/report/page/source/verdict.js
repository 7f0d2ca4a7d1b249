// What was asked, whether it holds and by how much, and the five numbers that matter.

import { el, name } from "./dom.js";
import { jump, mark, recordHeading, table } from "./sheet.js";
import { logBar } from "./log_bar.js";
import { seconds } from "./numbers.js";

const STATES = { good: "within the limit", bad: "beyond the limit", unknown: "not known", plain: "" };

function five(record, player) {
  return el("div", { class: "five" }, (record.headline ?? []).map((number) => el("div", { class: `number ${number.state}`, "data-headline": number.id },
    el("h4", {}, name(number.title)),
    el("p", { class: "value" }, el("span", { class: "figure" }, name(number.text)), number.unit && number.state !== "unknown" ? [" ", el("span", { class: "unit" }, number.unit)] : ""),
    el("p", { class: "state" }, mark(number.state), STATES[number.state] ? el("span", {}, STATES[number.state]) : null),
    el("p", { class: "threshold" }, name(number.threshold)),
    el("p", { class: "detail" }, name(number.detail)),
    el("p", { class: "sure" }, el("span", { class: "cell-title" }, "how sure"), name(number.sure)),
    Number.isFinite(number.time) ? jump(player, number.time, `at ${seconds(number.time, player.state.duration)}`) : null)));
}

function requirements(record, player) {
  const list = record.requirements ?? [];
  if (!list.length) return el("p", { class: "muted" }, "The scenario states no requirements.");
  return table(["", "requirement", "asked", "found", "margin (found against asked)", "at"], list.map((one) => el("tr", { class: one.met ? "met" : "missed" },
    el("td", { class: "nowrap" }, mark(one.met ? "good" : "bad"), one.met ? " met" : " not met"),
    el("th", { scope: "row" }, name(one.title)),
    el("td", {}, name(one.demand)),
    el("td", { class: "figure" }, name(one.value)),
    el("td", { class: "margin-cell" }, el("div", { class: "bar-line" },
      logBar(one.margin, { low: 0.5, high: 10 }), el("span", { class: "figure" }, name(one.margin_text)))),
    el("td", { class: "nowrap" }, Number.isFinite(one.time) ? jump(player, one.time, seconds(one.time, player.state.duration)) : "–"))), { class: "requirements", label: "requirements" });
}

export function verdict(sheet, data, player) {
  const { records } = data;
  const several = records.length > 1;
  const all = records.flatMap((record) => record.requirements ?? []);
  const missed = all.filter((one) => !one.met);
  const sum = !all.length ? "no requirement was stated"
    : missed.length === 0 ? `all ${all.length} requirements are met`
      : `${missed.length} of ${all.length} requirements ${missed.length === 1 ? "is" : "are"} not met`;
  const sameAsked = several && records.every((r) => JSON.stringify(r.asked) === JSON.stringify(records[0].asked));
  const asked = (record) => el("ol", { class: `asked ${(record.asked ?? []).length > 6 ? "many" : ""}` }, (record.asked ?? []).map((line) => el("li", {}, name(line))));

  const content = [
    sameAsked || !several ? [el("h4", { class: "sub first" }, several ? "What was asked, of each alike" : "What was asked"), asked(records[0])] : null,
    el("p", { class: `verdict ${missed.length ? "bad" : all.length ? "good" : ""}` }, all.length ? mark(missed.length ? "bad" : "good") : null, " ", sum[0].toUpperCase() + sum.slice(1) + "."),
  ];
  for (const record of records) {
    if (several) content.push(recordHeading(record));
    if (several && !sameAsked) content.push(el("h4", { class: "sub first" }, "What was asked"), asked(record));
    content.push(five(record, player), el("h4", { class: "sub" }, "Requirements"), requirements(record, player));
  }
  return sheet.section("verdict", "Verdict", content);
}
