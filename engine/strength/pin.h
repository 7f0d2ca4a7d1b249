#pragma once

namespace sinewright::strength {

/// A round pin through a middle eye and the two cheeks of a fork.
struct PinJoint {
  double diameter = 0;     ///< d of the pin [m], > 0
  double eye_width = 0;    ///< t₂ of the middle eye [m], > 0
  double cheek_width = 0;  ///< t₁ of each cheek of the fork [m], > 0
  double gap = 0;          ///< g between eye and cheek, on each side, a washer included [m], ≥ 0
};

/// Mean shear stress in the two cut sections: F / (2 A), A = π d² / 4 [Pa].
/// @param force  F, across the pin [N], ≥ 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double pin_mean_shear(const PinJoint& joint, double force);

/// Largest shear stress, at the pin's neutral axis: 4/3 of the mean (round section in bending) [Pa].
[[nodiscard]] double pin_peak_shear(const PinJoint& joint, double force);

/// Bending moment at the pin's middle: M = (F/2)(t₂/4 + g + t₁/2) [N m].
///
/// Eye and cheeks press evenly over their widths: half the eye's load acts t₂/4 from the middle, the cheek's
/// at t₂/2 + g + t₁/2. Printed eyes yield towards their edges and shorten that lever: the cautious side.
/// Source: pin joints in Shigley and Norton, from memory.
[[nodiscard]] double pin_bending_moment(const PinJoint& joint, double force);

/// Bending stress at the pin's surface: 32 M / (π d³) [Pa].
[[nodiscard]] double pin_bending_stress(const PinJoint& joint, double force);

/// Bearing pressure in the eye: F / (d t₂) [Pa].
[[nodiscard]] double eye_bearing_pressure(const PinJoint& joint, double force);

/// Bearing pressure in each cheek: F / (2 d t₁) [Pa].
[[nodiscard]] double cheek_bearing_pressure(const PinJoint& joint, double force);

}  // namespace sinewright::strength
