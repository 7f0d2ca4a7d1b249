// The finger from the side (x to the right, y up) at the instants that matter; a hand from the side and from the palm.

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "model/names.h"
#include "plot/scene.h"

namespace sinewright::plot {

namespace {

using Eigen::Vector3d;
using Point = std::pair<double, double>;
using Rows = std::vector<std::vector<double>>;

// A box that grows round what is drawn [m].
struct Extent {
  double low_x = std::numeric_limits<double>::infinity(), high_x = -low_x, low_y = low_x, high_y = -low_x;
  void take(double x, double y) {
    low_x = std::min(low_x, x), high_x = std::max(high_x, x), low_y = std::min(low_y, y),
    high_y = std::max(high_y, y);
  }
  [[nodiscard]] double size() const { return std::max(high_x - low_x, high_y - low_y); }
};

Rows in_mm(const std::vector<Point>& polygon) {
  Rows rows;
  for (const auto& [x, y] : polygon) rows.push_back({1e3 * x, 1e3 * y});
  if (!rows.empty()) rows.push_back(rows.front());
  return rows;
}

// A way to look: turns the world so that x goes to the right and y up in the picture.
struct View {
  std::string name, right, up;
  Eigen::Matrix3d turn = Eigen::Matrix3d::Identity();

  [[nodiscard]] Placed operator*(const Placed& at) const { return {turn * at.R, turn * at.p}; }
};

std::vector<View> views_of(bool hand) {
  std::vector<View> views = {{"from the side", "x", "y"}};
  if (!hand) return views;
  Eigen::Matrix3d from_palm;
  from_palm << 1, 0, 0, 0, 0, 1, 0, -1, 0;  // z up, and -y comes towards the eye
  views.push_back({"from the palm", "x", "z", from_palm});
  return views;
}

// Bodies that are drawn together, a finger or what belongs to none, with their tints.
struct Group {
  std::string finger;
  double depth = 0;  // towards the eye, mean of its bodies [m]
  int bodies = 0;
  std::vector<Rows> solids, pads;
};

// All polygons of a row, seen in one way; the groups from the far one to the near one.
struct Scene {
  std::vector<Group> groups;
  std::vector<Rows> objects, cords;
  Rows pins, arrows, numbers;
  std::string remark;
};

Group& group_of(Scene& scene, const std::string& finger) {
  for (Group& group : scene.groups)
    if (group.finger == finger) return group;
  scene.groups.push_back({finger, 0, 0, {}, {}});
  return scene.groups.back();
}

// Tints of solids; a single finger has the first.
const char* tint(std::size_t finger) {
  constexpr const char* tints[] = {"#f3ece0", "#cfe0f2", "#d3ebcd", "#fbe2bd", "#ead3ec", "#f6cccc"};
  return tints[finger % std::size(tints)];
}

// A round number of mm per N with which the longest arrow is 17 to 36 mm long.
double arrow_scale(double most_force) {
  if (!(most_force > 0)) return 1;
  constexpr double longest = 36;
  const double scale = std::pow(10, std::floor(std::log10(longest / most_force)));
  for (const double step : {5.0, 4.0, 3.0, 2.0})
    if (step * scale * most_force <= longest) return step * scale;
  return scale;
}

// One line of samples at the foot of the page. @param scale  of the arrows [mm/N], 0: there are none.
void draw_legend(Script& script, const std::vector<std::string>& fingers, bool objects, double left, double page_width,
                 double page_height, double scale) {
  double x = left;  // [inch]
  const double y = 0.3;
  const auto screen = [&](double across, double up) {
    return fmt::format("screen {:.5f}, screen {:.5f}", across / page_width, up / page_height);
  };
  int number = 200;
  const auto text = [&](const std::string& words) {
    script.line(fmt::format("set label {} {} at {} left font ',11' noenhanced", number++, gnuplot_text(words),
                            screen(x + 0.4, y)));
    x += 0.75 + 0.059 * static_cast<double>(character_count(words));
  };
  const auto box = [&](const char* fill, const char* edge, const std::string& words) {
    script.line(
        fmt::format("set object {} rectangle from {} to {} fc rgb '{}' fs solid 1 border rgb '{}' lw 1",
                    number, screen(x, y - 0.07), screen(x + 0.3, y + 0.07), fill, edge));
    text(words);
  };
  if (fingers.empty()) box(tint(0), "#30383d", "solid of a phalanx");
  for (std::size_t f = 0; f < fingers.size(); ++f) box(tint(f + 1), "#30383d", fingers[f]);
  box("#c9bfae", "#8a7f6c", "contact shape");
  if (objects) box("#dfe5e8", "#7c8a92", "object");
  script.line(
      fmt::format("set label {} '' at {} point pt 7 ps 0.8 lc rgb '#30383d'", number++, screen(x + 0.25, y)));
  text("pin");
  if (scale > 0) {
    script.line(
        fmt::format("set arrow {} from {} to {} head filled size screen 0.007,20 lc rgb '#0b7a4b' lw 2",
                    number, screen(x, y), screen(x + 0.32, y)));
    text(fmt::format("force of an object on phalanx or palm, {:g} mm per N", scale));
  }
}

}  // namespace

Script posture_figure(const Subject& subject) {
  const auto& record = subject.record;
  const auto& m = subject.scenario.model;
  const std::vector<Instant> list = instants(subject);
  std::vector<std::string> contacts;
  for (const auto& channel : record.channels)
    if (channel.path.starts_with("/contacts/") && channel.path.ends_with("/force"))
      contacts.push_back(channel.path.substr(0, channel.path.size() - 5));
  const std::vector<std::string> fingers = fingers_of(m);
  const std::vector<View> views = views_of(!fingers.empty());
  double most_force = 0, most_tension = 0;
  for (const Instant& instant : list) {
    for (const std::string& base : contacts) {
      const auto of = row_of(record, base + "force", instant.row);
      for (const View& view : views) {
        const Vector3d force = view.turn * Vector3d(of.at(0), of.at(1), of.at(2));
        most_force = std::max(most_force, std::hypot(force.x(), force.y()));
      }
    }
    for (const auto& cord : m.cords)
      for (const double t : row_of(record, "/cords/" + cord.name + "/tension", instant.row))
        most_tension = std::max(most_tension, t);
  }
  const double scale = arrow_scale(most_force);

  const std::size_t n = list.size();
  std::vector<Scene> scenes(n * views.size());  // all instants of the first view, then of the next
  std::vector<Extent> extents(views.size());
  for (std::size_t v = 0; v < views.size(); ++v) {
    const View& view = views[v];
    Extent& extent = extents[v];
    const auto take = [&](const std::vector<Point>& polygon) {
      for (const auto& [x, y] : polygon) extent.take(x, y);
      return in_mm(polygon);
    };
    for (std::size_t k = 0; k < n; ++k) {
      const std::size_t row = list[k].row;
      Scene& scene = scenes[v * n + k];
      std::vector<Placed> poses;
      for (const auto& body : m.bodies) {
        const Placed world = poses.emplace_back(placed(record, "/bodies/" + body.name + "/", row));
        const Placed at = view * world;
        Group& group = group_of(scene, model::finger_of(body.name));
        group.depth += at.p.z();
        ++group.bodies;
        for (const auto& shape : body.shapes) group.pads.push_back(take(outline(shape.shape, at)));
        for (const auto& solid : body.solids) group.solids.push_back(take(outline(solid.shape, at)));
        if (body.hinge) {
          scene.pins.push_back({1e3 * at.p.x(), 1e3 * at.p.y()});
          extent.take(at.p.x(), at.p.y());
        }
      }
      std::stable_sort(scene.groups.begin(), scene.groups.end(),
                       [](const Group& a, const Group& b) { return a.depth / a.bodies < b.depth / b.bodies; });
      for (const auto& cord : m.cords)
        for (const Piece& piece : pieces_of(subject, cord, poses, row)) {
          Rows& rows = scene.cords.emplace_back();
          for (const Vector3d& corner : piece.corners) {
            const Vector3d p = view.turn * corner;
            rows.push_back({1e3 * p.x(), 1e3 * p.y(), piece.tension});
            extent.take(p.x(), p.y());
          }
        }
      for (const std::string& base : contacts) {
        const auto force_of = row_of(record, base + "force", row), point_of = row_of(record, base + "point", row);
        const Vector3d force = view.turn * Vector3d(force_of.at(0), force_of.at(1), force_of.at(2));
        const Vector3d point = view.turn * Vector3d(point_of.at(0), point_of.at(1), point_of.at(2));
        const double size = std::hypot(force.x(), force.y());
        if (size < 0.02 * most_force || size == 0) continue;
        const double dx = scale * force.x(), dy = scale * force.y();
        // The number stands a little beyond the arrow's head.
        const double tx = 1e3 * point.x() + dx * (1 + 4.5 / (scale * size)),
                     ty = 1e3 * point.y() + dy * (1 + 3 / (scale * size));
        scene.arrows.push_back({1e3 * point.x(), 1e3 * point.y(), dx, dy, tx, ty, size});
        // Of a hand's many forces only the great ones are told in numbers, or they hide each other.
        if (views.size() == 1 || size > 0.25 * most_force) scene.numbers.push_back({tx, ty, size});
        extent.take(1e-3 * tx, 1e-3 * ty);
      }
    }
    // An object that has been thrown or pulled far away must not shrink the finger to a dot.
    const double finger_size = extent.size();
    const Extent finger = extent;
    for (std::size_t k = 0; k < n; ++k)
      for (const auto& object : subject.scenario.objects) {
        const Placed at = view * placed(record, "/objects/" + object.name + "/", list[k].row);
        const auto polygon = outline(object.shape.shape, at);
        Extent grown = finger;
        for (const auto& [x, y] : polygon) grown.take(x, y);
        if (grown.size() > 1.8 * finger_size) {
          scenes[v * n + k].remark += " · " + shortened(object.name, 16) + " is out of view";
          continue;
        }
        for (const auto& [x, y] : polygon) extent.take(x, y);
        scenes[v * n + k].objects.push_back(in_mm(polygon));
      }
  }

  // The page is as high as panels of equal scale need. The views of an instant stand below each other.
  const std::size_t columns = std::min<std::size_t>(3, n), lines = (n + columns - 1) / columns;
  constexpr double page_width = 13, left = 0.75, right = 1.35, between = 0.55, head = 1.0, foot = 1.1,
                   gap = 0.95;
  const double panel_width =
      (page_width - left - right - between * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  struct Frame {
    double x0, x1, y0, y1, height;
  };
  std::vector<Frame> frames;
  double of_all_views = 0;
  for (const Extent& extent : extents) {
    Frame f{1e3 * extent.low_x - 6, 1e3 * extent.high_x + 6, 1e3 * extent.low_y - 6, 1e3 * extent.high_y + 6, 0};
    f.height = std::clamp(panel_width * (f.y1 - f.y0) / (f.x1 - f.x0), 0.25 * panel_width, 2.5 * panel_width);
    of_all_views += f.height;
    frames.push_back(f);
  }
  const double page_height = head + foot + of_all_views * static_cast<double>(lines) +
                             gap * static_cast<double>(lines * views.size() - 1);

  Script script("posture", views.size() > 1 ? "Postures from the side and from the palm" : "Postures from the side", subject.identity,
                page_width, page_height);
  for (std::size_t k = 0; k < scenes.size(); ++k) {
    const std::string number = std::to_string(k + 1);
    const Scene& scene = scenes[k];
    const View& view = views[k / n];
    const std::vector<std::string> corners = {view.right + " [mm]", view.up + " [mm]"};
    script.lines("objects" + number, corners, scene.objects);
    for (std::size_t g = 0; g < scene.groups.size(); ++g) {
      const std::string group = number + "_" + std::to_string(g + 1);
      script.lines("pads" + group, corners, scene.groups[g].pads);
      script.lines("solids" + group, corners, scene.groups[g].solids);
    }
    script.lines("cords" + number, {corners[0], corners[1], "tension [N]"}, scene.cords);
    script.block("pins" + number, corners, scene.pins);
    script.block("arrows" + number,
                 {corners[0], corners[1], "right [mm]", "up [mm]", "right, of the number [mm]", "up, of the number [mm]",
                  "force in the picture's plane [N]"},
                 scene.arrows);
    script.block("numbers" + number, {corners[0], corners[1], "force in the picture's plane [N]"}, scene.numbers);
  }
  script.line(
      "set multiplot\nunset key\nset size ratio -1\nset border 15 lc rgb '#a0a0a0' lw 0.7\nset style fill "
      "solid 1.0 noborder");
  script.line("set style textbox opaque fillcolor rgb '#ffffff' noborder margins 0.4,0.3");
  // From light to dark, so that it also reads in grey.
  script.line(fmt::format(
      "set palette defined (0 '#f2c14e', 0.5 '#d1495b', 1 '#3d1e6d')\nset cbrange [0:{:.4g}]\nunset colorbox",
      std::max(most_tension, 1e-3)));
  for (std::size_t panel = 0; panel < scenes.size(); ++panel) {
    const std::size_t v = panel / n, k = panel % n;
    const Scene& scene = scenes[panel];
    const Frame& frame = frames[v];
    const double x = left + (panel_width + between) * static_cast<double>(k % columns);
    double y = page_height - head - frame.height - (of_all_views + gap * static_cast<double>(views.size())) * static_cast<double>(k / columns);
    for (std::size_t above = 0; above < v; ++above) y -= frames[above].height + gap;
    script.line(fmt::format("\n# Panel {}", panel + 1));
    script.line(fmt::format("set xrange [{:.3f}:{:.3f}]\nset yrange [{:.3f}:{:.3f}]", frame.x0, frame.x1, frame.y0, frame.y1));
    const double widest = std::max(frame.x1 - frame.x0, frame.y1 - frame.y0);
    const double tic = widest > 600 ? 100 : widest > 250 ? 50 : widest > 70 ? 20 : 10;
    script.line(fmt::format("set xtics {0} font ',11'\nset ytics {0} font ',11'\nset xlabel '{1} [mm]' offset 0,0.4\nset "
                            "ylabel '{2} [mm]' offset 0.8",
                            tic, views[v].right, views[v].up));
    script.line(fmt::format(
        "set lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset bmargin at screen {:.5f}\nset "
        "tmargin at screen {:.5f}",
        x / page_width, (x + panel_width) / page_width, y / page_height, (y + frame.height) / page_height));
    if (panel == 0) {
      if (!m.cords.empty())
        script.line(
            fmt::format("set colorbox user origin screen {:.5f}, screen {:.5f} size screen {:.5f}, screen "
                        "{:.5f}\nset cblabel 'cord tension [N]'",
                        1 - (right - 0.3) / page_width, foot / page_height, 0.2 / page_width,
                        std::min(4.0, page_height - head - foot) / page_height));
      draw_legend(script, fingers, !subject.scenario.objects.empty(), left, page_width, page_height,
                  most_force > 0 ? scale : 0);
    } else {
      script.line("unset label\nunset arrow\nunset object\nunset colorbox");
    }
    const std::string from = views.size() > 1 ? ", " + views[v].name : std::string();
    script.line(fmt::format("set title {} offset 0,-0.5 font ',12' noenhanced",
                            gnuplot_text(fmt::format("{:.3f} s — {}{}{}", list[k].time, shortened(list[k].what, 30), from, scene.remark))));
    std::string command = fmt::format(
        "plot $objects{0} using 1:2 with filledcurves closed fc rgb '#dfe5e8' notitle, \\\n"
        "     $objects{0} using 1:2 with lines lc rgb '#7c8a92' lw 1 notitle",
        panel + 1);
    for (std::size_t g = 0; g < scene.groups.size(); ++g) {
      const auto number = std::find(fingers.begin(), fingers.end(), scene.groups[g].finger) - fingers.begin();
      const bool of_finger = static_cast<std::size_t>(number) < fingers.size();
      command += fmt::format(
          ", \\\n     $pads{0}_{1} using 1:2 with filledcurves closed fc rgb '#c9bfae' notitle, \\\n"
          "     $pads{0}_{1} using 1:2 with lines lc rgb '#8a7f6c' lw 0.8 notitle, \\\n"
          "     $solids{0}_{1} using 1:2 with filledcurves closed fc rgb '{2}' notitle, \\\n"
          "     $solids{0}_{1} using 1:2 with lines lc rgb '#30383d' lw 1 notitle",
          panel + 1, g + 1, tint(of_finger ? static_cast<std::size_t>(number) + 1 : 0));
    }
    command += fmt::format(
        ", \\\n     $cords{0} using 1:2:3 with lines lc palette lw 2.2 notitle, \\\n"
        "     $pins{0} using 1:2 with points pt 7 ps 0.8 lc rgb '#30383d' notitle",
        panel + 1);
    if (!scene.arrows.empty())
      command += fmt::format(
          ", \\\n     $arrows{0} using 1:2:3:4 with vectors head filled size "
          "screen 0.007,20 lc rgb '#0b7a4b' lw 2 notitle",
          panel + 1);
    // gnuplot 5.4 crashes on labels without a single finite row.
    if (!scene.numbers.empty())
      command += fmt::format(
          ", \\\n     $numbers{0} using 1:2:(sprintf($3 < 1 ? '%.2f N' : '%.1f N', $3)) with labels boxed "
          "center font ',9' textcolor rgb '#0b5a38' notitle",
          panel + 1);
    script.line(command);
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
