#include "study/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <vector>

namespace sinewright::study {

void for_each_index(int count, int threads, const std::function<void(int)>& act) {
  if (threads <= 0) threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
  std::vector<std::exception_ptr> failure(static_cast<std::size_t>(count));
  std::atomic<int> next = 0;
  const auto work = [&] {
    for (int i = next++; i < count; i = next++) {
      try {
        act(i);
      } catch (...) {
        failure[static_cast<std::size_t>(i)] = std::current_exception();
      }
    }
  };
  {
    std::vector<std::jthread> others;
    for (int t = 1; t < std::min(threads, count); ++t) others.emplace_back(work);
    work();
  }
  for (const auto& one : failure)
    if (one) std::rethrow_exception(one);
}

}  // namespace sinewright::study
