// The pull that a grasp holds in many directions: round a plane as a closed curve, over the sphere as its two halves.

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "plot/figures.h"

namespace sinewright::plot {

namespace {

using std::numbers::pi;

constexpr double kWidth = 8, kHeight = 8;

Script begin(const record::LimitRecord& record) {
  return Script("limit", shortened(record.name, 70), "sinewright " + record.inputs.engine_version + " · design prediction, not certification",
                kWidth, kHeight);
}

std::string quantity_of(const record::LimitRecord& record) { return fmt::format("{} [{}]", record.quantity, record.unit); }

// A ring every 1, 2 or 5 times a power of ten, some four of them.
double ring_step(double most) {
  const double rough = most / 4, power = std::pow(10, std::floor(std::log10(rough)));
  for (const double part : {1.0, 2.0, 5.0})
    if (part * power >= rough) return part * power;
  return 10 * power;
}

const record::KeptLimit* least(const record::KeptLimit* from, std::size_t count) {
  const record::KeptLimit* found = nullptr;
  for (std::size_t i = 0; i < count; ++i)
    if (from[i].found && (!found || from[i].value < found->value)) found = &from[i];
  return found;
}

// Largest answer; what a run held to its end, where there is none at all.
double largest(const record::LimitRecord& record) {
  double most = 0;
  for (const auto& limit : record.limits)
    if (limit.found) most = std::max(most, limit.value);
  return most > 0 ? most : 1;
}

// What an axis of the plane is in the world, if it is one of the world's.
std::string axis_name(const std::array<double, 3>& direction) {
  static constexpr const char* names[] = {"x", "y", "z"};
  for (std::size_t a = 0; a < 3; ++a)
    if (std::abs(std::abs(direction[a]) - 1) < 1e-9) return fmt::format("{}{}", direction[a] > 0 ? "+" : "−", names[a]);
  return fmt::format("({:.2f}, {:.2f}, {:.2f})", direction[0], direction[1], direction[2]);
}

}  // namespace

Script direction_figure(const record::LimitRecord& record) {
  Script script = begin(record);
  const std::size_t n = record.axes.back().second.size(), curves = record.limits.size() / n;
  const double most = largest(record), step = ring_step(most), rim = step * std::ceil(1.02 * most / step);
  script.line("unset border\nunset xtics\nunset ytics\nunset grid\nset size ratio -1\nset key at screen 0.97, screen 0.055 right bottom Right samplen 1.5 noenhanced");
  script.line("set lmargin at screen 0.09\nset rmargin at screen 0.91\nset tmargin at screen 0.885\nset bmargin at screen 0.085");
  script.line(fmt::format("set xrange [{0:.6g}:{1:.6g}]\nset yrange [{0:.6g}:{1:.6g}]", -1.16 * rim, 1.16 * rim));
  int number = 0;
  for (double r = step; r < rim * (1 + 1e-9); r += step) {
    script.line(fmt::format("set object {} circle at 0,0 size {:.6g} fs empty border rgb '#c4c9cc' lw 0.7", ++number, r));
    script.line(fmt::format("set label {} '{:g}' at {:.6g}, {:.6g} left offset 0.3,0.4 tc rgb '#6a7378' font ',10'", number, r, r * std::cos(1.31), r * std::sin(1.31)));
  }
  for (int spoke = 0; spoke < 12; ++spoke) {
    const double a = pi * spoke / 6;
    script.line(fmt::format("set arrow {} from 0,0 to {:.6g},{:.6g} nohead lw 0.7 lc rgb '#dfe3e5'", spoke + 1, rim * std::cos(a), rim * std::sin(a)));
    std::string text = fmt::format("{}°", 30 * spoke);
    // Directions of the record that lie on the plane's own axes get the world's name.
    if (spoke % 3 == 0 && n % 4 == 0) text += " " + axis_name(record.limits[static_cast<std::size_t>(spoke / 3) * n / 4].direction);
    script.line(fmt::format("set label {} {} at {:.6g},{:.6g} center noenhanced font ',11'", 100 + spoke, gnuplot_text(text), 1.09 * rim * std::cos(a), 1.07 * rim * std::sin(a)));
  }
  std::string command;
  std::vector<std::vector<double>> beyond;
  for (std::size_t c = 0; c < curves; ++c) {
    std::vector<std::vector<double>> rows;
    for (std::size_t i = 0; i <= n; ++i) {
      const record::KeptLimit& limit = record.limits[c * n + i % n];
      const double a = 2 * pi * static_cast<double>(i % n) / static_cast<double>(n);
      const double r = limit.found ? limit.value : std::nan("");
      rows.push_back({r * std::cos(a), r * std::sin(a), r});
      if (!limit.found && i < n) beyond.push_back({rim * std::cos(a), rim * std::sin(a)});
    }
    const std::string name = fmt::format("curve{}", c + 1);
    script.block(name, {"across", "up", quantity_of(record)}, rows);
    const std::string title = curves > 1 ? record.axes[0].first + " " + record.limits[c * n].place[0] : record.quantity;
    command += fmt::format(", \\\n     ${} using 1:2 with linespoints pt 7 ps 0.7 lw 2 lc rgb '{}' title {}", name, color(c), gnuplot_text(title));
    if (const auto* worst = least(record.limits.data() + c * n, n)) {
      const auto i = static_cast<std::size_t>(worst - (record.limits.data() + c * n));
      const std::string name_of_worst = fmt::format("worst{}", c + 1);
      script.block(name_of_worst, {"across", "up", quantity_of(record)}, {rows[i]});
      command += fmt::format(", \\\n     ${} using 1:2 with points pt 6 ps 2.2 lw 2 lc rgb '{}' title {}", name_of_worst, color(c),
                             gnuplot_text(fmt::format("worst: {:.3g} {} at {}", worst->value, record.unit, worst->place.back())));
    }
  }
  if (!beyond.empty()) {
    script.block("beyond", {"across", "up"}, beyond);
    command += ", \\\n     $beyond using 1:2 with points pt 8 ps 1 lc rgb '#6a7378' title 'holds all that was tried'";
  }
  script.line(fmt::format("set label 200 {} at screen 0.03, screen 0.065 left noenhanced", gnuplot_text(quantity_of(record))));
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
  return script;
}

Script sphere_figure(const record::LimitRecord& record) {
  Script script = begin(record);
  // Lambert's projection keeps areas, so that the lattice looks as even as it is: each half from outside, z up.
  script.line("unset border\nunset xtics\nunset ytics\nunset grid\nset size ratio -1\nset key off\nset xrange [-2.95:2.95]\nset yrange [-1.9:1.75]");
  script.line("set lmargin at screen 0.02\nset rmargin at screen 0.86\nset tmargin at screen 0.885\nset bmargin at screen 0.05");
  const std::size_t n = record.axes.back().second.size();
  std::vector<std::vector<double>> rows, beyond, worst_row;
  const record::KeptLimit* worst = least(record.limits.data(), n);
  double low = 1e300, high = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const record::KeptLimit& limit = record.limits[i];
    const auto [x, y, z] = limit.direction;
    const bool front = z >= 0;
    // Looking against z the x axis points to the right, looking along it to the left.
    const double depth = std::sqrt(2 / (1 + std::abs(z))), across = (front ? x : -x) * depth, up = y * depth;
    const std::vector<double> row = {(front ? -1.48 : 1.48) + across, up, limit.value};
    if (!limit.found) {
      beyond.push_back({row[0], row[1]});
      continue;
    }
    rows.push_back(row);
    low = std::min(low, limit.value);
    high = std::max(high, limit.value);
    if (&limit == worst) worst_row = {row};
  }
  int number = 0;
  for (const double centre : {-1.48, 1.48}) script.line(fmt::format("set object {} circle at {},0 size 1.41421 fs empty border rgb '#9aa3a8'", ++number, centre));
  script.line(fmt::format("set label 1 {} at -1.48,1.6 center\nset label 2 {} at 1.48,1.6 center", gnuplot_text("toward +z: x to the right, y up"),
                          gnuplot_text("toward −z: x to the left, y up")));
  std::string command;
  if (!rows.empty()) {
    if (high <= low) high = low + std::max(1e-12, std::abs(low));
    script.line(fmt::format("set palette defined (0 '#1d3f5e', 0.5 '#7ba3bd', 1 '#f2f0e6')\nset cbrange [{:.6g}:{:.6g}]\nset cblabel {} noenhanced", low, high,
                            gnuplot_text(quantity_of(record))));
    script.block("directions", {"place", "place", quantity_of(record)}, rows);
    command += ", \\\n     $directions using 1:2:3 with points pt 7 ps 3 lc palette, \\\n"
               "     $directions using 1:2:(sprintf('%.3g', $3)) with labels offset 0,-1 font ',8' tc rgb '#20282d'";
  }
  if (!worst_row.empty()) {
    script.block("worst", {"place", "place", quantity_of(record)}, worst_row);
    command += fmt::format(", \\\n     $worst using 1:2 with points pt 6 ps 4 lw 2 lc rgb '{}'", color(1));
    script.line(fmt::format("set label 3 {} at 0,-1.75 center noenhanced",
                            gnuplot_text(fmt::format("worst: {:.3g} {} toward {}", worst->value, record.unit, worst->place.back()))));
  }
  if (!beyond.empty()) {
    script.block("beyond", {"place", "place"}, beyond);
    command += ", \\\n     $beyond using 1:2 with points pt 8 ps 1 lc rgb '#6a7378'";
    script.line("set label 4 'triangles: all that was tried is held' at screen 0.03, screen 0.04 left font ',10'");
  }
  script.line("plot " + (command.empty() ? std::string("NaN notitle") : command.substr(command.find_first_not_of(", \\\n"))));
  return script;
}

}  // namespace sinewright::plot
