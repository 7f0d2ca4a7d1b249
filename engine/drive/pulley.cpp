#include "drive/pulley.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "friction/argument.h"

namespace sinewright::drive {

CordPulley::CordPulley(const model::Pulley& pulley, double cord_diameter) {
  using friction::require;
  require(std::isfinite(pulley.radius) && pulley.radius > 0, "pulley radius", pulley.radius, "m",
          "finite and > 0");
  require(std::isfinite(cord_diameter) && cord_diameter >= 0, "cord diameter", cord_diameter, "m",
          "finite and >= 0");
  require(std::isfinite(pulley.turns_per_layer) && pulley.turns_per_layer >= 0, "pulley turns per layer",
          pulley.turns_per_layer, "", "finite and >= 0 (0: the radius does not grow)");
  bare_ = pulley.radius + cord_diameter / 2;
  if (pulley.turns_per_layer > 0) growth_ = cord_diameter / (2 * std::numbers::pi * pulley.turns_per_layer);
}

double CordPulley::radius(double shaft_angle) const noexcept {
  return bare_ + growth_ * std::max(0.0, shaft_angle);
}

double CordPulley::radius_slope(double shaft_angle) const noexcept {
  return shaft_angle < 0 ? 0.0 : growth_;
}

double CordPulley::wound_length(double from, double to) const noexcept {
  const double a = std::max(0.0, from);
  const double b = std::max(0.0, to);
  // (b² − a²)/2 as a product, so that a small step at a large angle keeps its digits.
  return bare_ * (to - from) + 0.5 * growth_ * (b - a) * (b + a);
}

}  // namespace sinewright::drive
