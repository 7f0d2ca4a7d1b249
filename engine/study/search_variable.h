#pragma once

#include <cstddef>
#include <span>
#include <variant>
#include <vector>

namespace sinewright::study {

/// What an optimisation may change.
struct Range {
  double low = 0, high = 0;
};

/// One of `count` values that stand in an order (gear ratios, diameters): the number 0 … count − 1 of the value.
struct OrderedChoice {
  std::size_t count = 0;
};

/// One of `count` values without an order (washer or bushing): the number 0 … count − 1 of the value.
struct FreeChoice {
  std::size_t count = 0;
};

using SearchVariable = std::variant<Range, OrderedChoice, FreeChoice>;

/// A design: a number for each variable.
using Design = std::vector<double>;

/// @throws InvalidInput for no variables, a range without extent, or a choice of nothing.
void check(std::span<const SearchVariable> variables);

/// Least and greatest number of a variable.
[[nodiscard]] Range bounds(const SearchVariable& variable);

[[nodiscard]] inline bool is_choice(const SearchVariable& variable) { return !std::holds_alternative<Range>(variable); }

}  // namespace sinewright::study
