#pragma once

#include <optional>
#include <vector>

#include "record/study_file.h"

namespace sinewright::report {

/// What the files as they are, as the table holds them, give at each key that the study varies: SI, or the number of the option; nothing
/// where that cannot be told.
[[nodiscard]] std::vector<std::optional<double>> drawn_keys(const record::StudyRecord& table);

}  // namespace sinewright::report
