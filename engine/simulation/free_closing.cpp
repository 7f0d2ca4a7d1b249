#include "simulation/free_closing.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "simulation/fingertip.h"
#include "simulation/state.h"

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

constexpr int points = 160;
constexpr double holding_stiffness = 1e5;  // [N/m], of the spring that stands for the cord; leaves no error, see the page
constexpr double last_pull = 100;          // [N], brings every joint to its stop at last
constexpr double longest_step = 0.1;       // [rad]
constexpr double balanced = 1e-8;          // [N m]
constexpr int most_iterations = 60;
constexpr double no_stop = 120 * std::numbers::pi / 180;

// Energy of a finger as a function of the angles of some hinges, and its slope.
class Energy {
 public:
  Energy(const System& system, std::size_t cord, bool weight, const std::vector<std::size_t>& hinges)
      : system_(system), cord_(cord), gravity_(weight ? system.scenario.gravity : Vector3d::Zero()), hinges_(hinges),
        kinematics_(system.tree), q_(system.start_q), rest_(VectorXd::Zero(system.n_v)) {
    for (std::size_t o = 0; o < system.scenario.objects.size(); ++o)
      kinematics_.prescribed[at(system.link_of_object[o])].position = system.scenario.objects[o].at;
    const State start = start_state(system);
    for (std::size_t c = 0; c < system.cords.size(); ++c) {
      path_.push_back(system.cords[c].path.make_geometry());
      double material = 0;
      for (double m : start.cords[c].material) material += m;
      material_.push_back(material);
    }
  }

  // Way of the driven cord [m].
  double way(const VectorXd& angles) {
    place(angles);
    return length(cord_);
  }

  // @param allowed  way beyond which the cord pulls [m].
  double value(const VectorXd& angles, double allowed) {
    place(angles);
    double energy = dynamics::potential_energy(system_.tree, gravity_, kinematics_);
    for (std::size_t c = 0; c < system_.cords.size(); ++c) {
      if (system_.cords[c].drive >= 0) continue;
      energy += material_[c] * system_.cords[c].law.energy(length(c) / material_[c]);
    }
    for (std::size_t k = 0; k < hinges_.size(); ++k) {
      const model::Hinge& hinge = hinge_of(k);
      const double turned = angles[static_cast<int>(k)] - hinge.spring_rest;
      energy += 0.5 * hinge.spring_stiffness * turned * turned;
    }
    const double excess = std::max(0.0, length(cord_) - allowed);
    return energy + 0.5 * holding_stiffness * excess * excess;
  }

  void slope(const VectorXd& angles, double allowed, VectorXd& result) {
    place(angles);
    result.setZero();
    for (std::size_t c = 0; c < system_.cords.size(); ++c) {
      double tension = 0;
      if (c == cord_) {
        tension = holding_stiffness * std::max(0.0, length(c) - allowed);
      } else if (system_.cords[c].drive < 0) {
        tension = system_.cords[c].law.tension(length(c) / material_[c]);
      }
      if (tension > 0)
        for (const geometry::Pull& pull : path_[c].pulls) add(pull.body, pull.point, tension * pull.direction, result);
    }
    for (std::size_t b = 0; b < system_.link_of_body.size(); ++b) {
      const auto link = at(system_.link_of_body[b]);
      const model::MassProperties& mass = system_.tree.links[link].mass;
      if (mass.mass > 0) add(static_cast<int>(b), kinematics_.pose[link] * mass.center, -mass.mass * gravity_, result);
    }
    for (std::size_t k = 0; k < hinges_.size(); ++k) {
      const model::Hinge& hinge = hinge_of(k);
      result[static_cast<int>(k)] += hinge.spring_stiffness * (angles[static_cast<int>(k)] - hinge.spring_rest);
    }
  }

  Vector3d place_of(const TipPlace& tip, const VectorXd& angles) {
    place(angles);
    return kinematics_.pose[at(system_.link_of_body[at(tip.body)])] * tip.at;
  }

  const VectorXd& q() const { return q_; }

 private:
  const model::Hinge& hinge_of(std::size_t k) const { return *system_.model().bodies[at(system_.hinges[hinges_[k]].body)].hinge; }

