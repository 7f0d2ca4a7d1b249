#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include <Eigen/Core>

#include "geometry/mesh_volume.h"
#include "geometry/touching_hull.h"
#include "model/shape.h"

namespace sinewright::geometry {

/// All that the engine needs of an STL file, and what identifies the file. Lengths in the file's own unit.
struct MeshDigest {
  std::string form;               ///< "binary" or "ASCII"
  std::size_t bytes = 0;          ///< length of the file
  std::uint64_t fingerprint = 0;  ///< of its bytes, FNV-1a with 64 bits
  std::size_t triangles = 0, corners = 0, shells = 0;
  VolumeProperties volume;
  TouchingHull hull;
};

/// Reads an STL file, checks that it bounds a solid and takes what is needed of it.
/// @throws MeshProblem as read_stl and check_mesh.
[[nodiscard]] MeshDigest digest_mesh(std::string_view bytes);

/// FNV-1a with 64 bits: h = (h xor byte) · 1099511628211, beginning at 14695981039346656037 (Fowler, Noll and Vo; from
/// memory). Tells an exchanged file from the old one; it is no protection against intent.
[[nodiscard]] std::uint64_t fingerprint_of(std::string_view bytes);

/// The digest as a shape of a body.
///
/// @param unit  the file's unit [m].
/// @param at, turned  where the file's origin and axes (as columns) lie in the body's frame [m].
[[nodiscard]] model::Mesh placed_mesh(const MeshDigest& digest, double unit, const Eigen::Vector3d& at,
                                      const Eigen::Matrix3d& turned);

}  // namespace sinewright::geometry
