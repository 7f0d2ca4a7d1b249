#include "simulation/stage.h"

#include <algorithm>
#include <cmath>

#include "friction/capstan.h"
#include "friction/gear_cone.h"

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::force_at;
using dynamics::JointKind;
using dynamics::Motion;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Rounding in the forces of a stiff cord, divided by the smallest inertia and the step, reaches about this [rad/s].
constexpr double finest_resolution = 1e-9;
constexpr double metre_scale = 0.05;  // metres against radians
constexpr int slow_after = 8;  // iterations; a normal stage needs two to four

// Monotone piecewise-cubic position along a prescribed path, with its first two derivatives.
struct PathPoint {
  Vector3d position, velocity, acceleration;
};

PathPoint on_path(const model::HeldOnPath& path, double time) {
  PathPoint result{path.displacement.front(), Vector3d::Zero(), Vector3d::Zero()};
  const std::size_t n = path.time.size();
  if (time >= path.time.back()) result.position = path.displacement.back();
  if (time <= path.time.front() || time >= path.time.back()) return result;
  const auto i = static_cast<std::size_t>(std::upper_bound(path.time.begin(), path.time.end(), time) -
                                          path.time.begin()) - 1;
  const double h = path.time[i + 1] - path.time[i];
  const double s = (time - path.time[i]) / h;
  for (int axis = 0; axis < 3; ++axis) {
    const auto secant = [&](std::size_t k) {
      return (path.displacement[k + 1][axis] - path.displacement[k][axis]) / (path.time[k + 1] - path.time[k]);
    };
    // Slopes: harmonic mean of the neighbours where they agree in sign, else zero; zero at both ends (start and stop).
    const auto slope = [&](std::size_t k) {
      if (k == 0 || k + 1 == n) return 0.0;
      const double left = secant(k - 1), right = secant(k);
      return left * right > 0 ? 2 * left * right / (left + right) : 0.0;
    };
    const double y0 = path.displacement[i][axis], y1 = path.displacement[i + 1][axis];
    const double m0 = slope(i) * h, m1 = slope(i + 1) * h;
    const double c2 = 3 * (y1 - y0) - 2 * m0 - m1, c3 = 2 * (y0 - y1) + m0 + m1;
    result.position[axis] = y0 + s * (m0 + s * (c2 + s * c3));
    result.velocity[axis] = (m0 + s * (2 * c2 + 3 * s * c3)) / h;
    result.acceleration[axis] = (2 * c2 + 6 * s * c3) / (h * h);
  }
  return result;
}

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

// Rotation vector that turns `from` into `to`.
Vector3d rotation_between(const Eigen::Matrix3d& from, const Eigen::Matrix3d& to) {
  const Eigen::AngleAxisd turn(Eigen::Matrix3d(to * from.transpose()));
  return turn.angle() * turn.axis();
}

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

void Stage::set_prescribed() {
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) {
    const model::Object& object = system_.scenario.objects[o];
    const auto* held = std::get_if<model::HeldOnPath>(&object.hold);
    if (!held) continue;
    const PathPoint now = on_path(*held, time_);
    kinematics.prescribed[at(system_.link_of_object[o])] = {object.at + now.position, now.velocity, now.acceleration};
  }
}

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

void Stage::evaluate_objects() {
  object_damping_power_ = object_energy_ = 0;
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) {
    const model::Object& object = system_.scenario.objects[o];
    const auto* spring = std::get_if<model::HeldBySpring>(&object.hold);
    if (const auto* string = std::get_if<model::HeldByString>(&object.hold)) evaluate_string(object, *string, system_.link_of_object[o]);
    if (!spring) continue;
    const int link_index = system_.link_of_object[o];
    const dynamics::Link& link = system_.tree.links[at(link_index)];
    const auto& pose = kinematics.pose[at(link_index)];
    const Vector3d away = pose.p - object.at;
    const Vector3d velocity = v.segment<3>(link.v + 3);
    const Vector3d turn = rotation_between(object.rotation, pose.R);
    const Vector3d spin = v.segment<3>(link.v);
    const Vector3d force = -spring->stiffness.cwiseProduct(away + spring->damping_time * velocity);
    const Vector3d moment = -spring->turning_stiffness * (turn + spring->damping_time * spin);
    Force total = force_at(pose.p, force);
    total.moment += moment;
    external_[at(link_index)] += total;
    for (int k = 0; k < 3; ++k) {
      rows_.A(link.v + k, link.v + k) += spring->turning_stiffness * (a_ + spring->damping_time);
      rows_.A(link.v + 3 + k, link.v + 3 + k) += spring->stiffness[k] * (a_ + spring->damping_time);
    }
    object_energy_ += 0.5 * spring->stiffness.dot(away.cwiseAbs2()) + 0.5 * spring->turning_stiffness * turn.squaredNorm();
    object_damping_power_ += spring->damping_time * (spring->stiffness.dot(velocity.cwiseAbs2()) +
                                                     spring->turning_stiffness * spin.squaredNorm());
  }
}

