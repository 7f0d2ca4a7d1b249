#include "record/partial_file.h"

#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

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

}  // namespace

PartialFile::PartialFile(const std::filesystem::path& path, const std::vector<Channel>& channels,
                         const Inputs& inputs)
    : file_(create_file(path.string(), kPartialChunksPerNode)) {
  write_frame(file_.id(), channels, inputs, kPartial);

  const Handle properties = dataset_properties();
  // Without a fill value a new chunk takes the direct way too.
  check(H5Pset_fill_time(properties.id(), H5D_FILL_TIME_NEVER), "data set properties");
  const Handle access = own(H5Pcreate(H5P_DATASET_ACCESS), H5Pclose, "data set properties");
  check(H5Pset_chunk_cache(access.id(), 0, 0, 0.0), "data set properties");

  const auto add = [&](const Channel& channel) {
    datasets_.push_back(make_channel(file_.id(), channel, 0, kPartialChunkRows, properties.id(), access.id()));
    widths_.push_back(channel.width());
    flat_.push_back(channel.columns.empty());
  };
  add(time_channel());
  for (const auto& channel : channels) add(channel);
  // Texts of variable length need their fill value; what they point to is only ever added to.
  const Handle event_properties = dataset_properties();
  events_ = make_events(file_.id(), 0, event_properties.id(), access.id());

  const Handle count_properties = dataset_properties();
  check(H5Pset_alloc_time(count_properties.id(), H5D_ALLOC_TIME_EARLY), "/committed");
  const hsize_t two = 2;
  const Handle space = own(H5Screate_simple(1, &two, nullptr), H5Sclose, "/committed");
  committed_ = own(H5Dcreate2(file_.id(), "committed", H5T_STD_U64LE, space.id(), H5P_DEFAULT, count_properties.id(),
                              H5P_DEFAULT),
                   H5Dclose, "/committed");
  describe(committed_.id(), "1", "rows and events of this unfinished record that are whole; go by these");
  settle();
}

void PartialFile::commit(const std::vector<std::vector<double>>& columns, hsize_t n, const std::vector<Event>& events) {
  for (std::size_t i = 0; n > 0 && i < datasets_.size(); ++i) {
    const std::array<hsize_t, 2> size = {n_rows_ + n, static_cast<hsize_t>(widths_[i])};
    check(H5Dset_extent(datasets_[i].id(), size.data()), "make room for rows");
    write_rows(datasets_[i].id(), n_rows_, n, widths_[i], columns[i].data());
  }
  write_events(events_, n_events_, events);
  n_rows_ += n;
  n_events_ += events.size();
  try {
    settle();
  } catch (...) {
    n_rows_ -= n;
    n_events_ -= events.size();
    throw;
  }
}

void PartialFile::settle() {
  lengthen(file_);
  check(H5Fflush(file_.id(), H5F_SCOPE_LOCAL), "flush");
  const std::array<std::uint64_t, 2> counts = {n_rows_, n_events_};
  check(H5Dwrite(committed_.id(), H5T_NATIVE_UINT64, H5S_ALL, H5S_ALL, H5P_DEFAULT, counts.data()), "/committed");
}

}  // namespace sinewright::record
