#pragma once

#include <string>
#include <vector>

#include "simulation/stage.h"

namespace sinewright::study {

/// The contact of a finger that was the first to give while an object was pulled.
struct GivesWay {
  std::string contact;  ///< as the system names it; empty: none gave
  bool lifts = false;   ///< it came off; else it slid
  double time = 0;      ///< [s]
  double value = 0;     ///< of what rose, SI
};

/// Watches the contacts of moving bodies with an object: which is the first to come off, or to slide by more than a tenth of a
/// millimetre, counted from the start of a rise. (A contact may creep a little on the edge of its cone long before it gives.) A palm
/// only pushes, so what it does is no sign.
class GripWatch {
 public:
  /// @param object  its name; empty: any.
  GripWatch(const simulation::System& system, const std::string& object, double start);

  /// Looks at an accepted step.
  void look(const simulation::Stage& stage, const simulation::State& state);

  [[nodiscard]] const GivesWay& first() const { return first_; }

 private:
  struct Watched {
    std::size_t candidate = 0;
    bool pressed = false;  // at the start
    double slid = 0;       // [m]
  };

  const simulation::System& system_;
  double start_;
  double time_ = 0;
  bool begun_ = false;
  std::vector<Watched> watched_;
  GivesWay first_;
};

}  // namespace sinewright::study
