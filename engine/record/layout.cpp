#include "record/layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace sinewright::record {
namespace {

Handle make_scalar(hid_t place, const std::string& name, hid_t type) {
  const Handle space = own(H5Screate(H5S_SCALAR), H5Sclose, name);
  const Handle properties = dataset_properties();
  return own(H5Dcreate2(place, name.c_str(), type, space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Dclose,
             name);
}

void write_text(hid_t place, const std::string& name, const std::string& text, const std::string& description) {
  const Handle type = string_type();
  const Handle dataset = make_scalar(place, name, type.id());
  const char* pointer = text.c_str();
  check(H5Dwrite(dataset.id(), type.id(), H5S_ALL, H5S_ALL, H5P_DEFAULT, &pointer), name);
  describe(dataset.id(), "1", description);
}

// A text that contains a zero byte (a binary mesh) cannot be an HDF5 string; it is kept as bytes.
void write_content(hid_t place, const std::string& name, const std::string& path, const std::string& content) {
  Handle dataset;
  if (content.find('\0') == std::string::npos) {
    write_text(place, name, content, "an input file, verbatim");
    dataset = open_dataset(place, name);
  } else {
    const hsize_t size = content.size();
    const Handle space = own(H5Screate_simple(1, &size, nullptr), H5Sclose, name);
    const Handle properties = dataset_properties();
    dataset = own(H5Dcreate2(place, name.c_str(), H5T_STD_U8LE, space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT),
                  H5Dclose, name);
    check(H5Dwrite(dataset.id(), H5T_NATIVE_UCHAR, H5S_ALL, H5S_ALL, H5P_DEFAULT, content.data()), name);
    describe(dataset.id(), "1", "an input file, verbatim, as bytes");
  }
  write_attribute(dataset.id(), "path", path);
}

}  // namespace

void write_inputs(hid_t file, const Inputs& inputs) {
  const Handle group = make_group(file, "inputs");
  write_text(group.id(), "engine_version", inputs.engine_version, "version of the engine that made the record");
  write_text(group.id(), "scenario_path", inputs.scenario_path, "path of the scenario as it was read");
  {
    const Handle seed = make_scalar(group.id(), "seed", H5T_STD_U64LE);
    check(H5Dwrite(seed.id(), H5T_NATIVE_ULLONG, H5S_ALL, H5S_ALL, H5P_DEFAULT, &inputs.seed), "seed");
    describe(seed.id(), "1", "seed of the random numbers");
  }
  {
    const Handle type = string_type();
    const hsize_t count = inputs.overrides.size();
    const Handle space = own(H5Screate_simple(1, &count, nullptr), H5Sclose, "overrides");
    const Handle properties = dataset_properties();
    const Handle dataset = own(
        H5Dcreate2(group.id(), "overrides", type.id(), space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Dclose,
        "overrides");
    std::vector<const char*> pointers;
    for (const auto& text : inputs.overrides) pointers.push_back(text.c_str());
    if (count > 0)
      check(H5Dwrite(dataset.id(), type.id(), H5S_ALL, H5S_ALL, H5P_DEFAULT, pointers.data()), "overrides");
    describe(dataset.id(), "1", "values set over those of the files, key.path=value");
  }
  const Handle files = make_group(group.id(), "files");
  for (std::size_t i = 0; i < inputs.files.size(); ++i)
    write_content(files.id(), fmt::format("file_{:03}", i), inputs.files[i].first, inputs.files[i].second);
}

const Channel& time_channel() {
  static const Channel channel{"/time", "s", "simulated time", {}};
  return channel;
}

void require_usable(const std::vector<Channel>& channels) {
  static constexpr std::array<std::string_view, 7> taken = {"time",         "events",  "inputs",   "summary",
                                                            "requirements", "margins", "committed"};
  std::set<std::string> paths;
  for (const auto& channel : channels) {
    const auto& path = channel.path;
    const bool sound = path.size() > 1 && path.front() == '/' && path.back() != '/' &&
                       path.find("//") == std::string::npos && path.find('\0') == std::string::npos;
    if (!sound)
      throw CallFailure(fmt::format("channel '{}': a path such as /joints/MCP/angle is needed", path));
    const std::string_view top = std::string_view(path).substr(1, path.find('/', 1) - 1);
    if (std::find(taken.begin(), taken.end(), top) != taken.end())
      throw CallFailure(fmt::format("channel '{}': the name /{} is kept for the layout itself", path, top));
    if (!paths.insert(path).second) throw CallFailure(fmt::format("channel '{}' is there twice", path));
  }
  for (const auto& path : paths)
    for (auto slash = path.find('/', 1); slash != std::string::npos; slash = path.find('/', slash + 1))
      if (paths.count(path.substr(0, slash)))
        throw CallFailure(fmt::format("channel '{}' lies below another channel '{}'", path, path.substr(0, slash)));
}

NewFile create_file(const std::string& path, FileKind kind) {
  const Handle creation = own(H5Pcreate(H5P_FILE_CREATE), H5Pclose, "file properties");
  check(H5Pset_obj_track_times(creation.id(), false), "file properties");
  check(H5Pset_link_creation_order(creation.id(), H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED), "file properties");
  const Handle access = own(H5Pcreate(H5P_FILE_ACCESS), H5Pclose, "file properties");
  check(H5Pset_libver_bounds(access.id(), H5F_LIBVER_V18, H5F_LIBVER_V18), "file properties");
  check(H5Pset_fclose_degree(access.id(), H5F_CLOSE_STRONG), "file properties");
  if (kind == FileKind::partial) {  // for the reasons see partial_file.h
    check(H5Pset_istore_k(creation.id(), 256), "file properties");
    check(H5Pset_sieve_buf_size(access.id(), 1), "file properties");
    check(H5Pset_alignment(access.id(), 1, 4096), "file properties");
    check(H5Pset_meta_block_size(access.id(), 0), "file properties");
    check(H5Pset_small_data_block_size(access.id(), 0), "file properties");
  }
  return NewFile(
      own(H5Fcreate(path.c_str(), H5F_ACC_TRUNC, creation.id(), access.id()), H5Fclose, "create the file"));
}

void write_frame(hid_t file, const std::vector<Channel>& channels, const Inputs& inputs, const std::string& outcome) {
  write_attribute(file, "format", kFormat);
  write_attribute(file, "format_version", static_cast<long long>(kFormatVersion));
  write_attribute(file, "outcome", outcome);
  std::vector<std::string> paths;
  for (const auto& channel : channels) paths.push_back(channel.path);
  write_attribute(file, "channels", paths);
  write_inputs(file, inputs);
}

void describe(hid_t dataset, const std::string& units, const std::string& description) {
  write_attribute(dataset, "units", units);
  write_attribute(dataset, "description", description);
}

Handle make_channel(hid_t file, const Channel& channel, hsize_t n_rows, hsize_t chunk_rows, hid_t properties,
                    hid_t access) {
  const auto& path = channel.path;
  for (auto slash = path.find('/', 1); slash != std::string::npos; slash = path.find('/', slash + 1)) {
    const auto parent = path.substr(0, slash);
    if (H5Lexists(file, parent.c_str(), H5P_DEFAULT) <= 0) make_group(file, parent);
  }
  const int rank = channel.columns.empty() ? 1 : 2;
  const auto width = static_cast<hsize_t>(channel.width());
  const std::array<hsize_t, 2> size = {n_rows, width}, most = {H5S_UNLIMITED, width}, chunk = {chunk_rows, width};
  const Handle space = own(H5Screate_simple(rank, size.data(), most.data()), H5Sclose, path);
  check(H5Pset_chunk(properties, rank, chunk.data()), path);
  Handle dataset = own(H5Dcreate2(file, path.c_str(), H5T_IEEE_F64LE, space.id(), H5P_DEFAULT, properties, access),
                       H5Dclose, path);
  describe(dataset.id(), channel.unit, channel.description);
  if (!channel.columns.empty()) write_attribute(dataset.id(), "columns", channel.columns);
  return dataset;
}

namespace {

struct Selection {
  Handle file, memory;
};

Selection select_rows(hid_t dataset, hsize_t start, hsize_t n, int width) {
  Selection selection;
  selection.file = own(H5Dget_space(dataset), H5Sclose, "select rows");
  const int rank = H5Sget_simple_extent_ndims(selection.file.id());
  if (rank < 1 || rank > 2) throw CallFailure("select rows: a data set with one or two dimensions is needed");
  const std::array<hsize_t, 2> from = {start, 0}, count = {n, static_cast<hsize_t>(width)};
  check(H5Sselect_hyperslab(selection.file.id(), H5S_SELECT_SET, from.data(), nullptr, count.data(), nullptr),
        "select rows");
  selection.memory = own(H5Screate_simple(rank, count.data(), nullptr), H5Sclose, "select rows");
  return selection;
}

}  // namespace

void write_rows(hid_t dataset, hsize_t start, hsize_t n, int width, const void* values, hid_t type) {
  if (n == 0) return;
  const auto at = select_rows(dataset, start, n, width);
  check(H5Dwrite(dataset, type, at.memory.id(), at.file.id(), H5P_DEFAULT, values), "write rows");
}

void read_rows(hid_t dataset, hsize_t start, hsize_t n, int width, void* values, hid_t type) {
  if (n == 0) return;
  const auto at = select_rows(dataset, start, n, width);
  check(H5Dread(dataset, type, at.memory.id(), at.file.id(), H5P_DEFAULT, values), "read rows");
}

void write_events(hid_t file, const std::vector<Event>& events) {
  const Handle group = make_group(file, "events");
  const Handle text = string_type();
  const hsize_t n = events.size();
  const Handle space = own(H5Screate_simple(1, &n, nullptr), H5Sclose, "/events");
  const Handle properties = dataset_properties();
  const auto write = [&](const char* name, hid_t type, const void* values, const char* units, const char* description) {
    const Handle dataset = own(H5Dcreate2(group.id(), name, type, space.id(), H5P_DEFAULT, properties.id(), H5P_DEFAULT),
                               H5Dclose, "/events");
    if (n > 0) check(H5Dwrite(dataset.id(), type, H5S_ALL, H5S_ALL, H5P_DEFAULT, values), "/events");
    describe(dataset.id(), units, description);
  };
  std::vector<double> times;
  for (const auto& event : events) times.push_back(event.time);
  write("time", H5T_NATIVE_DOUBLE, times.data(), "s", "simulated time of the event");
  std::vector<const char*> pointers(events.size());
  const auto write_texts = [&](const char* name, std::string Event::*member, const char* description) {
    std::transform(events.begin(), events.end(), pointers.begin(),
                   [member](const Event& event) { return (event.*member).c_str(); });
    write(name, text.id(), pointers.data(), "1", description);
  };
  write_texts("kind", &Event::kind, "what happened");
  write_texts("subject", &Event::subject, "joint, drive, cord or contact that it happened to");
  write_texts("detail", &Event::detail, "more about it, in words");
}

std::vector<Event> read_events(hid_t file) {
  const Handle time = open_dataset(file, "events/time");
  const auto size = extent(time.id());
  if (size.size() != 1) throw CallFailure("events/time: one dimension is needed");
  std::vector<double> times(size[0]);
  read_rows(time.id(), 0, size[0], 1, times.data());
  const auto texts = [&](const char* name) {
    const Handle dataset = open_dataset(file, name);
    if (extent(dataset.id()) != size) throw CallFailure(fmt::format("{}: not as long as events/time", name));
    return read_texts(dataset.id(), size[0]);
  };
  const auto kinds = texts("events/kind"), subjects = texts("events/subject"), details = texts("events/detail");
  std::vector<Event> events;
  for (std::size_t i = 0; i < times.size(); ++i) events.push_back({times[i], kinds[i], subjects[i], details[i]});
  return events;
}

std::string encode_name(const std::string& text) {
  if (text == ".") return "%2E";
  std::string name;
  for (const char c : text) {
    if (c == '%')
      name += "%25";
    else if (c == '/')
      name += "%2F";
    else
      name += c;
  }
  return name;
}

std::string decode_name(const std::string& name) {
  std::string text;
  for (std::size_t i = 0; i < name.size(); ++i) {
    const auto code = name.compare(i, 1, "%") == 0 ? name.substr(i, 3) : "";
    const char c = code == "%25" ? '%' : code == "%2F" ? '/' : code == "%2E" ? '.' : '\0';
    text += c ? c : name[i];
    if (c) i += 2;
  }
  return text;
}

}  // namespace sinewright::record
