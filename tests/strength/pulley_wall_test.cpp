#include "strength/pulley_wall.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

namespace {
// Bore 3 mm, groove 7 mm, 2 mm long.
constexpr PulleyWall wall{.bore_diameter = 3e-3, .groove_diameter = 7e-3, .length = 2e-3};
}  // namespace

TEST_CASE("pulley wall: what is left between bore and groove", "[pulley-wall]") {
  CHECK_THAT(remaining_wall(wall), WithinRel(2e-3, 1e-14));
  PulleyWall off_centre = wall;
  off_centre.eccentricity = 0.4e-3;
  CHECK_THAT(remaining_wall(off_centre), WithinRel(1.6e-3, 1e-14));
}

TEST_CASE("pulley wall: the winding's pressure holds both ends of half a hoop", "[analytic][pulley-wall]") {
  const double tension = 60, radius = 3.5e-3, pitch = 0.5e-3;
  const double pressure = winding_pressure(tension, radius, pitch, 1);
  // Sum of the pressure's part along the pull over half a turn.
  const int n = 20000;
  double carried = 0;
  for (int i = 0; i < n; ++i) carried += pressure * std::sin(pi * (i + 0.5) / n) * radius * (pi / n) * pitch;
  CHECK_THAT(carried, WithinRel(2 * tension, 1e-8));
  CHECK_THAT(winding_pressure(tension, radius, pitch, 3), WithinRel(3 * pressure, 1e-15));
  CHECK(winding_pressure(tension, radius, pitch, 0) == 0);
}

TEST_CASE("pulley wall: hoop compression at the free bore worked by hand", "[analytic][pulley-wall]") {
  // 2 · 1 MPa · 3.5² / (3.5² − 1.5²) = 24.5/10 MPa.
  CHECK_THAT(wall_hoop_compression(wall, 1e6), WithinRel(2.45e6, 1e-13));
  // Off centre by 0.5 mm, the ring counts as if its wall were 1.5 mm all round: 2 · 3.5² / (3.5² − 2²).
  PulleyWall off_centre = wall;
  off_centre.eccentricity = 0.5e-3;
  CHECK_THAT(wall_hoop_compression(off_centre, 1e6), WithinRel(24.5e6 / 8.25, 1e-13));
}

TEST_CASE("pulley wall: a thin wall carries the hoop pressure like a thin ring", "[limits][pulley-wall]") {
  const PulleyWall thin{.bore_diameter = 7e-3 - 2e-8, .groove_diameter = 7e-3, .length = 2e-3};
  CHECK_THAT(wall_hoop_compression(thin, 1e6), WithinRel(1e6 * 3.5e-3 / 1e-8, 1e-5));
}

TEST_CASE("pulley wall: a pinhole doubles the pressure at its rim", "[limits][pulley-wall]") {
  const PulleyWall pinhole{.bore_diameter = 1e-9, .groove_diameter = 7e-3, .length = 2e-3};
  CHECK_THAT(wall_hoop_compression(pinhole, 1e6), WithinRel(2e6, 1e-6));
}

TEST_CASE("pulley wall: two sections share the splitting force", "[analytic][pulley-wall]") {
  CHECK_THAT(wall_splitting_stress(wall, 80), WithinRel(10e6, 1e-14));  // 80 N / (2 · 2 · 2 mm²)
  PulleyWall off_centre = wall;
  off_centre.eccentricity = 1e-3;
  CHECK_THAT(wall_splitting_stress(off_centre, 80), WithinRel(20e6, 1e-14));
}

TEST_CASE("pulley wall: a flange bends at its root like a cantilever plate", "[analytic][pulley-wall]") {
  // M = 10 N · 1 mm, W = 4 mm · 1 mm² / 6: 15 MPa.
  CHECK_THAT(flange_root_stress(10, 1e-3, 1e-3, 4e-3), WithinRel(15e6, 1e-14));
}

TEST_CASE("pulley wall: no wall left and other bad data are refused", "[errors][pulley-wall]") {
  CHECK_THROWS_AS(remaining_wall({3e-3, 3e-3, 2e-3, 0}), InvalidInput);
  CHECK_THROWS_AS(remaining_wall({3e-3, 7e-3, 2e-3, 2e-3}), InvalidInput);
  CHECK_THROWS_AS(remaining_wall({3e-3, 7e-3, 2e-3, -1e-3}), InvalidInput);
  CHECK_THROWS_AS(remaining_wall({0, 7e-3, 2e-3, 0}), InvalidInput);
  CHECK_THROWS_AS(remaining_wall({3e-3, std::nan(""), 2e-3, 0}), InvalidInput);
  CHECK_THROWS_AS(wall_splitting_stress({3e-3, 7e-3, 0, 0}, 80), InvalidInput);
  CHECK_THROWS_AS(wall_splitting_stress(wall, -80), InvalidInput);
  CHECK_THROWS_AS(wall_hoop_compression(wall, -1), InvalidInput);
  CHECK_THROWS_AS(winding_pressure(-1, 3.5e-3, 0.5e-3, 1), InvalidInput);
  CHECK_THROWS_AS(winding_pressure(60, 0, 0.5e-3, 1), InvalidInput);
  CHECK_THROWS_AS(winding_pressure(60, 3.5e-3, 0, 1), InvalidInput);
  CHECK_THROWS_AS(winding_pressure(60, 3.5e-3, 0.5e-3, -1), InvalidInput);
  CHECK_THROWS_AS(flange_root_stress(10, 1e-3, 0, 4e-3), InvalidInput);
  CHECK_THROWS_AS(flange_root_stress(-10, 1e-3, 1e-3, 4e-3), InvalidInput);
  CHECK_THROWS_AS(flange_root_stress(10, 0, 1e-3, 4e-3), InvalidInput);
  CHECK_THROWS_AS(flange_root_stress(10, 1e-3, 1e-3, 0), InvalidInput);
}
