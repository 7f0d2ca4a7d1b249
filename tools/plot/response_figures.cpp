// What each outcome does over the keys that a study varies: curves of a grid of one or two keys, else every row as a point.

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_marks.h"
#include "study/sample_statistics.h"

namespace sinewright::plot {

namespace {

constexpr std::size_t kMostPoints = 3000;  // rows that a page shows
constexpr std::size_t kMostCurves = 8;     // that the eye tells apart

// Every `step`-th value with both ends, at most about `most`.
std::vector<std::size_t> some_of(std::size_t n, std::size_t most) {
  std::vector<std::size_t> list;
  if (n <= most) {
    for (std::size_t i = 0; i < n; ++i) list.push_back(i);
    return list;
  }
  for (std::size_t i = 0; i < most; ++i) list.push_back(i * (n - 1) / (most - 1));
  return list;
}

// Values that stand in one ratio want a logarithmic axis.
bool in_one_ratio(const std::vector<double>& sorted) {
  if (sorted.size() < 3 || !(sorted.front() > 0)) return false;
  const double ratio = sorted[1] / sorted[0];
  for (std::size_t i = 2; i < sorted.size(); ++i)
    if (std::abs(sorted[i] / sorted[i - 1] / ratio - 1) > 1e-6) return false;
  return ratio > 1.0001;
}

void key_axis(Script& script, const record::StudyColumn& key, const std::vector<double>& values, double panel_width) {
  if (key.options.empty()) {
    if (in_one_ratio(values)) {
      script.line(fmt::format("set logscale x\nset xrange [{:.8g}:{:.8g}]", 0.93 * values.front(), values.back() / 0.93));
    } else {
      const Extent extent = extent_of(values);
      script.line(fmt::format("set xrange [{:.8g}:{:.8g}]", extent.low, extent.high));
      if (panel_width < 3) script.line("set xtics autofreq\nset xtics font ',9'");
    }
  } else {
    option_axis(script, key.options, panel_width);
  }
  script.line(fmt::format("set xlabel {} font ',11' noenhanced{}", gnuplot_text(shortened(key_label(key), static_cast<std::size_t>(13 * panel_width))),
                          key.options.empty() ? "" : slanted(key.options, panel_width) ? " offset 0,-3" : " offset 0,-0.4"));
}

void outcome_axis(Script& script, const StudyView& view, std::size_t outcome, const Extent& extent, bool named) {
  script.line(fmt::format("set yrange [{:.10g}:{:.10g}]", extent.low, extent.high));
  if (named) script.line(fmt::format("set ylabel {} font ',11' noenhanced", gnuplot_text(shortened(outcome_label(view.table, outcome), 28))));
}

// The line through the middle of a cloud: medians over rows of one value, or over parts with equally many rows.
std::vector<std::vector<double>> running_median(const std::vector<double>& x, const std::vector<double>& y) {
  std::vector<std::pair<double, double>> points;
  for (std::size_t i = 0; i < x.size(); ++i)
    if (std::isfinite(x[i]) && std::isfinite(y[i])) points.emplace_back(x[i], y[i]);
  std::sort(points.begin(), points.end());
  std::size_t different = points.empty() ? 0 : 1;
  for (std::size_t i = 1; i < points.size(); ++i) different += points[i].first != points[i - 1].first;
  const std::size_t parts = std::clamp<std::size_t>(points.size() / 20, 3, 12);
  std::vector<std::vector<double>> line;
  for (std::size_t begin = 0; begin < points.size();) {
    std::size_t end = begin + 1;
    if (different <= 24)
      while (end < points.size() && points[end].first == points[begin].first) ++end;
    else
      end = std::max(end, (line.size() + 1) * points.size() / parts);
    std::vector<double> xs, ys;
    for (std::size_t i = begin; i < end; ++i) xs.push_back(points[i].first), ys.push_back(points[i].second);
    std::sort(ys.begin(), ys.end());
    line.push_back({study::sample_quantile(xs, 0.5), study::sample_quantile(ys, 0.5)});
    begin = end;
  }
  return line;
}

std::string thinned_words(std::size_t drawn, std::uint64_t of) {
  return drawn < of ? fmt::format(" · {} of {} rows drawn, by chance", counted(drawn), counted(of)) : "";
}

}  // namespace

std::vector<Script> curve_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  // Along the page goes a key with numbers before one of options, and the one with more values.
  std::vector<std::vector<double>> values;
  for (const auto& key : table.varied) values.push_back(different_values(key.values));
  std::size_t along = 0;
  if (table.varied.size() == 2) {
    const bool numbers_0 = table.varied[0].options.empty(), numbers_1 = table.varied[1].options.empty();
    along = numbers_0 != numbers_1 ? (numbers_0 ? 0 : 1) : values[1].size() > values[0].size() ? 1 : 0;
  }
  const record::StudyColumn& key = table.varied[along];
  const record::StudyColumn* other = table.varied.size() == 2 ? &table.varied[1 - along] : nullptr;
  const std::vector<double> other_values = other ? values[1 - along] : std::vector<double>{0};
  const std::vector<std::size_t> curves = some_of(other_values.size(), kMostCurves);
  const std::vector<double> x = shown_values(key), x_values = [&] {
    const Scale scale = scale_of(key);
    std::vector<double> list = values[along];
    for (double& value : list) value = scale(value);
    return list;
  }();

