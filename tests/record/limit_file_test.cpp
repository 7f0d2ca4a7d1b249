// The record of a limit comes back as it was, and nothing half made stands under its name.

#include <cmath>
#include <filesystem>
#include <fstream>
#include <limits>

#include <unistd.h>

#include <catch2/catch.hpp>

#include "record/limit_file.h"
#include "record/reader.h"
#include "record/writer.h"

namespace {

using namespace sinewright;
namespace fs = std::filesystem;
using Catch::Matchers::Contains;

fs::path place(const std::string& name) {
  const fs::path folder = fs::temp_directory_path() / ("sinewright-limit-" + std::to_string(getpid()));
  fs::create_directories(folder);
  return folder / name;
}

record::LimitRecord sample() {
  record::LimitRecord record{{"0.1.0", "a.yaml", {{"a.yaml", "text"}}, {"x=1"}, 0}, "name", "force of pull", "N", "ramp", false, {{"leads", {"open", "shorted"}}}, {}};
  record::KeptRun run{{"timeline.1.off=open"}, 21.5, 5, true, "complete", 3.5, "flexor", {{"MCP", 0.25}}, {{"a/b", 1, "N", "what"}}, {{"a", "at least 1 N", 2, true, "N"}}, {{1, "slip", "flexor", "starts"}}, {{0, 1}, {2, 21.5}}};
  record.limits.push_back({{"open"}, true, false, true, 21.5, 0.1, 3.5, "a note", {run}, {}, "", 0});
  run.value = std::nan("");
  run.holds = false;
  run.course.clear();
  record.limits.push_back({{"shorted"}, false, false, true, std::nan(""), std::numeric_limits<double>::infinity(), 4, "none", {run, run}, {}, "", 0});
  return record;
}

TEST_CASE("limit file: what is written is read back", "[record]") {
  const fs::path file = place("whole.h5");
  record::write_limit(file, sample());
  CHECK(record::is_limit(file));
  const auto back = record::read_limit(file);
  CHECK(back.name == "name");
  CHECK(back.unit == "N");
  CHECK(back.axes == sample().axes);
  REQUIRE(back.limits.size() == 2);
  const auto& limit = back.limits[0];
  CHECK(limit.place == std::vector<std::string>{"open"});
  CHECK(limit.value == 21.5);
  CHECK(limit.note == "a note");
  REQUIRE(limit.runs.size() == 1);
  CHECK(limit.runs[0].overrides == sample().limits[0].runs[0].overrides);
  CHECK(limit.runs[0].course == sample().limits[0].runs[0].course);
  CHECK(limit.runs[0].subject == "flexor");
  CHECK(std::isnan(back.limits[1].runs[1].value));
  CHECK_FALSE(fs::exists(place("whole.packing.h5")));
  fs::remove_all(file.parent_path());
}

TEST_CASE("limit file: directions come back with where they point and what gave", "[record]") {
  const fs::path file = place("directions.h5");
  record::LimitRecord record = sample();
  record.method = "directions";
  record.in_plane = true;
  record.limits[0].direction = {0.6, -0.8, 0};
  record.limits[0].gave = "distal slides";
  record.limits[0].gave_at = 7.5;
  record.limits[1].gave_at = std::nan("");
  record::write_limit(file, record);
  const auto back = record::read_limit(file);
  CHECK(back.method == "directions");
  CHECK(back.in_plane);
  CHECK(back.limits[0].direction == record.limits[0].direction);
  CHECK(back.limits[0].gave == "distal slides");
  CHECK(back.limits[0].gave_at == 7.5);
  CHECK(back.limits[1].gave.empty());
  CHECK(std::isnan(back.limits[1].gave_at));
  fs::remove_all(file.parent_path());
}

TEST_CASE("limit file: a place that cannot be written leaves nothing, and foreign files are refused", "[record][errors]") {
  const fs::path missing = place("none") / "deep" / "limit.h5";
  CHECK_THROWS_WITH(record::write_limit(missing, sample()), Contains("cannot write the record") && Contains("limit.h5"));
  const fs::path foreign = place("foreign.h5");
  std::ofstream(foreign) << "no record";
  CHECK_FALSE(record::is_limit(foreign));
  CHECK_THROWS_AS(record::read_limit(foreign), record::RecordError);
  const fs::path file = place("whole.h5");
  record::write_limit(file, sample());
  CHECK_THROWS_WITH(record::read_record(file), Contains("record of a limit"));
  fs::remove_all(file.parent_path());
}

}  // namespace
