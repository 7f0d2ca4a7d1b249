#include "strength/interference_fit.h"

#include <cmath>
#include <limits>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr RingMaterial steel{205e9, 0.29, 12e-6};
constexpr RingMaterial nylon{1.7e9, 0.39, 100e-6};

// A 2 mm steel pin in a printed boss.
InterferenceFit boss() {
  return {.diameter = 2e-3,
          .hub_diameter = 6e-3,
          .length = 5e-3,
          .interference = 20e-6,
          .shaft = steel,
          .hub = nylon};
}

// Radial displacement of a ring under inner and outer pressure, found by integrating Lamé's field: u = A r +
// B/r with stresses σ_r = a − b/r², σ_θ = a + b/r² and the hoop strain u/r = (σ_θ − ν σ_r)/E.
double ring_displacement(const RingMaterial& m, double inner, double outer, double p_inner, double p_outer,
                         double r) {
  const double a = (p_inner * inner * inner - p_outer * outer * outer) / (outer * outer - inner * inner);
  const double b = (p_inner - p_outer) * inner * inner * outer * outer / (outer * outer - inner * inner);
  const double radial = a - b / (r * r), hoop = a + b / (r * r);
  return r * (hoop - m.poisson_ratio * radial) / m.youngs_modulus;
}

}  // namespace

TEST_CASE("interference fit: the deformed parts meet at one diameter", "[analytic][interference-fit]") {
  InterferenceFit fit = boss();
  fit.shaft_bore = 0.8e-3;
  const double p = fit_pressure(fit);
  const double hub = ring_displacement(fit.hub, 1e-3, 3e-3, p, 0, 1e-3);
  const double shaft = ring_displacement(fit.shaft, 0.4e-3, 1e-3, 0, p, 1e-3);
  CHECK(hub > 0);
  CHECK(shaft < 0);
  CHECK_THAT(2 * (hub - shaft), WithinRel(fit.interference, 1e-13));
  CHECK_THAT(hub_opening(fit, p), WithinRel(2 * hub, 1e-13));
  CHECK_THAT(shaft_shrinkage(fit, p), WithinRel(-2 * shaft, 1e-13));
}

TEST_CASE("interference fit: pressure and interference are each other's inverse", "[interference-fit]") {
  const InterferenceFit fit = boss();
  CHECK_THAT(interference_for(fit, fit_pressure(fit)), WithinRel(20e-6, 1e-14));
}

TEST_CASE("interference fit: a hole in an endless body is the limit of thick hubs",
          "[limits][interference-fit]") {
  InterferenceFit fit = boss(), thick = boss();
  fit.hub_diameter = infinity;
  thick.hub_diameter = 2;  // [m], a thousand pin diameters
  CHECK_THAT(fit_pressure(fit), WithinRel(fit_pressure(thick), 1e-5));
  // Rigid shaft in an endless body: p = δ E / (2R (1 + ν)).
  fit.shaft.youngs_modulus = 1e30;
  CHECK_THAT(fit_pressure(fit), WithinRel(20e-6 * 1.7e9 / (2e-3 * 1.39), 1e-13));
  CHECK_THAT(hoop_stress(fit, 1e6).hub_bore, WithinRel(1e6, 1e-14));
  CHECK(hoop_stress(fit, 1e6).hub_outside == 0);
}

TEST_CASE("interference fit: a thin hub carries the pressure as a thin ring", "[limits][interference-fit]") {
  InterferenceFit fit = boss();
  fit.hub_diameter = fit.diameter * (1 + 2e-7);  // wall 0.2 nm on a radius of 1 mm
  CHECK_THAT(hoop_stress(fit, 1).hub_bore, WithinRel(1e-3 / 0.2e-9, 1e-6));
}

TEST_CASE("interference fit: clearance presses nothing", "[limits][interference-fit]") {
  InterferenceFit fit = boss();
  fit.interference = -1e-6;
  CHECK(fit_pressure(fit) == 0);
  fit.interference = 0;
  CHECK(fit_pressure(fit) == 0);
}

TEST_CASE("interference fit: warmth loosens a metal pin in nylon", "[interference-fit]") {
  const InterferenceFit fit = boss();
  // (12 − 100)e-6 · 2 mm · 40 K = −7.04 µm.
  CHECK_THAT(interference_at(fit, 40), WithinAbs(20e-6 - 7.04e-6, 1e-18));
  CHECK_THAT(fit_pressure(fit, 40) / fit_pressure(fit), WithinRel(12.96 / 20, 1e-12));
  CHECK(fit_pressure(fit, -40) > fit_pressure(fit));
  CHECK(fit_pressure(fit, 120) == 0);  // loose above 113.6 K
}

