#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "model/scenario.h"
#include "record/limit_file.h"
#include "record/reader.h"

namespace sinewright::report {

/// A record with the scenario that it holds.
struct Run {
  std::filesystem::path file;
  record::Record record;
  model::Scenario scenario;
};

/// @throws record::RecordError, InvalidInput if its rows are too few to show.
[[nodiscard]] Run read_run(const std::filesystem::path& file);

/// One record's part of the page's data. @param limits  may tell what the run does not, such as the load that drives it back.
[[nodiscard]] nlohmann::ordered_json record_data(const Run& run, const std::string& label, const std::vector<record::LimitRecord>& limits);

/// A number of the summary as people read it: degrees, N·mm, °C.
[[nodiscard]] std::string value_text(double si, const std::string& unit);
/// "grip_force.distal" as "grip force, distal"; and the heading under which it stands.
[[nodiscard]] std::string title_of(const std::string& key);
[[nodiscard]] std::string group_of(const std::string& key);

}  // namespace sinewright::report
