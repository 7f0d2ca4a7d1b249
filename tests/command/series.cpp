// Prints a record as text: outcome, number of rows, last time, then the bits of every number of the first rows.
// usage: command_series RECORD [ROWS]

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <string>

#include "record/reader.h"

int main(int argc, char** argv) {
  if (argc < 2) return 2;
  try {
    const auto record = sinewright::record::read_record(argv[1]);
    const std::size_t n = record.time.size();
    std::string outcome = record.outcome;  // on one line
    std::replace(outcome.begin(), outcome.end(), '\n', '|');
    std::printf("%s\n%zu\n%.17g\n", outcome.c_str(), n, n > 0 ? record.time.back() : -1.0);
    const std::size_t shown = argc > 2 ? std::min<std::size_t>(n, std::strtoul(argv[2], nullptr, 10)) : n;
    for (std::size_t row = 0; row < shown; ++row) std::printf("time %a\n", record.time[row]);
    for (std::size_t c = 0; c < record.channels.size(); ++c) {
      const std::size_t width = n > 0 ? record.data[c].size() / n : 0;
      std::printf("%s", record.channels[c].path.c_str());
      for (std::size_t i = 0; i < shown * width; ++i) std::printf(" %a", record.data[c][i]);
      std::printf("\n");
    }
    if (argc > 2) return 0;
    for (const auto& event : record.events)
      std::printf("event %a %s %s %s\n", event.time, event.kind.c_str(), event.subject.c_str(), event.detail.c_str());
    for (const auto& value : record.summary) std::printf("summary %s %a %s\n", value.key.c_str(), value.value, value.unit.c_str());
  } catch (const std::exception& error) {
    std::fprintf(stderr, "%s\n", error.what());
    return 1;
  }
  return 0;
}
