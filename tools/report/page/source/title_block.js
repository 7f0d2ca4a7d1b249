// The head of the sheet: what this is, of which model, and what it is not.

import { el, name } from "./dom.js";
import { toggleTheme } from "./theme.js";

const cell = (title, content, attributes) => el("div", { class: "cell", ...attributes }, el("span", { class: "cell-title" }, title), el("span", { class: "cell-text" }, content));
const unique = (texts) => [...new Set(texts.filter(Boolean))];
const listed = (texts) => unique(texts).map((text, k) => [k ? ", " : "", name(text)]);

/// Of studies alone: which, of what kind, with how many designs.
function studyHead(data, studies) {
  return [
    el("div", { class: "title-main" },
      el("p", { class: "kind" }, studies.length > 1 ? `Review of ${studies.length} studies` : "Review of a study"),
      el("h1", {}, name(data.title)),
      buttons()),
    el("div", { class: "cells" },
      cell(studies.length > 1 ? "Studies" : "Study", listed(studies.map((study) => study.name))),
      cell(studies.length > 1 ? "Tables" : "Table", listed(studies.map((study) => study.file))),
      cell("Kind", listed(studies.map((study) => study.kind))),
      cell("Designs", studies.map((study, k) => [k ? ", " : "", String(study.designs)])),
      cell("Computed by", name(data.made_by))),
  ];
}

const buttons = () => el("div", { class: "sheet-buttons controls" },
  el("button", { type: "button", id: "theme", on: { click: toggleTheme } }, "Light / dark"),
  el("button", { type: "button", on: { click: () => print() } }, "Print"));

export function titleBlock(data) {
  const { records } = data;
  if (!records.length) return el("header", { class: "title-block" }, studyHead(data, data.studies ?? []));
  const several = records.length > 1;
  return el("header", { class: "title-block" },
    el("div", { class: "title-main" },
      el("p", { class: "kind" }, several ? `Design review · ${records.length} records side by side` : "Design review"),
      el("h1", {}, several
        ? records.map((record, k) => [k ? el("span", { class: "against" }, " against ") : "", el("span", { class: "record-letter" }, record.label), " ", name(record.name)])
        : name(data.title || records[0].name)),
      unique(records.map((r) => r.description)).map((text) => el("p", { class: "about" }, name(text))),
      buttons()),
    el("div", { class: "cells" },
      cell("Model", listed(records.map((r) => r.model))),
      cell(several ? "Records" : "Record", several ? records.map((r, k) => [k ? ", " : "", `${r.label} `, name(r.file)]) : name(records[0].file)),
      cell("Outcome", several && unique(records.map((r) => r.outcome)).length > 1 ? records.map((r, k) => [k ? ", " : "", `${r.label} `, name(r.outcome)]) : listed(records.map((r) => r.outcome))),
      cell("Computed by", name(data.made_by)),
      cell("Dimensions", "mm, unless stated"),
      cell("Pictures", "to scale, orthographic")));
}

/// What must not be overlooked, in short; the whole text is in its own section.
export function caution(data) {
  const demo = unique(data.records.map((record) => record.demo_data));
  return el("p", { class: "caution", role: "note" },
    el("strong", {}, name(data.cautions?.[0] ?? "The numbers are design predictions, not certification.")), " ",
    demo.map((text) => [name(text), " "]),
    el("a", { href: "#validity" }, "Cautions and limits of validity"));
}

export const contents = (index) => el("nav", { class: "contents", "aria-label": "sections of this sheet" },
  index.map(({ id, title, number }) => el("a", { href: `#${id}` }, el("span", { class: "balloon small", "aria-hidden": "true" }, number), title)));
