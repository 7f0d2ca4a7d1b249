#pragma once

#include "model/body.h"

namespace sinewright::friction {

/// The largest torque that dry friction can put up.
struct TorqueLimit {
  double sticking = 0;  ///< at rest [N m]
  double kinetic = 0;   ///< in motion [N m]
};

/// Radius at which the friction of an annular face acts, with R₁ the inner and R₂ the outer radius.
///
///     uniform pressure (new, flat faces)  r = (2/3) (R₂³ − R₁³) / (R₂² − R₁²)
///     uniform wear (run-in faces)         r = (R₁ + R₂) / 2
///
/// Source: collar and disc friction in any statics textbook (Beer and Johnston, Vector Mechanics: Statics,
/// ch. 8).
/// @param inner_diameter  [m], ≥ 0 (0: a solid pivot).
/// @param outer_diameter  [m], above the inner one.
/// @throws InvalidInput if the diameters are out of range.
[[nodiscard]] double effective_radius(model::WasherLaw law, double inner_diameter, double outer_diameter);

/// Sum N₁ + N₂ of the forces on the two faces of a hinge [N].
///
///     N₁ + N₂ = max(2 P, |F|)
///
/// Both faces carry the preload P; an axial load F presses one by F/2 more and the other by as much less,
/// until that one is free (|F| = 2P) and the first carries all of F. Assumes equally stiff faces.
/// @param preload      P [N], ≥ 0.
/// @param axial_force  F along the pin, either sign [N].
[[nodiscard]] double axial_normal_sum(double preload, double axial_force) noexcept;

/// Torque limits of a pair of washers under an axial load: μ (N₁ + N₂) r.
[[nodiscard]] TorqueLimit washer_torque(const model::Washers& washers, double axial_force);

}  // namespace sinewright::friction