void Stage::evaluate_string(const model::Object& object, const model::HeldByString& string, int link_index) {
  const double length = string.length.value_or((object.at + object.rotation * string.at - string.from).norm());
  const auto& pose = kinematics.pose[at(link_index)];
  const Vector3d point = pose * string.at, way = string.from - point;
  const double distance = way.norm(), longer = distance - length;
  if (longer <= 0) return;
  const Vector3d along = way / distance;
  const double rate = -along.dot(kinematics.velocity[at(link_index)].at(point));
  const double elastic = string.stiffness * longer;
  const double tension = std::max(0.0, elastic + string.stiffness * string.damping_time * rate);
  external_[at(link_index)] += force_at(point, tension * along);
  object_energy_ += 0.5 * elastic * longer;
  object_damping_power_ += (tension - elastic) * rate;
  if (tension == 0) return;
  // −dF/dv: stiff along the string, and across it by the tension, which turns with the string.
  const Eigen::Matrix3d lengthwise = along * along.transpose();
  const Eigen::Matrix3d by_velocity = string.stiffness * (a_ + string.damping_time) * lengthwise +
                                      (a_ * tension / distance) * (Eigen::Matrix3d::Identity() - lengthwise);
  const Vector3d r = point - pose.p;
  Eigen::Matrix<double, 3, 6> motion;  // of the point, by angular velocity and the origin's velocity
  motion << 0, r.z(), -r.y(), 1, 0, 0, -r.z(), 0, r.x(), 0, 1, 0, r.y(), -r.x(), 0, 0, 0, 1;
  const int first = system_.tree.links[at(link_index)].v;
  rows_.A.block<6, 6>(first, first) += motion.transpose() * by_velocity * motion;
}

void Stage::evaluate_loads() {
  load_power_ = 0;
  for (const model::Twist& twist : system_.scenario.twists) {
    const double value = value_at(twist.torque, time_);
    if (value == 0) continue;
    const int link = twist.body_index >= 0 ? system_.link_of_body[at(twist.body_index)]
                                           : system_.link_of_object[at(twist.object_index)];
    const Vector3d axis = twist.follows_body ? Vector3d(kinematics.pose[at(link)].R * twist.axis) : twist.axis;
    external_[at(link)].moment += value * axis;
    load_power_ += value * axis.dot(kinematics.velocity[at(link)].angular);
  }
  for (const model::Load& load : system_.scenario.loads) {
    const double value = value_at(load.force, time_);
    if (value == 0) continue;
    const int link = load.body_index >= 0 ? system_.link_of_body[at(load.body_index)]
                                          : system_.link_of_object[at(load.object_index)];
    const auto& pose = kinematics.pose[at(link)];
    const Vector3d direction = load.follows_body ? Vector3d(pose.R * load.direction) : load.direction;
    const Vector3d point = pose * load.at;
    external_[at(link)] += force_at(point, value * direction);
    load_power_ += value * direction.dot(kinematics.velocity[at(link)].at(point));
  }
}

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

