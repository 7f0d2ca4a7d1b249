// What a table says, on tables small enough to be worked out by hand.

#include "study/findings.h"

#include <cmath>

#include <catch2/catch.hpp>

namespace {

using namespace sinewright;
using record::RowState;

double value(const std::vector<record::SummaryValue>& list, const std::string& key) {
  for (const auto& one : list)
    if (one.key == key) return one.value;
  FAIL("no finding " + key);
  return 0;
}

// Ten made things: the key rises from 0 to 9, the outcome is its square, what has a key of 7 or more fails.
record::StudyRecord ten() {
  record::StudyRecord table;
  table.kind = "tolerance", table.points = "random", table.confidence = 0.95;
  table.varied = {{"key", "m", "m", "", {}, {}}};
  table.outcomes = {{"run.what", "N", "N", "", {}, {}}};
  table.requirements = {{"run.what", "at most 48 N", std::nan(""), 48, {}}};
  for (int i = 0; i < 10; ++i) {
    table.varied[0].values.push_back(i);
    table.outcomes[0].values.push_back(i * i);
    table.requirements[0].shortfalls.push_back(std::max(0.0, (i * i - 48) / 48.0));
    table.states.push_back(i < 7 ? RowState::met : RowState::missed);
    table.reasons.push_back(0);
  }
  table.drawn = {4};
  table.designs = 10;
  return table;
}

}  // namespace

TEST_CASE("findings: yield, its interval and its cause", "[study]") {
  const auto table = ten();
  const auto findings = study::findings_of(table);
  REQUIRE(findings.yield);
  CHECK((findings.yield->met == 7 && findings.yield->of == 10));
  // Clopper and Pearson's interval of 7 of 10 at 95 %: 0.3475 to 0.9333 (common tables, from memory).
  CHECK(findings.yield->interval.low == Approx(0.3475).margin(5e-5));
  CHECK(findings.yield->interval.high == Approx(0.9333).margin(5e-5));
  CHECK(findings.yield->causes.at(0).distance == 1);  // the key parts fails from passes
  CHECK(findings.yield->causes[0].side > 0);
  CHECK(findings.missed.at(0) == 3);
  CHECK(findings.outcomes.at(0).moments.mean == Approx(28.5));
  CHECK(findings.outcomes[0].quantiles[1] == Approx(20.5));  // between 16 and 25
  const auto list = study::listed(findings, table);
  CHECK(value(list, "yield") == Approx(0.7));
  CHECK(value(list, "rows.missed") == 3);
  CHECK(value(list, "run.what.greatest") == 81);
}

TEST_CASE("findings: of an optimum they speak of it as made, not of the search", "[study]") {
  auto table = ten();
  table.kind = "optimise";
  table.made = {table.varied[0]};
  table.designs = 6;
  table.chosen = 2;
  table.best = {2};
  const auto findings = study::findings_of(table);
  CHECK((findings.first == 6 && findings.last == 10));
  REQUIRE(findings.yield);
  CHECK((findings.yield->met == 1 && findings.yield->of == 4));
  CHECK(findings.outcomes[0].moments.least == 36);
  table.designs = 10;
  CHECK_FALSE(study::findings_of(table).yield);
}

TEST_CASE("findings: indices and effects of a sum of two keys", "[study]") {
  record::StudyRecord table;
  table.kind = "sensitivity", table.base = 256, table.seed = 3;
  table.varied = {{"one", "1", "1", "", {}, {}}, {"two", "1", "1", "", {}, {}}};
  table.outcomes = {{"run.sum", "N", "N", "", {}, {}}};
  const study::SensitivityDesign design(256, 2, 3);
  for (std::uint64_t row = 0; row < design.rows(); ++row) {
    std::array<double, 2> u{};
    design.point(row, u);
    for (std::size_t k = 0; k < 2; ++k) table.varied[k].values.push_back(u[k]);
    table.outcomes[0].values.push_back(3 * u[0] + u[1]);  // variances 9 : 1
    table.states.push_back(RowState::met);
    table.reasons.push_back(0);
  }
  table.designs = table.rows();
  auto list = study::listed(study::findings_of(table), table);
  CHECK(value(list, "first_index.run.sum.one") == Approx(0.9).margin(0.02));
  CHECK(value(list, "total_index.run.sum.two") == Approx(0.1).margin(0.02));
  CHECK(value(list, "total_index_low.run.sum.two") < 0.1);

  table.kind = "screening", table.base = 5, table.levels = 4;
  const study::ScreeningDesign screening(5, 2, 3, 4);
  table.outcomes[0].values.clear(), table.states.clear();
  for (std::uint64_t row = 0; row < screening.rows(); ++row) {
    std::array<double, 2> u{};
    screening.point(row, u);
    table.outcomes[0].values.push_back(3 * u[0] - u[1]);
    table.states.push_back(RowState::met);
  }
  list = study::listed(study::findings_of(table), table);
  CHECK(value(list, "effect.run.sum.one") == Approx(3));
  CHECK(value(list, "effect_mean.run.sum.two") == Approx(-1));
  CHECK(value(list, "effect_deviation.run.sum.two") == Approx(0).margin(1e-12));
}
