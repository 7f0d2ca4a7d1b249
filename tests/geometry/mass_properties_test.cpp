#include "geometry/mass_properties.h"

#include <array>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>
#include <random>
#include <vector>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

namespace {

using namespace sinewright;
using namespace sinewright::geometry;
using Catch::Matchers::WithinRel;
using model::Box;
using model::Capsule;
using model::Cylinder;
using model::Hull;
using model::MassProperties;
using model::Matrix3d;
using model::Sphere;
using model::Vector3d;
using std::numbers::pi;

constexpr double kDensity = 1010;  // [kg/m³], invented

Matrix3d some_rotation() {
  return Eigen::Quaterniond(0.4, -0.7, 0.2, 0.5).normalized().toRotationMatrix();
}

void check_equal(const MassProperties& a, const MassProperties& b, double tolerance) {
  CHECK_THAT(a.mass, WithinRel(b.mass, tolerance));
  CHECK((a.center - b.center).norm() < tolerance * (b.center.norm() + 0.01));
  CHECK((a.inertia - b.inertia).norm() < tolerance * b.inertia.norm());
}

// Two-, four- and six-point Gauss rules would do; eight points are exact to degree 15.
constexpr std::array<double, 4> kNode = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                         0.9602898564975363};
constexpr std::array<double, 4> kWeight = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                           0.1012285362903763};

void gauss(double low, double high, const std::function<void(double x, double weight)>& visit) {
  for (int i = 0; i < 8; ++i) {
    const double t = i < 4 ? -kNode[i] : kNode[i - 4];
    visit((low + high) / 2 + t * (high - low) / 2, kWeight[i % 4] * (high - low) / 2);
  }
}

// Mass properties of a body of revolution about x, of the given profile radius, by quadrature over slices,
// rings and angle: knows nothing of the closed forms. Exact for profiles whose square is a polynomial.
MassProperties by_quadrature(const std::vector<double>& cuts, const std::function<double(double)>& profile) {
  double mass = 0;
  Vector3d first = Vector3d::Zero();
  Matrix3d second = Matrix3d::Zero();
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    gauss(cuts[i], cuts[i + 1], [&](double x, double wx) {
      gauss(0, profile(x), [&](double r, double wr) {
        constexpr int n_angles = 8;
        for (int k = 0; k < n_angles; ++k) {
          const double angle = 2 * pi * k / n_angles;
          const Vector3d p(x, r * std::cos(angle), r * std::sin(angle));
          const double dm = kDensity * wx * wr * r * 2 * pi / n_angles;
          mass += dm;
          first += dm * p;
          second += dm * p * p.transpose();
        }
      });
    });
  }
  const Vector3d center = first / mass;
  second -= mass * center * center.transpose();
  return {mass, center, second.trace() * Matrix3d::Identity() - second};
}

MassProperties turned(const MassProperties& m, const Matrix3d& R, const Vector3d& shift) {
  return {m.mass, R * m.center + shift, R * m.inertia * R.transpose()};
}

std::vector<Vector3d> corners(const Vector3d& size) {
  std::vector<Vector3d> points;
  for (const double x : {-0.5, 0.5}) {
    for (const double y : {-0.5, 0.5}) {
      for (const double z : {-0.5, 0.5}) points.push_back(size.cwiseProduct(Vector3d(x, y, z)));
    }
  }
  return points;
}

}  // namespace

TEST_CASE("mass: sphere, capsule and cylinder agree with quadrature", "[mass][analytic]") {
  const double r = 0.007;
  const double length = 0.031;
  check_equal(mass_of({Sphere{Vector3d(0.002, 0, 0), r}, kDensity}),
              by_quadrature({0.002 - r, 0.002 + r},
                            [&](double x) { return std::sqrt(r * r - (x - 0.002) * (x - 0.002)); }),
              1e-13);
  check_equal(mass_of({Cylinder{Vector3d(length / 2, 0, 0), Vector3d::UnitX(), r, length}, kDensity}),
              by_quadrature({0, length}, [&](double) { return r; }), 1e-13);
  const auto round_ends = [&](double x) {
    const double past = x < 0 ? -x : std::max(0.0, x - length);
    return std::sqrt(r * r - past * past);
  };
  check_equal(mass_of({Capsule{Vector3d::Zero(), Vector3d(length, 0, 0), r}, kDensity}),
              by_quadrature({-r, 0, length, length + r}, round_ends), 1e-13);
}

TEST_CASE("mass: a box agrees with quadrature and with the hull of its corners", "[mass][analytic]") {
  const Vector3d size(0.04, 0.012, 0.025);
  double mass = 0;
  Matrix3d second = Matrix3d::Zero();
  gauss(-size.x() / 2, size.x() / 2, [&](double x, double wx) {
    gauss(-size.y() / 2, size.y() / 2, [&](double y, double wy) {
      gauss(-size.z() / 2, size.z() / 2, [&](double z, double wz) {
        const double dm = kDensity * wx * wy * wz;
        mass += dm;
        second += dm * Vector3d(x, y, z) * Vector3d(x, y, z).transpose();
      });
    });
  });
  const MassProperties expected{mass, Vector3d::Zero(), second.trace() * Matrix3d::Identity() - second};
  check_equal(mass_of({Box{Vector3d::Zero(), size, Matrix3d::Identity()}, kDensity}), expected, 1e-13);
  check_equal(mass_of({Hull{corners(size)}, kDensity}), expected, 1e-12);
}

