// Moments, quantiles, histograms, and what passes and fails say about a yield.

#include <cmath>
#include <limits>
#include <numeric>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"
#include "study/proportion_interval.h"
#include "study/sample_statistics.h"

using namespace sinewright;
using namespace sinewright::study;

namespace {

const double kNaN = std::numeric_limits<double>::quiet_NaN();

double binomial(std::uint64_t k, std::uint64_t n, double p) {
  const double a = static_cast<double>(k), b = static_cast<double>(n);
  return std::exp(std::lgamma(b + 1) - std::lgamma(a + 1) - std::lgamma(b - a + 1) + a * std::log(p) + (b - a) * std::log1p(-p));
}

}  // namespace

TEST_CASE("statistics: moments of a list, failed runs left out and counted", "[study]") {
  const std::vector<double> values{4, kNaN, 2, 9};
  const SampleMoments m = sample_moments(values);
  CHECK(m.count == 3);
  CHECK(m.missing == 1);
  CHECK(m.mean == 5);
  CHECK(m.deviation == Approx(std::sqrt(13.0)).epsilon(1e-15));  // (1 + 9 + 16) / 2
  CHECK(m.least == 2);
  CHECK(m.greatest == 9);
  CHECK(std::isnan(sample_moments(std::vector<double>{kNaN}).mean));
  CHECK(std::isnan(sample_moments(std::vector<double>{1}).deviation));
}

TEST_CASE("statistics: a far offset does not eat the deviation", "[study]") {
  CHECK(sample_moments(std::vector<double>{1e9 + 1, 1e9 + 2, 1e9 + 3}).deviation == 1);
}

TEST_CASE("statistics: quantiles stand at the ranks and between them on straight lines", "[study]") {
  const auto sorted = sorted_numbers(std::vector<double>{5, kNaN, 1, 2});
  CHECK(sample_quantile(sorted, 0) == 1);
  CHECK(sample_quantile(sorted, 0.5) == 2);
  CHECK(sample_quantile(sorted, 0.75) == 3.5);
  CHECK(sample_quantile(sorted, 1) == 5);
  CHECK(std::isnan(sample_quantile({}, 0.5)));
  CHECK_THROWS_AS(sample_quantile(sorted, 1.1), InvalidInput);
}

TEST_CASE("statistics: a histogram counts every number once", "[study]") {
  const std::vector<double> values{0, 0.5, 1, 1.5, 2, 2, kNaN, 4};
  const Histogram h = histogram(values, 4);
  CHECK(h.low == 0);
  CHECK(h.high == 4);
  CHECK(h.counts == std::vector<std::uint64_t>{2, 2, 2, 1});
  CHECK(histogram(std::vector<double>{3, 3}).counts == std::vector<std::uint64_t>{2});
  CHECK(histogram(std::vector<double>{kNaN}).counts.empty());
  std::vector<double> many;
  for (int i = 0; i < 500; ++i) many.push_back(i);
  const Histogram chosen = histogram(many);
  CHECK(chosen.counts.size() == 8);  // the IQR is half the range, so the bins are ∛500 = 7.9
  CHECK(std::accumulate(chosen.counts.begin(), chosen.counts.end(), std::uint64_t{0}) == 500);
}

TEST_CASE("yield: at the ends of Clopper and Pearson's interval the observed count is just improbable enough", "[study][yield]") {
  const double confidence = GENERATE(0.8, 0.95, 0.999);
  const std::uint64_t n = 40, k = GENERATE(1u, 7u, 39u);
  const Interval i = clopper_pearson_interval(k, n, confidence);
  double at_least = 0, at_most = 0;
  for (std::uint64_t j = k; j <= n; ++j) at_least += binomial(j, n, i.low);
  for (std::uint64_t j = 0; j <= k; ++j) at_most += binomial(j, n, i.high);
  CHECK(at_least == Approx(0.5 * (1 - confidence)).epsilon(1e-9));
  CHECK(at_most == Approx(0.5 * (1 - confidence)).epsilon(1e-9));
}

TEST_CASE("yield: at the ends of Wilson's interval the observed share stands z standard errors off", "[study][yield]") {
  const Interval i = wilson_interval(7, 40, 0.95);
  for (double p : {i.low, i.high})
    CHECK(std::abs(7.0 / 40 - p) / std::sqrt(p * (1 - p) / 40) == Approx(1.959963984540054).epsilon(1e-12));
}

TEST_CASE("yield: Clopper and Pearson cover every share at least as often as stated, Wilson on the average", "[study][yield]") {
  const std::uint64_t n = 30;
  double least = 1, mean_wilson = 0;
  const int shares = 200;
  for (int s = 0; s < shares; ++s) {
    const double p = (s + 0.5) / shares;
    double exact = 0, wilson = 0;
    for (std::uint64_t k = 0; k <= n; ++k) {
      const Interval e = clopper_pearson_interval(k, n), w = wilson_interval(k, n);
      exact += (e.low <= p && p <= e.high) * binomial(k, n, p);
      wilson += (w.low <= p && p <= w.high) * binomial(k, n, p);
    }
    least = std::min(least, exact);
    mean_wilson += wilson / shares;
  }
  CHECK(least >= 0.95 - 1e-12);
  CHECK(mean_wilson == Approx(0.95).margin(0.01));
}

TEST_CASE("yield: intervals mirror when passes and fails change places, and end at 0 and 1", "[study][yield]") {
  for (auto interval : {&wilson_interval, &clopper_pearson_interval}) {
    const Interval a = interval(3, 20, 0.9), b = interval(17, 20, 0.9);
    CHECK(a.low == Approx(1 - b.high).epsilon(1e-12));
    CHECK(a.high == Approx(1 - b.low).epsilon(1e-12));
    CHECK(interval(0, 20, 0.9).low == 0);
    CHECK(interval(20, 20, 0.9).high == 1);
    CHECK_THROWS_AS(interval(0, 0, 0.9), InvalidInput);
    CHECK_THROWS_AS(interval(2, 1, 0.9), InvalidInput);
    CHECK_THROWS_AS(interval(1, 2, 1.0), InvalidInput);
  }
}
