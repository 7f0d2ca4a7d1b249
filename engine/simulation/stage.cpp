#include "simulation/stage.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::JointKind;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Rounding in the forces of a stiff cord, divided by the smallest inertia and the step, reaches about this [rad/s].
constexpr double finest_resolution = 1e-9;
constexpr double metre_scale = 0.05;  // metres against radians
constexpr int slow_after = 8;  // iterations; a normal stage needs two to four

// The velocities that move some links against the world.
Reach reach_of(const dynamics::Tree& tree, int n_v, const std::vector<int>& links, int shaft = -1) {
  std::vector<bool> reached(at(n_v), false);
  for (int link : links)
    for (int i = link; i >= 0; i = tree.links[at(i)].parent) {
      const dynamics::Link& l = tree.links[at(i)];
      if (l.v < 0) continue;
      for (int k = 0; k < (l.kind == JointKind::free ? 6 : 1); ++k) reached[at(l.v + k)] = true;
    }
  if (shaft >= 0) reached[at(shaft)] = true;
  Reach reach;
  reach.row.assign(at(n_v), -1);
  for (int k = 0; k < n_v; ++k) {
    if (!reached[at(k)]) continue;
    reach.row[at(k)] = reach.size();
    reach.v.push_back(k);
  }
  return reach;
}

}  // namespace

Stage::Stage(const System& system)
    : kinematics(system.tree),
      contact(system.contacts.size()),
      shaft(system.shafts.size()),
      supply(system.model().supplies.size()),
      hinge(system.hinges.size()),
      slide(system.slides.size()),
      mode(at(system.n_rows), solver::Mode::sticks),
      hangs(system.cords.size()),
      q(system.start_q),
      v(VectorXd::Zero(system.n_v)),
      system_(system),
      rate_(VectorXd::Zero(system.n_v)),
      scale_(VectorXd::Ones(system.n_v)),
      rows_(system.n_v, system.n_rows),
      composite_(system.tree.links.size()),
      external_(system.tree.links.size()),
      acceleration_(system.tree.links.size()),
      transmitted_(system.tree.links.size()),
      mass_(MatrixXd::Zero(system.n_v, system.n_v)),
      drive_input_(system.shafts.size()),
      electric_(system.shafts.size()),
      command_voltage_by_v_(system.shafts.size()),
      contact_jacobian_(system.n_v, 3),
      contact_force_by_v_(3, system.n_v),
      load_by_v_(system.n_v),
      gathered_input_(system.shafts.size()),
      gathered_state_(system.shafts.size()),
      supply_voltage_(system.model().supplies.size()),
      numeric_r_(system.n_v),
      numeric_plus_(system.n_rows),
      numeric_minus_(system.n_rows),
      numeric_A_(system.n_v, system.n_v),
      numeric_plus_by_v_(system.n_rows, system.n_v),
      numeric_minus_by_v_(system.n_rows, system.n_v) {
  for (const CordSystem& cord : system.cords) {
    path.push_back(cord.path.make_geometry());
    chain.push_back(friction::make_solution(cord.path.span_count()));
    std::vector<int> links;
    for (int s = 0; s < cord.path.span_count(); ++s) {
      const auto [from, to] = cord.path.span_bodies(s);
      links.push_back(system.link_of_body[at(from)]);
      links.push_back(system.link_of_body[at(to)]);
    }
    for (const auto& node : cord.path.nodes()) links.push_back(system.link_of_body[at(node.body)]);
    cord_reach_.push_back(reach_of(system.tree, system.n_v, links, cord.drive >= 0 ? system.shafts[at(cord.drive)].v_output : -1));
    span_gradient_.emplace_back(MatrixXd::Zero(cord_reach_.back().size(), cord.path.span_count()));
    tension_by_v_.emplace_back(MatrixXd::Zero(cord_reach_.back().size(), cord.path.span_count()));
    node_limit_.emplace_back(at(cord.path.node_count()));
  }
  for (const HingeJoint& joint : system.hinges) {
    cords_beyond_.emplace_back();
    for (std::size_t c = 0; c < system.cords.size(); ++c)
      if (cord_reach_[c].row[at(joint.v)] >= 0) cords_beyond_.back().push_back(c);
  }
  for (const ContactCandidate& candidate : system.contacts)
    contact_reach_.push_back(reach_of(system.tree, system.n_v, {candidate.link_a, candidate.link_b}));
  for (std::size_t s = 0; s < supply.size(); ++s) supply[s].voltage = system.model().supplies[s].voltage;
  for (const dynamics::Link& link : system.tree.links)
    if (link.kind == JointKind::free) scale_.segment<3>(link.v + 3).setConstant(metre_scale);
  for (const SlideJoint& joint : system.slides) scale_[joint.v] = metre_scale;
}

