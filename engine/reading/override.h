#pragma once

#include <string>
#include <vector>

#include "reading/node.h"

namespace sinewright::reading {

/// "key.path=value", taken apart.
struct Override {
  std::string origin;  ///< who asked for it, for messages: "--set" or a file
  std::string written;
  std::vector<std::string> keys;
  std::string value;
};

/// @throws InvalidInput if there is no '=', a key is empty or the value is.
[[nodiscard]] Override parse_override(const std::string& written, const std::string& origin = "--set");

/// The entry of a map that the keys from `at` on name, by several of them at once where a name with dots, such as index.MCP, stands in it;
/// the longest such name. Moves `at` behind it. nullptr, and `at` as it was: there is none.
[[nodiscard]] Node* entry_along(const Node& map, const std::vector<std::string>& keys, std::size_t& at);

/// Replaces the value at the path, or adds the key; whether the key may be there is for the reader to say,
/// which then finds it marked as added.
/// @throws InvalidInput if the path leads through a value or past the end of a list, or the value is no YAML.
void apply_override(Node& root, const Override& change);

}  // namespace sinewright::reading
