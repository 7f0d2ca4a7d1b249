#pragma once

#include "drive/set_point.h"
#include "model/control.h"

namespace sinewright::drive {

/// What a controller's inputs say at one of its samples.
struct Seen {
  double angle = 0;    ///< of the output shaft [rad]
  double current = 0;  ///< of the motor [A]
};

/// The shaft's speed as a difference of readings.
struct SpeedReading {
  bool began = false;
  double time = 0;      ///< of the last reading [s]
  double angle = 0;     ///< last reading [rad]
  double turned = 0;    ///< from the one before to the last, a second [rad/s]
  double filtered = 0;  ///< after the low-pass [rad/s]
};

/// Takes the next reading. @param filter  time constant of the low-pass [s], 0: none.
void take(SpeedReading& speed, double time, double angle, double filter);

/// What it is after: the outermost loop that acts, and that loop's set point.
struct Goal {
  enum class Kind { none, position, speed, current, force };  // force: a current that is worked out before
  Kind kind = Kind::none;
  SetPoint position;   ///< of kind `position`
  double speed = 0;    ///< of kind `speed` [rad/s]
  double current = 0;  ///< of kind `current` or `force` [A]
};

/// What it remembers from sample to sample.
struct CascadeMemory {
  double derivative = 0;  ///< filtered, of the position error [rad/s]
  double position_part = 0, speed_part = 0, current_part = 0;  ///< what the integrals add to their loops' outputs
};

/// What it works out at a sample.
struct CascadeOutput {
  double voltage = 0;      ///< held until the next sample [V]
  double speed = 0;        ///< set point of the speed loop [rad/s]; 0 where there is none
  double current = 0;      ///< set point of the current loop [A]; 0 where there is none
};

/// One sample of the cascade. @param period  T [s]. @param voltage_limit  [V]. Laws: docs/theory/control.md, "Loops".
[[nodiscard]] CascadeOutput step(const model::Loops& loops, double period, double voltage_limit, const Goal& goal, const Seen& seen,
                                 const SpeedReading& speed, CascadeMemory& memory);

}  // namespace sinewright::drive
