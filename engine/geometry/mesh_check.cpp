#include "geometry/mesh_check.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <numeric>
#include <optional>
#include <vector>

#include <Eigen/Geometry>
#include <fmt/format.h>

#include "geometry/mesh_crossing.h"

namespace sinewright::geometry {

namespace {

using Eigen::Vector3d;

std::string shown(const Vector3d& p) { return fmt::format("({:.6g}, {:.6g}, {:.6g})", p.x(), p.y(), p.z()); }

void refuse_degenerate(const TriangleMesh& mesh) {
  std::size_t count = 0, first = 0;
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    const Triangle& t = mesh.triangles[i];
    if (t[0] != t[1] && t[1] != t[2] && t[2] != t[0]) continue;
    if (count++ == 0) first = i;
  }
  if (count == 0) return;
  throw MeshProblem(fmt::format("{} of its {} triangles have two equal corners, the first being triangle {} at {}", count,
                                mesh.triangles.size(), first + 1, shown(mesh.points[mesh.triangles[first][0]])),
                    "triangles with three different corners",
                    "let a mesh program remove degenerate triangles, or export with a coarser tolerance");
}

// One side of a triangle, under the two points that it joins.
struct Side {
  std::uint64_t edge = 0;      // smaller point number, then larger
  std::uint32_t triangle = 0;
  bool upwards = false;        // runs from the smaller to the larger number
};

std::vector<Side> sorted_sides(const TriangleMesh& mesh) {
  std::vector<Side> sides;
  sides.reserve(3 * mesh.triangles.size());
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i)
    for (std::size_t k = 0; k < 3; ++k) {
      const std::uint64_t from = mesh.triangles[i][k], to = mesh.triangles[i][(k + 1) % 3];
      sides.push_back({std::min(from, to) << 32 | std::max(from, to), static_cast<std::uint32_t>(i), from < to});
    }
  std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
    return a.edge != b.edge ? a.edge < b.edge : a.triangle < b.triangle;
  });
  return sides;
}

// Number of edges with one fault, and the first of them in the order of the triangles.
struct Fault {
  std::size_t count = 0;
  Side first;
  std::uint32_t other = 0;  // the last triangle of that edge
  void add(const Side& side, const Side& last) {
    if (count++ == 0 || side.triangle < first.triangle) first = side, other = last.triangle;
  }
};

void refuse_unpaired(const TriangleMesh& mesh, const std::vector<Side>& sides) {
  Fault open, branched, wound;
  std::size_t edges = 0;
  for (std::size_t i = 0; i < sides.size();) {
    std::size_t end = i + 1;
    while (end < sides.size() && sides[end].edge == sides[i].edge) ++end;
    ++edges;
    if (end - i == 1) open.add(sides[i], sides[i]);
    if (end - i > 2) branched.add(sides[i], sides[end - 1]);
    if (end - i == 2 && sides[i].upwards == sides[i + 1].upwards) wound.add(sides[i], sides[i + 1]);
    i = end;
  }
  const auto where = [&](const Fault& fault) {
    const bool one = fault.other == fault.first.triangle;
    return fmt::format("the first from {} to {} ({} {}{})", shown(mesh.points[fault.first.edge >> 32]),
                       shown(mesh.points[fault.first.edge & 0xffffffff]), one ? "triangle" : "triangles",
                       fault.first.triangle + 1, one ? "" : fmt::format(" and {}", fault.other + 1));
  };
  if (open.count > 0)
    throw MeshProblem(fmt::format("the mesh is open: {} of its {} edges belong to one triangle only, {}", open.count, edges,
                                  where(open)),
                      "a closed mesh, in which every edge belongs to two triangles",
                      "export the part as a solid, or close the holes and join equal corners in a mesh program");
  if (branched.count > 0)
    throw MeshProblem(fmt::format("the mesh branches: {} of its {} edges belong to more than two triangles, {}",
                                  branched.count, edges, where(branched)),
                      "a closed mesh, in which every edge belongs to two triangles",
                      "unite bodies that meet along an edge or face, and remove walls inside the part");
  if (wound.count > 0)
    throw MeshProblem(fmt::format("neighbours face opposite ways: {} of the {} edges are run along twice in one direction, {}",
                                  wound.count, edges, where(wound)),
                      "triangles that all face outwards", "let a mesh program make the normals consistent");
}

void refuse_crossing(const TriangleMesh& mesh) {
  const std::optional<Crossing> crossing = find_crossing(mesh);
  if (!crossing) return;
  throw MeshProblem(fmt::format("the mesh intersects itself: triangles {} and {} go through each other at {}", crossing->a + 1,
                                crossing->b + 1, shown(crossing->at)),
                    "a surface that does not pass through itself",
                    "unite overlapping bodies before the export, or mend the surface there");
}

