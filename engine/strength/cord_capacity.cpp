#include "strength/cord_capacity.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

double knotted_capacity(double breaking_force, double knot_efficiency) {
  require_positive(breaking_force, "breaking force", "N");
  require_share(knot_efficiency, "knot efficiency");
  return breaking_force * knot_efficiency;
}

double bend_efficiency(double guide_diameter, double cord_diameter) {
  require_not_negative(guide_diameter, "guide diameter", "m");
  require_positive(cord_diameter, "cord diameter", "m");
  // Over an edge (D = 0) the quotient is infinite and the maximum 0.
  return std::max(0.0, 1 - 0.5 / std::sqrt(guide_diameter / cord_diameter));
}

double bent_capacity(double breaking_force, double guide_diameter, double cord_diameter) {
  require_positive(breaking_force, "breaking force", "N");
  return breaking_force * bend_efficiency(guide_diameter, cord_diameter);
}

std::span<const KnotFigure> published_knots() noexcept {
  static constexpr std::string_view knot_books = "Knots in Use, p. 9; thoughtfullyprepping rope notes (seen)";
  static constexpr std::array<KnotFigure, 7> figures{{
      {"overhand", "rope in general", 0.45, 0.45, "Outward Bound Ropes, Knots, and Hitches, p. 18 (seen)"},
      {"figure-8 loop", "ordinary rope", 0.72, 0.80, knot_books},
      {"bowline", "ordinary rope", 0.70, 0.75, knot_books},
      {"double fisherman", "ordinary rope", 0.65, 0.70, knot_books},
      {"clove hitch", "ordinary rope", 0.60, 0.65, knot_books},
      {"reef", "ordinary rope", 0.50, 0.50, knot_books},
      {"bowline", "high-modulus polyethylene rope with cover, 12 mm", 0, 0.40,
       "Yachting Monthly, rope test of November 2017, p. 73 (seen)"},
  }};
  return figures;
}

}  // namespace sinewright::strength
