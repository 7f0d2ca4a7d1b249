#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "model/model.h"

namespace sinewright::tool {

struct FitsPage {
  std::string text;
  nlohmann::ordered_json json;  ///< SI units, the same numbers
};

/// Fits of a model's hinges and the play that they leave at its fingertips.
[[nodiscard]] FitsPage fits_page(const model::Model& model);

}  // namespace sinewright::tool
