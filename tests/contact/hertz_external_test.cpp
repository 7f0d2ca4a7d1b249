#include <cmath>
#include <limits>
#include <numbers>

#include <catch2/catch.hpp>

#include "contact/closest_points.h"
#include "contact/contact_law.h"

// Published Hertz contacts of spheres. The law takes the approach and gives the force; contact radius a = √(R
// δ) and peak pressure p0 = 3F / 2πa² follow from the two. Line contacts are not checked: the law does not
// cover them.

namespace {

using namespace sinewright;
using namespace sinewright::contact;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Sphere;

constexpr double kRigid = std::numeric_limits<double>::infinity();
const model::Box kPlate{Vector3d::Zero(), Vector3d(1, 1, 0.1), Eigen::Matrix3d::Identity()};

struct Hertz {
  double force, contact_radius, peak_pressure;
};

// Presses two shapes together by the approach [m].
Hertz press(const model::Shape& a, const model::Shape& b, double modulus_a, double nu_a, double modulus_b,
            double nu_b, double approach) {
  const double radius = effective_radius(a, b);
  const ContactPair pair =
      combine({"a", modulus_a, nu_a, 0, ""}, {"b", modulus_b, nu_b, 0, ""}, 0.5, radius, 1.0);
  const double force = hertz_force(pair, radius, -approach, 0).force;
  const double a2 = radius * approach;
  return {force, std::sqrt(a2), 3 * force / (2 * std::numbers::pi * a2)};
}

}  // namespace

TEST_CASE("hertz: sphere on a rigid flat as in a finite-element course", "[external]") {
  // R = 8 mm, E = 1000 MPa, nu = 0.3, F = 60 pi N; published contact radius 1.010 mm.
  // Source: courses.ansys.com, Hertz contact, lesson 1; same data in tutorsglobe.com, question 51707067.
  // Approach and peak pressure computed from Hertz's formulas (Johnson, Contact Mechanics, section 4.2, from
  // memory).
  const Hertz h = press(Sphere{Vector3d::Zero(), 0.008}, kPlate, 1e9, 0.3, kRigid, 0, 0.127420466338e-3);
  CHECK_THAT(h.force, WithinRel(60 * std::numbers::pi, 1e-10));
  CHECK_THAT(h.contact_radius, WithinRel(1.010e-3, 5e-4));
  CHECK_THAT(h.contact_radius, WithinRel(1.00963544446e-3, 1e-10));
  CHECK_THAT(h.peak_pressure, WithinRel(88.2903690694e6, 1e-10));
}

TEST_CASE("hertz: two equal spheres as in a validation manual", "[external]") {
  // R = 50 mm, E = 20 GPa, nu = 0.3, approach 4 mm; published p0 = 2798.3 MPa, a = 10 mm.
  // Source: Code_Aster validation manual V6.04.104, test SSNV104 (R and E inferred from p0 and a).
  const Sphere ball{Vector3d::Zero(), 0.05};
  const Hertz h = press(ball, ball, 20e9, 0.3, 20e9, 0.3, 4e-3);
  CHECK_THAT(h.peak_pressure, WithinRel(2798.3e6, 1e-4));
  CHECK_THAT(h.contact_radius, WithinRel(10e-3, 1e-10));
  CHECK_THAT(h.peak_pressure, WithinRel(2798.32866975e6, 1e-10));
  CHECK_THAT(h.force, WithinRel(586080.586, 1e-9));
}

TEST_CASE("hertz: steel ball on steel flat, and two steel balls", "[external]") {
  // Diameter 50 mm, 500 N, 200 GPa, 0.3. Source of the data: coursehero.com, problem 8421357; answers
  // computed from Hertz's formulas (Johnson, Contact Mechanics, section 4.2, from memory).
  const Sphere ball{Vector3d::Zero(), 0.025};
  const Hertz flat = press(ball, kPlate, 200e9, 0.3, 200e9, 0.3, 7.7517859221e-6);
  CHECK_THAT(flat.force, WithinRel(500, 1e-9));
  CHECK_THAT(flat.contact_radius, WithinRel(0.4402211354e-3, 1e-9));
  CHECK_THAT(flat.peak_pressure, WithinRel(1231.88342422e6, 1e-9));
  const Hertz pair = press(ball, ball, 200e9, 0.3, 200e9, 0.3, 9.76663825753e-6);
  CHECK_THAT(pair.force, WithinRel(500, 1e-9));
  CHECK_THAT(pair.contact_radius, WithinRel(0.349403746716e-3, 1e-9));
  CHECK_THAT(pair.peak_pressure, WithinRel(1955.4930435e6, 1e-9));
}

TEST_CASE("hertz: rubber fingertip on a rigid object", "[external]") {
  // R = 8 mm, E = 10 MPa, nu = 0.48, 10 N. Computed from Hertz's formulas (Johnson, Contact Mechanics,
  // section 4.2, from memory) apart from the engine; no published case.
  const Hertz h = press(Sphere{Vector3d::Zero(), 0.008}, kPlate, 10e6, 0.48, kRigid, 0, 0.346620479958e-3);
  CHECK_THAT(h.force, WithinRel(10, 1e-9));
  CHECK_THAT(h.contact_radius, WithinRel(1.66522185899e-3, 1e-9));
  CHECK_THAT(h.peak_pressure, WithinRel(1.72185739477e6, 1e-9));
}
