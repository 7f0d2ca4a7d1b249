#pragma once

#include "model/shape.h"

namespace sinewright::geometry {

using Eigen::Vector3d;

/// How far a shape reaches along a direction: the largest direction · x over it (its support function) [m].
/// @param direction  unit vector, in the frame of the shape's body. An STL part counts as the hull that stands for it.
[[nodiscard]] double reach(const model::Shape& shape, const Vector3d& direction);

}  // namespace sinewright::geometry
