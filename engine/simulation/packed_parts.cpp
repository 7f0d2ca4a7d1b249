#include "simulation/packed_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

#include "model/names.h"
#include "model/overloaded.h"

namespace sinewright::simulation {

namespace {

using model::Matrix3d;

constexpr double pi = std::numbers::pi;

std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Axes of a drive in its body, as columns.
Matrix3d axes_of(const model::ShaftSeat& seat) {
  Matrix3d axes;
  axes << seat.up.cross(seat.axis), seat.up, seat.axis;
  return axes;
}

// A shape of a drive's frame in its body's.
model::Shape seated(const model::Shape& shape, const model::ShaftSeat& seat) {
  const Matrix3d R = axes_of(seat);
  const auto place = [&](const Vector3d& p) { return Vector3d(seat.at + R * p); };
  return std::visit(overloaded{[&](model::Sphere s) -> model::Shape { return s.center = place(s.center), s; },
                               [&](model::Capsule c) -> model::Shape { return c.from = place(c.from), c.to = place(c.to), c; },
                               [&](model::Cylinder c) -> model::Shape { return c.center = place(c.center), c.axis = (R * c.axis).normalized(), c; },
                               [&](model::Box b) -> model::Shape { return b.center = place(b.center), b.rotation = R * b.rotation, b; },
                               [&](model::Hull h) -> model::Shape {
                                 for (Vector3d& p : h.points) p = place(p);
                                 return h;
                               },
                               [&](const model::Mesh& m) -> model::Shape {
                                 model::Hull hull{m.points};
                                 for (Vector3d& p : hull.points) p = place(p);
                                 return hull;
                               }},
                    shape);
}

std::optional<model::Outline> outline_of(const model::Pulley& pulley) {
  if (pulley.outline) return pulley.outline;
  if (!pulley.bore) return std::nullopt;
  const double diameter = 2 * (pulley.radius + (pulley.flange ? pulley.flange->height : 0));
  return model::Outline{pulley.bore->length, diameter, diameter, true};
}

void add_drive(const model::Drive& drive, int index, PackedParts& all) {
  const std::string keys = "drives." + drive.name;
  const auto lacks = [&](const std::string& key) { all.not_described.push_back(keys + "." + key); };
  if (!drive.shaft) return lacks("shaft");
  const model::ShaftSeat& seat = *drive.shaft;
  const auto add = [&](const std::string& part, const model::Outline& outline, double from) {
    all.parts.push_back({PackedPart::Kind::shaft, drive.name + "." + part, part, drive.body, index,
                         {seated(outline_shape(outline, from), seat)}, drive.inside, 0});
  };
  const std::optional<model::Outline> pulley = outline_of(drive.pulley);
  if (!pulley) lacks("pulley.bore");
  const double half = pulley ? pulley->length / 2 : 0;
  if (pulley) add("pulley", *pulley, -half);
  double end = half + seat.gap;  // what comes next towards the motor begins here
  const auto follow = [&](const std::string& part, const std::optional<model::Outline>& outline, const std::string& key) {
    if (!outline) {
      all.not_described.push_back(key + ".outline");
      return;
    }
    add(part, *outline, end);
    end += outline->length;
  };
  follow("gearhead", drive.gearhead.outline, "gearheads." + drive.gearhead.name);
  follow("motor", drive.motor.outline, "motors." + drive.motor.name);
  if (drive.sensor && drive.sensor->seat == model::Sensor::Seat::rotor) {
    follow("sensor", drive.sensor->outline, keys + ".sensor");
  } else if (drive.sensor) {
    if (drive.sensor->outline) add("sensor", *drive.sensor->outline, -half - seat.gap - drive.sensor->outline->length);
    else lacks("sensor.outline");
  }
  for (const model::Occupied& thing : drive.occupies)
    all.parts.push_back({PackedPart::Kind::thing, drive.name + "." + thing.name, thing.name, drive.body, index,
                         {seated(thing.shape, seat)}, thing.inside ? thing.inside : drive.inside, 0});
}

}  // namespace

model::Shape outline_shape(const model::Outline& outline, double from) {
  const Vector3d center(0, 0, from + outline.length / 2);
  if (!outline.round) return model::Box{center, {outline.width, outline.height, outline.length}, Matrix3d::Identity()};
  const double radius = outline.width / 2;
  if (outline.height >= outline.width) return model::Cylinder{center, Vector3d::UnitZ(), radius, outline.length};
  // Corners of the polygon outside the circle, cut off at the flats.
  constexpr int sides = 48;
  const double corner = radius / std::cos(pi / sides), flat = outline.height / 2;
  std::vector<std::pair<double, double>> polygon;
  const auto point = [&](int k) {
    const double a = pi * (2 * k + 1) / sides;
    return std::pair{corner * std::cos(a), corner * std::sin(a)};
  };
  for (int k = 0; k < sides; ++k) {
    const auto [x, y] = point(k);
    const auto [x2, y2] = point(k + 1);
    if (std::abs(y) <= flat) polygon.emplace_back(x, y);
    for (const double side : {-flat, flat})
      if ((y - side) * (y2 - side) < 0) polygon.emplace_back(x + (x2 - x) * (side - y) / (y2 - y), side);
  }
  model::Hull hull;
  for (const auto& [x, y] : polygon)
    for (const double z : {from, from + outline.length}) hull.points.emplace_back(x, y, z);
  return hull;
}

PackedParts packed_parts(const model::Model& model) {
  PackedParts all;
  for (std::size_t b = 0; b < model.bodies.size(); ++b) {
    const model::Body& body = model.bodies[b];
    PackedPart print{PackedPart::Kind::print, body.name, "print", static_cast<int>(b), -1, {}, std::nullopt, 0};
    for (const model::Solid& solid : body.solids) print.shapes.push_back(solid.shape);
    print.solids = print.shapes.size();
    for (const model::ContactShape& shape : body.shapes) print.shapes.push_back(shape.shape);
    if (!print.shapes.empty()) all.parts.push_back(std::move(print));
    else all.not_described.push_back("bodies." + body.name + ".solids");
    for (const model::Occupied& thing : body.occupies)
      all.parts.push_back({PackedPart::Kind::thing, body.name + "." + thing.name, thing.name, static_cast<int>(b), -1, {thing.shape}, thing.inside, 0});
  }
  for (std::size_t d = 0; d < model.drives.size(); ++d) add_drive(model.drives[d], static_cast<int>(d), all);
  std::vector<std::string> once;  // two drives may lack the same motor's outline
  for (const std::string& key : all.not_described)
    if (std::find(once.begin(), once.end(), key) == once.end()) once.push_back(key);
  all.not_described = once;
  return all;
}

dynamics::Kinematics kinematics_at(const System& system, const VectorXd& q) {
  dynamics::Kinematics kinematics(system.tree);
  dynamics::update(system.tree, Vector3d::Zero(), q, VectorXd::Zero(system.n_v), kinematics);
  return kinematics;
}

std::vector<CordPiece> cord_pieces(const System& system, const dynamics::Kinematics& kinematics, std::size_t index) {
  const CordSystem& built = system.cords[index];
  const model::Cord& cord = system.model().cords[at(built.cord)];
  const auto pose_of = [&](int body) -> const dynamics::Kinematics::Pose& { return kinematics.pose[at(system.link_of_body[at(body)])]; };
  geometry::PathGeometry geometry = built.path.make_geometry();
  built.path.evaluate([&](int body) { return geometry::BodyPose{&pose_of(body).R, &pose_of(body).p}; }, geometry);
  const auto body_of = [&](const model::PathPoint& point) {
    return std::visit(overloaded{[&](const model::PulleyEnd& end) { return system.model().drives[at(end.drive)].body; },
                                 [](const auto& other) { return other.body; }},
                      point);
  };
  // A guide has two vertices, where the cord meets and leaves it; every other point of the path has one.
  std::vector<CordPiece> pieces;
  std::size_t k = 0;
  for (std::size_t i = 1; i < cord.path.size(); ++i) {
    const int before = body_of(cord.path[i - 1]), here = body_of(cord.path[i]);
    pieces.push_back({geometry.vertices.at(k), geometry.vertices.at(k + 1), before, here, static_cast<int>(i) - 1});
    ++k;
    const auto* guide = std::get_if<model::Guide>(&cord.path[i]);
    if (guide == nullptr) continue;
    const Vector3d axis = (pose_of(guide->body).R * guide->axis).normalized(), center = pose_of(guide->body) * guide->at;
    const Vector3d meets = geometry.vertices.at(k) - center, leaves = geometry.vertices.at(k + 1) - center;
    const double along = axis.dot(leaves - meets);
    const Vector3d start = meets - axis.dot(meets) * axis, end = leaves - axis.dot(leaves) * axis;
    const double angle = std::atan2(axis.dot(start.cross(end)), start.dot(end));
    const int chords = std::max(1, static_cast<int>(std::ceil(std::abs(angle) / (pi / 24))));
    Vector3d last = center + meets;
    for (int s = 1; s <= chords && (leaves - meets).norm() > 0; ++s) {
      const double share = static_cast<double>(s) / chords;
      const Vector3d next = center + axis.dot(meets) * axis + Eigen::AngleAxisd(share * angle, axis) * start + share * along * axis;
      pieces.push_back({last, next, here, here, static_cast<int>(i), before, body_of(cord.path[i + 1])});
      last = next;
    }
    ++k;
  }
  return pieces;
}

std::vector<int> rigid_groups(const System& system) {
  std::vector<int> group;
  for (std::size_t l = 0; l < system.tree.links.size(); ++l) {
    const dynamics::Link& link = system.tree.links[l];
    if (link.kind != dynamics::JointKind::fixed) group.push_back(static_cast<int>(l));
    else group.push_back(link.parent < 0 ? -1 : group[at(link.parent)]);
  }
  return group;
}

std::vector<std::vector<int>> finger_chains(const System& system) {
  const model::Model& m = system.model();
  std::vector<std::vector<int>> chains;
  for (std::size_t base = 0; base < system.hinges.size(); ++base) {
    const int body = system.hinges[base].body;
    if (hinge_of_body(system, m.bodies[at(body)].hinge->parent) >= 0 || rides_on_slide(m, body)) continue;
    std::vector<int> chain;
    for (int i = static_cast<int>(base); i >= 0;) {
      chain.push_back(i);
      int next = -1;
      for (std::size_t j = 0; j < system.hinges.size() && next < 0; ++j)
        if (m.bodies[at(system.hinges[j].body)].hinge->parent == system.hinges[at(i)].body) next = static_cast<int>(j);
      i = next;
    }
    chains.push_back(std::move(chain));
  }
  return chains;
}

std::string finger_name(const System& system, const std::vector<int>& chain) {
  const std::string& body = system.model().bodies[at(system.hinges[at(chain.front())].body)].name;
  const std::string finger = model::finger_of(body);
  return finger.empty() ? body : finger;
}

}  // namespace sinewright::simulation
