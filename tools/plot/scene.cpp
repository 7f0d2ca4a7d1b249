// What figures and the report's page draw of a record: bodies, cords, and the moments that matter.

#include "plot/scene.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

#include "model/names.h"
#include "simulation/summary.h"

namespace sinewright::plot {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using Point = std::pair<double, double>;

namespace {
constexpr int circle_points = 48;
constexpr std::size_t most_instants = 6;

// Convex hull of points, counter-clockwise.
std::vector<Point> hull_of(std::vector<Point> points) {
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  if (points.size() < 3) return points;
  std::vector<Point> hull(2 * points.size());
  std::size_t n = 0;
  const auto left_turn = [](const Point& a, const Point& b, const Point& c) {
    return (b.first - a.first) * (c.second - a.second) - (b.second - a.second) * (c.first - a.first) > 0;
  };
  for (const Point& p : points) {
    while (n >= 2 && !left_turn(hull[n - 2], hull[n - 1], p)) --n;
    hull[n++] = p;
  }
  const std::size_t lower = n + 1;
  for (std::size_t i = points.size() - 1; i-- > 0;) {
    while (n >= lower && !left_turn(hull[n - 2], hull[n - 1], points[i])) --n;
    hull[n++] = points[i];
  }
  hull.resize(n - 1);
  return hull;
}

void add_disc(std::vector<Point>& points, const Vector3d& center, const Vector3d& u, const Vector3d& v,
              double radius) {
  for (int k = 0; k < circle_points; ++k) {
    const double a = 2 * std::numbers::pi * k / circle_points;
    const Vector3d p = center + radius * (std::cos(a) * u + std::sin(a) * v);
    points.emplace_back(p.x(), p.y());
  }
}

}  // namespace

std::vector<Point> outline(const model::Shape& shape, const Placed& at) {
  std::vector<Point> points;
  const auto ball = [&](const Vector3d& center, double r) {
    add_disc(points, at * center, Vector3d::UnitX(), Vector3d::UnitY(), r);
  };
  const auto corner = [&](const Vector3d& in_body) {
    const Vector3d p = at * in_body;
    points.emplace_back(p.x(), p.y());
  };
  if (const auto* sphere = std::get_if<model::Sphere>(&shape)) ball(sphere->center, sphere->radius);
  if (const auto* capsule = std::get_if<model::Capsule>(&shape)) {
    ball(capsule->from, capsule->radius);
    ball(capsule->to, capsule->radius);
  }
  if (const auto* cylinder = std::get_if<model::Cylinder>(&shape)) {
    const Vector3d axis = at.R * cylinder->axis;
    const Vector3d u = axis.unitOrthogonal(), v = axis.cross(u);
    for (const double side : {-0.5, 0.5})
      add_disc(points, at * cylinder->center + side * cylinder->length * axis, u, v, cylinder->radius);
  }
  if (const auto* box = std::get_if<model::Box>(&shape))
    for (int k = 0; k < 8; ++k)
      corner(box->center + box->rotation * (0.5 * box->size.cwiseProduct(Vector3d(
                                                      k & 1 ? 1 : -1, k & 2 ? 1 : -1, k & 4 ? 1 : -1))));
  if (const auto* hull = std::get_if<model::Hull>(&shape))
    for (const Vector3d& point : hull->points) corner(point);
  if (const auto* mesh = std::get_if<model::Mesh>(&shape))
    for (const Vector3d& point : mesh->points) corner(point);
  return hull_of(std::move(points));
}

std::vector<double> row_of(const record::Record& record, const std::string& path, std::size_t row) {
  const int channel = record.find(path);
  if (channel < 0) return {record.column(path)};  // throws, with the words of the record's reader
  const auto width = static_cast<std::size_t>(record.channels[static_cast<std::size_t>(channel)].width());
  const auto begin =
      record.data[static_cast<std::size_t>(channel)].begin() + static_cast<std::ptrdiff_t>(width * row);
  return {begin, begin + static_cast<std::ptrdiff_t>(width)};
}

Placed placed(const record::Record& record, const std::string& base, std::size_t row) {
  const auto p = row_of(record, base + "position", row), q = row_of(record, base + "orientation", row);
  return {Eigen::Quaterniond(q.at(3), q.at(0), q.at(1), q.at(2)).toRotationMatrix(),
          Vector3d(p.at(0), p.at(1), p.at(2))};
}

namespace {

// Sum of the fingers' joint angles over time.
std::vector<double> flexion_of(const Subject& subject) {
  std::vector<double> flexion(subject.record.time.size(), 0.0);
  const model::Model& m = subject.scenario.model;
  for (std::size_t b = 0; b < m.bodies.size(); ++b)
    if (const model::Body& body = m.bodies[b]; body.hinge && !simulation::rides_on_slide(m, static_cast<int>(b))) {
      const auto angle = subject.record.column("/joints/" + body.hinge->name + "/angle");
      for (std::size_t i = 0; i < angle.size(); ++i) flexion[i] += angle[i];
    }
  return flexion;
}

// When every joint has come within a degree of where it is at row `end`, for good; not before `from`.
double settled(const Subject& subject, std::size_t end, double from) {
  constexpr double near = std::numbers::pi / 180;
  std::size_t first = 0;
  for (const auto& body : subject.scenario.model.bodies)
    if (body.hinge) {
      const auto angle = subject.record.column("/joints/" + body.hinge->name + "/angle");
      std::size_t i = end;
      while (i > 0 && std::abs(angle[i - 1] - angle[end]) <= near) --i;
      first = std::max(first, i);
    }
  return std::max(from, subject.record.time[first]);
}

}  // namespace

std::vector<std::string> fingers_of(const model::Model& model) {
  std::vector<std::string> fingers;
  for (const auto& body : model.bodies) {
    const std::string finger = model::finger_of(body.name);
    if (!finger.empty() && std::find(fingers.begin(), fingers.end(), finger) == fingers.end()) fingers.push_back(finger);
  }
  return fingers;
}

std::vector<Instant> instants(const Subject& subject) {
  const auto& record = subject.record;
  const auto& time = record.time;
  const auto& bodies = subject.scenario.model.bodies;
  const auto row_at = [&](double t) {
    return std::min(static_cast<std::size_t>(std::lower_bound(time.begin(), time.end(), t) - time.begin()),
                    time.size() - 1);
  };
  const double begin = subject.from, end = subject.to;
  std::vector<Instant> list = {{begin, begin > time.front() ? "first shown" : "start"}};
  const auto inside = [&](double t) { return t > begin && t < end; };

  std::vector<std::string> touched;
  for (const auto& event : record.events) {
    if (event.kind != "contact" || !inside(event.time) || touched.size() == 3) continue;
    const auto body = std::find_if(bodies.begin(), bodies.end(), [&](const auto& b) {
      return b.moves() && (event.subject == b.name || event.subject.starts_with(b.name + ".") ||
                         event.subject.starts_with(b.name + "@"));
    });
    if (body == bodies.end() || std::find(touched.begin(), touched.end(), body->name) != touched.end())
      continue;
    touched.push_back(body->name);
    list.push_back({event.time, event.subject + " touches"});
  }
  const auto flexion = flexion_of(subject);
  // Half-way through the motion says more than half-way through the time.
  const auto add_half = [&](std::size_t from, std::size_t to, const char* what) {
    const double half = 0.5 * (flexion[from] + flexion[to]);
    if (std::abs(flexion[to] - flexion[from]) < 5 * std::numbers::pi / 180) return;
    for (std::size_t i = from; i < to; ++i)
      if ((flexion[i] < half) != (flexion[from] < half)) {
        if (inside(time[i])) list.push_back({time[i], what});
        return;
      }
  };
  const simulation::Phases phases = simulation::phases(subject.scenario);
  if (std::isfinite(phases.command) && phases.command < time.back()) {
    const std::size_t command = row_at(phases.command), close_end = row_at(phases.close_end);
    const double closed = settled(subject, close_end, phases.command);
    if (touched.empty()) add_half(command, close_end, "half closed");
    if (inside(closed)) list.push_back({closed, "closed"});
    if (phases.releases && list.size() + 1 < most_instants)
      add_half(close_end, time.size() - 1, "half open again");
  } else if (touched.empty()) {
    add_half(0, time.size() - 1, "half-way");
  }
  list.push_back({end, end < time.back() ? "last shown" : "end"});
  std::stable_sort(list.begin(), list.end(),
                   [](const Instant& a, const Instant& b) { return a.time < b.time; });
  for (Instant& instant : list) instant.row = row_at(instant.time);
  return list;
}

std::vector<Piece> pieces_of(const Subject& subject, const model::Cord& cord,
                             const std::vector<Placed>& poses, std::size_t row) {
  const auto way = row_of(subject.record, "/cords/" + cord.name + "/way", row);
  const auto tension = row_of(subject.record, "/cords/" + cord.name + "/tension", row);
  const auto corner = [&](std::size_t k) {
    return Vector3d(way.at(3 * k), way.at(3 * k + 1), way.at(3 * k + 2));
  };
  std::vector<Piece> list;
  std::size_t span = 0, k = 0;
  int last_bend_body = -1;  // bends of one body may be lumped into one friction node
  for (std::size_t i = 1; i < cord.path.size(); ++i) {
    list.push_back({{corner(k), corner(k + 1)}, tension.at(span), span});
    ++k;
    if (const auto* guide = std::get_if<model::Guide>(&cord.path[i])) {
      const Placed& pose = poses[static_cast<std::size_t>(guide->body)];
      const Vector3d axis = (pose.R * guide->axis).normalized(), center = pose * guide->at;
      const Vector3d from = corner(k) - center, to = corner(k + 1) - center;
      const double angle = std::atan2(axis.dot(from.cross(to)), from.dot(to) - axis.dot(from) * axis.dot(to));
      Piece arc{{}, 0.5 * (tension.at(span) + tension.at(span + 1)), span};
      constexpr int steps = 16;
      for (int s = 0; s <= steps; ++s) {
        const double share = static_cast<double>(s) / steps;
        arc.corners.push_back(center + Eigen::AngleAxisd(share * angle, axis) * from +
                              share * axis * axis.dot(to - from));
      }
      list.push_back(std::move(arc));
      ++k;
      ++span;
      last_bend_body = -1;
    } else if (const auto* bend = std::get_if<model::Bend>(&cord.path[i])) {
      if (!cord.lump_bends || bend->body != last_bend_body) ++span;
      last_bend_body = bend->body;
    }
  }
  return list;
}

}  // namespace sinewright::plot
