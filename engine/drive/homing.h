#pragma once

#include "drive/cascade.h"
#include "model/control.h"

namespace sinewright::drive {

enum class HomingPhase { pays_out, winds, found, gave_up };

/// What the search for the zero remembers from sample to sample.
struct HomingMemory {
  HomingPhase phase = HomingPhase::pays_out;
  double began = -1;       ///< when it began [s]; negative: not yet
  double from = 0;         ///< first reading [rad]
  double there_since = -1; ///< since when the readings look like the end [s]; negative: they do not
  double offset = 0;       ///< what is added to a reading from the end on [rad]
};

/// One sample of the search. @return voltage that it asks for [V]. Laws: docs/theory/control.md, "Homing".
[[nodiscard]] double step(const model::Homing& homing, double time, const Seen& seen, double speed, HomingMemory& memory);

}  // namespace sinewright::drive
