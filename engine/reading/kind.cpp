#include "reading/kind.h"

#include <algorithm>
#include <cmath>

#include <Eigen/Eigenvalues>
#include <fmt/format.h>

#include "quantity/nearest.h"
#include "quantity/quantity.h"

namespace sinewright::reading {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

constexpr const char* kNumberPattern = "[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?";

const char* const kNamePattern = "^[A-Za-z][A-Za-z0-9_-]*$";
const char* const kReferencePattern = "^[A-Za-z][A-Za-z0-9_-]*(\\.[A-Za-z][A-Za-z0-9_-]*)*$";

bool good_name(std::string_view name) {
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  return !name.empty() && letter(name.front()) && name.size() <= 60 && std::all_of(name.begin(), name.end(), [&](char c) {
           return letter(c) || (c >= '0' && c <= '9') || c == '_' || c == '-';
         });
}

std::string with_bounds(const std::string& words, const Bounds& bounds) {
  return bounds.words.empty() ? words : words + "; " + bounds.words;
}

std::string needed_text(const Node& node, const std::string& words) {
  return node.kind == Node::Kind::empty ? words + " after the ':'" : words;
}

double read_quantity(const Node& node, const std::string& unit, const Bounds& bounds) {
  const std::string needed = with_bounds(describe_dimension(unit), bounds);
  if (node.kind != Node::Kind::text) throw not_allowed(node, needed_text(node, needed));
  double si = 0;
  try {
    si = parse_quantity(node.text, unit).si;
  } catch (const QuantityProblem& problem) {
    throw not_allowed(node, needed, problem.hint);
  }
  const bool low = bounds.low_open ? si > bounds.low : si >= bounds.low;
  const bool high = bounds.high_open ? si < bounds.high : si <= bounds.high;
  if (!low || !high) throw not_allowed(node, needed);
  return si;
}

}  // namespace

Shown::Shown() = default;
Shown::Shown(std::string given_words, Json given_schema, std::vector<std::shared_ptr<const RecordShown>> given_records)
    : words(std::move(given_words)), schema(std::move(given_schema)), records(std::move(given_records)) {}
Shown::Shown(const Shown&) = default;
Shown::Shown(Shown&&) noexcept = default;
Shown& Shown::operator=(const Shown&) = default;
Shown& Shown::operator=(Shown&&) noexcept = default;
Shown::~Shown() = default;

Shown shown_words(const std::vector<std::string>& words) { return {"one of: " + listed(words), {{"enum", words}}}; }

Shown shown_list(const Shown& item, const std::string& words, std::size_t at_least, std::size_t at_most) {
  Shown shown{words, {{"type", "array"}, {"items", item.schema}}, item.records};
  if (at_least > 0) shown.schema["minItems"] = at_least;
  if (at_most < no_most) shown.schema["maxItems"] = at_most;
  return shown;
}

Shown shown_pair(const Shown& a, const Shown& b, const std::string& words) {
  return {words,
          {{"type", "array"},
           {"prefixItems", {a.schema, b.schema}},
           {"items", {{"anyOf", {a.schema, b.schema}}}},
           {"minItems", 2},
           {"maxItems", 2}}};
}

Shown shown_named(const Shown& value, const std::string& what) {
  return {"a map from names to " + plural(what),
          {{"type", "object"}, {"propertyNames", name_schema()}, {"additionalProperties", value.schema}},
          value.records};
}

Shown shown_choice(const std::vector<const Shown*>& choices, const std::string& words, const char* rule) {
  Shown shown;
  shown.words = words;
  shown.schema[rule] = Json::array();
  for (const Shown* choice : choices) {
    shown.schema[rule].push_back(choice->schema);
    for (const auto& record : choice->records) shown.records.push_back(record);
  }
  return shown;
}

Shown shown_record(const std::shared_ptr<const RecordShown>& record) {
  return {"a map, see " + record->name, {{"$ref", "#/$defs/" + record->name}}, {record}};
}

std::size_t chosen_key(const Node& map, const std::vector<std::string>& keys) {
  require_map(map, "a map with one of the keys: " + listed(keys));
  std::size_t chosen = keys.size();
  for (const auto& child : map.children)
    for (std::size_t i = 0; i < keys.size(); ++i) {
      if (child->key != keys[i]) continue;
      if (chosen < keys.size())
        throw complaint(child->key_place(), child->path() + " is not allowed beside " + keys[chosen],
                        "exactly one of: " + listed(keys), "");
      chosen = i;
    }
  if (chosen == keys.size()) throw missing_choice(map, keys);
  return chosen;
}

