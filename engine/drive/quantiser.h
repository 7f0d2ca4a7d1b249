#pragma once

#include <algorithm>
#include <cmath>

namespace sinewright::drive {

/// A converter with 2^bits even steps over low … high. What lies outside is cut to the first or last step.
class Quantiser {
 public:
  constexpr Quantiser(double low, double high, int bits) : low_(low), steps_(static_cast<double>(1L << bits)), step_((high - low) / steps_) {}

  [[nodiscard]] double count(double value) const { return std::clamp(std::floor((value - low_) / step_), 0.0, steps_ - 1); }
  /// What the firmware takes a count for: the middle of its step.
  [[nodiscard]] double reading(double count) const { return low_ + (count + 0.5) * step_; }
  [[nodiscard]] double step() const { return step_; }

 private:
  double low_, steps_, step_;
};

}  // namespace sinewright::drive
