#include "simulation/control.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "drive/force_by_current.h"
#include "model/overloaded.h"
#include "quantity/invalid_input.h"
#include "simulation/stepper.h"

namespace sinewright::simulation {

namespace {

constexpr double band = 0.05;         // of a move: within it counts as settled
constexpr double least_move = 1e-6;   // [rad]
constexpr double kDegree = 180 / std::numbers::pi;

// Of two current limits, of which 0 stands for none.
double lower_limit(double a, double b) { return a == 0 ? b : b == 0 ? a : std::min(a, b); }

std::size_t at(int index) { return static_cast<std::size_t>(index); }

std::int32_t count_of(double count) {
  return static_cast<std::int32_t>(std::clamp(count, static_cast<double>(std::numeric_limits<std::int32_t>::min()),
                                              static_cast<double>(std::numeric_limits<std::int32_t>::max())));
}

// What firmware sees when nothing is asked of it yet: all but the request.
sinewright_inputs pins_of(const model::Drive& drive, const AngleReadout& angle, const CurrentReadout& current, const drive::Seen& seen, double supply_voltage) {
  sinewright_inputs pins{};
  pins.has_angle = drive.sensor.has_value();
  pins.has_current = drive.current_sense.has_value();
  if (drive.sensor) pins.angle_count = count_of(angle.sample.count);
  if (drive.current_sense) pins.current_count = count_of(current.sample.count);
  pins.angle = seen.angle;
  pins.current = seen.current;
  pins.supply_voltage = supply_voltage;
  return pins;
}

}  // namespace

bool for_controller(const model::Command& command) {
  return std::visit(overloaded{[](const model::SetPosition&) { return true; }, [](const model::SetSpeed&) { return true; },
                               [](const model::SetCurrent&) { return true; }, [](const model::SetRecorded&) { return true; },
                               [](const model::AskHold&) { return true; }, [](const model::SetForce&) { return true; },
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
                 [](const model::SetForce& f) { return fmt::format("force {:g} N", f.force); },
                 [](const model::AskHold& h) { return std::string(h.grasp ? "grasp and hold" : "open"); },
                 [](const model::SetRecorded& r) { return fmt::format("shaft along {}", r.file); },
                 [](const auto&) { return std::string(); }},
      command);
}

Control::Control(const System& system) : system_(system), units_(system.shafts.size()) {
  for (const model::Controller& controller : system.scenario.controllers) {
    Unit& unit = units_[at(controller.drive)];
    unit.controller = &controller;
    const model::Drive& drive = system.model().drives[at(controller.drive)];
    if (controller.heat && !drive::has_thermal_network(drive.motor))
      throw InvalidInput(fmt::format("drive '{}': its heat guard needs the thermal resistances and capacities of its motor", drive.name));
    unit.driver_limit = drive.current_limit;
    if (const auto* own = std::get_if<model::OwnFirmware>(&controller.program)) {
      unit.own = std::make_unique<drive::Firmware>(*own, controller.period, controller.voltage_limit, system.model().supplies[at(drive.supply)].voltage);
      unit.own->power_on();  // what it refuses is said before the run
    }
    for (std::size_t c = 0; c < system.cords.size(); ++c)
      if (system.cords[c].drive == controller.drive) unit.cord = static_cast<int>(c);
    unit.guard = drive::begin_guard(controller);
    unit.readout.winding_estimate = unit.guard.estimate.winding;
  }
}

void Control::introduce(std::vector<Event>& events) const {
  for (const Unit& unit : units_)
    if (unit.own) events.push_back({0, "control", system_.model().drives[at(unit.controller->drive)].name, "runs the firmware " + unit.own->description()});
}

// A request wakes a routine that looks only now and then.
void Control::take(std::size_t drive, const model::Command& command, double time) {
  Unit& unit = units_[drive];
  unit.next = std::max(static_cast<long>(std::ceil((time - same_instant) / unit.controller->period)), unit.last + 1);
  unit.waiting = &command;
}

void Control::forget(Unit& unit) {
  close(unit);
  unit.waiting = unit.acting = nullptr;
  unit.course.reset();
  unit.speed = {};
  unit.memory = {};
  unit.hold = {};
  unit.homing = {};
  unit.own_is_on = false;
  unit.guard.current = 0;
  unit.guard.stalled_since = -1;
  unit.readout.loop = drive::Goal::Kind::none;
  unit.readout.out = {};
  unit.readout.phase = unit.hold.phase;
  unit.readout.current_limit = 0;
  unit.readout.driver = SINEWRIGHT_LEADS_OPEN;
  unit.readout.told = {};
  unit.readout.tripped = drive::Trip::none;
  unit.readout.tension = unit.readout.offset = 0;
  unit.readout.down = false;
}

void Control::leave(std::size_t drive, DriveCommand& command) {
  Unit& unit = units_[drive];
  if (!unit.controller) return;
  forget(unit);
  command.current_limit = unit.driver_limit;
}

// What it was asked last it will be asked again, when it is back; all else is gone, the estimate of its winding too.
void Control::brown_out(Unit& unit, double time, double voltage, DriveCommand& command, std::vector<Event>& events) {
  events.push_back({time, "control", system_.model().drives[at(unit.controller->drive)].name, fmt::format("browns out at {:.3g} V", voltage)});
  const model::Command* asked = unit.waiting ? unit.waiting : unit.acting;
  forget(unit);
  unit.guard = drive::begin_guard(*unit.controller);
  unit.guard.time = time;
  unit.readout.winding_estimate = unit.guard.estimate.winding;
  unit.waiting = asked;
  unit.readout.down = true;
  unit.back_since = not_yet;
  unit.next = std::max(static_cast<long>(std::ceil((time - same_instant) / unit.controller->period)), unit.last + 1);
  command.kind = DriveCommand::Kind::off;
  command.leads = model::Leads::open;
  command.current_limit = unit.driver_limit;
}

bool Control::starts_again(Unit& unit, double time, double voltage, std::vector<Event>& events) {
  if (voltage < unit.controller->brown_out) unit.back_since = not_yet;
  else if (std::isnan(unit.back_since)) unit.back_since = time;
  if (std::isnan(unit.back_since) || time - unit.back_since < unit.controller->boot_time - same_instant) return false;
  unit.readout.down = false;
  events.push_back({time, "control", system_.model().drives[at(unit.controller->drive)].name, "starts again"});
  return true;
}

bool Control::seeks_zero(Unit& unit, const model::Drive& drive, double time, drive::Seen& seen, DriveCommand& command, std::vector<Event>& events) {
  const auto* loops = std::get_if<model::Loops>(&unit.controller->program);
  if (!loops || !loops->homing) return false;
  if (unit.homing.phase != drive::HomingPhase::found && unit.waiting) {
    const drive::HomingPhase before = unit.homing.phase;
    const bool first = unit.homing.began < 0;
    const double voltage = drive::step(*loops->homing, time, seen, unit.speed.filtered, unit.homing);
    const auto tell = [&](std::string detail) { events.push_back({time, "control", drive.name, std::move(detail)}); };
    if (first && unit.homing.phase == drive::HomingPhase::pays_out) tell("looks for its zero: pays out");
    if ((first || unit.homing.phase != before) && unit.homing.phase == drive::HomingPhase::winds) tell("looks for its zero: winds");
    if (unit.homing.phase == drive::HomingPhase::gave_up) {
      switch_off(unit, drive.name, time, drive::Trip::no_zero, command, events);
      return true;
    }
    unit.readout.time = time;
    unit.readout.seen = seen;
    unit.readout.speed = unit.speed.filtered;
    if (unit.homing.phase != drive::HomingPhase::found) {
      unit.readout.set_point = seen.angle;
      unit.readout.out = {};
      unit.readout.out.voltage = std::clamp(voltage, -unit.controller->voltage_limit, unit.controller->voltage_limit);
      command.kind = DriveCommand::Kind::voltage;
      command.voltage = unit.readout.out.voltage;
      command.rise_time = 0;
      command.rise_begin = time;
      const drive::Trip trip = drive::step(*unit.controller, drive.motor, time, seen, unit.speed.filtered, unit.guard);
      unit.readout.winding_estimate = unit.guard.estimate.winding;
      if (trip != drive::Trip::none) switch_off(unit, drive.name, time, trip, command, events);
      return true;
    }
    tell(fmt::format("takes its shaft to stand at {:.4g} deg", loops->homing->angle * kDegree));
    unit.readout.offset = unit.homing.offset;
  }
  if (unit.homing.phase == drive::HomingPhase::found) seen.angle += unit.homing.offset;
  return false;
}

void Control::set_limit(std::size_t drive, DriveCommand& command) {
  Unit& unit = units_[drive];
  if (!unit.controller) return;
  unit.driver_limit = command.current_limit;
  command.current_limit = lower_limit(unit.driver_limit, unit.readout.current_limit);
}

bool Control::samples(const Unit& unit) { return unit.acting || unit.waiting || unit.readout.down || unit.readout.tripped != drive::Trip::none; }

double Control::next_sample() const {
  double next = std::numeric_limits<double>::infinity();
  for (const Unit& unit : units_)
    if (samples(unit)) next = std::min(next, static_cast<double>(unit.next) * unit.controller->period);
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
  const auto by_current = [](const model::Command* command) {
    return command && (std::holds_alternative<model::SetCurrent>(*command) || std::holds_alternative<model::SetForce>(*command));
  };
  const bool was_position = unit.course.has_value(), was_current = by_current(unit.acting);
  const auto* last_force = unit.acting ? std::get_if<model::SetForce>(unit.acting) : nullptr;
  if (const auto* force = std::get_if<model::SetForce>(unit.waiting)) unit.raises = force->force >= (last_force ? last_force->force : 0);
  unit.acting = unit.waiting;
  unit.waiting = nullptr;
  unit.course.reset();
  if (const auto* ask = std::get_if<model::AskHold>(unit.acting); ask && unit.readout.tripped != drive::Trip::none)
    unit.hold.phase = ask->grasp ? drive::HoldPhase::open : drive::HoldPhase::holding;  // from where it sets out anew
  unit.readout.tripped = drive::Trip::none;
  unit.guard.stalled_since = -1;
  ++unit.requests;
  if (std::holds_alternative<model::SetPosition>(*unit.acting) || std::holds_alternative<model::SetRecorded>(*unit.acting)) {
    unit.course = Course{time, from, unit.acting};
  }
  // What the integrals of loops learnt that now begin or cease to act is no longer true.
  if (was_position != unit.course.has_value()) unit.memory.position_part = unit.memory.derivative = 0;
  if (was_current || by_current(unit.acting)) unit.memory.speed_part = 0;
  if (const auto* set = std::get_if<model::SetPosition>(unit.acting); set && std::abs(set->angle - from) > least_move)
    unit.move = Move{time, from, set->angle, time, 0, time};
}

void Control::close(const Move& move, ControlMeasures& m) {
  const double settling = move.last_off > 0 ? not_yet : move.outside - move.begin;
  m.settling = std::isnan(settling) || std::isnan(m.settling) ? not_yet : std::max(m.settling, settling);
}

void Control::close(Unit& unit) {
  if (unit.move) close(*unit.move, unit.measures);
  unit.move.reset();
  if (!std::isnan(unit.tension_error)) unit.measures.tension_off = std::max(unit.measures.tension_off, std::abs(unit.tension_error));
  unit.tension_error = not_yet;
}

void Control::run_loops(Unit& unit, double time, const drive::Seen& seen, DriveCommand& command) {
  drive::Goal goal;
  if (unit.course) {
    goal.kind = drive::Goal::Kind::position;
    goal.position = set_point(unit, time);
  } else if (const auto* speed = std::get_if<model::SetSpeed>(unit.acting)) {
    goal.kind = drive::Goal::Kind::speed;
    goal.speed = speed->speed;
  } else if (const auto* current = std::get_if<model::SetCurrent>(unit.acting)) {
    goal.kind = drive::Goal::Kind::current;
    goal.current = current->current;
  } else {
    const model::ForceByCurrent& known = *std::get<model::Loops>(unit.controller->program).force;
    unit.readout.tension = drive::wanted_tension(known, std::get<model::SetForce>(*unit.acting).force, seen.angle);
    goal.kind = drive::Goal::Kind::force;
    goal.current = drive::current_for(known, unit.readout.tension, unit.raises);
  }
  const model::Controller& controller = *unit.controller;
  unit.readout.out = drive::step(std::get<model::Loops>(controller.program), controller.period, controller.voltage_limit, goal, seen, unit.speed, unit.memory);
  unit.readout.loop = goal.kind;
  if (unit.course) unit.readout.set_point = goal.position.angle;
  command.kind = DriveCommand::Kind::voltage;
  command.voltage = unit.readout.out.voltage;
}

// A duty is a share of what the supply gave at the sample; all of it is more than it can ever give, so that it stays all of it.
void Control::run_own(Unit& unit, double time, const sinewright_inputs& pins, DriveCommand& command) {
  if (!unit.own_is_on) {
    unit.own->power_on();
    unit.own_is_on = true;
    unit.own_began = unit.last;
    unit.requests = 1;
  }
  sinewright_inputs in = pins;
  in.sample = static_cast<std::uint32_t>(unit.last - unit.own_began);
  in.time = static_cast<double>(in.sample) * unit.controller->period;
  in.request = unit.requests;
  unit.readout.loop = drive::Goal::Kind::none;
  if (unit.course) {
    const drive::SetPoint point = set_point(unit, time);
    in.asked = SINEWRIGHT_ASKS_POSITION;
    in.set_point = unit.readout.set_point = point.angle;
    in.set_point_rate = point.speed;
    unit.readout.loop = drive::Goal::Kind::position;
  } else if (const auto* speed = std::get_if<model::SetSpeed>(unit.acting)) {
    in.asked = SINEWRIGHT_ASKS_SPEED;
    in.set_point = speed->speed;
    unit.readout.loop = drive::Goal::Kind::speed;
  } else if (const auto* current = std::get_if<model::SetCurrent>(unit.acting)) {
    in.asked = SINEWRIGHT_ASKS_CURRENT;
    in.set_point = current->current;
    unit.readout.loop = drive::Goal::Kind::current;
  } else if (const auto* force = std::get_if<model::SetForce>(unit.acting)) {
    in.asked = SINEWRIGHT_ASKS_FORCE;
    in.set_point = force->force;
    unit.readout.loop = drive::Goal::Kind::force;
  } else {
    in.asked = std::get<model::AskHold>(*unit.acting).grasp ? SINEWRIGHT_ASKS_GRASP : SINEWRIGHT_ASKS_RELEASE;
  }
  const sinewright_outputs out = unit.own->step(in);
  if (const std::string fault = drive::fault_of(out); !fault.empty())
    throw SimulationError(fmt::format("t = {:.6g} s: the firmware {} put out {}\n  likely causes: a division by 0, or an output that step does not set", time,
                                      unit.own->description(), fault));
  const double limit = unit.controller->voltage_limit;
  const double supply = std::abs(out.drive) >= 1 ? limit : pins.supply_voltage;
  const double voltage = out.mode == SINEWRIGHT_DRIVE_DUTY ? std::clamp(out.drive, -1.0, 1.0) * supply : out.mode == SINEWRIGHT_DRIVE_VOLTAGE ? out.drive : 0;
  unit.readout.driver = out.mode;
  std::copy(std::begin(out.told), std::end(out.told), unit.readout.told.begin());
  unit.readout.current_limit = out.current_limit;
  unit.readout.out = {};
  unit.readout.out.voltage = std::clamp(voltage, -limit, limit);
  command.kind = out.mode >= SINEWRIGHT_DRIVE_VOLTAGE ? DriveCommand::Kind::voltage : DriveCommand::Kind::off;
  command.leads = out.mode == SINEWRIGHT_LEADS_SHORTED ? model::Leads::shorted : model::Leads::open;
  command.voltage = unit.readout.out.voltage;
}

void Control::run_hold(Unit& unit, const std::string& name, double time, const drive::Seen& seen, DriveCommand& command, std::vector<Event>& events) {
  using drive::HoldPhase;
  const auto& routine = std::get<model::HoldRoutine>(unit.controller->program);
  const HoldPhase before = unit.hold.phase;
  const double reference = unit.hold.reference;
  const drive::HoldOutput out = drive::step(routine, time, std::get<model::AskHold>(*unit.acting).grasp, seen, unit.speed.filtered, unit.hold);
  const HoldPhase phase = unit.hold.phase;
  if (phase != before) {
    const auto tell = [&](std::string detail) { events.push_back({time, "control", name, std::move(detail)}); };
    switch (phase) {
      case HoldPhase::closing: tell("closes"); break;
      case HoldPhase::squeezing:
        if (before == HoldPhase::closing) tell("feels touch and squeezes");
        else tell(fmt::format("slipped back by {:.3g} deg and tightens", (reference - seen.angle) * kDegree));
        break;
      case HoldPhase::easing: tell("eases the current"); break;
      case HoldPhase::holding: tell(out.off ? std::string("holds without current") : fmt::format("holds with {:.3g} A", unit.hold.kept_current)); break;
      case HoldPhase::opening: tell("opens"); break;
      case HoldPhase::open: tell(seen.angle <= routine.open_to ? "is open" : "gives up opening: its time is over"); break;
    }
  }
  unit.readout.phase = phase;
  unit.readout.current_limit = out.off ? 0 : out.current_limit;
  unit.readout.out = {};
  unit.readout.out.voltage = std::clamp(out.voltage, -unit.controller->voltage_limit, unit.controller->voltage_limit);
  command.kind = out.off ? DriveCommand::Kind::off : DriveCommand::Kind::voltage;
  command.leads = routine.leads;
  command.voltage = unit.readout.out.voltage;
  // It sleeps while nothing is to be done but look.
  if (phase == HoldPhase::holding || phase == HoldPhase::open)
    unit.next = unit.last + std::max(1L, std::lround(routine.watch / unit.controller->period));
}

void Control::switch_off(Unit& unit, const std::string& name, double time, drive::Trip trip, DriveCommand& command, std::vector<Event>& events) {
  std::string why = "finds no zero";
  if (trip == drive::Trip::stall) why = fmt::format("stalled for {:g} s", unit.controller->stall->time);
  if (trip == drive::Trip::heat) why = fmt::format("winding at {:.4g} degC by its estimate", unit.guard.estimate.winding - 273.15);
  events.push_back({time, "control", name, "switches off: " + why});
  close(unit);
  if (std::isnan(unit.measures.tripped_at)) {
    unit.measures.tripped_at = time;
    unit.trip_began = std::isnan(unit.at_rest_since) ? time : unit.at_rest_since;
  }
  unit.acting = unit.waiting = nullptr;
  unit.course.reset();
  unit.memory = {};
  unit.own_is_on = false;
  unit.readout.tension = 0;
  unit.readout.driver = SINEWRIGHT_LEADS_OPEN;
  unit.readout.tripped = trip;
  unit.readout.loop = drive::Goal::Kind::none;
  unit.readout.out = {};
  unit.readout.current_limit = 0;
  command.kind = DriveCommand::Kind::off;
  command.leads = model::Leads::open;
  command.current_limit = unit.driver_limit;
}

void Control::sample(const Stage& stage, const State& state, const Sensing& sensing, std::vector<DriveCommand>& commands, std::vector<Event>& events) {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    Unit& unit = units_[d];
    if (!samples(unit)) continue;
    const model::Controller& controller = *unit.controller;
    const double terminals = stage.shaft[d].electric.supply_voltage;
    if (terminals < controller.brown_out && !unit.readout.down) brown_out(unit, state.time, terminals, commands[d], events);
    const double time = static_cast<double>(unit.next) * controller.period;
    if (time > state.time + same_instant) continue;
    unit.last = unit.next++;
    if (unit.readout.down && !starts_again(unit, time, terminals, events)) continue;
    const model::Drive& drive = system_.model().drives[d];
    if (drive.sensor && !sensing.angles()[d].fresh) continue;  // its power has only just come on: firmware waits for the first sample
    drive::Seen seen{drive.sensor ? sensing.angles()[d].sample.reading : state.q[system_.shafts[d].q_output],
                           drive.current_sense ? sensing.currents()[d].sample.reading : stage.shaft[d].electric.current};
    drive::take(unit.speed, time, seen.angle, controller.speed_filter);
    if (seeks_zero(unit, drive, time, seen, commands[d], events)) continue;
    if (unit.waiting) begin(unit, time, seen.angle);
    unit.readout.time = time;
    unit.readout.set_point = seen.angle;
    unit.readout.seen = seen;
    unit.readout.speed = unit.speed.filtered;
    const drive::Trip trip = drive::step(controller, drive.motor, time, seen, unit.speed.filtered, unit.guard);
    unit.readout.winding_estimate = unit.guard.estimate.winding;
    if (!unit.acting) continue;  // switched off: it goes on looking
    DriveCommand& command = commands[d];
    command.rise_time = 0;
    command.rise_begin = time;
    if (trip != drive::Trip::none) {
      switch_off(unit, drive.name, time, trip, command, events);
      continue;
    }
    if (std::holds_alternative<model::Loops>(controller.program)) {
      run_loops(unit, time, seen, command);
    } else if (unit.own) {
      run_own(unit, time, pins_of(drive, sensing.angles()[d], sensing.currents()[d], seen, stage.shaft[d].electric.supply_voltage), command);
    } else {
      run_hold(unit, drive.name, time, seen, command, events);
    }
    command.current_limit = lower_limit(unit.driver_limit, unit.readout.current_limit);
  }
}