void Stage::add_gradient(int link, const Force& force, const Reach& reach, Eigen::Ref<VectorXd> gradient) const {
  const auto& links = system_.tree.links;
  for (int i = link; i >= 0; i = links[at(i)].parent) {
    const dynamics::Link& l = links[at(i)];
    if (l.v < 0) continue;
    const int count = l.kind == JointKind::free ? 6 : 1;
    for (int k = l.v; k < l.v + count; ++k) gradient[reach.row[at(k)]] += dot(kinematics.column[at(k)], force);
  }
}

void Stage::evaluate(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands) {
  const auto& tree = system_.tree;
  q = base.q;
  dynamics::advance(tree, a_, v, q);
  for (const Shaft& s : system_.shafts) {
    q[s.q_output] += a_ * v[s.v_output];
    if (s.v_rotor != s.v_output) q[s.q_rotor] += a_ * v[s.v_rotor];
  }
  rate_ = (v - base.v) / a_;
  dynamics::update(tree, system_.scenario.gravity, q, v, kinematics);
  dynamics::mass_matrix(tree, kinematics, composite_, mass_);
  rows_.A = mass_ / a_;
  std::fill(external_.begin(), external_.end(), Force{});
  evaluate_cords(start, base);
  evaluate_contacts(base);
  evaluate_objects();
  evaluate_loads();
  dynamics::inverse_dynamics(tree, kinematics, rate_, external_, acceleration_, transmitted_);
  rows_.r.setZero();
  for (int i = 0; i < tree.n_v; ++i) rows_.r[i] = dot(kinematics.column[at(i)], transmitted_[at(kinematics.owner[at(i)])]);
  evaluate_hinges(start);
  evaluate_slides(start);
  evaluate_shafts(start, base, commands);
}

// All derivatives by forward differences, for the rare stage in which what the tangent leaves out (inertia and contacts in the
// friction limits, turning normals, curved paths) keeps the iteration from contracting. Costs n_v evaluations.
void Stage::numeric_tangent(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands) {
  numeric_r_ = rows_.r;
  for (std::size_t k = 0; k < rows_.row.size(); ++k) {
    numeric_plus_[static_cast<int>(k)] = rows_.row[k].plus;
    numeric_minus_[static_cast<int>(k)] = rows_.row[k].minus;
  }
  for (int i = 0; i < system_.n_v; ++i) {
    const double at_rest = v[i];
    const double nudge = 1e-6 * scale_[i] * std::max(1.0, std::abs(v[i]) / scale_[i]);
    v[i] += nudge;
    evaluate(start, base, commands);
    v[i] = at_rest;
    numeric_A_.col(i) = (rows_.r - numeric_r_) / nudge;
    for (std::size_t k = 0; k < rows_.row.size(); ++k) {
      numeric_plus_by_v_(static_cast<int>(k), i) = (rows_.row[k].plus - numeric_plus_[static_cast<int>(k)]) / nudge;
      numeric_minus_by_v_(static_cast<int>(k), i) = (rows_.row[k].minus - numeric_minus_[static_cast<int>(k)]) / nudge;
    }
  }
  evaluate(start, base, commands);
  rows_.A = numeric_A_;
  rows_.plus_by_v = numeric_plus_by_v_;
  rows_.minus_by_v = numeric_minus_by_v_;
}

