#include <catch2/catch.hpp>
#include <fstream>

#include "record/reader.h"
#include "record/writer.h"
#include "sample.h"

using namespace sinewright::record;
using Catch::Contains;

namespace {

std::string refusal(const std::filesystem::path& file) {
  try {
    static_cast<void>(read_record(file));
  } catch (const RecordError& error) {
    CHECK_THAT(error.what(), Contains(file.string()));
    return error.what();
  }
  return "";
}

void write(const std::filesystem::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary) << bytes;
}

std::string whole_record(const sample::Folder& folder) {
  Writer writer(folder / "whole.h5", sample::channels(), sample::inputs());
  std::vector<double> values(sample::width());
  for (std::size_t row = 0; row < 300; ++row) {
    sample::fill(row, values);
    if (sample::has_event(row)) writer.event(sample::event_of(row));
    writer.append(sample::time_of(row), values);
  }
  writer.finish({}, {}, "complete");
  return sample::bytes_of(folder / "whole.h5");
}

}  // namespace

TEST_CASE("reader: says what is wrong with a file that is no record", "[errors]") {
  const sample::Folder folder;
  CHECK_THAT(refusal(folder / "none.h5"), Contains("no such file"));
  CHECK_THAT(refusal(folder.path()), Contains("it is a directory"));
  write(folder / "empty.h5", "");
  CHECK_THAT(refusal(folder / "empty.h5"), Contains("not an HDF5 file"));
  write(folder / "text.h5", std::string(5000, 'a'));
  CHECK_THAT(refusal(folder / "text.h5"), Contains("not an HDF5 file"));
}

TEST_CASE("reader: refuses a foreign HDF5 file and an unknown version", "[errors]") {
  const sample::Folder folder;
  auto bytes = whole_record(folder);
  // Names that stand in the global heap, which has no checksum, can be exchanged in place.
  const std::string format = "sinewright record";
  const auto at = bytes.find(format);
  REQUIRE(at != std::string::npos);
  bytes.replace(at, format.size(), "somebody else's  ");
  write(folder / "foreign.h5", bytes);
  CHECK_THAT(refusal(folder / "foreign.h5"), Contains("not a record of this program"));
}

TEST_CASE("reader: a whole file cut anywhere is refused", "[errors]") {
  const sample::Folder folder;
  const auto bytes = whole_record(folder);
  for (std::size_t cut = 1; cut < 40; ++cut) {
    const auto length = bytes.size() * cut / 40;
    CAPTURE(length, bytes.size());
    write(folder / "cut.h5", bytes.substr(0, length));
    CHECK_THAT(refusal(folder / "cut.h5"), Contains("truncated"));
  }
  write(folder / "cut.h5", bytes.substr(0, bytes.size() - 1));
  CHECK_THAT(refusal(folder / "cut.h5"), Contains("truncated"));
  write(folder / "same.h5", bytes);
  CHECK(refusal(folder / "same.h5").empty());
}

TEST_CASE("reader: bytes that changed never crash it", "[errors]") {
  const sample::Folder folder;
  const auto bytes = whole_record(folder);
  int refused = 0;
  for (std::size_t at = 0; at < bytes.size(); at += 211) {
    auto changed = bytes;
    changed[at] = static_cast<char>(changed[at] ^ 0x55);
    write(folder / "changed.h5", changed);
    refused += refusal(folder / "changed.h5").empty() ? 0 : 1;
  }
  CHECK(refused > 0);  // some bytes are values or padding, whose change cannot be seen
}
