#pragma once

#include <functional>
#include <span>
#include <vector>

#include "model/study.h"
#include "study/population_search.h"

namespace sinewright::study {

/// Runs designs and says what became of each; false: the study was stopped.
using RunBatch = std::function<bool(const std::vector<Design>& asked, std::vector<Assessment>& told)>;

struct Optimum {
  bool complete = false;      ///< false: stopped
  std::vector<Member> best;   ///< the best design that meets all constraints, or the front of several goals; empty: none meets them
};

/// Looks for the best design within a number of runs: by populations, and with one goal a fifth of the runs by a pattern search from
/// the best of them (docs/theory/studies.md). In batches, whose designs may be run in any order.
[[nodiscard]] Optimum search_optimum(const std::vector<SearchVariable>& variables, const model::OptimiseStudy& study, const RunBatch& run);

/// Of a front the design that is nearest to the best of every goal, each in parts of the front's extent.
[[nodiscard]] std::size_t most_balanced(std::span<const Assessment> front);

}  // namespace sinewright::study
