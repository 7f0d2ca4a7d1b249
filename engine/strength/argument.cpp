#include "strength/argument.h"

#include <cmath>

#include <fmt/format.h>

#include "quantity/invalid_input.h"

namespace sinewright::strength {

void require(bool ok, std::string_view what, double found, std::string_view unit, std::string_view needed) {
  if (ok) return;
  throw InvalidInput(fmt::format("{} = {}{}{} is not allowed\n  needed: {}", what, found,
                                 unit.empty() ? "" : " ", unit, needed));
}

void require_positive(double value, std::string_view what, std::string_view unit) {
  require(std::isfinite(value) && value > 0, what, value, unit, "finite and > 0");
}

void require_not_negative(double value, std::string_view what, std::string_view unit) {
  require(std::isfinite(value) && value >= 0, what, value, unit, "finite and >= 0");
}

void require_finite(double value, std::string_view what, std::string_view unit) {
  require(std::isfinite(value), what, value, unit, "finite");
}

void require_share(double value, std::string_view what) {
  require(value > 0 && value <= 1, what, value, "", "above 0, at most 1");
}

}  // namespace sinewright::strength
