#pragma once

#include <cstdint>
#include <vector>

#include "study/population_search.h"

namespace sinewright::study {

struct PatternOptions {
  double step = 0.02;         ///< at the start, in parts of each range
  double least_step = 1e-6;   ///< ends the search
  std::uint64_t evaluations = 2000;  ///< at most; the batch that would pass this is not asked for
  std::uint64_t seed = 1;
};

/// Polishes the best design of a population search, by one objective; asks and is told as that does. A batch looks from the best
/// design both ways along n perpendicular directions, turned at random each time, and once more as far as the last step that
/// helped. The best of the batch is moved to and the step grows; if none is better the step shrinks. Choices stay as they are.
///
/// Directions turned at random, so that neither a bent valley nor a slanting constraint stops the search as it would stop one along the
/// axes: after mesh-adaptive direct search (Audet and Dennis, SIAM J. Optim. 17 (2006) 188, from memory), with a plain test for
/// "better", feasibility first. Ends in a local optimum.
class PatternSearch {
 public:
  /// @param start  with its assessment.
  PatternSearch(std::vector<SearchVariable> variables, Member start, const PatternOptions& options = {});

  [[nodiscard]] bool done() const { return asked_.empty(); }
  [[nodiscard]] const std::vector<Design>& ask() const { return asked_; }
  void tell(std::vector<Assessment> assessments);
  [[nodiscard]] const Member& best() const { return best_; }
  [[nodiscard]] double step() const { return step_; }
  [[nodiscard]] std::uint64_t told() const { return told_; }

 private:
  void ask_next();
  [[nodiscard]] Design moved(const std::vector<double>& by) const;

  std::vector<SearchVariable> variables_;
  std::vector<std::size_t> ranges_;  // the variables that are not choices
  Member best_;
  PatternOptions options_;
  double step_;
  std::vector<double> last_;         // step that helped last, in parts of the ranges; empty: none since the step shrank
  std::vector<std::vector<double>> moves_;
  std::vector<Design> asked_;
  std::uint64_t batch_ = 0, told_ = 0;
};

}  // namespace sinewright::study
