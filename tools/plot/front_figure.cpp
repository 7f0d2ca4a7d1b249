// What an optimisation tried: how its goals came down, and of several goals the front.

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_marks.h"
#include "study/sample_statistics.h"

namespace sinewright::plot {

namespace {

constexpr std::size_t kMostPoints = 4000;

std::string goal_label(const StudyView& view, std::size_t goal) {
  return fmt::format("{}, {}", outcome_label(view.table, outcome_of_goal(view.table, goal)), view.table.goals[goal].second ? "more is better" : "less is better");
}

// The frame keeps to what meets the requirements and to the middle of the rest: a few wild designs must not hide the others.
Extent goal_extent(const StudyView& view, std::size_t outcome) {
  const record::StudyRecord& table = view.table;
  const Scale scale = scale_of(table.outcomes[outcome]);
  std::vector<double> seen, rest;
  for (std::uint64_t row = 0; row < table.designs; ++row) {
    const double value = scale(table.outcomes[outcome].values[row]);
    if (!std::isfinite(value)) continue;
    (passes(table, row) ? seen : rest).push_back(value);
  }
  std::sort(rest.begin(), rest.end());
  if (!rest.empty()) seen.push_back(study::sample_quantile(rest, 0.05)), seen.push_back(study::sample_quantile(rest, 0.95));
  if (std::isfinite(table.drawn[outcome])) seen.push_back(scale(table.drawn[outcome]));
  return extent_of(seen);
}

// Designs that the frame leaves out. @param outcomes,extents  of one or two axes.
std::size_t outside(const StudyView& view, const std::vector<std::size_t>& outcomes, const std::vector<Extent>& extents) {
  std::vector<Scale> scales;
  for (const std::size_t outcome : outcomes) scales.push_back(scale_of(view.table.outcomes[outcome]));
  std::size_t n = 0;
  for (std::uint64_t row = 0; row < view.table.designs; ++row) {
    bool out = false;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
      const double value = scales[i](view.table.outcomes[outcomes[i]].values[row]);
      out = out || value < extents[i].low || value > extents[i].high;
    }
    n += out;
  }
  return n;
}

// What lies outside would be a word in the way here; the figure of the responses has it.
std::vector<Bound> bounds_within(const StudyView& view, std::size_t outcome, const Extent& extent) {
  std::vector<Bound> bounds = bounds_on(view.table, outcome);
  std::erase_if(bounds, [&](const Bound& bound) { return bound.value < extent.low || bound.value > extent.high; });
  return bounds;
}

std::string title_with(const std::string& title, std::size_t drawn, std::uint64_t of) {
  return title + (drawn < of ? fmt::format(" · {} of {} designs drawn, by chance", counted(drawn), counted(of)) : "");
}

Script parallel_figure(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  struct Axis {
    const record::StudyColumn* column;
    std::string label;
    double low = 0, high = 1;  // SI, or indices
  };
  constexpr std::size_t most_axes = 14, most_lines = 200;
  std::vector<Axis> axes;
  for (std::size_t g = 0; g < table.goals.size(); ++g) axes.push_back({&table.outcomes[outcome_of_goal(table, g)], outcome_label(table, outcome_of_goal(table, g))});
  const std::size_t goals = axes.size();
  for (const auto& key : table.varied) axes.push_back({&key, key_label(key)});
  const std::size_t left_out = axes.size() > most_axes ? axes.size() - most_axes : 0;
  axes.resize(axes.size() - left_out);
  // Of goals the front's own range; of keys all that was tried, so that a front that hugs a bound shows it.
  for (std::size_t a = 0; a < axes.size(); ++a) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    const auto take = [&](double value) {
      if (std::isfinite(value)) low = std::min(low, value), high = std::max(high, value);
    };
    if (a < goals)
      for (const std::uint64_t row : table.best) take(axes[a].column->values[row]);
    else
      for (std::uint64_t row = 0; row < table.designs; ++row) take(axes[a].column->values[row]);
    if (!axes[a].column->options.empty()) low = 0, high = static_cast<double>(axes[a].column->options.size() - 1);
    if (!(high > low)) low -= 0.5, high += 0.5;
    axes[a].low = low, axes[a].high = high;
  }
  const double pitch = std::clamp(10.0 / static_cast<double>(axes.size()), 1.15, 2.2), width = std::max(8.5, pitch * static_cast<double>(axes.size()) + 0.6), height = 5.2;
  Script script("front-designs", "The designs of the front: goals left, what makes them right" + std::string(left_out > 0 ? fmt::format(" ({} keys left out)", left_out) : ""), view.identity, width, height);
  script.line(fmt::format("set lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset tmargin at screen {:.5f}\nset bmargin at screen {:.5f}", 0.3 / width, 1 - 0.3 / width, 1 - 1.2 / height, 0.75 / height));
  script.line(fmt::format("set xrange [-0.5:{:.1f}]\nset yrange [0:1]\nunset border\nunset tics\nunset grid\nset key off", static_cast<double>(axes.size()) - 0.5));
  for (std::size_t a = 0; a < axes.size(); ++a) {
    const Axis& axis = axes[a];
    script.line(fmt::format("set arrow from first {0}, first 0 to first {0}, first 1 nohead lw {1} lc rgb '#404040' back", a, a < goals ? 1.6 : 0.8));
    script.line(fmt::format("set label {} at first {}, graph 1 center offset 0,1.9 font '{}' noenhanced", gnuplot_text(shortened(axis.label, static_cast<std::size_t>(12 * pitch))), a, a < goals ? ",10" : ",10"));
    if (axis.column->options.empty()) {
      script.line(fmt::format("set label {} at first {}, graph 1 center offset 0,0.7 font ',9' noenhanced\nset label {} at first {}, graph 0 center offset 0,-0.8 font ',9' noenhanced",
                              gnuplot_text(fmt::format("{:.3g}", scale_of(*axis.column)(axis.high))), a, gnuplot_text(fmt::format("{:.3g}", scale_of(*axis.column)(axis.low))), a));
    } else {
      for (std::size_t o = 0; o < axis.column->options.size(); ++o)
        script.line(fmt::format("set label {} at first {}, first {:.5f} left offset 0.9,0 font ',9' noenhanced front", gnuplot_text(shortened(axis.column->options[o], static_cast<std::size_t>(7 * pitch))), a,
                                axis.high > axis.low ? (static_cast<double>(o) - axis.low) / (axis.high - axis.low) : 0.5));
    }
  }
  std::string command;
  std::vector<std::string> columns;
  for (const Axis& axis : axes) columns.push_back(axis.label);
  const std::size_t step = (table.best.size() + most_lines - 1) / most_lines;
  for (std::size_t i = 0; i < table.best.size(); i += step) {
    std::vector<std::vector<double>> line;
    for (std::size_t a = 0; a < axes.size(); ++a)
      line.push_back({static_cast<double>(a), (axes[a].column->values[table.best[i]] - axes[a].low) / (axes[a].high - axes[a].low), scale_of(*axes[a].column)(axes[a].column->values[table.best[i]])});
    script.block(fmt::format("design{}", table.best[i]), {"axis", "place on it", "value as shown"}, line);
    command += fmt::format(", \\\n     $design{} using 1:2 with lines lw 1.3 lc rgb '{}'", table.best[i], ramp_color(i, table.best.size()));
  }
  if (table.chosen && std::find(table.best.begin(), table.best.end(), *table.chosen) != table.best.end()) {
    std::vector<std::vector<double>> line;
    for (std::size_t a = 0; a < axes.size(); ++a) line.push_back({static_cast<double>(a), (axes[a].column->values[*table.chosen] - axes[a].low) / (axes[a].high - axes[a].low)});
    script.block("chosen", {"axis", "place on it"}, line);
    command += ", \\\n     $chosen using 1:2 with linespoints pt 7 ps 0.9 lw 3 lc rgb '#000000'";
  }
  script.line(fmt::format("set label {} at screen {:.5f}, screen {:.5f} left font ',10' noenhanced",
                          gnuplot_text(fmt::format("colour: dark at the low end of {}, light at the high end{}{}", shortened(axes[0].label, 40), table.chosen ? "; black: the design that was checked as made" : "",
                                                   step > 1 ? fmt::format("; every {}th design", step) : "")),
                          0.25 / width, 0.22 / height));
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
  return script;
}

