// Writes the sample record until it is killed: endless_writer RECORD STAMPS PAUSE_US
// STAMPS is a file of doubles: wall time at which each row was handed over [s], written through shared memory, so that
// it survives the kill.

#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <thread>

#include "record/writer.h"
#include "sample.h"
#include "stamps.h"

int main(int argc, char** argv) {
  if (argc != 4) return 2;
  const int descriptor = open(argv[2], O_RDWR);
  if (descriptor < 0) return 3;
  void* memory = mmap(nullptr, kMaxStamps * sizeof(double), PROT_READ | PROT_WRITE, MAP_SHARED, descriptor, 0);
  if (memory == MAP_FAILED) return 4;
  auto* stamps = static_cast<double*>(memory);
  const auto pause = std::chrono::microseconds(std::atoi(argv[3]));

  sinewright::record::Writer writer(argv[1], sample::channels(), sample::inputs());
  std::vector<double> values(sample::width());
  for (std::size_t row = 0; row < kMaxStamps; ++row) {
    sample::fill(row, values);
    stamps[row] = wall_time();
    if (sample::has_event(row)) writer.event(sample::event_of(row));
    writer.append(sample::time_of(row), values);
    if (pause.count() > 0) std::this_thread::sleep_for(pause);
  }
  return 5;  // the kill came too late
}
