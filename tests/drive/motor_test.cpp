#include "drive/motor.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::drive;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

DriveInput input(double voltage, double speed, double limit = 0) {
  DriveInput in;
  in.mode = DriverMode::voltage;
  in.commanded_voltage = voltage;
  in.rotor_speed = speed;
  in.resistance = 2.4;
  in.torque_constant = 6.5e-3;
  in.current_limit = limit;
  return in;
}

// Current drawn at a given terminal voltage, straight from the words of the docstring.
double drawn(const DriveInput& in, double terminal) {
  if (in.mode != DriverMode::voltage) return 0;
  double u = std::clamp(in.commanded_voltage, -terminal, terminal);
  double i = (u - in.torque_constant * in.rotor_speed) / in.resistance;
  if (in.current_limit > 0 && std::abs(i) > in.current_limit) {
    i = std::copysign(in.current_limit, i);
    u = in.resistance * i + in.torque_constant * in.rotor_speed;
  }
  return std::max(0.0, u * i) / terminal;
}

// Highest solution of V = U0 − Rs ΣI(V), by walking down in small steps and bisecting the first change of
// sign.
double terminal_by_search(const std::vector<DriveInput>& all, double open, double resistance) {
  const auto excess = [&](double v) {
    double sum = 0;
    for (const DriveInput& in : all) sum += drawn(in, v);
    return v - open + resistance * sum;
  };
  const int n = 20000;
  for (int k = n - 1; k > 0; --k) {
    double low = open * k / n, high = open * (k + 1) / n;
    if (excess(low) > 0) continue;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      (excess(middle) > 0 ? high : low) = middle;
    }
    return 0.5 * (low + high);
  }
  return 0;
}

}  // namespace

TEST_CASE("motor: winding resistance rises in a straight line with temperature", "[analytic][motor]") {
  model::Motor m;
  m.resistance = 2.4;
  m.reference_temperature = 298.15;
  CHECK(winding_resistance(m, 298.15) == 2.4);
  CHECK_THAT(winding_resistance(m, 398.15), WithinRel(2.4 * 1.393, 1e-14));
  // Restating the slope at another temperature leaves the line where it is.
  const double slope = rebased_resistance_slope(m.resistance_slope, 298.15, 330);
  CHECK_THAT(winding_resistance(m, 330) * (1 + slope * (398.15 - 330)), WithinRel(2.4 * 1.393, 1e-14));
}

TEST_CASE("supply: at full duty the current is (U - k w) / (R + Rs)", "[analytic][supply]") {
  const double speed = GENERATE(-300.0, 0.0, 400.0, 900.0);
  const ElectricState s = solve_drive(input(100, speed), 6, 0.8);
  CHECK_THAT(s.current, WithinRel((6 - 6.5e-3 * speed) / 3.2, 1e-13));
  CHECK_THAT(s.current_by_speed, WithinRel(-6.5e-3 / 3.2, 1e-13));
  CHECK_THAT(s.supply_voltage, WithinRel(6 - 0.8 * s.current, 1e-13));
  CHECK_THAT(s.supply_current, WithinRel(s.current, 1e-13));
  CHECK_THAT(s.driver_loss, WithinAbs(0, 1e-13));
  CHECK_FALSE(s.limited);
}

TEST_CASE("supply: without internal resistance the terminal voltage stands", "[limits][supply]") {
  const ElectricState s = solve_drive(input(4, 100), 6, 0);
  CHECK(s.supply_voltage == 6);
  CHECK_THAT(s.current, WithinRel((4 - 0.65) / 2.4, 1e-14));
  CHECK_THAT(s.supply_current * 6, WithinRel(4 * s.current, 1e-14));
  CHECK(solve_drive(input(100, 100), 6, 0).motor_voltage == 6);
  CHECK_THAT(solve_drive(input(100, 100), 6, 0).current_by_speed, WithinRel(-6.5e-3 / 2.4, 1e-14));
}

TEST_CASE("supply: an ideal chopper solves V (U0 - V) = Rs u i, on the upper branch", "[analytic][supply]") {
  const ElectricState s = solve_drive(input(3, 0), 6, 0.5);
  const double power = 3 * 3 / 2.4;
  CHECK_THAT(s.supply_voltage, WithinRel((6 + std::sqrt(36 - 4 * 0.5 * power)) / 2, 1e-14));
  CHECK_THAT(s.supply_voltage * s.supply_current, WithinRel(power, 1e-13));
  CHECK_THAT(s.current, WithinRel(3 / 2.4, 1e-14));
}

