// Distributions have the quantiles, means and deviations of their definitions, and refuse what cannot be drawn from.

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"
#include "study/distribution.h"
#include "study/normal.h"

using namespace sinewright;
using namespace sinewright::study;

namespace {

const double kNaN = std::numeric_limits<double>::quiet_NaN();

// Midpoint rule over u. Its error is largest at the ends of an unbounded normal.
std::pair<double, double> integrated(const Distribution& d) {
  constexpr int n = 200000;
  double sum = 0, squares = 0;
  for (int i = 0; i < n; ++i) {
    const double x = quantile(d, (i + 0.5) / n);
    sum += x;
    squares += x * x;
  }
  return {sum / n, std::sqrt(squares / n - sum / n * sum / n)};
}

}  // namespace

TEST_CASE("distribution: mean and deviation in closed form are those of what the quantile draws", "[study]") {
  const Distribution d = GENERATE(
      Distribution{Choices{{1, 2, 5}, {}}}, Distribution{Choices{{1, 2, 5}, {0.5, 0.2, 0.3}}}, Distribution{Uniform{-1, 3}},
      Distribution{Normal{2, 0.5}}, Distribution{Triangular{0, 1, 4}}, Distribution{Triangular{0, 0, 4}},
      Distribution{Triangular{0, 4, 4}}, Distribution{TruncatedNormal{2, 0.5, 1.8, 3}}, Distribution{TruncatedNormal{2, 0.5, 3, 9}},
      Distribution{TruncatedNormal{2, 0.5, -9, 1}}, Distribution{measured({3, 1, 2, 7, 7})}, Distribution{measured({3})});
  CAPTURE(d.index());
  check(d);
  const auto [m, s] = integrated(d);
  CHECK(mean(d) == Approx(m).epsilon(1e-5));
  CHECK(deviation(d) == Approx(s).epsilon(1e-4).margin(1e-7));  // margin: the difference of squares of a single value
}

TEST_CASE("distribution: quantiles invert the cumulative distribution", "[study]") {
  const double u = GENERATE(1e-6, 0.1, 0.25, 0.5, 0.7, 1 - 1e-6);
  CAPTURE(u);
  CHECK(quantile(Uniform{2, 6}, u) == Approx(2 + 4 * u).epsilon(1e-14));
  CHECK(normal_cumulative((quantile(Normal{3, 2}, u) - 3) / 2) == Approx(u).epsilon(1e-9));
  const double x = quantile(Triangular{1, 2, 5}, u);  // F = (x−1)²/4 up to the mode, 1 − (5−x)²/12 beyond
  CHECK((x <= 2 ? (x - 1) * (x - 1) / 4 : 1 - (5 - x) * (5 - x) / 12) == Approx(u).epsilon(1e-9));
  const double below = normal_cumulative(-1), mass = normal_cumulative(2) - below;
  CHECK((normal_cumulative(quantile(TruncatedNormal{0, 1, -1, 2}, u)) - below) / mass == Approx(u).epsilon(1e-9));
}

TEST_CASE("distribution: the median of a normal is its mean and the 97.5 % quantile stands 1.96 deviations above", "[study]") {
  CHECK(quantile(Normal{3, 2}, 0.5) == 3);
  CHECK(quantile(Normal{0, 1}, 0.975) == Approx(1.959963984540054).epsilon(1e-14));  // any table of the normal
}

TEST_CASE("distribution: a truncated normal far out in a tail keeps its digits and mirrors", "[study]") {
  // Beyond 6 deviations the share is 1e-9; there a difference of two numbers near 1 would keep seven digits.
  const TruncatedNormal upper{0, 1, 6, 6.5}, lower{0, 1, -6.5, -6};
  for (double u : {0.01, 0.5, 0.99}) CHECK(quantile(upper, u) == Approx(-quantile(lower, 1 - u)).epsilon(1e-13));
  CHECK(mean(upper) == -mean(lower));
  CHECK(quantile(upper, 1e-12) >= 6);
  CHECK(quantile(upper, 1 - 1e-12) <= 6.5);
}

TEST_CASE("distribution: choices are made as often as their weights say", "[study]") {
  const Choices c{{10, 20, 30, 40}, {1, 0, 2, 1}};
  CHECK(quantile(c, 0.2499) == 10);
  CHECK(quantile(c, 0.2501) == 30);
  CHECK(quantile(c, 0.7499) == 30);
  CHECK(quantile(c, 0.7501) == 40);
  CHECK(quantile(Choices{{1, 2}, {1, 0}}, 1 - 0x1p-53) == 1);  // the last one is never made
}

TEST_CASE("distribution: a measured list gives back its own values at their ranks", "[study]") {
  const Empirical e = measured({5, 1, 2});
  CHECK(quantile(e, 0.5) == 2);
  CHECK(quantile(e, 0.25) == 1.5);
  CHECK(quantile(e, 0.75) == 3.5);
  CHECK(quantile(e, 1e-12) == Approx(1));
  CHECK(quantile(e, 1 - 1e-12) == Approx(5));
}

TEST_CASE("distribution: the normal of a tolerance leaves 0.27 % outside its limits", "[study]") {
  const Normal n = normal_within(9.9, 10.1);
  CHECK(n.mean == Approx(10).epsilon(1e-15));
  CHECK(2 * normal_cumulative((9.9 - n.mean) / n.deviation) == Approx(0.002699796063).epsilon(1e-9));
  CHECK(normal_within(0, 4, 2).deviation == 1);
}

TEST_CASE("distribution: what cannot be drawn from is refused", "[study]") {
  const Distribution d = GENERATE(
      Distribution{Choices{}}, Distribution{Choices{{1, 2}, {1}}}, Distribution{Choices{{1, 2}, {-1, 2}}},
      Distribution{Choices{{1, 2}, {0, 0}}}, Distribution{Choices{{1, kNaN}, {}}}, Distribution{Uniform{1, 1}}, Distribution{Uniform{2, 1}},
      Distribution{Uniform{kNaN, 1}}, Distribution{Normal{0, 0}}, Distribution{Normal{kNaN, 1}}, Distribution{Triangular{0, 3, 2}},
      Distribution{Triangular{0, 0, 0}}, Distribution{TruncatedNormal{0, 1, 2, 1}}, Distribution{TruncatedNormal{0, 1, 9, 10}},
      Distribution{TruncatedNormal{0, -1, 0, 1}}, Distribution{Empirical{}}, Distribution{Empirical{{2, 1}}});
  CAPTURE(d.index());
  CHECK_THROWS_AS(check(d), InvalidInput);
}

TEST_CASE("distribution: there is no quantile at 0, at 1 or at no number", "[study]") {
  for (double u : {0.0, 1.0, -0.1, kNaN}) CHECK_THROWS_AS(quantile(Uniform{0, 1}, u), InvalidInput);
  CHECK_THROWS_AS(normal_within(1, 1), InvalidInput);
  CHECK_THROWS_AS(normal_within(0, 1, 0), InvalidInput);
  CHECK_THROWS_AS(measured({1, kNaN}), InvalidInput);
}
