#pragma once

#include <vector>

#include "simulation/system.h"

namespace sinewright::simulation {

/// Free closing of one driven cord: the posture that a finger has for every length of cord drawn in, if nothing rubs, nothing
/// stretches, the stops are rigid and nothing is touched. What a firmware can know that has no more than the model. Made by following the
/// least energy of return cords and joint springs from the start posture on, other driven cords slack. See docs/theory/sensing.md.
class FreeClosing {
 public:
  /// @param cord     index into System::cords, of a cord that a drive winds. @param weight  with the weight of the bodies.
  FreeClosing(const System& system, std::size_t cord, bool weight);

  /// Cord that can be drawn in, until every joint stands at its stop (or at 120° without one) [m].
  [[nodiscard]] double end() const { return drawn_.back(); }
  /// Fingertip for a length of cord drawn in, world; the ends hold outside 0 … end() [m]. Allocates nothing.
  [[nodiscard]] Vector3d tip(double drawn) const;
  /// How far the tip goes for a length of cord, and where to: dP/dx [–]. Outside 0 … end() that of the nearest stretch.
  [[nodiscard]] Vector3d tip_slope(double drawn) const;
  /// Angle of a hinge [rad].
  [[nodiscard]] double angle(double drawn, std::size_t hinge) const;

  /// Hinges that the cord can move, indices into System::hinges.
  [[nodiscard]] const std::vector<std::size_t>& hinges() const { return hinges_; }
  /// Way of the cord in the start posture [m].
  [[nodiscard]] double start_way() const { return start_way_; }

  /// The table behind it.
  [[nodiscard]] const std::vector<double>& drawn() const { return drawn_; }
  /// Largest torque out of balance at any of its points [N m]: how well they were found.
  [[nodiscard]] double imbalance() const { return imbalance_; }

 private:
  [[nodiscard]] std::size_t stretch_of(double drawn) const;  // index of its end
  [[nodiscard]] double share_of(double drawn, std::size_t end) const;

  std::vector<std::size_t> hinges_;
  std::vector<double> drawn_;
  std::vector<Vector3d> tip_;
  std::vector<VectorXd> angles_;  // per point, of all hinges
  double start_way_ = 0, imbalance_ = 0;
};

/// Hinges that a cord can move, indices into System::hinges: those between the bodies of its path.
[[nodiscard]] std::vector<std::size_t> hinges_moved_by(const System& system, std::size_t cord);

/// The fingertip that a cord moves: body of its last anchor, and the place on it where shapes and solids end along x [m], or the anchor
/// itself without any.
struct TipPlace {
  int body = -1;
  Vector3d at = Vector3d::Zero();
};
[[nodiscard]] TipPlace tip_place(const System& system, std::size_t cord);

}  // namespace sinewright::simulation
