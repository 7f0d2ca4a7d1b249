// Whole studies on a short grasp: the same table from any number of threads, from one go or many, and rows for designs that fail.

#include "study/study.h"

#include <cmath>
#include <filesystem>
#include <fstream>

#include <catch2/catch.hpp>

#include "folder.h"
#include "simulation/bill_of_materials.h"

namespace {

using namespace sinewright;
namespace fs = std::filesystem;
using Catch::Matchers::Contains;

// A pull-in of 0.3 s at a coarse tolerance.
const std::string kHead =
    "sinewright: study\nname: test\nruns:\n  close:\n    scenario: " SINEWRIGHT_SOURCE_DIR "/scenarios/close-free.yaml\n"
    "    change: [duration=0.25 s, solver.tolerance=0.05, \"require=[{quantity: joint_angle.MCP, at_least: 20 deg}]\", \"timeline=[{at: 0.05 s, drive: flexor, voltage: 6 V}]\"]\n";

study::StudyTable run(const Folder& folder, const std::string& rest, study::StudyOptions options = {}) {
  const fs::path file = folder.write("study.yaml", kHead + rest);
  reading::Source source;
  const model::Study study = reading::read_study(source, file);
  if (options.journal.empty()) options.journal = folder.path / "journal";
  return study::run_study(source, study, options);
}

bool same(const study::StudyTable& a, const study::StudyTable& b) {
  if (a.rows() != b.rows()) return false;
  for (std::uint64_t row = 0; row < a.rows(); ++row) {
    const auto one = a.result(row), other = b.result(row);
    if (one.state != other.state || one.reason != other.reason || a.values(row) != b.values(row)) return false;
    for (std::size_t c = 0; c < one.outcomes.size(); ++c)
      if (one.outcomes[c] != other.outcomes[c] && !(std::isnan(one.outcomes[c]) && std::isnan(other.outcomes[c]))) return false;
  }
  return true;
}

const std::string kGrid =
    "vary:\n  radius: {key: model.drives.flexor.pulley.radius, from: 2.5 mm, to: 4.5 mm, steps: 3}\n  gear: {key: model.drives.flexor.gearhead, values: [train_100, train_150]}\n"
    "outcomes: [close.joint_angle.MCP, close.peak_current.flexor]\ngrid: {}\n";

}  // namespace

TEST_CASE("study: a grid runs every combination, and a wider pulley winds in more", "[study]") {
  const Folder folder;
  const auto table = run(folder, kGrid);
  REQUIRE(table.complete);
  REQUIRE(table.rows() == 6);
  CHECK(table.values(0) == std::vector<double>{2.5, 0});
  CHECK(table.values(5)[0] == Approx(4.5));
  CHECK(table.values(5)[1] == 1);
  CHECK(study::shown(table.axes[1], 1) == "train_150");
  CHECK(table.bench.columns[0].name == "close.joint_angle.MCP");
  CHECK(table.bench.columns[0].unit == "rad");
  for (const std::uint64_t gear : {0, 1}) CHECK(table.result(gear).outcomes[0] < table.result(4 + gear).outcomes[0]);
  for (std::uint64_t row = 0; row < 6; ++row) {
    const auto result = table.result(row);
    const bool met = result.outcomes[0] * 180 / std::acos(-1.0) >= 20;
    CHECK(result.state == (met ? study::State::met : study::State::missed));
    CHECK((result.shortfalls.at(0) == 0) == met);
  }
}

TEST_CASE("study: one thread and two give the same table, and a stopped one goes on to it", "[study]") {
  const Folder folder;
  study::StudyOptions one, two, stopped;
  one.threads = 1, one.journal = folder.path / "one";
  two.threads = 2, two.journal = folder.path / "two";
  const auto whole = run(folder, kGrid, one);
  CHECK(same(whole, run(folder, kGrid, two)));
  std::atomic<bool> stop = false;
  stopped.threads = 1, stopped.journal = folder.path / "stopped", stopped.stop = &stop;
  stopped.progress = [&](std::uint64_t done, std::uint64_t) { stop = done >= 2; };
  CHECK_FALSE(run(folder, kGrid, stopped).complete);
  // As if killed while it wrote a line.
  std::ofstream(stopped.journal, std::ios::app) << "0123456789abcdef 4 0 2";
  int runs = 0;
  stopped.stop = nullptr, stopped.resume = true;
  stopped.progress = [&](std::uint64_t, std::uint64_t) { ++runs; };
  const auto resumed = run(folder, kGrid, stopped);
  CHECK(resumed.complete);
  CHECK(runs == 4);
  CHECK(same(whole, resumed));
  // Of another study nothing is taken over.
  study::StudyOptions other = stopped;
  CHECK_THROWS_WITH(run(folder, kGrid + "about: changed\n", other), Contains("another study"));
}

