#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "record/study_file.h"

namespace sinewright::plot {

/// The rows of a study by the values of two of its keys: a field for each pair.
struct StudyMap {
  /// What all rows of one pair of values have in common.
  struct Cell {
    std::vector<double> sum, count;  ///< per outcome, SI, of the rows that have it
    std::uint64_t rows = 0, met = 0;
  };

  std::size_t key_x = 0, key_y = 0;      ///< numbers among the varied
  std::vector<double> x, y;              ///< values shown, SI, sorted
  std::size_t all_x = 0, all_y = 0;      ///< how many different ones there are
  std::vector<Cell> cells;               ///< x fastest
};

/// Over the two keys with most values, numbers before options; the one with more lies along the page. Of more than 60 values of a key
/// that many, evenly chosen. Nothing where fewer than two keys vary.
[[nodiscard]] std::optional<StudyMap> map_of(const record::StudyRecord& table);

}  // namespace sinewright::plot
