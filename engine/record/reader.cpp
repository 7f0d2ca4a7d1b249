#include "record/reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdint>

#include "record/layout.h"
#include "record/partial_file.h"
#include "record/writer.h"

namespace sinewright::record {
namespace {

Handle open_file(const std::filesystem::path& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (status.type() == std::filesystem::file_type::not_found) throw CallFailure("there is no such file");
  if (status.type() == std::filesystem::file_type::directory)
    throw CallFailure("it is a directory; a record (.h5) is needed");
  if (error) throw CallFailure(error.message());
  const Handle access = own(H5Pcreate(H5P_FILE_ACCESS), H5Pclose, "file properties");
  check(H5Pset_fclose_degree(access.id(), H5F_CLOSE_STRONG), "file properties");
  const auto id = H5Fopen(path.c_str(), H5F_ACC_RDONLY, access.id());
  if (id < 0) {
    try {
      fail("open it");
    } catch (const CallFailure& failure) {
      const std::string cause = failure.what();
      if (cause.find("truncated") != std::string::npos)
        throw CallFailure(fmt::format("it is truncated, its end is missing ({})", cause));
      if (cause.find("temporarily unavailable") != std::string::npos)
        throw CallFailure("a run is writing it just now; wait for its end");
      if (cause.find("signature") != std::string::npos) throw CallFailure("it is not an HDF5 file");
      throw;
    }
  }
  return {id, H5Fclose};
}

void require_format(hid_t file) {
  constexpr const char* foreign = "it is an HDF5 file, but not a record of this program";
  std::string format;
  try {
    if (has_attribute(file, "format")) format = read_text_attribute(file, "format");
  } catch (const CallFailure&) {
    throw CallFailure(foreign);
  }
  if (format == kLimitFormat) throw CallFailure("it is the record of a limit, not of a run; 'sinewright plot' draws it");
  if (format != kFormat) throw CallFailure(foreign);
  const auto version = read_number_attribute(file, "format_version");
  if (version != kFormatVersion)
    throw CallFailure(fmt::format("its format_version is {}, and this program reads version {}", version, kFormatVersion));
}

double read_number(hid_t dataset) {
  if (!extent(dataset).empty()) throw CallFailure("a single number is needed");
  double value = 0;
  check(H5Dread(dataset, H5T_NATIVE_DOUBLE, H5S_ALL, H5S_ALL, H5P_DEFAULT, &value), "a number");
  return value;
}

void read_summary(hid_t file, Record& record) {
  const Handle group = open_group(file, "summary");
  for (const auto& name : names_in(group.id())) {
    const Handle dataset = open_dataset(group.id(), name);
    record.summary.push_back({decode_name(name), read_number(dataset.id()), read_text_attribute(dataset.id(), "units"),
                              read_text_attribute(dataset.id(), "description")});
  }
}

void read_verdicts(hid_t file, Record& record) {
  const Handle group = open_group(file, "requirements");
  for (const auto& name : names_in(group.id())) {
    const Handle dataset = open_dataset(group.id(), name);
    const auto id = dataset.id();
    record.verdicts.push_back({read_text_attribute(id, "quantity"), read_text_attribute(id, "demand"), read_number(id),
                               read_number_attribute(id, "met") != 0, read_text_attribute(id, "units")});
  }
}

struct Series {
  Channel channel;
  Handle dataset;
  hsize_t n_rows = 0;
};

Series open_series(hid_t file, const std::string& path) {
  Series series;
  series.dataset = open_dataset(file, path);
  const auto id = series.dataset.id();
  series.channel = {path, read_text_attribute(id, "units"), read_text_attribute(id, "description"), {}};
  if (has_attribute(id, "columns")) series.channel.columns = read_texts_attribute(id, "columns");
  const auto size = extent(id);
  const bool flat = series.channel.columns.empty();
  if (size.size() != (flat ? 1U : 2U) || (!flat && size[1] != series.channel.columns.size()))
    throw CallFailure(fmt::format("{}: its size does not go with its columns", path));
  series.n_rows = size[0];
  return series;
}

std::vector<double> read_values(const Series& series, hsize_t n) {
  const auto width = series.channel.width();
  std::vector<double> values(n * static_cast<std::size_t>(width));
  read_rows(series.dataset.id(), 0, n, width, values.data());
  return values;
}

void read_data(hid_t file, bool partial, Record& record) {
  const Series time = open_series(file, time_channel().path);
  std::vector<Series> all;
  for (const auto& path : read_texts_attribute(file, "channels")) all.push_back(open_series(file, path));
  hsize_t n = time.n_rows;
  hsize_t n_events = 0;
  if (partial) {
    std::array<std::uint64_t, 2> committed = {0, 0};
    const Handle counts = open_dataset(file, "committed");
    if (extent(counts.id()) != std::vector<hsize_t>{2}) throw CallFailure("/committed: two numbers are needed");
    check(H5Dread(counts.id(), H5T_NATIVE_UINT64, H5S_ALL, H5S_ALL, H5P_DEFAULT, committed.data()), "/committed");
    n = std::min<hsize_t>(n, committed[0]);
    n_events = committed[1];
    for (const auto& series : all) n = std::min(n, series.n_rows);
  }
  record.time = read_values(time, n);
  for (auto& series : all) {
    if (!partial && series.n_rows != n)
      throw CallFailure(fmt::format("{} has {} rows, /time has {}", series.channel.path, series.n_rows, n));
    record.data.push_back(read_values(series, n));
    record.channels.push_back(std::move(series.channel));
  }
  record.events = partial ? read_partial_events(file, n_events) : read_events(file);
}

}  // namespace

int Record::find(const std::string& path) const {
  const auto at =
      std::find_if(channels.begin(), channels.end(), [&](const Channel& channel) { return channel.path == path; });
  return at == channels.end() ? -1 : static_cast<int>(at - channels.begin());
}

std::vector<double> Record::column(const std::string& path, int column) const {
  const int index = find(path);
  if (index < 0) throw RecordError(fmt::format("the record has no channel {}", path));
  const int width = channels[static_cast<std::size_t>(index)].width();
  if (column < 0 || column >= width)
    throw RecordError(fmt::format("channel {} has no column {}, it has {}, counted from 0", path, column, width));
  const auto& values = data[static_cast<std::size_t>(index)];
  std::vector<double> result(time.size());
  for (std::size_t row = 0; row < result.size(); ++row)
    result[row] = values[row * static_cast<std::size_t>(width) + static_cast<std::size_t>(column)];
  return result;
}

Record read_record(const std::filesystem::path& path) {
  const QuietErrors quiet;
  try {
    const Handle file = open_file(path);
    require_format(file.id());
    try {
      Record record;
      record.outcome = read_text_attribute(file.id(), "outcome");
      record.inputs = read_inputs(file.id());
      const bool partial = H5Lexists(file.id(), "committed", H5P_DEFAULT) > 0;
      read_data(file.id(), partial, record);
      if (!partial) {
        read_summary(file.id(), record);
        read_verdicts(file.id(), record);
        record.margins = read_margins(file.id());
      }
      return record;
    } catch (const std::exception& failure) {  // CallFailure, or a length that no memory holds
      throw CallFailure(fmt::format("it is damaged: {}", failure.what()));
    }
  } catch (const CallFailure& failure) {
    throw RecordError(fmt::format("cannot read the record {}: {}", path.string(), failure.what()));
  }
}

}  // namespace sinewright::record
