#pragma once

#include <cstddef>

#include "geometry/mesh_volume.h"
#include "geometry/triangle_mesh.h"

namespace sinewright::geometry {

/// More separate shells than this are refused: a part is one, with a few hollows.
inline constexpr std::size_t most_shells = 100;

/// What a sound mesh is found to be.
struct SoundMesh {
  VolumeProperties volume;  ///< in the unit of the points
  std::size_t shells = 0;   ///< pieces of surface that hang together by edges: bodies, and hollows within them
};

/// Refuses a mesh that does not bound a solid. In this order, naming the first place of each fault:
///
/// - degenerate: a triangle with two equal corners (three on one line may be: they enclose nothing, and rounding makes and
///   unmakes them);
/// - open: an edge of one triangle only;
/// - branched: an edge of more than two triangles;
/// - wound: an edge that its two triangles run along in the same direction, so that one of them faces inwards;
/// - self-intersecting: two triangles go through each other (find_crossing);
/// - inverted: a negative volume;
/// - nested: a shell that lies within a solid and faces outwards would count twice, one in the open that faces inwards would
///   be taken away. Told by the solid angle under which the other shells are seen: 4π for each one around, −4π for a hollow.
///
/// Nothing is mended: what the file means is for its author to say.
/// @throws MeshProblem.
[[nodiscard]] SoundMesh check_mesh(const TriangleMesh& mesh);

}  // namespace sinewright::geometry
