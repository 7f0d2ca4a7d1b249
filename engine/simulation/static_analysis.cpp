#include "simulation/static_analysis.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>

#include "drive/motor.h"
#include "drive/motor_curve.h"
#include "friction/capstan.h"
#include "friction/gear_cone.h"

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

dynamics::Kinematics placed(const System& system, const VectorXd& q) {
  dynamics::Kinematics kinematics(system.tree);
  for (std::size_t o = 0; o < system.scenario.objects.size(); ++o)
    kinematics.prescribed[at(system.link_of_object[o])].position = system.scenario.objects[o].at;
  dynamics::update(system.tree, Vector3d::Zero(), q, VectorXd::Zero(system.n_v), kinematics);
  return kinematics;
}

geometry::PathGeometry path_of(const System& system, const dynamics::Kinematics& kinematics, std::size_t cord) {
  geometry::PathGeometry geometry = system.cords[cord].path.make_geometry();
  const auto pose = [&](int body) {
    const auto& p = kinematics.pose[at(system.link_of_body[at(body)])];
    return geometry::BodyPose{&p.R, &p.p};
  };
  system.cords[cord].path.evaluate(pose, geometry);
  return geometry;
}

// ln of the sliding tension ratio of each bend; a load-dependent coefficient is taken at its reference load.
std::vector<double> exponents(const System& system, std::size_t cord, const geometry::PathGeometry& geometry) {
  const model::ChannelFriction& channel = system.model().cords[at(system.cords[cord].cord)].channel;
  std::vector<double> list;
  for (std::size_t k = 0; k < geometry.turning_angle.size(); ++k)
    list.push_back(friction::bend_cone(channel, system.cords[cord].path.nodes()[k].friction_factor,
                                       geometry.turning_angle[k], std::numeric_limits<double>::infinity())
                       .kinetic);
  return list;
}

// What one pull has of ∂L_span/∂q of a hinge or slide.
template <class Joint>
double span_gradient(const System& system, const dynamics::Kinematics& kinematics, const geometry::Pull& pull, const Joint& joint) {
  if (!dynamics::hangs_on(system.tree, system.link_of_body[at(pull.body)], joint.link)) return 0;
  return dot(kinematics.column[at(joint.v)], dynamics::force_at(pull.point, pull.direction));
}

// Tension of each span over that where the cord is pulled: at its first span, or at the first that meets a sliding body.
std::vector<double> pulled_ratios(const System& system, std::size_t cord, std::vector<double> exponent) {
  const geometry::CordPath& path = system.cords[cord].path;
  const auto slides = [&](int body) { return rides_on_slide(system.model(), body); };
  std::size_t source = 0;
  if (system.cords[cord].drive < 0)
    for (int s = path.span_count(); s-- > 0;)
      if (slides(path.span_bodies(s).first) || slides(path.span_bodies(s).second)) source = at(s);
  // Which way a cord creeps round a floating pulley no posture says: its two sides are taken to be equal.
  for (std::size_t k = 0; k < exponent.size(); ++k)
    if (slides(path.nodes()[k].body)) exponent[k] = 0;
  std::vector<double> ratio(exponent.size() + 1, 1.0);
  for (std::size_t s = source; s < exponent.size(); ++s) ratio[s + 1] = ratio[s] * std::exp(-exponent[s]);
  for (std::size_t s = source; s-- > 0;) ratio[s] = ratio[s + 1] * std::exp(-exponent[s]);
  return ratio;
}

}  // namespace

VectorXd posture(const System& system, const std::vector<double>& angles) {
  VectorXd q = system.start_q;
  for (std::size_t i = 0; i < system.hinges.size(); ++i)
    q[system.tree.links[at(system.hinges[i].link)].q] = angles[i];
  return q;
}

CordPosture cord_posture(const System& system, const VectorXd& q, std::size_t cord) {
  const dynamics::Kinematics kinematics = placed(system, q);
  const geometry::PathGeometry geometry = path_of(system, kinematics, cord);
  CordPosture result;
  for (double length : geometry.length) result.path_length += length;
  result.span_length = geometry.length;
  result.turning_angle = geometry.turning_angle;
  result.ratio = pulled_ratios(system, cord, exponents(system, cord, geometry));
  result.arm = VectorXd::Zero(static_cast<int>(system.hinges.size()));
  result.torque = result.arm;
  for (std::size_t i = 0; i < system.hinges.size(); ++i)
    for (const geometry::Pull& pull : geometry.pulls) {
      const double gradient = span_gradient(system, kinematics, pull, system.hinges[i]);
      result.arm[static_cast<int>(i)] -= gradient;
      result.torque[static_cast<int>(i)] -= result.ratio[at(pull.span)] * gradient;
    }
  result.draw = VectorXd::Zero(static_cast<int>(system.slides.size()));
  for (std::size_t i = 0; i < system.slides.size(); ++i)
    for (const geometry::Pull& pull : geometry.pulls)
      result.draw[static_cast<int>(i)] -= span_gradient(system, kinematics, pull, system.slides[i]);
  for (double angle : geometry.turning_angle) result.guide_touched.push_back(angle > 0);
  return result;
}

