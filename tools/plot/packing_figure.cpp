// What takes up room, from three sides: third-angle projection, so that the view from the back stands above the one from the side and
// the view from the fingertips to its right. The corner that is left lists what collides.

#include "plot/packing_figure.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "plot/scene.h"

namespace sinewright::plot {

namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using simulation::Closeness;
using simulation::PackedPart;
using Rows = std::vector<std::vector<double>>;

struct Look {
  const char* what;
  const char* fill;
  const char* edge;
  double solid;  // how little shows through
};
constexpr std::array<Look, 6> looks = {{{"print", "#f3ece0", "#8a7f6c", 0.6},
                                        {"motor", "#14507a", "#0d3350", 0.75},
                                        {"gearhead", "#1670e3", "#0d3350", 0.65},
                                        {"pulley", "#ffa100", "#7a4e00", 0.7},
                                        {"sensor", "#77ca6f", "#2f6b29", 0.7},
                                        {"else", "#cfacf2", "#5d3f7d", 0.7}}};

std::size_t look_of(const PackedPart& part) {
  if (part.kind == PackedPart::Kind::print) return 0;
  for (std::size_t k = 1; k + 1 < looks.size(); ++k)
    if (part.kind == PackedPart::Kind::shaft && part.part == looks[k].what) return k;
  return looks.size() - 1;
}

// A way to look at the world: what goes to the right and up on the paper, and how the axes are called.
struct View {
  Matrix3d turn;  // paper coordinates = turn · world; its third row points to the viewer
  const char *across, *up, *title;
  bool mirrored = false, upside_down = false;  // axes whose numbers fall: paper coordinate = −world coordinate
};

std::array<View, 3> views() {
  Matrix3d side = Matrix3d::Identity(), back, tip;
  back << 1, 0, 0, 0, 0, -1, 0, 1, 0;
  tip << 0, 0, -1, 0, 1, 0, 1, 0, 0;
  return {{{side, "x [mm]", "y [mm]", "from the side", false, false},
           {back, "x [mm]", "z [mm]", "from the back of the hand", false, true},
           {tip, "z [mm]", "y [mm]", "from the fingertips", true, false}}};
}

std::string list_line(std::size_t number, const Closeness& pair) {
  const std::string amount = pair.smallest < 0 ? fmt::format("{:.2f} mm deep", -1e3 * pair.smallest) : fmt::format("{:.2f} mm apart", 1e3 * pair.smallest);
  return fmt::format("{}  {} · {}: {}{}", number, shortened(pair.a, 34), shortened(pair.b, 34), amount,
                     pair.when_straight ? "" : ", at " + shortened(pair.posture, 26));
}

}  // namespace

