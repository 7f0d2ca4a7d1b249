#include "dynamics/tree.h"

#include <cmath>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using namespace sinewright::dynamics;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using sinewright::model::MassProperties;

const Vector3d kGravity(1.3, -9.2, 3.1);  // slanted, so that every axis feels it

MassProperties mass(double m, const Vector3d& center, const Vector3d& moments, const Vector3d& turn) {
  const Eigen::Matrix3d R = Eigen::AngleAxisd(turn.norm(), turn.normalized()).toRotationMatrix();
  return {m, center, R * moments.asDiagonal() * R.transpose()};
}

Link hinge(int parent, const Vector3d& at, const Vector3d& pin, const MassProperties& m) {
  Link link;
  link.kind = JointKind::hinge;
  link.parent = parent;
  link.at = at;
  link.axis = pin.normalized();
  link.seat = Eigen::AngleAxisd(0.2, Vector3d(1, 2, -1).normalized()).toRotationMatrix();
  link.mass = m;
  return link;
}

Link slide(int parent, const Vector3d& at, const Vector3d& axis, const MassProperties& m) {
  Link link = hinge(parent, at, axis, m);
  link.kind = JointKind::slide;
  return link;
}

// Two fingers on one palm, one of them branching, with a rigidly seated part and a sliding one; a bar hinged on a slide; axes not
// parallel.
Tree hand() {
  Tree tree;
  Link palm;
  palm.at = Vector3d(0.01, 0.02, -0.01);
  palm.seat = Eigen::AngleAxisd(0.4, Vector3d::UnitY()).toRotationMatrix();
  const int base = tree.add(palm);
  const int proximal = tree.add(hinge(base, {0.02, 0, 0.01}, {0.1, 0.2, 1},
                                      mass(0.02, {0.02, 0.001, 0.002}, {2e-6, 5e-6, 6e-6}, {0.1, 0.3, 0.2})));
  const int middle =
      tree.add(hinge(proximal, {0.045, 0.001, 0}, {-0.2, 0.1, 1},
                     mass(0.01, {0.012, -0.001, 0.001}, {1e-6, 2e-6, 2.5e-6}, {0.3, 0.1, -0.2})));
  Link cap;
  cap.parent = middle;
  cap.at = Vector3d(0.02, 0.002, 0.001);
  cap.seat = Eigen::AngleAxisd(-0.6, Vector3d::UnitX()).toRotationMatrix();
  cap.mass = mass(0.004, {0.003, 0.001, -0.002}, {2e-7, 3e-7, 4e-7}, {0.2, -0.1, 0.4});
  tree.add(cap);
  tree.add(hinge(middle, {0.025, 0, 0.001}, {0.3, 0, 1},
                 mass(0.006, {0.008, 0, 0.001}, {5e-7, 7e-7, 9e-7}, {-0.1, 0.2, 0.1})));
  tree.add(hinge(proximal, {0.03, 0, 0.01}, {1, 0.2, 0.1},
                 mass(0.005, {0.006, 0.002, 0}, {4e-7, 5e-7, 8e-7}, {0.3, 0.3, 0.1})));
  tree.add(hinge(base, {0, 0, 0.04}, {0, 1, 0.3},
                 mass(0.03, {0.02, 0.004, 0.001}, {3e-6, 6e-6, 7e-6}, {0.1, 0, 0.3})));
  tree.add(slide(middle, {0.01, 0.004, -0.002}, {1, 0.3, -0.2},
                 mass(0.004, {0.003, 0.002, 0.001}, {2e-7, 3e-7, 4e-7}, {0.1, -0.2, 0.3})));
  const int yoke = tree.add(slide(base, {0.03, 0.01, 0}, {-1, 0.4, 0.3},
                                  mass(0.008, {0.002, -0.001, 0.003}, {4e-7, 6e-7, 5e-7}, {0.2, 0.1, 0})));
  tree.add(hinge(yoke, {0.005, 0.002, 0}, {0.2, -0.1, 1},
                 mass(0.003, {0.001, 0.004, 0}, {3e-7, 1e-7, 3e-7}, {0, 0.1, 0.2})));
  return tree;
}
int add_free_body(Tree& tree) {
  Link body;
  body.kind = JointKind::free;
  body.mass = mass(0.05, {0.004, -0.003, 0.002}, {3e-6, 8e-6, 1e-5}, {0.5, 0.1, -0.3});
  return tree.add(body);
}

