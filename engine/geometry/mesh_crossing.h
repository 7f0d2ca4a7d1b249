#pragma once

#include <cstddef>
#include <optional>

#include <Eigen/Core>

#include "geometry/triangle_mesh.h"

namespace sinewright::geometry {

/// Two triangles of a mesh that go through each other.
struct Crossing {
  std::size_t a = 0, b = 0;  ///< indices of the triangles
  Eigen::Vector3d at = Eigen::Vector3d::Zero();  ///< a point that both have
};

/// Looks for triangles that go through each other, by a tree of boxes over the triangles.
///
/// Two triangles cross where an edge of one reaches from one side of the other to its other side, through its inside or its
/// border. Each end must lie off the plane by more than rounding can have put it there: by more than τ (1 + D/h), with τ = 2^-22
/// of the largest coordinate (some roundings of float32), h the triangle's least height and D the distance from one of its
/// corners. So a corner that rests on a face, or a fold without depth, does not count. Faces that lie flush on each other do
/// count where an edge of one passes through the border of the other's neighbour. Triangles with a common edge cannot cross; of
/// two with a common corner the opposite edges are tried. Triangles no higher than τ are passed over: they bound nothing, and
/// their long sides are those of their neighbours.
///
/// @throws MeshProblem if so many triangles lie in one another's boxes that the search would take minutes.
[[nodiscard]] std::optional<Crossing> find_crossing(const TriangleMesh& mesh);

}  // namespace sinewright::geometry
