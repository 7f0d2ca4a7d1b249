#pragma once

#include <string>
#include <utility>
#include <vector>

#include "model/limit.h"
#include "simulation/run.h"
#include "study/end_watch.h"
#include "study/grip_watch.h"

namespace sinewright::study {

/// One run of a study.
struct Probe {
  std::vector<std::string> overrides;  ///< what differs from the scenario
  double value = 0;                    ///< of the key (in its unit), or of what rose, at the event (SI); NaN: no event
  double rate = 0;                     ///< of a ramp, SI per second; 0: a search
  bool holds = false;                  ///< requirements met; of a ramp: the event came
  bool complete = false;               ///< the run could go on to its end or event
  std::string outcome;
  double end_time = 0;                                   ///< event, or end of the run [s]
  std::string subject;                                   ///< of the event
  std::vector<std::pair<std::string, double>> posture;   ///< joint angles at the end [rad]
  double peak_force = 0;                                 ///< of a displacement: greatest force against it [N]
  GivesWay gave;                                         ///< of a ramp until an object leaves: the finger's contact that gave first
  std::vector<simulation::SummaryValue> summary;
  std::vector<simulation::Verdict> verdicts;
  std::vector<simulation::Event> events;
  std::vector<std::pair<double, double>> course;         ///< of a ramp: time [s] and what rose, SI, at accepted steps, thinned out
};

/// A place where the answer of a search changes, narrowed down.
struct Change {
  double holds_at = 0, fails_at = 0;  ///< in the key's unit
};

/// The limit of one variant.
struct Answer {
  bool found = false;
  bool settled = false;           ///< a ramp: half the rate moved it less than the tolerance. A search: bracket narrow enough
  bool monotone = true;           ///< of a search: one change only
  double value = 0;               ///< SI of what rose, or in the key's unit
  double error = 0;               ///< a ramp: what further halvings of the rate would add, from what they added so far; a search: half of the last bracket
  double time = 0;                ///< of the event, in the run that answers [s]
  std::string subject;            ///< of the event
  std::string note;               ///< what a reader must know: not settled, not monotone, why nothing was found
  int ended_early = 0;            ///< runs that could not go on
  GivesWay gave;                  ///< in the run that answers
  std::vector<std::pair<std::string, double>> posture;
  std::vector<Change> changes;    ///< of a search
  std::vector<Probe> probes;
};

/// The unit of what rises, SI: "N", "m" or "V".
[[nodiscard]] std::string unit_of(const model::Ramp& ramp);

/// The scenario with the rise in it; it ends where the rise does.
/// @throws InvalidInput, with `place`, if what rises is not there.
[[nodiscard]] model::Scenario with_rise(model::Scenario scenario, const model::Ramp& ramp, double rate, const Place& place);

/// What every run leaves in its probe, whatever it was for: outcome, end, posture at the end, summary, verdicts, events.
[[nodiscard]] Probe probe_of(const simulation::System& system, simulation::RunResult result);

/// One run at one rate.
[[nodiscard]] Probe run_ramp(const model::Scenario& scenario, const model::Ramp& ramp, double rate, const Place& place);

/// Repeats the run at half the rate until the answer moves less than `tolerance` of itself. If it does not within the number
/// of halvings, the answer says so: what is looked for depends on the rate then.
[[nodiscard]] Answer answer_ramp(const model::Scenario& scenario, const model::Ramp& ramp, double tolerance, const Place& place);

}  // namespace sinewright::study
