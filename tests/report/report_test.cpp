// What the page of a review is given: rows chosen within their bound, and texts that cannot become markup.

#include <algorithm>
#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "report/page_data.h"
#include "report/record_data.h"
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
