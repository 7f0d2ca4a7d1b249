#include "geometry/mass_properties.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <type_traits>
#include <variant>

#include <fmt/format.h>

#include "geometry/convex_hull.h"
#include "geometry/mesh_volume.h"
#include "quantity/invalid_input.h"

namespace sinewright::geometry {

namespace {

using model::MassProperties;
using model::Matrix3d;
using model::Vector3d;
using std::numbers::pi;

void need_positive(double value, const char* what, const char* unit) {
  if (!(value > 0) || !std::isfinite(value)) {
    throw InvalidInput(fmt::format("solid: {} = {} {} is not allowed\n  needed: {} > 0 {} and finite", what,
                                   value, unit, what, unit));
  }
}

void need_finite(const Vector3d& p, const char* what) {
  if (!p.allFinite()) {
    throw InvalidInput(fmt::format("solid: {} = ({}, {}, {}) m is not finite", what, p.x(), p.y(), p.z()));
  }
}

// Inertia of a body of revolution about the unit vector `axis`.
Matrix3d of_revolution(const Vector3d& axis, double about, double across) {
  return across * Matrix3d::Identity() + (about - across) * axis * axis.transpose();
}

// From second moments about the centre, ∫ρ x xᵀ dV.
Matrix3d inertia_of_moments(const Matrix3d& second) {
  return second.trace() * Matrix3d::Identity() - second;
}

MassProperties fill(const model::Sphere& s, double density) {
  need_finite(s.center, "sphere center");
  need_positive(s.radius, "sphere radius", "m");
  const double mass = density * 4 / 3 * pi * s.radius * s.radius * s.radius;
  return {mass, s.center, 0.4 * mass * s.radius * s.radius * Matrix3d::Identity()};
}

MassProperties fill(const model::Capsule& s, double density) {
  need_finite(s.from, "capsule from");
  need_finite(s.to, "capsule to");
  need_positive(s.radius, "capsule radius", "m");
  const double r = s.radius;
  const double length = (s.to - s.from).norm();
  const Vector3d axis = length > 0 ? Vector3d((s.to - s.from) / length) : Vector3d::UnitX();
  const double bar = density * pi * r * r * length;
  const double ends = density * 4 / 3 * pi * r * r * r;  // both half spheres
  const double about = bar * r * r / 2 + ends * 0.4 * r * r;
  // A half sphere's centre lies 3r/8 beyond the end of the bar.
  const double across = bar * (r * r / 4 + length * length / 12) +
                        ends * (0.4 * r * r + 3 * r * length / 8 + length * length / 4);
  return {bar + ends, (s.from + s.to) / 2, of_revolution(axis, about, across)};
}

MassProperties fill(const model::Cylinder& s, double density) {
  need_finite(s.center, "cylinder center");
  need_positive(s.radius, "cylinder radius", "m");
  need_positive(s.length, "cylinder length", "m");
  if (!(std::abs(s.axis.norm() - 1) < 1e-9)) {
    throw InvalidInput(
        fmt::format("solid: cylinder axis has length {}\n  needed: a unit vector", s.axis.norm()));
  }
  const double mass = density * pi * s.radius * s.radius * s.length;
  const double about = mass * s.radius * s.radius / 2;
  const double across = mass * (s.radius * s.radius / 4 + s.length * s.length / 12);
  return {mass, s.center, of_revolution(s.axis, about, across)};
}

MassProperties fill(const model::Box& s, double density) {
  need_finite(s.center, "box center");
  for (int i = 0; i < 3; ++i) need_positive(s.size[i], "box size", "m");
  if (!((s.rotation.transpose() * s.rotation - Matrix3d::Identity()).norm() < 1e-9)) {
    throw InvalidInput("solid: box rotation is not a rotation\n  needed: orthonormal columns");
  }
  const double mass = density * s.size.prod();
  const Matrix3d second = s.rotation * (mass / 12 * s.size.cwiseAbs2()).asDiagonal() * s.rotation.transpose();
  return {mass, s.center, inertia_of_moments(second)};
}

MassProperties fill(const model::Hull& s, double density) {
  const VolumeProperties whole = volume_of(s.points, convex_hull(s.points));
  return {density * whole.volume, whole.center, density * whole.inertia};
}

MassProperties fill(const model::Mesh& s, double density) {
  need_positive(s.volume, "mesh volume", "m³");
  need_finite(s.center, "mesh center");
  return {density * s.volume, s.center, density * s.inertia};
}

}  // namespace

MassProperties mass_of(const model::Solid& solid) {
  need_positive(solid.density, "density", "kg/m³");
  return std::visit([&](const auto& shape) { return fill(shape, solid.density); }, solid.shape);
}

MassProperties combine(std::span<const MassProperties> parts) {
  MassProperties whole;
  for (const MassProperties& part : parts) {
    if (!(part.mass >= 0) || !std::isfinite(part.mass) || !part.center.allFinite() ||
        !part.inertia.allFinite()) {
      throw InvalidInput(fmt::format(
          "mass properties: a part of {} kg cannot be added\n  needed: mass >= 0 kg, all numbers finite",
          part.mass));
    }
    whole.mass += part.mass;
    whole.center += part.mass * part.center;
  }
  if (!(whole.mass > 0)) {
    throw InvalidInput(fmt::format("mass properties: {} part(s) with {} kg together\n  needed: a mass > 0 kg",
                                   parts.size(), whole.mass));
  }
  whole.center /= whole.mass;
  for (const MassProperties& part : parts) {
    const Vector3d d = part.center - whole.center;
    whole.inertia += part.inertia + inertia_of_moments(part.mass * d * d.transpose());
  }
  return whole;
}

}  // namespace sinewright::geometry
