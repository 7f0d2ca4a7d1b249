#include "study/sensitivity.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "quantity/counter_random.h"
#include "study/argument.h"
#include "study/sample_statistics.h"

namespace sinewright::study {

namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

// What a base point adds to the sums. The mean is taken off the outcomes first: the estimator of the first order has the
// same expectation with any constant taken off, and the least spread without the mean.
struct Sums {
  double sum = 0, squares = 0;         // over A and B
  std::vector<double> first, total;    // per key
  std::uint64_t points = 0;

  explicit Sums(std::size_t keys) : first(keys), total(keys) {}

  void clear() {
    sum = squares = 0;
    points = 0;
    std::fill(first.begin(), first.end(), 0);
    std::fill(total.begin(), total.end(), 0);
  }

  void add(const double* f, double mean) {
    const double a = f[0] - mean, b = f[1] - mean;
    sum += a + b;
    squares += a * a + b * b;
    for (std::size_t i = 0; i < first.size(); ++i) {
      const double ab = f[2 + i] - mean;
      first[i] += b * (ab - a);
      total[i] += 0.5 * (a - ab) * (a - ab);
    }
    ++points;
  }

  [[nodiscard]] double variance() const {
    const double n = 2 * static_cast<double>(points), m = sum / n;
    return squares / n - m * m;
  }
};

Interval percentile_interval(std::vector<double> values, double confidence) {
  const std::vector<double> sorted = sorted_numbers(values);
  return {sample_quantile(sorted, 0.5 * (1 - confidence)), sample_quantile(sorted, 0.5 * (1 + confidence))};
}

}  // namespace

SensitivityDesign::SensitivityDesign(std::uint64_t base_points, std::size_t keys, std::uint64_t seed)
    : base_points_(base_points), base_(2 * keys, seed) {
  require(base_points >= 2, "number of base points", static_cast<double>(base_points), "at least 2");
}

void SensitivityDesign::point(std::uint64_t row, std::span<double> u) const {
  const std::size_t k = keys();
  require(u.size() == k, "length of a point", static_cast<double>(u.size()), "the number of keys");
  require(row < rows(), "row of a sensitivity study", static_cast<double>(row), "below its number of rows");
  std::vector<double> both(2 * k);
  base_.point(row / (k + 2), both);
  const std::size_t part = row % (k + 2);
  for (std::size_t i = 0; i < k; ++i) u[i] = part == 1 || part == 2 + i ? both[k + i] : both[i];
}

SensitivityResult sensitivity(std::span<const double> outcomes, std::size_t keys, const SensitivityOptions& options) {
  require(keys >= 1, "number of keys", static_cast<double>(keys), "at least 1");
  const std::size_t block = keys + 2;
  require(outcomes.size() % block == 0, "number of outcomes", static_cast<double>(outcomes.size()), "a multiple of keys + 2");
  require(options.bootstrap >= 10, "number of resamplings", options.bootstrap, "at least 10");
  require(options.confidence > 0 && options.confidence < 1, "confidence", options.confidence, "between 0 and 1");

  SensitivityResult result;
  std::vector<const double*> usable;
  for (std::size_t at = 0; at < outcomes.size(); at += block) {
    const double* f = outcomes.data() + at;
    if (std::all_of(f, f + block, [](double y) { return std::isfinite(y); }))
      usable.push_back(f);
    else
      ++result.dropped;
  }
  result.used = usable.size();
  result.keys.assign(keys, {kNone, {kNone, kNone}, kNone, {kNone, kNone}});
  result.mean = result.variance = kNone;
  if (usable.empty()) return result;

  double sum = 0;
  for (const double* f : usable) sum += f[0] + f[1];
  result.mean = sum / (2 * static_cast<double>(usable.size()));

  Sums sums(keys);
  for (const double* f : usable) sums.add(f, result.mean);
  result.variance = sums.variance();
  // An outcome that does not vary but for its last digits has no shares.
  if (!(result.variance > 1e-24 * result.mean * result.mean)) return result;
  const double scale = result.variance * static_cast<double>(sums.points);
  for (std::size_t i = 0; i < keys; ++i) {
    result.keys[i].first = sums.first[i] / scale;
    result.keys[i].total = sums.total[i] / scale;
  }

  const auto resamplings = static_cast<std::size_t>(options.bootstrap);
  std::vector<std::vector<double>> first(keys, std::vector<double>(resamplings)), total = first;
  Sums again(keys);
  for (std::size_t r = 0; r < resamplings; ++r) {
    again.clear();
    RandomStream random(options.seed, r);
    for (std::size_t n = 0; n < usable.size(); ++n) again.add(usable[random.below(usable.size())], result.mean);
    const double of_all = again.variance() * static_cast<double>(again.points);
    for (std::size_t i = 0; i < keys; ++i) {
      first[i][r] = again.first[i] / of_all;
      total[i][r] = again.total[i] / of_all;
    }
  }
  for (std::size_t i = 0; i < keys; ++i) {
    result.keys[i].first_interval = percentile_interval(std::move(first[i]), options.confidence);
    result.keys[i].total_interval = percentile_interval(std::move(total[i]), options.confidence);
  }
  return result;
}

}  // namespace sinewright::study
