#include "strength/collar.h"

#include <cmath>
#include <numbers>

#include "strength/argument.h"

namespace sinewright::strength {

double polar_moment(const Collar& collar) {
  const double outer = collar.outer_diameter;
  const double inner = collar.inner_diameter;
  require_not_negative(inner, "collar inner diameter", "m");
  require(std::isfinite(outer) && outer > inner, "collar outer diameter", outer, "m",
          "finite and above the inner diameter");
  // D⁴ − d⁴ in factors: a thin wall keeps its digits.
  return std::numbers::pi / 32 * (outer - inner) * (outer + inner) * (outer * outer + inner * inner);
}

double torsion_shear(const Collar& collar, double torque) {
  require_finite(torque, "torque on the collar", "N m");
  return std::abs(torque) * (collar.outer_diameter / 2) / polar_moment(collar);
}

}  // namespace sinewright::strength
