#pragma once

#include <string>

#include "record/study_file.h"
#include "study/findings.h"

namespace sinewright::tool {

/// A number of a table as a reader sees it: "5 mm", an option's name, or "—".
[[nodiscard]] std::string cell(const record::StudyColumn& column, double si);

/// What a study found, for a terminal.
[[nodiscard]] std::string study_text(const record::StudyRecord& table, const study::Findings& findings);

/// The same for programs; numbers in SI.
[[nodiscard]] std::string study_json(const record::StudyRecord& table, const std::string& record, const std::string& csv);

}  // namespace sinewright::tool
