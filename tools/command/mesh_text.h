#pragma once

#include <string>

#include <nlohmann/json.hpp>

#include "model/scenario.h"

namespace sinewright::tool {

/// What was taken from each STL file: one line a solid, contact shape or object. Empty if there is none.
[[nodiscard]] std::string mesh_text(const model::Scenario& scenario);

/// The same for machines, in SI; an empty list if there is none.
[[nodiscard]] nlohmann::ordered_json mesh_json(const model::Scenario& scenario);

}  // namespace sinewright::tool
