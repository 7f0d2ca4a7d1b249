// Point sets fill the cube as evenly as they promise, and any row comes out alike in any order.

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <set>

#include <catch2/catch.hpp>

#include "quantity/counter_random.h"
#include "quantity/invalid_input.h"
#include "study/distribution.h"
#include "study/point_set.h"
#include "study/shared_factor.h"

using namespace sinewright;
using namespace sinewright::study;

namespace {

template <class Points>
std::vector<double> row_of(const Points& points, std::uint64_t row) {
  std::vector<double> u(points.dimensions());
  points.point(row, u);
  return u;
}

double correlation(const std::vector<double>& x, const std::vector<double>& y) {
  const double n = static_cast<double>(x.size());
  double mx = 0, my = 0, xx = 0, yy = 0, xy = 0;
  for (std::size_t i = 0; i < x.size(); ++i) mx += x[i] / n, my += y[i] / n;
  for (std::size_t i = 0; i < x.size(); ++i) {
    xx += (x[i] - mx) * (x[i] - mx);
    yy += (y[i] - my) * (y[i] - my);
    xy += (x[i] - mx) * (y[i] - my);
  }
  return xy / std::sqrt(xx * yy);
}

}  // namespace

TEST_CASE("points: the random bits are those of splitmix64", "[study]") {
  // The first output of splitmix64 from state 0, and from state 1234567 (widely used check values, from memory).
  CHECK(mixed(0) == 0xe220a8397b1dcdafU);
  CHECK(mixed(1234567) == 6457827717110365317U);
  CHECK(to_unit(0) > 0);
  CHECK(to_unit(~std::uint64_t{0}) < 1);
}

TEST_CASE("points: of the first 2^m Sobol rows each interval of each coordinate holds exactly one", "[study][sobol]") {
  const std::uint64_t seed = GENERATE(1u, 2u, 77u);
  const SobolPoints points(40, seed);
  for (std::uint64_t m : {0, 1, 2, 3, 7, 10}) {
    const std::uint64_t n = std::uint64_t{1} << m;
    std::vector<std::set<std::uint64_t>> hit(points.dimensions());
    for (std::uint64_t row = 0; row < n; ++row) {
      const auto u = row_of(points, row);
      for (std::size_t d = 0; d < u.size(); ++d) hit[d].insert(static_cast<std::uint64_t>(u[d] * static_cast<double>(n)));
    }
    for (const auto& intervals : hit) CHECK(intervals.size() == n);
  }
}

TEST_CASE("points: the first two Sobol coordinates are a (0, m, 2)-net, and so is every later block of 2^m rows", "[study][sobol]") {
  const SobolPoints points(2, GENERATE(1u, 5u));
  const std::uint64_t m = 8, n = 256;
  for (std::uint64_t block : {0, 1, 13})
    for (std::uint64_t k = 0; k <= m; ++k) {  // boxes of 2^-k by 2^(k-m)
      std::set<std::uint64_t> boxes;
      for (std::uint64_t row = block * n; row < (block + 1) * n; ++row) {
        const auto u = row_of(points, row);
        const auto x = static_cast<std::uint64_t>(std::ldexp(u[0], static_cast<int>(k)));
        const auto y = static_cast<std::uint64_t>(std::ldexp(u[1], static_cast<int>(m - k)));
        boxes.insert(x << 32 | y);
      }
      CHECK(boxes.size() == n);
    }
}

TEST_CASE("points: scrambling differs with the seed and each row alone is spread evenly over the seeds", "[study][sobol]") {
  std::vector<double> of_row(10, 0);
  for (std::uint64_t seed = 0; seed < 4000; ++seed) ++of_row[static_cast<std::size_t>(10 * row_of(SobolPoints(1, seed), 6)[0])];
  // Tenths of 4000 fair draws: 400 ± 19; five standard deviations.
  for (double count : of_row) CHECK(std::abs(count - 400) < 5 * std::sqrt(4000 * 0.1 * 0.9));
}

