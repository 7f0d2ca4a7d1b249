#include "drive/thermal.h"

#include <string>

#include <catch2/catch.hpp>

#include "check.h"
#include "drive/motor.h"

using namespace sinewright;
using namespace sinewright::drive;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {

constexpr double zero_celsius = 273.15;

// R = 2.4 ohm and alpha = 0.00393 1/K at 25 C, 7.5 and 17 K/W, 1.2 and 9.0 J/K; ambient 25 C.
model::Motor motor() {
  model::Motor m;
  m.resistance = 2.4;
  m.resistance_slope = 0.00393;
  m.reference_temperature = 25 + zero_celsius;
  m.winding_to_housing = 7.5;
  m.housing_to_ambient = 17;
  m.winding_capacity = 1.2;
  m.housing_capacity = 9.0;
  return m;
}

constexpr double ambient = 25 + zero_celsius;

}  // namespace

TEST_CASE("thermal: copper's resistance at 100 C is 1.3144 times that at 20 C", "[external][thermal]") {
  model::Motor m = motor();
  m.reference_temperature = 20 + zero_celsius;
  m.resistance_slope = model::Motor{}.resistance_slope;  // the model's default is meant to be copper
  const double ratio = winding_resistance(m, 100 + zero_celsius) / m.resistance;
  check_relative("R(100 C)/R(20 C)", "1", ratio, 1.3144,
                 {"0.00393 1/K at 20 C: IEC 60028 (from memory), power engineering handbook p. 970", 1e-3});
  check_relative("R(100 C)/R(20 C) by the 234.5 rule", "1", ratio, 1.3143418, {"234.5 rule of copper", 1e-3});
}

TEST_CASE("thermal: the coefficient restated for 25 C", "[external][thermal]") {
  check_relative("alpha at 25 C", "1/K",
                 rebased_resistance_slope(0.00393, 20 + zero_celsius, 25 + zero_celsius), 0.00385426371794,
                 {"alpha20 / (1 + 5 alpha20), evaluated apart", 1e-10});
}

TEST_CASE("thermal: steady temperatures of the two-resistor network with hot copper", "[external][thermal]") {
  const std::string source =
      "two-resistor model of motor makers' theory pages (from memory), evaluated apart";
  const auto steady = steady_temperatures(motor(), 0.8, ambient);
  REQUIRE(steady.has_value());
  check_relative("winding at 0.8 A", "degC", steady->winding - zero_celsius, 69.1635071232, {source, 1e-10});
  check_relative("housing at 0.8 A", "degC", steady->housing - zero_celsius, 55.6440661671, {source, 1e-10});
  check_relative("hot resistance", "ohm", winding_resistance(motor(), steady->winding), 2.81655019919,
                 {source, 1e-10});
  check_relative("continuous current for 125 C", "A",
                 continuous_current(motor(), 125 + zero_celsius, ambient), 1.10493257846, {source, 1e-10});
  check_relative("run-away current", "A", runaway_current(motor()), 2.08024775395, {source, 1e-10});
}

TEST_CASE("thermal: the transient at 0.8 A with resistance feedback", "[external][thermal]") {
  const std::string source = "linear 2 x 2 system by matrix exponential, evaluated apart with 28 digits";
  struct Row {
    double time, winding, housing;  // [s, C, C]
  };
  const Row r =
      GENERATE(Row{1, 26.214778028097, 25.00909078077}, Row{10, 33.091338898936, 25.64383943507},
               Row{60, 43.201525249423, 32.045173500182}, Row{300, 61.451345551429, 48.632045303021},
               Row{1000, 68.93968364272, 55.440562272593});
  const ThermalState cold{ambient, ambient};
  const std::string when = " after " + std::to_string(int(r.time)) + " s";
  const ThermalState s = thermal_step(motor(), cold, copper_loss(motor(), 0.8, ambient), 0, ambient, r.time);
  check_relative("winding" + when, "degC", s.winding - zero_celsius, r.winding, {source, 1e-8});
  check_relative("housing" + when, "degC", s.housing - zero_celsius, r.housing, {source, 1e-8});
}

TEST_CASE("thermal: steps with the heat frozen in each converge to the transient at first order",
          "[external][thermal][order]") {
  const auto winding_at_60 = [](int steps) {
    ThermalState s{ambient, ambient};
    for (int i = 0; i < steps; ++i) {
      s = thermal_step(motor(), s, {copper_loss(motor(), 0.8, s.winding).power, 0}, 0, ambient, 60.0 / steps);
    }
    return s.winding - zero_celsius;
  };
  const double exact = 43.201525249423;
  check_absolute("winding after 60 s, heat updated each 10 ms", "degC", winding_at_60(6000), exact,
                 {"linear 2 x 2 system by matrix exponential, evaluated apart with 28 digits", 1e-3});
  CHECK((exact - winding_at_60(600)) / (exact - winding_at_60(1200)) == Approx(2).margin(0.02));
}
