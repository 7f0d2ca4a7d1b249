#pragma once

#include <functional>
#include <string>
#include <vector>

#include "reading/written.h"

namespace sinewright::reading {

/// Gives the shape that is written, with the STL file of a mesh read.
using Forms = std::function<model::Shape(const WrittenForm&)>;

/// Gives the motion that a file records.
using Motions = std::function<model::SetRecorded(const Name&)>;

/// Gives the path of a file that another one names.
using Beside = std::function<std::string(const Name&)>;

/// Makes a model of what is written: names become indices, parents come before children, and conditions
/// between parts are checked.
/// @param parts  the parts files in the order of use.
[[nodiscard]] model::Model resolve_model(const ModelFile& file, const std::vector<PartsFile>& parts, const Forms& forms);

/// Adds to a model what the packing check needs; its bodies, drives and cords are there already, in any order.
void resolve_packing(const ModelFile& file, const Forms& forms, model::Model& model);

/// A scenario of what is written, whose model is resolved already.
[[nodiscard]] model::Scenario resolve_scenario(const ScenarioFile& file, model::Model model, const Forms& forms,
                                               const Motions& motions, const Beside& beside_file);

/// Index of a name in a list, or a message with the known ones.
[[nodiscard]] int find_name(const Name& name, const std::string& what, const std::vector<std::string>& known);

/// The solids with their densities looked up.
[[nodiscard]] std::vector<model::Solid> resolve_solids(const std::vector<WrittenSolid>& solids,
                                                       const std::vector<model::Material>& materials, const Forms& forms);

/// The names of some parts, in order.
template <class T>
std::vector<std::string> names_of(const std::vector<T>& parts) {
  std::vector<std::string> names;
  for (const T& part : parts) names.push_back(part.name);
  return names;
}

}  // namespace sinewright::reading
