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

// A text that contains a zero byte cannot be an HDF5 string; it is kept as bytes.
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

namespace {

// A group of lists of one length, as events and margins are.
class Lists {
 public:
  Lists(hid_t place, const std::string& name, std::size_t n)
      : name_(name), group_(make_group(place, name)), text_(string_type()), properties_(dataset_properties()), n_(n) {}

  [[nodiscard]] hid_t id() const { return group_.id(); }

  void numbers(const char* name, const std::vector<double>& values, const char* units, const char* description) const {
    make(name, H5T_NATIVE_DOUBLE, values.data(), units, description);
  }
  void texts(const char* name, const std::vector<std::string>& values, const char* description) const {
    std::vector<const char*> pointers;
    for (const auto& value : values) pointers.push_back(value.c_str());
    make(name, text_.id(), pointers.data(), "1", description);
  }

 private:
  void make(const char* name, hid_t type, const void* values, const char* units, const char* description) const {
    const Handle space = own(H5Screate_simple(1, &n_, nullptr), H5Sclose, name_);
    const Handle dataset =
        own(H5Dcreate2(group_.id(), name, type, space.id(), H5P_DEFAULT, properties_.id(), H5P_DEFAULT), H5Dclose, name_);
    if (n_ > 0) check(H5Dwrite(dataset.id(), type, H5S_ALL, H5S_ALL, H5P_DEFAULT, values), name_);
    describe(dataset.id(), units, description);
  }

  std::string name_;
  Handle group_, text_, properties_;
  hsize_t n_;
};

// The other way round: lists of the length that the first one has.
class ListReader {
 public:
  ListReader(hid_t file, std::string group, const char* first) : file_(file), group_(std::move(group)) {
    size_ = extent(open(first).id());
    if (size_.size() != 1) throw CallFailure(fmt::format("{}/{}: one dimension is needed", group_, first));
  }
  [[nodiscard]] std::size_t count() const { return size_[0]; }

  [[nodiscard]] std::vector<double> numbers(const char* name) const {
    const Handle dataset = checked(name);
    std::vector<double> values(size_[0]);
    read_rows(dataset.id(), 0, size_[0], 1, values.data());
    return values;
  }
  [[nodiscard]] std::vector<std::string> texts(const char* name) const { return read_texts(checked(name).id(), size_[0]); }

 private:
  [[nodiscard]] Handle open(const char* name) const { return open_dataset(file_, group_ + "/" + name); }
  [[nodiscard]] Handle checked(const char* name) const {
    Handle dataset = open(name);
    if (extent(dataset.id()) != size_) throw CallFailure(fmt::format("{}/{}: not as long as its neighbours", group_, name));
    return dataset;
  }

  hid_t file_;
  std::string group_;
  std::vector<hsize_t> size_;
};

template <class Entry, class Value>
std::vector<Value> gathered(const std::vector<Entry>& entries, Value Entry::*member) {
  std::vector<Value> values;
  for (const Entry& entry : entries) values.push_back(entry.*member);
  return values;
}

}  // namespace

void write_events(hid_t file, const std::vector<Event>& events) {
  const Lists lists(file, "events", events.size());
  lists.numbers("time", gathered(events, &Event::time), "s", "simulated time of the event");
  lists.texts("kind", gathered(events, &Event::kind), "what happened");
  lists.texts("subject", gathered(events, &Event::subject), "joint, drive, cord or contact that it happened to");
  lists.texts("detail", gathered(events, &Event::detail), "more about it, in words");
}

std::vector<Event> read_events(hid_t file) {
  const ListReader lists(file, "events", "time");
  const auto times = lists.numbers("time");
  const auto kinds = lists.texts("kind"), subjects = lists.texts("subject"), details = lists.texts("detail");
  std::vector<Event> events;
  for (std::size_t i = 0; i < times.size(); ++i) events.push_back({times[i], kinds[i], subjects[i], details[i]});
  return events;
}

