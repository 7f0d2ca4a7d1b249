// Sensitivity, screening and causes of failure against functions whose answer follows by hand.

#include <cmath>
#include <functional>
#include <limits>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"
#include "study/failure_cause.h"
#include "study/screening.h"
#include "study/sensitivity.h"

using namespace sinewright;
using namespace sinewright::study;

namespace {

const double kNaN = std::numeric_limits<double>::quiet_NaN();
using Law = std::function<double(const std::vector<double>& u)>;

template <class Rows>
std::vector<double> outcomes(const Rows& design, const Law& law) {
  std::vector<double> y;
  std::vector<double> u(design.keys());
  for (std::uint64_t row = 0; row < design.rows(); ++row) {
    design.point(row, u);
    y.push_back(law(u));
  }
  return y;
}

double linear(const std::vector<double>& u) { return 7 + 3 * u[0] - 2 * u[1] + u[2]; }

}  // namespace

TEST_CASE("sensitivity: a row AB_i is A but for the coordinate i, which is B's", "[study][sensitivity]") {
  const SensitivityDesign design(8, 3, 5);
  REQUIRE(design.rows() == 40);
  std::vector<double> a(3), b(3), ab(3);
  for (std::uint64_t base = 0; base < 8; ++base) {
    design.point(5 * base, a);
    design.point(5 * base + 1, b);
    for (std::size_t i = 0; i < 3; ++i) {
      design.point(5 * base + 2 + i, ab);
      for (std::size_t d = 0; d < 3; ++d) CHECK(ab[d] == (d == i ? b[d] : a[d]));
      CHECK(a[i] != b[i]);
    }
  }
}

TEST_CASE("sensitivity: in a sum each key has its share of the variance, first and total alike", "[study][sensitivity]") {
  const SensitivityDesign design(1024, 3, 1);
  const SensitivityResult s = sensitivity(outcomes(design, linear), 3);
  CHECK(s.mean == Approx(8).epsilon(1e-4));
  CHECK(s.variance == Approx(14.0 / 12).epsilon(1e-3));
  for (std::size_t i = 0; i < 3; ++i) {
    const double share = std::vector{9.0, 4.0, 1.0}[i] / 14;
    CHECK(s.keys[i].first == Approx(share).margin(0.005));
    CHECK(s.keys[i].total == Approx(share).margin(0.005));
  }
}

TEST_CASE("sensitivity: a product shares part of the variance between its keys", "[study][sensitivity]") {
  // y = x0 x1, x uniform on (−1, 1) without a mean: all variance is interplay.
  const SensitivityDesign design(2048, 2, 1);
  const auto s = sensitivity(outcomes(design, [](const auto& u) { return (2 * u[0] - 1) * (2 * u[1] - 1); }), 2);
  for (const SensitivityIndex& key : s.keys) {
    CHECK(key.first == Approx(0).margin(0.02));
    CHECK(key.total == Approx(1).margin(0.03));
  }
}

TEST_CASE("sensitivity: a constant added to the outcome changes nothing", "[study][sensitivity]") {
  const SensitivityDesign design(256, 3, 1);
  auto y = outcomes(design, linear);
  const auto before = sensitivity(y, 3);
  for (double& value : y) value += 1e4;
  const auto after = sensitivity(y, 3);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(after.keys[i].first == Approx(before.keys[i].first).margin(1e-8));
    CHECK(after.keys[i].total == Approx(before.keys[i].total).margin(1e-8));
  }
}

TEST_CASE("sensitivity: bootstrap intervals cover the truth about as often as they say", "[study][sensitivity]") {
  const double share = 9.0 / 14;
  int covered_first = 0, covered_total = 0;
  const int studies = 100;
  for (int seed = 0; seed < studies; ++seed) {
    const auto s = sensitivity(outcomes(SensitivityDesign(64, 3, static_cast<std::uint64_t>(seed)), linear), 3, {200, 0.9, 3});
    covered_first += s.keys[0].first_interval.low <= share && share <= s.keys[0].first_interval.high;
    covered_total += s.keys[0].total_interval.low <= share && share <= s.keys[0].total_interval.high;
    CHECK(s.keys[0].first_interval.high - s.keys[0].first_interval.low < 0.6);
  }
  // Sobol points are evener than the independent ones that the bootstrap takes them for, so it may cover more, not less than
  // four standard errors (0.03 each) below.
  CHECK(covered_first >= 78);
  CHECK(covered_total >= 78);
}

