#pragma once

#include <memory>
#include <string>

#include "reading/node.h"

namespace sinewright::reading {

/// Turns one YAML text into nodes. Only what these files need is accepted: one document, maps with plain
/// unique keys, lists and texts; no anchors, aliases, tags or merges.
///
/// @param file  the name shown in messages.
/// @throws InvalidInput with line and column for anything else.
[[nodiscard]] std::unique_ptr<Node> parse_document(const std::string& file, const std::string& text);

}  // namespace sinewright::reading
