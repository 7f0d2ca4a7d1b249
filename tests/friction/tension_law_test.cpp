#include "friction/tension_law.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double area = 3e-6;  // [m²]

// Three terms with a soft start and an upturn, and one term whose exponent is negative.
model::RubberLaw rubber() {
  return {area, {{0.63e6, 1.3}, {0.0012e6, 5.0}, {-0.01e6, -2.0}}, 6.0};
}

model::TableLaw table() {
  return {{1, 1.1, 1.3, 1.35, 2.0, 2.4}, {0, 0.5, 0.9, 1.2, 1.8, 4.0}};
}

// Simpson's rule on the tension, interval by interval of a fine grid.
double energy_by_quadrature(const TensionFunction& law, double from, double to) {
  const int n = 2000;
  const double h = (to - from) / n;
  double sum = 0;
  for (int i = 0; i < n; ++i) {
    const double x = from + i * h;
    sum += h / 6 * (law.tension(x) + 4 * law.tension(x + h / 2) + law.tension(x + h));
  }
  return sum;
}

const model::TensionLaw laws[] = {model::LinearLaw{800}, rubber(), table()};

}  // namespace

TEST_CASE("tension law: slack cord has no tension, slope or energy", "[limits][cord]") {
  const TensionFunction law(laws[GENERATE(0, 1, 2)]);
  CHECK(law.tension(0.9) == 0);
  CHECK(law.slope(0.9) == 0);
  CHECK(law.energy(0.9) == 0);
  CHECK(law.tension(1) == 0);
  CHECK(law.slope(1) == law.initial_slope());
  CHECK(law.stretch(0) == 1);
  CHECK(law.stretch(-5) == 1);
  CHECK(law.stretch_at(-5).by_tension == 1 / law.initial_slope());
}

TEST_CASE("tension law: the slope is the derivative of the tension", "[derivative][cord]") {
  const TensionFunction law(laws[GENERATE(0, 1, 2)]);
  const double x = GENERATE(1.05, 1.2, 1.33, 1.9, 2.3, 2.6, 5.0, 7.0);
  const double h = 1e-6;
  CAPTURE(x);
  CHECK_THAT(law.slope(x), WithinRel((law.tension(x + h) - law.tension(x - h)) / (2 * h), 1e-7));
}

TEST_CASE("tension law: the energy is the integral of the tension", "[analytic][cord]") {
  const TensionFunction law(laws[GENERATE(0, 1, 2)]);
  // Simpson's rule is exact for cubics and nearly so for Ogden's powers; the table's break points and the end
  // of validity are kept apart as ends of sub-intervals.
  double sum = 0, from = 1;
  for (const double to : {1.1, 1.3, 1.35, 2.0, 2.4, 4.0, 6.0, 7.5}) {
    sum += energy_by_quadrature(law, from, to);
    from = to;
    CAPTURE(to);
    CHECK_THAT(law.energy(to), WithinRel(sum, 1e-11));
  }
}

TEST_CASE("tension law: the inverse undoes the law, with its derivative", "[analytic][cord]") {
  const TensionFunction law(laws[GENERATE(0, 1, 2)]);
  const double x =
      GENERATE(1.0, 1 + 1e-9, 1.0001, 1.05, 1.1, 1.32, 1.35, 1.9, 2.39, 2.4, 3.3, 5.99, 6.0, 8.0);
  const auto inverse = law.stretch_at(law.tension(x));
  CAPTURE(x);
  CHECK_THAT(inverse.stretch, WithinRel(x, 1e-13));
  CHECK_THAT(inverse.by_tension * law.slope(inverse.stretch), WithinRel(1.0, 1e-12));
}

TEST_CASE("tension law: the inverse rises with tension everywhere", "[cord]") {
  const TensionFunction law(laws[GENERATE(0, 1, 2)]);
  double before = 1;
  int falls = 0;
  for (int i = 1; i <= 5000; ++i) {
    const double x = law.stretch(0.002 * i);
    if (!(x > before)) ++falls;
    before = x;
  }
  CHECK(falls == 0);
}

TEST_CASE("tension law: one Ogden term with exponent 2 is neo-Hookean", "[analytic][cord]") {
  const double g = 0.39e6;
  const TensionFunction law(model::RubberLaw{area, {{g, 2.0}}, 5.0});
  const double x = GENERATE(1.0 + 1e-8, 1.5, 2.0, 4.9);
  CHECK_THAT(law.tension(x), WithinRel(area * g * (x - 1 / (x * x)), 1e-7));
  CHECK_THAT(law.tension(1.5), WithinRel(area * g * (1.5 - 1 / 2.25), 1e-14));
  CHECK_THAT(law.energy(x), WithinAbs(area * g / 2 * (x * x + 2 / x - 3), 1e-15));
  CHECK_THAT(law.initial_slope(), WithinRel(3 * g * area, 1e-14));  // E = 3G
}

