#pragma once

// How a file gets its final name only when it is whole and on the disk.

#include <fcntl.h>
#include <unistd.h>

#include <fmt/format.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

#include "record/hdf5_calls.h"

namespace sinewright::record {

// A descriptor that closes itself, for the few system calls that HDF5 does not do.
class Descriptor {
 public:
  Descriptor(const std::filesystem::path& path, int flags) : number_(open(path.c_str(), flags | O_CLOEXEC)) {}
  ~Descriptor() {
    if (number_ >= 0) close(number_);
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  [[nodiscard]] int number() const { return number_; }

 private:
  int number_;
};

[[noreturn]] inline void fail_errno(const char* doing) { throw CallFailure(fmt::format("{}: {}", doing, std::strerror(errno))); }

[[nodiscard]] inline std::filesystem::path packing_path(const std::filesystem::path& file) {
  return std::filesystem::path(file).replace_extension(".packing.h5");
}

[[nodiscard]] inline std::filesystem::path folder_of(const std::filesystem::path& file) {
  return file.has_parent_path() ? file.parent_path() : std::filesystem::path(".");
}

inline void move_file(const std::filesystem::path& from, const std::filesystem::path& to) {
  if (std::rename(from.c_str(), to.c_str()) != 0) fail_errno("give it its name");
}

// Makes a file by `make(path)` under a name of its own and moves it to `to` once it is sound, so that nothing half made
// ever stands under `to`, and what stood there before goes only then.
template <class Make>
void make_then_move(const std::filesystem::path& packing, const std::filesystem::path& to, Make&& make) {
  try {
    make(packing);
    move_file(packing, to);
  } catch (...) {
    std::error_code ignored;
    std::filesystem::remove(packing, ignored);
    throw;
  }
}

inline void to_disk(const std::filesystem::path& path, int flags) {
  const Descriptor descriptor(path, flags);
  if (descriptor.number() < 0 || fsync(descriptor.number()) != 0) fail_errno("bring the file to the disk");
}

}  // namespace sinewright::record
