#include "export/csv.h"

#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iterator>
#include <utility>

#include "record/writer.h"

namespace sinewright::exporting {

void Csv::begin_cell() {
  if (std::exchange(row_begun_, true)) content_ += delimiter_;
}

void Csv::text(std::string_view cell) {
  begin_cell();
  const bool formula = !cell.empty() && std::string_view("=+-@\t\r").find(cell.front()) != std::string_view::npos;
  // Every delimiter counts, whichever is chosen: a spreadsheet may expect another one.
  const bool quote = cell.find_first_of("\",;\t\r\n") != std::string_view::npos;
  if (quote) content_ += '"';
  if (formula) content_ += '\'';
  for (const char c : cell) {
    if (c == '"') content_ += '"';
    content_ += c;
  }
  if (quote) content_ += '"';
}

void Csv::number(double value) {
  begin_cell();
  if (!std::isnan(value)) fmt::format_to(std::back_inserter(content_), "{}", value);
}

void Csv::rounded(double value) {
  begin_cell();
  if (!std::isnan(value)) fmt::format_to(std::back_inserter(content_), "{:.12g}", value);
}

void Csv::end_row() {
  content_ += "\r\n";
  row_begun_ = false;
}

std::string Csv::take() {
  const bool ascii = std::all_of(content_.begin(), content_.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
  return ascii ? std::move(content_) : "\xEF\xBB\xBF" + content_;
}

void write_whole(const std::filesystem::path& file, std::string_view content) {
  std::string part = file.string() + ".XXXXXX";
  const auto fail = [&](const char* doing, int cause) {
    throw record::RecordError(fmt::format("{}: cannot {}: {}", file.string(), doing, std::strerror(cause)));
  };
  const int descriptor = ::mkstemp(part.data());  // a new file in any case: never one that is there
  if (descriptor < 0) fail("create the file", errno);
  const mode_t mask = ::umask(0);
  ::umask(mask);
  int cause = ::fchmod(descriptor, 0666 & ~mask) != 0 ? errno : 0;
  while (!content.empty() && cause == 0) {
    const ssize_t n = ::write(descriptor, content.data(), content.size());
    if (n >= 0)
      content.remove_prefix(static_cast<std::size_t>(n));
    else if (errno != EINTR)
      cause = errno;
  }
  if (cause == 0 && ::fsync(descriptor) != 0) cause = errno;
  if (::close(descriptor) != 0 && cause == 0) cause = errno;
  if (cause == 0 && ::rename(part.c_str(), file.c_str()) != 0) cause = errno;
  if (cause == 0) return;
  ::unlink(part.c_str());
  fail("write the file", cause);
}

}  // namespace sinewright::exporting