TEST_CASE("supply: the current limit holds when driving and when braking", "[supply]") {
  const ElectricState driving = solve_drive(input(6, 0, 0.5), 6, 0.5);
  CHECK(driving.limited);
  CHECK(driving.current == 0.5);
  CHECK_THAT(driving.motor_voltage, WithinRel(1.2, 1e-14));
  CHECK(driving.current_by_speed == 0);
  const ElectricState braking = solve_drive(input(0, 800, 0.5), 6, 0.5);
  CHECK(braking.limited);
  CHECK(braking.current == -0.5);
  CHECK_THAT(braking.motor_voltage, WithinRel(800 * 6.5e-3 - 1.2, 1e-14));
  CHECK(braking.supply_current == 0);
  CHECK_THAT(braking.driver_loss, WithinRel(0.5 * braking.motor_voltage, 1e-14));
}

TEST_CASE("supply: power off draws nothing, shorted leads brake and open ones do not", "[supply]") {
  DriveInput in = input(6, 500, 0.1);
  in.mode = DriverMode::open;
  const ElectricState open = solve_drive(in, 6, 0.5);
  CHECK(open.current == 0);
  CHECK(open.current_by_speed == 0);
  CHECK(open.supply_voltage == 6);
  CHECK_THAT(open.motor_voltage, WithinRel(3.25, 1e-14));
  in.mode = DriverMode::shorted;
  const ElectricState shorted = solve_drive(in, 6, 0.5);
  CHECK_THAT(shorted.current, WithinRel(-3.25 / 2.4, 1e-14));  // beyond the driver's limit, which is off
  CHECK_THAT(shorted.current_by_speed, WithinRel(-6.5e-3 / 2.4, 1e-14));
  CHECK(shorted.supply_current == 0);
  CHECK(shorted.motor_voltage == 0);
}

TEST_CASE("supply: turning everything round changes signs only", "[supply]") {
  const double u = GENERATE(0.0, 2.0, 9.0), speed = GENERATE(-900.0, -100.0, 250.0, 1500.0);
  const double limit = GENERATE(0.0, 0.4);
  const ElectricState a = solve_drive(input(u, speed, limit), 6, 0.7);
  const ElectricState b = solve_drive(input(-u, -speed, limit), 6, 0.7);
  CHECK(a.current == -b.current);
  CHECK(a.motor_voltage == -b.motor_voltage);
  CHECK(a.supply_voltage == b.supply_voltage);
  CHECK(a.current_by_speed == b.current_by_speed);
}

TEST_CASE("supply: any mixture of drives agrees with a search for the terminal voltage", "[supply]") {
  std::mt19937 random(20240917);  // fixed: the same cases each time
  std::uniform_real_distribution<double> unit(0, 1);
  int compared = 0, sagged = 0;
  for (int round = 0; round < 300; ++round) {
    const auto n = static_cast<std::size_t>(1 + round % 5);
    const double resistance = 1.2 * unit(random);
    std::vector<DriveInput> all(n);
    for (DriveInput& in : all) {
      in = input(16 * unit(random) - 8, 2400 * unit(random) - 1200,
                 unit(random) < 0.5 ? 0 : 1.5 * unit(random) + 0.01);
      in.resistance = 1 + 5 * unit(random);
      if (unit(random) < 0.1) in.mode = DriverMode::open;
      if (unit(random) < 0.1) in.mode = DriverMode::shorted;
    }
    std::vector<ElectricState> state(n);
    solve_supply(all, 6, resistance, state);
    const double expected = terminal_by_search(all, 6, resistance);
    CAPTURE(round, n, resistance);
    REQUIRE_THAT(state[0].supply_voltage, WithinAbs(expected, 1e-9));
    double total = 0;
    for (std::size_t j = 0; j < n; ++j) {
      const ElectricState& s = state[j];
      REQUIRE(s.supply_current >= 0);
      REQUIRE(s.driver_loss >= 0);
      // Power: what the supply gives is what the motor takes, and what it gives back is burned.
      REQUIRE_THAT(s.supply_voltage * s.supply_current,
                   WithinAbs(s.motor_voltage * s.current + s.driver_loss, 1e-10));
      REQUIRE_THAT(s.motor_voltage, WithinAbs(all[j].mode == DriverMode::shorted
                                                  ? 0
                                                  : all[j].resistance * s.current +
                                                        all[j].torque_constant * all[j].rotor_speed,
                                              1e-12));
      total += s.supply_current;
    }
    REQUIRE_THAT(state[0].supply_voltage, WithinAbs(6 - resistance * total, 1e-9));
    ++compared;
    if (expected < 5.5) ++sagged;
  }
  CHECK(compared == 300);
  CHECK(sagged > 100);  // the cases do put the supply to the test
}

