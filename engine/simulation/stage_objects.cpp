#include "simulation/stage.h"

#include <algorithm>

// What holds objects in a stage, and loads.

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::force_at;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

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

// Rotation vector that turns `from` into `to`.
Vector3d rotation_between(const Eigen::Matrix3d& from, const Eigen::Matrix3d& to) {
  const Eigen::AngleAxisd turn(Eigen::Matrix3d(to * from.transpose()));
  return turn.angle() * turn.axis();
}

}  // namespace

void Stage::set_prescribed() {
  for (std::size_t o = 0; o < system_.scenario.objects.size(); ++o) {
    const model::Object& object = system_.scenario.objects[o];
    const auto* held = std::get_if<model::HeldOnPath>(&object.hold);
    if (!held) continue;
    const PathPoint now = on_path(*held, time_);
    kinematics.prescribed[at(system_.link_of_object[o])] = {object.at + now.position, now.velocity, now.acceleration};
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

}  // namespace sinewright::simulation
