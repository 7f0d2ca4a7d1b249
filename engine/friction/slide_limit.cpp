#include "friction/slide_limit.h"

#include <cmath>

#include <Eigen/Geometry>

#include "friction/argument.h"

namespace sinewright::friction {

SlideFriction::SlideFriction(const std::optional<model::Slideway>& slideway) {
  if (!slideway) return;
  coefficients_ = slideway->friction;
  length_ = slideway->length;
  preload_ = slideway->preload;
  const double kinetic = coefficients_.kinetic_coefficient, sticking = coefficients_.static_coefficient;
  require(std::isfinite(kinetic) && kinetic >= 0, "kinetic friction coefficient", kinetic, "", "finite and >= 0");
  require(std::isfinite(sticking) && sticking >= kinetic, "static friction coefficient", sticking, "",
          "finite and at least the kinetic one");
  require(std::isfinite(length_) && length_ >= 0, "length of the slideway", length_, "m", "finite and >= 0");
  require(std::isfinite(preload_) && preload_ >= 0, "preload of the slideway", preload_, "N", "finite and >= 0");
}

SlideLimit SlideFriction::limit(const Vector3d& axis, const Vector3d& force, const Vector3d& moment) const noexcept {
  SlideLimit limit;
  const Vector3d across = force - axis.dot(force) * axis;
  const Vector3d couple = length_ > 0 ? Vector3d(axis.cross(moment) / length_) : Vector3d::Zero();
  limit.normal = preload_;
  Vector3d by_couple = Vector3d::Zero();
  for (const double side : {1.0, -1.0}) {
    const Vector3d load = across / 2 + side * couple;
    const double size = load.norm();
    limit.normal += size;
    if (size > 0) {
      limit.normal_by_force += load / (2 * size);
      by_couple += side * load / size;
    }
  }
  if (length_ > 0) limit.normal_by_moment = by_couple.cross(axis) / length_;
  limit.sticking = coefficients_.static_coefficient * limit.normal;
  limit.kinetic = coefficients_.kinetic_coefficient * limit.normal;
  return limit;
}

}  // namespace sinewright::friction
