#include "study/study.h"

#include <algorithm>
#include <limits>

#include <fmt/format.h>

#include "study/optimisation.h"

namespace sinewright::study {

namespace {

// The number that the files give at a key of a variable, with a design's changes in place.
Quantity written_at(reading::Source& source, const model::Study& study, const std::vector<std::string>& overrides,
                    const std::vector<std::string>& changes, const model::Variable& variable, const std::string& key) {
  const bool of_model = key.starts_with("model.");
  for (const model::StudyRun& run : study.runs) {
    if (!of_model && !key.starts_with(run.name + ".")) continue;
    std::string scenario = run.scenario;
    std::vector<std::string> all;
    if (!run.limit.empty()) {
      const model::LimitStudy limit = reading::read_limit(source, run.limit);
      scenario = limit.scenario;
      all = limit.change;
    }
    for (const auto& list : {run.change, changes_for(run, overrides), changes_for(run, changes)}) all.insert(all.end(), list.begin(), list.end());
    const auto found = reading::written_quantity(source, scenario, all, of_model ? key : key.substr(run.name.size() + 1));
    if (found) return *found;
    break;
  }
  throw InvalidInput(fmt::format("{}:{}:{}: {}: the files give no number at {}\n  needed: a key that is written there, or 'from' and 'to'",
                                 variable.place.file, variable.place.line, variable.place.column, variable.name, key));
}

// Everything that the rows depend on.
std::string fingerprint(const model::Study& study, const Bench& bench, const StudyOptions& options) {
  std::string all = study.name + '\n' + options.fingerprint + '\n' + fmt::format("{}", fmt::join(options.overrides, "\n")) + '\n';
  for (const auto& [path, text] : bench.texts) all += path + '\n' + text + '\n';
  return fingerprint_of(all);
}

// Runs the rows [first, first + changes.size()) that the journal lacks. @returns false if it was stopped.
class Shop {
 public:
  Shop(const Bench& bench, Journal& journal, const StudyOptions& options) : bench_(bench), journal_(journal), options_(options) {}

  template <class ChangesOf>
  bool run(std::uint64_t first, std::uint64_t count, std::uint64_t expected, const ChangesOf& changes_of_row) {
    static const std::atomic<bool> never = false;
    const std::atomic<bool>& stop = options_.stop ? *options_.stop : never;
    std::uint64_t next = first;
    work_off(
        bench_, options_.threads,
        [&](Task& task) {
          while (next < first + count && journal_.has(static_cast<long long>(next))) ++next;
          if (next >= first + count) return Reply::end;
          task = {static_cast<long long>(next), changes_of_row(next)};
          ++next;
          return Reply::task;
        },
        [&](const DesignResult& result) {
          journal_.add(result);
          if (options_.progress) options_.progress(journal_.size(), std::max<std::uint64_t>(expected, journal_.size()));
        },
        stop, options_.followers);
    for (std::uint64_t row = first; row < first + count; ++row)
      if (!journal_.has(static_cast<long long>(row))) return false;
    return true;
  }

