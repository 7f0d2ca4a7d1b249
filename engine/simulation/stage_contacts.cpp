#include "simulation/stage.h"

// Contacts of a stage.

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::force_at;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

void Stage::evaluate_contacts(const StageBase& base) {
  for (std::size_t i = 0; i < system_.contacts.size(); ++i) {
    const ContactCandidate& candidate = system_.contacts[i];
    ContactResult& result = contact[i];
    const auto& pose_a = kinematics.pose[at(candidate.link_a)];
    const auto& pose_b = kinematics.pose[at(candidate.link_b)];
    result.normal_force = result.elastic_force = result.elastic_energy = 0;
    result.force.setZero();
    result.tangent_force.setZero();
    result.spring.setZero();
    result.slips = false;
    const double clear = (pose_a * candidate.bound_a.center - pose_b * candidate.bound_b.center).norm() -
                         candidate.bound_a.radius - candidate.bound_b.radius;
    result.near = clear <= 0;
    if (!result.near) {
      result.closest.gap = clear;
      continue;
    }
    Eigen::Isometry3d X_a = Eigen::Isometry3d::Identity(), X_b = Eigen::Isometry3d::Identity();
    X_a.linear() = pose_a.R;
    X_a.translation() = pose_a.p;
    X_b.linear() = pose_b.R;
    X_b.translation() = pose_b.p;
    if (held_ && held_->place[i].known) {
      const Memory::Place& place = held_->place[i];
      result.closest.on_a = pose_a * place.on_a;
      result.closest.on_b = pose_b * place.on_b;
      result.closest.normal = pose_b.R * place.normal;
      result.closest.gap = result.closest.normal.dot(result.closest.on_a - result.closest.on_b);
    } else {
      result.closest = candidate.shapes.closest(X_a, X_b);
    }
    if (result.closest.gap >= 0) continue;

    const Vector3d normal = result.closest.normal;
    result.point = 0.5 * (result.closest.on_a + result.closest.on_b);
    result.velocity = kinematics.velocity[at(candidate.link_a)].at(result.point) -
                      kinematics.velocity[at(candidate.link_b)].at(result.point);
    const double gap_rate = normal.dot(result.velocity);
    const auto hertz = contact::hertz_force(candidate.law, result.closest.radius, result.closest.gap, gap_rate);
    result.normal_force = hertz.force;
    result.elastic_force = contact::hertz_force(candidate.law, result.closest.radius, result.closest.gap, 0).force;

    const Eigen::Matrix3d tangent_plane = Eigen::Matrix3d::Identity() - normal * normal.transpose();
    const Vector3d trial = tangent_plane * (base.spring[i] + a_ * result.velocity);
    const auto friction = contact::coulomb_force(candidate.law, hertz.force, trial);
    result.tangent_force = friction.force;
    result.spring = friction.spring;
    result.slips = friction.slips;
    result.force = hertz.force * normal + friction.force;
    result.elastic_energy = hertz.energy + 0.5 * candidate.law.tangential_stiffness * friction.spring.squaredNorm();

    const Force on_a = force_at(result.point, result.force);
    external_[at(candidate.link_a)] += on_a;
    external_[at(candidate.link_b)] -= on_a;

    // dF/dv through the velocity of the contact point; turning of the normal is left out of the tangent.
    const Reach& reach = contact_reach_[i];
    const int n = reach.size();
    auto jacobian = contact_jacobian_.topRows(n);
    jacobian.setZero();
    for (int axis = 0; axis < 3; ++axis) {
      const Force unit = force_at(result.point, Vector3d::Unit(axis));
      add_gradient(candidate.link_a, unit, reach, jacobian.col(axis));
      Force opposite;
      opposite -= unit;
      add_gradient(candidate.link_b, opposite, reach, jacobian.col(axis));
    }
    const Vector3d by_normal = normal + friction.by_normal;
    const Eigen::Matrix3d force_by_velocity =
        -(a_ * hertz.stiffness + hertz.damping) * by_normal * normal.transpose() +
        a_ * friction.by_displacement * tangent_plane;
    auto force_by_v = contact_force_by_v_.leftCols(n);
    force_by_v.noalias() = force_by_velocity * jacobian.transpose();
    for (int k = 0; k < n; ++k)
      for (int l = 0; l < n; ++l) rows_.A(reach.v[at(l)], reach.v[at(k)]) -= jacobian.row(l).dot(force_by_v.col(k));
  }
}

}  // namespace sinewright::simulation
