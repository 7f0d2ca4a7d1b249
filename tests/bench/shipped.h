#pragma once

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "reading/reading.h"

/// Every scenario file that ships, in alphabetical order.
inline std::vector<std::filesystem::path> shipped_scenarios() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(SINEWRIGHT_SOURCE_DIR "/scenarios"))
    if (entry.path().extension() == ".yaml") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

inline sinewright::model::Scenario read_shipped(const std::filesystem::path& file, double tolerance = 0) {
  sinewright::reading::Source source;
  auto scenario = sinewright::reading::read_scenario(source, file);
  if (tolerance > 0) scenario.solver.tolerance = tolerance;
  return scenario;
}
