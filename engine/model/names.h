#pragma once

#include <string>

namespace sinewright::model {

/// The finger that a part of a hand belongs to: "index" of "index.MCP"; empty: of the hand itself, or there are no fingers.
[[nodiscard]] inline std::string finger_of(const std::string& name) {
  const auto dot = name.find('.');
  return dot == std::string::npos ? std::string() : name.substr(0, dot);
}

/// The rest of the name: "MCP" of "index.MCP".
[[nodiscard]] inline std::string within_finger(const std::string& name) {
  const auto dot = name.find('.');
  return dot == std::string::npos ? name : name.substr(dot + 1);
}

}  // namespace sinewright::model
