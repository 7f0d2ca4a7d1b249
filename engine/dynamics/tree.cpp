#include "dynamics/tree.h"

#include <cmath>

namespace sinewright::dynamics {

int Tree::add(Link link) {
  switch (link.kind) {
    case JointKind::hinge:
    case JointKind::slide:
      link.q = n_q++;
      link.v = n_v++;
      break;
    case JointKind::free:
      link.q = n_q;
      link.v = n_v;
      n_q += 7;
      n_v += 6;
      break;
    case JointKind::fixed:
    case JointKind::prescribed:
      break;
  }
  links.push_back(std::move(link));
  return static_cast<int>(links.size()) - 1;
}

Kinematics::Kinematics(const Tree& tree)
    : pose(tree.links.size()),
      velocity(tree.links.size()),
      bias(tree.links.size()),
      column(static_cast<std::size_t>(tree.n_v)),
      owner(static_cast<std::size_t>(tree.n_v), -1),
      inertia(tree.links.size()),
      prescribed(tree.links.size()) {
  for (std::size_t i = 0; i < tree.links.size(); ++i) {
    const Link& link = tree.links[i];
    if (link.v < 0) continue;
    const int count = link.kind == JointKind::free ? 6 : 1;
    for (int k = 0; k < count; ++k) owner[static_cast<std::size_t>(link.v + k)] = static_cast<int>(i);
  }
}

namespace {

Inertia world_inertia(const model::MassProperties& mass, const Kinematics::Pose& pose) {
  const Vector3d c = pose * mass.center;
  const Matrix3d about_center = pose.R * mass.inertia * pose.R.transpose();
  Inertia inertia;
  inertia.mass = mass.mass;
  inertia.first = mass.mass * c;
  // Steiner: m (c² 1 − c cᵀ)
  inertia.second = about_center + mass.mass * (c.squaredNorm() * Matrix3d::Identity() - c * c.transpose());
  return inertia;
}

}  // namespace

void update(const Tree& tree, const Vector3d& gravity, const VectorXd& q, const VectorXd& v, Kinematics& k) {
  const Kinematics::Pose world_pose;
  const Motion world_velocity;
  const Motion world_bias{Vector3d::Zero(), -gravity};
  for (std::size_t i = 0; i < tree.links.size(); ++i) {
    const Link& link = tree.links[i];
    const auto parent = static_cast<std::size_t>(link.parent);
    const bool rooted = link.parent < 0;
    const Kinematics::Pose& base = rooted ? world_pose : k.pose[parent];
    const Motion& base_velocity = rooted ? world_velocity : k.velocity[parent];
    const Motion& base_bias = rooted ? world_bias : k.bias[parent];
    Kinematics::Pose& pose = k.pose[i];
    switch (link.kind) {
      case JointKind::fixed:
        pose.p = base * link.at;
        pose.R = base.R * link.seat;
        k.velocity[i] = base_velocity;
        k.bias[i] = base_bias;
        break;
      case JointKind::hinge: {
        const auto j = static_cast<std::size_t>(link.v);
        pose.p = base * link.at;
        pose.R = base.R * Eigen::AngleAxisd(-q[link.q], link.axis).toRotationMatrix() * link.seat;
        const Vector3d axis = -(base.R * link.axis);
        k.column[j] = {axis, pose.p.cross(axis)};
        const Motion rate = k.column[j] * v[link.v];
        k.velocity[i] = base_velocity + rate;
        k.bias[i] = base_bias + cross(base_velocity, rate);
        break;
      }
      case JointKind::slide: {
        const auto j = static_cast<std::size_t>(link.v);
        const Vector3d axis = base.R * link.axis;
        pose.p = base * link.at + q[link.q] * axis;
        pose.R = base.R * link.seat;
        k.column[j] = {Vector3d::Zero(), axis};
        const Motion rate = k.column[j] * v[link.v];
        k.velocity[i] = base_velocity + rate;
        k.bias[i] = base_bias + cross(base_velocity, rate);
        break;
      }
      case JointKind::free: {
        const auto j = static_cast<std::size_t>(link.v);
        pose.p = q.segment<3>(link.q);
        pose.R = Eigen::Quaterniond(q[link.q + 6], q[link.q + 3], q[link.q + 4], q[link.q + 5]).toRotationMatrix();
        for (int a = 0; a < 3; ++a) {
          const Vector3d e = Vector3d::Unit(a);
          k.column[j + static_cast<std::size_t>(a)] = {e, pose.p.cross(e)};
          k.column[j + 3 + static_cast<std::size_t>(a)] = {Vector3d::Zero(), e};
        }
        const Vector3d angular = v.segment<3>(link.v);
        const Vector3d origin_velocity = v.segment<3>(link.v + 3);
        k.velocity[i] = {angular, origin_velocity + pose.p.cross(angular)};
        // d/dt (p × ω) at ω̇ = 0
        k.bias[i] = world_bias + Motion{Vector3d::Zero(), origin_velocity.cross(angular)};
        break;
      }
      case JointKind::prescribed:
        pose.p = k.prescribed[i].position;
        pose.R = link.seat;
        k.velocity[i] = {Vector3d::Zero(), k.prescribed[i].velocity};
        k.bias[i] = world_bias + Motion{Vector3d::Zero(), k.prescribed[i].acceleration};
        break;
    }
    if (link.mass.mass > 0) k.inertia[i] = world_inertia(link.mass, pose);
  }
}

void advance(const Tree& tree, double h, const VectorXd& rate, VectorXd& q) {
  for (const Link& link : tree.links) {
    if (link.kind == JointKind::hinge || link.kind == JointKind::slide) {
      q[link.q] += h * rate[link.v];
    } else if (link.kind == JointKind::free) {
      const Vector3d turn = h * rate.segment<3>(link.v);
      q.segment<3>(link.q) += h * rate.segment<3>(link.v + 3);
      const double angle = turn.norm();
      // sin(x/2)/x, with its limit: below 1e-8 the next term of the series is lost in rounding anyway
      const double s = angle > 1e-8 ? std::sin(angle / 2) / angle : 0.5;
      const Eigen::Quaterniond step(std::cos(angle / 2), s * turn.x(), s * turn.y(), s * turn.z());
      Eigen::Quaterniond now(q[link.q + 6], q[link.q + 3], q[link.q + 4], q[link.q + 5]);
      now = (step * now).normalized();
      q.segment<4>(link.q + 3) = now.coeffs();
    }
  }
}

void mass_matrix(const Tree& tree, const Kinematics& k, std::vector<Inertia>& composite, MatrixXd& mass) {
  const std::size_t n = tree.links.size();
  for (std::size_t i = 0; i < n; ++i) composite[i] = k.inertia[i];
  mass.topLeftCorner(tree.n_v, tree.n_v).setZero();
  for (std::size_t i = n; i-- > 0;) {
    const Link& link = tree.links[i];
    if (link.v >= 0) {
      const int count = link.kind == JointKind::free ? 6 : 1;
      for (int a = link.v; a < link.v + count; ++a) {
        const Force f = composite[i] * k.column[static_cast<std::size_t>(a)];
        for (int b = link.v; b < link.v + count; ++b) mass(b, a) = dot(k.column[static_cast<std::size_t>(b)], f);
        for (int up = link.parent; up >= 0; up = tree.links[static_cast<std::size_t>(up)].parent) {
          const int b = tree.links[static_cast<std::size_t>(up)].v;
          if (b < 0) continue;
          const double value = dot(k.column[static_cast<std::size_t>(b)], f);
          mass(a, b) = mass(b, a) = value;
        }
      }
    }
    if (link.parent >= 0) composite[static_cast<std::size_t>(link.parent)] += composite[i];
  }
}

void inverse_dynamics(const Tree& tree, const Kinematics& k, const VectorXd& vdot, const std::vector<Force>& external,
                      std::vector<Motion>& acceleration, std::vector<Force>& transmitted) {
  const std::size_t n = tree.links.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Link& link = tree.links[i];
    // `bias` is the whole chain's bias, so here only the v̇ part is carried down.
    Motion a;
    if (link.parent >= 0) a = acceleration[static_cast<std::size_t>(link.parent)];
    if (link.v >= 0) {
      const int count = link.kind == JointKind::free ? 6 : 1;
      for (int c = link.v; c < link.v + count; ++c) a += k.column[static_cast<std::size_t>(c)] * vdot[c];
    }
    acceleration[i] = a;
    if (link.kind == JointKind::fixed && link.parent < 0) {
      transmitted[i] = {};
      transmitted[i] -= external[i];
      continue;
    }
    Force f = k.inertia[i] * (a + k.bias[i]);
    f += cross(k.velocity[i], k.inertia[i] * k.velocity[i]);
    f -= external[i];
    transmitted[i] = f;
  }
  for (std::size_t i = n; i-- > 0;) {
    const int parent = tree.links[i].parent;
    if (parent >= 0) transmitted[static_cast<std::size_t>(parent)] += transmitted[i];
  }
}

double kinetic_energy(const Tree& tree, const Kinematics& k) {
  double energy = 0;
  for (std::size_t i = 0; i < tree.links.size(); ++i)
    if (tree.links[i].mass.mass > 0) energy += 0.5 * dot(k.velocity[i], k.inertia[i] * k.velocity[i]);
  return energy;
}

double potential_energy(const Tree& tree, const Vector3d& gravity, const Kinematics& k) {
  double energy = 0;
  for (std::size_t i = 0; i < tree.links.size(); ++i) energy -= gravity.dot(k.inertia[i].first);
  return energy;
}

bool hangs_on(const Tree& tree, int body, int ancestor) {
  for (int i = body; i >= 0; i = tree.links[static_cast<std::size_t>(i)].parent)
    if (i == ancestor) return true;
  return false;
}

}  // namespace sinewright::dynamics
