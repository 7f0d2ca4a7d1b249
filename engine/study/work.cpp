#include "study/work.h"

#include <mutex>

#include "study/parallel.h"

namespace sinewright::study {

void work_off(const Bench& bench, int threads, const NextTask& next, const TakeResult& take, const std::atomic<bool>& stop) {
  const int n = thread_count(threads);
  std::mutex at_the_desk;  // handing out and taking in
  bool failed = false;     // what one thread cannot do, such as writing to a full disk, the others need not begin
  for_each_index(n, n, [&](int) {
    reading::Source source(bench.texts);
    Task task;
    for (;;) {
      {
        const std::scoped_lock lock(at_the_desk);
        if (stop || failed || !next(task)) return;
      }
      DesignResult result = run_design(bench, source, task.index, task.changes);
      const std::scoped_lock lock(at_the_desk);
      try {
        take(std::move(result));
      } catch (...) {
        failed = true;
        throw;
      }
    }
  });
}

}  // namespace sinewright::study
