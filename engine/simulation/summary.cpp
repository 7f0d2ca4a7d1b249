#include "simulation/summary.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "quantity/nearest.h"
#include "quantity/quantity.h"
#include "simulation/static_analysis.h"

namespace sinewright::simulation {

namespace {

constexpr double never = std::numeric_limits<double>::quiet_NaN();
constexpr double band = 0.05;  // "95 % band" of a steady value
constexpr double hardly_moved = 0.035;  // [rad], two degrees: less is no motion whose end could be told

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Last time that a series enters the band round its value at `end`; counts from `begin`. NaN without a steady value.
double last_entry(const std::vector<double>& time, const std::vector<double>& value, double begin, double end) {
  std::size_t last = 0;
  bool found = false;
  for (std::size_t i = 0; i < time.size(); ++i)
    if (time[i] <= end) {
      last = i;
      found = true;
    }
  if (!found || std::abs(value[last]) < 1e-12) return never;
  const double steady = value[last];
  for (std::size_t i = last; i-- > 0;) {
    if (time[i] < begin) return time[i + 1] - begin;
    const double off = std::abs(value[i] - steady) - band * std::abs(steady);
    if (off > 0) {
      const double off_next = std::abs(value[i + 1] - steady) - band * std::abs(steady);
      const double share = off / (off - off_next);  // linear between the two samples
      return time[i] + share * (time[i + 1] - time[i]) - begin;
    }
  }
  return 0;
}

}  // namespace

namespace {

// Whether the commands to a drive, taken in their order, wind the cord in, or stop or pay out.
class Sense {
 public:
  struct Result {
    bool winds = false, stops = false;
  };
  Result of(const model::Command& command) {
    constexpr double far = std::numeric_limits<double>::infinity();
    Result r;
    const auto by_sign = [&](double value) {
      r = {value > 0, value <= 0};
      if (r.winds) angle_ = far;
    };
    const auto by_change = [&](double value, double& last) {
      r = {value > last, value < last};
      last = value;
    };
    if (const auto* voltage = std::get_if<model::CommandVoltage>(&command)) by_sign(voltage->voltage);
    if (const auto* speed = std::get_if<model::SetSpeed>(&command)) by_sign(speed->speed);
    if (const auto* current = std::get_if<model::SetCurrent>(&command)) by_sign(current->current);
    if (const auto* ask = std::get_if<model::AskHold>(&command)) by_sign(ask->grasp ? 1 : -1);
    if (const auto* target = std::get_if<model::CommandAngle>(&command)) by_change(target->angle, angle_);
    if (const auto* place = std::get_if<model::SetPosition>(&command)) by_change(place->angle, angle_);
    if (const auto* pull = std::get_if<model::SetForce>(&command)) {
      by_change(pull->force, force_);
      if (r.winds) angle_ = far;
    }
    if (std::holds_alternative<model::SetRecorded>(command)) by_sign(1);  // what it does later, no command says
    if (std::holds_alternative<model::CommandOff>(command)) r.stops = true;
    return r;
  }

