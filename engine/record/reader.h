#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "record/channel.h"

namespace sinewright::record {

/// One whole record in memory.
struct Record {
  Inputs inputs;
  std::vector<double> time;
  std::vector<Channel> channels;
  std::vector<std::vector<double>> data;  ///< per channel, row-major, size time.size() × width
  std::vector<Event> events;
  std::vector<SummaryValue> summary;
  std::vector<Verdict> verdicts;
  Margins margins;      ///< empty in a partial file, and in one from before there were margins
  std::string outcome;  ///< "complete", a reason, or "partial" for a file whose run was killed

  /// @returns the index of a channel, −1 if the record has none of this path.
  [[nodiscard]] int find(const std::string& path) const;
  /// One column of a channel over time. @throws RecordError if there is no such channel.
  [[nodiscard]] std::vector<double> column(const std::string& path, int column = 0) const;
};

/// @throws RecordError, naming the file, if it is missing, foreign, truncated or of an unknown format version.
[[nodiscard]] Record read_record(const std::filesystem::path& file);

}  // namespace sinewright::record
