#pragma once

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <functional>
#include <span>
#include <utility>
#include <vector>

#include "geometry/guide_wrap.h"
#include "model/cord.h"
#include "model/drive.h"

namespace sinewright::geometry {

using Eigen::Matrix3d;

/// Pose of a body as the path needs it: R its axes, p its origin in the world.
struct BodyPose {
  const Matrix3d* R = nullptr;
  const Vector3d* p = nullptr;
  [[nodiscard]] Vector3d operator*(const Vector3d& point) const { return *R * point + *p; }
};
using PoseOf = std::function<BodyPose(int body)>;

/// How a span's length changes: dL = Σ direction · (velocity of the body's point at `point`) dt.
struct Pull {
  int span = 0;
  int body = 0;
  Vector3d point = Vector3d::Zero();      ///< world [m]
  Vector3d direction = Vector3d::Zero();  ///< world; the cord pulls the body here with −tension × direction
};

/// What follows from a posture. Spans and nodes are those of the friction chain: node k stands between spans k and k+1.
struct PathGeometry {
  std::vector<double> length;         ///< per span [m]
  std::vector<double> turning_angle;  ///< per node [rad]
  std::vector<Pull> pulls;            ///< only of spans whose length can change
  std::vector<Vector3d> vertices;     ///< for drawings: the whole polyline, world [m]
};

/// One cord's way through the bodies; built once, then evaluated for any posture without allocating.
class CordPath {
 public:
  /// @param drives   the model's drives: a cord's pulley end sits in the body of its drive.
  /// @param pose_of  poses at the posture in which the path was drawn: fixes in which sense guides are passed.
  CordPath(const model::Cord& cord, std::span<const model::Drive> drives, const PoseOf& pose_of);

  [[nodiscard]] int span_count() const { return span_count_; }
  [[nodiscard]] int node_count() const { return span_count_ - 1; }

  /// A geometry with all its lists at the size this path needs.
  [[nodiscard]] PathGeometry make_geometry() const;

  /// @param pose  callable: pose(body) gives BodyPose.
  template <class Pose>
  void evaluate(const Pose& pose, PathGeometry& geometry) const;

  /// Data of a friction node.
  struct Node {
    int body = -1;
    double radius = 0;           ///< of the bend, for line load [m]
    double friction_factor = 1;
  };
  [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }
  /// Bodies between which a span runs, for naming it.
  [[nodiscard]] std::pair<int, int> span_bodies(int span) const;

 private:
  struct Point {
    bool is_guide = false;
    int body = -1;
    Vector3d at = Vector3d::Zero();
    GuideFrame guide;      // in the body frame
    int node = -1;         // friction node that takes this point's turning, −1 at the ends
    int span_after = 0;    // chain span that the stretch to the next point belongs to
  };
  [[nodiscard]] static Vector3d straight(const Vector3d& from, const Vector3d& to, double& length);

  std::vector<Point> points_;
  std::vector<Node> nodes_;
  int span_count_ = 0;
};

template <class Pose>
void CordPath::evaluate(const Pose& pose, PathGeometry& g) const {
  const std::size_t n = points_.size();
  std::fill(g.length.begin(), g.length.end(), 0.0);
  std::fill(g.turning_angle.begin(), g.turning_angle.end(), 0.0);
  g.pulls.clear();
  g.vertices.clear();
  const auto add = [&](int span, int body, const Vector3d& point, const Vector3d& direction) {
    g.pulls.push_back({span, body, point, direction});
  };
  const auto turn = [](const Vector3d& in, const Vector3d& out) { return std::atan2(in.cross(out).norm(), in.dot(out)); };

  Vector3d here = pose(points_[0].body) * points_[0].at;
  Vector3d arriving = Vector3d::Zero();  // direction in which the cord reaches the current point
  g.vertices.push_back(here);
  for (std::size_t i = 0; i + 1 < n;) {
    const Point& from = points_[i];
    const Point& next = points_[i + 1];
    Vector3d leaving;
    std::size_t reached;
    Vector3d there;
    Vector3d arriving_next;
    if (!next.is_guide) {
      there = pose(next.body) * next.at;
      double length = 0;
      leaving = straight(here, there, length);
      g.length[static_cast<std::size_t>(from.span_after)] += length;
      if (from.body != next.body) {
        add(from.span_after, from.body, here, -leaving);
        add(from.span_after, next.body, there, leaving);
      }
      arriving_next = leaving;
      reached = i + 1;
    } else {
      const Point& beyond = points_[i + 2];
      there = pose(beyond.body) * beyond.at;
      const auto guide_pose = pose(next.body);
      GuideFrame frame = next.guide;
      frame.center = guide_pose * next.guide.center;
      frame.axis = *guide_pose.R * next.guide.axis;
      frame.side = *guide_pose.R * next.guide.side;
      const GuideWrap wrap = wrap_guide(frame, here, there);
      const int before = from.span_after, after = next.span_after;
      g.length[static_cast<std::size_t>(before)] += wrap.length_p;
      g.length[static_cast<std::size_t>(after)] += wrap.length_q;
      if (next.node >= 0) g.turning_angle[static_cast<std::size_t>(next.node)] += wrap.turning_angle;
      // The lengths depend on P and Q as the guide's body sees them: what P does, less what the body does at P.
      if (from.body != next.body) {
        add(before, from.body, here, wrap.p_by_p);
        add(before, next.body, here, -wrap.p_by_p);
        add(after, from.body, here, wrap.q_by_p);
        add(after, next.body, here, -wrap.q_by_p);
      }
      if (beyond.body != next.body) {
        add(before, beyond.body, there, wrap.p_by_q);
        add(before, next.body, there, -wrap.p_by_q);
        add(after, beyond.body, there, wrap.q_by_q);
        add(after, next.body, there, -wrap.q_by_q);
      }
      leaving = -(wrap.p_by_p + wrap.q_by_p);
      arriving_next = wrap.p_by_q + wrap.q_by_q;
      g.vertices.push_back(wrap.contact_p);
      g.vertices.push_back(wrap.contact_q);
      reached = i + 2;
    }
    if (from.node >= 0) g.turning_angle[static_cast<std::size_t>(from.node)] += turn(arriving, leaving);
    g.vertices.push_back(there);
    here = there;
    arriving = arriving_next;
    i = reached;
  }
}

}  // namespace sinewright::geometry
