// How much of each outcome's variance each key causes: by itself, and in all.

#include <algorithm>
#include <cmath>
#include <numeric>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_marks.h"

namespace sinewright::plot {

std::vector<Script> index_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  constexpr std::size_t most_keys = 24;
  const std::size_t shown_keys = std::min(table.varied.size(), most_keys);
  Sheet sheet;
  sheet.columns = table.outcomes.size() > 1 ? 2 : 1;
  sheet.panel_width = 3.2, sheet.panel_height = std::max(1.0, 0.4 * static_cast<double>(shown_keys));
  std::size_t longest = 4;
  for (const auto& key : table.varied) longest = std::max(longest, std::min<std::size_t>(20, character_count(key.name)));
  sheet.left = 0.3 + 0.085 * static_cast<double>(longest), sheet.between = sheet.left + 0.4, sheet.right = 0.4, sheet.above = 0.4;
  sheet.legend = {fmt::format("with boxes fs solid 1 noborder lc rgb '{}' title 'by itself (first order)'", color(0)), "with boxes fs solid 1 noborder lc rgb '#9dbad0' title 'in all, with interplay (total)'",
                  fmt::format("with lines lw 1.4 lc rgb '#000000' title {}", gnuplot_text(fmt::format("{:.3g} % interval", 100 * table.confidence)))};
  sheet.legend_columns = sheet.columns == 2 ? 3 : 2;
  const std::size_t per_page = std::max<std::size_t>(1, static_cast<std::size_t>(9 / (sheet.panel_height + 1.05))) * sheet.columns;

  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < table.outcomes.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, table.outcomes.size());
    Sheet page = sheet;
    page.rows = (end - begin + page.columns - 1) / page.columns;
    const double width = std::max(page.width(), 8.0);
    page.right += width - page.width();
    Script script(page_name("indices", scripts.size()), "Share of each outcome's variance that each key causes", view.identity, width, page.height());
    for (std::size_t c = begin; c < end; ++c) {
      const std::size_t number = c - begin;
      const study::SensitivityResult& result = view.findings.sensitivity[c];
      open_panel(script, page, number);
      title_panel(script, shortened(outcome_title(table, c), 40));
      if (!(result.variance > 0)) {
        script.line("set xrange [0:1]\nset yrange [0:1]\nunset ytics");
        say_in_panel(script, result.used > 0 ? "does not vary" : "too few rows have it");
        plot_panel(script, {});
        continue;
      }
      std::vector<std::size_t> order(table.varied.size());
      std::iota(order.begin(), order.end(), std::size_t{0});
      const auto total = [&](std::size_t k) { return std::isnan(result.keys[k].total) ? -1.0 : result.keys[k].total; };
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return total(a) > total(b); });
      order.resize(shown_keys);
      std::vector<std::vector<double>> rows;
      double low = 0, high = 1;
      for (std::size_t i = 0; i < order.size(); ++i) {
        const study::SensitivityIndex& index = result.keys[order[i]];
        const double y = static_cast<double>(order.size() - 1 - i);
        rows.push_back({y, index.first, index.first_interval.low, index.first_interval.high, index.total, index.total_interval.low, index.total_interval.high});
        for (std::size_t column = 1; column < 7; ++column)
          if (std::isfinite(rows.back()[column])) low = std::min(low, rows.back()[column]), high = std::max(high, rows.back()[column]);
        label_row(script, i + 1, table.varied[order[i]].name, 20, y, 10);
      }
      const std::string block = fmt::format("indices{}", c + 1);
      script.block(block, {"place", "first", "from", "to", "total", "from", "to"}, rows);
      std::string note = "share of the variance [-]";
      if (result.dropped > 0) note += fmt::format("   ({} of {} base points left out)", counted(result.dropped), counted(result.dropped + result.used));
      if (shown_keys < table.varied.size()) note += fmt::format("   ({} smaller ones left out)", table.varied.size() - shown_keys);
      script.line(fmt::format("set xrange [{:.4g}:{:.4g}]\nset yrange [-0.6:{:.1f}]\nunset ytics\nset xlabel {} font ',10' noenhanced", low < 0 ? 1.05 * low - 0.02 : 0.0, high + 0.05,
                              static_cast<double>(order.size()) - 0.4, gnuplot_text(note)));
      plot_panel(script,
                 {fmt::format("${} using (0.5*$2):($1+0.17):(0):2:($1+0.02):($1+0.34) with boxxyerror fs solid 1 noborder lc rgb '{}' notitle", block, color(0)),
                  fmt::format("${} using (0.5*$5):($1-0.17):(0):5:($1-0.34):($1-0.02) with boxxyerror fs solid 1 noborder lc rgb '#9dbad0' notitle", block),
                  fmt::format("${} using 2:($1+0.18):3:4 with xerrorbars pt 0 lw 1.4 lc rgb '#000000' notitle", block),
                  fmt::format("${} using 5:($1-0.18):6:7 with xerrorbars pt 0 lw 1.4 lc rgb '#000000' notitle", block)});
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

