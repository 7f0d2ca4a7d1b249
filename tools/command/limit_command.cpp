#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "out_folder.h"
#include "progress.h"
#include "quantity/quantity.h"
#include "reading/reading.h"
#include "record/limit_file.h"
#include "record/writer.h"
#include "simulation/summary.h"
#include "study/directions.h"
#include "study/limit.h"

namespace sinewright::tool {

namespace {

namespace fs = std::filesystem;

std::string with_unit(double value, const std::string& unit) {
  if (std::isnan(value)) return "—";
  return fmt::format("{:.4g}{}{}", value, unit.empty() ? "" : " ", unit);
}

std::string place_text(const study::LimitResult& result, const study::Point& point) {
  std::string text;
  for (std::size_t a = 0; a < result.axes.size(); ++a)
    text += fmt::format("{}{} {}", a ? ", " : "", result.axes[a].name, result.axes[a].labels[point.place[a]]);
  return text;
}

std::string posture_text(const study::Answer& answer) {
  std::vector<std::string> joints;
  for (const auto& [joint, angle] : answer.posture) joints.push_back(fmt::format("{} {:.1f} deg", joint, from_si(angle, "deg")));
  return fmt::format("{}", fmt::join(joints, ", "));
}

const char* event_text(model::EndEvent event) {
  switch (event) {
    case model::EndEvent::shaft_turns: return "the shaft turns";
    case model::EndEvent::joint_moves: return "a joint moves";
    case model::EndEvent::object_leaves: return "the object leaves";
    case model::EndEvent::motor_stalls: return "the motor stalls";
    case model::EndEvent::margin_falls: return "a margin falls";
  }
  return "";
}

void add_answer(std::string& text, const model::LimitStudy& study, const study::LimitResult& result, const study::Point& point) {
  const study::Answer& answer = point.answer;
  if (!point.place.empty()) text += fmt::format("\n{}\n", place_text(result, point));
  const auto* ramp = std::get_if<model::Ramp>(&study.task);
  if (!answer.found) {
    text += fmt::format("  NO LIMIT FOUND: {}\n", answer.note);
  } else {
    text += fmt::format("  {} = {} ± {}\n", result.quantity, with_unit(answer.value, result.unit), with_unit(answer.error, result.unit));
    if (ramp)
      text += fmt::format("  {}: {}, at {:.4g} s\n  the error is what slower runs would still change, judged from the last halvings of the rate\n", event_text(ramp->until.event),
                          answer.subject, answer.time);
    else
      text += "  last value at which the requirements hold; the error is half of the last bracket\n";
    text += fmt::format("  posture {}: {}\n", ramp ? "then" : "at the end of the last run that holds", posture_text(answer));
    if (!answer.note.empty()) text += fmt::format("  {}\n", answer.note);
    if (answer.changes.size() > 1)
      for (const auto& change : answer.changes)
        text += fmt::format("    holds at {}, fails at {}\n", with_unit(change.holds_at, result.unit), with_unit(change.fails_at, result.unit));
  }
  text += ramp ? fmt::format("\n  {:>12} {:>12} {:>10}\n", "rate", "answer", "at")
               : fmt::format("\n  {:>16} {:>8}\n", "value", "holds");
  std::vector<const study::Probe*> order;
  for (const auto& probe : answer.probes) order.push_back(&probe);
  if (!ramp) std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) { return a->value < b->value; });
  for (const study::Probe* probe : order) {
    if (ramp) {
      const std::string rise = std::holds_alternative<model::RiseOfDisplacement>(ramp->what) ? "m/s" : result.unit + "/s";
      text += fmt::format("  {:>12} {:>12} {:>8.4g} s\n", with_unit(probe->rate, rise), with_unit(probe->value, result.unit), probe->end_time);
    } else {
      std::string why;
      const auto unmet = std::find_if(probe->verdicts.begin(), probe->verdicts.end(), [](const auto& one) { return !one.met; });
      if (unmet != probe->verdicts.end())
        why = std::isnan(unmet->value)
                  ? fmt::format("   {} did not occur, {} is asked", unmet->quantity, unmet->demand)
                  : fmt::format("   {} = {}, {} is asked", unmet->quantity, simulation::reached_text(*unmet), unmet->demand);
      text += fmt::format("  {:>16} {:>8}{}\n", with_unit(probe->value, result.unit), probe->holds ? "yes" : "no",
                          probe->complete ? why : "   ended early: " + probe->outcome.substr(0, probe->outcome.find('\n')));
    }
  }
  if (answer.ended_early > 0)
    text += fmt::format("  {} of {} runs could not go on to their end; they count as not holding\n", answer.ended_early, answer.probes.size());
}

