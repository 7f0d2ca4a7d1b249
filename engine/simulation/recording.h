#pragma once

#include <string>
#include <utility>
#include <vector>

namespace sinewright::simulation {

/// One data set of a record: a value, or a few side by side, for every sample.
struct Channel {
  std::string path;                  ///< for instance "/joints/MCP/angle"
  std::string unit;                  ///< UDUNITS notation, for instance "radian", "N m", "K"
  std::string description;
  std::vector<std::string> columns;  ///< names of the columns; empty for a single value
  [[nodiscard]] int width() const { return columns.empty() ? 1 : static_cast<int>(columns.size()); }
};

/// Something that happened at an instant.
struct Event {
  double time = 0;      ///< [s]
  std::string kind;     ///< for instance "contact", "lift-off", "stick", "slip", "stop", "slack", "command", "caution"
  std::string subject;  ///< joint, drive, cord or contact that it happened to
  std::string detail;
};

/// One number of the summary.
struct SummaryValue {
  std::string key;          ///< for instance "grip_force.distal"
  double value = 0;         ///< SI (temperatures in K); NaN: did not occur
  std::string unit;         ///< unit of `value`, in the notation of quantity/, for instance "N" or "s"
  std::string description;
};

/// The outcome of one requirement.
struct Verdict {
  std::string quantity;
  std::string demand;   ///< in words with a unit, for instance "at least 5 N"
  double value = 0;     ///< SI
  bool met = false;
  std::string unit = "1";  ///< of `value`, in the notation of quantity/
};

/// One margin of a run, capacity / demand at the instant that governs.
struct MarginValue {
  std::string name;      ///< for instance "seat_punching.flexor.pulley"
  std::string check;     ///< the same in words
  double capacity = 0;   ///< SI
  double demand = 0;     ///< SI
  std::string unit;      ///< of both, in the notation of quantity/
  double ratio = 0;      ///< may be infinite: nothing was asked of it
  double time = 0;       ///< [s]
  std::string load;      ///< what asked for it, with its value
  double lost_at = 0;    ///< first instant at which the ratio was below 1 [s]; NaN: never
  std::string lost_load;        ///< what asked for it then; empty: never
  std::vector<double> posture;  ///< joint angles at `time` [rad], in the order of Margins::joints
};

/// A margin that cannot be worked out, since its part is not described.
struct NotChecked {
  std::string name, check;           ///< as in MarginValue
  std::vector<std::string> missing;  ///< keys of the model
};

/// What breaks first in a run.
struct Margins {
  std::vector<MarginValue> values;  ///< the smallest ratio first
  std::vector<NotChecked> not_checked;
  std::vector<std::string> cautions;  ///< what is thinner or narrower than its process makes soundly
  std::vector<std::string> joints;
};

}  // namespace sinewright::simulation
