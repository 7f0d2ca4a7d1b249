#pragma once

#include <vector>

#include <Eigen/Core>

#include "geometry/triangle_mesh.h"

namespace sinewright::geometry {

/// What a closed surface encloses, filled with density 1.
struct VolumeProperties {
  double volume = 0;                                   ///< negative when the triangles face inwards [m³]
  Eigen::Vector3d center = Eigen::Vector3d::Zero();    ///< [m]
  Eigen::Matrix3d inertia = Eigen::Matrix3d::Zero();   ///< about the centre [m⁵]
};

/// Sum over the signed tetrahedra between the middle of the points' box and the triangles:
///
///     ∫dV = d/6,   ∫x dV = d/24 s,   ∫x xᵀ dV = d/120 (a aᵀ + b bᵀ + c cᵀ + s sᵀ),   d = a·(b×c), s = a + b + c
///
/// Exact but for rounding where the surface is closed; see docs/theory/mass-properties.md. Shells add, and a shell that faces
/// inwards takes away. In the unit of the points; a volume of 0 leaves centre and inertia 0.
[[nodiscard]] VolumeProperties volume_of(const std::vector<Eigen::Vector3d>& points, const std::vector<Triangle>& triangles);

}  // namespace sinewright::geometry
