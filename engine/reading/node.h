#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/invalid_input.h"

namespace sinewright::reading {

/// A piece of a file as it was written: no number is read yet, every piece knows its place and its path of
/// keys.
struct Node {
  enum class Kind { empty, text, list, map };

  Kind kind = Kind::empty;
  std::string text;  ///< of a text node
  std::string key;   ///< under which it stands in its parent; the index in a list
  const Node* parent = nullptr;
  std::vector<std::unique_ptr<Node>> children;  ///< of a map or list, in order
  std::shared_ptr<const std::string> file;      ///< name of the file
  int line = 0, column = 0;                     ///< of the value, from 1
  int key_line = 0, key_column = 0;             ///< of the key, 0 if it has none
  bool added = false;  ///< an override put it here on the way to a key below; it stands in no file
  std::string scope;   ///< of a root, a finger of a hand: "index.", what stands before the names of its bodies, joints, drives ...

  [[nodiscard]] Place place() const { return {*file, line, column}; }

  /// Of the key, or of the value in a list.
  [[nodiscard]] Place key_place() const {
    return key_line > 0 ? Place{*file, key_line, key_column} : place();
  }

  /// "cords.flexor.path.2"; empty for the whole file.
  [[nodiscard]] std::string path() const {
    if (parent == nullptr) return {};
    const std::string above = parent->path();
    const std::string own = key.size() > 80 ? key.substr(0, 80) + "..." : key;
    return above.empty() ? own : above + "." + own;
  }

  /// The value of a key in a map, or null.
  [[nodiscard]] const Node* find(std::string_view wanted) const {
    if (kind != Kind::map) return nullptr;
    for (const auto& child : children)
      if (child->key == wanted) return child.get();
    return nullptr;
  }
};

/// The top of what a node belongs to: the file, or the text of an override.
[[nodiscard]] inline const Node& root_of(const Node& node) {
  const Node* top = &node;
  while (top->parent != nullptr) top = top->parent;
  return *top;
}

/// Whether two pieces say the same, wherever they stand.
[[nodiscard]] bool same_content(const Node& a, const Node& b);

/// The node and all below it, each knowing its new parent; the top has none.
[[nodiscard]] std::unique_ptr<Node> copy_of(const Node& node);

}  // namespace sinewright::reading
