#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/study.h"
#include "reading/reading.h"
#include "study/distribution.h"
#include "study/search_variable.h"

namespace sinewright::study {

/// A variable of a study with its numbers worked out.
struct Axis {
  model::Variable variable;   ///< its unit filled in
  Distribution distribution;  ///< of the value, or of its logarithm; of options: of their indices
  bool logarithmic = false;

  [[nodiscard]] const model::Options* options() const { return std::get_if<model::Options>(&variable.spread); }
};

/// @param nominal  the number that the files give at a key, in the unit they write; asked only for what is spread round it.
/// @throws InvalidInput, with the variable's place, if there is none or its dimension does not fit.
[[nodiscard]] Axis resolve(const model::Variable& variable, const std::function<Quantity(const std::string& key)>& nominal);

/// The value at a coordinate of the unit cube, in the variable's unit; of options the index.
[[nodiscard]] double value_at(const Axis& axis, double u);

/// The values of a grid's axis. @throws InvalidInput for a spread that has no natural steps.
[[nodiscard]] std::vector<double> grid_values(const Axis& axis);

/// What an optimiser may do with it; `from_search` turns its number into a value. @throws InvalidInput for a spread that is no choice
/// of the designer's.
[[nodiscard]] SearchVariable search_variable(const Axis& axis);
[[nodiscard]] double from_search(const Axis& axis, double number);

/// The value as a reader sees it: "5 mm", or the option's name.
[[nodiscard]] std::string shown(const Axis& axis, double value);

}  // namespace sinewright::study
