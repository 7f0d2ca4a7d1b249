#pragma once

#include <cstdint>

namespace sinewright {

/// Random numbers by counting: a number is a function of the seed and of what it is for, never of what was drawn before. So any
/// row of a study and any sample of a sensor can be made on any machine, in any order, with the same bits. The distributions of
/// the standard library are not used: their results differ between libraries.
///
/// The finaliser of splitmix64 (Steele, Lea and Flood, OOPSLA 2014, from memory), applied once for each word.
[[nodiscard]] constexpr std::uint64_t mixed(std::uint64_t z) {
  z += 0x9e3779b97f4a7c15U;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31);
}

/// 64 random bits that belong to up to three numbers.
[[nodiscard]] constexpr std::uint64_t random_bits(std::uint64_t seed, std::uint64_t a, std::uint64_t b = 0, std::uint64_t c = 0) {
  return mixed(mixed(mixed(mixed(seed) ^ a) ^ b) ^ c);
}

/// The middle of one of 2^52 equal parts of (0, 1): never 0, never 1.
[[nodiscard]] constexpr double to_unit(std::uint64_t bits) {
  return (static_cast<double>(bits >> 12) + 0.5) * 0x1p-52;
}

/// A row of random numbers that belongs to two numbers, for instance generation and candidate.
class RandomStream {
 public:
  constexpr RandomStream(std::uint64_t seed, std::uint64_t a, std::uint64_t b = 0) : seed_(seed), a_(a), b_(b) {}
  constexpr std::uint64_t bits() { return random_bits(seed_, a_, b_, n_++); }
  constexpr double unit() { return to_unit(bits()); }
  /// One of 0 … count − 1; count below 2^32, so that the bias, below count / 2^52, does not matter.
  constexpr std::uint64_t below(std::uint64_t count) {
    return static_cast<std::uint64_t>(unit() * static_cast<double>(count));
  }

 private:
  std::uint64_t seed_, a_, b_, n_ = 0;
};

}  // namespace sinewright
