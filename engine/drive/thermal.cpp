#include "drive/thermal.h"

#include <cmath>

#include "drive/motor.h"

namespace sinewright::drive {
namespace {

// ∫₀^t exp(λ s) ds, for any sign of λ.
double integrated_exponential(double rate, double time) {
  const double x = rate * time;
  return x == 0 ? time : time * (std::expm1(x) / x);
}

}  // namespace

bool has_thermal_network(const model::Motor& motor) noexcept {
  return motor.winding_to_housing > 0 && motor.housing_to_ambient > 0 && motor.winding_capacity > 0 &&
         motor.housing_capacity > 0;
}

WindingHeat copper_loss(const model::Motor& motor, double current, double winding_temperature) noexcept {
  const double square = current * current;
  return {square * winding_resistance(motor, winding_temperature),
          square * motor.resistance * motor.resistance_slope};
}

ThermalState thermal_step(const model::Motor& motor, const ThermalState& state,
                          const WindingHeat& winding_heat, double housing_heat, double ambient,
                          double step) noexcept {
  const double g1 = 1 / motor.winding_to_housing;  // [W/K]
  const double g2 = 1 / motor.housing_to_ambient;
  const double cw = motor.winding_capacity;
  const double ch = motor.housing_capacity;
  const double g = winding_heat.by_winding;
  // x = temperatures − those at the start; dx/dt = A x + rate.
  const double a11 = (g - g1) / cw, a12 = g1 / cw;
  const double a21 = g1 / ch, a22 = -(g1 + g2) / ch;
  const double through = g1 * (state.winding - state.housing);
  const double rate_w = (winding_heat.power - through) / cw;
  const double rate_h = (housing_heat + through - g2 * (state.housing - ambient)) / ch;
  // Eigenvalues are real and distinct, as a12 a21 > 0. The one of smaller size comes from the determinant,
  // which is written out so that the slow time constant keeps its digits.
  const double mean = 0.5 * (a11 + a22);
  const double half_gap = std::sqrt(0.25 * (a11 - a22) * (a11 - a22) + a12 * a21);
  const double determinant = (g1 * g2 - g * (g1 + g2)) / (cw * ch);
  const double l1 = mean > 0 ? mean + half_gap : mean - half_gap;
  const double l2 = determinant / l1;
  // x(t) = ∫₀^t exp(A s) ds · rate, by Sylvester's formula.
  const double f1 = integrated_exponential(l1, step) / (l1 - l2);
  const double f2 = integrated_exponential(l2, step) / (l1 - l2);
  const double along = f1 - f2;            // factor of A
  const double plain = f2 * l1 - f1 * l2;  // factor of the identity
  return {state.winding + plain * rate_w + along * (a11 * rate_w + a12 * rate_h),
          state.housing + plain * rate_h + along * (a21 * rate_w + a22 * rate_h)};
}

std::optional<ThermalState> steady_temperatures(const model::Motor& motor, double current,
                                                double ambient) noexcept {
  const double both = motor.winding_to_housing + motor.housing_to_ambient;
  const double square = current * current;
  const double room = 1 - motor.resistance_slope * motor.resistance * both * square;
  if (!(room > 0)) return std::nullopt;
  const double rise = both * winding_resistance(motor, ambient) * square / room;
  return ThermalState{ambient + rise, ambient + rise * motor.housing_to_ambient / both};
}

double continuous_current(const model::Motor& motor, double winding_temperature, double ambient) noexcept {
  const double both = motor.winding_to_housing + motor.housing_to_ambient;
  return std::sqrt((winding_temperature - ambient) / (both * winding_resistance(motor, winding_temperature)));
}

double runaway_current(const model::Motor& motor) noexcept {
  const double both = motor.winding_to_housing + motor.housing_to_ambient;
  return 1 / std::sqrt(motor.resistance_slope * motor.resistance * both);
}

}  // namespace sinewright::drive
