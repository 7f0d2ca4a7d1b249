#pragma once

#include <string>
#include <vector>

#include "simulation/recording.h"
#include "simulation/sensing.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/stepper.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// The faults of a scenario: brings each about when its time has come, and ends those that do not last. Laws: docs/theory/faults.md.
class Faults {
 public:
  explicit Faults(const System& system);

  /// Instants at which a fault begins or ends: steps end there.
  [[nodiscard]] std::vector<double> instants() const;

  /// Brings about and ends what is due now. What a cord lets go of is booked in `energy`.
  /// @param stage  that led to the state. @return true if anything changed.
  bool strike(const Stage& stage, State& state, Stepper& stepper, Sensing& sensing, Ledger& energy, std::vector<Event>& events);

 private:
  void set_condition(double time, State& state, Sensing& sensing) const;
  [[nodiscard]] std::string strike(const model::Fault& fault, const Stage& stage, const Sensing& sensing, State& state, double& let_go) const;
  [[nodiscard]] std::string name_of(const model::Fault& fault) const;

  const System& system_;
  std::vector<bool> began_, ended_;  // per fault
};

/// Where a cord gives way: the span with the most tension for its strength, knots being weaker; index of the span, and whether it is at
/// a knot. @param among  per span: false leaves it out.
struct WeakPlace {
  std::size_t span = 0;
  bool at_knot = false;
};
[[nodiscard]] WeakPlace weakest_place(const model::Cord& cord, const std::vector<double>& tension, const std::vector<bool>& among);

/// How long the hand takes to become safe after the first fault. Safe: no motor carries current; or the phalanges press with less than the
/// scenario's safe grip in sum and no shaft turns.
class SafetyWatch {
 public:
  explicit SafetyWatch(const System& system);

  /// Takes an accepted step.
  void look(const Stage& stage, const State& state);
  /// Only of a scenario with faults.
  void add_to(std::vector<SummaryValue>& summary) const;

 private:
  const System& system_;
  double time_ = 0, grip_ = 0;  // at the last look
  bool safe_ = true;
  double safe_since_ = 0;       // [s]; of meaning while safe
};

}  // namespace sinewright::simulation
