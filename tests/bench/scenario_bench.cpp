// CPU per simulated second and cost per step of every shipped scenario, without writing a record.

#include <benchmark/benchmark.h>

#include "shipped.h"
#include "simulation/run.h"

namespace {

void whole(benchmark::State& bench, const std::filesystem::path& file) {
  const sinewright::simulation::System system(read_shipped(file));
  long steps = 0, iterations = 0;
  for (auto _ : bench) {
    const auto result = sinewright::simulation::run(system);
    if (!result.complete) bench.SkipWithError(result.outcome.c_str());
    steps += result.counters.steps;
    iterations += result.iterations;
  }
  const double runs = static_cast<double>(bench.iterations());
  using benchmark::Counter;
  bench.counters["simulated_s"] = system.scenario.duration;
  bench.counters["cpu_s_per_simulated_s"] = Counter(runs * system.scenario.duration, Counter::kIsRate | Counter::kInvert);
  bench.counters["steps"] = static_cast<double>(steps) / runs;
  bench.counters["cpu_s_per_step"] = Counter(static_cast<double>(steps), Counter::kIsRate | Counter::kInvert);
  bench.counters["newton_per_step"] = static_cast<double>(iterations) / static_cast<double>(steps);
}

}  // namespace

int main(int argc, char** argv) {
  for (const auto& file : shipped_scenarios())
    benchmark::RegisterBenchmark(file.stem().c_str(), [file](benchmark::State& bench) { whole(bench, file); })
        ->Unit(benchmark::kMillisecond);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
