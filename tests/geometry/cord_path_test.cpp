#include "geometry/cord_path.h"

#include <array>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include <catch2/catch.hpp>

namespace {

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using geometry::BodyPose;
using geometry::CordPath;
using geometry::PathGeometry;
using model::Matrix3d;
using model::Vector3d;
using std::numbers::pi;

// A knuckle and three phalanges on pins that are not parallel, seats a little turned. Own forward kinematics,
// so that nothing is checked against itself.
struct Finger {
  static constexpr int joints = 3;
  std::array<Vector3d, joints> at{Vector3d(0, 0, 0), Vector3d(0.045, 0.001, 0), Vector3d(0.025, 0, 0.001)};
  std::array<Vector3d, joints> pin{Vector3d(0.1, 0.05, 1).normalized(), Vector3d(-0.1, 0.2, 1).normalized(),
                                   Vector3d(0.3, -0.1, 1).normalized()};
  std::array<Matrix3d, joints> seat{turned(0.03, 0), turned(-0.05, 1), turned(0.04, 2)};
  std::array<double, joints> q{};

  struct Placed {
    std::array<Matrix3d, joints + 1> R;
    std::array<Vector3d, joints + 1> p;
    std::array<Vector3d, joints> axis;  // that of +q, world
    BodyPose operator()(int body) const {
      const auto i = static_cast<std::size_t>(body);
      return {&R[i], &p[i]};
    }
  };
  static Matrix3d turned(double angle, int axis) {
    return Eigen::AngleAxisd(angle, Vector3d::Unit(axis)).toRotationMatrix();
  }
  [[nodiscard]] Placed place() const {
    Placed placed;
    placed.R[0] = turned(0.2, 1);
    placed.p[0] = Vector3d(0.01, -0.02, 0.03);
    for (std::size_t i = 0; i < joints; ++i) {
      placed.axis[i] = -(placed.R[i] * pin[i]);
      placed.p[i + 1] = placed.R[i] * at[i] + placed.p[i];
      placed.R[i + 1] = placed.R[i] * Eigen::AngleAxisd(-q[i], pin[i]).toRotationMatrix() * seat[i];
    }
    return placed;
  }
};

// Bends, guides across the joints at a slant, and guides that the cord reaches only in some postures.
model::Cord back_cord() {
  model::Cord cord;
  cord.path.emplace_back(model::Anchor{0, {-0.03, 0.006, 0.001}});
  cord.path.emplace_back(model::Bend{0, {-0.015, 0.008, -0.001}, 2e-3, 1});
  cord.path.emplace_back(model::Guide{0, {0, 0, 0}, Vector3d(0.1, 0.1, 1), 5e-3, {0, 1, 0}, 1});
  cord.path.emplace_back(model::Bend{1, {0.018, 0.005, 0.002}, 2e-3, 1});
  cord.path.emplace_back(model::Bend{1, {0.024, 0.006, -0.002}, 2e-3, 1});
  cord.path.emplace_back(model::Guide{1, {0.045, 0, 0}, Vector3d(-0.2, 0.1, 1), 4e-3, {0, 1, 0}, 1});
  cord.path.emplace_back(model::Bend{2, {0.012, 0.004, 0.001}, 2e-3, 1});
  cord.path.emplace_back(model::Guide{3, {0, -0.001, 0}, Vector3d(0.1, -0.2, 1), 3e-3, {0, 1, 0}, 1});
  cord.path.emplace_back(model::Anchor{3, {0.012, 0.003, -0.001}});
  return cord;
}
model::Cord palm_cord() {
  model::Cord cord;
  cord.path.emplace_back(model::PulleyEnd{0, {-0.034, -0.012, 0.002}});
  cord.path.emplace_back(model::Bend{0, {-0.01, -0.009, 0.001}, 2e-3, 1});
  cord.path.emplace_back(model::Bend{1, {0.01, -0.009, -0.002}, 2e-3, 1});
  cord.path.emplace_back(model::Bend{1, {0.035, -0.005, 0.002}, 2e-3, 1});
  cord.path.emplace_back(model::Bend{2, {0.007, -0.005, 0}, 2e-3, 1});
  cord.path.emplace_back(model::Bend{2, {0.018, -0.003, 0.001}, 2e-3, 1});
  cord.path.emplace_back(model::Anchor{3, {0.01, -0.002, 0.001}});
  return cord;
}
std::vector<model::Drive> drives() {
  std::vector<model::Drive> list(1);
  list[0].body = 0;
  return list;
}

PathGeometry evaluated(const CordPath& path, const Finger::Placed& placed) {
  PathGeometry g = path.make_geometry();
  path.evaluate(placed, g);
  return g;
}

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

// dL/dq of every span from the pulls: body i + 1 and all beyond move with joint i.
std::array<std::vector<double>, Finger::joints> span_gradient(const PathGeometry& g,
                                                              const Finger::Placed& placed) {
  std::array<std::vector<double>, Finger::joints> result;
  for (std::size_t j = 0; j < Finger::joints; ++j) {
    result[j].assign(g.length.size(), 0);
    for (const auto& pull : g.pulls)
      if (pull.body > static_cast<int>(j))
        result[j][static_cast<std::size_t>(pull.span)] +=
            pull.direction.dot(placed.axis[j].cross(pull.point - placed.p[j + 1]));
  }
  return result;
}

TEST_CASE("cord path: moment arms are the exact gradient of the length, in 3D, over many postures") {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> angle(-0.5, 1.5);
  Finger straight;
  const auto start = straight.place();
  const auto motors = drives();
  constexpr double h = 1e-6;
  int touched = 0, passed_clear = 0;
  for (const model::Cord& cord : {back_cord(), palm_cord()}) {
    const CordPath path(cord, motors, start);
    for (int n = 0; n < 300; ++n) {
      Finger finger;
      for (double& q : finger.q) q = angle(random);
      const auto placed = finger.place();
      const PathGeometry g = evaluated(path, placed);
      const auto gradient = span_gradient(g, placed);
      bool all_touch = true, clear = false;
      for (const double turn : g.turning_angle) {
        all_touch = all_touch && turn > 1e-3;
        clear = clear || turn == 0;
      }
      touched += all_touch;
      passed_clear += clear;
      for (std::size_t j = 0; j < Finger::joints; ++j) {
        Finger ahead = finger, behind = finger;
        ahead.q[j] += h;
        behind.q[j] -= h;
        const PathGeometry a = evaluated(path, ahead.place()), b = evaluated(path, behind.place());
        // Second differences are bounded by about length²/radius: (1e-6)² × 1 m / 1e-6 is far below 1e-9 m.
        CHECK_THAT(sum(gradient[j]), WithinAbs((sum(a.length) - sum(b.length)) / (2 * h), 2e-9));
        if (!all_touch) continue;
        for (std::size_t s = 0; s < g.length.size(); ++s)
          CHECK_THAT(gradient[j][s], WithinAbs((a.length[s] - b.length[s]) / (2 * h), 5e-9));
      }
    }
  }
  CHECK(touched > 50);
  CHECK(passed_clear > 50);
}

TEST_CASE("cord path: the turning at a bend is the outer angle of the triangle with its neighbours") {
  std::mt19937 random(12);
  std::uniform_real_distribution<double> angle(-0.5, 1.5);
  const model::Cord cord = palm_cord();
  const CordPath path(cord, drives(), Finger{}.place());
  for (int n = 0; n < 100; ++n) {
    Finger finger;
    for (double& q : finger.q) q = angle(random);
    const auto placed = finger.place();
    const PathGeometry g = evaluated(path, placed);
    std::vector<Vector3d> points;
    for (const auto& point : cord.path)
      std::visit(
          [&](const auto& p) {
            int body = 0;
            if constexpr (requires { p.body; }) body = p.body;
            points.push_back(placed(body) * p.at);
          },
          point);
    REQUIRE(g.turning_angle.size() + 2 == points.size());
    for (std::size_t k = 0; k + 2 < points.size(); ++k) {
      // Law of cosines, from three distances.
      const double a = (points[k + 1] - points[k]).norm(), b = (points[k + 2] - points[k + 1]).norm(),
                   c = (points[k + 2] - points[k]).norm();
      const double inner = std::acos(std::clamp((a * a + b * b - c * c) / (2 * a * b), -1.0, 1.0));
      CHECK_THAT(g.turning_angle[k], WithinAbs(pi - inner, 1e-7));
    }
    double whole = 0;
    for (std::size_t k = 0; k + 1 < points.size(); ++k) whole += (points[k + 1] - points[k]).norm();
    CHECK_THAT(sum(g.length), WithinRel(whole, 1e-14));
  }
}

TEST_CASE("cord path: the turning of a zigzag is the sum of its turns, not the net change of direction") {
  model::Cord cord;
  cord.path.emplace_back(model::Anchor{0, {0, 0, 0}});
  cord.path.emplace_back(model::Bend{0, {1e-2, 0, 0}, 0, 1});
  cord.path.emplace_back(model::Bend{0, {2e-2, 1e-2, 0}, 0, 1});  // up 45 deg
  cord.path.emplace_back(model::Bend{0, {3e-2, 1e-2, 0}, 0, 1});  // back to level
  cord.path.emplace_back(model::Anchor{0, {4e-2, 1e-2, 0}});
  Finger finger;
  const auto placed = finger.place();
  for (const bool lump : {false, true}) {
    cord.lump_bends = lump;
    const CordPath path(cord, drives(), placed);
    const PathGeometry g = evaluated(path, placed);
    REQUIRE(path.node_count() == (lump ? 1 : 3));
    CHECK_THAT(sum(g.turning_angle), WithinAbs(pi / 2, 1e-12));
    CHECK_THAT(sum(g.length), WithinRel(3e-2 + std::sqrt(2.0) * 1e-2, 1e-14));
  }
}

TEST_CASE("cord path: turns in different planes add up") {
  // Along x, then y, then z: two right angles, although the net change of direction is one.
  model::Cord cord;
  cord.lump_bends = true;
  cord.path.emplace_back(model::Anchor{0, {0, 0, 0}});
  cord.path.emplace_back(model::Bend{0, {1e-2, 0, 0}, 0, 1});
  cord.path.emplace_back(model::Bend{0, {1e-2, 1e-2, 0}, 0, 1});
  cord.path.emplace_back(model::Anchor{0, {1e-2, 1e-2, 1e-2}});
  const auto placed = Finger{}.place();
  const CordPath path(cord, drives(), placed);
  const PathGeometry g = evaluated(path, placed);
  REQUIRE(g.turning_angle.size() == 1);
  CHECK_THAT(g.turning_angle[0], WithinAbs(pi, 1e-12));
}

TEST_CASE("cord path: rigid motion of the whole finger changes neither lengths nor turning") {
  const CordPath path(back_cord(), drives(), Finger{}.place());
  Finger finger;
  finger.q = {0.4, 0.7, 0.3};
  auto placed = finger.place();
  const PathGeometry before = evaluated(path, placed);
  const Matrix3d turn = Eigen::Quaterniond(0.3, -0.5, 0.8, 0.1).normalized().toRotationMatrix();
  for (std::size_t i = 0; i <= Finger::joints; ++i) {
    placed.R[i] = turn * placed.R[i];
    placed.p[i] = turn * placed.p[i] + Vector3d(0.3, -0.1, 0.2);
  }
  const PathGeometry after = evaluated(path, placed);
  for (std::size_t s = 0; s < before.length.size(); ++s)
    CHECK_THAT(after.length[s], WithinAbs(before.length[s], 1e-15));
  for (std::size_t k = 0; k < before.turning_angle.size(); ++k)
    CHECK_THAT(after.turning_angle[k], WithinAbs(before.turning_angle[k], 1e-9));
}

TEST_CASE(
    "cord path: a guide round the pin gives a constant arm, its radius times the cosine of the cord's lead") {
  constexpr double radius = 6e-3;
  const Vector3d pin = GENERATE(Vector3d(0, 0, 1), Vector3d(0.1, 0.05, 1).normalized());
  const double side = GENERATE(1.0, -1.0);
  Finger finger;
  finger.pin[0] = pin;
  finger.seat[0].setIdentity();
  model::Cord cord;
  cord.path.emplace_back(model::Anchor{0, {-0.03, side * radius, 0}});
  cord.path.emplace_back(model::Guide{0, {0, 0, 0}, pin, radius, {0, side, 0}, 1});
  cord.path.emplace_back(model::Anchor{1, {0.03, side * radius, 0}});
  const CordPath path(cord, drives(), finger.place());
  for (const double bend : {0.3, 0.6, 1.1}) {
    finger.q[0] = side * bend;  // flexion winds up a cord on the back, extension one on the palm side
    const auto placed = finger.place();
    const PathGeometry g = evaluated(path, placed);
    REQUIRE(g.turning_angle[0] > 0.1);
    // Both ends keep their height along the pin, so in the developed surface only the plane length changes.
    const double rise = pin.dot(Vector3d(0.06, 0, 0));
    const double lead = std::asin(rise / sum(g.length));
    CHECK_THAT(sum(span_gradient(g, placed)[0]), WithinRel(side * radius * std::cos(lead), 1e-12));
  }
}

}  // namespace
