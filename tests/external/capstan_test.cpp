#include "friction/capstan.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include <catch2/catch.hpp>

#include "check.h"

using namespace sinewright;
using namespace sinewright::friction;
using sinewright::external::check_relative;

namespace {

constexpr double pi = std::numbers::pi;
constexpr double deg = pi / 180;

model::ChannelFriction coulomb(double mu) {
  model::ChannelFriction channel;
  channel.kinetic = mu;
  return channel;
}

}  // namespace

TEST_CASE("capstan: the slip ratio is that of the Euler-Eytelwein table", "[external][capstan]") {
  // Formula: Singh, J. Elasticity 151 (2022) 321, eq. 1. Values evaluated apart from this program, to 9
  // digits.
  const std::string source = "Euler-Eytelwein, formula in Singh, J. Elasticity 151 (2022) 321, eq. 1";
  constexpr std::array<double, 9> angle{30, 45, 60, 90, 120, 180, 270, 360, 720};  // [deg]
  struct Row {
    double mu;
    std::array<double, 9> ratio;
  };
  const Row row = GENERATE(Row{0.05,
                               {1.02652564, 1.04005116, 1.0537549, 1.08170642, 1.11039938, 1.17008879,
                                1.26569256, 1.36910777, 1.87445609}},
                           Row{0.10,
                               {1.0537549, 1.08170642, 1.11039938, 1.17008879, 1.23298679, 1.36910777,
                                1.60197765, 1.87445609, 3.51358562}},
                           Row{0.15,
                               {1.08170642, 1.12503003, 1.17008879, 1.26569256, 1.36910777, 1.60197765,
                                2.02761119, 2.5663324, 6.58606196}},
                           Row{0.20,
                               {1.11039938, 1.17008879, 1.23298679, 1.36910777, 1.52025642, 1.87445609,
                                2.5663324, 3.51358562, 12.3452839}},
                           Row{0.25,
                               {1.13985344, 1.21695221, 1.29926587, 1.48097267, 1.68809179, 2.19328005,
                                3.24818781, 4.81047738, 23.1406926}},
                           Row{0.30,
                               {1.17008879, 1.26569256, 1.36910777, 1.60197765, 1.87445609, 2.5663324,
                                4.11120714, 6.58606196, 43.3762122}},
                           Row{0.40,
                               {1.23298679, 1.36910777, 1.52025642, 1.87445609, 2.31117959, 3.51358562,
                                6.58606196, 12.3452839, 152.406036}},
                           Row{0.50,
                               {1.29926587, 1.48097267, 1.68809179, 2.19328005, 2.84965391, 4.81047738,
                                10.5507241, 23.1406926, 535.491656}},
                           Row{0.60,
                               {1.36910777, 1.60197765, 1.87445609, 2.5663324, 3.51358562, 6.58606196,
                                16.9020242, 43.3762122, 1881.49578}});
  for (std::size_t i = 0; i < angle.size(); ++i) {
    const std::string quantity = "slip ratio, mu = " + std::to_string(row.mu).substr(0, 4) + ", " +
                                 std::to_string(int(angle[i])) + " deg";
    check_relative(quantity, "1", capstan_slip_ratio(row.mu, angle[i] * deg), row.ratio[i], {source, 1e-8});
    // What the solver uses at a bend must say the same.
    CHECK_THAT(std::exp(bend_cone(coulomb(row.mu), 1, angle[i] * deg, 0).kinetic),
               Catch::Matchers::WithinRel(row.ratio[i], 1e-8));
  }
}

TEST_CASE("capstan: five turns at mu = 0.6 hold 153 552 935 times the load", "[external][capstan]") {
  // The integer is printed in encyclopaedia tables of the capstan equation; the digits after it are evaluated
  // apart.
  check_relative("slip ratio, mu = 0.6, 5 turns", "1", capstan_slip_ratio(0.6, 10 * pi), 153552935.395447,
                 {"encyclopaedia table of the capstan equation (153 552 935)", 1e-12});
}

TEST_CASE("capstan: mu of a cord on a pine roller comes from the measured ratios", "[external][capstan]") {
  // Measurement on a forum of the International Guild of Knot Tyers (topic 6933): wrap 3 pi, holds at 28/2,
  // slips at 28.5/1.5.
  const std::string source = "measurement, International Guild of Knot Tyers forum, topic 6933";
  check_relative("mu that still holds", "1", friction_from_slip_ratio(28.0 / 2, 3 * pi), 0.280012679407,
                 {source, 1e-9});
  check_relative("mu that slips", "1", friction_from_slip_ratio(28.5 / 1.5, 3 * pi), 0.312414678778,
                 {source, 1e-9});
}

