#include "plot/study_view.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "plot/gnuplot.h"
#include "quantity/counter_random.h"
#include "quantity/invalid_input.h"
#include "quantity/quantity.h"

namespace sinewright::plot {

namespace {

std::string with_unit(const std::string& name, const std::string& unit) {
  return unit.empty() || unit == "1" ? name : fmt::format("{} [{}]", name, unit);
}

// The run before the first point, if all outcomes that have one share it.
std::string only_run(const record::StudyRecord& table) {
  std::string run;
  for (const auto& outcome : table.outcomes) {
    const auto dot = outcome.name.find('.');
    if (dot == std::string::npos) continue;
    const std::string one = outcome.name.substr(0, dot + 1);
    if (!run.empty() && one != run) return "";
    run = one;
  }
  return run;
}

}  // namespace

std::string identity_of(const record::StudyRecord& table) {
  std::string rows = fmt::format("{} design{}", counted(table.designs), table.designs == 1 ? "" : "s");
  if (table.kind == "tolerance") rows = fmt::format("{} made", counted(table.designs));
  if (table.rows() > table.designs) rows += fmt::format(", {} made of the chosen one", counted(table.rows() - table.designs));
  return fmt::format("{} · {}, {} · sinewright {} · design predictions, not certification", shortened(table.name, 50), table.kind, rows, table.inputs.engine_version);
}

std::string outcome_title(const record::StudyRecord& table, std::size_t outcome) {
  std::string name = table.outcomes[outcome].name;
  const std::string run = only_run(table);
  if (!run.empty() && name.starts_with(run)) name.erase(0, run.size());
  // What stands after the quantity's own name are names of the user's.
  const std::size_t start = run.empty() && name.find('.') != std::string::npos ? name.find('.') + 1 : 0;
  const std::size_t stem_end = std::min(name.find('.', start), name.size());
  std::replace(name.begin(), name.begin() + static_cast<std::ptrdiff_t>(stem_end), '_', ' ');
  if (stem_end < name.size()) name.replace(stem_end, 1, ", ");
  if (start > 0) name.replace(start - 1, 1, ": ");
  return name;
}

std::string outcome_label(const record::StudyRecord& table, std::size_t outcome) {
  return with_unit(outcome_title(table, outcome), table.outcomes[outcome].shown_in);
}

std::string key_label(const record::StudyColumn& key) {
  return with_unit(key.name, key.shown_in);
}

Scale scale_of(const record::StudyColumn& column) {
  if (!column.options.empty() || column.shown_in.empty() || column.shown_in == "1") return {};
  try {
    const double zero = from_si(0, column.shown_in);
    return {from_si(1, column.shown_in) - zero, zero};
  } catch (const InvalidInput&) {
    return {};  // a unit that only its writer knows
  }
}

std::vector<double> shown_values(const record::StudyColumn& column) {
  const Scale scale = scale_of(column);
  std::vector<double> values = column.values;
  for (double& value : values) value = scale(value);
  return values;
}

std::string shown_text(const record::StudyColumn& column, double si) {
  if (std::isnan(si)) return "—";
  if (!column.options.empty()) {
    const auto i = static_cast<std::size_t>(std::max(0.0, si));
    return i < column.options.size() ? column.options[i] : "—";
  }
  const bool bare = column.shown_in.empty() || column.shown_in == "1";
  return fmt::format("{:.4g}{}{}", scale_of(column)(si), bare ? "" : " ", bare ? "" : column.shown_in);
}

std::vector<Bound> bounds_on(const record::StudyRecord& table, std::size_t outcome) {
  std::vector<Bound> bounds;
  const auto& column = table.outcomes[outcome];
  for (std::size_t r = 0; r < table.requirements.size(); ++r) {
    const auto& requirement = table.requirements[r];
    if (requirement.quantity != column.name) continue;
    for (const bool at_least : {true, false}) {
      const double si = at_least ? requirement.at_least : requirement.at_most;
      if (std::isfinite(si)) bounds.push_back({r, outcome, at_least, scale_of(column)(si), fmt::format("{} {}", at_least ? "at least" : "at most", shown_text(column, si))});
    }
  }
  return bounds;
}

std::vector<Bound> all_bounds(const record::StudyRecord& table) {
  std::vector<Bound> all;
  for (std::size_t c = 0; c < table.outcomes.size(); ++c)
    for (auto& bound : bounds_on(table, c)) all.push_back(std::move(bound));
  return all;
}

double chance_of_row(std::uint64_t row, std::uint64_t purpose) {
  // A seed of its own: that of a study also makes its points, and rows chosen with it would lie in a corner of what varies.
  constexpr std::uint64_t seed = 0xb5a1c07e3d92f864U;
  return to_unit(random_bits(seed, row, purpose));
}

std::vector<std::uint64_t> rows_to_draw(std::uint64_t first, std::uint64_t last, std::size_t most, std::span<const std::uint64_t> always) {
  std::vector<std::uint64_t> rows;
  const double share = static_cast<double>(most) / static_cast<double>(std::max<std::uint64_t>(1, last - first));
  for (std::uint64_t row = first; row < last; ++row)
    if (share >= 1 || chance_of_row(row, 0) < share) rows.push_back(row);
  for (const std::uint64_t row : always)
    if (row >= first && row < last) rows.push_back(row);
  std::sort(rows.begin(), rows.end());
  rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
  return rows;
}

std::vector<double> different_values(std::span<const double> values) {
  std::vector<double> list;
  for (const double value : values)
    if (std::isfinite(value)) list.push_back(value);
  std::sort(list.begin(), list.end());
  list.erase(std::unique(list.begin(), list.end()), list.end());
  return list;
}

std::size_t outcome_of_goal(const record::StudyRecord& table, std::size_t goal) {
  for (std::size_t c = 0; c < table.outcomes.size(); ++c)
    if (table.outcomes[c].name == table.goals[goal].first) return c;
  throw InvalidInput(fmt::format("the table has no column for its goal {}", table.goals[goal].first));
}

std::string counted(std::uint64_t n) {
  std::string digits = std::to_string(n);
  for (std::size_t at = digits.size(); at > 3;) digits.insert(at -= 3, ",");
  return digits;
}

Extent extent_of(std::span<const double> values, std::span<const Bound> bounds) {
  constexpr double room = 0.07, least_share = 0.25;
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (const double value : values)
    if (std::isfinite(value)) low = std::min(low, value), high = std::max(high, value);
  const bool none = low > high;
  const double values_span = none ? 0 : high - low;
  for (const Bound& bound : bounds) {
    const double with_low = std::min(low, bound.value), with_high = std::max(high, bound.value);
    if (none || values_span == 0 || values_span >= least_share * (with_high - with_low)) low = with_low, high = with_high;
  }
  if (low > high) return {0, 1};
  // Numbers that are all alike get a frame that shows them as such.
  const double size = std::max(std::abs(low), std::abs(high)), least = size > 0 ? 0.02 * size : 1;
  if (high - low < least) {
    const double middle = 0.5 * (low + high);
    return {middle - least, middle + least};
  }
  return {low - room * (high - low), high + room * (high - low)};
}

}  // namespace sinewright::plot