 private:
  double angle_ = 0;  // last commanded; wound in by voltage it goes up without a limit
  double force_ = 0;  // last commanded
};

// How often a drive is told to wind in after it was stopped, or for the first time.
int count_grasps(const model::Scenario& scenario) {
  int count = 0;
  for (std::size_t d = 0; d < scenario.model.drives.size(); ++d) {
    Sense sense;
    bool closed = false;
    int of_drive = 0;
    for (const model::TimelineEntry& entry : scenario.timeline) {
      if (entry.drive != static_cast<int>(d)) continue;
      const Sense::Result r = sense.of(entry.command);
      if (r.winds && !closed) ++of_drive;
      closed = r.winds || (closed && !r.stops);
    }
    count = std::max(count, of_drive);
  }
  return count;
}

}  // namespace

Phases phases(const model::Scenario& scenario) {
  Phases p{never, scenario.duration, false};
  struct Sent {
    Sense sense;
    bool wound = false;  // it has closed something, so that stopping it ends the closing
  };
  std::vector<Sent> sent(scenario.model.drives.size());
  for (const model::TimelineEntry& entry : scenario.timeline) {
    const auto [winds, stops] = sent[at(entry.drive)].sense.of(entry.command);
    const bool had_wound = sent[at(entry.drive)].wound;
    if (winds) sent[at(entry.drive)].wound = true;
    if (std::isnan(p.command)) {
      if (winds) p.command = entry.time;
    } else if (stops && had_wound) {
      p.close_end = entry.time;
      p.releases = true;
      break;
    }
  }
  return p;
}

SummaryBuilder::SummaryBuilder(const System& system)
    : system_(system),
      phases_(phases(system.scenario)),
      angle_(system.hinges.size()),
      contact_time_(system.contacts.size(), never),
      energy_at_command_(Ledger::Zero(system.ledger_size)),
      peak_tension_(system.cords.size()),
      peak_slack_(system.cords.size()),
      peak_current_(system.shafts.size()),
      peak_winding_(system.shafts.size()),
      peak_housing_(system.shafts.size()),
      off_angle_(system.shafts.size(), never),
      off_turn_(system.shafts.size()),
      off_moved_(system.hinges.size()),
      off_posture_(system.hinges.size(), never),
      off_slid_(system.slides.size()),
      off_position_(system.slides.size(), never),
      stretch_over_(system.cords.size()),
      object_shift_(system.scenario.objects.size()),
      object_speed_(system.scenario.objects.size()),
      object_contacts_(system.scenario.objects.size()),
      peak_contact_force_(system.scenario.objects.size()),
      net_force_(system.scenario.objects.size(), never),
      net_moment_(system.scenario.objects.size(), never),
      peak_supply_current_(system.model().supplies.size()) {
  for (const model::Supply& supply : system.model().supplies) lowest_voltage_.push_back(supply.voltage);
}

// What a palm, another fixed body or a table carries is no grip of the finger's.
bool SummaryBuilder::on_phalanx(std::size_t contact) const {
  const int body = system_.contacts[contact].body;
  return body >= 0 && system_.model().bodies[at(body)].moves();
}

SummaryBuilder::Snapshot SummaryBuilder::take(const Stage& stage, const State& state, const Totals& totals) const {
  Snapshot s;
  s.time = state.time;
  s.energy = totals.energy;
  for (std::size_t i = 0; i < stage.contact.size(); ++i) {
    s.normal.push_back(stage.contact[i].normal_force);
    if (on_phalanx(i)) s.grip += stage.contact[i].normal_force;
  }
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) s.split.push_back(split_force(system_, stage, o));
  for (const HingeJoint& joint : system_.hinges) {
    s.angle.push_back(state.q[system_.tree.links[at(joint.link)].q]);
    if (!rides_on_slide(system_.model(), joint.body)) s.flexion += s.angle.back();
  }
  for (const SlideJoint& joint : system_.slides) s.position.push_back(state.q[system_.tree.links[at(joint.link)].q]);
  for (const auto& chain : stage.chain) {
    s.first_tension.push_back(chain.tension.front());
    s.last_tension.push_back(chain.tension.back());
  }
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    s.current.push_back(stage.shaft[d].electric.current);
    s.load_torque.push_back(stage.shaft[d].load_torque);
    s.shaft_angle.push_back(state.q[system_.shafts[d].q_output]);
    s.stalled.push_back(state.mode[at(system_.shafts[d].row)] == solver::Mode::sticks);
  }
  return s;
}

