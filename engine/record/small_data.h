#pragma once

// Single numbers, short columns and whole files of small records, as those of limits and studies.

#include <filesystem>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "record/layout.h"
#include "record/settle.h"
#include "record/writer.h"

namespace sinewright::record {

inline void number(hid_t place, const std::string& name, double value, const std::string& units, const std::string& description) {
  const Handle space = own(H5Screate(H5S_SCALAR), H5Sclose, name);
  const Handle properties = dataset_properties();
  const Handle dataset = own(
      H5Dcreate2(place, name.c_str(), H5T_IEEE_F64LE, space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Dclose, name);
  check(H5Dwrite(dataset.id(), H5T_NATIVE_DOUBLE, H5S_ALL, H5S_ALL, H5P_DEFAULT, &value), name);
  describe(dataset.id(), units, description);
}

inline double number_at(hid_t place, const std::string& name) {
  const Handle dataset = open_dataset(place, name);
  if (!extent(dataset.id()).empty()) throw CallFailure(name + ": a single number is needed");
  double value = 0;
  check(H5Dread(dataset.id(), H5T_NATIVE_DOUBLE, H5S_ALL, H5S_ALL, H5P_DEFAULT, &value), name);
  return value;
}

inline void column(hid_t place, const Channel& channel, const std::vector<double>& values) {
  const Handle properties = dataset_properties();
  const Handle dataset = make_channel(place, channel, values.size(), 256, properties.id(), H5P_DEFAULT);
  write_rows(dataset.id(), 0, values.size(), 1, values.data());
}

inline std::vector<double> column_at(hid_t place, const std::string& name) {
  const Handle dataset = open_dataset(place, name);
  const auto size = extent(dataset.id());
  if (size.size() != 1) throw CallFailure(name + ": one dimension is needed");
  std::vector<double> values(size[0]);
  read_rows(dataset.id(), 0, size[0], 1, values.data());
  return values;
}

inline Handle open_to_read(const std::filesystem::path& file) {
  const Handle access = own(H5Pcreate(H5P_FILE_ACCESS), H5Pclose, "file properties");
  check(H5Pset_fclose_degree(access.id(), H5F_CLOSE_STRONG), "file properties");
  return own(H5Fopen(file.c_str(), H5F_ACC_RDONLY, access.id()), H5Fclose, "open it");
}

// Whether the file is a record of this format; false for anything else, readable or not.
inline bool has_format(const std::filesystem::path& path, const char* format) {
  const QuietErrors quiet;
  try {
    const Handle file = open_to_read(path);
    return has_attribute(file.id(), "format") && read_text_attribute(file.id(), "format") == format;
  } catch (const CallFailure&) {
    return false;
  }
}

inline void require_format(hid_t file, const char* format, int version, const char* meaning) {
  if (!has_attribute(file, "format") || read_text_attribute(file, "format") != format) throw CallFailure(fmt::format("it is not {}", meaning));
  if (const auto found = read_number_attribute(file, "format_version"); found != version)
    throw CallFailure(fmt::format("its format_version is {}, and this program reads version {}", found, version));
}

template <class Act>
void guarded(const std::filesystem::path& file, const char* doing, Act&& act) {
  const QuietErrors quiet;
  try {
    act();
  } catch (const std::exception& error) {
    throw RecordError(fmt::format("cannot {} the record {}: {}", doing, file.string(), error.what()));
  }
}

// Writes a whole file; it gets its name only when it is on the disk. @throws RecordError
template <class Fill>
void write_at_once(const std::filesystem::path& path, Fill&& fill) {
  guarded(path, "write", [&] {
    std::error_code error;
    if (!path.has_filename() || std::filesystem::is_directory(path, error)) throw CallFailure("it is a directory");
    make_then_move(packing_path(path), path, [&](const std::filesystem::path& packing) {
      NewFile file = create_file(packing.string(), FileKind::whole);
      fill(file.id());
      file.close();
      to_disk(packing, O_RDONLY);
    });
    to_disk(folder_of(path), O_RDONLY | O_DIRECTORY);
  });
}

}  // namespace sinewright::record