TEST_CASE("study: a design that cannot be read is a row with its reason", "[study]") {
  const Folder folder;
  const auto table = run(folder, "vary:\n  radius: {key: model.drives.flexor.pulley.radius, from: -1 mm, to: 3 mm, steps: 2}\noutcomes: [close.joint_angle.MCP]\ngrid: {}\n");
  REQUIRE(table.complete);
  CHECK(table.result(0).state == study::State::invalid);
  CHECK_THAT(table.result(0).reason, Contains("pulley.radius"));
  CHECK(std::isnan(table.result(0).outcomes[0]));
  CHECK(std::isinf(table.result(0).shortfalls[0]));
  CHECK(table.result(1).state != study::State::invalid);
}

TEST_CASE("study: what it names must be there", "[study]") {
  const Folder folder;
  const std::string vary = "vary:\n  radius: {key: model.drives.flexor.pulley.radius, plus_minus: 1 %}\n";
  CHECK_THROWS_WITH(run(folder, vary + "outcomes: [close.joint_angel.MCP]\ntolerance: {runs: 2}\n"), Contains("no outcome") && Contains("close.joint_angle.MCP"));
  CHECK_THROWS_WITH(run(folder, "vary:\n  radius: {key: modell.drives.flexor.pulley.radius, from: 1 mm, to: 2 mm}\ngrid: {}\n"), Contains("no run 'modell'"));
  CHECK_THROWS_WITH(run(folder, "vary:\n  radius: {key: model.drives.flexor.motor, plus_minus: 1 mm}\ntolerance: {runs: 2}\n"), Contains("no number at"));
}

TEST_CASE("study: values spread round what the files give", "[study]") {
  const Folder folder;
  const auto table = run(folder, "vary:\n  radius: {key: model.drives.flexor.pulley.radius, plus_minus: 2 %, distribution: uniform}\n  pin: {key: model.bodies.distal.hinge.pin.diameter, iso_286: h7}\n"
                                 "tolerance: {runs: 40, seed: 3}\n");
  double low = 1e9, high = -1e9;
  for (std::uint64_t row = 0; row < table.rows(); ++row) {
    const auto values = table.values(row);
    low = std::min(low, values[0]), high = std::max(high, values[0]);
    CHECK(values[1] <= 1.5);            // h7 of 1.5 mm: 0 to -10 µm
    CHECK(values[1] >= 1.5 - 0.010001);
  }
  CHECK(low >= 3.5 * 0.98);
  CHECK(high <= 3.5 * 1.02);
  CHECK(high - low > 3.5 * 0.02);
}

TEST_CASE("study: an optimisation finds the slowest design that meets its requirement at its bound", "[study][slow]") {
  const Folder folder;
  const auto table = run(folder, "vary:\n  radius: {key: model.drives.flexor.pulley.radius, from: 1 mm, to: 5 mm}\nrequire:\n  - {quantity: close.joint_angle.MCP, at_least: 30 deg}\n"
                                 "optimise: {minimise: [close.shaft_work], runs: 120, robustness: {runs: 10, vary: {radius: {key: model.drives.flexor.pulley.radius, plus_minus: 0.1 mm}}}}\n");
  REQUIRE(table.complete);
  REQUIRE(table.best.size() == 1);
  CHECK(table.designs() <= 120);
  CHECK(table.rows() == table.designs() + 10);
  const auto best = table.result(table.best[0]);
  CHECK(best.state == study::State::met);
  const double radius = table.values(table.best[0])[0];
  // No other design that meets all does it with less work.
  for (std::uint64_t row = 0; row < table.designs(); ++row)
    if (table.result(row).state == study::State::met) CHECK(table.result(row).outcomes[0] >= best.outcomes[0]);
  for (std::uint64_t row = table.designs(); row < table.rows(); ++row) {
    CHECK(table.values(row)[0] == radius);
    CHECK(std::abs(table.values(row)[1] - radius) <= 0.1000001);
  }
}

namespace {

const std::string kBearing =
    "vary:\n  bearing:\n    options:\n      washers: []\n      bushings: [model.bodies.proximal.hinge.bushings=flanged_2, model.bodies.middle.hinge.bushings=flanged_2, "
    "model.bodies.distal.hinge.bushings=flanged_15]\n";
const std::string kGears = "  gear: {key: model.drives.flexor.gearhead, values: [train_150, train_100]}\n";

double total_of(const std::vector<std::string>& changes) {
  reading::Source source;
  const auto bill = simulation::bill_of(reading::read_model(source, SINEWRIGHT_SOURCE_DIR "/models/demo-finger.yaml", changes));
  REQUIRE(bill.unpriced == 0);
  return bill.total;
}

}  // namespace

