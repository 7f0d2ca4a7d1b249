// One finger, two cords, two drives: a flexor, and an opposing cord in place of the elastic one. Against statics.

#include <cmath>

#include <catch2/catch.hpp>

#include "parts.h"
#include "simulation/summary.h"
#include "simulation/tip_estimate.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

constexpr double kFlexArm = 8e-3, kOpenArm = 5e-3, kStiffness = 2000, kLength = 0.045;

// The same path on the back of the pins.
std::vector<model::PathPoint> mirrored(std::vector<model::PathPoint> path) {
  for (auto& point : path) {
    if (auto* guide = std::get_if<model::Guide>(&point)) guide->side = -guide->side;
    if (auto* bend = std::get_if<model::Bend>(&point)) bend->at.y() = -bend->at.y();
    if (auto* anchor = std::get_if<model::Anchor>(&point)) anchor->at.y() = -anchor->at.y();
    if (auto* pulley = std::get_if<model::PulleyEnd>(&point)) pulley->at.y() = -pulley->at.y();
  }
  return path;
}

// Two drives without losses; `locks` makes the opposing one's gear self-locking.
model::Scenario opposed(bool locks) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line(kStiffness, 1e-3)};
  m.drives = {parts::plain_drive(), parts::plain_drive()};
  m.drives[1].name = "extensor";
  if (locks) m.drives[1].gearhead.backward_efficiency = 0;
  auto body = parts::rod("proximal", 0, {0, 0, 0}, 0.02, kLength);
  body.hinge->viscous = 1e-3;
  m.bodies = {parts::fixed_body("knuckle"), body};
  model::Cord flexor, extensor;
  flexor.name = "flexor";
  extensor.name = "extensor";
  flexor.line = extensor.line = 0;
  flexor.path = parts::constant_arm_path({kFlexArm}, {kLength}, 0);
  extensor.path = mirrored(parts::constant_arm_path({kOpenArm}, {kLength}, 1));
  m.cords = {flexor, extensor};
  scenario.duration = 10;
  return scenario;
}

double tension(const parts::Walk& walk, std::size_t cord) { return walk.stepper.stage().chain[cord].tension[0]; }

model::Load on_tip(double force, double from = 0) {
  model::Load load;
  load.name = "push";
  load.body = "proximal";
  load.body_index = 1;
  load.at = {0.04, 0, 0};
  load.direction = {0, 1, 0};  // opens
  load.follows_body = true;
  load.force = {{from, from + 0.5}, {0, force}};
  return load;
}

TEST_CASE("opposed drives: the joint stands where both cords' torques are equal, the flexor's tension that of its stalled motor") {
  parts::Walk walk(opposed(true));
  walk.voltage(0.4);
  walk.to(8);
  const double stall = 30 * 0.01 * 0.4 / 5e-3;  // n k i / R, 0.4 A over 1 ohm
  CHECK_THAT(tension(walk, 0), WithinRel(stall, 1e-4));
  CHECK_THAT(tension(walk, 0) * kFlexArm, WithinRel(tension(walk, 1) * kOpenArm, 1e-6));
  // The opposing cord has stretched by its arm times the angle.
  double material = 0;
  for (double l : walk.state.cords[1].material) material += l;
  CHECK_THAT(walk.angle(0), WithinRel(tension(walk, 1) / kStiffness * material / kOpenArm, 1e-4));
  CHECK(walk.shaft(1) == 0);
}

TEST_CASE("opposed drives: a load on the tip takes the difference of both torques") {
  model::Scenario scenario = opposed(true);
  scenario.loads = {on_tip(0.3)};
  parts::Walk walk(scenario);
  walk.voltage(0.4);
  walk.to(8);
  CHECK_THAT(tension(walk, 0) * kFlexArm - tension(walk, 1) * kOpenArm, WithinRel(0.3 * 0.04, 1e-5));
  CHECK(tension(walk, 1) > 0.1);
}

TEST_CASE("opposed drives: pulled against each other they make the joint stiff, by EA r²/L of both cords") {
  model::Scenario scenario = opposed(true);
  scenario.model.drives[0].gearhead.backward_efficiency = 0;  // both hold what they have wound
  scenario.loads = {on_tip(0.1, 4)};
  parts::Walk walk(scenario);
  // The lengths of the cords, as they are wound in, set the stiffness.
  walk.voltage(0.3, 0);
  walk.voltage(0.48, 1);  // so that 0.3 · 8 mm = 0.48 · 5 mm
  walk.to(2);
  walk.off(model::Leads::open, 0);
  walk.off(model::Leads::open, 1);
  walk.to(4);
  const double before = walk.angle(0);
  double stiffness = 0;
  for (std::size_t c = 0; c < 2; ++c) {
    double material = 0;
    for (double l : walk.state.cords[c].material) material += l;
    stiffness += kStiffness / material * (c == 0 ? kFlexArm * kFlexArm : kOpenArm * kOpenArm);
  }
  CHECK(tension(walk, 0) > 10);
  walk.to(8);
  CHECK(walk.shaft(0) > 0.01);
  CHECK_THAT(before - walk.angle(0), WithinRel(0.1 * 0.04 / stiffness, 1e-3));
}

TEST_CASE("opposed drives: paying out the opposing cord does not end the closing, stopping the flexor does") {
  model::Scenario scenario = opposed(false);
  scenario.timeline = {{0.1, 0, model::CommandVoltage{2, 0}}, {0.1, 1, model::CommandVoltage{-1, 0}}, {0.5, 1, model::CommandOff{}},
                       {1.0, 0, model::CommandVoltage{-2, 0}}, {1.0, 1, model::CommandVoltage{2, 0}}};
  const auto phases = simulation::phases(scenario);
  CHECK(phases.command == 0.1);
  CHECK(phases.close_end == 1.0);
  CHECK(phases.releases);
}

TEST_CASE("opposed drives: no fingertip is told from one shaft, and no return cord is reckoned with") {
  model::Scenario scenario = opposed(false);
  scenario.model.drives[0].sensor.emplace();
  const simulation::System system(scenario);
  CHECK_FALSE(simulation::returns(system, 0));
  CHECK_FALSE(simulation::returns(system, 1));
  CHECK_FALSE(simulation::tells_tip(system, 0));
  scenario.model.cords.pop_back();
  CHECK(simulation::tells_tip(simulation::System(scenario), 0));
}

}  // namespace
