// The search by a population and its polish: constraints, choices, several objectives, failed runs, replay.

#include <cmath>
#include <limits>
#include <numbers>

#include <catch2/catch.hpp>

#include "finish.h"
#include "quantity/invalid_input.h"
#include "study/pattern_search.h"
#include "study/population_search.h"

using namespace sinewright;
using namespace sinewright::study;

namespace {

const double kNaN = std::numeric_limits<double>::quiet_NaN();

PopulationSearch searched(const std::vector<SearchVariable>& variables, const Law& law, PopulationOptions options) {
  PopulationSearch search(variables, options);
  finish(search, law);
  return search;
}

// Population, then polish.
Member best_of(const std::vector<SearchVariable>& variables, const Law& law, std::uint64_t seed) {
  PopulationOptions options;
  options.seed = seed;
  const PopulationSearch search = searched(variables, law, options);
  PatternOptions polish;
  polish.seed = seed;
  PatternSearch pattern(variables, search.best(), polish);
  finish(pattern, law);
  return pattern.best();
}

}  // namespace

TEST_CASE("assessment: feasibility goes before objectives, and a failed run is the worst of all", "[study][search]") {
  const Assessment good{{1}, {-5, 0}}, better{{0.5}, {}}, missed{{-9}, {0.1, -7}}, missed_more{{-99}, {0.1, 0.1}}, failed{{kNaN}, {}};
  CHECK(violation(good) == 0);
  CHECK(violation(missed) == 0.1);  // what holds well does not make up for what is missed
  CHECK(dominates(better, good));
  CHECK(dominates(good, missed));
  CHECK(dominates(missed, missed_more));
  CHECK(dominates(missed_more, failed));
  CHECK_FALSE(dominates(failed, failed));
  CHECK_FALSE(dominates(good, good));
  CHECK(std::isinf(violation({{1}, {kNaN}})));
}

TEST_CASE("assessment: fronts peel off one after the other", "[study][search]") {
  const std::vector<Assessment> designs{{{1, 4}, {}}, {{2, 2}, {}}, {{4, 1}, {}}, {{3, 3}, {}}, {{5, 5}, {}}, {{0, 0}, {1}}};
  CHECK(front_numbers(designs) == std::vector<std::size_t>{0, 0, 0, 1, 2, 3});
  const auto distance = crowding_distances(std::span(designs).first(3));
  CHECK(std::isinf(distance[0]));
  CHECK(distance[1] == Approx(2));  // both objectives: neighbours a whole range apart
  CHECK(std::isinf(distance[2]));
}

TEST_CASE("search: the point of a disc next to a point outside it", "[study][search]") {
  // min |x − (2, 1)|², |x| ≤ 1: (√5 − 1)² at (2, 1)/√5.
  const std::uint64_t seed = GENERATE(1u, 2u, 3u);
  const Member best = best_of({Range{-3, 3}, Range{-3, 3}}, [](const Design& x) {
    return Assessment{{std::pow(x[0] - 2, 2) + std::pow(x[1] - 1, 2)}, {x[0] * x[0] + x[1] * x[1] - 1}};
  }, seed);
  CHECK(violation(best.assessment) == 0);
  CHECK(best.assessment.objectives[0] == Approx(std::pow(std::sqrt(5) - 1, 2)).epsilon(1e-4));
}

TEST_CASE("search: the lightest closed can of a given volume is as high as wide", "[study][search]") {
  // min 2π r (r + h), π r² h ≥ 1: r³ = 1/(2π), h = 2r, area 3 ∛(2π).
  const std::uint64_t seed = GENERATE(1u, 2u, 3u);
  const Member best = best_of({Range{0.1, 5}, Range{0.1, 10}}, [](const Design& x) {
    return Assessment{{2 * std::numbers::pi * x[0] * (x[0] + x[1])}, {1 - std::numbers::pi * x[0] * x[0] * x[1]}};
  }, seed);
  CHECK(violation(best.assessment) == 0);
  CHECK(best.assessment.objectives[0] == Approx(3 * std::cbrt(2 * std::numbers::pi)).epsilon(1e-4));
  CHECK(best.design[1] / best.design[0] == Approx(2).epsilon(0.03));  // an error e in the shape changes the area by e²
}

TEST_CASE("search: a linear problem ends in the corner of its constraints", "[study][search]") {
  // max 3x + 5y, x ≤ 4, 2y ≤ 12, 3x + 2y ≤ 18: (2, 6) by the prices (0, 3/2, 1) ≥ 0 of the constraints.
  const std::uint64_t seed = GENERATE(1u, 2u, 3u);
  const Member best = best_of({Range{0, 10}, Range{0, 10}}, [](const Design& x) {
    return Assessment{{-3 * x[0] - 5 * x[1]}, {x[0] - 4, 2 * x[1] - 12, 3 * x[0] + 2 * x[1] - 18}};
  }, seed);
  CHECK(violation(best.assessment) == 0);
  CHECK(best.assessment.objectives[0] == Approx(-36).epsilon(1e-4));
}

