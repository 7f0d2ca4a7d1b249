#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>

#include <catch2/catch.hpp>

#include "reading/reading.h"

using namespace sinewright;
namespace fs = std::filesystem;

namespace {

// The YAML files of one kind in a folder.
std::vector<fs::path> yaml_files(const std::string& folder, const std::string& kind) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(fs::path(SINEWRIGHT_SOURCE_DIR) / folder)) {
    if (entry.path().extension() != ".yaml") continue;
    std::ifstream in(entry.path());
    for (std::string line; std::getline(in, line);)
      if (line == "sinewright: " + kind) files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

}  // namespace

TEST_CASE("shipped: every model reads and is whole", "[shipped]") {
  const std::vector<fs::path> files = yaml_files("models", "model");
  REQUIRE_FALSE(files.empty());
  for (const fs::path& file : files) {
    CAPTURE(file);
    reading::Source source;
    const model::Model model = reading::read_model(source, file);
    CHECK_FALSE(model.name.empty());
    CHECK_FALSE(model.bodies.empty());
    CHECK_FALSE(model.cords.empty());
    CHECK_FALSE(model.drives.empty());
    // The model and its parts files; of a hand those of its fingers as well, each once.
    const std::string name = file.filename().string();
    CHECK(source.handed_out().size() == (name == "demo-hand.yaml" ? 8u : name == "demo-thumb.yaml" ? 5u : 6u));
    for (const model::Drive& drive : model.drives) CHECK_FALSE(drive.motor.source.empty());
  }
}

TEST_CASE("shipped: every scenario reads", "[shipped]") {
  const std::vector<fs::path> files = yaml_files("scenarios", "scenario");
  REQUIRE_FALSE(files.empty());
  for (const fs::path& file : files) {
    CAPTURE(file);
    reading::Source source;
    const model::Scenario scenario = reading::read_scenario(source, file);
    CHECK_FALSE(scenario.name.empty());
    CHECK(scenario.duration > 0);
    CHECK(std::is_sorted(scenario.timeline.begin(), scenario.timeline.end(),
                         [](const auto& a, const auto& b) { return a.time < b.time; }));
    CHECK(source.handed_out().size() >= 2);
  }
}
