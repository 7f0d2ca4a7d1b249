// What the hand's scenarios say beyond their own requirements.

#include <catch2/catch.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "reading/reading.h"
#include "simulation/observe.h"
#include "simulation/run.h"

namespace {

using namespace sinewright;
using Eigen::Vector3d;

model::Scenario read(const std::string& name, const std::vector<std::string>& overrides = {}) {
  reading::Source source;
  return reading::read_scenario(source, SINEWRIGHT_SOURCE_DIR "/scenarios/" + name + ".yaml", overrides);
}

double number(const std::vector<simulation::SummaryValue>& summary, const std::string& key) {
  for (const auto& value : summary)
    if (value.key == key) return value.value;
  FAIL("no number " << key);
  return 0;
}

// The last row of a run, by channel.
struct LastRow {
  std::vector<simulation::Channel> channels;
  std::vector<double> values;
  simulation::RunResult result;

  [[nodiscard]] Vector3d vector(const std::string& path) const {
    std::size_t at = 0;
    for (const auto& channel : channels) {
      if (channel.path == path) return {values[at], values[at + 1], values[at + 2]};
      at += static_cast<std::size_t>(channel.width());
    }
    FAIL("no channel " << path);
    return Vector3d::Zero();
  }
};

LastRow last_row(const simulation::System& system) {
  LastRow last;
  last.channels = simulation::channels(system);
  simulation::RunListener listener;
  listener.row = [&](double, std::span<const double> row) { last.values.assign(row.begin(), row.end()); };
  last.result = simulation::run(system, listener);
  return last;
}

}  // namespace

TEST_CASE("hand: forces and moments on a held object sum to its weight within a millionth of it", "[scenarios]") {
  const std::string name = GENERATE("hand-bottle", "hand-pinch");
  const simulation::System system(read(name));
  const LastRow last = last_row(system);
  const model::Object& object = system.scenario.objects.at(0);
  const double weight = object.mass->mass * system.scenario.gravity.norm();
  const Vector3d center = last.vector("/objects/" + object.name + "/position");  // its mass lies round its origin
  // From what each contact tells, not from the sum that the engine makes of it.
  Vector3d force = object.mass->mass * system.scenario.gravity, moment = Vector3d::Zero();
  int touching = 0;
  for (const auto& contact : system.contacts) {
    const Vector3d f = -last.vector("/contacts/" + contact.name + "/force");
    force += f;
    moment += (last.vector("/contacts/" + contact.name + "/point") - center).cross(f);
    if (f.norm() > 0) ++touching;
  }
  CAPTURE(name, weight, touching);
  CHECK(touching >= 3);
  CHECK(force.norm() < 1e-6 * weight);
  CHECK(moment.norm() < 1e-6 * weight * 0.01);  // on an arm of 10 mm
  CHECK((force - last.vector("/objects/" + object.name + "/net_force")).norm() < 1e-12);
  CHECK((moment - last.vector("/objects/" + object.name + "/net_moment")).norm() < 1e-13);
  CHECK(number(last.result.summary, "energy_residual") < 0.005);
}

TEST_CASE("hand: what touches nothing is out of balance by its weight", "[scenarios]") {
  // The bottle falls past the open hand.
  const simulation::System system(read("hand-bottle", {"timeline=[]", "loads={}", "duration=0.05 s", "require=[]",
                                                        "objects.bottle.at=[0 mm, -300 mm, 0 mm]"}));
  const LastRow last = last_row(system);
  CHECK((last.vector("/objects/bottle/net_force") - Vector3d(0, 0, 0.5 * 9.81)).norm() < 1e-12);
  CHECK(last.vector("/objects/bottle/net_moment").norm() < 1e-15);
}

TEST_CASE("hand: on a weak battery a finger closes more slowly among the others than alone", "[scenarios]") {
  const auto together = simulation::run(simulation::System(read("hand-weak-battery")));
  const auto alone = simulation::run(
      simulation::System(read("hand-weak-battery", {"timeline=[{at: 0.05 s, drive: index.flexor, voltage: 5.2 V}]", "require=[]"})));
  const auto longer = [&](const std::string& key) { return number(together.summary, key) / number(alone.summary, key); };
  CHECK(longer("settling_time.index.MCP") > 1.1);
  CHECK(longer("settling_time.index.PIP") > 1.1);
  CHECK(longer("settling_time.index.DIP") > 1.1);
  CHECK(number(together.summary, "lowest_voltage.battery") < number(alone.summary, "lowest_voltage.battery"));
}
