// Things among themselves: on a table, on a slope, on a string, twisted. Closed forms of mechanics textbooks.

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "parts.h"

namespace {

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Vector3d;

constexpr double kG = 9.81, kMass = 0.05, kRadius = 0.02;

// A fixed box with its upper face through the origin, tilted about z, and something that stands on it.
model::Scenario slope(double angle, double friction) {
  model::Scenario scenario;
  scenario.gravity = {0, -kG, 0};
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("palm")};
  m.surfaces = {{"hard", 2e9, 0.3, 0.2, "invented"}};
  m.pairs = {{0, 0, friction, "invented"}};
  model::Object table;
  table.name = "table";
  table.rotation = Eigen::AngleAxisd(-angle, Vector3d::UnitZ()).toRotationMatrix();
  table.shape = {"table", model::Box{{0, -0.05, 0}, {2, 0.1, 1}, model::Matrix3d::Identity()}, 0};
  scenario.objects = {table};
  return scenario;
}

// Its axes are those of the table, its centre stands over the origin.
model::Object on(const model::Scenario& scenario, double height) {
  model::Object object;
  object.name = "thing";
  object.rotation = scenario.objects[0].rotation;
  object.at = object.rotation * Vector3d(0, height, 0);
  object.hold = model::HeldFree{};
  return object;
}

model::Object ball(const model::Scenario& scenario) {
  model::Object object = on(scenario, kRadius);
  object.shape = {"thing", model::Sphere{Vector3d::Zero(), kRadius}, 0};
  const double inertia = 0.4 * kMass * kRadius * kRadius;
  object.mass = model::MassProperties{kMass, Vector3d::Zero(), Vector3d(inertia, inertia, inertia).asDiagonal()};
  return object;
}

// A block on four feet, its centre low, so that they share its weight evenly enough on a slope.
model::Object block(const model::Scenario& scenario) {
  model::Object object = on(scenario, 4e-3);
  object.shape = {"thing", model::Box{Vector3d::Zero(), {0.1, 6e-3, 0.1}, model::Matrix3d::Identity()}, 0};
  object.mass = model::MassProperties{kMass, Vector3d::Zero(), Vector3d(4e-5, 8e-5, 4e-5).asDiagonal()};
  for (const double x : {-0.045, 0.045})
    for (const double z : {-0.045, 0.045}) object.feet.push_back({{x, -2e-3, z}, 2e-3});
  return object;
}

Vector3d place(const parts::Walk& walk, std::size_t object = 1) {
  return walk.stepper.stage().kinematics.pose[static_cast<std::size_t>(walk.system.link_of_object[object])].p;
}
Vector3d speed(const parts::Walk& walk, std::size_t object = 1) {
  return walk.state.v.segment<3>(walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[object])].v + 3);
}

}  // namespace

TEST_CASE("things: a block stands on a table, its feet carry its weight", "[analytic]") {
  auto scenario = slope(0, 0.4);
  scenario.objects.push_back(block(scenario));
  // Off the middle, so that the feet carry unlike shares: moments about z and x.
  scenario.objects[1].mass->center = {0.015, 0, -0.01};
  parts::Walk walk(scenario);
  walk.to(5);
  REQUIRE(walk.stepper.stage().contact.size() == 4);
  Vector3d force = Vector3d::Zero(), moment = Vector3d::Zero();
  const Vector3d center = place(walk) + Vector3d(0.015, 0, -0.01);
  for (const auto& contact : walk.stepper.stage().contact) {
    CHECK(contact.normal_force > 0.02 * kMass * kG);
    force += contact.force;
    moment += (contact.point - center).cross(contact.force);
  }
  CHECK((force - Vector3d(0, kMass * kG, 0)).norm() < 1e-6 * kMass * kG);
  CHECK(moment.norm() < 1e-6 * kMass * kG * 0.045);
  const Vector3d there = place(walk);
  walk.to(100);
  CHECK((place(walk) - there).norm() < 1e-9);
}

TEST_CASE("things: a block on a slope stays below the angle of friction and slides with g (sin − μ cos) above", "[analytic]") {
  constexpr double friction = 0.3;
  {
    auto scenario = slope(std::atan(0.9 * friction), friction);
    scenario.objects.push_back(block(scenario));
    parts::Walk walk(scenario);
    walk.to(2);
    const Vector3d there = place(walk);
    walk.to(60);
    CHECK((place(walk) - there).norm() < 1e-9);
  }
  {
    const double angle = std::atan(1.5 * friction);
    auto scenario = slope(angle, friction);
    scenario.objects.push_back(block(scenario));
    parts::Walk walk(scenario);
    walk.to(0.2);  // settled on its feet
    const double first = speed(walk).norm();
    walk.to(0.5);
    CHECK_THAT(speed(walk).norm() - first, WithinRel(0.3 * kG * (std::sin(angle) - friction * std::cos(angle)), 2e-3));
    CHECK(std::abs(walk.residual()) < 1e-3 * walk.account(simulation::Account::contact_friction));
  }
}

