#pragma once

#include <cstddef>
#include <vector>

#include <Eigen/Core>

namespace sinewright::geometry {

/// Corners of a hull that stands for the convex hull of many points where things touch: every query of closest points goes
/// through all corners several times.
inline constexpr std::size_t most_hull_corners = 200;

struct TouchingHull {
  std::vector<Eigen::Vector3d> points;  ///< some of the given ones
  double inside = 0;  ///< no given point lies further outside this hull; the hull never reaches beyond the given points
};

/// The convex hull of the points, with its corners if they are few, else with those that matter most: beginning with the
/// outermost points in a few directions, those that lie furthest outside the faces so far are taken, until none lies outside
/// by more than 1e-6 of the extent, or there are `most`.
///
/// For a ball of radius R, n corners leave about 2.4 R / n (the sagitta of equal triangles).
/// @throws InvalidInput as convex_hull.
[[nodiscard]] TouchingHull touching_hull(const std::vector<Eigen::Vector3d>& points, std::size_t most = most_hull_corners);

}  // namespace sinewright::geometry