  void place(const VectorXd& angles) {
    for (std::size_t k = 0; k < hinges_.size(); ++k)
      q_[system_.tree.links[at(system_.hinges[hinges_[k]].link)].q] = angles[static_cast<int>(k)];
    dynamics::update(system_.tree, Vector3d::Zero(), q_, rest_, kinematics_);
    const auto pose = [&](int body) {
      const auto& p = kinematics_.pose[at(system_.link_of_body[at(body)])];
      return geometry::BodyPose{&p.R, &p.p};
    };
    for (std::size_t c = 0; c < system_.cords.size(); ++c) system_.cords[c].path.evaluate(pose, path_[c]);
  }

  double length(std::size_t cord) const {
    double whole = 0;
    for (double l : path_[cord].length) whole += l;
    return whole;
  }

  // What a displacement of a body's point along `force` costs, for a unit rate of each hinge.
  void add(int body, const Vector3d& point, const Vector3d& force, VectorXd& result) const {
    for (std::size_t k = 0; k < hinges_.size(); ++k) {
      const HingeJoint& joint = system_.hinges[hinges_[k]];
      if (!dynamics::hangs_on(system_.tree, system_.link_of_body[at(body)], joint.link)) continue;
      result[static_cast<int>(k)] += dot(kinematics_.column[at(joint.v)], dynamics::force_at(point, force));
    }
  }

  const System& system_;
  std::size_t cord_;
  Vector3d gravity_;
  const std::vector<std::size_t>& hinges_;
  dynamics::Kinematics kinematics_;
  VectorXd q_, rest_;
  std::vector<geometry::PathGeometry> path_;
  std::vector<double> material_;
};

// Goes down to the nearest least energy within the bounds. @returns the largest torque left out of balance.
double settle(Energy& energy, double allowed, const VectorXd& lower, const VectorXd& upper, VectorXd& angles) {
  const auto n = static_cast<int>(angles.size());
  VectorXd slope(n), other(n), step(n), trial(n);
  MatrixXd curvature(n, n);
  double left = 0;
  for (int iteration = 0; iteration < most_iterations; ++iteration) {
    energy.slope(angles, allowed, slope);
    // A joint that is pressed against its stop stays there.
    std::vector<int> free;
    for (int i = 0; i < n; ++i) {
      const bool pressed = (angles[i] <= lower[i] && slope[i] > 0) || (angles[i] >= upper[i] && slope[i] < 0);
      if (!pressed) free.push_back(i);
    }
    left = 0;
    for (int i : free) left = std::max(left, std::abs(slope[i]));
    if (left < balanced) break;
    const auto m = static_cast<int>(free.size());
    constexpr double h = 1e-6;
    for (int j = 0; j < m; ++j) {
      trial = angles;
      trial[free[at(j)]] += h;
      energy.slope(trial, allowed, other);
      for (int i = 0; i < m; ++i) curvature(i, j) = (other[free[at(i)]] - slope[free[at(i)]]) / h;
    }
    const MatrixXd square = 0.5 * (curvature.topLeftCorner(m, m) + curvature.topLeftCorner(m, m).transpose());
    const Eigen::SelfAdjointEigenSolver<MatrixXd> eigen(square);
    VectorXd reduced(m);
    for (int i = 0; i < m; ++i) reduced[i] = slope[free[at(i)]];
    VectorXd along = eigen.eigenvectors().transpose() * reduced;
    for (int i = 0; i < m; ++i) along[i] /= std::max(std::abs(eigen.eigenvalues()[i]), 1e-6);
    const VectorXd down = eigen.eigenvectors() * along;
    step.setZero();
    for (int i = 0; i < m; ++i) step[free[at(i)]] = -down[i];
    const double size = step.cwiseAbs().maxCoeff();
    if (size > longest_step) step *= longest_step / size;
    const double before = energy.value(angles, allowed);
    double share = 1;
    for (; share > 1e-9; share *= 0.5) {
      trial = (angles + share * step).cwiseMax(lower).cwiseMin(upper);
      if (energy.value(trial, allowed) < before) break;
    }
    if (share <= 1e-9) break;  // rounding: it cannot be any lower
    angles = trial;
  }
  return left;
}

std::vector<int> bodies_of(const System& system, std::size_t cord) {
  std::vector<int> bodies;
  for (int s = 0; s < system.cords[cord].path.span_count(); ++s) {
    const auto [from, to] = system.cords[cord].path.span_bodies(s);
    bodies.push_back(from);
    bodies.push_back(to);
  }
  return bodies;
}

}  // namespace

