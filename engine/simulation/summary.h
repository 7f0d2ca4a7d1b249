#pragma once

#include <vector>

#include "simulation/observe.h"
#include "simulation/recording.h"

namespace sinewright::simulation {

/// The stretch of the timeline in which the finger closes, and what follows.
struct Phases {
  double command = 0;    ///< first drive command that winds in [s]; NaN: none
  double close_end = 0;  ///< next command that stops or unwinds, or the end of the run [s]
  bool releases = false; ///< such a command comes
};
[[nodiscard]] Phases phases(const model::Scenario& scenario);

/// Gathers what the summary needs while a run goes on, and works it out at the end. Definitions: docs/user-guide/summary.md.
class SummaryBuilder {
 public:
  explicit SummaryBuilder(const System& system);

  /// @param off  per drive: power is off.
  void sample(const Stage& stage, const State& state, const Totals& totals, const std::vector<bool>& off);

  [[nodiscard]] std::vector<SummaryValue> finish() const;

 private:
  // A posture and its forces at one instant.
  struct Snapshot {
    double time = 0, grip = 0, flexion = 0;
    std::vector<double> normal, split, angle, first_tension, last_tension, current, load_torque, shaft_angle, position;
    std::vector<bool> stalled;
    Ledger energy;
  };
  [[nodiscard]] std::vector<double> opening_ratios() const;
  [[nodiscard]] bool on_phalanx(std::size_t contact) const;
  [[nodiscard]] Snapshot take(const Stage& stage, const State& state, const Totals& totals) const;

  const System& system_;
  Phases phases_;
  std::vector<double> time_, grip_, flexion_;
  std::vector<std::vector<double>> angle_;  // per joint over time
  std::vector<double> contact_time_;        // per candidate
  Snapshot start_, closed_, last_;
  Ledger energy_at_command_;
  bool any_ = false;
  std::vector<double> peak_tension_, peak_slack_, peak_current_, peak_winding_, peak_housing_, off_angle_, off_turn_,
      off_moved_, off_posture_, off_slid_, off_position_, stretch_over_;
  double peak_grip_ = 0, worst_residual_ = 0, most_in_ = 0;
  std::vector<double> object_shift_, object_speed_, object_contacts_, peak_contact_force_, net_force_, net_moment_, lowest_voltage_, peak_supply_current_;
};

/// Judges the requirements of a scenario.
/// @throws InvalidInput, with the place of the requirement, if a quantity is unknown or its unit does not fit.
[[nodiscard]] std::vector<Verdict> judge(const std::vector<model::Requirement>& requirements,
                                         const std::vector<SummaryValue>& summary);

/// The value of a verdict as people read it, in the unit in which the demand is written: "10.7 deg" of "at most 12 deg";
/// "did not occur" if there is none.
[[nodiscard]] std::string reached_text(const Verdict& verdict);

}  // namespace sinewright::simulation
