#pragma once

namespace sinewright::strength {

/// Places of a human hand that a moving finger may press.
enum class HandSpot { forefinger_pad, forefinger_end_joint, thenar, palm, back_of_hand };

/// Pressure limit of a lasting (quasi-static) contact with a spot of a person's hand [Pa].
///
/// ISO/TS 15066:2016, table A.2, as seen in a secondary copy. Written for people beside industrial robots, at
/// the edge of pain: a comparison for a hand of a person, not permission.
/// @param dominant_hand  whether the pressed hand is the person's dominant one.
[[nodiscard]] double hand_pressure_limit(HandSpot spot, bool dominant_hand);

/// Force limit of a lasting (quasi-static) contact with hand and fingers [N]. Same source.
inline constexpr double hand_force_limit = 140;

/// How much more a short (transient) contact may press [–]. Same source.
inline constexpr double transient_factor = 2;

/// What a person's hand is like to a short blow. ISO/TS 15066, table A.3, seen in a secondary copy.
inline constexpr double hand_effective_mass = 0.6;  ///< [kg]
inline constexpr double hand_stiffness = 75e3;      ///< [N/m]

/// Speed at which a moving part may hit a free hand [m/s].
///
///     v = F / √(k μ),  1/μ = 1/m_hand + 1/m_part
///
/// The relative motion's energy goes into one spring: ½ μ v² = F² / (2 k). ISO/TS 15066, A.3.4, from memory.
/// @param force_limit  F [N], ≥ 0; hand_force_limit × transient_factor for a short contact.
/// @param moving_mass  m_part, effective mass of the part at the point of contact [kg], > 0; may be infinite.
/// @throws InvalidInput if an argument is out of range.
[[nodiscard]] double transient_speed_limit(double force_limit, double moving_mass);

}  // namespace sinewright::strength
