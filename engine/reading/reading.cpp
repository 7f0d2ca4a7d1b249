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
#include "reading/seat_finger.h"

namespace sinewright::reading {
namespace {

namespace fs = std::filesystem;

const std::vector<std::string> kFileKinds = {"model", "parts", "scenario", "limit", "study"};
const std::vector<std::string> kPartsMaps = {"materials", "surfaces", "friction_pairs", "bushings", "lines", "motors", "gearheads"};

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

// Applies a change to a part in the files that define it: more than one where fingers are made from one file.
void apply_to_part(const Override& change, const std::vector<Node*>& files, const std::string& hint = {}) {
  std::vector<std::string> known;
  bool found = false;
  for (Node* file : files) {
    const Node* section = file->find(change.keys[0]);
    if (section == nullptr) continue;
    if (section->find(change.keys[1]) != nullptr) {
      apply_override(*file, change);
      found = true;
      continue;
    }
    for (const std::string& name : known_names(*section)) known.push_back(name);
  }
  if (found) return;
  const std::string near = nearest(change.keys[1], known);
  throw complaint({change.origin + " " + change.written, 0, 0},
                  fmt::format("{} has no '{}'", change.keys[0], change.keys[1]),
                  known.empty() ? "" : "one of: " + listed(known),
                  !hint.empty() ? hint : near.empty() ? "" : fmt::format("the nearest known one is '{}'", near));
}

// The key 'use' is needed before the tables read the whole, to find which file an override means.
std::vector<fs::path> used_files(const Node& root) {
  const fs::path folder = fs::path(*root.file).parent_path();
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

// A file that another one names, relative to that one's folder.
fs::path beside(const Node& node, const std::string& name) {
  return (fs::path(*root_of(node).file).parent_path() / name).lexically_normal();
}

// Shapes of files. What is wrong with a mesh is said at the key that names its file.
Forms forms_from(Source& source) {
  return [&source](const WrittenForm& form) -> model::Shape {
    if (const auto* shape = std::get_if<model::Shape>(&form)) return *shape;
    const auto& written = std::get<WrittenMesh>(form);
    const Node& node = *written.file.node;
    try {
      return settled_mesh(written, open_named(node, [&]() -> const geometry::MeshDigest& {
        return source.mesh(beside(node, written.file.text));
      }));
    } catch (const geometry::MeshProblem& problem) {
      throw complaint(node.place(), fmt::format("{} = {} is not allowed: {}", node.path(), shown(node), problem.trouble),
                      problem.needed, problem.hint);
    }
  };
}

// Recorded motions.
Motions motions_from(Source& source) {
  return [&source](const Name& name) {
    const Source::File& file = open_named(*name.node, [&]() -> const Source::File& { return source.text(beside(*name.node, name.text)); });
    return recorded_motion(file, name.text);
  };
}

// A model's file with all changes in it, not read yet, and those of its fingers.
struct OpenedFile {
  std::unique_ptr<Node> root;
  std::vector<OpenedFile> fingers;  // as in the map `fingers`
};

struct OpenedModel : OpenedFile {
  std::vector<std::unique_ptr<Node>> parts;  // of all of them, each once
};

// Whether a hand's file itself speaks of the drive of a finger that a change means.
bool speaks_of_drive(const Node& root, const Override& change) {
  const Node* map = &root;
  std::size_t at = 0;
  for (; at < 3 && map != nullptr; ++at) map = map->find(change.keys[at]);
  return map != nullptr && entry_along(*map, change.keys, at) != nullptr;
}

// Whether a change to a finger means where it is seated, not what its own file says. @param root  of the hand's file.
bool means_seat(const Override& change, const Node& root) {
  static const std::vector<std::string> keys = {"model", "at", "turned", "supply", "leave_out"};
  if (change.keys.size() < 3) return true;
  if (change.keys[2] == "drives") {
    if (change.keys.size() < 4) return true;
    for (std::size_t i = 4; i < change.keys.size(); ++i) {
      if (change.keys[i] == "body" || change.keys[i] == "lead") return true;
      // These both files can say; the hand's word counts once it speaks of the drive.
      if (change.keys[i] == "shaft" || change.keys[i] == "inside") return speaks_of_drive(root, change);
    }
    return false;
  }
  return std::find(keys.begin(), keys.end(), change.keys[2]) != keys.end();
}

void collect_roots(OpenedFile& file, std::vector<Node*>& roots) {
  if (file.root == nullptr) return;
  roots.push_back(file.root.get());
  for (OpenedFile& finger : file.fingers) collect_roots(finger, roots);
}

// Opens a model file and those of its fingers, with the changes that concern no parts. @param above  files that lead here.
OpenedFile open_model_file(Source& source, const fs::path& path, const std::vector<Override>& changes, const std::string& scope,
                           std::vector<fs::path> above) {
  OpenedFile opened{open_file(source, path, "model"), {}};
  opened.root->scope = scope;
  above.push_back(path);
  std::vector<Override> of_fingers, of_own_parts;
  for (const Override& change : changes) {
    if (change.keys[0] == "fingers" && !means_seat(change, *opened.root))
      of_fingers.push_back(change);
    else if (names_part(change))
      of_own_parts.push_back(change);
    else
      apply_override(*opened.root, change);
  }
  for (const Override& change : of_own_parts)
    apply_to_part(change, {opened.root.get()}, "a part that is not of the finger's own file is shared: leave out the finger's name");

  const Node* fingers = opened.root->find("fingers");
  std::vector<std::string> known;
  if (fingers != nullptr && fingers->kind == Node::Kind::map) known = known_names(*fingers);
  for (const Override& change : of_fingers)
    if (std::find(known.begin(), known.end(), change.keys[1]) == known.end())
      throw complaint({change.origin + " " + change.written, 0, 0}, fmt::format("there is no finger '{}'", change.keys[1]),
                      known.empty() ? "a model with 'fingers'" : "one of: " + listed(known), "");
  if (known.empty()) return opened;
  for (const auto& child : fingers->children) {
    const Node* model = child->find("model");
    // What is wrong with it, the tables will say.
    if (model == nullptr || model->kind != Node::Kind::text || model->text.empty()) {
      opened.fingers.emplace_back();
      continue;
    }
    const fs::path file = beside(*model, model->text);
    if (std::find(above.begin(), above.end(), file) != above.end())
      throw not_allowed(*model, "a file that does not, in the end, have this one as its finger", "these files go round in a circle");
    std::vector<Override> below;
    for (const Override& change : of_fingers) {
      if (change.keys[1] != child->key) continue;
      below.push_back(change);
      below.back().keys.erase(below.back().keys.begin(), below.back().keys.begin() + 2);
    }
    opened.fingers.push_back(
        open_named(*model, [&] { return open_model_file(source, file, below, scope + child->key + ".", above); }));
  }
  return opened;
}

OpenedModel open_model(Source& source, const fs::path& path, const std::vector<std::string>& changes, const std::string& origin,
                       const std::vector<std::string>& overrides) {
  std::vector<Override> part_changes, others;
  const auto take = [&](Override change) { (names_part(change) ? part_changes : others).push_back(std::move(change)); };
  for (const std::string& written : changes) take(parse_override(written, origin));
  for (const std::string& written : overrides) take(parse_override(written));
  OpenedModel opened{open_model_file(source, path.lexically_normal(), others, "", {}), {}};

  std::vector<Node*> files;
  collect_roots(opened, files);
  std::vector<fs::path> taken;
  const std::size_t models = files.size();
  for (std::size_t f = 0; f < models; ++f) {
    const std::vector<fs::path> used = used_files(*files[f]);
    for (std::size_t i = 0; i < used.size(); ++i) {
      if (std::find(taken.begin(), taken.end(), used[i]) != taken.end()) continue;
      taken.push_back(used[i]);
      opened.parts.push_back(
          open_named(*files[f]->find("use")->children[i], [&] { return open_file(source, used[i], "parts"); }));
    }
  }
  for (const auto& part : opened.parts) files.push_back(part.get());
  for (const Override& change : part_changes) apply_to_part(change, files);
  return opened;
}

// What a model file says, its fingers seated.
ModelFile read_opened(const OpenedFile& opened) {
  // Made once: the descriptions never change, and making them costs as much as reading a file.
  static const Kind<ModelFile> kind = model_file();
  ModelFile file = kind.read(*opened.root);
  for (std::size_t i = 0; i < file.fingers.size(); ++i) seat_finger(file.fingers[i], read_opened(opened.fingers[i]), file);
  return file;
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
  for (std::size_t at = 0; at < keys.size();) {
    node = entry_along(*node, keys, at);
    if (node == nullptr) return std::nullopt;
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
  static const Kind<PartsFile> parts_kind = parts_file();
  const ModelFile file = read_opened(opened);
  std::vector<PartsFile> parts;
  for (const auto& part_root : opened.parts) parts.push_back(parts_kind.read(*part_root));
  return resolve_model(file, parts, forms_from(source));
}

model::Scenario read_scenario(Source& source, const fs::path& path,
                              const std::vector<std::string>& overrides) {
  OpenedScenario opened = open_scenario(source, path, overrides);
  ScenarioFile& file = opened.file;
  model::Model model = open_named(*opened.root->find("model"), [&] {
    return read_model(source, opened.model_path, file.change, *opened.root->file + ": change", opened.model_overrides);
  });
  const Beside beside_file = [](const Name& name) { return beside(*name.node, name.text).string(); };
  return resolve_scenario(file, std::move(model), forms_from(source), motions_from(source), beside_file);
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
  const OpenedFile* file = &model;
  while (wanted.keys.front() == "fingers" && !means_seat(wanted, *file->root)) {
    const Node* fingers = file->root->find("fingers");
    const std::vector<std::string> known = fingers == nullptr ? std::vector<std::string>() : known_names(*fingers);
    const auto found = std::find(known.begin(), known.end(), wanted.keys[1]);
    if (found == known.end()) return std::nullopt;
    file = &file->fingers[static_cast<std::size_t>(found - known.begin())];
    wanted.keys.erase(wanted.keys.begin(), wanted.keys.begin() + 2);
  }
  return quantity_below(*file->root, wanted.keys);
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
