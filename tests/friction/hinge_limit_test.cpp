#include "friction/hinge_limit.h"

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

model::Pin pin() {
  model::Pin p;
  p.diameter = 2e-3;
  p.friction = {0.25, 0.2};
  p.bearing_span = 8e-3;
  return p;
}

model::Washers washers() {
  model::Washers w;
  w.inner_diameter = 2.2e-3;
  w.outer_diameter = 5e-3;
  w.friction = {0.3, 0.24};
  w.preload = 0.5;
  return w;
}

}  // namespace

TEST_CASE("hinge: a load splits into parts along and across the pin that add up", "[analytic][hinge]") {
  const Vector3d axis = Vector3d(1, -2, 0.5).normalized(), force(3, 1, -2), moment(0.1, 0.02, -0.3);
  const HingeLoad load = split_hinge_load(axis, force, moment);
  CHECK_THAT((load.radial + load.axial * axis - force).norm(), WithinAbs(0, 1e-15));
  CHECK_THAT(load.radial.dot(axis), WithinAbs(0, 1e-15));
  CHECK_THAT(load.tilting.dot(axis), WithinAbs(0, 1e-16));
}

TEST_CASE("hinge: pin and washers add up", "[analytic][hinge]") {
  const HingeLoad load{Vector3d(30, 0, 0), 4, Vector3d::Zero()};
  const TorqueLimit limit = hinge_limit(pin(), washers(), Vector3d::UnitZ(), load);
  const double on_pin = 30 * 1e-3 * std::sin(std::atan(0.2));
  const double on_washers = 0.24 * 4 * 1.8e-3;  // the axial load has freed one face
  CHECK_THAT(limit.kinetic, WithinRel(on_pin + on_washers, 1e-14));
  CHECK(limit.sticking > limit.kinetic);
  CHECK_THAT(hinge_limit(pin(), {}, Vector3d::UnitZ(), load).kinetic, WithinRel(on_pin, 1e-14));
  CHECK_THAT(hinge_limit({}, washers(), Vector3d::UnitZ(), load).kinetic, WithinRel(on_washers, 1e-14));
}

TEST_CASE("hinge: without pin friction and washers it turns freely", "[limits][hinge]") {
  const HingeLoad load{Vector3d(30, 5, 0), 4, Vector3d(0.1, 0, 0)};
  const TorqueLimit limit = hinge_limit({}, {}, Vector3d::UnitZ(), load);
  CHECK(limit.sticking == 0);
  CHECK(limit.kinetic == 0);
}

TEST_CASE("hinge: an unloaded one has its washers' preload alone", "[limits][hinge]") {
  const HingeFriction hinge(pin(), washers());
  CHECK_THAT(hinge.unloaded().kinetic, WithinRel(0.24 * 2 * 0.5 * 1.8e-3, 1e-14));
  CHECK(hinge.unloaded().sticking == hinge.limit(Vector3d::UnitZ(), {}).sticking);
}

TEST_CASE("hinge: the limit does not depend on the frame", "[hinge]") {
  const Eigen::Matrix3d turn = Eigen::AngleAxisd(1.1, Vector3d(1, 2, 3).normalized()).toRotationMatrix();
  const Vector3d force(10, -4, 2), moment(0.02, 0.05, 0.4);
  const HingeFriction hinge(pin(), washers());
  const double before =
      hinge.limit(Vector3d::UnitZ(), split_hinge_load(Vector3d::UnitZ(), force, moment)).kinetic;
  const Vector3d axis = turn * Vector3d::UnitZ();
  CHECK_THAT(hinge.limit(axis, split_hinge_load(axis, turn * force, turn * moment)).kinetic,
             WithinRel(before, 1e-13));
}

TEST_CASE("hinge: a tilting moment adds friction only over a given bearing span", "[hinge]") {
  HingeLoad load{Vector3d(10, 0, 0), 0, Vector3d::Zero()};
  model::Pin p = pin();
  const double plain = hinge_limit(p, {}, Vector3d::UnitZ(), load).kinetic;
  load.tilting = Vector3d(0, 0.2, 0);  // couple of 25 N at each end, against 5 N of radial load each
  CHECK_THAT(hinge_limit(p, {}, Vector3d::UnitZ(), load).kinetic, WithinRel(plain * (30 + 20) / 10, 1e-13));
  p.bearing_span = 0;
  CHECK(hinge_limit(p, {}, Vector3d::UnitZ(), load).kinetic == plain);
}

TEST_CASE("hinge: static friction below kinetic is refused", "[errors][hinge]") {
  model::Pin p = pin();
  p.friction = {0.1, 0.2};
  CHECK_THROWS_WITH(HingeFriction(p, {}), Contains("static friction coefficient = 0.1"));
  model::Washers w = washers();
  w.preload = -1;
  CHECK_THROWS_AS(HingeFriction({}, w), InvalidInput);
}
