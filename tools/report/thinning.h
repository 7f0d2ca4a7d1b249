#pragma once

#include <cstddef>
#include <vector>

namespace sinewright::report {

/// One column over the rows of a record, with how far a straight line between kept rows may stand off.
struct Column {
  std::vector<double> values;  ///< NaN: no value
  double least_bound = 0;      ///< absolute; the bound is never closer than this
};

struct Thinned {
  std::vector<std::size_t> rows;  ///< kept, ascending
  double bound = 0;               ///< share of each column's range asked for; 0: all rows are kept
  double found = 0;               ///< largest deviation found, as share of the column's range or in parts of its least bound
};

/// Chooses rows so that straight lines between them stay within `bound` of each column's range of every row. Kept besides: the first and
/// last row, `wanted` ones, each column's smallest and largest value, and where values begin or end. The bound is doubled until at
/// most `most` rows are left.
[[nodiscard]] Thinned thin_out(const std::vector<double>& time, const std::vector<Column>& columns, const std::vector<std::size_t>& wanted,
                               double bound, std::size_t most);

}  // namespace sinewright::report