std::string gave_text(const study::Answer& answer) {
  return answer.gave.contact.empty() ? "" : fmt::format("{} {}", answer.gave.contact, answer.gave.lifts ? "comes off" : "slides");
}

// One row a direction, and the worst; of a map a block a variant.
std::string directions_text(const model::LimitStudy& study, const model::Directions& task, const study::LimitResult& result) {
  const auto directions = study::directions_of(task);
  const auto& labels = result.axes.back().labels;
  std::string text = study.name + "\n";
  for (std::size_t from = 0; from < result.points.size(); from += directions.size()) {
    if (result.axes.size() > 1) text += fmt::format("\n{} {}\n", result.axes[0].name, result.axes[0].labels[result.points[from].place[0]]);
    text += fmt::format("\n  {:<22} {:>18}   the finger that gives first\n", "direction", result.quantity + " [N]");
    const study::Point* worst = nullptr;
    bool noted = false;
    for (std::size_t d = 0; d < directions.size(); ++d) {
      const study::Point& point = result.points[from + d];
      const study::Answer& answer = point.answer;
      if (!answer.found) {
        text += fmt::format("  {:<22} {:>18}   {}\n", labels[d], answer.ended_early ? "could not go on" : fmt::format("holds {:g}", task.most),
                            answer.ended_early ? answer.note : "");
        continue;
      }
      const std::string gave = gave_text(answer);
      text += fmt::format("  {:<22} {:>18}   {}\n", labels[d], fmt::format("{:.4g} ± {:.2g}{}", answer.value, answer.error, answer.settled ? "" : " !"),
                          gave.empty() ? "none" : fmt::format("{}, at {:.3g} N", gave, answer.gave.value));
      noted = noted || !answer.settled;
      if (!worst || answer.value < worst->answer.value) worst = &point;
    }
    if (noted) text += "  !: not settled, halving the rate still moved it by more than the tolerance\n";
    if (!worst) {
      text += fmt::format("  every direction holds {:g} N\n", task.most);
      continue;
    }
    const Eigen::Vector3d& direction = directions[worst->place.back()];
    const study::Answer& answer = worst->answer;
    text += fmt::format("\n  worst: {}, toward ({:.2f}, {:.2f}, {:.2f}): {:.4g} N ± {:.2g} N, as much as a weight of {:.4g} g\n", labels[worst->place.back()],
                        direction.x(), direction.y(), direction.z(), answer.value, answer.error, 1e3 * answer.value / 9.81);
  }
  text += "\n  the force at which the object had gone " + fmt::format("{:g} mm", 1e3 * task.more_than) +
          " or had no contact left; weight and other loads of the scenario act beside it\n\nDesign predictions, not certification.\n";
  return text;
}

std::string limit_text(const model::LimitStudy& study, const study::LimitResult& result) {
  if (const auto* task = std::get_if<model::Directions>(&study.task)) return directions_text(study, *task, result);
  std::string text = study.name + "\n";
  if (study.map.size() >= 1) {
    // The table first: the rows are the first axis, the columns the second.
    const model::MapAxis& rows = study.map[0];
    const std::size_t n = study.map.size() > 1 ? study.map[1].values.size() : 1;
    std::size_t width = 12, first = rows.name.size();
    for (const auto& value : rows.labels) first = std::max(first, value.size());
    if (n > 1)
      for (const auto& value : study.map[1].labels) width = std::max(width, value.size() + 2);
    text += fmt::format("\n  {}{}{}\n", result.quantity, result.unit.empty() ? "" : " in ", result.unit);
    text += fmt::format("  {:<{}}", rows.name, first);
    if (n > 1)
      for (const auto& value : study.map[1].labels) text += fmt::format("{:>{}}", value, width);
    text += n > 1 ? fmt::format("   ({})\n", study.map[1].name) : "\n";
    for (std::size_t r = 0; r < rows.labels.size(); ++r) {
      text += fmt::format("  {:<{}}", rows.labels[r], first);
      for (std::size_t c = 0; c < n; ++c) {
        const study::Answer& answer = result.points[r * n + c].answer;
        text += fmt::format("{:>{}}", answer.found ? fmt::format("{:.4g}{}", answer.value, answer.settled && answer.monotone ? "" : " !") : "none", width);
      }
      text += '\n';
    }
    text += "  none: no limit found there; !: see the note below\n";
  }
  for (const auto& point : result.points) add_answer(text, study, result, point);
  text += "\nDesign predictions, not certification.\n";
  return text;
}

