#pragma once

#include <cstdint>

#include "model/sensor.h"

namespace sinewright::drive {

/// One sample of an angle sensor, on its way from the sensor's rotor to the number that the firmware has. All are angles of the seat
/// [rad], so that the difference of two neighbours is the error that lies between them.
struct AngleSample {
  double rotor = 0;    ///< where the sensor's rotor stands
  double track = 0;    ///< what its track or disc shows: with linearity, load, ends, lost zero
  double signal = 0;   ///< with noise and ripple
  double reading = 0;  ///< after the converter
  double count = 0;    ///< what the converter or counter says
  bool off_track = false;  ///< the wiper stands in the dead band
};

/// What an encoder's firmware remembers from sample to sample.
struct EncoderMemory {
  double zero = 0;   ///< relative: edges passed when the power came on
  double last = 0;   ///< absolute: count of the last sample
  double turns = 0;  ///< absolute: counted since the power came on
};

/// A potentiometer's sample. Laws: docs/theory/sensing.md.
/// @param turns  g: turns of the sensor for one of its seat. @param noise  [V]. @param ripple  of the feed [V].
[[nodiscard]] AngleSample sample(const model::Potentiometer& potentiometer, double turns, double rotor, double noise, double ripple);

/// Share of the track at which the wiper of a straight, unloaded track would stand, and what this one shows there.
[[nodiscard]] double track_share(const model::Potentiometer& potentiometer, double share);

[[nodiscard]] AngleSample sample(const model::RelativeEncoder& encoder, double turns, double rotor, const EncoderMemory& memory);
[[nodiscard]] AngleSample sample(const model::AbsoluteEncoder& encoder, double turns, double rotor, EncoderMemory& memory);

/// A sample whose count is given, whatever the rotor does: of a sensor that is stuck or cut off. What it is wrong by is put down to its track.
[[nodiscard]] AngleSample sample_of_count(const model::Sensor& sensor, double turns, double rotor, double count, EncoderMemory& memory);

/// The count that comes nearest to a reading [rad of the seat], in the range of the converter.
[[nodiscard]] double count_of(const model::Sensor& sensor, double turns, double reading);

/// How many counts a converter has; infinite for a relative encoder.
[[nodiscard]] double counts(const model::Sensor& sensor);

/// Of its random numbers.
[[nodiscard]] std::uint64_t seed_of(const model::Sensor& sensor);

/// What the encoder's memory holds when its power comes on with the rotor standing here.
[[nodiscard]] EncoderMemory power_on(const model::RelativeEncoder& encoder, double turns, double rotor);
[[nodiscard]] EncoderMemory power_on(const model::AbsoluteEncoder& encoder, double turns, double rotor);

/// One step of the reading, as an angle of the seat [rad].
[[nodiscard]] double angle_step(const model::Sensor& sensor, double turns);
/// Standard deviation of the noise, as an angle of the seat [rad].
[[nodiscard]] double angle_noise(const model::Sensor& sensor, double turns);

}  // namespace sinewright::drive
