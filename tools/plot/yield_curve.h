#pragma once

#include <cstdint>
#include <vector>

#include "plot/study_view.h"
#include "study/proportion_interval.h"

namespace sinewright::plot {

/// The yield if a bound stood elsewhere and everything else stayed.
struct YieldPoint {
  double bound = 0;                ///< where it stands, as shown
  double alone = 0;                ///< share that meets this bound
  double all = 0;                  ///< share that meets it and every other one
  study::Interval interval;        ///< of `all`, of Clopper and Pearson with the study's confidence, at this one place
};

/// Over all that the outcome does, and where the bound is. A row without the outcome, or that could not be run, fails everywhere.
/// @param points  of the curve, at least 2; where the bound is comes beside these.
[[nodiscard]] std::vector<YieldPoint> yield_curve(const StudyView& view, const Bound& bound, std::size_t points);

}  // namespace sinewright::plot
