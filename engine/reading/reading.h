#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/limit.h"
#include "model/scenario.h"
#include "model/study.h"
#include "quantity/quantity.h"
#include "reading/source.h"

/// YAML files to models and scenarios. The keys are described in docs/user-guide/yaml.md, which is made from
/// the same tables that read the files.
namespace sinewright::reading {

/// Reads a model file and the parts files it uses, checks everything that can be checked without computing,
/// and resolves names to indices.
///
/// @param overrides  "key.path=value", applied to the text before it is read:
/// "drives.flexor.current_limit=0.5 A".
///                   List items go by number: "cords.flexor.path.0.at=[0 mm, 1 mm, 0 mm]". A part, such as
///                   "lines.braid.diameter=0.6 mm", is found in whichever file defines it.
/// @throws InvalidInput with file, line, column, key, value, what is needed and a hint.
[[nodiscard]] model::Model read_model(Source& source, const std::filesystem::path& path,
                                      const std::vector<std::string>& overrides = {});

/// The same with the changes that a scenario asks for, applied before the overrides. @param origin  names the
/// scenario.
[[nodiscard]] model::Model read_model(Source& source, const std::filesystem::path& path,
                                      const std::vector<std::string>& changes, const std::string& origin,
                                      const std::vector<std::string>& overrides);

/// Reads a scenario file and its model. Overrides that begin with "model." go to the model's files.
/// @throws InvalidInput as read_model.
[[nodiscard]] model::Scenario read_scenario(Source& source, const std::filesystem::path& path,
                                            const std::vector<std::string>& overrides = {});

/// Reads a limit file; the scenario that it names is left for the study to read, with the changes of each run.
/// @throws InvalidInput as read_model.
[[nodiscard]] model::LimitStudy read_limit(Source& source, const std::filesystem::path& path,
                                           const std::vector<std::string>& overrides = {});

/// Reads a study file; the scenarios and limits that it names are left for the study to read, with the changes of each design.
/// @throws InvalidInput as read_model.
[[nodiscard]] model::Study read_study(Source& source, const std::filesystem::path& path,
                                      const std::vector<std::string>& overrides = {});

/// The number that stands at a key path of a scenario (or, below "model.", of its model and parts), with the overrides in place;
/// nothing if there is no number, for instance where the file leaves the key out.
/// @throws InvalidInput as read_scenario, short of what only shows when names are resolved.
[[nodiscard]] std::optional<Quantity> written_quantity(Source& source, const std::filesystem::path& scenario,
                                                       const std::vector<std::string>& overrides, const std::string& key);

/// The JSON Schema (draft 2020-12) of a file kind: "model", "parts", "scenario", "limit" or "study". For editors: it knows
/// keys, names and the form of quantities, while dimensions, ranges with units and references are checked on
/// reading only.
/// @throws InvalidInput for another kind.
[[nodiscard]] std::string json_schema(std::string_view kind);

/// The reference of all keys as Markdown, for docs/user-guide/yaml.md.
[[nodiscard]] std::string yaml_reference();

/// The list of units as Markdown, for docs/user-guide/units.md.
[[nodiscard]] std::string unit_reference();

}  // namespace sinewright::reading