void SummaryBuilder::sample(const Stage& stage, const State& state, const Totals& totals, const std::vector<bool>& off) {
  last_ = take(stage, state, totals);
  if (!any_) start_ = last_;
  any_ = true;
  time_.push_back(state.time);
  grip_.push_back(last_.grip);
  flexion_.push_back(last_.flexion);
  if (state.time <= phases_.close_end) closed_ = last_;
  if (!(state.time > phases_.command)) energy_at_command_ = totals.energy;
  peak_grip_ = std::max(peak_grip_, last_.grip);

  for (std::size_t i = 0; i < system_.contacts.size(); ++i)
    if (std::isnan(contact_time_[i]) && stage.contact[i].normal_force > 0) contact_time_[i] = state.time;

  for (std::size_t j = 0; j < system_.hinges.size(); ++j) angle_[j].push_back(last_.angle[j]);
  bool any_off = false;
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    peak_current_[d] = std::max(peak_current_[d], std::abs(last_.current[d]));
    peak_winding_[d] = std::max(peak_winding_[d], state.temperature[d].winding);
    peak_housing_[d] = std::max(peak_housing_[d], state.temperature[d].housing);
    if (off[d]) {
      if (std::isnan(off_angle_[d])) off_angle_[d] = last_.shaft_angle[d];
      off_turn_[d] = std::max(off_turn_[d], std::abs(last_.shaft_angle[d] - off_angle_[d]));
      any_off = true;
    } else {
      off_angle_[d] = never;
    }
  }
  // Largest way of each joint from where it stood when the power went off.
  const auto watch = [&](const std::vector<double>& now, std::vector<double>& from, std::vector<double>& moved) {
    for (std::size_t j = 0; j < now.size(); ++j) {
      if (!any_off) {
        from[j] = never;
      } else {
        if (std::isnan(from[j])) from[j] = now[j];
        moved[j] = std::max(moved[j], std::abs(now[j] - from[j]));
      }
    }
  };
  watch(last_.angle, off_posture_, off_moved_);
  watch(last_.position, off_position_, off_slid_);
  for (std::size_t s = 0; s < stage.supply.size(); ++s) {
    lowest_voltage_[s] = std::min(lowest_voltage_[s], stage.supply[s].voltage);
    peak_supply_current_[s] = std::max(peak_supply_current_[s], stage.supply[s].current);
  }
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    for (double tension : stage.chain[c].tension) peak_tension_[c] = std::max(peak_tension_[c], tension);
    for (double stretch : stage.chain[c].stretch)
      stretch_over_[c] = std::max(stretch_over_[c], stretch - system_.cords[c].law.max_stretch());
    peak_slack_[c] = std::max(peak_slack_[c], slack(stage, c));
  }
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) {
    const auto link = at(system_.link_of_object[o]);
    const Vector3d& place = stage.kinematics.pose[link].p;
    object_shift_[o] = (place - system_.scenario.objects[o].at).norm();
    object_speed_[o] = stage.kinematics.velocity[link].at(place).norm();
    peak_contact_force_[o] = std::max(peak_contact_force_[o], contact_force(system_, stage, o).norm());
    if (system_.tree.links[link].kind == dynamics::JointKind::free) {
      const dynamics::Force net = stage.net_force(system_.link_of_object[o]);
      net_force_[o] = net.force.norm();
      net_moment_[o] = net.moment.norm();
    }
    object_contacts_[o] = 0;
    for (std::size_t i = 0; i < system_.contacts.size(); ++i)
      if (system_.contacts[i].body >= 0 && system_.contacts[i].object == static_cast<int>(o) && stage.contact[i].normal_force > 0)
        ++object_contacts_[o];
  }
  worst_residual_ = std::max(worst_residual_, std::abs(energy_residual(stage, totals)));
  double turned_over = energy_in(totals.energy);
  for (int a = static_cast<int>(Account::supply_resistance); a < static_cast<int>(account_count); ++a)
    turned_over = std::max(turned_over, std::abs(totals.energy[a]));
  most_in_ = std::max(most_in_, turned_over);
}

// Per joint, over the postures that the finger went through after closing: least static ratio of the return cords' torque, channel
// friction taken off, to the static friction of pin and washers, while the joint has more than two degrees to go.
std::vector<double> SummaryBuilder::opening_ratios() const {
  std::vector<double> least(system_.hinges.size(), never);
  if (!phases_.releases) return least;
  constexpr double nearly_open = 0.035;  // [rad]
  constexpr double turn_between = 0.02;  // [rad] of flexion between two postures looked at
  double flexion = never;
  for (std::size_t i = 0; i < time_.size(); ++i) {
    if (time_[i] < phases_.close_end || std::abs(flexion_[i] - flexion) < turn_between) continue;
    flexion = flexion_[i];
    std::vector<double> angles;
    for (const auto& series : angle_) angles.push_back(series[i]);
    const OpeningPosture opening = opening_posture(system_, posture(system_, angles));
    for (std::size_t j = 0; j < least.size(); ++j) {
      const int k = static_cast<int>(j);
      if (angles[j] < nearly_open || opening.friction[k] <= 0 || !opening.returned[j]) continue;
      const double ratio = opening.least_torque[k] / opening.friction[k];
      if (!(least[j] <= ratio)) least[j] = ratio;
    }
  }
  return least;
}