Stage::Result Stage::solve(const State& start, const StageBase& base, const std::vector<DriveCommand>& commands,
                           double a, double time, VectorXd& guess) {
  Result result;
  a_ = a;
  time_ = time;
  v = guess;
  set_prescribed();
  rows_.mode = start.mode;
  for (std::size_t c = 0; c < chain.size(); ++c) chain[c].slip = start.cords[c].slip;
  constexpr int most_iterations = 30;
  double previous = std::numeric_limits<double>::infinity();
  for (result.iterations = 1; result.iterations <= most_iterations; ++result.iterations) {
    ++iterations_total;
    evaluate(start, base, commands);
    for (const auto& solution : chain)
      if (!solution.solved) return result;
    if (result.iterations > slow_after) numeric_tangent(start, base, commands);
    if (!rows_.solve(v)) return result;
    result.residual = 0;
    double speed = 0;
    for (int i = 0; i < system_.n_v; ++i) {
      const double size = std::abs(rows_.dv[i]) / scale_[i];
      speed = std::max(speed, std::abs(v[i] + rows_.dv[i]) / scale_[i]);
      if (size > result.residual) {
        result.residual = size;
        result.worst = i;
      }
    }
    if (result.residual <= std::clamp(1e-4 * speed, finest_resolution, resolution_)) {
      for (std::size_t k = 0; k < mode.size(); ++k) {
        mode[k] = rows_.mode[k];
        // A sticking velocity is zero, not merely small: nothing may creep.
        if (mode[k] == solver::Mode::sticks) v[rows_.row[k].index] = 0;
      }
      for (std::size_t i = 0; i < hinge.size(); ++i)
        hinge[i].friction_torque = system_.hinges[i].row >= 0 ? rows_.lambda[system_.hinges[i].row] : 0.0;
      for (std::size_t i = 0; i < slide.size(); ++i)
        slide[i].friction_force = system_.slides[i].row >= 0 ? rows_.lambda[system_.slides[i].row] : 0.0;
      for (std::size_t d = 0; d < shaft.size(); ++d) shaft[d].friction_torque = rows_.lambda[system_.shafts[d].row];
      guess = v;
      result.solved = true;
      return result;
    }
    // Full Newton step, shortened more and more once the iteration cycles between states instead of contracting.
    const double factor = result.iterations > 12 && result.residual > 0.5 * previous ? (result.iterations > 20 ? 0.3 : 0.6) : 1.0;
    previous = result.residual;
    v += factor * rows_.dv;
  }
  return result;
}

void Stage::look(const State& state) {
  // A stage of no length: what is rate-dependent sees a standing mechanism.
  constexpr double instant = 1e-12;
  a_ = instant;
  time_ = state.time;
  v = state.v;
  set_prescribed();
  for (std::size_t c = 0; c < chain.size(); ++c) chain[c].slip = state.cords[c].slip;
  const StageBase base{state.q, state.v, state.cords, state.spring};
  evaluate(state, base, std::vector<DriveCommand>(system_.shafts.size()));
  mode = state.mode;
}

Stage::Memory Stage::make_memory() const {
  Memory memory;
  memory.place.resize(contact.size());
  memory.limit.resize(hinge.size());
  memory.slide_limit.resize(slide.size());
  return memory;
}

void Stage::remember(Memory& memory) const {
  for (std::size_t i = 0; i < contact.size(); ++i) {
    const auto& pose_a = kinematics.pose[at(system_.contacts[i].link_a)];
    const auto& pose_b = kinematics.pose[at(system_.contacts[i].link_b)];
    const auto& closest = contact[i].closest;
    memory.place[i] = {contact[i].near, pose_a.R.transpose() * (closest.on_a - pose_a.p),
                       pose_b.R.transpose() * (closest.on_b - pose_b.p), pose_b.R.transpose() * closest.normal};
  }
  for (std::size_t i = 0; i < hinge.size(); ++i) {
    const int row = system_.hinges[i].row;
    memory.limit[i] = row >= 0 ? rows_.row[at(row)].plus : 0.0;
  }
  for (std::size_t i = 0; i < slide.size(); ++i) {
    const int row = system_.slides[i].row;
    memory.slide_limit[i] = row >= 0 ? rows_.row[at(row)].plus : 0.0;
  }
}

void Stage::store(State& state) const {
  state.time = time_;
  state.q = q;
  state.v = v;
  state.mode = mode;
  for (std::size_t c = 0; c < chain.size(); ++c) {
    state.cords[c].material = chain[c].material;
    state.cords[c].stretch = chain[c].stretch;
    state.cords[c].slip = chain[c].slip;
  }
  for (std::size_t i = 0; i < contact.size(); ++i) state.spring[i] = contact[i].spring;
}

}  // namespace sinewright::simulation
