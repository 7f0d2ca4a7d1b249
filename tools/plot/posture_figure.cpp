// The finger from the side (x to the right, y up) at the instants that matter.

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

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

// All polygons of a row; `solids` and `pads` of the bodies.
struct Scene {
  std::vector<Rows> solids, pads, objects, cords;
  Rows pins, arrows;
  std::string remark;
};

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
void draw_legend(Script& script, bool objects, double left, double page_width, double page_height,
                 double scale) {
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
  box("#f3ece0", "#30383d", "solid of a phalanx");
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
  double most_force = 0, most_tension = 0;
  for (const Instant& instant : list) {
    for (const std::string& base : contacts) {
      const auto force = row_of(record, base + "force", instant.row);
      most_force = std::max(most_force, std::hypot(force.at(0), force.at(1)));
    }
    for (const auto& cord : m.cords)
      for (const double t : row_of(record, "/cords/" + cord.name + "/tension", instant.row))
        most_tension = std::max(most_tension, t);
  }
  const double scale = arrow_scale(most_force);

  std::vector<Scene> scenes(list.size());
  Extent extent;
  for (std::size_t k = 0; k < list.size(); ++k) {
    const std::size_t row = list[k].row;
    Scene& scene = scenes[k];
    std::vector<Placed> poses;
    const auto take = [&](const std::vector<Point>& polygon) {
      for (const auto& [x, y] : polygon) extent.take(x, y);
      return in_mm(polygon);
    };
    for (const auto& body : m.bodies) {
      const Placed& at = poses.emplace_back(placed(record, "/bodies/" + body.name + "/", row));
      for (const auto& shape : body.shapes) scene.pads.push_back(take(outline(shape.shape, at)));
      for (const auto& solid : body.solids) scene.solids.push_back(take(outline(solid.shape, at)));
      if (body.hinge) {
        scene.pins.push_back({1e3 * at.p.x(), 1e3 * at.p.y()});
        extent.take(at.p.x(), at.p.y());
      }
    }
    for (const auto& cord : m.cords)
      for (const Piece& piece : pieces_of(subject, cord, poses, row)) {
        Rows& rows = scene.cords.emplace_back();
        for (const Vector3d& p : piece.corners) {
          rows.push_back({1e3 * p.x(), 1e3 * p.y(), piece.tension});
          extent.take(p.x(), p.y());
        }
      }
    for (const std::string& base : contacts) {
      const auto force = row_of(record, base + "force", row), point = row_of(record, base + "point", row);
      const double size = std::hypot(force.at(0), force.at(1));
      if (size < 0.02 * most_force || size == 0) continue;
      const double dx = scale * force[0], dy = scale * force[1];
      // The number stands a little beyond the arrow's head.
      const double tx = 1e3 * point.at(0) + dx * (1 + 4.5 / (scale * size)),
                   ty = 1e3 * point.at(1) + dy * (1 + 3 / (scale * size));
      scene.arrows.push_back({1e3 * point[0], 1e3 * point[1], dx, dy, tx, ty, size});
      extent.take(1e-3 * tx, 1e-3 * ty);
    }
  }
  // An object that has been thrown or pulled far away must not shrink the finger to a dot.
  const double finger_size = extent.size();
  const Extent finger = extent;
  for (std::size_t k = 0; k < list.size(); ++k)
    for (const auto& object : subject.scenario.objects) {
      const Placed at = placed(record, "/objects/" + object.name + "/", list[k].row);
      const auto polygon = outline(object.shape.shape, at);
      Extent grown = finger;
      for (const auto& [x, y] : polygon) grown.take(x, y);
      if (grown.size() > 1.8 * finger_size) {
        scenes[k].remark += " · " + shortened(object.name, 16) + " is out of view";
        continue;
      }
      for (const auto& [x, y] : polygon) extent.take(x, y);
      scenes[k].objects.push_back(in_mm(polygon));
    }

  // The page is as high as panels of equal scale need.
  const std::size_t columns = std::min<std::size_t>(3, list.size()),
                    lines = (list.size() + columns - 1) / columns;
  const double x0 = 1e3 * extent.low_x - 6, x1 = 1e3 * extent.high_x + 6, y0 = 1e3 * extent.low_y - 6,
               y1 = 1e3 * extent.high_y + 6;
  constexpr double page_width = 13, left = 0.75, right = 1.35, between = 0.55, head = 1.0, foot = 1.1,
                   gap = 0.95;
  const double panel_width =
      (page_width - left - right - between * static_cast<double>(columns - 1)) / static_cast<double>(columns);
  const double panel_height =
      std::clamp(panel_width * (y1 - y0) / (x1 - x0), 0.25 * panel_width, 2.5 * panel_width);
  const double page_height =
      head + foot + panel_height * static_cast<double>(lines) + gap * static_cast<double>(lines - 1);

  Script script("posture", "Postures from the side", subject.identity, page_width, page_height);
  for (std::size_t k = 0; k < list.size(); ++k) {
    const std::string number = std::to_string(k + 1);
    const Scene& scene = scenes[k];
    const std::vector<std::string> corners = {"x [mm]", "y [mm]"};
    script.lines("objects" + number, corners, scene.objects);
    script.lines("pads" + number, corners, scene.pads);
    script.lines("solids" + number, corners, scene.solids);
    script.lines("cords" + number, {"x [mm]", "y [mm]", "tension [N]"}, scene.cords);
    script.block("pins" + number, corners, scene.pins);
    script.block("arrows" + number,
                 {"x [mm]", "y [mm]", "dx [mm]", "dy [mm]", "x of the number [mm]", "y of the number [mm]",
                  "force in the picture's plane [N]"},
                 scene.arrows);
  }
  script.line(
      "set multiplot\nunset key\nset size ratio -1\nset border 15 lc rgb '#a0a0a0' lw 0.7\nset style fill "
      "solid 1.0 noborder");
  script.line("set style textbox opaque fillcolor rgb '#ffffff' noborder margins 0.4,0.3");
  script.line(fmt::format("set xrange [{:.3f}:{:.3f}]\nset yrange [{:.3f}:{:.3f}]", x0, x1, y0, y1));
  const double widest = std::max(x1 - x0, y1 - y0), tic = widest > 600   ? 100
                                                          : widest > 250 ? 50
                                                          : widest > 70  ? 20
                                                                         : 10;
  script.line(
      fmt::format("set xtics {0} font ',11'\nset ytics {0} font ',11'\nset xlabel 'x [mm]' offset 0,0.4\nset "
                  "ylabel 'y [mm]' offset 0.8",
                  tic));
  // From light to dark, so that it also reads in grey.
  script.line(fmt::format(
      "set palette defined (0 '#f2c14e', 0.5 '#d1495b', 1 '#3d1e6d')\nset cbrange [0:{:.4g}]\nunset colorbox",
      std::max(most_tension, 1e-3)));
  for (std::size_t k = 0; k < list.size(); ++k) {
    const double x = left + (panel_width + between) * static_cast<double>(k % columns);
    const double y =
        page_height - head - panel_height - (panel_height + gap) * static_cast<double>(k / columns);
    script.line(fmt::format("\n# Panel {}", k + 1));
    script.line(fmt::format(
        "set lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset bmargin at screen {:.5f}\nset "
        "tmargin at screen {:.5f}",
        x / page_width, (x + panel_width) / page_width, y / page_height, (y + panel_height) / page_height));
    if (k == 0) {
      if (!m.cords.empty())
        script.line(
            fmt::format("set colorbox user origin screen {:.5f}, screen {:.5f} size screen {:.5f}, screen "
                        "{:.5f}\nset cblabel 'cord tension [N]'",
                        1 - (right - 0.3) / page_width, foot / page_height, 0.2 / page_width,
                        std::min(4.0, page_height - head - foot) / page_height));
      draw_legend(script, !subject.scenario.objects.empty(), left, page_width, page_height,
                  most_force > 0 ? scale : 0);
    } else {
      script.line("unset label\nunset arrow\nunset object\nunset colorbox");
    }
    script.line(fmt::format("set title {} offset 0,-0.5 font ',12' noenhanced",
                            gnuplot_text(fmt::format("{:.3f} s — {}{}", list[k].time,
                                                     shortened(list[k].what, 30), scenes[k].remark))));
    script.line(fmt::format(
        "plot $objects{0} using 1:2 with filledcurves closed fc rgb '#dfe5e8' notitle, \\\n"
        "     $objects{0} using 1:2 with lines lc rgb '#7c8a92' lw 1 notitle, \\\n"
        "     $pads{0} using 1:2 with filledcurves closed fc rgb '#c9bfae' notitle, \\\n"
        "     $pads{0} using 1:2 with lines lc rgb '#8a7f6c' lw 0.8 notitle, \\\n"
        "     $solids{0} using 1:2 with filledcurves closed fc rgb '#f3ece0' notitle, \\\n"
        "     $solids{0} using 1:2 with lines lc rgb '#30383d' lw 1 notitle, \\\n"
        "     $cords{0} using 1:2:3 with lines lc palette lw 2.2 notitle, \\\n"
        "     $pins{0} using 1:2 with points pt 7 ps 0.8 lc rgb '#30383d' notitle{1}",
        k + 1,
        // gnuplot 5.4 crashes on labels without a single finite row.
        scenes[k].arrows.empty()
            ? std::string()
            : fmt::format(
                  ", \\\n     $arrows{0} using 1:2:3:4 with vectors head filled size "
                  "screen 0.007,20 lc rgb '#0b7a4b' lw 2 notitle, \\\n"
                  "     $arrows{0} using 5:6:(sprintf($7 < 1 ? '%.2f N' : '%.1f N', $7)) with labels boxed "
                  "center font ',9' textcolor rgb '#0b5a38' notitle",
                  k + 1)));
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
