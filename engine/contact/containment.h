#pragma once

#include <vector>

#include "contact/closest_points.h"

namespace sinewright::contact {

struct PosedShape {
  model::Shape shape;
  Isometry3d pose = Isometry3d::Identity();  ///< of its body frame in the world
};

/// How a part lies in what is printed around it.
struct Containment {
  enum class Place {
    within,  ///< one of the solids holds it whole: `way` is the least thickness of that solid around it
    across,  ///< all of it lies in some solid, but no single one holds it: the thickness is not known, `way` is 0
    out,     ///< some of it lies in none: `way` is by how much it sticks out
  };
  Place place = Place::out;
  double way = 0;  ///< [m], >= 0
};

/// Where a convex part lies in the union of convex solids.
///
/// Within one solid S the least thickness is min over the part's extreme points p of −sd(p, S), with sd the signed distance:
/// exact for boxes, balls, capsules and hulls; the rims of a cylinder are 96 points, which shows too much by 0.06 % of its radius
/// at most. For the union the surface is looked at in steps of 1 mm (of a hull: its corners and what lies between any two).
/// @pre there is at least one solid.
[[nodiscard]] Containment containment(const PosedShape& part, const std::vector<PosedShape>& solids);

}  // namespace sinewright::contact
