// Things held between fingers.

#include <cmath>

#include <catch2/catch.hpp>

#include "parts.h"

namespace {

using namespace sinewright;
using model::Vector3d;

// Two one-phalanx fingers face each other across a bar; each is drawn by a drive of its own from one supply.
model::Scenario pinch(const Vector3d& gravity, double friction) {
  model::Scenario scenario;
  scenario.gravity = gravity;
  auto& m = scenario.model;
  m.surfaces = {{"rubber", 2e6, 0.49, 0.5, "invented"}, {"wood", 1e9, 0.3, 0.1, "invented"}};
  m.pairs = {{0, 1, friction, "invented"}};
  m.supplies = {parts::supply(6, 0.2)};
  m.lines = {parts::stiff_line(9000, 1e-3)};
  m.bodies = {parts::fixed_body("palm"), parts::rod("upper", 0, {0, 0.02, 0}, 0.012, 0.05),
              parts::rod("lower", 0, {0, -0.02, 0}, 0.012, 0.05)};
  m.bodies[2].hinge->pin_axis = {0, 0, -1};  // flexes towards +y
  for (std::size_t i = 1; i <= 2; ++i) {
    m.bodies[i].hinge->washers = parts::washers_for(1e-3);
    m.bodies[i].hinge->stops = model::EndStops{-0.2, 1.2, 15, 0.05};
    // Two ridges side by side: each touches in a point, and a bar held in two points would swing about the line between.
    for (const double z : {-8e-3, 8e-3})
      m.bodies[i].shapes.push_back({z < 0 ? "left" : "right", model::Capsule{{5e-3, 0, z}, {45e-3, 0, z}, 7e-3}, 0});
    auto drive = parts::plain_drive(100, 4e-3);
    drive.name = m.bodies[i].name;
    drive.gearhead.forward_efficiency = 0.7;
    drive.gearhead.backward_efficiency = 0.5;
    drive.gearhead.drag = 1e-3;
    m.drives.push_back(drive);
    model::Cord cord;
    cord.name = m.bodies[i].name;
    cord.line = 0;
    const double side = i == 1 ? -1 : 1, y = i == 1 ? 0.02 : -0.02;
    const int body = static_cast<int>(i);
    cord.path = {model::PulleyEnd{body - 1, {-0.02, y + side * 6e-3, 0}}, model::Bend{0, {-8e-3, y + side * 6e-3, 0}, 2e-3, 1},
                 model::Anchor{body, {12e-3, side * 6e-3, 0}}};
    m.cords.push_back(cord);
  }
  model::Object bar;
  bar.name = "bar";
  bar.at = {0.04, 0, 0};
  bar.shape = {"bar", model::Cylinder{{0, 0, 0}, Vector3d::UnitZ(), 10e-3, 50e-3}, 1};
  bar.mass = model::MassProperties{0.02, Vector3d::Zero(), Vector3d(5e-6, 5e-6, 1e-6).asDiagonal()};
  bar.hold = model::HeldFree{};
  scenario.objects = {bar};
  return scenario;
}

Vector3d place(const parts::Walk& walk) {
  return walk.state.q.segment<3>(walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[0])].q);
}
double squeeze(const parts::Walk& walk, std::size_t finger) {
  const auto& contact = walk.stepper.stage().contact;
  return contact[2 * finger].normal_force + contact[2 * finger + 1].normal_force;
}

TEST_CASE("grasp: two opposed fingers hold a free bar without drift, weight along either axis") {
  // The weight comes on as a load, after the grip: before, the bar floats.
  const Vector3d down = GENERATE(Vector3d(0, 0, -1), Vector3d(0, -1, 0), Vector3d(-1, 0, 0));
  auto scenario = pinch(Vector3d::Zero(), 0.8);
  model::Load weight;
  weight.name = "weight";
  weight.body = "bar";
  weight.object_index = 0;
  weight.direction = down;
  weight.force = {{0, 0.5, 0.6}, {0, 0, 0.02 * 9.81}};
  scenario.loads = {weight};
  parts::Walk walk(scenario);
  walk.voltage(0.5, 0);
  walk.voltage(0.5, 1);
  walk.to(10);  // the motors' own braking lets the last of the motion die within seconds
  REQUIRE(squeeze(walk, 0) > 0.5);
  REQUIRE(squeeze(walk, 1) > 0.5);
  const Vector3d before = place(walk);
  Vector3d balance = 0.02 * 9.81 * down;
  for (const auto& contact : walk.stepper.stage().contact) balance -= contact.force;
  CHECK(balance.norm() < 1e-6);
  walk.to(20);
  CHECK((place(walk) - before).norm() < 1e-8);
  CHECK(squeeze(walk, 0) > 0.5);
}

TEST_CASE("grasp: without friction the same bar falls out") {
  auto scenario = pinch(Vector3d(0, 0, -9.81), 0.0);
  parts::Walk walk(scenario);
  walk.voltage(0.5, 0);
  walk.voltage(0.5, 1);
  walk.to(0.5);
  CHECK(place(walk).z() < -0.05);
}

TEST_CASE("grasp: power off keeps the bar between self-braking gears") {
  auto scenario = pinch(Vector3d(0, 0, 0), 0.8);
  for (auto& drive : scenario.model.drives) drive.gearhead.backward_efficiency = 0;
  parts::Walk walk(scenario);
  walk.voltage(0.5, 0);
  walk.voltage(0.5, 1);
  walk.to(2);
  const double before = squeeze(walk, 0);
  walk.off(model::Leads::open, 0);
  walk.off(model::Leads::open, 1);
  walk.to(4);
  const double held = squeeze(walk, 0);
  CHECK(held > 0.1 * before);
  walk.to(64);
  CHECK_THAT(squeeze(walk, 0), Catch::Matchers::WithinRel(held, 1e-9));
}

TEST_CASE("grasp: a free object in the air falls with g and keeps its spin") {
  auto scenario = pinch(Vector3d(0, -9.81, 0), 0.8);
  scenario.objects[0].at = {0.3, 0, 0};
  scenario.solver.tolerance = 1e-6;
  parts::Walk walk(scenario);
  const auto& link = walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[0])];
  walk.state.v.segment<3>(link.v) = Vector3d(0, 0, 12);
  walk.begin();
  walk.to(0.3);
  CHECK_THAT(place(walk).y(), Catch::Matchers::WithinRel(-0.5 * 9.81 * 0.09, 1e-5));
  CHECK_THAT(walk.state.v[link.v + 2], Catch::Matchers::WithinRel(12, 1e-9));
}

TEST_CASE("grasp: an object driven along a path goes where it is told and its work is in the books") {
  auto scenario = pinch(Vector3d::Zero(), 0.5);
  scenario.objects[0].hold = model::HeldOnPath{{0, 0.5, 1.0}, {{0, 0, 0}, {0, 0, 0}, {-5e-3, 2e-3, 0}}};
  parts::Walk walk(scenario);
  walk.voltage(0.5, 0);
  walk.voltage(0.5, 1);
  walk.to(1.0);
  const auto& pose = walk.stepper.stage().kinematics.pose[static_cast<std::size_t>(walk.system.link_of_object[0])];
  CHECK((pose.p - Vector3d(0.035, 2e-3, 0)).norm() < 1e-12);
  CHECK(squeeze(walk, 0) > 0.5);
  CHECK(walk.account(simulation::Account::prescribed_motion) != 0);
  CHECK(std::abs(walk.residual()) < 5e-3 * simulation::energy_in(walk.totals.energy));
}

}  // namespace
