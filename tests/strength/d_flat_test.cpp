#include "strength/d_flat.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

namespace {
// 3 mm shaft, 2.5 mm across the flat: c² = 1.5² − 1² = 1.25 mm².
constexpr DFlat flat{.shaft_diameter = 3e-3, .flat_depth = 0.5e-3, .length = 6e-3};
}  // namespace

TEST_CASE("D-flat: half the chord of a 3 mm shaft with 2.5 mm across the flat", "[analytic][d-flat]") {
  CHECK_THAT(half_chord(flat), WithinRel(std::sqrt(1.25) * 1e-3, 1e-14));
}

TEST_CASE("D-flat: a flat through the middle has the radius as half chord", "[limits][d-flat]") {
  CHECK_THAT(half_chord({.shaft_diameter = 3e-3, .flat_depth = 1.5e-3, .length = 6e-3}),
             WithinRel(1.5e-3, 1e-14));
}

TEST_CASE("D-flat: the linear pressure summed up gives back torque and force", "[analytic][d-flat]") {
  const double torque = 0.1;  // [N m]
  const double peak = flat_pressure(flat, torque), chord = half_chord(flat);
  const int n = 2000;
  double moment = 0, force = 0;
  for (int i = 0; i < n; ++i) {
    const double x = chord * (i + 0.5) / n;
    const double strip = peak * x / chord * flat.length * chord / n;
    force += strip;
    moment += strip * x;
  }
  CHECK_THAT(moment, WithinRel(torque, 1e-6));  // midpoint rule: 1/(4 n²)
  CHECK_THAT(force, WithinRel(flat_force(flat, torque), 1e-12));
}

TEST_CASE("D-flat: capacity of a printed bore worked by hand", "[analytic][d-flat]") {
  // 40 MPa · 6 mm · 1.25 mm² / 3 = 100 N mm.
  CHECK_THAT(flat_torque_capacity(flat, 40e6), WithinRel(0.1, 1e-13));
  CHECK_THAT(flat_pressure(flat, -0.1), WithinRel(40e6, 1e-13));  // either sense
}

TEST_CASE("D-flat: a shallow flat carries a torque in proportion to its depth", "[limits][d-flat]") {
  const DFlat shallow{.shaft_diameter = 3e-3, .flat_depth = 1e-9, .length = 6e-3};
  DFlat twice = shallow;
  twice.flat_depth *= 2;
  CHECK_THAT(flat_torque_capacity(twice, 1e6) / flat_torque_capacity(shallow, 1e6), WithinRel(2, 1e-6));
}

TEST_CASE("D-flat: flats past the axis and other bad data are refused", "[errors][d-flat]") {
  CHECK_THROWS_AS(half_chord({3e-3, 1.6e-3, 6e-3}), InvalidInput);
  CHECK_THROWS_AS(half_chord({3e-3, 0, 6e-3}), InvalidInput);
  CHECK_THROWS_AS(half_chord({3e-3, std::nan(""), 6e-3}), InvalidInput);
  CHECK_THROWS_AS(half_chord({0, 0.5e-3, 6e-3}), InvalidInput);
  CHECK_THROWS_AS(flat_pressure({3e-3, 0.5e-3, 0}, 0.1), InvalidInput);
  CHECK_THROWS_AS(flat_pressure(flat, std::nan("")), InvalidInput);
  CHECK_THROWS_AS(flat_torque_capacity(flat, 0), InvalidInput);
  CHECK_THROWS_AS(flat_torque_capacity({3e-3, 0.5e-3, -1e-3}, 1e6), InvalidInput);
  CHECK_THROWS_AS(flat_force(flat, std::nan("")), InvalidInput);
}
