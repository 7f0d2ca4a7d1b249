// The end of the sheet: how far the numbers reach, every value, every input.

import { el, name } from "./dom.js";

export function validity(sheet, data) {
  const list = (texts) => el("ul", {}, (texts ?? []).map((text) => el("li", {}, name(text))));
  const demo = [...new Set(data.records.map((record) => record.demo_data).filter(Boolean))];
  sheet.section("validity", "Cautions and limits of validity",
    el("div", { class: "columns" },
      el("div", {}, el("h3", {}, "Cautions"), list([...(data.cautions ?? []), ...demo])),
      el("div", {}, el("h3", {}, "What is simplified"), list(data.validity))),
    data.records.length > 0 && el("h3", {}, "How the pictures were made"),
    data.records.length > 0 && el("ul", {}, data.records.map((record) => el("li", {}, data.records.length > 1 ? `${record.label}: ` : "",
      `${record.rows?.kept ?? "?"} of ${record.rows?.of ?? "?"} rows of the record are drawn: `, name(record.rows?.bound_text ?? "no bound stated"), ". The numbers in the tables come from the whole record."))));
}

export function values(sheet, data) {
  const { records } = data;
  const several = records.length > 1;
  if (!records.some((record) => record.summary?.length)) return;
  const blocks = records.map((record) => {
    const groups = new Map();
    for (const one of record.summary ?? []) groups.set(one.group, [...(groups.get(one.group) ?? []), one]);
    return el("details", {}, el("summary", {}, several ? `All values of ${record.label}` : `All ${record.summary?.length ?? 0} values of the summary`),
      el("div", { class: "fact-groups" }, [...groups].map(([group, list]) => el("div", { class: `fact-group ${group === "Margins" && record.fingers?.length ? "only-screen" : ""}` }, el("h4", { class: "sub" }, name(group)),
        el("table", { class: "facts" }, el("tbody", {}, list.map((one) => el("tr", {}, el("th", { scope: "row" }, name(one.title)), el("td", { class: "figure" }, name(one.text))))))))));
  });
  // On paper the comparison table already holds them.
  if (!several) blocks[0].dataset.print = "";
  const section = sheet.section("values", "All values", blocks);
  if (several) section.classList.add("only-screen");
}

export function inputs(sheet, data) {
  const studies = (data.studies ?? []).map((study) => ({ label: data.studies.length > 1 || data.records.length ? study.file : "", inputs: study.inputs, of: "Study" }));
  const records = [...data.records, ...studies];
  const several = records.length > 1;
  // A file that several records share is shown once.
  const files = new Map();
  for (const record of records) for (const file of record.inputs?.files ?? []) {
    const key = `${file.path}\n${file.text}`;
    if (!files.has(key)) files.set(key, { ...file, of: [] });
    files.get(key).of.push(record.label);
  }
  sheet.section("inputs", "All inputs",
    records.map((record) => el("p", {}, several && [el("span", { class: "record-letter" }, record.label), " "],
      `${record.of ?? "Scenario"} `, el("code", {}, name(record.inputs?.scenario)), `, Sinewright ${record.inputs?.engine_version ?? "?"}, seed ${record.inputs?.seed ?? 0}`,
      record.inputs?.overrides?.length ? [", changed on the command line: ", record.inputs.overrides.map((text, k) => [k ? ", " : "", el("code", {}, name(text))])] : "", ".")),
    el("p", { class: "only-print small" }, "The full texts of these files are in the HTML file and in the record:"),
    [...files.values()].map((file) => el("details", { class: "input-file" },
      el("summary", {}, several ? `${file.of.join(", ")}: ` : "", el("code", {}, name(file.path)), el("span", { class: "muted" }, `, ${file.text.split("\n").length} lines`)),
      el("pre", { tabindex: 0 }, el("code", {}, file.text)))));
}
