#include "reading/complaint.h"

#include <algorithm>

#include <fmt/format.h>

#include "quantity/nearest.h"
#include "reading/node.h"

namespace sinewright::reading {
namespace {

// User text on one line of the message, cut at a character's border.
std::string clean(std::string_view text, std::size_t longest) {
  std::string out;
  for (const char c : text) {
    if (out.size() >= longest && (static_cast<unsigned char>(c) & 0xc0) != 0x80) return out + "…";
    out += c == '\n' || c == '\r' || c == '\t' ? ' ' : c;
  }
  return out;
}

std::string known_hint(std::string_view what, std::string_view name, const std::vector<std::string>& known) {
  const std::string near = nearest(name, known);
  if (!near.empty()) return fmt::format("the nearest known {} is '{}'", what, near);
  if (known.empty()) return fmt::format("no {} is given", what);
  return {};
}

}  // namespace

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i == 40) return text + ", …";
    text += (i > 0 ? ", " : "") + clean(names[i], 60);
  }
  return text;
}

std::string shown(const Node& node) {
  switch (node.kind) {
    case Node::Kind::empty:
      return "(nothing)";
    case Node::Kind::list:
      return fmt::format("(a list of {})", node.children.size());
    case Node::Kind::map:
      return "(a map)";
    case Node::Kind::text:
      break;
  }
  return clean(node.text, 60);
}

InvalidInput complaint(const Place& place, std::string_view what, std::string_view needed,
                       std::string_view hint) {
  std::string text = place.file;
  if (place.line > 0) text += fmt::format(":{}:{}", place.line, place.column);
  text += fmt::format(": {}", what);
  if (!needed.empty()) text += fmt::format("\n  needed: {}", needed);
  if (!hint.empty()) text += fmt::format("\n  hint:   {}", hint);
  return InvalidInput(text);
}

InvalidInput not_allowed(const Node& node, std::string_view needed, std::string_view hint) {
  const std::string path = node.path();
  if (path.empty())
    return complaint(node.place(), fmt::format("{} is not allowed here", shown(node)), needed, hint);
  return complaint(node.place(), fmt::format("{} = {} is not allowed", path, shown(node)), needed, hint);
}

InvalidInput missing(const Node& map, std::string_view key, std::string_view needed, std::string_view hint) {
  const std::string path = map.path();
  return complaint(map.key_place(), fmt::format("{}{}{} is missing", path, path.empty() ? "" : ".", key),
                   needed, hint);
}

InvalidInput unknown_name(const Node& node, std::string_view what, const std::vector<std::string>& known) {
  return complaint(node.place(),
                   fmt::format("{} = {} is not allowed: there is no such {}", node.path(), shown(node), what),
                   known.empty() ? fmt::format("the name of a {}", what)
                                 : fmt::format("the name of a {}: {}", what, listed(known)),
                   known_hint(what, node.text, known));
}

InvalidInput unknown_key(const Node& node, const std::vector<std::string>& known) {
  return complaint(node.key_place(), fmt::format("{} is not a known key", node.path()),
                   fmt::format("one of: {}", listed(known)), known_hint("key", node.key, known));
}

}  // namespace sinewright::reading
