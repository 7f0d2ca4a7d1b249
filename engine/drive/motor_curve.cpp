#include "drive/motor_curve.h"

#include <algorithm>
#include <cmath>

namespace sinewright::drive {

MotorCurve motor_curve(const model::Motor& motor, double voltage, double resistance) noexcept {
  const double k = motor.torque_constant;
  const double damping = k * k / resistance + motor.viscous_drag;  // −dτ/dω
  MotorCurve curve;
  curve.stall_current = voltage / resistance;
  curve.stall_torque = std::max(0.0, k * curve.stall_current - motor.kinetic_drag);
  curve.no_load_speed = curve.stall_torque / damping;
  curve.no_load_current = (voltage - k * curve.no_load_speed) / resistance;
  curve.speed_slope = 1 / damping;
  curve.highest_power = curve.no_load_speed * curve.stall_torque / 4;
  if (curve.stall_torque == 0) return curve;
  // With x = ω/ω₀: output (1 − x) x ω₀ τ_s, input U (I_s − x (I_s − I₀)). The quotient is stationary where
  // c x² − 2 x + 1 = 0 with c = 1 − I₀/I_s, so x = (1 − √(1 − c)) / c = 1 / (1 + √(I₀/I_s)).
  const double x = 1 / (1 + std::sqrt(curve.no_load_current / curve.stall_current));
  curve.current_at_highest_efficiency =
      curve.stall_current - x * (curve.stall_current - curve.no_load_current);
  curve.torque_at_highest_efficiency = (1 - x) * curve.stall_torque;
  curve.highest_efficiency = x * curve.no_load_speed * curve.torque_at_highest_efficiency /
                             (voltage * curve.current_at_highest_efficiency);
  return curve;
}

double motor_torque(const model::Motor& motor, double voltage, double resistance, double speed) noexcept {
  return motor.torque_constant * (voltage - motor.torque_constant * speed) / resistance - motor.kinetic_drag -
         motor.viscous_drag * speed;
}

double run_up_time_constant(const model::Motor& motor, double resistance, double inertia) noexcept {
  return inertia * resistance /
         (motor.torque_constant * motor.torque_constant + resistance * motor.viscous_drag);
}

double current_limit_corner_speed(const model::Motor& motor, double voltage, double resistance,
                                  double current_limit) noexcept {
  return std::max(0.0, (voltage - resistance * current_limit) / motor.torque_constant);
}

}  // namespace sinewright::drive
