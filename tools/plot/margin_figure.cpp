// What breaks first: one bar a margin, the smallest on top, on a logarithmic axis with a line at 1.

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "plot/figures.h"

namespace sinewright::plot {

Script margin_figure(const Subject& subject) {
  constexpr std::size_t most_rows = 30;  // what a page holds; the safest ones are left out
  constexpr double least_shown = 1e-3, most_shown = 1e4;
  struct Bar {
    std::string name;
    double ratio = 0;
  };
  std::vector<Bar> bars;
  std::size_t unloaded = 0;
  for (const auto& value : subject.record.margins.values) {
    if (std::isfinite(value.ratio))
      bars.push_back({value.check, value.ratio});
    else
      ++unloaded;
  }
  const std::size_t left_out = bars.size() > most_rows ? bars.size() - most_rows : 0;
  bars.resize(std::min(bars.size(), most_rows));

  constexpr double width = 11, row = 0.3;
  const std::size_t rows = std::max<std::size_t>(4, bars.size());
  const double height = 1.75 + row * static_cast<double>(rows), left = 4.5;
  Script script("margins", "What breaks first: capacity / demand, each at its worst instant", subject.identity, width, height);
  const double n = static_cast<double>(bars.size());
  double low = 0.5, high = 2;
  std::vector<std::vector<double>> lost, held;
  for (std::size_t i = 0; i < bars.size(); ++i) {
    const double shown = std::clamp(bars[i].ratio, least_shown, most_shown);
    low = std::min(low, 0.7 * shown), high = std::max(high, 2.2 * shown);
    (bars[i].ratio < 1 ? lost : held).push_back({shown, n - 1 - static_cast<double>(i), bars[i].ratio});
    label_row(script, i + 1, bars[i].name, 60, n - 1 - static_cast<double>(i));
  }
  script.line(
      fmt::format("set lmargin at screen {:.5f}\nset rmargin at screen 0.96\nset tmargin at screen {:.5f}\n"
                  "set bmargin at screen {:.5f}",
                  left / width, 1 - 0.8 / height, 0.75 / height));
  script.line(fmt::format("set logscale x\nset xrange [{:.4g}:{:.4g}]\nset yrange [{:.4g}:{:.4g}]", low, high,
                          n - static_cast<double>(rows) - 0.7, n - 0.3));
  std::string note = fmt::format("{} not checked, since not described", subject.record.margins.not_checked.size());
  if (unloaded > 0) note += fmt::format("; {} without any load", unloaded);
  if (left_out > 0) note += fmt::format("; {} larger ones left out", left_out);
  script.line(fmt::format("set xlabel {} noenhanced", gnuplot_text("margin [-]     (" + note + ")")));
  script.line(
      "unset ytics\nset grid xtics\nset key off\nset arrow 1 from first 1, graph 0 to first 1, graph 1 nohead lw 2 lc rgb "
      "'#404040' front");
  std::string command;
  const auto draw_bars = [&](const std::string& name, const std::vector<std::vector<double>>& list, const std::string& shade) {
    if (list.empty()) return;
    script.block(name, {"margin shown", "place", "margin"}, list);
    command += fmt::format(
        ", \\\n     ${0} using 1:2:({2:.6g}):1:($2-0.34):($2+0.34) with boxxyerror lc rgb '{1}' fillstyle solid 1 "
        "noborder, \\\n     ${0} using ($1 < 1 ? 1 : $1):2:(sprintf('%.3g', $3)) with labels left offset 0.7,0 font ',11'",
        name, shade, low);
  };
  draw_bars("lost", lost, color(1));
  draw_bars("held", held, color(0));
  if (command.empty()) {
    script.line("set label 1 'no part is described well enough to be checked' at graph 0.5, graph 0.5 center");
    command = ", \\\n     NaN notitle";
  }
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
  return script;
}

}  // namespace sinewright::plot
