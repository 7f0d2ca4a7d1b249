#include "strength/hinge_play.h"

#include <algorithm>
#include <cmath>

#include "strength/argument.h"

namespace sinewright::strength {

namespace {

template <class Share>
TipPlay sum_of(std::span<const HingePlay> hinges, Share share) {
  double sum = 0, squares = 0;
  for (const HingePlay& hinge : hinges) {
    const double part = share(hinge);
    sum += part;
    squares += part * part;
  }
  return {sum, std::sqrt(squares)};
}

}  // namespace

double sideways_tilt(const HingePlay& hinge) {
  require_not_negative(hinge.bore_clearance, "clearance of the bore", "m");
  require_positive(hinge.bore_length, "length of the bore", "m");
  require_not_negative(hinge.axial_clearance, "axial clearance", "m");
  require_not_negative(hinge.face_diameter, "diameter of the hinge's faces", "m");
  const double in_bore = hinge.bore_clearance / hinge.bore_length;
  if (hinge.face_diameter == 0) return in_bore;
  return std::min(in_bore, hinge.axial_clearance / hinge.face_diameter);
}

TipPlay sideways_play(std::span<const HingePlay> hinges) {
  return sum_of(hinges, [](const HingePlay& hinge) {
    require_not_negative(hinge.reach, "distance from pin to fingertip", "m");
    return hinge.reach * sideways_tilt(hinge) + hinge.axial_clearance / 2;
  });
}

TipPlay flexion_play(std::span<const HingePlay> hinges) {
  return sum_of(hinges, [](const HingePlay& hinge) {
    require_not_negative(hinge.bore_clearance, "clearance of the bore", "m");
    return hinge.bore_clearance / 2;
  });
}

}  // namespace sinewright::strength