TEST_CASE("things: a ball rolls down a slope with 5/7 g sin", "[analytic]") {
  const double angle = 0.2;
  auto scenario = slope(angle, 0.5);
  scenario.objects.push_back(ball(scenario));
  parts::Walk walk(scenario);
  walk.to(0.2);
  const double first = speed(walk).norm();
  walk.to(0.6);
  CHECK_THAT(speed(walk).norm() - first, WithinRel(0.4 * 5.0 / 7 * kG * std::sin(angle), 2e-3));
}

TEST_CASE("things: two balls that hit each other in mid-air keep their momentum") {
  auto scenario = slope(0, 0.4);
  scenario.gravity.setZero();
  scenario.objects = {ball(scenario), ball(scenario)};
  scenario.objects[1].name = "other";
  scenario.objects[1].at += Vector3d(0.1, 0.005, 0);
  parts::Walk walk(scenario);
  const auto v = [&](std::size_t o) { return walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[o])].v + 3; };
  walk.state.v[v(0)] = 0.5;
  walk.begin();
  walk.to(0.5);
  CHECK(speed(walk, 1).x() > 0.2);  // they have met
  CHECK_THAT(speed(walk, 0).x() + speed(walk, 1).x(), WithinAbs(0.5, 1e-6));
  CHECK_THAT(speed(walk, 0).y() + speed(walk, 1).y(), WithinAbs(0, 1e-6));
}

TEST_CASE("things: what hangs on a string stretches it by its weight, swings as a pendulum, and falls when it is slack", "[analytic]") {
  constexpr double length = 0.3, stiffness = 500;
  auto scenario = slope(0, 0.4);
  scenario.objects = {ball(scenario)};
  scenario.objects[0].at = {0, 0, 0};
  scenario.objects[0].hold = model::HeldByString{{0, length, 0}, Vector3d::Zero(), std::nullopt, stiffness, 0.02};
  {
    parts::Walk walk(scenario);
    walk.to(5);
    CHECK_THAT(place(walk, 0).y(), WithinRel(-kMass * kG / stiffness, 1e-6));
    CHECK(std::abs(walk.residual()) < 1e-5);
  }
  {
    // Pushed aside by a hundredth: T = 2π √(l/g) with the stretched length.
    auto swung = scenario;
    const double whole = length + kMass * kG / stiffness, aside = 0.01 * whole;
    swung.objects[0].at = {aside, length - std::sqrt(whole * whole - aside * aside), 0};
    std::get<model::HeldByString>(swung.objects[0].hold).length = length;
    swung.solver.tolerance = 1e-5;
    parts::Walk walk(swung);
    double before_time = 0, before_x = aside, crossed = 0;
    int crossings = 0;
    walk.to(3, [&] {
      const double x = place(walk, 0).x();
      if (before_x < 0 && x >= 0 && ++crossings <= 2) {
        const double time = before_time + (walk.state.time - before_time) * before_x / (before_x - x);
        crossed = time - (crossings == 1 ? 0 : crossed);
      }
      before_time = walk.state.time;
      before_x = x;
    });
    REQUIRE(crossings >= 2);
    CHECK_THAT(crossed, WithinRel(2 * std::numbers::pi * std::sqrt(whole / kG), 1e-3));
  }
  {
    auto loose = scenario;
    std::get<model::HeldByString>(loose.objects[0].hold).length = length + 0.2;
    parts::Walk walk(loose);
    walk.to(0.15);
    CHECK_THAT(place(walk, 0).y(), WithinRel(-0.5 * kG * 0.15 * 0.15, 1e-3));
  }
}

TEST_CASE("things: a twist spins a free ball up and its work is booked", "[analytic]") {
  auto scenario = slope(0, 0.4);
  scenario.gravity.setZero();
  scenario.objects = {ball(scenario)};
  model::Twist twist;
  twist.name = "wrench";
  twist.object_index = 0;
  twist.axis = Vector3d(1, 2, 2).normalized();
  twist.torque = {{0, 0.5}, {0, 2e-6}};
  scenario.twists = {twist};
  parts::Walk walk(scenario);
  walk.to(0.5);
  const double inertia = 0.4 * kMass * kRadius * kRadius, spin = 0.5 * 2e-6 * 0.5 / inertia;
  const int v = walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[0])].v;
  CHECK((walk.state.v.segment<3>(v) - spin * twist.axis).norm() < 1e-3 * spin);
  CHECK_THAT(walk.account(simulation::Account::loads), WithinRel(0.5 * inertia * spin * spin, 2e-3));
}
