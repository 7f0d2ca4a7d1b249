#pragma once

#include <string_view>

namespace sinewright::strength {

/// Refuses a number that a law cannot use.
/// @param ok      whether the number is allowed.
/// @param what    its name, for instance "wall thickness".
/// @param found   its value, in `unit`.
/// @param needed  the allowed range in words.
/// @throws InvalidInput if not ok. The message has no place: the laws do not know where a number came from.
void require(bool ok, std::string_view what, double found, std::string_view unit, std::string_view needed);

/// Refuses what is not finite and above 0.
void require_positive(double value, std::string_view what, std::string_view unit);

/// Refuses what is not finite and at least 0.
void require_not_negative(double value, std::string_view what, std::string_view unit);

/// Refuses what is not finite.
void require_finite(double value, std::string_view what, std::string_view unit);

/// Refuses what is not above 0 and at most 1.
void require_share(double value, std::string_view what);

}  // namespace sinewright::strength
