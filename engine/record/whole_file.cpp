#include "record/whole_file.h"

#include <fmt/format.h>

#include <algorithm>

namespace sinewright::record {
namespace {

constexpr hsize_t kChunkRows = 4096;
constexpr unsigned kDeflateLevel = 4;  // higher levels cost much time for a few percent

void copy_channel(hid_t file, const PartialFile& partial, std::size_t index, const Channel& channel,
                  std::vector<double>& block) {
  const Handle properties = dataset_properties();
  // Chunk before filters: HDF5 wants it so; make_channel sets the chunk once more with the right rank.
  const hsize_t chunk = kChunkRows;
  check(H5Pset_chunk(properties.id(), 1, &chunk), channel.path);
  check(H5Pset_shuffle(properties.id()), channel.path);
  check(H5Pset_deflate(properties.id(), kDeflateLevel), channel.path);
  const Handle dataset =
      make_channel(file, channel, partial.n_rows(), kChunkRows, properties.id(), H5P_DEFAULT);
  const auto width = static_cast<hsize_t>(channel.width());
  for (hsize_t start = 0; start < partial.n_rows(); start += kChunkRows) {
    const auto n = std::min(kChunkRows, partial.n_rows() - start);
    block.resize(n * width);
    read_rows(partial.dataset(index), start, n, channel.width(), block.data());
    write_rows(dataset.id(), start, n, channel.width(), block.data());
  }
}

Handle scalar_number(hid_t place, const std::string& name, double value) {
  const Handle space = own(H5Screate(H5S_SCALAR), H5Sclose, name);
  const Handle properties = dataset_properties();
  Handle dataset = own(H5Dcreate2(place, name.c_str(), H5T_IEEE_F64LE, space.id(), H5P_DEFAULT, properties.id(),
                                  H5P_DEFAULT),
                       H5Dclose, name);
  check(H5Dwrite(dataset.id(), H5T_NATIVE_DOUBLE, H5S_ALL, H5S_ALL, H5P_DEFAULT, &value), name);
  return dataset;
}

}  // namespace

void write_whole_file(const std::filesystem::path& path, const PartialFile& partial, const std::vector<Channel>& channels,
                      const Inputs& inputs, const std::vector<SummaryValue>& summary,
                      const std::vector<Verdict>& verdicts, const Margins& margins, const std::string& outcome) {
  NewFile file = create_file(path.string(), FileKind::whole);
  write_frame(file.id(), channels, inputs, outcome);
  std::vector<double> block;
  copy_channel(file.id(), partial, 0, time_channel(), block);
  for (std::size_t i = 0; i < channels.size(); ++i) copy_channel(file.id(), partial, i + 1, channels[i], block);
  write_events(file.id(), read_partial_events(partial.file(), partial.n_events()));
  {
    const Handle group = make_group(file.id(), "summary");
    for (const auto& item : summary) {
      const Handle dataset = scalar_number(group.id(), encode_name(item.key), item.value);
      describe(dataset.id(), item.unit, item.description);
    }
  }
  {
    const Handle group = make_group(file.id(), "requirements");
    for (std::size_t i = 0; i < verdicts.size(); ++i) {
      const auto& verdict = verdicts[i];
      const Handle dataset = scalar_number(group.id(), fmt::format("requirement_{:03}", i), verdict.value);
      describe(dataset.id(), verdict.unit, fmt::format("{}: {}", verdict.quantity, verdict.demand));
      write_attribute(dataset.id(), "quantity", verdict.quantity);
      write_attribute(dataset.id(), "demand", verdict.demand);
      write_attribute(dataset.id(), "met", static_cast<long long>(verdict.met));
    }
  }
  write_margins(file.id(), margins);
  file.close();
}

}  // namespace sinewright::record
