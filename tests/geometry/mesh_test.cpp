#include "geometry/mesh_check.h"

#include <cmath>
#include <numbers>
#include <random>

#include <catch2/catch.hpp>

#include "geometry/mass_properties.h"
#include "geometry/mesh_crossing.h"
#include "geometry/mesh_digest.h"
#include "geometry/stl.h"
#include "mesh_shapes.h"

namespace {

using namespace sinewright;
using namespace sinewright::geometry;
using namespace mesh_shapes;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;
using Catch::Matchers::WithinRel;
using Eigen::Matrix3d;
using std::numbers::pi;

Matrix3d some_rotation() { return Eigen::Quaterniond(0.4, -0.7, 0.2, 0.5).normalized().toRotationMatrix(); }

Soup shifted(const Soup& soup, const Vector3d& by) {
  return moved(soup, [&](const Vector3d& p) -> Vector3d { return p + by; });
}
Soup rotated(const Soup& soup, const Matrix3d& R) {
  return moved(soup, [&](const Vector3d& p) -> Vector3d { return R * p; });
}

// Corners in double precision, not rounded as in a file.
VolumeProperties exact(const Soup& soup) {
  std::vector<Vector3d> points;
  std::vector<Triangle> triangles;
  for (const auto& t : soup) {
    triangles.push_back({points.size(), points.size() + 1, points.size() + 2});
    points.insert(points.end(), t.begin(), t.end());
  }
  return volume_of(points, triangles);
}

void check_equal(const VolumeProperties& a, const VolumeProperties& b, double tolerance) {
  CHECK_THAT(a.volume, WithinRel(b.volume, tolerance));
  const double length = std::cbrt(std::abs(b.volume));
  CHECK((a.center - b.center).norm() < tolerance * length);
  CHECK((a.inertia - b.inertia).norm() < tolerance * b.inertia.norm());
}

std::string trouble_of(const Soup& soup) {
  try {
    (void)check_mesh(read_stl(binary_stl(soup)));
  } catch (const MeshProblem& problem) {
    CHECK_FALSE(problem.needed.empty());
    return problem.trouble;
  }
  return "";
}

// Errors of a quantity at n and 2 n: log2 of their ratio is the order.
double order(double coarse, double fine) { return std::log2(std::abs(coarse) / std::abs(fine)); }

}  // namespace

TEST_CASE("mesh: a box has the mass properties of its closed form, however it is cut up", "[mesh][mass][analytic]") {
  const Vector3d size(4, 1, 2.5);
  const model::MassProperties closed = mass_of({model::Box{size / 2, size}, 1});
  for (const int n : {1, 3, 10})
    check_equal(exact(box(size, n)), {closed.mass, closed.center, closed.inertia}, 1e-13);
}

TEST_CASE("mesh: an L of three cubes has the sums of their closed forms", "[mesh][mass][analytic]") {
  // Three unit cubes at (½, ½, ½), (3/2, ½, ½), (½, 3/2, ½); the common centre is (5/6, 5/6, ½). A unit cube has 1/6 about
  // each axis; parallel axes: dx² = dy² = (1/9 + 4/9 + 1/9) = 2/3, dz = 0, Σ dx dy = 1/9 − 2/9 − 2/9 = −1/3.
  Matrix3d inertia;
  inertia << 0.5 + 2.0 / 3, 1.0 / 3, 0, 1.0 / 3, 0.5 + 2.0 / 3, 0, 0, 0, 0.5 + 4.0 / 3;
  const VolumeProperties closed{3, Vector3d(5.0 / 6, 5.0 / 6, 0.5), inertia};
  for (const int n : {1, 4}) {
    check_equal(exact(l_shape(n)), closed, 1e-13);
    const SoundMesh sound = check_mesh(read_stl(binary_stl(l_shape(n))));
    check_equal(sound.volume, closed, 1e-6);  // thirds and quarters are rounded to float32 in the file
    CHECK(sound.shells == 1);
  }
}

