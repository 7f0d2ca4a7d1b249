#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace sinewright::study {

/// Sets of points in the open unit cube. A row is a function of the seed and its number alone: any row on any machine, in any
/// order, with the same bits. Definitions and sources: docs/theory/studies.md.

/// Independent random points. The intervals of proportion_interval.h hold for these and not for the evener sets below.
class RandomPoints {
 public:
  RandomPoints(std::size_t dimensions, std::uint64_t seed);
  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  void point(std::uint64_t row, std::span<double> u) const;

 private:
  std::size_t dimensions_;
  std::uint64_t seed_;
};

/// Sobol's sequence with the direction numbers of Joe and Kuo (SIAM J. Sci. Comput. 30 (2008) 2635, as in Boost), scrambled as
/// Owen does: each binary digit of a coordinate is flipped or not by a coin that depends on all digits above it. The digits below
/// the 32 of the sequence are random. Of the first 2^m rows each interval [j, j+1) / 2^m of each coordinate holds exactly one,
/// and the first two coordinates have exactly one row in each box of area 2^−m whose sides are such intervals. The first row is
/// not the origin. Best used with a power of two as number of rows.
class SobolPoints {
 public:
  /// @param dimensions  1 … 3667.
  SobolPoints(std::size_t dimensions, std::uint64_t seed);
  [[nodiscard]] std::size_t dimensions() const { return directions_.size() / 32; }
  /// @param row  below 2^32.
  void point(std::uint64_t row, std::span<double> u) const;

 private:
  std::vector<std::uint32_t> directions_;  // 32 a dimension
  std::uint64_t seed_;
};

/// Latin hypercube: of the n rows each interval [j, j+1) / n of each coordinate holds exactly one, at a random place in it.
class LatinHypercube {
 public:
  /// @param rows  1 … 2^31.
  LatinHypercube(std::uint64_t rows, std::size_t dimensions, std::uint64_t seed);
  [[nodiscard]] std::size_t dimensions() const { return dimensions_; }
  [[nodiscard]] std::uint64_t rows() const { return rows_; }
  /// @param row  below rows().
  void point(std::uint64_t row, std::span<double> u) const;

 private:
  std::uint64_t rows_;
  std::size_t dimensions_;
  std::uint64_t seed_;
};

/// Number of rows of a grid whose axes have so many values. @throws InvalidInput for an empty axis, or more than 2^53 rows.
[[nodiscard]] std::uint64_t grid_rows(std::span<const std::size_t> sizes);

/// Which value of each axis a row of the grid has; the last axis varies fastest.
[[nodiscard]] std::vector<std::size_t> grid_place(std::span<const std::size_t> sizes, std::uint64_t row);

}  // namespace sinewright::study
