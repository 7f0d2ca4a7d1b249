#pragma once

#include <map>
#include <span>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "parts.h"
#include "simulation/observe.h"
#include "simulation/run.h"

/// Controlled shafts and fingers for tests, and what can be seen of their runs.
namespace sinewright::controlled {

using model::Vector3d;

// A shaft that turns nothing but itself: J φ'' = n k (u − k n φ')/R.
inline model::Scenario bare_shaft() {
  model::Scenario scenario;
  scenario.gravity.setZero();
  scenario.model.supplies = {parts::supply(6)};
  scenario.model.bodies = {parts::fixed_body("knuckle")};
  auto drive = parts::plain_drive(30);
  drive.motor.rotor_inertia = 1e-6;
  scenario.model.drives = {drive};
  scenario.duration = 0.5;
  return scenario;
}

inline double gain_of(const model::Drive& drive) { return drive.gearhead.ratio * drive.motor.torque_constant; }
inline double inertia_of(const model::Drive& drive) {
  return drive.gearhead.ratio * drive.gearhead.ratio * drive.motor.rotor_inertia + drive.gearhead.output_inertia;
}

inline model::Controller controller_of(const model::Loops& loops, double period) {
  model::Controller controller;
  controller.drive = 0;
  controller.period = period;
  controller.voltage_limit = 6;
  controller.program = loops;
  return controller;
}

inline model::Loops position_loop(double gain, double integral = 0, double derivative = 0) {
  model::Loops loops;
  loops.position = model::Loop{gain, integral, derivative, 0, model::no_limit};
  return loops;
}

// A finger with springs at two joints, a cord and a motor.
inline model::Scenario finger() {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {parts::stiff_line(12000, 1e-3)};
  auto drive = parts::plain_drive(100, 5e-3);
  drive.motor.viscous_drag = 1e-6;
  m.drives = {drive};
  m.bodies = {parts::fixed_body("knuckle")};
  for (std::size_t i = 0; i < 2; ++i) {
    auto body = parts::rod(i == 0 ? "proximal" : "distal", static_cast<int>(i), Vector3d(i == 0 ? 0 : 0.045, 0, 0), 0.01, i == 0 ? 0.045 : 0.03);
    body.hinge->viscous = 2e-4;
    body.hinge->spring_stiffness = i == 0 ? 0.03 : 0.02;
    m.bodies.push_back(body);
  }
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = parts::constant_arm_path({8e-3, 5e-3}, {0.045, 0.03});
  m.cords = {cord};
  scenario.duration = 0.6;
  return scenario;
}

inline model::Sensor encoder(int bits) {
  model::Sensor sensor;
  model::AbsoluteEncoder kind;
  kind.bits = bits;
  kind.at_zero = 1;
  sensor.kind = kind;
  sensor.period = 1e-3;
  return sensor;
}

struct Seen {
  std::vector<double> time, shaft, voltage;  // at every accepted step
  std::map<std::string, std::vector<double>> first;
  simulation::RunResult result;
};

inline Seen run(const model::Scenario& scenario) {
  const simulation::System system(scenario);
  Seen seen;
  const auto channels = simulation::channels(system);
  simulation::RunListener listener;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    seen.time.push_back(state.time);
    seen.shaft.push_back(state.q[system.shafts[0].q_output]);
    seen.voltage.push_back(stage.shaft[0].electric.motor_voltage);
    return false;
  };
  listener.row = [&](double, std::span<const double> row) {
    std::size_t at = 0;
    for (const auto& channel : channels) {
      if (at >= row.size()) FAIL("a row is shorter than its channels say");
      seen.first[channel.path].push_back(row[at]);
      at += static_cast<std::size_t>(channel.width());
    }
    if (at != row.size()) FAIL("a row is longer than its channels say");
  };
  seen.result = simulation::run(system, listener);
  REQUIRE(seen.result.complete);
  return seen;
}

inline double number(const Seen& seen, const std::string& key) {
  for (const auto& value : seen.result.summary)
    if (value.key == key) return value.value;
  FAIL("no " << key);
  return 0;
}

}  // namespace sinewright::controlled
