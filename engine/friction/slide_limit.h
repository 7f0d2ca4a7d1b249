#pragma once

#include <optional>

#include <Eigen/Core>

#include "model/body.h"

namespace sinewright::friction {

using Eigen::Vector3d;

/// Friction of a slide under a load, and how it follows the load.
struct SlideLimit {
  double sticking = 0;  ///< static limit [N]
  double kinetic = 0;   ///< [N]
  double normal = 0;    ///< sum of the normal forces behind both, preload included [N]
  Vector3d normal_by_force = Vector3d::Zero();   ///< ∂normal/∂force [–]
  Vector3d normal_by_moment = Vector3d::Zero();  ///< ∂normal/∂moment [1/m]
};

/// Dry friction of a slideway, built once from the model.
class SlideFriction {
 public:
  /// @throws InvalidInput if a coefficient, length or preload is out of range.
  explicit SlideFriction(const std::optional<model::Slideway>& slideway);

  /// The limits are μ times the sum of the loads on the two ends of the slideway, which carry what the reaction has across the
  /// axis, plus the preload:
  ///
  ///     N = |R/2 + m| + |R/2 − m| + preload,   m = (axis × M) / length
  ///
  /// A moment about the axis adds nothing. Allocates nothing.
  /// @param axis    unit vector along which the body slides.
  /// @param force   reaction on the body [N]. @param moment  about the middle of the slideway [N m]; all in one frame.
  [[nodiscard]] SlideLimit limit(const Vector3d& axis, const Vector3d& force, const Vector3d& moment) const noexcept;

  [[nodiscard]] const model::DryFriction& coefficients() const { return coefficients_; }

 private:
  model::DryFriction coefficients_;
  double length_ = 0;   // [m]
  double preload_ = 0;  // [N]
};

}  // namespace sinewright::friction
