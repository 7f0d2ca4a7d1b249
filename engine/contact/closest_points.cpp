#include "contact/closest_points.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <type_traits>
#include <utility>
#include <variant>

#include <Eigen/Eigenvalues>
#include <fmt/format.h>

#include "contact/hull_distance.h"
#include "quantity/invalid_input.h"

namespace sinewright::contact {

namespace {

using model::Box;
using model::Capsule;
using model::Cylinder;
using model::Hull;
using model::Shape;
using model::Sphere;

// ---- what a pair needs of its shapes

void need_positive(double value, const char* what) {
  if (!(value > 0) || !std::isfinite(value)) {
    throw InvalidInput(fmt::format("contact shape: {} = {} m is not allowed\n  needed: {} > 0 m and finite",
                                   what, value, what));
  }
}

void need_finite(const Vector3d& p, const char* what) {
  if (!p.allFinite()) {
    throw InvalidInput(
        fmt::format("contact shape: {} = ({}, {}, {}) m is not finite", what, p.x(), p.y(), p.z()));
  }
}

void validate(const Shape& shape) {
  std::visit(
      [](const auto& s) {
        using S = std::decay_t<decltype(s)>;
        if constexpr (std::is_same_v<S, Sphere>) {
          need_finite(s.center, "sphere center");
          need_positive(s.radius, "sphere radius");
        } else if constexpr (std::is_same_v<S, Capsule>) {
          need_finite(s.from, "capsule from");
          need_finite(s.to, "capsule to");
          need_positive(s.radius, "capsule radius");
        } else if constexpr (std::is_same_v<S, Cylinder>) {
          need_finite(s.center, "cylinder center");
          need_positive(s.radius, "cylinder radius");
          need_positive(s.length, "cylinder length");
          if (!(std::abs(s.axis.norm() - 1) < 1e-9)) {
            throw InvalidInput(fmt::format(
                "contact shape: cylinder axis has length {}\n  needed: a unit vector", s.axis.norm()));
          }
        } else if constexpr (std::is_same_v<S, Box>) {
          need_finite(s.center, "box center");
          for (int i = 0; i < 3; ++i) need_positive(s.size[i], "box size");
          if (!((s.rotation.transpose() * s.rotation - Eigen::Matrix3d::Identity()).norm() < 1e-9)) {
            throw InvalidInput(
                "contact shape: box rotation is not a rotation\n  needed: orthonormal columns");
          }
        } else {
          if (s.points.empty())
            throw InvalidInput("contact shape: a hull without points\n  needed: four or more");
          Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
          for (const Vector3d& p : s.points) {
            need_finite(p, "hull point");
            const Vector3d r = p - s.points.front();
            spread += r * r.transpose();
          }
          const Vector3d extent =
              Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>(spread).eigenvalues().cwiseMax(0).cwiseSqrt();
          if (!(extent.minCoeff() > 1e-6 * extent.maxCoeff())) {
            throw InvalidInput(
                fmt::format("contact shape: the {} points of a hull lie in one plane or on one line\n"
                            "  needed: a hull with a volume\n  hint:   give a thin plate its thickness",
                            s.points.size()));
          }
        }
      },
      shape);
}

bool is_round(const Shape& shape) {  // a core and a radius: what is solved here as a segment
  return std::holds_alternative<Sphere>(shape) || std::holds_alternative<Capsule>(shape);
}

// ---- segments

struct Segment {
  Vector3d from = Vector3d::Zero();
  Vector3d to = Vector3d::Zero();
  double radius = 0;
};

Segment segment_of(const Shape& shape) {
  if (const auto* sphere = std::get_if<Sphere>(&shape))
    return {sphere->center, sphere->center, sphere->radius};
  const auto& capsule = std::get<Capsule>(shape);
  return {capsule.from, capsule.to, capsule.radius};
}

Segment moved(const Isometry3d& X, const Segment& s) {
  return {X * s.from, X * s.to, s.radius};
}

// A fixed unit vector at a right angle to v, for want of any other direction.
Vector3d some_perpendicular(const Vector3d& v) {
  Eigen::Index smallest = 0;
  v.cwiseAbs().minCoeff(&smallest);
  const Vector3d perpendicular = v.cross(Vector3d::Unit(smallest));
  const double length = perpendicular.norm();
  return length > 0 ? Vector3d(perpendicular / length) : Vector3d::UnitX();
}

// Parameter in [0, 1] of the point of segment p + t d nearest to x.
double nearest_parameter(const Vector3d& p, const Vector3d& d, const Vector3d& x) {
  const double length_squared = d.squaredNorm();
  return length_squared > 0 ? std::clamp((x - p).dot(d) / length_squared, 0.0, 1.0) : 0.0;
}

// Nearest points of the segments p + s d and q + t e. The unconstrained optimum is clamped in s, then t
// follows, and if t had to be clamped s follows once more; for two segments that is exact.
std::pair<Vector3d, Vector3d> nearest_on_segments(const Vector3d& p, const Vector3d& d, const Vector3d& q,
                                                  const Vector3d& e) {
  const double dd = d.squaredNorm();
  const double ee = e.squaredNorm();
  if (ee == 0) return {p + nearest_parameter(p, d, q) * d, q};
  if (dd == 0) return {p, q + nearest_parameter(q, e, p) * e};

  const Vector3d cross = d.cross(e);
  double s = 0;
  if (cross.squaredNorm() > 1e-20 * dd * ee) {  // sine of the angle above 1e-10: below, only rounding decides
    s = std::clamp((q - p).cross(e).dot(cross) / cross.squaredNorm(), 0.0, 1.0);
  } else {  // parallel: the middle of the stretch of d that lies beside e, or the end nearest to it
    const double s0 = (q - p).dot(d) / dd;
    const double s1 = (q + e - p).dot(d) / dd;
    s = (std::clamp(s0, 0.0, 1.0) + std::clamp(s1, 0.0, 1.0)) / 2;
  }
  const double t = nearest_parameter(q, e, p + s * d);
  const Vector3d on_e = q + t * e;
  s = (t > 0 && t < 1) ? s : nearest_parameter(p, d, on_e);
  return {p + s * d, on_e};
}

ClosestPoints segments(const Segment& a, const Segment& b) {
  const Vector3d d = a.to - a.from;
  const Vector3d e = b.to - b.from;
  const auto [on_axis_a, on_axis_b] = nearest_on_segments(a.from, d, b.from, e);
  const Vector3d apart = on_axis_a - on_axis_b;
  const double distance = apart.norm();

  ClosestPoints points;
  if (distance > 1e-14) {  // [m], rounding of coordinates of the order of a decimetre
    points.normal = apart / distance;
  } else {  // the axes cross or share a point: leave at a right angle to both
    const Vector3d cross = d.cross(e);
    const bool crossed = cross.squaredNorm() > 1e-20 * d.squaredNorm() * e.squaredNorm();
    points.normal = crossed ? Vector3d(cross.normalized()) : some_perpendicular(d.squaredNorm() > 0 ? d : e);
  }
  points.gap = distance - a.radius - b.radius;
  points.on_b = on_axis_b + b.radius * points.normal;
  points.on_a = points.on_b + points.gap * points.normal;
  return points;
}

// ---- a point and a solid

// Signed distance of a point from a convex solid and its gradient.
struct Depth {
  double distance = 0;                  // negative inside
  Vector3d normal = Vector3d::UnitX();  // unit, outward
};

// A cylinder about z, centred.
struct RoundBar {
  double radius = 0;
  double half_length = 0;

