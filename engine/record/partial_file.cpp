#include "record/partial_file.h"

#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <cstring>

namespace sinewright::record {
namespace {

// The file gets its length before any of its content says so.
void lengthen(const NewFile& file) {
  hsize_t length = 0;
  check(H5Fget_filesize(file.id(), &length), "ask for the file's length");
  const int descriptor = file.descriptor();
  struct stat status {};
  if (fstat(descriptor, &status) != 0 ||
      (static_cast<hsize_t>(status.st_size) < length && ftruncate(descriptor, static_cast<off_t>(length)) != 0))
    throw CallFailure(fmt::format("lengthen the file to {} bytes: {}", length, std::strerror(errno)));
}

constexpr hsize_t kTextChunk = 262144;  // [byte]

void extend_and_write(const Handle& dataset, hid_t type, hsize_t start, hsize_t n, int width, const void* values) {
  const std::array<hsize_t, 2> size = {start + n, static_cast<hsize_t>(width)};
  check(H5Dset_extent(dataset.id(), size.data()), "make room");
  write_rows(dataset.id(), start, n, width, values, type);
}

void read(const Handle& dataset, hid_t type, hsize_t n, int width, void* values) {
  read_rows(dataset.id(), 0, n, width, values, type);
}

}  // namespace

PartialFile::PartialFile(const std::filesystem::path& path, const std::vector<Channel>& channels,
                         const Inputs& inputs)
    : file_(create_file(path.string(), FileKind::partial)) {
  write_frame(file_.id(), channels, inputs, kPartial);

  const Handle properties = dataset_properties();
  // Without a fill value a new chunk takes the direct way too.
  check(H5Pset_fill_time(properties.id(), H5D_FILL_TIME_NEVER), "data set properties");
  const Handle access = own(H5Pcreate(H5P_DATASET_ACCESS), H5Pclose, "data set properties");
  check(H5Pset_chunk_cache(access.id(), 0, 0, 0.0), "data set properties");

  const auto add = [&](const Channel& channel) {
    datasets_.push_back(make_channel(file_.id(), channel, 0, kPartialChunkRows, properties.id(), access.id()));
    widths_.push_back(channel.width());
  };
  add(time_channel());
  for (const auto& channel : channels) add(channel);
  const Handle events = make_group(file_.id(), "events");
  const auto add_list = [&](const char* name, hid_t type, hsize_t width, hsize_t chunk_rows, const char* units,
                            const char* description) {
    const std::array<hsize_t, 2> size = {0, width}, most = {H5S_UNLIMITED, width}, chunk = {chunk_rows, width};
    const int rank = width > 1 ? 2 : 1;
    const Handle space = own(H5Screate_simple(rank, size.data(), most.data()), H5Sclose, name);
    check(H5Pset_chunk(properties.id(), rank, chunk.data()), name);
    Handle dataset =
        own(H5Dcreate2(events.id(), name, type, space.id(), H5P_DEFAULT, properties.id(), access.id()), H5Dclose, name);
    describe(dataset.id(), units, description);
    return dataset;
  };
  event_times_ = add_list("time", H5T_IEEE_F64LE, 1, kPartialChunkRows, "s", "simulated time of the event");
  event_ends_ = add_list("ends", H5T_STD_U64LE, 3, kPartialChunkRows, "1",
                         "for each event the byte in text that follows its kind, its subject and its detail");
  event_text_ = add_list("text", H5T_STD_U8LE, 1, kTextChunk, "1", "texts of all events one after the other, UTF-8");

  const Handle count_properties = dataset_properties();
  check(H5Pset_alloc_time(count_properties.id(), H5D_ALLOC_TIME_EARLY), "/committed");
  const hsize_t two = 2;
  const Handle space = own(H5Screate_simple(1, &two, nullptr), H5Sclose, "/committed");
  committed_ = own(H5Dcreate2(file_.id(), "committed", H5T_STD_U64LE, space.id(), H5P_DEFAULT, count_properties.id(),
                              H5P_DEFAULT),
                   H5Dclose, "/committed");
  describe(committed_.id(), "1", "rows and events of this unfinished record that are whole; go by these");
  settle(0, 0);
}

void PartialFile::commit(const std::vector<std::vector<double>>& columns, hsize_t n, const std::vector<Event>& events) {
  for (std::size_t i = 0; n > 0 && i < datasets_.size(); ++i)
    extend_and_write(datasets_[i], H5T_NATIVE_DOUBLE, n_rows_, n, widths_[i], columns[i].data());
  write_events(events);
  settle(n_rows_ + n, n_events_ + events.size());
}

void PartialFile::write_events(const std::vector<Event>& events) {
  if (events.empty()) return;
  std::vector<double> times;
  std::vector<std::uint64_t> ends;
  std::string text;
  for (const auto& event : events) {
    times.push_back(event.time);
    for (const auto* part : {&event.kind, &event.subject, &event.detail}) {
      text += *part;
      ends.push_back(n_text_ + text.size());
    }
  }
  extend_and_write(event_times_, H5T_NATIVE_DOUBLE, n_events_, events.size(), 1, times.data());
  extend_and_write(event_ends_, H5T_NATIVE_UINT64, n_events_, events.size(), 3, ends.data());
  extend_and_write(event_text_, H5T_NATIVE_UCHAR, n_text_, text.size(), 1, text.data());
  n_text_ += text.size();
}

void PartialFile::settle(hsize_t n_rows, hsize_t n_events) {
  lengthen(file_);
  check(H5Fflush(file_.id(), H5F_SCOPE_LOCAL), "flush");
  const std::array<std::uint64_t, 2> counts = {n_rows, n_events};
  check(H5Dwrite(committed_.id(), H5T_NATIVE_UINT64, H5S_ALL, H5S_ALL, H5P_DEFAULT, counts.data()), "/committed");
  n_rows_ = n_rows;
  n_events_ = n_events;
}

std::vector<Event> read_partial_events(hid_t file, hsize_t n) {
  std::vector<double> times(n);
  std::vector<std::uint64_t> ends(3 * n);
  read(open_dataset(file, "events/time"), H5T_NATIVE_DOUBLE, n, 1, times.data());
  read(open_dataset(file, "events/ends"), H5T_NATIVE_UINT64, n, 3, ends.data());
  if (!std::is_sorted(ends.begin(), ends.end())) throw CallFailure("events/ends: not in order");
  const Handle dataset = open_dataset(file, "events/text");
  const hsize_t length = n > 0 ? ends.back() : 0;
  const auto size = extent(dataset.id());
  if (size.size() != 1 || size[0] < length) throw CallFailure("events/text: too short");
  std::string text(length, '\0');
  read(dataset, H5T_NATIVE_UCHAR, length, 1, text.data());
  std::vector<Event> events;
  std::uint64_t begin = 0;
  std::size_t part = 0;
  const auto next = [&] {
    const auto end = ends[part++];
    const auto from = std::exchange(begin, end);
    return text.substr(from, end - from);
  };
  for (const double time : times) {
    Event event{time, next(), {}, {}};
    event.subject = next();
    event.detail = next();
    events.push_back(std::move(event));
  }
  return events;
}

}  // namespace sinewright::record