Script plane_figure(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  const std::vector<std::uint64_t> drawn = rows_to_draw(0, table.designs, kMostPoints, table.best);
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (std::size_t a = 0; a < table.goals.size(); ++a)
    for (std::size_t b = a + 1; b < table.goals.size() && pairs.size() < 6; ++b) pairs.emplace_back(a, b);
  Sheet sheet;
  sheet.columns = pairs.size() == 1 ? 1 : pairs.size() == 3 ? 3 : 2;
  sheet.rows = (pairs.size() + sheet.columns - 1) / sheet.columns;
  sheet.panel_width = pairs.size() == 1 ? 7.6 : 3.5, sheet.panel_height = pairs.size() == 1 ? 4.2 : 3.0;
  sheet.legend = row_legend(table, 0, table.designs);
  std::erase_if(sheet.legend, [](const std::string& entry) { return entry.find("could not go on") != std::string::npos; });  // they have no place here
  for (auto& entry : sheet.legend)
    if (entry.find("meets all") != std::string::npos) entry = "with points pt 7 ps 0.55 lc rgb '#a9b4ba' title 'meets all requirements'";
  sheet.legend.push_back(table.best.empty() ? "with points pt 7 ps 0 title 'NO DESIGN MEETS ALL REQUIREMENTS'"
                                            : fmt::format("with points pt 7 ps 1.1 lc rgb '{}' title {}", ramp_color(0, 4),
                                                          gnuplot_text(fmt::format("front of {}, coloured along {}", table.best.size(), shortened(outcome_title(table, outcome_of_goal(table, 0)), 30)))));
  if (table.chosen) sheet.legend.push_back(fmt::format("with points pt 6 ps 2 lw 2 lc rgb '#000000' title 'design {}, checked as made'", *table.chosen));
  sheet.legend.push_back("with points pt 12 ps 1.6 lw 2 lc rgb '#000000' title 'as drawn'");
  sheet.legend_columns = sheet.columns == 3 ? 5 : 3;
  Script script("front", title_with("What stands against what", drawn.size(), table.designs), view.identity, sheet.width(), sheet.height());

  std::vector<std::string> columns = {"0: meets all requirements, 1: misses one, 2: could not be run"};
  for (std::size_t g = 0; g < table.goals.size(); ++g) columns.push_back(outcome_label(table, outcome_of_goal(table, g)));
  const auto row_of = [&](std::uint64_t row) {
    std::vector<double> line = {passes(table, row) ? 0.0 : ran(table, row) ? 1.0 : 2.0};
    for (std::size_t g = 0; g < table.goals.size(); ++g) {
      const auto& outcome = table.outcomes[outcome_of_goal(table, g)];
      line.push_back(scale_of(outcome)(outcome.values[row]));
    }
    return line;
  };
  std::vector<std::vector<double>> rows, front, chosen, as_drawn(1, {0.0});
  for (const std::uint64_t row : drawn) rows.push_back(row_of(row));
  for (std::size_t i = 0; i < table.best.size(); ++i) {
    front.push_back(row_of(table.best[i]));
    front.back()[0] = static_cast<double>(i);
  }
  if (table.chosen) chosen.push_back(row_of(*table.chosen));
  for (std::size_t g = 0; g < table.goals.size(); ++g) {
    const std::size_t c = outcome_of_goal(table, g);
    as_drawn[0].push_back(scale_of(table.outcomes[c])(table.drawn[c]));
  }
  script.block("rows", columns, rows);
  columns[0] = "number along the front";
  script.block("front", columns, front);
  script.block("chosen", columns, chosen);
  script.block("drawn", columns, as_drawn);
  for (std::size_t p = 0; p < pairs.size(); ++p) {
    const auto [a, b] = pairs[p];
    const std::size_t x = outcome_of_goal(table, a), y = outcome_of_goal(table, b);
    const Extent across = goal_extent(view, x), up = goal_extent(view, y);
    open_panel(script, sheet, p);
    const std::size_t room = static_cast<std::size_t>(15 * sheet.panel_width), room_up = static_cast<std::size_t>(15 * sheet.panel_height);
    script.line(fmt::format("set xrange [{:.10g}:{:.10g}]\nset yrange [{:.10g}:{:.10g}]\nset xlabel {} font ',10' noenhanced\nset ylabel {} font ',10' noenhanced", across.low, across.high, up.low, up.high,
                            gnuplot_text(shortened(goal_label(view, a), room)), gnuplot_text(shortened(goal_label(view, b), room_up))));
    draw_bounds(script, bounds_within(view, x, across), across, true);
    draw_bounds(script, bounds_within(view, y, up), up, false);
    if (const std::size_t n = outside(view, {x, y}, {across, up}); n > 0)
      script.line(fmt::format("set label {} at graph 0.01, graph 0.03 left font ',9' tc rgb '#606060' noenhanced", gnuplot_text(fmt::format("{} designs lie outside", counted(n)))));
    // The palette of the project's ramp, from dark to light.
    script.line(fmt::format("set palette defined (0 '{}', 1 '{}', 2 '{}', 3 '{}')\nset cbrange [0:{}]\nunset colorbox", ramp_color(0, 4), ramp_color(1, 4), ramp_color(2, 4), ramp_color(3, 4),
                            std::max<std::size_t>(1, table.best.size() - std::min<std::size_t>(1, table.best.size()))));
    const std::size_t cx = a + 2, cy = b + 2;
    std::vector<std::string> elements = {fmt::format("$rows using ($1 == 1 ? ${} : NaN):{} with {} notitle", cx, cy, row_mark::kMissed),
                                         fmt::format("$rows using ($1 == 0 ? ${} : NaN):{} with points pt 7 ps 0.55 lc rgb '#a9b4ba' notitle", cx, cy)};
    if (table.goals.size() == 2 && !table.best.empty()) {
      // Beyond a design of the front only its own value is had: a step, not a slope.
      elements.push_back(fmt::format("$front using {}:{} with {} lw 1 lc rgb '#606060' notitle", cx, cy, table.goals[0].second ? "fsteps" : "steps"));
    }
    if (!table.best.empty()) elements.push_back(fmt::format("$front using {}:{}:1 with points pt 7 ps 1.1 lc palette notitle", cx, cy));
    if (table.chosen) elements.push_back(fmt::format("$chosen using {}:{} with points pt 6 ps 2 lw 2 lc rgb '#000000' notitle", cx, cy));
    elements.push_back(fmt::format("$drawn using {}:{} with points pt 12 ps 1.6 lw 2 lc rgb '#000000' notitle", cx, cy));
    plot_panel(script, elements);
  }
  close_sheet(script);
  return script;
}

}  // namespace

