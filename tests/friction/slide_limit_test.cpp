#include "friction/slide_limit.h"

#include <cmath>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include "friction/journal.h"
#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using Eigen::Vector3d;

namespace {

model::Slideway slideway(double length, double preload = 0) { return {{0.3, 0.2}, length, preload}; }

const Vector3d kAxis = Vector3d(1, -2, 0.5).normalized();

}  // namespace

TEST_CASE("slide limit: a load across the axis rubs with mu N, one along it with nothing", "[analytic][slide]") {
  const SlideFriction friction(slideway(20e-3));
  const Vector3d across = kAxis.unitOrthogonal() * 7;
  const SlideLimit limit = friction.limit(kAxis, across + 30 * kAxis, Vector3d::Zero());
  CHECK_THAT(limit.normal, WithinRel(7, 1e-14));
  CHECK_THAT(limit.kinetic, WithinRel(1.4, 1e-14));
  CHECK_THAT(limit.sticking, WithinRel(2.1, 1e-14));
  CHECK_THAT(friction.limit(kAxis, 30 * kAxis, Vector3d::Zero()).normal, WithinAbs(0, 1e-14));
}

TEST_CASE("slide limit: a tilting moment loads the two ends with M/length each, one about the axis nothing", "[analytic][slide]") {
  const SlideFriction friction(slideway(20e-3));
  const Vector3d tilting = kAxis.unitOrthogonal() * 0.05;
  CHECK_THAT(friction.limit(kAxis, Vector3d::Zero(), tilting).normal, WithinRel(2 * 0.05 / 20e-3, 1e-14));
  CHECK_THAT(friction.limit(kAxis, Vector3d::Zero(), 0.05 * kAxis).normal, WithinAbs(0, 1e-14));
  CHECK(SlideFriction(slideway(0)).limit(kAxis, Vector3d::Zero(), tilting).normal == 0);
  const Vector3d force(1, 2, -3), moment(0.02, 0.01, 0.04);
  CHECK_THAT(friction.limit(kAxis, force, moment).normal,
             WithinRel(bearing_load_sum(force - kAxis.dot(force) * kAxis, moment, kAxis, 20e-3), 1e-14));
}

TEST_CASE("slide limit: the preload is there without any load", "[analytic][slide]") {
  const SlideLimit limit = SlideFriction(slideway(20e-3, 4)).limit(kAxis, Vector3d::Zero(), Vector3d::Zero());
  CHECK(limit.kinetic == 0.2 * 4);
  CHECK(limit.sticking == 0.3 * 4);
  CHECK(SlideFriction(std::nullopt).limit(kAxis, Vector3d(9, 9, 9), Vector3d(1, 1, 1)).sticking == 0);
}

TEST_CASE("slide limit: its gradients are those of finite differences", "[slide]") {
  const SlideFriction friction(slideway(12e-3, 1));
  const Vector3d force(3, 1, -2), moment(0.01, 0.02, -0.03);
  const SlideLimit limit = friction.limit(kAxis, force, moment);
  for (int a = 0; a < 3; ++a) {
    const Vector3d e = 1e-6 * Vector3d::Unit(a), t = 1e-8 * Vector3d::Unit(a);
    const double by_force = (friction.limit(kAxis, force + e, moment).normal - friction.limit(kAxis, force - e, moment).normal) / 2e-6;
    const double by_moment = (friction.limit(kAxis, force, moment + t).normal - friction.limit(kAxis, force, moment - t).normal) / 2e-8;
    // Along the axis the gradient that the law states is that of the part across it.
    CHECK_THAT(limit.normal_by_force[a], WithinAbs(by_force, 1e-7));
    CHECK_THAT(limit.normal_by_moment[a], WithinAbs(by_moment, 1e-4));
  }
}

TEST_CASE("slide limit: what cannot be is refused", "[slide]") {
  model::Slideway bad = slideway(1e-3);
  bad.friction.kinetic_coefficient = -0.1;
  CHECK_THROWS_WITH(SlideFriction(bad), Contains("kinetic friction coefficient"));
  bad = slideway(1e-3);
  bad.friction.static_coefficient = 0.1;
  CHECK_THROWS_WITH(SlideFriction(bad), Contains("at least the kinetic one"));
  CHECK_THROWS_WITH(SlideFriction(slideway(-1e-3)), Contains("length of the slideway"));
  CHECK_THROWS_WITH(SlideFriction(slideway(1e-3, -1)), Contains("preload"));
}