TEST_CASE("points: Sobol rows integrate a smooth function far closer than random ones", "[study][sobol]") {
  const SobolPoints even(6, 3);
  const RandomPoints uneven(6, 3);
  const auto error = [](const auto& points) {
    double sum = 0;
    for (std::uint64_t row = 0; row < 4096; ++row) {
      double product = 1;
      for (double u : row_of(points, row)) product *= 1 + 0.5 * (u - 0.5);
      sum += product;
    }
    return std::abs(sum / 4096 - 1);
  };
  CHECK(error(even) < 1e-5);
  CHECK(error(uneven) > 1e-4);
}

TEST_CASE("points: a Latin hypercube has exactly one row in each stratum", "[study][latin]") {
  const std::uint64_t n = GENERATE(1u, 2u, 3u, 10u, 100u, 1000u, 65537u);
  const LatinHypercube points(n, 3, GENERATE(1u, 9u));
  std::vector<std::vector<int>> hit(3, std::vector<int>(n));
  for (std::uint64_t row = 0; row < n; ++row) {
    const auto u = row_of(points, row);
    for (std::size_t d = 0; d < 3; ++d) ++hit[d][static_cast<std::size_t>(u[d] * static_cast<double>(n))];
  }
  for (const auto& strata : hit) CHECK(std::all_of(strata.begin(), strata.end(), [](int c) { return c == 1; }));
}

TEST_CASE("points: the coordinates of a Latin hypercube, and of random points, do not go together", "[study][latin]") {
  const LatinHypercube latin(10000, 3, 4);
  const RandomPoints random(3, 4);
  const auto check_pairs = [](const auto& points) {
    std::vector<std::vector<double>> columns(3);
    for (std::uint64_t row = 0; row < 10000; ++row) {
      const auto u = row_of(points, row);
      for (std::size_t d = 0; d < 3; ++d) columns[d].push_back(u[d]);
    }
    for (auto [a, b] : {std::pair{0, 1}, {0, 2}, {1, 2}})
      CHECK(std::abs(correlation(columns[static_cast<std::size_t>(a)], columns[static_cast<std::size_t>(b)])) < 0.04);  // 4 / √n
    std::vector<double> this_row(columns[0].begin(), columns[0].end() - 1), next_row(columns[0].begin() + 1, columns[0].end());
    CHECK(std::abs(correlation(this_row, next_row)) < 0.04);
  };
  check_pairs(latin);
  check_pairs(random);
}

TEST_CASE("points: a row does not depend on which rows were made before", "[study]") {
  const SobolPoints sobol(5, 11), again(5, 11), other(5, 12);
  const auto u = row_of(sobol, 1000);
  (void)row_of(again, 3);
  CHECK(row_of(again, 1000) == u);
  CHECK(row_of(other, 1000) != u);
  const LatinHypercube latin(5000, 2, 11);
  const auto v = row_of(latin, 4999);
  (void)row_of(latin, 0);
  CHECK(row_of(latin, 4999) == v);
  // The very bits, so that a change of the generator, which would make old studies unrepeatable, shows.
  CHECK(row_of(RandomPoints(1, 1), 0)[0] == Approx(to_unit(random_bits(1, 1, 0))).epsilon(0));
}

TEST_CASE("points: the last axis of a grid varies fastest, and every place comes once", "[study][grid]") {
  const std::vector<std::size_t> sizes{2, 3, 4};
  REQUIRE(grid_rows(sizes) == 24);
  CHECK(grid_place(sizes, 0) == std::vector<std::size_t>{0, 0, 0});
  CHECK(grid_place(sizes, 1) == std::vector<std::size_t>{0, 0, 1});
  CHECK(grid_place(sizes, 4) == std::vector<std::size_t>{0, 1, 0});
  CHECK(grid_place(sizes, 23) == std::vector<std::size_t>{1, 2, 3});
  std::set<std::vector<std::size_t>> places;
  for (std::uint64_t row = 0; row < 24; ++row) places.insert(grid_place(sizes, row));
  CHECK(places.size() == 24);
}

