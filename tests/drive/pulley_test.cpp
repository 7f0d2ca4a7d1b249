#include "drive/pulley.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::drive;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double turn = 2 * std::numbers::pi;
const CordPulley growing({0.004, 3}, 0.0005);

}  // namespace

TEST_CASE("pulley: the cord's centre runs half a diameter above the groove", "[pulley]") {
  const CordPulley plain({0.004, 0}, 0.0005);
  CHECK_THAT(plain.radius(100), WithinRel(0.00425, 1e-15));
  CHECK(plain.radius_slope(100) == 0);
  CHECK_THAT(plain.wound_length(-3, 7), WithinRel(0.0425, 1e-14));
}

TEST_CASE("pulley: a layer is full after its turns and adds one diameter to the radius",
          "[analytic][pulley]") {
  CHECK_THAT(growing.radius(0), WithinRel(0.00425, 1e-15));
  CHECK_THAT(growing.radius(3 * turn), WithinRel(0.00475, 1e-14));
  CHECK(growing.radius(-5) == growing.radius(0));
}

TEST_CASE("pulley: wound length is the integral of the radius, through zero as well", "[analytic][pulley]") {
  const double from = -2.0, to = 9.0;
  const int n = 100000;
  double sum = 0;
  for (int i = 0; i < n; ++i) sum += growing.radius(from + (to - from) * (i + 0.5) / n) * (to - from) / n;
  CHECK_THAT(growing.wound_length(from, to), WithinRel(sum, 1e-9));
  CHECK_THAT(growing.wound_length(to, from), WithinRel(-growing.wound_length(from, to), 1e-15));
  CHECK_THAT(growing.wound_length(from, 4) + growing.wound_length(4, to),
             WithinRel(growing.wound_length(from, to), 1e-14));
}

TEST_CASE("pulley: radius and its slope are the derivatives of the wound length", "[derivative][pulley]") {
  const double x = GENERATE(-1.0, 0.5, 12.0);
  const double h = 1e-4;
  CHECK_THAT(growing.wound_length(x - h, x + h) / (2 * h), WithinRel(growing.radius(x), 1e-10));
  CHECK_THAT((growing.radius(x + h) - growing.radius(x - h)) / (2 * h),
             WithinAbs(growing.radius_slope(x), 1e-12));
}

TEST_CASE("pulley: sizes out of range are refused", "[errors][pulley]") {
  CHECK_THROWS_AS(CordPulley({0, 0}, 0.0005), InvalidInput);
  CHECK_THROWS_AS(CordPulley({0.004, -1}, 0.0005), InvalidInput);
  CHECK_THROWS_AS(CordPulley({0.004, 0}, std::nan("")), InvalidInput);
}