TEST_CASE("search: an optimum on a bound is found on the bound", "[study][search]") {
  // By the population already: the polish alone would get there too.
  const auto search = searched({Range{-1, 2}, Range{0.5, 3}}, [](const Design& x) { return Assessment{{x[1] - x[0]}, {}}; }, {});
  CHECK(search.best().design == Design{2, 0.5});
}

TEST_CASE("search: continuous and discrete variables together", "[study][search]") {
  // Each free choice has its own best ratio; the catalogue of ratios is coarse. By enumeration of the 5 × 40 choices, with
  // x = ratio/100 the best x of each: 0.25 at kind 3, ratio 25.
  const auto law = [](const Design& d) {
    const double kind = d[0], ratio = d[1], x = d[2];
    const double kind_cost = std::vector{4.0, 1.0, 2.0, 0.25, 3.0}[static_cast<std::size_t>(kind)];
    return Assessment{{kind_cost + 0.01 * std::pow(ratio - 10 - 5 * kind, 2) + std::pow(x - ratio / 100, 2)}, {}};
  };
  int found = 0;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const Member best = best_of({FreeChoice{5}, OrderedChoice{40}, Range{0, 1}}, law, seed);
    CHECK(best.design[0] == std::floor(best.design[0]));
    CHECK(best.design[1] == std::floor(best.design[1]));
    found += best.design[0] == 3 && best.design[1] == 25 && std::abs(best.design[2] - 0.25) < 1e-3;
  }
  CHECK(found == 20);
}

TEST_CASE("search: a free choice that no member of the first generation has can still be found", "[study][search]") {
  // 101 kinds without an order, 24 members.
  int found = 0;
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    PopulationOptions options;
    options.seed = seed;
    const auto search = searched({FreeChoice{101}, Range{-1, 1}}, [](const Design& d) {
      return Assessment{{std::fmod(37 * d[0] + 50, 101) + d[1] * d[1]}, {}};
    }, options);
    found += search.best().assessment.objectives[0] < 1;
  }
  CHECK(found >= 8);
}

TEST_CASE("search: choices stay in their list and ranges within their bounds", "[study][search]") {
  PopulationSearch search({FreeChoice{3}, OrderedChoice{2}, Range{-1, 1}, FreeChoice{1}}, {});
  finish(search, [](const Design& d) {
    CHECK((d[0] == 0 || d[0] == 1 || d[0] == 2));
    CHECK((d[1] == 0 || d[1] == 1));
    CHECK((d[2] >= -1 && d[2] <= 1));
    CHECK(d[3] == 0);
    return Assessment{{d[2] * d[2] - d[0]}, {}};
  });
  CHECK(search.best().design[0] == 2);
}

TEST_CASE("search: runs that fail are passed over", "[study][search]") {
  // Fails on a third of the range, right beside the optimum.
  const Member best = best_of({Range{-3, 3}, Range{-3, 3}}, [](const Design& x) {
    return x[0] < -1 ? Assessment{{kNaN}, {}} : Assessment{{std::pow(x[0] + 1, 2) + x[1] * x[1]}, {}};
  }, 1);
  CHECK(best.assessment.objectives[0] == Approx(0).margin(1e-6));
  const PopulationSearch none = searched({Range{0, 1}}, [](const Design&) { return Assessment{{kNaN}, {}}; }, {});
  CHECK(std::isinf(violation(none.best().assessment)));
  CHECK(none.front().empty());
}

TEST_CASE("search: told the same again it asks the same again", "[study][search]") {
  const std::vector<SearchVariable> variables{Range{-2, 2}, Range{-2, 2}, OrderedChoice{4}};
  const auto law = [](const Design& x) { return Assessment{{x[0] * x[0] + std::abs(x[1]) + x[2]}, {0.5 - x[0]}}; };
  PopulationSearch first(variables, {});
  std::vector<std::vector<Assessment>> file;
  std::vector<Design> asked;
  while (!first.done()) {
    std::vector<Assessment> told;
    for (const Design& d : first.ask()) told.push_back(law(d)), asked.push_back(d);
    file.push_back(told);
    first.tell(told);
  }
  PopulationSearch again(variables, {});
  std::vector<Design> asked_again;
  for (const auto& told : file) {
    asked_again.insert(asked_again.end(), again.ask().begin(), again.ask().end());
    again.tell(told);
  }
  CHECK(again.done());
  CHECK(asked_again == asked);
  PopulationOptions other;
  other.seed = 2;
  CHECK(PopulationSearch(variables, other).ask() != PopulationSearch(variables, {}).ask());
}

