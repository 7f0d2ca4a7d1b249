#pragma once

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <functional>
#include <numbers>
#include <string>
#include <vector>

#include <Eigen/Geometry>
#include <fmt/format.h>

/// Surfaces made by code, and the STL files that they give.
namespace mesh_shapes {

using Eigen::Vector3d;

/// Triangles with corners of their own, counter-clockwise seen from outside, as an STL file has them.
using Soup = std::vector<std::array<Vector3d, 3>>;

inline void add_quad(Soup& soup, const Vector3d& a, const Vector3d& b, const Vector3d& c, const Vector3d& d) {
  soup.push_back({a, b, c});
  soup.push_back({a, c, d});
}

inline Soup moved(Soup soup, const std::function<Vector3d(const Vector3d&)>& by) {
  for (auto& triangle : soup)
    for (Vector3d& p : triangle) p = by(p);
  return soup;
}

inline Soup inverted(Soup soup) {
  for (auto& triangle : soup) std::swap(triangle[1], triangle[2]);
  return soup;
}

inline Soup joined(Soup a, const Soup& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}

/// Unit cubes side by side, `filled(i, j, k)` saying which; only faces between full and empty, each cut into n × n squares.
inline Soup cubes(int nx, int ny, int nz, const std::function<bool(int, int, int)>& filled, int n = 1) {
  Soup soup;
  const auto full = [&](int i, int j, int k) {
    return i >= 0 && j >= 0 && k >= 0 && i < nx && j < ny && k < nz && filled(i, j, k);
  };
  for (int i = 0; i < nx; ++i)
    for (int j = 0; j < ny; ++j)
      for (int k = 0; k < nz; ++k) {
        if (!full(i, j, k)) continue;
        for (int axis = 0; axis < 3; ++axis)
          for (int side = 0; side < 2; ++side) {
            const int step = side == 0 ? -1 : 1;
            if (full(i + (axis == 0) * step, j + (axis == 1) * step, k + (axis == 2) * step)) continue;
            // Corners counted in whole steps, so that the faces on both sides of an edge get the same bits.
            Eigen::Vector3i u = Eigen::Vector3i::Unit((axis + 1) % 3), v = Eigen::Vector3i::Unit((axis + 2) % 3);
            if (side == 0) std::swap(u, v);
            const Eigen::Vector3i from = n * (Eigen::Vector3i(i, j, k) + side * Eigen::Vector3i::Unit(axis));
            const auto at = [&](const Eigen::Vector3i& p) -> Vector3d { return p.cast<double>() / n; };
            for (int a = 0; a < n; ++a)
              for (int b = 0; b < n; ++b) {
                const Eigen::Vector3i p = from + a * u + b * v;
                add_quad(soup, at(p), at(p + u), at(p + u + v), at(p + v));
              }
          }
      }
  return soup;
}

inline Soup box(const Vector3d& size, int n = 1) {
  return moved(cubes(1, 1, 1, [](int, int, int) { return true; }, n),
               [&](const Vector3d& p) -> Vector3d { return size.cwiseProduct(p); });
}

/// Three unit cubes: an L in the x-y plane with its corner at the origin.
inline Soup l_shape(int n = 1) {
  return cubes(2, 2, 1, [](int i, int j, int) { return i == 0 || j == 0; }, n);
}

/// A ball: the faces of a cube, each in n × n squares, blown up to the sphere. 12 n² triangles.
inline Soup ball(double radius, int n) {
  return moved(cubes(1, 1, 1, [](int, int, int) { return true; }, n), [&](const Vector3d& p) -> Vector3d {
    // Equal angles rather than equal lengths, so that the triangles are of like size.
    const Vector3d q = 2 * p - Vector3d::Ones();
    return radius * Vector3d(std::tan(q.x() * std::numbers::pi / 4), std::tan(q.y() * std::numbers::pi / 4),
                             std::tan(q.z() * std::numbers::pi / 4)).normalized();
  });
}

/// A ring about z: radius `big` to the middle of the tube, tube radius `small`; n pieces round the ring, m round the tube.
inline Soup torus(double big, double small, int n, int m) {
  const auto at = [&](int i, int j) {
    const double u = 2 * std::numbers::pi * (i % n) / n, v = 2 * std::numbers::pi * (j % m) / m;
    const double r = big + small * std::cos(v);
    return Vector3d(r * std::cos(u), r * std::sin(u), small * std::sin(v));
  };
  Soup soup;
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < m; ++j) add_quad(soup, at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
  return soup;
}

inline std::string binary_stl(const Soup& soup, std::string header = "made by a test") {
  header.resize(80, ' ');
  std::string bytes = header;
  const auto put = [&](const auto& value) { bytes.append(reinterpret_cast<const char*>(&value), sizeof value); };
  put(static_cast<std::uint32_t>(soup.size()));
  for (const auto& triangle : soup) {
    for (int k = 0; k < 3; ++k) put(0.0F);  // normal
    for (const Vector3d& p : triangle)
      for (int k = 0; k < 3; ++k) put(static_cast<float>(p[k]));
    put(std::uint16_t{0});
  }
  return bytes;
}

inline std::string ascii_stl(const Soup& soup, const std::string& name = "a part") {
  std::string text = "solid " + name + "\n";
  for (const auto& triangle : soup) {
    text += "  facet normal 0 0 0\n    outer loop\n";
    for (const Vector3d& p : triangle)
      text += fmt::format("      vertex {:.9g} {:.9g} {:.9g}\n", static_cast<float>(p.x()), static_cast<float>(p.y()),
                          static_cast<float>(p.z()));
    text += "    endloop\n  endfacet\n";
  }
  return text + "endsolid " + name + "\n";
}

}  // namespace mesh_shapes
