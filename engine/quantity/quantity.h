#pragma once

#include <string>
#include <string_view>

namespace sinewright {

/// A number in SI units with radian as a unit of its own (so that N·m and N·m/rad differ).
struct Quantity {
  double si = 0;
  std::string unit;  ///< the unit text as the user wrote it, empty for a bare number
};

/// Reads text such as "0.5 mm", "30 deg", "5 N·mm/deg", "25 degC" or "0.12" and converts it to SI.
///
/// @param text      what the user wrote.
/// @param expected  a unit with the wanted dimension, for instance "m"; "1" for a plain number.
/// @throws InvalidInput, with a message without a place (the reader adds it), if the number or unit cannot be read,
///         the unit is missing, or its dimension is not that of `expected`.
[[nodiscard]] Quantity parse_quantity(std::string_view text, std::string_view expected);

/// Converts an SI value (radian a unit of its own) to `unit`, for tables and plots: from_si(0.5236, "deg") is 30.
[[nodiscard]] double from_si(double si, std::string_view unit);

/// True when the unit can be read and has the dimension of `expected`; reciprocals do not count as the same.
[[nodiscard]] bool same_dimension(std::string_view unit, std::string_view expected);

}  // namespace sinewright
