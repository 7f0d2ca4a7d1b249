// Controllers in a run: sampled, held between samples, seeing no more than the sensors say.

#include <cmath>
#include <map>
#include <numbers>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"
#include "controlled.h"
#include "simulation/control.h"

namespace {

using namespace sinewright;
using namespace sinewright::controlled;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

}  // namespace

TEST_CASE("control: a sampled position loop on a bare shaft follows the exact recursion of the held voltage", "[analytic]") {
  auto scenario = bare_shaft();
  const double period = 5e-3, target = 0.8;
  scenario.controllers = {controller_of(position_loop(2, 3, 0.05), period)};
  scenario.timeline = {{0.0, 0, model::SetPosition{target, model::MoveStep{}}}};
  scenario.solver.tolerance = 1e-6;
  const Seen seen = run(scenario);
  const model::Drive& drive = scenario.model.drives[0];
  const double kn = gain_of(drive), tau = inertia_of(drive) * drive.motor.resistance / (kn * kn);
  double angle = 0, speed = 0, sum = 0, before = 0, worst = 0;
  std::size_t i = 0;
  int compared = 0;
  for (int n = 0; n * period < scenario.duration - 1e-9; ++n) {
    while (i < seen.time.size() && seen.time[i] < n * period) ++i;
    REQUIRE(seen.time[i] == n * period);  // steps end at the samples
    worst = std::max(worst, std::abs(seen.shaft[i] - angle));
    ++compared;
    const double error = target - angle;
    const double u = 2 * error + 3 * period * sum - 0.05 * (n > 0 ? (angle - before) / period : 0);
    REQUIRE(std::abs(u) < 6);
    sum += error;
    before = angle;
    const double decay = std::exp(-period / tau), end = u / kn;
    angle += end * period + (speed - end) * tau * (1 - decay);
    speed = end + (speed - end) * decay;
  }
  CHECK(compared == 100);
  CHECK(angle > 0.5);
  CHECK(worst < 2e-5);  // errors of single steps stay below 0.5e-6, and about a hundred of them add up
}

TEST_CASE("control: the motor's voltage stands still between samples") {
  auto scenario = finger();
  scenario.controllers = {controller_of(position_loop(6, 5, 0.1), 4e-3)};
  scenario.timeline = {{0.05, 0, model::SetPosition{1.5, model::MoveMinimumJerk{0.2}}}};
  const Seen seen = run(scenario);
  int changes = 0, steps = 0;
  for (std::size_t i = 1; i < seen.time.size(); ++i) {
    if (seen.time[i] <= 0.052) continue;
    ++steps;
    if (seen.voltage[i] == seen.voltage[i - 1]) continue;
    ++changes;
    // The step that shows a new voltage began at a sample.
    const double began = seen.time[i - 1], n = std::round(began / 4e-3);
    CHECK(began == n * 4e-3);
  }
  CHECK(changes > 100);
  CHECK(steps > changes);
}

TEST_CASE("control: it sees what the sensor says, and the true angle only where there is none") {
  auto scenario = finger();
  scenario.controllers = {controller_of(position_loop(6, 20), 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1.0, model::MoveMinimumJerk{0.3}}}};
  scenario.record_interval = 1e-9;
  for (const bool with : {true, false}) {
    if (with) scenario.model.drives[0].sensor = encoder(6);  // steps of 5.6 degrees
    if (!with) scenario.model.drives[0].sensor.reset();
    const Seen seen = run(scenario);
    const auto& reading = seen.first.at("/drives/flexor/control/reading");
    double off = 0, same = 0;
    for (std::size_t i = 1; i < reading.size(); ++i) {
      if (seen.first.at("/drives/flexor/control/sample_time")[i] != seen.time[i - 1]) continue;
      off = std::max(off, std::abs(reading[i] - seen.shaft[i - 1]));
      if (with) same = std::max(same, std::abs(reading[i] - seen.first.at("/drives/flexor/sensor/reading")[i - 1]));
    }
    CHECK(same == 0);
    if (with) CHECK(off > 0.03);
    if (!with) CHECK(off == 0);
  }
}

