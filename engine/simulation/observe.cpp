#include "simulation/observe.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

const std::vector<std::string> axes = {"x", "y", "z"};
const std::vector<std::string> quaternion = {"x", "y", "z", "w"};
const std::vector<std::string> told = {"0", "1", "2", "3"};
const std::vector<std::string> causes(tip_cause_names.begin(), tip_cause_names.end());

// Visits every value of a row in one fixed order; its two users are the list of channels and the rows themselves, so
// that they cannot drift apart. Names are made only for the list (`named`), since a row is filled at every sample.
// `add(group, leaf, unit, description, columns, values, count)`.
template <bool named, class Add>
void visit(const System& system, const Stage& stage, const State& state, const Totals& totals, Add&& add) {
  const auto& m = system.model();
  const auto group = [](const char* kind, const std::string& name, const char* part = "") {
    return named ? fmt::format("/{}/{}/{}", kind, name, part) : std::string();
  };
  const auto names_of = [](auto&& make) { return named ? make() : std::vector<std::string>(); };
  const auto one = [&](const std::string& base, const char* leaf, const char* unit, const char* text, double value) {
    add(base, leaf, unit, text, std::vector<std::string>(), &value, std::size_t{1});
  };
  const auto many = [&](const std::string& base, const char* leaf, const char* unit, const char* text,
                        const std::vector<std::string>& columns, const double* values, std::size_t count) {
    add(base, leaf, unit, text, columns, values, count);
  };

  for (std::size_t i = 0; i < system.hinges.size(); ++i) {
    const HingeJoint& joint = system.hinges[i];
    const std::string base = group("joints", m.bodies[at(joint.body)].hinge->name);
    one(base, "angle", "radian", "joint angle, flexion positive", state.q[system.tree.links[at(joint.link)].q]);
    one(base, "rate", "radian s-1", "joint rate", state.v[joint.v]);
    one(base, "friction_torque", "N m", "torque of pin and washers on the joint", stage.hinge[i].friction_torque);
    one(base, "friction_limit", "N m", "kinetic friction torque under the present reaction", stage.hinge[i].friction_limit);
    one(base, "radial_reaction", "N", "force across the pin", stage.hinge[i].radial_reaction);
    one(base, "axial_reaction", "N", "force along the pin", stage.hinge[i].axial_reaction);
    one(base, "stop_torque", "N m", "torque of the end stops, positive towards flexion", stage.hinge[i].stop_torque);
    one(base, "sticks", "1", "1 while dry friction holds the joint",
        joint.row >= 0 && state.mode[at(joint.row)] == solver::Mode::sticks ? 1.0 : 0.0);
  }
  for (std::size_t i = 0; i < system.slides.size(); ++i) {
    const SlideJoint& joint = system.slides[i];
    const std::string base = group("joints", m.bodies[at(joint.body)].slide->name);
    one(base, "position", "m", "way of the slide along its axis", state.q[system.tree.links[at(joint.link)].q]);
    one(base, "speed", "m s-1", "speed of the slide along its axis", state.v[joint.v]);
    one(base, "friction_force", "N", "dry friction on the sliding body, along its axis", stage.slide[i].friction_force);
    one(base, "friction_limit", "N", "kinetic friction under the present load", stage.slide[i].friction_limit);
    one(base, "normal_force", "N", "sum of the forces on the ends of the slideway, preload included", stage.slide[i].normal_force);
    one(base, "stop_force", "N", "force of the end stops, positive along the axis", stage.slide[i].stop_force);
    one(base, "sticks", "1", "1 while dry friction holds the slide",
        joint.row >= 0 && state.mode[at(joint.row)] == solver::Mode::sticks ? 1.0 : 0.0);
  }
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const std::string base = group("cords", m.cords[at(system.cords[c].cord)].name);
    many(base, "tension", "N", "tension of each span, from the drive or first anchor on", names_of([&] { return span_names(system, c); }),
         stage.chain[c].tension.data(), stage.chain[c].tension.size());
    if (!stage.chain[c].passed.empty()) {
      many(base, "slip", "m", "material that has passed each bend towards the first span since the start",
           names_of([&] { return node_names(system, c); }), totals.passed[c].data(), totals.passed[c].size());
      many(base, "turning_angle", "radian", "turning angle of the cord at each bend", 
           names_of([&] { return node_names(system, c); }), stage.path[c].turning_angle.data(),
           stage.path[c].turning_angle.size());
    }
    if (!system.scenario.faults.empty())
      one(base, "condition", "1", "0 whole, 1 off its pulley, 2 broken",
          state.condition.cords[c].broken ? 2.0 : state.condition.cords[c].pulley ? 1.0 : 0.0);
    one(base, "slack", "m", "by how much the cord is longer than its way", slack(stage, c));
    double length = 0;
    for (double l : stage.path[c].length) length += l;
    one(base, "path_length", "m", "length of the cord's way", length);
    const auto corner_names = [&] {
      std::vector<std::string> names;
      for (std::size_t k = 0; k < stage.path[c].vertices.size(); ++k)
        for (const std::string& axis : axes) names.push_back(fmt::format("{}{}", axis, k));
      return names;
    };
    many(base, "way", "m", "corners of the cord's way in the world", names_of(corner_names),
         stage.path[c].vertices.front().data(), 3 * stage.path[c].vertices.size());
  }
  for (std::size_t d = 0; d < system.shafts.size(); ++d) {
    const Shaft& s = system.shafts[d];
    const ShaftResult& r = stage.shaft[d];
    const std::string base = group("drives", m.drives[d].name);
    one(base, "shaft_angle", "radian", "angle of the output shaft, winding positive", state.q[s.q_output]);
    one(base, "shaft_speed", "radian s-1", "speed of the output shaft", state.v[s.v_output]);
    one(base, "rotor_speed", "radian s-1", "speed of the rotor", m.drives[d].gearhead.ratio * state.v[s.v_rotor]);
    one(base, "current", "A", "motor current", r.electric.current);
    one(base, "motor_voltage", "V", "voltage across the motor", r.electric.motor_voltage);
    one(base, "supply_voltage", "V", "voltage at the supply's terminals", r.electric.supply_voltage);
    one(base, "supply_current", "A", "current that this drive draws from the supply", r.electric.supply_current);
    one(base, "motor_torque", "N m", "motor torque times gear ratio, before all friction", r.motor_torque);
    one(base, "friction_torque", "N m", "torque of brushes and gearhead friction on the output shaft", r.friction_torque);
    one(base, "load_torque", "N m", "torque of the load on the output shaft", r.load_torque);
    one(base, "winding_temperature", "K", "temperature of the winding", state.temperature[d].winding);
    one(base, "housing_temperature", "K", "temperature of the motor housing", state.temperature[d].housing);
    if (m.drives[d].sensor) {
      const AngleReadout readout = totals.sensors ? totals.sensors->sensing().angles()[d] : AngleReadout{};
      const std::string part = group("drives", m.drives[d].name, "sensor/");
      one(part, "sample_time", "s", "when the last sample was taken; what stands beside it belongs to that time", readout.time);
      one(part, "shaft_angle", "radian", "true angle of the output shaft", readout.shaft);
      one(part, "rotor_angle", "radian", "where the sensor's rotor stood, as an angle of the output shaft", readout.sample.rotor);
      one(part, "track_angle", "radian", "what track or disc showed: with linearity, load, ends, lost zero", readout.sample.track);
      one(part, "signal_angle", "radian", "the same with noise and ripple", readout.sample.signal);
      one(part, "count", "1", "what converter or counter said", readout.sample.count);
      one(part, "reading", "radian", "the shaft angle that the firmware makes of it", readout.sample.reading);
      one(part, "off_track", "1", "1 if the wiper stood in the dead band", readout.sample.off_track ? 1.0 : 0.0);
      one(part, "powered", "1", "1 while the sensor has power; the sample stays", readout.powered ? 1.0 : 0.0);
      const TipEstimate* estimate = totals.sensors ? totals.sensors->tip(d) : nullptr;
      if (tells_tip(system, d)) {
        const TipReadout nothing;
        const TipReadout& tip = estimate ? estimate->now() : nothing;
        const std::string at_tip = group("drives", m.drives[d].name, "fingertip/");
        many(at_tip, "told", "m", "fingertip by the last reading and free closing, world", axes, tip.told.data(), 3);
        many(at_tip, "true", "m", "fingertip, world", axes, tip.truth.data(), 3);
        many(at_tip, "error_along", "m", "told less true along the tip's way, closing positive, by cause", causes, tip.along.data(),
             tip.along.size());
        const auto joints = [&] {
          std::vector<std::string> names;
          for (const HingeJoint& joint : system.hinges) names.push_back(m.bodies[at(joint.body)].hinge->name);
          return names;
        };
        many(at_tip, "angle_told", "radian", "joint angles by the last reading and free closing", names_of(joints), tip.angle.data(),
             named ? system.hinges.size() : tip.angle.size());
      }
    }
    if (m.drives[d].current_sense) {
      const CurrentReadout readout = totals.sensors ? totals.sensors->sensing().currents()[d] : CurrentReadout{};
      const std::string part = group("drives", m.drives[d].name, "current_sense/");
      one(part, "sample_time", "s", "when the last sample was taken; what stands beside it belongs to that time", readout.time);
      one(part, "current_then", "A", "true motor current", readout.current);
      one(part, "filtered", "A", "after the low-pass", readout.filtered);
      one(part, "count", "1", "what the converter said", readout.sample.count);
      one(part, "reading", "A", "the current that the firmware makes of it", readout.sample.reading);
    }
  }
  for (std::size_t s = 0; s < m.supplies.size(); ++s) {
    const std::string base = group("supplies", m.supplies[s].name);
    one(base, "voltage", "V", "at the terminals", stage.supply[s].voltage);
    one(base, "current", "A", "that its drives draw together", stage.supply[s].current);
  }
  for (const model::Controller& controller : system.scenario.controllers) {
    const auto d = at(controller.drive);
    const ControlReadout readout = totals.control ? totals.control->readout(d) : ControlReadout{};
    const std::string part = group("drives", m.drives[d].name, "control/");
    one(part, "sample_time", "s", "of the controller's last sample; what stands beside it belongs to that time", readout.time);
    one(part, "reading", "radian", "shaft angle that the controller saw", readout.seen.angle);
    one(part, "speed_reading", "radian s-1", "shaft speed that the controller makes of its readings", readout.speed);
    one(part, "current_reading", "A", "motor current that the controller saw", readout.seen.current);
    one(part, "command", "V", "voltage that it asks for until its next sample", readout.out.voltage);
    if (std::holds_alternative<model::Loops>(controller.program)) {
      one(part, "loop", "1", "outermost loop that acts: 0 none, 1 position, 2 speed, 3 current, 4 force", static_cast<double>(readout.loop));
      one(part, "set_point", "radian", "shaft angle asked for; the reading where no position is", readout.set_point);
      one(part, "error", "radian", "set point less reading", readout.set_point - readout.seen.angle);
      one(part, "speed_set_point", "radian s-1", "of the speed loop; 0 where there is none", readout.out.speed);
      one(part, "current_set_point", "A", "of the current loop; 0 where there is none", readout.out.current);
      const auto& loops = std::get<model::Loops>(controller.program);
      if (loops.force) one(part, "tension_set_point", "N", "cord tension at the pulley that the force asked for takes; 0 where none is", readout.tension);
      if (loops.homing) one(part, "offset", "radian", "that homing found for the readings", readout.offset);
    } else if (std::holds_alternative<model::OwnFirmware>(controller.program)) {
      one(part, "loop", "1", "what is asked of the firmware: 0 nothing, to grasp or to open, 1 position, 2 speed, 3 current, 4 force", static_cast<double>(readout.loop));
      one(part, "set_point", "radian", "shaft angle asked for; the reading where no position is", readout.set_point);
      one(part, "error", "radian", "set point less reading", readout.set_point - readout.seen.angle);
      one(part, "driver", "1", "what the firmware asks of the driver: 0 leads open, 1 leads shorted, 2 a voltage, 3 a duty", readout.driver);
      one(part, "current_limit", "A", "that it asks of the driver; 0: none", readout.current_limit);
      many(part, "told", "1", "what the firmware tells", told, readout.told.data(), readout.told.size());
    } else {
      one(part, "phase", "1", "of the hold routine: 0 open, 1 closing, 2 squeezing, 3 easing, 4 holding, 5 opening", static_cast<double>(readout.phase));
      one(part, "current_limit", "A", "that it asks of the driver; 0: none, or switched off", readout.current_limit);
    }
    if (controller.brown_out > 0) one(part, "down", "1", "1 while it is reset by a low supply, or starting again", readout.down ? 1.0 : 0.0);
    if (controller.stall || controller.heat)
      one(part, "tripped", "1", "0 no, 1 by the stall guard, 2 by the heat guard", static_cast<double>(readout.tripped));
    if (controller.heat) one(part, "winding_estimate", "K", "the heat guard's winding temperature", readout.winding_estimate);
  }
  for (std::size_t i = 0; i < system.contacts.size(); ++i) {
    const ContactResult& r = stage.contact[i];
    const std::string base = group("contacts", system.contacts[i].name);
    one(base, "normal_force", "N", "force pressing the two surfaces together", r.normal_force);
    one(base, "friction_force", "N", "size of the friction force", r.tangent_force.norm());
    one(base, "gap", "m", "distance of the surfaces, negative when pressed in", r.closest.gap);
    one(base, "slips", "1", "1 while the contact slides", r.slips ? 1.0 : 0.0);
    many(base, "force", "N", "whole force on the phalanx (on the first of two objects), world axes", axes, r.force.data(), 3);
    many(base, "point", "m", "where it acts, world", axes, r.point.data(), 3);
  }
  for (std::size_t o = 0; o < system.scenario.objects.size(); ++o) {
    const auto link = at(system.link_of_object[o]);
    const auto& pose = stage.kinematics.pose[link];
    const std::string base = group("objects", system.scenario.objects[o].name);
    many(base, "position", "m", "origin of the object, world", axes, pose.p.data(), 3);
    const Eigen::Quaterniond turn(pose.R);
    many(base, "orientation", "1", "orientation as a quaternion", quaternion, turn.coeffs().data(), 4);
    const Vector3d velocity = stage.kinematics.velocity[link].at(pose.p);
    many(base, "velocity", "m s-1", "velocity of the origin", axes, velocity.data(), 3);
    one(base, "split_force", "N", "force between the two halves of the object across the split plane",
        split_force(system, stage, o));
    const Vector3d held = contact_force(system, stage, o);
    many(base, "contact_force", "N", "of palm and phalanges together on the object, world axes", axes, held.data(), 3);
    if (system.tree.links[link].kind == dynamics::JointKind::free) {
      const dynamics::Force net = stage.net_force(system.link_of_object[o]);
      many(base, "net_force", "N", "contacts, weight and all else that acts on it together, world axes: 0 in balance", axes, net.force.data(), 3);
      many(base, "net_moment", "N m", "of the same about the centre of mass", axes, net.moment.data(), 3);
    }
  }
  for (std::size_t b = 0; b < m.bodies.size(); ++b) {
    const auto& pose = stage.kinematics.pose[at(system.link_of_body[b])];
    const std::string base = group("bodies", m.bodies[b].name);
    many(base, "position", "m", "origin of the body, world", axes, pose.p.data(), 3);
    const Eigen::Quaterniond turn(pose.R);
    many(base, "orientation", "1", "orientation as a quaternion", quaternion, turn.coeffs().data(), 4);
  }
  for (std::size_t a = 0; a < account_count; ++a)
    one("/energy/", ledger_names[a], "J",
        a <= static_cast<std::size_t>(Account::prescribed_motion) ? "energy brought in since the start"
                                                                  : "energy lost since the start",
        totals.energy[static_cast<int>(a)]);
  one("/energy/", "stored", "J", "energy stored, kinetic and potential, relative to the start",
      stage.stored_energy() - totals.stored_at_start);
  one("/energy/", "residual", "J", "brought in less stored less lost: the integrator's error", energy_residual(stage, totals));
  one("/solver/", "step", "s", "length of the step that ended here", totals.step);
}

}  // namespace

