#pragma once

#include <limits>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "quantity/invalid_input.h"

namespace sinewright::model {

constexpr double no_limit = std::numeric_limits<double>::infinity();

/// One loop: output = gain·e + integral·∫e dt + derivative·d/dt e, cut to ±limit. What the output is, and so the units, depends on
/// the loop below it: speed loop [rad/s], current loop [A], or none [V].
struct Loop {
  double gain = 0;
  double integral = 0;           ///< gain per second
  double derivative = 0;         ///< of the position loop
  double derivative_filter = 0;  ///< time constant on the derivative [s], 0: none
  double limit = no_limit;
};

/// What the motor needs anyway, added below the loops so that they only mend the rest.
struct FeedForward {
  double speed = 0;             ///< against the back-EMF [V s/rad], times the set point's rate
  double friction = 0;          ///< with the sign of the set point's rate [A] with a current loop, else [V]
  double return_at_zero = 0;    ///< against the return cord with the shaft at 0; as friction
  double return_per_angle = 0;  ///< and its rise [A/rad] or [V/rad]
};

/// A cascade: position, speed, current; any of them, each feeding the next one that is there, the last one the motor.
struct Loops {
  enum class AntiWindup { clamp, none };
  std::optional<Loop> position, speed, current;
  FeedForward feed_forward;
  AntiWindup anti_windup = AntiWindup::clamp;  ///< clamp: an integral stands still while the output below it is cut
  double speed_filter = 0;                     ///< time constant on the speed that is made of readings [s], 0: none
};

/// Firmware of a drive, sampled in time. Laws: docs/theory/control.md.
struct Controller {
  int drive = -1;            ///< index into Model::drives
  double period = 1e-3;      ///< [s]
  double voltage_limit = 0;  ///< of its output, either way [V]
  std::variant<Loops> program;
};

struct MoveStep {};
/// Speed rises evenly, stays, falls evenly.
struct MoveTrapezoid {
  double speed = 0;         ///< at most [rad/s]
  double acceleration = 0;  ///< [rad/s²]
};
struct MoveMinimumJerk {
  double time = 0;  ///< [s]
};
using Move = std::variant<MoveStep, MoveTrapezoid, MoveMinimumJerk>;

// What the timeline asks of a controller:

struct SetPosition {
  double angle = 0;  ///< of the output shaft, as the sensor counts it [rad]
  Move move;
};
struct SetSpeed {
  double speed = 0;  ///< of the output shaft [rad/s]
};
struct SetCurrent {
  double current = 0;  ///< of the motor [A]
};
/// Goes after a recorded motion.
struct SetRecorded {
  std::string file;
  std::vector<double> time;   ///< from the command on [s], strictly increasing
  std::vector<double> angle;  ///< [rad]; linear in between, constant outside
};

}  // namespace sinewright::model
