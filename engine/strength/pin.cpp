#include "strength/pin.h"

#include <numbers>

#include "strength/argument.h"
#include "strength/bearing.h"

namespace sinewright::strength {

using std::numbers::pi;

double pin_mean_shear(const PinJoint& joint, double force) {
  require_not_negative(force, "force on the pin", "N");
  require_positive(joint.diameter, "pin diameter", "m");
  return force / (2 * (pi / 4 * joint.diameter * joint.diameter));
}

double pin_peak_shear(const PinJoint& joint, double force) {
  return 4.0 / 3 * pin_mean_shear(joint, force);
}

double pin_bending_moment(const PinJoint& joint, double force) {
  require_not_negative(force, "force on the pin", "N");
  require_positive(joint.eye_width, "eye width", "m");
  require_positive(joint.cheek_width, "cheek width", "m");
  require_not_negative(joint.gap, "gap between eye and cheek", "m");
  return force / 2 * (joint.eye_width / 4 + joint.gap + joint.cheek_width / 2);
}

double pin_bending_stress(const PinJoint& joint, double force) {
  require_positive(joint.diameter, "pin diameter", "m");
  return 32 * pin_bending_moment(joint, force) / (pi * joint.diameter * joint.diameter * joint.diameter);
}

double eye_bearing_pressure(const PinJoint& joint, double force) {
  return bearing_pressure(force, joint.diameter, joint.eye_width);
}

double cheek_bearing_pressure(const PinJoint& joint, double force) {
  return bearing_pressure(force / 2, joint.diameter, joint.cheek_width);
}

}  // namespace sinewright::strength
