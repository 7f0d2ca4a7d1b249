#include "contact/hull_distance.h"

#include <cmath>
#include <limits>
#include <type_traits>
#include <variant>

#include <BulletCollision/CollisionShapes/btBoxShape.h>
#include <BulletCollision/CollisionShapes/btConvexHullShape.h>
#include <BulletCollision/CollisionShapes/btCylinderShape.h>
#include <BulletCollision/NarrowPhaseCollision/btDiscreteCollisionDetectorInterface.h>
#include <BulletCollision/NarrowPhaseCollision/btGjkEpaPenetrationDepthSolver.h>
#include <BulletCollision/NarrowPhaseCollision/btGjkPairDetector.h>
#include <BulletCollision/NarrowPhaseCollision/btVoronoiSimplexSolver.h>

namespace sinewright::contact {

// Debian ships Bullet in both precisions; the float one would link in places and misread memory.
static_assert(sizeof(btScalar) == 8, "contact needs the float64 build of Bullet");

namespace {

constexpr double kMillimetre = 1000;  // [mm/m]

// A shape as Bullet sees it: a convex core with zero margin, seated in the body, and a radius round the core.
struct Core {
  std::unique_ptr<btConvexShape> convex;
  Isometry3d seat = Isometry3d::Identity();  // of the core in the body frame [m]
  double radius = 0;                         // [m]
};

btVector3 to_bullet(const Vector3d& p) {
  return {kMillimetre * p.x(), kMillimetre * p.y(), kMillimetre * p.z()};
}

Vector3d direction_from_bullet(const btVector3& v) {
  return {v.x(), v.y(), v.z()};
}

btTransform to_bullet(const Isometry3d& X) {
  const auto R = X.linear();
  return btTransform(
      btMatrix3x3(R(0, 0), R(0, 1), R(0, 2), R(1, 0), R(1, 1), R(1, 2), R(2, 0), R(2, 1), R(2, 2)),
      to_bullet(Vector3d(X.translation())));
}

Core core_of(const model::Shape& shape) {
  return std::visit(
      [](const auto& s) {
        using S = std::decay_t<decltype(s)>;
        Core core;
        if constexpr (std::is_same_v<S, model::Sphere>) {
          auto hull = std::make_unique<btConvexHullShape>();
          hull->addPoint(btVector3(0, 0, 0));
          core.convex = std::move(hull);
          core.seat.translation() = s.center;
          core.radius = s.radius;
        } else if constexpr (std::is_same_v<S, model::Capsule>) {
          const Vector3d half = (s.to - s.from) / 2;
          auto hull = std::make_unique<btConvexHullShape>();
          hull->addPoint(to_bullet(half), false);
          hull->addPoint(to_bullet(Vector3d(-half)), true);
          core.convex = std::move(hull);
          core.seat.translation() = (s.from + s.to) / 2;
          core.radius = s.radius;
        } else if constexpr (std::is_same_v<S, model::Cylinder>) {
          core.convex =
              std::make_unique<btCylinderShapeZ>(to_bullet(Vector3d(s.radius, s.radius, s.length / 2)));
          core.seat.linear() =
              Eigen::Quaterniond::FromTwoVectors(Vector3d::UnitZ(), s.axis).toRotationMatrix();
          core.seat.translation() = s.center;
        } else if constexpr (std::is_same_v<S, model::Box>) {
          core.convex = std::make_unique<btBoxShape>(to_bullet(Vector3d(s.size / 2)));
          core.seat.linear() = s.rotation;
          core.seat.translation() = s.center;
        } else {
          // Bullet resolves directions best when the origin lies inside the shape.
          Vector3d middle = Vector3d::Zero();
          for (const Vector3d& p : s.points) middle += p / static_cast<double>(s.points.size());
          auto hull = std::make_unique<btConvexHullShape>();
          for (const Vector3d& p : s.points) hull->addPoint(to_bullet(Vector3d(p - middle)), false);
          hull->recalcLocalAabb();
          core.convex = std::move(hull);
          core.seat.translation() = middle;
        }
        // Bullet's default margin is 0.04 length units, or a share of the size; either would falsify
        // distances.
        core.convex->setMargin(0);
        return core;
      },
      shape);
}

struct Answer final : btDiscreteCollisionDetectorInterface::Result {
  void setShapeIdentifiersA(int, int) override {}
  void setShapeIdentifiersB(int, int) override {}
  void addContactPoint(const btVector3& normal_from_b, const btVector3& point_on_b,
                       btScalar distance) override {
    found = true;
    normal = normal_from_b;
    on_b = point_on_b;
    gap = distance;
  }
  bool found = false;
  btVector3 normal{0, 0, 0};
  btVector3 on_b{0, 0, 0};
  btScalar gap = 0;
};

// How far core A lies beyond core B along one direction [mm]. Never more than their true gap, which is the
// largest over all directions: a test of any answer that needs no trust in how it was found.
btScalar separation(const btConvexShape& a, const btTransform& X_a, const btConvexShape& b,
                    const btTransform& X_b, const btVector3& n) {
  const btVector3 lowest_of_a = X_a(a.localGetSupportingVertexWithoutMargin(-n * X_a.getBasis()));
  const btVector3 highest_of_b = X_b(b.localGetSupportingVertexWithoutMargin(n * X_b.getBasis()));
  return n.dot(lowest_of_a - highest_of_b);
}

// The direction with the largest separation of those offered so far.
struct Best {
  btVector3 normal{1, 0, 0};
  btVector3 on_b{0, 0, 0};
  btScalar gap = -std::numeric_limits<btScalar>::infinity();  // [mm]
};

// For the case that Bullet reports nothing at all: the axes of both shapes and the line through their
// centres.
Best best_of_fixed_directions(const btConvexShape& a, const btTransform& X_a, const btConvexShape& b,
                              const btTransform& X_b) {
  Best best;
  const auto consider = [&](const btVector3& n) {
    const btScalar gap = separation(a, X_a, b, X_b, n);
    if (gap > best.gap) best = {n, X_b(b.localGetSupportingVertexWithoutMargin(n * X_b.getBasis())), gap};
  };
  for (int i = 0; i < 3; ++i) {
    for (const btTransform* X : {&X_a, &X_b}) {
      consider(X->getBasis().getColumn(i));
      consider(-X->getBasis().getColumn(i));
    }
  }
  const btVector3 line = X_a.getOrigin() - X_b.getOrigin();
  if (line.length2() > 0) consider(line.normalized());
  return best;
}

constexpr int kRetries = 12;
constexpr btScalar kSound = 1e-5;   // [mm] ends the search; most answers agree to 1e-7 and better
constexpr btScalar kUsable = 1e-3;  // [mm] still better than what climb() finds

// A turned about its centre by 1e-8 rad, four times as much at each further attempt, about another axis each
// time. The first few turns displace nothing by as much as kSound.
btTransform nudged(const btTransform& X_a, int attempt) {
  static constexpr btScalar axes[4][3] = {{1, 2, 3}, {-3, 1, 2}, {2, -3, 1}, {-1, -2, 3}};
  const btScalar* axis = axes[attempt % 4];
  const btQuaternion turn(btVector3(axis[0], axis[1], axis[2]).normalized(),
                          1e-8 * std::pow(4.0, attempt - 1));
  btTransform turned = X_a;
  turned.setBasis(btMatrix3x3(turn) * X_a.getBasis());
  return turned;
}

// Climbs from a direction to a larger separation: steps to twelve sides on the sphere of directions, halved
// when none of them is better.
void climb(const btConvexShape& a, const btTransform& X_a, const btConvexShape& b, const btTransform& X_b,
           Best& best) {
  btScalar step = 0.1;  // [rad]
  for (int i = 0; i < 200 && step > 1e-10; ++i) {
    btVector3 u, v;
    btPlaneSpace1(best.normal, u, v);
    const btVector3 centre = best.normal;
    bool better = false;
    for (int k = 0; k < 12; ++k) {
      const btScalar angle = k * SIMD_2_PI / 12;
      const btVector3 n = (centre + step * (std::cos(angle) * u + std::sin(angle) * v)).normalized();
      const btScalar gap = separation(a, X_a, b, X_b, n);
      if (gap <= best.gap) continue;
      best = {n, X_b(b.localGetSupportingVertexWithoutMargin(n * X_b.getBasis())), gap};
      better = true;
    }
    if (!better) step /= 2;
  }
}

}  // namespace

struct HullDistance::Bullet {
  Core a, b;
  mutable btVoronoiSimplexSolver simplex;
  mutable btGjkEpaPenetrationDepthSolver epa;

