#include "strength/bearing.h"

#include <cmath>
#include <numbers>

#include "strength/argument.h"

namespace sinewright::strength {

namespace {

void require_ring(double outer_diameter, double inner_diameter) {
  require_not_negative(inner_diameter, "inner diameter", "m");
  require(std::isfinite(outer_diameter) && outer_diameter > inner_diameter, "outer diameter", outer_diameter,
          "m", "finite and above the inner diameter");
}

}  // namespace

double bearing_pressure(double force, double diameter, double length) {
  require_not_negative(force, "bearing force", "N");
  require_positive(diameter, "bearing diameter", "m");
  require_positive(length, "bearing length", "m");
  return force / (diameter * length);
}

double annulus_pressure(double force, double outer_diameter, double inner_diameter) {
  require_not_negative(force, "axial force", "N");
  require_ring(outer_diameter, inner_diameter);
  // (D − d)(D + d), not D² − d²: a thin ring keeps its digits.
  return force /
         (std::numbers::pi / 4 * (outer_diameter - inner_diameter) * (outer_diameter + inner_diameter));
}

double rubbing_speed(double rate, double outer_diameter, double inner_diameter) {
  require_finite(rate, "turning rate", "rad/s");
  require_ring(outer_diameter, inner_diameter);
  return std::abs(rate) * (outer_diameter + inner_diameter) / 4;
}

double washer_pressure_velocity(double force, double rate, double outer_diameter, double inner_diameter) {
  return annulus_pressure(force, outer_diameter, inner_diameter) *
         rubbing_speed(rate, outer_diameter, inner_diameter);
}

}  // namespace sinewright::strength
