#pragma once

#include <algorithm>

namespace sinewright::simulation {

/// The cubic from (0, a) to (1, b) whose end slopes are cut to 0 … 3 times the mean slope, so that it does not turn round (Fritsch and
/// Carlson, SIAM J. Numer. Anal. 17 (1980) 238, from memory). @param slope_a  per unit of the share, as slope_b.
[[nodiscard]] inline double monotone_cubic(double a, double slope_a, double b, double slope_b, double share) {
  const double rise = b - a;
  const auto cut = [&](double slope) { return rise > 0 ? std::clamp(slope, 0.0, 3 * rise) : std::clamp(slope, 3 * rise, 0.0); };
  const double p = cut(slope_a), q = cut(slope_b), s = share;
  return a + s * (p + s * (3 * rise - 2 * p - q + s * (p + q - 2 * rise)));
}

}  // namespace sinewright::simulation
