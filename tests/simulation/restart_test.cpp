// A controller that loses its supply: what it has forgotten, what it takes for true when it is back, and how it finds its zero.

#include <cmath>
#include <limits>
#include <string>

#include <catch2/catch.hpp>

#include "controlled.h"

namespace {

using namespace sinewright;
using namespace sinewright::controlled;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

constexpr double kForever = std::numeric_limits<double>::infinity();
constexpr double kStep = 2 * M_PI / 4096;  // of the encoders below

model::Sensor relative() {
  model::Sensor sensor;
  sensor.kind = model::RelativeEncoder{4096};
  sensor.power = model::Sensor::Power::with_drive;
  return sensor;
}

model::Sensor absolute() {
  model::Sensor sensor = encoder(12);
  sensor.power = model::Sensor::Power::with_drive;
  return sensor;
}

// A shaft that is asked to turn to 2 rad, without power from 0.5 to 0.7 s.
model::Scenario interrupted(const model::Sensor& sensor) {
  auto scenario = bare_shaft();
  scenario.model.drives[0].sensor = sensor;
  auto controller = controller_of(position_loop(4, 0, 0.05), 1e-3);
  controller.brown_out = 3;
  controller.boot_time = 0.05;
  scenario.controllers = {controller};
  scenario.timeline = {{0.0, 0, model::SetPosition{2.0, model::MoveStep{}}}};
  scenario.faults = {{0.5, 0.2, model::SupplyDip{0, 0}}};
  scenario.duration = 1.5;
  scenario.record_interval = 1e-9;
  return scenario;
}

std::vector<std::string> details(const Seen& seen, const std::string& kind) {
  std::vector<std::string> list;
  for (const auto& event : seen.result.events)
    if (event.kind == kind) list.push_back(event.detail);
  return list;
}

double time_of(const Seen& seen, const std::string& part) {
  for (const auto& event : seen.result.events)
    if (event.detail.find(part) != std::string::npos) return event.time;
  return -1;
}

// A pulley that winds an elastic cord which is tied to the knuckle and hangs by `slack`.
model::Scenario slack_cord(double slack) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line(60)};
  m.drives = {parts::plain_drive(30, 5e-3)};
  m.drives[0].motor.viscous_drag = 2e-5;
  m.drives[0].sensor = relative();
  m.bodies = {parts::fixed_body("knuckle")};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = {model::PulleyEnd{0, Vector3d::Zero()}, model::Anchor{0, Vector3d(0.1, 0, 0)}};
  cord.slack = slack;
  m.cords = {cord};
  return scenario;
}

}  // namespace

TEST_CASE("restart: absolute sensing comes back where it was, relative sensing turns on from where it stood") {
  const Seen by_absolute = run(interrupted(absolute())), by_relative = run(interrupted(relative()));
  CHECK_THAT(by_absolute.shaft.back(), WithinAbs(2, 2 * kStep));
  // It takes the place at which its power came back for zero.
  std::size_t back = 0;
  while (by_relative.time[back] < 0.7) ++back;
  CHECK_THAT(by_relative.shaft[back], WithinAbs(2, 0.01));  // it coasts a little without power
  CHECK_THAT(by_relative.shaft.back(), WithinAbs(by_relative.shaft[back] + 2, 2 * kStep));
  const auto told = details(by_relative, "control");
  REQUIRE(told.size() == 2);
  CHECK_THAT(told[0], Contains("browns out at 0 V"));
  CHECK(told[1] == "starts again");
  CHECK_THAT(time_of(by_relative, "browns out"), WithinAbs(0.5, 1e-3));
  // The voltage is seen to be back at the first sample that looks at a step under it, and then it boots.
  CHECK_THAT(time_of(by_relative, "starts again"), WithinAbs(0.75, 2e-3));
  for (std::size_t i = 0; i < by_relative.time.size(); ++i)
    if (by_relative.time[i] > 0.502 && by_relative.time[i] < 0.75) {
      REQUIRE(by_relative.first.at("/drives/flexor/current")[i] == 0);
      REQUIRE(by_relative.first.at("/drives/flexor/control/down")[i] == 1);
    }
}

TEST_CASE("restart: without a brown-out voltage it goes on at any voltage, and a dip above it does not matter") {
  auto scenario = interrupted(absolute());
  scenario.faults[0].fault = model::SupplyDip{0, 3.1};
  CHECK(details(run(scenario), "control").empty());
  scenario.faults[0].fault = model::SupplyDip{0, 2.9};
  CHECK(details(run(scenario), "control").size() == 2);
  scenario.controllers[0].brown_out = 0;
  scenario.faults[0].fault = model::SupplyDip{0, 0};
  CHECK(details(run(scenario), "control").empty());
}

TEST_CASE("restart: a supply that sags under the motor makes it start again and again") {
  auto scenario = interrupted(absolute());
  scenario.faults.clear();
  scenario.model.supplies[0].resistance = 3;  // R = 1: a start pulls it down to 6 × 1/4
  scenario.duration = 1;
  const auto told = details(run(scenario), "control");
  CHECK(told.size() > 10);
  CHECK_THAT(told.front(), Contains("browns out"));
}

TEST_CASE("restart: power off while it is down, and a new request while it is down, are both kept to") {
  auto scenario = interrupted(absolute());
  scenario.timeline.push_back({0.6, 0, model::SetPosition{1.0, model::MoveStep{}}});
  CHECK_THAT(run(scenario).shaft.back(), WithinAbs(1, 2 * kStep));
  scenario.timeline.back().command = model::CommandOff{model::Leads::open};
  const Seen off = run(scenario);
  CHECK_THAT(off.shaft.back(), WithinAbs(2, 0.05));
  CHECK(details(off, "control").size() == 1);
}

