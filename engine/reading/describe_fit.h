#pragma once

#include "reading/describe.h"

namespace sinewright::reading {

/// Sizes of a hinge's pin and holes.
[[nodiscard]] Kind<WrittenFit> fit();

/// Refuses sizes that cannot belong to a pin of this diameter.
/// @param node  the map of the fit.
void check_sizes(const WrittenFit& fit, double diameter, const Node& node);

}  // namespace sinewright::reading
