#include "drive/guard.h"

#include <cmath>

namespace sinewright::drive {

namespace {

constexpr double same_sample = 1e-9;  // [s], times of samples are products and rounded

}  // namespace

GuardMemory begin_guard(const model::Controller& controller) {
  GuardMemory memory;
  if (controller.heat) memory.estimate = {controller.heat->ambient, controller.heat->ambient};
  return memory;
}

Trip step(const model::Controller& controller, const model::Motor& motor, double time, const Seen& seen, double speed, GuardMemory& memory) {
  Trip trip = Trip::none;
  if (controller.heat) {
    const auto heat = copper_loss(motor, memory.current, memory.estimate.winding);
    memory.estimate = thermal_step(motor, memory.estimate, heat, 0, controller.heat->ambient, time - memory.time);
    if (memory.estimate.winding >= controller.heat->highest) trip = Trip::heat;
  }
  memory.time = time;
  memory.current = seen.current;
  if (controller.stall) {
    const bool stalls = std::abs(seen.current) >= controller.stall->current && std::abs(speed) <= controller.stall->speed;
    if (!stalls) memory.stalled_since = -1;
    if (stalls && memory.stalled_since < 0) memory.stalled_since = time;
    if (stalls && time - memory.stalled_since >= controller.stall->time - same_sample) trip = Trip::stall;
  }
  return trip;
}

}  // namespace sinewright::drive
