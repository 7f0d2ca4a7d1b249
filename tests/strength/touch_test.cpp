#include "strength/touch.h"

#include <cmath>
#include <iterator>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

TEST_CASE("touch: between two listed times the longer one's threshold holds", "[touch]") {
  CHECK(burn_threshold(TouchSurface::bare_metal, 2) == burn_threshold(TouchSurface::bare_metal, 10));
  CHECK(burn_threshold(TouchSurface::bare_metal, 11) == burn_threshold(TouchSurface::bare_metal, 60));
  CHECK(burn_threshold(TouchSurface::plastic, 2) == burn_threshold(TouchSurface::plastic, 60));
  CHECK(burn_threshold(TouchSurface::plastic, 61) == burn_threshold(TouchSurface::plastic, 600));
  CHECK(burn_threshold(TouchSurface::ceramic, 601) == burn_threshold(TouchSurface::ceramic, 8 * 3600.0));
  CHECK(burn_threshold(TouchSurface::ceramic, 0.5) == burn_threshold(TouchSurface::ceramic, 60));
}

TEST_CASE("touch: thresholds are kelvin", "[touch]") {
  CHECK_THAT(burn_threshold(TouchSurface::bare_metal, 600), WithinRel(321.15, 1e-14));
}

TEST_CASE("touch: a longer touch never allows more and metal never more than plastic", "[touch]") {
  const double times[] = {0.1, 0.5, 1, 1.1, 5, 9.9, 10, 11, 59, 60, 61, 599, 600, 601, 1e5};
  for (const TouchSurface surface :
       {TouchSurface::bare_metal, TouchSurface::ceramic, TouchSurface::plastic}) {
    for (std::size_t i = 1; i < std::size(times); ++i) {
      CAPTURE(times[i]);
      CHECK(burn_threshold(surface, times[i]) <= burn_threshold(surface, times[i - 1]));
      CHECK(burn_threshold(TouchSurface::bare_metal, times[i]) <=
            burn_threshold(TouchSurface::plastic, times[i]));
    }
  }
}

TEST_CASE("touch: limits of medical equipment step down at 1 s, 10 s and 1 min", "[touch]") {
  const TouchSurface metal = TouchSurface::bare_metal;
  CHECK_THAT(medical_touch_limit(metal, 0.99), WithinRel(74 + 273.15, 1e-14));
  CHECK_THAT(medical_touch_limit(metal, 1), WithinRel(56 + 273.15, 1e-14));
  CHECK_THAT(medical_touch_limit(metal, 10), WithinRel(51 + 273.15, 1e-14));
  CHECK_THAT(medical_touch_limit(metal, 60), WithinRel(48 + 273.15, 1e-14));
  CHECK(medical_touch_limit(TouchSurface::plastic, 3600) == medical_touch_limit(metal, 3600));
}

TEST_CASE("touch: times that are none and surfaces without a value are refused", "[errors][touch]") {
  CHECK_THROWS_AS(burn_threshold(TouchSurface::plastic, 0), InvalidInput);
  CHECK_THROWS_AS(burn_threshold(TouchSurface::plastic, std::nan("")), InvalidInput);
  CHECK_THROWS_AS(medical_touch_limit(TouchSurface::plastic, -1), InvalidInput);
  CHECK_THROWS_AS(medical_touch_limit(TouchSurface::ceramic, 1), InvalidInput);
}
