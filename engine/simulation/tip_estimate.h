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

  /// Takes the situation at the start.
  void begin(const Stage& stage, const State& state, const AngleReadout& sensed);
  /// Takes an accepted step. Errors are measured when the sensor is due, once with the old reading and once with the new one, so
  /// that they do not depend on where steps end; in between they are taken as straight lines. Allocates nothing.
  /// @param sensed  at the end of the step. @param due  in the step.
  void look(const Stage& stage, const State& state, const AngleReadout& sensed, const std::vector<DueReadout>& due);

  [[nodiscard]] std::size_t drive() const { return drive_; }
  [[nodiscard]] const TipReadout& now() const { return now_; }
  /// Hinges whose angles are rebuilt.
  [[nodiscard]] const std::vector<std::size_t>& hinges() const { return firmware_.hinges(); }
  /// Over time. Distance of the told tip from the true one [m], and the length of each cause's part.
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
  // The finger at one moment, or how fast it changes there.
  struct Moment {
    Vector3d tip = Vector3d::Zero();  // world
    double shaft = 0;
    double drawn = 0;                 // cord drawn in by the true angles
    std::vector<double> angle;        // per hinge of the system
  };
  using Parts = std::array<Vector3d, tip_cause_count>;

  [[nodiscard]] double drawn(double shaft) const;  // cord drawn in, as the firmware reckons it [m]
  void see(const Stage& stage, const State& state, Moment& moment, Moment& rate) const;
  void interpolate(double share, double step);     // fills between_
  // Adds what was wrong from the last time the sensor was due until now, between_, when it is due again.
  void add_errors(const DueReadout& due);
  [[nodiscard]] Parts parts(const AngleReadout& sensed, const Moment& moment) const;
  void tell(const AngleReadout& sensed);           // fills now_ for now_moment_

  const System& system_;
  std::size_t drive_, cord_;
  double slack_ = 0;
  FreeClosing firmware_, weighed_;
  TipPlace tip_;
  TipReadout now_;
  double time_ = 0;
  Moment now_moment_, now_rate_, before_moment_, before_rate_, between_;
  // When the sensor was due last: what it has said since, and what was wrong with it at once.
  DueReadout last_;
  Parts last_parts_{};
  std::vector<double> last_angle_error_;
  ErrorSize whole_;
  std::array<ErrorSize, tip_cause_count> part_;
  std::vector<ErrorSize> angle_error_;
  TipSteps steps_;
  // The last reversal: which way the shaft goes, and how far it and the tip had come that way.
  double way_ = 0, farthest_ = 0, lost_turn_;
  Vector3d tip_there_ = Vector3d::Zero();
  void watch_reversal(double shaft, const Vector3d& tip, const Vector3d& direction);
};

/// True for a drive with a sensor that alone decides how far a finger has closed. A cord to a slide shares its pull between
/// fingers, and against an opposing cord on another drive the finger stands where both shafts say.
[[nodiscard]] bool tells_tip(const System& system, std::size_t drive);

/// One for every such drive.
[[nodiscard]] std::vector<TipEstimate> tip_estimates(const System& system);

}  // namespace sinewright::simulation
