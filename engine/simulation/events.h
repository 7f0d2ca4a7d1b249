#pragma once

#include <vector>

#include "simulation/recording.h"
#include "simulation/stage.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// Notices what changed from one accepted step to the next: contact and lift-off, stick and slip of joints and shafts,
/// end stops, cords going slack and taut. Instants of contact are interpolated between the two steps.
/// Events of the kind "caution" say, once for each cord, where a law or the geometry is used beyond its limits.
class EventWatch {
 public:
  explicit EventWatch(const System& system);

  /// Takes the situation as it is, without reporting.
  void begin(const Stage& stage, const State& state);
  /// Appends what happened since the last call.
  void look(const Stage& stage, const State& state, std::vector<Event>& events);

 private:
  void caution(const Stage& stage, const State& state, std::vector<Event>& events);

  const System& system_;
  double time_ = 0;
  std::vector<double> gap_;
  std::vector<solver::Mode> mode_;
  std::vector<int> stop_, slide_stop_;
  std::vector<bool> slack_;
  std::vector<bool> said_beyond_law_, said_doubled_back_;  // per cord
};

}  // namespace sinewright::simulation
