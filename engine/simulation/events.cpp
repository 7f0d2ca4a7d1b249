#include "simulation/events.h"

#include <fmt/format.h>

#include <algorithm>
#include <numbers>

#include "simulation/observe.h"

namespace sinewright::simulation {

namespace {

// Close to half a turn, where a guide's way round flips to the straight line, and where a bend's cord doubles back on itself.
constexpr double most_turning = 170 * std::numbers::pi / 180;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

int stop_side(double push) { return push > 0 ? -1 : push < 0 ? 1 : 0; }

}  // namespace

EventWatch::EventWatch(const System& system)
    : system_(system), gap_(system.contacts.size()), mode_(at(system.n_rows)), stop_(system.hinges.size()),
      slide_stop_(system.slides.size()),
      slack_(system.cords.size()), said_beyond_law_(system.cords.size()), said_doubled_back_(system.cords.size()) {}

void EventWatch::begin(const Stage& stage, const State& state) {
  time_ = state.time;
  for (std::size_t i = 0; i < gap_.size(); ++i) gap_[i] = stage.contact[i].closest.gap;
  mode_ = state.mode;
  for (std::size_t i = 0; i < stop_.size(); ++i) stop_[i] = stop_side(stage.hinge[i].stop_torque);
  for (std::size_t i = 0; i < slide_stop_.size(); ++i) slide_stop_[i] = stop_side(stage.slide[i].stop_force);
  for (std::size_t c = 0; c < slack_.size(); ++c) slack_[c] = slack(stage, c) > 0;
}

void EventWatch::look(const Stage& stage, const State& state, std::vector<Event>& events) {
  const auto& m = system_.model();
  for (std::size_t i = 0; i < gap_.size(); ++i) {
    const double now = stage.contact[i].closest.gap;
    if ((now < 0) != (gap_[i] < 0)) {
      const double share = gap_[i] / (gap_[i] - now);
      const double time = time_ + share * (state.time - time_);
      events.push_back({time, now < 0 ? "contact" : "lift-off", system_.contacts[i].name,
                        now < 0 ? "touches" : "leaves"});
    }
  }
  const auto mode_event = [&](int row, const std::string& name) {
    if (row < 0) return;
    const solver::Mode now = state.mode[at(row)], before = mode_[at(row)];
    if (now == before) return;
    if (now == solver::Mode::sticks) {
      events.push_back({state.time, "stick", name, "comes to rest and is held by friction"});
    } else if (before == solver::Mode::sticks) {
      events.push_back({time_, "slip", name, now == solver::Mode::slides_plus ? "starts to move forward" : "starts to move back"});
    } else {
      events.push_back({state.time, "reversal", name, "reverses"});
    }
  };
  const auto stop_event = [&](int side, int before, const std::string& name) {
    if (side != before)
      events.push_back({state.time, side == 0 ? "stop-left" : "stop", name,
                        side == 0 ? "leaves its end stop" : side > 0 ? "reaches its upper stop" : "reaches its lower stop"});
  };
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const std::string& name = m.bodies[at(system_.hinges[i].body)].hinge->name;
    mode_event(system_.hinges[i].row, name);
    stop_event(stop_side(stage.hinge[i].stop_torque), stop_[i], name);
  }
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const std::string& name = m.bodies[at(system_.slides[i].body)].slide->name;
    mode_event(system_.slides[i].row, name);
    stop_event(stop_side(stage.slide[i].stop_force), slide_stop_[i], name);
  }
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) mode_event(system_.shafts[d].row, m.drives[d].name);
  for (std::size_t c = 0; c < slack_.size(); ++c) {
    const bool now = slack(stage, c) > 0;
    if (now != slack_[c] && !stage.hangs[c])
      events.push_back({state.time, now ? "slack" : "taut", m.cords[at(system_.cords[c].cord)].name,
                        now ? "goes slack" : "pulls again"});
  }
  caution(stage, state, events);
  begin(stage, state);
}

void EventWatch::caution(const Stage& stage, const State& state, std::vector<Event>& events) {
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    const std::string& name = system_.model().cords[at(system_.cords[c].cord)].name;
    const auto& stretch = stage.chain[c].stretch;
    const double most = *std::max_element(stretch.begin(), stretch.end());
    if (!said_beyond_law_[c] && system_.cords[c].law.beyond_validity(most)) {
      said_beyond_law_[c] = true;
      events.push_back({state.time, "caution", name,
                        fmt::format("stretched to {:.3g} times its length, beyond the data of its law ({:.3g})", most,
                                    system_.cords[c].law.max_stretch())});
    }
    const auto& turning = stage.path[c].turning_angle;
    const auto sharpest = std::max_element(turning.begin(), turning.end());
    if (!said_doubled_back_[c] && sharpest != turning.end() && *sharpest > most_turning) {
      said_doubled_back_[c] = true;
      const int body = system_.cords[c].path.nodes()[static_cast<std::size_t>(sharpest - turning.begin())].body;
      events.push_back({state.time, "caution", name,
                        fmt::format("turns by {:.0f} degrees at one point in {}; from half a turn on its arm is wrong",
                                    *sharpest * 180 / std::numbers::pi, system_.model().bodies[at(body)].name)});
    }
  }
}

}  // namespace sinewright::simulation
