#include "geometry/guide_wrap.h"

#include <cmath>
#include <numbers>
#include <random>

#include <catch2/catch.hpp>

namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using sinewright::geometry::GuideFrame;
using sinewright::geometry::GuideWrap;
using sinewright::geometry::Vector3d;
using sinewright::geometry::wrap_guide;
using std::numbers::pi;

struct Case {
  GuideFrame guide;
  Vector3d p, q;
};

// A guide of a few millimetres in any orientation, and two points around it, on either side, at different
// heights.
class Cases {
 public:
  Case next() {
    Case c;
    c.guide.center = 0.01 * direction();
    c.guide.axis = direction().normalized();
    const Vector3d any = direction();
    c.guide.side = (any - c.guide.axis * c.guide.axis.dot(any)).normalized();
    c.guide.radius = uniform(1e-3, 6e-3);
    c.guide.sense = uniform(0, 1) < 0.5 ? 1 : -1;
    const Vector3d e2 = c.guide.sense * c.guide.axis.cross(c.guide.side);
    const auto place = [&](double along) {
      return Vector3d(c.guide.center + c.guide.side * uniform(-0.012, 0.008) + e2 * along +
                      c.guide.axis * uniform(-0.01, 0.01));
    };
    c.p = place(uniform(-0.03, -0.008));
    c.q = place(uniform(0.008, 0.03));
    return c;
  }
  double uniform(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random_); }
  Vector3d direction() { return {uniform(-1, 1), uniform(-1, 1), uniform(-1, 1)}; }

 private:
  std::mt19937 random_{7};
};

double distance_to_axis(const GuideFrame& g, const Vector3d& point) {
  const Vector3d r = point - g.center;
  return (r - g.axis * g.axis.dot(r)).norm();
}

// The whole way as a fine polyline: the arc turns evenly about the axis and rises evenly along it.
std::vector<Vector3d> polyline(const GuideFrame& g, const GuideWrap& w, const Vector3d& p, const Vector3d& q,
                               int pieces) {
  const Vector3d first = w.contact_p - g.center, last = w.contact_q - g.center;
  const Vector3d a = first - g.axis * g.axis.dot(first), b = last - g.axis * g.axis.dot(last);
  double angle = std::atan2(a.cross(b).dot(g.axis), a.dot(b)) * g.sense;
  if (angle < 0) angle += 2 * pi;
  std::vector<Vector3d> points{p};
  for (int i = 0; i <= pieces; ++i) {
    const double s = static_cast<double>(i) / pieces;
    const Vector3d around = Eigen::AngleAxisd(g.sense * s * angle, g.axis) * a;
    points.push_back(g.center + around + g.axis * (g.axis.dot(first) * (1 - s) + g.axis.dot(last) * s));
  }
  points.push_back(q);
  return points;
}

TEST_CASE("guide: length and true turning equal those of the finely drawn curve") {
  Cases cases;
  int touching = 0;
  for (int n = 0; n < 400; ++n) {
    const Case c = cases.next();
    const GuideWrap w = wrap_guide(c.guide, c.p, c.q);
    if (!w.touches) continue;
    ++touching;
    const auto points = polyline(c.guide, w, c.p, c.q, 4000);
    double length = 0, turning = 0;
    for (std::size_t i = 1; i < points.size(); ++i) length += (points[i] - points[i - 1]).norm();
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
      const Vector3d in = points[i] - points[i - 1], out = points[i + 1] - points[i];
      turning += std::atan2(in.cross(out).norm(), in.dot(out));
    }
    // A chord is shorter than its arc by (angle of one piece)²/24: below 1e-8 here.
    CHECK_THAT(w.length_p + w.length_q, WithinRel(length, 1e-7));
    CHECK_THAT(w.turning_angle, WithinAbs(turning, 1e-6));
  }
  CHECK(touching > 150);
}

