#pragma once

#include <string>

#include "model/control.h"
#include "reading/source.h"

namespace sinewright::reading {

/// A motion recorded as a table of two columns, time and angle: a head "time [s], shaft [deg]" with a unit in each cell, then one pair of
/// numbers a line, times strictly rising. Comma, semicolon or tab between the columns; lines that begin with # are left out.
/// @param name  that it goes by.
/// @throws InvalidInput with line and column.
[[nodiscard]] model::SetRecorded recorded_motion(const Source::File& file, const std::string& name);

}  // namespace sinewright::reading
