#pragma once

// What partial and whole files have in common: names, attributes, /inputs. docs/record.md describes the layout.

#include "record/channel.h"
#include "record/hdf5_calls.h"

namespace sinewright::record {

inline constexpr const char* kFormat = "sinewright record";
inline constexpr const char* kLimitFormat = "sinewright limit";
inline constexpr const char* kStudyFormat = "sinewright study";
inline constexpr int kFormatVersion = 1;
inline constexpr const char* kPartial = "partial";  // outcome of a file whose run has not finished

/// The channel "/time", which every record has.
[[nodiscard]] const Channel& time_channel();

/// @throws CallFailure if a path is empty, does not begin with '/', clashes with another or with the layout's own names.
void require_usable(const std::vector<Channel>& channels);

enum class FileKind { partial, whole };

/// Creates the file in the format of HDF5 1.8, which any reader of today opens; a whole one without any time stamp.
[[nodiscard]] NewFile create_file(const std::string& path, FileKind kind);

/// Root attributes and /inputs.
void write_frame(hid_t file, const std::vector<Channel>& channels, const Inputs& inputs, const std::string& outcome);

/// The group /inputs.
void write_inputs(hid_t file, const Inputs& inputs);
[[nodiscard]] Inputs read_inputs(hid_t file);

void describe(hid_t dataset, const std::string& units, const std::string& description);

/// A data set of n rows (unlimited) as the channel says, its parent groups made where missing.
/// @param properties  creation properties with the chunk not yet set.
[[nodiscard]] Handle make_channel(hid_t file, const Channel& channel, hsize_t n_rows, hsize_t chunk_rows, hid_t properties,
                                  hid_t access);

/// Rows [start, start + n) of a 1-D data set or one of this width; `type` is that of the values in memory.
/// @throws CallFailure
void write_rows(hid_t dataset, hsize_t start, hsize_t n, int width, const void* values, hid_t type = H5T_NATIVE_DOUBLE);
void read_rows(hid_t dataset, hsize_t start, hsize_t n, int width, void* values, hid_t type = H5T_NATIVE_DOUBLE);

/// /events of a whole file: time, kind, subject, detail.
void write_events(hid_t file, const std::vector<Event>& events);
[[nodiscard]] std::vector<Event> read_events(hid_t file);

/// Names of a group's links in the order they were made.
[[nodiscard]] std::vector<std::string> names_in(hid_t group);

/// /margins: one entry a margin, worst first; below it /margins/not_checked and /margins/cautions.
void write_margins(hid_t file, const Margins& margins);
/// What there is of them; a record from before there were margins has none.
[[nodiscard]] Margins read_margins(hid_t file);

/// A name that HDF5 takes for one link: '%' and '/' as %25 and %2F, a lone "." as %2E.
[[nodiscard]] std::string encode_name(const std::string& text);
[[nodiscard]] std::string decode_name(const std::string& name);

}  // namespace sinewright::record
