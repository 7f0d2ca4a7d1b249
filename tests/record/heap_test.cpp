#include <atomic>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <new>

#include "record/writer.h"
#include "sample.h"

namespace {
std::atomic<long> allocations{0};
}

void* operator new(std::size_t size) {
  ++allocations;
  if (void* memory = std::malloc(size ? size : 1)) return memory;
  throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
  ++allocations;
  return std::malloc(size ? size : 1);
}
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

TEST_CASE("record: rows between two flushes allocate nothing", "[no-heap]") {
  const sample::Folder folder;
  sinewright::record::Writer writer(folder / "run.h5", sample::channels(), sample::inputs());
  std::vector<double> values(sample::width());
  writer.flush();
  const long before = allocations;
  for (std::size_t row = 0; row < 1000; ++row) {
    sample::fill(row, values);
    writer.append(sample::time_of(row), values);
  }
  const long rows = allocations - before;
  CHECK(rows == 0);
  const auto event = sample::event_of(4900);  // texts too long to be held in place
  const long between = allocations;
  writer.event(event);
  const long after = allocations;
  CHECK(after > between);  // the count does count
}
