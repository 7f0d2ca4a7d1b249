// Designs per second of wall time through the shipped grasp: with one thread, with two, and by hand without a study's keeping.

#include <benchmark/benchmark.h>

#include <filesystem>
#include <fstream>
#include <string>

#include <unistd.h>

#include "shipped.h"
#include "simulation/run.h"
#include "strength/margin_watch.h"
#include "study/study.h"

namespace {

namespace fs = std::filesystem;
using namespace sinewright;

constexpr int kDesigns = 48;

// A folder for the study's file and journal, gone at the end.
struct Folder {
  fs::path path = fs::temp_directory_path() / ("sinewright-bench-" + std::to_string(getpid()));
  Folder() { fs::create_directories(path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() { fs::remove_all(path); }
};

void designs(benchmark::State& bench) {
  const Folder folder;
  const fs::path file = folder.path / "study.yaml";
  std::ofstream(file) << "sinewright: study\nname: bench\nruns: {grasp: {scenario: " SINEWRIGHT_SOURCE_DIR "/scenarios/grasp-medium.yaml}}\n"
                         "vary:\n  friction: {key: model.cords.flexor.channel.friction, plus_minus: 20 %}\n  radius: {key: model.drives.flexor.pulley.radius, plus_minus: 0.1 mm}\n"
                         "outcomes: [grasp.grip_force]\nsample: {runs: " << kDesigns << "}\n";
  for (auto _ : bench) {
    reading::Source source;
    const model::Study study = reading::read_study(source, file);
    study::StudyOptions options;
    options.threads = static_cast<int>(bench.range(0));
    options.journal = folder.path / "journal";
    const study::StudyTable table = study::run_study(source, study, options);
    if (!table.complete) bench.SkipWithError("stopped");
  }
  bench.counters["designs_per_s"] = benchmark::Counter(static_cast<double>(bench.iterations()) * kDesigns, benchmark::Counter::kIsRate);
}

// What the same runs cost without reading, keeping and handing out.
void bare_runs(benchmark::State& bench) {
  const simulation::System system(read_shipped(SINEWRIGHT_SOURCE_DIR "/scenarios/grasp-medium.yaml"));
  for (auto _ : bench)
    for (int i = 0; i < kDesigns; ++i) {
      strength::MarginWatch watch(system);
      simulation::RunListener listener;
      strength::attach(watch, listener);
      benchmark::DoNotOptimize(simulation::run(system, listener));
    }
  bench.counters["designs_per_s"] = benchmark::Counter(static_cast<double>(bench.iterations()) * kDesigns, benchmark::Counter::kIsRate);
}

}  // namespace

BENCHMARK(bare_runs)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(designs)->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();

BENCHMARK_MAIN();
