// The studies in scenarios/studies can be set up: their keys, outcomes and requirements name something, and every option can be read.

#include <algorithm>
#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

#include "reading/reading.h"
#include "study/design_runs.h"

using namespace sinewright;

namespace {

// Beside the studies stand scenarios that only they use.
bool is_study(const std::filesystem::path& file) {
  std::ifstream stream(file);
  for (std::string line; std::getline(stream, line);)
    if (line == "sinewright: study") return true;
  return false;
}

}  // namespace

TEST_CASE("shipped studies: each can be set up on the files as they are", "[slow]") {
  std::vector<std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(SINEWRIGHT_SOURCE_DIR "/scenarios/studies"))
    if (entry.path().extension() == ".yaml" && is_study(entry.path())) files.push_back(entry.path().string());
  std::sort(files.begin(), files.end());
  REQUIRE(files.size() >= 3);
  for (const std::string& file : files) {
    INFO(file);
    reading::Source source;
    const model::Study study = reading::read_study(source, file);
    CHECK_FALSE(study.name.empty());
    CHECK(study.about.find("nvented") != std::string::npos);  // demonstrations say so
    const study::Bench bench = study::set_up(study, source, {});
    CHECK(bench.drawn.outcomes.size() == bench.columns.size());
  }
}