TEST_CASE("tension law: a table is met at its points, stays between them, and has no kink", "[cord]") {
  const model::TableLaw data = table();
  const TensionFunction law(data);
  for (std::size_t i = 0; i < data.stretch.size(); ++i) {
    CHECK_THAT(law.tension(data.stretch[i]), WithinAbs(data.tension[i], 1e-14));
    if (i == 0) continue;
    const double x = data.stretch[i];
    CHECK_THAT(law.slope(x - 1e-9), WithinRel(law.slope(x + 1e-9), 1e-6));
    int outside = 0;
    for (int k = 1; k < 100; ++k) {
      const double t = law.tension(data.stretch[i - 1] + (x - data.stretch[i - 1]) * k / 100);
      if (!(t > data.tension[i - 1] && t < data.tension[i])) ++outside;
    }
    CHECK(outside == 0);
  }
}

TEST_CASE("tension law: a table with a sharp knee still rises everywhere, up to its ends", "[limits][cord]") {
  // The three-point slope at the end beside the flat part would be negative.
  const bool flat_first = GENERATE(true, false);
  const TensionFunction law(flat_first ? model::TableLaw{{1, 1.1, 1.2}, {0, 0.1, 2}}
                                       : model::TableLaw{{1, 1.1, 1.2}, {0, 1.9, 2}});
  CHECK(law.initial_slope() > 0);
  CHECK(law.slope(1.3) > 0);
  int falls = 0;
  for (int i = 0; i < 400; ++i) {
    if (!(law.tension(1 + 0.001 * (i + 1)) > law.tension(1 + 0.001 * i))) ++falls;
  }
  CHECK(falls == 0);
}

TEST_CASE("tension law: a table of points on a line is that line", "[limits][cord]") {
  const TensionFunction law(model::TableLaw{{1, 1.01, 1.015, 1.05}, {0, 2, 3, 10}});
  CHECK_THAT(law.tension(1.0321), WithinRel(200 * 0.0321, 1e-12));
  CHECK_THAT(law.slope(1.0321), WithinRel(200.0, 1e-11));
  CHECK_THAT(law.tension(1.2), WithinRel(40.0, 1e-11));  // beyond the last point
}

TEST_CASE("tension law: a smooth table converges to the law it was taken from", "[order][cord]") {
  const auto error = [](int n) {
    model::TableLaw data;
    for (int i = 0; i <= n; ++i) {
      data.stretch.push_back(1 + 1.0 * i / n);
      data.tension.push_back(std::sinh(1.0 * i / n));
    }
    const TensionFunction law(data);
    double worst = 0;
    for (int k = 0; k <= 300; ++k)
      worst = std::max(worst, std::abs(law.tension(1.3 + 0.4 * k / 300) - std::sinh(0.3 + 0.4 * k / 300)));
    return worst;
  };
  // Away from the ends, on even steps: the harmonic mean of the secants is a second-order slope, so the
  // tension converges at third order.
  CHECK_THAT(std::log2(error(40) / error(80)), WithinAbs(3.0, 0.3));
}

TEST_CASE("tension law: beyond its validity it goes on straight and says so", "[cord]") {
  const TensionFunction law(rubber());
  CHECK(law.max_stretch() == 6);
  CHECK_FALSE(law.beyond_validity(6));
  CHECK(law.beyond_validity(6.0001));
  CHECK_THAT(law.tension(7) - law.tension(6.5), WithinRel(0.5 * law.slope(6), 1e-13));
  const TensionFunction linear(model::LinearLaw{800});
  CHECK(linear.is_linear());
  CHECK_FALSE(linear.beyond_validity(100));
}

TEST_CASE("tension law: data that cannot be used are refused", "[errors][cord]") {
  CHECK_THROWS_WITH(TensionFunction(model::LinearLaw{0}), Contains("axial stiffness = 0 N"));
  CHECK_THROWS_AS(TensionFunction(model::RubberLaw{area, {}, 5}), InvalidInput);
  CHECK_THROWS_AS(TensionFunction(model::RubberLaw{area, {{1e5, 2}}, 1}), InvalidInput);
  CHECK_THROWS_AS(TensionFunction(model::RubberLaw{area, {{1e5, 0}}, 5}), InvalidInput);
  // Softens so much that the tension falls again: at exponent 0.2 the nominal stress has a maximum.
  CHECK_THROWS_WITH(TensionFunction(model::RubberLaw{area, {{1e5, 0.2}}, 8}),
                    Contains("must rise with stretch"));
  CHECK_THROWS_AS(TensionFunction(model::TableLaw{{1, 1.2}, {0}}), InvalidInput);
  CHECK_THROWS_AS(TensionFunction(model::TableLaw{{1.1, 1.2}, {0, 1}}), InvalidInput);
  CHECK_THROWS_AS(TensionFunction(model::TableLaw{{1, 1.2, 1.2}, {0, 1, 2}}), InvalidInput);
  CHECK_THROWS_AS(TensionFunction(model::TableLaw{{1, 1.2, 1.3}, {0, 1, 1}}), InvalidInput);
}
