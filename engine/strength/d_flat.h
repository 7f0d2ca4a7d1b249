#pragma once

namespace sinewright::strength {

/// A shaft with one flat in a bore of the same shape.
struct DFlat {
  double shaft_diameter = 0;  ///< d [m], > 0
  double flat_depth = 0;      ///< f, taken off the round [m]; above 0, at most d/2
  double length = 0;          ///< L, engaged along the shaft [m], > 0
};

/// Half the chord of the flat: c = √(r² − (r − f)²) = √(f (d − f)) [m].
/// @throws InvalidInput if a dimension is out of range.
[[nodiscard]] double half_chord(const DFlat& flat);

/// Largest pressure between flat and bore, at the chord's end, under a torque T [Pa].
///
///     p = 3 T / (L c²)
///
/// The shaft turns a little in the bore, so that only one half of the flat presses; the pressure grows in
/// proportion to the distance x from the flat's middle, p x / c, and ∫₀ᶜ (p x/c) x L dx = p L c² / 3 = T.
/// Assumes: bore without play, no friction, a shaft much stiffer than the bore, T even along L. Derivation:
/// docs/theory/strength/d-flat.md.
/// @param torque  T [N m], either sign.
[[nodiscard]] double flat_pressure(const DFlat& flat, double torque);

/// Torque at which the pressure at the chord's end reaches what the bore's material bears: p L c² / 3 [N m].
/// @param allowable_pressure  p [Pa], > 0.
[[nodiscard]] double flat_torque_capacity(const DFlat& flat, double allowable_pressure);

/// Force across the flat that the torque calls up, and that the round side of the bore returns [N].
///
///     F = ∫₀ᶜ (p x/c) L dx = p L c / 2 = 3 |T| / (2 c)
[[nodiscard]] double flat_force(const DFlat& flat, double torque);

}  // namespace sinewright::strength
