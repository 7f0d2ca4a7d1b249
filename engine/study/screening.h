#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace sinewright::study {

/// The rows of a screening by elementary effects: from a random start, one key after the other steps up or down by half of its
/// distribution, so a path through k keys has k + 1 rows, one after the other. Coordinates are the middles of p equal parts of
/// (0, 1), so that a distribution without bounds can be screened too. Definitions: docs/theory/studies.md.
class ScreeningDesign {
 public:
  /// @param levels  p, even, at least 2.
  ScreeningDesign(std::uint64_t paths, std::size_t keys, std::uint64_t seed, std::size_t levels = 4);
  [[nodiscard]] std::size_t keys() const { return keys_; }
  [[nodiscard]] std::uint64_t paths() const { return paths_; }
  [[nodiscard]] std::uint64_t rows() const { return paths_ * (keys_ + 1); }
  void point(std::uint64_t row, std::span<double> u) const;
  /// The key that steps between row and row + 1, and its step, ±1/2; row is not the last of its path.
  struct Step {
    std::size_t key = 0;
    double length = 0;
  };
  [[nodiscard]] Step step(std::uint64_t row) const;

 private:
  struct Path;
  [[nodiscard]] Path path(std::uint64_t number) const;

  std::uint64_t paths_;
  std::size_t keys_;
  std::uint64_t seed_;
  std::size_t levels_;
};

/// Statistics of a key's elementary effects, each the change of the outcome over the change of the coordinate.
struct ElementaryEffects {
  double mean = 0;       ///< μ; NaN without an effect
  double magnitude = 0;  ///< μ*, mean of the absolute effects: how much the key matters
  double deviation = 0;  ///< σ: how much that depends on where it is (curvature, or interplay with other keys); NaN below two effects
  std::uint64_t used = 0, dropped = 0;  ///< effects; dropped: one of its two runs failed
};

/// Morris (Technometrics 33 (1991) 161) and Campolongo, Cariboni and Saltelli (Environ. Model. Softw. 22 (2007) 1509) for μ*,
/// both from memory.
/// @param outcomes  one for each row of the design; NaN: the run failed.
[[nodiscard]] std::vector<ElementaryEffects> elementary_effects(const ScreeningDesign& design, std::span<const double> outcomes);

}  // namespace sinewright::study
