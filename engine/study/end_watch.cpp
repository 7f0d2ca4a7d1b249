#include "study/end_watch.h"

#include <cmath>

#include <fmt/format.h>

namespace sinewright::study {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

double joint_angle(const simulation::System& system, const simulation::State& state, std::size_t hinge) {
  return state.q[system.tree.links[at(system.hinges[hinge].link)].q];
}

int contacts_of(const simulation::System& system, const simulation::Stage& stage, std::size_t object) {
  int count = 0;
  for (std::size_t c = 0; c < system.contacts.size(); ++c)
    if (system.contacts[c].body >= 0 && system.contacts[c].object == static_cast<int>(object) && stage.contact[c].normal_force > 0) ++count;
  return count;
}

}  // namespace

EndWatch::EndWatch(const simulation::System& system, const strength::MarginWatch& margins, const model::RampEnd& end, double start,
                   const Place& place)
    : system_(system), margins_(margins), end_(end), start_(start) {
  const auto& m = system.model();
  std::vector<std::string> names, words;  // how a file names it, and how an answer does, where that differs
  switch (end.event) {
    case model::EndEvent::shaft_turns:
    case model::EndEvent::motor_stalls:
      for (const auto& drive : m.drives) names.push_back(drive.name);
      break;
    case model::EndEvent::joint_moves:
      for (const auto& hinge : system.hinges) names.push_back(m.bodies[at(hinge.body)].hinge->name);
      break;
    case model::EndEvent::object_leaves:
      for (const auto& object : system.scenario.objects) names.push_back(object.name);
      break;
    case model::EndEvent::margin_falls:
      for (const auto& [name, check] : margins.names()) {
        names.push_back(name);
        words.push_back(check);
      }
      break;
  }
  for (std::size_t i = 0; i < names.size(); ++i)
    if (end.subject.empty() || end.subject == names[i]) watched_.push_back({words.empty() ? names[i] : words[i], i});
  if (watched_.empty())
    throw InvalidInput(fmt::format("{}:{}:{}: the ramp's end names '{}', which is not there\n  needed: one of: {}", place.file,
                                   place.line, place.column, end.subject.empty() ? "any" : end.subject,
                                   names.empty() ? "(the model has none)" : fmt::format("{}", fmt::join(names, ", "))));
}

bool EndWatch::powered(std::size_t drive, double time) const {
  bool on = false;
  for (const auto& entry : system_.scenario.timeline) {
    if (entry.time > time || entry.drive != static_cast<int>(drive)) continue;
    if (!std::holds_alternative<model::CommandCurrentLimit>(entry.command)) on = !std::holds_alternative<model::CommandOff>(entry.command);
  }
  return on;
}

std::optional<Ended> EndWatch::look(const simulation::Stage& stage, const simulation::State& state) {
  if (state.time < start_) return std::nullopt;
  const bool first = !begun_;
  begun_ = true;
  std::optional<Ended> ended;
  const auto earliest = [&](double time, const std::string& name) {
    if (!ended || time < ended->time) ended = Ended{time, name};
  };
  for (Watched& w : watched_) {
    double far = 0;
    switch (end_.event) {
      case model::EndEvent::shaft_turns:
      case model::EndEvent::joint_moves: {
        const double angle = end_.event == model::EndEvent::joint_moves ? joint_angle(system_, state, w.index)
                                                                        : state.q[system_.shafts[w.index].q_output];
        if (first) w.angle = angle;
        far = std::abs(angle - w.angle);
        break;
      }
      case model::EndEvent::margin_falls:
        far = 1 / margins_.ratios()[w.index];
        if (first && far > end_.more_than) earliest(state.time, w.name);  // lost before the rise began
        if (first) w.before = far;
        break;
      case model::EndEvent::object_leaves: {
        const Eigen::Vector3d place = stage.kinematics.pose[at(system_.link_of_object[w.index])].p;
        if (first) w.place = place;
        far = (place - w.place).norm();
        const bool touches = contacts_of(system_, stage, w.index) > 0;
        w.touched = w.touched || touches;
        if (w.touched && !touches) earliest(state.time, w.name);
        break;
      }
      case model::EndEvent::motor_stalls: {
        const bool rests = state.v[system_.shafts[w.index].v_output] == 0 && powered(w.index, state.time);
        if (!rests) {
          w.rests_since = -1;
          w.turned = w.turned || state.v[system_.shafts[w.index].v_output] != 0;
        } else if (w.rests_since < 0) {
          w.rests_since = state.time;
        }
        if (w.turned && rests && state.time - w.rests_since >= end_.more_than) earliest(w.rests_since, w.name);
        continue;
      }
    }
    if (far > end_.more_than && w.before <= end_.more_than)
      earliest(time_ + (end_.more_than - w.before) / (far - w.before) * (state.time - time_), w.name);
    w.before = far;
  }
  time_ = state.time;
  return ended;
}

}  // namespace sinewright::study
