#include "geometry/mesh_volume.h"

#include <Eigen/Geometry>

namespace sinewright::geometry {

using Eigen::Matrix3d;
using Eigen::Vector3d;

VolumeProperties volume_of(const std::vector<Vector3d>& points, const std::vector<Triangle>& triangles) {
  VolumeProperties whole;
  if (points.empty()) return whole;
  // From a point in the middle little cancels, wherever the part lies in its file.
  Vector3d low = points.front(), high = low;
  for (const Vector3d& p : points) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  const Vector3d middle = (low + high) / 2;
  Vector3d first = Vector3d::Zero();
  Matrix3d second = Matrix3d::Zero();
  for (const Triangle& t : triangles) {
    const Vector3d a = points[t[0]] - middle;
    const Vector3d b = points[t[1]] - middle;
    const Vector3d c = points[t[2]] - middle;
    const Vector3d sum = a + b + c;
    const double d = a.dot(b.cross(c));
    whole.volume += d / 6;
    first += d / 24 * sum;
    second += d / 120 * (a * a.transpose() + b * b.transpose() + c * c.transpose() + sum * sum.transpose());
  }
  if (whole.volume == 0) return whole;
  const Vector3d center = first / whole.volume;
  second -= whole.volume * center * center.transpose();
  whole.center = middle + center;
  whole.inertia = second.trace() * Matrix3d::Identity() - second;
  return whole;
}

}  // namespace sinewright::geometry
