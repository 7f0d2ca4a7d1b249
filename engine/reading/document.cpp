#include "reading/document.h"

#include <set>
#include <sstream>

#include <fmt/format.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include "reading/complaint.h"

namespace sinewright::reading {
namespace {

constexpr std::size_t kDeepest = 30;  // the file kinds need about 8; recursion over the nodes stays harmless

// Builds nodes from the library's events. Events, not the library's own tree, because only they show aliases
// at their own place, duplicate keys, and nesting before it is built.
class Builder : public YAML::EventHandler {
 public:
  Builder(const std::string& file, const std::string& text)
      : file_(std::make_shared<const std::string>(file)), text_(text) {
    line_starts_.push_back(0);
    for (std::size_t i = 0; i < text.size(); ++i)
      if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n')))
        line_starts_.push_back(i + 1);
  }

  std::unique_ptr<Node> take() { return std::move(root_); }

  // Editors count characters from 1, the library bytes from 0.
  [[nodiscard]] Place place(const YAML::Mark& mark) const {
    if (mark.is_null()) return {*file_, 1, 1};
    Place found{*file_, mark.line + 1, 1};
    const std::size_t end = offset(mark);
    for (std::size_t i = line_start(mark); i < end && i < text_.size(); ++i)
      if ((static_cast<unsigned char>(text_[i]) & 0xc0) != 0x80) ++found.column;
    return found;
  }

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    refuse_anchor(mark, anchor);
    add(mark, Node::Kind::empty, "");
  }

  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { throw alias(mark); }

  [[nodiscard]] InvalidInput alias(const YAML::Mark& mark) const {
    return complaint(place(mark), "an alias (*name) is not used in these files", "the value itself",
                     "write the value out, or put it into a parts file under a name");
  }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    refuse_anchor(mark, anchor);
    if (tag == "!")
      check_quotes(mark);
    else
      refuse_tag(mark, tag);
    add(mark, Node::Kind::text, value);
  }

  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value) override {
    refuse_anchor(mark, anchor);
    refuse_tag(mark, tag);
    open(mark, Node::Kind::list);
  }
  void OnSequenceEnd() override { open_.pop_back(); }

  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value) override {
    refuse_anchor(mark, anchor);
    refuse_tag(mark, tag);
    open(mark, Node::Kind::map);
  }
  void OnMapEnd() override { open_.pop_back(); }

 private:
  struct Open {
    Node* node = nullptr;
    std::set<std::string> keys;
    bool has_key = false;  // a key was read, its value comes next
    std::string key;
    Place key_place;
  };

  [[nodiscard]] std::size_t line_start(const YAML::Mark& mark) const {
    const auto line = static_cast<std::size_t>(mark.line);
    return line < line_starts_.size() ? line_starts_[line] : text_.size();
  }
  [[nodiscard]] std::size_t offset(const YAML::Mark& mark) const {
    return line_start(mark) + static_cast<std::size_t>(mark.column);
  }

  void refuse_anchor(const YAML::Mark& mark, YAML::anchor_t anchor) const {
    if (anchor != 0)
      throw complaint(place(mark), "an anchor (&name) is not used in these files", "the value itself",
                      "put a value that is used often into a parts file under a name");
  }

  void refuse_tag(const YAML::Mark& mark, const std::string& tag) const {
    if (!tag.empty() && tag != "?")
      throw complaint(place(mark), fmt::format("the tag '{}' is not used in these files", tag),
                      "the value itself", "");
  }

  // The library accepts a quote that is never closed, or closed lines below, and swallows what stands
  // between.
  void check_quotes(const YAML::Mark& mark) const {
    const std::size_t begin = offset(mark);
    const char quote = begin < text_.size() ? text_[begin] : '\0';
    if (quote == '|' || quote == '>') return;  // block texts have no closing sign
    if (quote != '"' && quote != '\'')
      throw complaint(place(mark), "a tag is not used in these files", "the value itself", "");
    for (std::size_t i = begin + 1; i < text_.size() && text_[i] != '\n' && text_[i] != '\r'; ++i) {
      if (quote == '"' && text_[i] == '\\') {
        ++i;
      } else if (text_[i] == quote) {
        if (quote == '\'' && i + 1 < text_.size() && text_[i + 1] == '\'')
          ++i;
        else
          return;
      }
    }
    throw complaint(place(mark), "this quote is not closed on its line", fmt::format("a closing {}", quote),
                    "long texts can be written with '>' on the line of the key and indented lines below");
  }

  Node* put(const YAML::Mark& mark, Node::Kind kind) {
    auto node = std::make_unique<Node>();
    node->kind = kind;
    node->file = file_;
    const Place at = place(mark);
    node->line = at.line;
    node->column = at.column;
    Node* raw = node.get();
    if (open_.empty()) {
      root_ = std::move(node);
      return raw;
    }
    Open& parent = open_.back();
    node->parent = parent.node;
    if (parent.node->kind == Node::Kind::map) {
      node->key = parent.key;
      node->key_line = parent.key_place.line;
      node->key_column = parent.key_place.column;
      parent.has_key = false;
      if (kind == Node::Kind::empty) {  // the library marks what follows, on another line
        raw->line = parent.key_place.line;
        raw->column = parent.key_place.column;
      }
    } else {
      node->key = std::to_string(parent.node->children.size());
    }
    parent.node->children.push_back(std::move(node));
    return raw;
  }

  [[nodiscard]] bool expects_key() const {
    return !open_.empty() && open_.back().node->kind == Node::Kind::map && !open_.back().has_key;
  }

  void add(const YAML::Mark& mark, Node::Kind kind, const std::string& value) {
    if (!expects_key()) {
      put(mark, kind)->text = value;
      return;
    }
    Open& map = open_.back();
    const Place at = place(mark);
    const std::string above = map.node->path();
    const std::string full = above.empty() ? value : above + "." + value;
    if (kind == Node::Kind::empty || value.empty()) throw complaint(at, "a key without a name", "a key", "");
    if (value == "<<")
      throw complaint(at, fmt::format("{} is not allowed: merging is not used in these files", full), "", "");
    if (!map.keys.insert(value).second)
      throw complaint(at, fmt::format("{} stands twice", full), "each key once", "remove one of the two");
    map.has_key = true;
    map.key = value;
    map.key_place = at;
  }

  void open(const YAML::Mark& mark, Node::Kind kind) {
    if (expects_key())
      throw complaint(place(mark), "a list or map stands where a key belongs", "a plain key",
                      "is a bracket not closed?");
    if (open_.size() >= kDeepest)
      throw complaint(place(mark), fmt::format("nested deeper than {} levels", kDeepest), "", "");
    Open entry;
    entry.node = put(mark, kind);
    open_.push_back(std::move(entry));
  }

  std::shared_ptr<const std::string> file_;
  const std::string& text_;
  std::vector<std::size_t> line_starts_;
  std::unique_ptr<Node> root_;
  std::vector<Open> open_;
};

}  // namespace

