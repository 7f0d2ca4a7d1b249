#include "drive/angle_sensor.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "drive/quantiser.h"

namespace sinewright::drive {

namespace {

constexpr double turn = 2 * std::numbers::pi;

double deviation(const model::Linearity& linearity, double share) {
  if (const auto* sine = std::get_if<model::SineLinearity>(&linearity))
    return sine->error * std::sin(turn * sine->waves * share + sine->phase);
  const auto& table = std::get<model::TableLinearity>(linearity);
  const auto after = std::upper_bound(table.position.begin(), table.position.end(), share);
  if (after == table.position.begin()) return table.error.front();
  if (after == table.position.end()) return table.error.back();
  const auto i = static_cast<std::size_t>(after - table.position.begin());
  const double part = (share - table.position[i - 1]) / (table.position[i] - table.position[i - 1]);
  return table.error[i - 1] + part * (table.error[i] - table.error[i - 1]);
}

// Always 0 … whole, also below zero.
double wrapped(double value, double whole) { return value - whole * std::floor(value / whole); }

double steps_of(const model::AbsoluteEncoder& encoder) { return static_cast<double>(1L << encoder.bits); }

double step_of(const model::AbsoluteEncoder& encoder, double turns, double rotor) {
  const double count = std::floor(wrapped((encoder.at_zero + turns * rotor) / turn, 1) * steps_of(encoder));
  return std::min(count, steps_of(encoder) - 1);  // a share that rounds to 1
}

double edges_of(const model::RelativeEncoder& encoder, double turns, double rotor) {
  return std::floor(turns * rotor * encoder.counts_per_turn / turn);
}

// What the firmware makes of a count [rad of the seat].
double reading_of(const model::Potentiometer& p, double turns, double count) {
  return (Quantiser(0, 1, p.bits).reading(count) * p.reference.value_or(p.feed) / p.feed * p.range - p.at_zero) / turns;
}
double reading_of(const model::RelativeEncoder& encoder, double turns, double count) {
  return (count + 0.5) * (turn / (encoder.counts_per_turn * turns));
}
double reading_of(const model::AbsoluteEncoder& encoder, double turns, double count, const EncoderMemory& memory) {
  return (turn * (memory.turns + (count + 0.5) / steps_of(encoder)) - encoder.at_zero) / turns;
}

// The firmware takes the shorter way round for the one that was gone.
void count_turns(const model::AbsoluteEncoder& encoder, double count, EncoderMemory& memory) {
  const double change = count - memory.last;
  if (change > steps_of(encoder) / 2) memory.turns -= 1;
  if (change < -steps_of(encoder) / 2) memory.turns += 1;
  memory.last = count;
}

}  // namespace

double track_share(const model::Potentiometer& potentiometer, double share) {
  const double y = std::clamp(share + deviation(potentiometer.linearity, share), 0.0, 1.0);
  if (potentiometer.load == 0) return y;
  return y / (1 + y * (1 - y) * potentiometer.resistance / potentiometer.load);
}

AngleSample sample(const model::Potentiometer& p, double turns, double rotor, double noise, double ripple) {
  AngleSample result;
  result.rotor = rotor;
  double wiper = p.at_zero + turns * rotor;
  if (p.dead_band) wiper = wrapped(wiper, p.range + *p.dead_band);
  result.off_track = p.dead_band && wiper > p.range;
  const double share = result.off_track ? 0 : track_share(p, std::clamp(wiper / p.range, 0.0, 1.0));
  const auto angle = [&](double y) { return (y * p.range - p.at_zero) / turns; };
  const double reference = p.reference.value_or(p.feed);
  const double at_input = p.reference ? (share * (p.feed + ripple) + noise) / reference : share + noise / p.feed;
  const Quantiser converter(0, 1, p.bits);
  result.track = angle(share);
  result.signal = angle(at_input * reference / p.feed);
  result.count = converter.count(at_input);
  result.reading = reading_of(p, turns, result.count);
  return result;
}

AngleSample sample(const model::RelativeEncoder& encoder, double turns, double rotor, const EncoderMemory& memory) {
  const double step = turn / (encoder.counts_per_turn * turns);
  AngleSample result;
  result.rotor = rotor;
  result.count = edges_of(encoder, turns, rotor) - memory.zero;
  result.track = result.signal = rotor - memory.zero * step;
  result.reading = reading_of(encoder, turns, result.count);
  return result;
}

AngleSample sample(const model::AbsoluteEncoder& encoder, double turns, double rotor, EncoderMemory& memory) {
  AngleSample result;
  result.rotor = rotor;
  result.count = step_of(encoder, turns, rotor);
  count_turns(encoder, result.count, memory);
  // Turns that the firmware does not know of.
  const double passed = std::floor((encoder.at_zero + turns * rotor) / turn);
  result.track = result.signal = rotor + (memory.turns - passed) * turn / turns;
  result.reading = reading_of(encoder, turns, result.count, memory);
  return result;
}

AngleSample sample_of_count(const model::Sensor& sensor, double turns, double rotor, double count, EncoderMemory& memory) {
  AngleSample result;
  result.rotor = rotor;
  result.count = count;
  if (const auto* p = std::get_if<model::Potentiometer>(&sensor.kind)) result.reading = reading_of(*p, turns, count);
  if (const auto* relative = std::get_if<model::RelativeEncoder>(&sensor.kind)) result.reading = reading_of(*relative, turns, count);
  if (const auto* absolute = std::get_if<model::AbsoluteEncoder>(&sensor.kind)) {
    count_turns(*absolute, count, memory);
    result.reading = reading_of(*absolute, turns, count, memory);
  }
  result.track = result.signal = result.reading;
  return result;
}

double count_of(const model::Sensor& sensor, double turns, double reading) {
  if (const auto* p = std::get_if<model::Potentiometer>(&sensor.kind))
    return Quantiser(0, 1, p->bits).count((turns * reading + p->at_zero) / p->range * p->feed / p->reference.value_or(p->feed));
  if (const auto* relative = std::get_if<model::RelativeEncoder>(&sensor.kind)) return edges_of(*relative, turns, reading);
  return step_of(std::get<model::AbsoluteEncoder>(sensor.kind), turns, reading);
}

double counts(const model::Sensor& sensor) {
  if (const auto* p = std::get_if<model::Potentiometer>(&sensor.kind)) return static_cast<double>(1L << p->bits);
  if (const auto* absolute = std::get_if<model::AbsoluteEncoder>(&sensor.kind)) return steps_of(*absolute);
  return std::numeric_limits<double>::infinity();
}

std::uint64_t seed_of(const model::Sensor& sensor) {
  const auto* p = std::get_if<model::Potentiometer>(&sensor.kind);
  return p ? p->noise.seed : 1;
}

EncoderMemory power_on(const model::RelativeEncoder& encoder, double turns, double rotor) {
  return {edges_of(encoder, turns, rotor), 0, 0};
}

EncoderMemory power_on(const model::AbsoluteEncoder& encoder, double turns, double rotor) {
  return {0, step_of(encoder, turns, rotor), 0};
}

double angle_step(const model::Sensor& sensor, double turns) {
  if (const auto* p = std::get_if<model::Potentiometer>(&sensor.kind))
    return p->range * p->reference.value_or(p->feed) / p->feed / static_cast<double>(1L << p->bits) / turns;
  if (const auto* relative = std::get_if<model::RelativeEncoder>(&sensor.kind)) return turn / (relative->counts_per_turn * turns);
  return turn / (steps_of(std::get<model::AbsoluteEncoder>(sensor.kind)) * turns);
}

double angle_noise(const model::Sensor& sensor, double turns) {
  const auto* p = std::get_if<model::Potentiometer>(&sensor.kind);
  return p ? p->noise.rms / p->feed * p->range / turns : 0;
}

}  // namespace sinewright::drive
