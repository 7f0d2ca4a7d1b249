#include <hdf5.h>

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
  const auto make = [&](const std::string& name, const char* format, int version) {
    const auto path = (folder / name).string();
    const hid_t file = H5Fcreate(path.c_str(), H5F_ACC_TRUNC, H5P_DEFAULT, H5P_DEFAULT);
    const hid_t scalar = H5Screate(H5S_SCALAR);
    const hid_t text = H5Tcopy(H5T_C_S1);
    H5Tset_size(text, H5T_VARIABLE);
    H5Tset_cset(text, H5T_CSET_UTF8);
    if (format) {
      const hid_t attribute = H5Acreate2(file, "format", text, scalar, H5P_DEFAULT, H5P_DEFAULT);
      H5Awrite(attribute, text, &format);
      H5Aclose(attribute);
      const hid_t number = H5Acreate2(file, "format_version", H5T_STD_I32LE, scalar, H5P_DEFAULT, H5P_DEFAULT);
      H5Awrite(number, H5T_NATIVE_INT, &version);
      H5Aclose(number);
    }
    H5Tclose(text);
    H5Sclose(scalar);
    H5Fclose(file);
    return refusal(path);
  };
  CHECK_THAT(make("bare.h5", nullptr, 0), Contains("not a record of this program"));
  CHECK_THAT(make("other.h5", "somebody else's", 1), Contains("not a record of this program"));
  CHECK_THAT(make("new.h5", "sinewright record", 2), Contains("format_version is 2") && Contains("reads version 1"));
  CHECK_THAT(make("hollow.h5", "sinewright record", 1), Contains("it is damaged: outcome"));
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