TEST_CASE("supply: current runs through all cases without a jump as the speed changes",
          "[continuity][supply]") {
  const double u = GENERATE(0.0, 1.0, 5.5, 9.0);
  const double limit = GENERATE(0.0, 0.5, 2.0);
  const double step = 0.05;
  double worst = 0;
  double before = solve_drive(input(u, -1500, limit), 6, 0.6).current;
  for (double speed = -1500 + step; speed < 1500; speed += step) {
    const double now = solve_drive(input(u, speed, limit), 6, 0.6).current;
    worst = std::max(worst, std::abs(now - before) / step);
    before = now;
  }
  CAPTURE(u, limit);
  CHECK(worst <= 6.5e-3 / 2.4 * (1 + 1e-6));  // nowhere steeper than the motor alone
}

TEST_CASE("supply: the derivative by speed agrees with central differences", "[derivative][supply]") {
  const double u = GENERATE(0.0, 1.0, 5.5, -9.0);
  const double speed = GENERATE(-700.0, -90.0, 130.0, 640.0);
  const double limit = GENERATE(0.0, 0.5, 2.0);
  const double h = 1e-3;
  const double up = solve_drive(input(u, speed + h, limit), 6, 0.6).current;
  const double down = solve_drive(input(u, speed - h, limit), 6, 0.6).current;
  CAPTURE(u, speed, limit);
  CHECK_THAT(solve_drive(input(u, speed, limit), 6, 0.6).current_by_speed,
             WithinAbs((up - down) / (2 * h), 1e-9));
}

TEST_CASE("supply: with several drives each derivative counts the sag that the drive itself makes",
          "[derivative][supply]") {
  std::array all{input(9, 200), input(3, -50), input(9, 420)};
  std::array<ElectricState, 3> state, up, down;
  solve_supply(all, 6, 0.4, state);
  for (std::size_t j = 0; j < all.size(); ++j) {
    const double h = 1e-3;
    all[j].rotor_speed += h;
    solve_supply(all, 6, 0.4, up);
    all[j].rotor_speed -= 2 * h;
    solve_supply(all, 6, 0.4, down);
    all[j].rotor_speed += h;
    CAPTURE(j);
    CHECK_THAT(state[j].current_by_speed, WithinAbs((up[j].current - down[j].current) / (2 * h), 1e-9));
  }
}

TEST_CASE("supply: reversed motors at full duty pull it down to zero, not below", "[limits][supply]") {
  const ElectricState s = solve_drive(input(6, -20000), 6, 5);
  CHECK(s.supply_voltage == 0);
  CHECK_THAT(s.current, WithinRel(20000 * 6.5e-3 / 2.4, 1e-14));
  CHECK_THAT(s.supply_current, WithinRel(6.0 / 5, 1e-14));
}

TEST_CASE("supply: chopping drives that ask for too much make it collapse", "[limits][supply]") {
  // 4 A into 1 ohm by chopping takes 16 W; 6 V behind 1 ohm gives at most 9 W. At full duty it is 3 A at 3 V.
  DriveInput in = input(9, 0, 4);
  in.resistance = 1;
  const ElectricState s = solve_drive(in, 6, 1);
  CHECK_THAT(s.supply_voltage, WithinRel(3.0, 1e-13));
  CHECK_THAT(s.current, WithinRel(3.0, 1e-13));
  CHECK_FALSE(s.limited);
}

TEST_CASE("supply: equal stalled motors share its limit, and its voltage falls to what they need", "[analytic][supply]") {
  const int n = GENERATE(1, 2, 3, 5);
  const double resistance = GENERATE(0.0, 0.4), limit = GENERATE(0.8, 1.5, 20.0);
  std::vector<DriveInput> all(static_cast<std::size_t>(n), input(9, 0));
  std::vector<ElectricState> state(all.size());
  solve_supply(all, 6, resistance, state, limit);
  // Ohm's law: n windings side by side behind the supply's own resistance, or the limit shared out.
  const double each = std::min(6 / (2.4 + n * resistance), limit / n);
  CAPTURE(n, resistance, limit);
  double total = 0;
  for (const ElectricState& s : state) {
    CHECK_THAT(s.current, WithinRel(each, 1e-13));
    CHECK_THAT(s.supply_current, WithinRel(each, 1e-13));
    CHECK_THAT(s.supply_voltage, WithinRel(2.4 * each, 1e-13));
    total += s.supply_current;
  }
  CHECK(total <= limit * (1 + 1e-13));
}