  [[nodiscard]] Depth depth(const Vector3d& p) const {
    const double rho = std::sqrt(p.x() * p.x() + p.y() * p.y());
    const double past_side = rho - radius;
    const double past_end = std::abs(p.z()) - half_length;
    const Vector3d radial = rho > 0 ? Vector3d(p.x() / rho, p.y() / rho, 0) : Vector3d::UnitX();
    const Vector3d axial = Vector3d(0, 0, p.z() < 0 ? -1 : 1);
    if (past_side > 0 && past_end > 0) {
      const double distance = std::sqrt(past_side * past_side + past_end * past_end);
      return {distance, (past_side * radial + past_end * axial) / distance};
    }
    return past_side >= past_end ? Depth{past_side, radial} : Depth{past_end, axial};
  }

  // Parameter of the point of from + t along, t in [0, 1], nearest to the axis, if there the round side alone
  // decides; the signed distance being convex, this local minimum is the minimum. Nothing for a segment along
  // the axis.
  [[nodiscard]] std::optional<double> beside(const Vector3d& from, const Vector3d& along) const {
    const double across = along.head<2>().squaredNorm();
    if (across < 1e-12 * along.squaredNorm()) return std::nullopt;
    const double t = std::clamp(-from.head<2>().dot(along.head<2>()) / across, 0.0, 1.0);
    const Vector3d point = from + t * along;
    const double past_end = std::abs(point.z()) - half_length;
    if (past_end >= 0 || past_end >= point.head<2>().norm() - radius) return std::nullopt;
    return t;
  }
};

// A box along the axes, centred.
struct Block {
  Vector3d half = Vector3d::Zero();

