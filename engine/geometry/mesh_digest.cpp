#include "geometry/mesh_digest.h"

#include <cmath>

#include "geometry/mesh_check.h"
#include "geometry/stl.h"

namespace sinewright::geometry {

std::uint64_t fingerprint_of(std::string_view bytes) {
  std::uint64_t h = 14695981039346656037ull;
  for (const char c : bytes) h = (h ^ static_cast<unsigned char>(c)) * 1099511628211ull;
  return h;
}

MeshDigest digest_mesh(std::string_view bytes) {
  const TriangleMesh mesh = read_stl(bytes);
  const SoundMesh sound = check_mesh(mesh);
  MeshDigest digest;
  digest.form = is_ascii_stl(bytes) ? "ASCII" : "binary";
  digest.bytes = bytes.size();
  digest.fingerprint = fingerprint_of(bytes);
  digest.triangles = mesh.triangles.size();
  digest.corners = mesh.points.size();
  digest.shells = sound.shells;
  digest.volume = sound.volume;
  try {
    digest.hull = touching_hull(mesh.points);
  } catch (const MeshProblem&) {
    throw;
  } catch (const InvalidInput&) {
    throw MeshProblem("its convex hull cannot be made: the part is almost flat", "a part with a thickness",
                      "check the part in the program that made it");
  }
  return digest;
}

model::Mesh placed_mesh(const MeshDigest& digest, double unit, const Eigen::Vector3d& at, const Eigen::Matrix3d& turned) {
  const auto placed = [&](const Eigen::Vector3d& p) -> Eigen::Vector3d { return at + turned * (unit * p); };
  model::Mesh mesh;
  for (const Eigen::Vector3d& p : digest.hull.points) mesh.points.push_back(placed(p));
  mesh.inside = unit * digest.hull.inside;
  mesh.volume = unit * unit * unit * digest.volume.volume;
  mesh.center = placed(digest.volume.center);
  mesh.inertia = std::pow(unit, 5) * (turned * digest.volume.inertia * turned.transpose());
  mesh.triangles = digest.triangles;
  return mesh;
}

}  // namespace sinewright::geometry