TEST_CASE("study: cost is the total of each design's bill, and can be required", "[study]") {
  const Folder folder;
  const auto table = run(folder, kBearing + kGears + "outcomes: [cost, close.loss_share.MCP]\nrequire:\n  - {quantity: cost, at_most: 50}\ngrid: {}\n");
  REQUIRE(table.complete);
  REQUIRE(table.rows() == 4);
  CHECK(table.bench.columns[0].name == "cost");
  CHECK(table.bench.columns[0].unit == "1");
  const std::vector<std::string> bushings = {"bodies.proximal.hinge.bushings=flanged_2", "bodies.middle.hinge.bushings=flanged_2",
                                             "bodies.distal.hinge.bushings=flanged_15"};
  for (std::uint64_t row = 0; row < 4; ++row) {
    const auto values = table.values(row);
    std::vector<std::string> changes = values[0] == 1 ? bushings : std::vector<std::string>{};
    changes.push_back(values[1] == 1 ? "drives.flexor.gearhead=train_100" : "drives.flexor.gearhead=train_150");
    const double cost = table.result(row).outcomes[0];
    CHECK(cost == total_of(changes));
    if (cost > 50) {
      CHECK(table.result(row).state == study::State::missed);
      CHECK_THAT(table.result(row).reason, Contains("cost at most 50"));
    }
    CHECK((cost > 50) == (values[0] == 1));
  }
  // Bushings lose less in the joint.
  CHECK(table.result(2).outcomes[1] < 0.9 * table.result(0).outcomes[1]);
}

TEST_CASE("study: the cheapest design is found", "[study]") {
  const Folder folder;
  const auto table = run(folder, kBearing + kGears + "require:\n  - {quantity: close.joint_angle.MCP, at_least: 1 deg}\noptimise: {minimise: [cost], runs: 12}\n");
  double best = 1e9;
  for (std::uint64_t row = 0; row < table.rows(); ++row) best = std::min(best, table.result(row).outcomes.at(0));
  CHECK(best == total_of({"drives.flexor.gearhead=train_100"}));
}

TEST_CASE("study: cost is refused while a part has no price, and the part is named", "[study]") {
  const Folder folder;
  study::StudyOptions unpriced;
  unpriced.overrides = {"model.bill={glue: {}}"};
  CHECK_THROWS_WITH(run(folder, kBearing + "outcomes: [cost]\ngrid: {}\n", unpriced), Contains("parts have no price: glue\n") && Contains("study.yaml:"));
  // An option that lacks one shows before anything is run.
  const std::string option = "vary:\n  glued:\n    options:\n      not: []\n      glued: [\"model.bill={glue: {}, tape: {}}\"]\n";
  CHECK_THROWS_WITH(run(folder, option + "outcomes: [cost]\ngrid: {}\n"), Contains("parts have no price: glue; tape\n"));
  CHECK_THROWS_WITH(run(folder, option + "outcomes: [close.joint_angle.MCP]\nrequire: [{quantity: cost, at_most: 50}]\ngrid: {}\n"), Contains("have no price"));
  CHECK(run(folder, option + "outcomes: [close.joint_angle.MCP]\ngrid: {}\n").complete);  // which does not ask
}

TEST_CASE("study: with limits alone the cost is that of the first limit's model", "[study]") {
  const Folder folder;
  const fs::path limit = folder.write("limit.yaml", "sinewright: limit\nname: t\nscenario: " SINEWRIGHT_SOURCE_DIR "/scenarios/close-free.yaml\n"
      "change: [duration=0.1 s, solver.tolerance=0.05, \"require=[{quantity: joint_angle.MCP, at_least: -5 deg}]\", \"timeline=[]\", model.supplies.battery.price=20]\n"
      "search: {key: duration, from: 0.1 s, to: 0.12 s, samples: 3}\n");
  const fs::path file = folder.write("study.yaml", "sinewright: study\nname: t\nruns:\n  hold: {limit: " + limit.string() + "}\n" + kBearing + "outcomes: [cost]\ngrid: {}\n");
  reading::Source source;
  const study::Bench bench = study::set_up(reading::read_study(source, file), source, {});
  CHECK(bench.drawn.outcomes.at(0) == total_of({"supplies.battery.price=20"}));
  CHECK(study::run_design(bench, source, 0, {"model.drives.flexor.gearhead=train_100"}).outcomes.at(0) ==
        total_of({"supplies.battery.price=20", "drives.flexor.gearhead=train_100"}));
}