struct Random {
  std::mt19937 engine{3};
  double operator()(double size) { return std::uniform_real_distribution<double>(-size, size)(engine); }
  VectorXd vector(int n, double size) {
    VectorXd x(n);
    for (int i = 0; i < n; ++i) x[i] = (*this)(size);
    return x;
  }
  VectorXd coordinates(const Tree& tree) {
    VectorXd q = vector(tree.n_q, 1.5);
    for (const Link& link : tree.links)
      if (link.kind == JointKind::free) {
        q.segment<3>(link.q) *= 0.1;
        q.segment<4>(link.q + 3).normalize();
      }
    return q;
  }
};

// q moved along a velocity for a time h, as it would be at constant rate.
VectorXd moved(const Tree& tree, VectorXd q, const VectorXd& rate, double h) {
  advance(tree, h, rate, q);
  return q;
}

MatrixXd mass_at(const Tree& tree, const VectorXd& q) {
  Kinematics k(tree);
  update(tree, Vector3d::Zero(), q, VectorXd::Zero(tree.n_v), k);
  std::vector<Inertia> composite(tree.links.size());
  MatrixXd M = MatrixXd::Zero(tree.n_v, tree.n_v);
  mass_matrix(tree, k, composite, M);
  return M;
}

VectorXd generalized(const Tree& tree, const Kinematics& k, const VectorXd& vdot,
                     const std::vector<Force>& external) {
  std::vector<Motion> acceleration(tree.links.size());
  std::vector<Force> transmitted(tree.links.size());
  inverse_dynamics(tree, k, vdot, external, acceleration, transmitted);
  VectorXd tau(tree.n_v);
  for (int i = 0; i < tree.n_v; ++i)
    tau[i] = dot(k.column[static_cast<std::size_t>(i)],
                 transmitted[static_cast<std::size_t>(k.owner[static_cast<std::size_t>(i)])]);
  return tau;
}

VectorXd forces_for(const Tree& tree, const Vector3d& gravity, const VectorXd& q, const VectorXd& v,
                    const VectorXd& vdot) {
  Kinematics k(tree);
  update(tree, gravity, q, v, k);
  return generalized(tree, k, vdot, std::vector<Force>(tree.links.size()));
}

VectorXd acceleration_of(const Tree& tree, const Vector3d& gravity, const VectorXd& q, const VectorXd& v) {
  return mass_at(tree, q).ldlt().solve(-forces_for(tree, gravity, q, v, VectorXd::Zero(tree.n_v)));
}

double energy(const Tree& tree, const Vector3d& gravity, const VectorXd& q, const VectorXd& v) {
  Kinematics k(tree);
  update(tree, gravity, q, v, k);
  return kinetic_energy(tree, k) + potential_energy(tree, gravity, k);
}

// Rotation vector of R Rᵀ' for a small turn.
Vector3d small_turn(const Eigen::Matrix3d& to, const Eigen::Matrix3d& from) {
  const Eigen::Matrix3d D = to * from.transpose();
  return 0.5 * Vector3d(D(2, 1) - D(1, 2), D(0, 2) - D(2, 0), D(1, 0) - D(0, 1));
}

TEST_CASE("tree: velocities are the rates of change of the poses") {
  Tree tree = hand();
  add_free_body(tree);
  Random random;
  Kinematics k(tree), ahead(tree), behind(tree);
  constexpr double h = 1e-6;
  for (int n = 0; n < 20; ++n) {
    const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 3);
    update(tree, kGravity, q, v, k);
    update(tree, kGravity, moved(tree, q, v, h), v, ahead);
    update(tree, kGravity, moved(tree, q, v, -h), v, behind);
    for (std::size_t i = 0; i < tree.links.size(); ++i) {
      const Vector3d point(0.01, -0.02, 0.015);  // some point of the body
      const Vector3d rate = (ahead.pose[i] * point - behind.pose[i] * point) / (2 * h);
      CHECK((k.velocity[i].at(k.pose[i] * point) - rate).norm() < 1e-8);
      CHECK((k.velocity[i].angular - small_turn(ahead.pose[i].R, behind.pose[i].R) / (2 * h)).norm() < 1e-8);
    }
  }
}

TEST_CASE("tree: flexion turns the tip towards -y when the pin lies along z") {
  Tree tree;
  Link link;
  link.kind = JointKind::hinge;
  tree.add(link);
  Kinematics k(tree);
  update(tree, kGravity, VectorXd::Constant(1, 0.5), VectorXd::Zero(1), k);
  CHECK((k.pose[0] * Vector3d(1, 0, 0) - Vector3d(std::cos(0.5), -std::sin(0.5), 0)).norm() < 1e-15);
}

