#pragma once

#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

#include "model/bill.h"
#include "model/packing.h"

namespace sinewright::model {

/// Normal noise at a converter's input, the same in every run with the same seed.
struct Noise {
  double rms = 0;          ///< [V], or [A] of a current sense
  std::uint64_t seed = 1;
};

/// By how much a track departs from the straight line between its nominal ends, as a share of its range.
struct SineLinearity {
  double error = 0;  ///< amplitude [–]
  double waves = 2;  ///< over the range [–]
  double phase = 0;  ///< [rad]
};
struct TableLinearity {
  std::vector<double> position;  ///< 0 … 1, strictly rising
  std::vector<double> error;     ///< [–]; linear in between, constant outside
};
using Linearity = std::variant<SineLinearity, TableLinearity>;

struct Ripple {
  double amplitude = 0;  ///< [V]
  double frequency = 0;  ///< [Hz]
};

/// A turned resistor with a wiper, and the converter that reads it. A positive turn of its seat moves the wiper towards the upper end.
struct Potentiometer {
  double range = 0;                  ///< electrical [rad]
  double at_zero = 0;                ///< where the wiper stands on the track with the shaft at 0 [rad]
  std::optional<double> dead_band;   ///< [rad]; none: beyond the ends the wiper stays on the end
  Linearity linearity;
  double resistance = 0;             ///< of the track [Ω]; only with a load
  double load = 0;                   ///< from wiper to ground [Ω], 0: none
  double feed = 0;                   ///< voltage over the track [V]
  std::optional<double> reference;   ///< of the converter [V]; none: ratiometric
  int bits = 10;                     ///< of the converter
  Noise noise;
  Ripple ripple;                     ///< of the feed
};

/// Counts edges from where its power came on.
struct RelativeEncoder {
  int counts_per_turn = 0;  ///< edges, all of them
};

/// Tells the angle within one turn.
struct AbsoluteEncoder {
  int bits = 0;
  double at_zero = 0;  ///< what it stands at with the shaft at 0 [rad]
};

/// What lies between the seat and the sensor's own rotor.
struct SensorFit {
  double backlash = 0;             ///< whole play [rad of the seat]
  double torsional_stiffness = 0;  ///< of the collar [N m/rad]; 0: rigid
  double friction_torque = 0;      ///< of the sensor's rotor [N m]
};

/// What tells the angle of a drive, sampled in time. Laws: docs/theory/sensing.md.
struct Sensor {
  enum class Seat { shaft, rotor };
  /// `with_drive`: without power while the drive is switched off, and before its first command.
  enum class Power { always, with_drive };
  std::variant<Potentiometer, RelativeEncoder, AbsoluteEncoder> kind;
  Seat seat = Seat::shaft;
  double turns = 1;    ///< of the sensor for one of its seat
  SensorFit fit;
  Power power = Power::always;
  double period = 1e-3;  ///< of sampling [s]
  Price price = std::nullopt;
  std::optional<Outline> outline = std::nullopt;
};

/// Reads the motor's current, sampled in time.
struct CurrentSense {
  double low = 0, high = 0;   ///< range of the converter [A]
  int bits = 10;
  double gain_error = 0;      ///< [–]
  double offset = 0;          ///< [A]
  Noise noise;                ///< rms in A
  double time_constant = 0;   ///< of the low-pass before it [s], 0: none
  double period = 1e-3;       ///< of sampling [s]
};

}  // namespace sinewright::model
