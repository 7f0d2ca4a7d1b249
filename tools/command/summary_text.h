#pragma once

#include <string>

#include "simulation/run.h"
#include "simulation/system.h"

namespace sinewright::tool {

/// The summary as an engineer reads it.
[[nodiscard]] std::string summary_text(const simulation::System& system, const simulation::RunResult& result);

/// The same numbers for machines: SI units, keys as in the record's /summary. `record` is the path of the record.
[[nodiscard]] std::string summary_json(const simulation::System& system, const simulation::RunResult& result,
                                       const std::string& record);

/// A length of time, force and so on with a fitting unit and four digits, "—" for a number that did not occur.
[[nodiscard]] std::string show(double si, const char* unit, const char* shown_unit);

}  // namespace sinewright::tool
