#pragma once

#include <memory>

#include <Eigen/Geometry>

#include "model/shape.h"

namespace sinewright::contact {

using Eigen::Isometry3d;
using Eigen::Vector3d;

/// Where two shapes are nearest, in the world frame. Holds: on_a − on_b = gap · normal.
struct ClosestPoints {
  Vector3d on_a = Vector3d::Zero();  ///< on the surface of A [m]
  Vector3d on_b = Vector3d::Zero();  ///< on the surface of B [m]
  /// Unit, from B towards A: moving A along it by x raises the gap by x.
  Vector3d normal = Vector3d::UnitX();
  /// Distance of the surfaces [m]; negative: minus the shortest way by which A can be moved out of the
  /// overlap.
  double gap = 0;
  double radius = 0;  ///< effective radius of the pair for the Hertz law [m], see effective_radius
};

/// Finds the closest points of one pair of shapes.
///
/// Sphere and capsule against sphere, capsule, cylinder and box are solved to rounding error: by closed form,
/// or (capsule against a box, or against a cylinder's end or rim) by bisection on the slope of the distance
/// along the capsule's axis, which is known in closed form and monotone. Every other pair goes to Bullet's
/// GJK/EPA in millimetres; so does a capsule whose axis has entered a cylinder or box past an edge. Flat
/// shapes come out exact there, a cylinder mostly to 0.01 μm, at worst to some hundredths of a millimetre in
/// one overlap in a thousand (docs/theory/contact.md has the measured errors).
///
/// One point is given for each pair. When the nearest points fill a line or a face, the middle of a capsule's
/// line is taken; for two flat faces it is any point of them.
///
/// Where the direction is undefined (equal centres, crossing axes) a fixed one is taken; results are never
/// NaN for finite poses. A pose that is not finite gives a NaN gap.
///
/// One object serves one thread at a time (it holds the work space of the query).
class ShapePair {
 public:
  /// @throws InvalidInput if a size is not positive and finite, an axis is no unit vector, or a hull is flat.
  ShapePair(const model::Shape& a, const model::Shape& b);
  ShapePair(ShapePair&&) noexcept;
  ShapePair& operator=(ShapePair&&) noexcept;
  ~ShapePair();

  /// The same poses give the same bits, whatever was asked before. Allocates nothing.
  ///
  /// @param X_WA  pose of A's body frame in the world [m].
  /// @param X_WB  pose of B's body frame in the world [m].
  [[nodiscard]] ClosestPoints closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const;

  /// True when this pair is solved without Bullet, save for deep overlap past an edge.
  [[nodiscard]] bool closed_form() const;

 private:
  struct Implementation;
  std::unique_ptr<Implementation> implementation_;
};

/// One effective radius for a pair of shapes, the same wherever they touch, so that the elastic energy of the
/// contact depends on the gap alone.
///
///     R_eff = √(Rx Ry) = 1 / √(κx κy),   κx = κ_A,round + κ_B,along,   κy = κ_A,along + κ_B,round
///
/// with κ_round = 1/radius, κ_along = 1/radius for a sphere and 0 for a capsule or cylinder, both 0 for box
/// and hull. Exact for two spheres, a sphere on a flat face or on a round side, and for round sides that
/// cross at a right angle, as a finger round a handle does. Simplified elsewhere (docs/theory/contact.md,
/// with sizes of the error): a round side lying on a flat face gets κ_along = 1 / max(radius, half its
/// straight length); two flat faces get the smaller of the two bounding radii.
///
/// Source: the curvature sum is Johnson, Contact Mechanics, section 4.1 (from memory); the two stand-ins are
/// our own.
/// @returns R_eff [m], positive and finite.
/// @throws InvalidInput as ShapePair does.
[[nodiscard]] double effective_radius(const model::Shape& a, const model::Shape& b);

/// A sphere that holds the whole shape; for a cheap rejection.
struct Bound {
  Vector3d center = Vector3d::Zero();  ///< body frame [m]
  double radius = 0;                   ///< [m]
};
[[nodiscard]] Bound bounding_sphere(const model::Shape& shape);

}  // namespace sinewright::contact
