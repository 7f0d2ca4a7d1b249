// The finger from the side (x to the right, y up) at the instants that matter.

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

#include "plot/figures.h"

namespace sinewright::plot {

namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using Point = std::pair<double, double>;

constexpr int circle_points = 48;

// Outline of a shape in the side view: the convex hull of projected points of its surface.
std::vector<Point> hull_of(std::vector<Point> points) {
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  std::vector<Point> hull(2 * points.size() + 1);
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
  hull.resize(n);
  return hull;
}

void add_disc(std::vector<Point>& points, const Vector3d& center, const Vector3d& u, const Vector3d& v, double radius) {
  for (int k = 0; k < circle_points; ++k) {
    const double a = 2 * std::numbers::pi * k / circle_points;
    const Vector3d p = center + radius * (std::cos(a) * u + std::sin(a) * v);
    points.emplace_back(p.x(), p.y());
  }
}

std::vector<Point> outline(const model::Shape& shape, const Matrix3d& R, const Vector3d& origin) {
  std::vector<Point> points;
  const auto world = [&](const Vector3d& p) { return Vector3d(R * p + origin); };
  const auto ball = [&](const Vector3d& c, double r) { add_disc(points, world(c), Vector3d::UnitX(), Vector3d::UnitY(), r); };
  if (const auto* sphere = std::get_if<model::Sphere>(&shape)) ball(sphere->center, sphere->radius);
  if (const auto* capsule = std::get_if<model::Capsule>(&shape)) {
    ball(capsule->from, capsule->radius);
    ball(capsule->to, capsule->radius);
  }
  if (const auto* cylinder = std::get_if<model::Cylinder>(&shape)) {
    const Vector3d axis = R * cylinder->axis;
    const Vector3d u = axis.unitOrthogonal(), v = axis.cross(u);
    for (const double side : {-0.5, 0.5})
      add_disc(points, world(cylinder->center) + side * cylinder->length * axis, u, v, cylinder->radius);
  }
  if (const auto* box = std::get_if<model::Box>(&shape))
    for (int k = 0; k < 8; ++k) {
      const Vector3d corner = 0.5 * box->size.cwiseProduct(Vector3d(k & 1 ? 1 : -1, k & 2 ? 1 : -1, k & 4 ? 1 : -1));
      const Vector3d p = world(box->center + box->rotation * corner);
      points.emplace_back(p.x(), p.y());
    }
  if (const auto* hull = std::get_if<model::Hull>(&shape))
    for (const Vector3d& corner : hull->points) {
      const Vector3d p = world(corner);
      points.emplace_back(p.x(), p.y());
    }
  return hull_of(std::move(points));
}

struct Placed {
  Matrix3d R;
  Vector3d p;
};

Placed placed(const record::Record& record, const std::string& base, std::size_t row) {
  const auto& position = record.data[static_cast<std::size_t>(record.find(base + "position"))];
  const auto& turn = record.data[static_cast<std::size_t>(record.find(base + "orientation"))];
  const double* q = &turn[4 * row];
  return {Eigen::Quaterniond(q[3], q[0], q[1], q[2]).toRotationMatrix(), Vector3d(position[3 * row], position[3 * row + 1], position[3 * row + 2])};
}

// Polygons in mm, an empty line between two.
std::string polygons(const std::vector<std::vector<Point>>& list) {
  std::string text;
  for (const auto& polygon : list) {
    for (const auto& [x, y] : polygon) text += fmt::format("{:.4f} {:.4f}\n", 1e3 * x, 1e3 * y);
    if (!polygon.empty()) text += fmt::format("{:.4f} {:.4f}\n", 1e3 * polygon.front().first, 1e3 * polygon.front().second);
    text += "\n";
  }
  return text;
}

struct Instant {
  double time;
  std::string what;
  std::size_t row;
};

std::vector<Instant> instants(const Subject& subject) {
  const auto& record = subject.record;
  std::vector<std::pair<double, std::string>> wanted = {{record.time.front(), "start"}};
  double command = NAN, close_end = record.time.back();
  for (const auto& event : record.events)
    if (event.kind == "command") {
      if (std::isnan(command)) command = event.time;
      else if (close_end == record.time.back() && event.time > command) close_end = event.time;
    }
  std::vector<std::string> seen;
  for (const auto& event : record.events) {
    if (event.kind != "contact" || event.time <= 0.01 || std::find(seen.begin(), seen.end(), event.subject) != seen.end()) continue;
    seen.push_back(event.subject);
    const std::string body = event.subject.substr(0, event.subject.find_first_of(".@"));
    const bool phalanx = std::any_of(subject.scenario.model.bodies.begin(), subject.scenario.model.bodies.end(),
                                     [&](const auto& b) { return b.name == body && b.hinge; });
    if (!phalanx) continue;
    if (wanted.size() < 4) wanted.emplace_back(event.time, event.subject + " touches");
  }
  if (wanted.size() < 4 && close_end > record.time.front()) {
    // Half-way through the motion says more than half-way through the time.
    std::vector<double> flexion(record.time.size(), 0.0);
    for (const auto& body : subject.scenario.model.bodies)
      if (body.hinge) {
        const auto angle = record.column("/joints/" + body.hinge->name + "/angle");
        for (std::size_t i = 0; i < angle.size(); ++i) flexion[i] += angle[i];
      }
    std::size_t end = 0;
    while (end + 1 < record.time.size() && record.time[end + 1] <= close_end) ++end;
    for (std::size_t i = 0; i < end; ++i)
      if (flexion[i] - flexion[0] > 0.5 * (flexion[end] - flexion[0]) && flexion[end] > flexion[0]) {
        wanted.emplace_back(record.time[i], "half closed");
        break;
      }
  }
  if (close_end < record.time.back()) wanted.emplace_back(close_end, "end of closing");
  wanted.emplace_back(record.time.back(), "end");
  std::sort(wanted.begin(), wanted.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Instant> list;
  for (const auto& [time, what] : wanted) {
    auto row = static_cast<std::size_t>(std::lower_bound(record.time.begin(), record.time.end(), time) - record.time.begin());
    row = std::min(row, record.time.size() - 1);
    list.push_back({record.time[row], what, row});
  }
  return list;
}

}  // namespace

Script posture_figure(const Subject& subject) {
  const auto& record = subject.record;
  const auto& m = subject.scenario.model;
  const std::vector<Instant> list = instants(subject);
  const std::size_t columns = std::min<std::size_t>(3, list.size()), lines = (list.size() + columns - 1) / columns;
  double most_force = 0, most_tension = 1e-9;
  for (const auto& channel : record.channels) {
    if (channel.path.rfind("/contacts/", 0) == 0 && channel.path.ends_with("/normal_force"))
      for (const Instant& instant : list)
        most_force = std::max(most_force, record.data[static_cast<std::size_t>(record.find(channel.path))][instant.row]);
    if (channel.path.rfind("/cords/", 0) == 0 && channel.path.ends_with("/tension"))
      for (const double t : record.data[static_cast<std::size_t>(record.find(channel.path))]) most_tension = std::max(most_tension, t);
  }
  // A round number of mm per N so that the largest arrow shown is 15 to 30 mm long.
  double scale = 1;
  if (most_force > 0) {
    scale = std::pow(10, std::floor(std::log10(30 / most_force)));
    for (const double step : {5.0, 2.0})
      if (step * scale * most_force <= 30) {
        scale *= step;
        break;
      }
  }

  double low_x = 1e9, high_x = -1e9, low_y = 1e9, high_y = -1e9;
  std::string blocks;
  for (std::size_t k = 0; k < list.size(); ++k) {
    const std::size_t row = list[k].row;
    std::vector<std::vector<Point>> bodies, objects;
    std::string pins;
    for (const auto& body : m.bodies) {
      const Placed at = placed(record, "/bodies/" + body.name + "/", row);
      for (const auto& solid : body.solids) bodies.push_back(outline(solid.shape, at.R, at.p));
      for (const auto& shape : body.shapes) bodies.push_back(outline(shape.shape, at.R, at.p));
      if (body.hinge) pins += fmt::format("{:.4f} {:.4f}\n", 1e3 * at.p.x(), 1e3 * at.p.y());
    }
    for (const auto& object : subject.scenario.objects) {
      const Placed at = placed(record, "/objects/" + object.name + "/", row);
      objects.push_back(outline(object.shape.shape, at.R, at.p));
    }
    for (const auto& polygon : bodies)
      for (const auto& [x, y] : polygon) {
        low_x = std::min(low_x, x), high_x = std::max(high_x, x), low_y = std::min(low_y, y), high_y = std::max(high_y, y);
      }
    // Cords: one coloured piece a span where the corners allow it, else the first span's tension for all.
    std::string cords;
    for (const auto& cord : m.cords) {
      const auto& way = record.data[static_cast<std::size_t>(record.find("/cords/" + cord.name + "/way"))];
      const auto width = static_cast<std::size_t>(record.channels[static_cast<std::size_t>(record.find("/cords/" + cord.name + "/way"))].width());
      const int tension_channel = record.find("/cords/" + cord.name + "/tension");
      const auto spans = static_cast<std::size_t>(record.channels[static_cast<std::size_t>(tension_channel)].width());
      const double* tension = &record.data[static_cast<std::size_t>(tension_channel)][spans * row];
      const double* w = &way[width * row];
      const std::size_t corners = width / 3;
      for (std::size_t i = 0; i + 1 < corners; ++i) {
        const double t = tension[std::min(spans - 1, corners - 1 == spans ? i : i * spans / (corners - 1))];
        cords += fmt::format("{:.4f} {:.4f} {:.4f}\n{:.4f} {:.4f} {:.4f}\n\n", 1e3 * w[3 * i], 1e3 * w[3 * i + 1], t, 1e3 * w[3 * i + 3],
                             1e3 * w[3 * i + 4], t);
        low_x = std::min(low_x, w[3 * i]);
      }
    }
    std::string arrows;
    for (const auto& channel : record.channels) {
      if (channel.path.rfind("/contacts/", 0) != 0 || !channel.path.ends_with("/force")) continue;
      const std::string base = channel.path.substr(0, channel.path.size() - 5);
      const double* force = &record.data[static_cast<std::size_t>(record.find(channel.path))][3 * row];
      const double* point = &record.data[static_cast<std::size_t>(record.find(base + "point"))][3 * row];
      if (std::hypot(force[0], force[1]) * scale < 0.3) continue;
      arrows += fmt::format("{:.4f} {:.4f} {:.4f} {:.4f}\n", 1e3 * point[0], 1e3 * point[1], scale * force[0], scale * force[1]);
    }
    const auto block = [&](const char* name, const std::string& rows) {
      blocks += fmt::format("${}{} << EOD\n{}EOD\n", name, k, rows.empty() ? "NaN NaN NaN NaN\n" : rows);
    };
    block("bodies", polygons(bodies));
    block("objects", polygons(objects));
    block("pins", pins);
    block("cords", cords);
    block("arrows", arrows);
  }
  for (const auto& object : subject.scenario.objects) {
    if (!std::holds_alternative<model::HeldFixed>(object.hold)) continue;
    for (const auto& [x, y] : outline(object.shape.shape, object.rotation, object.at)) {
      low_x = std::min(low_x, x), high_x = std::max(high_x, x), low_y = std::min(low_y, y), high_y = std::max(high_y, y);
    }
  }

  // The page is as high as the panels of equal scale need.
  constexpr double page_width = 13, panel_width = page_width * 0.84 / 3 - 0.35, head = 0.75, foot = 0.85, gap = 0.95;
  const double panel_height = panel_width * ((high_y - low_y) * 1e3 + 20) / ((high_x - low_x) * 1e3 + 18);
  const double page_height = head + foot + panel_height * static_cast<double>(lines) + gap * static_cast<double>(lines - 1);
  Script script("posture", "Postures from the side — " + subject.identity, page_width, page_height);
  script.line(blocks);
  script.line(fmt::format("set multiplot layout {},{} margins 0.05,0.89,{:.4f},{:.4f} spacing 0.045,{:.4f}", lines, columns,
                          foot / page_height, 1 - head / page_height, gap / page_height));
  script.line("set size ratio -1\nunset key\nset border 15 lc rgb '#a0a0a0' lw 0.7\nset style fill solid 1.0 noborder");
  script.line(fmt::format("set xrange [{:.1f}:{:.1f}]\nset yrange [{:.1f}:{:.1f}]", 1e3 * low_x - 6, 1e3 * high_x + 12, 1e3 * low_y - 10, 1e3 * high_y + 10));
  script.line("set xlabel 'x [mm]' offset 0,0.5\nset ylabel 'y [mm]' offset 1\nset xtics 20\nset ytics 20");
  // From light to dark, so that it also reads in grey.
  script.line(fmt::format("set palette defined (0 '#f2c14e', 0.5 '#d1495b', 1 '#3d1e6d')\nset cbrange [0:{:.4g}]\nunset colorbox", most_tension));
  for (std::size_t k = 0; k < list.size(); ++k) {
    if (k == 0) {
      script.line("set label 100 head at screen 0.02, screen 1 offset 0,-1.2 left font ',14' noenhanced");
      script.line(fmt::format("set label 101 {} at screen 0.02, screen 0 offset 0,0.8 left font ',11' noenhanced",
                              gnuplot_text(most_force > 0 ? fmt::format("arrows: force on the phalanx or palm, {:g} mm per N; cords coloured by tension", scale)
                                                    : std::string("cords coloured by tension"))));
      script.line("set colorbox user origin screen 0.93, screen 0.2 size screen 0.015, screen 0.6\nset cblabel 'cord tension [N]' offset 0.5");
    } else {
      script.line("unset label 100\nunset label 101\nunset colorbox");
    }
    script.line(fmt::format("set title {} offset 0,-0.6 font ',12' noenhanced", gnuplot_text(fmt::format("{:.3f} s — {}", list[k].time, list[k].what))));
    script.line(fmt::format("plot $objects{0} using 1:2 with filledcurves closed fc rgb '#dfe5e8', $objects{0} using 1:2 with lines lc rgb '#7c8a92' lw 1, \\\n"
                            "     $bodies{0} using 1:2 with filledcurves closed fc rgb '#f3ece0', \\\n"
                            "     $bodies{0} using 1:2 with lines lc rgb '#30383d' lw 1.1, \\\n"
                            "     $cords{0} using 1:2:3 with lines lc palette lw 2.2, \\\n"
                            "     $pins{0} using 1:2 with points pt 7 ps 0.9 lc rgb '#30383d', \\\n"
                            "     $arrows{0} using 1:2:3:4 with vectors head filled size screen 0.008,20 lc rgb '#0b7a4b' lw 2.2", k));
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
