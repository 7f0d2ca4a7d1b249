// What differs between the records: the notable first, then every value, then what differs in the inputs.

import { el, name } from "./dom.js";
import { table } from "./sheet.js";

export function comparison(sheet, data) {
  const { records } = data;
  if (records.length < 2 || !data.comparison) return;
  const { values = [], inputs = [] } = data.comparison;
  const notable = values.filter((one) => one.notable);
  const letter = (k) => el("span", { class: "record-letter" }, records[k].label);

  const callouts = notable.length
    ? el("ul", { class: "callouts" }, notable.slice(0, 12).map((one) => el("li", {},
      el("span", { class: "callout-title" }, name(one.title)),
      el("span", { class: "callout-values" }, one.texts.map((text, k) => el("span", { class: "figure" }, letter(k), " ", name(text)))),
      el("span", { class: "callout-change" }, one.change.slice(1).map((text, k) => [k ? ", " : "", name(text)])))))
    : el("p", {}, "No reported value differs notably.");
  const every = table(["value", ...records.map((r, k) => letter(k)), ...records.slice(1).map((r) => `${r.label} against ${records[0].label}`)],
    values.map((one, k) => [
      one.group && one.group !== values[k - 1]?.group && el("tr", { class: "group-row" }, el("th", { colspan: 2 * records.length, scope: "rowgroup" }, name(one.group))),
      el("tr", { class: one.notable ? "differs" : "" }, el("th", { scope: "row" }, name(one.title)),
        one.texts.map((text) => el("td", { class: "figure" }, name(text))), one.change.slice(1).map((text) => el("td", { class: "figure" }, name(text)))),
    ]), { class: "comparison", label: "all values compared" });
  const fromInputs = inputs.length
    ? table(["what the inputs say", ...records.map((r, k) => letter(k))], inputs.map((one) => el("tr", {}, el("th", { scope: "row", class: "path" }, name(one.place)), one.texts.map((text) => el("td", { class: "figure" }, name(text))))), { label: "differences of the inputs" })
    : el("p", { class: "muted" }, "The inputs do not differ.");

  sheet.section("differences", `What differs: ${records.map((r) => r.label).join(" against ")}`,
    el("h3", {}, "Changed on purpose, in the inputs"), fromInputs,
    el("h3", {}, "Notable in the results"), callouts,
    values.length > 0 && el("details", { "data-print": true }, el("summary", {}, `All ${values.length} values compared`), every));
}