TEST_CASE("tree: a slide goes along its axis in the parent's frame and does not turn") {
  Tree tree;
  Link carrier;
  carrier.kind = JointKind::hinge;
  const int arm = tree.add(carrier);
  Link link;
  link.kind = JointKind::slide;
  link.parent = arm;
  link.at = Vector3d(0.1, 0, 0);
  link.axis = Vector3d::UnitX();
  tree.add(link);
  Kinematics k(tree);
  Eigen::Vector2d q(0.5, 0.02), v(2, 0.3);
  update(tree, Vector3d::Zero(), q, v, k);
  const Vector3d along(std::cos(0.5), -std::sin(0.5), 0), across(-std::sin(0.5), -std::cos(0.5), 0);
  CHECK((k.pose[1].p - 0.12 * along).norm() < 1e-15);
  CHECK((k.pose[1].R - k.pose[0].R).norm() == 0);
  // In polar coordinates: velocity r' and r w, acceleration −r w² along and 2 r' w across.
  CHECK((k.velocity[1].at(k.pose[1].p) - (0.3 * along + 0.12 * 2 * across)).norm() < 1e-15);
  const Vector3d spatial = k.bias[1].at(k.pose[1].p);  // acceleration of the material point needs ω × v added
  const Vector3d acceleration = spatial + k.velocity[1].angular.cross(k.velocity[1].at(k.pose[1].p));
  CHECK((acceleration - (-0.12 * 4 * along + 2 * 0.3 * 2 * across)).norm() < 1e-14);
}

TEST_CASE("tree: the mass matrix is the sum of JᵀmJ and JᵀIJ with Jacobians by finite differences") {
  Tree tree = hand();
  add_free_body(tree);
  Random random;
  Kinematics k(tree), ahead(tree), behind(tree);
  constexpr double h = 1e-5;
  for (int n = 0; n < 20; ++n) {
    const VectorXd q = random.coordinates(tree), rest = VectorXd::Zero(tree.n_v);
    update(tree, kGravity, q, rest, k);
    std::vector<MatrixXd> place(tree.links.size(), MatrixXd(3, tree.n_v)), turn(place);
    for (int j = 0; j < tree.n_v; ++j) {
      const VectorXd e = VectorXd::Unit(tree.n_v, j);
      update(tree, kGravity, moved(tree, q, e, h), rest, ahead);
      update(tree, kGravity, moved(tree, q, e, -h), rest, behind);
      for (std::size_t i = 0; i < tree.links.size(); ++i) {
        const Vector3d& c = tree.links[i].mass.center;
        place[i].col(j) = (ahead.pose[i] * c - behind.pose[i] * c) / (2 * h);
        turn[i].col(j) = small_turn(ahead.pose[i].R, behind.pose[i].R) / (2 * h);
      }
    }
    MatrixXd expected = MatrixXd::Zero(tree.n_v, tree.n_v);
    for (std::size_t i = 0; i < tree.links.size(); ++i) {
      const Eigen::Matrix3d I = k.pose[i].R * tree.links[i].mass.inertia * k.pose[i].R.transpose();
      expected +=
          tree.links[i].mass.mass * place[i].transpose() * place[i] + turn[i].transpose() * I * turn[i];
    }
    const MatrixXd M = mass_at(tree, q);
    CHECK((M - expected).cwiseAbs().maxCoeff() < 1e-9 * expected.cwiseAbs().maxCoeff());
    CHECK((M - M.transpose()).cwiseAbs().maxCoeff() < 1e-15 * expected.cwiseAbs().maxCoeff());
  }
}

TEST_CASE("tree: kinetic energy is half of vᵀMv, and potential energy the height of the masses") {
  Tree tree = hand();
  add_free_body(tree);
  Random random;
  Kinematics k(tree);
  for (int n = 0; n < 20; ++n) {
    const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 5);
    update(tree, kGravity, q, v, k);
    CHECK_THAT(kinetic_energy(tree, k), WithinRel(0.5 * v.dot(mass_at(tree, q) * v), 1e-11));
    double height = 0;
    for (std::size_t i = 0; i < tree.links.size(); ++i)
      height -= tree.links[i].mass.mass * kGravity.dot(k.pose[i] * tree.links[i].mass.center);
    CHECK_THAT(potential_energy(tree, kGravity, k), WithinRel(height, 1e-12));
  }
}