std::vector<SummaryValue> SummaryBuilder::finish() const {
  std::vector<SummaryValue> list;
  if (!any_) return list;
  const auto& m = system_.model();
  const auto add = [&](std::string key, double value, const char* unit, const char* text) {
    list.push_back({std::move(key), value, unit, text});
  };
  const bool commanded = !std::isnan(phases_.command);
  const double from = commanded ? phases_.command : 0;

  double first_contact = never;
  for (std::size_t i = 0; i < contact_time_.size(); ++i)
    if (on_phalanx(i) && !std::isnan(contact_time_[i]) && !(first_contact <= contact_time_[i])) first_contact = contact_time_[i];
  add("first_contact_time", first_contact - from, "s", "from the first drive command to the first contact of a phalanx");
  const bool grips = closed_.grip > 1e-9;
  add("closing_time", commanded ? last_entry(time_, grips ? grip_ : flexion_, from, phases_.close_end) : never, "s",
      grips ? "from the first drive command to the last entry of the grip force into its 95 % band"
            : "from the first drive command to the last entry of the total flexion into its 95 % band");
  add("grip_force", closed_.grip, "N", "sum of the phalanges' normal forces at the end of closing");
  add("grip_force_peak", peak_grip_, "N", "largest sum of the phalanges' normal forces in the run");
  add("held_force", last_.grip, "N", "sum of the phalanges' normal forces at the end of the run");
  for (std::size_t i = 0; i < system_.contacts.size(); ++i) {
    const std::string& name = system_.contacts[i].name;
    add("grip_force." + name, closed_.normal[i], "N", "normal force at the end of closing");
    add("held_force." + name, last_.normal[i], "N", "normal force at the end of the run");
    add("contact_time." + name, contact_time_[i] - from, "s", "from the first drive command to the first contact");
  }
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) {
    const std::string& name = system_.scenario.objects[o].name;
    add("split_force." + name, closed_.split[o], "N", "split-cylinder reading at the end of closing");
    add("object_shift." + name, object_shift_[o], "m", "distance from the start to the end of the run");
    add("object_speed." + name, object_speed_[o], "m/s", "at the end of the run");
    add("object_contacts." + name, object_contacts_[o], "1", "contacts with palm and phalanges at the end of the run");
    add("peak_contact_force." + name, peak_contact_force_[o], "N", "largest size of the contacts with palm and phalanges together: what the hand held it with against a pull");
    if (!std::isnan(net_force_[o])) {
      add("net_force." + name, net_force_[o], "N", "contacts, weight and all else together at the end of the run: 0 in balance");
      add("net_moment." + name, net_moment_[o], "N m", "of the same about the centre of mass");
    }
  }
  const std::vector<double> opening = opening_ratios();
  for (std::size_t j = 0; j < system_.hinges.size(); ++j) {
    const std::string& name = m.bodies[at(system_.hinges[j].body)].hinge->name;
    add("joint_angle." + name, closed_.angle[j], "rad", "at the end of closing");
    const bool moved = std::abs(closed_.angle[j] - start_.angle[j]) >= hardly_moved;
    add("settling_time." + name, commanded && moved ? last_entry(time_, angle_[j], from, phases_.close_end) : never, "s",
        "from the first drive command to the last entry of the angle into its 95 % band");
    add("final_angle." + name, last_.angle[j], "rad", "at the end of the run");
    add("off_motion." + name, off_moved_[j], "rad", "largest motion of the joint while power was off");
    add("opening_ratio." + name, opening[j], "1",
        "least static ratio of the return cords' torque to the joint's friction in the postures after closing");
  }
  for (std::size_t j = 0; j < system_.slides.size(); ++j) {
    const std::string& name = m.bodies[at(system_.slides[j].body)].slide->name;
    add("slide_position." + name, closed_.position[j], "m", "at the end of closing");
    add("final_position." + name, last_.position[j], "m", "at the end of the run");
    add("off_motion." + name, off_slid_[j], "m", "largest motion of the slide while power was off");
  }
  double release = never, gone = never;
  if (phases_.releases) {
    const double open = start_.flexion + band * (closed_.flexion - start_.flexion);
    for (std::size_t i = time_.size(); i-- > 0 && time_[i] >= phases_.close_end;) {
      if (flexion_[i] > open) break;
      release = time_[i] - phases_.close_end;
    }
    gone = closed_.flexion > start_.flexion ? (last_.flexion - start_.flexion) / (closed_.flexion - start_.flexion) : never;
  }
  add("release_time", release, "s", "from the end of closing until 95 % of the flexion is undone for good");
  add("remaining_flexion", gone, "1", "share of the flexion that is left at the end of the run");
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    const std::string& name = m.cords[at(system_.cords[c].cord)].name;
    add("tension." + name, closed_.first_tension[c], "N", "of the first span at the end of closing");
    add("tip_tension." + name, closed_.last_tension[c], "N", "of the last span at the end of closing");
    add("peak_tension." + name, peak_tension_[c], "N", "largest of all spans in the run");
    add("peak_slack." + name, peak_slack_[c], "m", "largest slack in the run");
    add("stretch_beyond_law." + name, stretch_over_[c] > 0 ? stretch_over_[c] : 0, "1",
        "how far the stretch went beyond the data of the cord's law");
  }
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const std::string& name = m.drives[d].name;
    add("current." + name, closed_.current[d], "A", "motor current at the end of closing");
    add("peak_current." + name, peak_current_[d], "A", "largest motor current");
    add("shaft_torque." + name, closed_.load_torque[d], "N m", "load on the output shaft at the end of closing");
    add("shaft_angle." + name, closed_.shaft_angle[d], "rad", "of the output shaft at the end of closing");
    add("stalled." + name, closed_.stalled[d] ? 1 : 0, "1", "1 if the shaft stood still at the end of closing");
    add("winding_temperature." + name, peak_winding_[d], "K", "highest in the run");
    add("housing_temperature." + name, peak_housing_[d], "K", "highest in the run");
    add("off_turn." + name, off_turn_[d], "rad", "largest turn of the output shaft while power was off");
  }

  // Where the shaft's work went while closing: motor torque × shaft angle is what the electrical side leaves over.
  const Ledger spent = closed_.energy - energy_at_command_;
  const auto of = [&](Account a) { return spent[static_cast<int>(a)]; };
  const double work = of(Account::supply) - of(Account::supply_resistance) - of(Account::winding);
  add("shaft_work", work, "J", "electrical work turned into motor torque while closing");
  const auto share = [&](const std::string& key, double energy, const char* text) {
    add("loss_share." + key, work > 0 ? energy / work : never, "1", text);
  };
  share("motor_drag", of(Account::motor_drag), "share of the shaft work lost in brushes and bearings");
  share("gear", of(Account::gear_drag) + of(Account::gear_cone), "share lost in the gearhead");
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    const auto names = node_names(system_, c);
    for (std::size_t k = 0; k < names.size(); ++k)
      share(fmt::format("{}.{}", m.cords[at(system_.cords[c].cord)].name, names[k]),
            spent[system_.bend_entry[c] + static_cast<int>(k)], "share lost at this bend");
  }
  share("cord_hysteresis", of(Account::cord_hysteresis), "share lost inside the cords");
  for (std::size_t j = 0; j < system_.hinges.size(); ++j)
    share(m.bodies[at(system_.hinges[j].body)].hinge->name, spent[system_.hinge_entry + static_cast<int>(j)],
          "share lost on this joint's pin and washers");
  share("hinge_viscous", of(Account::hinge_viscous), "share lost in the joints' viscous drag");
  for (std::size_t j = 0; j < system_.slides.size(); ++j)
    share(m.bodies[at(system_.slides[j].body)].slide->name, spent[system_.slide_entry + static_cast<int>(j)],
          "share lost in this slide's dry friction");
  if (!system_.slides.empty()) share("slide_viscous", of(Account::slide_viscous), "share lost in the slides' viscous drag");
  share("end_stops", of(Account::end_stops), "share lost in end stops");
  share("contact", of(Account::contact_damping) + of(Account::contact_friction), "share lost at the contacts");
  add("energy_supplied", last_.energy[static_cast<int>(Account::supply)], "J", "from the supply, whole run");
  const int grasps = count_grasps(system_.scenario);
  add("grasps", grasps, "1", "how often the timeline closes the hand: commands that wind in, the first, and each after one that stopped or paid out");
  add("energy_per_grasp", grasps > 0 ? last_.energy[static_cast<int>(Account::supply)] / grasps : never, "J", "energy from the supplies, whole run, for each grasp");
  for (std::size_t i = 0; i < m.supplies.size(); ++i) {
    const double charge = last_.energy[system_.charge_entry + static_cast<int>(i)];
    add("lowest_voltage." + m.supplies[i].name, lowest_voltage_[i], "V", "at the supply's terminals in the run");
    add("peak_supply_current." + m.supplies[i].name, peak_supply_current_[i], "A", "largest that the supply gave to its drives together");
    add("charge." + m.supplies[i].name, charge, "A s", "that this supply gave, whole run");
    if (m.supplies[i].charge > 0)
      add("runs_per_charge." + m.supplies[i].name, charge > 0 ? m.supplies[i].charge / charge : never, "1",
          "how often a run like this one can be had from one charge of the supply");
    if (m.supplies[i].charge > 0)
      add("grasps_per_charge." + m.supplies[i].name, charge > 0 && grasps > 0 ? grasps * m.supplies[i].charge / charge : never, "1",
          "how many grasps like those of this run, with all that is between them, one charge of the supply is good for");
  }
  add("energy_residual", most_in_ > 0 ? worst_residual_ / most_in_ : 0, "1",
      "largest imbalance of the energy ledger, relative to the energy turned over");
  return list;
}