  Bullet(const model::Shape& shape_a, const model::Shape& shape_b)
      : a(core_of(shape_a)), b(core_of(shape_b)) {}
};

HullDistance::HullDistance(const model::Shape& a, const model::Shape& b)
    : bullet_(std::make_unique<Bullet>(a, b)) {}
HullDistance::HullDistance(HullDistance&&) noexcept = default;
HullDistance& HullDistance::operator=(HullDistance&&) noexcept = default;
HullDistance::~HullDistance() = default;

ClosestPoints HullDistance::closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const {
  const Core& a = bullet_->a;
  const Core& b = bullet_->b;
  // Poses relative to the middle between the cores: far from the world's origin nothing is lost to rounding.
  Isometry3d X_WCa = X_WA * a.seat;
  Isometry3d X_WCb = X_WB * b.seat;
  const Vector3d middle = (X_WCa.translation() + X_WCb.translation()) / 2;
  X_WCa.translation() -= middle;
  X_WCb.translation() -= middle;

  const btTransform X_a = to_bullet(X_WCa);
  const btTransform X_b = to_bullet(X_WCb);
  btGjkPairDetector detector(a.convex.get(), b.convex.get(), &bullet_->simplex, &bullet_->epa);

  // EPA gives up on one overlap in 30 of two cylinders and now and then on others, and returns any normal
  // with any depth. An answer counts only if the cores are apart (or overlap) along its normal by the gap it
  // names. If not, the question is put again with A turned by a little, which breaks the tie that EPA
  // stumbled over; of all answers the normal with the largest separation holds, measured at the true pose.
  Best best;      // the largest separation
  Best soundest;  // the answer that agrees best with the separation along its normal
  btScalar disagreement = std::numeric_limits<btScalar>::infinity();
  for (int attempt = 0; attempt <= kRetries && disagreement > kSound; ++attempt) {
    btGjkPairDetector::ClosestPointInput input;
    input.m_transformA = attempt == 0 ? X_a : nudged(X_a, attempt);
    input.m_transformB = X_b;
    Answer answer;
    detector.getClosestPoints(input, answer, nullptr);
    if (!answer.found || !(answer.normal.length2() > 0.5)) continue;
    const btVector3 normal = answer.normal.normalized();
    const btScalar beyond = separation(*a.convex, X_a, *b.convex, X_b, normal);
    if (beyond > best.gap) best = {normal, answer.on_b, beyond};
    // The gap found, with its point of A carried back from the turned pose. GJK's gap errs by the square of
    // the error of its normal, the separation along that normal by the first power: keep the former if it is
    // sound.
    const btVector3 on_turned_a = answer.on_b + answer.gap * normal;
    const btScalar found = normal.dot(X_a(input.m_transformA.inverse()(on_turned_a)) - answer.on_b);
    if (std::abs(found - beyond) < disagreement) {
      disagreement = std::abs(found - beyond);
      soundest = {normal, answer.on_b, found};
    }
  }
  if (disagreement < kUsable) {
    best = soundest;
  } else {
    const Best fixed = best_of_fixed_directions(*a.convex, X_a, *b.convex, X_b);
    if (fixed.gap > best.gap) best = fixed;
    climb(*a.convex, X_a, *b.convex, X_b, best);
  }

  ClosestPoints points;
  points.normal = direction_from_bullet(best.normal);
  const double core_gap = best.gap / kMillimetre;
  const Vector3d on_core_b = direction_from_bullet(best.on_b) / kMillimetre;
  points.gap = core_gap - a.radius - b.radius;
  points.on_b = middle + on_core_b + b.radius * points.normal;
  points.on_a = points.on_b + points.gap * points.normal;
  return points;
}

}  // namespace sinewright::contact
