#include "friction/hinge_limit.h"

#include <cmath>

#include "friction/argument.h"
#include "friction/journal.h"

namespace sinewright::friction {
namespace {

void check_pair(const model::DryFriction& pair) {
  require(std::isfinite(pair.kinetic_coefficient) && pair.kinetic_coefficient >= 0,
          "kinetic friction coefficient", pair.kinetic_coefficient, "", "finite and >= 0");
  require(std::isfinite(pair.static_coefficient) && pair.static_coefficient >= pair.kinetic_coefficient,
          "static friction coefficient", pair.static_coefficient, "", "finite and at least the kinetic one");
}

}  // namespace

HingeLoad split_hinge_load(const Vector3d& axis, const Vector3d& force, const Vector3d& moment) noexcept {
  HingeLoad load;
  load.axial = axis.dot(force);
  load.radial = force - load.axial * axis;
  load.tilting = moment - axis.dot(moment) * axis;
  return load;
}

HingeFriction::HingeFriction(const std::optional<model::Pin>& pin,
                             const std::optional<model::Washers>& washers) {
  if (pin) {
    check_pair(pin->friction);
    require(std::isfinite(pin->bearing_span) && pin->bearing_span >= 0, "bearing span", pin->bearing_span,
            "m", "finite and >= 0");
    pin_arm_.sticking = friction_circle_radius(pin->friction.static_coefficient, pin->diameter / 2);
    pin_arm_.kinetic = friction_circle_radius(pin->friction.kinetic_coefficient, pin->diameter / 2);
    span_ = pin->bearing_span;
  }
  if (washers) {
    check_pair(washers->friction);
    require(std::isfinite(washers->preload) && washers->preload >= 0, "washer preload", washers->preload, "N",
            "finite and >= 0");
    const double radius = effective_radius(washers->law, washers->inner_diameter, washers->outer_diameter);
    washer_arm_.sticking = washers->friction.static_coefficient * radius;
    washer_arm_.kinetic = washers->friction.kinetic_coefficient * radius;
    preload_ = washers->preload;
  }
}

TorqueLimit HingeFriction::limit(const Vector3d& axis, const HingeLoad& load) const noexcept {
  const double bearing = bearing_load_sum(load.radial, load.tilting, axis, span_);
  const double faces = axial_normal_sum(preload_, load.axial);
  return {pin_arm_.sticking * bearing + washer_arm_.sticking * faces,
          pin_arm_.kinetic * bearing + washer_arm_.kinetic * faces};
}

TorqueLimit HingeFriction::unloaded() const noexcept {
  return {washer_arm_.sticking * 2 * preload_, washer_arm_.kinetic * 2 * preload_};
}

TorqueLimit hinge_limit(const std::optional<model::Pin>& pin, const std::optional<model::Washers>& washers,
                        const Vector3d& axis, const HingeLoad& load) {
  return HingeFriction(pin, washers).limit(axis, load);
}

}  // namespace sinewright::friction
