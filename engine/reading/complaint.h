#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantity/invalid_input.h"

namespace sinewright::reading {

struct Node;

/// Composes the message of every reading error:
///
///     file:line:column: what
///       needed: needed
///       hint:   hint
///
/// Empty parts are left out; a place without line prints as the file alone.
[[nodiscard]] InvalidInput complaint(const Place& place, std::string_view what, std::string_view needed,
                                     std::string_view hint);

/// "key.path = value is not allowed" at the node.
[[nodiscard]] InvalidInput not_allowed(const Node& node, std::string_view needed, std::string_view hint = {});

/// A key that the node, a map, lacks.
[[nodiscard]] InvalidInput missing(const Node& map, std::string_view key, std::string_view needed,
                                   std::string_view hint = {});

/// A name that stands for nothing, with the nearest known one. `what` is for instance "line".
[[nodiscard]] InvalidInput unknown_name(const Node& node, std::string_view what,
                                        const std::vector<std::string>& known);

/// A key that is not known, with the nearest known one. The node is the value of that key.
[[nodiscard]] InvalidInput unknown_key(const Node& node, const std::vector<std::string>& known);

/// "a, b, c", cut after some dozen.
[[nodiscard]] std::string listed(const std::vector<std::string>& names);

/// The value as it is shown in a message: quoted and cut when long, "a list of 3" or "a map" for the rest.
[[nodiscard]] std::string shown(const Node& node);

}  // namespace sinewright::reading
