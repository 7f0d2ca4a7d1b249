// Set points against the closed forms of their moves.

#include <cmath>

#include <catch2/catch.hpp>

#include "drive/set_point.h"

using namespace sinewright;
using drive::along;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// The speed of a set point is the rate of its angle, over the whole move.
void check_rate(const model::Move& move, double from, double to) {
  const double whole = drive::duration(move, from, to), h = 1e-6 * whole;
  double worst = 0;
  for (int i = 1; i < 997; ++i) {
    const double t = whole * i / 997;
    const double rate = (along(move, from, to, t + h).angle - along(move, from, to, t - h).angle) / (2 * h);
    worst = std::max(worst, std::abs(rate - along(move, from, to, t).speed));
  }
  // At the corners of a trapezoid the central difference is off by a h / 4.
  CHECK(worst < 1e-5 * std::abs(to - from) / whole);
}

}  // namespace

TEST_CASE("set point: a minimum-jerk move is at rest at both ends, half way at half time, and peaks at 15/8 of its mean speed", "[analytic]") {
  const model::Move move = model::MoveMinimumJerk{0.4};
  const double from = 0.3, to = -1.7;
  CHECK(along(move, from, to, 0).angle == from);
  CHECK(along(move, from, to, -1).speed == 0);
  CHECK(along(move, from, to, 0.4).angle == to);
  CHECK(along(move, from, to, 9).speed == 0);
  CHECK_THAT(along(move, from, to, 0.2).angle, WithinRel((from + to) / 2, 1e-14));
  CHECK_THAT(along(move, from, to, 0.2).speed, WithinRel(15.0 / 8 * (to - from) / 0.4, 1e-14));
  check_rate(move, from, to);
}

TEST_CASE("set point: a trapezoid rises, stays and falls, and turns into a triangle where the way is short", "[analytic]") {
  const model::Move move = model::MoveTrapezoid{2, 10};  // 0.2 s and 0.2 rad to get to full speed
  CHECK_THAT(drive::duration(move, 1, 2), WithinRel(0.2 + 0.3 + 0.2, 1e-14));
  CHECK_THAT(along(move, 1, 2, 0.1).angle, WithinRel(1.05, 1e-14));
  CHECK_THAT(along(move, 1, 2, 0.1).speed, WithinRel(1.0, 1e-14));
  CHECK_THAT(along(move, 1, 2, 0.35).angle, WithinRel(1.5, 1e-14));
  CHECK(along(move, 1, 2, 0.35).speed == 2);
  CHECK_THAT(along(move, 2, 1, 0.65).angle, WithinRel(1.0125, 1e-14));
  CHECK_THAT(along(move, 2, 1, 0.65).speed, WithinRel(-0.5, 1e-13));
  CHECK(along(move, 1, 2, 0.8).angle == 2);
  check_rate(move, 1, 2);
  check_rate(move, 2, 1);
  // Way 0.1 rad: speed reaches √(a way) = 1 rad/s in 0.1 s.
  CHECK_THAT(drive::duration(move, 0, 0.1), WithinRel(0.2, 1e-14));
  CHECK_THAT(along(move, 0, 0.1, 0.1).speed, WithinRel(1.0, 1e-14));
  CHECK_THAT(along(move, 0, 0.1, 0.1).angle, WithinRel(0.05, 1e-14));
  check_rate(move, 0, 0.1);
  CHECK(drive::duration(move, 1, 1) == 0);
  CHECK(along(move, 1, 1, 0.1).angle == 1);
}

TEST_CASE("set point: a step is there at once") {
  CHECK(along(model::MoveStep{}, 1, 2, 0).angle == 2);
  CHECK(along(model::MoveStep{}, 1, 2, 0).speed == 0);
}

TEST_CASE("set point: a recorded motion is straight between its points and at rest outside") {
  const model::SetRecorded motion{"", {0.1, 0.2, 0.4}, {1, 3, 2}};
  CHECK(along(motion, 0).angle == 1);
  CHECK(along(motion, 0).speed == 0);
  CHECK_THAT(along(motion, 0.15).angle, WithinRel(2.0, 1e-14));
  CHECK_THAT(along(motion, 0.15).speed, WithinRel(20.0, 1e-14));
  CHECK_THAT(along(motion, 0.3).speed, WithinRel(-5.0, 1e-14));
  CHECK(along(motion, 0.5).angle == 2);
  CHECK(along(motion, 0.5).speed == 0);
}
