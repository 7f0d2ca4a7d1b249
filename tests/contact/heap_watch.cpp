#include "heap_watch.h"

#include <atomic>
#include <cstdlib>

namespace {
std::atomic<std::size_t> counted{0};
}

#if defined(__SANITIZE_ADDRESS__) || !defined(__GLIBC__)
bool sinewright::HeapWatch::works() {
  return false;
}
#else
// Taking malloc's place in the program catches Eigen and Bullet, which call it directly, and operator new,
// which rests on it.
extern "C" void* __libc_malloc(std::size_t size);
extern "C" void* malloc(std::size_t size) {
  counted.fetch_add(1, std::memory_order_relaxed);
  return __libc_malloc(size);
}
bool sinewright::HeapWatch::works() {
  return true;
}
#endif

sinewright::HeapWatch::HeapWatch() : before_(counted.load()) {}
std::size_t sinewright::HeapWatch::requests() const {
  return counted.load() - before_;
}