nlohmann::ordered_json finite(double value) {
  return std::isfinite(value) ? nlohmann::ordered_json(value) : nlohmann::ordered_json(nullptr);
}

std::string limit_json(const model::LimitStudy& study, const study::LimitResult& result, const std::string& record) {
  nlohmann::ordered_json json;
  json["limit"] = study.name;
  json["engine"] = "sinewright " SINEWRIGHT_VERSION;
  json["record"] = record;
  json["quantity"] = result.quantity;
  json["unit"] = result.unit.empty() ? "1" : result.unit;
  const auto* task = std::get_if<model::Directions>(&study.task);
  if (const study::Point* worst = task ? study::least(result) : nullptr) {
    json["worst"]["value"] = worst->answer.value;
    for (std::size_t a = 0; a < result.axes.size(); ++a) json["worst"]["at"][result.axes[a].name] = result.axes[a].labels[worst->place[a]];
  }
  json["limits"] = nlohmann::ordered_json::array();
  for (const auto& point : result.points) {
    const study::Answer& answer = point.answer;
    nlohmann::ordered_json entry;
    for (std::size_t a = 0; a < result.axes.size(); ++a) entry["at"][result.axes[a].name] = result.axes[a].labels[point.place[a]];
    if (task) {
      const Eigen::Vector3d direction = study::directions_of(*task)[point.place.back()];
      entry["direction"] = {direction.x(), direction.y(), direction.z()};
      entry["gives_first"] = answer.gave.contact.empty() ? nlohmann::ordered_json(nullptr)
                                                         : nlohmann::ordered_json({{"contact", answer.gave.contact},
                                                                                   {"how", answer.gave.lifts ? "comes off" : "slides"},
                                                                                   {"value", answer.gave.value}});
    }
    entry["found"] = answer.found;
    entry["settled"] = answer.settled;
    entry["monotone"] = answer.monotone;
    entry["value"] = answer.found ? finite(answer.value) : nullptr;
    entry["error"] = answer.found ? finite(answer.error) : nullptr;
    entry["time"] = {{"value", answer.time}, {"unit", "s"}};
    entry["subject"] = answer.subject;
    entry["note"] = answer.note;
    for (const auto& [joint, angle] : answer.posture) entry["posture"][joint] = {{"value", angle}, {"unit", "rad"}};
    entry["changes"] = nlohmann::ordered_json::array();
    for (const auto& change : answer.changes) entry["changes"].push_back({{"holds_at", change.holds_at}, {"fails_at", change.fails_at}});
    entry["runs"] = nlohmann::ordered_json::array();
    for (const auto& probe : answer.probes)
      entry["runs"].push_back({{"value", finite(probe.value)}, {"rate", probe.rate}, {"holds", probe.holds}, {"complete", probe.complete},
                               {"outcome", probe.outcome}, {"end_time", probe.end_time}, {"overrides", probe.overrides}});
    json["limits"].push_back(entry);
  }
  return json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

record::LimitRecord record_of(const model::LimitStudy& study, const study::LimitResult& result) {
  record::LimitRecord kept;
  kept.name = study.name;
  kept.quantity = result.quantity;
  kept.unit = result.unit;
  const auto* search = std::get_if<model::Search>(&study.task);
  const auto* task = std::get_if<model::Directions>(&study.task);
  kept.method = search ? "search" : task ? "directions" : "ramp";
  kept.in_plane = task && task->plane;
  const auto directions = task ? study::directions_of(*task) : std::vector<Eigen::Vector3d>();
  kept.logarithmic = search && search->logarithmic;
  for (const auto& axis : result.axes) kept.axes.emplace_back(axis.name, axis.labels);
  for (const auto& point : result.points) {
    const study::Answer& answer = point.answer;
    record::KeptLimit limit;
    for (std::size_t a = 0; a < result.axes.size(); ++a) limit.place.push_back(result.axes[a].labels[point.place[a]]);
    if (task) {
      const Eigen::Vector3d& direction = directions[point.place.back()];
      limit.direction = {direction.x(), direction.y(), direction.z()};
      limit.gave = gave_text(answer);
      limit.gave_at = limit.gave.empty() ? std::nan("") : answer.gave.value;
    }
    limit.found = answer.found;
    limit.settled = answer.settled;
    limit.monotone = answer.monotone;
    limit.value = answer.found ? answer.value : std::nan("");
    limit.error = answer.error;
    limit.time = answer.time;
    limit.note = answer.note;
    for (const auto& probe : answer.probes)
      limit.runs.push_back({probe.overrides, probe.value, probe.rate, probe.holds, probe.outcome, probe.end_time, probe.subject,
                            probe.posture, probe.summary, probe.verdicts, probe.events, probe.course});
    kept.limits.push_back(std::move(limit));
  }
  return kept;
}

}  // namespace

