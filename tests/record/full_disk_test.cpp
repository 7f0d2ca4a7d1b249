#include <signal.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <unistd.h>

#include <catch2/catch.hpp>

#include "record/reader.h"
#include "record/writer.h"
#include "sample.h"

using namespace sinewright::record;

namespace {

/// While one lives, no file of this process grows beyond `bytes`: writes fail as they do on a full disk.
class FileSizeLimit {
 public:
  explicit FileSizeLimit(rlim_t bytes) : handler_(signal(SIGXFSZ, SIG_IGN)) {
    getrlimit(RLIMIT_FSIZE, &before_);
    rlimit limit = before_;
    limit.rlim_cur = bytes;
    setrlimit(RLIMIT_FSIZE, &limit);
  }
  ~FileSizeLimit() {
    setrlimit(RLIMIT_FSIZE, &before_);
    signal(SIGXFSZ, handler_);
  }
  FileSizeLimit(const FileSizeLimit&) = delete;
  FileSizeLimit& operator=(const FileSizeLimit&) = delete;

 private:
  rlimit before_{};
  void (*handler_)(int);
};

std::ptrdiff_t open_files() { return std::distance(std::filesystem::directory_iterator("/proc/self/fd"), {}); }

struct Attempt {
  std::string message;      // empty: finished
  std::size_t appended = 0;
};

Attempt attempt(const std::filesystem::path& file, std::size_t n_rows) {
  Attempt result;
  try {
    Writer writer(file, sample::channels(), sample::inputs());
    try {
      std::vector<double> values(sample::width());
      for (std::size_t row = 0; row < n_rows; ++row) {
        sample::fill(row, values);
        if (sample::has_event(row)) writer.event(sample::event_of(row));
        writer.append(sample::time_of(row), values);
        ++result.appended;
      }
      writer.finish({{"grip_force", 1, "N", "sum"}}, {}, "complete");
    } catch (const RecordError& error) {
      result.message = error.what();
      CHECK_THROWS_WITH(writer.append(0, std::vector<double>(sample::width())), Catch::Equals(result.message));
      CHECK_THROWS_WITH(writer.finish({}, {}, "complete"), Catch::Equals(result.message));
    }
  } catch (const RecordError& error) {
    result.message = error.what();
  }
  return result;
}

}  // namespace

TEST_CASE("full disk: an error that names file and cause, and nothing under the final name", "[errors]") {
  constexpr std::size_t n_rows = 20000;
  int in_constructor = 0, in_append = 0, in_finish = 0, finished = 0;
  for (rlim_t limit = 500; limit < 6'000'000; limit = limit * 23 / 20 + 77) {
    const sample::Folder folder;
    const auto file = folder / "run.h5";
    Attempt result;
    const auto open_before = open_files();
    {
      const FileSizeLimit full(limit);
      result = attempt(file, n_rows);
    }
    CAPTURE(limit, result.message, result.appended);
    CHECK_FALSE(std::filesystem::exists(folder / "run.packing.h5"));
    CHECK(open_files() == open_before);  // a close that fails leaks
    if (result.message.empty()) {
      ++finished;
      CHECK(read_record(file).time.size() == n_rows);
      CHECK(sample::count_wrong(read_record(file)) == 0);
      continue;
    }
    CHECK_THAT(result.message, Catch::Contains("cannot write the record " + folder.path().string()));
    CHECK_THAT(result.message, Catch::Contains("File too large"));
    CHECK_FALSE(std::filesystem::exists(file));
    const auto partial = partial_path(file);
    if (!std::filesystem::exists(partial)) {
      ++in_constructor;
      CHECK(result.appended == 0);
      continue;
    }
    (result.appended < n_rows ? in_append : in_finish) += 1;
    const auto record = read_record(partial);
    CHECK(record.outcome == "partial");
    CHECK(sample::count_wrong(record) == 0);
    CHECK(record.time.size() + 1024 >= result.appended);
    CHECK(result.appended + 1 >= record.time.size());
  }
  CHECK(in_constructor > 3);
  CHECK(in_append > 3);
  CHECK(finished > 0);
}

TEST_CASE("full disk: a real one is named as such", "[errors][root]") {
  const sample::Folder folder;
  const auto disk = folder / "disk";
  std::filesystem::create_directory(disk);
  if (geteuid() != 0 || mount("tmpfs", disk.c_str(), "tmpfs", 0, "size=3m") != 0) {
    WARN("needs the right to mount: not checked");
    return;
  }
  const auto result = attempt(disk / "run.h5", 40000);
  const bool final_name = std::filesystem::exists(disk / "run.h5");
  const auto record = read_record(disk / "run.partial.h5");
  REQUIRE(umount(disk.c_str()) == 0);
  CHECK_THAT(result.message, Catch::Contains("No space left on device"));
  CHECK_FALSE(final_name);
  CHECK(record.time.size() > 1000);
  CHECK(sample::count_wrong(record) == 0);
  CHECK(record.time.size() + 1024 >= result.appended);
}
