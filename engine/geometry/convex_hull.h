#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "geometry/triangle_mesh.h"
#include "quantity/invalid_input.h"

namespace sinewright::geometry {

/// The triangles that bound the convex hull of some points, by adding one point after the other: each new
/// point outside removes the triangles that it sees and is joined to the rim of the hole. Cost points ×
/// triangles.
///
/// Points within 1e-12 of the extent of a face count as on it. The result is checked: closed, and no point
/// outside by more than 1e-9 of the extent.
///
/// @throws InvalidInput if the points are not finite, lie in a plane, or the check fails.
inline std::vector<Triangle> convex_hull(const std::vector<Eigen::Vector3d>& points) {
  using Eigen::Vector3d;
  struct Face {
    Triangle corner;
    Vector3d normal;  // unit, outward
    double offset;    // normal · x on the face
  };
  const auto face_of = [&](std::size_t i, std::size_t j, std::size_t k) {
    // normalized() leaves a zero vector as it is: a degenerate triangle sees no point and has no volume.
    const Vector3d normal = (points[j] - points[i]).cross(points[k] - points[i]).normalized();
    return Face{{i, j, k}, normal, normal.dot(points[i])};
  };
  const auto above = [&](const Face& f, std::size_t i) { return f.normal.dot(points[i]) - f.offset; };

  if (points.size() < 4)
    throw InvalidInput("hull: fewer than four points\n  needed: points that span a volume");
  double extent = 0;
  for (const Vector3d& p : points) {
    if (!p.allFinite()) throw InvalidInput("hull: a point is not finite");
    extent = std::max(extent, (p - points[0]).norm());
  }

  // The first tetrahedron, as large as a greedy choice makes it.
  const auto farthest = [&](auto distance) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
      if (distance(i) > distance(best)) best = i;
    }
    return best;
  };
  const std::size_t a = farthest([&](std::size_t i) { return (points[i] - points[0]).norm(); });
  const std::size_t b = farthest([&](std::size_t i) { return (points[i] - points[a]).norm(); });
  const Vector3d line = (points[b] - points[a]).normalized();
  const std::size_t c = farthest([&](std::size_t i) { return (points[i] - points[a]).cross(line).norm(); });
  const Face base = face_of(a, b, c);
  const std::size_t d = farthest([&](std::size_t i) { return std::abs(above(base, i)); });
  if (!(std::abs(above(base, d)) > 1e-9 * extent)) {
    throw InvalidInput(
        "hull: all points lie in one plane\n  needed: points that span a volume\n"
        "  hint:   give a thin plate its thickness");
  }
  std::vector<Face> faces;
  if (above(base, d) < 0) {
    faces = {base, face_of(a, d, b), face_of(b, d, c), face_of(c, d, a)};
  } else {
    faces = {face_of(a, c, b), face_of(a, b, d), face_of(b, c, d), face_of(c, a, d)};
  }

  const double level = 1e-12 * extent;
  using Edge = std::pair<std::size_t, std::size_t>;
  std::vector<Edge> seen_edges;
  for (std::size_t i = 0; i < points.size(); ++i) {
    seen_edges.clear();
    std::vector<Face> kept;
    for (const Face& f : faces) {
      if (above(f, i) > level) {
        for (int k = 0; k < 3; ++k) seen_edges.emplace_back(f.corner[k], f.corner[(k + 1) % 3]);
      } else {
        kept.push_back(f);
      }
    }
    if (seen_edges.empty()) continue;
    std::sort(seen_edges.begin(), seen_edges.end());
    for (const auto& [from, to] : seen_edges) {
      const bool inner = std::binary_search(seen_edges.begin(), seen_edges.end(), Edge(to, from));
      if (!inner) kept.push_back(face_of(from, to, i));
    }
    faces = std::move(kept);
  }

  std::vector<Edge> edges;
  std::vector<Triangle> triangles;
  bool sound = true;
  for (const Face& f : faces) {
    for (int k = 0; k < 3; ++k) edges.emplace_back(f.corner[k], f.corner[(k + 1) % 3]);
    for (std::size_t i = 0; i < points.size(); ++i) sound = sound && above(f, i) <= 1e-9 * extent;
    triangles.push_back(f.corner);
  }
  std::sort(edges.begin(), edges.end());
  sound = sound && std::adjacent_find(edges.begin(), edges.end()) == edges.end();
  for (const auto& [from, to] : edges) {
    sound = sound && std::binary_search(edges.begin(), edges.end(), Edge(to, from));
  }
  if (!sound) {
    throw InvalidInput(
        "hull: its faces could not be told apart (points almost in line or in plane)\n"
        "  needed: points that clearly span a volume\n  hint:   leave out points inside faces and edges");
  }
  return triangles;
}

}  // namespace sinewright::geometry
