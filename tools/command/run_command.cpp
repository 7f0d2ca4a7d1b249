#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>

#include "commands.h"
#include "out_folder.h"
#include "progress.h"
#include "quantity/invalid_input.h"
#include "quantity/quantity.h"
#include "reading/reading.h"
#include "record/reader.h"
#include "record/writer.h"
#include "simulation/faults.h"
#include "simulation/observe.h"
#include "simulation/run.h"
#include "simulation/sensor_watch.h"
#include "simulation/summary.h"
#include "strength/margin_watch.h"
#include "summary_text.h"

namespace sinewright::tool {

namespace {

namespace fs = std::filesystem;

struct Read {
  model::Scenario scenario;
  record::Inputs inputs;
};

// A scenario from its file, or from the inputs that a record carries.
Read read_input(const std::string& path, const std::vector<std::string>& set) {
  Read read;
  read.inputs.engine_version = SINEWRIGHT_VERSION;
  read.inputs.overrides = set;
  read.inputs.scenario_path = path;
  if (fs::path(path).extension() == ".h5") {
    const record::Record old = record::read_record(path);
    reading::Source source(old.inputs.files);
    read.inputs.overrides = old.inputs.overrides;
    read.inputs.overrides.insert(read.inputs.overrides.end(), set.begin(), set.end());
    read.inputs.scenario_path = old.inputs.scenario_path;
    read.scenario = reading::read_scenario(source, old.inputs.scenario_path, read.inputs.overrides);
    read.inputs.files = old.inputs.files;
    return read;
  }
  reading::Source source;
  read.scenario = reading::read_scenario(source, path, set);
  for (const auto& file : source.handed_out()) read.inputs.files.emplace_back(file.path, file.text);
  return read;
}

// A run whose requirements cannot be judged must not begin. Which numbers a summary has does not depend on what happens,
// so the one of the start alone will do.
void check_requirements(const simulation::System& system, strength::MarginWatch watch) {
  const simulation::State start = simulation::start_state(system);
  simulation::Stage stage(system);
  stage.look(start);
  simulation::Totals totals;
  totals.energy = simulation::Ledger::Zero(system.ledger_size);
  totals.stored_at_start = stage.stored_energy();
  simulation::SummaryBuilder summary(system);
  summary.sample(stage, start, totals, std::vector<bool>(system.shafts.size(), true));
  watch.look(stage, start);
  std::vector<simulation::SummaryValue> values = summary.finish();
  simulation::SensorWatch(system).add_to(values);
  simulation::Control(system).add_to(values);
  simulation::SafetyWatch(system).add_to(values);
  watch.add_to(values);
  static_cast<void>(simulation::judge(system.scenario.requirements, values));
}

// The number of "--for margin=2"; 0: not asked for.
double margin_asked(const RunOptions& run) {
  if (run.for_margin.empty()) return 0;
  const std::string& text = run.for_margin.front();
  constexpr std::string_view key = "margin=";
  try {
    if (text.starts_with(key))
      if (const double ratio = parse_quantity(text.substr(key.size()), "1").si; ratio > 0) return ratio;
  } catch (const QuantityProblem&) {
  }
  throw InvalidInput(
      fmt::format("--for '{}' is not understood\n  needed: margin= and a number above 0, for instance --for margin=2", text));
}

}  // namespace

int run_command(const std::string& path, const RunOptions& run, const CommonOptions& options) {
  const double asked = margin_asked(run);
  const Read read = read_input(path, options.set);
  const simulation::System system(read.scenario);
  strength::MarginWatch watch(system);
  check_requirements(system, watch);

  fs::path out = options.out;
  if (out.empty()) out = fs::path("out") / fs::path(read.inputs.scenario_path).stem().concat(".h5");
  std::error_code different;
  if (fs::exists(out) && fs::equivalent(out, path, different))
    throw InvalidInput(fmt::format("{}: the new record would take the place of the one that it is made from\n  needed: another name, with --out",
                                   out.string()));
  make_folder_of(out);
  record::Writer writer(out, simulation::channels(system), read.inputs);

  simulation::RunResult result;
  {
    ProgressBar bar(system.scenario.name, !options.quiet);
    simulation::RunListener listener;
    listener.row = [&](double time, std::span<const double> row) { writer.append(time, row); };
    listener.event = [&](const simulation::Event& event) { writer.event(event); };
    strength::attach(watch, listener);
    listener.progress = [&](double time) { bar.show(time / system.scenario.duration); };
    result = simulation::run(system, listener);
  }
  const simulation::Margins margins = watch.report();
  writer.finish(result.summary, result.verdicts, result.outcome, margins);
  std::vector<strength::NeededSize> sizes;
  if (asked > 0) sizes = watch.sizes_for(asked);

  if (options.json) {
    fmt::print("{}", summary_json(system, result, margins, asked, sizes, out.string()));
  } else if (!options.quiet) {
    fmt::print("{}\nrecord: {}\n", summary_text(system, result, margins, asked, sizes), out.string());
  }
  if (!result.complete) {
    fmt::print(stderr, "{}\n  the record {} holds everything up to that moment\n", result.outcome, out.string());
    return could_not_go_on;
  }
  const bool met = std::all_of(result.verdicts.begin(), result.verdicts.end(), [](const auto& v) { return v.met; });
  return met ? done : requirement_failed;
}

}  // namespace sinewright::tool
