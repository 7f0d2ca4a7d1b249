#include "contact/contact_law.h"

#include <cmath>
#include <limits>
#include <numbers>
#include <random>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

namespace {

using namespace sinewright;
using namespace sinewright::contact;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

model::Surface surface(double modulus, double poisson, double damping = 0) {
  return {"test", modulus, poisson, damping, "invented"};
}

ContactPair example() {
  ContactPair pair;
  pair.modulus = 1.2e6;
  pair.damping = 0.8;
  pair.friction = 0.6;
  pair.tangential_stiffness = 4e3;
  return pair;
}

// Displacement of the contact along x in equal steps; returns the work done against friction.
double drag(const ContactPair& pair, double normal, double distance, int n_steps, Vector3d& spring) {
  double work = 0;
  double last = coulomb_force(pair, normal, spring).force.x();
  for (int i = 0; i < n_steps; ++i) {
    const double step = distance / n_steps;
    const TangentForce t = coulomb_force(pair, normal, spring + step * Vector3d::UnitX());
    work -= step * (t.force.x() + last) / 2;
    last = t.force.x();
    spring = t.spring;
  }
  return work;
}

}  // namespace

TEST_CASE("combine: two springs in series, damping by share, Mindlin's ratio", "[contact-law][analytic]") {
  // Equal materials: k_t / k_n = 2 (1 - nu) / (2 - nu) (Johnson, Contact Mechanics, section 7.2, from
  // memory).
  const double nu = 0.3;
  const double radius = 0.004;
  const double force = 7;
  const ContactPair equal = combine(surface(2e9, nu, 0.2), surface(2e9, nu, 0.4), 0.5, radius, force);
  CHECK_THAT(equal.modulus, WithinRel(1e9 / (1 - nu * nu), 1e-14));
  CHECK_THAT(equal.damping, WithinRel(0.3, 1e-14));
  CHECK(equal.friction == 0.5);
  const double depth = std::pow(3 * force / (4 * equal.modulus * std::sqrt(radius)), 2.0 / 3.0);
  const NormalForce normal = hertz_force(equal, radius, -depth, 0);
  CHECK_THAT(normal.force, WithinRel(force, 1e-12));
  CHECK_THAT(equal.tangential_stiffness / normal.stiffness, WithinRel(2 * (1 - nu) / (2 - nu), 1e-12));

  // A rigid partner leaves the soft one alone.
  const double rigid = std::numeric_limits<double>::infinity();
  const ContactPair on_rigid = combine(surface(3e6, 0.48, 0.7), surface(rigid, 0, 5), 0.5, radius, force);
  CHECK_THAT(on_rigid.modulus, WithinRel(3e6 / (1 - 0.48 * 0.48), 1e-14));
  CHECK_THAT(on_rigid.damping, WithinRel(0.7, 1e-14));
  // Order does not matter.
  const ContactPair ab = combine(surface(3e6, 0.48, 0.7), surface(2e9, 0.3, 0.1), 0.5, radius, force);
  const ContactPair ba = combine(surface(2e9, 0.3, 0.1), surface(3e6, 0.48, 0.7), 0.5, radius, force);
  CHECK_THAT(ab.modulus, WithinRel(ba.modulus, 1e-15));
  CHECK_THAT(ab.damping, WithinRel(ba.damping, 1e-15));
  CHECK_THAT(ab.tangential_stiffness, WithinRel(ba.tangential_stiffness, 1e-15));
}

TEST_CASE("combine: numbers out of range are refused", "[contact-law][errors]") {
  const auto good = surface(1e9, 0.3);
  const double rigid = std::numeric_limits<double>::infinity();
  CHECK_THROWS_AS(combine(surface(0, 0.3), good, 0.5, 0.01, 1), InvalidInput);
  CHECK_THROWS_AS(combine(good, surface(1e9, 0.51), 0.5, 0.01, 1), InvalidInput);
  CHECK_THROWS_AS(combine(surface(1e9, 0.3, -1), good, 0.5, 0.01, 1), InvalidInput);
  CHECK_THROWS_AS(combine(surface(rigid, 0), surface(rigid, 0), 0.5, 0.01, 1), InvalidInput);
  CHECK_THROWS_AS(combine(good, good, 0.5, 0, 1), InvalidInput);
  CHECK_THROWS_AS(combine(good, good, 0.5, 0.01, 0), InvalidInput);
  CHECK_THROWS_WITH(combine(good, good, -0.5, 0.01, 1),
                    Catch::Contains("friction = -0.5") && Catch::Contains("needed"));
}