TEST_CASE("mesh: a ball converges to its closed form with the second power of the edge length", "[mesh][mass][analytic][order]") {
  const double r = 3;
  const double volume = 4 * pi / 3 * r * r * r, inertia = 0.4 * volume * r * r;
  const VolumeProperties coarse = exact(ball(r, 16)), fine = exact(ball(r, 32));
  CHECK(order(coarse.volume - volume, fine.volume - volume) == Approx(2).margin(0.02));
  CHECK(order(coarse.inertia(0, 0) - inertia, fine.inertia(0, 0) - inertia) == Approx(2).margin(0.02));
  CHECK_THAT(exact(ball(r, 64)).volume, WithinRel(volume, 1e-3));
  CHECK(fine.volume < volume);  // corners on the sphere: all of it lies inside
  CHECK(fine.center.norm() < 1e-12);
}

TEST_CASE("mesh: a torus converges to its closed form with the second power of the edge length", "[mesh][mass][analytic][order]") {
  // V = 2π² R a², I_z = V (R² + ¾ a²), I_x = V (R²/2 + 5/8 a²): common practice, no source.
  const double R = 5, a = 2;
  const double volume = 2 * pi * pi * R * a * a;
  const double about = volume * (R * R + 0.75 * a * a), across = volume * (0.5 * R * R + 0.625 * a * a);
  const VolumeProperties coarse = exact(torus(R, a, 48, 32)), fine = exact(torus(R, a, 96, 64));
  CHECK(order(coarse.volume - volume, fine.volume - volume) == Approx(2).margin(0.02));
  CHECK(order(coarse.inertia(2, 2) - about, fine.inertia(2, 2) - about) == Approx(2).margin(0.02));
  CHECK(order(coarse.inertia(0, 0) - across, fine.inertia(0, 0) - across) == Approx(2).margin(0.02));
  const VolumeProperties finest = exact(torus(R, a, 600, 400));
  CHECK_THAT(finest.volume, WithinRel(volume, 1e-4));
  CHECK_THAT(finest.inertia(2, 2), WithinRel(about, 1e-4));
  CHECK_THAT(finest.inertia(0, 0), WithinRel(across, 1e-4));
}

TEST_CASE("mesh: a moved and turned part obeys the theorems of translation and rotation", "[mesh][mass][analytic]") {
  const Matrix3d R = some_rotation();
  for (const Soup& soup : {l_shape(3), torus(5, 2, 20, 12)}) {
    const VolumeProperties own = exact(soup);
    check_equal(exact(rotated(soup, R)), {own.volume, R * own.center, R * own.inertia * R.transpose()}, 1e-12);
    const Vector3d by(70, -30, 110);
    const VolumeProperties far = exact(shifted(soup, by));
    check_equal(far, {own.volume, own.center + by, own.inertia}, 1e-11);
    // About the origin the inertia grows by V (|c|² 1 − c cᵀ): the second moment of the far part, found by putting it together
    // with its mirror image, whose common centre is the origin.
    const VolumeProperties pair = exact(joined(shifted(soup, by), inverted(moved(shifted(soup, by), [](const Vector3d& p) -> Vector3d { return -p; }))));
    const Vector3d c = far.center;
    const Matrix3d grown = own.inertia + own.volume * (c.squaredNorm() * Matrix3d::Identity() - c * c.transpose());
    check_equal(pair, {2 * own.volume, Vector3d::Zero(), 2 * grown}, 1e-11);
  }
}

TEST_CASE("mesh: the unit, the place and the density of a part carry over to its body", "[mesh][mass][analytic]") {
  const MeshDigest digest = digest_mesh(binary_stl(box({40, 10, 25})));
  const Matrix3d R = some_rotation();
  const Vector3d at(0.003, -0.002, 0.05);
  const model::MassProperties mesh = mass_of({placed_mesh(digest, 1e-3, at, R), 1010});
  const Vector3d size(0.040, 0.010, 0.025);
  const model::MassProperties closed = mass_of({model::Box{at + R * (size / 2), size, R}, 1010});
  CHECK_THAT(mesh.mass, WithinRel(closed.mass, 1e-12));
  CHECK((mesh.center - closed.center).norm() < 1e-15);
  CHECK((mesh.inertia - closed.inertia).norm() < 1e-12 * closed.inertia.norm());
  for (const Vector3d& p : placed_mesh(digest, 1e-3, at, R).points) {
    const Vector3d own = R.transpose() * (p - at);
    CHECK((own - size / 2).cwiseAbs().isApprox(size / 2, 1e-12));
  }
}

