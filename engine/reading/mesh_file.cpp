#include "reading/mesh_file.h"

#include <charconv>

#include <fmt/format.h>

#include "reading/describe.h"

namespace sinewright::reading {
namespace {

const char* const kFirstLine = "sinewright: mesh";

// A part of a finger or a thing to be grasped. What is far from it has the wrong unit.
constexpr double kSmallest = 1e-4;  // [m]
constexpr double kLargest = 5;      // [m]

struct WrittenDigest {
  std::string kind, about, form, fingerprint;
  int bytes = 0, triangles = 0, corners = 0, shells = 0;
  double volume = 0, inside = 0;
  std::vector<double> center, inertia;
  std::vector<std::vector<double>> hull;
};

Kind<WrittenDigest> digest_kind() {
  constexpr int most = 2'000'000'000;
  Record<WrittenDigest> record("mesh_file", "The digest of an STL file, in the file's unit.");
  record.need("sinewright", &WrittenDigest::kind, word<std::string>({{"mesh", "mesh"}}), "the kind of file")
      .need("about", &WrittenDigest::about, text(), "what this is")
      .need("form", &WrittenDigest::form, text(), "binary or ASCII")
      .need("bytes", &WrittenDigest::bytes, whole_number(0, most), "length of the file")
      .need("fingerprint", &WrittenDigest::fingerprint, text(), "FNV-1a of its bytes, 64 bits")
      .need("triangles", &WrittenDigest::triangles, whole_number(1, most), "in the file")
      .need("corners", &WrittenDigest::corners, whole_number(1, most), "different ones")
      .need("shells", &WrittenDigest::shells, whole_number(1, most), "pieces of surface")
      .need("volume", &WrittenDigest::volume, number(positive()), "enclosed")
      .need("center", &WrittenDigest::center, list_of(number(), "3 numbers", 3, 3), "of the volume")
      .need("inertia", &WrittenDigest::inertia, list_of(number(), "6 numbers", 6, 6), "of density 1")
      .need("inside", &WrittenDigest::inside, number(not_negative()), "hull inside the part's own hull")
      .need("hull", &WrittenDigest::hull, list_of(list_of(number(), "3 numbers", 3, 3), "4 or more points", 4), "corners");
  return record.kind();
}

Kind<Name> file_name() {
  Kind<Name> kind;
  kind.shown = text().shown;
  kind.read = [](const Node& node) { return Name{text().read(node), &node}; };
  return kind;
}

}  // namespace

Kind<WrittenMesh> mesh_shape() {
  Record<WrittenMesh> record(
      "stl", "A part from an STL file: a closed surface. Its volume gives mass; what it touches with is its convex hull.");
  record
      .need("file", &WrittenMesh::file, file_name(), "STL file, binary or ASCII, relative to the folder of this file")
      .need("unit", &WrittenMesh::unit,
            word<double>({{"mm", 1e-3}, {"cm", 1e-2}, {"m", 1}, {"um", 1e-6}, {"inch", 25.4e-3}}),
            "what 1 in the file is; an STL file does not say")
      .may("at", &WrittenMesh::at, vector3("m"), Absent{"the origin"}, "where the file's origin lies, body frame")
      .may("turned", &WrittenMesh::turned, turned(), Absent{"not turned"}, "the file's axes in the body frame");
  return record.kind();
}

std::string written_digest(const geometry::MeshDigest& digest) {
  const Matrix3d& I = digest.volume.inertia;
  const Vector3d& c = digest.volume.center;
  std::string text = fmt::format(
      "{}\n"
      "about: digest of an STL file, kept in its place; lengths in the file's unit, density 1\n"
      "form: {}\nbytes: {}\nfingerprint: fnv1a-{:016x}\ntriangles: {}\ncorners: {}\nshells: {}\n"
      "volume: {}\ncenter: [{}, {}, {}]\ninertia: [{}, {}, {}, {}, {}, {}]\ninside: {}\nhull:\n",
      kFirstLine, digest.form, digest.bytes, digest.fingerprint, digest.triangles, digest.corners, digest.shells,
      digest.volume.volume, c.x(), c.y(), c.z(), I(0, 0), I(1, 1), I(2, 2), I(0, 1), I(1, 2), I(2, 0), digest.hull.inside);
  for (const Vector3d& p : digest.hull.points) text += fmt::format("  - [{}, {}, {}]\n", p.x(), p.y(), p.z());
  return text;
}

bool is_digest(std::string_view text) { return text.starts_with(kFirstLine); }

geometry::MeshDigest read_digest(const Node& root) {
  static const Kind<WrittenDigest> kind = digest_kind();
  const WrittenDigest written = kind.read(root);
  geometry::MeshDigest digest;
  digest.form = written.form;
  digest.bytes = static_cast<std::size_t>(written.bytes);
  const std::string hex = written.fingerprint.substr(std::min<std::size_t>(written.fingerprint.size(), 6));
  std::from_chars(hex.data(), hex.data() + hex.size(), digest.fingerprint, 16);
  digest.triangles = static_cast<std::size_t>(written.triangles);
  digest.corners = static_cast<std::size_t>(written.corners);
  digest.shells = static_cast<std::size_t>(written.shells);
  digest.volume.volume = written.volume;
  digest.volume.center = Vector3d(written.center[0], written.center[1], written.center[2]);
  const std::vector<double>& i = written.inertia;
  digest.volume.inertia << i[0], i[3], i[5], i[3], i[1], i[4], i[5], i[4], i[2];
  digest.hull.inside = written.inside;
  for (const std::vector<double>& p : written.hull) digest.hull.points.emplace_back(p[0], p[1], p[2]);
  return digest;
}

model::Mesh settled_mesh(const WrittenMesh& written, const geometry::MeshDigest& digest) {
  model::Mesh mesh = geometry::placed_mesh(digest, written.unit, written.at, written.turned);
  mesh.file = written.file.text;
  double extent = 0;
  for (const Vector3d& p : mesh.points) extent = std::max(extent, (p - mesh.points.front()).norm());
  if (extent < kSmallest || extent > kLargest) {
    const Node& unit = *written.file.node->parent->find("unit");
    throw complaint(unit.place(),
                    fmt::format("{} = {} is not allowed: the part would be {:.3g} mm long", unit.path(), shown(unit), 1e3 * extent),
                    fmt::format("a part between {:g} mm and {:g} m", 1e3 * kSmallest, kLargest),
                    "the unit is that of the program which wrote the file, mostly mm");
  }
  return mesh;
}

}  // namespace sinewright::reading
