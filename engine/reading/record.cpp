#include "reading/record.h"

#include <algorithm>

namespace sinewright::reading {

namespace {

void check_groups(const RecordShown& record, const Node& map) {
  std::vector<std::string> done;
  for (const FieldShown& field : record.fields) {
    if (field.group.empty() || std::find(done.begin(), done.end(), field.group) != done.end()) continue;
    done.push_back(field.group);
    std::vector<std::string> choices;
    const Node* first = nullptr;
    for (const FieldShown& other : record.fields)
      if (other.group == field.group) choices.push_back(other.key);
    for (const auto& child : map.children) {
      if (std::find(choices.begin(), choices.end(), child->key) == choices.end()) continue;
      if (first != nullptr)
        throw complaint(child->key_place(), child->path() + " is not allowed beside " + first->key,
                        "exactly one of: " + listed(choices), "");
      first = child.get();
    }
    if (first == nullptr) throw missing_choice(map, choices);
  }
}

}  // namespace

void show_field(RecordShown& record, std::string_view key, const Shown& value, std::string_view about, bool required,
                std::string_view absent, std::string_view group) {
  record.fields.push_back(
      {std::string(key), value, std::string(about), required, std::string(absent), std::string(group)});
}

void check_keys(const RecordShown& record, const Node& map) {
  std::vector<std::string> known;
  for (const FieldShown& field : record.fields) known.push_back(field.key);
  require_map(map, "a map with keys among: " + listed(known));
  for (const auto& child : map.children)
    if (std::find(known.begin(), known.end(), child->key) == known.end()) throw unknown_key(*child, known);
  check_groups(record, map);
}

Node written_at(const Node& map, const std::string& key, const std::string& value) {
  Node node;
  node.kind = Node::Kind::text;
  node.text = value;
  node.key = key;
  node.parent = &map;
  node.file = map.file;
  return node;
}

}  // namespace sinewright::reading