Kind<double> quantity(const std::string& unit, Bounds bounds) {
  Kind<double> kind;
  kind.shown.words = with_bounds(describe_dimension(unit), bounds);
  if (unit == "1") {
    // As text, too, since other YAML readers take "1e-3" as a text.
    Json number = {{"type", "number"}};
    if (std::isfinite(bounds.low)) number[bounds.low_open ? "exclusiveMinimum" : "minimum"] = bounds.low;
    if (std::isfinite(bounds.high)) number[bounds.high_open ? "exclusiveMaximum" : "maximum"] = bounds.high;
    kind.shown.schema["anyOf"] = {
        number,
        {{"type", "string"}, {"pattern", fmt::format("^\\s*{}\\s*(%|percent)?\\s*$", kNumberPattern)}}};
  } else {
    // A JSON Schema cannot tell dimensions: it asks for a number, a sign if allowed (in degC it always is),
    // and some unit.
    const bool no_sign = bounds.low >= 0 && unit != "K";
    kind.shown.schema = {{"type", "string"},
                         {"pattern", fmt::format("^\\s*{}{}\\s*(1/)?[^\\s0-9+.,-].*$", no_sign ? "(?!-)" : "",
                                                 kNumberPattern)},
                         {"description", kind.shown.words}};
  }
  kind.read = [unit, bounds](const Node& node) { return read_quantity(node, unit, bounds); };
  return kind;
}

Kind<double> quantity_or_none(const std::string& unit, Bounds bounds, double value) {
  const Kind<double> given = quantity(unit, bounds);
  Kind<double> kind;
  kind.shown.words = given.shown.words + "; or none";
  kind.shown.schema["anyOf"] = {given.shown.schema, {{"const", "none"}}};
  kind.read = [given, value](const Node& node) {
    return node.kind == Node::Kind::text && node.text == "none" ? value : given.read(node);
  };
  return kind;
}

Kind<int> whole_number(int least, int most) {
  const std::string words = fmt::format("a whole number from {} to {}", least, most);
  return turned_into<int, double>(number({static_cast<double>(least), static_cast<double>(most), false, false, words}),
                                  [words](double value, const Node& node) {
                                    if (value != static_cast<int>(value)) throw not_allowed(node, words);
                                    return static_cast<int>(value);
                                  });
}

Kind<Quantity> any_quantity(const std::string& words) {
  Kind<Quantity> kind;
  kind.shown.words = words;
  kind.shown.schema = {{"type", {"string", "number"}}};
  kind.read = [words](const Node& node) {
    if (node.kind != Node::Kind::text) throw not_allowed(node, words);
    try {
      return parse_any_quantity(node.text);
    } catch (const QuantityProblem& problem) {
      throw not_allowed(node, words, problem.hint);
    }
  };
  return kind;
}

Kind<std::string> text() {
  Kind<std::string> kind;
  kind.shown = {"text", {{"type", "string"}}, {}};
  kind.read = [](const Node& node) {
    if (node.kind != Node::Kind::text || node.text.empty())
      throw not_allowed(node, needed_text(node, "a text"));
    return node.text;
  };
  return kind;
}

Kind<bool> yes_no() {
  Kind<bool> kind = word<bool>({{"true", true}, {"false", false}});
  kind.shown.words = "true or false";
  kind.shown.schema = {{"type", "boolean"}};
  return kind;
}

bool named_by_finger(const std::string& what) {
  return what == "body" || what == "joint" || what == "drive" || what == "cord" || what == "supply" ||
         what == "finger";
}

std::string scoped(const Node& node, const std::string& what, const std::string& name) {
  return named_by_finger(what) ? root_of(node).scope + name : name;
}

Kind<Name> name_of(const std::string& what) {
  Kind<Name> kind;
  const bool may_lead_into_finger = named_by_finger(what) || what == "body or object";
  kind.shown = {"the name of a " + what, may_lead_into_finger ? reference_schema() : name_schema(), {}};
  kind.read = [what](const Node& node) {
    if (node.kind != Node::Kind::text || node.text.empty())
      throw not_allowed(node, needed_text(node, "the name of a " + what));
    return Name{scoped(node, what, node.text), &node};
  };
  return kind;
}

Kind<Vector3d> vector3(const std::string& unit, Bounds bounds) {
  const Kind<double> item = quantity(unit, bounds);
  const std::string words = "a list of 3: x, y, z, each " + item.shown.words;
  Kind<Vector3d> kind;
  kind.shown = {
      words, {{"type", "array"}, {"items", item.shown.schema}, {"minItems", 3}, {"maxItems", 3}}, {}};
  kind.read = [item, words](const Node& node) {
    require_list(node, words, 3, 3);
    return Vector3d(item.read(*node.children[0]), item.read(*node.children[1]), item.read(*node.children[2]));
  };
  return kind;
}

Kind<Vector3d> direction() {
  const Kind<Vector3d> plain = vector3("1");
  const std::string words = "a direction: 3 plain numbers, not all zero; its length does not matter";
  Kind<Vector3d> kind = plain;
  kind.shown.words = words;
  kind.read = [plain, words](const Node& node) {
    require_list(node, words, 3, 3);
    const Vector3d given = plain.read(node);
    const double size = given.stableNorm();
    if (!(size > 1e-12) || !std::isfinite(size))
      throw not_allowed(node, words, "its length is zero or immense");
    return Vector3d(given / size);
  };
  return kind;
}

