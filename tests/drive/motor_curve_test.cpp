#include "drive/motor_curve.h"

#include <cmath>

#include <catch2/catch.hpp>

using namespace sinewright;
using namespace sinewright::drive;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

model::Motor motor(double viscous) {
  model::Motor m;
  m.resistance = 2.4;
  m.torque_constant = 6.5e-3;
  m.kinetic_drag = 2.3e-4;
  m.viscous_drag = viscous;
  return m;
}

}  // namespace

TEST_CASE("motor curve: the torque is nil at the no-load speed and the stall torque at rest",
          "[analytic][motor]") {
  const model::Motor m = motor(GENERATE(0.0, 3e-7));
  const MotorCurve c = motor_curve(m, 6, 2.4);
  CHECK_THAT(motor_torque(m, 6, 2.4, c.no_load_speed), WithinAbs(0, 1e-15));
  CHECK_THAT(motor_torque(m, 6, 2.4, 0), WithinRel(c.stall_torque, 1e-14));
  CHECK_THAT(motor_torque(m, 6, 2.4, 100) - motor_torque(m, 6, 2.4, 101), WithinRel(1 / c.speed_slope, 1e-9));
}

TEST_CASE("motor curve: highest power and efficiency are the maxima found by search", "[analytic][motor]") {
  const model::Motor m = motor(GENERATE(0.0, 3e-7));
  const MotorCurve c = motor_curve(m, 6, 2.4);
  double power = 0, efficiency = 0, torque_there = 0;
  const int n = 100000;
  for (int i = 1; i < n; ++i) {
    const double speed = c.no_load_speed * i / n;
    const double torque = motor_torque(m, 6, 2.4, speed);
    const double current = (6 - 6.5e-3 * speed) / 2.4;
    power = std::max(power, torque * speed);
    if (torque * speed / (6 * current) > efficiency) {
      efficiency = torque * speed / (6 * current);
      torque_there = torque;
    }
  }
  CHECK_THAT(c.highest_power, WithinRel(power, 1e-9));
  CHECK_THAT(c.highest_efficiency, WithinRel(efficiency, 1e-9));
  CHECK_THAT(c.torque_at_highest_efficiency, WithinRel(torque_there, 1e-3));  // a flat maximum
  CHECK_THAT(c.current_at_highest_efficiency,
             WithinRel((c.torque_at_highest_efficiency + m.kinetic_drag +
                        m.viscous_drag * (c.no_load_speed - c.torque_at_highest_efficiency * c.speed_slope)) /
                           6.5e-3,
                       1e-12));
}

TEST_CASE("motor curve: a motor that cannot start has no speed and no torque", "[limits][motor]") {
  const MotorCurve c = motor_curve(motor(0), 0.05, 2.4);
  CHECK(c.stall_torque == 0);
  CHECK(c.no_load_speed == 0);
  CHECK(c.highest_power == 0);
  CHECK(c.highest_efficiency == 0);
}

TEST_CASE("motor curve: without drag the motor runs up to U / k and could be loss-free there",
          "[limits][motor]") {
  model::Motor m = motor(0);
  m.kinetic_drag = 0;
  const MotorCurve c = motor_curve(m, 6, 2.4);
  CHECK_THAT(c.no_load_speed, WithinRel(6 / 6.5e-3, 1e-14));
  CHECK_THAT(c.no_load_current, WithinAbs(0, 1e-15));
}

TEST_CASE("motor curve: the run-up is exponential with its time constant", "[analytic][motor]") {
  const model::Motor m = motor(3e-7);
  const double inertia = 2e-8, tau = run_up_time_constant(m, 2.4, inertia);
  const MotorCurve c = motor_curve(m, 6, 2.4);
  // The classical Runge–Kutta scheme on J dω/dt = torque(ω).
  double speed = 0;
  const int n = 1000;
  const double h = tau / n;
  const auto rate = [&](double w) { return motor_torque(m, 6, 2.4, w) / inertia; };
  for (int i = 0; i < n; ++i) {
    const double k1 = rate(speed), k2 = rate(speed + h / 2 * k1), k3 = rate(speed + h / 2 * k2),
                 k4 = rate(speed + h * k3);
    speed += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  CHECK_THAT(speed, WithinRel(c.no_load_speed * (1 - std::exp(-1.0)), 1e-10));
}

TEST_CASE("motor curve: at the corner speed full voltage gives just the limit current", "[analytic][motor]") {
  const double corner = current_limit_corner_speed(motor(0), 6, 2.4, 0.5);
  CHECK_THAT((6 - 6.5e-3 * corner) / 2.4, WithinRel(0.5, 1e-13));
  CHECK(current_limit_corner_speed(motor(0), 6, 2.4, 3) == 0);
}
