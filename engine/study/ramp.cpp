#include "study/ramp.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <fmt/format.h>

namespace sinewright::study {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// A step must not stride over a noticeable part of the rise. Taken from the first rate, so that halving it also halves what a
// step strides over: the comparison then bounds the error of stepping as well.
constexpr double kStepsPerRise = 500;

// An object on its path eases in over this part of the rise, for paths are smooth.
constexpr double kEaseIn = 0.02;

template <class T>
std::size_t index_of(const std::vector<T>& list, const std::string& name, const char* what, const Place& place) {
  std::vector<std::string> known;
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (list[i].name == name) return i;
    known.push_back(list[i].name);
  }
  throw InvalidInput(fmt::format("{}:{}:{}: there is no {} '{}' in the scenario\n  needed: one of: {}", place.file, place.line,
                                 place.column, what, name, known.empty() ? "(it has none)" : fmt::format("{}", fmt::join(known, ", "))));
}

double value_of(const model::Ramp& ramp, double rate, double time) {
  return std::clamp(ramp.from + rate * (time - ramp.start), ramp.from, ramp.most);
}

// What the contacts hold against a displacement [N].
double force_against(const simulation::System& system, const simulation::Stage& stage, const model::RiseOfDisplacement& rise) {
  double sum = 0;
  for (std::size_t c = 0; c < system.contacts.size(); ++c) {
    const auto& contact = system.contacts[c];
    if (system.scenario.objects[at(contact.object)].name == rise.object) sum += stage.contact[c].force.dot(rise.direction);
    if (contact.rider >= 0 && system.scenario.objects[at(contact.rider)].name == rise.object)
      sum -= stage.contact[c].force.dot(rise.direction);
  }
  return sum;  // the force on the bodies along the way is the force on the object against it
}

}  // namespace

std::string unit_of(const model::Ramp& ramp) {
  if (std::holds_alternative<model::RiseOfLoad>(ramp.what)) return "N";
  if (std::holds_alternative<model::RiseOfVoltage>(ramp.what)) return "V";
  return ramp.peak_force ? "N" : "m";
}

model::Scenario with_rise(model::Scenario scenario, const model::Ramp& ramp, double rate, const Place& place) {
  const double over = (ramp.most - ramp.from) / rate;
  if (const auto* load = std::get_if<model::RiseOfLoad>(&ramp.what)) {
    scenario.loads[index_of(scenario.loads, load->load, "load", place)].force = {{ramp.start, ramp.start + over},
                                                                                 {ramp.from, ramp.most}};
  } else if (const auto* way = std::get_if<model::RiseOfDisplacement>(&ramp.what)) {
    model::HeldOnPath path;
    if (ramp.start > 0) {
      path.time.push_back(0);
      path.displacement.push_back(ramp.from * way->direction);
    }
    path.time.push_back(ramp.start);
    path.displacement.push_back(ramp.from * way->direction);
    for (const double share : {kEaseIn, 2 * kEaseIn, 1 - kEaseIn, 1.0}) {
      path.time.push_back(ramp.start + share * over);
      path.displacement.push_back((ramp.from + share * (ramp.most - ramp.from)) * way->direction);
    }
    scenario.objects[index_of(scenario.objects, way->object, "object", place)].hold = path;
  } else {
    const auto drive = index_of(scenario.model.drives, std::get<model::RiseOfVoltage>(ramp.what).drive, "drive", place);
    const int index = static_cast<int>(drive);
    auto& timeline = scenario.timeline;
    timeline.erase(std::remove_if(timeline.begin(), timeline.end(),
                                  [&](const auto& entry) { return entry.drive == index && entry.time >= ramp.start; }),
                   timeline.end());
    timeline.push_back({ramp.start, index, model::CommandVoltage{ramp.from, 0}});
    timeline.push_back({ramp.start, index, model::CommandVoltage{ramp.most, over}});
    std::stable_sort(timeline.begin(), timeline.end(), [](const auto& a, const auto& b) { return a.time < b.time; });
  }
  scenario.duration = ramp.start + over;
  scenario.requirements.clear();  // the event is what is asked for
  scenario.solver.max_step = std::min(scenario.solver.max_step, (ramp.most - ramp.from) / ramp.rate / kStepsPerRise);
  return scenario;
}

