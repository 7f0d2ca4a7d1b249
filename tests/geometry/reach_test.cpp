#include "geometry/reach.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace sinewright;
using namespace sinewright::geometry;
using Catch::Matchers::WithinAbs;

TEST_CASE("reach: of every primitive along a slanting direction", "[analytic]") {
  const Vector3d n = Vector3d(1, 2, -2) / 3;
  const Vector3d c(0.01, 0.02, 0.03);
  CHECK_THAT(reach(model::Sphere{c, 0.005}, n), WithinAbs(n.dot(c) + 0.005, 1e-15));
  CHECK_THAT(reach(model::Capsule{c, -c, 0.005}, n), WithinAbs(std::abs(n.dot(c)) + 0.005, 1e-15));
  // A cylinder along z: half its length times |n_z|, its radius times the rest.
  CHECK_THAT(reach(model::Cylinder{c, Vector3d::UnitZ(), 0.003, 0.02}, n), WithinAbs(n.dot(c) + 0.01 * 2 / 3 + 0.003 * std::sqrt(5.0) / 3, 1e-15));
  // A box turned by a quarter about z: its x lies along the world's y.
  model::Box box{c, {0.02, 0.04, 0.06}};
  box.rotation << 0, -1, 0, 1, 0, 0, 0, 0, 1;
  CHECK_THAT(reach(box, n), WithinAbs(n.dot(c) + (0.02 * 1 + 0.01 * 2 + 0.03 * 2) / 3, 1e-15));
  CHECK_THAT(reach(model::Hull{{c, -c, {0, 0, -0.1}}}, n), WithinAbs(0.2 / 3, 1e-15));
}
