#pragma once

#include <algorithm>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "reading/kind.h"

namespace sinewright::reading {

/// What holds when an optional key is absent: either a value, written as in a file and read the same way, or
/// words.
struct Default {
  std::string value;  ///< "20 ms"
};
struct Absent {
  std::string words;  ///< "no limit"
};

/// A map with fixed keys, described once, field by field. The description reads files, refuses unknown keys,
/// and makes the JSON schema and the reference.
template <class T>
class Record {
 public:
  Record(std::string name, std::string about) : shown_(std::make_shared<RecordShown>()) {
    shown_->name = std::move(name);
    shown_->about = std::move(about);
  }

  /// A key that must be there.
  template <class C, class M, class V>
  Record& need(const std::string& key, M C::*member, Kind<V> kind, const std::string& about) {
    return put({key, kind.shown, about, true, "", ""}, setter(member, kind), {});
  }

  /// A key that may be left out. A default text must be a single value, not a list.
  template <class C, class M, class V>
  Record& may(const std::string& key, M C::*member, Kind<V> kind, const Default& standard,
              const std::string& about) {
    return put({key, kind.shown, about, false, standard.value, ""}, setter(member, kind), standard.value);
  }
  template <class C, class M, class V>
  Record& may(const std::string& key, M C::*member, Kind<V> kind, const Absent& absent,
              const std::string& about) {
    return put({key, kind.shown, about, false, absent.words, ""}, setter(member, kind), {});
  }

  /// A key of a group of which exactly one must be there.
  template <class C, class M, class V>
  Record& one_of(const std::string& group, const std::string& key, M C::*member, Kind<V> kind,
                 const std::string& about) {
    return put({key, kind.shown, about, false, "", group}, setter(member, kind), {});
  }

  /// A condition over several keys, run after all are read; throws what it has to say.
  Record& check(std::function<void(T&, const Node&)> condition) {
    checks_.push_back(std::move(condition));
    return *this;
  }

  [[nodiscard]] Kind<T> kind() const {
    Kind<T> kind;
    kind.shown.words = "a map, see " + shown_->name;
    kind.shown.schema = {{"$ref", "#/$defs/" + shown_->name}};
    kind.shown.records = {shown_};
    kind.read = [record = *this](const Node& node) { return record.read(node); };
    return kind;
  }

 private:
  struct Setter {
    std::function<void(T&, const Node&)> set;
    std::string standard;
  };

  template <class C, class M, class V>
  static std::function<void(T&, const Node&)> setter(M C::*member, Kind<V> kind) {
    static_assert(std::is_base_of_v<C, T>);
    return [member, read = kind.read](T& value, const Node& node) { value.*member = read(node); };
  }

  Record& put(FieldShown field, std::function<void(T&, const Node&)> set, const std::string& standard) {
    shown_->fields.push_back(std::move(field));
    setters_.push_back({std::move(set), standard});
    return *this;
  }

  [[nodiscard]] std::vector<std::string> keys() const {
    std::vector<std::string> keys;
    for (const FieldShown& field : shown_->fields) keys.push_back(field.key);
    return keys;
  }

  [[nodiscard]] T read(const Node& node) const {
    const std::vector<std::string> known = keys();
    require_map(node, "a map with keys among: " + listed(known));
    for (const auto& child : node.children)
      if (std::find(known.begin(), known.end(), child->key) == known.end()) throw unknown_key(*child, known);
    check_groups(node);
    T value{};
    for (std::size_t i = 0; i < setters_.size(); ++i) {
      const FieldShown& field = shown_->fields[i];
      if (const Node* found = node.find(field.key)) {
        setters_[i].set(value, *found);
      } else if (field.required) {
        throw missing(node, field.key, field.value.words, field.about);
      } else if (!setters_[i].standard.empty()) {
        Node standard;  // the default goes through the same door as a written value
        standard.kind = Node::Kind::text;
        standard.text = setters_[i].standard;
        standard.key = field.key;
        standard.parent = &node;
        standard.file = node.file;
        setters_[i].set(value, standard);
      }
    }
    for (const auto& condition : checks_) condition(value, node);
    return value;
  }

  void check_groups(const Node& node) const {
    std::vector<std::string> done;
    for (const FieldShown& field : shown_->fields) {
      if (field.group.empty() || std::find(done.begin(), done.end(), field.group) != done.end()) continue;
      done.push_back(field.group);
      std::vector<std::string> choices;
      const Node* first = nullptr;
      for (const FieldShown& other : shown_->fields)
        if (other.group == field.group) choices.push_back(other.key);
      for (const auto& child : node.children) {
        if (std::find(choices.begin(), choices.end(), child->key) == choices.end()) continue;
        if (first != nullptr)
          throw complaint(child->key_place(), child->path() + " is not allowed beside " + first->key,
                          "exactly one of: " + listed(choices), "");
        first = child.get();
      }
      if (first == nullptr) throw missing_choice(node, choices);
    }
  }

  std::shared_ptr<RecordShown> shown_;
  std::vector<Setter> setters_;
  std::vector<std::function<void(T&, const Node&)>> checks_;
};

}  // namespace sinewright::reading
