// A study: what was asked and varied, what the table says, the best design beside the one as drawn, and every design.

import { el, name } from "./dom.js";
import { mark, table } from "./sheet.js";
import { digits, tidy } from "./numbers.js";
import { designs, tableOf } from "./designs.js";
import { studyMaps } from "./study_map.js";
import { bars, effectChart, indexChart, progressChart, spreadChart, yieldChart } from "./study_charts.js";

const ROLE = { key: "varied", made: "varied in the making" };

function asked(study) {
  const varied = study.columns.filter((column) => column.role !== "outcome");
  return [
    study.about && el("p", {}, name(study.about)),
    el("p", {}, name(study.kind_text[0].toUpperCase() + study.kind_text.slice(1)), "."),
    el("p", { class: "muted" }, study.facts.map((fact, k) => [k ? " · " : "", name(fact.title), ": ", el("b", {}, name(fact.text))])),
    table(["what varies", "", "values", "as drawn", "in the files"], varied.map((column) => el("tr", {},
      el("th", { scope: "row" }, name(column.title)), el("td", { class: "muted" }, ROLE[column.role]), el("td", {}, name(column.range)), el("td", {}, name(column.drawn_text ?? "—")),
      el("td", { class: "path" }, name(column.description)))), { label: "what varies" }),
    study.requirements.length ? table(["required of", "", "rows that miss it"], study.requirements.map((one) => el("tr", { class: one.missed > 0 ? "" : "met" },
      el("th", { scope: "row" }, name(one.title)), el("td", {}, name(one.demand)), el("td", { class: "figure" }, `${one.missed} of ${study.of}`))), { label: "requirements of the study" })
      : el("p", { class: "muted" }, "Nothing was required."),
  ];
}

function causes(study) {
  const { causes: list, met, of } = study.yield;
  if (!list.length) return el("p", { class: "muted" }, met === of ? "No failure, so no cause to be found." : "Nothing passes, so no cause can be told from the rest.");
  return [
    el("p", { class: "lead small" }, "Distance: how far the key's values differ between what fails and what passes, from 0 (alike) to 1 (one value parts them). What goes with failing need not cause it."),
    bars(list.map((one) => ({ title: one.key, text: digits(one.distance, 2), bars: [{ value: one.distance, kind: one.sure ? "first" : "unsure" }] })), { low: 0, high: 1, label: "what goes with failing", axis: "distance [-]" }),
    table(["what goes with failing", "distance", "by chance", "", "lowest fifth fails", "2nd", "3rd", "4th", "highest"], list.map((one) => el("tr", {},
      el("th", { scope: "row" }, name(one.key)), el("td", { class: "figure" }, digits(one.distance, 2)), el("td", { class: "figure" }, name(one.chance_text)), el("td", { class: one.sure ? "nowrap" : "nowrap muted" }, name(one.side)),
      one.shares.map((share) => el("td", { class: "figure share nowrap", style: { "--share": share ?? 0 } }, share === null ? "–" : `${digits(100 * share, 2)} %`)))), { class: "causes", label: "what goes with failing" }),
  ];
}

function spreads(study, outcomes) {
  return [
    el("div", { class: "study-figures" }, study.spread.map((spread) => spreadChart(outcomes[spread.outcome], spread, study.of))),
    el("p", { class: "small muted" }, "Bars: share of the rows; dashed: as drawn; tinted: not allowed by a requirement."),
  ];
}

const spreadTable = (study, outcomes) => table(["outcome", "as drawn", "mean", "deviation", "least", "5 %", "50 %", "95 %", "greatest", "without it"], study.spread.map((spread) => el("tr", {},
  el("th", { scope: "row" }, name(outcomes[spread.outcome].title)), spread.texts.map((text) => el("td", { class: "figure nowrap" }, name(text))), el("td", { class: "figure" }, spread.missing || "–"))), { label: "outcomes" });

