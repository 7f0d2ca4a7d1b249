#pragma once

#include "model/cord.h"

namespace sinewright::friction {

/// Tension ratio across a bend whose cord is about to slip towards the outgoing span.
///
///     T_out / T_in = exp(μ θ)                       (Euler–Eytelwein)
///
/// Holds for a massless cord without bending stiffness and constant μ along the arc; the shape of the arc
/// does not matter. Derivation and limits: docs/theory/capstan.md. Checked by
/// tests/friction/capstan_test.cpp.
///
/// @param friction       μ, Coulomb coefficient [–], finite, ≥ 0.
/// @param turning_angle  θ, total turning of the cord along the bend [rad], finite, ≥ 0; may exceed 2π.
/// @returns the ratio [–], ≥ 1 and finite.
/// @throws InvalidInput if an argument is out of range, or if μθ is so large that exp() overflows.
[[nodiscard]] double capstan_slip_ratio(double friction, double turning_angle);

/// The coefficient that makes a bend slip at a measured ratio: μ = ln(ratio) / θ.
///
/// @param ratio          larger over smaller tension [–], finite, ≥ 1.
/// @param turning_angle  θ [rad], finite, > 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double friction_from_slip_ratio(double ratio, double turning_angle);

/// How much a V groove raises the friction of a cord that rests on both its walls: 1 / sin(α/2).
///
/// @param included_angle  α between the walls [rad], in [0, π]; 0 stands for "no groove" and gives 1, as π
/// does.
/// @throws InvalidInput if the angle is out of range.
[[nodiscard]] double groove_factor(double included_angle);

/// Turning angle of a helix on a cylinder: θ = φ cos a.
///
/// The curve's own turning counts, not the angle φ about the cylinder: curvature cos²a / R over the
/// length R φ / cos a.
/// @param winding_angle  φ about the cylinder's axis [rad], ≥ 0.
/// @param lead_angle     a between the cord and a plain hoop [rad], in [−π/2, π/2].
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double helix_turning_angle(double winding_angle, double lead_angle);

/// Howell's law: friction force per length f = a pⁿ of a cord that presses with p = T / R on its channel.
struct PowerLawFriction {
  double coefficient = 0;  ///< a [(N/m)^(1−n)], ≥ 0
  double exponent = 1;     ///< n [–], in (0, 1]; 1 is Coulomb's law with μ = a
};

/// Tension behind a round bend that slips, with load-dependent friction.
///
///     T₁^(1−n) = T₀^(1−n) + (1 − n) a R^(1−n) θ      (n = 1: T₁ = T₀ exp(a θ))
///
/// Source: friction law of H. G. Howell, J. Textile Inst. 44 (1953) T359 (from memory); integral our own, see
/// docs/theory/capstan.md.
/// @param tension_in     T₀ [N], ≥ 0.
/// @param radius         R of the cord's centre line [m], > 0.
/// @param turning_angle  θ [rad], ≥ 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double power_law_slip_tension(const PowerLawFriction& law, double tension_in, double radius,
                                            double turning_angle);

/// The power law that a channel's data describe: a = μ p_ref^(1−n), without its cap.
[[nodiscard]] PowerLawFriction power_law(const model::ChannelFriction& channel);

/// Turning angle from which on a bend costs the whole `bending_loss` of its channel; below, the loss grows in
/// proportion to the angle. A stiff cord takes the full curvature of a bend only when the bend turns by more
/// than the two angles that its free ends cut off (docs/theory/capstan.md); 1 rad is a round figure for that,
/// our own choice.
inline constexpr double full_bending_loss_angle = 1.0;  // [rad]

/// What a bend allows: the cord sticks while |ln(T_a / T_b)| is below `sticking`, and slides at `kinetic`.
struct BendCone {
  double kinetic = 0;                   ///< ln of the tension ratio when sliding [–]
  double sticking = 0;                  ///< ln of the ratio that starts a slide, >= kinetic [–]
  double kinetic_by_turning_angle = 0;  ///< ∂kinetic/∂θ [1/rad]
  double kinetic_by_line_load = 0;      ///< ∂kinetic/∂p [m/N]
};

/// The cone of one bend, for the hot loop: no check, no allocation.
///
///     kinetic  = factor · μ(p) · θ / sin(α/2) + ln(bending_loss) · min(1, θ / full_bending_loss_angle)
///     sticking = the same with static_ratio · μ(p)
///     μ(p)     = min(highest, kinetic · (p / p_ref)^(n−1))
///
/// A bend that is cut into several nodes asks once, for the angle of the whole bend, and shares the exponents
/// out: asking a node at a time would charge the bending loss more than once.
///
/// @param factor         the bend's own multiplier of μ [–], ≥ 0.
/// @param turning_angle  θ of the whole bend [rad], ≥ 0.
/// @param line_load      p = T / R [N/m], ≥ 0; unused when load_exponent is 1. Infinite
///                       (a sharp corner has no radius): μ is the value at the reference line load.
[[nodiscard]] BendCone bend_cone(const model::ChannelFriction& channel, double factor, double turning_angle,
                                 double line_load) noexcept;

/// ln of the kinetic slip ratio of one bend; `bend_cone` with its arguments checked.
/// @throws InvalidInput if the channel's data or an argument are out of range.
[[nodiscard]] double bend_friction_exponent(const model::ChannelFriction& channel, double factor,
                                            double turning_angle, double line_load);

/// @throws InvalidInput, naming the field, if a channel's data cannot be used.
void check_channel(const model::ChannelFriction& channel);

}  // namespace sinewright::friction
