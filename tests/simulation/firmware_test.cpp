// Firmware of the user's own in a run: sees what the built-in controller sees, at the same times, and acts in the same way.

#include <string>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"
#include "controlled.h"
#include "simulation/control.h"

namespace {

using namespace sinewright;
using namespace sinewright::controlled;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

model::Controller own(const std::string& name, std::vector<model::NamedNumber> parameters, double period = 1e-3) {
  model::Controller controller = controller_of({}, period);
  controller.program = model::OwnFirmware{std::string(SINEWRIGHT_FIRMWARE_FOLDER "/") + name + ".so", {}, std::move(parameters)};
  return controller;
}

// Asks for a mode of the driver, in the open.
model::Controller as_asked(double mode, double drive, double limit = 0) {
  return own("as_asked", {{"mode", mode, "", {}}, {"drive", drive, "", {}}, {"limit", limit, "A", {}}});
}

model::Scenario asked_to_go(const model::Controller& controller) {
  auto scenario = finger();
  scenario.model.drives[0].sensor = encoder(12);
  scenario.record_interval = 1e-9;
  scenario.controllers = {controller};
  scenario.timeline = {{0.02, 0, model::SetPosition{1.0, model::MoveMinimumJerk{0.3}}}, {0.4, 0, model::SetPosition{0.4, model::MoveStep{}}}};
  return scenario;
}

}  // namespace

TEST_CASE("firmware: a loop in C and the same loop built in give the same bits") {
  const Seen built_in = run(asked_to_go(controller_of(position_loop(6, 20), 1e-3)));
  const Seen in_c = run(asked_to_go(own("position_loop", {{"gain", 6, "V/rad", {}}, {"integral", 20, "V/rad/s", {}}})));
  CHECK(in_c.time == built_in.time);
  CHECK(in_c.shaft == built_in.shaft);
  CHECK(in_c.voltage == built_in.voltage);
  CHECK(in_c.first.at("/drives/flexor/control/command") == built_in.first.at("/drives/flexor/control/command"));
  for (const char* key : {"control_settling.flexor", "control_overshoot.flexor", "tracking_error.flexor", "tracking_error_rms.flexor"})
    CHECK((number(in_c, key) == number(built_in, key) || (std::isnan(number(in_c, key)) && std::isnan(number(built_in, key)))));
  const Seen again = run(asked_to_go(own("position_loop", {{"gain", 6, "V/rad", {}}, {"integral", 20, "V/rad/s", {}}})));
  CHECK(again.shaft == in_c.shaft);
}

TEST_CASE("firmware: it is asked at every period from its first command on, and power off makes it begin anew") {
  auto scenario = asked_to_go(own("position_loop", {{"gain", 6, "V/rad", {}}}, 2e-3));
  scenario.timeline.push_back({0.45, 0, model::CommandOff{model::Leads::open}});
  scenario.timeline.push_back({0.5, 0, model::SetPosition{0.2, model::MoveStep{}}});
  const simulation::System system(scenario);
  std::vector<double> steps, times, requests;
  simulation::RunListener listener;
  const auto channels = simulation::channels(system);
  std::size_t at = 0;
  for (const auto& channel : channels) {
    if (channel.path == "/drives/flexor/control/told") break;
    at += static_cast<std::size_t>(channel.width());
  }
  listener.row = [&](double, std::span<const double> row) {
    if (!steps.empty() && steps.back() == row[at]) return;
    steps.push_back(row[at]);
    times.push_back(row[at + 1]);
    requests.push_back(row[at + 2]);
  };
  const auto result = simulation::run(system, listener);
  REQUIRE(result.complete);
  // 0.02 to 0.45 s: 215 steps; nothing while it is off; 0.5 to 0.6 s: 50.
  REQUIRE(steps.size() == 1 + 215 + 1 + 50);
  for (std::size_t i = 1; i <= 215; ++i) {
    REQUIRE(steps[i] == static_cast<double>(i));
    REQUIRE_THAT(times[i], WithinAbs(2e-3 * static_cast<double>(i - 1), 1e-12));
  }
  CHECK(requests[190] == 1);
  CHECK(requests[215] == 2);
  CHECK(steps[216] == 0);  // forgotten
  CHECK(steps[217] == 1);
  CHECK(times[217] == 0);
  CHECK(requests[217] == 1);
  REQUIRE_FALSE(result.events.empty());
  CHECK_THAT(result.events.front().detail, Contains("runs the firmware 'test loop'") && Contains("checksum"));
}

