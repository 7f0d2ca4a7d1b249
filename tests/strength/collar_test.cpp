#include "strength/collar.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

TEST_CASE("collar: a solid shaft has 16 T over pi d cubed", "[limits][collar]") {
  CHECK_THAT(torsion_shear({.outer_diameter = 4e-3, .inner_diameter = 0}, 0.1),
             WithinRel(16 * 0.1 / (pi * 64e-9), 1e-14));
}

TEST_CASE("collar: a 5/3 mm tube worked by hand", "[analytic][collar]") {
  // D⁴ − d⁴ = 625 − 81 = 544 mm⁴.
  CHECK_THAT(polar_moment({5e-3, 3e-3}), WithinRel(pi / 32 * 544e-12, 1e-13));
  CHECK_THAT(torsion_shear({5e-3, 3e-3}, -0.1), WithinRel(0.1 * 2.5e-3 * 32 / (pi * 544e-12), 1e-13));
}

TEST_CASE("collar: the shear stress summed over the section gives back the torque", "[analytic][collar]") {
  const Collar collar{5e-3, 3e-3};
  const double peak = torsion_shear(collar, 0.1);
  const int n = 20000;
  double torque = 0;
  for (int i = 0; i < n; ++i) {
    const double r = 1.5e-3 + 1e-3 * (i + 0.5) / n;
    torque += peak * r / 2.5e-3 * r * 2 * pi * r * (1e-3 / n);
  }
  CHECK_THAT(torque, WithinRel(0.1, 1e-8));
}

TEST_CASE("collar: a thin wall approaches T over 2 pi r squared t", "[limits][collar]") {
  const double r = 2e-3, t = 1e-9;
  CHECK_THAT(torsion_shear({2 * r + t, 2 * r - t}, 0.1), WithinRel(0.1 / (2 * pi * r * r * t), 1e-6));
}

TEST_CASE("collar: bad sizes and torques are refused", "[errors][collar]") {
  CHECK_THROWS_AS(torsion_shear({3e-3, 3e-3}, 0.1), InvalidInput);
  CHECK_THROWS_AS(torsion_shear({3e-3, -1e-3}, 0.1), InvalidInput);
  CHECK_THROWS_AS(torsion_shear({std::nan(""), 1e-3}, 0.1), InvalidInput);
  CHECK_THROWS_AS(torsion_shear({5e-3, 3e-3}, std::nan("")), InvalidInput);
}
