#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <vector>

#include "record/channel.h"
#include "record/reader.h"

// An invented record: every value follows from its row, so that a reader can tell right from wrong.
namespace sample {

std::vector<sinewright::record::Channel> channels();
sinewright::record::Inputs inputs();
double time_of(std::size_t row);
/// Value in a row of what `channels()` has side by side.
double value(std::size_t row, std::size_t place);
void fill(std::size_t row, std::span<double> values);
std::size_t width();
/// Every hundredth row has an event.
bool has_event(std::size_t row);
sinewright::record::Event event_of(std::size_t row);

/// Number of rows or events that differ from the sample, and of events that are missing up to the last row.
std::size_t count_wrong(const sinewright::record::Record& record);

std::string bytes_of(const std::filesystem::path& file);

/// A folder of its own that goes when this does.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

}  // namespace sample
