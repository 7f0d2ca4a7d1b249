// Nothing creeps while it sticks; what is held lets go at the closed-form load.

#include <cmath>

#include <catch2/catch.hpp>

#include "parts.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// One phalanx on a rubbing hinge, its cord on a guide of constant arm, gearhead with losses and drag.
using parts::kBackward, parts::kBrushes, parts::kForward, parts::kGearDrag, parts::kPulley, parts::kRatio;

constexpr double kArm = 8e-3;

model::Scenario one_joint(double hinge_friction) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {parts::stiff_line(12000, 1e-3)};
  m.drives = {parts::lossy_drive()};
  auto body = parts::rod("proximal", 0, {0, 0, 0}, 0.02, 0.045);
  body.hinge->viscous = 1e-4;
  if (hinge_friction > 0) body.hinge->washers = parts::washers_for(hinge_friction);
  m.bodies = {parts::fixed_body("knuckle"), body};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.channel.kinetic = 0.1;
  cord.path = parts::constant_arm_path({kArm}, {0.045});
  cord.pretension = 2;
  m.cords = {cord};
  scenario.duration = 10;
  return scenario;
}

model::Load push(double force_at_end, double time_at_end) {
  model::Load load;
  load.name = "push";
  load.body = "proximal";
  load.body_index = 1;
  load.at = {0.04, 0, 0};
  load.direction = {0, 1, 0};  // opens the finger
  load.follows_body = true;
  load.force = {{0, time_at_end}, {0, force_at_end}};
  return load;
}

TEST_CASE("stick: a held finger does not move in an hour of sticking, to the last bit") {
  model::Scenario scenario = one_joint(5e-3);
  auto load = push(0.3, 0.5);
  scenario.loads = {load};
  scenario.solver.max_step = 0.05;
  parts::Walk walk(scenario);
  walk.to(2);  // the load is on, everything has come to rest
  const auto q = walk.state.q;
  const auto cords = walk.state.cords;
  const auto tension = walk.stepper.stage().chain[0].tension;
  walk.to(3602);
  CHECK(walk.state.v.cwiseAbs().maxCoeff() == 0);
  CHECK((walk.state.q - q).cwiseAbs().maxCoeff() == 0);
  for (std::size_t s = 0; s < cords[0].material.size(); ++s)
    CHECK_THAT(walk.state.cords[0].material[s], WithinAbs(cords[0].material[s], 1e-15));
  for (std::size_t s = 0; s < tension.size(); ++s)
    CHECK_THAT(walk.stepper.stage().chain[0].tension[s], WithinRel(tension[s], 1e-9));
}

TEST_CASE("stick: drift in ten seconds stays below a hundredth of a micrometre at any step size") {
  const double step = GENERATE(1e-3, 2e-3, 5e-3, 2e-2, 5e-2);
  // No hinge friction here: gear and brushes alone hold the cord, and the finger hangs on its elasticity.
  model::Scenario scenario = one_joint(GENERATE(0.0, 4e-3));
  scenario.loads = {push(0.15, 0.5)};  // 0.75 N in the cord; it takes 1 N to drive the gear back
  scenario.solver.max_step = step;
  parts::Walk walk(scenario);
  walk.to(6);
  const double joint = walk.angle(0), shaft = walk.shaft();
  walk.to(16);
  CHECK(std::abs(walk.angle(0) - joint) * 0.045 < 1e-8);
  CHECK(std::abs(walk.shaft() - shaft) * kPulley < 1e-8);
  CHECK(walk.state.v[walk.system.shafts[0].v_output] == 0);
}

TEST_CASE("stick: the load that back-drives the shaft is (brushes + drag) / backward efficiency over the arm") {
  // Frictionless hinge and cord. Torque on the joint F·0.04 = T·arm; back-driving begins when T·R·η_b = n·drag_m + drag_g.
  model::Scenario scenario = one_joint(0);
  scenario.model.cords[0].channel.kinetic = 0;
  scenario.model.cords[0].pretension = 0.01;
  const double tension = (kRatio * kBrushes + kGearDrag) / kBackward / kPulley;
  const double force = tension * kArm / 0.04;
  scenario.loads = {push(2 * force, 20)};
  scenario.solver.max_step = 2e-3;
  scenario.solver.tolerance = 1e-5;
  parts::Walk walk(scenario);
  double found = 0;
  walk.to(20, [&] {
    if (found == 0 && walk.state.v[walk.system.shafts[0].v_output] < 0)
      found = simulation::value_at(walk.system.scenario.loads[0].force, walk.state.time);
  });
  CHECK_THAT(found, WithinRel(force, 1e-3));
}

TEST_CASE("stick: the load that first moves a joint is friction plus cord over its arm") {
  model::Scenario scenario = one_joint(5e-3);
  scenario.model.cords[0].channel.kinetic = 0;
  // Pretension alone does not move the joint: 0.3 N · 8 mm is below 5 N mm.
  scenario.model.cords[0].pretension = 0.3;
  const double force = (5e-3 + 0.3 * kArm) / 0.04;
  scenario.loads = {push(2 * force, 20)};
  scenario.solver.max_step = 2e-3;
  parts::Walk walk(scenario);
  double found = 0;
  walk.to(20, [&] {
    if (found == 0 && walk.rate(0) < 0)
      found = simulation::value_at(walk.system.scenario.loads[0].force, walk.state.time);
  });
  CHECK_THAT(found, WithinRel(force, 1e-3));
}

TEST_CASE("stick: stall tension is what motor, gearhead and pulley give") {
  // η_f (n (k i − brushes) − drag)/R would hold for the gear's cone on the load alone: T R / η_f + drag + n brushes = n k i.
  model::Scenario scenario = one_joint(0);
  scenario.model.cords[0].channel.kinetic = 0;
  scenario.model.bodies[1].hinge->stops = model::EndStops{-0.1, 0.3, 20, 0.05};
  parts::Walk walk(scenario);
  walk.voltage(0.4);
  walk.to(8);
  const auto& stage = walk.stepper.stage();
  const double current = 0.4;  // over 1 ohm; the driver chops, so the supply does not sag this far
  CHECK_THAT(stage.shaft[0].electric.current, WithinRel(current, 1e-9));
  const double least = kForward * (kRatio * (0.01 * current - kBrushes) - kGearDrag) / kPulley;
  // Arrived at by winding in: at least the quasi-static tension, more by what the rotor's momentum added.
  CHECK(stage.chain[0].tension[0] > least * (1 - 1e-9));
  CHECK_THAT(stage.hinge[0].stop_torque, WithinRel(-stage.chain[0].tension[0] * kArm, 1e-6));
}

}  // namespace
