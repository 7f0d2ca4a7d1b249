#include "strength/size_limits.h"

#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

namespace {

void check(const SizeLimits& limits, const char* lower, const char* upper) {
  require_finite(limits.lower, lower, "m");
  require(std::isfinite(limits.upper) && limits.upper >= limits.lower, upper, limits.upper, "m",
          "finite, at least the smallest size");
}

}  // namespace

SizeLimits process_limits(double nominal, double half_width) {
  require_not_negative(half_width, "half width of the process tolerance", "m");
  return process_limits(nominal, -half_width, half_width);
}

SizeLimits process_limits(double nominal, double lower_deviation, double upper_deviation) {
  require_positive(nominal, "nominal size", "m");
  require(std::isfinite(lower_deviation) && nominal + lower_deviation > 0, "lower deviation", lower_deviation,
          "m", "finite, leaving a size above 0");
  require(std::isfinite(upper_deviation) && upper_deviation >= lower_deviation, "upper deviation",
          upper_deviation, "m", "finite, at least the lower one");
  return {nominal + lower_deviation, nominal + upper_deviation};
}

FitRange fit_range(const SizeLimits& hole, const SizeLimits& pin) {
  check(hole, "smallest hole", "largest hole");
  check(pin, "smallest pin", "largest pin");
  return {hole.lower - pin.upper, hole.upper - pin.lower};
}

}  // namespace sinewright::strength
