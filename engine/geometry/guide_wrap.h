#pragma once

#include <Eigen/Geometry>

namespace sinewright::geometry {

using Eigen::Vector3d;

/// The way of a taut cord from P to Q round a cylinder, in two parts, with their exact derivatives with respect to P and Q. All
/// vectors in one frame; the guide is held still.
///
/// The parts meet at a line fixed on the guide, in the direction of its `side` from the axis, or where the arc carried on would
/// meet it. So a part changes with its own end only (but for the pitch of a helix), and a body that lays cord on the guide is
/// pulled by the tension on its own side of it. A part can come out negative if its end is close and its arc begins late.
struct GuideWrap {
  bool touches = false;      ///< false: the straight line from P to Q passes clear of the cylinder
  double length_p = 0;       ///< from P to the splitting line [m]
  double length_q = 0;       ///< from the splitting line to Q [m]
  double turning_angle = 0;  ///< true turning of the cord along the (helical) arc [rad]
  Vector3d p_by_p = Vector3d::Zero();  ///< ∂length_p/∂P
  Vector3d p_by_q = Vector3d::Zero();  ///< ∂length_p/∂Q
  Vector3d q_by_p = Vector3d::Zero();  ///< ∂length_q/∂P
  Vector3d q_by_q = Vector3d::Zero();  ///< ∂length_q/∂Q
  Vector3d contact_p = Vector3d::Zero();  ///< where the cord touches down, coming from P (the foot point if it does not)
  Vector3d contact_q = Vector3d::Zero();  ///< where it lifts off towards Q
};

/// A cylinder with an axis through `center`; the cord passes it on the side of `side`, turning about `axis` in the
/// right-hand sense when `sense` is +1 and in the other when −1.
struct GuideFrame {
  Vector3d center = Vector3d::Zero();
  Vector3d axis = Vector3d::UnitZ();  ///< unit
  Vector3d side = Vector3d::UnitX();  ///< unit, perpendicular to the axis
  double radius = 0;                  ///< [m]
  int sense = 1;
};

/// Shortest way from P to Q on or outside the cylinder, less than half a turn round it: in the developed surface the
/// way is straight, so a plane problem of tangents and an axial rise at constant pitch. Derivation: docs/theory/cord-path.md.
/// A point inside the cylinder is taken as lying on its surface.
[[nodiscard]] GuideWrap wrap_guide(const GuideFrame& guide, const Vector3d& p, const Vector3d& q);

}  // namespace sinewright::geometry
