#include "plot/sheet.h"

#include <algorithm>

#include <fmt/format.h>

namespace sinewright::plot {

namespace {

constexpr double kTitle = 0.62, kLegendRow = 0.24, kFoot = 0.12;  // [inch]

std::size_t legend_rows(const Sheet& sheet) {
  return (sheet.legend.size() + sheet.legend_columns - 1) / sheet.legend_columns;
}

// gnuplot breaks a legend's rows by the width of its plot: this one is as wide as the page.
void draw_legend(Script& script, const Sheet& sheet) {
  if (sheet.legend.empty()) return;
  const double width = sheet.width(), height = sheet.height();
  script.line(fmt::format("\n# Legend\nset lmargin at screen 0\nset rmargin at screen 1\nset tmargin at screen {0:.5f}\nset bmargin at screen {1:.5f}\n"
                          "unset border\nunset xtics\nunset ytics\nset xrange [0:1]\nset yrange [0:1]\n"
                          "set key at screen {2:.5f}, screen {0:.5f} left top horizontal Left reverse samplen 1.5 width 1 spacing 1.25 maxcols {3} font ',10' noenhanced",
                          1 - (kTitle - 0.04) / height, 1 - sheet.head() / height, 0.2 / width, sheet.legend_columns));
  script.line(fmt::format("plot keyentry {}, \\\n     NaN notitle", fmt::join(sheet.legend, ", \\\n     keyentry ")));
}

}  // namespace

double Sheet::head() const {
  return kTitle + kLegendRow * static_cast<double>(legend_rows(*this)) + (legend.empty() ? 0 : 0.08);
}
double Sheet::width() const {
  return left + static_cast<double>(columns) * panel_width + static_cast<double>(columns - 1) * between + right;
}
double Sheet::height() const {
  return head() + static_cast<double>(rows) * (above + panel_height + below) + kFoot;
}

void open_panel(Script& script, const Sheet& sheet, std::size_t number) {
  const auto row = static_cast<double>(number / sheet.columns), column = static_cast<double>(number % sheet.columns);
  const double width = sheet.width(), height = sheet.height();
  const double x = sheet.left + column * (sheet.panel_width + sheet.between);
  const double top = height - sheet.head() - row * (sheet.above + sheet.panel_height + sheet.below) - sheet.above;
  if (number == 0) {
    script.line("set multiplot");
    draw_legend(script, sheet);
  }
  script.line("unset arrow\nunset object\nunset logscale\nunset colorbox\nunset y2tics\nunset y2label\nset border 3\nset grid lt 1 lc rgb '#e0e0e0' lw 0.6");
  for (const char* axis : {"x", "y"}) script.line(fmt::format("set {}tics autofreq out scale 0.6 nomirror font ',10' textcolor rgb '#202020'", axis));
  if (number > 0 || !sheet.legend.empty()) script.line("unset label");  // the heading is written once
  script.line(fmt::format("\n# Panel {}\nset lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset tmargin at screen {:.5f}\nset bmargin at screen {:.5f}",
                          number + 1, x / width, (x + sheet.panel_width) / width, top / height, (top - sheet.panel_height) / height));
  script.line("unset xlabel\nunset ylabel\nset format x '%g'\nset format y '%g'");
  script.line("set key off");
}

void plot_panel(Script& script, const std::vector<std::string>& elements) {
  script.line(elements.empty() ? "plot NaN notitle" : fmt::format("plot {}", fmt::join(elements, ", \\\n     ")));
}

void close_sheet(Script& script) {
  script.line("unset multiplot");
}

void title_panel(Script& script, const std::string& title) {
  script.line(fmt::format("set label 900 {} at graph 0, graph 1 left offset 0,0.8 font ',11' noenhanced", gnuplot_text(title)));
}

void say_in_panel(Script& script, const std::string& words) {
  script.line(fmt::format("set label {} at graph 0.5, graph 0.5 center font ',11' noenhanced", gnuplot_text(words)));
}

}  // namespace sinewright::plot
