#pragma once

#include <array>
#include <vector>

#include "drive/thermal.h"
#include "friction/cord_chain.h"
#include "simulation/system.h"
#include "solver/friction_rows.h"

namespace sinewright::simulation {

/// All that a run carries from step to step.
struct State {
  double time = 0;
  VectorXd q;                               ///< n_q
  VectorXd v;                               ///< n_v
  std::vector<friction::ChainState> cords;  ///< per cord
  std::vector<Vector3d> spring;             ///< per contact candidate: elastic slip ξ, world [m]
  std::vector<drive::ThermalState> temperature;  ///< per drive
  std::vector<solver::Mode> mode;           ///< per friction row
};

/// What the timeline asks of one drive at present.
struct DriveCommand {
  enum class Kind { off, voltage, angle };
  Kind kind = Kind::off;
  model::Leads leads = model::Leads::open;
  double voltage = 0;
  model::CommandAngle angle;
  double current_limit = 0;  ///< [A], 0: none
};

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
  end_stops,
  contact_damping,
  contact_friction,
  object_damping,
  wound_cord,         ///< strain energy that leaves with the cord onto the pulley (returns when it pays out)
  count
};
inline constexpr auto account_count = static_cast<std::size_t>(Account::count);
/// One entry an account, then the bends (cord by cord) and the hinges in detail; sized by System::ledger_size.
using Ledger = VectorXd;
inline constexpr std::array<const char*, account_count> ledger_names = {
    "supply",     "loads",           "prescribed_motion", "supply_resistance", "winding",       "motor_drag",
    "gear_drag",  "gear_cone",       "cord_bends",        "cord_hysteresis",   "hinge_friction", "hinge_viscous",
    "end_stops",  "contact_damping", "contact_friction",  "object_damping",    "wound_cord"};

/// The state at time 0: at rest, cords at their pretension or slack, everything at ambient temperature.
/// @throws InvalidInput if a span of a cord has no length.
[[nodiscard]] State start_state(const System& system);

}  // namespace sinewright::simulation