// The triangles of each shell, by their edges.
std::vector<std::vector<Triangle>> shells_of(const TriangleMesh& mesh, const std::vector<Side>& sides) {
  std::vector<std::size_t> group(mesh.triangles.size());
  std::iota(group.begin(), group.end(), std::size_t{0});
  const auto top = [&](std::size_t i) {
    while (group[i] != i) i = group[i] = group[group[i]];
    return i;
  };
  for (std::size_t i = 0; i + 1 < sides.size(); i += 2) {
    const std::size_t a = top(sides[i].triangle), b = top(sides[i + 1].triangle);
    group[std::max(a, b)] = std::min(a, b);
  }
  std::vector<std::vector<Triangle>> shells;
  std::vector<std::size_t> number(mesh.triangles.size(), 0);
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    if (top(i) == i) {
      number[i] = shells.size();
      shells.emplace_back();
    }
    shells[number[top(i)]].push_back(mesh.triangles[i]);
  }
  return shells;
}

// How many times a surface goes around a point: its solid angle over 4π. The angle of a triangle seen from the origin is
// tan(Ω/2) = a·(b×c) / (|a||b||c| + (a·b)|c| + (b·c)|a| + (c·a)|b|): A. van Oosterom and J. Strackee, IEEE Trans. Biomed.
// Eng. 30 (1983) 125 (from memory).
double times_around(const std::vector<Vector3d>& points, const std::vector<Triangle>& triangles, const Vector3d& from) {
  double angle = 0;
  for (const Triangle& t : triangles) {
    const Vector3d a = points[t[0]] - from, b = points[t[1]] - from, c = points[t[2]] - from;
    const double la = a.norm(), lb = b.norm(), lc = c.norm();
    angle += 2 * std::atan2(a.dot(b.cross(c)), la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb);
  }
  return angle / (4 * std::numbers::pi);
}

// The first shell that lies where its direction says it should not. The shells do not cross, so one point of each stands
// for all of it; where it happens to lie on another shell the count is no whole number, and a further point is tried.
void refuse_misplaced(const TriangleMesh& mesh, const std::vector<std::vector<Triangle>>& shells) {
  for (std::size_t s = 0; s < shells.size(); ++s) {
    const bool outwards = volume_of(mesh.points, shells[s]).volume > 0;
    double around = 0;
    Vector3d point = Vector3d::Zero();
    constexpr std::size_t kAttempts = 8;
    for (std::size_t attempt = 0; attempt < kAttempts; ++attempt) {
      const Triangle& t = shells[s][attempt * (shells[s].size() - 1) / (kAttempts - 1)];
      point = (mesh.points[t[0]] + mesh.points[t[1]] + mesh.points[t[2]]) / 3;
      around = 0;
      for (std::size_t other = 0; other < shells.size(); ++other)
        if (other != s) around += times_around(mesh.points, shells[other], point);
      if (std::abs(around - std::round(around)) < 1e-3) break;
    }
    if (std::lround(around) == (outwards ? 0 : 1)) continue;
    const std::string where = fmt::format("the shell at {}", shown(point));
    throw MeshProblem(outwards ? where + " lies inside another one and faces outwards as that does: its volume would count twice"
                               : where + " faces inwards but lies in no solid: its volume would be taken away",
                      "solids beside each other that face outwards, and hollows within them that face inwards",
                      outwards ? "unite the bodies before the export" : "turn that shell's normals round, or remove it");
  }
}

}  // namespace

SoundMesh check_mesh(const TriangleMesh& mesh) {
  if (mesh.triangles.empty()) throw MeshProblem("it has no triangle", "a closed surface of triangles", "");
  refuse_degenerate(mesh);
  const std::vector<Side> sides = sorted_sides(mesh);
  refuse_unpaired(mesh, sides);
  refuse_crossing(mesh);
  SoundMesh sound{volume_of(mesh.points, mesh.triangles), 0};
  if (!(sound.volume.volume > 0))
    throw sound.volume.volume < 0
        ? MeshProblem(fmt::format("the mesh is inverted: it encloses {:.6g} cubic units", sound.volume.volume),
                      "triangles whose corners run counter-clockwise, seen from outside",
                      "turn its normals round in a mesh program, or undo a mirroring before the export")
        : MeshProblem("the mesh encloses no volume", "the closed surface of a solid", "give a thin plate its thickness");
  const std::vector<std::vector<Triangle>> shells = shells_of(mesh, sides);
  sound.shells = shells.size();
  if (shells.size() > most_shells)
    throw MeshProblem(fmt::format("the mesh falls into {} separate shells", shells.size()),
                      fmt::format("one part, of at most {} shells", most_shells), "export the part alone, not the whole plate");
  if (shells.size() > 1) refuse_misplaced(mesh, shells);
  return sound;
}

}  // namespace sinewright::geometry
