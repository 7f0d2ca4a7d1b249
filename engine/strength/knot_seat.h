#pragma once

namespace sinewright::strength {

/// A stopper knot on the rim of its hole in a printed wall. Towards a near edge see tear_out.h.
struct KnotSeat {
  double knot_diameter = 0;  ///< D, drawn tight [m]; above the hole's
  double hole_diameter = 0;  ///< d [m], > 0
  double wall = 0;           ///< t, thickness of the wall that the cord passes [m], > 0
};

/// Shear stress on the cylinder that the knot would punch out: F / (π D t) [Pa].
///
/// Perimeter of the knot times wall: the whole wall shears at once. Elementary statics.
/// @param force  F, pull of the cord [N], ≥ 0.
/// @throws InvalidInput if a dimension is out of range, or the knot no larger than its hole.
[[nodiscard]] double punching_shear(const KnotSeat& seat, double force);

/// Mean pressure of the knot on the ring between hole and knot: F / ((π/4)(D² − d²)) [Pa].
[[nodiscard]] double seat_pressure(const KnotSeat& seat, double force);

}  // namespace sinewright::strength
