#pragma once

// What partial and whole files have in common: names, attributes, /inputs. docs/record.md describes the layout.

#include "record/channel.h"
#include "record/hdf5_calls.h"

namespace sinewright::record {

inline constexpr const char* kFormat = "sinewright record";
inline constexpr int kFormatVersion = 1;
inline constexpr const char* kPartial = "partial";  // outcome of a file whose run has not finished

/// The channel "/time", which every record has.
[[nodiscard]] const Channel& time_channel();

/// @throws CallFailure if a path is empty, does not begin with '/', clashes with another or with the layout's own names.
void require_usable(const std::vector<Channel>& channels);

/// Creates the file without time stamps, in the format of HDF5 1.8, which any reader of today opens.
/// @param chunks_per_node  room in one node of the chunk index; 0 for the library's own. Any other choice makes HDF5 1.10
///                         put a time stamp into the file, which cannot be switched off.
[[nodiscard]] NewFile create_file(const std::string& path, unsigned chunks_per_node);

/// Root attributes and /inputs.
void write_frame(hid_t file, const std::vector<Channel>& channels, const Inputs& inputs, const std::string& outcome);

void describe(hid_t dataset, const std::string& units, const std::string& description);

/// A data set of n rows (unlimited) as the channel says, its parent groups made where missing.
/// @param properties  creation properties with the chunk not yet set.
[[nodiscard]] Handle make_channel(hid_t file, const Channel& channel, hsize_t n_rows, hsize_t chunk_rows, hid_t properties,
                                  hid_t access);

/// Rows [start, start + n) of a channel. @throws CallFailure
void write_rows(hid_t dataset, hsize_t start, hsize_t n, int width, const double* values);
void read_rows(hid_t dataset, hsize_t start, hsize_t n, int width, double* values);

/// The four data sets of /events: time, kind, subject, detail.
struct EventDatasets {
  Handle time, kind, subject, detail;
};
[[nodiscard]] EventDatasets make_events(hid_t file, hsize_t n, hid_t properties, hid_t access);
/// Makes room for [start, start + n) and writes them.
void write_events(const EventDatasets& datasets, hsize_t start, const std::vector<Event>& events);

/// The first n of /events.
[[nodiscard]] std::vector<Event> read_events(hid_t file, hsize_t n);

/// A name that HDF5 takes for one link: '%' and '/' as %25 and %2F, a lone "." as %2E.
[[nodiscard]] std::string encode_name(const std::string& text);
[[nodiscard]] std::string decode_name(const std::string& name);

}  // namespace sinewright::record
