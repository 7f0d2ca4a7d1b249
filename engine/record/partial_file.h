#pragma once

// The file of a run that has not finished. It must open, and be right, whenever the run is killed. How:
//
// - Chunks are large and neither filtered nor cached, so rows go straight to their place in the file, and the index of
//   chunks changes only once in kPartialChunkRows rows. (The gaps cost no disk: the file is sparse.)
// - The index has room for 512 chunks (8 million rows) in its first node. A node that overflows splits in place, the one
//   moment at which a kill can cost rows that were flushed before.
// - A flush then touches nothing of what was there before but the lengths of the data sets. Every object begins on a
//   memory page of its own, because a kill can end a write between two pages, and half a header fails its checksum.
// - After the flush the counts of rows and events that are whole go into /committed with one small write in place,
//   past HDF5's sieve buffer. A reader goes by them, so a flush that was cut short does not count.
// - The file is made as long as HDF5 is about to say it is before HDF5 says so; else a kill between the two would leave
//   a file that "is truncated".
// - HDF5 keeps texts of variable length in a heap that it lengthens in place, so the texts of events stand one after the
//   other as plain bytes here: /events/text, and /events/ends with the byte after each kind, subject and detail.
// - Nothing is written on closing: what is committed is all there is.
//
// Compressing while running would mean to rewrite a chunk for each flush, and a chunk cut off in between is lost.
// tests/record/every_write_test.cpp looks at the file after every single write, killed_run_test.cpp kills real runs.

#include <filesystem>

#include "record/layout.h"

namespace sinewright::record {

inline constexpr hsize_t kPartialChunkRows = 16384;

class PartialFile {
 public:
  /// @throws CallFailure
  PartialFile(const std::filesystem::path& path, const std::vector<Channel>& channels, const Inputs& inputs);

  /// Adds rows and events and makes them count.
  /// @param columns  for /time and then each channel, its n rows, row-major.
  /// @throws CallFailure; what was committed before stays.
  void commit(const std::vector<std::vector<double>>& columns, hsize_t n, const std::vector<Event>& events);

  [[nodiscard]] hsize_t n_rows() const { return n_rows_; }
  [[nodiscard]] hsize_t n_events() const { return n_events_; }
  /// Data set of /time (0) or a channel (1 + its index).
  [[nodiscard]] hid_t dataset(std::size_t index) const { return datasets_[index].id(); }
  [[nodiscard]] hid_t file() const { return file_.id(); }

 private:
  void write_events(const std::vector<Event>& events);
  void settle(hsize_t n_rows, hsize_t n_events);

  NewFile file_;  // first, so that it closes last
  std::vector<Handle> datasets_;
  std::vector<int> widths_;
  Handle event_times_, event_ends_, event_text_;
  Handle committed_;
  hsize_t n_rows_ = 0, n_events_ = 0, n_text_ = 0;
};

/// The first n events of a partial file. @throws CallFailure
[[nodiscard]] std::vector<Event> read_partial_events(hid_t file, hsize_t n);

}  // namespace sinewright::record