OpeningPosture opening_posture(const System& system, const VectorXd& q) {
  const auto n = static_cast<int>(system.hinges.size());
  const dynamics::Kinematics kinematics = placed(system, q);
  const State start = start_state(system);
  OpeningPosture result{VectorXd::Zero(n), VectorXd::Zero(n), VectorXd::Zero(n), std::vector<bool>(at(n)), {}};
  std::vector<Vector3d> force(system.hinges.size(), Vector3d::Zero()), moment(system.hinges.size(), Vector3d::Zero());
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const CordSystem& cord = system.cords[c];
    result.tension.push_back(0);
    if (!returns(system, c)) continue;
    const geometry::PathGeometry geometry = path_of(system, kinematics, c);
    double length = 0, material = 0;
    for (double l : geometry.length) length += l;
    for (double l : start.cords[c].material) material += l;
    const double tension = result.tension.back() = cord.law.tension(length / material);
    const std::vector<double> exponent = exponents(system, c, geometry);
    for (const geometry::Pull& pull : geometry.pulls) {
      double before = 0, after = 0;
      for (std::size_t k = 0; k < exponent.size(); ++k) (static_cast<int>(k) < pull.span ? before : after) += exponent[k];
      const double least = tension * std::exp(-std::min(before, after));
      for (std::size_t i = 0; i < system.hinges.size(); ++i) {
        const HingeJoint& joint = system.hinges[i];
        const double gradient = span_gradient(system, kinematics, pull, joint);
        result.torque[static_cast<int>(i)] += tension * gradient;
        result.least_torque[static_cast<int>(i)] += least * gradient;
        if (gradient != 0) result.returned[i] = true;
        if (!dynamics::hangs_on(system.tree, system.link_of_body[at(pull.body)], joint.link)) continue;
        const Vector3d f = tension * pull.direction;  // the joint holds against the pull
        force[i] += f;
        moment[i] += (pull.point - kinematics.pose[at(joint.link)].p).cross(f);
      }
    }
  }
  for (std::size_t i = 0; i < system.hinges.size(); ++i) {
    const HingeJoint& joint = system.hinges[i];
    const Vector3d axis = kinematics.column[at(joint.v)].angular;
    result.friction[static_cast<int>(i)] =
        joint.friction.limit(axis, friction::split_hinge_load(axis, force[i], moment[i])).sticking;
  }
  return result;
}

std::optional<std::vector<double>> shared_tensions(const System& system, const VectorXd& q, const std::vector<double>& driven) {
  const std::size_t n_cords = system.cords.size();
  std::vector<double> tension(n_cords, 0.0);
  std::vector<std::size_t> shared;
  for (std::size_t c = 0; c < n_cords; ++c) {
    if (const int drive = system.cords[c].drive; drive >= 0) {
      tension[c] = driven[at(drive)];
    } else if (!returns(system, c)) {
      shared.push_back(c);
    }
  }
  std::vector<std::size_t> riding;
  for (std::size_t i = 0; i < system.hinges.size(); ++i)
    if (rides_on_slide(system.model(), system.hinges[i].body)) riding.push_back(i);
  const std::size_t n_slides = system.slides.size(), n = n_slides + riding.size();
  if (n == 0) return tension;
  if (n != shared.size()) return std::nullopt;

  MatrixXd pull(static_cast<int>(n), static_cast<int>(n));
  VectorXd rest = VectorXd::Zero(static_cast<int>(n));
  const auto column = [&](std::size_t cord) {
    const CordPosture p = cord_posture(system, q, cord);
    VectorXd along(static_cast<int>(n));
    along.head(static_cast<int>(n_slides)) = p.draw;
    for (std::size_t i = 0; i < riding.size(); ++i) along[static_cast<int>(n_slides + i)] = p.arm[static_cast<int>(riding[i])];
    return along;
  };
  for (std::size_t k = 0; k < n; ++k) pull.col(static_cast<int>(k)) = column(shared[k]);
  for (std::size_t c = 0; c < n_cords; ++c)
    if (tension[c] > 0) rest += tension[c] * column(c);
  for (std::size_t i = 0; i < n_slides; ++i) {
    const model::Slide& slide = *system.model().bodies[at(system.slides[i].body)].slide;
    rest[static_cast<int>(i)] -= slide.spring_stiffness * (q[system.tree.links[at(system.slides[i].link)].q] - slide.spring_rest);
  }
  const Eigen::FullPivLU<MatrixXd> factors(pull);
  if (!factors.isInvertible()) return std::nullopt;
  const VectorXd found = factors.solve(-rest);
  for (std::size_t k = 0; k < n; ++k) {
    if (found[static_cast<int>(k)] < 0) return std::nullopt;
    tension[shared[k]] = found[static_cast<int>(k)];
  }
  return tension;
}

