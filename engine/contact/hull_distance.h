#pragma once

#include <memory>

#include "contact/closest_points.h"

namespace sinewright::contact {

/// Closest points of any two shapes by Bullet's GJK and, on overlap, EPA. The only place that knows Bullet;
/// millimetres do not leave it (its tolerances are absolute and fit millimetres in double precision).
///
/// A sphere or capsule is passed as its core (a point or a segment) and its radius subtracted afterwards, so
/// that overlap shallower than the radius needs no EPA. Internal to contact/; tests use it to check the
/// closed forms.
class HullDistance {
 public:
  HullDistance(const model::Shape& a, const model::Shape& b);
  HullDistance(HullDistance&&) noexcept;
  HullDistance& operator=(HullDistance&&) noexcept;
  ~HullDistance();

  /// Fills all but `radius`. Allocates nothing.
  [[nodiscard]] ClosestPoints closest(const Isometry3d& X_WA, const Isometry3d& X_WB) const;

 private:
  struct Bullet;
  std::unique_ptr<Bullet> bullet_;
};

}  // namespace sinewright::contact
