#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace sinewright::study {

/// What a list of outcomes says. NaN (a run without an outcome) is left out everywhere, and counted here.
struct SampleMoments {
  std::size_t count = 0;    ///< of numbers
  std::size_t missing = 0;  ///< of NaN
  double mean = 0;          ///< NaN without a number
  double deviation = 0;     ///< with n − 1 in the denominator; NaN below two numbers
  double least = 0, greatest = 0;
};

[[nodiscard]] SampleMoments sample_moments(std::span<const double> values);

/// The numbers among the values, sorted.
[[nodiscard]] std::vector<double> sorted_numbers(std::span<const double> values);

/// Between the sorted values, of which the one of rank i (from 0) of n stands at u = i / (n − 1). 0 ≤ u ≤ 1; NaN of an empty list.
[[nodiscard]] double sample_quantile(std::span<const double> sorted, double u);

struct Histogram {
  double low = 0, high = 0;             ///< outer edges
  std::vector<std::uint64_t> counts;    ///< of bins of one width; the last holds its upper edge too
};

/// @param bins  0: by Freedman and Diaconis (1981, from memory), width 2 IQR / ∛n, at most 200 bins; by √n if the IQR is 0.
[[nodiscard]] Histogram histogram(std::span<const double> values, std::size_t bins = 0);

}  // namespace sinewright::study