Probe probe_of(const simulation::System& system, simulation::RunResult result) {
  Probe probe;
  probe.complete = result.complete;
  probe.outcome = result.outcome;
  probe.end_time = result.end.time;
  for (const auto& hinge : system.hinges)
    probe.posture.emplace_back(system.model().bodies[at(hinge.body)].hinge->name, result.end.q[system.tree.links[at(hinge.link)].q]);
  probe.summary = std::move(result.summary);
  probe.verdicts = std::move(result.verdicts);
  probe.events = std::move(result.events);
  return probe;
}

Probe run_ramp(const model::Scenario& given, const model::Ramp& ramp, double rate, const Place& place) {
  const simulation::System system(with_rise(given, ramp, rate, place));
  strength::MarginWatch margins(system);
  EndWatch watch(system, margins, ramp.until, ramp.start, place);
  std::optional<GripWatch> grip;
  if (ramp.until.event == model::EndEvent::object_leaves) grip.emplace(system, ramp.until.subject, ramp.start);
  const auto* way = std::get_if<model::RiseOfDisplacement>(&ramp.what);
  double peak_force = 0;
  std::vector<std::pair<double, double>> course;
  std::optional<Ended> ended;
  double shown = -1;
  simulation::RunListener listener;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    if (way && state.time >= ramp.start) peak_force = std::max(peak_force, force_against(system, stage, *way));
    margins.look(stage, state);
    ended = watch.look(stage, state);
    if (grip) grip->look(stage, state);
    if (ended || shown < 0 || state.time - shown >= system.scenario.duration / 200) {
      const double rose = value_of(ramp, rate, state.time);
      course.emplace_back(state.time, ramp.peak_force && way ? force_against(system, stage, *way) : rose);
      shown = state.time;
    }
    return ended.has_value();
  };
  listener.summary = [&margins](std::vector<simulation::SummaryValue>& summary) { margins.add_to(summary); };
  Probe probe = probe_of(system, simulation::run(system, listener));
  probe.rate = rate;
  probe.peak_force = peak_force;
  probe.course = std::move(course);
  probe.holds = ended.has_value();
  if (grip) probe.gave = grip->first();
  if (!probe.gave.contact.empty()) probe.gave.value = value_of(ramp, rate, probe.gave.time);
  if (ended) {
    probe.end_time = ended->time;
    probe.subject = ended->subject;
  }
  probe.value = !ended               ? std::numeric_limits<double>::quiet_NaN()
                : ramp.peak_force    ? probe.peak_force
                                     : value_of(ramp, rate, ended->time);
  return probe;
}

Answer answer_ramp(const model::Scenario& scenario, const model::Ramp& ramp, double tolerance, const Place& place) {
  Answer answer;
  double rate = ramp.rate, last_moved = 0;
  answer.error = std::numeric_limits<double>::infinity();
  for (int i = 0; i <= ramp.halvings && !answer.settled; ++i, rate /= 2) {
    answer.probes.push_back(run_ramp(scenario, ramp, rate, place));
    const Probe& probe = answer.probes.back();
    answer.found = probe.holds;
    if (!probe.complete) ++answer.ended_early;
    if (!probe.holds) {
      answer.note = probe.complete ? "the event did not come before the rise was at its end: give a higher 'most'"
                                   : "the run could not go on: " + probe.outcome;
      if (i > 0) answer.note += "; at a higher rate it did come";
      break;
    }
    if (i > 0) {
      const double moved = std::abs(probe.value - answer.value);
      // What all further halvings would add, if each adds the same part of the one before as this one did. Inertia behind a
      // threshold fades with the rate to the power 2/3, viscous drag with the rate itself: parts of 0.63 and 0.5.
      const double part = i > 1 ? std::clamp(moved / std::max(last_moved, 1e-300), 0.5, 0.9) : 0.63;
      answer.error = moved * part / (1 - part);
      answer.settled = moved <= tolerance * std::abs(probe.value);
      last_moved = moved;
    }
    answer.value = probe.value;
  }
  const Probe& last = answer.probes.back();
  answer.time = last.end_time;
  answer.subject = last.subject;
  answer.posture = last.posture;
  answer.gave = last.gave;
  if (answer.found && !answer.settled)
    answer.note = fmt::format("NOT SETTLED: the last halving of the rate still moved the answer by {:.2g} %, more than the tolerance of "
                              "{:.2g} %; it depends on the rate, or needs a lower 'rate' or more 'halvings'",
                              100 * last_moved / std::abs(answer.value), 100 * tolerance);
  return answer;
}

}  // namespace sinewright::study