TEST_CASE("mesh: a hollow is taken away and bodies side by side add up", "[mesh][mass][analytic]") {
  const Soup outer = box({5, 5, 5}), inner = shifted(box({1, 2, 1}), {1, 1, 1});
  const SoundMesh hollow = check_mesh(read_stl(binary_stl(joined(outer, inverted(inner)))));
  CHECK(hollow.shells == 2);
  CHECK_THAT(hollow.volume.volume, WithinRel(123.0, 1e-12));
  CHECK((hollow.volume.center - (125 * Vector3d(2.5, 2.5, 2.5) - 2 * Vector3d(1.5, 2, 1.5)) / 123).norm() < 1e-12);
  // A body in a hollow, and one beside: four shells.
  const Soup all = joined(joined(joined(outer, inverted(shifted(box({3, 3, 3}), {1, 1, 1}))), shifted(box({1, 1, 1}), {2, 2, 2})),
                          shifted(box({2, 1, 1}), {9, 0, 0}));
  const SoundMesh four = check_mesh(read_stl(binary_stl(all)));
  CHECK(four.shells == 4);
  CHECK_THAT(four.volume.volume, WithinRel(125.0 - 27 + 1 + 2, 1e-12));
}

TEST_CASE("mesh: an open mesh is refused with the number and place of its open edges", "[mesh][errors]") {
  Soup soup = box({3, 3, 3}, 3);
  soup.erase(soup.begin() + 40);
  CHECK_THAT(trouble_of(soup), StartsWith("the mesh is open: 3 of its 162 edges belong to one triangle only, the first from ("));
  CHECK_THAT(trouble_of({box({1, 1, 1})[0]}), StartsWith("the mesh is open: 3 of its 3 edges"));
  // Corners that are nearly equal are not equal.
  Soup torn = box({1, 1, 1});
  torn[3][1] += Vector3d(1e-6, 0, 0);
  CHECK_THAT(trouble_of(torn), StartsWith("the mesh is open: "));
}

TEST_CASE("mesh: one that is inverted as a whole or in part is refused", "[mesh][errors]") {
  CHECK_THAT(trouble_of(inverted(box({1, 2, 3}))), StartsWith("the mesh is inverted: it encloses -6 cubic units"));
  Soup part = ball(5, 4);
  std::swap(part[17][1], part[17][2]);
  CHECK_THAT(trouble_of(part), StartsWith("neighbours face opposite ways: 3 of the 288 edges"));
  CHECK_THAT(trouble_of(part), Contains("(triangles 9 and 18)"));
}

TEST_CASE("mesh: one whose edges have more than two triangles is refused", "[mesh][errors]") {
  const Soup two = joined(box({1, 1, 1}), shifted(box({1, 1, 1}), {1, 1, 0}));
  CHECK_THAT(trouble_of(two), StartsWith("the mesh branches: 1 of its 35 edges belong to more than two triangles, the first from "
                                         "(1, 1, ") && Contains("(1, 1, 1)"));
  CHECK_THAT(trouble_of(joined(box({1, 1, 1}), box({1, 1, 1}))), StartsWith("the mesh branches: "));
}

TEST_CASE("mesh: triangles with equal corners are refused with their number, and a surface without volume", "[mesh][errors]") {
  Soup soup = box({1, 1, 1});
  soup.push_back({Vector3d(0, 0, 0), Vector3d(0, 0, 0), Vector3d(1, 0, 0)});
  CHECK_THAT(trouble_of(soup), StartsWith("1 of its 13 triangles have two equal corners, the first being triangle 13 at (0, 0, 0)"));
  // Two triangles back to back are closed and enclose nothing.
  const Soup flat = {{Vector3d(0, 0, 0), Vector3d(1, 0, 0), Vector3d(0, 1, 0)}, {Vector3d(0, 0, 0), Vector3d(0, 1, 0), Vector3d(1, 0, 0)}};
  CHECK_THAT(trouble_of(flat), StartsWith("the mesh encloses no volume"));
}

