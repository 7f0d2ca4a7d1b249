#include "geometry/touching_hull.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>
#include <utility>

#include "geometry/convex_hull.h"

namespace sinewright::geometry {

namespace {

using Eigen::Vector3d;

// Directions spread over the sphere along a spiral; none lies along an axis, where a box has no single outermost corner.
std::vector<Vector3d> spiral(int n) {
  std::vector<Vector3d> directions;
  for (int k = 0; k < n; ++k) {
    const double z = 1 - (2 * k + 1.3) / n;
    const double angle = 0.7 + k * std::numbers::pi * (3 - std::sqrt(5.0));
    const double r = std::sqrt(1 - z * z);
    directions.emplace_back(r * std::cos(angle), r * std::sin(angle), z);
  }
  return directions;
}

// Distance of a point from a triangle: from its plane if the foot lies inside, else from the nearest side.
double distance(const Vector3d& p, const Vector3d& a, const Vector3d& b, const Vector3d& c) {
  const Vector3d corner[3] = {a, b, c};
  const Vector3d normal = (b - a).cross(c - a).normalized();
  bool over = true;
  double nearest = (p - a).norm();
  for (int k = 0; k < 3; ++k) {
    const Vector3d from = corner[k], along = corner[(k + 1) % 3] - from;
    over = over && normal.dot(along.cross(p - from)) >= 0;
    const double t = std::clamp(along.dot(p - from) / along.squaredNorm(), 0.0, 1.0);
    nearest = std::min(nearest, (p - from - t * along).norm());
  }
  return over ? std::abs(normal.dot(p - a)) : nearest;
}

// The points that may lie outside the hull, as rows, so that the search over a face runs through memory.
struct Candidates {
  std::vector<double> x, y, z;
  std::vector<double> beyond;        // the face that they lie furthest beyond, and by how much
  std::vector<std::uint32_t> face;

  [[nodiscard]] std::size_t size() const { return x.size(); }
  [[nodiscard]] Vector3d at(std::size_t i) const { return {x[i], y[i], z[i]}; }

  void measure(const std::vector<Vector3d>& corners, const std::vector<Triangle>& faces) {
    beyond.assign(size(), -std::numeric_limits<double>::infinity());
    face.assign(size(), 0);
    for (std::size_t f = 0; f < faces.size(); ++f) {
      const Vector3d& a = corners[faces[f][0]];
      const Vector3d n = (corners[faces[f][1]] - a).cross(corners[faces[f][2]] - a).normalized();
      const double offset = n.dot(a), nx = n.x(), ny = n.y(), nz = n.z();
      const auto number = static_cast<std::uint32_t>(f);
      for (std::size_t i = 0; i < size(); ++i) {
        const double d = nx * x[i] + ny * y[i] + nz * z[i] - offset;
        face[i] = d > beyond[i] ? number : face[i];
        beyond[i] = std::max(beyond[i], d);
      }
    }
  }

  // The largest distance from the hull of those that lie beyond it by up to `level`: of each to the nearest face that it sees.
  [[nodiscard]] double furthest(const std::vector<Vector3d>& corners, const std::vector<Triangle>& faces, double level,
                                double rounding) const {
    std::vector<Vector3d> normals;
    for (const Triangle& f : faces)
      normals.push_back((corners[f[1]] - corners[f[0]]).cross(corners[f[2]] - corners[f[0]]).normalized());
    double most = 0;
    for (std::size_t i = 0; i < size(); ++i) {
      if (!(beyond[i] > 0) || beyond[i] > level) continue;
      const Vector3d p = at(i);
      double nearest = std::numeric_limits<double>::infinity();
      for (std::size_t f = 0; f < faces.size(); ++f) {
        const Vector3d& a = corners[faces[f][0]];
        const double depth = normals[f].dot(p - a);
        if (depth > -rounding && depth < nearest)  // faces in which it lies are seen too, or a corner would be far from its own
          nearest = std::min(nearest, distance(p, a, corners[faces[f][1]], corners[faces[f][2]]));
      }
      most = std::max(most, std::isfinite(nearest) ? nearest : beyond[i]);
    }
    return most;
  }

  void keep_beyond(double level) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < size(); ++i) {
      if (!(beyond[i] > level)) continue;
      x[kept] = x[i], y[kept] = y[i], z[kept] = z[i], beyond[kept] = beyond[i], face[kept] = face[i];
      ++kept;
    }
    for (auto* list : {&x, &y, &z, &beyond}) list->resize(kept);
    face.resize(kept);
  }
};

}  // namespace

TouchingHull touching_hull(const std::vector<Vector3d>& points, std::size_t most) {
  TouchingHull hull;
  std::vector<std::size_t> outermost;
  for (const Vector3d& n : spiral(26)) {
    std::size_t best = 0;
    double reach = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < points.size(); ++i)
      if (const double d = n.dot(points[i]); d > reach) reach = d, best = i;
    if (!points.empty()) outermost.push_back(best);
  }
  std::sort(outermost.begin(), outermost.end());
  outermost.erase(std::unique(outermost.begin(), outermost.end()), outermost.end());
  for (const std::size_t i : outermost) hull.points.push_back(points[i]);

  Candidates candidates;
  double extent = 0;
  for (const Vector3d& p : points) {
    extent = std::max(extent, (p - points.front()).norm());
    candidates.x.push_back(p.x());
    candidates.y.push_back(p.y());
    candidates.z.push_back(p.z());
  }
  const double level = 1e-6 * extent;
  for (;;) {
    const std::vector<Triangle> faces = convex_hull(hull.points);
    candidates.measure(hull.points, faces);
    const bool full = hull.points.size() >= most;
    hull.inside = std::max(hull.inside, candidates.furthest(hull.points, faces, full ? extent : level, level));
    candidates.keep_beyond(level);
    if (full || candidates.size() == 0) return hull;
    // The furthest point beyond each face; of those the ones that come near the furthest of all.
    std::vector<std::size_t> furthest(faces.size(), candidates.size());
    double most_beyond = 0;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
      std::size_t& best = furthest[candidates.face[i]];
      if (best == candidates.size() || candidates.beyond[i] > candidates.beyond[best]) best = i;
      most_beyond = std::max(most_beyond, candidates.beyond[i]);
    }
    std::vector<std::pair<double, std::size_t>> next;
    for (const std::size_t i : furthest)
      if (i < candidates.size() && candidates.beyond[i] >= most_beyond / 2) next.emplace_back(-candidates.beyond[i], i);
    std::sort(next.begin(), next.end());
    for (const auto& [depth, i] : next)
      if (hull.points.size() < most) hull.points.push_back(candidates.at(i));
  }
}

}  // namespace sinewright::geometry
