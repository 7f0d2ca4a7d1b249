#pragma once

#include <functional>

#include "study/ramp.h"

namespace sinewright::study {

/// What a run at one value says.
using Trial = std::function<Probe(double value)>;

/// Values over the bracket, both ends among them.
[[nodiscard]] std::vector<double> sample_values(const model::Search& search);

/// The last value at which a trial holds: samples the bracket, then halves every interval over which the outcome changes until
/// half of it is below `tolerance` times its larger end (or 60 halvings). The answer is the middle of the first such interval
/// from the end that holds (from `from` if both ends do, or none does). With more than one change the answer says so.
///
/// @param samples  trials at `sample_values`, in that order, already made.
[[nodiscard]] Answer narrow_down(const model::Search& search, double tolerance, std::vector<Probe> samples, const Trial& trial);

}  // namespace sinewright::study