  Sheet sheet;
  sheet.columns = table.outcomes.size() > 1 ? 2 : 1;
  sheet.panel_width = 4.2, sheet.panel_height = 2.3;
  if (slanted(key.options, sheet.panel_width)) sheet.below += kSlantRoom;
  const std::size_t per_page = 3 * sheet.columns;
  const auto curve_color = [&](std::size_t i) { return other && other->options.empty() ? ramp_color(i, curves.size()) : color(i); };
  if (other)
    for (std::size_t i = 0; i < curves.size(); ++i)
      sheet.legend.push_back(fmt::format("with lines lw 2 lc rgb '{}' title {}", curve_color(i),
                                         gnuplot_text(shortened(fmt::format("{} {}", other->name, shown_text(*other, other_values[curves[i]])), 26))));
  bool any_missed = false, any_broken = false, any_bound = false;
  for (std::uint64_t row = 0; row < table.rows(); ++row) any_missed = any_missed || table.states[row] == record::RowState::missed, any_broken = any_broken || !ran(table, row);
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) any_bound = any_bound || !bounds_on(table, c).empty();
  if (any_missed || any_bound) {
    sheet.legend.push_back("with points pt 7 ps 0.9 lc rgb '#404040' title 'meets all requirements'");
    if (any_missed) sheet.legend.push_back("with points pt 6 ps 0.9 lc rgb '#404040' title 'misses a requirement'");
  }
  if (any_broken) sheet.legend.push_back(fmt::format("with {} title 'no valid model, or could not go on'", row_mark::kBroken));
  for (auto& entry : bound_legend(any_bound)) sheet.legend.push_back(entry);

  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < table.outcomes.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, table.outcomes.size());
    sheet.rows = (end - begin + sheet.columns - 1) / sheet.columns;
    Script script(page_name("response", scripts.size()),
                  shortened(other ? fmt::format("Outcomes over {}, for each {}", key.name, other->name) : fmt::format("Outcomes over {}", key.name), 90) +
                      (curves.size() < other_values.size() ? fmt::format(" ({} of its {} values)", curves.size(), other_values.size()) : ""),
                  view.identity, sheet.width(), sheet.height());
    for (std::size_t c = begin; c < end; ++c) {
      const std::size_t number = c - begin;
      const std::vector<double> y = shown_values(table.outcomes[c]);
      const std::vector<Bound> bounds = bounds_on(table, c);
      const Extent extent = extent_of(y, bounds);
      open_panel(script, sheet, number);
      key_axis(script, key, x_values, sheet.panel_width);
      outcome_axis(script, view, c, extent, true);
      draw_bounds(script, bounds, extent, false);
      std::vector<std::string> elements;
      for (std::size_t i = 0; i < curves.size(); ++i) {
        std::vector<std::vector<double>> rows;
        for (std::uint64_t row = 0; row < table.rows(); ++row)
          if (!other || other->values[row] == other_values[curves[i]]) rows.push_back({x[row], y[row], passes(table, row) ? 0.0 : ran(table, row) ? 1.0 : 2.0});
        std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a[0] < b[0]; });
        const std::string block = fmt::format("curve{}_{}", c + 1, i + 1);
        script.block(block, {key_label(key), outcome_label(table, c), "0: meets all requirements, 1: misses one, 2: could not be run"}, rows);
        // Options have no values between them: their line only leads the eye.
        elements.push_back(fmt::format("${} using 1:2 with lines lw {} dt {} lc rgb '{}' notitle", block, key.options.empty() ? "1.8" : "0.9", key.options.empty() ? "1" : "3", curve_color(i)));
        const double size = rows.size() > 40 ? 0.4 : 0.75;
        elements.push_back(fmt::format("${} using 1:($3 == 0 ? $2 : NaN) with points pt 7 ps {} lc rgb '{}' notitle", block, size, curve_color(i)));
        elements.push_back(fmt::format("${0} using 1:($3 == 1 ? $2 : NaN) with points pt 7 ps {1} lc rgb '#ffffff' notitle, ${0} using 1:($3 == 1 ? $2 : NaN) with points pt 6 ps {1} lc rgb '{2}' notitle",
                                       block, size, curve_color(i)));
        if (any_broken) elements.push_back(fmt::format("${} using 1:($3 == 2 ? {:.10g} : NaN) with {} notitle", block, extent.low + 0.03 * (extent.high - extent.low), row_mark::kBroken));
      }
      if (std::none_of(y.begin(), y.end(), [](double value) { return std::isfinite(value); })) say_in_panel(script, "no design has it");
      plot_panel(script, elements);
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

