#pragma once

#include <atomic>
#include <functional>
#include <string>
#include <vector>

#include "study/design_result.h"
#include "study/design_runs.h"

namespace sinewright::study {

/// A design that is still to be run.
struct Task {
  long long index = 0;
  std::vector<std::string> changes;
};

/// Gives the next task, or none when there is none left for now. Called by one thread at a time.
using NextTask = std::function<bool(Task& task)>;
/// Takes a finished design; the order is that of finishing. Called by one thread at a time.
using TakeResult = std::function<void(DesignResult result)>;

/// Runs designs on several threads until `next` has no more or `stop` is set; designs under way are then still finished.
/// @param threads  0: as many as the machine has.
void work_off(const Bench& bench, int threads, const NextTask& next, const TakeResult& take, const std::atomic<bool>& stop);

}  // namespace sinewright::study
