// Loops sample by sample against their sums.

#include <cmath>

#include <catch2/catch.hpp>

#include "drive/cascade.h"

using namespace sinewright;
using drive::CascadeOutput;
using drive::Goal;
using drive::Seen;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double T = 2e-3;

Goal to_angle(double angle, double speed = 0) {
  Goal goal;
  goal.kind = Goal::Kind::position;
  goal.position = {angle, speed};
  return goal;
}

Goal to_current(double current) {
  Goal goal;
  goal.kind = Goal::Kind::current;
  goal.current = current;
  return goal;
}

model::Loops position(double gain, double integral = 0, double derivative = 0, double filter = 0) {
  model::Loops loops;
  loops.position = model::Loop{gain, integral, derivative, filter, model::no_limit};
  return loops;
}

struct Memory : drive::CascadeMemory {
  drive::SpeedReading speed;
  int n = 0;
};

// The next sample.
CascadeOutput stepped(const model::Loops& loops, double voltage_limit, const Goal& goal, const Seen& seen, Memory& memory, double speed_filter = 0) {
  drive::take(memory.speed, T * memory.n++, seen.angle, speed_filter);
  return drive::step(loops, T, voltage_limit, goal, seen, memory.speed, memory);
}

}  // namespace

TEST_CASE("cascade: a PID adds gain, sum of past errors, and rate of the error", "[analytic]") {
  const model::Loops loops = position(5, 40, 0.3);
  Memory memory;
  double sum = 0, last = 0.1;
  for (int n = 0; n < 50; ++n) {
    const double reading = 0.1 + 0.002 * n * n, error = 1 - reading;
    const double rate = n > 0 ? (reading - last) / T : 0;
    const CascadeOutput out = stepped(loops, 1e9, to_angle(1, 0.7), {reading, 0}, memory);
    CHECK_THAT(out.voltage, WithinRel(5 * error + 40 * T * sum + 0.3 * (0.7 - rate), 1e-12));
    sum += error;
    last = reading;
  }
}

TEST_CASE("cascade: a step of the set point does not kick through the derivative, and its filter is a first-order lag", "[analytic]") {
  const double tau = 9e-3;
  const model::Loops loops = position(1e-9, 0, 1, tau);
  Memory memory;
  CHECK_THAT(stepped(loops, 1e9, to_angle(0), {0, 0}, memory).voltage, WithinAbs(0, 1e-12));
  CHECK_THAT(stepped(loops, 1e9, to_angle(5), {0, 0}, memory).voltage, WithinAbs(0, 1e-7));
  // The reading begins to rise evenly: the derivative goes to minus its rate as 1 − (τ/(τ+T))ⁿ.
  for (int n = 1; n < 30; ++n) {
    const double out = stepped(loops, 1e9, to_angle(5), {0.01 * n, 0}, memory).voltage;
    CHECK_THAT(out, WithinAbs(-0.01 / T * (1 - std::pow(tau / (tau + T), n)), 1e-7));
  }
}

TEST_CASE("cascade: while the output is cut an integral stands still, but not against the cut, and without anti-windup it goes on") {
  model::Loops loops = position(1, 10);
  Memory memory;
  for (int n = 0; n < 100; ++n) {
    CHECK(stepped(loops, 3, to_angle(8), {0, 0}, memory).voltage == 3);
    CHECK(memory.position_part == 0);
  }
  memory.position_part = 9;  // still cut, though the error has turned round: the integral comes down
  CHECK(stepped(loops, 3, to_angle(-2), {0, 0}, memory).voltage == 3);
  CHECK_THAT(memory.position_part, WithinRel(9 - 10 * T * 2, 1e-12));
  loops.anti_windup = model::Loops::AntiWindup::none;
  memory = {};
  for (int n = 0; n < 100; ++n) CHECK(stepped(loops, 3, to_angle(8), {0, 0}, memory).voltage == 3);
  CHECK_THAT(memory.position_part, WithinRel(10 * T * 8 * 100, 1e-12));
}

