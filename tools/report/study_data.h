#pragma once

#include <filesystem>

#include <nlohmann/json.hpp>

#include "record/study_file.h"

namespace sinewright::report {

/// A study's part of the page's data: docs/report-page.md. @param file  names the table.
/// @throws InvalidInput if the table has no rows.
[[nodiscard]] nlohmann::ordered_json study_data(const record::StudyRecord& table, const std::filesystem::path& file);

}  // namespace sinewright::report
