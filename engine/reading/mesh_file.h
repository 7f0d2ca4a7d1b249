#pragma once

#include <string>

#include "geometry/mesh_digest.h"
#include "reading/written.h"

/// STL files that a model or scenario names. What is kept of one with a record is its digest, in the manner of our own files,
/// in place of the file.
namespace sinewright::reading {

/// The key `stl` of shapes and solids.
[[nodiscard]] Kind<WrittenMesh> mesh_shape();

/// A digest as text, and back without loss.
[[nodiscard]] std::string written_digest(const geometry::MeshDigest& digest);
[[nodiscard]] geometry::MeshDigest read_digest(const Node& root);

/// True for a text that written_digest made.
[[nodiscard]] bool is_digest(std::string_view text);

/// The shape that a written one stands for.
/// @param digest  of the file that it names.
/// @throws InvalidInput at the file's or the unit's place if the part would have no sensible size.
[[nodiscard]] model::Mesh settled_mesh(const WrittenMesh& written, const geometry::MeshDigest& digest);

}  // namespace sinewright::reading
