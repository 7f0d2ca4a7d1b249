#pragma once

namespace sinewright::strength {

/// Smallest and largest size that a part may have [m].
struct SizeLimits {
  double lower = 0;
  double upper = 0;
};

/// Limits of a process that makes the nominal size within ± half_width.
/// @param nominal     [m], > 0.
/// @param half_width  [m], ≥ 0, below the nominal size.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] SizeLimits process_limits(double nominal, double half_width);

/// The same with two deviations, for instance of printed holes, which come out small.
/// @param lower_deviation  [m], either sign; the size must stay above 0.
/// @param upper_deviation  [m], at least the lower one.
[[nodiscard]] SizeLimits process_limits(double nominal, double lower_deviation, double upper_deviation);

/// Range of hole − pin, on the diameter [m]; negative values are interference.
struct FitRange {
  double smallest_clearance = 0;
  double largest_clearance = 0;

  [[nodiscard]] double smallest_interference() const noexcept { return -largest_clearance; }
  [[nodiscard]] double largest_interference() const noexcept { return -smallest_clearance; }
};

/// Hole and pin anywhere within their limits: smallest = hole.lower − pin.upper, largest = hole.upper −
/// pin.lower.
/// @throws InvalidInput if limits are not finite or in the wrong order.
[[nodiscard]] FitRange fit_range(const SizeLimits& hole, const SizeLimits& pin);

}  // namespace sinewright::strength