  [[nodiscard]] Depth depth(const Vector3d& p) const {
    const Vector3d past = p.cwiseAbs() - half;
    const Vector3d sign = (p.array() < 0).select(Vector3d::Constant(-1), Vector3d::Ones());
    const Vector3d outside = past.cwiseMax(0);
    const double distance = outside.norm();
    if (distance > 0) return {distance, outside.cwiseProduct(sign) / distance};
    Eigen::Index nearest = 0;
    const double depth = past.maxCoeff(&nearest);
    return {depth, sign[nearest] * Vector3d::Unit(nearest)};
  }
};

struct OnSegment {
  Depth depth;
  Vector3d at = Vector3d::Zero();  // the point of the segment
  bool deepest = true;             // see nearest_on_segment
};

// The point of a segment with the smallest signed distance from a convex solid. Signed distance from a convex
// set is a convex function, so that along the segment its slope, normal · direction, never falls: bisection
// finds where it changes sign. Where it is zero over a stretch (a segment lying beside a flat or round side)
// the middle of the stretch is taken.
//
// Outside, the result is the distance. Inside, it is minus the depth whenever pushing out along the normal
// frees the whole segment, that is, if no other point of it lies further in along that normal; `deepest` says
// so. It fails only where the segment has entered past an edge and the normal jumps at the minimum.
template <class Solid>
OnSegment nearest_on_segment(const Solid& solid, const Vector3d& from, const Vector3d& to) {
  const Vector3d along = to - from;
  const double length = along.norm();
  OnSegment best;
  if (length == 0) {
    best.at = from;
    best.depth = solid.depth(from);
    return best;
  }
  if constexpr (requires { solid.beside(from, along); }) {
    if (const std::optional<double> t = solid.beside(from, along)) {
      best.at = from + *t * along;
      best.depth = solid.depth(best.at);
      // Inside, a point on the axis itself has no direction to leave by: let the general way decide.
      if (best.at.head<2>().norm() > 1e-9 * solid.radius) return best;
    }
  }
  const Vector3d direction = along / length;
  constexpr double kFlat = 1e-12;  // slope [–] that rounding alone can make; costs kFlat × length in distance
  const auto slope = [&](double t) { return solid.depth(from + t * along).normal.dot(direction); };
  // Largest t up to which `falling` holds; 60 halvings end at the spacing of doubles.
  const auto boundary = [&](auto falling) {
    if (!falling(slope(0))) return 0.0;
    if (falling(slope(1))) return 1.0;
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60 && high - low > 1e-15; ++i) {
      const double middle = (low + high) / 2;
      (falling(slope(middle)) ? low : high) = middle;
    }
    return (low + high) / 2;
  };
  const double first = boundary([](double g) { return g < -kFlat; });
  const double last = first < 1 ? boundary([](double g) { return g <= kFlat; }) : 1.0;
  const double t = (first + std::max(first, last)) / 2;
  best.at = from + t * along;
  best.depth = solid.depth(best.at);
  if (best.depth.distance <= 0) {
    const double g = best.depth.normal.dot(direction);
    best.deepest = (t == 0 || g <= 1e-9) && (t == 1 || g >= -1e-9);
  }
  return best;
}

Vector3d centre_of(const Shape& solid) {
  if (const auto* cylinder = std::get_if<Cylinder>(&solid)) return cylinder->center;
  return std::get<Box>(solid).center;
}

Eigen::Matrix3d axes_of(const Shape& solid) {
  if (const auto* cylinder = std::get_if<Cylinder>(&solid)) {
    return Eigen::Quaterniond::FromTwoVectors(Vector3d::UnitZ(), cylinder->axis).toRotationMatrix();
  }
  return std::get<Box>(solid).rotation;
}

// A sphere or capsule (A) against a cylinder or box (B) in the frame of the solid, centred; no value when EPA
// must decide.
template <class Solid>
std::optional<ClosestPoints> segment_against(const Solid& solid, const Segment& a) {
  const OnSegment nearest = nearest_on_segment(solid, a.from, a.to);
  if (!nearest.deepest) return std::nullopt;
  ClosestPoints points;
  points.normal = nearest.depth.normal;
  points.gap = nearest.depth.distance - a.radius;
  points.on_a = nearest.at - a.radius * points.normal;
  points.on_b = points.on_a - points.gap * points.normal;
  return points;
}

void swap_roles(ClosestPoints& points) {
  std::swap(points.on_a, points.on_b);
  points.normal = -points.normal;
}

// ---- Hertz radius

struct Roundness {
  double round = 0;          // larger principal curvature [1/m]
  double along = 0;          // smaller principal curvature [1/m]
  double along_on_flat = 0;  // stand-in for the smaller one where the shape lies on a flat face [1/m]
};

Roundness roundness_of(const Shape& shape) {
  if (const auto* sphere = std::get_if<Sphere>(&shape)) {
    const double k = 1 / sphere->radius;
    return {k, k, k};
  }
  const auto bar = [](double radius, double straight) {
    return Roundness{1 / radius, 0, 1 / std::max(radius, straight / 2)};
  };
  if (const auto* capsule = std::get_if<Capsule>(&shape))
    return bar(capsule->radius, (capsule->to - capsule->from).norm());
  if (const auto* cylinder = std::get_if<Cylinder>(&shape)) return bar(cylinder->radius, cylinder->length);
  return {};
}

}  // namespace

