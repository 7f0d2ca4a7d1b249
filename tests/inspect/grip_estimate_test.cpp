#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>

#include "../external/check.h"
#include "fingers.h"

using namespace sinewright;
using namespace sinewright::inspected;
using Eigen::VectorXd;
using simulation::grip_estimate;
using simulation::posture;
using simulation::System;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const char* const kSource =
    "Birglen, Laliberté, Gosselin, Underactuated Robotic Hands, Springer 2008, ch. 3 (formula from memory); numbers computed "
    "from the closed form";

// Phalanges whose first shape is a capsule with its middle at distance k from the pin.
model::Scenario touching(const std::vector<double>& length, const std::vector<double>& contact) {
  model::Scenario scenario = chain(length);
  scenario.model.surfaces = {{"hard", 3e9, 0.3, 0.1, "invented"}};
  for (std::size_t i = 0; i < contact.size(); ++i)
    scenario.model.bodies[i + 1].shapes = {
        {"pad", model::Capsule{{0.5 * contact[i], 0, 0}, {1.5 * contact[i], 0, 0}, 4e-3}, 0}};
  return scenario;
}

VectorXd vector(const std::vector<double>& values) {
  return Eigen::Map<const VectorXd>(values.data(), static_cast<int>(values.size()));
}

struct Row {
  const char* name;
  std::vector<double> length, contact, angle, torque, force;  // [m], [m], [rad], [N m], [N]
};

const std::vector<Row> rows = {
    {"three phalanges, 20 and 20 deg",
     {45e-3, 25e-3},
     {22.5e-3, 12.5e-3, 9e-3},
     {0.4, 20 * degree, 20 * degree},
     {0.300, 0.105, 0.021},
     {0.703864509970725, 2.33476776966576, 2.33333333333333}},
    {"two phalanges, 30 deg",
     {45e-3},
     {22.5e-3, 12.5e-3},
     {0.5, 30 * degree},
     {0.200, 0.040},
     {1.5685485268907, 3.2}},
    {"three phalanges, hand-like torques, 30 and 20 deg",
     {45e-3, 25e-3},
     {22.5e-3, 12.5e-3, 9e-3},
     {0.4, 30 * degree, 20 * degree},
     {0.240, 0.180, 0.120},
     {20.6143628706616, -20.2584698876242, 13.3333333333333}}};

}  // namespace

TEST_CASE("grip estimate: phalanx forces from joint torques, against the closed form", "[external]") {
  for (const Row& row : rows) {
    const System system(touching(row.length, row.contact));
    const auto fingers = grip_estimate(system, posture(system, row.angle), vector(row.torque));
    REQUIRE(fingers.size() == 1);
    REQUIRE(fingers[0].force.size() == static_cast<int>(row.force.size()));
    for (std::size_t i = 0; i < row.force.size(); ++i) {
      const int k = static_cast<int>(i);
      external::check_relative(std::string("static contact force, ") + row.name + ", phalanx " + std::to_string(i + 1), "N",
                               fingers[0].force[k], row.force[i], {kSource, 1e-12});
      CHECK(fingers[0].hinge[i] == k);
      CHECK_THAT(fingers[0].distance[k], WithinRel(row.contact[i], 1e-12));
      CHECK(fingers[0].torque[k] == row.torque[i]);
    }
  }
}

TEST_CASE("grip estimate: neither the first joint's angle nor the place of the hand matters") {
  const Row& row = rows[0];
  model::Scenario scenario = touching(row.length, row.contact);
  scenario.model.bodies[0].fixed->at = {0.1, -0.2, 0.05};
  scenario.model.bodies[0].fixed->rotation = Eigen::AngleAxisd(1.1, Vector3d(1, -2, 0.5).normalized()).toRotationMatrix();
  const System system(scenario);
  for (double first : {-0.3, 0.0, 1.4}) {
    auto angle = row.angle;
    angle[0] = first;
    const auto fingers = grip_estimate(system, posture(system, angle), vector(row.torque));
    for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(fingers[0].force[static_cast<int>(i)], WithinRel(row.force[i], 1e-10));
  }
}

