#include "strength/tear_out.h"

#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

double shear_plane_length(const EdgeHole& hole, double plane_angle) {
  require_not_negative(hole.diameter, "hole diameter", "m");
  require(std::isfinite(hole.edge_distance) && hole.edge_distance > hole.diameter / 2, "edge distance",
          hole.edge_distance, "m", "finite and above the hole's radius");
  require(plane_angle >= 0 && plane_angle <= std::numbers::pi / 2, "angle of the shear planes", plane_angle,
          "rad", "0 to pi/2");
  return hole.edge_distance - hole.diameter / 2 * std::cos(plane_angle);
}

double tear_out_stress(const EdgeHole& hole, double force, double plane_angle) {
  require_not_negative(force, "tear-out force", "N");
  require_positive(hole.thickness, "thickness at the hole", "m");
  return force / (2 * hole.thickness * shear_plane_length(hole, plane_angle));
}

}  // namespace sinewright::strength
