#include "friction/capstan.h"

#include <cmath>
#include <limits>
#include <numbers>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double pi = std::numbers::pi;

// Statics of one rope corner that turns by delta, with the reaction along the bisector tilted by the friction
// angle: T1 cos(delta/2) - T0 cos(delta/2) = mu (T0 + T1) sin(delta/2).
double polygon_slip_ratio(double mu, double theta, int corners) {
  const double t = mu * std::tan(theta / corners / 2);
  return std::pow((1 + t) / (1 - t), corners);
}

model::ChannelFriction power_law_channel() {
  model::ChannelFriction c;
  c.kinetic = 0.2;
  c.static_ratio = 1.25;
  c.load_exponent = 0.8;
  c.reference_line_load = 1000;
  c.highest = 0.5;
  c.bending_loss = 1.02;
  c.groove_angle = pi / 3;
  return c;
}

}  // namespace

TEST_CASE("capstan: a polygon of N corners reaches exp(mu theta) at second order",
          "[analytic][capstan][order]") {
  const double mu = GENERATE(0.05, 0.3, 0.8);
  const double exact = capstan_slip_ratio(mu, pi);
  const auto error = [&](int corners) { return std::abs(polygon_slip_ratio(mu, pi, corners) - exact); };
  CAPTURE(mu, error(64));
  // Each corner errs by O(delta^3) in ln(T1/T0), and there are theta/delta corners: order 2.
  CHECK_THAT(std::log2(error(32) / error(64)), WithinAbs(2.0, 0.02));
}

TEST_CASE("capstan: no friction or no turning means no loss", "[limits][capstan]") {
  CHECK(capstan_slip_ratio(0, 7) == 1);
  CHECK(capstan_slip_ratio(0.7, 0) == 1);
}

TEST_CASE("capstan: bends in series multiply", "[analytic][capstan]") {
  const double mu = 0.17;
  CHECK_THAT(capstan_slip_ratio(mu, 0.4) * capstan_slip_ratio(mu, 1.9),
             WithinRel(capstan_slip_ratio(mu, 2.3), 1e-14));
}

TEST_CASE("capstan: the coefficient comes back from the ratio it makes", "[analytic][capstan]") {
  const double mu = GENERATE(0.0, 0.01, 0.3, 2.0);
  CHECK_THAT(friction_from_slip_ratio(capstan_slip_ratio(mu, 2.2), 2.2), WithinAbs(mu, 1e-14));
}

TEST_CASE("capstan: arguments out of range are refused with value and unit", "[errors][capstan]") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(capstan_slip_ratio(-0.1, 1), InvalidInput);
  CHECK_THROWS_AS(capstan_slip_ratio(nan, 1), InvalidInput);
  CHECK_THROWS_AS(capstan_slip_ratio(0.1, nan), InvalidInput);
  CHECK_THROWS_AS(capstan_slip_ratio(100, 10), InvalidInput);
  CHECK_THROWS_AS(friction_from_slip_ratio(0.9, 1), InvalidInput);
  CHECK_THROWS_AS(friction_from_slip_ratio(2, 0), InvalidInput);
  CHECK_THROWS_AS(groove_factor(-0.1), InvalidInput);
  CHECK_THROWS_AS(groove_factor(3.2), InvalidInput);
  CHECK_THROWS_AS(helix_turning_angle(1, 2), InvalidInput);
  CHECK_THROWS_AS(power_law_slip_tension({0.3, 1.1}, 1, 0.01, 1), InvalidInput);
  CHECK_THROWS_AS(power_law_slip_tension({0.3, 0.8}, 1, 0, 1), InvalidInput);
  CHECK_THROWS_WITH(capstan_slip_ratio(0.1, -0.25),
                    Contains("turning angle = -0.25 rad") && Contains(">= 0"));
}

TEST_CASE("capstan: a groove presses harder the narrower it is, and a flat one changes nothing",
          "[limits][capstan]") {
  CHECK(groove_factor(0) == 1);
  CHECK_THAT(groove_factor(pi), WithinRel(1.0, 1e-15));
  CHECK_THAT(groove_factor(pi / 3), WithinRel(2.0, 1e-14));
  CHECK(groove_factor(0.5) > groove_factor(0.6));
}

TEST_CASE("capstan: a helix turns by as much as its tangent does", "[analytic][capstan]") {
  // Sum of the angles between successive tangents of a finely cut helix of radius 1.
  const double lead = 0.6, winding = 5.0;
  const int n = 4000;
  const auto tangent = [&](double phi) {
    return Eigen::Vector3d(-std::cos(lead) * std::sin(phi), std::cos(lead) * std::cos(phi), std::sin(lead));
  };
  double sum = 0;
  for (int i = 0; i < n; ++i) {
    const Eigen::Vector3d a = tangent(winding * i / n), b = tangent(winding * (i + 1) / n);
    sum += std::atan2(a.cross(b).norm(), a.dot(b));
  }
  // A chord of the tangents' circle is short by O(1/n^2), here 1e-7.
  CHECK_THAT(helix_turning_angle(winding, lead), WithinRel(sum, 1e-6));
}

TEST_CASE("capstan: the power law is Coulomb's law at exponent 1, and reaches it smoothly",
          "[limits][capstan]") {
  const double coulomb = 10 * capstan_slip_ratio(0.3, 2);
  CHECK_THAT(power_law_slip_tension({0.3, 1}, 10, 0.005, 2), WithinRel(coulomb, 1e-14));
  // The difference is proportional to 1 − n.
  CHECK_THAT(power_law_slip_tension({0.3, 1 - 1e-9}, 10, 0.005, 2), WithinRel(coulomb, 1e-7));
}