std::vector<Verdict> judge(const std::vector<model::Requirement>& requirements, const std::vector<SummaryValue>& summary) {
  std::vector<Verdict> verdicts;
  for (const model::Requirement& r : requirements) {
    const auto place = r.place.line > 0 ? fmt::format("{}:{}:{}: ", r.place.file, r.place.line, r.place.column) : std::string();
    const auto found = std::find_if(summary.begin(), summary.end(), [&](const auto& v) { return v.key == r.quantity; });
    if (found == summary.end()) {
      std::vector<std::string> keys;
      for (const SummaryValue& value : summary) keys.push_back(value.key);
      throw InvalidInput(fmt::format("{}require.quantity = '{}' is not a number of this scenario's summary\n  hint: nearest is '{}'",
                                     place, r.quantity, nearest(r.quantity, keys, 1000)));
    }
    const std::string unit = r.unit.empty() ? "1" : r.unit;
    if (!same_dimension(unit, found->unit))
      throw InvalidInput(fmt::format("{}require.quantity = '{}' is measured in {}, the bound is given in '{}'\n  needed: a bound in {}",
                                     place, r.quantity, found->unit, r.unit, found->unit));
    const auto bound = [&](const char* word, double limit, bool met) {
      verdicts.push_back({r.quantity, fmt::format("{} {:.6g}{}{}", word, from_si(limit, unit), unit == "1" ? "" : " ", unit == "1" ? "" : unit),
                          found->value, met, found->unit});
    };
    if (r.at_least) bound("at least", *r.at_least, found->value >= *r.at_least);
    if (r.at_most) bound("at most", *r.at_most, found->value <= *r.at_most);
  }
  return verdicts;
}

std::string reached_text(const Verdict& verdict) {
  if (std::isnan(verdict.value)) return "did not occur";
  // The demand is two words, a number and its unit.
  std::size_t end = 0;
  for (int word = 0; word < 3 && end != std::string::npos; ++word) end = verdict.demand.find(' ', end + (word > 0));
  if (end == std::string::npos) return fmt::format("{:.5g}", verdict.value);
  const std::string unit = verdict.demand.substr(end + 1);
  return fmt::format("{:.5g} {}", from_si(verdict.value, unit), unit);
}

}  // namespace sinewright::simulation