TEST_CASE("mass: a shape that is moved and turned takes its mass properties along", "[mass]") {
  const Matrix3d R = some_rotation();
  const Vector3d shift(0.03, -0.02, 0.011);
  const Vector3d size(0.04, 0.012, 0.025);
  check_equal(mass_of({Box{shift, size, R}, kDensity}),
              turned(mass_of({Box{Vector3d::Zero(), size, Matrix3d::Identity()}, kDensity}), R, shift),
              1e-13);
  check_equal(
      mass_of({Cylinder{shift, R.col(2), 0.01, 0.05}, kDensity}),
      turned(mass_of({Cylinder{Vector3d::Zero(), Vector3d::UnitZ(), 0.01, 0.05}, kDensity}), R, shift),
      1e-13);
  const Capsule capsule{Vector3d(-0.01, 0, 0.002), Vector3d(0.02, 0.005, 0), 0.006};
  check_equal(mass_of({Capsule{R * capsule.from + shift, R * capsule.to + shift, 0.006}, kDensity}),
              turned(mass_of({capsule, kDensity}), R, shift), 1e-13);
  std::vector<Vector3d> points = corners(size);
  points.emplace_back(0.05, 0.001, 0.002);  // a roof on one side
  std::vector<Vector3d> moved;
  for (const Vector3d& p : points) moved.push_back(R * p + shift);
  check_equal(mass_of({Hull{moved}, kDensity}), turned(mass_of({Hull{points}, kDensity}), R, shift), 1e-12);
}

TEST_CASE("mass: a capsule without length is a sphere", "[mass][analytic]") {
  const Vector3d c(0.01, 0.02, 0.03);
  check_equal(mass_of({Capsule{c, c, 0.005}, kDensity}), mass_of({Sphere{c, 0.005}, kDensity}), 1e-15);
}

TEST_CASE("mass: hulls with known volume and inertia", "[mass][analytic]") {
  SECTION("regular tetrahedron: V = a³/(6√2), I = m a²/20 about every axis") {
    const std::vector<Vector3d> points = {{1, 1, 1}, {1, -1, -1}, {-1, 1, -1}, {-1, -1, 1}};  // edge 2√2
    const double a = 2 * std::numbers::sqrt2;
    const MassProperties m = mass_of({Hull{points}, kDensity});
    CHECK_THAT(m.mass, WithinRel(kDensity * a * a * a / (6 * std::numbers::sqrt2), 1e-14));
    CHECK((m.inertia - m.mass * a * a / 20 * Matrix3d::Identity()).norm() < 1e-13 * m.inertia.norm());
    CHECK(m.center.norm() < 1e-15);
  }
  SECTION("regular octahedron: V = 4/3 R³, I = m R²/5 about every axis") {
    std::vector<Vector3d> points;
    for (int i = 0; i < 3; ++i) {
      points.push_back(0.02 * Vector3d::Unit(i));
      points.push_back(-0.02 * Vector3d::Unit(i));
    }
    const MassProperties m = mass_of({Hull{points}, kDensity});
    CHECK_THAT(m.mass, WithinRel(kDensity * 4.0 / 3 * 8e-6, 1e-14));
    CHECK((m.inertia - m.mass * 4e-4 / 5 * Matrix3d::Identity()).norm() < 1e-13 * m.inertia.norm());
  }
  SECTION("pyramid on a square: centre of mass a quarter up") {
    const std::vector<Vector3d> points = {{1, 1, 0}, {1, -1, 0}, {-1, -1, 0}, {-1, 1, 0}, {0, 0, 2}};
    const MassProperties m = mass_of({Hull{points}, kDensity});
    CHECK_THAT(m.mass, WithinRel(kDensity * 4 * 2 / 3.0, 1e-14));
    CHECK((m.center - Vector3d(0, 0, 0.5)).norm() < 1e-14);
  }
  SECTION("points inside, on faces and twice over change nothing") {
    const Vector3d size(0.04, 0.012, 0.025);
    const Matrix3d R = some_rotation();  // so that rounding lifts points off the faces
    std::vector<Vector3d> points;
    for (int i = 0; i <= 6; ++i) {
      for (int j = 0; j <= 6; ++j) {
        for (int k = 0; k <= 6; ++k) {
          points.push_back(R * size.cwiseProduct(Vector3d(i / 6.0 - 0.5, j / 6.0 - 0.5, k / 6.0 - 0.5)));
        }
      }
    }
    points.insert(points.end(), points.begin(), points.begin() + 40);
    check_equal(mass_of({Hull{points}, kDensity}), mass_of({Box{Vector3d::Zero(), size, R}, kDensity}),
                1e-11);
  }
}

