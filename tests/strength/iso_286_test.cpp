#include "strength/iso_286.h"

#include <cmath>
#include <string>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {
constexpr double digits = 1e-15;  // [m]: the deviations are micrometres, and a size rounds at 1e-18 m
}

TEST_CASE("ISO 286: a size at a limit belongs to the lower range", "[iso-286]") {
  CHECK_THAT(standard_tolerance(3e-3, 7), WithinAbs(10e-6, digits));
  CHECK_THAT(standard_tolerance(3.001e-3, 7), WithinAbs(12e-6, digits));
  CHECK_THAT(standard_tolerance(6e-3, 7), WithinAbs(12e-6, digits));
  CHECK_THAT(standard_tolerance(6.001e-3, 7), WithinAbs(15e-6, digits));
  CHECK_THAT(standard_tolerance(10e-3, 7), WithinAbs(15e-6, digits));
}

TEST_CASE("ISO 286: a conversion's rounding does not push a size into the next range", "[iso-286]") {
  CHECK(standard_tolerance(std::nextafter(3e-3, 1), 7) == standard_tolerance(3e-3, 7));
  CHECK(standard_tolerance(std::nextafter(10e-3, 1), 7) == standard_tolerance(10e-3, 7));
}

TEST_CASE("ISO 286: a coarser grade and a larger size never have a smaller tolerance", "[iso-286]") {
  for (const double size : {2e-3, 5e-3, 8e-3}) {
    for (int grade = 6; grade <= 11; ++grade) {
      CAPTURE(size, grade);
      CHECK(standard_tolerance(size, grade) > standard_tolerance(size, grade - 1));
      CHECK(standard_tolerance(size + 2e-3, grade) >= standard_tolerance(size, grade));
    }
  }
}

TEST_CASE("ISO 286: the basic hole begins and the basic shaft ends at the nominal size", "[iso-286]") {
  for (int grade = 5; grade <= 11; ++grade) {
    const SizeLimits hole = iso_limits(4e-3, "H" + std::to_string(grade));
    const SizeLimits shaft = iso_limits(4e-3, "h" + std::to_string(grade));
    CHECK(hole.lower == 4e-3);
    CHECK(shaft.upper == 4e-3);
    CHECK_THAT(hole.upper - hole.lower, WithinAbs(standard_tolerance(4e-3, grade), digits));
    CHECK_THAT(shaft.upper - shaft.lower, WithinAbs(standard_tolerance(4e-3, grade), digits));
  }
}

TEST_CASE("ISO 286: the hole of a letter mirrors the shaft of the same letter", "[iso-286]") {
  const double size = GENERATE(2e-3, 5e-3, 8e-3);
  const SizeLimits hole = iso_limits(size, "F8"), shaft = iso_limits(size, "f8");
  CHECK_THAT(hole.lower - size, WithinAbs(size - shaft.upper, digits));
  CHECK_THAT(hole.upper - size, WithinAbs(size - shaft.lower, digits));
}

TEST_CASE("ISO 286: m6 and p6 lie above the nominal size and g6 and f8 below", "[iso-286]") {
  const double size = GENERATE(2e-3, 5e-3, 8e-3);
  CHECK(iso_limits(size, "m6").lower > size);
  CHECK(iso_limits(size, "p6").lower > iso_limits(size, "m6").lower);
  CHECK(iso_limits(size, "g6").upper < size);
  CHECK(iso_limits(size, "f8").upper < iso_limits(size, "g6").upper);
}

TEST_CASE("ISO 286: classes and sizes that the table lacks are refused", "[errors][iso-286]") {
  for (const char* unknown : {"", "H", "7", "H4", "H12", "m7", "F7", "G6", "H7x", "7H", "H 7", "H-7"}) {
    CAPTURE(unknown);
    CHECK_THROWS_AS(iso_limits(4e-3, unknown), InvalidInput);
  }
  CHECK_THROWS_WITH(iso_limits(4e-3, "k6"), Contains("'k6'") && Contains("needed: H5 to H11"));
  CHECK_THROWS_AS(standard_tolerance(10.1e-3, 7), InvalidInput);
  CHECK_THROWS_AS(standard_tolerance(0, 7), InvalidInput);
  CHECK_THROWS_AS(standard_tolerance(std::nan(""), 7), InvalidInput);
  CHECK_THROWS_AS(standard_tolerance(4e-3, 4), InvalidInput);
  CHECK_THROWS_AS(standard_tolerance(4e-3, 12), InvalidInput);
}
