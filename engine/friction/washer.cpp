#include "friction/washer.h"

#include <algorithm>
#include <cmath>

#include "friction/argument.h"

namespace sinewright::friction {

double effective_radius(model::WasherLaw law, double inner_diameter, double outer_diameter) {
  require(std::isfinite(inner_diameter) && inner_diameter >= 0, "washer inner diameter", inner_diameter, "m",
          "finite and >= 0");
  require(std::isfinite(outer_diameter) && outer_diameter > inner_diameter, "washer outer diameter",
          outer_diameter, "m", "finite and above the inner diameter");
  const double inner = inner_diameter / 2;
  const double outer = outer_diameter / 2;
  if (law == model::WasherLaw::uniform_wear) return (inner + outer) / 2;
  // (R₂³ − R₁³) / (R₂² − R₁²) with the common factor R₂ − R₁ divided out, so that a thin ring keeps its
  // digits.
  return (2.0 / 3.0) * (outer * outer + outer * inner + inner * inner) / (outer + inner);
}

double axial_normal_sum(double preload, double axial_force) noexcept {
  return std::max(2 * preload, std::abs(axial_force));
}

TorqueLimit washer_torque(const model::Washers& washers, double axial_force) {
  const double moment = axial_normal_sum(washers.preload, axial_force) *
                        effective_radius(washers.law, washers.inner_diameter, washers.outer_diameter);
  return {washers.friction.static_coefficient * moment, washers.friction.kinetic_coefficient * moment};
}

}  // namespace sinewright::friction
