// What a whole hand costs against one finger: both grasp an object that is free to move, at the same tolerance.

#include <benchmark/benchmark.h>

#include "shipped.h"
#include "simulation/run.h"
#include "simulation/stage.h"
#include "simulation/stepper.h"

namespace {

using namespace sinewright;
using namespace sinewright::simulation;

model::Scenario scenario_of(bool hand) {
  return read_shipped(std::string(SINEWRIGHT_SOURCE_DIR "/scenarios/") + (hand ? "hand-bottle.yaml" : "grasp-free.yaml"), 1e-3);
}

void grasp(benchmark::State& bench, bool hand) {
  const System system(scenario_of(hand));
  long steps = 0, iterations = 0;
  for (auto _ : bench) {
    const RunResult result = run(system);
    if (!result.complete) bench.SkipWithError(result.outcome.c_str());
    steps += result.counters.steps;
    iterations += result.iterations;
  }
  const double runs = static_cast<double>(bench.iterations());
  using benchmark::Counter;
  bench.counters["cpu_s_per_simulated_s"] = Counter(runs * system.scenario.duration, Counter::kIsRate | Counter::kInvert);
  bench.counters["steps"] = static_cast<double>(steps) / runs;
  bench.counters["newton_per_step"] = static_cast<double>(iterations) / static_cast<double>(steps);
  bench.counters["velocities"] = system.n_v;
}
BENCHMARK_CAPTURE(grasp, finger, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(grasp, hand, true)->Unit(benchmark::kMillisecond);

// One stage of the hand when all its fingers press, 0.5 s.
void hand_stage(benchmark::State& bench) {
  const System system(scenario_of(true));
  Stepper stepper(system);
  State state = start_state(system);
  std::vector<DriveCommand> commands(system.shafts.size());
  for (std::size_t d = 0; d < commands.size(); ++d) {
    commands[d].kind = DriveCommand::Kind::voltage;
    commands[d].voltage = 6;
    commands[d].current_limit = system.model().drives[d].current_limit;
  }
  while (state.time < 0.5) stepper.step(state, commands, 0.5);
  Stage solver(system);
  const StageBase base{state.q, state.v, state.cords, state.spring};
  for (auto _ : bench) {
    VectorXd v = state.v;
    benchmark::DoNotOptimize(solver.solve(state, base, commands, 1e-4, state.time + 1e-4, v));
  }
}
BENCHMARK(hand_stage)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
