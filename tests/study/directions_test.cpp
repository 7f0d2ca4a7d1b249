// The pull that a determinate grasp holds in every direction, against statics.

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "../simulation/parts.h"
#include "study/directions.h"
#include "study/ramp.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

constexpr double kPress = 10, kFriction = 0.4, kRadius = 10e-3;

// A ball without weight between a fixed plate at −x and a plate on a slide without friction that a constant force presses on it from +x.
model::Scenario vice() {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  // Stiff, so that the ball is not pressed in by what counts as lost: 10 N press it 0.05 mm into the pad.
  m.surfaces = {{"pad", 2e8, 0.4, 0, "invented"}, {"shell", 2e10, 0.4, 0, "invented"}};
  m.pairs = {{0, 1, kFriction, "invented"}};
  m.bodies = {parts::fixed_body("plate"), parts::sliding("jaw", 0, {2 * kRadius, 0, 0}, -Vector3d::UnitX(), 0.02)};
  m.bodies[1].slide->viscous = 20;
  const auto plate = [](double x) {
    model::Box box;
    box.center = {x, 0, 0};
    box.size = {10e-3, 60e-3, 60e-3};
    return box;
  };
  m.bodies[0].shapes = {{"face", plate(-5e-3), 0}};
  m.bodies[1].shapes = {{"face", plate(5e-3), 0}};
  model::Object ball;
  ball.name = "ball";
  ball.at = {kRadius, 0, 0};
  ball.shape = {"ball", model::Sphere{Vector3d::Zero(), kRadius}, 1};
  ball.mass = model::MassProperties{0.01, Vector3d::Zero(), 4e-7 * model::Matrix3d::Identity()};
  ball.hold = model::HeldFree{};
  scenario.objects = {ball};
  model::Load press;
  press.name = "press";
  press.body = "jaw";
  press.body_index = 1;
  press.direction = -Vector3d::UnitX();
  press.force = {{0}, {kPress}};
  scenario.loads = {press};
  scenario.duration = 1;
  return scenario;
}

model::Directions task(int count) {
  model::Directions task;
  task.object = "ball";
  task.plane = Vector3d::UnitZ();
  task.count = count;
  task.start = 0.2;
  task.rate = 20;
  task.most = 60;
  task.more_than = 0.3e-3;
  task.halvings = 9;
  return task;
}

// Moments about the centre make both frictions equal, F |sin| / 2 each; the jaw presses with P, the plate with P − F cos: the lesser
// one slips first. Straight away from the plate the jaw gives way at P.
double held(double angle) {
  const double away = std::max(0.0, std::cos(angle)), across = std::abs(std::sin(angle));
  return 2 * kFriction * kPress / (across + 2 * kFriction * away);
}

TEST_CASE("directions: a ball in a vice is held as the friction cones of its two contacts say, along the pads, across, and between") {
  const model::Directions asked = task(16);
  const auto directions = study::directions_of(asked);
  double least = 1e9, worst_angle = 0;
  for (std::size_t i = 0; i < directions.size(); ++i) {
    const double angle = 2 * pi * static_cast<double>(i) / 16;
    CAPTURE(angle * 180 / pi);
    const study::Pull pull = study::pull_in(vice(), asked, directions[i], {});
    const study::Answer answer = study::answer_ramp(pull.scenario, pull.ramp, 1e-3, {});
    if (i == 8) {  // into the fixed plate: nothing gives
      CHECK_FALSE(answer.found);
      CHECK(answer.ended_early == 0);
      continue;
    }
    REQUIRE(answer.found);
    CHECK(answer.settled);
    // What is left is the force that rises on while the ball covers the way that counts as lost: it shrinks with the rate.
    CHECK_THAT(answer.value, WithinRel(held(angle), 5e-3));
    CHECK(answer.value > held(angle));
    if (answer.value < least) {
      least = answer.value;
      worst_angle = angle;
    }
    // The jaw is the finger here. Pulled toward it, it is the plate that is relieved and slides; pushed at the plate, it is the jaw.
    if (i > 4 && i < 12) {
      CHECK(answer.gave.contact == "jaw");
      CHECK_FALSE(answer.gave.lifts);
      CHECK(answer.gave.value <= answer.value * 1.001);
      CHECK(answer.gave.value > 0.9 * held(angle));
    }
  }
  // The worst is not straight across but a little toward the jaw: tan = 1 / (2 mu), at 51 deg from x.
  CHECK_THAT(std::abs(std::remainder(worst_angle, 2 * pi)) * 180 / pi, WithinAbs(std::atan(1 / (2 * kFriction)) * 180 / pi, 360.0 / 16));
  CHECK_THAT(least, WithinRel(2 * kFriction * kPress / std::hypot(1, 2 * kFriction), 1e-2));
}

