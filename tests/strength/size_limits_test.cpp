#include "strength/size_limits.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinAbs;

TEST_CASE("size limits: a process makes the nominal size within its half width", "[fits]") {
  const SizeLimits hole = process_limits(2.0e-3, 0.1e-3);
  CHECK_THAT(hole.lower, WithinAbs(1.9e-3, 1e-18));
  CHECK_THAT(hole.upper, WithinAbs(2.1e-3, 1e-18));
}

TEST_CASE("size limits: printed holes may lie all on one side of the nominal size", "[fits]") {
  const SizeLimits hole = process_limits(4e-3, -0.3e-3, -0.1e-3);
  CHECK_THAT(hole.lower, WithinAbs(3.7e-3, 1e-18));
  CHECK_THAT(hole.upper, WithinAbs(3.9e-3, 1e-18));
}

TEST_CASE("size limits: extremes of the fit pair the largest part with the smallest other", "[fits]") {
  const FitRange fit = fit_range({1.9e-3, 2.1e-3}, {2.002e-3, 2.008e-3});
  CHECK_THAT(fit.smallest_clearance, WithinAbs(-0.108e-3, 1e-18));
  CHECK_THAT(fit.largest_clearance, WithinAbs(0.098e-3, 1e-18));
  CHECK_THAT(fit.largest_interference(), WithinAbs(0.108e-3, 1e-18));
  CHECK_THAT(fit.smallest_interference(), WithinAbs(-0.098e-3, 1e-18));
}

TEST_CASE("size limits: no hole and pin within their limits leave the range", "[fits]") {
  const SizeLimits hole{1.9e-3, 2.1e-3}, pin{2.002e-3, 2.008e-3};
  const FitRange fit = fit_range(hole, pin);
  for (int i = 0; i <= 10; ++i) {
    for (int j = 0; j <= 10; ++j) {
      const double clearance =
          std::lerp(hole.lower, hole.upper, i / 10.0) - std::lerp(pin.lower, pin.upper, j / 10.0);
      CHECK(clearance >= fit.smallest_clearance);
      CHECK(clearance <= fit.largest_clearance);
    }
  }
}

TEST_CASE("size limits: exact parts have one clearance", "[limits][fits]") {
  const FitRange fit = fit_range(process_limits(2.1e-3, 0), process_limits(2e-3, 0));
  CHECK(fit.smallest_clearance == fit.largest_clearance);
  CHECK_THAT(fit.smallest_clearance, WithinAbs(0.1e-3, 1e-18));
}

TEST_CASE("size limits: sizes without sense are refused", "[errors][fits]") {
  CHECK_THROWS_AS(process_limits(0, 0.1e-3), InvalidInput);
  CHECK_THROWS_AS(process_limits(2e-3, -0.1e-3), InvalidInput);
  CHECK_THROWS_AS(process_limits(0.1e-3, 0.1e-3), InvalidInput);
  CHECK_THROWS_AS(process_limits(2e-3, 0.1e-3, 0.0), InvalidInput);
  CHECK_THROWS_AS(process_limits(2e-3, std::nan(""), 0.0), InvalidInput);
  CHECK_THROWS_AS(fit_range({2e-3, 1.9e-3}, {1e-3, 1e-3}), InvalidInput);
  CHECK_THROWS_AS(fit_range({1.9e-3, 2e-3}, {std::nan(""), 1e-3}), InvalidInput);
}
