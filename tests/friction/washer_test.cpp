#include "friction/washer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::WithinRel;
using model::WasherLaw;

namespace {

// Friction moment over friction force of an annulus with pressure p(r): ∫ p r · 2πr dr / ∫ p · 2πr dr,
// midpoint rule.
template <class Pressure>
double radius_by_quadrature(double inner, double outer, Pressure pressure) {
  const int n = 20000;
  double moment = 0, force = 0;
  for (int i = 0; i < n; ++i) {
    const double r = inner + (outer - inner) * (i + 0.5) / n;
    moment += pressure(r) * r * r;
    force += pressure(r) * r;
  }
  return moment / force;
}

}  // namespace

TEST_CASE("washer: the effective radius is the pressure-weighted mean radius", "[analytic][washer]") {
  const double inner = 1.1e-3, outer = 2.5e-3;
  // Midpoint rule with 20000 cells: error below 1e-8.
  CHECK_THAT(effective_radius(WasherLaw::uniform_pressure, 2 * inner, 2 * outer),
             WithinRel(radius_by_quadrature(inner, outer, [](double) { return 1.0; }), 1e-8));
  // Wear in proportion to pressure times speed evens out p r.
  CHECK_THAT(effective_radius(WasherLaw::uniform_wear, 2 * inner, 2 * outer),
             WithinRel(radius_by_quadrature(inner, outer, [](double r) { return 1 / r; }), 1e-8));
}

TEST_CASE("washer: both laws meet at the mean radius of a thin ring", "[limits][washer]") {
  const double pressure = effective_radius(WasherLaw::uniform_pressure, 0.01, 0.01 * (1 + 1e-9));
  CHECK_THAT(pressure, WithinRel(0.005 * (1 + 0.5e-9), 1e-15));
}

TEST_CASE("washer: diameters out of order are refused", "[errors][washer]") {
  CHECK_THROWS_AS(effective_radius(WasherLaw::uniform_wear, 0.005, 0.005), InvalidInput);
  CHECK_THROWS_AS(effective_radius(WasherLaw::uniform_wear, -0.001, 0.005), InvalidInput);
  CHECK_THROWS_AS(effective_radius(WasherLaw::uniform_wear, 0.001, std::nan("")), InvalidInput);
}

TEST_CASE("washer: faces share the preload until the axial load frees one", "[analytic][washer]") {
  CHECK(axial_normal_sum(5, 0) == 10);
  CHECK(axial_normal_sum(5, 9.9) == 10);  // 9.95 N and 0.05 N
  CHECK(axial_normal_sum(5, -9.9) == 10);
  CHECK(axial_normal_sum(5, 12) == 12);  // one face free
  CHECK(axial_normal_sum(0, -3) == 3);
}

TEST_CASE("washer: the sum agrees with two one-sided springs pressed against each other",
          "[analytic][washer]") {
  // Faces of stiffness k, pressed by P each; the lug moves by x until F = N1 - N2.
  const double k = 2e5, preload = 4;
  const double x = GENERATE(0.0, 1e-5, 1.9e-5, 3e-5, -2.5e-5);
  const double n1 = std::max(0.0, preload + k * x), n2 = std::max(0.0, preload - k * x);
  // Once a face is free, the other carries preload + k x, which is F: the sum is |F|.
  CHECK_THAT(axial_normal_sum(preload, n1 - n2), WithinRel(n1 + n2, 1e-14));
}

TEST_CASE("washer: torque limits follow the coefficients", "[washer]") {
  model::Washers w;
  w.inner_diameter = 2.2e-3;
  w.outer_diameter = 5e-3;
  w.preload = 1;
  w.friction = {0.3, 0.2};
  const TorqueLimit limit = washer_torque(w, 0);
  CHECK_THAT(limit.kinetic, WithinRel(0.2 * 2 * 1.8e-3, 1e-14));
  CHECK_THAT(limit.sticking / limit.kinetic, WithinRel(1.5, 1e-14));
}
