#pragma once

#include <functional>
#include <string>
#include <vector>

#include "simulation/recording.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::strength {

/// What loads a part at an instant.
struct PartLoad {
  double value = 0;  ///< SI
  double share = 1;  ///< of the capacity that is left at this place, for instance of a bent cord
  int place = 0;     ///< index into PartCheck::places
};

/// One margin, ready to be evaluated: capacity(size) · share beside demand(size, load).
struct PartCheck {
  std::string name;       ///< for instance "pin_bending.MCP"
  std::string check;      ///< the same in words
  std::string unit;       ///< of capacity and demand
  std::string load_name;  ///< for instance "tension of flexor"
  std::string load_unit;
  std::vector<std::string> places;  ///< where the load may act, if there are several
  std::function<PartLoad(const simulation::Stage&, const simulation::State&)> load;  ///< allocates nothing
  std::function<double(double size, double load)> demand;
  std::function<double(double size)> capacity;
  std::string size_key;          ///< key of the dimension that helps; empty: none
  double size = 0;               ///< its present value [SI]
  std::string size_unit = "mm";  ///< in which it is shown
};

struct PartChecks {
  std::vector<PartCheck> checks;
  std::vector<simulation::NotChecked> not_checked;
  std::vector<std::string> cautions;
};

/// All margins that a system's parts have, from the description of each part. docs/user-guide/margins.md lists them.
/// @throws InvalidInput if a dimension is one that a law cannot use.
[[nodiscard]] PartChecks part_checks(const simulation::System& system);

}  // namespace sinewright::strength