void write_margins(hid_t file, const Margins& margins) {
  using simulation::MarginValue;
  using simulation::NotChecked;
  const auto& values = margins.values;
  const Lists lists(file, "margins", values.size());
  lists.texts("name", gathered(values, &MarginValue::name), "which margin; the smallest ratio first");
  lists.texts("check", gathered(values, &MarginValue::check), "what was checked, in words");
  lists.numbers("ratio", gathered(values, &MarginValue::ratio), "1", "capacity / demand at the instant that governs");
  lists.numbers("capacity", gathered(values, &MarginValue::capacity), "1", "what the part bears, in the unit of /margins/unit");
  lists.numbers("demand", gathered(values, &MarginValue::demand), "1", "what is asked of it, in the unit of /margins/unit");
  lists.texts("unit", gathered(values, &MarginValue::unit), "unit of capacity and demand");
  lists.numbers("time", gathered(values, &MarginValue::time), "s", "instant that governs");
  lists.texts("load", gathered(values, &MarginValue::load), "load that governs, in words");
  lists.numbers("lost_at", gathered(values, &MarginValue::lost_at), "s", "first instant with a ratio below 1; NaN: never");
  lists.texts("lost_load", gathered(values, &MarginValue::lost_load), "load at that instant, in words");
  const Lists posture(lists.id(), "posture", values.size());
  for (std::size_t j = 0; j < margins.joints.size(); ++j) {
    std::vector<double> angles;
    for (const auto& value : values) angles.push_back(value.posture[j]);
    posture.numbers(encode_name(margins.joints[j]).c_str(), angles, "radian", "angle of the joint at the instant that governs");
  }
  std::vector<std::string> missing;
  for (const auto& unknown : margins.not_checked) missing.push_back(fmt::format("{}", fmt::join(unknown.missing, "\n")));
  const Lists unknown(lists.id(), "not_checked", margins.not_checked.size());
  unknown.texts("name", gathered(margins.not_checked, &NotChecked::name), "which margin");
  unknown.texts("check", gathered(margins.not_checked, &NotChecked::check), "what was not checked, in words");
  unknown.texts("missing", missing, "keys that the model lacks, one a line");
  const Lists cautions(lists.id(), "cautions", margins.cautions.size());
  cautions.texts("text", margins.cautions, "what is below the least size of its process");
}

std::vector<std::string> names_in(hid_t group) {
  std::vector<std::string> names;
  const auto add = [](hid_t, const char* name, const H5L_info_t*, void* into) -> herr_t {
    static_cast<std::vector<std::string>*>(into)->emplace_back(name);
    return 0;
  };
  check(H5Literate(group, H5_INDEX_CRT_ORDER, H5_ITER_INC, nullptr, add, &names), "list a group");
  return names;
}

Margins read_margins(hid_t file) {
  Margins margins;
  if (H5Lexists(file, "margins", H5P_DEFAULT) <= 0) return margins;
  const ListReader lists(file, "margins", "name");
  const auto name = lists.texts("name"), check = lists.texts("check"), unit = lists.texts("unit"), load = lists.texts("load"),
             lost_load = lists.texts("lost_load");
  const auto ratio = lists.numbers("ratio"), capacity = lists.numbers("capacity"), demand = lists.numbers("demand"),
             time = lists.numbers("time"), lost_at = lists.numbers("lost_at");
  for (std::size_t i = 0; i < lists.count(); ++i)
    margins.values.push_back({name[i], check[i], capacity[i], demand[i], unit[i], ratio[i], time[i], load[i], lost_at[i],
                              lost_load[i], {}});
  for (const auto& joint : names_in(open_group(file, "margins/posture").id())) {
    const auto angles = lists.numbers(("posture/" + joint).c_str());
    margins.joints.push_back(decode_name(joint));
    for (std::size_t i = 0; i < angles.size(); ++i) margins.values[i].posture.push_back(angles[i]);
  }
  const ListReader unknown(file, "margins/not_checked", "name");
  const auto unknown_name = unknown.texts("name"), unknown_check = unknown.texts("check"), missing = unknown.texts("missing");
  for (std::size_t i = 0; i < unknown.count(); ++i) {
    simulation::NotChecked entry{unknown_name[i], unknown_check[i], {}};
    for (std::size_t from = 0, end; from < missing[i].size(); from = end + 1) {
      end = std::min(missing[i].find('\n', from), missing[i].size());
      entry.missing.push_back(missing[i].substr(from, end - from));
    }
    margins.not_checked.push_back(std::move(entry));
  }
  const ListReader cautions(file, "margins/cautions", "text");
  margins.cautions = cautions.texts("text");
  return margins;
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

namespace {

std::string read_content(hid_t dataset) {
  const auto size = extent(dataset);
  if (size.empty()) return read_text(dataset);
  if (size.size() != 1) throw CallFailure("an input file has more than one dimension");
  std::string content(size[0], '\0');
  check(H5Dread(dataset, H5T_NATIVE_UCHAR, H5S_ALL, H5S_ALL, H5P_DEFAULT, content.data()), "an input file");
  return content;
}

}  // namespace

Inputs read_inputs(hid_t file) {
  Inputs inputs;
  inputs.engine_version = read_text(open_dataset(file, "inputs/engine_version").id());
  inputs.scenario_path = read_text(open_dataset(file, "inputs/scenario_path").id());
  check(H5Dread(open_dataset(file, "inputs/seed").id(), H5T_NATIVE_ULLONG, H5S_ALL, H5S_ALL, H5P_DEFAULT, &inputs.seed),
        "inputs/seed");
  const Handle overrides = open_dataset(file, "inputs/overrides");
  const auto n = extent(overrides.id());
  inputs.overrides = read_texts(overrides.id(), n.size() == 1 ? n[0] : 0);
  const Handle files = open_group(file, "inputs/files");
  for (const auto& name : names_in(files.id())) {
    const Handle dataset = open_dataset(files.id(), name);
    inputs.files.emplace_back(read_text_attribute(dataset.id(), "path"), read_content(dataset.id()));
  }
  return inputs;
}

}  // namespace sinewright::record
