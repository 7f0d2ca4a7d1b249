#include "drive/thermal.h"

#include <cmath>
#include <limits>

#include <catch2/catch.hpp>

#include "drive/motor.h"

using namespace sinewright;
using namespace sinewright::drive;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

model::Motor motor() {
  model::Motor m;
  m.resistance = 2.4;
  m.reference_temperature = 298.15;
  m.winding_to_housing = 7.5;
  m.housing_to_ambient = 17;
  m.winding_capacity = 1.2;
  m.housing_capacity = 9;
  return m;
}

constexpr double ambient = 293.15;

// The classical Runge–Kutta scheme on the two equations, resistance feedback included.
ThermalState by_runge_kutta(const model::Motor& m, ThermalState s, double current, double housing_heat,
                            double time) {
  const int n = 4000;
  const double h = time / n;
  const auto rate = [&](const ThermalState& x) {
    const double through = (x.winding - x.housing) / m.winding_to_housing;
    return ThermalState{
        (current * current * winding_resistance(m, x.winding) - through) / m.winding_capacity,
        (housing_heat + through - (x.housing - ambient) / m.housing_to_ambient) / m.housing_capacity};
  };
  const auto add = [](const ThermalState& x, const ThermalState& d, double f) {
    return ThermalState{x.winding + f * d.winding, x.housing + f * d.housing};
  };
  for (int i = 0; i < n; ++i) {
    const auto k1 = rate(s), k2 = rate(add(s, k1, h / 2)), k3 = rate(add(s, k2, h / 2)),
               k4 = rate(add(s, k3, h));
    s = add(add(add(add(s, k1, h / 6), k2, h / 3), k3, h / 3), k4, h / 6);
  }
  return s;
}

}  // namespace

TEST_CASE("thermal: a step agrees with Runge-Kutta, below and above the run-away current",
          "[analytic][thermal]") {
  const model::Motor m = motor();
  const double current = GENERATE(0.0, 0.8, 2.5, 6.0);
  const ThermalState start{330, 301};
  const ThermalState got = thermal_step(m, start, copper_loss(m, current, start.winding), 0.07, ambient, 40);
  const ThermalState expected = by_runge_kutta(m, start, current, 0.07, 40);
  CAPTURE(current);
  CHECK_THAT(got.winding, WithinRel(expected.winding, 1e-10));
  CHECK_THAT(got.housing, WithinRel(expected.housing, 1e-10));
}

TEST_CASE("thermal: with constant heat two half steps are one whole step", "[analytic][thermal]") {
  const model::Motor m = motor();
  const ThermalState start{300, 295};
  const WindingHeat heat{1.3, 0};
  const ThermalState half = thermal_step(m, start, heat, 0.1, ambient, 15);
  const ThermalState twice = thermal_step(m, half, heat, 0.1, ambient, 15);
  const ThermalState whole = thermal_step(m, start, heat, 0.1, ambient, 30);
  CHECK_THAT(twice.winding, WithinRel(whole.winding, 1e-14));
  CHECK_THAT(twice.housing, WithinRel(whole.housing, 1e-14));
}

TEST_CASE("thermal: heat in is heat stored and heat given to the air", "[energy][thermal]") {
  const model::Motor m = motor();
  ThermalState s{300, 295};
  const double h = 0.01;
  const ThermalState start = s;
  double to_air = 0;
  const int n = 3000;
  for (int i = 0; i < n; ++i) {
    const ThermalState next = thermal_step(m, s, {1.3, 0}, 0.1, ambient, h);
    to_air += h * (0.5 * (s.housing + next.housing) - ambient) / m.housing_to_ambient;
    s = next;
  }
  const double stored =
      m.winding_capacity * (s.winding - start.winding) + m.housing_capacity * (s.housing - start.housing);
  CHECK_THAT(stored + to_air, WithinRel((1.3 + 0.1) * h * n, 1e-9));  // trapezoids: h^2
}

TEST_CASE("thermal: no time, no change, and no heat at ambient, none either", "[limits][thermal]") {
  const model::Motor m = motor();
  const ThermalState still = thermal_step(m, {330, 301}, copper_loss(m, 1, 330), 0.1, ambient, 0);
  CHECK(still.winding == 330);
  CHECK(still.housing == 301);
  const ThermalState cold = thermal_step(m, {ambient, ambient}, {}, 0, ambient, 1e4);
  CHECK(cold.winding == ambient);
  CHECK(cold.housing == ambient);
}

TEST_CASE("thermal: a short step moves by rate times time", "[limits][thermal]") {
  const model::Motor m = motor();
  const double h = 1e-6;
  const ThermalState s = thermal_step(m, {ambient, ambient}, {2.4, 0}, 0, ambient, h);
  CHECK_THAT((s.winding - ambient) / h, WithinRel(2.4 / 1.2, 1e-5));
}

TEST_CASE("thermal: a very long step ends in the steady state", "[limits][thermal]") {
  const model::Motor m = motor();
  const double current = GENERATE(0.3, 0.8, 1.5);
  const auto steady = steady_temperatures(m, current, ambient);
  REQUIRE(steady.has_value());
  const ThermalState s =
      thermal_step(m, {ambient, ambient}, copper_loss(m, current, ambient), 0, ambient, 1e6);
  CHECK_THAT(s.winding, WithinRel(steady->winding, 1e-12));
  CHECK_THAT(s.housing, WithinRel(steady->housing, 1e-12));
  CHECK_THAT(continuous_current(m, steady->winding, ambient), WithinRel(current, 1e-12));
}

TEST_CASE("thermal: at the run-away current there is no steady state, and the winding heats on and on",
          "[limits][thermal]") {
  const model::Motor m = motor();
  const double runaway = runaway_current(m);
  CHECK(steady_temperatures(m, 0.999 * runaway, ambient).has_value());
  CHECK_FALSE(steady_temperatures(m, 1.001 * runaway, ambient).has_value());
  const WindingHeat heat = copper_loss(m, runaway, ambient);
  const double early = thermal_step(m, {ambient, ambient}, heat, 0, ambient, 1e5).winding;
  const double late = thermal_step(m, {ambient, ambient}, heat, 0, ambient, 2e5).winding;
  // One eigenvalue is zero there: the temperature grows in proportion to time.
  CHECK_THAT((late - ambient) / (early - ambient), WithinRel(2.0, 0.01));
}

TEST_CASE("thermal: a motor without all four numbers has no network", "[thermal]") {
  model::Motor m = motor();
  CHECK(has_thermal_network(m));
  m.housing_capacity = 0;
  CHECK_FALSE(has_thermal_network(m));
}
