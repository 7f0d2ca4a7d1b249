#pragma once

#include <chrono>
#include <cstddef>

/// More rows than the fastest machine hands over before the kill; the file of stamps is sparse.
inline constexpr std::size_t kMaxStamps = 32'000'000;

/// A clock that all processes share [s].
inline double wall_time() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}
