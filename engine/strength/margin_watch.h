#pragma once

#include <string>
#include <utility>
#include <vector>

#include "simulation/run.h"
#include "strength/margin_checks.h"

namespace sinewright::strength {

/// A dimension that gives a part the margin asked for, under the loads of a run.
struct NeededSize {
  std::string name;    ///< of the margin
  std::string key;     ///< of the dimension
  std::string unit;    ///< in which it is shown
  double present = 0;  ///< [SI]
  double needed = 0;   ///< smallest that reaches the margin [SI]; NaN: none up to a hundred times the present one does
};

/// Follows every margin through a run and keeps the instant that governs.
class MarginWatch {
 public:
  /// @throws InvalidInput as part_checks; also if a requirement asks for a margin that cannot be checked.
  explicit MarginWatch(const simulation::System& system);

  /// An accepted step. Allocates nothing.
  void look(const simulation::Stage& stage, const simulation::State& state);

  /// Name and words of each margin that is checked, in the order of `ratios`.
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> names() const;

  /// Capacity / demand of each at the last look.
  [[nodiscard]] const std::vector<double>& ratios() const { return now_; }

  /// The margins so far, worst first, and what is not checked.
  [[nodiscard]] simulation::Margins report() const;

  /// The same as numbers for the summary: "margin.NAME" for each, and "margin.least".
  void add_to(std::vector<simulation::SummaryValue>& summary) const;

  /// For each margin that a dimension of its own helps: how large that must be. The loads are those of the run; that a
  /// larger part may weigh more or change the cord's lever is left out.
  /// @param ratio  asked for, > 0.
  [[nodiscard]] std::vector<NeededSize> sizes_for(double ratio) const;

 private:
  // A check's loads at one instant.
  struct Moment {
    bool any = false;
    double ratio = 0, time = 0;
    PartLoad load;
    std::vector<double> posture;  // per joint
    std::vector<double> outside;  // per load of the scenario
  };
  void note(Moment& moment, double ratio, const PartLoad& load, const simulation::State& state) const;
  [[nodiscard]] std::string load_text(const PartCheck& check, const Moment& moment) const;

  const simulation::System& system_;
  PartChecks parts_;
  std::vector<Moment> worst_, lost_;  // per check
  std::vector<double> now_;
};

/// Lets a run feed the watch and put its margins into the summary. What the listener did before, it still does. The watch must
/// outlive the run.
void attach(MarginWatch& watch, simulation::RunListener& listener);

}  // namespace sinewright::strength