TEST_CASE("tree: inverse dynamics gives Lagrange's d/dt dT/dv - dT/dq + dV/dq") {
  const Tree tree = hand();
  Random random;
  constexpr double h = 1e-5;
  for (int n = 0; n < 20; ++n) {
    const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 4),
                   vdot = random.vector(tree.n_v, 50);
    const VectorXd rate = (mass_at(tree, q + h * v) * v - mass_at(tree, q - h * v) * v) / (2 * h);
    VectorXd expected = mass_at(tree, q) * vdot + rate;
    for (int i = 0; i < tree.n_v; ++i) {
      const VectorXd e = h * VectorXd::Unit(tree.n_v, i);
      const double lagrangian_ahead =
          2 * 0.5 * v.dot(mass_at(tree, q + e) * v) - energy(tree, kGravity, q + e, v);
      const double lagrangian_behind =
          2 * 0.5 * v.dot(mass_at(tree, q - e) * v) - energy(tree, kGravity, q - e, v);
      expected[i] -= (lagrangian_ahead - lagrangian_behind) / (2 * h);
    }
    const VectorXd tau = forces_for(tree, kGravity, q, v, vdot);
    CHECK((tau - expected).cwiseAbs().maxCoeff() < 1e-8 * expected.cwiseAbs().maxCoeff());
  }
}

TEST_CASE("tree: an external force acts with its virtual work") {
  Tree tree = hand();
  add_free_body(tree);
  Random random;
  Kinematics k(tree), ahead(tree), behind(tree);
  constexpr double h = 1e-6;
  const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 3),
                 vdot = random.vector(tree.n_v, 9);
  update(tree, kGravity, q, v, k);
  const std::vector<Force> none(tree.links.size());
  const VectorXd without = generalized(tree, k, vdot, none);
  for (std::size_t i = 0; i < tree.links.size(); ++i) {
    const Vector3d local(0.01, 0.003, -0.002), push(0.4, -1.1, 0.7);
    std::vector<Force> external = none;
    external[i] = force_at(k.pose[i] * local, push);
    const VectorXd with = generalized(tree, k, vdot, external);
    for (int j = 0; j < tree.n_v; ++j) {
      const VectorXd e = VectorXd::Unit(tree.n_v, j);
      update(tree, kGravity, moved(tree, q, e, h), v, ahead);
      update(tree, kGravity, moved(tree, q, e, -h), v, behind);
      const double work = push.dot(ahead.pose[i] * local - behind.pose[i] * local) / (2 * h);
      CHECK_THAT(without[j] - with[j], WithinAbs(work, 1e-9));
    }
  }
}

TEST_CASE("tree: a free body keeps its momentum, linear and about the world origin") {
  Tree tree;
  const int body = add_free_body(tree);
  Random random;
  constexpr double h = 1e-5;
  const auto momentum = [&](const VectorXd& q, const VectorXd& v) {
    Kinematics k(tree);
    update(tree, Vector3d::Zero(), q, v, k);
    const auto i = static_cast<std::size_t>(body);
    return k.inertia[i] * k.velocity[i];
  };
  for (int n = 0; n < 20; ++n) {
    const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 6);
    const VectorXd vdot = acceleration_of(tree, Vector3d::Zero(), q, v);
    // q(t ± h) to second order by the mean velocity.
    const Force ahead = momentum(moved(tree, q, v + h / 2 * vdot, h), v + h * vdot);
    const Force behind = momentum(moved(tree, q, v - h / 2 * vdot, -h), v - h * vdot);
    const Force now = momentum(q, v);
    CHECK((ahead.force - behind.force).norm() / (2 * h) < 1e-6 * now.force.norm());
    CHECK((ahead.moment - behind.moment).norm() / (2 * h) < 1e-5 * now.moment.norm());
    CHECK(vdot.norm() > 0.1);  // a spinning body with its mass off the origin does accelerate there
  }
}

TEST_CASE("tree: a free body falls with g at its centre of mass while it spins") {
  Tree tree;
  add_free_body(tree);
  Random random;
  const VectorXd q = random.coordinates(tree), v = random.vector(tree.n_v, 6);
  const VectorXd vdot = acceleration_of(tree, kGravity, q, v);
  Kinematics k(tree);
  update(tree, kGravity, q, v, k);
  const Vector3d arm = k.pose[0].R * tree.links[0].mass.center;
  const Vector3d omega = v.head<3>();
  const Vector3d center = vdot.tail<3>() + vdot.head<3>().cross(arm) + omega.cross(omega.cross(arm));
  CHECK((center - kGravity).norm() < 1e-9);
}

