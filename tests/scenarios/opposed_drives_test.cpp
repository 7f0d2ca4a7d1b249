// A finger from files whose rubber return is replaced by an opposing cord on a drive of its own, as docs/user-guide/shared-drive.md says.

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>

#include <catch2/catch.hpp>

#include "reading/reading.h"
#include "simulation/run.h"

namespace {

using namespace sinewright;

std::string content(const std::string& file) {
  std::stringstream text;
  text << std::ifstream(SINEWRIGHT_SOURCE_DIR "/" + file).rdbuf();
  return text.str();
}

void replace(std::string& text, const std::string& from, const std::string& to, const std::string& by) {
  const std::size_t begin = text.find(from), end = text.find(to, begin);
  REQUIRE(begin != std::string::npos);
  REQUIRE(end != std::string::npos);
  text.replace(begin, end - begin, by);
}

std::string two_drive_finger() {
  std::string text = content("models/demo-finger.yaml");
  replace(text, "\n# A mouth lies", "A mouth lies",
          "\n  extensor: {body: knuckle, supply: battery, motor: micro_6v, gearhead: train_75, current_limit: 0.3 A, pulley: {radius: 3.5 mm}}\n\n# ");
  replace(text, "  return:\n", "\n# What else one finger takes",
          R"(  extensor:
    line: braid_05
    channel: {friction: 0.12, source: invented}
    path:
      - {pulley: extensor, at: [-34 mm, 6 mm, 0 mm]}
      - {guide: [0 mm, 0 mm, 0 mm], in: knuckle, axis: [0, 0, 1], radius: 5 mm, side: [0, 1, 0]}
      - {bend: [22 mm, 4 mm, 0 mm], in: proximal, radius: 4 mm}
      - {guide: [45 mm, 0 mm, 0 mm], in: proximal, axis: [0, 0, 1], radius: 4 mm, side: [0, 1, 0]}
      - {bend: [12 mm, 3 mm, 0 mm], in: middle, radius: 4 mm}
      - {guide: [25 mm, 0 mm, 0 mm], in: middle, axis: [0, 0, 1], radius: 3 mm, side: [0, 1, 0]}
      - {anchor: [12 mm, 2 mm, 0 mm], in: distal}
)");
  return text;
}

}  // namespace

TEST_CASE("opposed drives: a finger from files closes by one drive and is opened by the other", "[scenarios]") {
  std::vector<std::pair<std::string, std::string>> files = {{"models/finger.yaml", two_drive_finger()}};
  for (const char* name : {"materials", "surfaces", "bushings", "lines", "motors"})
    files.emplace_back(std::string("models/parts/") + name + ".yaml", content(std::string("models/parts/") + name + ".yaml"));
  files.emplace_back("scenario.yaml", R"(sinewright: scenario
name: close and open by two drives
model: models/finger.yaml
duration: 2.5 s
timeline:
  - {at: 0.1 s, drive: extensor, voltage: -1.5 V}
  - {at: 0.1 s, drive: flexor, voltage: 6 V}
  - {at: 0.9 s, drive: extensor, off: open}
  - {at: 1.2 s, drive: flexor, voltage: -6 V}
  - {at: 1.2 s, drive: extensor, voltage: 6 V}
  - {at: 2.2 s, drive: flexor, off: open}
)");
  reading::Source source(files);
  const simulation::System system(reading::read_scenario(source, "scenario.yaml"));
  REQUIRE(system.shafts.size() == 2);
  const auto result = simulation::run(system, {});
  REQUIRE(result.complete);
  const auto of = [&](const std::string& key) {
    for (const auto& value : result.summary)
      if (value.key == key) return value.value;
    FAIL("no " << key);
    return 0.0;
  };
  CHECK(of("closing_time") < 1.1);                    // ended by stopping the flexor, not by the extensor's commands
  for (const char* joint : {"MCP", "PIP", "DIP"}) CHECK(of(std::string("joint_angle.") + joint) > 1.2);
  CHECK(of("remaining_flexion") < 0.05);
  CHECK(std::isnan(of("opening_ratio.MCP")));         // nothing elastic returns it
  CHECK(of("shaft_angle.extensor") < -3);             // it has paid out
  for (const auto& value : result.summary) CHECK_FALSE(value.key.starts_with("tip_error."));  // though the flexor has a sensor
  CHECK(of("energy_residual") < 0.005);
}
