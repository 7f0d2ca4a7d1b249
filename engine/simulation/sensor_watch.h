#pragma once

#include <vector>

#include "simulation/recording.h"
#include "simulation/sensing.h"
#include "simulation/tip_estimate.h"

namespace sinewright::simulation {

/// Everything that the sensors of a system say in a run, and what it is wrong by.
class SensorWatch {
 public:
  explicit SensorWatch(const System& system);

  void begin(const Stage& stage, const State& state);
  /// Takes an accepted step. @param off  per drive. Allocates nothing.
  void look(const Stage& stage, const State& state, const std::vector<bool>& off);

  [[nodiscard]] const Sensing& sensing() const { return sensing_; }
  [[nodiscard]] Sensing& sensing() { return sensing_; }
  /// The fingertip by a drive's sensor; null if it has none, or winds no cord.
  [[nodiscard]] const TipEstimate* tip(std::size_t drive) const;

  /// Its numbers for the summary, see docs/user-guide/summary.md.
  void add_to(std::vector<SummaryValue>& summary) const;

 private:
  const System& system_;
  Sensing sensing_;
  std::vector<TipEstimate> tips_;
};

}  // namespace sinewright::simulation
