#include "study/search_variable.h"

#include <cmath>

#include "study/argument.h"

namespace sinewright::study {

void check(std::span<const SearchVariable> variables) {
  require(!variables.empty(), "number of variables", 0, "at least 1");
  for (const SearchVariable& v : variables) {
    const Range b = bounds(v);
    if (is_choice(v)) {
      require(b.high >= 0, "number of choices", b.high + 1, "at least 1");
    } else {
      require(std::isfinite(b.low), "lower bound", b.low, "finite");
      require(std::isfinite(b.high) && b.high > b.low, "upper bound", b.high, "finite and above the lower bound");
    }
  }
}

Range bounds(const SearchVariable& variable) {
  if (const auto* range = std::get_if<Range>(&variable)) return *range;
  const auto* ordered = std::get_if<OrderedChoice>(&variable);
  const std::size_t count = ordered != nullptr ? ordered->count : std::get<FreeChoice>(variable).count;
  return {0, static_cast<double>(count) - 1};
}

}  // namespace sinewright::study
