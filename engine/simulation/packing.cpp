#include "simulation/packing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <variant>

namespace sinewright::simulation {

namespace {

using contact::Isometry3d;
using contact::ShapePair;
using model::PartName;

constexpr double degree = std::numbers::pi / 180;
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double least_seen = 5e-3;  // [m]
constexpr double rounding = 1e-9;    // [m]

std::size_t at(int index) { return static_cast<std::size_t>(index); }

Isometry3d pose_of(const dynamics::Kinematics::Pose& pose) {
  Isometry3d X = Isometry3d::Identity();
  X.linear() = pose.R;
  X.translation() = pose.p;
  return X;
}

// ---- postures

// A joint by itself: where its coordinate stands in q, and how far it goes.
struct Joint {
  std::string name;
  int q = -1;
  double low = 0, high = 0;
  bool slides = false;
  [[nodiscard]] double straight() const { return std::clamp(0.0, low, high); }
  [[nodiscard]] double part_of_way(int s, int steps) const { return low + (high - low) * s / (steps - 1); }
};

Joint joint_of(const System& system, const HingeJoint& joint) {
  const model::Hinge& hinge = *system.model().bodies[at(joint.body)].hinge;
  const auto& stops = hinge.stops;
  return {hinge.name, system.tree.links[at(joint.link)].q, stops ? stops->lower : 0, stops ? stops->upper : 90 * degree, false};
}

// A slide without stops is left where it is: nobody knows how far it goes.
Joint joint_of(const System& system, const SlideJoint& joint) {
  const model::Slide& slide = *system.model().bodies[at(joint.body)].slide;
  const auto& stops = slide.stops;
  return {slide.name, system.tree.links[at(joint.link)].q, stops ? stops->lower : 0, stops ? stops->upper : 0, true};
}

std::vector<PackingPosture> postures_of(const System& system, int steps) {
  std::vector<Joint> hinges, joints;
  for (const HingeJoint& hinge : system.hinges) hinges.push_back(joint_of(system, hinge));
  joints = hinges;
  for (const SlideJoint& slide : system.slides) joints.push_back(joint_of(system, slide));
  VectorXd straight = system.start_q;
  for (const Joint& joint : joints) straight[joint.q] = joint.straight();
  std::vector<PackingPosture> list = {{"straight", straight}};
  for (const Joint& joint : joints)
    for (int s = 0; s < steps; ++s) {
      const double way = joint.part_of_way(s, steps);
      if (way == joint.straight()) continue;
      list.push_back({joint.slides ? fmt::format("{} {:.3g} mm", joint.name, 1e3 * way) : fmt::format("{} {:.3g} deg", joint.name, way / degree), straight});
      list.back().q[joint.q] = way;
    }
  const auto close = [&](const std::string& who, const std::vector<int>& moved) {
    for (int s = 1; s < steps; ++s) {
      list.push_back({fmt::format("{} closing {:.3g} %", who, 100.0 * s / (steps - 1)), straight});
      for (const int i : moved) list.back().q[hinges[at(i)].q] = hinges[at(i)].part_of_way(s, steps);
    }
  };
  const auto chains = finger_chains(system);
  std::vector<int> all;
  for (const auto& chain : chains) all.insert(all.end(), chain.begin(), chain.end());
  if (chains.size() > 1)
    for (const auto& chain : chains)
      if (chain.size() > 1) close(finger_name(system, chain), chain);
  if (all.size() > 1) close(chains.size() > 1 ? "all" : "finger", all);
  return list;
}

// ---- who may touch whom

bool names(const PartName& name, const PackedPart& part) {
  const bool whole = name.part.empty() || name.part == part.part;
  // What sits in a body belongs to it; what belongs to a drive has the drive's name alone.
  if (name.of == PartName::Of::drive) return whole && part.drive == name.index;
  return name.of == PartName::Of::body && whole && part.drive < 0 && part.body == name.index;
}

class Rules {
 public:
  Rules(const System& system, const std::vector<PackedPart>& parts) : system_(system), parts_(parts), group_(rigid_groups(system)) {}

  [[nodiscard]] int group(int body) const { return group_[at(system_.link_of_body[at(body)])]; }

  [[nodiscard]] bool around(const PackedPart& part, const PackedPart& print) const {
    if (!part.inside) return group(part.body) == group(print.body);
    return std::find(part.inside->begin(), part.inside->end(), print.body) != part.inside->end();
  }

