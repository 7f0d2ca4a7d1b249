#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <span>
#include <vector>

#include "dynamics/spatial.h"
#include "model/body.h"

namespace sinewright::dynamics {

using Eigen::MatrixXd;
using Eigen::VectorXd;

enum class JointKind {
  fixed,       ///< does not move in its parent (or in the world)
  hinge,       ///< one angle about a pin; q [rad], flexion positive
  slide,       ///< one way along an axis of the parent; q [m]
  free,        ///< six freedoms; q = position (3), quaternion x y z w; v = angular velocity (3), origin's velocity (3), world axes
  prescribed,  ///< translates in the world as told, whatever it takes
};

/// One body of the tree.
struct Link {
  JointKind kind = JointKind::fixed;
  int parent = -1;                        ///< −1: the world; a parent stands before its children
  Vector3d at = Vector3d::Zero();         ///< joint centre (slide: child's origin at q = 0) in the parent's frame [m]
  Vector3d axis = Vector3d::UnitZ();      ///< in the parent's frame. Hinge: q turns the child by −q about it; slide: q moves it along
  Matrix3d seat = Matrix3d::Identity();   ///< child's axes in the parent's frame at q = 0
  model::MassProperties mass;             ///< in the body frame
  int q = -1;                             ///< first coordinate, −1 without
  int v = -1;                             ///< first velocity, −1 without
};

/// A kinematic tree: topology and mass, no state. Sizes n_q and n_v count its own coordinates only.
struct Tree {
  std::vector<Link> links;
  int n_q = 0;
  int n_v = 0;

  /// Appends a link and gives it coordinates. @returns its index.
  int add(Link link);
};

/// Position and motion of a prescribed link at the time of evaluation.
struct Prescribed {
  Vector3d position = Vector3d::Zero();      ///< of the link's origin, world [m]
  Vector3d velocity = Vector3d::Zero();      ///< [m/s]
  Vector3d acceleration = Vector3d::Zero();  ///< [m/s²]
};

/// All that follows from q and v; sized once for a tree, then only written.
struct Kinematics {
  explicit Kinematics(const Tree& tree);

  struct Pose {
    Matrix3d R = Matrix3d::Identity();  ///< body axes in the world
    Vector3d p = Vector3d::Zero();      ///< body origin in the world [m]
    [[nodiscard]] Vector3d operator*(const Vector3d& point) const { return R * point + p; }
  };
  std::vector<Pose> pose;            ///< per link
  std::vector<Motion> velocity;      ///< per link
  std::vector<Motion> bias;          ///< per link: acceleration at v̇ = 0, gravity included as −g at the root
  std::vector<Motion> column;        ///< per velocity: motion of its link for a unit rate
  std::vector<int> owner;            ///< per velocity: its link
  std::vector<Inertia> inertia;      ///< per link, at the world origin
  std::vector<Prescribed> prescribed;  ///< per link, read by `update` (set before the call)
};

/// Poses, velocities, bias accelerations and inertias from q and v. Allocates nothing.
/// @param gravity  world [m/s²].
void update(const Tree& tree, const Vector3d& gravity, const VectorXd& q, const VectorXd& v, Kinematics& kinematics);

/// Adds h·rate to q, turning quaternions by the exponential map. `rate` is a velocity vector.
void advance(const Tree& tree, double h, const VectorXd& rate, VectorXd& q);

/// Joint-space mass matrix (composite rigid bodies), lower and upper part, written into the top left n_v × n_v block.
void mass_matrix(const Tree& tree, const Kinematics& kinematics, std::vector<Inertia>& composite, MatrixXd& mass);

/// Inverse dynamics: per link the force that its joint transmits from the parent, so that the subtree moves with
/// acceleration `vdot` under the external forces. The generalised force at a velocity is dot(column, transmitted[owner]).
/// @param external     per link, external force (without gravity) [N m, N].
/// @param transmitted  per link, result.
void inverse_dynamics(const Tree& tree, const Kinematics& kinematics, const VectorXd& vdot,
                      const std::vector<Force>& external, std::vector<Motion>& acceleration,
                      std::vector<Force>& transmitted);

/// Kinetic energy [J] and potential energy of weight relative to the world origin [J].
[[nodiscard]] double kinetic_energy(const Tree& tree, const Kinematics& kinematics);
[[nodiscard]] double potential_energy(const Tree& tree, const Vector3d& gravity, const Kinematics& kinematics);

/// True when link `body` is `ancestor` or hangs on it.
[[nodiscard]] bool hangs_on(const Tree& tree, int body, int ancestor);

}  // namespace sinewright::dynamics
