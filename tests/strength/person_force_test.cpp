#include "strength/person_force.h"

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

TEST_CASE("person: pressure limits are pascals", "[person]") {
  CHECK(hand_pressure_limit(HandSpot::forefinger_pad, true) == 3e6);
  CHECK(hand_pressure_limit(HandSpot::thenar, true) == hand_pressure_limit(HandSpot::thenar, false));
}

TEST_CASE("person: at the speed limit the spring takes up the energy of the relative motion",
          "[analytic][person]") {
  const double mass = 0.05, force = 280;
  const double v = transient_speed_limit(force, mass);
  // Two free masses meet at v; the part that leaves with the common centre does not press the spring.
  const double common = mass * v / (mass + hand_effective_mass);
  const double energy = mass * v * v / 2 - (mass + hand_effective_mass) * common * common / 2;
  CHECK_THAT(energy, WithinRel(force * force / (2 * hand_stiffness), 1e-13));
}

TEST_CASE("person: a very heavy part leaves the hand's own mass", "[limits][person]") {
  const double v = transient_speed_limit(280, std::numeric_limits<double>::infinity());
  CHECK_THAT(v, WithinRel(280 / std::sqrt(75e3 * 0.6), 1e-14));
  CHECK(transient_speed_limit(0, 0.1) == 0);
}

TEST_CASE("person: bad forces and masses are refused", "[errors][person]") {
  CHECK_THROWS_AS(transient_speed_limit(-1, 0.1), InvalidInput);
  CHECK_THROWS_AS(transient_speed_limit(280, 0), InvalidInput);
  CHECK_THROWS_AS(transient_speed_limit(280, std::nan("")), InvalidInput);
}
