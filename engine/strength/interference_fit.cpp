#include "strength/interference_fit.h"

#include <cmath>
#include <numbers>

#include "strength/argument.h"

namespace sinewright::strength {

namespace {

void check(const RingMaterial& material, const char* modulus, const char* poisson, const char* expansion) {
  require_positive(material.youngs_modulus, modulus, "Pa");
  require(material.poisson_ratio >= 0 && material.poisson_ratio <= 0.5, poisson, material.poisson_ratio, "",
          "0 to 0.5");
  require_finite(material.thermal_expansion, expansion, "1/K");
}

void check(const InterferenceFit& fit) {
  require_positive(fit.diameter, "diameter of the fit", "m");
  require(fit.shaft_bore >= 0 && fit.shaft_bore < fit.diameter, "bore of the shaft", fit.shaft_bore, "m",
          "0 to below the diameter of the fit");
  require(fit.hub_diameter > fit.diameter, "outer diameter of the hub", fit.hub_diameter, "m",
          "above the diameter of the fit");
  require_positive(fit.length, "length of the fit", "m");
  require_finite(fit.interference, "interference", "m");
  check(fit.shaft, "modulus of the shaft", "Poisson ratio of the shaft", "expansion of the shaft");
  check(fit.hub, "modulus of the hub", "Poisson ratio of the hub", "expansion of the hub");
}

void check(const InterferenceFit& fit, double pressure) {
  check(fit);
  require_not_negative(pressure, "pressure of the fit", "Pa");
}

// ((outer² + inner²) / (outer² − inner²)), written with the ratio so that an infinite outer one gives 1.
double ring_factor(double outer, double inner) {
  const double ratio = inner / outer;
  return (1 + ratio * ratio) / ((1 - ratio) * (1 + ratio));
}

}  // namespace

double interference_at(const InterferenceFit& fit, double temperature_rise) {
  check(fit);
  require_finite(temperature_rise, "temperature rise", "K");
  return fit.interference +
         (fit.shaft.thermal_expansion - fit.hub.thermal_expansion) * fit.diameter * temperature_rise;
}

double hub_opening(const InterferenceFit& fit, double pressure) {
  check(fit, pressure);
  return fit.diameter * pressure / fit.hub.youngs_modulus *
         (ring_factor(fit.hub_diameter, fit.diameter) + fit.hub.poisson_ratio);
}

double shaft_shrinkage(const InterferenceFit& fit, double pressure) {
  check(fit, pressure);
  return fit.diameter * pressure / fit.shaft.youngs_modulus *
         (ring_factor(fit.diameter, fit.shaft_bore) - fit.shaft.poisson_ratio);
}

double interference_for(const InterferenceFit& fit, double pressure) {
  return hub_opening(fit, pressure) + shaft_shrinkage(fit, pressure);
}

double fit_pressure(const InterferenceFit& fit, double temperature_rise) {
  const double interference = interference_at(fit, temperature_rise);
  if (interference <= 0) return 0;
  return interference / interference_for(fit, 1);
}

double relaxed_pressure(double pressure, double remaining_share) {
  require_not_negative(pressure, "pressure of the fit", "Pa");
  require_share(remaining_share, "share of the pressure that creep leaves");
  return pressure * remaining_share;
}

double slip_force(const InterferenceFit& fit, double pressure, double friction) {
  check(fit, pressure);
  require_not_negative(friction, "friction coefficient", "");
  return friction * pressure * std::numbers::pi * fit.diameter * fit.length;
}

double slip_torque(const InterferenceFit& fit, double pressure, double friction) {
  return slip_force(fit, pressure, friction) * fit.diameter / 2;
}

FitStress hoop_stress(const InterferenceFit& fit, double pressure) {
  check(fit, pressure);
  const double hub = ring_factor(fit.hub_diameter, fit.diameter);
  const double shaft = ring_factor(fit.diameter, fit.shaft_bore);
  // At a ring's other face the hoop stress differs by p: 2 inner² / (outer² − inner²) = factor − 1. A solid
  // shaft has no bore and −p throughout.
  const double shaft_bore = fit.shaft_bore > 0 ? shaft + 1 : 1;
  return {pressure * hub, pressure * (hub - 1), -pressure * shaft, -pressure * shaft_bore};
}

double hub_equivalent_stress(const InterferenceFit& fit, double pressure) {
  const double hoop = hoop_stress(fit, pressure).hub_bore;
  return std::sqrt(hoop * hoop + hoop * pressure + pressure * pressure);
}

}  // namespace sinewright::strength