TEST_CASE("points: rows and dimensions that do not exist are refused", "[study]") {
  std::vector<double> one(1), two(2);
  CHECK_THROWS_AS(SobolPoints(0, 1), InvalidInput);
  CHECK_THROWS_AS(SobolPoints(3668, 1), InvalidInput);
  CHECK_THROWS_AS(SobolPoints(1, 1).point(std::uint64_t{1} << 32, one), InvalidInput);
  CHECK_THROWS_AS(SobolPoints(1, 1).point(0, two), InvalidInput);
  CHECK_THROWS_AS(LatinHypercube(0, 1, 1), InvalidInput);
  CHECK_THROWS_AS(LatinHypercube(3, 1, 1).point(3, one), InvalidInput);
  const std::vector<std::size_t> empty_axis{2, 0}, huge(60, 2);
  CHECK_THROWS_AS(grid_rows(empty_axis), InvalidInput);
  CHECK_THROWS_AS(grid_rows(huge), InvalidInput);
  const std::vector<std::size_t> sizes{2};
  CHECK_THROWS_AS(grid_place(sizes, 2), InvalidInput);
}

TEST_CASE("group: members keep their own spread and go together by the stated correlation", "[study][group]") {
  const double r = GENERATE(0.0, 0.3, 0.8, 1.0);
  const RandomPoints points(3, 21);
  std::vector<double> u0, u1, z0, z1;
  for (std::uint64_t row = 0; row < 20000; ++row) {
    auto u = row_of(points, row);
    share_factor(u[2], r, std::span(u).first(2));
    u0.push_back(u[0]), u1.push_back(u[1]);
    z0.push_back(quantile(Normal{0, 1}, u[0])), z1.push_back(quantile(Normal{0, 1}, u[1]));
  }
  // Standard error of a correlation: (1 − r²)/√n; four of them.
  const double allowed = 4 * (1 - r * r) / std::sqrt(20000.0) + 1e-9;
  CHECK(std::abs(correlation(z0, z1) - r) <= allowed);
  CHECK(std::abs(correlation(u0, u1) - rank_correlation(r)) <= allowed + 0.01 * r * (1 - r));  // ranks spread slightly wider
  // Kolmogorov's distance to the uniform distribution stays below 1.95 / √n in 99.9 % of samples.
  std::sort(u0.begin(), u0.end());
  double distance = 0;
  for (std::size_t i = 0; i < u0.size(); ++i) distance = std::max(distance, std::abs(u0[i] - static_cast<double>(i + 1) / 20000));
  CHECK(distance < 1.95 / std::sqrt(20000.0));
}

TEST_CASE("group: without correlation nothing changes, with full correlation all are the factor", "[study][group]") {
  std::vector<double> u{0.2, 0.7};
  share_factor(0.4, 0, u);
  CHECK(u[0] == Approx(0.2).epsilon(1e-14));
  CHECK(u[1] == Approx(0.7).epsilon(1e-14));
  share_factor(0.4, 1, u);
  CHECK(u[0] == Approx(0.4).epsilon(1e-14));
  CHECK(u[1] == u[0]);
  CHECK(correlation_for_rank(rank_correlation(0.37)) == Approx(0.37).epsilon(1e-14));
  CHECK(rank_correlation(1) == Approx(1).epsilon(1e-14));
  CHECK_THROWS_AS(share_factor(0.4, -0.1, u), InvalidInput);
  CHECK_THROWS_AS(share_factor(1.0, 0.1, u), InvalidInput);
  std::vector<double> far{1 - 0x1p-53};  // must not round to 1
  share_factor(1 - 0x1p-53, 0.5, far);
  CHECK(far[0] < 1);
}