TEST_CASE("cascade: position feeds speed, speed feeds current, current the motor, each cut to its limit") {
  model::Loops loops = position(20);
  loops.position->limit = 6;
  loops.speed = model::Loop{0.05, 0.4, 0, 0, 0.2};
  loops.current = model::Loop{4, 1000, 0, 0, model::no_limit};
  Memory memory;
  CascadeOutput out = stepped(loops, 5, to_angle(0.1), {0, 0}, memory);
  CHECK_THAT(out.speed, WithinRel(2.0, 1e-12));
  CHECK_THAT(out.current, WithinRel(0.1, 1e-12));
  CHECK_THAT(out.voltage, WithinRel(0.4, 1e-12));
  CHECK_THAT(memory.speed_part, WithinRel(0.4 * 2 * T, 1e-12));
  CHECK_THAT(memory.current_part, WithinRel(1000 * 0.1 * T, 1e-12));
  memory = {};
  out = stepped(loops, 5, to_angle(3), {0, 0}, memory);
  CHECK(out.speed == 6);
  CHECK(out.current == 0.2);
  CHECK(memory.speed_part == 0);  // cut at its own limit
  CHECK(memory.current_part > 0);  // not cut
  // The voltage is cut: nothing above may wind up.
  memory = {};
  out = stepped(loops, 0.1, to_angle(0.1), {0, 0}, memory);
  CHECK(out.voltage == 0.1);
  CHECK(memory.speed_part == 0);
  CHECK(memory.current_part == 0);
}

TEST_CASE("cascade: the outer loops rest where a current is asked for") {
  model::Loops loops = position(20, 5);
  loops.current = model::Loop{4, 1000, 0, 0, model::no_limit};
  Memory memory;
  const CascadeOutput out = stepped(loops, 5, to_current(0.2), {0.7, 0.05}, memory);
  CHECK(out.current == 0.2);
  CHECK_THAT(out.voltage, WithinRel(4 * 0.15, 1e-12));
  CHECK(memory.position_part == 0);
}

TEST_CASE("cascade: feed-forward is there without an error, in volts or below the loops in amperes") {
  model::Loops loops = position(5);
  loops.feed_forward = {0.3, 0.2, 0.4, 0.1};
  Memory memory;
  CHECK_THAT(stepped(loops, 9, to_angle(2, 1.5), {2, 0}, memory).voltage, WithinRel(0.3 * 1.5 + 0.2 + 0.4 + 0.1 * 2, 1e-12));
  memory = {};
  CHECK_THAT(stepped(loops, 9, to_angle(2, -1.5), {2, 0}, memory).voltage, WithinRel(-0.3 * 1.5 - 0.2 + 0.4 + 0.1 * 2, 1e-12));
  loops.current = model::Loop{3, 0, 0, 0, model::no_limit};
  memory = {};
  const CascadeOutput out = stepped(loops, 9, to_angle(2, 1.5), {2, 0}, memory);
  CHECK_THAT(out.current, WithinRel(0.2 + 0.4 + 0.1 * 2, 1e-12));
  CHECK_THAT(out.voltage, WithinRel(0.3 * 1.5 + 3 * 0.8, 1e-12));
}

TEST_CASE("cascade: the speed made of readings is their difference through a first-order lag", "[analytic]") {
  model::Loops loops;
  loops.speed = model::Loop{1, 0, 0, 0, model::no_limit};
  Goal goal;
  goal.kind = Goal::Kind::speed;
  Memory memory;
  for (int n = 0; n < 20; ++n) {
    const double out = stepped(loops, 9, goal, {0.004 * n, 0}, memory, 6e-3).voltage;
    CHECK_THAT(out, WithinAbs(-0.004 / T * (1 - std::pow(6.0 / 8, n)), 1e-12));
  }
}
