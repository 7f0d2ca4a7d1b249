#include "geometry/touching_hull.h"

#include <random>

#include <catch2/catch.hpp>

#include "geometry/convex_hull.h"
#include "geometry/mesh_digest.h"
#include "mesh_shapes.h"

namespace {

using namespace sinewright::geometry;
using namespace mesh_shapes;

std::vector<Vector3d> corners_of(const Soup& soup) {
  std::vector<Vector3d> points;
  for (const auto& t : soup) points.insert(points.end(), t.begin(), t.end());
  return points;
}

// How much further the points reach than the hull, over many directions: a lower bound of the distance between the two.
double lacking(const std::vector<Vector3d>& points, const std::vector<Vector3d>& hull) {
  std::mt19937 random(3);
  std::normal_distribution<double> normal;
  const auto reach = [](const std::vector<Vector3d>& of, const Vector3d& n) {
    double best = -1e300;
    for (const Vector3d& p : of) best = std::max(best, n.dot(p));
    return best;
  };
  double most = 0;
  for (int i = 0; i < 3000; ++i) {
    const Vector3d n = Vector3d(normal(random), normal(random), normal(random)).normalized();
    const double beyond = reach(points, n) - reach(hull, n);
    CHECK(beyond >= 0);  // the hull never reaches beyond the part
    most = std::max(most, beyond);
  }
  return most;
}

}  // namespace

TEST_CASE("touching hull: a part with few corners keeps exactly those of its convex hull", "[mesh]") {
  const TouchingHull cube = touching_hull(corners_of(box({1, 2, 3}, 6)));
  CHECK(cube.points.size() == 8);
  CHECK(cube.inside == 0);
  const TouchingHull l = touching_hull(corners_of(l_shape(5)));
  CHECK(l.points.size() == 10);  // the inner corner of the L does not count
  CHECK(l.inside < 1e-12);
  const std::vector<Vector3d> round = corners_of(ball(7, 5));
  CHECK(touching_hull(round).points.size() == 152);
  CHECK(lacking(round, touching_hull(round).points) < 1e-12);
}

TEST_CASE("touching hull: of a fine part it is near the whole hull, by no more than it says", "[mesh]") {
  const Eigen::Matrix3d R = Eigen::Quaterniond(0.4, -0.7, 0.2, 0.5).normalized().toRotationMatrix();
  const auto stretched = [&](const Vector3d& p) -> Vector3d { return R * Vector3d(3 * p.x(), p.y(), 0.5 * p.z()); };
  for (const Soup& soup : {ball(20, 24), torus(20, 6, 90, 50), moved(ball(10, 24), stretched)}) {
    const std::vector<Vector3d> points = corners_of(soup);
    double before = 1e300;
    for (const std::size_t most : {50, 100, 200}) {
      const TouchingHull hull = touching_hull(points, most);
      CHECK(hull.points.size() == most);
      const double measured = lacking(points, hull.points);
      CHECK(measured <= hull.inside);
      CHECK(measured > 0.5 * hull.inside);  // nor does it say much more than is true
      CHECK(hull.inside < 0.75 * before);
      before = hull.inside;
    }
  }
}

TEST_CASE("touching hull: on a ball its error falls with the number of corners", "[mesh][order]") {
  const std::vector<Vector3d> points = corners_of(ball(20, 60));
  for (const std::size_t most : {64, 128, 256}) CHECK(touching_hull(points, most).inside < 6 * 20.0 / static_cast<double>(most));
}

TEST_CASE("touching hull: flat parts in any direction, rounded to float32, are held without a fault", "[mesh]") {
  std::mt19937 random(5);
  std::normal_distribution<double> normal;
  for (int i = 0; i < 40; ++i) {
    const Eigen::Matrix3d R =
        Eigen::Quaterniond(normal(random), normal(random), normal(random), normal(random)).normalized().toRotationMatrix();
    const auto turned = [&](const Vector3d& p) -> Vector3d {
      return (R * Vector3d(60 * p.x(), 9 * p.y(), 0.4 * p.z()) + Vector3d(10, 20, 30)).cast<float>().cast<double>();
    };
    const std::vector<Vector3d> points = corners_of(moved(box({1, 1, 1}, 10), turned));
    const TouchingHull hull = touching_hull(points);
    CHECK(hull.points.size() < 20);
    CHECK(lacking(points, hull.points) <= hull.inside);
    CHECK(hull.inside < 1e-4);
  }
}

TEST_CASE("touching hull: the same points give the same bits", "[mesh][golden]") {
  const std::vector<Vector3d> points = corners_of(torus(20, 6, 60, 40));
  const TouchingHull a = touching_hull(points), b = touching_hull(points);
  REQUIRE(a.points.size() == b.points.size());
  for (std::size_t i = 0; i < a.points.size(); ++i) CHECK(a.points[i] == b.points[i]);
}
