#pragma once

#include <algorithm>
#include <cmath>

#include "model/sensor.h"

namespace sinewright::drive {

/// The play operator: where the driven side stands after the driving side went to `to` without turning round [rad]. Exact for a
/// way of any length, independent of the rate, and without creep.
///
/// @param driven  before. @param half_width  r ≥ 0: the driven side stands while the two are less than r apart.
[[nodiscard]] constexpr double play(double driven, double to, double half_width) {
  return std::min(std::max(driven, to - half_width), to + half_width);
}

/// Half width r = b/2 + M/k of the play that a gap, an elastic collar and the friction of the sensor's rotor make together [rad].
[[nodiscard]] constexpr double half_play(const model::SensorFit& fit) {
  const double twist = fit.torsional_stiffness > 0 ? fit.friction_torque / fit.torsional_stiffness : 0;
  return fit.backlash / 2 + twist;
}

/// What the collar passes on [N m]: nothing within the gap. Without a torsional stiffness the collar is rigid and the torque not
/// known: 0.
[[nodiscard]] inline double collar_torque(const model::SensorFit& fit, double seat, double sensor) {
  const double twist = std::max(0.0, std::abs(seat - sensor) - fit.backlash / 2);
  return std::copysign(fit.torsional_stiffness * twist, seat - sensor);
}

}  // namespace sinewright::drive