TipPlace tip_place(const System& system, std::size_t cord) {
  const model::Cord& data = system.model().cords[at(system.cords[cord].cord)];
  const auto& anchor = std::get<model::Anchor>(data.path.back());
  if (const auto tip = fingertip(system.model().bodies[at(anchor.body)])) return {anchor.body, Vector3d(*tip, 0, 0)};
  return {anchor.body, anchor.at};
}

std::vector<std::size_t> hinges_moved_by(const System& system, std::size_t cord) {
  const std::vector<int> bodies = bodies_of(system, cord);
  std::vector<std::size_t> hinges;
  for (std::size_t i = 0; i < system.hinges.size(); ++i) {
    const auto hangs = [&](int body) { return dynamics::hangs_on(system.tree, system.link_of_body[at(body)], system.hinges[i].link); };
    if (std::any_of(bodies.begin(), bodies.end(), hangs) && !std::all_of(bodies.begin(), bodies.end(), hangs)) hinges.push_back(i);
  }
  return hinges;
}

FreeClosing::FreeClosing(const System& system, std::size_t cord, bool weight) : hinges_(hinges_moved_by(system, cord)) {
  const auto n = static_cast<int>(hinges_.size());
  VectorXd lower(n), upper(n), angles(n);
  for (int k = 0; k < n; ++k) {
    const HingeJoint& joint = system.hinges[hinges_[at(k)]];
    const auto& stops = system.model().bodies[at(joint.body)].hinge->stops;
    lower[k] = stops ? stops->lower : -no_stop;
    upper[k] = stops ? stops->upper : no_stop;
    angles[k] = system.start_q[system.tree.links[at(joint.link)].q];
  }
  Energy energy(system, cord, weight, hinges_);
  start_way_ = energy.way(angles);
  const double most = start_way_ - energy.way(upper);
  const TipPlace tip = tip_place(system, cord);
  const auto keep = [&](double drawn) {
    drawn_.push_back(drawn);
    tip_.push_back(energy.place_of(tip, angles));
    VectorXd all(static_cast<int>(system.hinges.size()));
    for (std::size_t i = 0; i < system.hinges.size(); ++i)
      all[static_cast<int>(i)] = energy.q()[system.tree.links[at(system.hinges[i].link)].q];
    angles_.push_back(std::move(all));
  };
  keep(0);
  VectorXd before = angles, next = angles;
  for (int p = 1; p <= points + 1 && most > 0; ++p) {
    const double wanted = p <= points ? most * p / points : most + last_pull / holding_stiffness;
    // From where the last two points lead to; where a joint snaps over, the way down is found all the same.
    next = (2 * angles - before).cwiseMax(lower).cwiseMin(upper);
    before = angles;
    angles = next;
    const double left = settle(energy, start_way_ - wanted, lower, upper, angles);
    const double drawn = start_way_ - energy.way(angles);
    if (drawn < drawn_.back() + 1e-9) continue;  // nothing moved, or a posture that this cord does not hold
    imbalance_ = std::max(imbalance_, left);
    keep(drawn);
  }
}

std::size_t FreeClosing::stretch_of(double drawn) const {
  const auto after = std::upper_bound(drawn_.begin(), drawn_.end(), drawn);
  const auto end = static_cast<std::size_t>(after - drawn_.begin());
  return std::clamp<std::size_t>(end, 1, drawn_.size() - 1);
}

double FreeClosing::share_of(double drawn, std::size_t end) const {
  return std::clamp((drawn - drawn_[end - 1]) / (drawn_[end] - drawn_[end - 1]), 0.0, 1.0);
}

Vector3d FreeClosing::tip(double drawn) const {
  if (drawn_.size() < 2) return tip_.front();
  const std::size_t end = stretch_of(drawn);
  return tip_[end - 1] + share_of(drawn, end) * (tip_[end] - tip_[end - 1]);
}

Vector3d FreeClosing::tip_slope(double drawn) const {
  if (drawn_.size() < 2) return Vector3d::Zero();
  const std::size_t end = stretch_of(drawn);
  return (tip_[end] - tip_[end - 1]) / (drawn_[end] - drawn_[end - 1]);
}

double FreeClosing::angle(double drawn, std::size_t hinge) const {
  const auto i = static_cast<int>(hinge);
  if (drawn_.size() < 2) return angles_.front()[i];
  const std::size_t end = stretch_of(drawn);
  return angles_[end - 1][i] + share_of(drawn, end) * (angles_[end][i] - angles_[end - 1][i]);
}

}  // namespace sinewright::simulation
