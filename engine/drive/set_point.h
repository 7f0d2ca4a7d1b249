#pragma once

#include <vector>

#include "model/control.h"

namespace sinewright::drive {

/// Where a motion stands at a time.
struct SetPoint {
  double angle = 0;  ///< [rad]
  double speed = 0;  ///< [rad/s]
};

/// A move from one angle to another, a time after it began. Laws: docs/theory/control.md, "Set points".
///
///     trapezoid      speed rises at ±a to the smaller of v and √(a |Δ|), stays, falls
///     minimum jerk   x = x₀ + Δ (10 s³ − 15 s⁴ + 6 s⁵), s = t/T
[[nodiscard]] SetPoint along(const model::Move& move, double from, double to, double time);

/// How long a move takes [s].
[[nodiscard]] double duration(const model::Move& move, double from, double to);

/// A recorded motion, a time after it began: straight lines between its points, at rest outside.
[[nodiscard]] SetPoint along(const model::SetRecorded& recorded, double time);

}  // namespace sinewright::drive
