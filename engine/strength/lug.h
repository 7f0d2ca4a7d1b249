#pragma once

#include "strength/tear_out.h"

namespace sinewright::strength {

/// An eye of a hinge: a plate with the pin's hole near its rounded end.
struct Lug {
  EdgeHole hole;     ///< hole, distance to the end, thickness
  double width = 0;  ///< w, across the pull at the hole [m]; above the hole's diameter
};

/// Bearing pressure of the pin in the lug: F / (d t) [Pa].
/// @param force  F, along the lug towards its end [N], ≥ 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double lug_bearing_pressure(const Lug& lug, double force);

/// Mean tension beside the hole: F / ((w − d) t) [Pa].
///
/// Without the stress peak at the hole's flank, which a brittle material feels in full: see
/// docs/theory/strength/lug.md.
[[nodiscard]] double net_section_stress(const Lug& lug, double force);

/// Shear stress of the two planes to the end; as tear_out_stress.
[[nodiscard]] double lug_tear_out_stress(const Lug& lug, double force,
                                         double plane_angle = tear_out_along_pull);

}  // namespace sinewright::strength