std::vector<std::string> node_names(const System& system, std::size_t cord) {
  std::vector<std::string> names;
  const auto& nodes = system.cords[cord].path.nodes();
  int number = 0;
  for (std::size_t k = 0; k < nodes.size(); ++k) {
    number = k > 0 && nodes[k].body == nodes[k - 1].body ? number + 1 : 1;
    names.push_back(fmt::format("{} bend {}", system.model().bodies[at(nodes[k].body)].name, number));
  }
  return names;
}

std::vector<std::string> span_names(const System& system, std::size_t cord) {
  std::vector<std::string> names;
  const CordSystem& c = system.cords[cord];
  for (int s = 0; s < c.path.span_count(); ++s) {
    const auto [from, to] = c.path.span_bodies(s);
    const std::string& a = system.model().bodies[at(from)].name;
    const std::string& b = system.model().bodies[at(to)].name;
    names.push_back(from == to ? fmt::format("{} {}", s + 1, a) : fmt::format("{} {} to {}", s + 1, a, b));
  }
  return names;
}

double slack(const Stage& stage, std::size_t cord) {
  if (stage.hangs[cord]) return 0;
  double length = 0, material = 0;
  for (double l : stage.path[cord].length) length += l;
  for (double l : stage.chain[cord].material) material += l;
  for (double t : stage.chain[cord].tension)
    if (t > 0) return 0;
  return std::max(0.0, material - length);
}

