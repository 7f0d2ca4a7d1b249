#include <algorithm>

#include "reading/complaint.h"
#include "reading/resolve.h"

namespace sinewright::reading {
namespace {

using model::PartName;
using model::Surroundings;

std::vector<int> bodies_of(const std::vector<Name>& names, const model::Model& model) {
  std::vector<int> list;
  for (const Name& name : names) list.push_back(find_name(name, "body", names_of(model.bodies)));
  return list;
}

Surroundings surroundings_of(const std::optional<std::vector<Name>>& names, const model::Model& model) {
  return names ? Surroundings(bodies_of(*names, model)) : std::nullopt;
}

std::vector<model::Occupied> occupied_of(const Named<WrittenOccupied>& written, const Forms& forms, const model::Model& model) {
  std::vector<model::Occupied> list;
  for (const Entry<WrittenOccupied>& entry : written)
    list.push_back({entry.name, forms(entry.value.shape), surroundings_of(entry.value.inside, model)});
  return list;
}

template <class T>
T& named_as(std::vector<T>& list, const std::string& name) {
  return *std::find_if(list.begin(), list.end(), [&](const T& one) { return one.name == name; });
}

// The parts of one body or drive that a pair can name.
std::vector<std::string> parts_of(const PartName& whole, const model::Model& model) {
  const auto i = static_cast<std::size_t>(whole.index);
  if (whole.of == PartName::Of::cord) return {};
  const bool body = whole.of == PartName::Of::body;
  std::vector<std::string> known = body ? std::vector<std::string>{"print"} : std::vector<std::string>{"motor", "gearhead", "pulley", "sensor"};
  for (const std::string& name : names_of(body ? model.bodies[i].occupies : model.drives[i].occupies)) known.push_back(name);
  return known;
}

// "drives.flexor.motor". Names of bodies, drives and cords may hold dots, names of their parts do not.
PartName part_of(const Name& name, const model::Model& model) {
  const std::string& text = name.text;
  const std::size_t dot = text.find('.');
  const std::string kind = text.substr(0, dot), rest = dot == std::string::npos ? "" : text.substr(dot + 1);
  PartName part;
  std::vector<std::string> known;
  if (kind == "bodies") {
    part.of = PartName::Of::body, known = names_of(model.bodies);
  } else if (kind == "drives") {
    part.of = PartName::Of::drive, known = names_of(model.drives);
  } else if (kind == "cords") {
    part.of = PartName::Of::cord, known = names_of(model.cords);
  } else {
    throw not_allowed(*name.node, "bodies.NAME, drives.NAME or cords.NAME, or a part of it such as drives.flexor.motor",
                      "the name alone does not say which: a drive and its cord may have the same");
  }
  const auto index_of = [&](const std::string& wanted) {
    const auto found = std::find(known.begin(), known.end(), wanted);
    return found == known.end() ? -1 : static_cast<int>(found - known.begin());
  };
  part.index = index_of(rest);
  if (part.index >= 0) return part;
  const std::size_t last = rest.rfind('.');
  if (last != std::string::npos) part.index = index_of(rest.substr(0, last));
  if (part.index < 0) {
    for (std::string& one : known) one = kind + "." + one;
    throw unknown_name(*name.node, kind == "bodies" ? "body" : kind == "drives" ? "drive" : "cord", known);
  }
  part.part = rest.substr(last + 1);
  std::vector<std::string> parts = parts_of(part, model);
  if (std::find(parts.begin(), parts.end(), part.part) == parts.end()) {
    if (parts.empty()) throw not_allowed(*name.node, kind + "." + rest.substr(0, last), "a cord has no parts");
    for (std::string& one : parts) one = kind + "." + rest.substr(0, last + 1) + one;
    throw unknown_name(*name.node, "part", parts);
  }
  return part;
}

}  // namespace

void resolve_packing(const ModelFile& file, const Forms& forms, model::Model& model) {
  for (const Entry<WrittenBody>& entry : file.bodies)
    named_as(model.bodies, entry.name).occupies = occupied_of(entry.value.occupies, forms, model);
  for (const Entry<WrittenDrive>& entry : file.drives) {
    model::Drive& drive = named_as(model.drives, entry.name);
    drive.shaft = entry.value.shaft;
    drive.inside = surroundings_of(entry.value.inside, model);
    drive.occupies = occupied_of(entry.value.occupies, forms, model);
  }
  if (!file.packing) return;
  const WrittenPacking& written = *file.packing;
  model.packing.clearance = written.clearance;
  model.packing.wrist = written.wrist;
  model.packing.palm = bodies_of(written.palm, model);
  for (const std::vector<Name>& pair : written.may_touch)
    model.packing.may_touch.emplace_back(part_of(pair[0], model), part_of(pair[1], model));
}

}  // namespace sinewright::reading
