#pragma once

#include <filesystem>
#include <memory>
#include <span>
#include <stdexcept>
#include <vector>

#include "record/channel.h"

namespace sinewright::record {

/// The record cannot be written or read: full disk, no permission, foreign or damaged file. Message fit to print.
class RecordError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// Writes one record. Until `finish` the file stands beside its final name as "<stem>.partial.h5"; killed at any time it
/// opens and holds all but the last second of wall time. See docs/record.md for the layout.
class Writer {
 public:
  /// @param channels  data sets besides /time; each row has the sum of their widths.
  /// @throws RecordError if the file cannot be made.
  Writer(std::filesystem::path file, std::vector<Channel> channels, const Inputs& inputs);
  Writer(Writer&&) noexcept;
  Writer& operator=(Writer&&) noexcept;
  ~Writer();  ///< without `finish`: flushes what there is and leaves the partial file

  /// @throws RecordError on a full disk; what was flushed before stays readable.
  void append(double time, std::span<const double> row);
  void event(const Event& event);

  /// Writes summary and verdicts, closes, and gives the file its final name.
  /// @param outcome  "complete", or why the run ended early (then the data up to there are whole all the same).
  void finish(const std::vector<SummaryValue>& summary, const std::vector<Verdict>& verdicts,
              const std::string& outcome);

 private:
  struct Implementation;
  std::unique_ptr<Implementation> implementation_;
};

}  // namespace sinewright::record