TEST_CASE("mass: a hull of more and more points tends to the cylinder at second order", "[mass][order]") {
  const double r = 0.01;
  const double length = 0.03;
  const MassProperties exact = mass_of({Cylinder{Vector3d::Zero(), Vector3d::UnitZ(), r, length}, kDensity});
  const auto error = [&](int n) {
    Hull prism;
    for (int i = 0; i < n; ++i) {
      const double angle = 2 * pi * i / n;
      for (const double z : {-length / 2, length / 2}) {
        prism.points.emplace_back(r * std::cos(angle), r * std::sin(angle), z);
      }
    }
    const MassProperties m = mass_of({prism, kDensity});
    // Area of a regular polygon; elementary.
    CHECK_THAT(m.mass, WithinRel(kDensity * length * n / 2.0 * r * r * std::sin(2 * pi / n), 1e-12));
    return (m.inertia - exact.inertia).norm();
  };
  CHECK(std::abs(std::log2(error(64) / error(128)) - 2) < 0.01);
}

TEST_CASE("mass: random hulls hold all their points and agree with the sum of their parts", "[mass]") {
  // A plane through the middle cuts the hull in two; the mass of the whole is that of the halves.
  std::mt19937_64 engine(3);
  const auto between = [&](double low, double high) {
    return low + (high - low) * (static_cast<double>(engine() >> 11) / 9007199254740992.0);
  };
  for (int round = 0; round < 50; ++round) {
    std::vector<Vector3d> points;
    for (int i = 0; i < 30; ++i) points.emplace_back(between(-1, 1), between(-1, 1), between(-1, 1));
    std::vector<Vector3d> left;
    std::vector<Vector3d> right;
    for (const Vector3d& p : points) (p.x() < 0 ? left : right).push_back(p);
    const std::size_t n_left = left.size();
    const std::size_t n_right = right.size();
    for (std::size_t i = 0; i < n_left; ++i) {
      for (std::size_t j = 0; j < n_right;
           ++j) {  // every segment between the halves meets the plane inside the hull
        const double t = left[i].x() / (left[i].x() - right[j].x());
        Vector3d cut = left[i] + t * (right[j] - left[i]);
        cut.x() = 0;
        left.push_back(cut);
        right.push_back(cut);
      }
    }
    const std::array<MassProperties, 2> halves = {mass_of({Hull{left}, kDensity}),
                                                  mass_of({Hull{right}, kDensity})};
    check_equal(mass_of({Hull{points}, kDensity}), combine(halves), 1e-10);
  }
}

TEST_CASE("combine: boxes glued together are the larger box", "[mass][analytic]") {
  const Matrix3d R = some_rotation();
  const auto box = [&](double x0, double x1) {
    return mass_of({Box{R * Vector3d((x0 + x1) / 2, 0, 0), Vector3d(x1 - x0, 0.02, 0.03), R}, kDensity});
  };
  const std::array<MassProperties, 3> parts = {box(0, 0.01), box(0.01, 0.04), box(0.04, 0.1)};
  check_equal(combine(parts), box(0, 0.1), 1e-13);
  check_equal(combine(std::span(parts).first(1)), parts[0], 1e-15);
}

TEST_CASE("mass: solids that cannot be are refused", "[mass][errors]") {
  const Sphere ball{Vector3d::Zero(), 0.01};
  CHECK_THROWS_WITH(mass_of({ball, 0}), Catch::Contains("density = 0 kg/m³") && Catch::Contains("needed"));
  CHECK_THROWS_AS(mass_of({ball, std::nan("")}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Sphere{Vector3d::Zero(), -1}, 1}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Capsule{Vector3d(std::nan(""), 0, 0), Vector3d::Zero(), 1}, 1}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Cylinder{Vector3d::Zero(), Vector3d(0, 0, 2), 1, 1}, 1}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Box{Vector3d::Zero(), Vector3d(1, 1, 0), Matrix3d::Identity()}, 1}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Box{Vector3d::Zero(), Vector3d::Ones(), 2 * Matrix3d::Identity()}, 1}),
                  InvalidInput);
  CHECK_THROWS_AS(mass_of({Hull{}, 1}), InvalidInput);
  CHECK_THROWS_WITH(mass_of({Hull{{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}}}, 1}),
                    Catch::Contains("one plane"));
  CHECK_THROWS_AS(mass_of({Hull{{{0, 0, 0}, {1, 0, 0}, {2, 0, 0}, {3, 0, 0}}}, 1}), InvalidInput);
  CHECK_THROWS_AS(mass_of({Hull{{{1, 1, 1}, {1, 1, 1}, {1, 1, 1}, {1, 1, 1}}}, 1}), InvalidInput);
  CHECK_THROWS_AS(combine({}), InvalidInput);
  const std::array<MassProperties, 1> nothing = {};
  CHECK_THROWS_AS(combine(nothing), InvalidInput);
}
