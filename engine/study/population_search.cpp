#include "study/population_search.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numeric>

#include "quantity/counter_random.h"
#include "study/argument.h"
#include "study/point_set.h"

namespace sinewright::study {

namespace {

// Of the difference of two members, drawn for each trial. Members along a front stand far apart and do not draw together, so there
// shorter steps bring them nearer to it.
constexpr Range kScaleOfOne{0.4, 0.9}, kScaleOfSeveral{0.2, 0.5};
constexpr double kCrossover = 0.9;                     // chance of a variable to come from the mutant
constexpr double kFromBest = 0.5;

double drawn(const SearchVariable& variable, double u) {
  const Range b = bounds(variable);
  return is_choice(variable) ? std::min(b.high, std::floor(u * (b.high + 1))) : b.low + u * (b.high - b.low);
}

}  // namespace

PopulationSearch::PopulationSearch(std::vector<SearchVariable> variables, const PopulationOptions& options)
    : variables_(std::move(variables)), options_(options) {
  check(variables_);
  require(options_.objectives >= 1, "number of objectives", static_cast<double>(options_.objectives), "at least 1");
  if (options_.population == 0)
    options_.population = std::max(options_.objectives == 1 ? std::size_t{24} : std::size_t{48}, 8 * variables_.size());
  require(options_.population >= 4, "population", static_cast<double>(options_.population), "at least 4");
  require(options_.generations >= 1, "number of generations", static_cast<double>(options_.generations), "at least 1");
  ask_first();
}

void PopulationSearch::ask_first() {
  const LatinHypercube start(options_.population, variables_.size(), options_.seed);
  std::vector<double> u(variables_.size());
  for (std::size_t row = 0; row < options_.population; ++row) {
    start.point(row, u);
    Design design;
    for (std::size_t i = 0; i < u.size(); ++i) design.push_back(drawn(variables_[i], u[i]));
    asked_.push_back(std::move(design));
  }
}

Design PopulationSearch::trial(std::size_t parent) const {
  RandomStream random(options_.seed, generation_, parent);
  std::array<std::size_t, 3> other{};  // three members, all different and none the parent
  for (std::size_t i = 0; i < 3; ++i) {
    const auto taken = [&](std::size_t m) {
      const auto end = other.begin() + static_cast<std::ptrdiff_t>(i);
      return m == parent || std::find(other.begin(), end, m) != end;
    };
    do other[i] = random.below(members_.size());
    while (taken(other[i]));
  }
  // With one objective, later trials start from the best in part: faster down smooth valleys and along constraints. Not earlier,
  // since that leads astray where there are many local optima.
  const bool late = 2 * generation_ >= options_.generations;
  const bool from_best = options_.objectives == 1 && late && random.unit() < kFromBest;
  const Design& base = from_best ? best().design : members_[other[0]].design;
  const Design &plus = members_[other[1]].design, &minus = members_[other[2]].design;
  const auto [least, most] = options_.objectives == 1 ? kScaleOfOne : kScaleOfSeveral;
  const double scale = least + random.unit() * (most - least);
  const std::size_t surely = random.below(variables_.size());
  Design design = members_[parent].design;
  for (std::size_t i = 0; i < variables_.size(); ++i) {
    // Drawn in any case, so that what a variable gets does not shift with what the one before it got.
    const double crossover = random.unit(), u = random.unit(), side = random.unit();
    if (crossover >= kCrossover && i != surely) continue;
    const SearchVariable& variable = variables_[i];
    if (std::holds_alternative<FreeChoice>(variable)) {
      // No differences without an order; as with them, what all members agree in does not change.
      design[i] = plus[i] != minus[i] && side < scale ? drawn(variable, u) : base[i];
    } else {
      const Range b = bounds(variable);
      double value = base[i] + scale * (plus[i] - minus[i]);
      if (is_choice(variable)) value = std::floor(value + u);  // up or down by chance, right on the average
      // Beyond a bound: half of them on it, for optima that lie there, the others between it and the base.
      const double bound = std::clamp(value, b.low, b.high);
      if (value != bound) value = side < 0.5 || is_choice(variable) ? bound : base[i] + u * (bound - base[i]);
      design[i] = value;
    }
  }
  return design;
}

void PopulationSearch::ask_next() {
  asked_.clear();
  for (std::size_t parent = 0; parent < options_.population; ++parent) asked_.push_back(trial(parent));
}

void PopulationSearch::tell(std::vector<Assessment> assessments) {
  require(!done_ && assessments.size() == asked_.size(), "number of assessments", static_cast<double>(assessments.size()),
          "one for each design asked for");
  for (const Assessment& a : assessments)
    require(a.objectives.size() == options_.objectives, "number of objectives told", static_cast<double>(a.objectives.size()),
            "as many as the search has");
  told_ += assessments.size();
  if (members_.empty()) {
    for (std::size_t i = 0; i < asked_.size(); ++i) members_.push_back({asked_[i], std::move(assessments[i])});
  } else {
    const bool one = options_.objectives == 1;
    std::vector<Member> more;
    for (std::size_t i = 0; i < asked_.size(); ++i) {
      Member trial{asked_[i], std::move(assessments[i])};
      if (dominates(members_[i].assessment, trial.assessment)) continue;
      // With one objective the two are equal or the trial is better; a step along a plateau is worth taking.
      if (one || dominates(trial.assessment, members_[i].assessment))
        members_[i] = std::move(trial);
      else
        more.push_back(std::move(trial));
    }
    std::move(more.begin(), more.end(), std::back_inserter(members_));
    keep_best();
  }
  ++generation_;
  done_ = generation_ >= options_.generations || converged();
  if (done_)
    asked_.clear();
  else
    ask_next();
}

// Fills the population front by front; of the front that does not fit the most crowded leave, one at a time, so that two that
// crowd each other do not both go.
void PopulationSearch::keep_best() {
  const std::size_t size = options_.population;
  if (members_.size() <= size) return;
  std::vector<Assessment> assessments;
  for (const Member& m : members_) assessments.push_back(m.assessment);
  const std::vector<std::size_t> number = front_numbers(assessments);
  std::vector<std::size_t> kept;
  for (std::size_t f = 0; kept.size() < size; ++f) {
    std::vector<std::size_t> front;
    for (std::size_t i = 0; i < number.size(); ++i)
      if (number[i] == f) front.push_back(i);
    while (kept.size() + front.size() > size) {
      std::vector<Assessment> of_front;
      for (std::size_t i : front) of_front.push_back(assessments[i]);
      const std::vector<double> distance = crowding_distances(of_front);
      front.erase(front.begin() + (std::min_element(distance.begin(), distance.end()) - distance.begin()));
    }
    kept.insert(kept.end(), front.begin(), front.end());
  }
  std::sort(kept.begin(), kept.end());
  std::vector<Member> members;
  for (std::size_t i : kept) members.push_back(std::move(members_[i]));
  members_ = std::move(members);
}

bool PopulationSearch::converged() const {
  if (options_.objectives > 1) return false;
  double low = members_[0].assessment.objectives[0], high = low;
  for (const Member& m : members_) {
    if (violation(m.assessment) > 0) return false;
    low = std::min(low, m.assessment.objectives[0]);
    high = std::max(high, m.assessment.objectives[0]);
  }
  if (high - low <= options_.tolerance * std::abs(low)) return true;
  for (std::size_t i = 0; i < variables_.size(); ++i) {
    const auto [least, most] = std::minmax_element(members_.begin(), members_.end(),
                                                   [i](const Member& a, const Member& b) { return a.design[i] < b.design[i]; });
    const Range b = bounds(variables_[i]);
    if (most->design[i] - least->design[i] > options_.tolerance * (b.high - b.low)) return false;
  }
  return true;
}

const Member& PopulationSearch::best() const {
  require(options_.objectives == 1 && !members_.empty(), "number of members", static_cast<double>(members_.size()),
          "one objective and at least one generation told");
  return *std::min_element(members_.begin(), members_.end(),
                           [](const Member& a, const Member& b) { return dominates(a.assessment, b.assessment); });
}

std::vector<Member> PopulationSearch::front() const {
  std::vector<Assessment> assessments;
  for (const Member& m : members_) assessments.push_back(m.assessment);
  const std::vector<std::size_t> number = front_numbers(assessments);
  std::vector<Member> front;
  for (std::size_t i = 0; i < members_.size(); ++i)
    if (number[i] == 0 && violation(assessments[i]) == 0) front.push_back(members_[i]);
  std::stable_sort(front.begin(), front.end(),
                   [](const Member& a, const Member& b) { return a.assessment.objectives < b.assessment.objectives; });
  front.erase(std::unique(front.begin(), front.end(),
                          [](const Member& a, const Member& b) { return a.assessment.objectives == b.assessment.objectives; }),
              front.end());
  return front;
}

}  // namespace sinewright::study