void Stage::evaluate_shafts(const State& start, const StageBase&, const std::vector<DriveCommand>& commands) {
  const auto& m = system_.model();
  supply_voltage_ = start.condition.supply_voltage;
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const Shaft& s = system_.shafts[d];
    const model::Drive& data = m.drives[d];
    const double supply_voltage = supply_voltage_[at(data.supply)];
    const DriveCommand& command = commands[d];
    drive::DriveInput& input = drive_input_[d];
    input.rotor_speed = data.gearhead.ratio * v[s.v_rotor];
    input.torque_constant = data.motor.torque_constant;
    input.resistance = drive::winding_resistance(data.motor, start.temperature[d].winding);
    input.current_limit = command.current_limit;
    input.commanded_voltage = 0;
    command_voltage_by_v_[d] = 0;
    switch (command.kind) {
      case DriveCommand::Kind::off:
        input.mode = command.leads == model::Leads::open ? drive::DriverMode::open : drive::DriverMode::shorted;
        break;
      case DriveCommand::Kind::voltage:
        input.mode = drive::DriverMode::voltage;
        input.commanded_voltage = voltage_at(command, time_);
        break;
      case DriveCommand::Kind::angle: {
        input.mode = drive::DriverMode::voltage;
        const double u = command.angle.gain * (command.angle.angle - q[s.q_rotor]) - command.angle.damping * v[s.v_rotor];
        input.commanded_voltage = std::clamp(u, -supply_voltage, supply_voltage);
        if (input.commanded_voltage == u) command_voltage_by_v_[d] = -(command.angle.gain * a_ + command.angle.damping);
        break;
      }
    }
    if (start.condition.winding_open[d]) {
      input.mode = drive::DriverMode::open;
      command_voltage_by_v_[d] = 0;
    }
  }
  // Drives on one supply are solved together; a drive stands in for its supply when it is the first that names it.
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const int shared = m.drives[d].supply;
    bool first = true;
    for (std::size_t e = 0; e < d; ++e) first = first && m.drives[e].supply != shared;
    if (!first) continue;
    const model::Supply& source = m.supplies[at(shared)];
    std::size_t count = 0;
    for (std::size_t e = d; e < system_.shafts.size(); ++e)
      if (m.drives[e].supply == shared) gathered_input_[count++] = drive_input_[e];
    drive::solve_supply({gathered_input_.data(), count}, supply_voltage_[at(shared)], source.resistance,
                        {gathered_state_.data(), count}, source.current_limit);
    SupplyResult& given = supply[at(shared)];
    given = {gathered_state_[0].supply_voltage, 0};
    count = 0;
    for (std::size_t e = d; e < system_.shafts.size(); ++e) {
      if (m.drives[e].supply != shared) continue;
      electric_[e] = gathered_state_[count++];
      given.current += electric_[e].supply_current;
    }
    // A drive that speeds up lets the voltage of the others rise.
    for (std::size_t e = d; e < system_.shafts.size(); ++e)
      for (std::size_t f = d; f < system_.shafts.size(); ++f) {
        if (e == f || m.drives[e].supply != shared || m.drives[f].supply != shared) continue;
        rows_.A(system_.shafts[e].v_rotor, system_.shafts[f].v_rotor) -=
            m.drives[e].gearhead.ratio * m.drives[e].motor.torque_constant * electric_[e].current_by_voltage *
            electric_[f].voltage_by_speed * m.drives[f].gearhead.ratio;
      }
  }

  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const Shaft& s = system_.shafts[d];
    const model::Drive& data = m.drives[d];
    const double n = data.gearhead.ratio;
    const double k = data.motor.torque_constant;
    ShaftResult& result = shaft[d];
    result.electric = electric_[d];
    result.motor_torque = n * k * electric_[d].current;
    double torque_by_v = n * k * electric_[d].current_by_speed * n;
    if (command_voltage_by_v_[d] != 0 && !electric_[d].limited)
      torque_by_v += n * k * command_voltage_by_v_[d] / drive_input_[d].resistance;
    const double viscous = n * n * data.motor.viscous_drag;
    const double rotor_inertia = n * n * data.motor.rotor_inertia;

    load_by_v_.setZero();
    for (std::size_t c = 0; c < system_.cords.size(); ++c) {
      const CordSystem& cord = system_.cords[c];
      if (cord.drive != static_cast<int>(d)) continue;
      const double angle = q[s.q_output];
      for (int i = 0; i < cord_reach_[c].size(); ++i)
        load_by_v_[cord_reach_[c].v[at(i)]] += pulley_of(start, c).radius(angle) * tension_by_v_[c](i, 0);
      load_by_v_[s.v_output] += a_ * chain[c].tension[0] * pulley_of(start, c).radius_slope(angle);
    }
    const double pull = result.load_torque;  // of the cord on the pulley
    result.stored = 0;
    if (s.v_rotor == s.v_output) {
      rows_.r[s.v_output] += (rotor_inertia + data.gearhead.output_inertia) * rate_[s.v_output] + pull;
      rows_.A(s.v_output, s.v_output) += (rotor_inertia + data.gearhead.output_inertia) / a_;
    } else {
      // Gear torsion with play: τ = k (twist ∓ half the backlash) outside the play, nothing inside.
      const double twist = q[s.q_rotor] - q[s.q_output];
      const double half = data.gearhead.backlash / 2;
      const double bend = twist > half ? twist - half : (twist < -half ? twist + half : 0.0);
      const double torque = data.gearhead.torsional_stiffness * bend;
      const double stiffness = bend != 0 ? a_ * data.gearhead.torsional_stiffness : 0.0;
      result.load_torque = torque;
      result.stored = 0.5 * torque * bend;
      rows_.r[s.v_output] += data.gearhead.output_inertia * rate_[s.v_output] + pull - torque;
      rows_.r[s.v_rotor] += rotor_inertia * rate_[s.v_rotor] + torque;
      rows_.A(s.v_output, s.v_output) += data.gearhead.output_inertia / a_ + stiffness;
      rows_.A(s.v_output, s.v_rotor) -= stiffness;
      rows_.A(s.v_rotor, s.v_rotor) += rotor_inertia / a_ + stiffness;
      rows_.A(s.v_rotor, s.v_output) -= stiffness;
      load_by_v_.setZero();
      load_by_v_[s.v_rotor] = stiffness;
      load_by_v_[s.v_output] = -stiffness;
    }
    rows_.r[s.v_rotor] += viscous * v[s.v_rotor] - result.motor_torque;
    rows_.A(s.v_rotor, s.v_rotor) += viscous - torque_by_v;

    const auto cone = friction::gear_friction(data.gearhead, result.load_torque);
    const bool stuck = start.mode[at(s.row)] == solver::Mode::sticks;
    const double brushes = n * (stuck ? data.motor.static_drag : data.motor.kinetic_drag);
    solver::FrictionRow& row = rows_.row[at(s.row)];
    row.index = s.v_rotor;
    row.plus = cone.winding + brushes;
    row.minus = cone.unwinding + brushes;
    rows_.plus_by_v.row(s.row) = cone.winding_by_load * load_by_v_.transpose();
    rows_.minus_by_v.row(s.row) = cone.unwinding_by_load * load_by_v_.transpose();
    const double limit = v[s.v_rotor] >= 0 ? cone.winding : cone.unwinding;
    const double whole = limit + brushes;
    result.cone_share = whole > 0 ? (limit - data.gearhead.drag) / whole : 0;
    result.gear_drag_share = whole > 0 ? data.gearhead.drag / whole : 0;
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

