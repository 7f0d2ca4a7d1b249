#include "study/design_runs.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "quantity/nearest.h"
#include "simulation/bill_of_materials.h"
#include "simulation/summary.h"
#include "strength/margin_watch.h"
#include "study/limit.h"

namespace sinewright::study {

namespace {

using simulation::SummaryValue;

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

void check_prefix(const std::string& key, const std::vector<model::StudyRun>& runs, const Place& place) {
  std::vector<std::string> known = {"model"};
  for (const auto& run : runs) known.push_back(run.name);
  const std::string first = key.substr(0, key.find('.'));
  if (std::find(known.begin(), known.end(), first) != known.end()) return;
  const std::string near = nearest(first, known);
  throw InvalidInput(fmt::format("{}:{}:{}: {}: there is no run '{}'\n  needed: a path that begins with one of: {}{}", place.file,
                                 place.line, place.column, key, first, fmt::join(known, ", "),
                                 near.empty() ? "" : fmt::format("\n  hint:   the nearest is '{}'", near)));
}

// What one run of a design gives, keys with the run's name before them.
struct Given {
  std::vector<SummaryValue> values;
  std::string trouble;  // why the run could not go on, one line
};

std::string place_text(const Place& place) {
  return fmt::format("{}:{}:{}", place.file, place.line, place.column);
}

SummaryValue cost_of(const simulation::BillOfMaterials& bill, const Place& place) {
  if (bill.unpriced > 0)
    throw InvalidInput(fmt::format("{}: 'cost' has no total, because parts have no price: {}\n  needed: a 'price' of each; 0 for what costs "
                                   "nothing\n  hint:   'sinewright inspect --parts' lists them",
                                   place_text(place), simulation::unpriced_parts(bill)));
  return {"cost", bill.total, "1", "price of all parts in " + bill.currency};
}

// The scenario of a run, or the one of which it finds a limit.
model::Scenario scenario_of(const model::StudyRun& run, reading::Source& source, const std::vector<std::string>& changes) {
  if (run.limit.empty()) return reading::read_scenario(source, run.scenario, changes);
  const model::LimitStudy limit = reading::read_limit(source, run.limit);
  std::vector<std::string> all = limit.change;
  all.insert(all.end(), changes.begin(), changes.end());
  return reading::read_scenario(source, limit.scenario, all);
}

std::string first_line(const std::string& text) {
  return text.substr(0, text.find('\n'));
}

// @param costing  set if this run's model is the one that is costed.
Given go_through(const model::StudyRun& run, reading::Source& source, const std::vector<std::string>& changes, const Costing* costing) {
  Given given;
  if (run.limit.empty()) {
    const simulation::System system(reading::read_scenario(source, run.scenario, changes));
    if (costing) given.values.push_back(cost_of(simulation::bill_of(system), costing->place));
    strength::MarginWatch watch(system);
    simulation::RunListener listener;
    strength::attach(watch, listener);
    simulation::RunResult result = simulation::run(system, listener);
    if (!result.complete) given.trouble = run.name + ": " + first_line(result.outcome);
    for (SummaryValue& value : result.summary) {
      value.key = run.name + "." + value.key;
      given.values.push_back(std::move(value));
    }
    return given;
  }
  if (costing) given.values.push_back(cost_of(simulation::bill_of(scenario_of(run, source, changes).model), costing->place));
  model::LimitStudy study = reading::read_limit(source, run.limit);
  if (!study.map.empty())
    throw InvalidInput(fmt::format("{}: a limit with a map has no single value to be an outcome", run.limit));
  const LimitResult result = find_limit(source, study, changes, 1);
  // In many directions the worst one counts.
  const Point* worst = std::holds_alternative<model::Directions>(study.task) ? least(result) : nullptr;
  const Answer& answer = (worst ? *worst : result.points.front()).answer;
  // Answers of a search are in the key's unit, those of a ramp in SI.
  const std::string unit = result.unit.empty() ? "1" : result.unit;
  const bool search = std::holds_alternative<model::Search>(study.task);
  const double si = !answer.found ? kNone : search ? to_si(answer.value, unit) : answer.value;
  given.values.push_back({run.name, si, si_unit(unit), study.name});
  if (!answer.found) given.trouble = run.name + ": " + first_line(answer.note);
  return given;
}

// All outcomes of a design, of all runs.
Given go_through_all(const Bench& bench, reading::Source& source, const std::vector<std::string>& changes) {
  Given all;
  for (std::size_t r = 0; r < bench.runs.size(); ++r) {
    const model::StudyRun& run = bench.runs[r];
    std::vector<std::string> own = run.change;
    for (const std::string& change : changes_for(run, bench.overrides)) own.push_back(change);
    for (const std::string& change : changes_for(run, changes)) own.push_back(change);
    Given given = go_through(run, source, own, bench.costing && bench.costing->run == r ? &*bench.costing : nullptr);
    for (auto& value : given.values) all.values.push_back(std::move(value));
    if (all.trouble.empty()) all.trouble = given.trouble;
  }
  return all;
}

// Share of the bound that is missing.
double shortfall(const model::Requirement& requirement, double value) {
  if (std::isnan(value)) return std::numeric_limits<double>::infinity();
  const auto missing = [](double bound, double by) { return std::max(0.0, by / (bound == 0 ? 1 : std::abs(bound))); };
  double most = 0;
  if (requirement.at_least) most = std::max(most, missing(*requirement.at_least, *requirement.at_least - value));
  if (requirement.at_most) most = std::max(most, missing(*requirement.at_most, value - *requirement.at_most));
  return most;
}

DesignResult result_of(const Bench& bench, long long index, const Given& given) {
  DesignResult result{index, State::met, {}, {}, ""};
  std::vector<SummaryValue> values;
  for (const OutcomeColumn& column : bench.columns) {
    const auto found = std::find_if(given.values.begin(), given.values.end(), [&](const auto& value) { return value.key == column.name; });
    const double value = found == given.values.end() ? kNone : found->value;
    result.outcomes.push_back(value);
    values.push_back({column.name, value, column.unit, ""});
  }
  for (const auto& requirement : bench.requirements) {
    const auto column = std::find_if(values.begin(), values.end(), [&](const auto& value) { return value.key == requirement.quantity; });
    result.shortfalls.push_back(shortfall(requirement, column->value));
  }
  const auto verdicts = simulation::judge(bench.requirements, values);
  for (const auto& verdict : verdicts)
    if (!verdict.met && result.state == State::met) {
      result.state = State::missed;
      result.reason = fmt::format("{} {}", verdict.quantity, verdict.demand);
    }
  if (!given.trouble.empty()) {
    result.state = State::stopped;
    result.reason = given.trouble;
  }
  return result;
}

// Where the design as drawn lacks an outcome that is asked for.
OutcomeColumn column_of(const std::string& name, const std::vector<SummaryValue>& values, const Place& place) {
  std::vector<std::string> known;
  for (const auto& value : values) {
    if (value.key == name) return {name, value.unit, value.description};
    known.push_back(value.key);
  }
  const std::string near = nearest(name, known);
  throw InvalidInput(fmt::format("{}: there is no outcome '{}'\n  needed: '<run>.<key of its summary>', '<run>' of a limit, or 'cost'{}",
                                 place_text(place), name, near.empty() ? "" : fmt::format("\n  hint:   the nearest is '{}'", near)));
}

std::vector<model::Requirement> requirements_of(const model::Study& study, reading::Source& source, const std::vector<std::string>& overrides) {
  std::vector<model::Requirement> all = study.requirements;
  for (const model::StudyRun& run : study.runs) {
    if (!run.limit.empty()) continue;
    std::vector<std::string> own = run.change;
    for (const std::string& change : changes_for(run, overrides)) own.push_back(change);
    for (model::Requirement requirement : reading::read_scenario(source, run.scenario, own).requirements) {
      requirement.quantity = run.name + "." + requirement.quantity;
      all.push_back(std::move(requirement));
    }
  }
  return all;
}

bool asks_for_cost(const model::Study& study) {
  const auto is_cost = [](const std::string& name) { return name == "cost"; };
  if (std::any_of(study.outcomes.begin(), study.outcomes.end(), is_cost)) return true;
  if (std::any_of(study.requirements.begin(), study.requirements.end(), [&](const auto& one) { return is_cost(one.quantity); })) return true;
  const auto* optimise = std::get_if<model::OptimiseStudy>(&study.kind);
  return optimise && std::any_of(optimise->goals.begin(), optimise->goals.end(), [&](const auto& goal) { return is_cost(goal.outcome); });
}

Costing costing_of(const model::Study& study) {
  const auto scenario = std::find_if(study.runs.begin(), study.runs.end(), [](const auto& run) { return run.limit.empty(); });
  return {scenario == study.runs.end() ? 0 : static_cast<std::size_t>(scenario - study.runs.begin()), study.place};
}

}  // namespace

std::vector<std::string> changes_for(const model::StudyRun& run, const std::vector<std::string>& changes) {
  std::vector<std::string> own;
  for (const std::string& change : changes) {
    if (change.starts_with("model."))
      own.push_back(change);
    else if (change.starts_with(run.name + "."))
      own.push_back(change.substr(run.name.size() + 1));
  }
  return own;
}

Bench set_up(const model::Study& study, reading::Source& source, const std::vector<std::string>& overrides) {
  Bench bench;
  bench.runs = study.runs;
  bench.overrides = overrides;
  for (const std::string& change : overrides) check_prefix(change.substr(0, change.find('=')), study.runs, {"--set " + change, 0, 0});
  const auto check_variables = [&](const std::vector<model::Variable>& vary) {
    for (const model::Variable& variable : vary) {
      for (const std::string& key : variable.keys) check_prefix(key, study.runs, variable.place);
      if (const auto* options = std::get_if<model::Options>(&variable.spread))
        for (const auto& changes : options->changes)
          for (const std::string& change : changes) check_prefix(change.substr(0, change.find('=')), study.runs, variable.place);
    }
  };
  check_variables(study.vary);
  const auto* optimise = std::get_if<model::OptimiseStudy>(&study.kind);
  if (optimise && optimise->robustness) check_variables(optimise->robustness->vary);

  if (asks_for_cost(study)) bench.costing = costing_of(study);
  bench.requirements = requirements_of(study, source, overrides);
  const Given drawn = go_through_all(bench, source, {});
  const auto add = [&](const std::string& name, const Place& place) {
    if (std::none_of(bench.columns.begin(), bench.columns.end(), [&](const auto& column) { return column.name == name; }))
      bench.columns.push_back(column_of(name, drawn.values, place));
  };
  for (const std::string& name : study.outcomes) add(name, study.outcomes_place);
  if (optimise)
    for (const model::Goal& goal : optimise->goals) add(goal.outcome, study.place);
  for (const auto& requirement : bench.requirements) add(requirement.quantity, requirement.place);
  if (bench.columns.empty())
    throw InvalidInput(fmt::format("{}: the study asks for nothing\n  needed: 'outcomes', or requirements here or in the scenarios",
                                   place_text(study.place)));
  bench.drawn = result_of(bench, -1, drawn);

  // Each option once, so that its files are known and its mistakes show now.
  for (const model::Variable& variable : study.vary) {
    const auto* options = std::get_if<model::Options>(&variable.spread);
    if (options == nullptr) continue;
    for (const auto& changes : options->changes)
      for (std::size_t r = 0; r < study.runs.size(); ++r) {
        const model::StudyRun& run = study.runs[r];
        std::vector<std::string> own = run.change;
        for (const std::string& change : changes_for(run, overrides)) own.push_back(change);
        for (const std::string& change : changes_for(run, changes)) own.push_back(change);
        const model::Scenario scenario = scenario_of(run, source, own);
        if (bench.costing && bench.costing->run == r) (void)cost_of(simulation::bill_of(scenario.model), bench.costing->place);
      }
  }
  for (const auto& file : source.handed_out()) bench.texts.emplace_back(file.path, file.text);
  return bench;
}

std::vector<std::string> changes_of(const std::vector<model::Variable>& vary, const std::vector<double>& values) {
  std::vector<std::string> changes;
  for (std::size_t i = 0; i < vary.size(); ++i) {
    if (const auto* options = std::get_if<model::Options>(&vary[i].spread)) {
      const auto& chosen = options->changes.at(static_cast<std::size_t>(values[i]));
      changes.insert(changes.end(), chosen.begin(), chosen.end());
      continue;
    }
    for (const std::string& key : vary[i].keys)
      changes.push_back(fmt::format("{}={}{}{}", key, values[i], vary[i].unit.empty() ? "" : " ", vary[i].unit));
  }
  return changes;
}

DesignResult run_design(const Bench& bench, reading::Source& source, long long index, const std::vector<std::string>& changes) {
  const auto without_values = [&](State state, const std::string& why) -> DesignResult {
    return {index, state, std::vector<double>(bench.columns.size(), kNone),
            std::vector<double>(bench.requirements.size(), std::numeric_limits<double>::infinity()), first_line(why)};
  };
  try {
    return result_of(bench, index, go_through_all(bench, source, changes));
  } catch (const InvalidInput& error) {
    return without_values(State::invalid, error.what());
  } catch (const std::bad_alloc&) {
    throw;
  } catch (const std::exception& error) {
    return without_values(State::stopped, error.what());
  }
}

}  // namespace sinewright::study
