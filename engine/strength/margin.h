#pragma once

#include <span>
#include <string>

namespace sinewright::strength {

/// What a part can bear beside what is asked of it. Both numbers have the same unit.
struct Margin {
  std::string check;    ///< what was checked, for instance "cord at knot"
  double capacity = 0;  ///< may be infinite; negative or 0: already lost without any demand
  double demand = 0;    ///< finite, ≥ 0
  std::string unit;     ///< of both, SI

  /// capacity / demand. Without demand: +∞, or −∞ if the capacity is negative.
  [[nodiscard]] double ratio() const noexcept;

  /// Whether the ratio is at least 1.
  [[nodiscard]] bool holds() const noexcept { return ratio() >= 1; }
};

/// A margin with its numbers checked.
/// @throws InvalidInput, naming the check, if the capacity is NaN, or the demand negative or not finite.
[[nodiscard]] Margin make_margin(std::string check, double capacity, double demand, std::string unit);

/// The margin with the smallest ratio, what breaks first; the earlier one of two equal ones.
/// @throws InvalidInput if there is none.
[[nodiscard]] const Margin& weakest(std::span<const Margin> margins);

}  // namespace sinewright::strength
