#include "geometry/cord_path.h"

#include <variant>

namespace sinewright::geometry {

Vector3d CordPath::straight(const Vector3d& from, const Vector3d& to, double& length) {
  const Vector3d chord = to - from;
  length = chord.norm();
  return chord / length;
}

CordPath::CordPath(const model::Cord& cord, std::span<const model::Drive> drives, const PoseOf& pose_of) {
  for (const model::PathPoint& path_point : cord.path) {
    Point point;
    Node node;
    bool turns = false;
    if (const auto* bend = std::get_if<model::Bend>(&path_point)) {
      point.body = bend->body;
      point.at = bend->at;
      node = {bend->body, bend->radius, bend->friction_factor};
      turns = true;
    } else if (const auto* guide = std::get_if<model::Guide>(&path_point)) {
      point.is_guide = true;
      point.body = guide->body;
      point.at = guide->at;
      const Vector3d axis = guide->axis.normalized();
      const Vector3d side = (guide->side - axis * axis.dot(guide->side)).normalized();
      point.guide = {guide->at, axis, side, guide->radius, 1};
      node = {guide->body, guide->radius, guide->friction_factor};
      turns = true;
    } else if (const auto* anchor = std::get_if<model::Anchor>(&path_point)) {
      point.body = anchor->body;
      point.at = anchor->at;
    } else if (const auto* pulley = std::get_if<model::PulleyEnd>(&path_point)) {
      point.body = drives[static_cast<std::size_t>(pulley->drive)].body;
      point.at = pulley->at;
    }
    const bool joins_previous = turns && cord.lump_bends && !point.is_guide && !points_.empty() &&
                                points_.back().node >= 0 && points_.back().body == point.body;
    if (turns && !joins_previous) nodes_.push_back(node);
    point.node = turns ? static_cast<int>(nodes_.size()) - 1 : -1;
    point.span_after = static_cast<int>(nodes_.size());
    points_.push_back(point);
  }
  span_count_ = static_cast<int>(nodes_.size()) + 1;

  for (std::size_t i = 1; i + 1 < points_.size(); ++i) {
    Point& point = points_[i];
    if (!point.is_guide) continue;
    const Vector3d p = pose_of(points_[i - 1].body) * points_[i - 1].at;
    const Vector3d q = pose_of(points_[i + 1].body) * points_[i + 1].at;
    const auto pose = pose_of(point.body);
    const Vector3d axis = *pose.R * point.guide.axis;
    const Vector3d side = *pose.R * point.guide.side;
    point.guide.sense = side.cross(q - p).dot(axis) >= 0 ? 1 : -1;
  }
}

std::pair<int, int> CordPath::span_bodies(int span) const {
  int first = -1, last = -1;
  for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
    if (points_[i].span_after != span) continue;
    if (first < 0) first = points_[i].body;
    last = points_[i + 1].body;
  }
  return {first, last};
}

PathGeometry CordPath::make_geometry() const {
  PathGeometry g;
  g.length.resize(static_cast<std::size_t>(span_count_));
  g.turning_angle.resize(static_cast<std::size_t>(node_count()));
  g.pulls.reserve(8 * points_.size());
  g.vertices.reserve(3 * points_.size());
  return g;
}

}  // namespace sinewright::geometry