std::vector<Script> effect_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  constexpr std::size_t most_keys = 24;
  const std::size_t shown_keys = std::min(table.varied.size(), most_keys);
  Sheet sheet;
  sheet.columns = 2;
  sheet.panel_width = 3.9, sheet.panel_height = std::max(2.0, 0.3 * static_cast<double>(shown_keys));
  std::size_t longest = 4;
  for (const auto& key : table.varied) longest = std::max(longest, std::min<std::size_t>(20, character_count(key.name)));
  sheet.left = 0.3 + 0.085 * static_cast<double>(longest), sheet.between = 1.1, sheet.right = 0.4, sheet.above = 0.4;
  sheet.legend = {fmt::format("with boxes fs solid 1 noborder lc rgb '{}' title 'more of the key, more of the outcome'", color(0)), fmt::format("with boxes fs solid 1 noborder lc rgb '{}' title 'more of the key, less of the outcome'", color(1)),
                  "with boxes fs empty lc rgb '#000000' title 'mean size of the change, whichever its sign'",
                  "with lines lw 1 dt 3 lc rgb '#606060' title 'deviation equal to the size (steep), a tenth of it (flat)'"};
  sheet.legend_columns = 2;
  const std::size_t per_page = std::max<std::size_t>(1, static_cast<std::size_t>(10 / (sheet.panel_height + 1.05)));

  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < table.outcomes.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, table.outcomes.size());
    sheet.rows = end - begin;
    Script script(page_name("effects", scripts.size()), "Change of each outcome over the whole spread of each key", view.identity, sheet.width(), sheet.height());
    for (std::size_t c = begin; c < end; ++c) {
      const std::size_t number = 2 * (c - begin);
      const auto& effects = view.findings.screening[c];
      const auto& outcome = table.outcomes[c];
      const double factor = scale_of(outcome).factor;  // changes have no zero of their own
      const std::string unit = outcome.shown_in == "1" || outcome.shown_in.empty() ? "" : fmt::format(" [{}]", outcome.shown_in);
      std::vector<std::size_t> order(table.varied.size());
      std::iota(order.begin(), order.end(), std::size_t{0});
      const auto size = [&](std::size_t k) { return std::isnan(effects[k].magnitude) ? -1.0 : effects[k].magnitude; };
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
      order.resize(shown_keys);
      std::vector<std::vector<double>> rows;
      std::uint64_t dropped = 0;
      double most = 0, most_deviation = 0;
      for (std::size_t i = 0; i < order.size(); ++i) {
        const study::ElementaryEffects& effect = effects[order[i]];
        rows.push_back({static_cast<double>(order.size() - 1 - i), factor * effect.mean, factor * effect.magnitude, factor * effect.deviation});
        if (std::isfinite(effect.magnitude)) most = std::max(most, factor * effect.magnitude);
        if (std::isfinite(effect.deviation)) most_deviation = std::max(most_deviation, factor * effect.deviation);
        dropped += effect.dropped;
      }
      const std::string block = fmt::format("effects{}", c + 1);
      script.block(block, {"place", "mean", "mean size", "deviation"}, rows);
      open_panel(script, sheet, number);
      title_panel(script, shortened(outcome_title(table, c), 44));
      if (!(most > 0)) {
        script.line("set xrange [0:1]\nset yrange [0:1]\nunset ytics");
        const bool none = std::none_of(effects.begin(), effects.end(), [](const auto& e) { return e.used > 0; });
        say_in_panel(script, none ? "too few rows have it" : "does not change");
        plot_panel(script, {});
        open_panel(script, sheet, number + 1);
        script.line("set xrange [0:1]\nset yrange [0:1]\nunset xtics\nunset ytics\nunset grid\nset border 0");
        plot_panel(script, {});
        continue;
      }
      for (std::size_t i = 0; i < order.size(); ++i) label_row(script, i + 1, table.varied[order[i]].name, 20, static_cast<double>(order.size() - 1 - i), 10);
      std::string note = "mean change" + unit;
      if (dropped > 0) note += fmt::format("   ({} steps without it)", counted(dropped));
      if (shown_keys < table.varied.size()) note += fmt::format("   ({} smaller ones left out)", table.varied.size() - shown_keys);
      script.line(fmt::format("set xrange [{:.6g}:{:.6g}]\nset yrange [-0.6:{:.1f}]\nunset ytics\nset xlabel {} font ',10' noenhanced", -1.12 * most, 1.12 * most, static_cast<double>(order.size()) - 0.4,
                              gnuplot_text(note)));
      script.line("set arrow from first 0, graph 0 to first 0, graph 1 nohead lw 1 lc rgb '#404040' front");
      plot_panel(script,
                 {fmt::format("${} using ($2 >= 0 ? 0.5*$2 : NaN):1:(0):2:($1-0.3):($1+0.3) with boxxyerror fs solid 1 noborder lc rgb '{}' notitle", block, color(0)),
                  fmt::format("${} using ($2 < 0 ? 0.5*$2 : NaN):1:2:(0):($1-0.3):($1+0.3) with boxxyerror fs solid 1 noborder lc rgb '{}' notitle", block, color(1)),
                  fmt::format("${} using (0.5*($2 < 0 ? -$3 : $3)):1:($2 < 0 ? -$3 : 0):($2 < 0 ? 0 : $3):($1-0.3):($1+0.3) with boxxyerror fs empty lc rgb '#000000' lw 0.9 notitle", block)});

      open_panel(script, sheet, number + 1);
      most_deviation = std::max(most_deviation, 0.25 * most);
      script.line(fmt::format("set xrange [0:{:.6g}]\nset yrange [0:{:.6g}]\nset xlabel {} font ',10' noenhanced\nset ylabel {} font ',10' noenhanced", 1.25 * most, 1.15 * most_deviation,
                              gnuplot_text("mean size of the change" + unit), gnuplot_text("its deviation" + unit)));
      // Below the flat line a key acts alike everywhere; above the steep one what it does depends on where.
      for (std::size_t i = 0; i < std::min<std::size_t>(10, order.size()); ++i)
        if (std::isfinite(rows[i][2]) && std::isfinite(rows[i][3]))
          script.line(fmt::format("set label {} at first {:.8g}, first {:.8g} left offset 0.6,0.4 font ',9' noenhanced", gnuplot_text(shortened(table.varied[order[i]].name, 16)), rows[i][2], rows[i][3]));
      plot_panel(script,
                 {"x with lines lw 1 dt 3 lc rgb '#606060' notitle", "0.1*x with lines lw 1 dt 3 lc rgb '#606060' notitle",
                  fmt::format("${} using 3:4 with points pt 7 ps 1 lc rgb '{}' notitle", block, color(0))});
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

}  // namespace sinewright::plot
