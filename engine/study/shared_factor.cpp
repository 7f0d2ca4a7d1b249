#include "study/shared_factor.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "study/argument.h"
#include "study/normal.h"

namespace sinewright::study {

namespace {

constexpr double kLeast = 0x1p-53, kMost = 1 - 0x1p-53;

double inside(double u) {
  require(u > 0 && u < 1, "coordinate of a point", u, "between 0 and 1, both left out");
  return normal_quantile(u);
}

}  // namespace

void share_factor(double factor, double correlation, std::span<double> members) {
  require(correlation >= 0 && correlation <= 1, "correlation of a group", correlation, "0 to 1");
  const double f = inside(factor), shared = std::sqrt(correlation), own = std::sqrt(1 - correlation);
  // Φ of a far value rounds to 1; a coordinate must stay inside.
  for (double& u : members) u = std::clamp(normal_cumulative(shared * f + own * inside(u)), kLeast, kMost);
}

double rank_correlation(double correlation) { return 6 / std::numbers::pi * std::asin(0.5 * correlation); }

double correlation_for_rank(double rank_correlation) { return 2 * std::sin(std::numbers::pi / 6 * rank_correlation); }

}  // namespace sinewright::study
