#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "simulation/hand_size.h"
#include "simulation/packing.h"

namespace sinewright::tool {

struct PackingPage {
  std::string text;
  nlohmann::ordered_json json;
};

/// Collisions, narrow places, walls, pulleys and outer size as a table and as JSON (SI).
[[nodiscard]] PackingPage packing_page(const simulation::System& system, const simulation::PackingReport& report);

}  // namespace sinewright::tool
