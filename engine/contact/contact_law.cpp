#include "contact/contact_law.h"

#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "quantity/invalid_input.h"

namespace sinewright::contact {

namespace {

[[noreturn]] void refuse(const std::string& what, double value, const char* needed) {
  throw InvalidInput(fmt::format("contact: {} = {} is not allowed\n  needed: {}", what, value, needed));
}

void validate(const model::Surface& s) {
  if (!(s.modulus > 0)) refuse(fmt::format("modulus of surface {}", s.name), s.modulus, "a modulus > 0 Pa");
  if (!(s.poisson > -1 && s.poisson <= 0.5)) {
    refuse(fmt::format("Poisson's ratio of surface {}", s.name), s.poisson, "above -1 and at most 0.5");
  }
  if (!(s.damping >= 0) || !std::isfinite(s.damping)) {
    refuse(fmt::format("damping of surface {}", s.name), s.damping, ">= 0 s/m and finite");
  }
}

}  // namespace

ContactPair combine(const model::Surface& a, const model::Surface& b, double friction, double radius,
                    double reference_force) {
  validate(a);
  validate(b);
  if (!(friction >= 0) || !std::isfinite(friction)) refuse("friction", friction, ">= 0 and finite");
  if (!(radius > 0) || !std::isfinite(radius)) refuse("radius of the contact", radius, "> 0 m and finite");
  if (!(reference_force > 0) || !std::isfinite(reference_force)) {
    refuse("reference force of the contact", reference_force, "> 0 N and finite");
  }

  const double compliance_a = (1 - a.poisson * a.poisson) / a.modulus;
  const double compliance_b = (1 - b.poisson * b.poisson) / b.modulus;
  const double compliance = compliance_a + compliance_b;
  if (!(compliance > 0))
    refuse("modulus of both surfaces", a.modulus, "at least one surface that is not rigid");

  ContactPair pair;
  pair.modulus = 1 / compliance;
  pair.damping = (compliance_a * a.damping + compliance_b * b.damping) / compliance;
  pair.friction = friction;
  // (2 − ν)/G with G = E / 2(1 + ν), summed over both sides.
  const double shear_compliance =
      2 * (2 - a.poisson) * (1 + a.poisson) / a.modulus + 2 * (2 - b.poisson) * (1 + b.poisson) / b.modulus;
  const double contact_radius = std::cbrt(3 * reference_force * radius / (4 * pair.modulus));
  pair.tangential_stiffness = 8 * contact_radius / shear_compliance;
  return pair;
}

NormalForce hertz_force(const ContactPair& pair, double radius, double gap, double gap_rate) {
  NormalForce normal;
  if (gap >= 0) return normal;
  const double depth = -gap;  // a NaN gap goes on and makes a NaN force: seen, not hidden
  const double root = std::sqrt(radius * depth);
  const double elastic = 4.0 / 3.0 * pair.modulus * root * depth;
  normal.energy = 0.4 * elastic * depth;
  const double factor = 1 - pair.damping * gap_rate;
  if (factor <= 0) return normal;
  normal.force = elastic * factor;
  normal.stiffness = 2 * pair.modulus * root * factor;
  normal.damping = elastic * pair.damping;
  return normal;
}

TangentForce coulomb_force(const ContactPair& pair, double normal_force, const Vector3d& trial) {
  TangentForce tangent;
  const double k = pair.tangential_stiffness;
  const double limit =
      normal_force > 0 ? pair.friction * normal_force : (std::isnan(normal_force) ? normal_force : 0);
  const Vector3d stick = -k * trial;
  const double size = stick.stableNorm();
  if (size <= limit) {
    tangent.force = stick;
    tangent.spring = trial;
    tangent.by_displacement = -k * Matrix3d::Identity();
    return tangent;
  }
  tangent.slips = true;
  if (size == 0) return tangent;  // a negative limit cannot be; kept against division by zero
  const Vector3d direction = stick / size;
  tangent.by_normal = pair.friction * direction;
  if (limit == 0) return tangent;
  // The norm of a rounded unit vector may exceed 1 by two roundings; shrinking by four keeps the force in the
  // cone.
  constexpr double kShrink = 1 - 4 * std::numeric_limits<double>::epsilon();
  tangent.force = kShrink * limit * direction;
  tangent.spring = -tangent.force / k;
  tangent.by_displacement = -(k * limit / size) * (Matrix3d::Identity() - direction * direction.transpose());
  return tangent;
}

}  // namespace sinewright::contact
