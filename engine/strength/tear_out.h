#pragma once

#include <numbers>

namespace sinewright::strength {

/// A hole near the edge of a plate, loaded towards that edge.
struct EdgeHole {
  double diameter = 0;       ///< d of the hole [m], ≥ 0
  double edge_distance = 0;  ///< e, hole's centre to the edge, along the pull [m]
  double thickness = 0;      ///< t of the plate [m], > 0
};

/// Where the two shear planes leave the hole, seen from the direction of pull [rad].
inline constexpr double tear_out_along_pull = 0;                           ///< textbook
inline constexpr double tear_out_at_40_deg = 40 * std::numbers::pi / 180;  ///< aircraft lugs

/// Length of one of the two shear planes from the hole to the edge: e − (d/2) cos φ [m].
///
/// φ = 0 takes the shortest way, from the hole's crown; real planes start at the flanks, so φ = 40° gives a
/// longer plane and a lower stress. Practice of aircraft lugs (Bruhn, from memory).
/// @param plane_angle  φ [rad], in [0, π/2].
/// @throws InvalidInput if an argument is out of range or the hole cuts the edge (e ≤ d/2).
[[nodiscard]] double shear_plane_length(const EdgeHole& hole, double plane_angle = tear_out_along_pull);

/// Mean shear stress of the two planes: F / (2 t (e − (d/2) cos φ)) [Pa].
///
/// @param force  F towards the edge [N], ≥ 0.
[[nodiscard]] double tear_out_stress(const EdgeHole& hole, double force,
                                     double plane_angle = tear_out_along_pull);

}  // namespace sinewright::strength
