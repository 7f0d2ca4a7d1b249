#pragma once

#include <functional>

namespace sinewright::study {

/// How many threads are meant: as many as the machine has for 0.
[[nodiscard]] int thread_count(int threads);

/// Calls `act` for 0 … count − 1 on several threads. Each call must write to places of its own; then the result does not
/// depend on the number of threads. The exception of the lowest index is thrown on.
/// @param threads  0: as many as the machine has.
void for_each_index(int count, int threads, const std::function<void(int)>& act);

}  // namespace sinewright::study
