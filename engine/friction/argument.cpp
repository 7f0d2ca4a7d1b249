#include "friction/argument.h"

#include <fmt/format.h>

#include "quantity/invalid_input.h"

namespace sinewright::friction {

void require(bool ok, std::string_view what, double found, std::string_view unit, std::string_view needed) {
  if (ok) return;
  throw InvalidInput(fmt::format("{} = {}{}{} is not allowed\n  needed: {}", what, found,
                                 unit.empty() ? "" : " ", unit, needed));
}

}  // namespace sinewright::friction
