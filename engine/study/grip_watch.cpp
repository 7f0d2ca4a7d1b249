#include "study/grip_watch.h"

namespace sinewright::study {

namespace {

constexpr double kSlides = 1e-4;  // [m]

}  // namespace

GripWatch::GripWatch(const simulation::System& system, const std::string& object, double start) : system_(system), start_(start) {
  for (std::size_t c = 0; c < system.contacts.size(); ++c) {
    const auto& contact = system.contacts[c];
    const bool moves = contact.body >= 0 && system.model().bodies[static_cast<std::size_t>(contact.body)].moves();
    if (moves && (object.empty() || system.scenario.objects[static_cast<std::size_t>(contact.object)].name == object))
      watched_.push_back({c, false, 0});
  }
}

void GripWatch::look(const simulation::Stage& stage, const simulation::State& state) {
  if (state.time < start_) return;
  const double step = state.time - time_;
  time_ = state.time;
  if (!begun_) {
    begun_ = true;
    for (Watched& w : watched_) w.pressed = stage.contact[w.candidate].normal_force > 0;
    return;
  }
  for (Watched& w : watched_) {
    if (!w.pressed || !first_.contact.empty()) continue;
    const simulation::ContactResult& contact = stage.contact[w.candidate];
    const bool lifts = contact.normal_force <= 0;
    if (!lifts && contact.slips) {
      const Eigen::Vector3d& n = contact.closest.normal;
      w.slid += step * (contact.velocity - n * n.dot(contact.velocity)).norm();
    }
    if (lifts || w.slid > kSlides) first_ = {system_.contacts[w.candidate].name, lifts, state.time, 0};
  }
}

}  // namespace sinewright::study