std::unique_ptr<Node> parse_document(const std::string& file, const std::string& text) {
  Builder builder(file, text);
  try {
    std::istringstream in(text);
    YAML::Parser parser(in);
    if (!parser.HandleNextDocument(builder))
      throw complaint({file, 0, 0}, "the file is empty", "a YAML map", "");
    std::unique_ptr<Node> root = builder.take();
    // Never looped: two calls tell whether something follows, more can hang.
    Builder rest(file, text);
    if (parser.HandleNextDocument(rest)) {
      const std::unique_ptr<Node> second = rest.take();
      throw complaint(second ? second->place() : Place{file, 0, 0},
                      "text after the end of the first document", "one document a file",
                      "remove '---' or '...', or check the indentation");
    }
    if (root == nullptr || root->kind == Node::Kind::empty)
      throw complaint({file, 0, 0}, "the file holds nothing but comments", "a YAML map", "");
    return root;
  } catch (const YAML::Exception& error) {
    if (error.msg == YAML::ErrorMsg::UNKNOWN_ANCHOR) throw builder.alias(error.mark);
    throw complaint(builder.place(error.mark), fmt::format("this is not readable YAML: {}", error.msg), "",
                    "check indentation, brackets, and the blank after ':'");
  }
}

bool same_content(const Node& a, const Node& b) {
  return a.kind == b.kind && a.text == b.text &&
         std::equal(a.children.begin(), a.children.end(), b.children.begin(), b.children.end(),
                    [](const auto& x, const auto& y) { return x->key == y->key && same_content(*x, *y); });
}

std::unique_ptr<Node> copy_of(const Node& node) {
  auto copy = std::make_unique<Node>();
  copy->kind = node.kind;
  copy->text = node.text;
  copy->key = node.key;
  copy->file = node.file;
  copy->line = node.line, copy->column = node.column;
  copy->key_line = node.key_line, copy->key_column = node.key_column;
  copy->added = node.added;
  copy->scope = node.scope;
  copy->children.reserve(node.children.size());
  for (const auto& child : node.children) {
    copy->children.push_back(copy_of(*child));
    copy->children.back()->parent = copy.get();
  }
  return copy;
}

}  // namespace sinewright::reading
