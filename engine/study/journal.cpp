#include "study/journal.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdint>
#include <system_error>
#include <vector>

#include <fmt/format.h>

#include "quantity/invalid_input.h"

namespace sinewright::study {

namespace {

constexpr const char* kFirst = "sinewright study journal 1 ";

std::uint64_t hash(std::string_view text) {
  std::uint64_t value = 0xcbf29ce484222325u;  // FNV-1a
  for (const char c : text) value = (value ^ static_cast<unsigned char>(c)) * 0x100000001b3u;
  return value;
}

[[noreturn]] void fail(const std::filesystem::path& path, const char* what) {
  throw std::system_error(errno, std::generic_category(), fmt::format("{}: {}", path.string(), what));
}

constexpr std::size_t kSum = 17;  // 16 digits and a blank before the content

bool whole(std::string_view line) {
  return line.size() > kSum && line[kSum - 1] == ' ' && fmt::format("{:016x}", hash(line.substr(kSum))) == line.substr(0, kSum - 1);
}

}  // namespace

std::string fingerprint_of(const std::string& text) {
  return fmt::format("{:016x}", hash(text));
}

Journal::Journal(const std::filesystem::path& path, const std::string& fingerprint, bool resume) : path_(path) {
  file_.number = ::open(path.c_str(), O_RDWR | O_CLOEXEC | (resume ? 0 : O_CREAT), 0644);
  if (file_.number < 0 && resume && errno == ENOENT)
    throw InvalidInput(fmt::format("{}: there is nothing to resume\n  needed: what an earlier study of the same file left when it was stopped",
                                   path.string()));
  if (file_.number < 0) fail(path, "cannot be opened");
  // The lock goes with the process, however that ends.
  if (::flock(file_.number, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK)
    throw InvalidInput(fmt::format("{}: another study is writing this\n  needed: wait for its end, or another --out", path.string()));
  // A study that was killed before its first line has left nothing to go on with, and nothing to lose.
  if (resume && ::lseek(file_.number, 0, SEEK_END) == 0) resume = false;
  if (!resume && ::ftruncate(file_.number, 0) != 0) fail(path, "cannot be emptied");
  if (::lseek(file_.number, 0, SEEK_SET) != 0) fail(path, "cannot be read from its beginning");
  const std::string first = kFirst + fingerprint + "\n";
  if (!resume) {
    if (::write(file_.number, first.data(), first.size()) != static_cast<ssize_t>(first.size())) fail(path, "cannot be written");
    end_ = static_cast<long long>(first.size());
    return;
  }
  // Line by line through a buffer: the file may be larger than memory.
  std::string rest;
  std::vector<char> block(1 << 20);
  long long begin = 0;
  bool header = false;
  for (;;) {
    const ssize_t n = ::read(file_.number, block.data(), block.size());
    if (n < 0) fail(path, "cannot be read");
    if (n == 0) break;
    rest.append(block.data(), static_cast<std::size_t>(n));
    std::size_t at = 0;
    for (std::size_t line_end = rest.find('\n'); line_end != std::string::npos; line_end = rest.find('\n', at)) {
      const std::string_view line = std::string_view(rest).substr(at, line_end - at);
      const auto length = static_cast<long long>(line_end + 1 - at);
      if (!header) {
        if (std::string(line) + "\n" != first)
          throw InvalidInput(fmt::format("{}: this was left by another study: a file, a change or the version of sinewright differs\n"
                                         "  needed: the same, or a start without --resume, which drops what is there", path.string()));
        header = true;
      } else if (whole(line)) {
        lines_[result_from(line.substr(kSum)).index] = begin;
      } else {
        break;  // what follows a torn line cannot be: it was the last
      }
      begin += length;
      end_ = begin;
      at = line_end + 1;
    }
    rest.erase(0, at);
  }
  if (!header) throw InvalidInput(fmt::format("{}: this is no journal of a study", path.string()));
  if (::ftruncate(file_.number, end_) != 0) fail(path, "cannot be cut to its last whole line");
}

Journal::File::~File() {
  if (number >= 0) ::close(number);
}

void Journal::add(const DesignResult& result) {
  const std::string content = line_of(result);
  const std::string line = fmt::format("{:016x} {}\n", hash(content), content);
  const ssize_t n = ::pwrite(file_.number, line.data(), line.size(), end_);
  if (n != static_cast<ssize_t>(line.size())) {
    if (n >= 0) errno = ENOSPC;
    const int why = errno;
    (void)!::ftruncate(file_.number, end_);
    errno = why;
    fail(path_, "cannot be written");
  }
  lines_[result.index] = end_;
  end_ += static_cast<long long>(line.size());
}

DesignResult Journal::read(long long index) const {
  const long long begin = lines_.at(index);
  std::string line;
  std::array<char, 4096> block;
  for (long long at = begin;;) {
    const ssize_t n = ::pread(file_.number, block.data(), block.size(), at);
    if (n <= 0) fail(path_, "cannot be read");
    const std::string_view got(block.data(), static_cast<std::size_t>(n));
    const std::size_t end = got.find('\n');
    line += got.substr(0, end);
    if (end != std::string_view::npos) break;
    at += n;
  }
  return result_from(std::string_view(line).substr(kSum));
}

void Journal::remove() {
  std::error_code ignored;
  std::filesystem::remove(path_, ignored);
}

}  // namespace sinewright::study