TEST_CASE("hertz force: it is the slope of its energy, and its derivatives are right",
          "[contact-law][analytic]") {
  const ContactPair pair = example();
  const double radius = 0.006;
  for (const double depth : {1e-6, 1e-5, 1e-4, 1e-3}) {
    const double h = 1e-5 * depth;
    const auto at = [&](double gap, double rate) { return hertz_force(pair, radius, gap, rate); };
    const double slope = (at(-depth - h, 0).energy - at(-depth + h, 0).energy) / (2 * h);
    CAPTURE(depth);
    CHECK_THAT(at(-depth, 0).force, WithinRel(slope, 1e-8));
    CHECK_THAT(at(-depth, 0).force,
               WithinRel(4.0 / 3 * pair.modulus * std::sqrt(radius) * std::pow(depth, 1.5), 1e-14));
    for (const double rate : {-0.5, 0.0, 0.9}) {
      const NormalForce n = at(-depth, rate);
      const double stiffness = (at(-depth - h, rate).force - at(-depth + h, rate).force) / (2 * h);
      const double damping = (at(-depth, rate - 1e-4).force - at(-depth, rate + 1e-4).force) / 2e-4;
      CHECK_THAT(n.stiffness, WithinRel(stiffness, 1e-8));
      CHECK_THAT(n.damping, WithinRel(damping, 1e-8));
      CHECK_THAT(n.force, WithinRel(at(-depth, 0).force * (1 - pair.damping * rate), 1e-14));
    }
  }
}

TEST_CASE("hertz force: never pulls, is zero when apart, and passes on what is not a number",
          "[contact-law]") {
  const ContactPair pair = example();
  CHECK(hertz_force(pair, 0.01, 0, -1).force == 0);
  CHECK(hertz_force(pair, 0.01, 1e-6, -10).force == 0);
  CHECK(hertz_force(pair, 0.01, 1e-6, -10).energy == 0);
  const NormalForce tearing = hertz_force(pair, 0.01, -1e-4, 2 / pair.damping);  // opens faster than 1/c
  CHECK(tearing.force == 0);
  CHECK(tearing.stiffness == 0);
  CHECK(tearing.damping == 0);
  CHECK(tearing.energy > 0);
  CHECK(std::isnan(hertz_force(pair, 0.01, std::nan(""), 0).force));
}

TEST_CASE("hertz force: a bounce loses what the damper takes", "[contact-law][analytic]") {
  // For N = k d^(3/2) (1 + c d'), m d'' = -N gives d(v²/2)/(1 + c v) = -dE/m: with v from +v0 to -v1 and E
  // from 0 to 0, v0 - ln(1 + c v0)/c = -v1 - ln(1 - c v1)/c. Our own integration; independent of k, m and the
  // path.
  ContactPair pair = example();
  pair.damping = 0.3;
  const double radius = 0.006;
  const double mass = 0.02;
  const double v0 = 0.8;
  double depth = 0;
  double speed = v0;
  const double h = 1e-7;
  const auto acceleration = [&](double d, double v) {
    return -hertz_force(pair, radius, -d, -v).force / mass;
  };
  do {  // the classical fourth-order Runge-Kutta rule
    const double k1v = acceleration(depth, speed);
    const double k2v = acceleration(depth + h / 2 * speed, speed + h / 2 * k1v);
    const double k3v = acceleration(depth + h / 2 * (speed + h / 2 * k1v), speed + h / 2 * k2v);
    const double k4v = acceleration(depth + h * (speed + h / 2 * k2v), speed + h * k3v);
    depth += h * speed + h * h / 6 * (k1v + k2v + k3v);
    speed += h / 6 * (k1v + 2 * k2v + 2 * k3v + k4v);
  } while (depth > 0);
  const double v1 = -speed;
  const double c = pair.damping;
  CHECK(v1 > 0);
  CHECK(v1 < v0);
  CHECK_THAT(v0 - std::log(1 + c * v0) / c, WithinRel(-v1 - std::log(1 - c * v1) / c, 1e-6));
}

