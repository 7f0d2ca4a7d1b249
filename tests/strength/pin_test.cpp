#include "strength/pin.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

namespace {
constexpr PinJoint joint{.diameter = 2e-3, .eye_width = 4e-3, .cheek_width = 3e-3, .gap = 0.5e-3};
}

TEST_CASE("pin: two sections share the force in shear", "[analytic][pin]") {
  CHECK_THAT(pin_mean_shear(joint, 100), WithinRel(100 / (2 * pi * 1e-6), 1e-14));
}

TEST_CASE("pin: the peak is the beam's shear stress at the neutral axis", "[analytic][pin]") {
  // V Q / (I b) of a round section, Q by summing strips of the half disc above the axis.
  const double r = 1e-3, shear_force = 50;
  const int n = 200000;
  double first_moment = 0;
  for (int i = 0; i < n; ++i) {
    const double y = r * (i + 0.5) / n;
    first_moment += y * 2 * std::sqrt(r * r - y * y) * (r / n);
  }
  const double second_moment = pi / 4 * r * r * r * r;
  CHECK_THAT(pin_peak_shear(joint, 2 * shear_force),
             WithinRel(shear_force * first_moment / (second_moment * 2 * r), 1e-7));
}

TEST_CASE("pin: the moment at the middle follows from even pressure over eye and cheeks", "[analytic][pin]") {
  const double force = 100;
  const double half_eye = joint.eye_width / 2, cheek_from = half_eye + joint.gap;
  // Moment about the middle of one half: cheek outward of it, eye's half load inward.
  const int n = 1000;
  double moment = 0;
  for (int i = 0; i < n; ++i) {
    const double share = (i + 0.5) / n;
    moment += force / 2 / n * (cheek_from + share * joint.cheek_width);
    moment -= force / 2 / n * (share * half_eye);
  }
  CHECK_THAT(pin_bending_moment(joint, force), WithinRel(moment, 1e-12));
  CHECK_THAT(pin_bending_moment(joint, force), WithinRel(0.15, 1e-13));  // 50 N · (1 + 0.5 + 1.5) mm
  CHECK_THAT(pin_bending_stress(joint, force), WithinRel(32 * 0.15 / (pi * 8e-9), 1e-13));
}

TEST_CASE("pin: without a gap the lever is a quarter eye and half a cheek", "[limits][pin]") {
  PinJoint close = joint;
  close.gap = 0;
  CHECK_THAT(pin_bending_moment(close, 100), WithinRel(0.125, 1e-14));
}

TEST_CASE("pin: eye and cheeks bear on their projected areas", "[analytic][pin]") {
  CHECK_THAT(eye_bearing_pressure(joint, 100), WithinRel(12.5e6, 1e-14));
  CHECK_THAT(cheek_bearing_pressure(joint, 120), WithinRel(10e6, 1e-14));
}

TEST_CASE("pin: bad forces and sizes are refused", "[errors][pin]") {
  CHECK_THROWS_AS(pin_mean_shear(joint, -1), InvalidInput);
  CHECK_THROWS_AS(pin_peak_shear({.diameter = 0}, 1), InvalidInput);
  CHECK_THROWS_AS(pin_bending_moment({2e-3, 0, 3e-3, 0}, 1), InvalidInput);
  CHECK_THROWS_AS(pin_bending_moment({2e-3, 4e-3, 0, 0}, 1), InvalidInput);
  CHECK_THROWS_AS(pin_bending_moment({2e-3, 4e-3, 3e-3, -1e-4}, 1), InvalidInput);
  CHECK_THROWS_AS(pin_bending_moment(joint, std::nan("")), InvalidInput);
  CHECK_THROWS_AS(pin_bending_stress({0, 4e-3, 3e-3, 0}, 1), InvalidInput);
  CHECK_THROWS_AS(eye_bearing_pressure(joint, -1), InvalidInput);
  CHECK_THROWS_AS(cheek_bearing_pressure(joint, -1), InvalidInput);
}