void Control::look(const Stage& stage, const State& state, double step) {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    Unit& unit = units_[d];
    if (!unit.controller) continue;
    const Shaft& shaft = system_.shafts[d];
    const bool rests = state.v[shaft.v_output] == 0 || state.mode[at(shaft.row)] == solver::Mode::sticks;
    const bool carries = stage.shaft[d].electric.current != 0;
    if (!rests || !carries) unit.at_rest_since = not_yet;
    if (rests && carries && std::isnan(unit.at_rest_since)) unit.at_rest_since = state.time;
    if (!std::isnan(unit.measures.tripped_at) && state.time > unit.measures.tripped_at && std::isnan(unit.measures.safe_after) && rests && !carries)
      unit.measures.safe_after = state.time - unit.trip_began;
    if (unit.readout.loop == drive::Goal::Kind::force && unit.readout.tension > 0 && unit.cord >= 0) {
      const double error = stage.chain[at(unit.cord)].tension.front() - unit.readout.tension;
      unit.measures.tension.add(error, step);
      unit.measures.pulled = true;
      unit.tension_error = error / unit.readout.tension;
    }
    if (!unit.course) continue;
    const double angle = state.q[shaft.q_output];
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
  const Unit& unit = units_[drive];
  ControlMeasures measures = unit.measures;
  if (unit.move) close(*unit.move, measures);
  if (!std::isnan(unit.tension_error)) measures.tension_off = std::max(measures.tension_off, std::abs(unit.tension_error));
  return measures;
}

