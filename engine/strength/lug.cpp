#include "strength/lug.h"

#include <cmath>

#include "strength/argument.h"
#include "strength/bearing.h"

namespace sinewright::strength {

double lug_bearing_pressure(const Lug& lug, double force) {
  return bearing_pressure(force, lug.hole.diameter, lug.hole.thickness);
}

double net_section_stress(const Lug& lug, double force) {
  require_not_negative(force, "force on the lug", "N");
  require_positive(lug.hole.diameter, "hole diameter", "m");
  require_positive(lug.hole.thickness, "lug thickness", "m");
  require(std::isfinite(lug.width) && lug.width > lug.hole.diameter, "lug width", lug.width, "m",
          "finite and above the hole's diameter");
  return force / ((lug.width - lug.hole.diameter) * lug.hole.thickness);
}

double lug_tear_out_stress(const Lug& lug, double force, double plane_angle) {
  return tear_out_stress(lug.hole, force, plane_angle);
}

}  // namespace sinewright::strength
