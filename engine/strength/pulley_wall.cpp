#include "strength/pulley_wall.h"

#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

double remaining_wall(const PulleyWall& wall) {
  require_positive(wall.bore_diameter, "pulley bore", "m");
  require_finite(wall.groove_diameter, "pulley groove diameter", "m");
  require_not_negative(wall.eccentricity, "eccentricity of the pulley's bore", "m");
  const double left = (wall.groove_diameter - wall.bore_diameter) / 2 - wall.eccentricity;
  require(left > 0, "wall between bore and groove", left, "m", "> 0");
  return left;
}

double winding_pressure(double tension, double groove_radius, double pitch, int layers) {
  require_not_negative(tension, "cord tension", "N");
  require_positive(groove_radius, "groove radius", "m");
  require_positive(pitch, "pitch of the winding", "m");
  require(layers >= 0, "number of layers", layers, "", ">= 0");
  return layers * tension / (groove_radius * pitch);
}

double wall_hoop_compression(const PulleyWall& wall, double pressure) {
  require_not_negative(pressure, "pressure of the winding", "Pa");
  const double left = remaining_wall(wall);
  const double outer = wall.groove_diameter / 2;
  const double inner = outer - left;
  return 2 * pressure * outer * outer / (left * (outer + inner));
}

double wall_splitting_stress(const PulleyWall& wall, double splitting_force) {
  require_not_negative(splitting_force, "splitting force", "N");
  require_positive(wall.length, "length of the pulley's wall", "m");
  return splitting_force / (2 * remaining_wall(wall) * wall.length);
}

double flange_root_stress(double force, double height, double thickness, double width) {
  require_not_negative(force, "push on the flange", "N");
  require_positive(height, "height of the push on the flange", "m");
  require_positive(thickness, "flange thickness", "m");
  require_positive(width, "width of the flange that bears", "m");
  return 6 * force * height / (width * thickness * thickness);
}

}  // namespace sinewright::strength
