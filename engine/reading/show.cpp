#include <map>
#include <set>

#include <fmt/format.h>

#include "quantity/quantity.h"
#include "reading/reading.h"
#include "reading/written.h"

namespace sinewright::reading {
namespace {

using RecordPtr = std::shared_ptr<const RecordShown>;

Shown shown_kind(std::string_view kind) {
  if (kind == "model") return model_file().shown;
  if (kind == "parts") return parts_file().shown;
  if (kind == "limit") return limit_file().shown;
  if (kind == "scenario") return scenario_file().shown;
  if (kind == "study") return study_file().shown;
  throw InvalidInput(fmt::format("there is no file kind '{}'\n  needed: model, parts, scenario, limit or study", kind));
}

// Every record below some value, each once, outer ones first.
void collect(const Shown& shown, std::set<std::string>& seen, std::vector<RecordPtr>& records) {
  for (const RecordPtr& record : shown.records) {
    if (!seen.insert(record->name).second) continue;
    records.push_back(record);
    for (const FieldShown& field : record->fields) collect(field.value, seen, records);
  }
}

std::map<std::string, std::vector<std::string>> groups_of(const RecordShown& record) {
  std::map<std::string, std::vector<std::string>> groups;
  for (const FieldShown& field : record.fields)
    if (!field.group.empty()) groups[field.group].push_back(field.key);
  return groups;
}

Json record_schema(const RecordShown& record) {
  Json schema = {{"type", "object"}, {"description", record.about}, {"additionalProperties", false}};
  Json& properties = schema["properties"] = Json::object();
  Json required = Json::array();
  for (const FieldShown& field : record.fields) {
    Json value = field.value.schema;
    if (!value.contains("$ref"))
      value["description"] = field.about + (field.value.words.empty() ? "" : ": " + field.value.words);
    properties[field.key] = value;
    if (field.required) required.push_back(field.key);
  }
  if (!required.empty()) schema["required"] = required;
  for (const auto& [group, keys] : groups_of(record)) {
    Json choices = Json::array();
    for (const std::string& key : keys) choices.push_back({{"required", {key}}});
    schema["allOf"].push_back({{"oneOf", choices}});
  }
  return schema;
}

// Vertical bars would end a cell of the table.
std::string cell(std::string text) {
  for (std::size_t at = text.find('|'); at != std::string::npos; at = text.find('|', at + 2))
    text.replace(at, 1, "\\|");
  return text;
}

std::string linked(const Shown& shown) {
  std::string text = cell(shown.words);
  if (shown.records.empty()) return text;
  std::string links;
  for (const RecordPtr& record : shown.records)
    links += fmt::format("{}[{}](#{})", links.empty() ? "" : ", ", record->name, record->name);
  if (text.starts_with("a map, see ")) return "a map, see " + links;
  return text + ": see " + links;
}

std::string need(const RecordShown& record, const FieldShown& field) {
  if (!field.group.empty()) {
    std::string keys;
    const auto groups = groups_of(record);
    for (const std::string& key : groups.at(field.group))
      keys += fmt::format("{}`{}`", keys.empty() ? "" : ", ", key);
    return "exactly one of " + keys;
  }
  if (field.required) return "required";
  return cell(field.absent);
}

std::string record_section(const RecordShown& record) {
  std::string text =
      fmt::format("### {}\n\n{}\n\n| key | value | when left out | meaning |\n| --- | --- | --- | --- |\n",
                  record.name, record.about);
  for (const FieldShown& field : record.fields)
    text += fmt::format("| `{}` | {} | {} | {} |\n", field.key, linked(field.value), need(record, field),
                        cell(field.about));
  return text + "\n";
}

}  // namespace

std::string json_schema(std::string_view kind) {
  const Shown shown = shown_kind(kind);
  std::set<std::string> seen;
  std::vector<RecordPtr> records;
  collect(shown, seen, records);
  Json schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                 {"title", fmt::format("Sinewright {} file", kind)}};
  schema["$ref"] = shown.schema["$ref"];
  for (const RecordPtr& record : records) schema["$defs"][record->name] = record_schema(*record);
  return schema.dump(2) + "\n";
}

