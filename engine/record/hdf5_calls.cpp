#include "record/hdf5_calls.h"

#include <fmt/format.h>
#include <sys/mman.h>
#include <unistd.h>

namespace sinewright::record {
namespace {

struct Cause {
  std::string system;     // text of errno, if a system call failed
  std::string innermost;  // what the deepest function of HDF5 said
};

herr_t look(unsigned position, const H5E_error2_t* error, void* into) {
  auto& cause = *static_cast<Cause*>(into);
  const std::string text = error->desc ? error->desc : "";
  if (position == 0) cause.innermost = text;
  // HDF5 keeps errno only inside its own sentence.
  constexpr std::string_view mark = "error message = '";
  const auto from = text.find(mark);
  if (from != std::string::npos && cause.system.empty()) {
    const auto begin = from + mark.size();
    cause.system = text.substr(begin, text.find('\'', begin) - begin);
  }
  return 0;
}

// Reads texts of variable length and gives HDF5's memory back.
std::vector<std::string> take(std::vector<char*>& pointers, hid_t type, hid_t space) {
  std::vector<std::string> texts;
  texts.reserve(pointers.size());
  for (const char* pointer : pointers) texts.emplace_back(pointer ? pointer : "");
  H5Dvlen_reclaim(type, space, H5P_DEFAULT, pointers.data());
  return texts;
}

void require_text(hid_t type, std::string_view doing) {
  if (H5Tis_variable_str(type) <= 0) throw CallFailure(fmt::format("{}: it is not text", doing));
}

}  // namespace

QuietErrors::QuietErrors() {
  // What HDF5 could not write (full disk) it tries to write again when the process ends, and crashes over it. We close all
  // that can be closed ourselves. Counts only as the first call to the library; later ones do nothing.
  H5dont_atexit();
  H5Eget_auto2(H5E_DEFAULT, &function_, &data_);
  H5Eset_auto2(H5E_DEFAULT, nullptr, nullptr);
}
QuietErrors::~QuietErrors() { H5Eset_auto2(H5E_DEFAULT, function_, data_); }

void Handle::reset() {
  if (id_ >= 0 && closer_) {
    const QuietErrors quiet;
    closer_(id_);
  }
  id_ = H5I_INVALID_HID;
}

void Handle::close(const char* doing) {
  if (id_ < 0) return;
  const auto id = std::exchange(id_, H5I_INVALID_HID);
  check(closer_(id), doing);
}

NewFile::~NewFile() {
  if (handle_.id() < 0) return;
  const QuietErrors quiet;
  const int memory = memfd_create("abandoned", MFD_CLOEXEC);
  if (memory < 0) return;
  try {
    dup2(memory, descriptor());
  } catch (const CallFailure&) {
    // Then HDF5 closes it its own way.
  }
  ::close(memory);
}

int NewFile::descriptor() const {
  void* handle = nullptr;
  check(H5Fget_vfd_handle(handle_.id(), H5P_DEFAULT, &handle), "ask for the file's descriptor");
  return *static_cast<int*>(handle);
}

void NewFile::close() {
  // Flushed first: after a failed flush the file is still there to be abandoned, after a failed close it is not.
  check(H5Fflush(handle_.id(), H5F_SCOPE_LOCAL), "flush");
  handle_.close("close the file");
}

void fail(std::string_view doing) {
  Cause cause;
  H5Ewalk2(H5E_DEFAULT, H5E_WALK_UPWARD, look, &cause);
  if (cause.innermost.empty()) cause.innermost = "the HDF5 library gives no reason";
  throw CallFailure(fmt::format("{}: {}", doing, cause.system.empty() ? cause.innermost : cause.system));
}

Handle string_type() {
  Handle type = own(H5Tcopy(H5T_C_S1), H5Tclose, "make a text type");
  check(H5Tset_size(type.id(), H5T_VARIABLE), "make a text type");
  check(H5Tset_cset(type.id(), H5T_CSET_UTF8), "make a text type");
  return type;
}

Handle open_group(hid_t place, const std::string& name) {
  return own(H5Gopen2(place, name.c_str(), H5P_DEFAULT), H5Gclose, name);
}

Handle make_group(hid_t place, const std::string& name) {
  const Handle properties = own(H5Pcreate(H5P_GROUP_CREATE), H5Pclose, name);
  check(H5Pset_obj_track_times(properties.id(), false), name);
  check(H5Pset_link_creation_order(properties.id(), H5P_CRT_ORDER_TRACKED | H5P_CRT_ORDER_INDEXED), name);
  return own(H5Gcreate2(place, name.c_str(), H5P_DEFAULT, properties.id(), H5P_DEFAULT), H5Gclose, name);
}

Handle dataset_properties() {
  Handle properties = own(H5Pcreate(H5P_DATASET_CREATE), H5Pclose, "data set properties");
  check(H5Pset_obj_track_times(properties.id(), false), "data set properties");
  return properties;
}

Handle open_dataset(hid_t place, const std::string& name) {
  return own(H5Dopen2(place, name.c_str(), H5P_DEFAULT), H5Dclose, name);
}

std::vector<hsize_t> extent(hid_t dataset) {
  const Handle space = own(H5Dget_space(dataset), H5Sclose, "size of a data set");
  const int rank = H5Sget_simple_extent_ndims(space.id());
  if (rank < 0) fail("size of a data set");
  std::vector<hsize_t> lengths(static_cast<std::size_t>(rank));
  check(H5Sget_simple_extent_dims(space.id(), lengths.data(), nullptr), "size of a data set");
  return lengths;
}

void write_attribute(hid_t object, const char* name, const std::string& text) {
  const Handle type = string_type();
  const Handle space = own(H5Screate(H5S_SCALAR), H5Sclose, name);
  const Handle attribute =
      own(H5Acreate2(object, name, type.id(), space.id(), H5P_DEFAULT, H5P_DEFAULT), H5Aclose, name);
  const char* pointer = text.c_str();
  check(H5Awrite(attribute.id(), type.id(), &pointer), name);
}

void write_attribute(hid_t object, const char* name, const std::vector<std::string>& texts) {
  const Handle type = string_type();
  const hsize_t count = texts.size();
  const Handle space = own(H5Screate_simple(1, &count, nullptr), H5Sclose, name);
  const Handle attribute =
      own(H5Acreate2(object, name, type.id(), space.id(), H5P_DEFAULT, H5P_DEFAULT), H5Aclose, name);
  if (texts.empty()) return;
  std::vector<const char*> pointers;
  for (const auto& text : texts) pointers.push_back(text.c_str());
  check(H5Awrite(attribute.id(), type.id(), pointers.data()), name);
}

void write_attribute(hid_t object, const char* name, long long number) {
  const Handle space = own(H5Screate(H5S_SCALAR), H5Sclose, name);
  const Handle attribute =
      own(H5Acreate2(object, name, H5T_STD_I64LE, space.id(), H5P_DEFAULT, H5P_DEFAULT), H5Aclose, name);
  check(H5Awrite(attribute.id(), H5T_NATIVE_LLONG, &number), name);
}

bool has_attribute(hid_t object, const char* name) { return H5Aexists(object, name) > 0; }

std::string read_text_attribute(hid_t object, const char* name) {
  auto texts = read_texts_attribute(object, name);
  if (texts.size() != 1) throw CallFailure(fmt::format("attribute {}: one text is needed", name));
  return std::move(texts.front());
}

std::vector<std::string> read_texts_attribute(hid_t object, const char* name) {
  const Handle attribute = own(H5Aopen(object, name, H5P_DEFAULT), H5Aclose, name);
  const Handle stored = own(H5Aget_type(attribute.id()), H5Tclose, name);
  require_text(stored.id(), name);
  const Handle space = own(H5Aget_space(attribute.id()), H5Sclose, name);
  const auto count = H5Sget_simple_extent_npoints(space.id());
  if (count < 0) fail(name);
  std::vector<char*> pointers(static_cast<std::size_t>(count));
  if (count == 0) return {};
  const Handle type = string_type();
  check(H5Aread(attribute.id(), type.id(), pointers.data()), name);
  return take(pointers, type.id(), space.id());
}

long long read_number_attribute(hid_t object, const char* name) {
  const Handle attribute = own(H5Aopen(object, name, H5P_DEFAULT), H5Aclose, name);
  const Handle space = own(H5Aget_space(attribute.id()), H5Sclose, name);
  if (H5Sget_simple_extent_npoints(space.id()) != 1)
    throw CallFailure(fmt::format("attribute {}: one number is needed", name));
  long long number = 0;
  check(H5Aread(attribute.id(), H5T_NATIVE_LLONG, &number), name);
  return number;
}

std::vector<std::string> read_texts(hid_t dataset, hsize_t n) {
  if (n == 0) return {};
  const Handle stored = own(H5Dget_type(dataset), H5Tclose, "text");
  require_text(stored.id(), "text");
  const Handle space = own(H5Dget_space(dataset), H5Sclose, "text");
  const hsize_t start = 0;
  check(H5Sselect_hyperslab(space.id(), H5S_SELECT_SET, &start, nullptr, &n, nullptr), "text");
  const Handle memory = own(H5Screate_simple(1, &n, nullptr), H5Sclose, "text");
  std::vector<char*> pointers(n);
  const Handle type = string_type();
  check(H5Dread(dataset, type.id(), memory.id(), space.id(), H5P_DEFAULT, pointers.data()), "text");
  return take(pointers, type.id(), memory.id());
}

std::string read_text(hid_t dataset) {
  if (!extent(dataset).empty()) throw CallFailure("text: a single one is needed");
  const Handle stored = own(H5Dget_type(dataset), H5Tclose, "text");
  require_text(stored.id(), "text");
  const Handle space = own(H5Dget_space(dataset), H5Sclose, "text");
  const Handle type = string_type();
  std::vector<char*> pointers(1);
  check(H5Dread(dataset, type.id(), H5S_ALL, H5S_ALL, H5P_DEFAULT, pointers.data()), "text");
  return take(pointers, type.id(), space.id()).front();
}

}  // namespace sinewright::record
