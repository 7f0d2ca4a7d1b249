// Cost of the parts of a step, on the demo finger's grasp.

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include "../geometry/mesh_shapes.h"
#include "geometry/mesh_check.h"
#include "geometry/mesh_digest.h"
#include "geometry/stl.h"
#include "shipped.h"
#include "simulation/run.h"
#include "simulation/stage.h"
#include "simulation/stepper.h"

namespace {

using namespace sinewright;
using namespace sinewright::simulation;

const System& grasp() {
  static const System system(read_shipped(SINEWRIGHT_SOURCE_DIR "/scenarios/grasp-medium.yaml"));
  return system;
}

// The grasp at a moment when the finger closes and nothing touches yet (0.1 s) or when all phalanges press (0.3 s).
struct Moment {
  State state;
  std::vector<DriveCommand> commands;
};
Moment moment(double time) {
  Stepper stepper(grasp());
  Moment m{start_state(grasp()), std::vector<DriveCommand>(grasp().shafts.size())};
  m.commands[0].kind = DriveCommand::Kind::voltage;
  m.commands[0].voltage = 6;
  m.commands[0].current_limit = grasp().model().drives[0].current_limit;
  while (m.state.time < time) stepper.step(m.state, m.commands, time);
  return m;
}

void stage(benchmark::State& bench) {
  const Moment m = moment(1e-3 * static_cast<double>(bench.range(0)));
  Stage solver(grasp());
  const StageBase base{m.state.q, m.state.v, m.state.cords, m.state.spring};
  long iterations = 0, solves = 0;
  for (auto _ : bench) {
    VectorXd v = m.state.v;
    const auto result = solver.solve(m.state, base, m.commands, 1e-4, m.state.time + 1e-4, v);
    benchmark::DoNotOptimize(v.data());
    iterations += result.iterations;
    ++solves;
  }
  bench.counters["newton_iterations"] = static_cast<double>(iterations) / static_cast<double>(solves);
}
BENCHMARK(stage)->Arg(100)->Arg(300)->Unit(benchmark::kMicrosecond);

void chain(benchmark::State& bench) {
  const auto spans = static_cast<std::size_t>(bench.range(0));
  const friction::TensionFunction law(model::LinearLaw{4000});
  friction::ChainSolution solution = friction::make_solution(static_cast<int>(spans));
  std::vector<double> length(spans, 0.01), material(spans, 0.01), stretch(spans, 1.0);
  std::vector<friction::NodeLimit> limit(spans - 1, {0.05, 0.05});
  std::vector<friction::Slip> slip(spans - 1, friction::Slip::stick);
  length[0] += 1e-4 * static_cast<double>(spans);  // pulled at one end: every node slips
  const friction::ChainStep step{length, limit, slip, material, stretch, 0.0, 1e-3};
  for (auto _ : bench) {
    solve_chain(law, 0, step, solution);
    benchmark::DoNotOptimize(solution.tension.data());
  }
  bench.counters["passes"] = solution.passes;
}
BENCHMARK(chain)->Arg(11)->Arg(41)->Arg(161)->Unit(benchmark::kMicrosecond);

void closest_points(benchmark::State& bench) {
  const model::Capsule phalanx{{0, 0, 0}, {0.03, 0, 0}, 0.008};
  const model::Cylinder bar{{0, 0, 0}, {0, 0, 1}, 0.02, 0.08};
  model::Hull hull;
  for (int k = 0; k < 32; ++k)
    for (double z : {-0.04, 0.04}) hull.points.emplace_back(0.02 * std::cos(0.19635 * k), 0.02 * std::sin(0.19635 * k), z);
  const contact::ShapePair pair = bench.range(0) == 0 ? contact::ShapePair(phalanx, bar) : contact::ShapePair(phalanx, hull);
  Eigen::Isometry3d a = Eigen::Isometry3d::Identity(), b = Eigen::Isometry3d::Identity();
  a.translation() = Eigen::Vector3d(-0.01, 0.0279, 0.001);
  for (auto _ : bench) benchmark::DoNotOptimize(pair.closest(a, b));
  bench.SetLabel(bench.range(0) == 0 ? "capsule-cylinder, closed form" : "capsule-hull, Bullet");
}
BENCHMARK(closest_points)->Arg(0)->Arg(1)->Unit(benchmark::kMicrosecond);

// A part of about 249,000 triangles, from the bytes of its file to what the engine keeps of it.
void stl_part(benchmark::State& bench) {
  const mesh_shapes::Soup soup = bench.range(0) == 0 ? mesh_shapes::torus(20, 5, 500, 249) : mesh_shapes::ball(20, 144);
  const std::string bytes = bench.range(1) == 0 ? mesh_shapes::binary_stl(soup) : mesh_shapes::ascii_stl(soup);
  for (auto _ : bench) benchmark::DoNotOptimize(geometry::digest_mesh(bytes));
  bench.SetLabel(fmt::format("{}, {}", bench.range(0) == 0 ? "torus" : "ball", bench.range(1) == 0 ? "binary" : "ASCII"));
}
BENCHMARK(stl_part)->Args({0, 0})->Args({0, 1})->Args({1, 0})->Args({1, 1})->Unit(benchmark::kMillisecond);

// Its steps.
void stl_step(benchmark::State& bench) {
  const std::string bytes = mesh_shapes::binary_stl(mesh_shapes::torus(20, 5, 500, 249));
  const geometry::TriangleMesh mesh = geometry::read_stl(bytes);
  for (auto _ : bench) {
    if (bench.range(0) == 0) benchmark::DoNotOptimize(geometry::read_stl(bytes));
    if (bench.range(0) == 1) benchmark::DoNotOptimize(geometry::check_mesh(mesh));
    if (bench.range(0) == 2) benchmark::DoNotOptimize(geometry::volume_of(mesh.points, mesh.triangles));
    if (bench.range(0) == 3) benchmark::DoNotOptimize(geometry::touching_hull(mesh.points));
  }
  const char* const labels[] = {"read", "checks and volume", "volume alone", "hull"};
  bench.SetLabel(labels[bench.range(0)]);
}
BENCHMARK(stl_step)->DenseRange(0, 3)->Unit(benchmark::kMillisecond);

void hull_corners(benchmark::State& bench) {
  std::vector<Eigen::Vector3d> points;
  for (const auto& triangle : mesh_shapes::ball(0.02, 60)) points.insert(points.end(), triangle.begin(), triangle.end());
  const geometry::TouchingHull hull = geometry::touching_hull(points, static_cast<std::size_t>(bench.range(0)));
  const contact::ShapePair pair(model::Capsule{{0, 0, 0}, {0.03, 0, 0}, 0.008}, model::Hull{hull.points});
  Eigen::Isometry3d a = Eigen::Isometry3d::Identity(), b = Eigen::Isometry3d::Identity();
  a.translation() = Eigen::Vector3d(-0.01, 0.0272, 0.001);
  for (auto _ : bench) benchmark::DoNotOptimize(pair.closest(a, b));
  bench.SetLabel(fmt::format("ball of 20 mm, {:.2f} mm inside", 1e3 * hull.inside));
}
BENCHMARK(hull_corners)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
