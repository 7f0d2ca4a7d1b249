#pragma once

#include "model/control.h"

namespace sinewright::drive {

/// The tension at the pulley that a wished-for force takes with the shaft at this angle, as the firmware reckons [N]:
///
///     T* = F/share + return_at_zero + return_per_angle φ,  not below 0
[[nodiscard]] double wanted_tension(const model::ForceByCurrent& known, double force, double angle);

/// The motor current that keeps this tension, as the firmware reckons [A]; n ratio, k torque constant, r radius, b drag of the brushes.
///
///     raising  n k i = T r/η_f + drag + n b     the motor lifts the load
///     lowering n k i = η_b T r − drag − n b     the load turns the motor back
///
/// cut to ± the highest current.
[[nodiscard]] double current_for(const model::ForceByCurrent& known, double tension, bool raising);

}  // namespace sinewright::drive
