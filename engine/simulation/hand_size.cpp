#include "simulation/hand_size.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "geometry/reach.h"
#include "simulation/fingertip.h"

namespace sinewright::simulation {

namespace {

using Eigen::Vector3d;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

struct Extent {
  Vector3d low = Vector3d::Constant(std::numeric_limits<double>::infinity()), high = -low;
  [[nodiscard]] bool any() const { return low.x() <= high.x(); }
  void take(const model::Shape& shape, const dynamics::Kinematics::Pose& pose) {
    for (int i = 0; i < 3; ++i) {
      const Vector3d n = pose.R.row(i);
      low[i] = std::min(low[i], pose.p[i] - geometry::reach(shape, -n));
      high[i] = std::max(high[i], pose.p[i] + geometry::reach(shape, n));
    }
  }
};

double breadth_of(const model::Body& body) {
  double low = 0, high = 0;
  bool any = false;
  const auto take = [&](const model::Shape& shape) {
    const double up = geometry::reach(shape, Vector3d::UnitZ()), down = -geometry::reach(shape, -Vector3d::UnitZ());
    low = any ? std::min(low, down) : down;
    high = any ? std::max(high, up) : up;
    any = true;
  };
  for (const model::Solid& solid : body.solids) take(solid.shape);
  for (const model::ContactShape& shape : body.shapes) take(shape.shape);
  return high - low;
}

FingerSize finger_of(const System& system, const std::vector<int>& chain) {
  FingerSize finger;
  for (std::size_t i = 0; i < chain.size(); ++i) {
    const model::Body& body = system.model().bodies[at(system.hinges[at(chain[i])].body)];
    PhalanxSize phalanx{body.name, 0, breadth_of(body)};
    if (i + 1 < chain.size()) {
      phalanx.length = system.model().bodies[at(system.hinges[at(chain[i + 1])].body)].hinge->at.norm();
    } else {
      const std::optional<double> tip = fingertip(body);
      finger.tip = tip.has_value();
      phalanx.length = tip.value_or(0);
    }
    finger.length += phalanx.length;
    if (phalanx.length > 0 || phalanx.breadth > 0) finger.phalanges.push_back(std::move(phalanx));  // no saddle between two crossed pins
  }
  finger.name = finger_name(system, chain);
  return finger;
}

}  // namespace

HandSize hand_size(const System& system, const std::vector<PackedPart>& parts, const VectorXd& q) {
  const model::Packing& wanted = system.model().packing;
  const dynamics::Kinematics kinematics = kinematics_at(system, q);
  const std::vector<int> group = rigid_groups(system);
  Extent all, palm;
  for (const PackedPart& part : parts) {
    const int link = system.link_of_body[at(part.body)];
    const bool of_palm = wanted.palm.empty() ? group[at(link)] < 0
                                             : std::find(wanted.palm.begin(), wanted.palm.end(), part.body) != wanted.palm.end();
    for (const model::Shape& shape : part.shapes) {
      all.take(shape, kinematics.pose[at(link)]);
      if (of_palm) palm.take(shape, kinematics.pose[at(link)]);
    }
  }
  HandSize size;
  if (all.any()) {
    size.low = all.low;
    size.high = all.high;
    size.length = all.high.x() - wanted.wrist.value_or(all.low.x());
  }
  if (palm.any()) {
    size.breadth = palm.high.z() - palm.low.z();
    size.thickness = palm.high.y() - palm.low.y();
  }
  for (const std::vector<int>& chain : finger_chains(system)) size.fingers.push_back(finger_of(system, chain));
  return size;
}

const HumanFinger& human_finger(const std::string& name) {
  for (const HumanFinger& finger : human_fingers)
    if (name == finger.name) return finger;
  return human_fingers[0];
}

double share_below(const HandMeasure& measure, double value) {
  return std::erfc(-(value - measure.mean) / (measure.deviation * std::numbers::sqrt2)) / 2;
}

}  // namespace sinewright::simulation
