// A kill falls between two system calls, or between two memory pages of one. This test notes every system call by which
// a run changes its partial file, then repeats them one by one on a copy and reads it after each.

#include <dlfcn.h>
#include <sys/types.h>
#include <unistd.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdio>
#include <string>
#include <vector>

#include "record/reader.h"
#include "record/writer.h"
#include "sample.h"

namespace {

struct Change {
  off_t offset = 0;    // or the new length
  std::string bytes;   // empty: a change of length
};

std::vector<Change>* changes = nullptr;  // where to note them; null: nowhere

}  // namespace

// These stand before those of the C library, for HDF5 too.
extern "C" ssize_t pwrite64(int file, const void* bytes, size_t size, off_t offset) {
  using Call = ssize_t (*)(int, const void*, size_t, off_t);
  static const auto call = reinterpret_cast<Call>(dlsym(RTLD_NEXT, "pwrite64"));
  const auto written = call(file, bytes, size, offset);
  if (changes && written > 0)
    changes->push_back({offset, {static_cast<const char*>(bytes), static_cast<std::size_t>(written)}});
  return written;
}
extern "C" ssize_t pwrite(int file, const void* bytes, size_t size, off_t offset) {
  return pwrite64(file, bytes, size, offset);
}
extern "C" int ftruncate64(int file, off_t length) noexcept {
  using Call = int (*)(int, off_t);
  static const auto call = reinterpret_cast<Call>(dlsym(RTLD_NEXT, "ftruncate64"));
  if (changes) changes->push_back({length, {}});
  return call(file, length);
}
extern "C" int ftruncate(int file, off_t length) noexcept { return ftruncate64(file, length); }

using namespace sinewright::record;

TEST_CASE("killed run: the partial file is right after each single write of it", "[kill]") {
  constexpr std::size_t n_rows = 18000;  // beyond a chunk
  constexpr off_t page = 4096;
  const sample::Folder folder;
  const auto file = folder / "run.h5", copy = folder / "copy.h5";

  std::vector<Change> noted;
  std::size_t n_before_run = 0;
  struct Flush {
    std::size_t n_changes, n_rows;
  };
  std::vector<Flush> flushes;  // after so many changes, so many rows must be there
  {
    changes = &noted;
    Writer writer(file, sample::channels(), sample::inputs());
    n_before_run = noted.size();
    std::vector<double> values(sample::width());
    for (std::size_t row = 0; row < n_rows; ++row) {
      sample::fill(row, values);
      if (sample::has_event(row)) writer.event(sample::event_of(row));
      writer.append(sample::time_of(row), values);
      if (row % 900 == 899) {
        writer.flush();
        flushes.push_back({noted.size(), row + 1});
      }
    }
    changes = nullptr;
  }
  REQUIRE(n_before_run > 0);
  REQUIRE(flushes.size() == 20);
  REQUIRE(noted.size() == flushes.back().n_changes);

  std::FILE* stream = std::fopen(copy.c_str(), "w+b");
  REQUIRE(stream != nullptr);
  const int target = fileno(stream);
  const auto write = [&](off_t offset, const char* bytes, off_t size) {
    REQUIRE(pwrite(target, bytes, static_cast<std::size_t>(size), offset) == size);
  };
  std::size_t looks = 0, bad = 0, next_flush = 0, least = 0;
  const auto look = [&](std::size_t change) {
    if (change < n_before_run) return;  // the file has not got its partial name yet
    CAPTURE(change, least);
    ++looks;
    try {
      const auto record = read_record(copy);
      const bool good = record.time.size() >= least && record.time.size() <= n_rows && sample::count_wrong(record) == 0;
      CHECK(good);
      bad += good ? 0 : 1;
    } catch (const RecordError& error) {
      FAIL_CHECK(error.what());
      ++bad;
    }
  };
  for (std::size_t i = 0; i < noted.size() && bad < 5; ++i) {
    const auto& change = noted[i];
    const auto size = static_cast<off_t>(change.bytes.size());
    if (size == 0) REQUIRE(ftruncate(target, change.offset) == 0);
    // Page by page, as the kernel copies.
    for (off_t done = 0; done < size;) {
      const off_t part = std::min(size - done, page - (change.offset + done) % page);
      write(change.offset + done, change.bytes.data() + done, part);
      done += part;
      if (done < size && (done == part || size - done <= page)) look(i);  // after the first page and before the last
    }
    if (next_flush < flushes.size() && i + 1 == flushes[next_flush].n_changes) least = flushes[next_flush++].n_rows;
    look(i);
  }
  std::fclose(stream);
  CHECK(next_flush == flushes.size());
  CHECK(looks > 500);
}
