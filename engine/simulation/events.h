#pragma once

#include <vector>

#include "simulation/recording.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// Notices what changed from one accepted step to the next: contact and lift-off, stick and slip of joints and shafts,
/// end stops, cords going slack and taut. Instants of contact are interpolated between the two steps.
class EventWatch {
 public:
  explicit EventWatch(const System& system);

  /// Takes the situation as it is, without reporting.
  void begin(const Stage& stage, const State& state);
  /// Appends what happened since the last call.
  void look(const Stage& stage, const State& state, std::vector<Event>& events);

 private:
  const System& system_;
  double time_ = 0;
  std::vector<double> gap_;
  std::vector<solver::Mode> mode_;
  std::vector<int> stop_;
  std::vector<bool> slack_;
};

}  // namespace sinewright::simulation
