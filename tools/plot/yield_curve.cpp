#include "plot/yield_curve.h"

#include <algorithm>
#include <cmath>

namespace sinewright::plot {

namespace {

// Whether a row meets all requirements but one side of one of them.
bool meets_the_rest(const record::StudyRecord& table, std::uint64_t row, const Bound& bound) {
  if (!ran(table, row)) return false;
  for (std::size_t r = 0; r < table.requirements.size(); ++r) {
    const record::StudyRequirement& requirement = table.requirements[r];
    if (r != bound.requirement) {
      if (requirement.shortfalls[row] > 0) return false;
      continue;
    }
    const double value = table.outcomes[bound.outcome].values[row];
    if (bound.at_least ? value > requirement.at_most : value < requirement.at_least) return false;  // NaN: no such side
  }
  return true;
}

}  // namespace

std::vector<YieldPoint> yield_curve(const StudyView& view, const Bound& bound, std::size_t points) {
  const record::StudyRecord& table = view.table;
  const std::uint64_t first = view.findings.first, last = view.findings.last;
  const Scale scale = scale_of(table.outcomes[bound.outcome]);
  const record::StudyRequirement& requirement = table.requirements[bound.requirement];
  const double stands = bound.at_least ? requirement.at_least : requirement.at_most;

  std::vector<double> alone, all;  // SI
  for (std::uint64_t row = first; row < last; ++row) {
    const double value = table.outcomes[bound.outcome].values[row];
    if (std::isnan(value) || !ran(table, row)) continue;
    alone.push_back(value);
    if (meets_the_rest(table, row, bound)) all.push_back(value);
  }
  std::sort(alone.begin(), alone.end());
  std::sort(all.begin(), all.end());

  double low = stands, high = stands;
  for (const double value : alone)
    if (std::isfinite(value)) low = std::min(low, value), high = std::max(high, value);
  const double room = high > low ? 0.05 * (high - low) : low != 0 ? 0.05 * std::abs(low) : 1 / scale.factor;
  low -= room, high += room;
  std::vector<double> places = {stands};
  for (std::size_t i = 0; i < points; ++i) places.push_back(low + (high - low) * static_cast<double>(i) / static_cast<double>(points - 1));
  std::sort(places.begin(), places.end());

  const auto meeting = [&](const std::vector<double>& sorted, double place) {
    return static_cast<std::uint64_t>(bound.at_least ? sorted.end() - std::lower_bound(sorted.begin(), sorted.end(), place)
                                                     : std::upper_bound(sorted.begin(), sorted.end(), place) - sorted.begin());
  };
  std::vector<YieldPoint> curve;
  const std::uint64_t n = last - first;
  if (n == 0) return curve;
  for (const double place : places) {
    const std::uint64_t met = meeting(all, place);
    curve.push_back({scale(place), static_cast<double>(meeting(alone, place)) / static_cast<double>(n), static_cast<double>(met) / static_cast<double>(n),
                     study::clopper_pearson_interval(met, n, table.confidence)});
  }
  return curve;
}

}  // namespace sinewright::plot
