#pragma once

#include <array>
#include <optional>
#include <vector>

#include "drive/pulley.h"
#include "drive/thermal.h"
#include "friction/cord_chain.h"
#include "simulation/ledger.h"
#include "simulation/system.h"
#include "solver/friction_rows.h"

namespace sinewright::simulation {

/// What has become of a cord.
struct CordCondition {
  bool broken = false;
  std::optional<drive::CordPulley> pulley;  ///< that winds it, in place of the model's
};

/// What has failed so far, and what the outside gives at present.
struct Condition {
  std::vector<double> supply_voltage;  ///< per supply: open-circuit [V]
  std::vector<bool> winding_open;      ///< per drive
  std::vector<CordCondition> cords;    ///< per cord
};

/// All that a run carries from step to step.
struct State {
  double time = 0;
  VectorXd q;                               ///< n_q
  VectorXd v;                               ///< n_v
  std::vector<friction::ChainState> cords;  ///< per cord
  std::vector<Vector3d> spring;             ///< per contact candidate: elastic slip ξ, world [m]
  std::vector<drive::ThermalState> temperature;  ///< per drive
  std::vector<solver::Mode> mode;           ///< per friction row
  Condition condition;                      ///< changes between steps only
};

/// What the timeline asks of one drive at present.
struct DriveCommand {
  enum class Kind { off, voltage, angle };
  Kind kind = Kind::off;
  model::Leads leads = model::Leads::open;
  double voltage = 0;
  double rise_from = 0, rise_begin = 0, rise_time = 0;  ///< the voltage gets there linearly; time 0: at once [V, s, s]
  model::CommandAngle angle;
  double current_limit = 0;  ///< [A], 0: none
};

/// What a voltage command asks for at a time [V].
[[nodiscard]] inline double voltage_at(const DriveCommand& command, double time) {
  if (time >= command.rise_begin + command.rise_time) return command.voltage;
  return command.rise_from + (command.voltage - command.rise_from) * (time - command.rise_begin) / command.rise_time;
}

/// The state at time 0: at rest, cords at their pretension or slack, everything at ambient temperature.
/// @throws InvalidInput if a span of a cord has no length.
[[nodiscard]] State start_state(const System& system);

}  // namespace sinewright::simulation
