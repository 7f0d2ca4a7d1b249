#include "study/limit.h"

#include <mutex>

#include <fmt/format.h>

#include "strength/margin_watch.h"
#include "study/directions.h"
#include "study/parallel.h"

namespace sinewright::study {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

std::vector<Point> points_of(const std::vector<model::MapAxis>& map) {
  std::vector<Point> points(1);
  for (const model::MapAxis& axis : map) {
    std::vector<Point> more;
    for (const Point& point : points)
      for (std::size_t i = 0; i < axis.values.size(); ++i) {
        Point next = point;
        next.place.push_back(i);
        for (const std::string& key : axis.keys) next.overrides.push_back(key + "=" + axis.values[i]);
        more.push_back(std::move(next));
      }
    points = std::move(more);
  }
  return points;
}

std::string quantity_of(const model::LimitStudy& study) {
  if (const auto* search = std::get_if<model::Search>(&study.task)) return search->key;
  if (const auto* directions = std::get_if<model::Directions>(&study.task)) return "pull on " + directions->object;
  const auto& ramp = std::get<model::Ramp>(study.task);
  if (const auto* load = std::get_if<model::RiseOfLoad>(&ramp.what)) return "force of " + load->load;
  if (const auto* drive = std::get_if<model::RiseOfVoltage>(&ramp.what)) return "voltage of " + drive->drive;
  const auto& way = std::get<model::RiseOfDisplacement>(ramp.what);
  return (ramp.peak_force ? "greatest force that held " : "displacement of ") + way.object;
}

Probe run_once(const model::Scenario& scenario) {
  const simulation::System system(scenario);
  strength::MarginWatch watch(system);  // so that a requirement may ask for a margin
  simulation::RunListener listener;
  strength::attach(watch, listener);
  Probe probe = probe_of(system, simulation::run(system, listener));
  probe.holds = probe.complete;
  for (const auto& verdict : probe.verdicts) probe.holds = probe.holds && verdict.met;
  return probe;
}

}  // namespace

const Point* least(const LimitResult& result) {
  const Point* found = nullptr;
  for (const Point& point : result.points)
    if (point.answer.found && (!found || point.answer.value < found->answer.value)) found = &point;
  return found;
}

LimitResult find_limit(reading::Source& source, const model::LimitStudy& study, const std::vector<std::string>& overrides,
                       int threads, const std::function<void(int)>& progress) {
  LimitResult result{quantity_of(study), "", {}, points_of(study.map)};
  for (const model::MapAxis& axis : study.map) result.axes.push_back({axis.name, axis.labels});
  std::mutex one_at_a_time;  // a source reads files, and progress is told one by one
  int done = 0;
  const auto scenario_of = [&](const std::vector<std::string>& special, std::string* added) {
    std::vector<std::string> all = study.change;
    all.insert(all.end(), overrides.begin(), overrides.end());
    all.insert(all.end(), special.begin(), special.end());
    if (added) all.push_back(*added);
    const std::scoped_lock lock(one_at_a_time);
    return reading::read_scenario(source, study.scenario, all);
  };
  const auto count = [&](int runs) {
    const std::scoped_lock lock(one_at_a_time);
    done += runs;
    if (progress) progress(done);
  };

  if (const auto* task = std::get_if<model::Directions>(&study.task)) {
    result.unit = "N";
    result.axes.push_back({"direction", direction_labels(*task)});
    const auto directions = directions_of(*task);
    std::vector<Point> all;
    for (const Point& point : result.points)
      for (std::size_t d = 0; d < directions.size(); ++d) {
        all.push_back(point);
        all.back().place.push_back(d);
      }
    result.points = std::move(all);
    for_each_index(static_cast<int>(result.points.size()), threads, [&](int i) {
      Point& point = result.points[at(i)];
      const Pull pull = pull_in(scenario_of(point.overrides, nullptr), *task, directions[point.place.back()], study.place);
      point.answer = answer_ramp(pull.scenario, pull.ramp, study.tolerance, study.place);
      for (Probe& probe : point.answer.probes) probe.overrides = point.overrides;
      count(static_cast<int>(point.answer.probes.size()));
    });
    return result;
  }

  const int n_points = static_cast<int>(result.points.size());
  if (const auto* ramp = std::get_if<model::Ramp>(&study.task)) {
    result.unit = unit_of(*ramp);
    for_each_index(n_points, threads, [&](int i) {
      Point& point = result.points[at(i)];
      point.answer = answer_ramp(scenario_of(point.overrides, nullptr), *ramp, study.tolerance, study.place);
      for (Probe& probe : point.answer.probes) probe.overrides = point.overrides;
      count(static_cast<int>(point.answer.probes.size()));
    });
    return result;
  }

  const auto& search = std::get<model::Search>(study.task);
  result.unit = search.unit;
  const auto trial_at = [&](const Point& point, double value) {
    std::string change = fmt::format("{}={}{}{}", search.key, value, search.unit.empty() ? "" : " ", search.unit);
    const model::Scenario scenario = scenario_of(point.overrides, &change);
    if (scenario.requirements.empty())
      throw InvalidInput(fmt::format("{}:{}:{}: the scenario {} requires nothing, so there is nothing to hold\n  needed: 'require' there, "
                                     "or in 'change': \"require=[{{quantity: …, at_least: …}}]\"",
                                     study.place.file, study.place.line, study.place.column, study.scenario));
    Probe probe = run_once(scenario);
    probe.value = value;
    probe.overrides = point.overrides;
    probe.overrides.push_back(change);
    count(1);
    return probe;
  };
  // All samples of all variants at once, then each variant by itself: bisection cannot be shared out.
  const std::vector<double> values = sample_values(search);
  std::vector<std::vector<Probe>> samples(at(n_points), std::vector<Probe>(values.size()));
  for_each_index(n_points * search.samples, threads, [&](int i) {
    const std::size_t point = at(i / search.samples), sample = at(i % search.samples);
    samples[point][sample] = trial_at(result.points[point], values[sample]);
  });
  for_each_index(n_points, threads, [&](int i) {
    Point& point = result.points[at(i)];
    point.answer = narrow_down(search, study.tolerance, std::move(samples[at(i)]),
                               [&](double value) { return trial_at(point, value); });
  });
  return result;
}

}  // namespace sinewright::study
