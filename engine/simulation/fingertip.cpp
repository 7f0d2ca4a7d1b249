#include "simulation/fingertip.h"

#include <algorithm>

#include "geometry/reach.h"

namespace sinewright::simulation {

std::optional<double> fingertip(const model::Body& body) {
  std::optional<double> tip;
  const auto take = [&](const model::Shape& shape) {
    const double end = geometry::reach(shape, Eigen::Vector3d::UnitX());
    tip = std::max(tip.value_or(end), end);
  };
  for (const model::ContactShape& shape : body.shapes) take(shape.shape);
  for (const model::Solid& solid : body.solids) take(solid.shape);
  return tip;
}

}  // namespace sinewright::simulation
