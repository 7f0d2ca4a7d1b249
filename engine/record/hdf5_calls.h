#pragma once

// The HDF5 C API with checked results and handles that close themselves. Private to this floor.

#include <hdf5.h>

#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sinewright::record {

/// A call failed: what was being done, and why. Turned into a RecordError with the file's name at the public doors.
class CallFailure : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// While one lives, HDF5 prints no error stack of its own; afterwards the caller's setting is back.
class QuietErrors {
 public:
  QuietErrors();
  ~QuietErrors();
  QuietErrors(const QuietErrors&) = delete;
  QuietErrors& operator=(const QuietErrors&) = delete;

 private:
  H5E_auto2_t function_ = nullptr;
  void* data_ = nullptr;
};

/// Owns an HDF5 identifier. Closing may fail on a full disk; a destructor can only let that pass, so whoever needs to
/// know calls `close` first.
class Handle {
 public:
  using Closer = herr_t (*)(hid_t);
  Handle() = default;
  Handle(hid_t id, Closer closer) : id_(id), closer_(closer) {}
  Handle(Handle&& other) noexcept : id_(std::exchange(other.id_, H5I_INVALID_HID)), closer_(other.closer_) {}
  Handle& operator=(Handle&& other) noexcept {
    if (this != &other) {
      reset();
      id_ = std::exchange(other.id_, H5I_INVALID_HID);
      closer_ = other.closer_;
    }
    return *this;
  }
  ~Handle() { reset(); }
  [[nodiscard]] hid_t id() const { return id_; }
  /// @throws CallFailure if HDF5 cannot close it; the handle is empty afterwards in any case.
  void close(const char* doing);

 private:
  void reset();
  hid_t id_ = H5I_INVALID_HID;
  Closer closer_ = nullptr;
};

/// A file that is being written. Unless `close` succeeds, its destructor lets HDF5 write no more to the disk.
///
/// HDF5 has no way to give up a file: closing one writes what is pending, which after a failure may be wrong (a length
/// that the full disk refused, for instance). So the descriptor is turned to a file in memory before the close.
class NewFile {
 public:
  explicit NewFile(Handle handle) : handle_(std::move(handle)) {}
  NewFile(NewFile&&) noexcept = default;
  NewFile& operator=(NewFile&&) = delete;
  ~NewFile();
  [[nodiscard]] hid_t id() const { return handle_.id(); }
  [[nodiscard]] int descriptor() const;
  /// @throws CallFailure
  void close();

 private:
  Handle handle_;
};

/// @throws CallFailure "<doing>: <cause>", the cause taken from HDF5's error stack or, better, from errno inside it.
[[noreturn]] void fail(std::string_view doing);
inline void check(herr_t status, std::string_view doing) {
  if (status < 0) fail(doing);
}
[[nodiscard]] inline Handle own(hid_t id, Handle::Closer closer, std::string_view doing) {
  if (id < 0) fail(doing);
  return {id, closer};
}

/// Variable-length UTF-8, which readers in Python see as str.
[[nodiscard]] Handle string_type();

[[nodiscard]] Handle open_group(hid_t place, const std::string& name);
/// A group without time stamps, so that equal records have equal bytes; children keep the order they were made in.
Handle make_group(hid_t place, const std::string& name);
/// Creation properties of a data set without time stamps.
[[nodiscard]] Handle dataset_properties();
[[nodiscard]] Handle open_dataset(hid_t place, const std::string& name);
/// Lengths along each dimension; empty for a scalar.
[[nodiscard]] std::vector<hsize_t> extent(hid_t dataset);

void write_attribute(hid_t object, const char* name, const std::string& text);
void write_attribute(hid_t object, const char* name, const std::vector<std::string>& texts);
void write_attribute(hid_t object, const char* name, long long number);
[[nodiscard]] bool has_attribute(hid_t object, const char* name);
[[nodiscard]] std::string read_text_attribute(hid_t object, const char* name);
[[nodiscard]] std::vector<std::string> read_texts_attribute(hid_t object, const char* name);
[[nodiscard]] long long read_number_attribute(hid_t object, const char* name);

/// The first `n` texts of a 1-D data set.
[[nodiscard]] std::vector<std::string> read_texts(hid_t dataset, hsize_t n);
[[nodiscard]] std::string read_text(hid_t dataset);

}  // namespace sinewright::record