TEST_CASE("search: a front of two objectives lies on the known curve and covers it", "[study][search][front]") {
  // Schaffer's x², (x − 2)² (1985, from memory): √f1 + √f2 = 2 for x in [0, 2].
  PopulationOptions options;
  options.objectives = 2;
  const auto front = searched({Range{-1000, 1000}}, [](const Design& x) { return Assessment{{x[0] * x[0], std::pow(x[0] - 2, 2)}, {}}; },
                              options).front();
  REQUIRE(front.size() == 48);
  double widest = 0;
  for (std::size_t i = 0; i < front.size(); ++i) {
    const auto& f = front[i].assessment.objectives;
    // Any x in [0, 2] is on the curve; only the two ends can lie beyond it, by as far as no member yet dominates them.
    const bool end = i == 0 || i + 1 == front.size();
    CHECK(std::sqrt(f[0]) + std::sqrt(f[1]) == Approx(2).epsilon(end ? 1e-3 : 1e-9));
    if (i > 0) {
      CHECK(f[0] > front[i - 1].assessment.objectives[0]);
      CHECK(f[1] < front[i - 1].assessment.objectives[1]);
      widest = std::max(widest, front[i].design[0] - front[i - 1].design[0]);
    }
  }
  CHECK(front.front().assessment.objectives[0] < 0.01);
  CHECK(front.back().assessment.objectives[1] < 0.01);
  CHECK(widest < 4 * 2.0 / 47);  // of an even spread
}

TEST_CASE("search: a constraint cuts the front where it must", "[study][search][front]") {
  // Squared distances to (0, 0, 0) and (1, 0, 0), y ≥ 1/2: the front is x in [0, 1], y = 1/2, z = 0, by the multiplier of y.
  PopulationOptions options;
  options.objectives = 2;
  options.generations = 150;
  const auto front = searched({Range{-2, 2}, Range{-2, 2}, Range{-2, 2}}, [](const Design& p) {
    const double off_axis = p[1] * p[1] + p[2] * p[2];
    return Assessment{{p[0] * p[0] + off_axis, std::pow(p[0] - 1, 2) + off_axis}, {0.5 - p[1]}};
  }, options).front();
  REQUIRE(front.size() > 40);
  double mean = 0;
  for (const Member& m : front) {
    CHECK(m.design[1] >= 0.5);
    const double excess = m.design[1] * m.design[1] + m.design[2] * m.design[2] - 0.25;  // of both objectives, which range over 1
    CHECK(excess < 2e-3);
    mean += excess / static_cast<double>(front.size());
    CHECK((m.design[0] > -0.02 && m.design[0] < 1.02));
  }
  CHECK(mean < 5e-4);
  CHECK(front.front().design[0] < 0.05);
  CHECK(front.back().design[0] > 0.95);
}

TEST_CASE("polish: goes down a bent valley to its end, and does not leave the bounds", "[study][search][polish]") {
  const auto law = [](const Design& x) {
    CHECK((x[0] >= -2 && x[0] <= 2 && x[1] >= -2 && x[1] <= 0.81));
    return Assessment{{100 * std::pow(x[1] - x[0] * x[0], 2) + std::pow(1 - x[0], 2)}, {}};
  };
  // With y ≤ 0.81 the optimum lies on that bound, at the root of 400 x (x² − 0.81) = 2 (1 − x), near x = 0.9.
  double x = 0.9;
  for (int i = 0; i < 20; ++i) x -= (400 * x * (x * x - 0.81) - 2 * (1 - x)) / (1200 * x * x - 324 + 2);
  const Design start{0.5, 0.25};
  PatternOptions options;
  options.evaluations = 5000;
  PatternSearch pattern({Range{-2, 2}, Range{-2, 0.81}}, {start, law(start)}, options);
  finish(pattern, law);
  const double least = 100 * std::pow(0.81 - x * x, 2) + std::pow(1 - x, 2);
  CHECK(pattern.best().assessment.objectives[0] == Approx(least).epsilon(1e-4));
}

TEST_CASE("polish: keeps choices, ends with the step, and never asks for more than allowed", "[study][search][polish]") {
  const auto law = [](const Design& d) { return Assessment{{d[0] + d[1] * d[1]}, {}}; };
  PatternSearch pattern({OrderedChoice{5}, Range{-1, 1}}, {{3, 0.5}, law({3, 0.5})});
  finish(pattern, law);
  CHECK(pattern.best().design[0] == 3);
  CHECK(pattern.best().design[1] == Approx(0).margin(1e-5));
  CHECK(pattern.step() < 1e-6);
  PatternOptions few;
  few.evaluations = 10;
  PatternSearch shorter({OrderedChoice{5}, Range{-1, 1}}, {{3, 0.5}, law({3, 0.5})}, few);
  finish(shorter, law);
  CHECK(shorter.told() <= 10);
  CHECK(PatternSearch({OrderedChoice{5}}, {{3}, {{1}, {}}}).done());
}

TEST_CASE("search: what cannot be searched is refused", "[study][search]") {
  CHECK_THROWS_AS(PopulationSearch({}, {}), InvalidInput);
  CHECK_THROWS_AS(PopulationSearch({Range{1, 1}}, {}), InvalidInput);
  CHECK_THROWS_AS(PopulationSearch({FreeChoice{0}}, {}), InvalidInput);
  PopulationOptions small;
  small.population = 3;
  CHECK_THROWS_AS(PopulationSearch({Range{0, 1}}, small), InvalidInput);
  PopulationSearch search({Range{0, 1}}, {});
  CHECK_THROWS_AS(search.tell({}), InvalidInput);
  CHECK_THROWS_AS(search.tell(std::vector<Assessment>(search.ask().size(), Assessment{{1, 2}, {}})), InvalidInput);
}
