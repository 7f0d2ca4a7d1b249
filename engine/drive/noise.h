#pragma once

#include <cmath>
#include <numbers>

#include "model/sensor.h"
#include "quantity/counter_random.h"

namespace sinewright::drive {

/// What noise a sample belongs to, so that no two of them share their numbers.
enum class NoiseOf : std::uint64_t { angle = 1, current = 2, floating_angle = 3 };

[[nodiscard]] constexpr std::uint64_t stream_of(NoiseOf what, std::uint64_t drive) { return (drive << 8) | static_cast<std::uint64_t>(what); }

/// A share between 0 and 1, each as likely, of one sample.
[[nodiscard]] constexpr double random_share(std::uint64_t seed, NoiseOf what, std::uint64_t drive, std::uint64_t sample) {
  return to_unit(random_bits(seed, stream_of(what, drive), sample));
}

/// The noise of one sample: a function of the seed, of what is sampled and of the sample's number (Box and Muller 1958, from memory).
[[nodiscard]] inline double noise_of(const model::Noise& noise, NoiseOf what, std::uint64_t drive, std::uint64_t sample) {
  if (noise.rms == 0) return 0;
  const std::uint64_t stream = stream_of(what, drive);
  const double a = to_unit(random_bits(noise.seed, stream, sample, 0)), b = to_unit(random_bits(noise.seed, stream, sample, 1));
  return noise.rms * std::sqrt(-2 * std::log(a)) * std::cos(2 * std::numbers::pi * b);
}

}  // namespace sinewright::drive
