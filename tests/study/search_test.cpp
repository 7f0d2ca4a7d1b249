// A search finds what is known, says when there is more than one answer, and does not depend on threads.

#include <cmath>

#include <catch2/catch.hpp>

#include "study/parallel.h"
#include "study/search.h"

namespace {

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

template <class Holds>
study::Answer find(const model::Search& search, double tolerance, Holds holds) {
  const auto trial = [&](double value) {
    study::Probe probe;
    probe.value = value;
    probe.complete = true;
    probe.holds = holds(value);
    return probe;
  };
  std::vector<study::Probe> samples;
  for (const double value : study::sample_values(search)) samples.push_back(trial(value));
  return study::narrow_down(search, tolerance, samples, trial);
}

TEST_CASE("search: a known threshold is found within the error that is told") {
  const double threshold = GENERATE(1.03, 3.7, 8.999);
  const bool logarithmic = GENERATE(false, true), from_above = GENERATE(false, true);
  const model::Search search{"x", 1, 9, "", 9, logarithmic};
  const auto answer = find(search, 1e-4, [&](double x) { return (x < threshold) != from_above; });
  REQUIRE(answer.found);
  CHECK(answer.settled);
  CHECK(answer.monotone);
  CHECK(answer.error <= 1e-4 * threshold);
  CHECK_THAT(answer.value, WithinAbs(threshold, answer.error));
  CHECK(answer.note.empty());
}

TEST_CASE("search: an island of failure is reported with all its shores, and the first from the end that holds answers") {
  const model::Search search{"x", 0, 10, "mm", 11, false};
  const auto answer = find(search, 1e-3, [](double x) { return x < 2.5 || (x > 6.2 && x < 8.4); });
  REQUIRE(answer.found);
  CHECK_FALSE(answer.monotone);
  REQUIRE(answer.changes.size() == 3);
  CHECK_THAT(answer.value, WithinAbs(2.5, 2.5e-3));
  CHECK_THAT(answer.changes[1].holds_at, WithinAbs(6.2, 1.3e-2));
  CHECK_THAT(answer.changes[2].fails_at, WithinAbs(8.4, 1.7e-2));
  CHECK_THAT(answer.note, Contains("NOT MONOTONE") && Contains("3 times") && Contains("lower end"));
  const auto upper = find(search, 1e-3, [](double x) { return x > 8.4 || (x > 2.5 && x < 6.2); });
  CHECK_THAT(upper.value, WithinAbs(8.4, 1e-2));
  CHECK_THAT(upper.note, Contains("upper end"));
}

TEST_CASE("search: what holds everywhere or nowhere has no limit") {
  const model::Search search{"x", 0, 1, "", 5, false};
  CHECK_FALSE(find(search, 1e-3, [](double) { return true; }).found);
  CHECK_THAT(find(search, 1e-3, [](double) { return true; }).note, Contains("outside the bracket"));
  CHECK_THAT(find(search, 1e-3, [](double) { return false; }).note, Contains("no sample holds"));
}

TEST_CASE("search: a threshold at zero ends by the count of halvings and says that it is not narrow") {
  const model::Search search{"x", -1, 2, "", 4, false};
  const auto answer = find(search, 1e-3, [](double x) { return x <= 0; });
  CHECK(answer.found);
  CHECK_FALSE(answer.settled);
  CHECK_THAT(answer.value, WithinAbs(0, 1e-12));
}

TEST_CASE("parallel: every index is done once and the first failure by index is thrown") {
  std::vector<int> done(100);
  study::for_each_index(100, 4, [&](int i) { ++done[static_cast<std::size_t>(i)]; });
  for (const int times : done) CHECK(times == 1);
  CHECK_THROWS_WITH(study::for_each_index(50, 3, [](int i) { if (i % 7 == 3) throw std::runtime_error(std::to_string(i)); }), "3");
}

}  // namespace