TEST_CASE("mesh: shells that would count twice or be taken away are refused", "[mesh][errors]") {
  const Soup outer = box({5, 5, 5}), inner = shifted(box({1, 1, 1}), {2, 2, 2});
  CHECK_THAT(trouble_of(joined(outer, inner)), Contains("lies inside another one and faces outwards"));
  CHECK_THAT(trouble_of(joined(inner, outer)), Contains("lies inside another one and faces outwards"));
  CHECK_THAT(trouble_of(joined(outer, shifted(inverted(inner), {9, 0, 0}))), Contains("faces inwards but lies in no solid"));
  const Soup twice = joined(joined(outer, inverted(shifted(box({3, 3, 3}), {1, 1, 1}))), inverted(inner));
  CHECK_THAT(trouble_of(twice), Contains("faces inwards but lies in no solid"));  // a hollow within a hollow
  Soup plate;
  for (int i = 0; i <= static_cast<int>(most_shells); ++i) plate = joined(plate, shifted(box({1, 1, 1}), {2.0 * i, 0, 0}));
  CHECK_THAT(trouble_of(plate), StartsWith("the mesh falls into 101 separate shells"));
}

TEST_CASE("mesh: surfaces that go through each other or themselves are found", "[mesh][errors]") {
  const auto crosses = [](const Soup& soup) { return trouble_of(soup).starts_with("the mesh intersects itself: triangles "); };
  const Soup unit = box({1, 1, 1});
  CHECK(crosses(joined(unit, shifted(rotated(unit, some_rotation()), {0.5, 0.2, 0.3}))));
  CHECK(crosses(joined(ball(2, 8), shifted(ball(2, 8), {3.9, 0, 0}))));
  CHECK_FALSE(crosses(joined(ball(2, 8), shifted(ball(2, 8), {4.1, 0, 0}))));
  // Boxes on one grid: no edge passes strictly through the inside of a face.
  CHECK(crosses(joined(unit, shifted(unit, {0.5, 0, 0}))));
  CHECK(crosses(joined(unit, shifted(unit, {0.5, 0.5, 0}))));
  CHECK(crosses(joined(unit, shifted(unit, {0.5, 0.5, 0.5}))));
  // A thin spike pushed through one far larger face, neither end near an edge of the face.
  CHECK(crosses(joined(box({100, 100, 100}), shifted(box({0.01, 0.01, 1}), {51.3, 47.7, 99.5}))));
  // One shell that passes through itself: a ring whose tube is thicker than its radius.
  CHECK(crosses(torus(2, 2.5, 24, 16)));
  CHECK_FALSE(crosses(torus(2.6, 2.5, 24, 16)));
  // A dent pushed through the opposite wall; the corners around it have their edges in common.
  Soup dented = box({2, 2, 2}, 4);
  int pushed = 0;
  dented = moved(dented, [&](const Vector3d& p) -> Vector3d {
    const bool middle = p == Vector3d(2, 1, 1);
    pushed += middle;
    return middle ? Vector3d(-0.5, 1.1, 1.1) : p;
  });
  REQUIRE(pushed == 6);
  CHECK(crosses(dented));
  // Two triangles that share a corner only: a fold through the neighbour of the neighbour.
  const std::optional<Crossing> fan = find_crossing(
      {{Vector3d(0, 0, 0), Vector3d(2, 0, 0), Vector3d(0, 2, 0), Vector3d(0.5, 0.5, -1), Vector3d(0.5, 0.5, 1)}, {{0, 1, 2}, {0, 3, 4}}});
  REQUIRE(fan);
  CHECK(fan->at.isApprox(Vector3d(0.5, 0.5, 0)));
}

TEST_CASE("mesh: what only comes near, touches at a point or was rounded in its file counts as sound", "[mesh]") {
  const Soup unit = box({1, 1, 1});
  CHECK(trouble_of(joined(unit, shifted(unit, {1.001, 0, 0}))).empty());
  // A tip resting on a face.
  const Vector3d a(0.6, 0.4, 1), b(0.3, 0.3, 2), c(0.7, 0.3, 2), d(0.5, 0.7, 2);
  CHECK(trouble_of(joined(unit, {{a, c, b}, {a, d, c}, {a, b, d}, {b, c, d}})).empty());
  // Flat faces in any direction, cut up finely: rounding lifts the corners out of their planes.
  std::mt19937 random(7);
  std::normal_distribution<double> normal;
  for (int i = 0; i < 12; ++i) {
    const Matrix3d R = Eigen::Quaterniond(normal(random), normal(random), normal(random), normal(random)).normalized().toRotationMatrix();
    const Vector3d by(30 * normal(random), 30 * normal(random), 30 * normal(random));
    const Vector3d size(60, 9, 0.4);
    CHECK(trouble_of(shifted(rotated(box(size, 12), R), by)).empty());
    // Long slivers: the sides of a needle cut the long way only.
    CHECK(trouble_of(shifted(rotated(moved(l_shape(15), [](const Vector3d& p) -> Vector3d { return {100 * p.x(), p.y(), 0.05 * p.z()}; }), R), by)).empty());
  }
}