TEST_CASE("capstan: of guides in series only the summed angle counts", "[external][capstan]") {
  const std::string source = "Euler-Eytelwein closed form, evaluated apart";
  double efficiency = 1;
  for (int i = 0; i < 5; ++i) efficiency *= std::exp(-bend_friction_exponent(coulomb(0.1), 1, 30 * deg, 0));
  check_relative("efficiency of 5 guides of 30 deg, mu = 0.1", "1", efficiency, 0.7696654124932,
                 {source, 1e-12});
  check_relative("efficiency of a 90 deg bend, mu = 0.15", "1", 1 / capstan_slip_ratio(0.15, pi / 2),
                 0.7900812829378, {source, 1e-12});
}

TEST_CASE("capstan: a V groove acts as the V-belt formula says", "[external][capstan]") {
  // V-belt form of machine-design texts (Shigley, chapter on flexible elements; from memory).
  const std::string source = "V-belt form, Shigley, flexible elements (from memory)";
  model::ChannelFriction channel = coulomb(0.3);
  channel.groove_angle = 40 * deg;
  check_relative("slip ratio, mu = 0.3, 40 deg groove, 180 deg", "1",
                 std::exp(bend_friction_exponent(channel, 1, pi, 0)), 15.73080241021, {source, 1e-12});
  channel = coulomb(0.15);
  channel.groove_angle = 60 * deg;
  check_relative("slip ratio, mu = 0.15, 60 deg groove, 90 deg", "1",
                 std::exp(bend_friction_exponent(channel, 1, pi / 2, 0)), 1.601977651282, {source, 1e-12});
  check_relative("the same by the factor on mu", "1",
                 capstan_slip_ratio(0.15 * groove_factor(60 * deg), pi / 2), 1.601977651282, {source, 1e-12});
}

TEST_CASE("capstan: a helical wrap grips less by the cosine of its pitch angle", "[external][capstan]") {
  // Effective mu cos a: Konyukhov 2013, ropes on orthotropic surfaces.
  const std::string source = "Konyukhov 2013, effective mu cos a";
  const auto ratio = [](double pitch) { return capstan_slip_ratio(0.3, helix_turning_angle(2 * pi, pitch)); };
  check_relative("slip ratio, mu = 0.3, one turn, pitch 0 deg", "1", ratio(0), 6.58606196269,
                 {source, 1e-11});
  check_relative("slip ratio, mu = 0.3, one turn, pitch 30 deg", "1", ratio(30 * deg), 5.11623812513,
                 {source, 1e-11});
  check_relative("slip ratio, mu = 0.3, one turn, pitch 60 deg", "1", ratio(60 * deg), 2.56633239521,
                 {source, 1e-11});
}

TEST_CASE("capstan: the shape of a smooth convex support does not matter", "[external][capstan]") {
  // Jayawardana, arXiv 2012.13353. Half an ellipse 3 : 1 as a chain of many corners, from tangent to tangent.
  const int corners = 500;
  double exponent = 0;
  double before = pi / 2;  // direction of the cord as it arrives
  for (int i = 0; i <= corners; ++i) {
    const double a = pi * i / corners, b = pi * (i + 1) / corners;
    const double direction =
        i < corners ? std::atan2(std::sin(b) - std::sin(a), 3 * (std::cos(b) - std::cos(a))) : -pi / 2;
    double turn = direction - before;
    if (turn < 0) turn += 2 * pi;
    exponent += bend_cone(coulomb(0.3), 1, turn, 0).kinetic;
    before = direction;
  }
  check_relative("slip ratio over half an ellipse, mu = 0.3", "1", std::exp(exponent), 2.5663323952,
                 {"Jayawardana, arXiv 2012.13353; value as on a circle", 1e-10});
}

TEST_CASE("capstan: load-dependent friction follows the integral of Howell's power law",
          "[external][capstan]") {
  // Howell, J. Textile Inst. 44 (1953) T359 (from memory); closed form and its numerical integration
  // evaluated apart.
  const std::string source = "Howell, J. Textile Inst. 44 (1953) T359 (from memory)";
  const PowerLawFriction first{0.3, 0.8}, second{0.5, 2.0 / 3};
  check_relative("tension, a = 0.3, n = 0.8, R = 5 mm, 10 N in, 90 deg", "N",
                 power_law_slip_tension(first, 10, 0.005, pi / 2), 11.0738286067382, {source, 1e-12});
  check_relative("tension, the same, 180 deg", "N", power_law_slip_tension(first, 10, 0.005, pi),
                 12.2379862685219, {source, 1e-12});
  check_relative("tension, a = 0.5, n = 2/3, R = 4 mm, 10 N in, 180 deg", "N",
                 power_law_slip_tension(second, 10, 0.004, pi), 11.202597199573, {source, 1e-12});
}
