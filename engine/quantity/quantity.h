#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantity/invalid_input.h"

namespace sinewright {

/// A number in SI units with radian as a unit of its own (so that N·m and N·m/rad differ).
struct Quantity {
  double si = 0;
  std::string unit;  ///< the unit text as the user wrote it, empty for a bare number
};

/// Why a text is no quantity of the wanted kind, in pieces, so that a reader can put place and key in front.
class QuantityProblem : public InvalidInput {
 public:
  QuantityProblem(const std::string& text, std::string needed_text, std::string hint_text);

  std::string needed;  ///< what would be accepted, for instance: a length, such as "5 mm"
  std::string hint;    ///< what is wrong with this text and what to try
};

/// Reads text such as "0.5 mm", "30 deg", "5 N·mm/deg", "25 degC" or "0.12" and converts it to SI.
///
/// The number comes first (point as decimal sign, optional exponent), then the unit. In a unit, a middle dot,
/// `*`, a point or a blank multiply, `/` divides from left to right (N/m·s is (N/m)·s), powers are written
/// m², m^2 or m2.
///
/// @param text      what the user wrote.
/// @param expected  a unit with the wanted dimension, for instance "m"; "1" for a plain number, which may
/// also be
///                  given in percent.
/// @throws QuantityProblem, with a message without a place (the reader adds it), if the number or unit cannot
/// be read,
///         is infinite or not a number, the unit is missing, or its dimension is not that of `expected`.
[[nodiscard]] Quantity parse_quantity(std::string_view text, std::string_view expected);

/// As parse_quantity, with whatever dimension the text has; a bare number is a plain number.
[[nodiscard]] Quantity parse_any_quantity(std::string_view text);

/// Converts an SI value (radian a unit of its own) to `unit`, for tables and plots: from_si(0.5236, "deg")
/// is 30.
/// @throws QuantityProblem if the unit cannot be read.
[[nodiscard]] double from_si(double si, std::string_view unit);

/// The other way round: to_si(30, "deg") is 0.5236.
[[nodiscard]] double to_si(double value, std::string_view unit);

/// The unit in which a reader wants to see an SI unit: "mm" for "m", "deg" for "rad", "N·mm" for "N m"; most as they are.
[[nodiscard]] std::string display_unit(std::string_view si_unit);

/// True when the unit can be read and has the dimension of `expected`; reciprocals do not count as the same.
[[nodiscard]] bool same_dimension(std::string_view unit, std::string_view expected);

/// The SI unit of the dimension of `unit`, as the summary and the records write it: "N" for "kN". For a dimension that no key
/// of a file has, "SI of <unit>".
[[nodiscard]] std::string si_unit(std::string_view unit);

/// What a quantity with the dimension of `unit` is called, with an example: "a length, such as \"5 mm\"".
[[nodiscard]] std::string describe_dimension(std::string_view unit);

/// One row of the list of known units, for the docs.
struct KnownUnit {
  std::string name;        ///< as written in a file
  std::string definition;  ///< in terms of other units, empty for a base unit
};

/// Every unit name that can be written, base units first.
[[nodiscard]] std::vector<KnownUnit> known_units();

}  // namespace sinewright
