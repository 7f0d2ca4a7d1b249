#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "drive/angle_sensor.h"
#include "drive/current_sense.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// The last sample of a drive's angle sensor. Angles are those of the output shaft.
struct AngleReadout {
  double time = 0;    ///< when it was taken [s]
  double shaft = 0;   ///< where the output shaft stood then [rad]
  drive::AngleSample sample;
  bool powered = false;  ///< now; the sample stays the last one that was taken
  bool fresh = false;    ///< a sample was taken since the power came on
};

/// The last sample of a drive's current sense.
struct CurrentReadout {
  double time = 0;      ///< [s]
  double current = 0;   ///< of the motor then [A]
  double filtered = 0;  ///< after the low-pass [A]
  drive::CurrentSample sample;
};

/// A time at which a sensor is due, and what it says from then on: a new sample, or without power the last one still.
struct DueReadout {
  double time = 0;  ///< [s]
  AngleReadout readout;
};

/// What is wrong with an angle sensor: its count no longer comes from where it stands.
struct SensorFault {
  enum class Kind { none, stuck, low, high, floating };
  Kind kind = Kind::none;
  std::optional<double> reading = std::nullopt;  ///< of a stuck one [rad]; none: its last count
  bool operator==(const SensorFault&) const = default;
};

/// Size of an error over all samples, or over time.
struct ErrorSize {
  double worst = 0, squares = 0, weight = 0;
  void add(double error, double by = 1);
  /// An error that goes in a straight line from one value to another while the weight `by` passes.
  void add_line(double first, double last, double by);
  void add_line(const Vector3d& first, const Vector3d& last, double by);
  [[nodiscard]] double rms() const;
};

/// Errors of an angle sensor, in the order in which they come about.
struct AngleErrors {
  ErrorSize fit, track, noise, quantisation, whole;
};

/// Samples every sensor of a system at its own times while a run goes on. It only looks on: steps neither end at samples nor depend on
/// them; between two accepted states the shafts follow a monotone cubic, the currents a line. See docs/theory/sensing.md.
class Sensing {
 public:
  explicit Sensing(const System& system);

  /// Takes the situation at the start, and the samples at time 0.
  void begin(const Stage& stage, const State& state);
  /// Takes the samples of an accepted step. @param off  per drive: its power was off over the step. Allocates nothing.
  void advance(const Stage& stage, const State& state, const std::vector<bool>& off);

  /// From the next sample on. A relative encoder that works again has lost what passed meanwhile.
  void set_fault(std::size_t drive, const SensorFault& fault);

  /// Per drive; of a drive without a sensor it stays as it is.
  [[nodiscard]] const std::vector<AngleReadout>& angles() const { return angles_; }
  /// Per drive: the times of the last step at which its sensor was due.
  [[nodiscard]] const std::vector<std::vector<DueReadout>>& due() const { return due_; }
  [[nodiscard]] const std::vector<CurrentReadout>& currents() const { return currents_; }
  [[nodiscard]] const std::vector<AngleErrors>& angle_errors() const { return angle_errors_; }
  [[nodiscard]] const std::vector<ErrorSize>& current_errors() const { return current_errors_; }

 private:
  struct Before {
    double output = 0, output_speed = 0, rotor = 0, rotor_speed = 0, current = 0;
  };
  void take_angle(std::size_t d, double time, double shaft, double sensor_rotor);
  [[nodiscard]] double forced_count(std::size_t d) const;
  void take_current(std::size_t d, double time, double current, double filtered);
  [[nodiscard]] Before look(std::size_t d, const Stage& stage, const State& state) const;

  const System& system_;
  double time_ = 0;
  std::vector<Before> before_;
  std::vector<double> sensor_rotor_, filtered_;
  std::vector<drive::EncoderMemory> memory_;
  std::vector<SensorFault> fault_;
  std::vector<std::uint64_t> next_angle_, next_current_;  // numbers of the next samples
  std::vector<AngleReadout> angles_;
  std::vector<std::vector<DueReadout>> due_;
  std::vector<CurrentReadout> currents_;
  std::vector<AngleErrors> angle_errors_;
  std::vector<ErrorSize> current_errors_;
};

/// Turns of the sensor for one turn of the output shaft.
[[nodiscard]] double sensor_turns(const model::Drive& drive);
/// Half width of the play between seat and sensor, as an angle of the output shaft [rad].
[[nodiscard]] double sensor_half_play(const model::Drive& drive);

}  // namespace sinewright::simulation