TEST_CASE("guide: the cord leaves the cylinder along its tangents, without a kink") {
  Cases cases;
  for (int n = 0; n < 300; ++n) {
    const Case c = cases.next();
    const GuideWrap w = wrap_guide(c.guide, c.p, c.q);
    if (!w.touches) continue;
    CHECK_THAT(distance_to_axis(c.guide, w.contact_p), WithinRel(c.guide.radius, 1e-12));
    CHECK_THAT(distance_to_axis(c.guide, w.contact_q), WithinRel(c.guide.radius, 1e-12));
    const Vector3d in = (w.contact_p - c.p).normalized(), out = (c.q - w.contact_q).normalized();
    CHECK_THAT(
        in.dot(w.contact_p - c.guide.center - c.guide.axis * c.guide.axis.dot(w.contact_p - c.guide.center)),
        WithinAbs(0, 1e-15));
    // Constant pitch all along: both straight parts climb the axis at the same rate as the arc.
    const double pitch = in.dot(c.guide.axis);
    CHECK_THAT(out.dot(c.guide.axis), WithinAbs(pitch, 1e-12));
    const double straight = (w.contact_p - c.p).norm() + (c.q - w.contact_q).norm();
    const double arc = w.length_p + w.length_q - straight;
    if (arc > 1e-6) CHECK_THAT((w.contact_q - w.contact_p).dot(c.guide.axis) / arc, WithinAbs(pitch, 1e-8));
    // Unit pulls at both ends: the gradient of a taut length is the direction in which it pulls.
    CHECK((w.p_by_p + w.q_by_p + in).norm() < 1e-10);
    CHECK((w.p_by_q + w.q_by_q - out).norm() < 1e-10);
  }
}

TEST_CASE("guide: derivatives agree with central differences") {
  Cases cases;
  constexpr double h = 1e-7;
  int touching = 0, free = 0;
  for (int n = 0; n < 600; ++n) {
    const Case c = cases.next();
    const GuideWrap w = wrap_guide(c.guide, c.p, c.q);
    for (int axis = 0; axis < 3; ++axis) {
      const Vector3d e = h * Vector3d::Unit(axis);
      const GuideWrap a = wrap_guide(c.guide, c.p + e, c.q), b = wrap_guide(c.guide, c.p - e, c.q);
      const GuideWrap d = wrap_guide(c.guide, c.p, c.q + e), f = wrap_guide(c.guide, c.p, c.q - e);
      if (a.touches != w.touches || b.touches != w.touches || d.touches != w.touches ||
          f.touches != w.touches)
        continue;
      if (w.touches) {
        ++touching;
        CHECK_THAT(w.p_by_p[axis], WithinAbs((a.length_p - b.length_p) / (2 * h), 2e-6));
        CHECK_THAT(w.q_by_p[axis], WithinAbs((a.length_q - b.length_q) / (2 * h), 2e-6));
        CHECK_THAT(w.p_by_q[axis], WithinAbs((d.length_p - f.length_p) / (2 * h), 2e-6));
        CHECK_THAT(w.q_by_q[axis], WithinAbs((d.length_q - f.length_q) / (2 * h), 2e-6));
      } else {
        // Off the guide both halves carry one tension; only their sum is promised.
        ++free;
        const auto whole = [](const GuideWrap& g) { return g.length_p + g.length_q; };
        CHECK_THAT(w.p_by_p[axis] + w.q_by_p[axis], WithinAbs((whole(a) - whole(b)) / (2 * h), 1e-7));
        CHECK_THAT(w.p_by_q[axis] + w.q_by_q[axis], WithinAbs((whole(d) - whole(f)) / (2 * h), 1e-7));
      }
    }
  }
  CHECK(touching > 300);
  CHECK(free > 100);
}

TEST_CASE("guide: a cord that passes clear of it runs straight and does not turn") {
  const GuideFrame guide{Vector3d(0, 0, 0), Vector3d::UnitZ(), Vector3d::UnitY(), 2e-3, -1};
  const Vector3d p(-0.02, 0.005, 0.001), q(0.02, 0.006, -0.004);
  const GuideWrap w = wrap_guide(guide, p, q);
  CHECK_FALSE(w.touches);
  CHECK(w.turning_angle == 0);
  CHECK_THAT(w.length_p + w.length_q, WithinRel((q - p).norm(), 1e-14));
}