TEST_CASE("mesh: needles whose corners lie on one line but for rounding do no harm", "[mesh]") {
  // A bar whose long edges are cut into pieces, its ends fanned out from one corner: on the two edges at that corner the fan
  // has triangles without area, which rounding tilts anyhow, or leaves flat.
  const int pieces = 12;
  std::vector<Vector3d> rim;
  const Vector3d corner[] = {{0, 0, 0}, {40, 0, 0}, {40, 9, 0}, {0, 9, 0}};
  for (int k = 0; k < 4; ++k)
    for (int i = 0; i < pieces; ++i) rim.push_back(corner[k] + (corner[(k + 1) % 4] - corner[k]) * i / pieces);
  Soup bar;
  const Vector3d up(0, 0, 3);
  for (std::size_t i = 0; i < rim.size(); ++i) {
    const Vector3d& next = rim[(i + 1) % rim.size()];
    add_quad(bar, rim[i], next, next + up, rim[i] + up);
    if (i == 0 || i + 1 == rim.size()) continue;
    bar.push_back({rim[0] + up, rim[i] + up, next + up});
    bar.push_back({rim[0], next, rim[i]});
  }
  std::mt19937 random(13);
  std::normal_distribution<double> normal;
  for (int i = 0; i < 60; ++i) {
    const Matrix3d R = i == 0 ? Matrix3d(Matrix3d::Identity())
                              : Eigen::Quaterniond(normal(random), normal(random), normal(random), normal(random)).normalized().toRotationMatrix();
    const Vector3d by = i == 0 ? Vector3d(0, 0, 0) : Vector3d(30 * normal(random), 30 * normal(random), 30 * normal(random));
    const Soup placed = shifted(rotated(bar, R), by);
    CHECK(trouble_of(placed).empty());
    CHECK_THAT(check_mesh(read_stl(binary_stl(placed))).volume.volume, WithinRel(40.0 * 9 * 3, 1e-5));
    // A real crossing is still found beside them.
    const Soup spike = shifted(rotated(shifted(box({0.2, 0.2, 6}), {11.3, 4.1, -1}), R), by);
    CHECK(trouble_of(joined(placed, spike)).starts_with("the mesh intersects itself"));
  }
}

TEST_CASE("mesh: the search for crossings agrees with trying every pair", "[mesh]") {
  // Random tetrahedra thrown into a cube, few enough that about half of the heaps have a crossing.
  std::mt19937 random(11);
  std::uniform_real_distribution<double> place(0, 10), corner(-0.7, 0.7);
  int crossed = 0;
  constexpr int heaps = 200;
  for (int h = 0; h < heaps; ++h) {
    TriangleMesh heap;
    for (int k = 0; k < 14; ++k) {
      const Vector3d at(place(random), place(random), place(random));
      const std::size_t first = heap.points.size();
      for (int i = 0; i < 4; ++i) heap.points.push_back(at + Vector3d(corner(random), corner(random), corner(random)) * 2);
      for (const Triangle& t : {Triangle{0, 1, 2}, Triangle{0, 2, 3}, Triangle{0, 3, 1}, Triangle{1, 3, 2}})
        heap.triangles.push_back({first + t[0], first + t[1], first + t[2]});
    }
    bool expected = false;
    for (std::size_t i = 0; i < heap.triangles.size() && !expected; ++i)
      for (std::size_t j = i + 1; j < heap.triangles.size() && !expected; ++j)
        expected = find_crossing({heap.points, {heap.triangles[i], heap.triangles[j]}}).has_value();
    CHECK(find_crossing(heap).has_value() == expected);
    crossed += expected;
  }
  CHECK(crossed > heaps / 5);
  CHECK(crossed < heaps * 4 / 5);
}
