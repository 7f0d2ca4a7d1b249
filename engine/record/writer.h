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

/// Where a record stands until it is whole: "<stem>.partial.h5" beside its final name.
[[nodiscard]] std::filesystem::path partial_path(const std::filesystem::path& file);

/// Writes one record. Until `finish` the file stands beside its final name as "<stem>.partial.h5"; killed at any time it
/// opens and holds all but the last second of wall time. See docs/record.md for the layout.
class Writer {
 public:
  /// A partial file that an earlier run left there is replaced, unless that run is still writing it.
  ///
  /// @param channels  data sets besides /time; each row has the sum of their widths.
  /// @throws RecordError if the file cannot be made, two channels clash, or a channel has a name the layout needs.
  Writer(std::filesystem::path file, std::vector<Channel> channels, const Inputs& inputs);
  Writer(Writer&&) noexcept;
  Writer& operator=(Writer&&) noexcept;
  ~Writer();  ///< without `finish`: flushes what there is and leaves the partial file

  /// Rows are buffered and reach the file when the buffer is full or half a second of wall time has passed; in between
  /// this allocates nothing.
  ///
  /// @throws RecordError on a full disk; what was flushed before stays readable, and every later call throws again.
  /// @throws std::invalid_argument if the row has the wrong length.
  void append(double time, std::span<const double> row);
  void event(const Event& event);
  /// Brings everything up to now into the file. Only needed before a pause of more than half a second between rows,
  /// since nothing looks at the clock meanwhile.
  void flush();

  /// Writes the whole file with summary and verdicts, gives it its final name, and takes the partial one away. A file
  /// that had this name before is replaced in one go.
  ///
  /// @throws RecordError on a full disk; nothing new stands under the final name then, and the partial file stays.
  /// @param outcome  "complete", or why the run ended early (then the data up to there are whole all the same).
  void finish(const std::vector<SummaryValue>& summary, const std::vector<Verdict>& verdicts,
              const std::string& outcome, const Margins& margins = {});

 private:
  struct Implementation;
  std::unique_ptr<Implementation> implementation_;
};

}  // namespace sinewright::record