void Control::add_to(std::vector<SummaryValue>& summary) const {
  for (std::size_t d = 0; d < units_.size(); ++d) {
    if (!has(d)) continue;
    const Unit& unit = units_[d];
    const std::string& name = system_.model().drives[d].name;
    const ControlMeasures m = measures(d);
    if (!std::holds_alternative<model::HoldRoutine>(unit.controller->program)) {
      summary.push_back({"control_settling." + name, m.moved ? m.settling : not_yet, "s",
                         "longest time from the start of a move to the last entry of the shaft into 5 % of it round its end"});
      summary.push_back({"control_overshoot." + name, m.moved ? m.overshoot : not_yet, "1", "how far the shaft went beyond the end of a move, as a share of it"});
      summary.push_back({"tracking_error." + name, m.tracking.worst, "rad", "largest difference of the shaft angle from the set point"});
      summary.push_back({"tracking_error_rms." + name, m.tracking.rms(), "rad", "root mean square difference of the shaft angle from the set point"});
      const auto* loops = std::get_if<model::Loops>(&unit.controller->program);
      if (loops && loops->force) {
        summary.push_back({"force_error." + name, m.pulled ? m.tension_off : not_yet, "1",
                           "difference of the cord's true tension at the pulley from the one that the force asked for takes, at the end of each such command, as a share; the largest"});
        summary.push_back({"force_error_rms." + name, m.pulled ? m.tension.rms() : not_yet, "N", "root mean square difference of the two over time, while a force is asked for"});
      }
    } else {
      summary.push_back({"kept_current." + name, unit.hold.kept_current, "A", "with which the hold routine holds at the end of the run"});
      summary.push_back({"tightened." + name, static_cast<double>(unit.hold.tightened), "1", "how often the hold routine saw a slip and tightened"});
    }
    if (unit.controller->stall || unit.controller->heat) {
      summary.push_back({"trip_time." + name, m.tripped_at, "s", "when a guard first switched the drive off, from the start of the run"});
      summary.push_back({"safe_time." + name, m.safe_after, "s",
                         "from when the shaft last came to rest under current before that (else from the trip) until it is at rest without current"});
    }
  }
}

}  // namespace sinewright::simulation
