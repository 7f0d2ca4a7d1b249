#pragma once

#include "drive/cascade.h"
#include "model/control.h"

namespace sinewright::drive {

enum class HoldPhase { open, closing, squeezing, easing, holding, opening };

/// What a hold routine remembers from sample to sample.
struct HoldMemory {
  HoldPhase phase = HoldPhase::open;
  double since = 0;          ///< when the phase began [s]
  double touching_since = -1;  ///< since when the readings look like touch [s]; negative: they do not
  double reference = 0;      ///< reading at the end of the last squeezing [rad]
  double kept_current = 0;   ///< down to which it eases [A]; 0: none
  int tightened = 0;         ///< how often it slipped
};

/// What it asks of the driver until its next sample.
struct HoldOutput {
  bool off = true;
  double voltage = 0;        ///< [V]
  double current_limit = 0;  ///< [A]
};

/// One sample of the routine. @param speed  made of the readings [rad/s]. Laws: docs/theory/control.md, "Hold routine".
[[nodiscard]] HoldOutput step(const model::HoldRoutine& routine, double time, bool grasp, const Seen& seen, double speed, HoldMemory& memory);

}  // namespace sinewright::drive
