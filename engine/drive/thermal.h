#pragma once

#include <optional>

#include "model/drive.h"

namespace sinewright::drive {

struct ThermalState {
  double winding = 0;  ///< [K]
  double housing = 0;  ///< [K]
};

/// True when a motor has all four numbers of its thermal network.
[[nodiscard]] bool has_thermal_network(const model::Motor& motor) noexcept;

/// Heat that goes into the winding: watts at the step's start plus a change with the winding's own
/// temperature.
struct WindingHeat {
  double power = 0;  ///< at the temperature that the step starts with [W]
  /// ∂power/∂T_winding [W/K]; I² R₀ α for copper loss at constant current, 0 for constant heat.
  double by_winding = 0;
};

/// Copper loss I² R(T) with its slope, for `thermal_step`.
[[nodiscard]] WindingHeat copper_loss(const model::Motor& motor, double current,
                                      double winding_temperature) noexcept;

/// Advances the two-node network winding – housing – ambient by one step of any length.
///
///     C_w dT_w/dt = P_w − (T_w − T_h)/R_wh
///     C_h dT_h/dt = P_h + (T_w − T_h)/R_wh − (T_h − T_a)/R_ha
///
/// Exact when P_w is linear in T_w over the step (matrix exponential in closed form), so never unstable.
/// Needs has_thermal_network(motor). See docs/theory/thermal.md.
/// @param winding_heat  P_w [W].
/// @param housing_heat  P_h: friction of brushes, bearings, gears [W].
/// @param ambient       T_a [K].
/// @param step          [s], >= 0.
[[nodiscard]] ThermalState thermal_step(const model::Motor& motor, const ThermalState& state,
                                        const WindingHeat& winding_heat, double housing_heat, double ambient,
                                        double step) noexcept;

/// Steady temperatures at constant current, with the resistance that rises with temperature.
///
///     T_w − T_a = (R_wh + R_ha) R_a I² / (1 − α R₀ (R_wh + R_ha) I²),  R_a the resistance at ambient
///
/// @returns nothing at or above the run-away current, where no steady state exists.
[[nodiscard]] std::optional<ThermalState> steady_temperatures(const model::Motor& motor, double current,
                                                              double ambient) noexcept;

/// Current at which the winding settles at a given temperature, above ambient [A].
[[nodiscard]] double continuous_current(const model::Motor& motor, double winding_temperature,
                                        double ambient) noexcept;

/// Current from which on the winding heats without bound: 1 / √(α R₀ (R_wh + R_ha)) [A]; infinite for α = 0.
[[nodiscard]] double runaway_current(const model::Motor& motor) noexcept;

}  // namespace sinewright::drive
