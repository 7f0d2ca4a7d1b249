#include "study/failure_cause.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "study/argument.h"
#include "study/sample_statistics.h"

namespace sinewright::study {

namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

FailureCause cause_of(std::vector<std::pair<double, bool>>& values, double fails, double passes, std::size_t keys) {
  std::sort(values.begin(), values.end());
  FailureCause cause;
  double failed_below = 0, passed_below = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    ++(values[i].second ? failed_below : passed_below);
    const bool last_of_equals = i + 1 == values.size() || values[i + 1].first != values[i].first;
    if (last_of_equals) cause.distance = std::max(cause.distance, std::abs(failed_below / fails - passed_below / passes));
  }
  cause.chance = std::min(1.0, static_cast<double>(keys) * distance_by_chance(cause.distance, static_cast<std::uint64_t>(fails),
                                                                              static_cast<std::uint64_t>(passes)));
  std::vector<double> all, of_fails, of_passes;
  for (const auto& [value, failed] : values) {
    all.push_back(value);
    (failed ? of_fails : of_passes).push_back(value);
  }
  const double spread = sample_moments(all).deviation;
  cause.side = spread > 0 ? (sample_moments(of_fails).mean - sample_moments(of_passes).mean) / spread : 0;

  // A value belongs to the fifth in which its first equal stands: equals stay together.
  std::array<double, 5> fifth_fails{}, fifth_all{};
  std::size_t first = 0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (values[i].first != values[first].first) first = i;
    const std::size_t fifth = first * 5 / values.size();
    fifth_fails[fifth] += values[i].second;
    ++fifth_all[fifth];
  }
  for (std::size_t f = 0; f < 5; ++f) cause.fail_share[f] = fifth_all[f] > 0 ? fifth_fails[f] / fifth_all[f] : kNone;
  return cause;
}

}  // namespace

double distance_by_chance(double distance, std::uint64_t n, std::uint64_t m) {
  const double a = static_cast<double>(n), b = static_cast<double>(m);
  const double root = std::sqrt(a * b / (a + b));
  const double x = (root + 0.12 + 0.11 / root) * distance;
  if (x < 0.2) return 1;  // to 13 digits; the series below needs many terms there
  double sum = 0;
  for (int j = 1; j <= 100; ++j) {
    const double term = 2 * (j % 2 == 1 ? 1 : -1) * std::exp(-2.0 * j * j * x * x);
    sum += term;
    if (std::abs(term) < 1e-17) break;
  }
  return std::clamp(sum, 0.0, 1.0);
}

std::vector<FailureCause> failure_causes(std::span<const double> inputs, std::size_t keys, const std::vector<bool>& failed) {
  require(keys >= 1, "number of keys", static_cast<double>(keys), "at least 1");
  require(inputs.size() == keys * failed.size(), "number of inputs", static_cast<double>(inputs.size()), "rows times keys");
  const auto fails = static_cast<double>(std::count(failed.begin(), failed.end(), true));
  const double passes = static_cast<double>(failed.size()) - fails;
  std::vector<FailureCause> causes(keys, {kNone, kNone, kNone, {kNone, kNone, kNone, kNone, kNone}});
  if (fails == 0 || passes == 0) return causes;
  for (std::size_t key = 0; key < keys; ++key) {
    std::vector<std::pair<double, bool>> values;
    for (std::size_t row = 0; row < failed.size(); ++row) values.emplace_back(inputs[row * keys + key], failed[row]);
    causes[key] = cause_of(values, fails, passes, keys);
  }
  return causes;
}

}  // namespace sinewright::study
