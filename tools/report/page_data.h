#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace sinewright::report {

struct PageOptions {
  std::string title;  ///< empty: the names of the scenarios
};

struct PageData {
  std::string title;
  std::string json;  ///< docs/report-page.md; holds no '<'
};

/// What the page of a review shows. Records of runs come first in the page, in the order given; those of
/// limits and the tables of studies are attached to them, or make a page of their own.
/// @throws InvalidInput if there are limits alone; record::RecordError for a file that cannot be read.
[[nodiscard]] PageData page_data(const std::vector<std::filesystem::path>& files, const PageOptions& options);

/// The whole page: one HTML file that needs nothing else. @param data  the JSON of page_data.
[[nodiscard]] std::string page(const std::string& data, const std::string& title);

}  // namespace sinewright::report