TEST_CASE("restart: homing finds the taut cord by its current", "[analytic]") {
  const double slack = 0.02, radius = 5e-3, wanted = 0.5;
  auto scenario = slack_cord(slack);
  auto loops = position_loop(4, 0, 0.05);
  model::Homing homing;
  homing.voltage = 0.12;
  homing.current = 0.1;
  homing.time = 3e-3;
  homing.give_up = 60;
  // The pull that this current makes at rest, and how far the cord then is wound: see faults_test.cpp.
  const double kn = gain_of(scenario.model.drives[0]), pull = kn * 0.1 / radius;
  homing.angle = slack / radius + 0.1 / radius * std::log1p(pull / 60);
  loops.homing = homing;
  scenario.controllers = {controller_of(loops, 1e-3)};
  scenario.controllers[0].speed_filter = 2e-3;
  scenario.timeline = {{0.1, 0, model::SetPosition{wanted, model::MoveMinimumJerk{0.5}}}};
  scenario.duration = 80;
  // From wherever it begins: moved there by voltage before.
  for (const double before : {0.0, 0.1, -0.1}) {
    auto moved = scenario;
    if (before != 0) moved.timeline = {{0.0, 0, model::CommandVoltage{before * 3, 0}}, {0.4, 0, model::CommandOff{model::Leads::open}}, {0.5, 0, model::SetPosition{wanted, model::MoveMinimumJerk{0.5}}}};
    moved.model.drives[0].motor.viscous_drag = 2e-5;
    const Seen seen = run(moved);
    CAPTURE(before, details(seen, "control"));
    // Winding at speed the viscous drag takes some of the current, so the place is found a little early, and 3 ms late.
    CHECK_THAT(seen.shaft.back(), WithinAbs(wanted, 0.12));
    CHECK(time_of(seen, "takes its shaft to stand") > 0);
  }
}

TEST_CASE("restart: homing that finds nothing gives up and switches off") {
  auto scenario = slack_cord(10);
  auto loops = position_loop(4);
  model::Homing homing;
  homing.pay_out = 1;
  homing.voltage = 1;
  homing.current = 0.9;
  homing.time = 5e-3;
  homing.angle = 0;
  homing.give_up = 0.4;
  loops.homing = homing;
  scenario.controllers = {controller_of(loops, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1, model::MoveStep{}}}};
  scenario.duration = 1;
  const Seen seen = run(scenario);
  const auto told = details(seen, "control");
  REQUIRE(told.size() == 3);
  CHECK_THAT(told[0], Contains("pays out"));
  CHECK_THAT(told[1], Contains("winds"));
  CHECK_THAT(told[2], Contains("switches off: finds no zero"));
  CHECK_THAT(time_of(seen, "finds no zero"), WithinAbs(0.4 + 1e-3, 1e-9));  // from the first sample of a sensor that has just got power
  CHECK(seen.first.at("/drives/flexor/current").back() == 0);
}

TEST_CASE("force by current: the cord's tension comes to what was asked, rising and falling", "[analytic]") {
  auto scenario = slack_cord(0);
  auto drive = parts::lossy_drive();
  drive.motor.viscous_drag = 2e-5;  // slow, so that no momentum winds on
  scenario.model.drives[0] = drive;
  scenario.model.lines = {parts::stiff_line(6000)};
  model::Loops loops;
  loops.current = model::Loop{0.5, 300, 0, 0, model::no_limit};
  loops.force = model::ForceByCurrent{drive.pulley.radius, drive.gearhead.ratio, drive.motor.torque_constant, drive.gearhead.forward_efficiency,
                                      drive.gearhead.backward_efficiency, drive.gearhead.drag, drive.motor.kinetic_drag, 0, 0, model::no_limit, 1};
  scenario.controllers = {controller_of(loops, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetForce{12}}, {1.5, 0, model::SetForce{20}}, {3.0, 0, model::SetForce{5}}};
  scenario.duration = 5;
  const Seen seen = run(scenario);
  const auto& tension = seen.first.at("/cords/flexor/tension");
  CHECK_THAT(tension.back(), WithinRel(5.0, 5e-3));
  CHECK(*std::max_element(tension.begin(), tension.end()) < 20 * 1.005);
  CHECK(number(seen, "force_error.flexor") < 0.005);
  // Firmware that takes the gear for better than it is pulls too little, by the quotient of the two.
  auto wrong = loops;
  wrong.force->forward_efficiency = 2 * drive.gearhead.forward_efficiency;
  scenario.controllers = {controller_of(wrong, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetForce{12}}};
  const Seen half = run(scenario);
  CHECK_THAT(half.first.at("/cords/flexor/tension").back(), WithinRel(6.0, 1e-2));
  CHECK_THAT(number(half, "force_error.flexor"), WithinAbs(0.5, 5e-3));
  // Feed-forward and share: T* = F/share + T₀ + T₁ φ.
  auto shared = loops;
  shared.force->return_at_zero = 3;
  shared.force->return_per_angle = 0.5;
  shared.force->share = 0.5;
  scenario.controllers = {controller_of(shared, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetForce{2}}};
  const Seen more = run(scenario);
  CHECK_THAT(more.first.at("/cords/flexor/tension").back(), WithinRel(2 / 0.5 + 3 + 0.5 * more.shaft.back(), 1e-2));
  // Not more current than allowed.
  shared.force->highest_current = 0.02;
  scenario.controllers = {controller_of(shared, 1e-3)};
  const Seen cut = run(scenario);
  CHECK_THAT(cut.first.at("/drives/flexor/current").back(), WithinRel(0.02, 1e-2));
}
