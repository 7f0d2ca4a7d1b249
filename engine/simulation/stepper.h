#pragma once

#include <stdexcept>
#include <string>
#include <vector>

#include "simulation/stage.h"

namespace sinewright::simulation {

/// The simulation cannot go on: no step, however short, could be solved. Message fit to print, names time and part.
class SimulationError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// What one accepted step did.
struct StepReport {
  double step = 0;          ///< length taken [s]
  bool second_order = false;  ///< both stages were taken; else the first alone (backward Euler)
  Ledger energy;            ///< what went through each account [J]
};

/// Advances a state by error-controlled steps.
///
/// Two stages of the L-stable, stiffly accurate, singly diagonally implicit method of second order (γ = 1 − 1/√2); the
/// first stage is a backward-Euler step of length γh. If a dry-friction row changes its mode within the step, or the
/// second stage is not accurate enough while the first is, only the first stage is taken: set-valued laws then see a
/// plain backward-Euler step. Source of the method: R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006 (from memory).
/// See docs/numerics.md.
class Stepper {
 public:
  explicit Stepper(const System& system);

  /// Takes one step, not past `until`.
  /// @throws SimulationError if no step of at least the shortest length can be solved.
  const StepReport& step(State& state, const std::vector<DriveCommand>& commands, double until);

  /// Next step begins short: something outside changed at once.
  void restart() { next_ = std::min(next_, restart_step_); }

  /// Between two steps this much of the stored energy was let go; the caller has booked it [J].
  void let_go(double energy) { stored_ -= energy; }

  [[nodiscard]] const Stage& stage() const { return took_both_ ? second_stage_ : first_stage_; }  ///< last accepted step
  [[nodiscard]] long iterations() const { return first_stage_.iterations_total + second_stage_.iterations_total; }

  struct Counters {
    long steps = 0, second_order = 0, rejected = 0, unsolved = 0, mode_changes = 0;
    long held = 0;  ///< steps that could only be solved with friction limits and contact places held, see Stage::hold
  };
  [[nodiscard]] const Counters& counters() const { return counters_; }

 private:
  [[nodiscard]] double stage_error(const State& from, const StageBase& base, const State& first, double h) const;
  [[nodiscard]] bool broke_loose(const State& before, const State& after) const;
  void advance_temperatures(State& state, double h);
  std::string describe_failure(const State& state, const Stage::Result& result) const;

  const System& system_;
  Stage first_stage_, second_stage_;
  Stage::Memory memory_;     // of the last accepted state
  bool took_both_ = false;
  StageBase base_;
  State first_, second_;
  VectorXd guess_;
  Ledger first_power_, second_power_;
  StepReport report_;
  VectorXd position_scale_;  // per velocity index
  VectorXd acceleration_;    // of the last accepted step, for the first guess; zero where a mode changed
  VectorXd last_acceleration_;
  double stored_ = 0;        // at the last accepted state [J]
  double turned_over_ = 0;   // energy brought in so far [J]
  long tiny_ = 0;            // accepted steps in a row that were hardly longer than the shortest allowed
  double last_error_ = 0;    // of the whole step of which only the first stage was taken last; 0: none
  double next_ = 1e-4;
  double restart_step_ = 1e-4;
  Counters counters_;
};

}  // namespace sinewright::simulation