TEST_CASE("grip estimate: the forces hold the moments of every joint") {
  // In the plane, by hand: contact points and normals in the world, moments about each pin.
  const Row& row = rows[2];
  const System system(touching(row.length, row.contact));
  const auto finger = grip_estimate(system, posture(system, row.angle), vector(row.torque))[0];
  std::vector<Vector3d> pin(3), point(3), push(3);
  Vector3d here = Vector3d::Zero();
  double flexed = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    flexed += row.angle[i];
    const Vector3d along(std::cos(flexed), -std::sin(flexed), 0);
    pin[i] = here;
    point[i] = here + row.contact[i] * along;
    push[i] = finger.force[static_cast<int>(i)] * Vector3d(std::sin(flexed), std::cos(flexed), 0);  // on the phalanx
    if (i < 2) here += row.length[i] * along;
  }
  for (std::size_t i = 0; i < 3; ++i) {
    double moment = 0;  // about +z, which opens
    for (std::size_t j = i; j < 3; ++j) moment += (point[j] - pin[i]).cross(push[j]).z();
    CHECK_THAT(moment, WithinRel(row.torque[i], 1e-12));
  }
}

TEST_CASE("grip estimate: every shape touches with its middle, a phalanx without one half-way to the next pin") {
  const Row row{"", {45e-3, 25e-3}, {22.5e-3, 12.5e-3, 12.5e-3}, {0.2, 0.5, 0.4}, {0.3, 0.1, 0.05}, {}};
  const auto force = [&](const model::Scenario& scenario) {
    const System system(scenario);
    return grip_estimate(system, posture(system, row.angle), vector(row.torque))[0].force;
  };
  const VectorXd capsules = force(touching(row.length, row.contact));
  model::Scenario others = touching(row.length, row.contact);
  others.model.bodies[1].shapes[0].shape = model::Sphere{{22.5e-3, 0, 0}, 5e-3};
  others.model.bodies[2].shapes[0].shape = model::Box{{12.5e-3, 0, 0}, {10e-3, 8e-3, 8e-3}};
  others.model.bodies[3].shapes[0].shape = model::Cylinder{{12.5e-3, 0, 0}, Vector3d::UnitX(), 4e-3, 10e-3};
  CHECK((force(others) - capsules).norm() < 1e-12);
  model::Scenario bare = touching(row.length, row.contact);
  for (auto& body : bare.model.bodies) body.shapes.clear();  // the last phalanx: its centre of mass, at 12.5 mm
  CHECK((force(bare) - capsules).norm() < 1e-12);
}

TEST_CASE("grip estimate: every finger of a hand has its own") {
  const Row &a = rows[1], &b = rows[0];
  model::Scenario hand = touching(a.length, a.contact);
  auto second = touching(b.length, b.contact).model.bodies;
  for (std::size_t i = 1; i < second.size(); ++i) {
    second[i].name += " of b";
    second[i].hinge->name = second[i].name;
    second[i].hinge->parent = i == 1 ? 0 : static_cast<int>(i) + 1;
    if (i == 1) second[i].hinge->at = {0, 0, 20e-3};
    hand.model.bodies.push_back(second[i]);
  }
  const System system(hand);
  const auto fingers = grip_estimate(system, posture(system, {a.angle[0], a.angle[1], b.angle[0], b.angle[1], b.angle[2]}),
                                     vector({a.torque[0], a.torque[1], b.torque[0], b.torque[1], b.torque[2]}));
  REQUIRE(fingers.size() == 2);
  for (int i = 0; i < 2; ++i) CHECK_THAT(fingers[0].force[i], WithinRel(a.force[static_cast<std::size_t>(i)], 1e-12));
  for (int i = 0; i < 3; ++i) CHECK_THAT(fingers[1].force[i], WithinRel(b.force[static_cast<std::size_t>(i)], 1e-12));
}
