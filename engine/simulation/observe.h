#pragma once

#include <vector>

#include "simulation/control.h"
#include "simulation/recording.h"
#include "simulation/sensor_watch.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// What goes beside the state into a row of the record.
struct Totals {
  Ledger energy;              ///< through every account since the start [J]
  double stored_at_start = 0; ///< [J]
  double step = 0;            ///< length of the last step [s]
  std::vector<std::vector<double>> passed;  ///< per cord and node: material passed towards the first span, in all [m]
  const SensorWatch* sensors = nullptr;     ///< what they say; null: nothing yet
  const Control* control = nullptr;      ///< what the controllers do; null: nothing yet
};

/// The data sets of a run, in the order in which `observe` fills a row.
[[nodiscard]] std::vector<Channel> channels(const System& system);

/// Fills one row from the last solved stage. @param row  resized to the channels' widths on first use.
void observe(const System& system, const Stage& stage, const State& state, const Totals& totals, std::vector<double>& row);

/// Slack of a cord: how much longer its material is than its way; of a broken one 0 [m].
[[nodiscard]] double slack(const Stage& stage, std::size_t cord);

/// Force between the two halves of an object across the plane through its origin: what the contacts on the side of the
/// split normal press towards the other half [N]. Weight and inertia of the half are left out.
[[nodiscard]] double split_force(const System& system, const Stage& stage, std::size_t object);

/// All contacts of an object with palm and phalanges together: the force that the hand holds it with [N], world axes.
[[nodiscard]] Vector3d contact_force(const System& system, const Stage& stage, std::size_t object);

/// Energy balance: brought in − stored since the start − lost [J]; zero but for the integrator's error.
[[nodiscard]] double energy_residual(const Stage& stage, const Totals& totals);

/// Name of a friction node of a cord: "<body> bend <number>".
[[nodiscard]] std::vector<std::string> node_names(const System& system, std::size_t cord);
[[nodiscard]] std::vector<std::string> span_names(const System& system, std::size_t cord);

}  // namespace sinewright::simulation
