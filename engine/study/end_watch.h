#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/limit.h"
#include "simulation/run.h"
#include "strength/margin_watch.h"

namespace sinewright::study {

/// When and to what the end of a ramp came.
struct Ended {
  double time = 0;      ///< interpolated between two steps where the quantity is continuous [s]
  std::string subject;  ///< joint, drive or object, or what a margin is of
};

/// Watches a run for the event that ends a ramp.
class EndWatch {
 public:
  /// @param margins  of the same run; must outlive this, and look at a step before it.
  /// @throws InvalidInput, with `place`, if the event's subject is not there.
  EndWatch(const simulation::System& system, const strength::MarginWatch& margins, const model::RampEnd& end, double start,
           const Place& place);

  /// Looks at an accepted step; the first one at or after the start is what turns and ways are counted from.
  std::optional<Ended> look(const simulation::Stage& stage, const simulation::State& state);

 private:
  struct Watched {
    std::string name;
    std::size_t index = 0;                     // drive, hinge, object or margin
    double angle = 0;                          // at the start [rad]
    Eigen::Vector3d place{0, 0, 0};            // at the start [m]
    double before = 0;                         // how far at the last look [rad or m, or a margin's demand / capacity]
    bool touched = false, turned = false;
    double rests_since = -1;
  };
  [[nodiscard]] bool powered(std::size_t drive, double time) const;

  const simulation::System& system_;
  const strength::MarginWatch& margins_;
  model::RampEnd end_;
  double start_;
  bool begun_ = false;
  double time_ = 0;
  std::vector<Watched> watched_;
};

}  // namespace sinewright::study