double split_force(const System& system, const Stage& stage, std::size_t object) {
  const Vector3d& normal = system.scenario.objects[object].split_normal;
  const Vector3d& center = stage.kinematics.pose[at(system.link_of_object[object])].p;
  double force = 0;
  for (std::size_t i = 0; i < system.contacts.size(); ++i) {
    const bool rides = system.contacts[i].rider == static_cast<int>(object);
    if (system.contacts[i].object != static_cast<int>(object) && !rides) continue;
    const ContactResult& r = stage.contact[i];
    // The force on the object is −r.force, that on a rider r.force; pressing towards the other half is along −normal.
    if ((r.point - center).dot(normal) > 0) force += (rides ? -1 : 1) * r.force.dot(normal);
  }
  return force;
}

Vector3d contact_force(const System& system, const Stage& stage, std::size_t object) {
  Vector3d force = Vector3d::Zero();
  for (std::size_t i = 0; i < system.contacts.size(); ++i)
    if (system.contacts[i].body >= 0 && system.contacts[i].object == static_cast<int>(object)) force -= stage.contact[i].force;
  return force;
}

double energy_residual(const Stage& stage, const Totals& totals) {
  return energy_gained(totals.energy) - (stage.stored_energy() - totals.stored_at_start);
}

std::vector<Channel> channels(const System& system) {
  std::vector<Channel> list;
  Stage shown(system);
  const State state = start_state(system);
  Totals totals;
  totals.energy = Ledger::Zero(system.ledger_size);
  for (const CordSystem& cord : system.cords) totals.passed.emplace_back(at(cord.path.node_count()));
  shown.look(state);
  visit<true>(system, shown, state, totals,
              [&](const std::string& base, const char* leaf, const char* unit, const char* text,
                  const std::vector<std::string>& columns, const double*, std::size_t) {
                list.push_back({base + leaf, unit, text, columns});
              });
  return list;
}

void observe(const System& system, const Stage& stage, const State& state, const Totals& totals, std::vector<double>& row) {
  row.clear();
  visit<false>(system, stage, state, totals,
               [&](const std::string&, const char*, const char*, const char*, const std::vector<std::string>&,
                   const double* values, std::size_t count) { row.insert(row.end(), values, values + count); });
}

}  // namespace sinewright::simulation
