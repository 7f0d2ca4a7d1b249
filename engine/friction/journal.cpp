#include "friction/journal.h"

#include <cmath>

#include <Eigen/Geometry>

#include "friction/argument.h"

namespace sinewright::friction {

double friction_circle_radius(double friction, double radius) {
  require(std::isfinite(friction) && friction >= 0, "friction coefficient", friction, "", "finite and >= 0");
  require(std::isfinite(radius) && radius >= 0, "pin radius", radius, "m", "finite and >= 0");
  return radius * friction / std::hypot(1.0, friction);
}

double journal_torque(double friction, double radius, double resultant) {
  return std::abs(resultant) * friction_circle_radius(friction, radius);
}

double journal_torque_from_normal(double friction, double radius, double normal_force) {
  require(std::isfinite(friction) && friction >= 0, "friction coefficient", friction, "", "finite and >= 0");
  require(std::isfinite(radius) && radius >= 0, "pin radius", radius, "m", "finite and >= 0");
  return friction * std::abs(normal_force) * radius;
}

double bearing_load_sum(const Vector3d& radial, const Vector3d& moment, const Vector3d& axis,
                        double span) noexcept {
  if (!(span > 0)) return radial.norm();
  const Vector3d couple = axis.cross(moment) / span;
  return (radial / 2 + couple).norm() + (radial / 2 - couple).norm();
}

}  // namespace sinewright::friction