std::vector<Script> scatter_figures(const StudyView& view, std::uint64_t first, std::uint64_t last, bool median) {
  const record::StudyRecord& table = view.table;
  constexpr std::size_t most_keys = 5, most_outcomes = 4;
  const std::vector<std::uint64_t> drawn = rows_to_draw(first, last, kMostPoints, table.best);
  std::vector<std::string> legend = row_legend(table, first, last);
  bool any_bound = false;
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) any_bound = any_bound || !bounds_on(table, c).empty();
  for (auto& entry : bound_legend(any_bound)) legend.push_back(entry);
  if (median) legend.push_back("with lines lw 2.2 lc rgb '#000000' title 'running median'");
  if (!table.best.empty()) legend.push_back(fmt::format("with points pt 9 ps 1.5 lc rgb '{}' title '{}'", color(2), table.best.size() > 1 ? "the front" : "the best design"));

  std::vector<std::vector<double>> outcomes;
  for (const auto& outcome : table.outcomes) outcomes.push_back(shown_values(outcome));

  std::vector<Script> scripts;
  for (std::size_t first_key = 0; first_key < table.varied.size(); first_key += most_keys)
    for (std::size_t first_outcome = 0; first_outcome < table.outcomes.size(); first_outcome += most_outcomes) {
      const std::size_t last_key = std::min(first_key + most_keys, table.varied.size()), last_outcome = std::min(first_outcome + most_outcomes, table.outcomes.size());
      Sheet sheet;
      sheet.columns = last_key - first_key, sheet.rows = last_outcome - first_outcome;
      sheet.between = 0.35;
      sheet.panel_width = std::clamp(9.5 / static_cast<double>(sheet.columns), 2.0, 4.2), sheet.panel_height = 2.0;
      for (std::size_t k = first_key; k < last_key; ++k)
        if (slanted(table.varied[k].options, sheet.panel_width)) sheet.below = Sheet{}.below + kSlantRoom;
      sheet.legend = legend;
      sheet.legend_columns = sheet.width() > 8.5 ? 3 : 2;
      Script script(page_name("response", scripts.size()), "Outcomes over what varies, each row a point" + thinned_words(drawn.size(), last - first), view.identity, sheet.width(), sheet.height());

      std::vector<std::string> columns = {"0: meets all requirements, 1: misses one, 2: could not be run, 3: best", "sideways step of options"};
      std::vector<std::vector<double>> keys;
      for (std::size_t k = first_key; k < last_key; ++k) columns.push_back(key_label(table.varied[k])), keys.push_back(shown_values(table.varied[k]));
      for (std::size_t c = first_outcome; c < last_outcome; ++c) columns.push_back(outcome_label(table, c));
      std::vector<std::vector<double>> rows;
      for (const std::uint64_t row : drawn) {
        const bool best = std::binary_search(table.best.begin(), table.best.end(), row) || std::find(table.best.begin(), table.best.end(), row) != table.best.end();
        rows.push_back({best ? 3.0 : passes(table, row) ? 0.0 : ran(table, row) ? 1.0 : 2.0, 0.5 * chance_of_row(row, 1) - 0.25});
        for (const auto& key : keys) rows.back().push_back(key[row]);
        for (std::size_t c = first_outcome; c < last_outcome; ++c) rows.back().push_back(outcomes[c][row]);
      }
      script.block("rows", columns, rows);

      for (std::size_t c = first_outcome; c < last_outcome; ++c) {
        const std::span<const double> all(outcomes[c].data() + first, last - first);
        const std::vector<Bound> bounds = bounds_on(table, c);
        const Extent extent = extent_of(all, bounds);
        for (std::size_t k = first_key; k < last_key; ++k) {
          const record::StudyColumn& key = table.varied[k];
          const std::size_t number = (c - first_outcome) * sheet.columns + (k - first_key);
          const std::vector<double> x(keys[k - first_key].begin() + static_cast<std::ptrdiff_t>(first), keys[k - first_key].begin() + static_cast<std::ptrdiff_t>(last));
          open_panel(script, sheet, number);
          key_axis(script, key, different_values(x), sheet.panel_width);
          outcome_axis(script, view, c, extent, k == first_key);
          if (k != first_key) script.line("set format y ''");
          draw_bounds(script, bounds, extent, false);
          const std::string place = key.options.empty() ? fmt::format("(${})", 3 + k - first_key) : fmt::format("(${} + $2)", 3 + k - first_key);
          const std::size_t y = 3 + sheet.columns + (c - first_outcome);
          std::vector<std::string> elements = {
              fmt::format("$rows using {}:($1 == 1 ? ${} : NaN) with {} notitle", place, y, row_mark::kMissed),
              fmt::format("$rows using {}:($1 == 0 ? ${} : NaN) with {} notitle", place, y, row_mark::kMet),
              fmt::format("$rows using {}:($1 == 2 ? {:.10g} : NaN) with {} notitle", place, extent.low + 0.03 * (extent.high - extent.low), row_mark::kBroken)};
          if (!table.best.empty()) elements.push_back(fmt::format("$rows using {}:($1 == 3 ? ${} : NaN) with points pt 9 ps 1.5 lc rgb '{}' notitle", place, y, color(2)));
          if (median) {
            const std::string block = fmt::format("median{}_{}", k + 1, c + 1);
            const auto line = running_median(x, {all.begin(), all.end()});
            script.block(block, {key_label(key), "median of " + outcome_label(table, c)}, line);
            if (key.options.empty())
              elements.push_back(fmt::format("${} using 1:2 with lines lw 2.2 lc rgb '#000000' notitle", block));
            else
              elements.push_back(fmt::format("${} using ($1 - 0.3):2:(0.6):(0) with vectors nohead lw 2.2 lc rgb '#000000' notitle", block));
          }
          if (std::none_of(all.begin(), all.end(), [](double value) { return std::isfinite(value); })) say_in_panel(script, "no row has it");
          plot_panel(script, elements);
        }
      }
      close_sheet(script);
      scripts.push_back(std::move(script));
    }
  return scripts;
}

}  // namespace sinewright::plot
