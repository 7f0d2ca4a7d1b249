// A sliding body against closed forms: spring and mass, a block on an incline, a drawer that jams, a pendulum on a cart.

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "parts.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

constexpr double g = 9.81;

// One block of a mass on a slide along x, its inertia of no account.
model::Scenario block(double mass) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  scenario.model.bodies = {parts::fixed_body("bench"), parts::sliding("block", 0, Vector3d::Zero(), Vector3d::UnitX(), mass)};
  scenario.solver.tolerance = 1e-6;
  scenario.duration = 10;
  return scenario;
}

model::Load push(const Vector3d& direction, double force, const Vector3d& at = Vector3d::Zero()) {
  model::Load load;
  load.name = "push";
  load.body = "block";
  load.body_index = 1;
  load.at = at;
  load.direction = direction;
  load.force = {{0}, {force}};
  return load;
}

TEST_CASE("slide: a mass on a spring swings with 2 pi sqrt(m/k) about where its weight hangs, and keeps its energy") {
  model::Scenario scenario = block(0.05);
  auto& slide = *scenario.model.bodies[1].slide;
  slide.spring_stiffness = 20;
  slide.spring_rest = 2e-3;
  scenario.gravity = {g * 0.1, 0, 0};
  scenario.start_places = {{1, 15e-3}};
  parts::Walk walk(scenario);
  const double middle = 2e-3 + 0.05 * 0.1 * g / 20;
  double before = walk.position(0), time = 0, first = 0, last = 0, least = 1;
  int passes = 0;
  walk.to(3, [&] {
    const double now = walk.position(0);
    least = std::min(least, now);
    if ((before < middle) != (now < middle)) {
      last = time + (walk.state.time - time) * (middle - before) / (now - before);
      if (passes++ == 0) first = last;
    }
    before = now;
    time = walk.state.time;
  });
  CHECK_THAT(2 * (last - first) / (passes - 1), WithinRel(2 * pi * std::sqrt(0.05 / 20), 1e-4));
  CHECK_THAT(least, WithinAbs(2 * middle - 15e-3, 1e-5));
  CHECK(std::abs(walk.residual()) < 1e-4 * 0.5 * 20 * 13e-3 * 13e-3);
}

TEST_CASE("slide: a block on an incline rests below the angle of friction, to the last bit, and slides with g (sin − mu cos) above it") {
  for (const double slope : {20.0, 35.0}) {
    const double angle = slope * pi / 180;
    model::Scenario scenario = block(0.2);
    scenario.gravity = {g * std::sin(angle), -g * std::cos(angle), 0};
    scenario.model.bodies[1].slide->slideway = model::Slideway{{0.5, 0.3}, 0, 0};  // angle of friction 26.6 deg
    parts::Walk walk(scenario);
    walk.to(0.5);
    if (slope < 26) {
      CHECK(walk.position(0) == 0);
      walk.to(3600);
      CHECK(walk.position(0) == 0);
      CHECK_THAT(walk.stepper.stage().slide[0].friction_force, WithinRel(-0.2 * g * std::sin(angle), 1e-12));
    } else {
      const double acceleration = g * (std::sin(angle) - 0.3 * std::cos(angle));
      CHECK_THAT(walk.position(0), WithinRel(0.5 * acceleration * 0.25, 1e-6));
      CHECK_THAT(walk.speed(0), WithinRel(acceleration * 0.5, 1e-6));
      CHECK_THAT(walk.account(simulation::Account::slide_friction), WithinRel(0.3 * 0.2 * g * std::cos(angle) * walk.position(0), 1e-6));
    }
    CHECK_THAT(walk.stepper.stage().slide[0].normal_force, WithinRel(0.2 * g * std::cos(angle), 1e-12));
  }
}

TEST_CASE("slide: a drawer pulled off its middle jams at any force once 2 mu a/length reaches 1") {
  // The ends carry F a / length each, so friction is 2 mu a/length times the pull itself.
  constexpr double length = 30e-3, mu = 0.3, mass = 0.2;
  const double jams_from = length / (2 * mu);
  for (const double offset : {0.5 * jams_from, 0.98 * jams_from, 1.02 * jams_from}) {
    for (const double force : {0.5, 50.0}) {
      CAPTURE(offset, force);
      model::Scenario scenario = block(mass);
      scenario.model.bodies[1].slide->slideway = model::Slideway{{mu, mu}, length, 0};
      scenario.loads = {push(Vector3d::UnitX(), force, {0, offset, 0})};
      parts::Walk walk(scenario);
      walk.to(0.1);
      if (offset > jams_from) {
        CHECK(walk.position(0) == 0);
      } else {
        CHECK_THAT(walk.speed(0), WithinRel(force * (1 - 2 * mu * offset / length) / mass * 0.1, 1e-6));
      }
    }
  }
}

