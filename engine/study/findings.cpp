#include "study/findings.h"

#include <fmt/format.h>

namespace sinewright::study {

namespace {

using record::StudyRecord;

Yield yield_of(const StudyRecord& table, std::uint64_t first, std::uint64_t last) {
  Yield yield;
  yield.of = last - first;
  std::vector<bool> failed;
  std::vector<double> inputs;
  const auto& keys = making_of(table);
  for (std::uint64_t row = first; row < last; ++row) {
    failed.push_back(table.states[row] != record::RowState::met);
    if (!failed.back()) ++yield.met;
    for (const auto& key : keys) inputs.push_back(key.values[row]);
  }
  // The cautious of the two intervals: it covers the true share at least as often as it says.
  yield.interval = clopper_pearson_interval(yield.met, yield.of, table.confidence);
  yield.causes = failure_causes(inputs, keys.size(), failed);
  return yield;
}

}  // namespace

const std::vector<record::StudyColumn>& making_of(const StudyRecord& table) {
  return table.kind == "optimise" ? table.made : table.varied;
}

Findings findings_of(const StudyRecord& table) {
  Findings findings;
  const bool checked = table.kind == "optimise" && table.rows() > table.designs;
  findings.first = checked ? table.designs : 0;
  findings.last = table.rows();
  for (std::uint64_t row = findings.first; row < findings.last; ++row) ++findings.states.at(static_cast<std::size_t>(table.states[row]));
  for (const auto& requirement : table.requirements) {
    std::uint64_t missed = 0;
    for (std::uint64_t row = findings.first; row < findings.last; ++row) missed += requirement.shortfalls[row] > 0;
    findings.missed.push_back(missed);
  }
  for (const auto& outcome : table.outcomes) {
    const std::span<const double> values = std::span(outcome.values).subspan(findings.first);
    const std::vector<double> sorted = sorted_numbers(values);
    findings.outcomes.push_back({sample_moments(values), {sample_quantile(sorted, 0.05), sample_quantile(sorted, 0.5), sample_quantile(sorted, 0.95)}});
    if (table.kind == "sensitivity")
      findings.sensitivity.push_back(sensitivity(values, table.varied.size(), {1000, table.confidence, table.seed}));
    if (table.kind == "screening")
      findings.screening.push_back(elementary_effects(ScreeningDesign(table.base, table.varied.size(), table.seed, table.levels), values));
  }
  if ((table.kind == "tolerance" || checked) && findings.last > findings.first) findings.yield = yield_of(table, findings.first, findings.last);
  return findings;
}

std::vector<record::SummaryValue> listed(const Findings& findings, const StudyRecord& table) {
  std::vector<record::SummaryValue> list;
  const auto add = [&](std::string key, double value, const std::string& unit, std::string description) {
    list.push_back({std::move(key), value, unit, std::move(description)});
  };
  const auto count = [&](std::string key, std::uint64_t value, std::string description) {
    add(std::move(key), static_cast<double>(value), "1", std::move(description));
  };
  static constexpr std::array<const char*, 4> kStates = {"met", "missed", "invalid", "stopped"};
  count("rows", findings.last - findings.first, "rows of which the findings speak");
  for (std::size_t s = 0; s < kStates.size(); ++s) count(fmt::format("rows.{}", kStates[s]), findings.states[s], "rows that ended so");
  for (std::size_t i = 0; i < findings.missed.size(); ++i)
    count(fmt::format("requirement_{:03}.missed", i), findings.missed[i],
          fmt::format("rows that miss: {} {}", table.requirements[i].quantity, table.requirements[i].demand));
  if (findings.yield) {
    const Yield& yield = *findings.yield;
    add("yield", static_cast<double>(yield.met) / static_cast<double>(yield.of), "1", "share of the made things that meet all requirements");
    add("yield.low", yield.interval.low, "1", "lower end of its interval");
    add("yield.high", yield.interval.high, "1", "upper end of its interval");
    for (std::size_t k = 0; k < yield.causes.size(); ++k) {
      const std::string& key = making_of(table)[k].name;
      add("cause." + key + ".distance", yield.causes[k].distance, "1", "how far the key's values differ between fails and passes, 0 to 1");
      add("cause." + key + ".chance", yield.causes[k].chance, "1", "chance of such a distance if no key had to do with failing");
      add("cause." + key + ".side", yield.causes[k].side, "1", "mean among fails less mean among passes, in standard deviations");
    }
  }
  for (std::size_t c = 0; c < findings.outcomes.size(); ++c) {
    const auto& outcome = table.outcomes[c];
    const OutcomeSpread& spread = findings.outcomes[c];
    add(outcome.name + ".mean", spread.moments.mean, outcome.unit, "over the rows that have it");
    add(outcome.name + ".deviation", spread.moments.deviation, outcome.unit, "standard deviation");
    add(outcome.name + ".least", spread.moments.least, outcome.unit, "");
    add(outcome.name + ".greatest", spread.moments.greatest, outcome.unit, "");
    static constexpr std::array<int, 3> kPercent = {5, 50, 95};
    for (std::size_t q = 0; q < 3; ++q)
      add(fmt::format("{}.quantile_{}", outcome.name, kPercent[q]), spread.quantiles[q], outcome.unit, fmt::format("{} % of the rows are at or below it", kPercent[q]));
    count(outcome.name + ".missing", spread.moments.missing, "rows without it");
  }
  for (std::size_t c = 0; c < findings.sensitivity.size(); ++c) {
    const SensitivityResult& result = findings.sensitivity[c];
    const std::string& outcome = table.outcomes[c].name;
    count(outcome + ".base_points_dropped", result.dropped, "base points with a row that has no number");
    for (std::size_t k = 0; k < result.keys.size(); ++k) {
      const std::string place = fmt::format("{}.{}", outcome, table.varied[k].name);
      const SensitivityIndex& index = result.keys[k];
      add("first_index." + place, index.first, "1", "share of the outcome's variance that knowing the key alone would take away");
      add("first_index_low." + place, index.first_interval.low, "1", "lower end of its interval");
      add("first_index_high." + place, index.first_interval.high, "1", "upper end of its interval");
      add("total_index." + place, index.total, "1", "share of the outcome's variance that the key has to do with");
      add("total_index_low." + place, index.total_interval.low, "1", "lower end of its interval");
      add("total_index_high." + place, index.total_interval.high, "1", "upper end of its interval");
    }
  }
  for (std::size_t c = 0; c < findings.screening.size(); ++c)
    for (std::size_t k = 0; k < findings.screening[c].size(); ++k) {
      const std::string place = fmt::format("{}.{}", table.outcomes[c].name, table.varied[k].name);
      const ElementaryEffects& effects = findings.screening[c][k];
      add("effect." + place, effects.magnitude, table.outcomes[c].unit, "mean size of the change over the whole spread of the key");
      add("effect_mean." + place, effects.mean, table.outcomes[c].unit, "the same with its sign");
      add("effect_deviation." + place, effects.deviation, table.outcomes[c].unit, "how much it depends on where it is taken");
    }
  return list;
}

}  // namespace sinewright::study
