#pragma once

#include <string>
#include <utility>
#include <vector>

#include "plot/figures.h"

namespace sinewright::plot {

/// A pose in the world.
struct Placed {
  Eigen::Matrix3d R = Eigen::Matrix3d::Identity();
  Eigen::Vector3d p = Eigen::Vector3d::Zero();
  Eigen::Vector3d operator*(const Eigen::Vector3d& point) const { return R * point + p; }
};

/// A moment worth a drawing.
struct Instant {
  double time = 0;
  std::string what;
  std::size_t row = 0;
};

/// A piece of a cord's way in the world, with its tension.
struct Piece {
  std::vector<Eigen::Vector3d> corners;
  double tension = 0;         ///< [N]
  std::size_t span = 0;       ///< of the chain; of an arc the span before it
};

/// Outline of a shape seen along z [m]: all our shapes are convex, so that it is the hull of projected points of the surface.
[[nodiscard]] std::vector<std::pair<double, double>> outline(const model::Shape& shape, const Placed& at);

/// A channel's numbers of one row. @throws record::RecordError if there is no such channel.
[[nodiscard]] std::vector<double> row_of(const record::Record& record, const std::string& path, std::size_t row);

/// Pose of a body or object in one row; `base` is "/bodies/NAME/" or "/objects/NAME/".
[[nodiscard]] Placed placed(const record::Record& record, const std::string& base, std::size_t row);

/// The fingers of a hand, in the order of its file; none where a model is one finger.
[[nodiscard]] std::vector<std::string> fingers_of(const model::Model& model);

/// The few moments at which the finger is drawn.
[[nodiscard]] std::vector<Instant> instants(const Subject& subject);

/// The way as recorded has two corners for each guide, where the cord meets and leaves it; the arc between them is drawn round the
/// guide's axis, with the mean of the two tensions.
/// @param poses  of the model's bodies in that row.
[[nodiscard]] std::vector<Piece> pieces_of(const Subject& subject, const model::Cord& cord, const std::vector<Placed>& poses,
                                           std::size_t row);

}  // namespace sinewright::plot
