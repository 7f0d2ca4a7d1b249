#pragma once

#include "model/drive.h"

namespace sinewright::drive {

/// The straight speed-torque line of a motor at a fixed terminal voltage and winding resistance, net of its
/// own drag.
///
///     torque(ω) = k (U − k ω)/R − drag − viscous ω
///
/// Standard relations of the permanent-magnet motor (any motor handbook, from memory); docs/theory/motor.md.
struct MotorCurve {
  double no_load_speed = 0;  ///< ω₀ = (k U/R − drag) / (k²/R + viscous) [rad/s], 0 if the motor cannot start
  double no_load_current = 0;                ///< (U − k ω₀) / R [A]
  double stall_current = 0;                  ///< U / R [A]
  double stall_torque = 0;                   ///< k U/R − drag, 0 if the motor cannot start [N m]
  double speed_slope = 0;                    ///< −dω/dτ = 1 / (k²/R + viscous) [rad/s per N m]
  double highest_power = 0;                  ///< ω₀ τ_stall / 4, at half the no-load speed [W]
  double highest_efficiency = 0;             ///< [–]; (1 − √(I₀/I_s))² without viscous drag
  double current_at_highest_efficiency = 0;  ///< [A]
  double torque_at_highest_efficiency = 0;   ///< [N m]
};

/// @param voltage     U at the motor's terminals [V], >= 0.
/// @param resistance  R of the winding [Ω], > 0; with a supply's internal resistance added, U is its
/// open-circuit voltage.
[[nodiscard]] MotorCurve motor_curve(const model::Motor& motor, double voltage, double resistance) noexcept;

/// Net torque at a speed [N m], for ω > 0: k (U − k ω)/R − drag − viscous ω.
[[nodiscard]] double motor_torque(const model::Motor& motor, double voltage, double resistance,
                                  double speed) noexcept;

/// Time constant with which a free motor runs up: J R / (k² + R viscous) [s].
/// @param inertia  J at the rotor, load included [kg m²].
[[nodiscard]] double run_up_time_constant(const model::Motor& motor, double resistance,
                                          double inertia) noexcept;

/// Speed above which a driver's current limit does not act any more: (U − R I) / k, not below 0 [rad/s].
[[nodiscard]] double current_limit_corner_speed(const model::Motor& motor, double voltage, double resistance,
                                                double current_limit) noexcept;

}  // namespace sinewright::drive
