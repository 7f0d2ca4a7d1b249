#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "reading/kind.h"

namespace sinewright::reading {

/// What holds when an optional key is absent: either a value, written as in a file and read the same way, or
/// words.
struct Default {
  std::string_view value;  ///< "20 ms"
};
struct Absent {
  std::string_view words;  ///< "no limit"
};

// What of a record does not depend on its type; in record.cpp.
void show_field(RecordShown& record, std::string_view key, const Shown& value, std::string_view about, bool required,
                std::string_view absent, std::string_view group);
/// Refuses unknown keys, and none or several keys of a group.
void check_keys(const RecordShown& record, const Node& map);
/// A value as if it had been written at a key.
[[nodiscard]] Node written_at(const Node& map, const std::string& key, const std::string& value);

/// A map with fixed keys, described once, field by field. The description reads files, refuses unknown keys,
/// and makes the JSON schema and the reference.
template <class T>
class Record {
 public:
  Record(std::string_view name, std::string_view about) : shown_(std::make_shared<RecordShown>()) {
    shown_->name = name;
    shown_->about = about;
  }

  /// A key that must be there.
  template <class C, class M, class V>
  Record& need(std::string_view key, M C::*member, const Kind<V>& kind, std::string_view about) {
    show_field(*shown_, key, kind.shown, about, true, "", "");
    return put(setter(member, kind), {});
  }

  /// A key that may be left out. A default text must be a single value, not a list.
  template <class C, class M, class V>
  Record& may(std::string_view key, M C::*member, const Kind<V>& kind, const Default& standard, std::string_view about) {
    show_field(*shown_, key, kind.shown, about, false, standard.value, "");
    return put(setter(member, kind), standard.value);
  }
  template <class C, class M, class V>
  Record& may(std::string_view key, M C::*member, const Kind<V>& kind, const Absent& absent, std::string_view about) {
    show_field(*shown_, key, kind.shown, about, false, absent.words, "");
    return put(setter(member, kind), {});
  }

  /// A key of a group of which exactly one must be there.
  template <class C, class M, class V>
  Record& one_of(std::string_view group, std::string_view key, M C::*member, const Kind<V>& kind, std::string_view about) {
    show_field(*shown_, key, kind.shown, about, false, "", group);
    return put(setter(member, kind), {});
  }

  /// A condition over several keys, run after all are read; throws what it has to say.
  Record& check(std::function<void(T&, const Node&)> condition) {
    checks_.push_back(std::move(condition));
    return *this;
  }

  [[nodiscard]] Kind<T> kind() const {
    return {shown_record(shown_), [record = *this](const Node& node) { return record.read(node); }};
  }

 private:
  struct Setter {
    std::function<void(T&, const Node&)> set;
    std::string standard;
  };

  template <class C, class M, class V>
  static std::function<void(T&, const Node&)> setter(M C::*member, const Kind<V>& kind) {
    static_assert(std::is_base_of_v<C, T>);
    return [member, read = kind.read](T& value, const Node& node) { value.*member = read(node); };
  }

  Record& put(std::function<void(T&, const Node&)> set, std::string_view standard) {
    setters_.push_back({std::move(set), std::string(standard)});
    return *this;
  }

  [[nodiscard]] T read(const Node& node) const {
    check_keys(*shown_, node);
    T value{};
    for (std::size_t i = 0; i < setters_.size(); ++i) {
      const FieldShown& field = shown_->fields[i];
      if (const Node* found = node.find(field.key))
        setters_[i].set(value, *found);
      else if (field.required)
        throw missing(node, field.key, field.value.words, field.about);
      else if (!setters_[i].standard.empty())  // the default goes through the same door as a written value
        setters_[i].set(value, written_at(node, field.key, setters_[i].standard));
    }
    for (const auto& condition : checks_) condition(value, node);
    return value;
  }

  std::shared_ptr<RecordShown> shown_;
  std::vector<Setter> setters_;
  std::vector<std::function<void(T&, const Node&)>> checks_;
};

}  // namespace sinewright::reading