  [[nodiscard]] bool apart(const PackedPart& a, const PackedPart& b) const {
    using Kind = PackedPart::Kind;
    if (a.kind == Kind::print && b.kind == Kind::print) {
      if (group(a.body) == group(b.body) || neighbours(a.body, b.body)) return false;
    } else if (a.kind == Kind::print || b.kind == Kind::print) {
      if (a.kind == Kind::print ? around(b, a) : around(a, b)) return false;
    } else if (a.kind == Kind::shaft && b.kind == Kind::shaft && a.drive == b.drive) {
      return false;
    }
    return !allowed([&](const PartName& name, bool first) { return names(name, first ? a : b); });
  }

  [[nodiscard]] bool apart(int cord, const CordPiece& piece, const PackedPart& part) const {
    if (part.kind == PackedPart::Kind::print) {
      // In its own body, and through the lugs of the joints on either side of it.
      const auto runs_in = [&](int body) { return body >= 0 && (group(body) == group(part.body) || neighbours(body, part.body)); };
      return !runs_in(piece.body_from) && !runs_in(piece.body_to) && !runs_in(piece.body_before) && !runs_in(piece.body_after);
    }
    return !(part.part == "pulley" && part.kind == PackedPart::Kind::shaft && part.drive == system_.cords[at(cord)].drive);
  }
  [[nodiscard]] bool may_touch(int cord, const PackedPart& part) const {
    return allowed([&](const PartName& name, bool first) { return first ? is_cord(name, cord) : names(name, part); });
  }
  [[nodiscard]] bool may_touch(int cord, int other) const {
    return allowed([&](const PartName& name, bool first) { return is_cord(name, first ? cord : other); });
  }

 private:
  [[nodiscard]] bool is_cord(const PartName& name, int cord) const {
    return name.of == PartName::Of::cord && name.index == system_.cords[at(cord)].cord;
  }
  [[nodiscard]] bool neighbours(int a, int b) const {
    return system_.model().bodies[at(a)].parent() == b || system_.model().bodies[at(b)].parent() == a;
  }
  // True if some pair of the list fits, either way round.
  template <class Fits>
  [[nodiscard]] bool allowed(const Fits& fits) const {
    for (const auto& [x, y] : system_.model().packing.may_touch)
      if ((fits(x, true) && fits(y, false)) || (fits(y, true) && fits(x, false))) return true;
    return false;
  }

  const System& system_;
  const std::vector<PackedPart>& parts_;
  std::vector<int> group_;
};

// ---- gaps

// What is known of the pairs so far, under their two indices; cords count on after the parts.
class Gaps {
 public:
  explicit Gaps(double seen) : seen_(seen) {}

  void take(std::size_t a, std::size_t b, const contact::ClosestPoints& points, const PackingPosture& posture, bool straight,
            const std::string& detail_a = "", const std::string& detail_b = "") {
    if (points.gap > seen_) return;
    auto [entry, fresh] = pairs_.try_emplace({a, b});
    Entry& known = entry->second;
    if (straight) known.straight = std::min(known.straight, points.gap);
    if (points.gap > known.smallest - rounding) {  // of equal postures the first is told
      known.smallest = std::min(known.smallest, points.gap);
      return;
    }
    known.smallest = points.gap;
    known.posture = posture.name;
    known.when_straight = straight;
    known.where = (points.on_a + points.on_b) / 2;
    known.detail_a = detail_a;
    known.detail_b = detail_b;
  }

  [[nodiscard]] std::vector<Closeness> list(const std::vector<std::string>& names) const {
    std::vector<Closeness> list;
    for (const auto& [key, entry] : pairs_)
      list.push_back({names[key.first] + entry.detail_a, names[key.second] + entry.detail_b, entry.straight, entry.smallest,
                      entry.posture, entry.where, entry.when_straight});
    std::stable_sort(list.begin(), list.end(), [](const Closeness& x, const Closeness& y) { return x.smallest < y.smallest; });
    return list;
  }

