#include "geometry/guide_wrap.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sinewright::geometry {

namespace {

// One end of the cord seen in the plane across the axis.
struct PlaneEnd {
  double distance = 0;  // from the axis [m]
  double polar = 0;     // polar angle [rad]
  double tangent = 0;   // length of the tangent from the point to the circle [m]
  double opening = 0;   // angle at the axis between the point and its tangent point [rad]
  Vector3d radial, around;  // unit vectors of the polar frame
};

PlaneEnd plane_end(const GuideFrame& guide, const Vector3d& e2, const Vector3d& point) {
  PlaneEnd end;
  const Vector3d r = point - guide.center;
  const double x = r.dot(guide.side);
  const double y = r.dot(e2);
  end.distance = std::max(std::hypot(x, y), guide.radius * (1 + 1e-9));  // keeps the tangent's derivative finite
  end.polar = std::atan2(y, x);
  end.tangent = std::sqrt(end.distance * end.distance - guide.radius * guide.radius);
  end.opening = std::acos(guide.radius / end.distance);
  const double c = std::cos(end.polar), s = std::sin(end.polar);
  end.radial = c * guide.side + s * e2;
  end.around = -s * guide.side + c * e2;
  return end;
}

}  // namespace

GuideWrap wrap_guide(const GuideFrame& guide, const Vector3d& p, const Vector3d& q) {
  GuideWrap wrap;
  const Vector3d e2 = guide.sense * guide.axis.cross(guide.side);
  const PlaneEnd a = plane_end(guide, e2, p);
  const PlaneEnd b = plane_end(guide, e2, q);
  const double first = std::remainder(a.polar + a.opening, 2 * std::numbers::pi);
  const double turn = std::remainder(b.polar - b.opening - first, 2 * std::numbers::pi);

  if (turn <= 0) {
    const Vector3d chord = q - p;
    const double length = chord.norm();
    const Vector3d u = chord / length;
    // From the point nearest to the axis, where a touching cord would have its arc, counted on to the splitting line.
    const Vector3d across = chord - guide.axis * guide.axis.dot(chord);
    const double share =
        std::clamp((guide.center - p).dot(across) / std::max(across.squaredNorm(), 1e-300), 0.0, 1.0);
    const Vector3d foot = p + share * chord - guide.center;
    const double lead = guide.radius * std::atan2(foot.dot(e2), foot.dot(guide.side)) * length / std::max(across.norm(), 1e-150);
    // The split is held: both parts carry the same tension, so only the sum of their derivatives acts. For the same reason it
    // does no harm to keep both parts positive where the cord is far from the guide.
    wrap.length_p = std::clamp(share * length - lead, 0.01 * length, 0.99 * length);
    wrap.length_q = length - wrap.length_p;
    wrap.p_by_p = -share * u;
    wrap.p_by_q = share * u;
    wrap.q_by_p = -(1 - share) * u;
    wrap.q_by_q = (1 - share) * u;
    wrap.contact_p = wrap.contact_q = p + share * chord;
    return wrap;
  }

  const double arc = guide.radius * turn;
  const double plane_p = a.tangent - guide.radius * first;
  const double plane_q = b.tangent + guide.radius * (first + turn);
  const double plane = plane_p + plane_q;
  const double rise = (q - p).dot(guide.axis);
  const double stretch = std::hypot(1.0, rise / plane);  // length / plane length, the same all along
  wrap.touches = true;
  wrap.length_p = plane_p * stretch;
  wrap.length_q = plane_q * stretch;
  wrap.turning_angle = turn / stretch;

  const Vector3d first_by_p = a.around / a.distance + guide.radius / (a.distance * a.tangent) * a.radial;
  const Vector3d last_by_q = b.around / b.distance - guide.radius / (b.distance * b.tangent) * b.radial;
  // Each end moves its own part of the arc only: the splitting line stays.
  const Vector3d plane_by_p = a.distance / a.tangent * a.radial - guide.radius * first_by_p;
  const Vector3d plane_by_q = b.distance / b.tangent * b.radial + guide.radius * last_by_q;
  const double slope = rise / plane;
  // d stretch = slope/stretch (d rise − slope d plane)/plane
  const Vector3d stretch_by_p = slope / (stretch * plane) * (-guide.axis - slope * plane_by_p);
  const Vector3d stretch_by_q = slope / (stretch * plane) * (guide.axis - slope * plane_by_q);
  wrap.p_by_p = stretch * plane_by_p + plane_p * stretch_by_p;
  wrap.p_by_q = plane_p * stretch_by_q;
  wrap.q_by_p = plane_q * stretch_by_p;
  wrap.q_by_q = stretch * plane_by_q + plane_q * stretch_by_q;

  const auto on_surface = [&](double angle, double along) {
    return Vector3d(guide.center + guide.radius * (std::cos(angle) * guide.side + std::sin(angle) * e2) +
                    guide.axis * ((p - guide.center).dot(guide.axis) + rise * along / plane));
  };
  wrap.contact_p = on_surface(first, a.tangent);
  wrap.contact_q = on_surface(first + turn, a.tangent + arc);
  return wrap;
}

}  // namespace sinewright::geometry
