// The hold routine and the guards, sample by sample, with readings made up for them.

#include <cmath>

#include <catch2/catch.hpp>

#include "drive/guard.h"
#include "drive/hold_routine.h"

using namespace sinewright;
using drive::HoldMemory;
using drive::HoldOutput;
using drive::HoldPhase;
using drive::Seen;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

model::HoldRoutine routine() {
  model::HoldRoutine r;
  r.voltage = 6;
  r.approach_current = 0.3;
  r.touch_current = 0.2;
  r.still_speed = 0.5;
  r.touch_time = 0.04;
  r.squeeze_current = 0.4;
  r.squeeze_time = 0.2;
  r.ease_time = 0.5;
  r.slip_back = 0.1;
  r.current_step = 0.05;
  r.watch = 0.1;
  r.open_voltage = 5;
  r.open_to = 0.05;
  r.open_time = 1;
  return r;
}

// Readings at whole milliseconds.
struct Bench {
  HoldMemory memory;
  int ms = 0;
  HoldOutput out;
  void to(int end, bool grasp, double angle, double current, double speed) {
    for (; ms < end; ++ms) out = drive::step(routine(), 1e-3 * ms, grasp, {angle, current}, speed, memory);
  }
};

Bench holding() {
  Bench bench;
  bench.to(2000, true, 3, 0.3, 0);
  REQUIRE(bench.memory.phase == HoldPhase::holding);
  return bench;
}

}  // namespace

TEST_CASE("hold routine: only current without motion, for long enough, is touch") {
  Bench bench;
  bench.to(500, true, 1, 0.35, 2);  // runs, heavily
  CHECK(bench.memory.phase == HoldPhase::closing);
  bench.to(1000, true, 1, 0.15, 0);  // stands, without current
  CHECK(bench.memory.phase == HoldPhase::closing);
  CHECK(bench.out.voltage == 6);
  CHECK(bench.out.current_limit == 0.3);
  bench.to(1030, true, 1, 0.3, 0);  // 29 ms are not enough
  bench.to(1031, true, 1, 0.3, 1);  // moved once more
  bench.to(1071, true, 1, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::closing);
  bench.to(1072, true, 1, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::squeezing);
  CHECK(bench.out.current_limit == 0.4);
}

TEST_CASE("hold routine: after squeezing the current goes down evenly to nothing, and the motor is off") {
  Bench bench;
  bench.to(42, true, 3, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::squeezing);
  bench.to(242, true, 3, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::easing);
  CHECK_FALSE(bench.out.off);
  const double began = bench.memory.since;
  for (int k = 1; k < 5; ++k) {
    bench.to(241 + 100 * k, true, 3, 0.3, 0);
    CHECK_THAT(bench.out.current_limit, WithinAbs(0.4 * (1 - (1e-3 * (240 + 100 * k) - began) / 0.5), 1e-12));
  }
  bench.to(760, true, 3, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::holding);
  CHECK(bench.out.off);
  CHECK(bench.memory.tightened == 0);
}

TEST_CASE("hold routine: a slip tightens, and afterwards a step more is kept than there was when it slipped") {
  Bench bench = holding();
  bench.to(2100, true, 2.91, 0, 0);  // 0.09 rad: less than a slip
  CHECK(bench.memory.phase == HoldPhase::holding);
  bench.to(2101, true, 2.89, 0, 0);
  CHECK(bench.memory.phase == HoldPhase::squeezing);
  CHECK(bench.memory.tightened == 1);
  CHECK_THAT(bench.memory.kept_current, WithinRel(0.05, 1e-12));
  bench.to(4000, true, 2.95, 0.1, 0);
  CHECK(bench.memory.phase == HoldPhase::holding);
  CHECK_FALSE(bench.out.off);
  CHECK_THAT(bench.out.current_limit, WithinRel(0.05, 1e-12));
  CHECK(bench.memory.reference == 2.95);
  for (int k = 0; k < 20; ++k) {  // slips whatever it does: never beyond the squeezing current
    bench.to(bench.ms + 1, true, 0, 0.1, 0);
    bench.to(bench.ms + 1500, true, 2.95, 0.1, 0);
  }
  CHECK(bench.memory.kept_current == 0.4);
}

TEST_CASE("hold routine: a slip while the current goes down keeps what there was then, and a step") {
  Bench bench;
  bench.to(242, true, 3, 0.3, 0);
  REQUIRE(bench.memory.phase == HoldPhase::easing);
  bench.to(542, true, 3, 0.3, 0);
  const double last = bench.out.current_limit;
  bench.to(543, true, 2.8, 0.3, 0);
  CHECK(bench.memory.phase == HoldPhase::squeezing);
  CHECK_THAT(bench.memory.kept_current, WithinAbs(last + 0.05, 1e-3));
}

TEST_CASE("hold routine: whatever the readings, it opens only when asked, and at the end of opening it is off") {
  Bench bench = holding();
  for (int k = 0; k < 3000; ++k) {
    const double angle = 3 + 5 * std::sin(0.7 * k), current = 0.5 * std::sin(1.1 * k), speed = 20 * std::sin(0.3 * k);
    bench.to(bench.ms + 1, true, angle, current, speed);
    REQUIRE(bench.out.voltage >= 0);
    REQUIRE(bench.memory.phase != HoldPhase::open);
  }
  bench.to(bench.ms + 300, false, 2, 0.1, -5);
  CHECK(bench.memory.phase == HoldPhase::opening);
  CHECK(bench.out.voltage == -5);
  bench.to(bench.ms + 1, false, 0.04, 0.1, -5);
  CHECK(bench.memory.phase == HoldPhase::open);
  CHECK(bench.out.off);
  bench.to(bench.ms + 1, true, 0.04, 0, 0);
  CHECK(bench.memory.phase == HoldPhase::closing);
  CHECK(bench.memory.kept_current == 0);
}

TEST_CASE("hold routine: opening that never arrives ends after its time") {
  Bench bench = holding();
  bench.to(bench.ms + 990, false, 2, 0.1, 0);
  CHECK(bench.memory.phase == HoldPhase::opening);
  bench.to(bench.ms + 20, false, 2, 0.1, 0);
  CHECK(bench.memory.phase == HoldPhase::open);
}

TEST_CASE("guard: a stall counts from its first reading, either way, and anew after any motion") {
  model::Controller controller;
  controller.stall = model::StallGuard{0.3, 0.5, 0.1};
  const model::Motor motor;
  drive::GuardMemory memory = drive::begin_guard(controller);
  const auto at = [&](int ms, double current, double speed) { return drive::step(controller, motor, 1e-3 * ms, {0, current}, speed, memory); };
  CHECK(at(0, -0.3, 0) == drive::Trip::none);
  CHECK(at(99, -0.35, 0.5) == drive::Trip::none);
  CHECK(at(100, -0.35, 0) == drive::Trip::stall);
  CHECK(at(101, 0.35, 0.6) == drive::Trip::none);
  CHECK(at(102, 0.35, 0) == drive::Trip::none);
  CHECK(at(201, 0.29, 0) == drive::Trip::none);
  CHECK(at(202, 0.35, 0) == drive::Trip::none);
  CHECK(at(302, 0.35, 0) == drive::Trip::stall);
}
