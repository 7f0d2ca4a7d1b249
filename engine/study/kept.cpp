#include "study/kept.h"

#include <unordered_map>

#include <fmt/format.h>

#include "model/overloaded.h"
#include "quantity/quantity.h"
#include "study/findings.h"

namespace sinewright::study {

namespace {

std::string points_text(model::Points points) {
  switch (points) {
    case model::Points::random: return "random";
    case model::Points::sobol: return "sobol";
    case model::Points::latin_hypercube: return "latin_hypercube";
  }
  return "";
}

record::StudyColumn column_of(const Axis& axis, std::size_t rows) {
  const model::Variable& variable = axis.variable;
  record::StudyColumn column;
  column.name = variable.name;
  column.shown_in = variable.unit.empty() ? "1" : variable.unit;
  column.unit = axis.options() ? "1" : si_unit(column.shown_in);
  column.description = variable.keys.empty() ? "one of several ways" : fmt::format("{}", fmt::join(variable.keys, ", "));
  if (const auto* options = axis.options()) column.options = options->names;
  column.values.reserve(rows);
  return column;
}

void describe_kind(record::StudyRecord& kept, const model::StudyKind& kind) {
  std::visit(overloaded{[&](const model::GridStudy&) { kept.kind = "grid"; },
                        [&](const model::SampleStudy& sample) {
                          kept.kind = "sample";
                          kept.points = points_text(sample.points);
                          kept.seed = sample.seed;
                        },
                        [&](const model::ToleranceStudy& tolerance) {
                          kept.kind = "tolerance";
                          kept.points = points_text(tolerance.points);
                          kept.seed = tolerance.seed;
                          kept.confidence = tolerance.confidence;
                        },
                        [&](const model::SensitivityStudy& sensitivity) {
                          kept.kind = "sensitivity";
                          kept.seed = sensitivity.seed;
                          kept.base = static_cast<std::uint64_t>(sensitivity.base);
                          kept.confidence = sensitivity.confidence;
                        },
                        [&](const model::ScreeningStudy& screening) {
                          kept.kind = "screening";
                          kept.seed = screening.seed;
                          kept.base = static_cast<std::uint64_t>(screening.paths);
                          kept.levels = static_cast<std::uint64_t>(screening.levels);
                        },
                        [&](const model::OptimiseStudy& optimise) {
                          kept.kind = "optimise";
                          kept.seed = optimise.seed;
                          for (const model::Goal& goal : optimise.goals) kept.goals.emplace_back(goal.outcome, goal.maximise);
                          if (optimise.robustness) {
                            kept.points = points_text(optimise.robustness->sample.points);
                            kept.confidence = optimise.robustness->sample.confidence;
                          }
                        }},
             kind);
}

}  // namespace

record::StudyRecord record_of(const model::Study& study, const StudyTable& table) {
  record::StudyRecord kept;
  kept.name = study.name;
  kept.about = study.about;
  describe_kind(kept, study.kind);
  const std::size_t rows = table.rows();
  for (const Axis& axis : table.axes) kept.varied.push_back(column_of(axis, rows));
  for (const Axis& axis : table.making) kept.made.push_back(column_of(axis, rows));
  for (const OutcomeColumn& column : table.bench.columns) {
    std::string shown_in = display_unit(column.unit);
    for (const auto& requirement : table.bench.requirements)
      if (requirement.quantity == column.name && !requirement.unit.empty()) shown_in = requirement.unit;
    kept.outcomes.push_back({column.name, column.unit, shown_in, column.description, {}, {}});
    kept.outcomes.back().values.reserve(rows);
  }
  for (const auto& requirement : table.bench.requirements) {
    record::StudyRequirement one;
    one.quantity = requirement.quantity;
    const std::string unit = requirement.unit.empty() ? "1" : requirement.unit;
    const auto bound = [&](const char* word, double value) {
      one.demand += fmt::format("{}{} {:.6g}{}{}", one.demand.empty() ? "" : ", ", word, from_si(value, unit), unit == "1" ? "" : " ", unit == "1" ? "" : unit);
    };
    if (requirement.at_least) bound("at least", one.at_least = *requirement.at_least);
    if (requirement.at_most) bound("at most", one.at_most = *requirement.at_most);
    one.shortfalls.reserve(rows);
    kept.requirements.push_back(std::move(one));
  }

  std::unordered_map<std::string, std::uint32_t> known = {{"", 0}};
  // In the unit of the axis → SI; exact where it is a factor.
  const auto si = [](const record::StudyColumn& column, double value) {
    return column.options.empty() && column.shown_in != "1" && !std::isnan(value) ? to_si(value, column.shown_in) : value;
  };
  for (std::uint64_t row = 0; row < rows; ++row) {
    const std::vector<double> values = table.values(row);
    for (std::size_t i = 0; i < kept.varied.size(); ++i) kept.varied[i].values.push_back(si(kept.varied[i], values[i]));
    for (std::size_t i = 0; i < kept.made.size(); ++i) kept.made[i].values.push_back(si(kept.made[i], values[kept.varied.size() + i]));
    DesignResult result = table.result(row);
    for (std::size_t c = 0; c < kept.outcomes.size(); ++c) kept.outcomes[c].values.push_back(result.outcomes[c]);
    for (std::size_t r = 0; r < kept.requirements.size(); ++r) kept.requirements[r].shortfalls.push_back(result.shortfalls[r]);
    kept.states.push_back(static_cast<record::RowState>(result.state));
    const auto [at, is_new] = known.try_emplace(std::move(result.reason), static_cast<std::uint32_t>(known.size()));
    if (is_new) kept.reason_texts.push_back(at->first);
    kept.reasons.push_back(at->second);
  }
  kept.designs = table.designs();
  kept.best = table.best;
  kept.chosen = table.chosen;
  kept.drawn = table.bench.drawn.outcomes;
  kept.findings = listed(findings_of(kept), kept);
  return kept;
}

}  // namespace sinewright::study