TEST_CASE("directions: twice the press or twice the friction moves the curve as statics says") {
  model::Scenario scenario = vice();
  scenario.loads[0].force = {{0}, {2 * kPress}};
  model::Directions asked = task(4);
  asked.rate = 40;
  const auto directions = study::directions_of(asked);
  const auto value = [&](const model::Scenario& s, std::size_t i) {
    const study::Pull pull = study::pull_in(s, asked, directions[i], {});
    return study::answer_ramp(pull.scenario, pull.ramp, 1e-3, {}).value;
  };
  CHECK_THAT(value(scenario, 0), WithinRel(2 * kPress, 5e-3));
  CHECK_THAT(value(scenario, 1), WithinRel(4 * kFriction * kPress, 5e-3));
  scenario = vice();
  scenario.model.pairs[0].friction = 2 * kFriction;
  CHECK_THAT(value(scenario, 0), WithinRel(kPress, 5e-3));
  CHECK_THAT(value(scenario, 1), WithinRel(4 * kFriction * kPress, 5e-3));
}

TEST_CASE("directions: of a plane they go evenly round it by the right-hand rule, of the sphere each has the same room") {
  model::Directions asked = task(8);
  asked.plane = Vector3d(0, 0, -1);
  const auto round = study::directions_of(asked);
  CHECK((round[2] - Vector3d(0, -1, 0)).norm() < 1e-15);
  CHECK(study::direction_labels(asked)[2] == "90 deg");
  asked.plane.reset();
  asked.count = 500;
  const auto all = study::directions_of(asked);
  Vector3d mean = Vector3d::Zero();
  model::Matrix3d spread = model::Matrix3d::Zero();
  double nearest_least = 9, nearest_most = 0;
  for (const Vector3d& a : all) {
    CHECK_THAT(a.norm(), WithinRel(1, 1e-14));
    mean += a / 500;
    spread += a * a.transpose() / 500;
    double nearest = 9;
    for (const Vector3d& b : all)
      if (&a != &b) nearest = std::min(nearest, (a - b).norm());
    nearest_least = std::min(nearest_least, nearest);
    nearest_most = std::max(nearest_most, nearest);
  }
  CHECK(mean.norm() < 2e-3);
  CHECK((spread - model::Matrix3d::Identity() / 3).norm() < 2e-3);
  // 500 even patches are 0.159 wide.
  CHECK(nearest_least > 0.12);
  CHECK(nearest_most < 0.18);
  CHECK(study::direction_labels(asked)[0].front() == '(');
}

TEST_CASE("directions: an object that is not there, or not free, is refused by name") {
  model::Directions asked = task(4);
  const Place place{"hold.yaml", 7, 3};
  asked.object = "bal";
  CHECK_THROWS_WITH(study::pull_in(vice(), asked, Vector3d::UnitX(), place), Contains("hold.yaml:7:3") && Contains("no object 'bal'") && Contains("ball"));
  asked.object = "ball";
  model::Scenario scenario = vice();
  scenario.objects[0].hold = model::HeldFixed{};
  CHECK_THROWS_WITH(study::pull_in(scenario, asked, Vector3d::UnitX(), place), Contains("held by something else") && Contains("hold: free"));
}

}  // namespace
