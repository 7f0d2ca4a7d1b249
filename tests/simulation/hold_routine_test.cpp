// A hold routine on a finger that its gearhead alone cannot hold, and guards that end a stall.

#include <cmath>
#include <map>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "parts.h"
#include "simulation/run.h"

namespace {

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Vector3d;

constexpr double kStep = 0.02;  // [A]

// One joint with a spring that the motor winds up until it stalls; when the current goes, the gearhead is driven back.
model::Scenario spring_finger(double spring) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {parts::stiff_line(12000, 1e-3)};
  m.drives = {parts::lossy_drive()};
  m.bodies = {parts::fixed_body("knuckle"), parts::rod("proximal", 0, Vector3d::Zero(), 0.01, 0.045)};
  m.bodies[1].hinge->viscous = 2e-4;
  m.bodies[1].hinge->spring_stiffness = spring;
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = parts::constant_arm_path({8e-3}, {0.045});
  m.cords = {cord};
  model::Controller controller;
  controller.drive = 0;
  controller.period = 1e-3;
  controller.voltage_limit = 6;
  controller.speed_filter = 3e-3;
  model::HoldRoutine hold;
  hold.voltage = 3;
  hold.approach_current = 0.2;
  hold.touch_current = 0.15;
  hold.still_speed = 0.2;
  hold.touch_time = 0.05;
  hold.squeeze_current = 0.3;
  hold.squeeze_time = 0.1;
  hold.ease_time = 2;
  hold.slip_back = 0.01;
  hold.current_step = kStep;
  hold.watch = 0.05;
  hold.open_voltage = 3;
  hold.open_to = 0.1;
  hold.open_time = 2;
  controller.program = hold;
  scenario.controllers = {controller};
  scenario.timeline = {{0.0, 0, model::AskHold{true}}};
  scenario.duration = 12;
  return scenario;
}

struct Seen {
  std::vector<double> time, shaft, current, load;
  simulation::RunResult result;
};

Seen run(const model::Scenario& scenario) {
  const simulation::System system(scenario);
  Seen seen;
  simulation::RunListener listener;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    seen.time.push_back(state.time);
    seen.shaft.push_back(state.q[system.shafts[0].q_output]);
    seen.current.push_back(stage.shaft[0].electric.current);
    seen.load.push_back(stage.shaft[0].load_torque);
    return false;
  };
  seen.result = simulation::run(system, listener);
  INFO(seen.result.outcome);
  REQUIRE(seen.result.complete);
  return seen;
}

double number(const Seen& seen, const std::string& key) {
  for (const auto& value : seen.result.summary)
    if (value.key == key) return value.value;
  FAIL("no " << key);
  return 0;
}

// A shaft that no current turns, and a motor with thermal data.
model::Scenario jammed(double current) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  scenario.model.supplies = {parts::supply(6)};
  scenario.model.bodies = {parts::fixed_body("knuckle")};
  model::Drive drive = parts::plain_drive();
  drive.motor.static_drag = drive.motor.kinetic_drag = 1;
  drive.motor.winding_to_housing = 20;
  drive.motor.housing_to_ambient = 60;
  drive.motor.winding_capacity = 0.1;
  drive.motor.housing_capacity = 0.8;
  scenario.model.drives = {drive};
  model::Controller controller;
  controller.drive = 0;
  controller.period = 0.01;
  controller.voltage_limit = 6;
  model::Loops loops;
  loops.current = model::Loop{0.2, 50, 0, 0, model::no_limit};
  controller.program = loops;
  scenario.controllers = {controller};
  scenario.timeline = {{0.0, 0, model::SetCurrent{current}}};
  return scenario;
}

}  // namespace

