#pragma once

namespace sinewright::strength {

/// A round tube that carries a torque, for instance the collar between pulley and sensor.
struct Collar {
  double outer_diameter = 0;  ///< [m]; above the inner one
  double inner_diameter = 0;  ///< [m], ≥ 0 (0: solid)
};

/// Polar moment of area: J = (π/32)(D⁴ − d⁴) [m⁴].
/// @throws InvalidInput if the diameters are out of range.
[[nodiscard]] double polar_moment(const Collar& collar);

/// Shear stress at the outside: τ = T (D/2) / J [Pa].
///
/// Exact for a closed round tube in its elastic range (any text on strength of materials). Not for a slotted
/// one, which is far weaker, nor where a flat thins the wall.
/// @param torque  T [N m], either sign.
[[nodiscard]] double torsion_shear(const Collar& collar, double torque);

}  // namespace sinewright::strength