 private:
  struct Entry {
    double straight = infinity, smallest = infinity;
    std::string posture, detail_a, detail_b;
    Eigen::Vector3d where = Eigen::Vector3d::Zero();
    bool when_straight = false;
  };
  double seen_;
  std::map<std::pair<std::size_t, std::size_t>, Entry> pairs_;
};

double distance_bound(const contact::Bound& a, const Isometry3d& X_a, const contact::Bound& b, const Isometry3d& X_b) {
  return (X_a * a.center - X_b * b.center).norm() - a.radius - b.radius;
}

// Every pair of shapes of two parts, with their queries made when first needed.
struct PairOfShapes {
  std::size_t a = 0, b = 0;  // parts
  const model::Shape *shape_a = nullptr, *shape_b = nullptr;
  contact::Bound bound_a, bound_b;
  bool moves = false;
  std::optional<ShapePair> query;
};

std::vector<PairOfShapes> pairs_of(const std::vector<PackedPart>& parts, const Rules& rules) {
  std::vector<PairOfShapes> list;
  for (std::size_t a = 0; a < parts.size(); ++a)
    for (std::size_t b = a + 1; b < parts.size(); ++b) {
      if (!rules.apart(parts[a], parts[b])) continue;
      const bool moves = rules.group(parts[a].body) != rules.group(parts[b].body);
      for (const model::Shape& shape_a : parts[a].shapes)
        for (const model::Shape& shape_b : parts[b].shapes)
          list.push_back({a, b, &shape_a, &shape_b, contact::bounding_sphere(shape_a), contact::bounding_sphere(shape_b), moves, {}});
    }
  return list;
}

std::string between_points(const CordPiece& piece) { return fmt::format(", path {} to {}", piece.point, piece.point + 1); }

// The pieces of all cords against the parts and against each other.
void take_cords(const System& system, const Rules& rules, const std::vector<PackedPart>& parts, const dynamics::Kinematics& kinematics,
                const PackingPosture& posture, bool straight, double seen, Gaps& gaps) {
  struct Rod {
    CordPiece piece;
    model::Capsule shape;
    contact::Bound bound;
  };
  const Isometry3d world = Isometry3d::Identity();
  std::vector<std::vector<Rod>> rods(system.cords.size());
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const model::Cord& cord = system.model().cords[at(system.cords[c].cord)];
    const double radius = system.model().lines[at(cord.line)].diameter / 2;
    for (const CordPiece& piece : cord_pieces(system, kinematics, c)) {
      const model::Capsule capsule{piece.from, piece.to, radius};
      rods[c].push_back({piece, capsule, contact::bounding_sphere(capsule)});
    }
  }
  const auto still = [&](const Rod& rod, int body) {
    return rules.group(rod.piece.body_from) == rules.group(body) && rules.group(rod.piece.body_to) == rules.group(body);
  };
  for (std::size_t c = 0; c < rods.size(); ++c) {
    for (std::size_t p = 0; p < parts.size(); ++p) {
      if (rules.may_touch(static_cast<int>(c), parts[p])) continue;
      const Isometry3d X = pose_of(kinematics.pose[at(system.link_of_body[at(parts[p].body)])]);
      for (const model::Shape& shape : parts[p].shapes) {
        const contact::Bound bound = contact::bounding_sphere(shape);
        for (const Rod& rod : rods[c]) {
          if (!straight && still(rod, parts[p].body)) continue;
          if (!rules.apart(static_cast<int>(c), rod.piece, parts[p]) || distance_bound(rod.bound, world, bound, X) > seen) continue;
          gaps.take(parts.size() + c, p, ShapePair(rod.shape, shape).closest(world, X), posture, straight, between_points(rod.piece));
        }
      }
    }
    for (std::size_t d = c + 1; d < rods.size(); ++d) {
      if (rules.may_touch(static_cast<int>(c), static_cast<int>(d))) continue;
      for (const Rod& one : rods[c])
        for (const Rod& other : rods[d]) {
          if (!straight && still(one, other.piece.body_from) && still(other, one.piece.body_from)) continue;
          if (distance_bound(one.bound, world, other.bound, world) > seen) continue;
          gaps.take(parts.size() + c, parts.size() + d, ShapePair(one.shape, other.shape).closest(world, world), posture, straight,
                      between_points(one.piece), between_points(other.piece));
        }
    }
  }
}

// ---- walls and pulleys

std::vector<Wall> walls_of(const System& system, const Rules& rules, const std::vector<PackedPart>& parts,
                           const dynamics::Kinematics& kinematics) {
  const auto posed = [&](const PackedPart& part, const model::Shape& shape) {
    return contact::PosedShape{shape, pose_of(kinematics.pose[at(system.link_of_body[at(part.body)])])};
  };
  std::vector<Wall> walls;
  for (const PackedPart& part : parts) {
    if (part.kind == PackedPart::Kind::print || (part.inside && part.inside->empty())) continue;
    Wall wall{part.name, {}, {}};
    std::vector<contact::PosedShape> prints;
    for (const PackedPart& print : parts) {
      if (print.kind != PackedPart::Kind::print || print.solids == 0 || !rules.around(part, print)) continue;
      wall.inside.push_back(print.name);
      for (std::size_t s = 0; s < print.solids; ++s) prints.push_back(posed(print, print.shapes[s]));
    }
    if (!prints.empty()) wall.lies = contact::containment(posed(part, part.shapes.front()), prints);
    walls.push_back(std::move(wall));
  }
  return walls;
}

std::vector<CordExit> exits_of(const System& system, const dynamics::Kinematics& kinematics) {
  std::vector<CordExit> exits;
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    if (system.cords[c].drive < 0) continue;
    const model::Drive& drive = system.model().drives[at(system.cords[c].drive)];
    if (!drive.shaft) continue;
    const model::Cord& cord = system.model().cords[at(system.cords[c].cord)];
    const auto& pose = kinematics.pose[at(system.link_of_body[at(drive.body)])];
    const CordPiece first = cord_pieces(system, kinematics, c).front();
    const Vector3d axis = pose.R * drive.shaft->axis, from_axis = first.from - pose * drive.shaft->at;
    const Vector3d arm = from_axis - axis.dot(from_axis) * axis, along = (first.to - first.from).normalized();
    const Vector3d in_plane = along - axis.dot(along) * axis;
    CordExit exit;
    exit.cord = cord.name;
    exit.drive = drive.name;
    exit.radius = arm.norm();
    exit.wanted = drive.pulley.radius + system.model().lines[at(cord.line)].diameter / 2;
    exit.off_middle = std::abs(axis.dot(from_axis));
    if (drive.pulley.outline) exit.half_length = drive.pulley.outline->length / 2;
    else if (drive.pulley.bore) exit.half_length = drive.pulley.bore->length / 2;
    exit.fleet_angle = std::asin(std::clamp(std::abs(axis.dot(along)), 0.0, 1.0));
    exit.off_tangent = std::abs(std::atan2(arm.dot(in_plane), arm.cross(in_plane).norm()));
    if (drive.pulley.flange) exit.allowed_fleet_angle = drive.pulley.flange->fleet_angle;
    exits.push_back(std::move(exit));
  }
  return exits;
}

}  // namespace

