#pragma once

#include <Eigen/Core>

#include "model/material.h"

namespace sinewright::contact {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// What two surfaces make together.
struct ContactPair {
  double modulus = 0;   ///< E*, 1/E* = (1−ν₁²)/E₁ + (1−ν₂²)/E₂ [Pa]
  double damping = 0;   ///< Hunt–Crossley coefficient of the pair [s/m]
  double friction = 0;  ///< Coulomb coefficient [–]
  double tangential_stiffness = 0;  ///< of the sticking contact [N/m], constant (so that its stored energy is well defined)
};
[[nodiscard]] ContactPair combine(const model::Surface& a, const model::Surface& b, double friction,
                                  double radius, double reference_force);

struct NormalForce {
  double force = 0;      ///< N, never negative [N]
  double stiffness = 0;  ///< −∂N/∂gap [N/m]
  double damping = 0;    ///< −∂N/∂(gap rate) [N s/m]
  double energy = 0;     ///< elastic energy stored [J]
};

/// Hertz contact with Hunt–Crossley damping: N = (4/3) E* √R δ^(3/2) max(0, 1 + c δ̇), δ = −gap.
[[nodiscard]] NormalForce hertz_force(const ContactPair& pair, double radius, double gap, double gap_rate);

/// Coulomb friction with an elastic stick spring, as a return mapping (rate independent: sticks for ever, no creep).
struct TangentForce {
  Vector3d force = Vector3d::Zero();      ///< on body A, in the tangent plane [N]
  Vector3d spring = Vector3d::Zero();     ///< new elastic displacement ξ [m]
  Matrix3d by_displacement = Matrix3d::Zero();  ///< ∂force/∂(trial displacement) [N/m]
  Vector3d by_normal = Vector3d::Zero();  ///< ∂force/∂N [–]
  bool slips = false;
};

/// @param trial  elastic displacement if nothing slipped: old spring + displacement of A against B in this step [m].
/// |force| <= μ N holds exactly.
[[nodiscard]] TangentForce coulomb_force(const ContactPair& pair, double normal_force, const Vector3d& trial);

}  // namespace sinewright::contact
