// The figures of studies, on tables small enough to be worked out by hand: what they hold, that every kind of table can be drawn however
// little is in it, and that no text of the user's can do more than be shown.

#include "plot/study_figures.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <functional>
#include <set>
#include <sstream>

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <stdlib.h>
#include <unistd.h>

#include "plot/yield_curve.h"
#include "quantity/counter_random.h"
#include "quantity/invalid_input.h"

namespace {

using namespace sinewright;
using record::RowState;
namespace fs = std::filesystem;
using Catch::Matchers::Contains;

const double none = std::nan("");

struct Folder {
  fs::path path;
  Folder() {
    std::string name = (fs::temp_directory_path() / "sinewright-study-plot-XXXXXX").string();
    REQUIRE(mkdtemp(name.data()) != nullptr);
    path = name;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() { fs::remove_all(path); }
};

std::string content_of(const fs::path& file) {
  std::stringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

// The rows of the block $NAME in a script.
std::vector<std::vector<double>> block_of(const std::string& script, const std::string& name) {
  const auto begin = script.find("$" + name + " << EOD\n");
  INFO(name);
  REQUIRE(begin != std::string::npos);
  std::istringstream lines(script.substr(begin));
  std::string line;
  std::getline(lines, line);
  std::vector<std::vector<double>> rows;
  while (std::getline(lines, line) && line != "EOD") {
    if (line.empty() || line[0] == '#') continue;
    std::istringstream words(line);
    rows.emplace_back();
    for (std::string word; words >> word;) rows.back().push_back(std::stod(word));
  }
  return rows;
}

// A table without rows: a radius in mm and a gear of two, a time and a force with a bound each.
record::StudyRecord table_of(const std::string& kind) {
  record::StudyRecord table;
  table.inputs.engine_version = "0.0-test";
  table.name = "worked out by hand", table.kind = kind, table.points = "random";
  table.varied = {{"radius", "m", "mm", "", {}, {}}, {"gear", "1", "1", "", {"slow", "quick"}, {}}};
  table.outcomes = {{"grasp.closing_time", "s", "ms", "", {}, {}}, {"grasp.grip_force.distal", "N", "N", "", {}, {}}};
  table.requirements = {{"grasp.grip_force.distal", "at least 4 N", 4, none, {}}, {"grasp.closing_time", "at most 600 ms", none, 0.6, {}}};
  table.drawn = {0.35, 5};
  return table;
}

// Adds a design with the state that its outcomes give it; NaN: it could not go on.
void add_row(record::StudyRecord& table, const std::vector<double>& keys, double time, double force) {
  for (std::size_t k = 0; k < keys.size(); ++k) table.varied[k].values.push_back(keys[k]);
  table.outcomes[0].values.push_back(time);
  table.outcomes[1].values.push_back(force);
  const auto shortfall = [](double missing, double bound) { return std::isnan(missing) ? INFINITY : std::max(0.0, missing / bound); };
  const double force_missing = shortfall(4 - force, 4), time_missing = shortfall(time - 0.6, 0.6);
  if (table.requirements.size() > 0) table.requirements[0].shortfalls.push_back(force_missing);
  if (table.requirements.size() > 1) table.requirements[1].shortfalls.push_back(time_missing);
  const bool ran = !std::isnan(time) || !std::isnan(force);
  const bool met = table.requirements.empty() || (force_missing == 0 && time_missing == 0);
  table.states.push_back(!ran ? RowState::stopped : met ? RowState::met : RowState::missed);
  if (!ran && table.reason_texts.size() == 1) table.reason_texts.push_back("it broke");
  table.reasons.push_back(ran ? 0 : 1);
  ++table.designs;
}

// Radius 1 … n mm with both gears: time in tenths of seconds as the radius falls, force with it.
record::StudyRecord grid(int n = 4) {
  record::StudyRecord table = table_of("grid");
  for (int r = 1; r <= n; ++r)
    for (int gear = 0; gear < 2; ++gear) add_row(table, {1e-3 * r, 1.0 * gear}, 0.1 * (n + 1 - r) + 0.01 * gear, 2.0 * r + gear);
  return table;
}

struct Drawn {
  record::StudyRecord table;
  study::Findings findings;
  explicit Drawn(record::StudyRecord given) : table(std::move(given)), findings(study::findings_of(table)) {}
  [[nodiscard]] plot::StudyView view() const { return {table, findings, plot::identity_of(table)}; }
  [[nodiscard]] std::vector<plot::Script> figures() const { return plot::study_figures(view()); }
  [[nodiscard]] std::string text(const std::string& name) const {
    for (const auto& script : figures())
      if (script.name() == name) return script.text();
    FAIL("no figure " + name);
    return "";
  }
  [[nodiscard]] std::set<std::string> names() const {
    std::set<std::string> list;
    for (const auto& script : figures()) CHECK(list.insert(script.name()).second);  // no page overwrites another
    return list;
  }
};

// Force 1 … n N over a radius that rises with it; times all alike. What is below 4 N fails.
record::StudyRecord made(int n = 10) {
  record::StudyRecord table = table_of("tolerance");
  for (int i = 1; i <= n; ++i) add_row(table, {1e-3 * i, 1.0 * (i % 2)}, 0.3, i);
  return table;
}

// Every design is nearer than the one before; those from number 4 on miss the force.
record::StudyRecord search(int goals) {
  record::StudyRecord table = table_of("optimise");
  for (int i = 0; i < 8; ++i) add_row(table, {1e-3 * (i + 1), 1.0 * (i % 2)}, 0.5 - 0.05 * i, i < 4 ? 8.0 - i : 3.0);
  table.goals = {{"grasp.closing_time", false}};
  if (goals > 1) table.goals.emplace_back("grasp.grip_force.distal", true);
  table.best = goals > 1 ? std::vector<std::uint64_t>{3, 2, 1, 0} : std::vector<std::uint64_t>{3};
  return table;
}

// The rows of a sensitivity study or a screening with an outcome that is the sum of its keys, 3 u1 + u2.
record::StudyRecord planned(const std::string& kind) {
  record::StudyRecord table = table_of(kind);
  table.varied[1] = {"friction", "1", "1", "", {}, {}};
  table.base = 16, table.levels = 4, table.seed = 3;
  std::vector<double> u(2);
  const auto add = [&] { add_row(table, {1e-3 * u[0], u[1]}, 0.1 * (3 * u[0] + u[1]), 5); };
  if (kind == "sensitivity") {
    const study::SensitivityDesign design(16, 2, 3);
    for (std::uint64_t row = 0; row < design.rows(); ++row) design.point(row, u), add();
  } else {
    const study::ScreeningDesign design(16, 2, 3, 4);
    for (std::uint64_t row = 0; row < design.rows(); ++row) design.point(row, u), add();
  }
  return table;
}

void draw_all(const Drawn& drawn, const fs::path& folder, const std::vector<std::string>& formats = {"svg"}) {
  for (const auto& script : drawn.figures()) {
    INFO(script.name());
    for (const auto& file : plot::draw(script, folder, formats)) CHECK(content_of(file).size() > 1000);
  }
}

}  // namespace

TEST_CASE("study figures: each kind has its own, and all of them are drawn in every format") {
  const Folder folder;
  const auto check = [&](record::StudyRecord table, const std::set<std::string>& names) {
    const Drawn drawn(std::move(table));
    CHECK(drawn.names() == names);
    const fs::path place = folder.path / drawn.table.kind;
    fs::create_directory(place);
    draw_all(drawn, place, {"png", "svg", "pdf"});
  };
  check(grid(), {"response", "map"});
  record::StudyRecord sample = grid();
  sample.kind = "sample";
  check(sample, {"response"});
  check(made(), {"response", "distribution", "yield", "causes"});
  check(planned("sensitivity"), {"response", "indices"});
  check(planned("screening"), {"response", "effects"});
  check(search(2), {"progress", "response", "front", "front-designs"});
}

TEST_CASE("study figures: an optimum that was checked as made has what tolerances have") {
  record::StudyRecord table = search(1);
  table.made = {{"radius", "m", "mm", "", {}, std::vector<double>(8, none)}};
  for (int i = 0; i < 6; ++i) {
    add_row(table, {none, none}, 0.3, 2.0 + i);
    table.made[0].values.push_back(1e-3 * i);
  }
  table.designs = 8;
  table.chosen = 3;
  const Drawn drawn(table);
  CHECK(drawn.names() == std::set<std::string>{"progress", "response", "distribution", "yield", "causes"});
  CHECK_THAT(drawn.text("distribution"), Contains("design 3 as it would be made") && Contains("8 designs, 6 made"));
  // Only the made ones count: forces 2 … 7 N.
  const auto steps = block_of(drawn.text("distribution"), "steps2");
  CHECK(steps[1] == std::vector<double>{2, 16.66667});
}

TEST_CASE("study figures: however little a table holds, gnuplot draws it") {
  const Folder folder;
  struct Case {
    const char* what;
    std::function<void(record::StudyRecord&)> change;
  };
  const auto clear = [](record::StudyRecord& t, std::size_t keep) {
    for (auto* columns : {&t.varied, &t.outcomes})
      for (auto& column : *columns) column.values.resize(keep);
    for (auto& requirement : t.requirements) requirement.shortfalls.resize(keep);
    t.states.resize(keep), t.reasons.resize(keep);
    t.designs = keep;
    t.best.clear();
  };
  const std::vector<Case> cases = {
      {"one row", [&](auto& t) { clear(t, 1); }},
      {"no outcome in any row",
       [](auto& t) {
         for (auto& outcome : t.outcomes) std::fill(outcome.values.begin(), outcome.values.end(), none);
         for (auto& requirement : t.requirements) std::fill(requirement.shortfalls.begin(), requirement.shortfalls.end(), INFINITY);
         std::fill(t.states.begin(), t.states.end(), RowState::stopped);
         t.drawn.assign(t.drawn.size(), none);
         t.best.clear();
       }},
      {"nothing passes",
       [](auto& t) {
         std::fill(t.states.begin(), t.states.end(), RowState::missed);
         for (auto& requirement : t.requirements) std::fill(requirement.shortfalls.begin(), requirement.shortfalls.end(), 0.2);
         t.best.clear();
       }},
      {"everything passes",
       [](auto& t) {
         std::fill(t.states.begin(), t.states.end(), RowState::met);
         for (auto& requirement : t.requirements) std::fill(requirement.shortfalls.begin(), requirement.shortfalls.end(), 0.0);
       }},
      {"no requirement", [](auto& t) { t.requirements.clear(); }},
      {"outcomes all alike", [](auto& t) {
         for (auto& outcome : t.outcomes) std::fill(outcome.values.begin(), outcome.values.end(), 0.0);
       }},
      {"infinite outcomes", [](auto& t) { t.outcomes[0].values[0] = INFINITY; }},
      {"one outcome", [](auto& t) {
         t.outcomes.resize(1), t.drawn.resize(1), t.requirements.resize(2);
         t.requirements.erase(t.requirements.begin());
         t.goals.resize(std::min<std::size_t>(1, t.goals.size()));
         t.best.resize(std::min<std::size_t>(1, t.best.size()));
       }},
      {"keys all alike", [](auto& t) {
         for (auto& key : t.varied) std::fill(key.values.begin(), key.values.end(), 0.0);
       }},
      {"options only", [](auto& t) {
         t.varied.erase(t.varied.begin());
         t.varied.push_back({"cord", "1", "1", "", {"a", "b", "c"}, {}});
         for (std::size_t i = 0; i < t.rows(); ++i) t.varied[1].values.push_back(static_cast<double>(i / 2 % 3));
       }},
      {"a unit that nobody knows", [](auto& t) { t.outcomes[0].shown_in = "furlong'"; }},
  };
  for (const auto& [what, change] : cases)
    for (record::StudyRecord table : {grid(), made(), search(1), search(2), planned("sensitivity"), planned("screening")}) {
      INFO(what << ", " << table.kind);
      change(table);
      if (std::string(what) == "one row" && (table.kind == "sensitivity" || table.kind == "screening")) continue;  // their plans have more
      draw_all(Drawn(std::move(table)), folder.path);
    }
}

TEST_CASE("study figures: hostile names are shown as text and do nothing") {
  const Folder folder;
  const fs::path marker = folder.path / "executed";
  const std::string hostile = fmt::format("100%s a'b\"c `touch {0}` $(touch {0}) @title {{/Bold y}} \\", marker.string());
  for (record::StudyRecord table : {grid(), made(), search(2), planned("sensitivity"), planned("screening")}) {
    INFO(table.kind);
    table.name = hostile;
    table.varied[0].name = fmt::format("x\nsystem 'touch {0}'\n!touch {0}\nEOD\n!touch {0}", marker.string());
    if (!table.varied[1].options.empty()) table.varied[1].options = {hostile, "'; system('touch " + marker.string() + "'); print '"};
    table.outcomes[0].name = "grasp." + hostile;
    if (!table.goals.empty()) table.goals[0].first = table.outcomes[0].name;
    table.requirements[1].quantity = table.outcomes[0].name;
    draw_all(Drawn(table), folder.path);
    CHECK_FALSE(fs::exists(marker));
    CHECK_THAT(content_of(folder.path / "response.svg"), Contains("100%s"));
  }
}

TEST_CASE("study figures: curves of a grid are in the units shown, one for each option, with what misses marked") {
  const Drawn drawn(grid());
  const std::string script = drawn.text("response");
  // The slow gear: 1 … 4 mm, 400 … 100 ms, 2, 4, 6, 8 N; the first misses its 4 N.
  const auto time = block_of(script, "curve1_1"), force = block_of(script, "curve2_2");
  REQUIRE(time.size() == 4);
  for (int i = 0; i < 4; ++i) {
    CHECK(time[static_cast<std::size_t>(i)][0] == Approx(i + 1));
    CHECK(time[static_cast<std::size_t>(i)][1] == Approx(100 * (4 - i)));
    CHECK(time[static_cast<std::size_t>(i)][2] == (i == 0 ? 1 : 0));
    CHECK(force[static_cast<std::size_t>(i)][1] == Approx(2 * (i + 1) + 1));  // the quick gear
  }
  CHECK_THAT(script, Contains("'radius [mm]'") && Contains("'closing time [ms]'") && Contains("'grip force, distal [N]'") && Contains("'gear slow'") && Contains("'at least 4 N'") &&
                         Contains("'at most 600 ms'"));
}

TEST_CASE("study figures: of many curves some are drawn, and the title says so") {
  record::StudyRecord table = table_of("grid");
  table.varied[1] = {"friction", "1", "1", "", {}, {}};
  for (int r = 0; r < 40; ++r)
    for (int f = 0; f < 20; ++f) add_row(table, {1e-3 * r, 0.01 * f}, 0.3, r + f);
  const std::string script = Drawn(table).text("response");
  CHECK_THAT(script, Contains("(8 of its 20 values)") && Contains("friction 0.19") && Contains("friction 0'") && !Contains("curve1_9"));
}

TEST_CASE("study figures: a map has a field for each pair, and a border between what meets all requirements and what does not") {
  record::StudyRecord table = table_of("grid");
  table.varied[1] = {"limit", "A", "A", "", {}, {}};
  // Force = radius in mm times limit in A: of 3 × 2 fields 4, 6 and 4 N pass.
  for (int r = 1; r <= 3; ++r)
    for (int i = 1; i <= 2; ++i) add_row(table, {1e-3 * r, 1.0 * i}, 0.3, r * i);
  const std::string script = Drawn(table).text("map");
  CHECK(block_of(script, "fields2") == std::vector<std::vector<double>>{{0, 0, 1}, {1, 0, 2}, {2, 0, 3}, {0, 1, 2}, {1, 1, 4}, {2, 1, 6}});
  const auto crosses = block_of(script, "crosses");
  CHECK(crosses.size() == 4);
  // Right of the first field of the upper row, and below its other two.
  auto border = block_of(script, "border");
  std::sort(border.begin(), border.end());
  CHECK(border == std::vector<std::vector<double>>{{0.5, 0.5}, {0.5, 0.5}, {0.5, 1.5}, {1.5, 0.5}, {1.5, 0.5}, {2.5, 0.5}});
}

TEST_CASE("study figures: a map of three keys shows the mean over the third and what share passes") {
  record::StudyRecord table = table_of("grid");
  table.varied.push_back({"cord", "1", "1", "", {"a", "b"}, {}});
  for (int r = 1; r <= 3; ++r)
    for (int gear = 0; gear < 2; ++gear)
      for (int cord = 0; cord < 2; ++cord) add_row(table, {1e-3 * r, 1.0 * gear, 1.0 * cord}, 0.3, r + 2 * cord);
  const std::string script = Drawn(table).text("map");
  CHECK_THAT(script, Contains("the mean over cord"));
  const auto share = block_of(script, "share"), force = block_of(script, "fields2");
  REQUIRE(share.size() == 6);
  CHECK(share[0] == std::vector<double>{0, 0, 0});    // 1 and 3 N
  CHECK(share[1] == std::vector<double>{1, 0, 50});   // 2 and 4 N
  CHECK(force[1] == std::vector<double>{1, 0, 3});
}

TEST_CASE("study figures: the yield over a bound is the count of what meets it, and at the bound as it is the yield") {
  const Drawn drawn(made());
  const auto bounds = plot::all_bounds(drawn.table);
  REQUIRE(bounds.size() == 2);
  const auto curve = plot::yield_curve(drawn.view(), bounds[1], 91);  // forces 1 … 10 N
  REQUIRE(bounds[1].at_least);
  REQUIRE(drawn.findings.yield);
  const auto now = std::find_if(curve.begin(), curve.end(), [](const auto& point) { return point.bound == 4; });
  REQUIRE(now != curve.end());
  CHECK(now->all == Approx(0.7));
  CHECK(now->interval.low == drawn.findings.yield->interval.low);
  CHECK(now->interval.high == drawn.findings.yield->interval.high);
  for (const auto& point : curve) {
    INFO(point.bound);
    CHECK(point.all == Approx(std::clamp(11 - std::ceil(point.bound), 0.0, 10.0) / 10));
    CHECK(point.interval.low <= point.all);
    CHECK(point.interval.high >= point.all);
  }
  CHECK(curve.front().all == 1);
  CHECK(curve.back().all == 0);
  // With the force as it is no place of the time's bound can bring more than 7 of 10; times alone all pass at 300 ms.
  for (const auto& point : plot::yield_curve(drawn.view(), bounds[0], 50)) {
    CHECK(point.all == Approx(point.bound >= 300 ? 0.7 : 0));
    CHECK(point.alone == (point.bound >= 300 ? 1 : 0));
  }
}

TEST_CASE("study figures: a row without the outcome fails wherever the bound stands, and a bound on both sides keeps its other side") {
  record::StudyRecord table = made();
  add_row(table, {0.001, 0}, none, none);
  add_row(table, {0.001, 0}, 0.3, none);
  const Drawn drawn(table);
  for (const auto& point : plot::yield_curve(drawn.view(), plot::bounds_on(table, 1).at(0), 50)) CHECK(point.all <= 10.0 / 12 + 1e-12);

  record::StudyRecord both = made();
  both.requirements[0].at_most = 8;
  for (int i = 0; i < 10; ++i)
    if (i + 1 > 8) both.requirements[0].shortfalls[static_cast<std::size_t>(i)] = (i - 7) / 8.0, both.states[static_cast<std::size_t>(i)] = RowState::missed;
  const Drawn two_sided(both);
  const auto bounds = plot::bounds_on(both, 1);
  REQUIRE(bounds.size() == 2);
  CHECK(plot::yield_curve(two_sided.view(), bounds[0], 10).front().all == Approx(0.8));  // at least nothing, at most 8 N
  CHECK(plot::yield_curve(two_sided.view(), bounds[1], 10).back().all == Approx(0.7));   // at most anything, at least 4 N
  CHECK(two_sided.findings.yield->met == 5);
}

TEST_CASE("study figures: the spread counts every made thing, and says how many have no value") {
  record::StudyRecord table = made(8);
  add_row(table, {0.001, 0}, 0.3, none);
  add_row(table, {0.001, 0}, 0.3, none);
  const std::string script = Drawn(table).text("distribution");
  double sum = 0;
  for (const auto& bar : block_of(script, "bars2")) sum += bar[2];
  CHECK(sum == Approx(80));
  CHECK_THAT(script, Contains("'2 without it'"));
  CHECK(block_of(script, "steps2").back()[1] == Approx(80));
  CHECK(block_of(script, "bars1").size() == 1);  // times are all alike
}

TEST_CASE("study figures: causes are sorted by distance, with the shares of each fifth") {
  const Drawn drawn(made(40));
  const std::string script = drawn.text("causes");
  // What has a radius below 4 mm fails and nothing else: distance 1.
  const auto signs = block_of(script, "signs");
  REQUIRE(signs.size() == 1);
  CHECK(signs[0][0] == 1);
  CHECK(signs[0][1] == 1);  // on top
  CHECK(signs[0][3] < 0);   // low values
  const auto cells = block_of(script, "cells");
  CHECK(cells[0] == std::vector<double>{0, 1, 37.5});  // three of the lowest eight
  CHECK(cells[1] == std::vector<double>{1, 1, 0});
  record::StudyRecord all = made(40);
  all.requirements.clear();
  std::fill(all.states.begin(), all.states.end(), RowState::met);
  CHECK_THAT(Drawn(all).text("causes"), Contains("no failure, so no cause to be found"));
}

TEST_CASE("study figures: bars of indices are those of the findings, the largest on top") {
  const Drawn drawn(planned("sensitivity"));
  const std::string script = drawn.text("indices");
  const auto bars = block_of(script, "indices1");
  REQUIRE(bars.size() == 2);
  const auto& index = drawn.findings.sensitivity.at(0).keys.at(0);
  CHECK(bars[0][0] == 1);
  CHECK(bars[0][1] == Approx(index.first));
  CHECK(bars[0][5] == Approx(index.total_interval.low));
  CHECK(index.total > 0.5);
  CHECK_THAT(script, Contains("does not vary"));  // the force
}

TEST_CASE("study figures: effects are differences, so temperatures among them have no zero of their own") {
  record::StudyRecord table = planned("screening");
  table.outcomes[0].unit = "K", table.outcomes[0].shown_in = "degC";
  const Drawn drawn(table);
  const auto rows = block_of(drawn.text("effects"), "effects1");
  REQUIRE(rows.size() == 2);
  CHECK(rows[0][2] == Approx(0.3));  // 3 u1, a tenth of it
  CHECK(rows[1][2] == Approx(0.1));
}

TEST_CASE("study figures: the best so far counts only designs that meet all requirements") {
  const std::string script = Drawn(search(2)).text("progress");
  const auto time = block_of(script, "best1"), force = block_of(script, "best2");
  // Times 500, 450, 400, 350 ms, then designs that miss; forces begin with their best.
  REQUIRE(time.size() == 5);
  CHECK(time[3] == std::vector<double>{3, 350});
  CHECK(time[4] == std::vector<double>{8, 350});
  CHECK(force[0] == std::vector<double>{0, 8});
  CHECK(force.size() == 2);
}

TEST_CASE("study figures: without a design that meets all requirements the search shows how near it came") {
  record::StudyRecord table = table_of("optimise");
  table.goals = {{"grasp.closing_time", false}};
  for (int i = 0; i < 4; ++i) add_row(table, {1e-3 * i, 0}, 0.3, 0.5 * (i + 1));
  const std::string script = Drawn(table).text("progress");
  CHECK_THAT(script, Contains("NO DESIGN MEETS ALL REQUIREMENTS"));
  const auto least = block_of(script, "least");
  REQUIRE(least.size() == 5);
  CHECK(least[0][1] == Approx(0.875));  // 0.5 N of 4 N
  CHECK(least[4][1] == Approx(0.5));
}

TEST_CASE("study figures: the front is drawn in the order of its first goal, beside what was tried and what is drawn") {
  const std::string script = Drawn(search(2)).text("front");
  const auto front = block_of(script, "front");
  REQUIRE(front.size() == 4);
  CHECK(front[0] == std::vector<double>{0, 350, 5});
  CHECK(front[3] == std::vector<double>{3, 500, 8});
  CHECK(block_of(script, "rows").size() == 8);
  CHECK(block_of(script, "drawn") == std::vector<std::vector<double>>{{0, 350, 5}});
  CHECK_THAT(script, Contains("less is better") && Contains("more is better") && Contains(" steps "));
}

TEST_CASE("study figures: of a million rows about three thousand points are drawn, which the title says, but the median is of all") {
  record::StudyRecord table = table_of("sample");
  table.requirements.clear();
  constexpr int n = 1000000;
  for (int i = 0; i < n; ++i) add_row(table, {1e-3 * i / n, 1.0 * (i % 2)}, 1.0 * i / n, 1);
  const std::string script = Drawn(std::move(table)).text("response");
  const auto rows = block_of(script, "rows");
  CHECK(rows.size() > 2700);
  CHECK(rows.size() < 3300);
  CHECK_THAT(script, Contains(" of 1,000,000 rows drawn, by chance"));
  const auto median = block_of(script, "median1_1");
  REQUIRE(median.size() == 12);
  CHECK(median[0][1] == Approx(1e3 / 24).margin(0.002));  // the middle of the lowest twelfth, in ms, seven digits
  CHECK(script.size() < 1000000);
}

TEST_CASE("study figures: rows are chosen without regard to where their points lie") {
  // The rows' points come from the same generator, whatever its seed and coordinate.
  const auto rows = plot::rows_to_draw(0, 100000, 4000);
  for (const std::uint64_t seed : {0u, 1u, 2u, 7u})
    for (const std::uint64_t key : {0u, 1u, 2u}) {
      INFO(seed << ", " << key);
      double mean = 0;
      for (const std::uint64_t row : rows) mean += to_unit(random_bits(seed, row, key)) / static_cast<double>(rows.size());
      CHECK(mean == Approx(0.5).margin(0.023));  // five deviations, 1/√12 over √4000
    }
}

TEST_CASE("study figures: many outcomes and keys go on over several pages") {
  record::StudyRecord table = made();
  for (int i = 0; i < 8; ++i) {
    table.outcomes.push_back({fmt::format("grasp.extra_{}", i), "N", "N", "", {}, table.outcomes[1].values});
    table.varied.push_back({fmt::format("key{}", i), "m", "mm", "", {}, table.varied[0].values});
    table.drawn.push_back(1);
  }
  const auto names = Drawn(table).names();
  CHECK(names.count("response-6") == 1);  // 2 of keys × 3 of outcomes
  CHECK(names.count("response-7") == 0);
  CHECK(names.count("distribution-2") == 1);
}

TEST_CASE("study figures: names of options that have no room stand aslant") {
  record::StudyRecord table = grid();
  CHECK_THAT(Drawn(table).text("response"), !Contains("rotate by 35"));  // along the page lies the radius
  table.kind = "sample";
  CHECK_THAT(Drawn(table).text("response"), !Contains("rotate by 35"));
  table.varied[1].options = {"a train of many stages", "another train of as many stages, and more"};
  CHECK_THAT(Drawn(table).text("response"), Contains("'a train of m…' at first 0, graph 0 right rotate by 35") || Contains("'a train of ma…' at first 0, graph 0 right rotate by 35"));
}

TEST_CASE("study figures: names of outcomes lose the run that all share, and keep it where there are several") {
  record::StudyRecord table = table_of("grid");
  CHECK(plot::outcome_title(table, 0) == "closing time");
  CHECK(plot::outcome_title(table, 1) == "grip force, distal");
  table.outcomes.push_back({"pull_out", "N", "N", "", {}, {}});
  CHECK(plot::outcome_title(table, 2) == "pull out");
  CHECK(plot::outcome_title(table, 1) == "grip force, distal");
  table.outcomes.push_back({"release.open_time", "s", "s", "", {}, {}});
  CHECK(plot::outcome_title(table, 3) == "release: open time");
  CHECK(plot::outcome_label(table, 1) == "grasp: grip force, distal [N]");
}

TEST_CASE("study figures: a file without rows is refused by name, a foreign one too") {
  const Folder folder;
  const fs::path file = folder.path / "empty.study.h5";
  record::write_study(file, table_of("grid"));
  CHECK_THROWS_WITH(plot::draw_study(file, folder.path / "figures", {"svg"}), Contains("empty.study.h5") && Contains("no rows"));
  CHECK_FALSE(fs::exists(folder.path / "figures"));
  record::write_study(file, grid());
  CHECK(plot::draw_study(file, folder.path / "figures", {"svg"}).size() == 4);  // response and map, each with its script
  std::ofstream(folder.path / "text.h5") << "no table";
  CHECK_THROWS_WITH(plot::draw_study(folder.path / "text.h5", folder.path, {"svg"}), Contains("text.h5"));
}
