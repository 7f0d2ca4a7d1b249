#include "study/optimisation.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "study/pattern_search.h"

namespace sinewright::study {

Optimum search_optimum(const std::vector<SearchVariable>& variables, const model::OptimiseStudy& study, const RunBatch& run) {
  const auto budget = static_cast<std::size_t>(study.runs);
  PopulationOptions options;
  options.objectives = study.goals.size();
  options.seed = study.seed;
  const bool single = options.objectives == 1;
  options.population = std::clamp<std::size_t>(budget / 8, 8, std::max<std::size_t>(single ? 24 : 48, 8 * variables.size()));
  const std::size_t for_population = single ? budget - budget / 5 : budget;
  options.generations = std::max<std::size_t>(1, for_population / options.population - 1);

  Optimum optimum;
  const auto keep_feasible = [&](std::vector<Member> members) {
    std::erase_if(members, [](const Member& member) { return violation(member.assessment) > 0; });
    optimum = {true, std::move(members)};
    return optimum;
  };
  std::vector<Assessment> told;
  PopulationSearch search(variables, options);
  while (!search.done()) {
    if (!run(search.ask(), told)) return optimum;
    search.tell(told);
  }
  if (!single) return keep_feasible(search.front());

  PatternOptions pattern;
  pattern.evaluations = budget - std::min<std::size_t>(budget, search.told());
  pattern.least_step = 1e-4;
  pattern.seed = study.seed;
  PatternSearch polish(variables, search.best(), pattern);
  while (!polish.done()) {
    if (!run(polish.ask(), told)) return optimum;
    polish.tell(told);
  }
  return keep_feasible({polish.best()});
}

std::size_t most_balanced(std::span<const Assessment> front) {
  std::vector<double> far(front.size(), 0.0);
  for (std::size_t g = 0; !front.empty() && g < front.front().objectives.size(); ++g) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const Assessment& a : front) low = std::min(low, a.objectives[g]), high = std::max(high, a.objectives[g]);
    if (high <= low) continue;
    for (std::size_t i = 0; i < front.size(); ++i) far[i] += std::pow((front[i].objectives[g] - low) / (high - low), 2);
  }
  return static_cast<std::size_t>(std::min_element(far.begin(), far.end()) - far.begin());
}

}  // namespace sinewright::study
