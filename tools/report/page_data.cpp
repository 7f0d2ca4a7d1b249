#include "report/page_data.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "plot/scene.h"
#include "quantity/quantity.h"
#include "reading/reading.h"
#include "report/record_data.h"
#include "report/study_data.h"

namespace sinewright::report {

namespace {

using Json = nlohmann::ordered_json;

const std::vector<std::string> kCautions = {
    "The numbers are design predictions, not certification: nothing here replaces a test of the built part.",
    "Moving fingers pinch, stretched cords store energy, stalled motors get hot enough to burn.",
    "Devices for people are subject to local regulations and to licensed practice (prosthetists, medical-device rules)."};

const std::vector<std::string> kValidity = {
    "Phalanges, pins and pulleys are rigid; clearances are data for the play estimate and do not move in the run.",
    "Cords have no mass; they bend at points, and friction follows the capstan law with the coefficients given.",
    "Each pair of shapes touches at one point, without torsional friction and without damping while it sticks.",
    "The motor has no inductance and two temperatures; the supply is a voltage behind a resistance.",
    "Margins are elementary statics with new parts and one slow load: fatigue, wear, moisture, creep and notches are not in them."};

const char* const kChance =
    "Intervals of a study speak of the chance of drawing; that frictions and spreads are guessed is in none of them, and what goes with failing need not cause it.";

// A direction, by the world's axis that it lies along, else in parts.
std::string axis_text(const std::array<double, 3>& direction) {
  constexpr std::array<const char*, 3> names = {"x", "y", "z"};
  for (std::size_t a = 0; a < 3; ++a)
    if (std::abs(std::abs(direction[a]) - 1) < 1e-9) return fmt::format("{}{}", direction[a] > 0 ? "+" : "−", names[a]);
  return fmt::format("({:.2f}, {:.2f}, {:.2f})", direction[0], direction[1], direction[2]);
}

Json limit_data(const record::LimitRecord& limit) {
  Json json = {{"name", limit.name}, {"quantity", limit.quantity}, {"unit", limit.unit}, {"method", limit.method}, {"axes", Json::array()}, {"rows", Json::array()}};
  const bool directions = limit.method == "directions";
  if (directions) json["in_plane"] = limit.in_plane;
  // What 0° and 90° are in the world, where the directions lie on them.
  if (const std::size_t n = directions && limit.in_plane ? limit.axes.back().second.size() : 0; n > 0 && n % 4 == 0 && limit.limits.size() >= n)
    json["plane"] = {axis_text(limit.limits[0].direction), axis_text(limit.limits[n / 4].direction)};
  for (const auto& [name, values] : limit.axes) json["axes"].push_back({{"name", name}, {"values", values}});
  const std::string unit = limit.unit.empty() || limit.unit == "1" ? "" : " " + limit.unit;
  for (const auto& one : limit.limits) {
    Json row = {{"place", one.place}, {"found", one.found}, {"note", one.note}};
    if (one.found && std::isfinite(one.value)) {
      row["value"] = one.value;
      row["text"] = fmt::format("{:.4g}{}", one.value, unit);
      row["error_text"] = fmt::format("± {:.2g}{}", one.error, unit);
    } else {
      row["value"] = nullptr;
      row["text"] = directions ? "holds all tried" : "none found";
      row["error_text"] = "";
    }
    if (directions && !one.gave.empty()) row["gave"] = fmt::format("{}, at {:.3g}{}", one.gave, one.gave_at, unit);
    json["rows"].push_back(row);
  }
  return json;
}

// Every single value of a file by its path of keys.
void flatten(const reading::Node& node, std::vector<std::pair<std::string, std::string>>& values) {
  if (node.kind == reading::Node::Kind::text) values.emplace_back(node.path(), node.text);
  for (const auto& child : node.children) flatten(*child, values);
}

// Where the input files differ, by paths of keys; the scenarios may have different names, models and parts go by theirs.
Json input_differences(const std::vector<Run>& runs) {
  Json list = Json::array();
  constexpr std::size_t most = 60;
  // Per place (file and path of keys) what each run's files say, in the order of first appearance.
  std::vector<std::pair<std::string, std::vector<std::string>>> places;
  for (std::size_t r = 0; r < runs.size(); ++r) {
    const record::Inputs& inputs = runs[r].record.inputs;
    reading::Source source(inputs.files);
    for (const auto& [path, text] : inputs.files) {
      const std::string name = path == inputs.scenario_path ? "scenario" : std::filesystem::path(path).filename().string();
      std::vector<std::pair<std::string, std::string>> values;
      flatten(*source.document(path), values);
      for (const auto& [key, value] : values) {
        if (key == "name" || key == "about") continue;
        const std::string place = name + ": " + key;
        auto known = std::find_if(places.begin(), places.end(), [&](const auto& one) { return one.first == place; });
        if (known == places.end()) known = places.insert(places.end(), {place, std::vector<std::string>(runs.size(), "—")});
        known->second[r] = value;
      }
    }
  }
  for (const auto& [place, texts] : places)
    if (list.size() < most && std::any_of(texts.begin(), texts.end(), [&](const auto& text) { return text != texts.front(); }))
      list.push_back({{"place", place}, {"texts", texts}});
  std::vector<std::string> overrides;
  for (const Run& run : runs) overrides.push_back(fmt::format("{}", fmt::join(run.record.inputs.overrides, "; ")));
  if (std::any_of(overrides.begin(), overrides.end(), [&](const auto& o) { return o != overrides.front(); }))
    list.push_back({{"place", "changed on the command line"}, {"texts", overrides}});
  return list;
}

Json comparison(const std::vector<Run>& runs) {
  Json values = Json::array();
  for (const auto& item : runs.front().record.summary) {
    Json row = {{"title", title_of(item.key)}, {"group", group_of(item.key)}, {"unit", ""}, {"texts", Json::array()}, {"values", Json::array()}, {"change", Json::array()}};
    bool notable = false;
    for (const Run& run : runs) {
      const auto found = std::find_if(run.record.summary.begin(), run.record.summary.end(), [&](const auto& v) { return v.key == item.key; });
      const double value = found == run.record.summary.end() ? std::nan("") : found->value;
      row["texts"].push_back(value_text(value, item.unit));
      row["values"].push_back(std::isfinite(value) ? Json(value) : Json(nullptr));
      std::string change = "—";
      if (&run != &runs.front() && std::isfinite(value) && std::isfinite(item.value) && item.value != 0 && item.unit != "K") {
        const double part = value / item.value - 1;
        change = std::abs(part) < 5e-5 ? "same" : fmt::format("{:+.3g} %", 100 * part);
        notable = notable || std::abs(part) > 0.05;
      } else if (&run != &runs.front() && std::isfinite(value) != std::isfinite(item.value)) {
        notable = true;
      }
      row["change"].push_back(change);
    }
    row["notable"] = notable;
    values.push_back(row);
  }
  return {{"values", values}, {"inputs", input_differences(runs)}};
}

}  // namespace

PageData page_data(const std::vector<std::filesystem::path>& files, const PageOptions& options) {
  std::vector<Run> runs;
  std::vector<record::LimitRecord> limits;
  std::vector<std::pair<std::filesystem::path, record::StudyRecord>> studies;
  for (const auto& file : files) {
    const bool there = std::filesystem::is_regular_file(file);
    if (there && record::is_limit(file))
      limits.push_back(record::read_limit(file));
    else if (there && record::is_study(file))
      studies.emplace_back(file, record::read_study(file));
    else
      runs.push_back(read_run(file));
  }
  if (runs.empty() && studies.empty())
    throw InvalidInput("there is nothing to show in motion\n  needed: the record of at least one run (.h5) beside those of limits, or the table of a study");
  Json json = {{"format", 1}};
  std::string title = options.title;
  if (title.empty())
    for (const Run& run : runs)
      if (title.find(run.scenario.name) == std::string::npos) title += (title.empty() ? "" : " / ") + run.scenario.name;
  if (title.empty())
    for (const auto& [file, study] : studies) title += (title.empty() ? "" : " / ") + study.name;
  json["title"] = title;
  json["made_by"] = "Sinewright " + (runs.empty() ? studies.front().second.inputs : runs.front().record.inputs).engine_version;
  json["cautions"] = kCautions;
  json["validity"] = kValidity;
  if (!studies.empty()) json["validity"].push_back(kChance);
  json["records"] = Json::array();
  for (std::size_t i = 0; i < runs.size(); ++i) json["records"].push_back(record_data(runs[i], std::string(1, static_cast<char>('A' + i % 26)), limits));
  json["comparison"] = runs.size() > 1 ? comparison(runs) : Json(nullptr);
  json["limits"] = Json::array();
  for (const auto& limit : limits) json["limits"].push_back(limit_data(limit));
  json["studies"] = Json::array();
  for (const auto& [file, study] : studies) json["studies"].push_back(study_data(study, file));
  std::string safe;  // no text can end the element that holds it
  for (const char c : json.dump(-1, ' ', false, Json::error_handler_t::replace)) {
    if (c == '<') safe += "\\u003c";
    else safe += c;
  }
  return {title, safe};
}

}  // namespace sinewright::report
