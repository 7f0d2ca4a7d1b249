#include "study/point_set.h"

#include <bit>

#include <boost/random/sobol.hpp>

#include "quantity/counter_random.h"
#include "study/argument.h"

namespace sinewright::study {

namespace {

constexpr std::size_t kDigits = 32;
constexpr std::uint64_t kMostLatinRows = std::uint64_t{1} << 31;

// Different uses of one seed must not share numbers.
constexpr std::uint64_t kRandom = 1, kScramble = 2, kPermute = 3, kPlace = 4;

void require_fit(std::span<double> u, std::size_t dimensions) {
  require(u.size() == dimensions, "length of a point", static_cast<double>(u.size()), "the number of dimensions");
}

// Owen's nested scrambling. The coin of a digit depends on the digits above it, so two points that agree in their first k
// digits still do afterwards: boxes go to boxes, each keeping its number of points.
std::uint32_t scrambled(std::uint32_t x, std::uint64_t seed, std::size_t dimension) {
  std::uint32_t flips = 0;
  for (std::uint32_t k = 0; k < kDigits; ++k) {
    const std::uint64_t above = k == 0 ? 0 : x >> (kDigits - k);
    const auto coin = static_cast<std::uint32_t>(random_bits(seed, (dimension << 8) | kScramble, k, above) >> 63);
    flips |= coin << (kDigits - 1 - k);
  }
  return x ^ flips;
}

// A permutation of 0 … n − 1 without a table: four Feistel rounds permute the next power of four; what falls outside goes
// round again, which from any start inside comes back inside.
std::uint64_t permuted(std::uint64_t index, std::uint64_t n, std::uint64_t seed, std::size_t dimension) {
  if (n == 1) return 0;
  const auto half = static_cast<std::uint64_t>((std::bit_width(n - 1) + 1) / 2);
  const std::uint64_t mask = (std::uint64_t{1} << half) - 1;
  do {
    std::uint64_t left = index >> half, right = index & mask;
    for (std::uint64_t round = 0; round < 4; ++round) {
      const std::uint64_t next = left ^ (random_bits(seed, (dimension << 8) | kPermute, round, right) & mask);
      left = right;
      right = next;
    }
    index = (left << half) | right;
  } while (index >= n);
  return index;
}

}  // namespace

RandomPoints::RandomPoints(std::size_t dimensions, std::uint64_t seed) : dimensions_(dimensions), seed_(seed) {
  require(dimensions >= 1, "number of dimensions", static_cast<double>(dimensions), "at least 1");
}

void RandomPoints::point(std::uint64_t row, std::span<double> u) const {
  require_fit(u, dimensions_);
  for (std::size_t d = 0; d < u.size(); ++d) u[d] = to_unit(random_bits(seed_, (d << 8) | kRandom, row));
}

SobolPoints::SobolPoints(std::size_t dimensions, std::uint64_t seed) : seed_(seed) {
  require(dimensions >= 1 && dimensions <= boost::random::default_sobol_table::max_dimension, "number of dimensions",
          static_cast<double>(dimensions), "1 to 3667");
  directions_.resize(dimensions * kDigits);
  // Boost walks in Gray-code order and leaves out the origin; the place whose Gray code has the digit k alone shows the
  // direction number k of every dimension.
  for (std::size_t k = 0; k < kDigits; ++k) {
    boost::random::sobol_engine<std::uint32_t, kDigits> engine(dimensions);
    engine.seed(static_cast<std::uint32_t>((std::uint64_t{1} << (k + 1)) - 2));
    for (std::size_t d = 0; d < dimensions; ++d) directions_[d * kDigits + k] = engine();
  }
}

void SobolPoints::point(std::uint64_t row, std::span<double> u) const {
  require_fit(u, dimensions());
  require(row < (std::uint64_t{1} << kDigits), "row of a Sobol sequence", static_cast<double>(row), "below 2^32");
  for (std::size_t d = 0; d < u.size(); ++d) {
    std::uint32_t x = 0;
    for (std::size_t k = 0; k < kDigits; ++k)
      if ((row >> k) & 1) x ^= directions_[d * kDigits + k];
    const std::uint64_t rest = random_bits(seed_, (d << 8) | kScramble, kDigits, x) >> kDigits;
    u[d] = to_unit((std::uint64_t{scrambled(x, seed_, d)} << kDigits) | rest);
  }
}

LatinHypercube::LatinHypercube(std::uint64_t rows, std::size_t dimensions, std::uint64_t seed)
    : rows_(rows), dimensions_(dimensions), seed_(seed) {
  require(rows >= 1 && rows <= kMostLatinRows, "number of rows", static_cast<double>(rows), "1 to 2^31");
  require(dimensions >= 1, "number of dimensions", static_cast<double>(dimensions), "at least 1");
}

void LatinHypercube::point(std::uint64_t row, std::span<double> u) const {
  require_fit(u, dimensions_);
  require(row < rows_, "row of a Latin hypercube", static_cast<double>(row), "below its number of rows");
  for (std::size_t d = 0; d < u.size(); ++d) {
    // 20 digits within the stratum: with 31 of the stratum's number the sum is exact, so the quotient stays in it.
    const double within = (static_cast<double>(random_bits(seed_, (d << 8) | kPlace, row) >> 44) + 0.5) * 0x1p-20;
    u[d] = (static_cast<double>(permuted(row, rows_, seed_, d)) + within) / static_cast<double>(rows_);
  }
}

std::uint64_t grid_rows(std::span<const std::size_t> sizes) {
  double rows = 1;
  for (std::size_t size : sizes) {
    require(size >= 1, "number of values of an axis", static_cast<double>(size), "at least 1");
    rows *= static_cast<double>(size);
    require(rows <= 0x1p53, "number of rows of a grid", rows, "at most 2^53");
  }
  return static_cast<std::uint64_t>(rows);
}

std::vector<std::size_t> grid_place(std::span<const std::size_t> sizes, std::uint64_t row) {
  const std::uint64_t rows = grid_rows(sizes);
  require(row < rows, "row of a grid", static_cast<double>(row), "below its number of rows");
  std::vector<std::size_t> place(sizes.size());
  for (std::size_t axis = sizes.size(); axis-- > 0;) {
    place[axis] = static_cast<std::size_t>(row % sizes[axis]);
    row /= sizes[axis];
  }
  return place;
}

}  // namespace sinewright::study
