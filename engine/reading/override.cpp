#include "reading/override.h"

#include <charconv>

#include <fmt/format.h>

#include "reading/complaint.h"
#include "reading/document.h"

namespace sinewright::reading {
namespace {

constexpr std::size_t kLongestPath = 20;

Place place_of(const Override& change) {
  return {change.origin + " " + change.written, 0, 0};
}

std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(" \t");
  return first == std::string::npos ? std::string()
                                    : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

// Messages name the override instead of a line in a file.
void forget_lines(Node& node) {
  node.line = node.column = node.key_line = node.key_column = 0;
  for (const auto& child : node.children) forget_lines(*child);
}

Node* step_into_list(Node& list, const std::string& key, const Override& change) {
  std::size_t index = 0;
  const auto [end, error] = std::from_chars(key.data(), key.data() + key.size(), index);
  if (error != std::errc{} || end != key.data() + key.size() || index >= list.children.size())
    throw complaint(place_of(change), fmt::format("{} has no item '{}'", list.path(), key),
                    list.children.empty() ? "the list is empty"
                                          : fmt::format("a number from 0 to {}", list.children.size() - 1),
                    "");
  return list.children[index].get();
}

// The entry that the keys from `at` on name, or a new one under the first of them.
Node* step_into_map(Node& map, const std::vector<std::string>& keys, std::size_t& at, const std::shared_ptr<const std::string>& file) {
  if (Node* known = entry_along(map, keys, at)) return known;
  auto child = std::make_unique<Node>();
  child->key = keys[at++];
  child->parent = &map;
  child->file = file;
  child->added = true;
  map.children.push_back(std::move(child));
  return map.children.back().get();
}

}  // namespace

Node* entry_along(const Node& map, const std::vector<std::string>& keys, std::size_t& at) {
  Node* longest = nullptr;
  std::string joined;
  const std::size_t begin = at;
  for (std::size_t end = begin; end < keys.size(); ++end) {
    joined += (end > begin ? "." : "") + keys[end];
    for (const auto& child : map.children)
      if (child->key == joined) longest = child.get(), at = end + 1;
  }
  return longest;
}

Override parse_override(const std::string& written, const std::string& origin) {
  Override change{origin, written, {}, ""};
  const auto equals = written.find('=');
  if (equals == std::string::npos)
    throw complaint(place_of(change), "there is no '='", "key.path=value, such as duration=2 s", "");
  change.value = trimmed(written.substr(equals + 1));
  const std::string path = trimmed(written.substr(0, equals));
  for (std::size_t begin = 0; begin <= path.size();) {
    const std::size_t end = std::min(path.find('.', begin), path.size());
    change.keys.push_back(path.substr(begin, end - begin));
    begin = end + 1;
  }
  for (const std::string& key : change.keys)
    if (key.empty())
      throw complaint(place_of(change), "a key is empty", "key.path=value, such as duration=2 s", "");
  if (change.keys.size() > kLongestPath)
    throw complaint(place_of(change), "the key path is too long", "", "");
  if (change.value.empty())
    throw complaint(place_of(change), "the value is empty", "key.path=value, such as duration=2 s", "");
  return change;
}

void apply_override(Node& root, const Override& change) {
  const auto file = std::make_shared<const std::string>(change.origin + " " + change.written);
  Node* node = &root;
  for (std::size_t i = 0; i < change.keys.size();) {
    const std::string& key = change.keys[i];
    if (node->kind == Node::Kind::text)
      throw complaint(place_of(change),
                      fmt::format("{} = {} has no key '{}' below it", node->path(), shown(*node), key), "",
                      "the path goes one step too far");
    if (node->kind == Node::Kind::list) {
      node = step_into_list(*node, key, change);
      ++i;
      continue;
    }
    node->kind = Node::Kind::map;  // a key without a value may get keys below it
    node = step_into_map(*node, change.keys, i, file);
  }
  std::unique_ptr<Node> value = parse_document(*file, change.value);
  forget_lines(*value);
  node->added = false;  // a whole new entry, for instance start.PIP=5 deg, may be meant
  node->kind = value->kind;
  node->text = std::move(value->text);
  node->children = std::move(value->children);
  for (const auto& child : node->children) child->parent = node;
  node->file = file;
  node->line = node->column = node->key_line = node->key_column = 0;
}

}  // namespace sinewright::reading
