#include "study/pattern_search.h"

#include <algorithm>
#include <cmath>

#include "quantity/counter_random.h"
#include "study/argument.h"
#include "study/normal.h"

namespace sinewright::study {

PatternSearch::PatternSearch(std::vector<SearchVariable> variables, Member start, const PatternOptions& options)
    : variables_(std::move(variables)), best_(std::move(start)), options_(options), step_(options.step) {
  check(variables_);
  require(best_.design.size() == variables_.size(), "length of the start", static_cast<double>(best_.design.size()),
          "one number for each variable");
  require(best_.assessment.objectives.size() == 1, "number of objectives", static_cast<double>(best_.assessment.objectives.size()), "1");
  require(step_ > 0 && step_ <= 1, "step of a polish", step_, "above 0, at most 1");
  require(options_.least_step > 0, "least step of a polish", options_.least_step, "above 0");
  for (std::size_t i = 0; i < variables_.size(); ++i)
    if (!is_choice(variables_[i])) ranges_.push_back(i);
  ask_next();
}

Design PatternSearch::moved(const std::vector<double>& by) const {
  Design design = best_.design;
  for (std::size_t k = 0; k < ranges_.size(); ++k) {
    const Range b = bounds(variables_[ranges_[k]]);
    double& x = design[ranges_[k]];
    x = std::clamp(x + by[k] * (b.high - b.low), b.low, b.high);
  }
  return design;
}

void PatternSearch::ask_next() {
  asked_.clear();
  moves_.clear();
  const std::size_t n = ranges_.size();
  if (n == 0 || step_ < options_.least_step || told_ + 2 * n + 1 > options_.evaluations) return;
  // Columns of the reflection I − 2 v vᵀ: perpendicular, of length 1, and for a random v in random directions.
  RandomStream random(options_.seed, batch_);
  std::vector<double> v(n);
  double square = 0;
  for (double& x : v) {
    x = normal_quantile(random.unit());
    square += x * x;
  }
  for (std::size_t column = 0; column < n; ++column) {
    std::vector<double> move(n);
    for (std::size_t row = 0; row < n; ++row)
      move[row] = step_ * ((row == column ? 1 : 0) - 2 * v[row] * v[column] / square);
    moves_.push_back(move);
    for (double& x : move) x = -x;
    moves_.push_back(std::move(move));
  }
  if (!last_.empty()) moves_.push_back(last_);
  for (const auto& move : moves_) {
    Design design = moved(move);
    if (design != best_.design) asked_.push_back(std::move(design));
  }
}

void PatternSearch::tell(std::vector<Assessment> assessments) {
  require(!asked_.empty() && assessments.size() == asked_.size(), "number of assessments", static_cast<double>(assessments.size()),
          "one for each design asked for");
  told_ += assessments.size();
  ++batch_;
  const Design before = best_.design;
  bool better = false;
  for (std::size_t i = 0; i < assessments.size(); ++i)
    if (dominates(assessments[i], best_.assessment)) {
      best_ = {asked_[i], std::move(assessments[i])};
      better = true;
    }
  last_.clear();
  if (better) {
    for (std::size_t i : ranges_) {
      const Range b = bounds(variables_[i]);
      last_.push_back((best_.design[i] - before[i]) / (b.high - b.low));
    }
    step_ = std::min(options_.step, 2 * step_);
  } else {
    step_ *= 0.5;
  }
  ask_next();
}

}  // namespace sinewright::study
