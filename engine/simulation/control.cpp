#include "simulation/control.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "model/overloaded.h"

namespace sinewright::simulation {

namespace {

constexpr double band = 0.05;         // of a move: within it counts as settled
constexpr double least_move = 1e-6;   // [rad]
constexpr double kDegree = 180 / std::numbers::pi;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

bool for_controller(const model::Command& command) {
  return std::visit(overloaded{[](const model::SetPosition&) { return true; }, [](const model::SetSpeed&) { return true; },
                               [](const model::SetCurrent&) { return true; }, [](const model::SetRecorded&) { return true; },
                               [](const auto&) { return false; }},
                    command);
}

std::string asked_of_controller(const model::Command& command) {
  return std::visit(
      overloaded{[](const model::SetPosition& p) {
                   const std::string to = fmt::format("shaft to {:.6g} deg", p.angle * kDegree);
                   if (const auto* jerk = std::get_if<model::MoveMinimumJerk>(&p.move)) return to + fmt::format(" in {:g} s", jerk->time);
                   if (const auto* t = std::get_if<model::MoveTrapezoid>(&p.move)) return to + fmt::format(" at {:.6g} deg/s", t->speed * kDegree);
                   return to;
                 },
                 [](const model::SetSpeed& s) { return fmt::format("shaft at {:.6g} deg/s", s.speed * kDegree); },
                 [](const model::SetCurrent& c) { return fmt::format("current {:g} A", c.current); },
                 [](const model::SetRecorded& r) { return fmt::format("shaft along {}", r.file); },
                 [](const auto&) { return std::string(); }},
      command);
}

Control::Control(const System& system) : system_(system), units_(system.shafts.size()) {
  for (const model::Controller& controller : system.scenario.controllers) units_[at(controller.drive)].controller = &controller;
}

void Control::take(std::size_t drive, const model::Command& command, double time) {
  Unit& unit = units_[drive];
  if (!unit.acting && !unit.waiting) unit.next = static_cast<long>(std::ceil((time - same_instant) / unit.controller->period));
  unit.waiting = &command;
}

void Control::leave(std::size_t drive) {
  Unit& unit = units_[drive];
  if (!unit.controller) return;
  close(unit);
  unit.waiting = unit.acting = nullptr;
  unit.course.reset();
  unit.memory = {};
  unit.readout.loop = drive::Goal::Kind::none;
  unit.readout.out = {};
}

double Control::next_sample() const {
  double next = std::numeric_limits<double>::infinity();
  for (const Unit& unit : units_)
    if (unit.acting || unit.waiting) next = std::min(next, static_cast<double>(unit.next) * unit.controller->period);
  return next;
}

drive::SetPoint Control::set_point(const Unit& unit, double time) const {
  const Course& course = *unit.course;
  if (const auto* recorded = std::get_if<model::SetRecorded>(course.command)) return drive::along(*recorded, time - course.begin);
  const auto& set = std::get<model::SetPosition>(*course.command);
  return drive::along(set.move, course.from, set.angle, time - course.begin);
}

// A move sets out from where the last one stands at this instant, else from the reading.
void Control::begin(Unit& unit, double time, double reading) {
  close(unit);
  const double from = unit.course ? set_point(unit, time).angle : reading;
  const bool was_position = unit.course.has_value(), was_current = unit.acting && std::holds_alternative<model::SetCurrent>(*unit.acting);
  unit.acting = unit.waiting;
  unit.waiting = nullptr;
  unit.course.reset();
  if (std::holds_alternative<model::SetPosition>(*unit.acting) || std::holds_alternative<model::SetRecorded>(*unit.acting)) {
    unit.course = Course{time, from, unit.acting};
  }
  // What the integrals of loops learnt that now begin or cease to act is no longer true.
  if (was_position != unit.course.has_value()) unit.memory.position_part = unit.memory.derivative = 0;
  if (was_current || std::holds_alternative<model::SetCurrent>(*unit.acting)) unit.memory.speed_part = 0;
  if (const auto* set = std::get_if<model::SetPosition>(unit.acting); set && std::abs(set->angle - from) > least_move)
    unit.move = Move{time, from, set->angle, time, 0, time};
}

void Control::close(Unit& unit) {
  if (!unit.move) return;
  ControlMeasures& m = unit.measures;
  const double settling = unit.move->last_off > 0 ? std::numeric_limits<double>::quiet_NaN() : unit.move->outside - unit.move->begin;
  m.settling = std::isnan(settling) || std::isnan(m.settling) ? std::numeric_limits<double>::quiet_NaN() : std::max(m.settling, settling);
  unit.move.reset();
}

void Control::sample(const Stage& stage, const State& state, const Sensing& sensing, std::vector<DriveCommand>& commands) {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    Unit& unit = units_[d];
    if (!unit.acting && !unit.waiting) continue;
    const model::Controller& controller = *unit.controller;
    const double time = static_cast<double>(unit.next) * controller.period;
    if (time > state.time + same_instant) continue;
    ++unit.next;
    const model::Drive& drive = system_.model().drives[d];
    const drive::Seen seen{drive.sensor ? sensing.angles()[d].sample.reading : state.q[system_.shafts[d].q_output],
                           drive.current_sense ? sensing.currents()[d].sample.reading : stage.shaft[d].electric.current};
    if (unit.waiting) begin(unit, time, seen.angle);

    drive::Goal goal;
    if (unit.course) {
      goal.kind = drive::Goal::Kind::position;
      goal.position = set_point(unit, time);
    } else if (const auto* speed = std::get_if<model::SetSpeed>(unit.acting)) {
      goal.kind = drive::Goal::Kind::speed;
      goal.speed = speed->speed;
    } else {
      goal.kind = drive::Goal::Kind::current;
      goal.current = std::get<model::SetCurrent>(*unit.acting).current;
    }
    const auto& loops = std::get<model::Loops>(controller.program);
    const drive::CascadeOutput out = drive::step(loops, controller.period, controller.voltage_limit, goal, seen, unit.memory);
    unit.readout = {goal.kind, time, unit.course ? goal.position.angle : seen.angle, seen, unit.memory.speed, out};
    DriveCommand& command = commands[d];
    command.kind = DriveCommand::Kind::voltage;
    command.voltage = out.voltage;
    command.rise_time = 0;
    command.rise_begin = time;
  }
}

void Control::look(const State& state, double step) {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    Unit& unit = units_[d];
    if (!unit.course) continue;
    const double angle = state.q[system_.shafts[d].q_output];
    unit.measures.tracking.add(angle - set_point(unit, state.time).angle, step);
    if (!unit.move) continue;
    Move& move = *unit.move;
    const double way = move.to - move.from;
    const double off = std::abs(angle - move.to) - band * std::abs(way);
    // The entry lies on the straight line between the two looks.
    if (off > 0)
      move.outside = state.time;
    else if (move.last_off > 0)
      move.outside = move.last_time + move.last_off / (move.last_off - off) * (state.time - move.last_time);
    move.last_off = off;
    move.last_time = state.time;
    unit.measures.overshoot = std::max(unit.measures.overshoot, (angle - move.to) / way);
    unit.measures.moved = true;
  }
}

ControlMeasures Control::measures(std::size_t drive) const {
  Unit unit = units_[drive];
  close(unit);
  return unit.measures;
}

void Control::add_to(std::vector<SummaryValue>& summary) const {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    if (!has(d)) continue;
    const std::string& name = system_.model().drives[d].name;
    const ControlMeasures m = measures(d);
    const double never = std::numeric_limits<double>::quiet_NaN();
    summary.push_back({"control_settling." + name, m.moved ? m.settling : never, "s",
                       "longest time from the start of a move to the last entry of the shaft into 5 % of it round its end"});
    summary.push_back({"control_overshoot." + name, m.moved ? m.overshoot : never, "1", "how far the shaft went beyond the end of a move, as a share of it"});
    summary.push_back({"tracking_error." + name, m.tracking.worst, "rad", "largest difference of the shaft angle from the set point"});
    summary.push_back({"tracking_error_rms." + name, m.tracking.rms(), "rad", "root mean square difference of the shaft angle from the set point"});
  }
}

}  // namespace sinewright::simulation
