#include "simulation/fingertip.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "model/overloaded.h"

namespace sinewright::simulation {

namespace {

using Eigen::Vector3d;

double end_of(const std::vector<Vector3d>& points) {
  double end = -std::numeric_limits<double>::infinity();
  for (const Vector3d& point : points) end = std::max(end, point.x());
  return end;
}

// Largest x of a shape.
double end_of(const model::Shape& shape) {
  return std::visit(
      overloaded{
          [](const model::Sphere& s) { return s.center.x() + s.radius; },
          [](const model::Capsule& c) { return std::max(c.from.x(), c.to.x()) + c.radius; },
          [](const model::Cylinder& c) {
            const double along = std::abs(c.axis.x());
            return c.center.x() + c.length / 2 * along +
                   c.radius * std::sqrt(std::max(0.0, 1 - along * along));
          },
          [](const model::Box& b) { return b.center.x() + (b.rotation.row(0).cwiseAbs() * b.size)(0) / 2; },
          [](const model::Hull& h) { return end_of(h.points); }, [](const model::Mesh& m) { return end_of(m.points); }},
      shape);
}

}  // namespace

std::optional<double> fingertip(const model::Body& body) {
  std::optional<double> tip;
  const auto take = [&](const model::Shape& shape) {
    tip = std::max(tip.value_or(end_of(shape)), end_of(shape));
  };
  for (const model::ContactShape& shape : body.shapes) take(shape.shape);
  for (const model::Solid& solid : body.solids) take(solid.shape);
  return tip;
}

}  // namespace sinewright::simulation
