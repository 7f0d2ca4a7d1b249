#pragma once

#include <string_view>

namespace sinewright::friction {

/// Refuses a number that a law cannot use.
/// @param ok      whether the number is allowed.
/// @param what    its name, for instance "turning angle".
/// @param found   its value, in `unit`.
/// @param needed  the allowed range in words.
/// @throws InvalidInput if not ok. The message has no place: the laws do not know where a number came from.
void require(bool ok, std::string_view what, double found, std::string_view unit, std::string_view needed);

}  // namespace sinewright::friction
