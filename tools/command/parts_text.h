#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "model/model.h"

namespace sinewright::tool {

struct PartsPage {
  std::string text;
  nlohmann::ordered_json json;  ///< SI units, the same numbers
};

/// The bill of materials of a model as a table.
[[nodiscard]] PartsPage parts_page(const model::Model& model);

}  // namespace sinewright::tool