Kind<Matrix3d> inertia() {
  const Kind<double> item = quantity("kg.m2");
  const std::string words =
      "a list of 3 (about the centre of mass: xx, yy, zz) or 6 (xx, yy, zz, xy, yz, zx), each " +
      item.shown.words;
  Kind<Matrix3d> kind;
  kind.shown = {
      words, {{"type", "array"}, {"items", item.shown.schema}, {"minItems", 3}, {"maxItems", 6}}, {}};
  kind.read = [item, words](const Node& node) -> Matrix3d {
    require_list(node, words, 3, 6);
    if (node.children.size() != 3 && node.children.size() != 6) throw not_allowed(node, words);
    std::array<double, 6> v{};
    for (std::size_t i = 0; i < node.children.size(); ++i) v[i] = item.read(*node.children[i]);
    Matrix3d matrix;
    matrix << v[0], v[3], v[5], v[3], v[1], v[4], v[5], v[4], v[2];
    const Vector3d principal =
        Eigen::SelfAdjointEigenSolver<Matrix3d>(matrix, Eigen::EigenvaluesOnly).eigenvalues();
    if (!(principal[0] > 0))
      throw not_allowed(
          node, "principal moments > 0",
          fmt::format("they are {:.4g}, {:.4g}, {:.4g} kg·m²", principal[0], principal[1], principal[2]));
    // Real bodies obey the triangle inequality; a flat plate reaches equality, hence the rounding margin.
    if (principal[0] + principal[1] < principal[2] * (1 - 1e-9))
      throw not_allowed(
          node, "no principal moment larger than the sum of the other two",
          fmt::format("they are {:.4g}, {:.4g}, {:.4g} kg·m²: no distribution of mass has these",
                      principal[0], principal[1], principal[2]));
    return matrix;
  };
  return kind;
}

std::string plural(const std::string& what) {
  return what.ends_with('y') ? what.substr(0, what.size() - 1) + "ies" : what + "s";
}

void require_list(const Node& node, const std::string& needed, std::size_t at_least, std::size_t at_most) {
  if (node.kind != Node::Kind::list || node.children.size() < at_least || node.children.size() > at_most)
    throw not_allowed(node, needed_text(node, needed));
}

void require_map(const Node& node, const std::string& needed) {
  if (node.kind != Node::Kind::map) throw not_allowed(node, needed_text(node, needed));
}

void require_name(const Node& node, const std::string& name) {
  if (!good_name(name))
    throw complaint(node.key_place(), fmt::format("{}: the name is not allowed", node.path()),
                    "a letter, then letters, digits, '_' or '-', at most 60", "");
}

void require_reference(const Node& node, const std::string& name) {
  bool good = true;
  for (std::size_t begin = 0; begin <= name.size();) {
    const std::size_t end = std::min(name.find('.', begin), name.size());
    good = good && good_name(std::string_view(name).substr(begin, end - begin));
    begin = end + 1;
  }
  if (!good)
    throw complaint(node.key_place(), fmt::format("{}: the name is not allowed", node.path()),
                    "a letter, then letters, digits, '_' or '-', at most 60; with the finger's name and a dot before it in a hand", "");
}

const Json& name_schema() {
  static const Json schema = {{"type", "string"}, {"pattern", kNamePattern}, {"maxLength", 60}};
  return schema;
}

const Json& reference_schema() {
  static const Json schema = {{"type", "string"}, {"pattern", kReferencePattern}, {"maxLength", 240}};
  return schema;
}

InvalidInput unknown_name_key(const Node& node, const std::string& what,
                              const std::vector<std::string>& known) {
  const std::string near = nearest(node.key, known);
  return complaint(node.key_place(), fmt::format("{}: there is no such {}", node.path(), what),
                   known.empty() ? std::string() : fmt::format("one of: {}", listed(known)),
                   near.empty() ? std::string() : fmt::format("the nearest known {} is '{}'", what, near));
}

std::vector<std::string> known_names(const Node& map) {
  std::vector<std::string> names;
  for (const auto& child : map.children)
    if (!child->added) names.push_back(child->key);
  return names;
}

InvalidInput missing_choice(const Node& map, const std::vector<std::string>& keys) {
  std::string hint;
  for (const auto& child : map.children) {
    const std::string near = nearest(child->key, keys);
    if (!near.empty()) {
      hint = fmt::format("is '{}' meant to be '{}'?", child->key, near);
      break;
    }
  }
  const std::string path = map.path();
  return complaint(map.place(), fmt::format("{}{}a key is missing", path, path.empty() ? "" : ": "),
                   fmt::format("exactly one of: {}", listed(keys)), hint);
}

}  // namespace sinewright::reading
