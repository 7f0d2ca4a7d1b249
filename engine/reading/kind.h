#pragma once

#include <functional>
#include <limits>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <Eigen/Core>
#include <nlohmann/json.hpp>

#include "quantity/quantity.h"
#include "reading/complaint.h"
#include "reading/node.h"

namespace sinewright::reading {

using Json = nlohmann::ordered_json;

struct RecordShown;

/// How a kind of value looks from outside: what the schema and the reference say about it. Its special members stand in kind.cpp:
/// written out at every key of every description, they were half of what this floor took to compile.
struct Shown {
  std::string words;  ///< "a length, such as \"5 mm\"; > 0"
  Json schema;
  std::vector<std::shared_ptr<const RecordShown>> records;  ///< maps with keys of their own, described apart

  Shown();
  Shown(std::string words, Json schema, std::vector<std::shared_ptr<const RecordShown>> records = {});
  Shown(const Shown&);
  Shown(Shown&&) noexcept;
  Shown& operator=(const Shown&);
  Shown& operator=(Shown&&) noexcept;
  ~Shown();
};

/// A key of a record, for the schema and the reference.
struct FieldShown {
  std::string key;
  Shown value;
  std::string about;
  bool required = false;
  std::string absent;  ///< what holds when the key is not there
  std::string group;   ///< exactly one key of a group must be there; empty: no group
};

/// A map with fixed keys, for the schema and the reference.
struct RecordShown {
  std::string name;  ///< unique, snake_case
  std::string about;
  std::vector<FieldShown> fields;
};

// How lists, pairs, maps and choices look, made of how their parts do.
[[nodiscard]] Shown shown_words(const std::vector<std::string>& words);
[[nodiscard]] Shown shown_list(const Shown& item, const std::string& words, std::size_t at_least, std::size_t at_most);
[[nodiscard]] Shown shown_pair(const Shown& a, const Shown& b, const std::string& words);
[[nodiscard]] Shown shown_named(const Shown& value, const std::string& what);
[[nodiscard]] Shown shown_choice(const std::vector<const Shown*>& choices, const std::string& words, const char* rule);
[[nodiscard]] Shown shown_record(const std::shared_ptr<const RecordShown>& record);

/// The one description of a kind of value: how it is read, and how it is shown in schema and reference.
template <class T>
struct Kind {
  Shown shown;
  std::function<T(const Node&)> read;
};

/// Bounds of a number, in SI.
struct Bounds {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  bool low_open = false;
  bool high_open = false;
  std::string words;  ///< "> 0"
};
inline Bounds any() {
  return {};
}
inline Bounds positive() {
  return {0, std::numeric_limits<double>::infinity(), true, false, "> 0"};
}
inline Bounds not_negative() {
  return {0, std::numeric_limits<double>::infinity(), false, false, ">= 0"};
}

/// A name given to a part, or the use of one, with its place for later messages.
struct Name {
  std::string text;  ///< with the scope of its file before it, where there is one
  const Node* node = nullptr;
};

/// A part under a name of its own.
template <class T>
struct Entry {
  std::string name;  ///< as Name::text
  const Node* node = nullptr;
  T value;
};
template <class T>
using Named = std::vector<Entry<T>>;

[[nodiscard]] Kind<double> quantity(const std::string& unit, Bounds bounds = any());
[[nodiscard]] inline Kind<double> number(Bounds bounds = any()) {
  return quantity("1", std::move(bounds));
}
/// A whole number within bounds, both of which are allowed.
[[nodiscard]] Kind<int> whole_number(int least, int most);
/// A quantity, or the word "none" that stands for `value`.
[[nodiscard]] Kind<double> quantity_or_none(const std::string& unit, Bounds bounds, double value);
/// A number with whatever unit; `words` say which is wanted.
[[nodiscard]] Kind<Quantity> any_quantity(const std::string& words);
[[nodiscard]] Kind<std::string> text();
[[nodiscard]] Kind<bool> yes_no();
/// Whether names of this sort are a finger's own: body, joint, drive, cord, supply, finger. In a hand, the finger's name and a dot stand
/// before them; names of materials, lines, motors and the like are those of catalogues and shared.
[[nodiscard]] bool named_by_finger(const std::string& what);
/// A name as it stands at the node, with the scope of the node's file where one belongs there.
[[nodiscard]] std::string scoped(const Node& node, const std::string& what, const std::string& name);
/// The name of another part; resolved later. `what` is for instance "line".
[[nodiscard]] Kind<Name> name_of(const std::string& what);
[[nodiscard]] Kind<Eigen::Vector3d> vector3(const std::string& unit, Bounds bounds = any());
/// Three plain numbers, not all zero; made a unit vector.
[[nodiscard]] Kind<Eigen::Vector3d> direction();
/// Three (diagonal) or six numbers xx yy zz xy yz zx of a symmetric matrix.
[[nodiscard]] Kind<Eigen::Matrix3d> inertia();

/// One of some words.
template <class T>
Kind<T> word(std::vector<std::pair<std::string, T>> choices) {
  std::vector<std::string> names;
  for (const auto& choice : choices) names.push_back(choice.first);
  Kind<T> kind;
  kind.shown = shown_words(names);
  kind.read = [choices = std::move(choices), names](const Node& node) {
    if (node.kind == Node::Kind::text)
      for (const auto& [name, value] : choices)
        if (node.text == name) return value;
    throw not_allowed(node, "one of: " + listed(names));
  };
  return kind;
}

/// "body" to "bodies", "cord" to "cords".
[[nodiscard]] std::string plural(const std::string& what);

void require_list(const Node& node, const std::string& needed, std::size_t at_least, std::size_t at_most);
void require_map(const Node& node, const std::string& needed);
/// Letters, digits, '_' and '-', beginning with a letter: a name is part of key paths and of data set names.
void require_name(const Node& node, const std::string& name);
[[nodiscard]] const Json& name_schema();
/// The same for a name that may lead into a finger: "index.MCP".
[[nodiscard]] const Json& reference_schema();
void require_reference(const Node& node, const std::string& name);
/// An override named a part that is not there.
[[nodiscard]] InvalidInput unknown_name_key(const Node& node, const std::string& what,
                                            const std::vector<std::string>& known);
/// Names of the parts that the file itself lists.
[[nodiscard]] std::vector<std::string> known_names(const Node& map);

/// A map lacks every key of a choice; names the nearest when one is misspelled.
[[nodiscard]] InvalidInput missing_choice(const Node& map, const std::vector<std::string>& keys);

inline constexpr std::size_t no_most = 1000000;

template <class T>
Kind<std::vector<T>> list_of(const Kind<T>& item, const std::string& words, std::size_t at_least = 0,
                             std::size_t at_most = no_most) {
  Kind<std::vector<T>> kind;
  kind.shown = shown_list(item.shown, words, at_least, at_most);
  kind.read = [read = item.read, words, at_least, at_most](const Node& node) {
    require_list(node, words, at_least, at_most);
    std::vector<T> items;
    for (const auto& child : node.children) items.push_back(read(*child));
    return items;
  };
  return kind;
}

/// A list of two unlike values, such as [0.1 s, 5 N].
template <class A, class B>
Kind<std::pair<A, B>> pair_of(const Kind<A>& a, const Kind<B>& b, const std::string& words) {
  Kind<std::pair<A, B>> kind;
  kind.shown = shown_pair(a.shown, b.shown, words);
  kind.read = [a = a.read, b = b.read, words](const Node& node) {
    require_list(node, words, 2, 2);
    return std::pair<A, B>{a(*node.children[0]), b(*node.children[1])};
  };
  return kind;
}

/// A map from names, free to choose, to values of one kind. `what` is one such value, for instance "cord".
template <class T>
Kind<Named<T>> named(const Kind<T>& value, const std::string& what) {
  Kind<Named<T>> kind;
  kind.shown = shown_named(value.shown, what);
  kind.read = [read = value.read, what](const Node& node) {
    require_map(node, "a map from names to " + plural(what));
    Named<T> entries;
    std::vector<std::string> known;
    for (const auto& child : node.children) {
      if (child->added) throw unknown_name_key(*child, what, known_names(node));
      require_name(*child, child->key);
      entries.push_back({scoped(*child, what, child->key), child.get(), read(*child)});
    }
    return entries;
  };
  return kind;
}

/// A map from names of parts that are there already, those of fingers with a dot in them, to values of one kind. Where the values are
/// no maps themselves, "index: {MCP: ...}" says the same as "index.MCP: ...".
template <class T>
Kind<Named<T>> by_name_of(Kind<T> value, const std::string& what, bool values_are_maps) {
  Kind<Named<T>> kind;
  kind.shown = {"a map by " + what, {{"type", "object"}, {"propertyNames", reference_schema()}}, value.shown.records};
  kind.shown.schema["additionalProperties"] = value.shown.schema;
  if (!values_are_maps) kind.shown.schema["additionalProperties"] = {{"anyOf", {value.shown.schema, {{"type", "object"}}}}};
  const auto gather = [value, what, values_are_maps](const auto& self, const Node& node, const std::string& before, Named<T>& entries) -> void {
    require_map(node, "a map by " + what);
    for (const auto& child : node.children) {
      const std::string name = before + child->key;
      const bool deeper = !values_are_maps && child->kind == Node::Kind::map;
      if (child->added && !deeper) throw unknown_name_key(*child, what, known_names(node));
      require_reference(*child, name);
      if (deeper) {
        self(self, *child, name + ".", entries);
      } else {
        entries.push_back({scoped(*child, what, name), child.get(), value.read(*child)});
      }
    }
  };
  kind.read = [gather](const Node& node) {
    Named<T> entries;
    gather(gather, node, "", entries);
    return entries;
  };
  return kind;
}

/// A value that can be written in several ways: the first way whose `fits` says so reads it.
template <class T>
struct Way {
  std::function<bool(const Node&)> fits;
  Kind<T> kind;
};

/// Which of some keys, exactly one of which must be there, a map has.
[[nodiscard]] std::size_t chosen_key(const Node& map, const std::vector<std::string>& keys);

template <class T>
Kind<T> any_of(std::vector<Way<T>> ways, const std::string& words) {
  Kind<T> kind;
  std::vector<const Shown*> choices;
  for (const Way<T>& way : ways) choices.push_back(&way.kind.shown);
  kind.shown = shown_choice(choices, words, "anyOf");
  kind.read = [ways = std::move(ways), words](const Node& node) {
    for (const Way<T>& way : ways)
      if (way.fits(node)) return way.kind.read(node);
    throw not_allowed(node, words);
  };
  return kind;
}

/// A map of one of several kinds, told apart by which of their first keys is there.
template <class T>
Kind<T> by_key(std::vector<std::pair<std::string, Kind<T>>> kinds) {
  std::vector<std::string> keys;
  for (const auto& entry : kinds) keys.push_back(entry.first);
  Kind<T> kind;
  std::vector<const Shown*> choices;
  for (const auto& entry : kinds) choices.push_back(&entry.second.shown);
  kind.shown = shown_choice(choices, "a map with one of the keys: " + listed(keys), "oneOf");
  kind.read = [kinds = std::move(kinds), keys](const Node& node) { return kinds[chosen_key(node, keys)].second.read(node); };
  return kind;
}

/// Another kind, computed from the value of this one.
template <class To, class From>
Kind<To> turned_into(const Kind<From>& from, std::function<To(From, const Node&)> convert) {
  return {from.shown, [read = from.read, convert = std::move(convert)](const Node& node) { return convert(read(node), node); }};
}

}  // namespace sinewright::reading