Force Stage::net_force(int link) const {
  const model::MassProperties& mass = system_.tree.links[at(link)].mass;
  const Vector3d center = kinematics.pose[at(link)] * mass.center;
  Force net;
  net.force = external_[at(link)].force + mass.mass * system_.scenario.gravity;
  net.moment = external_[at(link)].moment - center.cross(external_[at(link)].force);
  return net;
}

double Stage::stored_energy() const {
  const auto& m = system_.model();
  double energy = dynamics::kinetic_energy(system_.tree, kinematics) +
                  dynamics::potential_energy(system_.tree, system_.scenario.gravity, kinematics) + object_energy_;
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const model::Hinge& data = *m.bodies[at(system_.hinges[i].body)].hinge;
    const double bent = q[system_.tree.links[at(system_.hinges[i].link)].q] - data.spring_rest;
    energy += 0.5 * data.spring_stiffness * bent * bent + hinge[i].stop_energy;
  }
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const model::Slide& data = *m.bodies[at(system_.slides[i].body)].slide;
    const double drawn = q[system_.tree.links[at(system_.slides[i].link)].q] - data.spring_rest;
    energy += 0.5 * data.spring_stiffness * drawn * drawn + slide[i].stop_energy;
  }
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const model::Drive& data = m.drives[d];
    const Shaft& s = system_.shafts[d];
    const double rotor = data.gearhead.ratio * v[s.v_rotor];
    energy += 0.5 * data.motor.rotor_inertia * rotor * rotor +
              0.5 * data.gearhead.output_inertia * v[s.v_output] * v[s.v_output] + shaft[d].stored;
  }
  for (std::size_t c = 0; c < chain.size(); ++c)
    for (std::size_t s = 0; s < chain[c].tension.size(); ++s)
      energy += chain[c].material[s] * system_.cords[c].law.energy(chain[c].stretch[s]);
  for (const ContactResult& result : contact) energy += result.elastic_energy;
  return energy;
}

double Stage::cord_torque(std::size_t cord, int velocity) const {
  const int row = cord_reach_[cord].row[at(velocity)];
  if (row < 0) return 0;
  double torque = 0;
  for (std::size_t s = 0; s < chain[cord].tension.size(); ++s)
    torque -= chain[cord].tension[s] * span_gradient_[cord](row, static_cast<int>(s));
  return torque;
}

