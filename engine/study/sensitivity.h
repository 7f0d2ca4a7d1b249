#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "study/point_set.h"
#include "study/proportion_interval.h"

namespace sinewright::study {

/// The rows of a variance-based sensitivity study of k independent keys. A base point of 2k coordinates gives two points A and B;
/// its k + 2 rows, one after the other, are A, B, and for each key i the point AB_i: A with the coordinate i of B.
/// Definitions: docs/theory/studies.md.
class SensitivityDesign {
 public:
  /// @param base_points  best a power of two; the base points are scrambled Sobol points.
  SensitivityDesign(std::uint64_t base_points, std::size_t keys, std::uint64_t seed);
  [[nodiscard]] std::size_t keys() const { return base_.dimensions() / 2; }
  [[nodiscard]] std::uint64_t base_points() const { return base_points_; }
  [[nodiscard]] std::uint64_t rows() const { return base_points_ * (keys() + 2); }
  void point(std::uint64_t row, std::span<double> u) const;

 private:
  std::uint64_t base_points_;
  SobolPoints base_;
};

struct SensitivityIndex {
  double first = 0;          ///< share of the variance that knowing the key alone would take away
  Interval first_interval;
  double total = 0;          ///< share that would be left if all keys but this one were known
  Interval total_interval;
};

struct SensitivityResult {
  std::vector<SensitivityIndex> keys;  ///< NaN if no base point is usable or the outcome does not vary
  double mean = 0, variance = 0;       ///< of the outcome
  std::uint64_t used = 0;              ///< base points
  std::uint64_t dropped = 0;           ///< base points of which at least one row has no number
};

struct SensitivityOptions {
  int bootstrap = 1000;      ///< number of resamplings of the base points, at least 10
  double confidence = 0.95;  ///< of the percentile intervals
  std::uint64_t seed = 1;
};

/// First-order indices by Saltelli et al. (Comput. Phys. Commun. 181 (2010) 259, from memory), total ones by Jansen (Comput.
/// Phys. Commun. 117 (1999) 35, from memory), with bootstrap percentile intervals. A base point with a failed row is left out as a
/// whole: what is left speaks of the region where designs do not fail, so a study with many dropped points must say so.
/// @param outcomes  one for each row of the design; NaN: the run failed.
[[nodiscard]] SensitivityResult sensitivity(std::span<const double> outcomes, std::size_t keys, const SensitivityOptions& options = {});

}  // namespace sinewright::study
