#pragma once

#include "plot/gnuplot.h"
#include "simulation/packing.h"

namespace sinewright::plot {

/// What takes up room, with the joints straight: from the side, from the back of the hand and from the fingertips, in the arrangement
/// of a drawing in third-angle projection. Collisions and narrow places carry numbers, which a list names.
[[nodiscard]] Script packing_figure(const simulation::System& system, const simulation::PackingReport& report);

}  // namespace sinewright::plot
