#include "friction/capstan.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "friction/argument.h"

namespace sinewright::friction {
namespace {

// exp() overflows a double just above this.
constexpr double largest_exponent = 709.0;

bool finite_nonnegative(double x) {
  return std::isfinite(x) && x >= 0;
}

}  // namespace

double capstan_slip_ratio(double friction, double turning_angle) {
  require(finite_nonnegative(friction), "friction coefficient", friction, "", "finite and >= 0");
  require(finite_nonnegative(turning_angle), "turning angle", turning_angle, "rad", "finite and >= 0");
  const double exponent = friction * turning_angle;
  require(exponent <= largest_exponent, "friction coefficient times turning angle", exponent, "",
          "at most 709, or the tension ratio is no finite number");
  return std::exp(exponent);
}

double friction_from_slip_ratio(double ratio, double turning_angle) {
  require(std::isfinite(ratio) && ratio >= 1, "tension ratio", ratio, "",
          "finite and >= 1 (larger tension over smaller)");
  require(std::isfinite(turning_angle) && turning_angle > 0, "turning angle", turning_angle, "rad",
          "finite and > 0");
  return std::log(ratio) / turning_angle;
}

double groove_factor(double included_angle) {
  require(included_angle >= 0 && included_angle <= std::numbers::pi, "groove angle", included_angle, "rad",
          "0 (no groove) to pi");
  if (included_angle == 0) return 1;
  return 1 / std::sin(included_angle / 2);
}

double helix_turning_angle(double winding_angle, double lead_angle) {
  require(finite_nonnegative(winding_angle), "winding angle", winding_angle, "rad", "finite and >= 0");
  require(std::abs(lead_angle) <= std::numbers::pi / 2, "lead angle", lead_angle, "rad", "-pi/2 to pi/2");
  return winding_angle * std::cos(lead_angle);
}

double power_law_slip_tension(const PowerLawFriction& law, double tension_in, double radius,
                              double turning_angle) {
  require(finite_nonnegative(law.coefficient), "power-law friction coefficient", law.coefficient, "",
          "finite and >= 0");
  require(law.exponent > 0 && law.exponent <= 1, "power-law friction exponent", law.exponent, "",
          "above 0, at most 1");
  require(finite_nonnegative(tension_in), "tension", tension_in, "N", "finite and >= 0");
  require(std::isfinite(radius) && radius > 0, "bend radius", radius, "m", "finite and > 0");
  require(finite_nonnegative(turning_angle), "turning angle", turning_angle, "rad", "finite and >= 0");
  if (tension_in == 0) return 0;
  // T₁ = T₀ (1 + m x)^(1/m) with m = 1 − n and x = a θ (R / T₀)^m: log1p keeps the digits as n approaches 1.
  const double m = 1 - law.exponent;
  const double x = law.coefficient * turning_angle * std::pow(radius / tension_in, m);
  return tension_in * std::exp(m == 0 ? x : std::log1p(m * x) / m);
}

PowerLawFriction power_law(const model::ChannelFriction& channel) {
  check_channel(channel);
  if (channel.load_exponent == 1) return {channel.kinetic, 1};
  return {channel.kinetic * std::pow(channel.reference_line_load, 1 - channel.load_exponent),
          channel.load_exponent};
}

BendCone bend_cone(const model::ChannelFriction& channel, double factor, double turning_angle,
                   double line_load) noexcept {
  double friction = channel.kinetic;
  double friction_slope = 0;  // dμ/dp [m/N]
  if (channel.load_exponent != 1 && std::isfinite(line_load)) {
    const double power = channel.load_exponent - 1;
    friction = channel.kinetic * std::pow(line_load / channel.reference_line_load, power);
    if (friction > channel.highest) {
      friction = channel.highest;
    } else if (line_load > 0) {
      friction_slope = power * friction / line_load;
    }
  }
  const double groove = channel.groove_angle > 0 ? 1 / std::sin(channel.groove_angle / 2) : 1.0;
  const double lever = factor * groove * turning_angle;
  const double loss = channel.bending_loss > 1 ? std::log(channel.bending_loss) : 0.0;
  const double bending = loss * std::min(1.0, turning_angle / full_bending_loss_angle);

  BendCone cone;
  cone.kinetic = friction * lever + bending;
  cone.sticking = channel.static_ratio * friction * lever + bending;
  cone.kinetic_by_turning_angle =
      friction * factor * groove +
      (turning_angle < full_bending_loss_angle ? loss / full_bending_loss_angle : 0.0);
  cone.kinetic_by_line_load = friction_slope * lever;
  return cone;
}

double bend_friction_exponent(const model::ChannelFriction& channel, double factor, double turning_angle,
                              double line_load) {
  check_channel(channel);
  require(finite_nonnegative(factor), "friction factor of a bend", factor, "", "finite and >= 0");
  require(finite_nonnegative(turning_angle), "turning angle", turning_angle, "rad", "finite and >= 0");
  require(line_load >= 0, "line load", line_load, "N/m", ">= 0");
  return bend_cone(channel, factor, turning_angle, line_load).kinetic;
}

void check_channel(const model::ChannelFriction& channel) {
  require(finite_nonnegative(channel.kinetic), "channel friction, kinetic", channel.kinetic, "",
          "finite and >= 0");
  require(std::isfinite(channel.static_ratio) && channel.static_ratio >= 1, "channel friction, static ratio",
          channel.static_ratio, "", "finite and >= 1 (static over kinetic coefficient)");
  require(channel.load_exponent > 0 && channel.load_exponent <= 1, "channel friction, load exponent",
          channel.load_exponent, "", "above 0, at most 1");
  require(std::isfinite(channel.bending_loss) && channel.bending_loss >= 1, "channel friction, bending loss",
          channel.bending_loss, "", "finite and >= 1 (a tension ratio)");
  require(channel.groove_angle >= 0 && channel.groove_angle <= std::numbers::pi,
          "channel friction, groove angle", channel.groove_angle, "rad", "0 (no groove) to pi");
  if (channel.load_exponent == 1) return;
  require(std::isfinite(channel.reference_line_load) && channel.reference_line_load > 0,
          "channel friction, reference line load", channel.reference_line_load, "N/m",
          "> 0 when the load exponent differs from 1");
  require(std::isfinite(channel.highest) && channel.highest >= channel.kinetic, "channel friction, highest",
          channel.highest, "", "at least the kinetic coefficient when the load exponent differs from 1");
}

}  // namespace sinewright::friction