TEST_CASE("sensitivity: the bootstrap repeats with its seed", "[study][sensitivity]") {
  const auto y = outcomes(SensitivityDesign(64, 3, 1), linear);
  CHECK(sensitivity(y, 3, {100, 0.95, 7}).keys[1].first_interval.low == sensitivity(y, 3, {100, 0.95, 7}).keys[1].first_interval.low);
  CHECK(sensitivity(y, 3, {100, 0.95, 7}).keys[1].first_interval.low != sensitivity(y, 3, {100, 0.95, 8}).keys[1].first_interval.low);
}

TEST_CASE("sensitivity: a failed row takes its base point with it, and it is counted", "[study][sensitivity]") {
  const SensitivityDesign design(512, 3, 1);
  auto y = outcomes(design, linear);
  for (std::size_t row = 0; row < y.size(); row += 50) y[row + (row / 50) % 5] = kNaN;  // every tenth base point
  const auto s = sensitivity(y, 3);
  CHECK(s.dropped == 52);
  CHECK(s.used == 460);
  CHECK(s.keys[0].first == Approx(9.0 / 14).margin(0.05));
  CHECK(s.keys[0].total == Approx(9.0 / 14).margin(0.05));
}

TEST_CASE("sensitivity: an outcome that does not vary, or never came, has no indices", "[study][sensitivity]") {
  const SensitivityDesign design(64, 2, 1);
  CHECK(std::isnan(sensitivity(outcomes(design, [](const auto&) { return 0.1; }), 2).keys[0].first));
  const auto none = sensitivity(outcomes(design, [](const auto&) { return kNaN; }), 2);
  CHECK(none.used == 0);
  CHECK(none.dropped == 64);
  CHECK(std::isnan(none.keys[1].total));
  CHECK_THROWS_AS(sensitivity(std::vector<double>(7), 2), InvalidInput);
}

TEST_CASE("screening: from row to row one key steps by half its distribution, each key once a path", "[study][screening]") {
  const std::size_t levels = GENERATE(2u, 4u, 8u);
  const ScreeningDesign design(20, 5, 3, levels);
  REQUIRE(design.rows() == 120);
  std::vector<double> u(5), next(5);
  for (std::uint64_t path = 0; path < 20; ++path) {
    std::vector<int> steps(5);
    for (std::uint64_t row = path * 6; row < path * 6 + 5; ++row) {
      design.point(row, u);
      design.point(row + 1, next);
      const auto [key, length] = design.step(row);
      ++steps[key];
      for (std::size_t d = 0; d < 5; ++d) {
        CHECK(next[d] - u[d] == (d == key ? length : 0));
        CHECK((u[d] > 0 && u[d] < 1 && next[d] > 0 && next[d] < 1));
      }
      CHECK(std::abs(length) == 0.5);
    }
    CHECK(steps == std::vector<int>(5, 1));
  }
}

TEST_CASE("screening: of a linear law each effect is its coefficient", "[study][screening]") {
  const ScreeningDesign design(10, 3, 1);
  const auto effects = elementary_effects(design, outcomes(design, linear));
  for (std::size_t i = 0; i < 3; ++i) {
    const double slope = std::vector{3.0, -2.0, 1.0}[i];
    CHECK(effects[i].mean == Approx(slope).epsilon(1e-13));
    CHECK(effects[i].magnitude == Approx(std::abs(slope)).epsilon(1e-13));
    CHECK(effects[i].deviation == Approx(0).margin(1e-12));
    CHECK(effects[i].used == 10);
  }
}

