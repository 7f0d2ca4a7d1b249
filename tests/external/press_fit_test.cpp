#include <string>

#include <catch2/catch.hpp>

#include "check.h"
#include "strength/interference_fit.h"

using namespace sinewright::strength;
using sinewright::external::check_relative;

TEST_CASE("press fit: one material and a solid shaft, the default of a published calculator",
          "[external][press-fit]") {
  const RingMaterial steel{210e9, 0.3, 0};
  const InterferenceFit fit{.diameter = 0.100,
                            .hub_diameter = 0.150,
                            .length = 0.050,
                            .interference = 0.1e-3,
                            .shaft = steel,
                            .hub = steel};
  const sinewright::external::Outside source{"worked default of novasolver.jp, shrink-fit-stress", 1e-6};
  const double p = fit_pressure(fit);
  check_relative("pressure, 100/150 mm, 0.1 mm", "MPa", 1e-6 * p, 58.3333, source);
  check_relative("hoop stress at the hub's bore, 100/150 mm", "MPa", 1e-6 * hoop_stress(fit, p).hub_bore,
                 151.6667, source);
  check_relative("hoop stress of the shaft, 100/150 mm", "MPa", 1e-6 * hoop_stress(fit, p).shaft_outside,
                 -58.3333, source);
  check_relative("slip torque, 50 mm long, mu = 0.15", "kN m", 1e-3 * slip_torque(fit, p, 0.15), 6.87223393,
                 source);
}

TEST_CASE("press fit: a steel tube in a cast-iron disc whose hoop stress is limited",
          "[external][press-fit]") {
  const InterferenceFit fit{.diameter = 0.100,
                            .shaft_bore = 0.050,
                            .hub_diameter = 0.250,
                            .length = 0.100,
                            .interference = 0,
                            .shaft = {210e9, 0.3, 0},
                            .hub = {70e9, 0.25, 0}};
  const sinewright::external::Outside source{
      "textbook example, data of scribd.com 239703088; evaluated apart", 1e-8};
  const double p = 30e6 / hoop_stress(fit, 1).hub_bore;
  check_relative("pressure at 30 MPa in the disc", "MPa", 1e-6 * p, 21.724137931, source);
  check_relative("radial interference at 30 MPa in the disc", "mm", 1e3 * interference_for(fit, p) / 2,
                 0.0323768472906, source);
  check_relative("slip force, 100 mm long, mu = 0.15", "kN", 1e-3 * slip_force(fit, p, 0.15), 102.372588,
                 source);
  check_relative("slip torque, 100 mm long, mu = 0.15", "kN m", 1e-3 * slip_torque(fit, p, 0.15), 5.11862941,
                 source);
}

TEST_CASE("press fit: the opening of a shrunk sleeve alone tells its pressure", "[external][press-fit]") {
  // The shaft's modulus is not given and does not enter; any will do.
  const double shaft_modulus = GENERATE(70e9, 200e9);
  const InterferenceFit fit{.diameter = 0.200,
                            .shaft_bore = 0.100,
                            .hub_diameter = 0.350,
                            .length = 0.1,
                            .interference = 0,
                            .shaft = {shaft_modulus, 0.3, 0},
                            .hub = {200e9, 0.28, 0}};
  const sinewright::external::Outside source{
      "textbook problem, data of tutorsglobe.com 5734939; evaluated apart", 1e-8};
  const double p = 0.2e-3 / hub_opening(fit, 1);
  const FitStress stress = hoop_stress(fit, p);
  const std::string shaft = shaft_modulus < 100e9 ? ", shaft of 70 GPa" : ", shaft of 200 GPa";
  check_relative("pressure at 0.2 mm opening" + shaft, "MPa", 1e-6 * p, 88.900862069, source);
  check_relative("hoop stress at the sleeve's bore" + shaft, "MPa", 1e-6 * stress.hub_bore, 175.1077586,
                 source);
  check_relative("hoop stress at the shaft's bore" + shaft, "MPa", 1e-6 * stress.shaft_bore, -237.0689655,
                 source);
  check_relative("hoop stress at the shaft's outside" + shaft, "MPa", 1e-6 * stress.shaft_outside,
                 -148.1681034, source);
}

TEST_CASE("press fit: a steel ring on a brass tube", "[external][press-fit]") {
  const InterferenceFit fit{.diameter = 0.10160,
                            .shaft_bore = 0.0508,
                            .hub_diameter = 0.1270,
                            .length = 0.1,
                            .interference = 0.051e-3,
                            .shaft = {103.4e9, 0.32, 0},
                            .hub = {206.7e9, 0.29, 0}};
  const sinewright::external::Outside source{
      "textbook problem, data of tutorsglobe.com 5735556; evaluated apart", 1e-6};
  const double p = fit_pressure(fit);
  check_relative("pressure, steel on brass", "MPa", 1e-6 * p, 13.7652668686, source);
  check_relative("hoop stress at the steel ring's bore", "MPa", 1e-6 * hoop_stress(fit, p).hub_bore,
                 62.70843796, source);
}

TEST_CASE("press fit: steel pins in printed bosses", "[external][press-fit]") {
  const RingMaterial steel{205e9, 0.29, 0}, nylon{1.7e9, 0.39, 0};
  const sinewright::external::Outside source{"Lame's equations, evaluated apart", 1e-11};
  const InterferenceFit three{.diameter = 3e-3,
                              .hub_diameter = 8e-3,
                              .length = 6e-3,
                              .interference = 20e-6,
                              .shaft = steel,
                              .hub = nylon};
  const double p = fit_pressure(three);
  check_relative("pressure, 3 mm pin in 8 mm boss, 20 um", "MPa", 1e-6 * p, 6.5770618128002, source);
  check_relative("hoop stress at the boss's bore", "MPa", 1e-6 * hoop_stress(three, p).hub_bore,
                 8.72955476972, source);
  check_relative("pull-out force, 6 mm long, mu = 0.2", "N", slip_force(three, p, 0.2), 74.3848166639,
                 source);
  check_relative("slip torque, 6 mm long, mu = 0.2", "N mm", 1e3 * slip_torque(three, p, 0.2), 111.577224996,
                 source);

  const InterferenceFit two{.diameter = 2e-3,
                            .hub_diameter = 6e-3,
                            .length = 6e-3,
                            .interference = 15e-6,
                            .shaft = steel,
                            .hub = nylon};
  check_relative("pressure, 2 mm pin in 6 mm boss, 15 um", "MPa", 1e-6 * fit_pressure(two), 7.7465790573402,
                 source);
}
