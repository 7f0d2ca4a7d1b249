#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <cstddef>
#include <string>
#include <variant>
#include <vector>

namespace sinewright::model {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// All coordinates of a shape are in the frame of the body that carries it [m].
struct Sphere {
  Vector3d center = Vector3d::Zero();  ///< [m]
  double radius = 0;                   ///< [m]
};

/// All points within `radius` of the segment from `from` to `to`.
struct Capsule {
  Vector3d from = Vector3d::Zero();  ///< [m]
  Vector3d to = Vector3d::Zero();    ///< [m]
  double radius = 0;                 ///< [m]
};

struct Cylinder {
  Vector3d center = Vector3d::Zero();  ///< [m]
  Vector3d axis = Vector3d::UnitZ();   ///< unit vector
  double radius = 0;                   ///< [m]
  double length = 0;                   ///< [m], whole length along the axis
};

struct Box {
  Vector3d center = Vector3d::Zero();          ///< [m]
  Vector3d size = Vector3d::Zero();            ///< [m], whole edge lengths along the box's own axes
  Matrix3d rotation = Matrix3d::Identity();    ///< box axes in the body frame, as columns
};

/// The convex hull of some points.
struct Hull {
  std::vector<Vector3d> points;  ///< [m]
};

/// A part from a file with a closed surface of triangles, as far as its mass and what it touches need it.
struct Mesh {
  std::string file;                        ///< as the model names it
  std::vector<Vector3d> points;            ///< corners of the convex hull that stands for it in contact and in drawings [m]
  double inside = 0;                       ///< that hull lies inside the part's own convex hull by at most this [m]
  double volume = 0;                       ///< [m³]
  Vector3d center = Vector3d::Zero();      ///< of the volume [m]
  Matrix3d inertia = Matrix3d::Zero();     ///< of the volume with density 1, about its centre, body axes [m⁵]
  std::size_t triangles = 0;               ///< in the file
};

using Shape = std::variant<Sphere, Capsule, Cylinder, Box, Hull, Mesh>;

/// A shape that can touch others, with the name of the surface that covers it.
struct ContactShape {
  std::string name;
  Shape shape;
  int surface = -1;  ///< index into Model::surfaces
};

}  // namespace sinewright::model
