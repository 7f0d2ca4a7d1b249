#pragma once

#include <cstddef>
#include <string_view>

#include "geometry/triangle_mesh.h"

namespace sinewright::geometry {

/// More triangles are refused: a part of a hand needs some thousands, and the checks take seconds beyond.
inline constexpr std::size_t most_triangles = 2'000'000;

/// True when the bytes are to be read as the ASCII form: they begin with "solid" and no zero byte stands where a binary
/// file has its count. Many programs write "solid" into the header of binary files too.
[[nodiscard]] bool is_ascii_stl(std::string_view bytes);

/// Reads an STL file, binary or ASCII, and welds equal corners.
///
/// Binary: 80 bytes of header, the number of triangles n (uint32), then for each a normal and three corners (twelve float32)
/// and two bytes; little-endian; so that the file has 84 + 50 n bytes. ASCII: `solid`, then for each triangle `facet normal`,
/// `outer loop`, three times `vertex`, `endloop`, `endfacet`, then `endsolid`; several solids may follow one another. Common
/// practice, no source.
///
/// Coordinates are rounded to float32, which is all that the binary form has: both forms of one mesh give the same bits.
/// Only corners that are then equal are one point; corners that are nearly equal stay apart (and leave the mesh open, which
/// the checks say). Normals are not read: the order of the corners decides what is outside.
///
/// @returns points in the file's unit, numbered as they first appear.
/// @throws MeshProblem if the file is empty, cut off, too long, has a false count, a number that is not finite, or more than
///         `most_triangles`; naming the triangle (from 1) and, in the ASCII form, the line.
[[nodiscard]] TriangleMesh read_stl(std::string_view bytes);

}  // namespace sinewright::geometry
