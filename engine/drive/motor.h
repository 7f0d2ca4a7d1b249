#pragma once

#include <span>

#include "model/drive.h"

namespace sinewright::drive {

/// Resistance of the winding at a temperature: R = R₀ (1 + α (T − T₀)) [Ω].
/// @param temperature  of the copper [K].
[[nodiscard]] double winding_resistance(const model::Motor& motor, double temperature) noexcept;

/// A temperature coefficient given at one temperature, restated for another: α₁ = α₀ / (1 + α₀ (T₁ − T₀))
/// [1/K].
[[nodiscard]] double rebased_resistance_slope(double slope, double temperature,
                                              double new_temperature) noexcept;

enum class DriverMode {
  voltage,  ///< the driver puts the commanded voltage on the motor, as far as supply and current limit allow
  open,     ///< power off, leads open: no current
  shorted,  ///< power off, leads shorted: the motor brakes itself; the driver's current limit does not act
};

/// What one driver and its motor are told at an instant.
struct DriveInput {
  DriverMode mode = DriverMode::open;
  double commanded_voltage = 0;  ///< [V], positive winds the cord in; used in mode `voltage`
  double rotor_speed = 0;        ///< ω, of the rotor, positive winds [rad/s]
  double resistance = 0;         ///< R of the winding at its present temperature [Ω], > 0
  double torque_constant = 0;    ///< k [N m/A] = [V s/rad], >= 0
  double current_limit = 0;      ///< of the driver, on the motor's current in either direction [A]; 0: none
};

/// What comes of it.
struct ElectricState {
  double current = 0;         ///< of the motor; torque on the rotor is k times this [A]
  double motor_voltage = 0;   ///< R i + k ω [V]
  double supply_voltage = 0;  ///< at the supply's terminals, under load [V]
  double supply_current = 0;  ///< drawn by this drive, never negative [A]
  /// ∂i/∂ω, through the supply's sag as well, with other drives' speeds fixed [A s/rad].
  double current_by_speed = 0;
  double current_by_voltage = 0;  ///< ∂i/∂V_s with the speed fixed: ±1/R at full duty, else 0 [A/V]
  double voltage_by_speed = 0;    ///< ∂V_s/∂ω with other drives' speeds fixed [V s/rad]
  /// Supply power − motor voltage × current: returned power that the driver burns [W].
  double driver_loss = 0;
  bool limited = false;  ///< the driver chops at its current limit
};

/// Currents and voltages of all drives on one supply.
///
/// A driver is an ideal chopper (buck converter): its motor sees any voltage between −V_s and V_s, and power
/// is conserved, V_s I_s = u i, while the motor takes power. A motor that gives power back (u i < 0) does not
/// charge the supply: I_s = 0 and the driver burns u i. The current limit holds in braking too; when the
/// back-EMF alone exceeds V_s + R i the motor voltage stands above V_s. The inductance and the current's
/// ripple are left out.
///
///     full duty     i = (±V_s − k ω) / R,  |commanded| above V_s
///     chopping      i = (u − k ω) / R or i = ± limit
///     supply        V_s = U₀ − R_s Σ I_s,  not below 0
///     at its limit  Σ I_s = I_lim,  V_s as low as that takes
///
/// For one drive at full duty that is i = (U₀ − k ω) / (R + R_s). The equation for V_s is quadratic between
/// the points where a drive changes from one of these cases to the next; it is solved exactly, from U₀
/// downward, and the first (highest) solution counts. Currents are continuous and piecewise smooth in the
/// speeds, with one exception: chopping drives that together ask for more than the supply's largest power
/// U₀²/(4 R_s) make its voltage collapse below U₀/2, as they would in the world.
///
/// @param input               one entry a drive; numbers finite, resistances > 0 (`check_motor` sees to that).
/// @param open_voltage        U₀ [V], >= 0.
/// @param internal_resistance R_s [Ω], >= 0.
/// @param supply_limit        I_lim, that the supply gives to all together [A]; 0: none.
/// @param state               written, as many entries as `input`.
/// Allocates nothing; about n² operations for n drives.
void solve_supply(std::span<const DriveInput> input, double open_voltage, double internal_resistance,
                  std::span<ElectricState> state, double supply_limit = 0) noexcept;

/// The same for a supply with one drive.
[[nodiscard]] ElectricState solve_drive(const DriveInput& input, double open_voltage,
                                        double internal_resistance, double supply_limit = 0) noexcept;

/// @throws InvalidInput, naming the field, if a motor's data cannot be used.
void check_motor(const model::Motor& motor);

}  // namespace sinewright::drive
