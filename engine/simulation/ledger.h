#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cstddef>

namespace sinewright::simulation {

using Eigen::VectorXd;

/// The ledger: everything that takes, stores or brings energy, in the order of `ledger_names`.
enum class Account : std::size_t {
  supply,             ///< in: open-circuit voltage × current
  loads,              ///< in: external forces on bodies and objects
  prescribed_motion,  ///< in: by objects driven along a path
  supply_resistance,  ///< lost from here on
  winding,
  motor_drag,
  gear_drag,
  gear_cone,
  cord_bends,
  cord_hysteresis,
  hinge_friction,
  hinge_viscous,
  slide_friction,
  slide_viscous,
  end_stops,
  contact_damping,
  contact_friction,
  object_damping,
  cord_faults,        ///< strain energy let go when a cord breaks or jumps
  wound_cord,         ///< strain energy that leaves with the cord onto the pulley (returns when it pays out)
  count
};
inline constexpr auto account_count = static_cast<std::size_t>(Account::count);
/// One entry an account, then the bends (cord by cord), the hinges and the slides in detail, and last the charge that each supply
/// gave [A s], which is no energy but is summed by the same rule; sized by System::ledger_size.
using Ledger = VectorXd;
inline constexpr std::array<const char*, account_count> ledger_names = {
    "supply",     "loads",           "prescribed_motion", "supply_resistance", "winding",       "motor_drag",
    "gear_drag",  "gear_cone",       "cord_bends",        "cord_hysteresis",   "hinge_friction", "hinge_viscous",
    "slide_friction", "slide_viscous", "end_stops",       "contact_damping",   "contact_friction", "object_damping",
    "cord_faults", "wound_cord"};

/// Energy brought in by supply, loads and prescribed motion, each counted where positive in sum [J].
[[nodiscard]] inline double energy_in(const Ledger& energy) {
  double sum = 0;
  for (Account a : {Account::supply, Account::loads, Account::prescribed_motion})
    sum += std::max(0.0, energy[static_cast<int>(a)]);
  return sum;
}

/// Brought in less lost [J]: what the stored energy must have grown by.
[[nodiscard]] inline double energy_gained(const Ledger& energy) {
  double sum = 0;
  for (int a = 0; a < static_cast<int>(account_count); ++a)
    sum += a <= static_cast<int>(Account::prescribed_motion) ? energy[a] : -energy[a];
  return sum;
}

}  // namespace sinewright::simulation
