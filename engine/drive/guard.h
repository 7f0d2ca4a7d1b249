#pragma once

#include "drive/cascade.h"
#include "drive/thermal.h"
#include "model/control.h"
#include "model/drive.h"

namespace sinewright::drive {

/// What a controller's guards remember from sample to sample.
struct GuardMemory {
  double time = 0;           ///< of the last sample [s]
  double stalled_since = -1; ///< since when the readings look like a stall [s]; negative: they do not
  double current = 0;        ///< last reading [A]; 0 once the drive is off
  ThermalState estimate;     ///< of the motor [K]
};

enum class Trip { none, stall, heat, no_zero };

/// What the guards remember at the start of a run.
[[nodiscard]] GuardMemory begin_guard(const model::Controller& controller);

/// One sample of the guards. The estimate goes on from the last sample with the current that was read then; friction's heat is left out,
/// the motor's thermal data are taken as they are.
[[nodiscard]] Trip step(const model::Controller& controller, const model::Motor& motor, double time, const Seen& seen, double speed,
                        GuardMemory& memory);

}  // namespace sinewright::drive