DriveStatics drive_statics(const System& system, std::size_t drive) {
  const model::Drive& data = system.model().drives[drive];
  const model::Supply& supply = system.model().supplies[at(data.supply)];
  const double resistance = drive::winding_resistance(data.motor, system.scenario.ambient) + supply.resistance;
  const drive::MotorCurve curve = drive::motor_curve(data.motor, supply.voltage, resistance);
  DriveStatics s;
  s.stall_current = supply.voltage / resistance;
  const drive::DriveInput alone{drive::DriverMode::voltage, supply.voltage,       0, resistance - supply.resistance,
                                data.motor.torque_constant,  data.current_limit};
  s.driven_current = drive::solve_drive(alone, supply.voltage, supply.resistance, supply.current_limit).current;
  const double rotor = std::max(0.0, data.motor.torque_constant * s.driven_current - data.motor.kinetic_drag);
  s.stall_torque = friction::forward_output_torque(data.gearhead, rotor);
  // At no load the gear's constant drag, seen at the rotor, slows the motor as its own drag does.
  s.no_load_speed = std::max(0.0, curve.no_load_speed - curve.speed_slope * data.gearhead.drag / data.gearhead.ratio) /
                    data.gearhead.ratio;
  s.back_drive_torque = friction::back_drive_torque(data.gearhead, data.motor.static_drag);
  double radius = data.pulley.radius;
  for (const CordSystem& cord : system.cords)
    if (cord.drive == static_cast<int>(drive)) radius = cord.pulley->radius(0);
  s.stall_tension = s.stall_torque / radius;
  s.back_drive_tension = s.back_drive_torque / radius;
  s.closing_speed = s.no_load_speed * radius;
  return s;
}

std::vector<GripEstimate> grip_estimate(const System& system, const VectorXd& q, const VectorXd& torque) {
  const dynamics::Kinematics kinematics = placed(system, q);
  const model::Model& m = system.model();
  std::vector<GripEstimate> fingers;
  for (std::size_t base = 0; base < system.hinges.size(); ++base) {
    const int parent = m.bodies[at(system.hinges[base].body)].hinge->parent;
    if (hinge_of_body(system, parent) >= 0 || rides_on_slide(m, system.hinges[base].body)) continue;
    GripEstimate finger;
    std::vector<Vector3d> point, normal;
    // A body without any shape touches nothing if others of the finger have shapes: a saddle between two pins.
    bool shaped = false;
    for (int i = static_cast<int>(base); i >= 0;) {
      shaped = shaped || !m.bodies[at(system.hinges[at(i)].body)].shapes.empty();
      int next = -1;
      for (std::size_t j = 0; j < system.hinges.size() && next < 0; ++j)
        if (m.bodies[at(system.hinges[j].body)].hinge->parent == system.hinges[at(i)].body) next = static_cast<int>(j);
      i = next;
    }
    for (int i = static_cast<int>(base); i >= 0;) {
      const int body = system.hinges[at(i)].body;
      int next = -1;
      for (std::size_t j = 0; j < system.hinges.size() && next < 0; ++j)
        if (m.bodies[at(system.hinges[j].body)].hinge->parent == body) next = static_cast<int>(j);
      if (shaped && m.bodies[at(body)].shapes.empty()) {
        i = next;
        continue;
      }
      // Middle of the first contact shape, else half-way to the next pin, else the centre of mass.
      Vector3d middle = system.tree.links[at(system.hinges[at(i)].link)].mass.center;
      if (next >= 0) middle = 0.5 * m.bodies[at(system.hinges[at(next)].body)].hinge->at;
      if (!m.bodies[at(body)].shapes.empty()) {
        const model::Shape& shape = m.bodies[at(body)].shapes.front().shape;
        if (const auto* capsule = std::get_if<model::Capsule>(&shape)) middle = 0.5 * (capsule->from + capsule->to);
        if (const auto* sphere = std::get_if<model::Sphere>(&shape)) middle = sphere->center;
        if (const auto* box = std::get_if<model::Box>(&shape)) middle = box->center;
        if (const auto* cylinder = std::get_if<model::Cylinder>(&shape)) middle = cylinder->center;
      }
      const auto& pose = kinematics.pose[at(system.hinges[at(i)].link)];
      finger.hinge.push_back(i);
      point.push_back(pose * middle);
      normal.push_back(pose.R * Vector3d::UnitY());  // the object pushes the palm side towards the back
      i = next;
    }
    const auto n = static_cast<int>(finger.hinge.size());
    MatrixXd jacobian = MatrixXd::Zero(n, n);  // speed of contact i into the object for a unit rate of hinge j
    finger.torque.resize(n);
    finger.distance.resize(n);
    for (int i = 0; i < n; ++i) {
      finger.torque[i] = torque[finger.hinge[at(i)]];
      finger.distance[i] = (point[at(i)] - kinematics.pose[at(system.hinges[at(finger.hinge[at(i)])].link)].p).norm();
      for (int j = 0; j <= i; ++j)
        jacobian(i, j) = -normal[at(i)].dot(kinematics.column[at(system.hinges[at(finger.hinge[at(j)])].v)].at(point[at(i)]));
    }
    finger.force = jacobian.transpose().partialPivLu().solve(finger.torque);
    fingers.push_back(std::move(finger));
  }
  return fingers;
}

}  // namespace sinewright::simulation