 private:
  const Bench& bench_;
  Journal& journal_;
  const StudyOptions& options_;
};

// What an optimiser sees of a design. What broke off has no say, whatever it had reached by then.
Assessment assess(const DesignResult& result, const std::vector<model::Goal>& goals, const std::vector<OutcomeColumn>& columns) {
  Assessment assessment;
  for (const model::Goal& goal : goals)
    for (std::size_t c = 0; c < columns.size(); ++c)
      if (columns[c].name == goal.outcome) assessment.objectives.push_back((goal.maximise ? -1 : 1) * result.outcomes[c]);
  assessment.violations = result.shortfalls;
  const bool broke_off = result.state == State::stopped || result.state == State::invalid;
  assessment.violations.push_back(broke_off ? std::numeric_limits<double>::infinity() : 0);
  return assessment;
}

}  // namespace

std::vector<double> StudyTable::values(std::uint64_t row) const {
  std::vector<double> values = plan_ ? plan_->values(row) : searched_.at(row < designs_ ? row : chosen.value());
  if (row < designs_ || !made_) {
    values.resize(axes.size() + making.size(), std::numeric_limits<double>::quiet_NaN());
    return values;
  }
  const std::vector<double> made = made_->values(row - designs_);
  values.insert(values.end(), made.begin(), made.end());
  return values;
}

void help_study(reading::Source& source, const model::Study& study, const StudyOptions& options, Ranks& ranks) {
  const Bench bench = set_up(study, source, options.overrides);
  follow(ranks, fingerprint(study, bench, options), bench, options.threads);
}

StudyTable run_study(reading::Source& source, const model::Study& study, const StudyOptions& options) {
  StudyTable table;
  table.bench = set_up(study, source, options.overrides);
  const std::string mark = fingerprint(study, table.bench, options);
  if (options.followers) options.followers->greet(mark);
  const auto resolved = [&](const std::vector<model::Variable>& list, const std::vector<std::string>& changes) {
    std::vector<Axis> axes;
    for (const model::Variable& variable : list)
      axes.push_back(resolve(variable, [&](const std::string& key) { return written_at(source, study, options.overrides, changes, variable, key); }));
    return axes;
  };
  table.axes = resolved(study.vary, {});
  std::vector<model::Variable> vary;
  for (const Axis& axis : table.axes) vary.push_back(axis.variable);
  const auto* optimise = std::get_if<model::OptimiseStudy>(&study.kind);
  if (!optimise) {
    table.plan_.emplace(study.kind, table.axes, study.groups);
  } else {
    for (const Axis& axis : table.axes) (void)search_variable(axis);  // what cannot be chosen shows before anything is run
    if (optimise->robustness) (void)resolved(optimise->robustness->vary, {});
  }

  table.journal_ = std::make_shared<Journal>(options.journal, mark, options.resume);
  Shop shop(table.bench, *table.journal_, options);
  if (table.plan_) {
    table.rows_ = table.designs_ = table.plan_->rows();
    table.complete = shop.run(0, table.rows_, table.rows_, [&](std::uint64_t row) { return changes_of(vary, table.plan_->values(row)); });
    return table;
  }

  // An optimisation asks for a batch, and is told what became of it; a resumed one is told from the journal.
  const std::uint64_t made_rows = optimise->robustness ? static_cast<std::uint64_t>(optimise->robustness->sample.runs) : 0;
  const std::uint64_t expected = static_cast<std::uint64_t>(optimise->runs) + made_rows;
  const auto values_of = [&](const Design& design) {
    std::vector<double> values;
    for (std::size_t i = 0; i < design.size(); ++i) values.push_back(from_search(table.axes[i], design[i]));
    return values;
  };
  const RunBatch run_batch = [&](const std::vector<Design>& asked, std::vector<Assessment>& told) {
    const std::uint64_t first = table.searched_.size();
    for (const Design& design : asked) table.searched_.push_back(values_of(design));
    table.rows_ = table.designs_ = table.searched_.size();
    if (!shop.run(first, asked.size(), expected, [&](std::uint64_t row) { return changes_of(vary, table.searched_[row]); })) return false;
    told.clear();
    for (std::uint64_t row = first; row < table.rows_; ++row) told.push_back(assess(table.result(row), optimise->goals, table.bench.columns));
    return true;
  };
  std::vector<SearchVariable> variables;
  for (const Axis& axis : table.axes) variables.push_back(search_variable(axis));
  const Optimum optimum = search_optimum(variables, *optimise, run_batch);
  if (!optimum.complete) return table;
  std::vector<Assessment> front;
  for (const Member& member : optimum.best) {
    const auto row = std::find(table.searched_.begin(), table.searched_.end(), values_of(member.design));
    table.best.push_back(static_cast<std::uint64_t>(row - table.searched_.begin()));
    front.push_back(member.assessment);
  }
  table.complete = true;
  if (!optimise->robustness || table.best.empty()) return table;

  table.chosen = table.best[most_balanced(front)];
  const std::vector<std::string> chosen_changes = changes_of(vary, table.searched_[*table.chosen]);
  table.making = resolved(optimise->robustness->vary, chosen_changes);
  table.made_.emplace(model::StudyKind(optimise->robustness->sample), table.making, study.groups);
  std::vector<model::Variable> making;
  for (const Axis& axis : table.making) making.push_back(axis.variable);
  table.rows_ = table.designs_ + table.made_->rows();
  table.complete = shop.run(table.designs_, table.made_->rows(), table.rows_, [&](std::uint64_t row) {
    std::vector<std::string> changes = chosen_changes;
    for (std::string& change : changes_of(making, table.made_->values(row - table.designs_))) changes.push_back(std::move(change));
    return changes;
  });
  return table;
}

}  // namespace sinewright::study
