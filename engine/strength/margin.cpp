#include "strength/margin.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "quantity/invalid_input.h"
#include "strength/argument.h"

namespace sinewright::strength {

double Margin::ratio() const noexcept {
  if (demand > 0) return capacity / demand;
  constexpr double infinity = std::numeric_limits<double>::infinity();
  return capacity < 0 ? -infinity : infinity;
}

Margin make_margin(std::string check, double capacity, double demand, std::string unit) {
  require(!std::isnan(capacity), "capacity of " + check, capacity, unit, "a number");
  require_not_negative(demand, "demand of " + check, unit);
  return {std::move(check), capacity, demand, std::move(unit)};
}

const Margin& weakest(std::span<const Margin> margins) {
  if (margins.empty()) throw InvalidInput("there is no margin to choose from\n  needed: at least one");
  return *std::ranges::min_element(margins, {}, &Margin::ratio);
}

}  // namespace sinewright::strength
