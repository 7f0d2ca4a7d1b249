#pragma once

#include <array>
#include <vector>

#include "simulation/free_closing.h"
#include "simulation/sensing.h"
#include "simulation/stage.h"

namespace sinewright::simulation {

/// What lies between a sensor's reading and the fingertip, from the reading to the truth.
enum class TipCause : std::size_t { quantisation, noise, track, fit, age, stretch, weight, friction, count };
inline constexpr auto tip_cause_count = static_cast<std::size_t>(TipCause::count);
inline constexpr std::array<const char*, tip_cause_count> tip_cause_names = {"quantisation", "noise",   "track",  "fit",
                                                                             "age",          "stretch", "weight", "friction"};

/// Where the fingertip is said to be, where it is, and what lies between.
struct TipReadout {
  Vector3d told = Vector3d::Zero();   ///< by the reading and free closing, world [m]
  Vector3d truth = Vector3d::Zero();  ///< world [m]
  std::array<double, tip_cause_count> along{};  ///< per cause: its part of told − truth along the tip's way, closing positive [m]
  std::vector<double> angle;          ///< per hinge of the system: its angle by the reading [rad]
};

/// Smallest motion of the fingertip that the sensor can tell, over the free closing [m].
struct TipSteps {
  double smallest = 0, largest = 0;                    ///< going on in one direction
  double smallest_reversed = 0, largest_reversed = 0;  ///< after the shaft has turned round
};

/// Rebuilds the fingertip from a drive's sensor as a firmware would that knows the free closing of its finger, and splits what it is
/// wrong by. See docs/theory/sensing.md.
class TipEstimate {
 public:
  /// @param drive  with a sensor and a cord.
  TipEstimate(const System& system, std::size_t drive);

  /// Takes an accepted step. @param step  its length [s]. Allocates nothing.
  void look(const Stage& stage, const State& state, const AngleReadout& sensed, double step);

  [[nodiscard]] std::size_t drive() const { return drive_; }
  [[nodiscard]] const TipReadout& now() const { return now_; }
  /// Hinges whose angles are rebuilt.
  [[nodiscard]] const std::vector<std::size_t>& hinges() const { return firmware_.hinges(); }
  /// Distance of the told tip from the true one [m], and the length of each cause's part.
  [[nodiscard]] const ErrorSize& whole() const { return whole_; }
  [[nodiscard]] const ErrorSize& part(TipCause cause) const { return part_[static_cast<std::size_t>(cause)]; }
  /// Error of a rebuilt angle, per hinge of the system [rad].
  [[nodiscard]] const std::vector<ErrorSize>& angle_error() const { return angle_error_; }
  [[nodiscard]] const TipSteps& steps() const { return steps_; }
  /// Largest turn of the shaft after it turned round, before the tip had gone back by the smallest motion that the sensor can
  /// tell [rad]; NaN: the tip never followed a reversal.
  [[nodiscard]] double lost_turn() const { return lost_turn_; }
  /// Angle of the output shaft at which free closing ends [rad].
  [[nodiscard]] double closed_shaft() const;

 private:
  [[nodiscard]] double drawn(double shaft) const;  // cord drawn in, as the firmware reckons it [m]

  const System& system_;
  std::size_t drive_, cord_;
  double slack_ = 0;
  FreeClosing firmware_, weighed_;
  TipPlace tip_;
  TipReadout now_;
  ErrorSize whole_;
  std::array<ErrorSize, tip_cause_count> part_;
  std::vector<ErrorSize> angle_error_;
  TipSteps steps_;
  // The last reversal: which way the shaft goes, and how far it and the tip had come that way.
  double way_ = 0, farthest_ = 0, lost_turn_;
  Vector3d tip_there_ = Vector3d::Zero();
  void watch_reversal(double shaft, const Vector3d& tip, const Vector3d& direction);
};

/// One for every drive that has a sensor and winds a cord.
[[nodiscard]] std::vector<TipEstimate> tip_estimates(const System& system);

}  // namespace sinewright::simulation
