#pragma once

#include <Eigen/Geometry>

namespace sinewright::dynamics {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// Spatial vectors are written at the world origin in world axes: a motion is (ω; velocity of the body point at the
/// origin), a force is (moment about the origin; force). All bodies then share one frame and nothing needs transforming.
/// Source of the formulation: R. Featherstone, Rigid Body Dynamics Algorithms, Springer 2008, ch. 2 (from memory).
struct Motion {
  Vector3d angular = Vector3d::Zero();
  Vector3d linear = Vector3d::Zero();

  Motion& operator+=(const Motion& other) {
    angular += other.angular;
    linear += other.linear;
    return *this;
  }
  [[nodiscard]] Vector3d at(const Vector3d& point) const { return linear + angular.cross(point); }
};

struct Force {
  Vector3d moment = Vector3d::Zero();
  Vector3d force = Vector3d::Zero();

  Force& operator+=(const Force& other) {
    moment += other.moment;
    force += other.force;
    return *this;
  }
  Force& operator-=(const Force& other) {
    moment -= other.moment;
    force -= other.force;
    return *this;
  }
};

inline Motion operator*(const Motion& m, double factor) { return {m.angular * factor, m.linear * factor}; }
inline Motion operator+(Motion a, const Motion& b) { return a += b; }
inline double dot(const Motion& m, const Force& f) { return m.angular.dot(f.moment) + m.linear.dot(f.force); }

/// Rate of change of a motion vector carried along by `v`: v ×ₘ m.
inline Motion cross(const Motion& v, const Motion& m) {
  return {v.angular.cross(m.angular), v.angular.cross(m.linear) + v.linear.cross(m.angular)};
}
/// Rate of change of a force vector carried along by `v`: v ×_f f.
inline Force cross(const Motion& v, const Force& f) {
  return {v.angular.cross(f.moment) + v.linear.cross(f.force), v.angular.cross(f.force)};
}
/// A force `f` [N] at a world point [m].
inline Force force_at(const Vector3d& point, const Vector3d& f) { return {point.cross(f), f}; }

/// Inertia of a rigid body (or of several moving as one) at the world origin.
struct Inertia {
  double mass = 0;                          ///< [kg]
  Vector3d first = Vector3d::Zero();        ///< m c [kg m]
  Matrix3d second = Matrix3d::Zero();       ///< about the world origin [kg m²]

  Inertia& operator+=(const Inertia& other) {
    mass += other.mass;
    first += other.first;
    second += other.second;
    return *this;
  }
};
inline Force operator*(const Inertia& inertia, const Motion& m) {
  return {inertia.second * m.angular + inertia.first.cross(m.linear),
          inertia.mass * m.linear - inertia.first.cross(m.angular)};
}

}  // namespace sinewright::dynamics