TEST_CASE("control: the same samples come out whatever the tolerance, up to its size") {
  const auto commands = [](double tolerance) {
    auto scenario = finger();
    scenario.solver.tolerance = tolerance;
    scenario.record_interval = 1e-9;
    scenario.controllers = {controller_of(position_loop(6, 20, 0.05), 2e-3)};
    scenario.timeline = {{0.0, 0, model::SetPosition{1.0, model::MoveTrapezoid{4, 40}}}, {0.3, 0, model::SetPosition{0.3, model::MoveStep{}}}};
    const Seen seen = run(scenario);
    std::map<double, double> by_time;
    for (std::size_t i = 0; i < seen.time.size(); ++i)
      by_time[seen.first.at("/drives/flexor/control/sample_time")[i]] = seen.first.at("/drives/flexor/control/command")[i];
    return by_time;
  };
  const auto coarse = commands(1e-3), fine = commands(1e-5);
  REQUIRE(coarse.size() == fine.size());
  CHECK(coarse.size() == 300);
  double worst = 0, largest = 0;
  for (const auto& [time, value] : coarse) {
    REQUIRE(fine.count(time) == 1);
    worst = std::max(worst, std::abs(value - fine.at(time)));
    largest = std::max(largest, std::abs(value));
  }
  CAPTURE(worst, largest);
  CHECK(largest > 2);
  CHECK(worst < 0.01 * largest);
}

TEST_CASE("control: anti-windup takes the overshoot of a long cut away") {
  const auto overshoot = [](model::Loops::AntiWindup anti_windup) {
    auto scenario = bare_shaft();
    scenario.duration = 6;
    auto loops = position_loop(3, 10, 0.1);
    loops.anti_windup = anti_windup;
    scenario.controllers = {controller_of(loops, 2e-3)};
    scenario.timeline = {{0.0, 0, model::SetPosition{20, model::MoveStep{}}}};
    return number(run(scenario), "control_overshoot.flexor");
  };
  const double with = overshoot(model::Loops::AntiWindup::clamp), without = overshoot(model::Loops::AntiWindup::none);
  CAPTURE(with, without);
  CHECK(without > 0.2);
  CHECK(with < 0.25 * without);
}

TEST_CASE("control: a speed loop with an integral reaches its speed, a current loop its current") {
  auto scenario = bare_shaft();
  model::Loops loops;
  loops.speed = model::Loop{0.5, 8, 0, 0, model::no_limit};
  scenario.controllers = {controller_of(loops, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetSpeed{-7}}};
  scenario.duration = 1.5;
  const Seen by_speed = run(scenario);
  CHECK_THAT(by_speed.first.at("/drives/flexor/shaft_speed").back(), WithinRel(-7.0, 1e-3));

  loops = {};
  loops.current = model::Loop{0.4, 300, 0, 0, model::no_limit};
  scenario.model.drives[0].motor.viscous_drag = 1e-5;
  scenario.controllers = {controller_of(loops, 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetCurrent{0.1}}};
  scenario.duration = 2;
  const Seen by_current = run(scenario);
  CHECK_THAT(by_current.first.at("/drives/flexor/current").back(), WithinRel(0.1, 1e-3));
  CHECK(by_current.first.at("/drives/flexor/control/loop").back() == 3);
}

TEST_CASE("control: another command takes the drive away, and the controller begins anew") {
  auto scenario = finger();
  scenario.controllers = {controller_of(position_loop(6, 20), 1e-3)};
  scenario.timeline = {{0.1, 0, model::SetPosition{1, model::MoveStep{}}}, {0.3, 0, model::CommandOff{model::Leads::open}}, {0.45, 0, model::SetPosition{0.2, model::MoveStep{}}}};
  scenario.record_interval = 1e-9;
  const Seen seen = run(scenario);
  const auto& current = seen.first.at("/drives/flexor/current");
  double early = 0, off = 0;
  for (std::size_t i = 1; i < seen.time.size(); ++i) {
    if (seen.time[i] <= 0.1) early = std::max(early, std::abs(current[i]));
    if (seen.time[i] > 0.3 && seen.time[i] <= 0.45) off = std::max(off, std::abs(current[i]));
  }
  CHECK(early == 0);
  CHECK(off == 0);
  CHECK(std::abs(current.back()) > 0);
}