double effective_radius(const model::Shape& a, const model::Shape& b) {
  validate(a);
  validate(b);
  const Roundness ka = roundness_of(a);
  const Roundness kb = roundness_of(b);
  const bool flat_a = ka.round == 0;
  const bool flat_b = kb.round == 0;
  if (flat_a && flat_b) return std::min(bounding_sphere(a).radius, bounding_sphere(b).radius);
  if (flat_b) return 1 / std::sqrt(ka.round * ka.along_on_flat);
  if (flat_a) return 1 / std::sqrt(kb.round * kb.along_on_flat);
  return 1 / std::sqrt((ka.round + kb.along) * (ka.along + kb.round));
}

Bound bounding_sphere(const model::Shape& shape) {
  return std::visit(
      [](const auto& s) -> Bound {
        using S = std::decay_t<decltype(s)>;
        if constexpr (std::is_same_v<S, Sphere>) {
          return {s.center, s.radius};
        } else if constexpr (std::is_same_v<S, Capsule>) {
          return {(s.from + s.to) / 2, (s.to - s.from).norm() / 2 + s.radius};
        } else if constexpr (std::is_same_v<S, Cylinder>) {
          return {s.center, std::hypot(s.radius, s.length / 2)};
        } else if constexpr (std::is_same_v<S, Box>) {
          return {s.center, s.size.norm() / 2};
        } else {
          if (s.points.empty()) return {};
          Vector3d low = s.points.front();
          Vector3d high = low;
          for (const Vector3d& p : s.points) {
            low = low.cwiseMin(p);
            high = high.cwiseMax(p);
          }
          Bound bound{(low + high) / 2, 0};
          for (const Vector3d& p : s.points) bound.radius = std::max(bound.radius, (p - bound.center).norm());
          return bound;
        }
      },
      shape);
}