TEST_CASE("slide: preload alone rubs with mu times it, viscous drag gives the terminal speed") {
  model::Scenario scenario = block(0.01);
  auto& slide = *scenario.model.bodies[1].slide;
  slide.slideway = model::Slideway{{0.25, 0.2}, 10e-3, 3};
  slide.viscous = 2;
  scenario.loads = {push(Vector3d::UnitX(), 0.74)};  // 0.75 N hold it
  parts::Walk still(scenario);
  still.to(1);
  CHECK(still.position(0) == 0);
  scenario.loads = {push(-Vector3d::UnitX(), 1)};
  parts::Walk walk(scenario);
  walk.to(1);
  CHECK_THAT(walk.speed(0), WithinRel(-(1 - 0.6) / 2, 1e-6));
  CHECK_THAT(walk.account(simulation::Account::slide_viscous) + walk.account(simulation::Account::slide_friction) +
                 0.5 * 0.01 * walk.speed(0) * walk.speed(0),
             WithinRel(-walk.position(0), 1e-4));
}

TEST_CASE("slide: at its stop it yields by force over stiffness and the books balance") {
  model::Scenario scenario = block(0.05);
  auto& slide = *scenario.model.bodies[1].slide;
  slide.stops = model::EndStops{-1e-3, 8e-3, 2e4, 5};
  slide.viscous = 0.5;
  scenario.loads = {push(Vector3d::UnitX(), 6)};
  scenario.solver.tolerance = 1e-4;
  parts::Walk walk(scenario);
  double most = 0;
  walk.to(2, [&] { most = std::max(most, walk.position(0)); });
  CHECK_THAT(walk.position(0), WithinAbs(8e-3 + 6 / 2e4, 1e-8));
  CHECK_THAT(walk.stepper.stage().slide[0].stop_force, WithinRel(-6, 1e-4));
  CHECK(most > 8e-3 + 6 / 2e4);
  CHECK(walk.account(simulation::Account::end_stops) > 0);
  CHECK(std::abs(walk.residual()) < 2e-3 * 6 * 8e-3);
}

TEST_CASE("slide: a pendulum on a free cart swings with sqrt(M l / ((M + m) g)) and leaves the common centre where it was") {
  constexpr double cart = 0.3, bob = 0.1, length = 0.2, swing = 0.02;
  model::Scenario scenario = block(cart);
  scenario.gravity = {0, -g, 0};
  scenario.model.bodies.push_back(parts::phalanx("bob", 1, Vector3d::Zero(), bob, length, 0));
  scenario.start_angles = {{2, pi / 2 - swing}};
  parts::Walk walk(scenario);
  const auto centre = [&] { return (cart + bob) * walk.position(0) + bob * length * std::cos(walk.angle(0)); };
  const double at_start = centre();
  double before = walk.angle(0), time = 0, first = 0, last = 0;
  int passes = 0;
  walk.to(5, [&] {
    const double now = walk.angle(0);
    if ((before < pi / 2) != (now < pi / 2)) {
      last = time + (walk.state.time - time) * (pi / 2 - before) / (now - before);
      if (passes++ == 0) first = last;
    }
    before = now;
    time = walk.state.time;
  });
  // Small swings, so to swing²/16.
  CHECK_THAT(2 * (last - first) / (passes - 1), WithinRel(2 * pi * std::sqrt(cart * length / ((cart + bob) * g)), 2e-4));
  CHECK_THAT(centre(), WithinAbs(at_start, 1e-7));
  CHECK(std::abs(walk.position(0)) <= 2 * bob * length * std::sin(swing) / (cart + bob) * (1 + 1e-4));
}

TEST_CASE("slide: a cord through a fixed bend draws it with its tension, and its pull across the axis rubs") {
  // The cord comes from a bend beside the axis: its pull has a part along the axis, which draws, and one across it, which rubs.
  model::Scenario scenario = block(0.02);
  auto& m = scenario.model;
  m.bodies[1].slide->slideway = model::Slideway{{0.2, 0.2}, 0, 0};
  m.bodies[1].slide->spring_stiffness = 400;
  m.lines = {parts::stiff_line(50, 1e-3)};
  model::Cord cord;
  cord.name = "pull";
  cord.line = 0;
  cord.path = {model::Anchor{0, {0.06, 0.045, 0}}, model::Anchor{1, {0, 0, 0}}};
  cord.pretension = 5;
  m.cords = {cord};
  parts::Walk walk(scenario);
  walk.to(1);
  const auto& stage = walk.stepper.stage();
  const Vector3d way(0.06 - walk.position(0), 0.045, 0);
  const double tension = stage.chain[0].tension[0];
  CHECK(walk.position(0) > 1e-3);
  CHECK(walk.speed(0) == 0);
  CHECK_THAT(stage.slide[0].normal_force, WithinRel(tension * way.y() / way.norm(), 1e-9));
  // At rest the balance holds with friction within its limit.
  const double along = tension * way.x() / way.norm() - 400 * walk.position(0);
  CHECK_THAT(stage.slide[0].friction_force, WithinAbs(-along, 1e-6));
  CHECK(std::abs(along) <= 0.2 * stage.slide[0].normal_force * (1 + 1e-9));
}

}  // namespace
