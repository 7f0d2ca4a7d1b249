#include "geometry/mesh_crossing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <vector>

#include <Eigen/Geometry>

namespace sinewright::geometry {

namespace {

using Eigen::Vector3d;
using Box = Eigen::AlignedBox3d;

constexpr std::size_t kLeaf = 4;              // triangles
constexpr std::size_t kMostPairs = 400'000'000;  // some seconds

struct Node {
  Box box;
  std::size_t begin = 0, end = 0;  // its triangles, in the order of the tree
  std::size_t left = 0;            // its children are left and left + 1; 0: a leaf
};

struct Plane {
  Vector3d normal = Vector3d::Zero();  // unit
  double offset = 0;                   // normal · x on the plane
  double height = 0;                   // least height of the triangle
};

class Search {
 public:
  explicit Search(const TriangleMesh& mesh) : mesh_(mesh), order_(mesh.triangles.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    double largest = 0;
    for (const Vector3d& p : mesh.points) largest = std::max(largest, p.cwiseAbs().maxCoeff());
    tolerance_ = std::ldexp(largest, -22);
    nodes_.reserve(2 * order_.size() / kLeaf + 16);
    boxes_.reserve(order_.size());
    middles_.reserve(order_.size());
    planes_.reserve(order_.size());
    for (const Triangle& t : mesh.triangles) {
      planes_.push_back(plane_of(t));
      Box box(mesh.points[t[0]]);
      box.extend(mesh.points[t[1]]).extend(mesh.points[t[2]]);
      boxes_.push_back(box);
      middles_.push_back(box.center());
    }
    nodes_.emplace_back();
    build(0, 0, order_.size());
  }

  std::optional<Crossing> find() {
    within(0);
    return found_;
  }

 private:
  [[nodiscard]] Plane plane_of(const Triangle& t) const {
    const Vector3d ab = mesh_.points[t[1]] - mesh_.points[t[0]], ac = mesh_.points[t[2]] - mesh_.points[t[0]];
    const Vector3d normal = ab.cross(ac);
    const double twice_area = normal.norm();
    const double longest = std::sqrt(std::max({ab.squaredNorm(), ac.squaredNorm(), (ac - ab).squaredNorm()}));
    Plane plane;
    if (!(twice_area > tolerance_ * longest)) return plane;  // a needle
    plane.height = twice_area / longest;
    plane.normal = normal / twice_area;
    plane.offset = plane.normal.dot(mesh_.points[t[0]]);
    return plane;
  }

  void build(std::size_t node, std::size_t begin, std::size_t end) {
    Box box, middles;
    for (std::size_t i = begin; i < end; ++i) {
      box.extend(boxes_[order_[i]]);
      middles.extend(middles_[order_[i]]);
    }
    nodes_[node] = {box, begin, end, 0};
    if (end - begin <= kLeaf) return;
    Eigen::Index axis = 0;
    middles.sizes().maxCoeff(&axis);
    const std::size_t half = begin + (end - begin) / 2;
    const auto at = [&](std::size_t i) { return order_.begin() + static_cast<std::ptrdiff_t>(i); };
    // The index breaks ties, so that the same mesh gives the same tree everywhere.
    std::nth_element(at(begin), at(half), at(end), [&](std::size_t a, std::size_t b) {
      return std::pair(middles_[a][axis], a) < std::pair(middles_[b][axis], b);
    });
    const std::size_t left = nodes_.size();
    nodes_[node].left = left;
    nodes_.resize(left + 2);
    build(left, begin, half);
    build(left + 1, half, end);
  }

  void within(std::size_t n) {
    if (found_) return;
    const Node& node = nodes_[n];
    if (node.left == 0) {
      for (std::size_t i = node.begin; i < node.end; ++i)
        for (std::size_t j = i + 1; j < node.end; ++j) pair(order_[i], order_[j]);
      return;
    }
    within(node.left);
    within(node.left + 1);
    between(node.left, node.left + 1);
  }