void Stage::powers(const StageBase& base, Ledger& p) const {
  const auto& m = system_.model();
  p.setZero();
  const auto account = [&](Account which) -> double& { return p[static_cast<int>(which)]; };
  account(Account::loads) = load_power_;
  account(Account::object_damping) = object_damping_power_;

  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const model::Drive& data = m.drives[d];
    const Shaft& s = system_.shafts[d];
    const ShaftResult& r = shaft[d];
    account(Account::winding) += drive_input_[d].resistance * r.electric.current * r.electric.current + r.electric.driver_loss;
    const double speed = v[s.v_rotor];
    const double rubbing = -r.friction_torque * speed;
    account(Account::gear_cone) += r.cone_share * rubbing;
    account(Account::gear_drag) += r.gear_drag_share * rubbing;
    account(Account::motor_drag) += (1 - r.cone_share - r.gear_drag_share) * rubbing +
                                    data.gearhead.ratio * data.gearhead.ratio * data.motor.viscous_drag * speed * speed;
  }
  for (std::size_t i = 0; i < supply.size(); ++i) {
    p[system_.charge_entry + static_cast<int>(i)] = supply[i].current;
    account(Account::supply) += supply_voltage_[i] * supply[i].current;
    // In its resistance, and beyond its limit in whatever keeps that.
    account(Account::supply_resistance) += (supply_voltage_[i] - supply[i].voltage) * supply[i].current;
  }

  for (std::size_t c = 0; c < chain.size(); ++c) {
    const friction::ChainSolution& s = chain[c];
    const CordSystem& cord = system_.cords[c];
    const double viscous = cord.damping_time > 0 ? cord.law.slope(1) * cord.damping_time / a_ : 0;
    // What material carries past a point: T λ − w(λ) per unit of unstretched length.
    const auto carried = [&](std::size_t i) { return s.tension[i] * s.stretch[i] - cord.law.energy(s.stretch[i]); };
    for (std::size_t k = 0; k < s.passed.size(); ++k) {
      const double loss = s.passed[k] * (carried(k) - carried(k + 1)) / a_;
      p[system_.bend_entry[c] + static_cast<int>(k)] = loss;
      account(Account::cord_bends) += loss;
    }
    account(Account::wound_cord) += s.wound * cord.law.energy(s.stretch[0]) / a_;
    if (viscous > 0) {
      for (std::size_t i = 0; i < s.tension.size(); ++i) {
        // A cord that shortens fast can be stretched and yet carry nothing: its viscous part eats up the elastic one.
        if (s.stretch[i] <= 1) continue;
        const double material = s.material[i] + (i == 0 ? s.wound : 0.0);
        account(Account::cord_hysteresis) += (s.tension[i] - cord.law.tension(s.stretch[i])) * material *
                                             (s.stretch[i] - base.cords[c].stretch[i]) / a_;
      }
    }
  }
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const double rate = v[system_.hinges[i].v];
    const double rubbing = -hinge[i].friction_torque * rate;
    p[system_.hinge_entry + static_cast<int>(i)] = rubbing;
    account(Account::hinge_friction) += rubbing;
    account(Account::hinge_viscous) += m.bodies[at(system_.hinges[i].body)].hinge->viscous * rate * rate;
    account(Account::end_stops) += hinge[i].stop_loss;
  }
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const double rate = v[system_.slides[i].v];
    const double rubbing = -slide[i].friction_force * rate;
    p[system_.slide_entry + static_cast<int>(i)] = rubbing;
    account(Account::slide_friction) += rubbing;
    account(Account::slide_viscous) += m.bodies[at(system_.slides[i].body)].slide->viscous * rate * rate;
    account(Account::end_stops) += slide[i].stop_loss;
  }
  for (std::size_t i = 0; i < contact.size(); ++i) {
    const ContactResult& r = contact[i];
    if (r.normal_force <= 0 && r.elastic_force <= 0) continue;
    const double closing = -r.closest.normal.dot(r.velocity);
    account(Account::contact_damping) += (r.normal_force - r.elastic_force) * closing;
    const double spring_rate = system_.contacts[i].law.tangential_stiffness *
                               0.5 * (r.spring.squaredNorm() - base.spring[i].squaredNorm()) / a_;
    account(Account::contact_friction) -= r.tangent_force.dot(r.velocity) + spring_rate;
    if (system_.tree.links[at(system_.contacts[i].link_a)].kind == JointKind::prescribed)
      account(Account::prescribed_motion) -= r.force.dot(kinematics.velocity[at(system_.contacts[i].link_a)].at(r.point));
    if (system_.tree.links[at(system_.contacts[i].link_b)].kind == JointKind::prescribed) {
      const Vector3d object_velocity = kinematics.velocity[at(system_.contacts[i].link_b)].at(r.point);
      account(Account::prescribed_motion) += r.force.dot(object_velocity);  // the contact pushes the object with −force
    }
  }
}

}  // namespace sinewright::simulation
