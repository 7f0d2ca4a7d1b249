// Prints a work-precision table: for each scenario given (default: the grasps), CPU per simulated second and the errors of its
// reported numbers against a run at a hundredth of the default tolerance.

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ctime>

#include "shipped.h"
#include "simulation/run.h"

namespace {

using sinewright::simulation::RunResult;
using sinewright::simulation::System;

struct Timed {
  RunResult result;
  double cpu = 0;  // [s]
};

Timed timed_run(const std::filesystem::path& file, double tolerance) {
  const System system(read_shipped(file, tolerance));
  Timed best;
  best.cpu = 1e9;
  for (int repeat = 0; repeat < 5; ++repeat) {  // the least of five: other load only ever adds
    const std::clock_t start = std::clock();
    best.result = sinewright::simulation::run(system);
    best.cpu = std::min(best.cpu, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  return best;
}

double value(const RunResult& result, const std::string& key) {
  for (const auto& v : result.summary)
    if (v.key == key) return v.value;
  return NAN;
}

std::string percent(double a, double b) {
  if (std::isnan(a) || std::isnan(b) || b == 0) return "—";
  return fmt::format("{:.3f} %", 100 * std::abs(a / b - 1));
}

}  // namespace

int main(int argc, char** argv) {
  std::vector<std::filesystem::path> files(argv + 1, argv + argc);
  if (files.empty())
    for (const char* name : {"grasp-small", "grasp-medium", "grasp-large"})
      files.push_back(std::filesystem::path(SINEWRIGHT_SOURCE_DIR) / "scenarios" / (std::string(name) + ".yaml"));
  for (const auto& file : files) {
    const double duration = read_shipped(file).duration;
    const Timed reference = timed_run(file, 1e-5);
    fmt::print("\n{} ({:g} s; reference: tolerance 1e-5, {} steps)\n\n", file.stem().string(), duration,
               reference.result.counters.steps);
    fmt::print("| tolerance | steps | CPU per simulated second | closing time | grip force | cord tension | energy residual |\n");
    fmt::print("|---|---|---|---|---|---|---|\n");
    for (double tolerance : {1e-1, 3e-2, 1e-2, 3e-3, 1e-3, 3e-4, 1e-4}) {
      const Timed run = timed_run(file, tolerance);
      const auto error = [&](const std::string& key) { return percent(value(run.result, key), value(reference.result, key)); };
      const auto tension = std::find_if(reference.result.summary.begin(), reference.result.summary.end(),
                                        [](const auto& v) { return v.key.starts_with("tension."); });
      fmt::print("| {:.0e} | {} | {:.2f} ms | {} | {} | {} | {:.4f} % |\n", tolerance, run.result.counters.steps,
                 1e3 * run.cpu / duration, error("closing_time"), error("grip_force"), error(tension->key),
                 100 * value(run.result, "energy_residual"));
    }
  }
}
