#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "../simulation/parts.h"
#include "check.h"
#include "simulation/run.h"

using namespace sinewright;
using sinewright::external::check_relative;

namespace {

struct Response {
  double overshoot = 0, peak_time = 0, undershoot = 0;
};

// A motor that turns nothing but its rotor, under a proportional position loop whose samples follow so fast that it counts as
// continuous: τ φ'' + φ' = K (target − φ)/(k n), so 2 ζ ω = 1/τ and ω² = K/(k n τ).
Response step_response(double damping) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  scenario.model.supplies = {parts::supply(1e4)};
  scenario.model.bodies = {parts::fixed_body("knuckle")};
  model::Drive drive = parts::plain_drive(30);
  drive.motor.rotor_inertia = 1e-6;
  scenario.model.drives = {drive};
  const double kn = drive.gearhead.ratio * drive.motor.torque_constant;
  const double inertia = drive.gearhead.ratio * drive.gearhead.ratio * drive.motor.rotor_inertia + drive.gearhead.output_inertia;
  const double tau = inertia * drive.motor.resistance / (kn * kn), frequency = 1 / (2 * damping * tau);
  model::Controller controller;
  controller.drive = 0;
  controller.period = 2e-4 / frequency;
  controller.voltage_limit = 1e4;
  model::Loops loops;
  loops.position = model::Loop{frequency * frequency * tau * kn, 0, 0, 0, model::no_limit};
  controller.program = loops;
  scenario.controllers = {controller};
  scenario.timeline = {{0.0, 0, model::SetPosition{1, model::MoveStep{}}}};
  scenario.duration = 8 / frequency;
  scenario.solver.tolerance = 1e-6;
  const simulation::System system(scenario);
  Response found;
  double highest = 0;
  simulation::RunListener listener;
  listener.step = [&](const simulation::Stage&, const simulation::State& state) {
    const double x = state.q[system.shafts[0].q_output];
    if (x > highest) {
      highest = x;
      found.peak_time = state.time * frequency;
    }
    found.undershoot = x > 1 || found.peak_time < state.time * frequency ? std::min(found.undershoot, x - 1) : 0;
    return false;
  };
  REQUIRE(simulation::run(system, listener).complete);
  found.overshoot = highest - 1;
  return found;
}

}  // namespace

TEST_CASE("control: step response of a motor's position loop", "[external][control]") {
  // The hold and the sample make half a period of delay: ζ falls by ω T/4 = 5e-5, the overshoot rises by a few parts in 10,000.
  const std::string source = "second-order step response, textbook on control (from memory)";
  for (const double damping : {0.3, 0.6}) {
    const Response found = step_response(damping);
    const double damped = std::sqrt(1 - damping * damping);
    const std::string with = damping == 0.3 ? ", damping 0.3" : ", damping 0.6";
    check_relative("overshoot" + with, "1", found.overshoot, std::exp(-std::numbers::pi * damping / damped), {source, 1e-3});
    check_relative("time of the peak × natural frequency" + with, "1", found.peak_time, std::numbers::pi / damped, {source, 1e-3});
    check_relative("swing back" + with, "1", -found.undershoot, std::exp(-2 * std::numbers::pi * damping / damped), {source, 2e-3});
  }
}

TEST_CASE("control: trip time of a heat guard against the thermal step response", "[external][control]") {
  // A jammed shaft at the driver's current limit: constant heat P into the winding, from the first sample on.
  model::Scenario scenario;
  scenario.gravity.setZero();
  scenario.model.supplies = {parts::supply(6)};
  scenario.model.bodies = {parts::fixed_body("knuckle")};
  model::Drive drive = parts::plain_drive();
  model::Motor& motor = drive.motor;
  motor.static_drag = motor.kinetic_drag = 1;
  motor.winding_to_housing = 20;
  motor.housing_to_ambient = 60;
  motor.winding_capacity = 0.1;
  motor.housing_capacity = 0.8;
  drive.current_limit = 0.8;
  scenario.model.drives = {drive};
  model::Controller controller;
  controller.drive = 0;
  controller.period = 1e-3;
  controller.voltage_limit = 6;
  model::Loops loops;
  loops.position = model::Loop{100, 0, 0, 0, model::no_limit};
  controller.program = loops;
  controller.heat = model::HeatGuard{scenario.ambient + 10, scenario.ambient};
  scenario.controllers = {controller};
  scenario.timeline = {{0.0, 0, model::SetPosition{1, model::MoveStep{}}}};
  scenario.duration = 10;
  scenario.record_interval = 1;
  double tripped = 0;
  for (const auto& value : simulation::run(simulation::System(scenario)).summary)
    if (value.key == "trip_time.flexor") tripped = value.value;

  const double g1 = 1 / motor.winding_to_housing, g2 = 1 / motor.housing_to_ambient, cw = motor.winding_capacity, ch = motor.housing_capacity;
  const double sum = g1 / cw + (g1 + g2) / ch, product = g1 * g2 / (cw * ch), root = std::sqrt(sum * sum / 4 - product);
  const double fast = sum / 2 + root, slow = sum / 2 - root;
  const double heat = drive.current_limit * drive.current_limit * motor.resistance, steady = heat * (1 / g1 + 1 / g2);
  const double of_fast = (heat / cw - steady * slow) / (fast - slow), of_slow = steady - of_fast;
  const auto rise = [&](double t) { return steady - of_fast * std::exp(-fast * t) - of_slow * std::exp(-slow * t); };
  double low = 0, high = 10;
  for (int i = 0; i < 60; ++i) (rise(0.5 * (low + high)) < 10 ? low : high) = 0.5 * (low + high);
  // The reading of the first sample is from before the current; the guard looks once a sample: two samples of 1 ms at most.
  check_relative("time to a rise of 10 K", "s", tripped, low, {"two-node thermal network at constant heat, textbook", 2.1e-3 / low});
}