  void between(std::size_t n, std::size_t m) {
    if (found_) return;
    const Node& a = nodes_[n];
    const Node& b = nodes_[m];
    if (!a.box.intersects(b.box)) return;
    if (a.left == 0 && b.left == 0) {
      for (std::size_t i = a.begin; i < a.end; ++i)
        for (std::size_t j = b.begin; j < b.end; ++j) pair(order_[i], order_[j]);
    } else if (b.left == 0 || (a.left != 0 && a.end - a.begin >= b.end - b.begin)) {
      between(a.left, m);
      between(a.left + 1, m);
    } else {
      between(n, b.left);
      between(n, b.left + 1);
    }
  }

  void pair(std::size_t i, std::size_t j) {
    if (found_) return;
    if (++pairs_ > kMostPairs)
      throw MeshProblem("it cannot be searched for self-intersections: too many triangles lie in one another's reach",
                        "triangles that are small beside the part",
                        "export the part with another setting, or let a mesh program even out its triangles");
    if (planes_[i].height == 0 || planes_[j].height == 0 || !boxes_[i].intersects(boxes_[j])) return;
    const Triangle& s = mesh_.triangles[i];
    const Triangle& t = mesh_.triangles[j];
    std::size_t common = 0, of_s = 0, of_t = 0;
    for (std::size_t a = 0; a < 3; ++a)
      for (std::size_t b = 0; b < 3; ++b)
        if (s[a] == t[b]) {
          ++common;
          of_s = a;
          of_t = b;
        }
    if (common >= 2) return;
    std::optional<Vector3d> at;
    if (common == 1) {
      at = through(s[(of_s + 1) % 3], s[(of_s + 2) % 3], j);
      if (!at) at = through(t[(of_t + 1) % 3], t[(of_t + 2) % 3], i);
    } else {
      for (std::size_t k = 0; k < 3 && !at; ++k) at = through(s[k], s[(k + 1) % 3], j);
      for (std::size_t k = 0; k < 3 && !at; ++k) at = through(t[k], t[(k + 1) % 3], i);
    }
    if (at) found_ = Crossing{std::min(i, j), std::max(i, j), *at};
  }

  // Where the edge from p to q goes through a triangle.
  [[nodiscard]] std::optional<Vector3d> through(std::size_t from, std::size_t to, std::size_t triangle) const {
    const Vector3d& p = mesh_.points[from];
    const Vector3d& q = mesh_.points[to];
    const Plane& plane = planes_[triangle];
    const double at_p = plane.normal.dot(p) - plane.offset;
    const double at_q = plane.normal.dot(q) - plane.offset;
    if (std::min(at_p, at_q) >= -tolerance_ || std::max(at_p, at_q) <= tolerance_) return std::nullopt;
    // Rounding tilts a triangle by up to its share of the height, and so shifts its plane at a distance.
    const Triangle& t = mesh_.triangles[triangle];
    const auto within_rounding = [&](const Vector3d& end, double at) {
      return std::abs(at) <= tolerance_ * (1 + (end - mesh_.points[t[0]]).norm() / plane.height);
    };
    if (within_rounding(p, at_p) || within_rounding(q, at_q)) return std::nullopt;
    const Vector3d x = p + at_p / (at_p - at_q) * (q - p);
    for (std::size_t k = 0; k < 3; ++k) {
      const Vector3d& corner = mesh_.points[t[k]];
      const Vector3d side = mesh_.points[t[(k + 1) % 3]] - corner;
      if (plane.normal.dot(side.cross(x - corner)) < -tolerance_ * side.norm()) return std::nullopt;
    }
    return x;
  }

  const TriangleMesh& mesh_;
  std::vector<std::size_t> order_;
  std::vector<Box> boxes_;
  std::vector<Vector3d> middles_;
  std::vector<Plane> planes_;
  std::vector<Node> nodes_;
  double tolerance_ = 0;
  std::size_t pairs_ = 0;
  std::optional<Crossing> found_;
};

}  // namespace

std::optional<Crossing> find_crossing(const TriangleMesh& mesh) {
  if (mesh.triangles.empty()) return std::nullopt;
  return Search(mesh).find();
}

}  // namespace sinewright::geometry
