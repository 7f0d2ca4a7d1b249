// The table of a study comes back as it was, and what does not fit together is refused.

#include "record/study_file.h"

#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <limits>

#include <catch2/catch.hpp>
#include <unistd.h>

#include "record/limit_file.h"
#include "record/writer.h"

namespace {

using namespace sinewright;
namespace fs = std::filesystem;
using Catch::Matchers::Contains;

fs::path place(const std::string& name) {
  const fs::path folder = fs::temp_directory_path() / ("sinewright-study-file-" + std::to_string(getpid()));
  fs::create_directories(folder);
  return folder / name;
}

record::StudyRecord sample() {
  const double none = std::nan(""), infinite = std::numeric_limits<double>::infinity();
  record::StudyRecord table;
  table.inputs = {"0.1.0", "a.yaml", {{"a.yaml", "text"}}, {"x=1"}, 7};
  table.name = "name", table.about = "what", table.kind = "optimise", table.points = "random", table.confidence = 0.9, table.seed = 7;
  table.goals = {{"cost", false}, {"grasp.grip_force", true}};
  table.varied = {{"radius", "m", "mm", "model.a", {}, {0.001, 0.002, none}}, {"gear/box", "1", "1", "model.b", {"a", "b"}, {0, 1, none}}};
  table.made = {{"radius", "m", "mm", "model.a", {}, {none, none, 0.0021}}};
  table.outcomes = {{"grasp.grip_force", "N", "N", "force", {}, {1, none, 3}}};
  table.requirements = {{"grasp.grip_force", "at least 2 N", 2, none, {0.5, infinite, 0}}};
  table.states = {record::RowState::missed, record::RowState::stopped, record::RowState::met};
  table.reasons = {1, 2, 0};
  table.reason_texts = {"", "too weak", "it broke"};
  table.designs = 2;
  table.best = {0};
  table.chosen = 0;
  table.drawn = {1.5};
  table.findings = {{"yield", 0.5, "1", "share"}, {"x.y/z", 2, "N", ""}};
  return table;
}

bool same(const std::vector<double>& a, const std::vector<double>& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (a[i] != b[i] && !(std::isnan(a[i]) && std::isnan(b[i]))) return false;
  return true;
}

}  // namespace

TEST_CASE("study file: what is written is read back", "[record]") {
  const fs::path file = place("whole.h5");
  const auto table = sample();
  record::write_study(file, table);
  CHECK(record::is_study(file));
  CHECK_FALSE(record::is_limit(file));
  const auto back = record::read_study(file);
  CHECK(back.inputs.files == table.inputs.files);
  CHECK(back.inputs.seed == 7);
  CHECK((back.name == "name" && back.about == "what" && back.kind == "optimise" && back.points == "random"));
  CHECK((back.confidence == 0.9 && back.seed == 7));
  CHECK(back.goals == table.goals);
  REQUIRE(back.varied.size() == 2);
  CHECK(back.varied[1].name == "gear/box");
  CHECK(back.varied[1].options == table.varied[1].options);
  CHECK((back.varied[0].unit == "m" && back.varied[0].shown_in == "mm" && back.varied[0].description == "model.a"));
  for (std::size_t i = 0; i < 2; ++i) CHECK(same(back.varied[i].values, table.varied[i].values));
  CHECK(same(back.made.at(0).values, table.made[0].values));
  CHECK(same(back.outcomes.at(0).values, table.outcomes[0].values));
  CHECK(same(back.requirements.at(0).shortfalls, table.requirements[0].shortfalls));
  CHECK((back.requirements[0].at_least == 2 && std::isnan(back.requirements[0].at_most) && back.requirements[0].demand == "at least 2 N"));
  CHECK((back.states == table.states && back.reasons == table.reasons && back.reason_texts == table.reason_texts));
  CHECK((back.designs == 2 && back.best == table.best && back.chosen == table.chosen));
  CHECK(back.drawn == table.drawn);
  REQUIRE(back.findings.size() == 2);
  CHECK((back.findings[1].key == "x.y/z" && back.findings[1].value == 2 && back.findings[1].unit == "N"));
  CHECK_FALSE(fs::exists(place("whole.packing.h5")));
  fs::remove_all(file.parent_path());
}

TEST_CASE("study file: equal tables are equal files", "[record]") {
  const fs::path one = place("one.h5"), other = place("other.h5");
  record::write_study(one, sample());
  record::write_study(other, sample());
  CHECK(fs::file_size(one) == fs::file_size(other));
  const auto bytes = [](const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
  };
  CHECK(bytes(one) == bytes(other));
  fs::remove_all(one.parent_path());
}

TEST_CASE("study file: parts that do not fit together are refused", "[record]") {
  const fs::path file = place("bad.h5");
  auto table = sample();
  table.reasons[0] = 9;
  record::write_study(file, table);
  CHECK_THROWS_WITH(record::read_study(file), Contains("do not fit together"));
  table = sample();
  table.best = {3};
  record::write_study(file, table);
  CHECK_THROWS_WITH(record::read_study(file), Contains("do not fit together"));
  CHECK_THROWS_WITH(record::read_limit(file), Contains("not the record of a limit"));
  CHECK_THROWS_AS(record::write_study(file.parent_path(), sample()), record::RecordError);
  fs::remove_all(file.parent_path());
}
