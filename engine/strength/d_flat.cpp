#include "strength/d_flat.h"

#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

double half_chord(const DFlat& flat) {
  require_positive(flat.shaft_diameter, "shaft diameter", "m");
  require(flat.flat_depth > 0 && flat.flat_depth <= flat.shaft_diameter / 2, "depth of the flat",
          flat.flat_depth, "m", "above 0, at most half the shaft's diameter");
  return std::sqrt(flat.flat_depth * (flat.shaft_diameter - flat.flat_depth));
}

double flat_pressure(const DFlat& flat, double torque) {
  require_finite(torque, "torque on the flat", "N m");
  require_positive(flat.length, "engaged length of the flat", "m");
  const double chord = half_chord(flat);
  return 3 * std::abs(torque) / (flat.length * chord * chord);
}

double flat_torque_capacity(const DFlat& flat, double allowable_pressure) {
  require_positive(allowable_pressure, "allowable pressure of the bore", "Pa");
  require_positive(flat.length, "engaged length of the flat", "m");
  const double chord = half_chord(flat);
  return allowable_pressure * flat.length * chord * chord / 3;
}

double flat_force(const DFlat& flat, double torque) {
  require_finite(torque, "torque on the flat", "N m");
  return 3 * std::abs(torque) / (2 * half_chord(flat));
}

}  // namespace sinewright::strength