TEST_CASE("coulomb force: inside the cone in every bit", "[contact-law]") {
  std::mt19937_64 engine(5);
  const auto between = [&](double low, double high) {
    return low + (high - low) * (static_cast<double>(engine() >> 11) / 9007199254740992.0);
  };
  int slips = 0;
  for (int i = 0; i < 200000; ++i) {
    ContactPair pair;
    pair.friction = between(0, 2);
    pair.tangential_stiffness = std::pow(10, between(1, 7));
    const double normal = std::pow(10, between(-12, 3));
    const Vector3d trial =
        std::pow(10, between(-12, -2)) * Vector3d(between(-1, 1), between(-1, 1), between(-1, 1));
    const TangentForce t = coulomb_force(pair, normal, trial);
    const double limit = pair.friction * normal;
    if (!(t.force.norm() <= limit)) FAIL("force " << t.force.norm() << " N above the cone " << limit << " N");
    if (t.slips) {
      ++slips;
      if (!(t.force.norm() >= limit * (1 - 1e-14))) FAIL("slips below the cone");
      if (!(t.force.dot(trial) < 0)) FAIL("friction must oppose the slip");
      const TangentForce again = coulomb_force(pair, normal, t.spring);  // at rest on the cone: holds
      if (again.force.norm() > limit || (again.force - t.force).norm() > 1e-14 * limit)
        FAIL("does not rest on the cone");
    } else if (t.spring != trial) {
      FAIL("a sticking spring must keep its bits");
    }
  }
  CHECK(slips > 20000);
  CHECK(slips < 180000);
}

TEST_CASE("coulomb force: a loaded contact stays put over a million steps", "[contact-law]") {
  const ContactPair pair = example();
  const double normal = 3;
  for (const double share :
       {0.3, 0.999999, 1.5}) {  // the last one slipped on to the cone before it came to rest
    Vector3d spring = share * pair.friction * normal / pair.tangential_stiffness * Vector3d(0.6, 0.8, 0);
    const TangentForce start = coulomb_force(pair, normal, spring);
    spring = start.spring;
    for (int i = 0; i < 1000000; ++i) spring = coulomb_force(pair, normal, spring).spring;
    CAPTURE(share);
    CHECK(spring == start.spring);
    CHECK_THAT(coulomb_force(pair, normal, spring).force.norm(),
               WithinRel(std::min(1.0, share) * pair.friction * normal, 1e-14));
  }
}

TEST_CASE("coulomb force: a to-and-fro loop loses the area of its parallelogram", "[contact-law][analytic]") {
  // Amplitude A on both sides, elastic reach s = mu N / k: loss per cycle 4 mu N (A - s). Elementary.
  const ContactPair pair = example();
  const double normal = 5;
  const double limit = pair.friction * normal;
  const double reach = limit / pair.tangential_stiffness;
  const double amplitude = 4 * reach;
  Vector3d spring = Vector3d::Zero();
  drag(pair, normal, amplitude, 400, spring);  // now slipping at +A
  for (int cycle = 0; cycle < 3; ++cycle) {
    // 8 reaches in 800 steps: the corner of the loop falls on a step, where the trapezoid rule is exact.
    const double loss =
        drag(pair, normal, -2 * amplitude, 800, spring) + drag(pair, normal, 2 * amplitude, 800, spring);
    CHECK_THAT(loss, WithinRel(4 * limit * (amplitude - reach), 1e-9));
  }
  // Below the reach nothing is lost.
  Vector3d elastic = Vector3d::Zero();
  const double none =
      drag(pair, normal, 0.9 * reach, 100, elastic) + drag(pair, normal, -0.9 * reach, 100, elastic);
  CHECK_THAT(none, WithinAbs(0, 1e-12 * limit * reach));
  CHECK(elastic.norm() < 1e-12 * reach);
}

