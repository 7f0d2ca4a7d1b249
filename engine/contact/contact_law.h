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
  double tangential_stiffness =
      0;  ///< of the sticking contact [N/m], constant (so that its stored energy is well defined)
};

/// Puts two surfaces in series.
///
///     1/E* = (1−ν₁²)/E₁ + (1−ν₂²)/E₂
///     c    = w₁ c₁ + w₂ c₂,  wᵢ = E* (1−νᵢ²)/Eᵢ        (each surface damps its own share of the approach)
///     kₜ   = 8 a G*,  a = (3 F R / 4 E*)^(1/3),  1/G* = (2−ν₁)/G₁ + (2−ν₂)/G₂,  G = E / 2(1+ν)
///
/// kₜ is Mindlin's tangential stiffness of a sphere pressed on by the reference force F, without slip; for
/// equal materials it is 2(1−ν)/(2−ν) times Hertz's normal stiffness 2 a E*. It is then held constant: at
/// another normal force N it should be (N/F)^(1/3) times as large. Only how far a sticking contact gives
/// before it holds depends on it, not what it can hold.
///
/// Source: Johnson, Contact Mechanics, sections 4.2 and 7.2 (from memory). Checked by
/// tests/contact/contact_law_test.cpp.
///
/// @param friction         Coulomb coefficient [–], ≥ 0.
/// @param radius           effective radius R of the pair of shapes [m], > 0.
/// @param reference_force  F, a typical normal force of this contact [N], > 0.
/// @throws InvalidInput if a number is out of range; a modulus may be infinite (rigid) on one side only.
[[nodiscard]] ContactPair combine(const model::Surface& a, const model::Surface& b, double friction,
                                  double radius, double reference_force);

struct NormalForce {
  double force = 0;      ///< N, never negative [N]
  double stiffness = 0;  ///< −∂N/∂gap [N/m]
  double damping = 0;    ///< −∂N/∂(gap rate) [N s/m]
  double energy = 0;     ///< elastic energy stored [J]
};

/// Hertz contact with Hunt–Crossley damping.
///
///     N      = (4/3) E* √R δ^(3/2) max(0, 1 + c δ̇),   δ = −gap;   all zero for gap ≥ 0
///     energy = (8/15) E* √R δ^(5/2)
///
/// Never pulls: a contact that opens faster than 1/c has no force and no stiffness. Holds for contact radii
/// √(R δ) small beside R, smooth elastic half-spaces, no adhesion; a thin pad on a hard core is stiffer than
/// this.
///
/// Source: Johnson, Contact Mechanics, eq. 4.23 (from memory); damping after Hunt and Crossley 1975 (from
/// memory).
/// @param radius    effective radius R [m], > 0.
/// @param gap       distance of the surfaces [m].
/// @param gap_rate  its rate of change [m/s].
[[nodiscard]] NormalForce hertz_force(const ContactPair& pair, double radius, double gap, double gap_rate);

/// Coulomb friction with an elastic stick spring, as a return mapping (rate independent: sticks for ever, no
/// creep).
struct TangentForce {
  Vector3d force = Vector3d::Zero();   ///< on body A, in the tangent plane [N]
  Vector3d spring = Vector3d::Zero();  ///< new elastic displacement ξ [m]; energy stored is kₜ |ξ|² / 2
  Matrix3d by_displacement = Matrix3d::Zero();  ///< ∂force/∂(trial displacement) [N/m]
  Vector3d by_normal = Vector3d::Zero();        ///< ∂force/∂N [–]
  bool slips = false;
};

/// The trial force −kₜ ξ where it lies in the cone |F| <= μ N (stick), else its projection on the cone
/// (slip):
///
///     F = −kₜ ξ                        stick;    spring = ξ, unchanged to the last bit
///     F = −μ N ξ/|ξ|                   slip;     spring = −F / kₜ, the rest of ξ has slid
///
/// |F| <= μ N holds exactly, in floating point too. The derivatives are those of the branch taken, the
/// consistent tangent for Newton's method. N = 0 gives zero force and zero spring (by_normal is then the
/// one-sided derivative).
///
/// @param normal_force  N [N]; a negative one counts as 0.
/// @param trial  elastic displacement if nothing slipped, in the tangent plane: old spring + displacement of
/// A against B in
///               this step [m].
[[nodiscard]] TangentForce coulomb_force(const ContactPair& pair, double normal_force, const Vector3d& trial);

}  // namespace sinewright::contact
