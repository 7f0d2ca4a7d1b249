#include "friction/journal.h"

#include <cmath>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("journal: the resultant touches the friction circle", "[analytic][journal]") {
  // Point contact at angle zero: pressure N along -x through (r, 0), friction mu N along y there.
  const double r = 1.5e-3, mu = 0.35, normal = 20;
  const double resultant = std::hypot(normal, mu * normal);
  const double torque = r * mu * normal;
  CHECK_THAT(journal_torque(mu, r, resultant), WithinRel(torque, 1e-14));
  CHECK_THAT(journal_torque_from_normal(mu, r, normal), WithinRel(torque, 1e-14));
}

TEST_CASE("journal: no friction, no torque, and with little of it both forms agree", "[limits][journal]") {
  CHECK(journal_torque(0, 1e-3, 50) == 0);
  CHECK_THAT(journal_torque(1e-6, 1e-3, 50), WithinRel(1e-6 * 1e-3 * 50, 1e-11));  // they differ by mu^2 / 2
  CHECK(journal_torque(1e9, 1e-3, 50) <= 50e-3);  // never more than the pin's radius as an arm
}

TEST_CASE("journal: arguments out of range are refused", "[errors][journal]") {
  CHECK_THROWS_AS(friction_circle_radius(-0.1, 1e-3), InvalidInput);
  CHECK_THROWS_AS(friction_circle_radius(0.1, -1e-3), InvalidInput);
  CHECK_THROWS_AS(journal_torque_from_normal(std::nan(""), 1e-3, 1), InvalidInput);
}

TEST_CASE("journal: bearing loads follow from statics of a bore held at two ends", "[analytic][journal]") {
  const Eigen::Vector3d axis = Eigen::Vector3d(1, 2, 2).normalized();
  const Eigen::Vector3d u = axis.unitOrthogonal(), w = axis.cross(u);
  const Eigen::Vector3d a = 7 * u - 2 * w, b = -3 * u + 11 * w;  // on the +end and on the -end
  const double span = 0.008;
  const Eigen::Vector3d radial = a + b;
  const Eigen::Vector3d moment = (span / 2 * axis).cross(a) + (-span / 2 * axis).cross(b);
  CHECK_THAT(bearing_load_sum(radial, moment, axis, span), WithinRel(a.norm() + b.norm(), 1e-14));
  // A moment about the pin itself loads nothing.
  CHECK_THAT(bearing_load_sum(radial, moment + 5 * axis, axis, span), WithinRel(a.norm() + b.norm(), 1e-13));
  CHECK_THAT(bearing_load_sum(radial, moment, axis, 0), WithinRel(radial.norm(), 1e-15));
}

TEST_CASE("journal: a pure couple loads both ends by moment over span", "[analytic][journal]") {
  const Eigen::Vector3d z = Eigen::Vector3d::UnitZ();
  CHECK_THAT(bearing_load_sum(Eigen::Vector3d::Zero(), Eigen::Vector3d(0.03, 0.04, 0), z, 0.01),
             WithinAbs(2 * 0.05 / 0.01, 1e-12));
}