TEST_CASE("hold: the current that it ends up with is the least one that the gear's cone allows, and at most a step more", "[analytic]") {
  const double spring = GENERATE(0.25, 0.4);
  const Seen seen = run(spring_finger(spring));
  const double kept = number(seen, "kept_current.flexor"), load = std::abs(seen.load.back());
  // At rest under a load M: n k i ≥ M − (1 − η_b) M − drag of the gear − n × brushes.
  const model::Drive drive = parts::lossy_drive();
  const double nk = drive.gearhead.ratio * drive.motor.torque_constant;
  const double least = (parts::kBackward * load - parts::kGearDrag - drive.gearhead.ratio * parts::kBrushes) / nk;
  CAPTURE(kept, least, load, number(seen, "tightened.flexor"));
  CHECK(least > 2 * kStep);
  CHECK(number(seen, "tightened.flexor") >= 1);
  CHECK(kept >= least);
  CHECK(kept <= least + kStep);
  CHECK(seen.current.back() == kept);
  // It stands: over the last second to the bit.
  std::size_t i = 0;
  while (seen.time[i] < 11) ++i;
  for (; i < seen.time.size(); ++i) REQUIRE(seen.shaft[i] == seen.shaft.back());
}

TEST_CASE("hold: a request wakes the routine from between two looks") {
  auto scenario = spring_finger(0.3);
  std::get<model::HoldRoutine>(scenario.controllers[0].program).watch = 5;
  scenario.timeline.push_back({8.0005, 0, model::AskHold{false}});
  const Seen seen = run(scenario);
  bool told = false;
  for (const auto& event : seen.result.events)
    if (event.kind == "control" && event.detail == "opens") {
      told = true;
      CHECK_THAT(event.time, WithinAbs(8.001, 1e-9));
    }
  CHECK(told);
  CHECK(seen.shaft.back() < 0.2);
}

TEST_CASE("guard: the heat guard trips when the two-node network says so, and the drive is safe within a sample", "[analytic]") {
  const double current = GENERATE(0.6, 0.9);
  auto scenario = jammed(current);
  scenario.duration = 20;
  scenario.solver.max_step = 0.01;
  const model::Motor& motor = scenario.model.drives[0].motor;
  const double ambient = scenario.ambient, highest = ambient + 6;
  scenario.controllers[0].heat = model::HeatGuard{highest, ambient};
  const Seen seen = run(scenario);
  const double tripped = number(seen, "trip_time.flexor");
  // By hand: small steps of the two equations with the current that flowed, R = 1 ohm.
  double winding = ambient, housing = ambient, expected = 0, time = 0;
  std::size_t i = 0;
  const double h = 1e-5;
  while (winding < highest && time < 20) {
    while (i + 1 < seen.time.size() && seen.time[i] <= time) ++i;
    const double flow = (winding - housing) / motor.winding_to_housing;
    winding += h * (seen.current[i] * seen.current[i] - flow) / motor.winding_capacity;
    housing += h * (flow - (housing - ambient) / motor.housing_to_ambient) / motor.housing_capacity;
    expected = time += h;
  }
  CAPTURE(tripped, expected);
  CHECK(expected > 0.5);
  CHECK(expected < 10);
  // The estimate lags by a sample and the guard looks once a sample.
  CHECK(tripped >= expected - 0.011);
  CHECK(tripped <= expected + 0.021);
  CHECK(seen.current.back() == 0);
  CHECK_THAT(number(seen, "safe_time.flexor"), WithinAbs(tripped, 0.011));
}

TEST_CASE("guard: the stall guard trips after its time, and the next command sets the drive going again") {
  auto scenario = jammed(0.5);
  scenario.duration = 2;
  scenario.controllers[0].stall = model::StallGuard{0.45, 0.1, 0.3};
  scenario.timeline.push_back({1.0, 0, model::SetCurrent{0.2}});
  const Seen seen = run(scenario);
  const double tripped = number(seen, "trip_time.flexor");
  // From the sample at which the current reaches 0.45 A on.
  std::size_t i = 0;
  while (seen.current[i] < 0.45) ++i;
  CHECK_THAT(tripped, WithinAbs(std::ceil(seen.time[i] / 0.01 - 1e-9) * 0.01 + 0.3, 0.0101));
  for (i = 0; i < seen.time.size(); ++i)
    if (seen.time[i] > tripped + 1e-9 && seen.time[i] <= 1) CHECK(seen.current[i] == 0);
  CHECK_THAT(seen.current.back(), WithinRel(0.2, 1e-2));
  CHECK(number(seen, "safe_time.flexor") < 0.36);
  CHECK(number(seen, "safe_time.flexor") > 0.3);
}
