#pragma once

#include <Eigen/Geometry>
#include <memory>

#include "model/shape.h"

namespace sinewright::contact {

using Eigen::Isometry3d;
using Eigen::Vector3d;

/// Where two shapes are nearest, in the world frame.
struct ClosestPoints {
  Vector3d on_a = Vector3d::Zero();    ///< on the surface of A [m]
  Vector3d on_b = Vector3d::Zero();    ///< on the surface of B [m]
  Vector3d normal = Vector3d::UnitX(); ///< unit, from B towards A
  double gap = 0;                      ///< [m], negative when the shapes overlap
  double radius = 0;                   ///< effective radius √(Rx Ry) of the pair for the Hertz law [m]
};

/// Finds the closest points of one pair of shapes: by closed form where there is one (sphere, capsule, and cylinder
/// touched on its round side), by Bullet's GJK/EPA in millimetres for everything else.
class ShapePair {
 public:
  ShapePair(const model::Shape& a, const model::Shape& b);
  ShapePair(ShapePair&&) noexcept;
  ShapePair& operator=(ShapePair&&) noexcept;
  ~ShapePair();

  /// @param X_WA  pose of A's body frame in the world. Allocates nothing.
  [[nodiscard]] ClosestPoints closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const;

  /// True when a closed form serves this pair (for tests and the docs).
  [[nodiscard]] bool closed_form() const;

 private:
  struct Implementation;
  std::unique_ptr<Implementation> implementation_;
};

/// Radius of a sphere about the shape's reference point that holds the whole shape; for a cheap rejection.
struct Bound {
  Vector3d center = Vector3d::Zero();  ///< body frame [m]
  double radius = 0;                   ///< [m]
};
[[nodiscard]] Bound bounding_sphere(const model::Shape& shape);

}  // namespace sinewright::contact
