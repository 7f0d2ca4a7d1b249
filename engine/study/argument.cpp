#include "study/argument.h"

#include <fmt/format.h>

#include "quantity/invalid_input.h"

namespace sinewright::study {

void require(bool ok, std::string_view what, double found, std::string_view needed) {
  if (!ok) throw InvalidInput(fmt::format("{} = {} is not allowed\n  needed: {}", what, found, needed));
}

}  // namespace sinewright::study