std::vector<Script> front_figures(const StudyView& view) {
  std::vector<Script> scripts;
  if (view.table.goals.size() < 2) return scripts;
  scripts.push_back(plane_figure(view));
  if (view.table.best.size() > 1) scripts.push_back(parallel_figure(view));
  return scripts;
}

Script progress_figure(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  const std::vector<std::uint64_t> drawn = rows_to_draw(0, table.designs, kMostPoints, table.best);
  const bool none = table.best.empty();
  Sheet sheet;
  sheet.rows = table.goals.size() + none;
  sheet.panel_width = 9.0, sheet.panel_height = sheet.rows == 1 ? 3.4 : 2.2;
  sheet.legend = row_legend(table, 0, table.designs);
  if (!none) sheet.legend.push_back(fmt::format("with lines lw 2.2 lc rgb '{}' title 'best so far of those that meet all'", color(2)));
  if (none) sheet.legend.push_back(fmt::format("with lines lw 2.2 lc rgb '{}' title 'least missing so far'", color(2)));
  sheet.legend.push_back(fmt::format("with {} title 'as drawn'", row_mark::kDrawn));
  sheet.legend_columns = 3;
  Script script("progress", title_with(none ? "The search: NO DESIGN MEETS ALL REQUIREMENTS" : "The search: every design tried", drawn.size(), table.designs), view.identity, sheet.width(), sheet.height());
  const double last = static_cast<double>(std::max<std::uint64_t>(1, table.designs));
  std::size_t number = 0;
  const auto along = [&](bool named) {
    script.line(fmt::format("set xrange [{:.6g}:{:.8g}]{}", -0.01 * last, 1.01 * last, named ? "\nset xlabel 'design, in the order of trying' font ',11'" : ""));
  };
  for (std::size_t g = 0; g < table.goals.size(); ++g, ++number) {
    const std::size_t c = outcome_of_goal(table, g);
    const bool more = table.goals[g].second;
    const Scale scale = scale_of(table.outcomes[c]);
    std::vector<std::vector<double>> rows, best;
    for (const std::uint64_t row : drawn) rows.push_back({static_cast<double>(row), scale(table.outcomes[c].values[row]), passes(table, row) ? 0.0 : ran(table, row) ? 1.0 : 2.0});
    double so_far = std::nan("");
    for (std::uint64_t row = 0; row < table.designs; ++row) {
      const double value = scale(table.outcomes[c].values[row]);
      if (!passes(table, row) || std::isnan(value) || (more ? value <= so_far : value >= so_far)) continue;
      best.push_back({static_cast<double>(row), so_far = value});
    }
    if (!best.empty()) best.push_back({last, so_far});
    script.block(fmt::format("rows{}", g + 1), {"design", outcome_label(table, c), "0: meets all requirements, 1: misses one, 2: could not be run"}, rows);
    script.block(fmt::format("best{}", g + 1), {"design", "best so far"}, best);
    const Extent extent = goal_extent(view, c);
    open_panel(script, sheet, number);
    along(number + 1 == sheet.rows);
    script.line(fmt::format("set yrange [{:.10g}:{:.10g}]\nset ylabel {} font ',10' noenhanced", extent.low, extent.high,
                            gnuplot_text(shortened(goal_label(view, g), static_cast<std::size_t>(15 * sheet.panel_height)))));
    draw_bounds(script, bounds_within(view, c, extent), extent, false);
    if (const std::size_t n = outside(view, {c}, {extent}); n > 0)
      script.line(fmt::format("set label {} at graph 0.01, graph 0.04 left font ',9' tc rgb '#606060' noenhanced front", gnuplot_text(fmt::format("{} designs lie outside", counted(n)))));
    std::vector<std::string> elements = {fmt::format("$rows{} using 1:($3 == 1 ? $2 : NaN) with {} notitle", g + 1, row_mark::kMissed),
                                         fmt::format("$rows{} using 1:($3 == 0 ? $2 : NaN) with {} notitle", g + 1, row_mark::kMet),
                                         fmt::format("$rows{} using 1:($3 == 2 ? {:.10g} : NaN) with {} notitle", g + 1, extent.low + 0.03 * (extent.high - extent.low), row_mark::kBroken)};
    if (!best.empty()) elements.push_back(fmt::format("$best{} using 1:2 with steps lw 2.2 lc rgb '{}' notitle", g + 1, color(2)));
    if (std::isfinite(table.drawn[c])) elements.push_back(fmt::format("{:.10g} with {} notitle", scale(table.drawn[c]), row_mark::kDrawn));
    plot_panel(script, elements);
  }
  if (none) {
    // How near the search came: by what share of the bounds the best design misses them in sum.
    std::vector<std::vector<double>> rows, best;
    std::vector<double> seen;
    double so_far = std::numeric_limits<double>::infinity();
    for (std::uint64_t row = 0; row < table.designs; ++row) {
      double sum = 0;
      for (const auto& requirement : table.requirements) sum += requirement.shortfalls[row];
      if (!ran(table, row) || !std::isfinite(sum)) continue;
      if (std::binary_search(drawn.begin(), drawn.end(), row)) rows.push_back({static_cast<double>(row), sum}), seen.push_back(sum);
      if (sum < so_far) best.push_back({static_cast<double>(row), so_far = sum});
    }
    if (!best.empty()) best.push_back({last, so_far});
    std::sort(seen.begin(), seen.end());
    std::erase_if(seen, [](double sum) { return !(sum > 0); });
    script.block("missing", {"design", "what is missing in sum, as share of the bounds"}, rows);
    script.block("least", {"design", "least so far"}, best);
    open_panel(script, sheet, number);
    along(true);
    script.line(fmt::format("set logscale y\nset yrange [{:.6g}:{:.6g}]\nset ylabel 'missing in sum, parts of the bounds' font ',10'", seen.empty() ? 0.1 : 0.7 * seen.front(),
                            seen.empty() ? 10.0 : 1.4 * seen.back()));
    if (seen.empty()) say_in_panel(script, "no design could be judged by all requirements");
    plot_panel(script,
               {fmt::format("$missing using 1:2 with {} notitle", row_mark::kMissed), fmt::format("$least using 1:2 with steps lw 2.2 lc rgb '{}' notitle", color(2))});
  }
  close_sheet(script);
  return script;
}

}  // namespace sinewright::plot
