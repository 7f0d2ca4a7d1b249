#include "simulation/stage.h"

#include <algorithm>

// Hinges and slides of a stage: friction and end stops.

namespace sinewright::simulation {

namespace {

using dynamics::Force;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// What an end stop does: push k δ max(0, 1 + d δ̇) out of the stop, positive towards the upper end.
struct StopPush {
  double push = 0;
  double energy = 0;   // [J]
  double loss = 0;     // [W]
  double tangent = 0;  // −d(push)/dv over a step of length a
};

StopPush stop_push(const std::optional<model::EndStops>& stops, double place, double rate, double a) {
  StopPush result;
  if (!stops) return result;
  const bool low = place < stops->lower;
  const double depth = low ? stops->lower - place : place - stops->upper;
  if (depth <= 0) return result;
  const double into = low ? -rate : rate;
  const double factor = 1 + stops->damping * into;
  const double elastic = stops->stiffness * depth;
  const double push = elastic * std::max(0.0, factor);
  result.push = low ? push : -push;
  result.energy = 0.5 * stops->stiffness * depth * depth;
  result.loss = (push - elastic) * into;
  if (factor > 0) result.tangent = stops->stiffness * (a * factor + depth * stops->damping);
  return result;
}

}  // namespace

void Stage::evaluate_hinges(const State& start) {
  const auto& m = system_.model();
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const HingeJoint& joint = system_.hinges[i];
    const model::Hinge& data = *m.bodies[at(joint.body)].hinge;
    HingeResult& result = hinge[i];
    const double angle = q[system_.tree.links[at(joint.link)].q];
    const double rate = v[joint.v];
    double torque = -data.viscous * rate - data.spring_stiffness * (angle - data.spring_rest);
    rows_.A(joint.v, joint.v) += data.viscous + a_ * data.spring_stiffness;

    const StopPush stop = stop_push(data.stops, angle, rate, a_);
    result.stop_torque = stop.push;
    result.stop_energy = stop.energy;
    result.stop_loss = stop.loss;
    torque += stop.push;
    rows_.A(joint.v, joint.v) += stop.tangent;
    rows_.r[joint.v] -= torque;

    // Reaction that the pin carries, from the forces found in this very iterate.
    const Force& f = transmitted_[at(joint.link)];
    const Vector3d axis = kinematics.column[at(joint.v)].angular;
    const Vector3d moment = f.moment - kinematics.pose[at(joint.link)].p.cross(f.force);
    const auto load = friction::split_hinge_load(axis, f.force, moment);
    result.radial_reaction = load.radial.norm();
    result.axial_reaction = load.axial;
    result.friction_limit = 0;
    if (joint.row < 0) continue;
    const auto limit = joint.friction.limit(axis, load);
    const bool stuck = start.mode[at(joint.row)] == solver::Mode::sticks;
    result.friction_limit = limit.kinetic;
    solver::FrictionRow& row = rows_.row[at(joint.row)];
    row.index = joint.v;
    row.plus = row.minus = stuck ? limit.sticking : limit.kinetic;

    // How the limit follows the tensions: the reaction changes by −(pull directions on the far side) dT. Contacts and
    // inertia are left out of this gradient; the limit itself is exact at convergence.
    auto gradient = rows_.plus_by_v.row(joint.row);
    gradient.setZero();
    if (result.radial_reaction > 1e-9 && data.pin) {
      const Vector3d along = load.radial / result.radial_reaction;
      const double unloaded = stuck ? joint.friction.unloaded().sticking : joint.friction.unloaded().kinetic;
      const double arm = (row.plus - unloaded) / result.radial_reaction;
      for (std::size_t c : cords_beyond_[i]) {
        const Reach& reach = cord_reach_[c];
        for (const geometry::Pull& pull : path[c].pulls) {
          if (!dynamics::hangs_on(system_.tree, system_.link_of_body[at(pull.body)], joint.link)) continue;
          const double share = arm * along.dot(pull.direction);
          for (int k = 0; k < reach.size(); ++k) gradient[reach.v[at(k)]] += share * tension_by_v_[c](k, pull.span);
        }
      }
    }
    if (held_) {
      row.plus = row.minus = held_->limit[i];
      gradient.setZero();
    }
    rows_.minus_by_v.row(joint.row) = gradient;
  }
}

void Stage::evaluate_slides(const State& start) {
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const SlideJoint& joint = system_.slides[i];
    const model::Slide& data = *system_.model().bodies[at(joint.body)].slide;
    SlideResult& result = slide[i];
    const double place = q[system_.tree.links[at(joint.link)].q];
    const double rate = v[joint.v];
    const StopPush stop = stop_push(data.stops, place, rate, a_);
    result.stop_force = stop.push;
    result.stop_energy = stop.energy;
    result.stop_loss = stop.loss;
    rows_.A(joint.v, joint.v) += data.viscous + a_ * data.spring_stiffness + stop.tangent;
    rows_.r[joint.v] -= stop.push - data.viscous * rate - data.spring_stiffness * (place - data.spring_rest);

    // What the slideway carries, from the forces found in this very iterate.
    const Force& f = transmitted_[at(joint.link)];
    const Vector3d axis = kinematics.column[at(joint.v)].linear;
    const Vector3d& origin = kinematics.pose[at(joint.link)].p;
    const auto limit = joint.friction.limit(axis, f.force, f.moment - origin.cross(f.force));
    result.normal_force = limit.normal;
    result.friction_limit = limit.kinetic;
    if (joint.row < 0) continue;
    const bool stuck = start.mode[at(joint.row)] == solver::Mode::sticks;
    solver::FrictionRow& row = rows_.row[at(joint.row)];
    row.index = joint.v;
    row.plus = row.minus = stuck ? limit.sticking : limit.kinetic;

    // How the limit follows the tensions; contacts and inertia are left out of this gradient, as for hinges.
    auto gradient = rows_.plus_by_v.row(joint.row);
    gradient.setZero();
    const auto& pair = joint.friction.coefficients();
    const double coefficient = stuck ? pair.static_coefficient : pair.kinetic_coefficient;
    for (std::size_t c = 0; c < system_.cords.size(); ++c)
      for (const geometry::Pull& pull : path[c].pulls) {
        if (!dynamics::hangs_on(system_.tree, system_.link_of_body[at(pull.body)], joint.link)) continue;
        const double by_tension = limit.normal_by_force.dot(pull.direction) +
                                  limit.normal_by_moment.dot((pull.point - origin).cross(pull.direction));
        const Reach& reach = cord_reach_[c];
        for (int k = 0; k < reach.size(); ++k)
          gradient[reach.v[at(k)]] += coefficient * by_tension * tension_by_v_[c](k, pull.span);
      }
    if (held_) {
      row.plus = row.minus = held_->slide_limit[i];
      gradient.setZero();
    }
    rows_.minus_by_v.row(joint.row) = gradient;
  }
}

}  // namespace sinewright::simulation
