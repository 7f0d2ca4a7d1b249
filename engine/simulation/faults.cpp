#include "simulation/faults.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

#include "model/overloaded.h"
#include "simulation/control.h"
#include "simulation/observe.h"

namespace sinewright::simulation {
namespace {

using model::FaultEntry;

constexpr double kDegree = 180 / std::numbers::pi;
constexpr double same_time = 1e-10;  // [s]

std::size_t at(int index) { return static_cast<std::size_t>(index); }

bool acts(const FaultEntry& entry, double time) { return time >= entry.time - same_time && time < entry.time + entry.lasts - same_time; }

double strain_energy(const CordSystem& cord, const friction::ChainState& chain) {
  double energy = 0;
  for (std::size_t s = 0; s < chain.material.size(); ++s) energy += chain.material[s] * cord.law.energy(chain.stretch[s]);
  return energy;
}

// The same stretch all along, for a cord that came loose and found its new place in a whip.
void even_out(friction::ChainState& chain, const std::vector<double>& length, double material) {
  const double way = std::accumulate(length.begin(), length.end(), 0.0);
  for (std::size_t s = 0; s < length.size(); ++s) {
    chain.stretch[s] = way / material;
    chain.material[s] = length[s] * material / way;
  }
  std::fill(chain.slip.begin(), chain.slip.end(), friction::Slip::stick);
}

std::string milli(double joule) { return fmt::format("{:.3g} mJ", 1e3 * joule); }

}  // namespace

WeakPlace weakest_place(const model::Cord& cord, const std::vector<double>& tension, const std::vector<bool>& among) {
  WeakPlace place;
  double most = -1;
  const auto consider = [&](std::size_t span, double load, bool at_knot) {
    if (!among[span] || load <= most) return;
    most = load;
    place = {span, at_knot};
  };
  // On the pulley the windings carry the pull, not the knot.
  if (cord.knot && std::holds_alternative<model::Anchor>(cord.path.front())) consider(0, tension.front() / cord.knot->efficiency, true);
  if (cord.knot) consider(tension.size() - 1, tension.back() / cord.knot->efficiency, true);
  for (std::size_t s = 0; s < tension.size(); ++s) consider(s, tension[s], false);
  return place;
}

Faults::Faults(const System& system) : system_(system), began_(system.scenario.faults.size()), ended_(began_) {}

std::vector<double> Faults::instants() const {
  std::vector<double> times;
  for (const FaultEntry& entry : system_.scenario.faults) {
    times.push_back(entry.time);
    if (std::isfinite(entry.lasts)) times.push_back(entry.time + entry.lasts);
  }
  return times;
}

std::string Faults::name_of(const model::Fault& fault) const {
  const auto& m = system_.model();
  return std::visit(overloaded{[&](const model::SupplyDip& f) { return m.supplies[at(f.supply)].name; },
                               [&](const model::CordBroken& f) { return m.cords[at(f.cord)].name; },
                               [&](const model::CordOffPulley& f) { return m.cords[at(f.cord)].name; },
                               [&](const auto& f) { return m.drives[at(f.drive)].name; }},
                    fault);
}

// What comes and goes: of faults that overlap, the later one counts.
void Faults::set_condition(double time, State& state, Sensing& sensing) const {
  const auto& m = system_.model();
  Condition& now = state.condition;
  for (std::size_t i = 0; i < m.supplies.size(); ++i) now.supply_voltage[i] = m.supplies[i].voltage;
  std::fill(now.winding_open.begin(), now.winding_open.end(), false);
  std::vector<SensorFault> sensors(m.drives.size());
  for (const FaultEntry& entry : system_.scenario.faults) {
    if (!acts(entry, time)) continue;
    std::visit(overloaded{[&](const model::SensorStuck& f) { sensors[at(f.drive)] = {SensorFault::Kind::stuck, f.reading}; },
                          [&](const model::SensorWireOff& f) {
                            using Reads = model::SensorWireOff::Reads;
                            sensors[at(f.drive)] = {f.reads == Reads::low    ? SensorFault::Kind::low
                                                    : f.reads == Reads::high ? SensorFault::Kind::high
                                                                             : SensorFault::Kind::floating,
                                                    std::nullopt};
                          },
                          [&](const model::SupplyDip& f) { now.supply_voltage[at(f.supply)] = f.voltage; },
                          [&](const model::MotorDead& f) { now.winding_open[at(f.drive)] = true; }, [](const auto&) {}},
               entry.fault);
  }
  for (std::size_t d = 0; d < sensors.size(); ++d) sensing.set_fault(d, sensors[d]);
}

// A fault in words; what breaks mechanically is done here.
std::string Faults::strike(const model::Fault& fault, const Stage& stage, const Sensing& sensing, State& state, double& let_go) const {
  const auto& m = system_.model();
  return std::visit(
      overloaded{
          [&](const model::SensorStuck& f) {
            return fmt::format("sensor stuck at {:.4g} deg", f.reading.value_or(sensing.angles()[at(f.drive)].sample.reading) * kDegree);
          },
          [&](const model::SensorWireOff& f) {
            using Reads = model::SensorWireOff::Reads;
            return fmt::format("sensor wire off, reads {}", f.reads == Reads::low ? "low" : f.reads == Reads::high ? "high" : "anything");
          },
          [&](const model::SupplyDip& f) { return fmt::format("dips to {:g} V", f.voltage); },
          [&](const model::MotorDead&) { return std::string("motor dead: winding open"); },
          [&](const model::CordBroken& f) {
            const CordSystem& cord = system_.cords[at(f.cord)];
            friction::ChainState& chain = state.cords[at(f.cord)];
            if (state.condition.cords[at(f.cord)].broken) return std::string("is broken already");
            std::vector<bool> among(chain.material.size(), true);
            for (std::size_t s = 0; s < among.size() && f.body >= 0; ++s) {
              const auto [from, to] = cord.path.span_bodies(static_cast<int>(s));
              among[s] = from == f.body || to == f.body;
            }
            const model::Cord& data = m.cords[at(cord.cord)];
            const WeakPlace place = weakest_place(data, stage.chain[at(f.cord)].tension, among);
            let_go = strain_energy(cord, chain);
            std::fill(chain.stretch.begin(), chain.stretch.end(), 1.0);
            std::fill(chain.slip.begin(), chain.slip.end(), friction::Slip::stick);
            state.condition.cords[at(f.cord)].broken = true;
            return fmt::format("breaks {}in span {} under {:.3g} N; {} let go", place.at_knot ? "at the knot " : "",
                               span_names(system_, at(f.cord))[place.span], stage.chain[at(f.cord)].tension[place.span], milli(let_go));
          },
          [&](const model::CordOffPulley& f) {
            const CordSystem& cord = system_.cords[at(f.cord)];
            friction::ChainState& chain = state.cords[at(f.cord)];
            CordCondition& condition = state.condition.cords[at(f.cord)];
            if (condition.broken) return std::string("is broken, and cannot jump");
            if (condition.pulley) return std::string("is off its pulley already");
            const double angle = state.q[system_.shafts[at(cord.drive)].q_output];
            const drive::CordPulley shaft(model::Pulley{f.radius}, m.lines[at(m.cords[at(cord.cord)].line)].diameter);
            const double turns_free = std::max(0.0, cord.pulley->wound_length(0, angle) - shaft.wound_length(0, angle));
            const double free = f.slack.value_or(angle > 0 ? turns_free : 0);
            const double before = strain_energy(cord, chain);
            double material = free;
            for (double l : chain.material) material += l;
            even_out(chain, stage.path[at(f.cord)].length, material);
            let_go = before - strain_energy(cord, chain);
            condition.pulley = shaft;
            return fmt::format("jumps off the pulley onto the shaft; {:.3g} mm come free, {} let go", 1e3 * free, milli(let_go));
          }},
      fault);
}

bool Faults::strike(const Stage& stage, State& state, Stepper& stepper, Sensing& sensing, Ledger& energy, std::vector<Event>& events) {
  bool changed = false;
  const auto& faults = system_.scenario.faults;
  for (std::size_t i = 0; i < faults.size(); ++i) {
    const FaultEntry& entry = faults[i];
    if (!began_[i] && state.time >= entry.time - same_time) {
      began_[i] = changed = true;
      double let_go = 0;
      std::string detail = strike(entry.fault, stage, sensing, state, let_go);
      if (std::isfinite(entry.lasts)) detail += fmt::format(" for {:g} s", entry.lasts);
      events.push_back({state.time, "fault", name_of(entry.fault), std::move(detail)});
      energy[static_cast<int>(Account::cord_faults)] += let_go;
      stepper.let_go(let_go);
    }
    if (began_[i] && !ended_[i] && state.time >= entry.time + entry.lasts - same_time) {
      ended_[i] = changed = true;
      events.push_back({state.time, "fault-over", name_of(entry.fault), std::holds_alternative<model::SupplyDip>(entry.fault) ? "gives its voltage again" : "works again"});
    }
  }
  if (changed) set_condition(state.time, state, sensing);
  return changed;
}

SafetyWatch::SafetyWatch(const System& system) : system_(system) {}

void SafetyWatch::look(const Stage& stage, const State& state) {
  double grip = 0;
  bool current = false, rests = true;
  for (std::size_t i = 0; i < stage.contact.size(); ++i)
    if (const int body = system_.contacts[i].body; body >= 0 && system_.model().bodies[at(body)].moves()) grip += stage.contact[i].normal_force;
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const Shaft& shaft = system_.shafts[d];
    current = current || stage.shaft[d].electric.current != 0;
    rests = rests && (state.v[shaft.v_output] == 0 || state.mode[at(shaft.row)] == solver::Mode::sticks);
  }
  const double limit = system_.scenario.safe_grip;
  const bool safe = !current || (rests && grip < limit);
  if (safe && !safe_) {
    // Current is switched where a step begins; a grip passes its limit within one.
    const bool by_grip = current && grip_ > limit;
    safe_since_ = by_grip ? time_ + (grip_ - limit) / (grip_ - grip) * (state.time - time_) : time_;
  }
  safe_ = safe;
  time_ = state.time;
  grip_ = grip;
}

void SafetyWatch::add_to(std::vector<SummaryValue>& summary) const {
  const auto& faults = system_.scenario.faults;
  if (faults.empty()) return;
  const double first = faults.front().time;
  const bool struck = time_ >= first;
  summary.push_back({"safe_after_fault", struck && safe_ ? std::max(0.0, safe_since_ - first) : not_yet, "s",
                     "from the first fault until the hand is safe for good: no motor carries current, or its grip is below the safe one and no shaft turns"});
}

}  // namespace sinewright::simulation
