#include "report/drawn_keys.h"

#include <algorithm>
#include <cmath>

#include "quantity/quantity.h"
#include "reading/reading.h"
#include "study/design_runs.h"

namespace sinewright::report {

namespace {

struct Inputs {
  reading::Source source;
  model::Study study;
  std::vector<std::string> below;  // changes from the command line that go to the runs
};

// The scenario that a run goes through, with everything that the study and the command line change in it.
struct Place {
  std::string scenario;
  std::vector<std::string> changes;
};
Place place_of(Inputs& inputs, const model::StudyRun& run) {
  Place place{run.scenario, {}};
  if (!run.limit.empty()) {
    const model::LimitStudy limit = reading::read_limit(inputs.source, run.limit);
    place = {limit.scenario, limit.change};
  }
  for (const auto& list : {run.change, study::changes_for(run, inputs.below)}) place.changes.insert(place.changes.end(), list.begin(), list.end());
  return place;
}

std::optional<std::string> written_text(const reading::Node& node, const std::string& path) {
  if (node.kind == reading::Node::Kind::text && node.path() == path) return node.text;
  for (const auto& child : node.children)
    if (auto found = written_text(*child, path)) return found;
  return std::nullopt;
}

// Whether the files already say what "key=value" would set.
bool already_says(Inputs& inputs, const std::string& change) {
  const auto equals = change.find('=');
  const std::string key = change.substr(0, equals), value = change.substr(equals + 1);
  const bool of_model = key.starts_with("model.");
  for (const model::StudyRun& run : inputs.study.runs) {
    if (!of_model && !key.starts_with(run.name + ".")) continue;
    const Place place = place_of(inputs, run);
    const std::string inner = of_model ? key : key.substr(run.name.size() + 1);
    for (auto other = place.changes.rbegin(); other != place.changes.rend(); ++other)
      if (other->starts_with(inner + "=")) return other->substr(inner.size() + 1) == value;
    if (const auto number = reading::written_quantity(inputs.source, place.scenario, place.changes, inner)) {
      try {
        // 0.35 cm and 3.5 mm differ in their last bit.
        const double wanted = parse_any_quantity(value).si;
        return std::abs(wanted - number->si) <= 1e-12 * std::max(std::abs(wanted), std::abs(number->si));
      } catch (const InvalidInput&) {
        return false;
      }
    }
    for (const auto& file : inputs.source.handed_out())
      if (of_model || file.path == place.scenario)
        if (const auto text = written_text(*inputs.source.document(file.path), of_model ? inner.substr(6) : inner)) return *text == value;
    return false;
  }
  return false;
}

std::optional<double> drawn(Inputs& inputs, const model::Variable& variable) {
  if (const auto* options = std::get_if<model::Options>(&variable.spread)) {
    for (std::size_t i = 0; i < options->names.size(); ++i)
      if (std::all_of(options->changes[i].begin(), options->changes[i].end(), [&](const std::string& change) { return already_says(inputs, change); })) return static_cast<double>(i);
    return std::nullopt;
  }
  const std::string& key = variable.keys.front();
  for (const model::StudyRun& run : inputs.study.runs) {
    const bool of_model = key.starts_with("model.");
    if (!of_model && !key.starts_with(run.name + ".")) continue;
    const Place place = place_of(inputs, run);
    const auto found = reading::written_quantity(inputs.source, place.scenario, place.changes, of_model ? key : key.substr(run.name.size() + 1));
    return found ? std::optional(found->si) : std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

std::vector<std::optional<double>> drawn_keys(const record::StudyRecord& table) {
  std::vector<std::optional<double>> list(table.varied.size());
  try {
    Inputs inputs{reading::Source(table.inputs.files), {}, {}};
    std::vector<std::string> own;
    const model::Study plain = reading::read_study(inputs.source, table.inputs.scenario_path);
    for (const std::string& change : table.inputs.overrides) {
      const std::string first = change.substr(0, change.find_first_of(".="));
      const bool below = first == "model" || std::any_of(plain.runs.begin(), plain.runs.end(), [&](const auto& run) { return run.name == first; });
      (below ? inputs.below : own).push_back(change);
    }
    inputs.study = reading::read_study(inputs.source, table.inputs.scenario_path, own);
    for (std::size_t k = 0; k < list.size(); ++k)
      for (const model::Variable& variable : inputs.study.vary)
        if (variable.name == table.varied[k].name) list[k] = drawn(inputs, variable);
  } catch (const InvalidInput&) {
    // A table of another version, or made by a program: its keys go without.
  }
  return list;
}

}  // namespace sinewright::report
