#pragma once

#include <array>
#include <filesystem>
#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "record/channel.h"

/// The record of a limit: what was found, and every run that was made to find it. Layout: docs/record.md.
namespace sinewright::record {

/// One probing run.
struct KeptRun {
  std::vector<std::string> overrides;
  double value = 0;     ///< in the unit of the limit; NaN: the event did not come
  double rate = 0;      ///< of a ramp, SI per second; 0: a search
  bool holds = false;
  std::string outcome;
  double end_time = 0;  ///< [s]
  std::string subject;
  std::vector<std::pair<std::string, double>> posture;  ///< joint angles at the end [rad]
  std::vector<SummaryValue> summary;
  std::vector<Verdict> verdicts;
  std::vector<Event> events;
  std::vector<std::pair<double, double>> course;        ///< of a ramp: time [s] and what rose, SI
};

/// The limit of one variant.
struct KeptLimit {
  std::vector<std::string> place;  ///< value on each axis
  bool found = false, settled = false, monotone = true;
  double value = 0, error = 0;
  double time = 0;                 ///< of the event [s]
  std::string note;
  std::vector<KeptRun> runs;
  std::array<double, 3> direction{0, 0, 0};  ///< of a pull, world; zero: none
  std::string gave;                ///< of a pull: the finger's contact that gave first, and how; empty: none
  double gave_at = 0;              ///< what it had risen to then [N]
};

struct LimitRecord {
  Inputs inputs;                   ///< the first file is the limit file
  std::string name, quantity, unit, method;  ///< method: "ramp", "search" or "directions"
  bool logarithmic = false;
  std::vector<std::pair<std::string, std::vector<std::string>>> axes;
  std::vector<KeptLimit> limits;   ///< the last axis varies fastest; of directions that is the direction
  bool in_plane = false;           ///< of directions: they lie in a plane, evenly round it
};

/// Writes the whole file; it gets its name only when it is on the disk. @throws RecordError
void write_limit(const std::filesystem::path& file, const LimitRecord& record);

/// Whether the file is the record of a limit; false for anything else, readable or not.
[[nodiscard]] bool is_limit(const std::filesystem::path& file);

/// All but summaries, verdicts and events of the runs, which readers of HDF5 find in the file. @throws RecordError
[[nodiscard]] LimitRecord read_limit(const std::filesystem::path& file);

}  // namespace sinewright::record