Script packing_figure(const simulation::System& system, const simulation::PackingReport& report) {
  const dynamics::Kinematics kinematics =
      simulation::kinematics_at(system, report.postures.front().q);
  std::vector<Placed> pose;
  for (const int link : system.link_of_body) {
    const auto& p = kinematics.pose[static_cast<std::size_t>(link)];
    pose.push_back({p.R, p.p});
  }
  std::vector<Closeness> pairs = report.collisions;
  pairs.insert(pairs.end(), report.narrow.begin(), report.narrow.end());

  const auto all_views = views();
  std::array<std::array<std::vector<Rows>, looks.size()>, 3> shapes;
  std::array<std::vector<Rows>, 3> cords;
  std::array<std::array<Rows, 2>, 3> marks;  // collisions, narrow places
  Vector3d low = Vector3d::Constant(std::numeric_limits<double>::infinity()), high = -low;
  for (std::size_t v = 0; v < 3; ++v) {
    const Matrix3d& turn = all_views[v].turn;
    const auto take = [&](double x, double y) {
      const Vector3d world = turn.transpose() * Vector3d(x, y, 0), seen = (turn.row(0) + turn.row(1)).cwiseAbs().transpose();
      for (int i = 0; i < 3; ++i)
        if (seen[i] > 0) low[i] = std::min(low[i], world[i]), high[i] = std::max(high[i], world[i]);
      return std::vector<double>{1e3 * x, 1e3 * y};
    };
    for (const PackedPart& part : report.parts.parts) {
      const Placed& at = pose[static_cast<std::size_t>(part.body)];
      for (const model::Shape& shape : part.shapes) {
        Rows rows;
        for (const auto& [x, y] : outline(shape, {turn * at.R, turn * at.p})) rows.push_back(take(x, y));
        if (!rows.empty()) rows.push_back(rows.front());
        shapes[v][look_of(part)].push_back(std::move(rows));
      }
    }
    for (std::size_t c = 0; c < system.cords.size(); ++c) {
      Rows rows;
      for (const simulation::CordPiece& piece : simulation::cord_pieces(system, kinematics, c)) {
        const Vector3d from = turn * piece.from, to = turn * piece.to;
        if (rows.empty()) rows.push_back(take(from.x(), from.y()));
        rows.push_back(take(to.x(), to.y()));
      }
      cords[v].push_back(std::move(rows));
    }
    for (std::size_t i = 0; i < pairs.size(); ++i) {
      if (!pairs[i].when_straight) continue;  // it is somewhere else then
      const Vector3d p = turn * pairs[i].where;
      marks[v][pairs[i].smallest < 0 ? 0 : 1].push_back({1e3 * p.x(), 1e3 * p.y(), static_cast<double>(i + 1)});
    }
  }
  if (!(low.x() <= high.x())) low = Vector3d::Zero(), high = Vector3d::Constant(10e-3);

  // One scale for all views; margins of 6 mm around.
  const Vector3d from = 1e3 * low - Vector3d::Constant(6), size = 1e3 * (high - low) + Vector3d::Constant(12);
  constexpr double left = 0.85, between = 0.95, right = 0.3, head = 0.95, foot = 1.15;
  const double scale = std::min(11.0 / (size.x() + size.z()), 8.0 / (size.y() + size.z()));  // [inch/mm]
  const double width = std::max(12.0, left + between + right + scale * (size.x() + size.z())),
               height = head + foot + between + scale * (size.y() + size.z());
  Script script("packing", "Packing, joints straight", system.model().name, width, height);
  for (std::size_t v = 0; v < 3; ++v) {
    const std::vector<std::string> corners = {"paper, to the right [mm]", "paper, up [mm]"};
    for (std::size_t k = 0; k < looks.size(); ++k) script.lines(fmt::format("shape{}_{}", v, k), corners, shapes[v][k]);
    script.lines(fmt::format("cord{}", v), corners, cords[v]);
    script.block(fmt::format("collision{}", v), {corners[0], corners[1], "number"}, marks[v][0]);
    script.block(fmt::format("narrow{}", v), {corners[0], corners[1], "number"}, marks[v][1]);
  }
  script.line("set multiplot\nunset key\nset border 15 lc rgb '#a0a0a0' lw 0.7\nset grid lt 1 lc rgb '#e8e8e8' lw 0.5");

  // The list, and samples of the looks at the foot.
  const double list_x = left + between + scale * size.x(), list_y = height - head - 0.1;
  int label = 1;
  const auto write = [&](double x, double y, const std::string& words, const char* style) {
    script.line(fmt::format("set label {} {} at screen {:.5f}, screen {:.5f} left {} noenhanced", label++, gnuplot_text(words), x / width, y / height, style));
  };
  const std::size_t room = std::max<std::size_t>(3, static_cast<std::size_t>(std::max(0.0, scale * size.z() / 0.22))), shown = std::min(pairs.size(), room - 1);
  write(list_x - 0.6, list_y, pairs.empty() ? fmt::format("no collision, nothing nearer than {:.3g} mm", 1e3 * report.clearance) : "collisions, then what is narrow", "font ',11'");
  for (std::size_t i = 0; i < shown; ++i)
    write(list_x - 0.6, list_y - 0.22 * static_cast<double>(i + 1), list_line(i + 1, pairs[i]), pairs[i].smallest < 0 ? "font ',9' textcolor rgb '#b3001b'" : "font ',9' textcolor rgb '#8a5a00'");
  if (shown < pairs.size()) write(list_x - 0.6, list_y - 0.22 * static_cast<double>(shown + 1), fmt::format("and {} more", pairs.size() - shown), "font ',9'");
  double x = left;
  const auto sample = [&](const std::string& words, const std::string& fill, const std::string& edge, double solid) {
    script.line(fmt::format("set object {} rectangle from screen {:.5f}, screen {:.5f} to screen {:.5f}, screen {:.5f} fc rgb '{}' fs solid {} border rgb '{}' lw 1",
                            label, x / width, 0.22 / height, (x + 0.3) / width, 0.38 / height, fill, solid, edge));
    write(x + 0.38, 0.3, words, "font ',10'");
    x += 0.65 + 0.085 * static_cast<double>(character_count(words));
  };
  for (const Look& look : looks) sample(look.what, look.fill, look.edge, look.solid);
  script.line(fmt::format("set arrow 1 from screen {:.5f}, screen {:.5f} to screen {:.5f}, screen {:.5f} nohead lc rgb '#982a00' lw 1.6", x / width, 0.3 / height, (x + 0.3) / width, 0.3 / height));
  write(x + 0.38, 0.3, "cord", "font ',10'");
  x += 1.1;
  script.line(fmt::format("set label {} '' at screen {:.5f}, screen {:.5f} point pt 6 ps 1.6 lc rgb '#b3001b' lw 1.6", label++, (x + 0.1) / width, 0.3 / height));
  write(x + 0.3, 0.3, "collision", "font ',10'");
  x += 1.3;
  script.line(fmt::format("set label {} '' at screen {:.5f}, screen {:.5f} point pt 6 ps 1.6 lc rgb '#c98500' lw 1.6", label++, (x + 0.1) / width, 0.3 / height));
  write(x + 0.3, 0.3, "narrow", "font ',10'");

  struct Panel {
    double x, y, w, h;          // on the page [inch]
    double x0, x1, y0, y1;      // on the paper [mm]
  };
  const double side_h = scale * size.y(), back_h = scale * size.z(), side_w = scale * size.x(), tip_w = scale * size.z();
  const std::array<Panel, 3> panels = {{
      {left, foot, side_w, side_h, from.x(), from.x() + size.x(), from.y(), from.y() + size.y()},
      {left, foot + side_h + between, side_w, back_h, from.x(), from.x() + size.x(), -(from.z() + size.z()), -from.z()},
      {left + side_w + between, foot, tip_w, side_h, -(from.z() + size.z()), -from.z(), from.y(), from.y() + size.y()},
  }};
  const double widest = size.maxCoeff(), tic = widest > 250 ? 50 : widest > 70 ? 20 : 10;
  // gnuplot reads off the paper's coordinate; where the world's runs the other way, the tics are named by hand.
  const auto tics = [&](const char* axis, double low_end, double high_end, bool falling) {
    std::string list;
    for (double t = std::ceil(low_end / tic) * tic; t <= high_end; t += tic) list += fmt::format("{}'{:g}' {:g}", list.empty() ? "" : ", ", falling ? 0.0 - t : t, t);
    script.line(fmt::format("set {}tics ({}) font ',9'", axis, list));
  };
  for (std::size_t v = 0; v < 3; ++v) {
    const Panel& p = panels[v];
    const View& view = all_views[v];
    script.line(fmt::format("\n# {}", view.title));
    script.line(fmt::format("set lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset bmargin at screen {:.5f}\nset tmargin at screen {:.5f}", p.x / width,
                            (p.x + p.w) / width, p.y / height, (p.y + p.h) / height));
    script.line(fmt::format("set xrange [{:.3f}:{:.3f}]\nset yrange [{:.3f}:{:.3f}]", p.x0, p.x1, p.y0, p.y1));
    tics("x", p.x0, p.x1, view.mirrored);
    tics("y", p.y0, p.y1, view.upside_down);
    script.line(fmt::format("set xlabel '{}' offset 0,0.5 font ',10'\nset ylabel '{}' offset 1 font ',10'\nset title '{}' offset 0,-0.6 font ',11'", view.across, view.up, view.title));
    if (v > 0) script.line("unset label\nunset object\nunset arrow");
    std::string plot = "plot ";
    const auto add = [&](const std::string& element) { plot += (plot.size() > 5 ? ", \\\n     " : "") + element; };
    for (std::size_t k = 0; k < looks.size(); ++k) {
      if (shapes[v][k].empty()) continue;
      add(fmt::format("$shape{}_{} using 1:2 with filledcurves closed fc rgb '{}' fs transparent solid {} notitle", v, k, looks[k].fill, looks[k].solid));
      add(fmt::format("$shape{}_{} using 1:2 with lines lc rgb '{}' lw 0.8 notitle", v, k, looks[k].edge));
    }
    add(fmt::format("$cord{} using 1:2 with lines lc rgb '#982a00' lw 1.4 notitle", v));
    for (const auto& [name, kind, shade] : {std::tuple{"collision", 0, "#b3001b"}, std::tuple{"narrow", 1, "#c98500"}}) {
      if (marks[v][static_cast<std::size_t>(kind)].empty()) continue;  // gnuplot 5.4 crashes on labels without a single finite row
      add(fmt::format("${}{} using 1:2 with points pt 6 ps 1.8 lc rgb '{}' lw 1.8 notitle", name, v, shade));
      add(fmt::format("${}{} using 1:2:(sprintf('%d', $3)) with labels offset 1.1,0.7 font ',9' textcolor rgb '{}' notitle", name, v, shade));
    }
    script.line(plot);
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
