#include <string>

#include <catch2/catch.hpp>

#include "check.h"
#include "friction/washer.h"

using namespace sinewright;
using namespace sinewright::friction;
using model::WasherLaw;
using sinewright::external::check_relative;

namespace {

// Torque of one face pressed by `force`: two faces of which the axial load has freed one.
double collar_torque(WasherLaw law, double mu, double force, double inner_diameter, double outer_diameter) {
  model::Washers w;
  w.inner_diameter = inner_diameter;
  w.outer_diameter = outer_diameter;
  w.friction = {mu, mu};
  w.law = law;
  return washer_torque(w, force).kinetic;
}

}  // namespace

TEST_CASE("collar: uniform pressure gives the torque of a published worked example", "[external][collar]") {
  check_relative("torque, mu = 0.16, 1700 N, radii 54 and 32 mm", "N mm",
                 1e3 * collar_torque(WasherLaw::uniform_pressure, 0.16, 1700, 0.064, 0.108), 11951.131782946,
                 {"worked example, formuladen.com, Formula-8024 (published 11 951.1318)", 1e-9});
}

TEST_CASE("collar: uniform wear gives mu W times the mean radius", "[external][collar]") {
  check_relative(
      "torque, mu = 0.16, 1700 N, radii 54 and 32 mm", "N mm",
      1e3 * collar_torque(WasherLaw::uniform_wear, 0.16, 1700, 0.064, 0.108), 11696.0,
      {"M = mu P (R1 + R2) / 2, Beer and Johnston, Statics, problem 8.95; evaluated apart", 1e-12});
}

TEST_CASE("collar: power-screw examples use the mean diameter", "[external][collar]") {
  // Only the mean diameter is given there; any ring about it must do under uniform wear.
  const double half_width = GENERATE(0.001, 0.01);
  check_relative("collar torque, 9 kN, mu = 0.09, mean diameter 52 mm", "N m",
                 collar_torque(WasherLaw::uniform_wear, 0.09, 9000, 0.052 - half_width, 0.052 + half_width),
                 21.06, {"worked textbook problem, wizedu.com, question 45857", 1e-9});
  check_relative("collar torque, 6.4 kN, mu = 0.08, mean diameter 40 mm", "N m",
                 collar_torque(WasherLaw::uniform_wear, 0.08, 6400, 0.040 - half_width, 0.040 + half_width),
                 10.24, {"Shigley's Mechanical Engineering Design, Example 8-1 (from memory)", 5e-4});
}

TEST_CASE("collar: small washers as thrust faces give the values of both laws", "[external][collar]") {
  const std::string source = "collar formulas of Beer and Johnston, Statics, ch. 8; evaluated apart";
  struct Row {
    const char* name;
    double mu, force, inner, outer, pressure, wear;  // [–, N, m, m, N mm, N mm]
  };
  const Row r =
      GENERATE(Row{"M3 washer 3.2/7, 10 N, mu = 0.25", 0.25, 10, 0.0032, 0.007, 6.6699346405229, 6.375},
               Row{"M2 washer 2.2/5, 5 N, mu = 0.2", 0.2, 5, 0.0022, 0.005, 1.8907407407407, 1.8},
               Row{"ring 2/6, 20 N, mu = 0.15", 0.15, 20, 0.002, 0.006, 6.5, 6.0});
  const std::string name = r.name;
  check_relative("uniform pressure, " + name, "N mm",
                 1e3 * collar_torque(WasherLaw::uniform_pressure, r.mu, r.force, r.inner, r.outer),
                 r.pressure, {source, 1e-12});
  check_relative("uniform wear, " + name, "N mm",
                 1e3 * collar_torque(WasherLaw::uniform_wear, r.mu, r.force, r.inner, r.outer), r.wear,
                 {source, 1e-12});
}

TEST_CASE("collar: on a solid pivot the two laws stand as 4 to 3", "[external][collar]") {
  // (2/3) mu F R and (1/2) mu F R: Beer and Johnston; Shigley's clutch chapter (from memory).
  const std::string source = "Beer and Johnston; Shigley, clutches (from memory)";
  const double pressure = collar_torque(WasherLaw::uniform_pressure, 0.2, 30, 0, 0.008);
  const double wear = collar_torque(WasherLaw::uniform_wear, 0.2, 30, 0, 0.008);
  check_relative("uniform pressure, solid pivot", "N m", pressure, 2.0 / 3 * 0.2 * 30 * 0.004,
                 {source, 1e-14});
  check_relative("ratio of the laws, solid pivot", "1", pressure / wear, 4.0 / 3, {source, 1e-14});
}