TEST_CASE("screening: of Sobol's g function the effects have the mean that follows by hand", "[study][screening]") {
  // At the four levels |4u − 2| is 3/2, 1/2, 1/2, 3/2 and a step changes it by 1, up or down alike; the other factors have the
  // mean 1. So μ = 0 and μ* = 2 / (1 + a).
  const std::vector<double> a{0, 1, 9};
  const ScreeningDesign design(4000, 3, 1);
  const auto effects = elementary_effects(design, outcomes(design, [&](const auto& u) {
    double product = 1;
    for (std::size_t i = 0; i < 3; ++i) product *= (std::abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
    return product;
  }));
  for (std::size_t i = 0; i < 3; ++i) {
    const double expected = 2 / (1 + a[i]), error = effects[i].deviation / std::sqrt(4000.0);
    CHECK(std::abs(effects[i].magnitude - expected) < 4 * error);
    CHECK(std::abs(effects[i].mean) < 4 * error);
    CHECK(effects[i].deviation > 0.9 * expected);  // up and down alike
  }
}

TEST_CASE("screening: a failed run drops the two effects it takes part in", "[study][screening]") {
  const ScreeningDesign design(10, 3, 1);
  auto y = outcomes(design, linear);
  y[1] = kNaN;
  std::uint64_t dropped = 0;
  for (const auto& e : elementary_effects(design, y)) {
    dropped += e.dropped;
    CHECK(e.used + e.dropped == 10);
    CHECK(std::isfinite(e.magnitude));
  }
  CHECK(dropped == 2);
  CHECK_THROWS_AS(ScreeningDesign(1, 1, 1, 3), InvalidInput);
  CHECK_THROWS_AS(design.step(3), InvalidInput);
}

TEST_CASE("cause: the key that decides stands out, with its side, and the others do not", "[study][cause]") {
  const RandomPoints points(4, 8);
  std::vector<double> inputs;
  std::vector<bool> failed;
  std::vector<double> u(4);
  for (std::uint64_t row = 0; row < 2000; ++row) {
    points.point(row, u);
    inputs.insert(inputs.end(), u.begin(), u.end());
    failed.push_back(u[0] > 0.9 || std::abs(u[2] - 0.5) > 0.48);  // key 0 on the high side, key 2 on both, 1 and 3 never
  }
  const auto causes = failure_causes(inputs, 4, failed);
  CHECK(causes[0].distance > 0.6);
  CHECK(causes[0].chance < 1e-10);
  CHECK(causes[0].side > 0.8);
  // 4 % fail by key 2; of the highest fifth of key 0 the upper half and 4 % of the lower. Four standard errors of 400 rows.
  CHECK(causes[0].fail_share[4] == Approx(0.52).margin(0.1));
  CHECK(causes[0].fail_share[1] == Approx(0.04).margin(0.04));
  CHECK(causes[2].chance < 1e-3);
  CHECK(std::abs(causes[2].side) < 0.3);
  for (std::size_t i : {1u, 3u}) CHECK(causes[i].chance > 0.05);
}

TEST_CASE("cause: where one value parts fails from passes the distance is 1", "[study][cause]") {
  const auto causes = failure_causes(std::vector<double>{1, 2, 3, 4, 5}, 1, {true, true, false, false, false});
  CHECK(causes[0].distance == 1);
  CHECK(causes[0].side < 0);
  CHECK(causes[0].fail_share[0] == 1);
  CHECK(causes[0].fail_share[4] == 0);
}

TEST_CASE("cause: equal values stand together", "[study][cause]") {
  // Washers (0) and bushings (1), half of each fail: there is no distance, whatever the order of rows.
  const auto causes = failure_causes(std::vector<double>{0, 0, 1, 1}, 1, {true, false, true, false});
  CHECK(causes[0].distance == 0);
  CHECK(causes[0].fail_share[0] == 0.5);
  CHECK(std::isnan(causes[0].fail_share[1]));
}

TEST_CASE("cause: of keys that have nothing to do with failing one in twenty has a chance below 5 %", "[study][cause]") {
  const RandomPoints points(1, 15);
  int below = 0;
  const int studies = 1000, rows = 200;
  for (int study = 0; study < studies; ++study) {
    std::vector<double> inputs, u(1);
    std::vector<bool> failed;
    for (int row = 0; row < rows; ++row) {
      points.point(static_cast<std::uint64_t>(study * rows + row), u);
      inputs.push_back(u[0]);
      failed.push_back(row < 40);
    }
    below += failure_causes(inputs, 1, failed)[0].chance < 0.05;
  }
  CHECK(std::abs(below - 50) < 4 * std::sqrt(1000 * 0.05 * 0.95));
}

TEST_CASE("cause: without a fail, or without a pass, there is nothing to compare", "[study][cause]") {
  CHECK(std::isnan(failure_causes(std::vector<double>{1, 2}, 1, {false, false})[0].distance));
  CHECK(std::isnan(failure_causes(std::vector<double>{1, 2}, 1, {true, true})[0].chance));
  CHECK_THROWS_AS(failure_causes(std::vector<double>{1, 2}, 1, {true}), InvalidInput);
}
