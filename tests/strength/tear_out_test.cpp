#include "strength/tear_out.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

namespace {
constexpr EdgeHole hole{.diameter = 2e-3, .edge_distance = 4e-3, .thickness = 3e-3};
}

TEST_CASE("tear-out: two planes from the hole's crown to the edge share the force", "[analytic][tear-out]") {
  CHECK_THAT(shear_plane_length(hole), WithinRel(3e-3, 1e-14));
  CHECK_THAT(tear_out_stress(hole, 90), WithinRel(90 / (2 * 3e-3 * 3e-3), 1e-14));
}

TEST_CASE("tear-out: planes from the flanks are longer by (d/2)(1 - cos)", "[analytic][tear-out]") {
  const double longer = 1e-3 * (1 - 0.76604444311897804);  // cos 40° from a table
  CHECK_THAT(shear_plane_length(hole, tear_out_at_40_deg), WithinRel(3e-3 + longer, 1e-14));
  CHECK(tear_out_stress(hole, 90, tear_out_at_40_deg) < tear_out_stress(hole, 90));
}

TEST_CASE("tear-out: at a right angle the planes reach back to the hole's centre", "[limits][tear-out]") {
  CHECK_THAT(shear_plane_length(hole, std::acos(0.0)), WithinRel(4e-3, 1e-14));
}

TEST_CASE("tear-out: a vanishing hole leaves the whole distance to the edge", "[limits][tear-out]") {
  const EdgeHole none{.diameter = 0, .edge_distance = 4e-3, .thickness = 3e-3};
  CHECK(shear_plane_length(none) == 4e-3);
}

TEST_CASE("tear-out: a hole that cuts the edge and other bad data are refused", "[errors][tear-out]") {
  CHECK_THROWS_AS(shear_plane_length({.diameter = 2e-3, .edge_distance = 1e-3, .thickness = 3e-3}),
                  InvalidInput);
  CHECK_THROWS_AS(shear_plane_length({.diameter = -1e-3, .edge_distance = 1e-3, .thickness = 3e-3}),
                  InvalidInput);
  CHECK_THROWS_AS(shear_plane_length(hole, -0.1), InvalidInput);
  CHECK_THROWS_AS(shear_plane_length(hole, 1.6), InvalidInput);
  CHECK_THROWS_AS(shear_plane_length(hole, std::nan("")), InvalidInput);
  CHECK_THROWS_AS(tear_out_stress(hole, -1), InvalidInput);
  CHECK_THROWS_AS(tear_out_stress({.diameter = 2e-3, .edge_distance = 4e-3, .thickness = 0}, 1),
                  InvalidInput);
}
