#include "study/proportion_interval.h"

#include <algorithm>
#include <cmath>

#include <boost/math/special_functions/beta.hpp>

#include "study/argument.h"
#include "study/normal.h"

namespace sinewright::study {

namespace {

void require_trials(std::uint64_t passes, std::uint64_t trials, double confidence) {
  require(trials > 0, "number of trials", 0, "at least 1");
  require(passes <= trials, "number of passes", static_cast<double>(passes), "at most the number of trials");
  require(confidence > 0 && confidence < 1, "confidence", confidence, "between 0 and 1, both left out");
}

}  // namespace

Interval wilson_interval(std::uint64_t passes, std::uint64_t trials, double confidence) {
  require_trials(passes, trials, confidence);
  const double n = static_cast<double>(trials), p = static_cast<double>(passes) / n;
  const double z = -normal_quantile(0.5 * (1 - confidence));
  const double centre = p + z * z / (2 * n), half = z * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n));
  const double scale = 1 + z * z / n;
  // The ends at 0 and all passes are exactly 0 and 1; rounding would leave 1e-17.
  return {passes == 0 ? 0 : (centre - half) / scale, passes == trials ? 1 : (centre + half) / scale};
}

Interval clopper_pearson_interval(std::uint64_t passes, std::uint64_t trials, double confidence) {
  require_trials(passes, trials, confidence);
  const double n = static_cast<double>(trials), k = static_cast<double>(passes), tail = 0.5 * (1 - confidence);
  return {passes == 0 ? 0 : boost::math::ibeta_inv(k, n - k + 1, tail),
          passes == trials ? 1 : boost::math::ibetac_inv(k + 1, n - k, tail)};
}

std::uint64_t trials_without_failure(double yield, double confidence) {
  require(yield > 0 && yield < 1, "yield", yield, "between 0 and 1, both left out");
  require(confidence > 0 && confidence < 1, "confidence", confidence, "between 0 and 1, both left out");
  const double n = std::log1p(-confidence) / std::log(yield);
  // At 0.9 and 0.9, for instance, n may be a whole number but for its last digit.
  return static_cast<std::uint64_t>(std::max(1.0, std::ceil(n * (1 - 1e-14))));
}

}  // namespace sinewright::study
