#include "strength/cord_capacity.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

TEST_CASE("cord: a knot leaves its share of the breaking force", "[cord]") {
  CHECK_THAT(knotted_capacity(200, 0.45), WithinRel(90, 1e-15));
  CHECK(knotted_capacity(200, 1) == 200);
}

TEST_CASE("cord: over a round guide the share follows D over d", "[analytic][cord]") {
  CHECK_THAT(bend_efficiency(0.3e-3, 0.3e-3), WithinRel(0.5, 1e-15));
  CHECK_THAT(bend_efficiency(1.2e-3, 0.3e-3), WithinRel(0.75, 1e-14));
  CHECK_THAT(bend_efficiency(7.5e-3, 0.3e-3), WithinRel(0.9, 1e-14));
  CHECK_THAT(bent_capacity(300, 1.2e-3, 0.3e-3), WithinRel(225, 1e-14));
}

TEST_CASE("cord: a wide guide costs nothing and an edge leaves nothing", "[limits][cord]") {
  CHECK_THAT(bend_efficiency(1e6, 1e-6), WithinRel(1, 1e-6));
  CHECK(bend_efficiency(1e6, 1e-6) < 1);
  CHECK(bend_efficiency(0, 0.3e-3) == 0);
  CHECK(bend_efficiency(0.05e-3, 0.3e-3) == 0);  // below d/4
  CHECK(bent_capacity(300, 0, 0.3e-3) == 0);
}

TEST_CASE("cord: a tighter bend never bears more", "[cord]") {
  double before = -1;
  for (int i = 4; i < 200; ++i) {
    const double share = bend_efficiency(i * 0.1e-3, 0.3e-3);
    CHECK(share > before);
    before = share;
  }
}

TEST_CASE("cord: a knot that strengthens the cord and other bad data are refused", "[errors][cord]") {
  CHECK_THROWS_AS(knotted_capacity(200, 1.01), InvalidInput);
  CHECK_THROWS_AS(knotted_capacity(200, 0), InvalidInput);
  CHECK_THROWS_AS(knotted_capacity(200, std::nan("")), InvalidInput);
  CHECK_THROWS_AS(knotted_capacity(0, 0.5), InvalidInput);
  CHECK_THROWS_AS(bend_efficiency(-1e-3, 0.3e-3), InvalidInput);
  CHECK_THROWS_AS(bend_efficiency(1e-3, 0), InvalidInput);
  CHECK_THROWS_AS(bend_efficiency(std::nan(""), 0.3e-3), InvalidInput);
  CHECK_THROWS_AS(bent_capacity(-1, 1e-3, 0.3e-3), InvalidInput);
}

TEST_CASE("cord: every published knot has an ordered range and a source", "[cord]") {
  CHECK(published_knots().size() == 7);
  for (const KnotFigure& figure : published_knots()) {
    CAPTURE(figure.knot, figure.cord);
    CHECK(figure.low >= 0);
    CHECK(figure.low <= figure.high);
    CHECK(figure.high < 1);
    CHECK_FALSE(figure.source.empty());
  }
}