TEST_CASE("coulomb force: a circle drags the slider on a smaller circle", "[contact-law][analytic]") {
  // In the steady state the slider follows at the distance s = mu N / k, its path touching the spring: its
  // circle has the radius sqrt(r² - s²), so a turn loses 2 pi mu N sqrt(r² - s²). Our derivation
  // (Pythagoras).
  const ContactPair pair = example();
  const double normal = 5;
  const double limit = pair.friction * normal;
  const double reach = limit / pair.tangential_stiffness;
  const double radius = 1.7 * reach;
  const double expected = 2 * std::numbers::pi * limit * std::sqrt(radius * radius - reach * reach);
  const auto loss_per_turn = [&](int n_steps) {
    Vector3d spring = Vector3d::Zero();
    Vector3d last = Vector3d(radius, 0, 0);
    Vector3d last_force = Vector3d::Zero();
    double loss = 0;
    for (int i = 1; i <= 6 * n_steps; ++i) {
      if (i == 5 * n_steps + 1) loss = 0;  // five turns to forget the start
      const double angle = 2 * std::numbers::pi * i / n_steps;
      const Vector3d now(radius * std::cos(angle), radius * std::sin(angle), 0);
      const TangentForce t = coulomb_force(pair, normal, spring + now - last);
      loss -= (now - last).dot(t.force + last_force) / 2;
      spring = t.spring;
      last = now;
      last_force = t.force;
    }
    return loss;
  };
  const double coarse = std::abs(loss_per_turn(1000) - expected);
  const double fine = std::abs(loss_per_turn(2000) - expected);
  CHECK(fine < 5e-3 * expected);
  CHECK_THAT(std::log2(coarse / fine), WithinAbs(1, 0.1));  // the return mapping is of first order
}

TEST_CASE("coulomb force: tangent and slope in N agree with finite differences", "[contact-law]") {
  const ContactPair pair = example();
  const double normal = 2.5;
  const double reach = pair.friction * normal / pair.tangential_stiffness;
  for (const double share : {0.2, 0.95, 1.05, 3.0, 50.0}) {
    const Vector3d trial = share * reach * Vector3d(0.48, -0.6, 0.64);
    const TangentForce t = coulomb_force(pair, normal, trial);
    CAPTURE(share);
    CHECK(t.slips == (share > 1));
    const double h = 1e-4 * reach;
    for (int k = 0; k < 3; ++k) {
      const Vector3d plus = coulomb_force(pair, normal, trial + h * Vector3d::Unit(k)).force;
      const Vector3d minus = coulomb_force(pair, normal, trial - h * Vector3d::Unit(k)).force;
      CHECK(((plus - minus) / (2 * h) - t.by_displacement.col(k)).norm() < 1e-6 * pair.tangential_stiffness);
    }
    const Vector3d by_normal =
        (coulomb_force(pair, normal + 1e-5, trial).force - coulomb_force(pair, normal - 1e-5, trial).force) /
        2e-5;
    CHECK((by_normal - t.by_normal).norm() < 1e-8);
  }
}

TEST_CASE("coulomb force: no normal force, no friction, no trouble", "[contact-law]") {
  const ContactPair pair = example();
  for (const double normal : {0.0, -1.0}) {
    for (const Vector3d& trial : {Vector3d(1e-5, 0, 0), Vector3d(0, 0, 0)}) {
      const TangentForce t = coulomb_force(pair, normal, trial);
      CHECK(t.force == Vector3d::Zero());
      CHECK(t.spring == Vector3d::Zero());
      CHECK(t.by_displacement.allFinite());
      CHECK(t.by_normal.allFinite());
    }
  }
  for (const double normal : {1e-300, std::numeric_limits<double>::denorm_min(), 1e-20}) {
    for (const double size : {1e-3, 1e-200, 1e-310}) {
      const TangentForce t = coulomb_force(pair, normal, Vector3d(size, -size, 0));
      CHECK(t.force.allFinite());
      CHECK(t.spring.allFinite());
      CHECK(t.by_displacement.allFinite());
      CHECK(t.by_normal.allFinite());
      CHECK(t.force.stableNorm() <= pair.friction * normal);
    }
  }
  ContactPair smooth = example();
  smooth.friction = 0;
  CHECK(coulomb_force(smooth, 5, Vector3d(1e-5, 0, 0)).force == Vector3d::Zero());
  CHECK(std::isnan(coulomb_force(pair, std::nan(""), Vector3d(1e-5, 0, 0)).force.norm()));
}
