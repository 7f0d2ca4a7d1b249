#pragma once

#include <limits>
#include <optional>
#include <variant>

namespace sinewright::model {

// What may fail on the timeline. Laws: docs/theory/faults.md.

/// The angle sensor goes on saying one thing.
struct SensorStuck {
  int drive = -1;
  std::optional<double> reading;  ///< [rad]; none: what it said last
};

/// The wire from the angle sensor to the converter is off.
struct SensorWireOff {
  enum class Reads {
    low,      ///< the lowest count: a pull-down
    high,     ///< the highest: a pull-up
    floating  ///< any count, each as likely, at every sample: nothing holds the input
  };
  int drive = -1;
  Reads reads = Reads::low;
};

/// The supply's open-circuit voltage is another one.
struct SupplyDip {
  int supply = -1;
  double voltage = 0;  ///< [V]
};

/// The winding is open: no current, whatever the driver does.
struct MotorDead {
  int drive = -1;
};

/// The cord parts; with nothing to hold its end, all of it goes slack.
struct CordBroken {
  int cord = -1;
  int body = -1;  ///< in which it parts, index; −1: where it is loaded most for its strength
};

/// The cord jumps off the pulley and from now on winds on the bare shaft.
struct CordOffPulley {
  int cord = -1;
  double radius = 0;            ///< of the shaft [m]
  std::optional<double> slack;  ///< cord that comes free [m]; none: that of the turns wound in since the straight finger
};

using Fault = std::variant<SensorStuck, SensorWireOff, SupplyDip, MotorDead, CordBroken, CordOffPulley>;

struct FaultEntry {
  double time = 0;                                         ///< [s]
  double lasts = std::numeric_limits<double>::infinity();  ///< [s]; what breaks mechanically stays so
  Fault fault;
};

}  // namespace sinewright::model
