#pragma once

#include <cstdint>

namespace sinewright::study {

struct Interval {
  double low = 0, high = 0;
};

/// What `passes` of `trials` independent pieces say about the share of all pieces that pass (the yield).
///
/// Wilson's score interval (J. Am. Stat. Assoc. 22 (1927) 209, from memory) covers the true share with the stated confidence on
/// the average over shares; Clopper and Pearson's (Biometrika 26 (1934) 404, from memory) covers it at least that often for
/// every share, and is wider for it. Both are two-sided, (1 − confidence) / 2 on either side.
///
/// @param confidence  above 0, below 1.
/// @throws InvalidInput for no trials, more passes than trials, or another confidence.
[[nodiscard]] Interval wilson_interval(std::uint64_t passes, std::uint64_t trials, double confidence = 0.95);
[[nodiscard]] Interval clopper_pearson_interval(std::uint64_t passes, std::uint64_t trials, double confidence = 0.95);

/// Trials without a single failure that show a yield of at least `yield` with this confidence (one-sided): least n with
/// 1 − yieldⁿ ≥ confidence. The same n makes the largest of n measured values exceed the quantile `yield` (Wilks 1941, from memory).
[[nodiscard]] std::uint64_t trials_without_failure(double yield, double confidence);

}  // namespace sinewright::study