function found(study, outcomes) {
  const rows = tableOf(study);
  const asMade = study.kind === "optimise" && study.yield;
  return [
    el("p", { class: `verdict ${study.verdict.state === "plain" ? "" : study.verdict.state}` }, mark(study.verdict.state), " ", name(study.verdict.text)),
    study.reasons.length > 0 && el("div", { class: "not-checked" }, el("h3", {}, mark("unknown"), " Rows that could not be run"),
      el("ul", {}, study.reasons.map((one) => el("li", {}, `${one.count} times: `, name(one.text))))),
    studyMaps(study, outcomes),
    study.progress.length > 0 && [el("h3", {}, "The search"), study.progress.map((one) => progressChart(outcomes[one.outcome], one, rows, study.designs))],
    asMade && el("p", { class: "verdict" }, `Design ${study.chosen} as it would be made: `, name(study.yield.text), "."),
    study.yield && [
      study.yield.note && el("p", { class: "muted" }, name(study.yield.note)),
      study.yield.curves.length > 0 && [el("h3", {}, "Yield over where a bound is put"),
        el("div", { class: "study-figures" }, study.yield.curves.map((curve) => yieldChart(outcomes[curve.outcome], curve))),
        el("p", { class: "small muted" }, `Thick: share that meets the bound at this place and all other requirements, with its ${tidy(100 * study.yield.confidence)} % interval at each place; dashed: share that meets this bound alone.`)],
      el("h3", {}, "What goes with failing"), causes(study),
    ],
    study.indices.length > 0 && [el("h3", {}, "Shares of each outcome's variance"), el("p", { class: "lead small" }, "Upper bar: what a key causes by itself; lower bar: with all its interplay; lines: intervals."), el("div", { class: "study-figures wide" }, study.indices.map((one) => indexChart(outcomes[one.outcome], one)))],
    study.effects.length > 0 && [el("h3", {}, "Change of each outcome over the whole spread of each key"), el("p", { class: "lead small" }, "Filled: the mean change with its sign; outlined: the mean size. An outline longer than its bar: the sign differs from place to place."), el("div", { class: "study-figures wide" }, study.effects.map((one) => effectChart(outcomes[one.outcome], one)))],
    el("h3", {}, asMade ? "Outcomes of the chosen design as made" : "Outcomes of all rows"), study.yield && spreads(study, outcomes), spreadTable(study, outcomes),
  ];
}

function beside(study) {
  const { design } = study;
  const title = study.best.length === 0 ? `The nearest design, row ${design.row}, beside the files as drawn` : study.best.length > 1
    ? `Design ${design.row} of the front${study.chosen === design.row ? ", which was checked as made" : ", the middle one"}, beside the files as drawn` : `The best design, row ${design.row}, beside the files as drawn`;
  const line = (one, group) => el("tr", { class: one.change === "same" || one.change === "—" ? "" : "differs" }, el("th", { scope: "row" }, name(one.title)), el("td", { class: "muted" }, group),
    el("td", { class: "figure" }, name(one.drawn)), el("td", { class: "figure" }, name(one.text)), el("td", { class: "figure" }, name(one.change)));
  return [
    el("h3", {}, title),
    table(["", "", "as drawn", `design ${design.row}`, "change"], [...design.keys.map((one) => line(one, "made of")), ...design.outcomes.map((one) => line(one, "outcome"))], { class: "beside", label: "the design beside the files as drawn" }),
    design.missed.length > 0 && el("ul", { class: "missed-list" }, design.missed.map((text) => el("li", {}, mark("bad"), " missed: ", name(text)))),
  ];
}

export function studies(sheet, data) {
  const list = data.studies ?? [];
  list.forEach((study, k) => {
    const id = (text) => (k ? `${text}-${k + 1}` : text);
    // Isolated as name() does it, for titles are plain text.
    const whose = list.length > 1 || data.records.length ? `: \u2068${study.name}\u2069` : "";
    const outcomes = study.columns.filter((column) => column.role === "outcome");
    tableOf(study);   // gives each column its place
    sheet.section(id("study"), `What was varied${whose}`, asked(study));
    sheet.section(id("findings"), `Findings${whose}`, found(study, outcomes), study.design && beside(study));
    sheet.section(id("designs"), `Designs${whose}`, designs(study, id("designs-table")));
  });
}