std::string yaml_reference() {
  std::string text =
      "# Files: every key\n\n"
      "This page is made from the tables that read the files (`sinewright::reading::yaml_reference`); a test "
      "keeps the "
      "two alike. Units are described in [units.md](units.md).\n\n"
      "A file is one YAML map. Its first key says what it is: `sinewright: model`, `parts`, `scenario`, `limit` or `study`. "
      "Keys stand "
      "once, unknown keys are errors. Names of parts are free: a letter, then letters, digits, `_` or `-`. "
      "Anchors, "
      "aliases, tags and merges are not used. Lengths in a body are in that body's frame: x from the knuckle "
      "to the "
      "tip, y to the back of the hand, z along the pin.\n\n"
      "Any value can be replaced on the command line: `--set duration=3 s`, `--set timeline.0.voltage=5 V` "
      "(list items "
      "by number from 0), `--set \"model.drives.flexor.current_limit=0.5 A\"` (from a scenario into its "
      "model), "
      "`--set \"model.lines.braid.diameter=0.6 mm\"` (a part, wherever it is defined).\n\n"
      "For editors there are JSON Schemas beside this page: [model](schema/model.schema.json), "
      "[parts](schema/parts.schema.json), [scenario](schema/scenario.schema.json), [limit](schema/limit.schema.json), [study](schema/study.schema.json). They know keys, names and "
      "the form of "
      "quantities; dimensions, conditions between keys and names of other parts are checked when a file is "
      "read.\n\n";
  std::set<std::string> seen;
  const std::pair<const char*, const char*> kinds[] = {
      {"model", "Model files"}, {"parts", "Parts files"}, {"scenario", "Scenario files"},
      {"limit", "Limit files"}, {"study", "Study files"}};
  for (const auto& [kind, title] : kinds) {
    std::vector<RecordPtr> records;
    collect(shown_kind(kind), seen, records);
    text += fmt::format("## {}\n\n", title);
    for (const RecordPtr& record : records) text += record_section(*record);
  }
  text.pop_back();
  return text;
}

std::string unit_reference() {
  std::string text =
      "# Units\n\n"
      "This page is made from the list that reads them (`sinewright::reading::unit_reference`); a test keeps "
      "the two "
      "alike.\n\n"
      "A quantity is a number and a unit in one text: `0.5 mm`, `30 deg`, `5 N·mm/deg`, `25 degC`. A missing "
      "unit or a "
      "wrong dimension is an error; plain numbers (friction, ratios) have no unit or `%`.\n\n"
      "- The number has a point as decimal sign and may have an exponent (`1e-6`). Infinite numbers are "
      "refused.\n"
      "- `·`, `*`, `.` or a blank multiply; `/` divides, from left to right: `N/m·s` is (N/m)·s. Brackets "
      "may be used: "
      "`N·m/(rad/s)`. `mNm` is no unit, `mN·m` is.\n"
      "- Powers are written `mm²`, `mm^2` or `mm2`, with one digit; `s^-1` and `1/s` are the same.\n"
      "- The radian is a unit of its own: a torsional stiffness is in `N·m/rad` (or `N·mm/deg`), and no "
      "torque. `rpm` is "
      "a turning rate and not a frequency.\n"
      "- `degC` is a point on a scale; a difference of temperatures, also within a unit, is in `K`.\n"
      "- `Ω` may be written for `Ohm`, `µ` for the prefix `u`, `°` for `deg`, `°C` for `degC`, `%` for "
      "`percent`.\n\n"
      "Inside, everything is in SI units and radians.\n\n"
      "| unit | is |\n| --- | --- |\n";
  for (const KnownUnit& unit : known_units())
    text +=
        fmt::format("| `{}` | {} |\n", unit.name, unit.definition.empty() ? "a base unit" : unit.definition);
  return text;
}

}  // namespace sinewright::reading
