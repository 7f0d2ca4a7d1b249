#include "contact/containment.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>

using namespace sinewright;
using namespace sinewright::contact;
using model::Box;
using model::Capsule;
using model::Cylinder;
using model::Hull;
using model::Sphere;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double pi = std::numbers::pi;
constexpr double rounding = 2e-9;  // [m], of the ball that stands for a point and of Bullet

PosedShape still(const model::Shape& shape) { return {shape, Isometry3d::Identity()}; }

// A pose far from the axes, to move a whole set-up by.
Isometry3d moved() {
  Isometry3d X = Isometry3d::Identity();
  X.linear() = Eigen::AngleAxisd(1.1, Vector3d(1, -2, 0.5).normalized()).toRotationMatrix();
  X.translation() = Vector3d(0.07, -0.03, 0.11);
  return X;
}

// The same answer wherever the set-up stands.
Containment both_places(const model::Shape& part, const std::vector<model::Shape>& solids) {
  std::vector<PosedShape> here, there;
  for (const model::Shape& solid : solids) here.push_back(still(solid)), there.push_back({solid, moved()});
  const Containment first = containment(still(part), here), second = containment({part, moved()}, there);
  CHECK(first.place == second.place);
  CHECK_THAT(second.way, WithinAbs(first.way, rounding));
  return first;
}

const Box block{{10e-3, 0, 0}, {60e-3, 30e-3, 20e-3}};

}  // namespace

TEST_CASE("containment: the wall round a box, a ball and a rod in a block is what is left", "[analytic]") {
  Containment c = both_places(Box{{12e-3, 1e-3, 0}, {24e-3, 12e-3, 10e-3}}, {block});
  CHECK(c.place == Containment::Place::within);
  CHECK_THAT(c.way, WithinAbs(5e-3, rounding));  // (20 − 10) / 2 across, less than (30 − 12) / 2 − 1 and (60 − 24) / 2 − 2
  c = both_places(Sphere{{10e-3, 9e-3, 0}, 4e-3}, {block});
  CHECK_THAT(c.way, WithinAbs(2e-3, rounding));
  c = both_places(Capsule{{-10e-3, 0, 2e-3}, {30e-3, 0, 5e-3}, 3e-3}, {block});
  CHECK_THAT(c.way, WithinAbs(2e-3, rounding));
}

TEST_CASE("containment: a can across a block leaves half the block less its radius", "[analytic]") {
  const double angle = GENERATE(0.0, 0.4, pi / 2);
  // The axis lies in the plane of x and y: the faces at ±z stay a radius away, those at ±y an end and a radius.
  const Cylinder can{{10e-3, 0, 1e-3}, {std::cos(angle), std::sin(angle), 0}, 6e-3, 12e-3};
  const double y = 15e-3 - (6e-3 * std::sin(angle) + 6e-3 * std::cos(angle)), z = 10e-3 - 1e-3 - 6e-3;
  const Containment c = both_places(can, {block});
  CHECK(c.place == Containment::Place::within);
  // 96 points stand for a rim: they miss its farthest point by r (1 − cos(π/96)) at most.
  CHECK_THAT(c.way, WithinAbs(std::min(y, z), 6e-3 * (1 - std::cos(pi / 96)) + rounding));
}

TEST_CASE("containment: in a round bar the corners of a box decide", "[analytic]") {
  const Cylinder bar{{0, 0, 0}, Vector3d::UnitX(), 10e-3, 50e-3};
  const Containment c = both_places(Box{{0, 0, 0}, {20e-3, 12e-3, 9e-3}}, {bar});
  CHECK_THAT(c.way, WithinAbs(10e-3 - std::hypot(6e-3, 4.5e-3), rounding));
}

TEST_CASE("containment: the thickest of several solids counts, wherever it stands in the list") {
  const Box thin{{10e-3, 0, 0}, {60e-3, 30e-3, 12e-3}};
  const Sphere ball{{10e-3, 0, 0}, 2e-3};
  CHECK_THAT(both_places(ball, {thin, block}).way, WithinAbs(8e-3, rounding));
  CHECK_THAT(both_places(ball, {block, thin}).way, WithinAbs(8e-3, rounding));
}

TEST_CASE("containment: a part across the seam of two blocks is inside, but its wall is not known") {
  const Box left{{-10e-3, 0, 0}, {20e-3, 20e-3, 20e-3}}, right{{10e-3, 0, 0}, {20e-3, 20e-3, 20e-3}};
  const model::Shape part = GENERATE(model::Shape(Box{{0, 0, 0}, {12e-3, 8e-3, 8e-3}}), model::Shape(Cylinder{{0, 0, 0}, {1, 0, 0}, 4e-3, 14e-3}),
                                     model::Shape(Capsule{{-5e-3, 0, 0}, {5e-3, 0, 0}, 3e-3}), model::Shape(Sphere{{0, 1e-3, 0}, 5e-3}),
                                     model::Shape(Hull{{{-5e-3, 0, 0}, {5e-3, 4e-3, 0}, {5e-3, -4e-3, 3e-3}, {5e-3, 0, -4e-3}}}));
  CHECK(both_places(part, {left, right}).place == Containment::Place::across);
  // A slit of 2 mm between the blocks: half of it is how far the part's middle is from either.
  Box gone = right;
  gone.center.x() += 2e-3;
  const Containment c = containment(still(part), {still(left), still(gone)});
  CHECK(c.place == Containment::Place::out);
  CHECK_THAT(c.way, WithinAbs(1e-3, 0.3e-3));  // the points are up to a millimetre apart
}

TEST_CASE("containment: what sticks out is told by how much", "[analytic]") {
  // Out of one face by 3 mm, and past an edge by 3 and 4 mm: its corner is 5 mm from the block.
  CHECK_THAT(both_places(Box{{10e-3, 0, 9e-3}, {10e-3, 10e-3, 8e-3}}, {block}).way, WithinAbs(3e-3, rounding));
  CHECK_THAT(both_places(Box{{10e-3, 14e-3, 9e-3}, {10e-3, 8e-3, 10e-3}}, {block}).way, WithinAbs(std::hypot(3e-3, 4e-3), rounding));
  CHECK(both_places(Box{{10e-3, 0, 9e-3}, {10e-3, 10e-3, 8e-3}}, {block}).place == Containment::Place::out);
}