TEST_CASE("bend cone: a bend cut into nodes that each see their own load reaches the power law's closed form",
          "[analytic][capstan][order]") {
  model::ChannelFriction c = power_law_channel();
  c.highest = 10;  // out of reach, or the cap would act
  c.bending_loss = 1;
  c.groove_angle = 0;
  const double radius = 0.005, theta = 2.0, tension_in = 4.0;
  const double exact = power_law_slip_tension(power_law(c), tension_in, radius, theta);
  const auto error = [&](int nodes) {
    double tension = tension_in;
    for (int i = 0; i < nodes; ++i) {
      tension *= std::exp(bend_friction_exponent(c, 1, theta / nodes, tension / radius));
    }
    return std::abs(tension - exact);
  };
  CAPTURE(exact, error(1), error(64));
  CHECK(error(64) < 1e-3 * exact);
  // The load at one end stands for the node's mean load: first order.
  CHECK_THAT(std::log2(error(32) / error(64)), WithinAbs(1.0, 0.05));
}

TEST_CASE("bend cone: with Coulomb's law alone it is factor mu theta", "[analytic][capstan]") {
  model::ChannelFriction c;
  c.kinetic = 0.15;
  CHECK_THAT(bend_friction_exponent(c, 2, 0.7, 123), WithinRel(2 * 0.15 * 0.7, 1e-15));
  CHECK(bend_friction_exponent(c, 2, 0, 123) == 0);
  c.kinetic = 0;
  CHECK(bend_friction_exponent(c, 1, 3, 0) == 0);
}

TEST_CASE("bend cone: the coefficient follows the load and stops at its cap", "[capstan]") {
  model::ChannelFriction c = power_law_channel();
  c.bending_loss = 1;
  c.groove_angle = 0;
  CHECK_THAT(bend_friction_exponent(c, 1, 1, 1000), WithinRel(0.2, 1e-14));  // at the reference load
  CHECK_THAT(bend_friction_exponent(c, 1, 1, 2000), WithinRel(0.2 * std::pow(2, -0.2), 1e-14));
  CHECK(bend_friction_exponent(c, 1, 1, 1e-3) == 0.5);  // capped
  CHECK(bend_friction_exponent(c, 1, 1, 0) == 0.5);     // an unloaded cord too
  CHECK(bend_friction_exponent(c, 1, 1, std::numeric_limits<double>::infinity()) == 0.2);  // sharp corner
}

TEST_CASE("bend cone: the bending loss is charged in full from 1 rad on and in proportion below",
          "[capstan]") {
  model::ChannelFriction c;
  c.bending_loss = 1.05;
  CHECK(bend_friction_exponent(c, 1, 0, 1) == 0);
  CHECK_THAT(bend_friction_exponent(c, 1, 0.5, 1), WithinRel(0.5 * std::log(1.05), 1e-14));
  CHECK_THAT(bend_friction_exponent(c, 1, 1, 1), WithinRel(std::log(1.05), 1e-14));
  CHECK_THAT(bend_friction_exponent(c, 1, 3, 1), WithinRel(std::log(1.05), 1e-14));
}

TEST_CASE("bend cone: sticking holds more than sliding by the static ratio, on the friction part alone",
          "[capstan]") {
  model::ChannelFriction c = power_law_channel();
  const BendCone cone = bend_cone(c, 1, 2, 800);
  const double bending = std::log(1.02);
  CHECK_THAT((cone.sticking - bending) / (cone.kinetic - bending), WithinRel(1.25, 1e-13));
  c.static_ratio = 1;
  const BendCone even = bend_cone(c, 1, 2, 800);
  CHECK(even.sticking == even.kinetic);
}

TEST_CASE("bend cone: the derivatives agree with central differences", "[derivative][capstan]") {
  const model::ChannelFriction c = power_law_channel();
  const double theta = GENERATE(0.3, 0.8, 1.7);
  const double load = GENERATE(5.0, 300.0, 4000.0);  // the first lies under the cap
  const double h = 1e-5;
  const BendCone cone = bend_cone(c, 1.3, theta, load);
  const auto kinetic = [&](double t, double p) { return bend_cone(c, 1.3, t, p).kinetic; };
  CAPTURE(theta, load);
  CHECK_THAT(cone.kinetic_by_turning_angle,
             WithinRel((kinetic(theta + h, load) - kinetic(theta - h, load)) / (2 * h), 1e-8));
  const double dp = 1e-4 * load;
  const double difference = (kinetic(theta, load + dp) - kinetic(theta, load - dp)) / (2 * dp);
  CHECK_THAT(cone.kinetic_by_line_load, WithinAbs(difference, 1e-7 * std::abs(difference) + 1e-15));
}

TEST_CASE("channel: data that cannot be used are named", "[errors][capstan]") {
  model::ChannelFriction c = power_law_channel();
  CHECK_NOTHROW(check_channel(c));
  SECTION("static below kinetic") {
    c.static_ratio = 0.9;
    CHECK_THROWS_WITH(check_channel(c), Contains("static ratio = 0.9"));
  }
  SECTION("no reference load") {
    c.reference_line_load = 0;
    CHECK_THROWS_WITH(check_channel(c), Contains("reference line load = 0 N/m"));
  }
  SECTION("cap under the reference value") {
    c.highest = 0.1;
    CHECK_THROWS_WITH(check_channel(c), Contains("highest = 0.1"));
  }
  SECTION("a gain from bending") {
    c.bending_loss = 0.99;
    CHECK_THROWS_WITH(check_channel(c), Contains("bending loss = 0.99"));
  }
}