PackingReport packing(const System& system, int steps) {
  PackingReport report;
  report.clearance = system.model().packing.clearance;
  report.seen = std::max(least_seen, report.clearance);
  report.postures = postures_of(system, steps);
  report.parts = packed_parts(system.model());
  const std::vector<PackedPart>& parts = report.parts.parts;
  const Rules rules(system, parts);
  Gaps gaps(report.seen);
  std::vector<PairOfShapes> pairs = pairs_of(parts, rules);
  for (std::size_t p = 0; p < report.postures.size(); ++p) {
    const PackingPosture& posture = report.postures[p];
    const bool straight = p == 0;
    const dynamics::Kinematics kinematics = kinematics_at(system, posture.q);
    std::vector<Isometry3d> pose;
    for (const PackedPart& part : parts) pose.push_back(pose_of(kinematics.pose[at(system.link_of_body[at(part.body)])]));
    for (PairOfShapes& pair : pairs) {
      if (!straight && !pair.moves) continue;
      if (distance_bound(pair.bound_a, pose[pair.a], pair.bound_b, pose[pair.b]) > report.seen) continue;
      if (!pair.query) pair.query.emplace(*pair.shape_a, *pair.shape_b);
      gaps.take(pair.a, pair.b, pair.query->closest(pose[pair.a], pose[pair.b]), posture, straight);
    }
    take_cords(system, rules, parts, kinematics, posture, straight, report.seen, gaps);
    if (!straight) continue;
    report.walls = walls_of(system, rules, parts, kinematics);
    report.exits = exits_of(system, kinematics);
  }
  std::vector<std::string> names;
  for (const PackedPart& part : parts) names.push_back(part.name);
  for (const CordSystem& cord : system.cords) names.push_back("cord " + system.model().cords[at(cord.cord)].name);
  for (const Closeness& pair : gaps.list(names)) {
    if (pair.smallest < 0) report.collisions.push_back(pair);
    else if (pair.smallest < report.clearance) report.narrow.push_back(pair);
    else if (!report.nearest) report.nearest = pair;
  }
  return report;
}

}  // namespace sinewright::simulation