TEST_CASE("interference fit: hoop stresses at both faces of both rings", "[analytic][interference-fit]") {
  InterferenceFit fit = boss();
  const FitStress solid = hoop_stress(fit, 8e6);
  // (9 + 1)/(9 − 1) = 1.25, 2/(9 − 1) = 0.25.
  CHECK_THAT(solid.hub_bore, WithinRel(10e6, 1e-14));
  CHECK_THAT(solid.hub_outside, WithinRel(2e6, 1e-13));
  CHECK_THAT(solid.shaft_outside, WithinRel(-8e6, 1e-14));
  CHECK_THAT(solid.shaft_bore, WithinRel(-8e6, 1e-14));
  fit.shaft_bore = 1e-3;
  const FitStress hollow = hoop_stress(fit, 8e6);
  // (1 + 1/4)/(1 − 1/4) = 5/3, 2/(1 − 1/4) = 8/3.
  CHECK_THAT(hollow.shaft_outside, WithinRel(-8e6 * 5 / 3, 1e-14));
  CHECK_THAT(hollow.shaft_bore, WithinRel(-8e6 * 8 / 3, 1e-14));
  CHECK_THAT(hub_equivalent_stress(fit, 8e6), WithinRel(std::sqrt(100 + 80 + 64.0) * 1e6, 1e-13));
}

TEST_CASE("interference fit: the hub's hoop stress over its wall carries the pressure",
          "[analytic][interference-fit]") {
  // Half the hub in balance: 2 ∫ σ_θ dr = 2 p R. Lamé's field between the two faces is a + b/r².
  const InterferenceFit fit = boss();
  const FitStress s = hoop_stress(fit, 1e6);
  const double b = (s.hub_bore - s.hub_outside) / (1 / 1e-6 - 1 / 9e-6);
  const double a = s.hub_bore - b / 1e-6;
  CHECK_THAT(a * 2e-3 + b * (1 / 1e-3 - 1 / 3e-3), WithinRel(1e6 * 1e-3, 1e-13));
}

TEST_CASE("interference fit: slip force and torque on the whole contact", "[analytic][interference-fit]") {
  const InterferenceFit fit = boss();
  // 0.2 · 10 MPa · π · 2 mm · 5 mm
  CHECK_THAT(slip_force(fit, 10e6, 0.2), WithinRel(20 * pi, 1e-13));
  CHECK_THAT(slip_torque(fit, 10e6, 0.2), WithinRel(20 * pi * 1e-3, 1e-13));
  CHECK(slip_force(fit, 10e6, 0) == 0);
}

TEST_CASE("interference fit: creep leaves its share of the pressure", "[interference-fit]") {
  CHECK(relaxed_pressure(8e6, 0.5) == 4e6);
  CHECK(relaxed_pressure(8e6, 1) == 8e6);
  CHECK_THROWS_AS(relaxed_pressure(8e6, 0), InvalidInput);
  CHECK_THROWS_AS(relaxed_pressure(8e6, 1.1), InvalidInput);
  CHECK_THROWS_AS(relaxed_pressure(-1, 0.5), InvalidInput);
}

TEST_CASE("interference fit: data that make no fit are refused", "[errors][interference-fit]") {
  const auto refused = [](auto change) {
    InterferenceFit fit = boss();
    change(fit);
    CHECK_THROWS_AS(fit_pressure(fit), InvalidInput);
  };
  refused([](InterferenceFit& f) { f.diameter = 0; });
  refused([](InterferenceFit& f) { f.shaft_bore = 2e-3; });
  refused([](InterferenceFit& f) { f.shaft_bore = -1e-3; });
  refused([](InterferenceFit& f) { f.hub_diameter = 2e-3; });
  refused([](InterferenceFit& f) { f.hub_diameter = std::nan(""); });
  refused([](InterferenceFit& f) { f.length = 0; });
  refused([](InterferenceFit& f) { f.interference = infinity; });
  refused([](InterferenceFit& f) { f.shaft.youngs_modulus = 0; });
  refused([](InterferenceFit& f) { f.hub.poisson_ratio = 0.51; });
  refused([](InterferenceFit& f) { f.hub.thermal_expansion = std::nan(""); });
  CHECK_THROWS_AS(fit_pressure(boss(), std::nan("")), InvalidInput);
  CHECK_THROWS_AS(hub_opening(boss(), -1), InvalidInput);
  CHECK_THROWS_AS(hoop_stress(boss(), std::nan("")), InvalidInput);
  CHECK_THROWS_AS(slip_force(boss(), 1e6, -0.1), InvalidInput);
  InterferenceFit soft = boss();
  soft.hub.youngs_modulus = -1;
  CHECK_THROWS_WITH(fit_pressure(soft), Contains("modulus of the hub = -1 Pa is not allowed"));
}
