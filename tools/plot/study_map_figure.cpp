// A grid over two keys: a field for each pair of values, with the border between designs that meet all requirements and those that do not.

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <fmt/format.h>

#include "plot/sheet.h"
#include "plot/study_figures.h"
#include "plot/study_map.h"
#include "plot/study_marks.h"

namespace sinewright::plot {

namespace {

constexpr std::size_t kMostWritten = 14;    // along an axis, with numbers in the fields

// Names of an axis' values as labels; as many as have room.
void value_axis(Script& script, const record::StudyColumn& key, const std::vector<double>& values, bool across, double length) {
  const double pitch = across ? 0.46 : 0.24;
  const auto step = static_cast<std::size_t>(std::ceil(pitch * static_cast<double>(values.size()) / length));
  const Scale scale = scale_of(key);
  for (std::size_t i = 0; i < values.size(); i += std::max<std::size_t>(1, step)) {
    const std::string text = key.options.empty() ? fmt::format("{:.3g}", scale(values[i])) : shown_text(key, values[i]);
    const double room = across ? static_cast<double>(step) * length / static_cast<double>(values.size()) : 1.0;
    const std::string name = gnuplot_text(shortened(text, static_cast<std::size_t>(std::max(4.0, 13 * room))));
    script.line(across ? fmt::format("set label {} at first {}, graph 0 center offset 0,-0.8 font ',9' noenhanced", name, i)
                       : fmt::format("set label {} at graph 0, first {} right offset -0.6,0 font ',9' noenhanced", name, i));
  }
}

// Where a cell of which all rows meet the requirements touches one of which none or not all do.
std::vector<std::vector<std::vector<double>>> border(const StudyMap& map) {
  std::vector<std::vector<std::vector<double>>> lines;
  const std::size_t nx = map.x.size(), ny = map.y.size();
  const auto whole = [&](std::size_t i, std::size_t j) {
    const StudyMap::Cell& cell = map.cells[j * nx + i];
    return cell.rows > 0 && cell.met == cell.rows;
  };
  for (std::size_t j = 0; j < ny; ++j)
    for (std::size_t i = 0; i < nx; ++i) {
      const double x = static_cast<double>(i), y = static_cast<double>(j);
      if (i + 1 < nx && whole(i, j) != whole(i + 1, j)) lines.push_back({{x + 0.5, y - 0.5}, {x + 0.5, y + 0.5}});
      if (j + 1 < ny && whole(i, j) != whole(i, j + 1)) lines.push_back({{x - 0.5, y + 0.5}, {x + 0.5, y + 0.5}});
    }
  return lines;
}

}  // namespace

std::vector<Script> study_map_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  const std::optional<StudyMap> made = map_of(table);
  if (!made) return {};
  const StudyMap& map = *made;
  const std::size_t nx = map.x.size(), ny = map.y.size();
  const record::StudyColumn &key_x = table.varied[map.key_x], &key_y = table.varied[map.key_y];
  const bool several = table.varied.size() > 2;  // rows in a cell
  const bool written = nx <= kMostWritten && ny <= kMostWritten;

  Sheet sheet;
  sheet.panel_width = std::clamp(0.52 * static_cast<double>(nx), 2.6, 5.0), sheet.panel_height = std::clamp(0.34 * static_cast<double>(ny), 1.5, 3.6);
  std::size_t longest = 5;
  for (const auto& option : key_y.options) longest = std::max(longest, std::min<std::size_t>(14, character_count(option)));
  sheet.left = 0.65 + 0.075 * static_cast<double>(longest);
  sheet.columns = std::min<std::size_t>(sheet.panel_width > 3.4 ? 2 : 3, table.outcomes.size() + several);
  sheet.between = sheet.left + 0.9, sheet.right = 1.0, sheet.above = 0.38, sheet.below = 0.62;
  sheet.legend_columns = 2;
  const bool judged = !table.requirements.empty();
  if (judged) {
    sheet.legend.push_back("with points pt 7 ps 0.6 lc rgb '#ff9500' title " +
                           gnuplot_text(several ? "no design there meets all requirements" : "misses a requirement, or cannot be run"));
    sheet.legend.push_back("with lines lw 3 lc rgb '#000000' title " + gnuplot_text(several ? "border of where every design meets them" : "border of the designs that meet them all"));
  }
  // Panel 0 of several rows in a cell is the share that passes; the outcomes follow.
  std::vector<int> panels;
  if (several && judged) panels.push_back(-1);
  for (std::size_t c = 0; c < table.outcomes.size(); ++c) panels.push_back(static_cast<int>(c));
  const std::size_t per_page = 3 * sheet.columns;

  std::string title = fmt::format("Outcomes over {} and {}", key_x.name, key_y.name);
  if (several) {
    title += ", the mean over";
    const char* before = " ";
    for (std::size_t k = 0; k < table.varied.size(); ++k)
      if (k != map.key_x && k != map.key_y) title += before + table.varied[k].name, before = ", ";
  }
  title = shortened(title, 85);
  if (nx < map.all_x || ny < map.all_y) title += fmt::format(" ({} × {} of {} × {} values)", nx, ny, map.all_x, map.all_y);

