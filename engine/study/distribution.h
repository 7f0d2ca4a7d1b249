#pragma once

#include <variant>
#include <vector>

namespace sinewright::study {

/// How a varied key is spread. Plain values; `check` refuses what cannot be drawn from. Definitions: docs/theory/studies.md.

/// One of several values. For a choice of parts the values are its places in a list, 0, 1, ….
struct Choices {
  std::vector<double> values;
  std::vector<double> weights;  ///< ≥ 0, one for each value; empty: all alike
};

struct Uniform {
  double low = 0, high = 0;
};

struct Normal {
  double mean = 0, deviation = 0;
};

/// Density rises from 0 at `low` to its greatest at `mode` and falls to 0 at `high`.
struct Triangular {
  double low = 0, mode = 0, high = 0;
};

/// A normal of which parts outside [low, high] have been sorted out; `mean` and `deviation` are those before the sorting.
struct TruncatedNormal {
  double mean = 0, deviation = 0;
  double low = 0, high = 0;
};

/// A measured list. Between its sorted values the quantile is interpolated: the value of rank i (from 0) of n stands at
/// u = i / (n − 1). Nothing outside the measured range is ever drawn.
struct Empirical {
  std::vector<double> sorted;  ///< by `measured`
};

using Distribution = std::variant<Choices, Uniform, Normal, Triangular, TruncatedNormal, Empirical>;

/// The distribution of a measured list in any order.
[[nodiscard]] Empirical measured(std::vector<double> values);

/// The normal that keeps to the limits of a tolerance as far as processes usually do: its mean in the middle, its limits
/// `sigmas` standard deviations away. With 3, the usual reading of "capable" (common practice, no source), 0.27 % lie outside.
[[nodiscard]] Normal normal_within(double low, double high, double sigmas = 3);

/// @throws InvalidInput for numbers that are not finite or not in order, deviations ≤ 0, empty lists, weights that are negative
/// or all 0, and bounds of a truncated normal between which less than 1e-12 of the normal lies.
void check(const Distribution& distribution);

/// The value below which the share u lies; 0 < u < 1. Does not check its distribution.
/// @throws InvalidInput for another u.
[[nodiscard]] double quantile(const Distribution& distribution, double u);

/// Mean and standard deviation of what `quantile` draws, in closed form.
[[nodiscard]] double mean(const Distribution& distribution);
[[nodiscard]] double deviation(const Distribution& distribution);

}  // namespace sinewright::study
