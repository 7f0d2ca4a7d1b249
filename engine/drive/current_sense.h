#pragma once

#include <cmath>

#include "drive/quantiser.h"
#include "model/sensor.h"

namespace sinewright::drive {

/// Output of a first-order low-pass after a time in which its input went evenly from one value to another: exact. No time constant:
/// the input itself.
[[nodiscard]] inline double low_pass(double output, double from, double to, double time, double time_constant) {
  if (time_constant == 0 || time == 0) return time_constant == 0 ? to : output;
  const double lag = (to - from) / time * time_constant;
  return to - lag + (output - from + lag) * std::exp(-time / time_constant);
}

struct CurrentSample {
  double count = 0;
  double reading = 0;  ///< [A]
};

/// @param filtered  current after the low-pass [A]. @param noise  [A].
[[nodiscard]] inline CurrentSample sample(const model::CurrentSense& sense, double filtered, double noise) {
  const Quantiser converter(sense.low, sense.high, sense.bits);
  const double count = converter.count((1 + sense.gain_error) * filtered + sense.offset + noise);
  return {count, converter.reading(count)};
}

}  // namespace sinewright::drive
