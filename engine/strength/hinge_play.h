#pragma once

#include <span>

namespace sinewright::strength {

/// What lets a fingertip move although a hinge does not turn.
struct HingePlay {
  double bore_clearance = 0;   ///< c, bore − pin, on the diameter [m], ≥ 0
  double bore_length = 0;      ///< b, length of the bore that guides the pin [m], > 0
  double axial_clearance = 0;  ///< a, between the cheeks with washers, in all [m], ≥ 0
  double face_diameter = 0;    ///< f, over which the lug's faces or washers meet [m]; 0: faces do not guide
  double reach = 0;            ///< x, from the pin to the fingertip, finger straight [m], ≥ 0
};

/// Largest sideways tilt of the hinge, from the middle to either side [rad].
///
///     φ = min(c / b, a / f)
///
/// The pin touches the bore's ends, b apart, after c/b; the faces meet at f/2 from the axis after a/f.
/// Whichever comes first stops the tilt. Small angles.
/// @throws InvalidInput if a value is out of range.
[[nodiscard]] double sideways_tilt(const HingePlay& hinge);

/// Free motion of a fingertip, from the middle to either side [m].
struct TipPlay {
  double worst_case = 0;       ///< sum: every hinge at its stop in the same sense
  double root_sum_square = 0;  ///< √ of the sum of squares: hinges independent, each zero on average
};

/// Sideways, along the pins: each hinge gives x φ + a/2.
[[nodiscard]] TipPlay sideways_play(std::span<const HingePlay> hinges);

/// In the plane of flexion, across the straight finger, all joints held by their cords: each hinge gives c/2.
/// A turn of the joint itself is backlash of the drive and stretch of the cord, not counted here.
[[nodiscard]] TipPlay flexion_play(std::span<const HingePlay> hinges);

}  // namespace sinewright::strength
