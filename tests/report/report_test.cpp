// What the page of a review is given: rows chosen within their bound, and texts that cannot become markup.

#include <algorithm>
#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "reading/reading.h"
#include "report/drawn_keys.h"
#include "report/page_data.h"
#include "report/record_data.h"
#include "report/study_data.h"
#include "report/thinning.h"

using namespace sinewright;

namespace {

std::vector<double> times(std::size_t n) {
  std::vector<double> time(n);
  for (std::size_t i = 0; i < n; ++i) time[i] = 1e-3 * static_cast<double>(i);
  return time;
}

// The largest deviation of any row from the line between the kept rows beside it, as share of the range.
double worst(const std::vector<double>& time, const std::vector<double>& values, const std::vector<std::size_t>& rows) {
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  double most = 0;
  for (std::size_t k = 1; k < rows.size(); ++k)
    for (std::size_t i = rows[k - 1]; i <= rows[k]; ++i) {
      const double share = (time[i] - time[rows[k - 1]]) / (time[rows[k]] - time[rows[k - 1]]);
      most = std::max(most, std::abs(values[i] - values[rows[k - 1]] - share * (values[rows[k]] - values[rows[k - 1]])));
    }
  return most / (*high - *low);
}

// Of `n` designs with a radius in mm the force is twice the radius and 4 N are required.
record::StudyRecord study_of(std::size_t n) {
  record::StudyRecord table;
  table.inputs.engine_version = "0.0-test";
  table.name = "</script><b>", table.kind = "optimise", table.points = "random";
  table.varied = {{"radius", "m", "mm", "", {}, {}}};
  table.outcomes = {{"grasp.grip_force", "N", "N", "", {}, {}}};
  table.requirements = {{"grasp.grip_force", "at least 4 N", 4, std::nan(""), {}}};
  table.goals = {{"grasp.grip_force", false}};
  for (std::size_t i = 0; i < n; ++i) {
    const double radius = static_cast<double>(n - i);
    table.varied[0].values.push_back(1e-3 * radius);
    table.outcomes[0].values.push_back(2 * radius);
    table.requirements[0].shortfalls.push_back(std::max(0.0, (4 - 2 * radius) / 4));
    table.states.push_back(radius >= 2 ? record::RowState::met : record::RowState::missed);
    table.reasons.push_back(0);
  }
  table.designs = n;
  if (n > 1) table.best = {n - 2};  // radius 2 mm, 4 N
  table.drawn = {5};
  return table;
}

}  // namespace

TEST_CASE("thinning: no row stands further off the kept ones than the bound says, and extremes are kept") {
  const std::size_t n = 20000;
  const auto time = times(n);
  report::Column smooth{std::vector<double>(n), 0}, spiky = smooth;
  for (std::size_t i = 0; i < n; ++i) {
    smooth.values[i] = std::sin(3 * time[i]) * std::exp(-0.1 * time[i]);
    spiky.values[i] = i == 12345 ? 7.0 : 0.01 * std::cos(20 * time[i]);
  }
  const auto thinned = report::thin_out(time, {smooth, spiky}, {777}, 0.002, 3000);
  CHECK(thinned.rows.size() < 3000);
  CHECK(thinned.rows.front() == 0);
  CHECK(thinned.rows.back() == n - 1);
  for (const std::size_t row : {std::size_t{777}, std::size_t{12345}}) CHECK(std::count(thinned.rows.begin(), thinned.rows.end(), row) == 1);
  const double found = std::max(worst(time, smooth.values, thinned.rows), worst(time, spiky.values, thinned.rows));
  CHECK(found <= thinned.bound);
  CHECK(found == Approx(thinned.found).epsilon(1e-6));
  CHECK(thinned.bound == 0.002);
}

TEST_CASE("thinning: what is too restless for the rows allowed gets a wider bound, which is said") {
  const std::size_t n = 5000;
  report::Column noise{std::vector<double>(n), 0};
  unsigned long long state = 1;
  for (double& value : noise.values) {
    state = state * 6364136223846793005ull + 1442695040888963407ull;
    value = static_cast<double>(state >> 40);
  }
  const auto time = times(n);
  const auto thinned = report::thin_out(time, {noise}, {}, 0.002, 1000);
  CHECK(thinned.rows.size() <= 1000);
  CHECK(thinned.bound > 0.002);
  CHECK(worst(time, noise.values, thinned.rows) <= thinned.bound);
}

TEST_CASE("thinning: few rows are all kept, and where values begin and end is") {
  report::Column gap{{1, 1, std::nan(""), std::nan(""), std::nan(""), 1, 1, 1}, 0};
  const auto thinned = report::thin_out(times(8), {gap}, {}, 0.002, 3000);
  for (const std::size_t row : {0u, 1u, 2u, 4u, 5u, 7u}) CHECK(std::count(thinned.rows.begin(), thinned.rows.end(), row) == 1);
  report::Column zigzag{{0, 1, 0, 1}, 0};
  CHECK(report::thin_out(times(4), {zigzag}, {}, 0.002, 3000).bound == 0);
}

TEST_CASE("page: no text of the data can end the element that holds it, and the title is text") {
  const std::string page = report::page("{\"a\":\"\\u003c/script>\"}", "<b>&");
  CHECK(page.find("<title>&lt;b&gt;&amp;</title>") != std::string::npos);
  // Two scripts, the data and the page's own: nothing else ends one.
  std::size_t ends = 0;
  for (std::size_t at = page.find("</script"); at != std::string::npos; at = page.find("</script", at + 1)) ++ends;
  CHECK(ends == 2);
  CHECK(page.find("http-equiv=\"Content-Security-Policy\"") != std::string::npos);
}

