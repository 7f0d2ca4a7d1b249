#pragma once

#include <Eigen/Core>

namespace sinewright::friction {

using Eigen::Vector3d;

/// Radius of the friction circle of a loose journal: r sin φ with tan φ = μ, that is r μ / √(1 + μ²).
///
/// The resultant force R between pin and bore (pressure and friction together) passes the axis at this
/// distance while the bore slides. The engine uses it because the reaction that the equations of motion give
/// is that resultant; μ N r with the pressure N alone is the same torque. Reading R as N overstates it by
/// √(1 + μ²) − 1: 2 % at μ = 0.2.
/// @param friction  μ [–], finite, ≥ 0.
/// @param radius    r of the pin [m], finite, ≥ 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double friction_circle_radius(double friction, double radius);

/// Friction torque of a loose journal that carries the resultant R: R r sin φ [N m].
[[nodiscard]] double journal_torque(double friction, double radius, double resultant);

/// The same from the pressure N alone: μ N r [N m]. For comparison with textbook figures.
[[nodiscard]] double journal_torque_from_normal(double friction, double radius, double normal_force);

/// Sum of the loads on the two ends of a bore that carries a radial force and a tilting moment [N].
///
///     |R/2 + m| + |R/2 − m|,   m = (axis × M) / span
///
/// @param radial  R, across the axis [N].
/// @param moment  M about the middle of the bore; its part along the axis does not count [N m].
/// @param axis    unit vector along the pin, in the frame of R and M.
/// @param span    distance of the two ends [m]; 0: the moment adds nothing.
[[nodiscard]] double bearing_load_sum(const Vector3d& radial, const Vector3d& moment, const Vector3d& axis,
                                      double span) noexcept;

}  // namespace sinewright::friction