TEST_CASE("firmware: voltage, duty, current limit and leads do at the motor what they say", "[analytic]") {
  auto scenario = bare_shaft();
  scenario.model.supplies[0].resistance = 0.5;
  scenario.model.drives[0].motor.static_drag = scenario.model.drives[0].motor.kinetic_drag = 1;  // it never turns: i = u/R
  scenario.timeline = {{0.0, 0, model::AskHold{true}}};
  scenario.duration = 0.05;
  const auto current = [&](const model::Controller& controller) {
    scenario.controllers = {controller};
    return run(scenario).first.at("/drives/flexor/current").back();
  };
  CHECK_THAT(current(as_asked(SINEWRIGHT_DRIVE_VOLTAGE, 3)), WithinRel(3.0, 1e-9));
  CHECK_THAT(current(as_asked(SINEWRIGHT_DRIVE_VOLTAGE, -3, 1.5)), WithinRel(-1.5, 1e-9));
  // Full duty: U₀/(R + R_s). Half of it at the terminal voltage V: u = V/2, and the chopper draws u i/V from the supply, V = U₀ − R_s u²/(R V).
  CHECK_THAT(current(as_asked(SINEWRIGHT_DRIVE_DUTY, 1)), WithinRel(6 / 1.5, 1e-9));
  CHECK_THAT(current(as_asked(SINEWRIGHT_DRIVE_DUTY, 0.5)), WithinRel(0.5 * 6 / (1 + 0.5 * 0.25), 1e-6));
  CHECK(current(as_asked(SINEWRIGHT_LEADS_OPEN, 3)) == 0);
}

TEST_CASE("firmware: shorted leads brake, open ones do not", "[analytic]") {
  auto scenario = bare_shaft();
  scenario.timeline = {{0.0, 0, model::CommandVoltage{3, 0}}, {0.2, 0, model::AskHold{true}}};
  scenario.duration = 0.21;
  const auto speed = [&](double mode) {
    scenario.controllers = {as_asked(mode, 0)};
    return run(scenario).first.at("/drives/flexor/shaft_speed").back();
  };
  const model::Drive& drive = scenario.model.drives[0];
  const double kn = gain_of(drive), tau = inertia_of(drive) * drive.motor.resistance / (kn * kn);
  CHECK_THAT(speed(SINEWRIGHT_LEADS_OPEN), WithinRel(3 / kn, 1e-3));
  CHECK_THAT(speed(SINEWRIGHT_LEADS_SHORTED), WithinRel(3 / kn * std::exp(-0.01 / tau), 2e-2));
}

TEST_CASE("firmware: what is no number ends the run with the time, the firmware and the cause, and keeps what came before", "[errors]") {
  const auto outcome = [](const std::string& name) {
    const simulation::System system(asked_to_go(own(name, {})));
    const auto result = simulation::run(system);
    CHECK_FALSE(result.complete);
    CHECK(std::isfinite(result.end.q.sum()));
    return result.outcome;
  };
  CHECK_THAT(outcome("not_a_number"), Contains("t = 0.025 s: the firmware 'faulty'") && Contains("a voltage that is not a finite number"));
  CHECK_THAT(outcome("bad_mode"), Contains("t = 0.02 s") && Contains("a mode of 9"));
  CHECK_THAT(outcome("bad_limit"), Contains("a current limit that is negative"));
  CHECK_THAT(outcome("bad_told"), Contains("something to tell"));
}

TEST_CASE("firmware: a library that is missing is an error before the run") {
  const simulation::System system(asked_to_go(own("there_is_none", {})));
  CHECK_THROWS_AS(simulation::run(system), InvalidInput);
}

TEST_CASE("firmware: a sample allocates nothing", "[no-heap]") {
  const simulation::System system(asked_to_go(own("position_loop", {{"gain", 6, "V/rad", {}}})));
  simulation::Control control(system);
  simulation::Stage stage(system);
  simulation::State state = simulation::start_state(system);
  stage.look(state);
  simulation::Sensing sensing(system);
  sensing.begin(stage, state);
  std::vector<simulation::DriveCommand> commands(1);
  std::vector<simulation::Event> events;
  control.take(0, system.scenario.timeline[0].command, 0);
  if (!HeapWatch::works()) return;
  const HeapWatch heap;
  for (int n = 0; n < 100; ++n) {
    state.time = 1e-3 * n;
    control.sample(stage, state, sensing, commands, events);
    control.look(stage, state, 1e-3);
  }
  CHECK(heap.requests() == 0);
}
