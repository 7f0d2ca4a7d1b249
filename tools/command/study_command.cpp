#include <fmt/format.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <filesystem>

#include "commands.h"
#include "export/tables.h"
#include "out_folder.h"
#include "progress.h"
#include "reading/reading.h"
#include "record/study_file.h"
#include "study/findings.h"
#include "study/kept.h"
#include "study/study.h"
#include "study_text.h"

namespace sinewright::tool {

namespace {

namespace fs = std::filesystem;

std::atomic<bool> asked_to_stop = false;
static_assert(std::atomic<bool>::is_always_lock_free);  // so that a signal may set it

// While one lives, Ctrl-C and a polite kill end the study after the designs that are under way; a second Ctrl-C ends it at once.
class StopOnSignal {
 public:
  StopOnSignal() {
    asked_to_stop = false;
    for (const int number : {SIGINT, SIGTERM}) std::signal(number, [](int which) {
      asked_to_stop = true;
      std::signal(which, SIG_DFL);
    });
  }
  ~StopOnSignal() {
    for (const int number : {SIGINT, SIGTERM}) std::signal(number, SIG_DFL);
  }
  StopOnSignal(const StopOnSignal&) = delete;
  StopOnSignal& operator=(const StopOnSignal&) = delete;
};

// Which of the --set go to the study's file and which to its runs: those begin with "model." or a run's name.
struct Overrides {
  std::vector<std::string> own, below;
};
Overrides divided(reading::Source& source, const std::string& path, const std::vector<std::string>& set) {
  Overrides divided;
  if (set.empty()) return divided;
  const model::Study study = reading::read_study(source, path);
  for (const std::string& change : set) {
    const std::string first = change.substr(0, change.find_first_of(".="));
    const bool below = first == "model" || std::any_of(study.runs.begin(), study.runs.end(), [&](const auto& run) { return run.name == first; });
    (below ? divided.below : divided.own).push_back(change);
  }
  return divided;
}

// The study with what the command line changes, and how its runs are made, the same in every process.
struct Order {
  model::Study study;
  study::StudyOptions how;
};
Order order_of(reading::Source& source, const std::string& path, const CommonOptions& options) {
  const Overrides overrides = divided(source, path, options.set);
  Order order{reading::read_study(source, path, overrides.own), {}};
  order.how.overrides = overrides.below;
  order.how.threads = options.threads;
  order.how.fingerprint = fmt::format("{} {}", SINEWRIGHT_VERSION, fmt::join(overrides.own, " "));
  return order;
}

// A process that helps says nothing: the leader does.
int help(study::Ranks& ranks, const std::string& path, const CommonOptions& options) {
  const StopOnSignal listening;  // the leader decides when it is over
  try {
    reading::Source source;
    const Order order = order_of(source, path, options);
    study::help_study(source, order.study, order.how, ranks);
  } catch (const InvalidInput& error) {
    study::decline(ranks, error.what());
  } catch (const std::exception& error) {
    fmt::print(stderr, "process {}: {}\n", ranks.number(), error.what());
    ranks.abandon();
  }
  return done;
}

int lead(study::Followers& followers, const std::string& path, const StudyCommandOptions& wanted, const CommonOptions& options) {
  reading::Source source;
  auto [study, how] = order_of(source, path, options);

  fs::path out = options.out;
  if (out.empty()) out = fs::path("out") / fs::path(path).stem().concat(".study.h5");
  make_folder_of(out);
  const fs::path csv_path = fs::path(out).replace_extension(".csv");

  how.journal = fs::path(out).replace_extension(".journal");
  how.resume = wanted.resume;
  how.followers = &followers;
  how.stop = &asked_to_stop;

  std::uint64_t done_rows = 0, of_rows = 0;
  record::StudyRecord kept;
  const auto begun = std::chrono::steady_clock::now();
  const auto seconds = [&] { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(); };
  std::uint64_t first_done = 0;
  double spent = 0;
  {
    const StopOnSignal listening;
    ProgressBar bar(study.name, !options.quiet);
    how.progress = [&](std::uint64_t done, std::uint64_t of) {
      if (first_done == 0) first_done = done;
      done_rows = done, of_rows = of;
      bar.show(static_cast<double>(done) / static_cast<double>(of), fmt::format("{} of {}, {:.1f} a second", done, of, static_cast<double>(done - first_done + 1) / seconds()));
    };
    study::StudyTable table = study::run_study(source, study, how);
    spent = seconds();
    if (!table.complete) {
      fmt::print(stderr, "stopped with {} rows done, which are kept in {}\n  the same command with --resume goes on\n", done_rows, how.journal.string());
      return could_not_go_on;
    }
    kept = study::record_of(study, table);
    kept.inputs.engine_version = SINEWRIGHT_VERSION;
    kept.inputs.scenario_path = path;
    kept.inputs.overrides = options.set;
    kept.inputs.seed = kept.seed;
    for (const auto& file : source.handed_out()) kept.inputs.files.emplace_back(file.path, file.text);
    record::write_study(out, kept);
    exporting::Csv csv(',');
    exporting::write_study(csv, kept, exporting::Units::display);
    exporting::write_whole(csv_path, csv.take());
    table.remove_journal();
  }

  const study::Findings findings = study::findings_of(kept);
  if (options.json) {
    fmt::print("{}", study_json(kept, out.string(), csv_path.string()));
  } else if (!options.quiet) {
    fmt::print("{}", study_text(kept, findings));
    if (done_rows >= first_done && first_done > 0)
      fmt::print("{} rows in {:.1f} s, {:.1f} a second\n", done_rows - first_done + 1, spent, static_cast<double>(done_rows - first_done + 1) / spent);
    fmt::print("table: {}\n       {}\n", out.string(), csv_path.string());
  }
  if (kept.rows() > 0 && findings.states[2] + findings.states[3] == findings.last - findings.first) return could_not_go_on;
  return kept.kind == "optimise" && kept.best.empty() ? requirement_failed : done;
}

}  // namespace

int study_command(const std::string& path, const StudyCommandOptions& wanted, const CommonOptions& options) {
  study::Ranks ranks;
  if (!ranks.leads()) return help(ranks, path, options);
  study::Followers followers(ranks);
  return lead(followers, path, wanted, options);
}

}  // namespace sinewright::tool
