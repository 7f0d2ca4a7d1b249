#pragma once

#include <string>
#include <vector>

#include "simulation/run.h"
#include "simulation/system.h"
#include "strength/margin_watch.h"

namespace sinewright::tool {

/// The summary as an engineer reads it.
/// @param asked  margin for which `sizes` are needed; 0: none.
[[nodiscard]] std::string summary_text(const simulation::System& system, const simulation::RunResult& result,
                                       const simulation::Margins& margins, double asked,
                                       const std::vector<strength::NeededSize>& sizes);

/// The same numbers for machines: SI units, keys as in the record's /summary. `record` is the path of the record.
[[nodiscard]] std::string summary_json(const simulation::System& system, const simulation::RunResult& result,
                                       const simulation::Margins& margins, double asked,
                                       const std::vector<strength::NeededSize>& sizes, const std::string& record);

/// A length of time, force and so on with a fitting unit and four digits, "—" for a number that did not occur.
[[nodiscard]] std::string show(double si, const char* unit, const char* shown_unit);

}  // namespace sinewright::tool
