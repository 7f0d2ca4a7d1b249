#include "contact/containment.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "model/overloaded.h"

namespace sinewright::contact {

namespace {

constexpr int rim_points = 96;
constexpr double step = 1e-3;  // [m]

// Points whose hull, grown by `radius`, is the shape.
struct Corners {
  std::vector<Vector3d> points;
  double radius = 0;
};

std::vector<Vector3d> ring(const model::Cylinder& c, double along, double radius) {
  const Vector3d u = c.axis.unitOrthogonal(), v = c.axis.cross(u);
  std::vector<Vector3d> points;
  for (int k = 0; k < rim_points; ++k) {
    const double a = 2 * std::numbers::pi * k / rim_points;
    points.push_back(c.center + along * c.axis + radius * (std::cos(a) * u + std::sin(a) * v));
  }
  return points;
}

void append(std::vector<Vector3d>& points, const std::vector<Vector3d>& more) { points.insert(points.end(), more.begin(), more.end()); }

Corners corners(const model::Shape& shape) {
  return std::visit(overloaded{[](const model::Sphere& s) { return Corners{{s.center}, s.radius}; },
                               [](const model::Capsule& c) { return Corners{{c.from, c.to}, c.radius}; },
                               [](const model::Cylinder& c) {
                                 Corners list{ring(c, -c.length / 2, c.radius), 0};
                                 append(list.points, ring(c, c.length / 2, c.radius));
                                 return list;
                               },
                               [](const model::Box& b) {
                                 Corners list;
                                 for (int k = 0; k < 8; ++k)
                                   list.points.push_back(b.center + b.rotation * (0.5 * b.size.cwiseProduct(Vector3d(
                                                                                            k & 1 ? 1 : -1, k & 2 ? 1 : -1, k & 4 ? 1 : -1))));
                                 return list;
                               },
                               [](const model::Hull& h) { return Corners{h.points, 0}; },
                               [](const model::Mesh& m) { return Corners{m.points, 0}; }},
                    shape);
}

// From −half to half in equal steps of at most a millimetre, both ends among them.
std::vector<double> steps_over(double half) {
  const int n = std::max(1, static_cast<int>(std::ceil(2 * half / step)));
  std::vector<double> list;
  for (int i = 0; i <= n; ++i) list.push_back(-half + 2 * half * i / n);
  return list;
}

// Points of a shape, close enough that nothing as large as a millimetre slips between them. A round end's points lie on it.
std::vector<Vector3d> filled(const model::Shape& shape) {
  std::vector<Vector3d> points;
  const auto ball = [&](const Vector3d& center, double radius) {
    for (const double a : steps_over(radius * std::numbers::pi / 2)) {
      const double up = a / radius;
      append(points, ring({center, Vector3d::UnitZ(), radius, 0}, radius * std::sin(up), radius * std::cos(up)));
    }
  };
  const auto bar = [&](const model::Cylinder& c, bool ends) {
    for (const double z : steps_over(c.length / 2)) append(points, ring(c, z, c.radius));
    if (!ends) return;
    for (const double r : steps_over(c.radius / 2))
      for (const double z : {-c.length / 2, c.length / 2}) append(points, ring(c, z, c.radius / 2 + r));
  };
  std::visit(overloaded{[&](const model::Sphere& s) { ball(s.center, s.radius); },
                        [&](const model::Capsule& c) {
                          ball(c.from, c.radius);
                          ball(c.to, c.radius);
                          const Vector3d along = c.to - c.from;
                          bar({(c.from + c.to) / 2, along.normalized(), c.radius, along.norm()}, false);
                        },
                        [&](const model::Cylinder& c) { bar(c, true); },
                        [&](const model::Box& b) {
                          for (int face = 0; face < 3; ++face) {
                            const int u = (face + 1) % 3, v = (face + 2) % 3;
                            for (const double x : steps_over(b.size[u] / 2))
                              for (const double y : steps_over(b.size[v] / 2))
                                for (const double side : {-0.5, 0.5}) {
                                  Vector3d p;
                                  p[u] = x, p[v] = y, p[face] = side * b.size[face];
                                  points.push_back(b.center + b.rotation * p);
                                }
                          }
                        },
                        [&](const auto& hull) {
                          for (std::size_t i = 0; i < hull.points.size(); ++i)
                            for (std::size_t j = 0; j <= i; ++j) {
                              const Vector3d between = hull.points[j] - hull.points[i];
                              const int n = std::clamp(static_cast<int>(between.norm() / step), 1, 20);
                              for (int k = 0; k <= n; ++k) points.push_back(hull.points[i] + between * k / n);
                            }
                        }},
             shape);
  return points;
}

// Signed distance of points from a solid. A ball of a nanometre stands for the point.
class Depth {
 public:
  explicit Depth(const PosedShape& solid) : pose_(solid.pose), pair_(model::Sphere{Vector3d::Zero(), grain}, solid.shape) {}
  double operator()(const Vector3d& point) const {
    Isometry3d X = Isometry3d::Identity();
    X.translation() = point;
    return pair_.closest(X, pose_).gap + grain;
  }

 private:
  static constexpr double grain = 1e-9;
  Isometry3d pose_;
  ShapePair pair_;
};

}  // namespace

Containment containment(const PosedShape& part, const std::vector<PosedShape>& solids) {
  std::vector<Depth> depth;
  for (const PosedShape& solid : solids) depth.emplace_back(solid);
  const Corners extreme = corners(part.shape);
  double best = -std::numeric_limits<double>::infinity();
  for (const Depth& sd : depth) {
    double wall = std::numeric_limits<double>::infinity();
    for (const Vector3d& point : extreme.points) wall = std::min(wall, -sd(part.pose * point) - extreme.radius);
    best = std::max(best, wall);
  }
  if (best >= 0) return {Containment::Place::within, best};
  double out = 0;
  for (const Vector3d& point : filled(part.shape)) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const Depth& sd : depth) {
      nearest = std::min(nearest, sd(part.pose * point));
      if (nearest <= out) break;
    }
    out = std::max(out, nearest);
  }
  constexpr double rounding = 1e-8;  // [m], Bullet's
  return out > rounding ? Containment{Containment::Place::out, out} : Containment{Containment::Place::across, 0};
}

}  // namespace sinewright::contact
