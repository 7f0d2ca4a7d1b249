#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace sinewright::study {

/// How a key goes with failures.
struct FailureCause {
  /// Greatest distance between the cumulative shares of the key among fails and among passes (Kolmogorov and Smirnov): 0 if the key
  /// is spread alike in both, 1 if one value of it parts them. NaN unless there are both fails and passes.
  double distance = 0;
  /// Chance of such a distance, in at least one key of as many as there are, if none had to do with failing: small means that
  /// the distance is not by chance. The law presumes independent rows; for Sobol points and Latin hypercubes it is a guide only.
  double chance = 0;
  /// Difference of the key's mean among fails and passes, in standard deviations of the key: above 0 fails the high side, below 0
  /// the low one, near 0 with a large distance both.
  double side = 0;
  /// Share of fails in each fifth of the key's values, low ones first; NaN for an empty fifth (few different values).
  std::array<double, 5> fail_share{};
};

/// Which key causes the failures of a tolerance study: compares each key's values among fails and passes. It sees what a key does by
/// itself; keys that fail only in a certain combination need the sensitivity study of the outcome.
///
/// Chance by the asymptotic law with the finite-size correction of Stephens (J. R. Stat. Soc. B 32 (1970) 115, from memory),
/// times the number of keys, at most 1. Equal values (choices) make it err to the large side.
///
/// @param inputs  row after row, a number for each key.
/// @param failed  one for each row.
[[nodiscard]] std::vector<FailureCause> failure_causes(std::span<const double> inputs, std::size_t keys,
                                                       const std::vector<bool>& failed);

/// The chance that two samples of n and m independent values of one continuous distribution stand at least `distance` apart.
[[nodiscard]] double distance_by_chance(double distance, std::uint64_t n, std::uint64_t m);

}  // namespace sinewright::study