TEST_CASE("tree: motion under weight conserves energy at the integrator's order") {
  Tree tree = hand();
  add_free_body(tree);
  Random random;
  const VectorXd q0 = random.coordinates(tree), v0 = random.vector(tree.n_v, 2);
  const double at_start = energy(tree, kGravity, q0, v0);
  // Classical Runge–Kutta in (q, v); rates of the quaternion are turns, composed by `advance` as mean
  // velocities, which is second order for the free body. So Richardson: a quarter of the step, a sixteenth of
  // the error or less.
  const auto drift = [&](int steps) {
    VectorXd q = q0, v = v0;
    const double h = 0.05 / steps;
    for (int i = 0; i < steps; ++i) {
      const VectorXd a1 = acceleration_of(tree, kGravity, q, v), v2 = v + h / 2 * a1;
      const VectorXd a2 = acceleration_of(tree, kGravity, moved(tree, q, v, h / 2), v2);
      q = moved(tree, q, v2, h);
      v += h * a2;
    }
    return std::abs(energy(tree, kGravity, q, v) - at_start);
  };
  const double coarse = drift(50), fine = drift(200);
  CHECK(coarse < 1e-3 * std::abs(at_start));
  CHECK(fine < coarse / 12);
}

TEST_CASE("tree: the joint of a hanging, swinging pendulum carries weight and centripetal force") {
  // Horizontal release: at the bottom v² = 2 g l, so the pull is 3 m g (energy and Newton's second law).
  Tree tree;
  Link link;
  link.kind = JointKind::hinge;
  link.mass = {2.0, Vector3d(0.5, 0, 0), Eigen::Matrix3d::Zero()};
  tree.add(link);
  const Vector3d g(0, -9.81, 0);
  Kinematics k(tree);
  const VectorXd q = VectorXd::Constant(1, M_PI / 2), v = VectorXd::Constant(1, std::sqrt(2 * 9.81 / 0.5));
  update(tree, g, q, v, k);
  std::vector<Motion> acceleration(1);
  std::vector<Force> transmitted(1), external(1);
  inverse_dynamics(tree, k, VectorXd::Zero(1), external, acceleration, transmitted);
  CHECK((transmitted[0].force - Vector3d(0, 3 * 2.0 * 9.81, 0)).norm() < 1e-12);
  CHECK(transmitted[0].moment.norm() < 1e-12);
}

TEST_CASE("tree: a prescribed link goes where it is told and carries its acceleration") {
  Tree tree;
  Link link;
  link.kind = JointKind::prescribed;
  link.mass = {0.3, Vector3d::Zero(), Eigen::Matrix3d::Identity() * 1e-5};
  tree.add(link);
  Kinematics k(tree);
  k.prescribed[0] = {Vector3d(0.1, 0.2, 0.3), Vector3d(1, 2, 3), Vector3d(-4, 5, 6)};
  update(tree, kGravity, VectorXd(0), VectorXd(0), k);
  CHECK((k.pose[0].p - Vector3d(0.1, 0.2, 0.3)).norm() == 0);
  CHECK((k.velocity[0].linear - Vector3d(1, 2, 3)).norm() == 0);
  std::vector<Motion> acceleration(1);
  std::vector<Force> transmitted(1), external(1);
  inverse_dynamics(tree, k, VectorXd(0), external, acceleration, transmitted);
  CHECK((transmitted[0].force - 0.3 * (Vector3d(-4, 5, 6) - kGravity)).norm() < 1e-12);
}

TEST_CASE("tree: advance turns a free body by the exponential map and keeps its quaternion of length one") {
  Tree tree;
  add_free_body(tree);
  VectorXd q = VectorXd::Zero(7);
  q[6] = 1;
  VectorXd rate = VectorXd::Zero(6);
  rate.head<3>() = Vector3d(0.3, -0.4, 1.2);
  for (int i = 0; i < 1000; ++i) advance(tree, 0.01, rate, q);
  const double angle = 10 * rate.head<3>().norm();
  const Eigen::Matrix3d expected = Eigen::AngleAxisd(angle, rate.head<3>().normalized()).toRotationMatrix();
  const Eigen::Quaterniond end(q[6], q[3], q[4], q[5]);
  CHECK((end.toRotationMatrix() - expected).norm() < 1e-12);
  CHECK_THAT(end.norm(), WithinAbs(1, 1e-15));
  // A vanishing turn does not divide by zero.
  rate.head<3>() *= 1e-20;
  advance(tree, 0.01, rate, q);
  CHECK(q.allFinite());
}

TEST_CASE("tree: hangs_on follows the parents and nothing else") {
  const Tree tree = hand();
  CHECK(hangs_on(tree, 4, 1));
  CHECK(hangs_on(tree, 3, 3));
  CHECK_FALSE(hangs_on(tree, 1, 4));
  CHECK_FALSE(hangs_on(tree, 6, 1));
  CHECK(hangs_on(tree, 6, 0));
}

}  // namespace
