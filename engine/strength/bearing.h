#pragma once

namespace sinewright::strength {

/// Bearing pressure of a pin or shaft in its bore, on the projected area: F / (d L) [Pa].
///
/// The mean; a pin with little play peaks at about 4/π of it (cosine pressure; common practice, no source).
/// @param force     F, across the pin [N], ≥ 0.
/// @param diameter  d [m], > 0.
/// @param length    L, engaged [m], > 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double bearing_pressure(double force, double diameter, double length);

/// Mean pressure on a ring: F / ((π/4)(D² − d²)) [Pa]. For washers and for a knot on the rim of its hole.
///
/// @param force           F, along the axis [N], ≥ 0.
/// @param outer_diameter  D [m], above the inner one.
/// @param inner_diameter  d [m], ≥ 0.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double annulus_pressure(double force, double outer_diameter, double inner_diameter);

/// Mean rubbing speed of a turning ring face: ω (D + d) / 4 [m/s].
///
/// @param rate  ω, turning rate [rad/s], either sign.
[[nodiscard]] double rubbing_speed(double rate, double outer_diameter, double inner_diameter);

/// Pressure times speed of a washer [Pa m/s], which its heating and wear go with.
///
///     p v = F / ((π/4)(D² − d²)) · |ω| (D + d) / 4 = F |ω| / (π (D − d))
[[nodiscard]] double washer_pressure_velocity(double force, double rate, double outer_diameter,
                                              double inner_diameter);

}  // namespace sinewright::strength
