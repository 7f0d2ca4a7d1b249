#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <unordered_map>

#include "study/design_result.h"

namespace sinewright::study {

/// What a study has finished so far, on disk, so that a study that is killed at any moment can go on. A text file: a first line
/// with the fingerprint of the study, then one line for each finished design, each with a checksum. A line is written with one
/// call and never changed, so the death of the program (kill -9) costs at most the line it was writing; a torn line is known by
/// its checksum and cut off. If the machine itself loses power, lines that the operating system still held may be lost; they are
/// run again.
class Journal {
 public:
  /// Begins a new journal, or goes on with one.
  /// @param fingerprint  of everything the results depend on.
  /// @param resume       go on with what is there; without it, a journal that is there is replaced.
  /// @throws InvalidInput if the journal to go on with is of another study, or is not there; std::system_error on a failed call.
  Journal(const std::filesystem::path& path, const std::string& fingerprint, bool resume);
  Journal(const Journal&) = delete;
  Journal& operator=(const Journal&) = delete;

  [[nodiscard]] bool has(long long index) const { return lines_.contains(index); }
  [[nodiscard]] std::size_t size() const { return lines_.size(); }

  /// A finished design. @throws std::system_error, with nothing half-written, if the disk is full.
  void add(const DesignResult& result);

  /// Reads a line again; only places are kept in memory, so that a million designs fit.
  [[nodiscard]] DesignResult read(long long index) const;

  /// The study is done and its table is whole.
  void remove();

 private:
  struct File {  // closes itself, and so gives up its lock, also when the constructor throws
    int number = -1;
    ~File();
  };
  std::filesystem::path path_;
  File file_;
  long long end_ = 0;                                   // of the last whole line
  std::unordered_map<long long, long long> lines_;      // index → where its line begins
};

/// A number that differs, all but surely, when any of the texts does (FNV-1a, 64 bits, in hexadecimal digits).
[[nodiscard]] std::string fingerprint_of(const std::string& text);

}  // namespace sinewright::study