TEST_CASE("page: numbers are told in the units people read") {
  CHECK(report::value_text(std::acos(-1.0) / 2, "rad") == "90°");
  CHECK(report::value_text(296.15, "K") == "23 °C");
  CHECK(report::value_text(0.0125, "N m") == "12.5 N·mm");
  CHECK(report::value_text(std::numeric_limits<double>::quiet_NaN(), "s") == "—");
  CHECK(report::title_of("grip_force.distal") == "grip force, distal");
}

TEST_CASE("study page: the best design stands beside the files as drawn, with the change") {
  const auto json = report::study_data(study_of(5), "a.study.h5");
  CHECK(json["verdict"]["text"] == "The best design found is row 3; 5 designs tried, 4 meet all requirements.");
  CHECK(json["design"]["row"] == 3);
  CHECK(json["design"]["keys"][0]["text"] == "2 mm");
  CHECK(json["design"]["keys"][0]["drawn"] == "—");  // the table holds no files
  CHECK(json["design"]["outcomes"][0]["drawn"] == "5 N");
  CHECK(json["design"]["outcomes"][0]["text"] == "4 N");
  CHECK(json["design"]["outcomes"][0]["change"] == "-20 %");
  CHECK(json["rows"]["row"] == std::vector<int>{0, 1, 2, 3, 4});
  CHECK(json["rows"]["text"] == "All 5 rows of the table.");
  // Less is better: 10, 8, 6 and 4 N, then one that misses.
  CHECK(json["progress"][0]["steps"].size() == 4);
  CHECK(json["columns"][1]["bounds"][0]["value"] == 4);
}

TEST_CASE("study page: without a design that meets all requirements the nearest is shown, with what it misses") {
  const auto json = report::study_data(study_of(1), "a.study.h5");
  CHECK(json["verdict"]["state"] == "bad");
  CHECK(json["design"]["row"] == 0);
  CHECK(json["design"]["missed"][0] == "grasp.grip_force at least 4 N, by 0.5 of it");
  record::StudyRecord none = study_of(1);
  none.varied[0].values.clear(), none.outcomes[0].values.clear(), none.requirements[0].shortfalls.clear(), none.states.clear(), none.reasons.clear(), none.designs = 0;
  CHECK_THROWS_WITH(report::study_data(none, "a.study.h5"), Catch::Contains("a.study.h5") && Catch::Contains("no rows"));
}

TEST_CASE("study page: of very many rows about two thousand are given, the best among them, and the page says so") {
  const auto json = report::study_data(study_of(300000), "a.study.h5");
  const auto rows = json["rows"]["row"].get<std::vector<std::uint64_t>>();
  CHECK(rows.size() > 1900);
  CHECK(rows.size() < 2300);
  // The hundred best by the first goal: radius 2 … 101 mm.
  for (std::uint64_t row = 300000 - 101; row <= 300000 - 2; ++row) CHECK(std::binary_search(rows.begin(), rows.end(), row));
  CHECK(json["rows"]["text"].get<std::string>().find("of 300,000 rows, chosen by chance") != std::string::npos);
  CHECK(json["verdict"]["text"].get<std::string>().find("299,999 meet") != std::string::npos);  // of all rows, not of those shown
  CHECK(json.dump().size() < 500000);
}

TEST_CASE("study page: what the files as they are give at each key is read from the files that the table holds") {
  record::StudyRecord table;
  const std::string path = SINEWRIGHT_SOURCE_DIR "/scenarios/studies/time-against-grip.yaml";
  reading::Source source;
  const model::Study study = reading::read_study(source, path);
  for (const auto& run : study.runs) static_cast<void>(reading::read_scenario(source, run.scenario, run.change));
  for (const auto& file : source.handed_out()) table.inputs.files.emplace_back(file.path, file.text);
  table.inputs.scenario_path = path;
  table.varied = {{"radius", "m", "mm", "", {}, {}}, {"gear", "1", "1", "", {"train_100", "train_150"}, {}}, {"limit", "A", "A", "", {}, {}}, {"unheard_of", "m", "mm", "", {}, {}}};
  auto drawn = report::drawn_keys(table);
  CHECK(drawn[0] == 3.5e-3);
  CHECK(drawn[1] == 1.0);  // train_150
  CHECK(drawn[2] == 0.5);
  CHECK_FALSE(drawn[3].has_value());
  // What the command line changed is what was drawn.
  table.inputs.overrides = {"model.drives.flexor.pulley.radius=5 mm", "model.drives.flexor.gearhead=train_100", "optimise.seed=3"};
  drawn = report::drawn_keys(table);
  CHECK(drawn[0] == 5e-3);
  CHECK(drawn[1] == 0.0);
  // Of options the first of which the files already say everything, numbers by their value.
  table.inputs.files.emplace_back(SINEWRIGHT_SOURCE_DIR "/scenarios/studies/options.yaml",
                                  "sinewright: study\nname: options\nruns:\n  grasp: {scenario: ../grasp-medium.yaml}\nvary:\n  pulley:\n    options:\n"
                                  "      small: [model.drives.flexor.pulley.radius=3 mm, model.drives.flexor.gearhead=train_150]\n"
                                  "      same: [model.drives.flexor.pulley.radius=0.35 cm, model.drives.flexor.gearhead=train_150]\n"
                                  "outcomes: [grasp.closing_time]\ngrid: {}\n");
  table.inputs.scenario_path = SINEWRIGHT_SOURCE_DIR "/scenarios/studies/options.yaml";
  table.inputs.overrides.clear();
  table.varied = {{"pulley", "1", "1", "", {"small", "same"}, {}}};
  CHECK(report::drawn_keys(table)[0] == 1.0);
  table.inputs.files.clear();
  CHECK_FALSE(report::drawn_keys(table)[0].has_value());
}
