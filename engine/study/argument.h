#pragma once

#include <string_view>

namespace sinewright::study {

/// Refuses a number that a method cannot use.
/// @param ok      whether the number is allowed.
/// @param what    its name, for instance "deviation".
/// @param found   its value.
/// @param needed  the allowed range in words.
/// @throws InvalidInput if not ok. The message has no place: the methods do not know where a number came from.
void require(bool ok, std::string_view what, double found, std::string_view needed);

}  // namespace sinewright::study
