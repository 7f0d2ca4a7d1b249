#include "strength/knot_seat.h"

#include <cmath>
#include <numbers>

#include "strength/argument.h"
#include "strength/bearing.h"

namespace sinewright::strength {

namespace {

void check(const KnotSeat& seat, double force) {
  require_not_negative(force, "pull on the knot", "N");
  require_positive(seat.hole_diameter, "hole of the knot seat", "m");
  require(std::isfinite(seat.knot_diameter) && seat.knot_diameter > seat.hole_diameter, "knot diameter",
          seat.knot_diameter, "m", "finite and above the hole's diameter");
  require_positive(seat.wall, "wall of the knot seat", "m");
}

}  // namespace

double punching_shear(const KnotSeat& seat, double force) {
  check(seat, force);
  return force / (std::numbers::pi * seat.knot_diameter * seat.wall);
}

double seat_pressure(const KnotSeat& seat, double force) {
  check(seat, force);
  return annulus_pressure(force, seat.knot_diameter, seat.hole_diameter);
}

}  // namespace sinewright::strength
