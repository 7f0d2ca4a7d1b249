// The yield over where each bound is put, and what goes with failing.

#include <algorithm>
#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_marks.h"
#include "plot/yield_curve.h"

namespace sinewright::plot {

namespace {

std::string yield_words(const StudyView& view) {
  const study::Yield& yield = *view.findings.yield;
  return fmt::format("yield {:.1f} %, {:.3g} % interval {:.1f} to {:.1f} % ({} of {})", 100.0 * static_cast<double>(yield.met) / static_cast<double>(yield.of),
                     100 * view.table.confidence, 100 * yield.interval.low, 100 * yield.interval.high, counted(yield.met), counted(yield.of));
}

}  // namespace

std::vector<Script> yield_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  const std::vector<Bound> bounds = all_bounds(table);
  Sheet sheet;
  sheet.columns = bounds.size() > 1 ? 2 : 1;
  sheet.panel_width = 4.3, sheet.panel_height = 2.1;
  sheet.legend = {fmt::format("with lines lw 2.2 lc rgb '{}' title 'meet this bound and all others'", color(0)),
                  fmt::format("with boxes fs solid 1 noborder lc rgb '#c3d4e0' title {}", gnuplot_text(fmt::format("its {:.3g} % interval, at each place", 100 * table.confidence))),
                  fmt::format("with lines lw 1.4 dt 2 lc rgb '{}' title 'meet this bound'", color(1)), "with lines lw 1.4 lc rgb '#982a00' title 'where it is'"};
  sheet.legend_columns = sheet.columns == 2 ? 4 : 2;
  const std::size_t per_page = 4 * sheet.columns;
  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < bounds.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, bounds.size());
    sheet.rows = (end - begin + sheet.columns - 1) / sheet.columns;
    Script script(page_name("yield", scripts.size()), "Yield if one bound stood elsewhere: " + yield_words(view), view.identity, std::max(sheet.width(), 8.5), sheet.height());
    Sheet page = sheet;
    page.right = std::max(sheet.width(), 8.5) - (sheet.width() - sheet.right);
    for (std::size_t b = begin; b < end; ++b) {
      const std::size_t number = b - begin;
      const Bound& bound = bounds[b];
      std::vector<std::vector<double>> rows;
      for (const YieldPoint& point : yield_curve(view, bound, 240))
        rows.push_back({point.bound, 100 * point.alone, 100 * point.all, 100 * point.interval.low, 100 * point.interval.high});
      script.block(fmt::format("curve{}", b + 1), {outcome_label(table, bound.outcome), "meet this bound [%]", "meet all [%]", "interval from [%]", "to [%]"}, rows);
      open_panel(script, page, number);
      const std::string label = fmt::format("{}: {}", outcome_label(table, bound.outcome), bound.at_least ? "at least" : "at most");
      script.line(fmt::format("set xrange [{:.10g}:{:.10g}]\nset yrange [0:104]\nset ytics 0,20,100\nset xlabel {} font ',11' noenhanced\nset ylabel 'yield [%]' font ',11'", rows.front()[0], rows.back()[0],
                              gnuplot_text(shortened(label, 52))));
      script.line(fmt::format("set arrow from first {0:.10g}, graph 0 to first {0:.10g}, graph 1 nohead lw 1.4 lc rgb '#982a00' front\n"
                              "set label {1} at first {0:.10g}, graph {2} {3} offset {4},0 font ',9' tc rgb '#982a00' noenhanced front",
                              bound.value, gnuplot_text(bound.text), 0.1, bound.value > 0.5 * (rows.front()[0] + rows.back()[0]) ? "right" : "left",
                              bound.value > 0.5 * (rows.front()[0] + rows.back()[0]) ? "-0.5" : "0.5"));
      plot_panel(script,
                 {fmt::format("$curve{} using 1:4:5 with filledcurves fs solid 1 lc rgb '#c3d4e0' notitle", b + 1), fmt::format("$curve{} using 1:2 with lines lw 1.4 dt 2 lc rgb '{}' notitle", b + 1, color(1)),
                  fmt::format("$curve{} using 1:3 with lines lw 2.2 lc rgb '{}' notitle", b + 1, color(0))});
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

Script cause_figure(const StudyView& view) {
  const study::Yield& yield = *view.findings.yield;
  const auto& keys = study::making_of(view.table);
  constexpr std::size_t most_rows = 30;
  std::vector<std::size_t> order(keys.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const bool told = yield.met > 0 && yield.met < yield.of;
  if (told) std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return yield.causes[a].distance > yield.causes[b].distance; });
  const std::size_t left_out = order.size() > most_rows ? order.size() - most_rows : 0;
  order.resize(order.size() - left_out);

  const std::size_t rows = std::max<std::size_t>(3, order.size());
  constexpr double width = 11, left = 2.3, bars = 3.6, fifths = 6.75;
  const double height = 1.95 + 0.34 * static_cast<double>(rows);
  Script script("causes", "What goes with failing: " + yield_words(view), view.identity, width, height);
  const double n = static_cast<double>(order.size());
  const auto frame = [&](double from, double to) {
    script.line(fmt::format("set lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset tmargin at screen {:.5f}\nset bmargin at screen {:.5f}\nset yrange [{:.4g}:{:.4g}]", from / width, to / width,
                            1 - 1.05 / height, 0.8 / height, n - static_cast<double>(rows) - 0.6, n - 0.4));
  };
  if (!told) {
    frame(left, width - 0.3);
    script.line("unset xtics\nunset ytics\nunset border\nunset grid\nset key off");
    say_in_panel(script, yield.met == yield.of ? "no failure, so no cause to be found" : "nothing passes, so no cause can be told from the rest");
    script.line("set xrange [0:1]\nplot NaN notitle");
    return script;
  }
  std::vector<std::vector<double>> signs, chances, cells;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const study::FailureCause& cause = yield.causes[order[i]];
    const double y = n - 1 - static_cast<double>(i);
    (cause.chance > 0.05 ? chances : signs).push_back({cause.distance, y, cause.chance, cause.side});
    for (std::size_t f = 0; f < cause.fail_share.size(); ++f)
      if (std::isfinite(cause.fail_share[f])) cells.push_back({static_cast<double>(f), y, 100 * cause.fail_share[f]});
    label_row(script, i + 1, keys[order[i]].name, 24, y, 11);
  }
  const std::vector<std::string> columns = {"distance", "place", "by chance", "side: above 0 fail high values"};
  script.block("signs", columns, signs);
  script.block("chances", columns, chances);
  script.block("cells", {"fifth", "place", "share that fails [%]"}, cells);
  script.line("set multiplot");
  frame(left, left + bars);
  script.line("set tics font ',10'\nunset ytics\nset grid xtics\nset xrange [0:1.35]\nset xtics 0,0.2,1");
  const std::string note = left_out > 0 ? fmt::format("   ({} smaller ones left out)", left_out) : "";
  script.line(fmt::format("set xlabel 'distance between fails and passes [-]{}' font ',11'", note));
  script.line(fmt::format("set key at screen {:.5f}, screen {:.5f} left top horizontal Left reverse samplen 1.5 width 2 font ',10' noenhanced", 0.2 / width, 1 - 0.6 / height));
  const std::string side = "($4 > 0.1 ? 'high values fail' : $4 < -0.1 ? 'low values fail' : 'ends or middle fail')";
  std::string command = fmt::format("plot $signs using (0.5*$1):2:(0):1:($2-0.3):($2+0.3) with boxxyerror fs solid 1 noborder lc rgb '{}' title 'hardly by chance (below 5 %)', \\\n"
                                    "     $chances using (0.5*$1):2:(0):1:($2-0.3):($2+0.3) with boxxyerror fs solid 1 noborder lc rgb '#c3c9cd' title 'may be by chance'",
                                    color(0));
  // gnuplot 5.4 crashes on labels of a block without numbers.
  if (!signs.empty()) command += fmt::format(", \\\n     $signs using 1:2:(sprintf('%.2f  ', $1).{}) with labels left offset 0.6,0 font ',9' notitle", side);
  if (!chances.empty()) command += ", \\\n     $chances using 1:2:(sprintf('%.2f  no sign of it', $1)) with labels left offset 0.6,0 font ',9' notitle";
  script.line(command);
  script.line("unset label\nset key off\nunset grid");
  frame(fifths, width - 0.9);
  script.line("set xrange [-0.5:4.5]\nset xtics ('lowest' 0, '2nd' 1, '3rd' 2, '4th' 3, 'highest' 4) scale 0\nset border 0\nset xlabel 'share that fails in each fifth of the values [%]' font ',11'");
  script.line("set palette defined (0 '#f6f3ec', 0.5 '#e8a87c', 1 '#982a00')\nset cbrange [0:100]\nset cbtics 0,25,100 font ',9'");
  script.line("plot $cells using 1:2:($1-0.49):($1+0.49):($2-0.42):($2+0.42):3 with boxxyerror fs solid 1 noborder lc palette notitle, \\\n"
              "     $cells using 1:2:($3 < 60 ? sprintf('%.0f', $3) : '') with labels tc rgb '#20282d' font ',10' notitle, \\\n"
              "     $cells using 1:2:($3 < 60 ? '' : sprintf('%.0f', $3)) with labels tc rgb '#ffffff' font ',10' notitle");
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
