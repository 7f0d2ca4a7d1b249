// A grasp that is held for an hour.

#include <catch2/catch.hpp>

#include "reading/reading.h"
#include "simulation/run.h"

using namespace sinewright;

TEST_CASE("an hour: a hold routine that holds without current keeps every joint and the shaft to the bit", "[scenarios]") {
  reading::Source source;
  const simulation::System system(reading::read_scenario(
      source, SINEWRIGHT_SOURCE_DIR "/scenarios/hold-routine.yaml",
      {"duration=3600 s", "timeline=[{at: 0.1 s, drive: flexor, hold: grasp}]", "loads.pull.force=0 N", "controllers.flexor.hold.watch=1 s", "solver.max_step=1 s"}));
  simulation::RunListener listener;
  std::vector<double> early, late;
  double current = 0, last = 0;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    last = state.time;
    if (state.time < 10) return false;
    std::vector<double> now = {state.q[system.shafts[0].q_output]};
    for (const auto& hinge : system.hinges) now.push_back(state.q[system.tree.links[static_cast<std::size_t>(hinge.link)].q]);
    if (early.empty()) early = now;
    late = now;
    current = std::max(current, std::abs(stage.shaft[0].electric.current));
    return false;
  };
  const auto result = simulation::run(system, listener);
  REQUIRE(result.complete);
  CHECK(last == 3600);
  CHECK(current == 0);
  CHECK(early[0] > 3);
  CHECK(early == late);
  double grip = 0;
  for (const auto& value : result.summary)
    if (value.key == "held_force") grip = value.value;
  CHECK(grip > 5);
  CHECK(result.counters.steps > 3600);  // it did look every second
}
