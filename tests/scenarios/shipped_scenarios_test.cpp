// Every scenario that ships: reaches what it asks for, keeps its energy ledger, holds still when the tolerance is halved,
// and repeats to the bit.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstring>
#include <filesystem>
#include <string>
#include <vector>

#include "reading/reading.h"
#include "simulation/run.h"
#include "strength/margin_watch.h"

namespace {

using namespace sinewright;

std::vector<std::string> scenario_files() {
  std::vector<std::string> files;
  for (const char* folder : {SINEWRIGHT_SOURCE_DIR "/scenarios", SINEWRIGHT_SOURCE_DIR "/scenarios/firmware"})
    for (const auto& entry : std::filesystem::directory_iterator(folder))
      if (entry.path().extension() == ".yaml") files.push_back(entry.path().string());
  std::sort(files.begin(), files.end());
  return files;
}

model::Scenario read(const std::string& file) {
  reading::Source source;
  // Its library is made by the user; here it is the one of this build.
  if (std::filesystem::path(file).parent_path().filename() == "firmware")
    return reading::read_scenario(source, file, {"controllers.flexor.library=" SINEWRIGHT_FIRMWARE_FOLDER "/finger.so"});
  return reading::read_scenario(source, file);
}

simulation::RunResult run(const std::string& file, double tolerance_factor = 1, std::vector<double>* rows = nullptr) {
  model::Scenario scenario = read(file);
  scenario.solver.tolerance *= tolerance_factor;
  const simulation::System system(scenario);
  strength::MarginWatch watch(system);
  simulation::RunListener listener;
  strength::attach(watch, listener);
  if (rows)
    listener.row = [&](double time, std::span<const double> row) {
      rows->push_back(time);
      rows->insert(rows->end(), row.begin(), row.end());
    };
  return simulation::run(system, listener);
}

// How far a halved tolerance may move a number: 1 % of it, or half a percent of what an engineer calls full size for a quantity
// of its kind (a force near zero has no relative error).
double allowed_change(const simulation::SummaryValue& value, const std::vector<simulation::SummaryValue>& all) {
  const auto of = [&](const std::string& key) {
    for (const auto& v : all)
      if (v.key == key) return std::abs(v.value);
    return 0.0;
  };
  const std::string& unit = value.unit;
  double size = 0;
  if (unit == "N") size = std::max(1.0, of("grip_force"));
  if (unit == "rad") size = 1.0;
  if (unit == "s") size = 0.1;
  if (unit == "m") size = 0.01;
  if (unit == "m/s") size = 0.1;
  if (unit == "N m") size = 0.05;
  if (unit == "A") size = 0.1;
  if (unit == "J") size = 0.01;
  if (unit == "K") size = 100;  // a rise over ambient
  if (unit == "1") size = 1;
  // What is made of a sensor's count jumps by one step when a reading on the edge of two counts falls to the other side: the largest
  // error by quantisation is half of one.
  const double step = value.key.starts_with("tip_error.") ? 2 * of(value.key + ".quantisation") : 0;
  // A temperature is judged by its rise: 1 % of 300 K would hide anything.
  return std::max({unit == "K" ? 0.0 : 0.01 * std::abs(value.value), 0.005 * size, step});
}

}  // namespace

TEST_CASE("shipped scenarios: each ends complete, meets its requirements and keeps its energy ledger", "[scenarios]") {
  const std::string file = GENERATE(from_range(scenario_files()));
  CAPTURE(file);
  const auto result = run(file);
  REQUIRE(result.complete);
  REQUIRE_FALSE(result.verdicts.empty());
  const bool fails_on_purpose = file.find("fails-on-purpose") != std::string::npos;
  for (const auto& verdict : result.verdicts) {
    CAPTURE(verdict.quantity, verdict.demand, verdict.value);
    CHECK(verdict.met == !fails_on_purpose);
  }
  const auto residual = std::find_if(result.summary.begin(), result.summary.end(), [](const auto& v) { return v.key == "energy_residual"; });
  REQUIRE(residual != result.summary.end());
  CHECK(residual->value < 0.005);
}

TEST_CASE("shipped scenarios: halving the tolerance moves no reported number by more than 1 %", "[scenarios]") {
  const std::string file = GENERATE(from_range(scenario_files()));
  CAPTURE(file);
  const auto coarse = run(file), fine = run(file, 0.5);
  REQUIRE(coarse.summary.size() == fine.summary.size());
  for (std::size_t i = 0; i < coarse.summary.size(); ++i) {
    const auto& a = coarse.summary[i];
    const auto& b = fine.summary[i];
    // The residual is itself an error measure.
    if (a.key == "energy_residual") continue;
    CAPTURE(a.key, a.value, b.value, a.unit);
    CHECK(std::isnan(a.value) == std::isnan(b.value));
    if (std::isnan(a.value) || std::isnan(b.value)) continue;
    if (a.key.starts_with("margin.")) {  // judged by what is asked, of a full size that is the capacity
      const double asked = 1 / a.value, asked_finely = 1 / b.value;
      CHECK(std::abs(asked - asked_finely) <= std::max(0.01 * asked_finely, 0.005));
      continue;
    }
    CHECK(std::abs(a.value - b.value) <= allowed_change(b, fine.summary));
  }
}

TEST_CASE("shipped scenarios: two runs give the same bits in every row", "[scenarios]") {
  const std::string file = GENERATE(from_range(scenario_files()));
  CAPTURE(file);
  std::vector<double> first, second;
  (void)run(file, 1, &first);
  (void)run(file, 1, &second);
  REQUIRE(first.size() == second.size());
  CHECK(std::memcmp(first.data(), second.data(), first.size() * sizeof(double)) == 0);
}
