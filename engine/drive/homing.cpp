#include "drive/homing.h"

#include <cmath>

namespace sinewright::drive {

namespace {

constexpr double same_sample = 1e-9;  // [s], times of samples are products and rounded

}  // namespace

double step(const model::Homing& homing, double time, const Seen& seen, double speed, HomingMemory& memory) {
  if (memory.began < 0) {
    memory.began = time;
    memory.from = seen.angle;
    if (homing.pay_out == 0) memory.phase = HomingPhase::winds;
  }
  if (memory.phase == HomingPhase::pays_out && seen.angle <= memory.from - homing.pay_out) memory.phase = HomingPhase::winds;
  if (memory.phase == HomingPhase::winds) {
    const bool there = std::abs(seen.current) >= homing.current && std::abs(speed) <= homing.still_speed;
    if (!there) memory.there_since = -1;
    if (there && memory.there_since < 0) memory.there_since = time;
    if (there && time - memory.there_since >= homing.time - same_sample) {
      memory.offset = homing.angle - seen.angle;
      memory.phase = HomingPhase::found;
    }
  }
  if (memory.phase != HomingPhase::found && time - memory.began >= homing.give_up - same_sample) memory.phase = HomingPhase::gave_up;
  switch (memory.phase) {
    case HomingPhase::pays_out: return -homing.voltage;
    case HomingPhase::winds: return homing.voltage;
    default: return 0;
  }
}

}  // namespace sinewright::drive
