#include "geometry/reach.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <variant>
#include <vector>

#include "model/overloaded.h"

namespace sinewright::geometry {

namespace {

double farthest(const std::vector<Vector3d>& points, const Vector3d& direction) {
  double most = -std::numeric_limits<double>::infinity();
  for (const Vector3d& point : points) most = std::max(most, direction.dot(point));
  return most;
}

}  // namespace

double reach(const model::Shape& shape, const Vector3d& n) {
  return std::visit(
      overloaded{
          [&](const model::Sphere& s) { return n.dot(s.center) + s.radius; },
          [&](const model::Capsule& c) { return std::max(n.dot(c.from), n.dot(c.to)) + c.radius; },
          [&](const model::Cylinder& c) {
            const double along = std::abs(n.dot(c.axis));
            return n.dot(c.center) + c.length / 2 * along + c.radius * std::sqrt(std::max(0.0, 1 - along * along));
          },
          [&](const model::Box& b) { return n.dot(b.center) + (b.rotation.transpose() * n).cwiseAbs().dot(b.size) / 2; },
          [&](const model::Hull& h) { return farthest(h.points, n); }, [&](const model::Mesh& m) { return farthest(m.points, n); }},
      shape);
}

}  // namespace sinewright::geometry