struct ShapePair::Implementation {
  enum class Way { segments, bar, block, hull };

  Way way = Way::hull;
  bool swapped = false;                      // the round shape is B: solve as if it were A
  double radius = 0;                         // for the Hertz law
  Segment round;                             // sphere or capsule, in its body frame
  Segment other_round;                       // for Way::segments
  Isometry3d seat = Isometry3d::Identity();  // of the bar or block in its body frame
  RoundBar bar;
  Block block;
  std::optional<HullDistance> hull;  // in the callers' order; empty where a closed form always answers

  Implementation(const Shape& a, const Shape& b) : radius(effective_radius(a, b)) {
    const Shape* first = &a;
    const Shape* second = &b;
    if (!is_round(a) && is_round(b)) {
      swapped = true;
      std::swap(first, second);
    }
    if (is_round(*first)) round = segment_of(*first);
    if (is_round(*first) && is_round(*second)) {
      way = Way::segments;
      other_round = segment_of(*second);
      return;
    }
    hull.emplace(a, b);
    const bool has_corners = std::holds_alternative<Hull>(*second) || std::holds_alternative<model::Mesh>(*second);
    if (!is_round(*first) || has_corners) return;
    seat.translation() = centre_of(*second);
    seat.linear() = axes_of(*second);
    if (const auto* cylinder = std::get_if<Cylinder>(second)) {
      way = Way::bar;
      bar = {cylinder->radius, cylinder->length / 2};
    } else {
      way = Way::block;
      block = {std::get<Box>(*second).size / 2};
    }
  }

  [[nodiscard]] std::optional<ClosestPoints> by_closed_form(const Isometry3d& X_WR,
                                                            const Isometry3d& X_WS) const {
    if (way == Way::segments) return segments(moved(X_WR, round), moved(X_WS, other_round));
    const Isometry3d X_WC = X_WS * seat;  // C: frame of the solid, at its centre
    const Segment in_solid = moved(X_WC.inverse() * X_WR, round);
    std::optional<ClosestPoints> points =
        way == Way::bar ? segment_against(bar, in_solid) : segment_against(block, in_solid);
    if (points) {
      points->on_a = X_WC * points->on_a;
      points->on_b = X_WC * points->on_b;
      points->normal = X_WC.linear() * points->normal;
    }
    return points;
  }

  [[nodiscard]] ClosestPoints closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const {
    if (way != Way::hull) {
      auto points = swapped ? by_closed_form(X_WB, X_WA) : by_closed_form(X_WA, X_WB);
      if (points) {
        if (swapped) swap_roles(*points);
        return *points;
      }
    }
    return hull->closest(X_WA, X_WB);
  }
};

ShapePair::ShapePair(const model::Shape& a, const model::Shape& b)
    : implementation_(std::make_unique<Implementation>(a, b)) {}
ShapePair::ShapePair(ShapePair&&) noexcept = default;
ShapePair& ShapePair::operator=(ShapePair&&) noexcept = default;
ShapePair::~ShapePair() = default;

ClosestPoints ShapePair::closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const {
  if (!X_WA.matrix().allFinite() || !X_WB.matrix().allFinite()) {
    // Not left to chance: max() and clamp() further down can turn NaN into a plausible number.
    ClosestPoints unknown;
    unknown.gap = std::numeric_limits<double>::quiet_NaN();
    return unknown;
  }
  ClosestPoints points = implementation_->closest(X_WA, X_WB);
  points.radius = implementation_->radius;
  return points;
}

bool ShapePair::closed_form() const {
  return implementation_->way != Implementation::Way::hull;
}

}  // namespace sinewright::contact
