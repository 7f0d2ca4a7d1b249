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

/// What firmware must know to make a force by a motor current. Where nothing else is said it knows what the model has; a real one's data
/// are off by as much as its maker's measurements.
struct ForceByCurrent {
  double radius = 0;               ///< at which the cord leaves the pulley [m]
  double ratio = 1;
  double torque_constant = 0;      ///< [N m/A]
  double forward_efficiency = 1;
  double backward_efficiency = 1;
  double drag = 0;                 ///< of the gearhead, at the output [N m]
  double brush_drag = 0;           ///< of the brushes, turning [N m]
  double return_at_zero = 0;       ///< tension that the return cord takes, with the shaft at 0 [N]
  double return_per_angle = 0;     ///< and its rise [N/rad]
  double highest_current = no_limit;  ///< more is not asked for, either way [A]
  double share = 1;                ///< of the remaining tension that arrives where the force is wanted: 1 for the cord itself
};

/// Finds the zero of a sensor that has lost it: winds until the current says that the cord is taut, or an end is reached.
struct Homing {
  double pay_out = 0;             ///< before, by the reading, so that the cord is slack for certain [rad]
  double voltage = 0;             ///< paying out and winding [V]
  double current = 0;             ///< a reading from here on ... [A]
  double still_speed = no_limit;  ///< ... at no more than this speed ... [rad/s]
  double time = 0;                ///< ... for so long is the place ... [s]
  double angle = 0;               ///< ... where the shaft stands at this [rad]
  double give_up = 0;             ///< after this it switches off [s]
};

/// A cascade: position, speed, current; any of them, each feeding the next one that is there, the last one the motor.
struct Loops {
  enum class AntiWindup { clamp, none };
  std::optional<Loop> position, speed, current;
  FeedForward feed_forward;
  std::optional<ForceByCurrent> force;  ///< feeds the current loop
  std::optional<Homing> homing;         ///< before anything else, when the controller starts
  AntiWindup anti_windup = AntiWindup::clamp;  ///< clamp: an integral stands still while the output below it is cut
};

enum class Leads { open, shorted };

/// Grasps, then holds with as little current as friction allows, and opens only when asked. It tells touch, slip and openness by the
/// readings alone; its currents are limits that the driver keeps.
struct HoldRoutine {
  double voltage = 0;           ///< winding in: closing, squeezing, holding [V]
  double approach_current = 0;  ///< at most, while closing [A]
  double touch_current = 0;     ///< a reading from here on ... [A]
  double still_speed = 0;       ///< ... at no more than this speed ... [rad/s]
  double touch_time = 0;        ///< ... for so long counts as touch [s]
  double squeeze_current = 0;   ///< [A]
  double squeeze_time = 0;      ///< [s]
  double ease_time = 0;         ///< in which the current goes down evenly [s]
  double slip_back = 0;         ///< a reading so far behind that at the end of squeezing counts as slipping [rad]
  double current_step = 0;      ///< by which the current that is kept rises after a slip [A]
  double watch = 0;             ///< time between two looks while it holds [s]
  Leads leads = Leads::shorted; ///< while it holds without current, and when open
  double open_voltage = 0;      ///< paying out [V], > 0
  double open_to = 0;           ///< reading at which it is open [rad]
  double open_time = 0;         ///< opening ends after this in any case [s]
};

/// A number with a name, as the user wrote it.
struct NamedNumber {
  std::string name;
  double value = 0;  ///< SI
  std::string unit;  ///< as written; empty for a plain number
  Place place;
};

/// A program of the user's own, in a shared library behind engine/drive/sinewright_firmware.h.
struct OwnFirmware {
  std::string library;  ///< path of the file
  Place place;          ///< where it is named
  std::vector<NamedNumber> parameters;
};

/// Switches off a motor that stands still under current.
struct StallGuard {
  double current = 0;  ///< reading from here on [A]
  double speed = 0;    ///< and no faster than this [rad/s]
  double time = 0;     ///< for so long [s]
};

/// Switches off by the winding's temperature as the firmware estimates it from its current readings.
struct HeatGuard {
  double highest = 0;  ///< [K]
  double ambient = 0;  ///< as the firmware takes it, also at the start [K]
};

/// Firmware of a drive, sampled in time. Laws: docs/theory/control.md.
struct Controller {
  int drive = -1;            ///< index into Model::drives
  double period = 1e-3;      ///< [s]
  double voltage_limit = 0;  ///< of its output, either way [V]
  double brown_out = 0;      ///< below this voltage of its supply it is reset, the driver off, leads open [V]; 0: it goes on at any
  double boot_time = 0;      ///< from when the voltage is back until it takes up what it was asked last [s]
  double speed_filter = 0;   ///< time constant on the speed that is made of readings [s], 0: none
  std::variant<Loops, HoldRoutine, OwnFirmware> program;
  std::optional<StallGuard> stall;
  std::optional<HeatGuard> heat;
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
/// Asks for a force, made by a current.
struct SetForce {
  double force = 0;  ///< see ForceByCurrent [N]
};
/// Asks a hold routine to grasp, or to open.
struct AskHold {
  bool grasp = true;
};
/// Goes after a recorded motion.
struct SetRecorded {
  std::string file;
  std::vector<double> time;   ///< from the command on [s], strictly increasing
  std::vector<double> angle;  ///< [rad]; linear in between, constant outside
};

}  // namespace sinewright::model
