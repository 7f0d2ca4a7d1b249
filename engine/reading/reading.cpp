#include "reading/reading.h"

#include <algorithm>
#include <memory>

#include <fmt/format.h>

#include "quantity/nearest.h"
#include "reading/complaint.h"
#include "reading/mesh_file.h"
#include "reading/override.h"
#include "reading/recorded_motion.h"
#include "reading/resolve.h"

namespace sinewright::reading {
namespace {

namespace fs = std::filesystem;

const std::vector<std::string> kFileKinds = {"model", "parts", "scenario", "limit", "study"};
const std::vector<std::string> kPartsMaps = {"materials", "surfaces", "friction_pairs",
                                             "lines",     "motors",   "gearheads"};

// A file taken apart, of the right kind by its first key.
std::unique_ptr<Node> open_file(Source& source, const fs::path& path, const std::string& kind) {
  std::unique_ptr<Node> root = source.document(path);
  if (root->kind != Node::Kind::map)
    throw complaint(root->place(), "the file is no YAML map",
                    fmt::format("keys, the first being 'sinewright: {}'", kind), "");
  const Node* written = root->find("sinewright");
  const std::string needed = fmt::format("sinewright: {}", kind);
  if (written == nullptr)
    throw missing(*root, "sinewright", needed, "the file is read as a " + kind + " file");
  if (written->kind != Node::Kind::text || written->text != kind) {
    const bool other = std::find(kFileKinds.begin(), kFileKinds.end(), written->text) != kFileKinds.end();
    throw not_allowed(
        *written, needed,
        other ? fmt::format("this is a {} file where a {} file is wanted", written->text, kind) : "");
  }
  return root;
}

bool names_part(const Override& change) {
  return change.keys.size() >= 2 &&
         std::find(kPartsMaps.begin(), kPartsMaps.end(), change.keys[0]) != kPartsMaps.end();
}

// Applies a change to a part in the file that defines it.
void apply_to_part(const Override& change, Node& model, const std::vector<std::unique_ptr<Node>>& parts) {
  std::vector<Node*> files = {&model};
  for (const auto& part : parts) files.push_back(part.get());
  std::vector<std::string> known;
  for (Node* file : files) {
    const Node* section = file->find(change.keys[0]);
    if (section == nullptr) continue;
    if (section->find(change.keys[1]) != nullptr) {
      apply_override(*file, change);
      return;
    }
    for (const std::string& name : known_names(*section)) known.push_back(name);
  }
  const std::string near = nearest(change.keys[1], known);
  throw complaint({change.origin + " " + change.written, 0, 0},
                  fmt::format("{} has no '{}'", change.keys[0], change.keys[1]),
                  known.empty() ? "" : "one of: " + listed(known),
                  near.empty() ? "" : fmt::format("the nearest known one is '{}'", near));
}

// The key 'use' is needed before the tables read the whole, to find which file an override means.
std::vector<fs::path> used_files(const Node& root, const fs::path& folder) {
  std::vector<fs::path> files;
  const Node* use = root.find("use");
  if (use == nullptr || use->kind != Node::Kind::list)
    return files;  // what is wrong with it, the tables will say
  for (const auto& item : use->children) {
    if (item->kind != Node::Kind::text || item->text.empty()) return {};
    const fs::path file = (folder / item->text).lexically_normal();
    if (std::find(files.begin(), files.end(), file) != files.end())
      throw not_allowed(*item, "each parts file once");
    files.push_back(file);
  }
  return files;
}

// An unreadable file that another one names is reported at the place that names it.
template <class Open>
decltype(auto) open_named(const Node& node, Open open) {
  try {
    return open();
  } catch (const geometry::MeshProblem&) {
    throw;
  } catch (const InvalidInput& error) {
    const Place place = node.place();
    throw InvalidInput(
        fmt::format("{}\n  used by: {}{}", error.what(), place.file,
                    place.line > 0 ? fmt::format(":{}:{}", place.line, place.column) : std::string()));
  }
}

// Shapes of a file in this folder. What is wrong with a mesh is said at the key that names its file.
Forms forms_from(Source& source, const fs::path& folder) {
  return [&source, folder](const WrittenForm& form) -> model::Shape {
    if (const auto* shape = std::get_if<model::Shape>(&form)) return *shape;
    const auto& written = std::get<WrittenMesh>(form);
    const Node& node = *written.file.node;
    try {
      return settled_mesh(written, open_named(node, [&]() -> const geometry::MeshDigest& {
        return source.mesh((folder / written.file.text).lexically_normal());
      }));
    } catch (const geometry::MeshProblem& problem) {
      throw complaint(node.place(), fmt::format("{} = {} is not allowed: {}", node.path(), shown(node), problem.trouble),
                      problem.needed, problem.hint);
    }
  };
}

// Recorded motions of files in this folder.
Motions motions_from(Source& source, const fs::path& folder) {
  return [&source, folder](const Name& name) {
    const Source::File& file = open_named(*name.node, [&]() -> const Source::File& { return source.text((folder / name.text).lexically_normal()); });
    return recorded_motion(file, name.text);
  };
}

// A model's files with all changes in them, not read yet.
struct OpenedModel {
  std::unique_ptr<Node> root;
  std::vector<std::unique_ptr<Node>> parts;
};

OpenedModel open_model(Source& source, const fs::path& path, const std::vector<std::string>& changes, const std::string& origin,
                       const std::vector<std::string>& overrides) {
  OpenedModel opened{open_file(source, path, "model"), {}};
  std::vector<Override> part_changes;
  const auto take = [&](Override change) {
    if (names_part(change))
      part_changes.push_back(std::move(change));
    else
      apply_override(*opened.root, change);
  };
  for (const std::string& written : changes) take(parse_override(written, origin));
  for (const std::string& written : overrides) take(parse_override(written));
  const std::vector<fs::path> used = used_files(*opened.root, path.parent_path());
  for (std::size_t i = 0; i < used.size(); ++i)
    opened.parts.push_back(
        open_named(*opened.root->find("use")->children[i], [&] { return open_file(source, used[i], "parts"); }));
  for (const Override& change : part_changes) apply_to_part(change, *opened.root, opened.parts);
  return opened;
}

// A scenario's own file, read, and what is needed to open its model.
struct OpenedScenario {
  std::unique_ptr<Node> root;
  ScenarioFile file;
  fs::path model_path;
  std::vector<std::string> model_overrides;
};

OpenedScenario open_scenario(Source& source, const fs::path& path, const std::vector<std::string>& overrides) {
  OpenedScenario opened{open_file(source, path, "scenario"), {}, {}, {}};
  const std::string to_model = "model.";
  for (const std::string& written : overrides) {
    const std::size_t begin = written.find_first_not_of(" \t");
    if (begin != std::string::npos && written.compare(begin, to_model.size(), to_model) == 0)
      opened.model_overrides.push_back(written.substr(begin + to_model.size()));
    else
      apply_override(*opened.root, parse_override(written));
  }
  static const Kind<ScenarioFile> scenario_kind = scenario_file();
  opened.file = scenario_kind.read(*opened.root);
  opened.file.place = {*opened.root->file, 1, 1};
  opened.model_path = (path.parent_path() / opened.file.model).lexically_normal();
  return opened;
}

// What stands at a path of keys, if it is a number.
std::optional<Quantity> quantity_below(const Node& root, const std::vector<std::string>& keys) {
  const Node* node = &root;
  for (const std::string& key : keys) {
    const auto child = std::find_if(node->children.begin(), node->children.end(), [&](const auto& one) { return one->key == key; });
    if (child == node->children.end()) return std::nullopt;
    node = child->get();
  }
  if (node->kind != Node::Kind::text) return std::nullopt;
  try {
    return parse_any_quantity(node->text);
  } catch (const QuantityProblem&) {
    return std::nullopt;
  }
}

}  // namespace

model::Model read_model(Source& source, const fs::path& path, const std::vector<std::string>& overrides) {
  return read_model(source, path, {}, "", overrides);
}

model::Model read_model(Source& source, const fs::path& path, const std::vector<std::string>& changes,
                        const std::string& origin, const std::vector<std::string>& overrides) {
  const OpenedModel opened = open_model(source, path, changes, origin, overrides);
  // Made once: the descriptions never change, and making them costs as much as reading a file.
  static const Kind<PartsFile> parts_kind = parts_file();
  static const Kind<ModelFile> model_kind = model_file();
  std::vector<PartsFile> parts;
  for (const auto& part_root : opened.parts) parts.push_back(parts_kind.read(*part_root));
  return resolve_model(model_kind.read(*opened.root), parts, forms_from(source, path.parent_path()));
}

model::Scenario read_scenario(Source& source, const fs::path& path,
                              const std::vector<std::string>& overrides) {
  OpenedScenario opened = open_scenario(source, path, overrides);
  ScenarioFile& file = opened.file;
  model::Model model = open_named(*opened.root->find("model"), [&] {
    return read_model(source, opened.model_path, file.change, *opened.root->file + ": change", opened.model_overrides);
  });
  return resolve_scenario(file, std::move(model), forms_from(source, path.parent_path()), motions_from(source, path.parent_path()));
}

std::optional<Quantity> written_quantity(Source& source, const fs::path& path, const std::vector<std::string>& overrides,
                                         const std::string& key) {
  const OpenedScenario opened = open_scenario(source, path, overrides);
  Override wanted = parse_override(key + "=0", "key");
  if (wanted.keys.front() != "model") return quantity_below(*opened.root, wanted.keys);
  wanted.keys.erase(wanted.keys.begin());
  const OpenedModel model = open_model(source, opened.model_path, opened.file.change, *opened.root->file + ": change",
                                       opened.model_overrides);
  if (names_part(wanted))
    for (const auto& part : model.parts)
      if (const auto found = quantity_below(*part, wanted.keys)) return found;
  return quantity_below(*model.root, wanted.keys);
}

model::LimitStudy read_limit(Source& source, const fs::path& path, const std::vector<std::string>& overrides) {
  const std::unique_ptr<Node> root = open_file(source, path, "limit");
  for (const std::string& written : overrides) apply_override(*root, parse_override(written));
  static const Kind<LimitFile> limit_kind = limit_file();
  LimitFile file = limit_kind.read(*root);
  file.study.scenario = (path.parent_path() / file.study.scenario).lexically_normal().string();
  open_named(*root->find("scenario"), [&] { return open_file(source, file.study.scenario, "scenario"); });
  return file.study;
}

model::Study read_study(Source& source, const fs::path& path, const std::vector<std::string>& overrides) {
  const std::unique_ptr<Node> root = open_file(source, path, "study");
  for (const std::string& written : overrides) apply_override(*root, parse_override(written));
  static const Kind<StudyFile> study_kind = study_file();
  StudyFile file = study_kind.read(*root);
  for (model::StudyRun& run : file.study.runs) {
    std::string& below = run.limit.empty() ? run.scenario : run.limit;
    const std::string kind = run.limit.empty() ? "scenario" : "limit";
    below = (path.parent_path() / below).lexically_normal().string();
    open_named(*root->find("runs")->find(run.name)->find(kind), [&] { return open_file(source, below, kind); });
  }
  return file.study;
}

}  // namespace sinewright::reading