int limit_command(const std::string& path, const CommonOptions& options) {
  reading::Source source;
  // What begins with "scenario." goes to the scenario (and "scenario.model." to its model), the rest to the limit file.
  std::vector<std::string> own, below;
  const std::string prefix = "scenario.";
  for (const std::string& written : options.set) {
    if (written.starts_with(prefix))
      below.push_back(written.substr(prefix.size()));
    else
      own.push_back(written);
  }
  const model::LimitStudy study = reading::read_limit(source, path, own);

  fs::path out = options.out;
  if (out.empty()) out = fs::path("out") / fs::path(path).stem().concat(".limit.h5");
  make_folder_of(out);

  double expected = 1;
  for (const auto& axis : study.map) expected *= static_cast<double>(axis.values.size());
  // How many there will be is not known: halvings and bisections go on until it is good enough.
  if (const auto* search = std::get_if<model::Search>(&study.task))
    expected *= search->samples + std::max(0.0, std::log2(0.5 / study.tolerance / search->samples)) + 1;
  else if (const auto* task = std::get_if<model::Directions>(&study.task))
    expected *= 3 * task->count;
  else
    expected *= 3;
  study::LimitResult result;
  {
    ProgressBar bar(study.name, !options.quiet);
    result = study::find_limit(source, study, below, options.threads, [&](int runs) { bar.show(std::min(0.99, runs / expected)); });
  }

  record::LimitRecord kept = record_of(study, result);
  kept.inputs.engine_version = SINEWRIGHT_VERSION;
  kept.inputs.scenario_path = path;
  kept.inputs.overrides = options.set;
  for (const auto& file : source.handed_out()) kept.inputs.files.emplace_back(file.path, file.text);
  record::write_limit(out, kept);

  if (options.json)
    fmt::print("{}", limit_json(study, result, out.string()));
  else if (!options.quiet)
    fmt::print("{}\nrecord: {}\n", limit_text(study, result), out.string());

  // Some direction in which the object is lost is an answer, though others hold all that was tried.
  const bool directions = std::holds_alternative<model::Directions>(study.task);
  bool all_found = !directions || study::least(result) != nullptr, stopped = false;
  for (const auto& point : result.points) {
    all_found = all_found && (directions || point.answer.found);
    // A ramp that could not go on has no answer, and a search none of whose runs could.
    const bool ramp = !std::holds_alternative<model::Search>(study.task);
    const auto n = static_cast<int>(point.answer.probes.size());
    stopped = stopped || (ramp ? !point.answer.probes.back().complete : point.answer.ended_early == n);
  }
  return stopped ? could_not_go_on : all_found ? done : requirement_failed;
}

}  // namespace sinewright::tool