  std::vector<Script> scripts;
  for (std::size_t begin = 0; begin < panels.size(); begin += per_page) {
    const std::size_t end = std::min(begin + per_page, panels.size());
    Sheet page = sheet;
    page.columns = std::min(sheet.columns, end - begin);
    page.rows = (end - begin + page.columns - 1) / page.columns;
    Script script(page_name("map", scripts.size()), title, view.identity, std::max(page.width(), 8.5), page.height());
    Sheet wide = page;
    wide.right = std::max(page.width(), 8.5) - (page.width() - page.right);  // a page that has room for its title
    script.lines("border", {"place on " + key_x.name, "place on " + key_y.name}, border(map));
    std::vector<std::vector<double>> crosses;
    for (std::size_t j = 0; j < ny; ++j)
      for (std::size_t i = 0; i < nx; ++i)
        if (map.cells[j * nx + i].rows > 0 && map.cells[j * nx + i].met == 0)
          crosses.push_back({static_cast<double>(i) + (written ? 0.38 : 0), static_cast<double>(j) - (written ? 0.28 : 0)});
    script.block("crosses", {"place on " + key_x.name, "place on " + key_y.name}, crosses);

    for (std::size_t p = begin; p < end; ++p) {
      const std::size_t number = p - begin;
      const bool share = panels[p] < 0;
      const auto c = static_cast<std::size_t>(std::max(0, panels[p]));
      const std::string label = share ? "meet all requirements [%]" : outcome_label(table, c);
      std::vector<std::vector<double>> fields;
      double low = std::numeric_limits<double>::infinity(), high = -low;
      for (std::size_t j = 0; j < ny; ++j)
        for (std::size_t i = 0; i < nx; ++i) {
          const StudyMap::Cell& cell = map.cells[j * nx + i];
          if (share ? cell.rows == 0 : cell.count[c] == 0) continue;
          const double value = share ? 100.0 * static_cast<double>(cell.met) / static_cast<double>(cell.rows) : scale_of(table.outcomes[c])(cell.sum[c] / cell.count[c]);
          fields.push_back({static_cast<double>(i), static_cast<double>(j), value});
          low = std::min(low, value), high = std::max(high, value);
        }
      const std::string block = share ? std::string("share") : fmt::format("fields{}", c + 1);
      script.block(block, {"place on " + key_x.name, "place on " + key_y.name, label}, fields);
      open_panel(script, wide, number);
      script.line(fmt::format("set xrange [-0.5:{:.1f}]\nset yrange [-0.5:{:.1f}]\nunset xtics\nunset ytics\nunset grid\nset border 15", static_cast<double>(nx) - 0.5, static_cast<double>(ny) - 0.5));
      value_axis(script, key_x, map.x, true, wide.panel_width);
      value_axis(script, key_y, map.y, false, wide.panel_height);
      script.line(fmt::format("set label {} at graph 0.5, graph 0 center offset 0,-2.1 font ',10' noenhanced\n"
                              "set label {} at graph 0, graph 0.5 center rotate by 90 offset {:.1f},0 font ',10' noenhanced",
                              gnuplot_text(shortened(key_label(key_x), 40)), gnuplot_text(shortened(key_label(key_y), 20)), -2.4 - 0.8 * static_cast<double>(longest)));
      title_panel(script, shortened((several && !share ? "mean " : "") + label, static_cast<std::size_t>(12 * wide.panel_width)));
      if (fields.empty()) {
        say_in_panel(script, "no design has it");
        plot_panel(script, {});
        continue;
      }
      if (share) low = 0, high = 100;
      const bool flat = !(high > low);
      if (flat) high = low + std::max(1e-12, 0.01 * std::abs(low)), low -= std::max(1e-12, 0.01 * std::abs(low));
      // One hue from dark to light, so that it reads without colours, too; the numbers say the rest.
      script.line(fmt::format("set palette defined (0 '#1d3f5e', 0.5 '#7ba3bd', 1 '#f2f0e6')\nset cbrange [{:.8g}:{:.8g}]\nset cbtics font ',9'\nset colorbox", low, high));
      const double dark = low + 0.45 * (high - low);
      std::vector<std::string> elements = {fmt::format("${} using 1:2:($1-0.5):($1+0.5):($2-0.5):($2+0.5):3 with boxxyerror fs solid 1 noborder lc palette notitle", block)};
      if (written)
        elements.push_back(fmt::format("${0} using 1:2:($3 < {1:.8g} ? sprintf('%.3g', $3) : '') with labels tc rgb '#ffffff' font ',9' notitle, "
                                       "${0} using 1:2:($3 < {1:.8g} ? '' : sprintf('%.3g', $3)) with labels tc rgb '#20282d' font ',9' notitle",
                                       block, dark));
      if (judged) {
        elements.push_back("$border using 1:2 with lines lw 3 lc rgb '#000000' notitle");
        elements.push_back(fmt::format("$crosses using 1:2 with points pt 7 ps {} lc rgb '#ff9500' notitle", written ? 0.55 : 0.4));
      }
      plot_panel(script, elements);
    }
    close_sheet(script);
    scripts.push_back(std::move(script));
  }
  return scripts;
}

}  // namespace sinewright::plot
