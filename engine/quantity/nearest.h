#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sinewright {

/// Number of single-character insertions, deletions, substitutions and swaps of neighbours that turn `a` into
/// `b` (bytes are counted), case ignored.
[[nodiscard]] int edit_distance(std::string_view a, std::string_view b);

/// The one of `known` that differs least from `name`; empty when none is within `furthest` edits. Ties go to
/// the first.
[[nodiscard]] std::string nearest(std::string_view name, const std::vector<std::string>& known, int furthest);

/// As above, allowing about one edit in three characters.
[[nodiscard]] std::string nearest(std::string_view name, const std::vector<std::string>& known);

}  // namespace sinewright
