#include "study/parallel.h"

#include <exception>
#include <thread>
#include <vector>

#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/parallel_for.h>
#include <oneapi/tbb/partitioner.h>
#include <oneapi/tbb/task_arena.h>

namespace sinewright::study {

int thread_count(int threads) {
  const auto machine = static_cast<int>(std::thread::hardware_concurrency());
  return threads > 0 ? threads : machine > 0 ? machine : 1;
}

void for_each_index(int count, int threads, const std::function<void(int)>& act) {
  std::vector<std::exception_ptr> failure(static_cast<std::size_t>(count));
  const auto guarded = [&](int i) {
    try {
      act(i);
    } catch (...) {
      failure[static_cast<std::size_t>(i)] = std::current_exception();
    }
  };
  tbb::task_arena arena(thread_count(threads));
  arena.execute([&] {
    // Single runs, for each takes long: the next free thread takes the next one.
    tbb::parallel_for(tbb::blocked_range<int>(0, count, 1), [&](const auto& range) {
      for (int i = range.begin(); i < range.end(); ++i) guarded(i);
    }, tbb::simple_partitioner());
  });
  for (const auto& one : failure)
    if (one) std::rethrow_exception(one);
}

}  // namespace sinewright::study
