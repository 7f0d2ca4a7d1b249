#pragma once

#include <functional>
#include <span>
#include <string>
#include <vector>

#include "simulation/recording.h"
#include "simulation/stepper.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// What a run tells while it goes on; any of them may be left empty.
struct RunListener {
  std::function<void(double time, std::span<const double> row)> row;  ///< as `channels` lists, at accepted steps
  std::function<void(const Event&)> event;
  std::function<void(double time)> progress;
  /// Every accepted step, the start first, with the solved stage and the state that it led to. True: enough, the run ends here and
  /// counts as complete.
  std::function<bool(const Stage&, const State&)> step;
  /// At the end, before the requirements are judged: adds numbers of the listener's own.
  std::function<void(std::vector<SummaryValue>&)> summary;
};

struct RunResult {
  std::vector<SummaryValue> summary;
  std::vector<Verdict> verdicts;
  std::vector<Event> events;
  std::string outcome = "not run";  ///< "complete", or why the run ended early
  bool complete = false;
  bool cut_short = false;           ///< the listener had enough before the end
  State end;
  Stepper::Counters counters;
  long iterations = 0;  ///< Newton iterations in all
};

/// Runs a scenario from its start to its end.
///
/// A step that cannot be solved ends the run early: the result keeps all that came before and says so; nothing is thrown.
/// @throws InvalidInput if a requirement names a number that the summary does not have.
[[nodiscard]] RunResult run(const System& system, const RunListener& listener = {});

}  // namespace sinewright::simulation
