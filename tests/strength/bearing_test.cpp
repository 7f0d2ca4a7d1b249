#include "strength/bearing.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

TEST_CASE("bearing: pressure is force over projected area", "[analytic][bearing]") {
  CHECK_THAT(bearing_pressure(60, 2e-3, 5e-3), WithinRel(6e6, 1e-14));
  CHECK(bearing_pressure(0, 2e-3, 5e-3) == 0);
}

TEST_CASE("bearing: cosine pressure of the mean value carries the force at 4 over pi of the mean",
          "[analytic][bearing]") {
  // Pressure p cos(angle) over half a turn: its part along the load, summed over the surface, must be the
  // force.
  const double d = 2e-3, length = 5e-3, force = 60;
  const double peak = 4 / pi * bearing_pressure(force, d, length);
  const int n = 20000;
  double carried = 0;
  for (int i = 0; i < n; ++i) {
    const double angle = -pi / 2 + pi * (i + 0.5) / n;
    carried += peak * std::cos(angle) * std::cos(angle) * (d / 2) * length * (pi / n);
  }
  CHECK_THAT(carried, WithinRel(force, 1e-9));
}

TEST_CASE("bearing: a ring bears force over its area", "[analytic][bearing]") {
  // 2.2/5 mm washer: area π/4 · 20.16 mm².
  CHECK_THAT(annulus_pressure(5, 5e-3, 2.2e-3), WithinRel(5 / (pi / 4 * 20.16e-6), 1e-14));
  CHECK_THAT(annulus_pressure(5, 4e-3, 0), WithinRel(5 / (4 * pi * 1e-6), 1e-14));  // full disc
}

TEST_CASE("bearing: a washer rubs with its mean radius and PV is pressure times that speed",
          "[analytic][bearing]") {
  // Mean radius (5 + 2.2)/4 = 1.8 mm.
  CHECK_THAT(rubbing_speed(10, 5e-3, 2.2e-3), WithinRel(0.018, 1e-14));
  CHECK_THAT(rubbing_speed(-10, 5e-3, 2.2e-3), WithinRel(0.018, 1e-14));
  // F ω / (π (D − d)): 5 N · 10 rad/s / (π · 2.8 mm).
  CHECK_THAT(washer_pressure_velocity(5, -10, 5e-3, 2.2e-3), WithinRel(50 / (pi * 2.8e-3), 1e-13));
  CHECK(washer_pressure_velocity(5, 0, 5e-3, 2.2e-3) == 0);
}

TEST_CASE("bearing: bad forces and sizes are refused", "[errors][bearing]") {
  CHECK_THROWS_AS(bearing_pressure(-1, 2e-3, 5e-3), InvalidInput);
  CHECK_THROWS_AS(bearing_pressure(std::nan(""), 2e-3, 5e-3), InvalidInput);
  CHECK_THROWS_AS(bearing_pressure(1, 0, 5e-3), InvalidInput);
  CHECK_THROWS_AS(bearing_pressure(1, 2e-3, 0), InvalidInput);
  CHECK_THROWS_AS(annulus_pressure(1, 2e-3, 2e-3), InvalidInput);
  CHECK_THROWS_AS(annulus_pressure(1, 2e-3, -1e-3), InvalidInput);
  CHECK_THROWS_AS(annulus_pressure(-1, 5e-3, 2e-3), InvalidInput);
  CHECK_THROWS_AS(rubbing_speed(std::nan(""), 5e-3, 2e-3), InvalidInput);
  CHECK_THROWS_AS(rubbing_speed(1, 1e-3, 2e-3), InvalidInput);
}
