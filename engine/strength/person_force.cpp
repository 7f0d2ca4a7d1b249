#include "strength/person_force.h"

#include <cmath>

#include "quantity/invalid_input.h"
#include "strength/argument.h"

namespace sinewright::strength {

double hand_pressure_limit(HandSpot spot, bool dominant_hand) {
  constexpr double newton_per_cm2 = 1e4;  // [Pa]
  switch (spot) {
    case HandSpot::forefinger_pad:
      return (dominant_hand ? 300 : 270) * newton_per_cm2;
    case HandSpot::forefinger_end_joint:
      return (dominant_hand ? 280 : 220) * newton_per_cm2;
    case HandSpot::thenar:
      return 200 * newton_per_cm2;
    case HandSpot::palm:
      return 260 * newton_per_cm2;
    case HandSpot::back_of_hand:
      return (dominant_hand ? 200 : 190) * newton_per_cm2;
  }
  throw InvalidInput("the spot of the hand is unknown\n  needed: one of HandSpot");
}

double transient_speed_limit(double force_limit, double moving_mass) {
  require_not_negative(force_limit, "force limit", "N");
  require(moving_mass > 0, "moving mass", moving_mass, "kg", "> 0");
  const double reduced_mass = 1 / (1 / hand_effective_mass + 1 / moving_mass);
  return force_limit / std::sqrt(hand_stiffness * reduced_mass);
}

}  // namespace sinewright::strength