TEST_CASE("control: a drive with an idle controller moves as one without") {
  auto scenario = finger();
  scenario.timeline = {{0.1, 0, model::CommandVoltage{2}}};
  const Seen without = run(scenario);
  scenario.controllers = {controller_of(position_loop(6, 20), 1e-3)};
  const Seen with = run(scenario);
  CHECK(with.time == without.time);
  CHECK(with.shaft == without.shaft);
}

TEST_CASE("control: measures of a move are those of its curve", "[analytic]") {
  // Damping 0.2 and 10 rad/s, sampled so often that it counts as continuous: overshoot exp(−π ζ/√(1 − ζ²)).
  auto scenario = bare_shaft();
  const model::Drive& drive = scenario.model.drives[0];
  const double kn = gain_of(drive), tau = inertia_of(drive) * drive.motor.resistance / (kn * kn);
  const double frequency = 1 / (2 * 0.2 * tau);  // 2 ζ ω = 1/τ
  const double gain = frequency * frequency * tau * kn;
  scenario.controllers = {controller_of(position_loop(gain), 1e-5)};
  scenario.controllers[0].voltage_limit = 1e3;
  scenario.model.supplies = {parts::supply(1e3)};
  scenario.duration = 40 * tau;
  scenario.timeline = {{0.0, 0, model::SetPosition{0.5, model::MoveStep{}}}};
  scenario.solver.tolerance = 1e-5;
  const Seen seen = run(scenario);
  const double damped = std::sqrt(1 - 0.2 * 0.2);
  CHECK_THAT(number(seen, "control_overshoot.flexor"), WithinRel(std::exp(-std::numbers::pi * 0.2 / damped), 5e-3));
  CHECK(number(seen, "tracking_error.flexor") <= 0.5);
  CHECK(number(seen, "tracking_error.flexor") > 0.49);
  // The last time that the ringing leaves 5 %, from the closed form.
  double last = 0;
  for (int i = 0; i < 400000; ++i) {
    const double t = scenario.duration * i / 400000;
    const double x = std::exp(-0.2 * frequency * t) * (std::cos(damped * frequency * t) + 0.2 / damped * std::sin(damped * frequency * t));
    if (std::abs(x) > 0.05) last = t;
  }
  CHECK_THAT(number(seen, "control_settling.flexor"), WithinRel(last, 1e-2));
}

TEST_CASE("control: a move that has not settled by the end has no settling time") {
  auto scenario = finger();
  scenario.controllers = {controller_of(position_loop(6), 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1.5, model::MoveMinimumJerk{5}}}};
  CHECK(std::isnan(number(run(scenario), "control_settling.flexor")));
}

TEST_CASE("control: the charge that a supply gives, times its voltage, is the energy that it gives") {
  auto scenario = finger();
  scenario.model.supplies[0].charge = 1000;
  scenario.controllers = {controller_of(position_loop(6, 20), 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1.5, model::MoveStep{}}}};
  const Seen seen = run(scenario);
  const double charge = number(seen, "charge.battery");
  CHECK(charge > 0);
  CHECK_THAT(6 * charge, WithinRel(number(seen, "energy_supplied"), 1e-12));
  CHECK_THAT(number(seen, "runs_per_charge.battery"), WithinRel(1000 / charge, 1e-12));
}

TEST_CASE("control: a sample allocates nothing", "[no-heap]") {
  auto scenario = finger();
  scenario.controllers = {controller_of(position_loop(6, 20), 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1.5, model::MoveMinimumJerk{0.2}}}};
  const simulation::System system(scenario);
  simulation::Control control(system);
  const simulation::Sensing sensing(system);
  simulation::Stage stage(system);
  simulation::State state = simulation::start_state(system);
  stage.look(state);
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
