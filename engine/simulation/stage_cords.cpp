#include "simulation/stage.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "friction/capstan.h"

// What cords do in a stage: their ways, tensions and slips.

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::force_at;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

const drive::CordPulley& Stage::pulley_of(const State& start, std::size_t cord) const {
  const auto& other = start.condition.cords[cord].pulley;
  return other ? *other : *system_.cords[cord].pulley;
}

// A broken cord pulls nowhere, and nothing moves it.
void Stage::let_hang(std::size_t c, const StageBase& base) {
  friction::ChainSolution& solution = chain[c];
  std::fill(solution.tension.begin(), solution.tension.end(), 0.0);
  std::fill(solution.passed.begin(), solution.passed.end(), 0.0);
  std::fill(solution.slip.begin(), solution.slip.end(), friction::Slip::stick);
  solution.material = base.cords[c].material;
  solution.stretch = base.cords[c].stretch;
  solution.wound = 0;
  solution.solved = true;
  span_gradient_[c].setZero();
  tension_by_v_[c].setZero();
  if (const int drive = system_.cords[c].drive; drive >= 0) shaft[at(drive)].load_torque = 0;
}

void Stage::evaluate_cords(const State& start, const StageBase& base) {
  const auto& m = system_.model();
  const auto pose = [&](int body) {
    const auto& p = kinematics.pose[at(system_.link_of_body[at(body)])];
    return geometry::BodyPose{&p.R, &p.p};
  };
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    const CordSystem& cord = system_.cords[c];
    const model::Cord& data = m.cords[at(cord.cord)];
    geometry::PathGeometry& geometry = path[c];
    friction::ChainSolution& solution = chain[c];
    cord.path.evaluate(pose, geometry);
    hangs[c] = start.condition.cords[c].broken;
    if (hangs[c]) {
      let_hang(c, base);
      continue;
    }

    friction::ChainStep step;
    step.length = geometry.length;
    step.limit = node_limit_[c];
    step.slip_before = start.cords[c].slip;
    step.material = base.cords[c].material;
    step.stretch = base.cords[c].stretch;
    step.duration = a_;
    double radius = 0, angle = 0;
    if (cord.drive >= 0) {
      angle = q[system_.shafts[at(cord.drive)].q_output];
      step.wind = pulley_of(start, c).wound_length(base.q[system_.shafts[at(cord.drive)].q_output], angle);
      radius = pulley_of(start, c).radius(angle);
    }
    // A coefficient that depends on the line load is iterated to agree with the tensions it leads to.
    const bool by_load = data.channel.load_exponent != 1;
    for (int round = 0; round < (by_load ? 20 : 1); ++round) {
      double moved = 0;
      for (std::size_t k = 0; k < node_limit_[c].size(); ++k) {
        const auto& node = cord.path.nodes()[k];
        const double line_load = node.radius > 0 ? std::sqrt(solution.tension[k] * solution.tension[k + 1]) / node.radius
                                                 : std::numeric_limits<double>::infinity();
        const auto cone = friction::bend_cone(data.channel, node.friction_factor, geometry.turning_angle[k], line_load);
        moved = std::max(moved, std::abs(cone.kinetic - node_limit_[c][k].sliding));
        node_limit_[c][k] = {cone.sticking, cone.kinetic};
      }
      if (round > 0 && moved < 1e-13) break;
      friction::solve_chain(cord.law, cord.damping_time, step, solution);
    }

    const Reach& reach = cord_reach_[c];
    MatrixXd& gradient = span_gradient_[c];
    MatrixXd& by_v = tension_by_v_[c];
    gradient.setZero();
    for (const geometry::Pull& pull : geometry.pulls) {
      const int link = system_.link_of_body[at(pull.body)];
      const Force unit = force_at(pull.point, pull.direction);
      add_gradient(link, unit, reach, gradient.col(pull.span));
      const double tension = solution.tension[at(pull.span)];
      external_[at(link)] -= Force{unit.moment * tension, unit.force * tension};
    }
    if (cord.drive >= 0) {
      const Shaft& s = system_.shafts[at(cord.drive)];
      gradient(reach.row[at(s.v_output)], 0) += radius;
      shaft[at(cord.drive)].load_torque = solution.tension[0] * radius;
      rows_.A(s.v_output, s.v_output) += a_ * solution.tension[0] * pulley_of(start, c).radius_slope(angle);
    }
    // Consistent tangent, run by run: dT_s = ratio_s Σ weight_s' dL_s'.
    const auto spans = static_cast<int>(solution.tension.size());
    for (int first = 0; first < spans;) {
      int last = first;
      while (last + 1 < spans && solution.run[at(last + 1)] == first) ++last;
      auto head = by_v.col(first);
      head.setZero();
      if (solution.tension[at(first)] > 0)
        for (int s = first; s <= last; ++s) head += (a_ * solution.weight[at(s)]) * gradient.col(s);
      for (int s = last; s >= first; --s) by_v.col(s) = solution.ratio[at(s)] * head;
      for (int s = first; s <= last; ++s) {
        if (solution.tension[at(s)] <= 0) continue;
        for (int j = 0; j < reach.size(); ++j) {
          const double rise = by_v(j, s);
          for (int i = 0; i < reach.size(); ++i) rows_.A(reach.v[at(i)], reach.v[at(j)]) += gradient(i, s) * rise;
        }
      }
      first = last + 1;
    }
  }
}

double Stage::cord_torque(std::size_t cord, int velocity) const {
  const int row = cord_reach_[cord].row[at(velocity)];
  if (row < 0) return 0;
  double torque = 0;
  for (std::size_t s = 0; s < chain[cord].tension.size(); ++s)
    torque -= chain[cord].tension[s] * span_gradient_[cord](row, static_cast<int>(s));
  return torque;
}

}  // namespace sinewright::simulation
