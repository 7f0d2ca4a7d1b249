#include "sample.h"

#include <stdlib.h>

#include <cmath>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace sample {

using namespace sinewright::record;

std::vector<Channel> channels() {
  std::vector<Channel> all;
  for (const std::string joint : {"MCP", "PIP", "DIP"}) {
    all.push_back({"/joints/" + joint + "/angle", "radian", "flexion of " + joint, {}});
    all.push_back({"/joints/" + joint + "/rate", "radian second-1", "rate of flexion of " + joint, {}});
  }
  all.push_back({"/cords/flexor/tension", "N", "tension of each span", {"pulley", "proximal", "middle", "tip"}});
  all.push_back({"/cords/flexor/slack", "m", "length that hangs loose", {"whole"}});
  all.push_back({"/drives/thumb motor/winding", "degree_Celsius", "temperature of the winding, µ and ° in the text", {}});
  all.push_back({"/energy/supply", "J", "energy from the supply", {}});
  return all;
}

Inputs inputs() {
  Inputs inputs;
  inputs.engine_version = "0.1.0+test";
  inputs.scenario_path = "scenarios/close_on_rod.yaml";
  inputs.files = {{"scenarios/close_on_rod.yaml", "model: ../models/finger.yaml\n# µ = 0.12\n"},
                  {"../models/finger.yaml", ""},
                  {"../models/parts/tip.stl", std::string("solid\0\x80\xff\n", 9)}};
  inputs.overrides = {"cord.friction=0.2", "drive.supply=5 V"};
  inputs.seed = 0xfedcba9876543210ULL;
  return inputs;
}

double time_of(std::size_t row) { return 1e-3 * static_cast<double>(row); }

double value(std::size_t row, std::size_t place) {
  return std::sin(1e-3 * static_cast<double>(row)) + static_cast<double>(place) * static_cast<double>(row + 1);
}

std::size_t width() {
  std::size_t sum = 0;
  for (const auto& channel : channels()) sum += static_cast<std::size_t>(channel.width());
  return sum;
}

void fill(std::size_t row, std::span<double> values) {
  for (std::size_t place = 0; place < values.size(); ++place) values[place] = value(row, place);
}

bool has_event(std::size_t row) { return row % 100 == 0; }

Event event_of(std::size_t row) {
  return {time_of(row), row % 200 == 0 ? "slip" : "stick", "flexor, bend " + std::to_string(row % 7),
          std::string(row / 100 % 50, 'x') + " after row " + std::to_string(row)};
}

std::size_t count_wrong(const Record& record) {
  std::size_t wrong = 0;
  const auto whole_width = width();
  for (std::size_t row = 0; row < record.time.size(); ++row) {
    bool good = record.time[row] == time_of(row);
    std::size_t place = 0;
    for (std::size_t c = 0; c < record.channels.size(); ++c) {
      const auto wide = static_cast<std::size_t>(record.channels[c].width());
      for (std::size_t i = 0; i < wide; ++i, ++place)
        good = good && record.data[c].at(row * wide + i) == value(row, place);
    }
    wrong += good && place == whole_width ? 0 : 1;
  }
  // An event comes just before its row, so it reaches the file with it at the latest.
  std::size_t next = 0;
  for (std::size_t row = 0; row < record.time.size(); ++row)
    if (has_event(row)) {
      if (next >= record.events.size()) {
        ++wrong;
        continue;
      }
      const auto expected = event_of(row);
      const auto& found = record.events[next++];
      wrong += found.time == expected.time && found.kind == expected.kind && found.subject == expected.subject &&
                       found.detail == expected.detail
                   ? 0
                   : 1;
    }
  return wrong;
}

std::string bytes_of(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

Folder::Folder() {
  std::string pattern = (std::filesystem::temp_directory_path() / "sinewright-record-XXXXXX").string();
  if (!mkdtemp(pattern.data())) throw std::runtime_error("no temporary folder");
  path_ = pattern;
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

}  // namespace sample
