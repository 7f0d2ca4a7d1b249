#include "strength/knot_seat.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

namespace {
constexpr KnotSeat seat{.knot_diameter = 2e-3, .hole_diameter = 1e-3, .wall = 1.5e-3};
}

TEST_CASE("knot seat: the wall shears on the knot's own perimeter", "[analytic][knot-seat]") {
  CHECK_THAT(punching_shear(seat, 60), WithinRel(60 / (pi * 2e-3 * 1.5e-3), 1e-14));
}

TEST_CASE("knot seat: the knot presses on the ring about its hole", "[analytic][knot-seat]") {
  CHECK_THAT(seat_pressure(seat, 60), WithinRel(60 / (pi / 4 * 3e-6), 1e-14));
}

TEST_CASE("knot seat: twice the wall halves the shear and leaves the pressure", "[knot-seat]") {
  KnotSeat thick = seat;
  thick.wall *= 2;
  CHECK_THAT(punching_shear(thick, 60), WithinRel(punching_shear(seat, 60) / 2, 1e-15));
  CHECK(seat_pressure(thick, 60) == seat_pressure(seat, 60));
}

TEST_CASE("knot seat: a knot that slips through its hole and other bad data are refused",
          "[errors][knot-seat]") {
  CHECK_THROWS_AS(punching_shear({1e-3, 1e-3, 1.5e-3}, 60), InvalidInput);
  CHECK_THROWS_AS(seat_pressure({0.9e-3, 1e-3, 1.5e-3}, 60), InvalidInput);
  CHECK_THROWS_AS(punching_shear({2e-3, 0, 1.5e-3}, 60), InvalidInput);
  CHECK_THROWS_AS(punching_shear({2e-3, 1e-3, 0}, 60), InvalidInput);
  CHECK_THROWS_AS(punching_shear(seat, -60), InvalidInput);
  CHECK_THROWS_AS(seat_pressure(seat, std::nan("")), InvalidInput);
}
