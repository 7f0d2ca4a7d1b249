// What a controller that is sampled at 1 kHz costs: the same closing of the demo finger at 3 V, commanded once, and asked for at every sample by a loop
// that is far from its set point and so cut to 3 V. Steps must end at the samples; that is most of the cost.

#include <benchmark/benchmark.h>

#include "shipped.h"
#include "simulation/control.h"
#include "simulation/run.h"

namespace {

using namespace sinewright;

model::Scenario closing() {
  model::Scenario scenario = read_shipped(SINEWRIGHT_SOURCE_DIR "/scenarios/close-free.yaml");
  scenario.requirements.clear();
  scenario.timeline = {{0.05, 0, model::CommandVoltage{3, 0}}};
  scenario.duration = 1;
  return scenario;
}

model::Scenario controlled(double period) {
  model::Scenario scenario = closing();
  model::Controller controller;
  controller.drive = 0;
  controller.period = period;
  controller.voltage_limit = 3;
  model::Loops loops;
  loops.position = model::Loop{100, 10, 0.1, 5e-3, model::no_limit};
  controller.program = loops;
  scenario.controllers = {controller};
  scenario.timeline = {{0.05, 0, model::SetPosition{100, model::MoveStep{}}}};
  return scenario;
}

model::Scenario with_firmware() {
  model::Scenario scenario = controlled(1e-3);
  scenario.controllers[0].program = model::OwnFirmware{SINEWRIGHT_FIRMWARE_FOLDER "/position_loop.so", {}, {{"gain", 100, "V/rad", {}}}};
  return scenario;
}

void whole(benchmark::State& bench, const model::Scenario& scenario) {
  const simulation::System system(scenario);
  long steps = 0;
  for (auto _ : bench) {
    const auto result = simulation::run(system);
    if (!result.complete) bench.SkipWithError(result.outcome.c_str());
    steps = result.counters.steps;
  }
  bench.counters["cpu_s_per_simulated_s"] = benchmark::Counter(static_cast<double>(bench.iterations()) * scenario.duration, benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
  bench.counters["steps"] = static_cast<double>(steps);
}

// A sample alone, without any step.
void sample(benchmark::State& bench, const model::Scenario& scenario) {
  const simulation::System system(scenario);
  simulation::Control control(system);
  simulation::Stage stage(system);
  simulation::State state = simulation::start_state(system);
  stage.look(state);
  simulation::Sensing sensing(system);
  sensing.begin(stage, state);
  std::vector<simulation::DriveCommand> commands(1);
  std::vector<simulation::Event> events;
  control.take(0, scenario.timeline[0].command, 0);
  long n = 0;
  for (auto _ : bench) {
    state.time = 1e-3 * static_cast<double>(n++);
    control.sample(stage, state, sensing, commands, events);
    benchmark::DoNotOptimize(commands[0].voltage);
  }
}

}  // namespace

int main(int argc, char** argv) {
  using benchmark::RegisterBenchmark;
  RegisterBenchmark("run/without", [](benchmark::State& b) { whole(b, closing()); })->Unit(benchmark::kMillisecond);
  RegisterBenchmark("run/loop_at_1kHz", [](benchmark::State& b) { whole(b, controlled(1e-3)); })->Unit(benchmark::kMillisecond);
  RegisterBenchmark("run/loop_at_200Hz", [](benchmark::State& b) { whole(b, controlled(5e-3)); })->Unit(benchmark::kMillisecond);
  RegisterBenchmark("run/firmware_at_1kHz", [](benchmark::State& b) { whole(b, with_firmware()); })->Unit(benchmark::kMillisecond);
  RegisterBenchmark("sample/loop", [](benchmark::State& b) { sample(b, controlled(1e-3)); });
  RegisterBenchmark("sample/firmware", [](benchmark::State& b) { sample(b, with_firmware()); });
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