TEST_CASE("guide: both parts are continuous where the cord lifts off") {
  // The arc begins off the guide's side by this angle.
  const double off = GENERATE(0.0, 0.7, -1.1);
  const Vector3d side(std::sin(off), std::cos(off), 0);
  const GuideFrame guide{Vector3d(0, 0, 0), Vector3d::UnitZ(), side, 2e-3, -1};
  const Vector3d q(0.02, 0.002, 0.006);
  // The straight line touches when P stands at the height of the cylinder's top, as Q does.
  const GuideWrap touching = wrap_guide(guide, Vector3d(-0.015, 0.002 - 1e-9, 0), q);
  const GuideWrap clear = wrap_guide(guide, Vector3d(-0.015, 0.002 + 1e-9, 0), q);
  REQUIRE(touching.touches);
  REQUIRE_FALSE(clear.touches);
  CHECK_THAT(touching.length_p, WithinAbs(clear.length_p, 1e-8));
  CHECK_THAT(touching.length_q, WithinAbs(clear.length_q, 1e-8));
  CHECK(touching.turning_angle < 1e-5);
}

TEST_CASE("guide: in the plane each end moves its own part alone, by the arm of the cylinder") {
  constexpr double r = 5e-3;
  const GuideFrame guide{Vector3d(0, 0, 0), Vector3d::UnitZ(), Vector3d::UnitY(), r, -1};
  const Vector3d p(-0.02, 0.004, 0);
  const auto bent = [](double angle) { return Vector3d(Eigen::AngleAxisd(-angle, Vector3d::UnitZ()) * Vector3d(0.022, 0.004, 0)); };
  const GuideWrap before = wrap_guide(guide, p, bent(0.6)), after = wrap_guide(guide, p, bent(0.9));
  REQUIRE(before.touches);
  CHECK_THAT(after.length_p, WithinAbs(before.length_p, 1e-15));
  CHECK_THAT(after.length_q - before.length_q, WithinAbs(0.3 * r, 1e-15));
  CHECK(before.p_by_q.norm() == 0);
  CHECK(before.q_by_p.norm() == 0);
}

TEST_CASE("guide: in the plane the way over it is two tangents and an arc") {
  // P and Q level with the axis, 4 radii away: each tangent √15 r, each leaving acos(1/4) open, so the arc
  // spans π − 2 acos(1/4) (elementary geometry).
  constexpr double r = 3e-3;
  const GuideFrame guide{Vector3d(0.001, 0.002, 0.5), Vector3d::UnitZ(), Vector3d::UnitY(), r, -1};
  const GuideWrap w =
      wrap_guide(guide, guide.center + Vector3d(-4 * r, 0, 0), guide.center + Vector3d(4 * r, 0, 0));
  const double arc = pi - 2 * std::acos(0.25);
  CHECK_THAT(w.turning_angle, WithinRel(arc, 1e-12));
  CHECK_THAT(w.length_p, WithinRel(r * (std::sqrt(15.0) + arc / 2), 1e-12));
  CHECK_THAT(w.length_q, WithinRel(w.length_p, 1e-12));
}

TEST_CASE("guide: a point inside the cylinder counts as on its surface, without infinities") {
  const GuideFrame guide{Vector3d(0, 0, 0), Vector3d::UnitZ(), Vector3d::UnitY(), 2e-3, -1};
  const GuideWrap w = wrap_guide(guide, Vector3d(-1e-3, 0.5e-3, 0), Vector3d(0.02, -0.003, 0.001));
  CHECK(std::isfinite(w.length_p));
  CHECK(std::isfinite(w.length_q));
  CHECK(w.p_by_p.allFinite());
  CHECK(w.q_by_q.allFinite());
}

}  // namespace
