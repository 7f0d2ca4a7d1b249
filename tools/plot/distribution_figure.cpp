// How each outcome of the made things is spread: bars, the cumulative share, and where the bounds stand.

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_marks.h"
#include "study/sample_statistics.h"

namespace sinewright::plot {

std::vector<Script> distribution_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  const std::uint64_t first = view.findings.first, last = view.findings.last;
  Sheet sheet;
  sheet.columns = table.outcomes.size() > 1 ? 2 : 1;
  sheet.panel_width = 4.2, sheet.panel_height = 2.1;
  sheet.left = 0.9, sheet.between = 1.6, sheet.right = 0.85;
  sheet.legend = {fmt::format("with boxes fs solid 1 noborder lc rgb '#7ba3bd' title 'share in each step, left'"), fmt::format("with lines lw 2 lc rgb '{}' title 'share at or below, right'", color(0)),
                  fmt::format("with {} title 'as drawn'", row_mark::kDrawn)};
  for (auto& entry : bound_legend(!all_bounds(table).empty())) sheet.legend.push_back(entry);
  const std::size_t per_page = 4 * sheet.columns;
  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < table.outcomes.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, table.outcomes.size());
    sheet.rows = (end - begin + sheet.columns - 1) / sheet.columns;
    const std::string of = table.kind == "optimise" && table.chosen ? fmt::format(" of design {} as it would be made", *table.chosen) : " of what is made";
    Script script(page_name("distribution", scripts.size()), fmt::format("Spread{}", of), view.identity, sheet.width(), sheet.height());
    for (std::size_t c = begin; c < end; ++c) {
      const std::size_t number = c - begin;
      const auto& outcome = table.outcomes[c];
      const Scale scale = scale_of(outcome);
      std::vector<double> values(outcome.values.begin() + static_cast<std::ptrdiff_t>(first), outcome.values.begin() + static_cast<std::ptrdiff_t>(last));
      for (double& value : values) value = scale(value);
      const std::vector<double> sorted = study::sorted_numbers(values);
      const std::vector<Bound> bounds = bounds_on(table, c);
      const study::Histogram histogram = study::histogram(values);
      const auto n = static_cast<double>(values.size());
      const double drawn = scale(table.drawn[c]);
      std::vector<double> seen = sorted;
      // The design as drawn belongs in the picture unless what is made lies far from it.
      if (const Extent with = extent_of(std::vector<double>{histogram.low, histogram.high, drawn}); !sorted.empty() && histogram.high - histogram.low > 0.25 * (with.high - with.low)) seen.push_back(drawn);
      const Extent extent = extent_of(seen, bounds);
      open_panel(script, sheet, number);
      draw_bounds(script, bounds, extent, true);
      script.line(fmt::format("set xrange [{:.10g}:{:.10g}]\nset xlabel {} font ',11' noenhanced", extent.low, extent.high, gnuplot_text(shortened(outcome_label(table, c), 50))));
      script.line("set ylabel 'share [%]' font ',10'\nset y2label 'cumulative [%]' font ',10'\nset y2range [0:120]\nset y2tics 0,25,100 font ',10' textcolor rgb '#202020'\nset border 11");
      if (histogram.counts.empty()) {
        script.line("set yrange [0:1]");
        say_in_panel(script, "none has it");
        plot_panel(script, {});
        continue;
      }
      const double bins = static_cast<double>(histogram.counts.size());
      const bool alike = !(histogram.high > histogram.low);
      const double width = alike ? 0.04 * (extent.high - extent.low) : (histogram.high - histogram.low) / bins;
      const double left = alike ? histogram.low - 0.5 * width : histogram.low;
      std::vector<std::vector<double>> bars, steps;
      double most = 0;
      for (std::size_t b = 0; b < histogram.counts.size(); ++b) {
        const double share = 100 * static_cast<double>(histogram.counts[b]) / n;
        bars.push_back({left + width * static_cast<double>(b), left + width * static_cast<double>(b + 1), share});
        most = std::max(most, share);
      }
      // Of many values every so many-th is enough for the line.
      const std::size_t step = std::max<std::size_t>(1, sorted.size() / 500);
      steps.push_back({extent.low, 0});
      for (std::size_t i = 0; i < sorted.size(); i += step) steps.push_back({sorted[i], 100 * static_cast<double>(i + 1) / n});
      steps.push_back({sorted.back(), 100 * static_cast<double>(sorted.size()) / n});
      steps.push_back({extent.high, 100 * static_cast<double>(sorted.size()) / n});
      script.block(fmt::format("bars{}", c + 1), {"from, " + outcome_label(table, c), "to", "share [%]"}, bars);
      script.block(fmt::format("steps{}", c + 1), {outcome_label(table, c), "share at or below [%]"}, steps);
      script.line(fmt::format("set yrange [0:{:.6g}]", 1.2 * most));
      if (sorted.size() < values.size())
        script.line(fmt::format("set label {} at graph 0.02, graph 0.94 left font ',9' noenhanced front", gnuplot_text(fmt::format("{} without it", counted(values.size() - sorted.size())))));
      if (std::isfinite(drawn) && drawn >= extent.low && drawn <= extent.high)
        script.line(fmt::format("set arrow from first {0:.10g}, graph 0 to first {0:.10g}, graph 1 nohead lw 1.2 dt 2 lc rgb '#404040' front", drawn));
      plot_panel(script,
                 {fmt::format("$bars{} using (0.5*($1+$2)):(0.5*$3):1:2:(0):3 with boxxyerror fs solid 1 border lc rgb '#ffffff' lc rgb '#7ba3bd' notitle", c + 1),
                  fmt::format("$steps{} using 1:2 axes x1y2 with steps lw 2 lc rgb '{}' notitle", c + 1, color(0))});
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

}  // namespace sinewright::plot
