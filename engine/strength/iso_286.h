#pragma once

#include <string_view>

#include "strength/size_limits.h"

namespace sinewright::strength {

/// Standard tolerance IT of ISO 286-1, table 1 [m]. Sizes up to 10 mm, grades 5 to 11.
///
/// A table, since the standard's numbers are not the plain rounding of i = 0.45 ∛D + 0.001 D.
/// @param nominal  nominal size [m], above 0, at most 10 mm. A limit of a range belongs to the lower range.
/// @throws InvalidInput if the size or grade is not in the table.
[[nodiscard]] double standard_tolerance(double nominal, int grade);

/// Limits of a toleranced size, for instance iso_limits(0.003, "m6").
///
/// Known: holes H5 to H11 and F8; shafts h5 to h11, g6, f8, m6, p6. Other classes are refused, not
/// extrapolated. Deviations from ISO 286-2 (and JIS B 0401 extracts), sources in
/// docs/theory/strength/iso-286.md.
/// @param tolerance_class  capital letter for a hole, small one for a shaft, then the grade.
/// @throws InvalidInput if the size is out of range or the class is not known.
[[nodiscard]] SizeLimits iso_limits(double nominal, std::string_view tolerance_class);

}  // namespace sinewright::strength
