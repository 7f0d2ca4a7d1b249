#include "drive/cascade.h"

#include <algorithm>
#include <cmath>

namespace sinewright::drive {
namespace {

// The set point that one stage hands to the next, and on which side it was cut: +1, −1, or 0.
struct Wish {
  double value = 0;
  int cut = 0;
};

Wish cut_to(double value, double limit) {
  if (value > limit) return {limit, 1};
  if (value < -limit) return {-limit, -1};
  return {value, 0};
}

int sign(double x) { return x > 0 ? 1 : x < 0 ? -1 : 0; }

// Forward rectangle. What is cut further down in the direction of the growth stops it.
void integrate(double& part, double rate, double period, int cut, model::Loops::AntiWindup anti_windup) {
  if (anti_windup == model::Loops::AntiWindup::clamp && cut != 0 && sign(rate) == cut) return;
  part += rate * period;
}

}  // namespace

void take(SpeedReading& speed, double time, double angle, double filter) {
  const double elapsed = time - speed.time;
  if (speed.began) {
    speed.turned = (angle - speed.angle) / elapsed;
    speed.filtered += elapsed / (filter + elapsed) * (speed.turned - speed.filtered);
  }
  speed.time = time;
  speed.angle = angle;
  speed.began = true;
}

CascadeOutput step(const model::Loops& loops, double period, double voltage_limit, const Goal& goal, const Seen& seen,
                   const SpeedReading& speed, CascadeMemory& memory) {
  const bool by_position = goal.kind == Goal::Kind::position, by_speed = goal.kind == Goal::Kind::speed;
  const bool by_current = goal.kind == Goal::Kind::current || goal.kind == Goal::Kind::force;
  const double rate = by_position ? goal.position.speed : by_speed ? goal.speed : 0;  // of the set point
  const model::FeedForward& known = loops.feed_forward;
  const double load = by_position || by_speed ? known.friction * sign(rate) + known.return_at_zero + known.return_per_angle * seen.angle : 0;
  const double extra_current = loops.current ? load : 0;
  const double extra_voltage = known.speed * rate + (loops.current ? 0 : load);

  CascadeOutput out;
  double position_error = 0, speed_error = 0, current_error = 0;
  Wish wish;  // of the loop that was worked out last
  int cut_at_position = 0, cut_at_speed = 0, cut_at_current = 0;

  if (by_position) {
    const model::Loop& loop = *loops.position;
    position_error = goal.position.angle - seen.angle;
    memory.derivative += period / (loop.derivative_filter + period) * (rate - speed.turned - memory.derivative);
    wish.value = loop.gain * position_error + memory.position_part + loop.derivative * memory.derivative;
    if (loops.speed) wish.value += rate;
    if (!loops.speed) wish.value += extra_current;
    wish = cut_to(wish.value, loop.limit);
    cut_at_position = wish.cut;
  }
  if (loops.speed && (by_position || by_speed)) {
    const model::Loop& loop = *loops.speed;
    out.speed = by_speed ? goal.speed : wish.value;
    speed_error = out.speed - speed.filtered;
    wish.value = loop.gain * speed_error + memory.speed_part + extra_current;
    wish = cut_to(wish.value, loop.limit);
    cut_at_speed = wish.cut;
  }
  if (loops.current) {
    const model::Loop& loop = *loops.current;
    out.current = by_current ? goal.current : wish.value;
    current_error = out.current - seen.current;
    wish = cut_to(loop.gain * current_error + memory.current_part, loop.limit);
    cut_at_current = wish.cut;
  }
  const Wish voltage = cut_to(wish.value + extra_voltage, voltage_limit);
  out.voltage = voltage.value;

  // A loop stands still for what is cut at itself or anywhere below.
  const auto first = [](int a, int b) { return a != 0 ? a : b; };
  const int at_current = first(cut_at_current, voltage.cut);
  const int at_speed = first(cut_at_speed, loops.current ? at_current : voltage.cut);
  const int at_position = first(cut_at_position, loops.speed ? at_speed : loops.current ? at_current : voltage.cut);
  if (by_position) integrate(memory.position_part, loops.position->integral * position_error, period, at_position, loops.anti_windup);
  if (loops.speed && (by_position || by_speed))
    integrate(memory.speed_part, loops.speed->integral * speed_error, period, at_speed, loops.anti_windup);
  if (loops.current) integrate(memory.current_part, loops.current->integral * current_error, period, at_current, loops.anti_windup);
  return out;
}

}  // namespace sinewright::drive
