#include "strength/lug.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

namespace {
constexpr Lug lug{.hole = {.diameter = 2e-3, .edge_distance = 3.5e-3, .thickness = 4e-3}, .width = 7e-3};
}

TEST_CASE("lug: bearing, net section and tear-out of a worked eye", "[analytic][lug]") {
  CHECK_THAT(lug_bearing_pressure(lug, 100), WithinRel(12.5e6, 1e-14));  // 100 N / (2 · 4 mm²)
  CHECK_THAT(net_section_stress(lug, 100), WithinRel(5e6, 1e-14));       // 100 N / (5 · 4 mm²)
  CHECK_THAT(lug_tear_out_stress(lug, 100), WithinRel(5e6, 1e-14));      // 100 N / (2 · 4 · 2.5 mm²)
  CHECK_THAT(lug_tear_out_stress(lug, 100, tear_out_at_40_deg),
             WithinRel(100 / (2 * 4e-3 * (3.5e-3 - 1e-3 * std::cos(0.69813170079773183))), 1e-14));
}

TEST_CASE("lug: a very wide lug has nothing to fear in its net section", "[limits][lug]") {
  Lug wide = lug;
  wide.width = 1e3;
  CHECK(net_section_stress(wide, 100) < 30);  // [Pa]
}

TEST_CASE("lug: a hole as wide as the lug and other bad data are refused", "[errors][lug]") {
  Lug bad = lug;
  bad.width = 2e-3;
  CHECK_THROWS_AS(net_section_stress(bad, 100), InvalidInput);
  bad.width = std::nan("");
  CHECK_THROWS_AS(net_section_stress(bad, 100), InvalidInput);
  bad = lug;
  bad.hole.thickness = 0;
  CHECK_THROWS_AS(net_section_stress(bad, 100), InvalidInput);
  CHECK_THROWS_AS(lug_bearing_pressure(bad, 100), InvalidInput);
  CHECK_THROWS_AS(lug_tear_out_stress(bad, 100), InvalidInput);
  CHECK_THROWS_AS(net_section_stress(lug, -1), InvalidInput);
}