TEST_CASE("supply: a limit that is not reached changes no bit", "[limits][supply]") {
  std::array all{input(9, 200), input(3, -50, 0.4), input(9, 420)};
  std::array<ElectricState, 3> free, limited;
  solve_supply(all, 6, 0.4, free);
  solve_supply(all, 6, 0.4, limited, 100);
  for (std::size_t j = 0; j < all.size(); ++j) {
    CHECK(free[j].current == limited[j].current);
    CHECK(free[j].supply_voltage == limited[j].supply_voltage);
    CHECK(free[j].current_by_speed == limited[j].current_by_speed);
  }
}

TEST_CASE("supply: its limit agrees with a search on random drives", "[supply]") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> unit(0, 1);
  int at_limit = 0;
  for (int round = 0; round < 200; ++round) {
    const auto n = static_cast<std::size_t>(1 + round % 5);
    const double resistance = round % 7 == 0 ? 0 : 1.2 * unit(random), limit = 0.2 + 2 * unit(random);
    std::vector<DriveInput> all(n);
    for (DriveInput& in : all) {
      // Driving, so that no drive throws the supply a current at no voltage.
      in = input(9 * unit(random), 600 * unit(random), unit(random) < 0.5 ? 0 : 1.5 * unit(random) + 0.01);
      in.resistance = 1 + 5 * unit(random);
    }
    std::vector<ElectricState> state(n);
    solve_supply(all, 6, resistance, state, limit);
    const auto sum = [&](double v) {
      double total = 0;
      for (const DriveInput& in : all) total += drawn(in, v);
      return total;
    };
    const double free = resistance > 0 ? terminal_by_search(all, 6, resistance) : 6;
    double expected = free;
    if (sum(free) > limit * (1 + 1e-9)) {
      ++at_limit;
      const int steps = 20000;
      for (int k = steps - 1; k > 0; --k) {
        double low = free * k / steps, high = free * (k + 1) / steps;
        if (sum(low) > limit) continue;
        for (int i = 0; i < 60; ++i) {
          const double middle = 0.5 * (low + high);
          (sum(middle) > limit ? high : low) = middle;
        }
        expected = 0.5 * (low + high);
        break;
      }
    }
    double total = 0;
    for (const ElectricState& s : state) total += s.supply_current;
    CAPTURE(round, n, resistance, limit);
    REQUIRE_THAT(state[0].supply_voltage, WithinAbs(expected, 1e-8));
    REQUIRE(total <= limit * (1 + 1e-9));
  }
  CHECK(at_limit > 50);
}

TEST_CASE("supply: what one drive's speed does to another's current agrees with central differences", "[derivative][supply]") {
  const double limit = GENERATE(0.0, 1.1);
  std::array all{input(9, 200), input(3, -50), input(9, 420), input(-9, -300), input(9, 100, 0.2)};
  std::array<ElectricState, 5> state, up, down;
  solve_supply(all, 6, 0.4, state, limit);
  for (std::size_t j = 0; j < all.size(); ++j) {
    const double h = 1e-3;
    all[j].rotor_speed += h;
    solve_supply(all, 6, 0.4, up, limit);
    all[j].rotor_speed -= 2 * h;
    solve_supply(all, 6, 0.4, down, limit);
    all[j].rotor_speed += h;
    CAPTURE(j, limit);
    // A drive that chops draws constant power times its speed; that part is left out of the derivative.
    if (state[j].voltage_by_speed == 0) continue;
    for (std::size_t k = 0; k < all.size(); ++k) {
      CAPTURE(k);
      const double expected = (up[k].current - down[k].current) / (2 * h);
      const double found = k == j ? state[j].current_by_speed : state[k].current_by_voltage * state[j].voltage_by_speed;
      CHECK_THAT(found, WithinAbs(expected, 1e-8));
    }
  }
}

TEST_CASE("motor: data that cannot be used are named", "[errors][motor]") {
  model::Motor m;
  m.resistance = 2.4;
  m.torque_constant = 6.5e-3;
  m.rotor_inertia = 1e-8;
  m.static_drag = 3e-4;
  m.kinetic_drag = 2e-4;
  CHECK_NOTHROW(check_motor(m));
  m.static_drag = 1e-4;
  CHECK_THROWS_WITH(check_motor(m), Contains("static drag of the motor = 0.0001 N m"));
  m.static_drag = 3e-4;
  m.resistance = 0;
  CHECK_THROWS_AS(check_motor(m), InvalidInput);
}
