#pragma once

namespace sinewright::strength {

/// What an elastic ring needs to know of its material.
struct RingMaterial {
  double youngs_modulus = 0;     ///< E [Pa], > 0
  double poisson_ratio = 0;      ///< ν, in [0, 0.5]
  double thermal_expansion = 0;  ///< α [1/K]
};

/// A shaft pressed into a hub, for instance a steel pin in a printed boss.
struct InterferenceFit {
  double diameter = 0;      ///< 2R, where they touch [m], > 0
  double shaft_bore = 0;    ///< 2Rᵢ of a hollow shaft [m]; 0: solid
  double hub_diameter = 0;  ///< 2Rₒ, outside [m], above 2R; infinity: a hole in a large body
  double length = 0;        ///< L of the contact [m], > 0
  double interference = 0;  ///< δ, shaft − hole before joining, on the diameter [m]; negative: clearance
  RingMaterial shaft;
  RingMaterial hub;
};

/// Interference at another temperature: δ + (α_shaft − α_hub) 2R ΔT, on the diameter [m]; may become
/// negative.
/// @param temperature_rise  ΔT above the temperature at which δ was measured [K], either sign.
/// @throws InvalidInput if an argument is out of range; so do all functions here.
[[nodiscard]] double interference_at(const InterferenceFit& fit, double temperature_rise);

/// How much the hub's bore opens under a pressure, on the diameter [m].
///
///     2R p/E ((Rₒ² + R²)/(Rₒ² − R²) + ν)
///
/// Lamé's thick ring in plane stress (parts free to change length); any text on machine elements.
/// @param pressure  p [Pa], ≥ 0.
[[nodiscard]] double hub_opening(const InterferenceFit& fit, double pressure);

/// How much the shaft shrinks under a pressure, on the diameter: 2R p/E ((R² + Rᵢ²)/(R² − Rᵢ²) − ν) [m].
[[nodiscard]] double shaft_shrinkage(const InterferenceFit& fit, double pressure);

/// Interference that gives a pressure: hub_opening + shaft_shrinkage, on the diameter [m].
[[nodiscard]] double interference_for(const InterferenceFit& fit, double pressure);

/// Pressure between shaft and hub [Pa]: what makes interference_for(p) the interference at that temperature.
/// 0 if nothing is left of it: the parts are loose.
/// @param temperature_rise  ΔT [K].
[[nodiscard]] double fit_pressure(const InterferenceFit& fit, double temperature_rise = 0);

/// Pressure after the hub has relaxed: share × p [Pa].
/// @param pressure         p when new [Pa], ≥ 0.
/// @param remaining_share  what creep leaves of it, in (0, 1]. Nylon loses a good part; measure it.
[[nodiscard]] double relaxed_pressure(double pressure, double remaining_share);

/// Axial force at which the fit slips: μ p 2π R L [N]. With the kinetic coefficient and the new pressure the
/// force that presses the shaft home; with the static coefficient and the relaxed pressure the one that pulls
/// it out.
/// @param friction  μ [–], ≥ 0.
[[nodiscard]] double slip_force(const InterferenceFit& fit, double pressure, double friction);

/// Torque at which the fit slips: slip_force × R [N m].
[[nodiscard]] double slip_torque(const InterferenceFit& fit, double pressure, double friction);

/// Hoop stresses of both parts, tension positive [Pa].
struct FitStress {
  double hub_bore = 0;       ///< p (Rₒ² + R²)/(Rₒ² − R²), the hub's largest
  double hub_outside = 0;    ///< 2 p R²/(Rₒ² − R²)
  double shaft_outside = 0;  ///< −p (R² + Rᵢ²)/(R² − Rᵢ²)
  double shaft_bore = 0;     ///< −2 p R²/(R² − Rᵢ²); in a solid shaft −p, as everywhere in it
};

[[nodiscard]] FitStress hoop_stress(const InterferenceFit& fit, double pressure);

/// Von Mises stress at the hub's bore: √(σ² + σp + p²), with the hoop stress σ there and −p across [Pa].
[[nodiscard]] double hub_equivalent_stress(const InterferenceFit& fit, double pressure);

}  // namespace sinewright::strength
