#include "drive/hold_routine.h"

#include <algorithm>

namespace sinewright::drive {
namespace {

constexpr double same_sample = 1e-9;  // [s], times of samples are products and rounded

void enter(HoldPhase phase, double time, HoldMemory& memory) {
  memory.phase = phase;
  memory.since = time;
  memory.touching_since = -1;
}

bool touches(const model::HoldRoutine& routine, double time, const Seen& seen, double speed, HoldMemory& memory) {
  if (seen.current < routine.touch_current || speed > routine.still_speed) {
    memory.touching_since = -1;
    return false;
  }
  if (memory.touching_since < 0) memory.touching_since = time;
  return time - memory.touching_since >= routine.touch_time - same_sample;
}

double easing_current(const model::HoldRoutine& routine, double time, const HoldMemory& memory) {
  const double left = 1 - (time - memory.since) / routine.ease_time;
  return memory.kept_current + std::max(0.0, left) * (routine.squeeze_current - memory.kept_current);
}

// Back to squeezing; the next easing ends a step above the current at which it slipped.
void tighten(const model::HoldRoutine& routine, double time, double slipped_at, HoldMemory& memory) {
  memory.kept_current = std::min(routine.squeeze_current, slipped_at + routine.current_step);
  ++memory.tightened;
  enter(HoldPhase::squeezing, time, memory);
}

}  // namespace

HoldOutput step(const model::HoldRoutine& routine, double time, bool grasp, const Seen& seen, double speed, HoldMemory& memory) {
  if (grasp && (memory.phase == HoldPhase::open || memory.phase == HoldPhase::opening)) {
    memory.kept_current = 0;
    enter(HoldPhase::closing, time, memory);
  }
  if (!grasp && memory.phase != HoldPhase::open && memory.phase != HoldPhase::opening) enter(HoldPhase::opening, time, memory);

  const bool slipped = seen.angle < memory.reference - routine.slip_back;
  const double elapsed = time - memory.since + same_sample;
  switch (memory.phase) {
    case HoldPhase::closing:
      if (touches(routine, time, seen, speed, memory)) enter(HoldPhase::squeezing, time, memory);
      break;
    case HoldPhase::squeezing:
      if (elapsed < routine.squeeze_time) break;
      memory.reference = seen.angle;
      enter(HoldPhase::easing, time, memory);
      break;
    case HoldPhase::easing:
      if (slipped) {
        tighten(routine, time, easing_current(routine, time, memory), memory);
      } else if (elapsed >= routine.ease_time) {
        enter(HoldPhase::holding, time, memory);
      }
      break;
    case HoldPhase::holding:
      if (slipped) tighten(routine, time, memory.kept_current, memory);
      break;
    case HoldPhase::opening:
      if (seen.angle <= routine.open_to || elapsed >= routine.open_time) enter(HoldPhase::open, time, memory);
      break;
    case HoldPhase::open:
      break;
  }

  switch (memory.phase) {
    case HoldPhase::closing:
      return {false, routine.voltage, routine.approach_current};
    case HoldPhase::squeezing:
      return {false, routine.voltage, routine.squeeze_current};
    case HoldPhase::easing:
      return {false, routine.voltage, easing_current(routine, time, memory)};
    case HoldPhase::holding:
      if (memory.kept_current > 0) return {false, routine.voltage, memory.kept_current};
      return {};
    case HoldPhase::opening:
      return {false, -routine.open_voltage, routine.squeeze_current};
    case HoldPhase::open:
      break;
  }
  return {};
}

}  // namespace sinewright::drive
