#include "simulation/run.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "simulation/control.h"
#include "simulation/events.h"
#include "simulation/faults.h"
#include "simulation/observe.h"
#include "simulation/sensor_watch.h"
#include "simulation/summary.h"

namespace sinewright::simulation {

namespace {

// Instants at which something outside changes at once or bends: steps end there exactly.
std::vector<double> breakpoints(const model::Scenario& scenario, std::vector<double> times) {
  for (const auto& entry : scenario.timeline) {
    times.push_back(entry.time);
    if (const auto* voltage = std::get_if<model::CommandVoltage>(&entry.command)) times.push_back(entry.time + voltage->over);
  }
  for (const auto& load : scenario.loads) times.insert(times.end(), load.force.time.begin(), load.force.time.end());
  for (const auto& twist : scenario.twists) times.insert(times.end(), twist.torque.time.begin(), twist.torque.time.end());
  for (const auto& object : scenario.objects)
    if (const auto* path = std::get_if<model::HeldOnPath>(&object.hold))
      times.insert(times.end(), path->time.begin(), path->time.end());
  times.push_back(scenario.duration);
  std::sort(times.begin(), times.end());
  times.erase(std::unique(times.begin(), times.end()), times.end());
  times.erase(std::remove_if(times.begin(), times.end(), [&](double t) { return t <= 0 || t > scenario.duration; }),
              times.end());
  return times;
}

std::string apply(const model::Command& command, double time, DriveCommand& drive) {
  if (const auto* voltage = std::get_if<model::CommandVoltage>(&command)) {
    drive.rise_from = drive.kind == DriveCommand::Kind::voltage ? voltage_at(drive, time) : 0;
    drive.rise_begin = time;
    drive.rise_time = voltage->over;
    drive.kind = DriveCommand::Kind::voltage;
    drive.voltage = voltage->voltage;
    if (voltage->over > 0) return fmt::format("voltage {:g} V over {:g} s", voltage->voltage, voltage->over);
    return fmt::format("voltage {:g} V", voltage->voltage);
  }
  if (const auto* limit = std::get_if<model::CommandCurrentLimit>(&command)) {
    drive.current_limit = limit->current;
    return fmt::format("current limit {:g} A", limit->current);
  }
  if (const auto* angle = std::get_if<model::CommandAngle>(&command)) {
    drive.kind = DriveCommand::Kind::angle;
    drive.angle = *angle;
    return fmt::format("shaft angle {:g} rad", angle->angle);
  }
  if (for_controller(command)) return asked_of_controller(command);
  drive.kind = DriveCommand::Kind::off;
  drive.leads = std::get<model::CommandOff>(command).leads;
  return drive.leads == model::Leads::open ? "power off, leads open" : "power off, leads shorted";
}

}  // namespace

RunResult run(const System& system, const RunListener& listener) {
  const model::Scenario& scenario = system.scenario;
  RunResult result;
  Stepper stepper(system);
  Stage first_look(system);
  SummaryBuilder summary(system);
  EventWatch watch(system);
  SensorWatch sensors(system);
  Control control(system);
  Faults faults(system);
  SafetyWatch safety(system);
  State& state = result.end;
  state = start_state(system);
  const State start = state;

  std::vector<DriveCommand> commands(system.shafts.size());
  for (std::size_t d = 0; d < commands.size(); ++d) commands[d].current_limit = system.model().drives[d].current_limit;
  std::vector<bool> off(commands.size(), true), without_power = off;
  std::size_t next_entry = 0;

  Totals totals;
  totals.energy = Ledger::Zero(system.ledger_size);
  for (const CordSystem& cord : system.cords) totals.passed.emplace_back(static_cast<std::size_t>(cord.path.node_count()));
  totals.sensors = &sensors;
  totals.control = &control;
  std::vector<double> row;

  // Material that has passed a node, from what stands before it now and at the start.
  const auto count_passed = [&] {
    for (std::size_t c = 0; c < system.cords.size(); ++c) {
      double wound = 0, sum = 0;
      for (std::size_t s = 0; s < state.cords[c].material.size(); ++s)
        wound += start.cords[c].material[s] - state.cords[c].material[s];
      for (std::size_t k = 0; k < totals.passed[c].size(); ++k) {
        sum += state.cords[c].material[k] - start.cords[c].material[k];
        totals.passed[c][k] = sum + wound;
      }
    }
  };
  const auto emit_events = [&](std::size_t from) {
    if (listener.event)
      for (std::size_t i = from; i < result.events.size(); ++i) listener.event(result.events[i]);
  };
  const auto enough = [&](const Stage& stage) {
    if (listener.step && listener.step(stage, state)) result.cut_short = true;
    return result.cut_short;
  };
  const auto record = [&](const Stage& stage) {
    if (!listener.row) return;
    count_passed();
    observe(system, stage, state, totals, row);
    listener.row(state.time, row);
  };

  first_look.look(state);
  totals.stored_at_start = first_look.stored_energy();
  watch.begin(first_look, state);
  sensors.begin(first_look, state);
  control.introduce(result.events);
  summary.sample(first_look, state, totals, off);
  record(first_look);
  emit_events(0);
  enough(first_look);
  double recorded_at = 0;
  const auto looked_at = [&]() -> const Stage& { return state.time > 0 ? stepper.stage() : first_look; };

  result.outcome = "complete";
  result.complete = true;
  try {
    for (const double breakpoint : breakpoints(scenario, faults.instants())) {
      while (state.time < breakpoint && !result.cut_short) {
        const std::size_t known = result.events.size();
        if (faults.strike(looked_at(), state, stepper, sensors.sensing(), totals.energy, result.events)) stepper.restart();
        while (next_entry < scenario.timeline.size() && scenario.timeline[next_entry].time <= state.time) {
          const model::TimelineEntry& entry = scenario.timeline[next_entry++];
          const auto d = static_cast<std::size_t>(entry.drive);
          result.events.push_back({state.time, "command", system.model().drives[d].name, apply(entry.command, entry.time, commands[d])});
          if (for_controller(entry.command)) {
            control.take(d, entry.command, state.time);
            off[d] = false;
          } else if (!std::holds_alternative<model::CommandCurrentLimit>(entry.command)) {
            control.leave(d, commands[d]);
            off[d] = commands[d].kind == DriveCommand::Kind::off;
          } else {
            control.set_limit(d, commands[d]);
          }
          stepper.restart();
        }
        control.sample(looked_at(), state, sensors.sensing(), commands, result.events);
        // A sample and a breakpoint that differ by rounding are one instant.
        const double next = control.next_sample();
        const double until = next < breakpoint - same_instant ? next : breakpoint;
        const StepReport& step = stepper.step(state, commands, until);
        totals.energy += step.energy;
        totals.step = step.step;
        watch.look(stepper.stage(), state, result.events);
        for (std::size_t d = 0; d < off.size(); ++d) without_power[d] = off[d] || control.down(d);
        sensors.look(stepper.stage(), state, without_power);
        control.look(stepper.stage(), state, step.step);
        safety.look(stepper.stage(), state);
        emit_events(known);
        summary.sample(stepper.stage(), state, totals, without_power);
        const bool last = enough(stepper.stage());
        const bool due = last || state.time - recorded_at >= scenario.record_interval * (1 - 1e-9);
        if (due || state.time >= breakpoint || result.events.size() > known) {
          record(stepper.stage());
          recorded_at = state.time;
        }
        if (listener.progress) listener.progress(state.time);
      }
    }
  } catch (const SimulationError& error) {
    result.complete = false;
    result.outcome = error.what();
  }
  result.counters = stepper.counters();
  result.iterations = stepper.iterations();
  result.summary = summary.finish();
  sensors.add_to(result.summary);
  control.add_to(result.summary);
  safety.add_to(result.summary);
  if (listener.summary) listener.summary(result.summary);
  result.verdicts = judge(scenario.requirements, result.summary);
  return result;
}

}  // namespace sinewright::simulation
