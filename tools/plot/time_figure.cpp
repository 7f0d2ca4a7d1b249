#include "plot/time_figure.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "model/names.h"

namespace sinewright::plot {

namespace {

constexpr double page_width = 11, left = 1.1, head = 0.72, foot = 0.68, gap = 0.26;  // [inch]
constexpr double letter = 0.0056;   // mean width of a letter [inch] for each point of its size
constexpr std::size_t bins = 1200;  // about as many as a picture has columns of pixels
constexpr double mark_pitch = 0.2;  // least distance of two slanted labels [inch]

struct Mark {
  double time;
  std::string text;
};

std::vector<Mark> marks_of(const Subject& subject) {
  std::vector<Mark> list;
  std::vector<std::string> touched, told;
  const std::size_t drives = subject.scenario.model.drives.size();
  const auto& events = subject.record.events;
  for (const auto& event : events) {
    if (event.time < subject.from || event.time > subject.to) continue;
    if (event.kind == "command") {
      // The same command to several drives at once is one mark.
      const auto same = [&](const auto& other) {
        return other.kind == "command" && other.time == event.time && other.detail == event.detail;
      };
      const auto together = static_cast<std::size_t>(std::count_if(events.begin(), events.end(), same));
      const std::string key = fmt::format("{} {}", event.time, event.detail);
      if (std::find(told.begin(), told.end(), key) != told.end()) continue;
      told.push_back(key);
      const std::string who = together == 1 ? event.subject : together == drives ? "all drives" : fmt::format("{} drives", together);
      list.push_back({event.time, drives > 1 ? who + ": " + event.detail : event.detail});
    }
    if (event.kind == "fault" || event.kind == "fault-over") list.push_back({event.time, event.subject + " " + event.detail});
    if (event.kind != "contact") continue;
    // Of a finger of a hand its first touch is enough.
    const std::string finger = model::finger_of(event.subject);
    const bool of_finger = !finger.empty() && std::any_of(subject.scenario.model.drives.begin(), subject.scenario.model.drives.end(),
                                                          [&](const auto& drive) { return model::finger_of(drive.name) == finger; });
    const std::string& toucher = of_finger ? finger : event.subject;
    if (std::find(touched.begin(), touched.end(), toucher) != touched.end()) continue;
    touched.push_back(toucher);
    list.push_back({event.time, event.subject + " touches"});
  }
  std::stable_sort(list.begin(), list.end(), [](const Mark& a, const Mark& b) { return a.time < b.time; });
  for (Mark& mark : list) mark.text = shortened(mark.text, 34);
  return list;
}

// More points than columns of pixels cannot be seen, but a short peak must stay: of each bin of time the rows
// with the least and the greatest value of every curve are kept.
std::vector<std::size_t> shown_rows(const Subject& subject, const Panel& panel) {
  const auto& time = subject.record.time;
  std::vector<std::size_t> rows;
  // With one more row on either side, so that the curves reach the frame.
  for (std::size_t i = 0; i < time.size(); ++i) {
    const double next = time[std::min(i + 1, time.size() - 1)], previous = time[i > 0 ? i - 1 : 0];
    if (next >= subject.from && previous <= subject.to) rows.push_back(i);
  }
  if (rows.size() <= 4 * bins) return rows;
  const double width = (subject.to - subject.from) / static_cast<double>(bins);
  std::vector<std::size_t> kept;
  for (std::size_t begin = 0; begin < rows.size();) {
    std::size_t end = begin + 1;
    const double until = time[rows[begin]] + width;
    while (end < rows.size() && time[rows[end]] < until) ++end;
    std::vector<std::size_t> of_bin = {rows[begin], rows[end - 1]};
    for (const Curve& curve : panel.curves) {
      const auto [low, high] = std::minmax_element(
          rows.begin() + static_cast<std::ptrdiff_t>(begin), rows.begin() + static_cast<std::ptrdiff_t>(end),
          [&](std::size_t a, std::size_t b) { return curve.values[a] < curve.values[b]; });
      of_bin.push_back(*low);
      of_bin.push_back(*high);
    }
    std::sort(of_bin.begin(), of_bin.end());
    of_bin.erase(std::unique(of_bin.begin(), of_bin.end()), of_bin.end());
    kept.insert(kept.end(), of_bin.begin(), of_bin.end());
    begin = end;
  }
  return kept;
}

std::pair<double, double> vertical_range(const Panel& panel, const std::vector<std::size_t>& rows) {
  if (!panel.rows.empty()) return {-0.6, static_cast<double>(panel.rows.size()) - 0.4};
  double low = std::numeric_limits<double>::infinity(), high = -low;
  for (const Curve& curve : panel.curves)
    for (const std::size_t row : rows)
      if (std::isfinite(curve.values[row]))
        low = std::min(low, curve.values[row]), high = std::max(high, curve.values[row]);
  for (const Level& level : panel.levels)
    low = std::min(low, level.value), high = std::max(high, level.value);
  if (!(low <= high)) return {0, 1};
  if (panel.from_zero) low = std::min(low, 0.0), high = std::max(high, 0.0);
  const double least = std::max({panel.least_span, 1e-6 * std::abs(high), 1e-12});
  if (high - low < least) {
    const double middle = 0.5 * (low + high);
    if (panel.from_zero && low >= 0)
      high = least;
    else
      low = middle - 0.5 * least, high = middle + 0.5 * least;
  }
  const double room = 0.06 * (high - low);
  return {panel.from_zero && low >= 0 ? 0 : low - room, high + room};
}

// Entries of a panel's legend.
std::vector<std::string> legend_of(const Panel& panel) {
  std::vector<std::string> names;
  for (const Curve& curve : panel.curves) names.push_back(curve.name);
  for (const Level& level : panel.levels) names.push_back(level.name);
  for (const BarRow& row : panel.rows)
    for (const Bar& bar : row.bars)
      if (std::find(names.begin(), names.end(), bar.kind) == names.end()) names.push_back(bar.kind);
  return names;
}

double height_of(const Panel& panel) {
  const double for_legend = 0.2 * static_cast<double>(legend_of(panel).size()) + 0.1;
  const double for_data = panel.rows.empty() ? 2.0 : 0.34 * static_cast<double>(panel.rows.size()) + 0.1;
  return std::max(for_legend, for_data);
}

std::string curves(const Panel& panel, const std::string& block) {
  std::string command;
  for (std::size_t i = 0; i < panel.curves.size(); ++i) {
    const Curve& curve = panel.curves[i];
    command += fmt::format(", \\\n     ${} using 1:{} title {} lc rgb '{}' lw 1.6 dt {}", block, i + 2,
                           gnuplot_text(shortened(curve.name, 34)), curve.color, curve.dash);
  }
  for (const Level& level : panel.levels)
    command += fmt::format(", \\\n     {:.7g} with lines title {} lc rgb '{}' lw 0.9 dt 4", level.value,
                           gnuplot_text(shortened(level.name, 34)), level.color);
  return command;
}

std::string bars(Script& script, const Panel& panel, const std::string& block) {
  std::string command;
  const auto kinds = legend_of(panel);
  for (std::size_t k = 0; k < kinds.size(); ++k) {
    std::vector<std::vector<double>> rows;
    std::string color;
    for (std::size_t r = 0; r < panel.rows.size(); ++r)
      for (const Bar& bar : panel.rows[r].bars) {
        if (bar.kind != kinds[k]) continue;
        color = bar.color;
        const double y = static_cast<double>(panel.rows.size() - 1 - r);
        const double high = y + 0.38 - 0.76 * static_cast<double>(k) / static_cast<double>(kinds.size());
        const double low = high - 0.72 / static_cast<double>(kinds.size());
        for (const auto& [from, to] : bar.when) rows.push_back({from, to, low, high});
      }
    script.block(block + "_" + std::to_string(k), {"from [s]", "to [s]", "lower edge", "upper edge"}, rows);
    command += fmt::format(
        ", \\\n     ${}_{} using (0.5*($1+$2)):(0.5*($3+$4)):1:2:3:4 with boxxyerror title {} lc rgb '{}' "
        "fillstyle solid 1 noborder",
        block, k, gnuplot_text(kinds[k]), color);
  }
  for (std::size_t r = 0; r < panel.rows.size(); ++r)
    label_row(script, r + 1, panel.rows[r].name, 10, static_cast<double>(panel.rows.size() - 1 - r));
  return command;
}

// Slanted labels above the first panel; where marks are close, the labels step aside and a short line leads
// to each.
void label_marks(Script& script, const Subject& subject, const std::vector<Mark>& marks, double width,
                 double height) {
  double last = -1;
  int number = 100;
  for (const Mark& mark : marks) {
    const double place = (mark.time - subject.from) / (subject.to - subject.from);
    const double x = std::max(place, last + mark_pitch / width);
    if (x > 1.04) break;  // no room is left; the line itself stays
    last = x;
    script.line(
        fmt::format("set arrow {} from graph {:.5f}, graph 1 to graph {:.5f}, graph {:.4f} nohead lc rgb "
                    "'#909090' lw 0.7",
                    number, place, x, 1 + 0.12 / height));
    script.line(
        fmt::format("set label {} {} at graph {:.5f}, graph {:.4f} left rotate by 40 font ',9' textcolor rgb "
                    "'#505050' noenhanced",
                    number, gnuplot_text(mark.text), x, 1 + 0.16 / height));
    ++number;
  }
}

}  // namespace

Script time_figure(const Subject& subject, const std::string& name, const std::string& title,
                   const std::vector<Panel>& panels) {
  const std::vector<Mark> marks = marks_of(subject);
  std::size_t longest_mark = 0, longest_name = 8;
  for (const Mark& mark : marks) longest_mark = std::max(longest_mark, character_count(mark.text));
  double page_height = head + foot;
  for (const Panel& panel : panels) {
    page_height += height_of(panel) + gap;
    for (const std::string& entry : legend_of(panel))
      longest_name = std::max(longest_name, std::min<std::size_t>(34, character_count(entry)));
  }
  const double mark_room =
      marks.empty() ? 0.05 : 0.3 + std::sin(40.0 / 57.3) * 9 * letter * static_cast<double>(longest_mark);
  page_height += mark_room;
  const double right = 0.7 + 13 * letter * static_cast<double>(longest_name);
  const double panel_width = page_width - left - right;

  Script script(name, title, subject.identity, page_width, page_height);
  if (!marks.empty()) {
    std::vector<std::vector<double>> rows;
    for (const Mark& mark : marks) rows.push_back({mark.time});
    script.block("marks", {"commands and first contacts [s]"}, rows);
  }
  std::vector<std::vector<std::size_t>> rows_of;
  for (std::size_t p = 0; p < panels.size(); ++p) {
    rows_of.push_back(shown_rows(subject, panels[p]));
    if (panels[p].curves.empty()) continue;
    std::vector<std::string> columns = {"time [s]"};
    for (const Curve& curve : panels[p].curves) columns.push_back(panels[p].label + ": " + curve.name);
    std::vector<std::vector<double>> data;
    for (const std::size_t row : rows_of.back()) {
      data.push_back({subject.record.time[row]});
      for (const Curve& curve : panels[p].curves) data.back().push_back(curve.values[row]);
    }
    script.block("panel" + std::to_string(p + 1), columns, data);
  }

  script.line("set multiplot");
  script.line(
      fmt::format("set xrange [{:.9g}:{:.9g}]\nset lmargin at screen {:.5f}\nset rmargin at screen {:.5f}",
                  subject.from, subject.to, left / page_width, 1 - right / page_width));
  script.line(
      fmt::format("set key at screen {:.5f}, graph 1 left top Left reverse samplen 2 spacing 1.1 noenhanced",
                  1 - (right - 0.15) / page_width));
  double top = page_height - head - mark_room;
  for (std::size_t p = 0; p < panels.size(); ++p) {
    const Panel& panel = panels[p];
    const double height = height_of(panel);
    const std::string block = "panel" + std::to_string(p + 1);
    script.line(fmt::format("\n# Panel {}", p + 1));
    if (p == 1) script.line("unset label\nunset arrow");
    if (p > 1) script.line("unset label");
    if (p == 0) label_marks(script, subject, marks, panel_width, height);
    script.line(fmt::format("set tmargin at screen {:.5f}\nset bmargin at screen {:.5f}", top / page_height,
                            (top - height) / page_height));
    script.line(fmt::format("set label 1003 {} at screen {:.5f}, graph 0.5 center rotate by 90 noenhanced",
                            gnuplot_text(panel.label), 0.3 / page_width));
    script.line(p + 1 == panels.size() ? "set format x '%g'\nset xlabel 'time [s]'"
                                       : "set format x ''\nunset xlabel");
    script.line(panel.rows.empty() ? "set ytics auto" : "unset ytics");
    const auto [low, high] = vertical_range(panel, rows_of[p]);
    script.line(fmt::format("set yrange [{:.7g}:{:.7g}]", low, high));
    std::string command = panel.rows.empty() ? curves(panel, block) : bars(script, panel, block);
    if (!marks.empty())
      command = fmt::format(
                    ", \\\n     $marks using 1:({:.7g}):(0):({:.7g}) with vectors nohead lc rgb '#909090' lw "
                    "0.7 dt 3 notitle",
                    low, high - low) +
                command;
    script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
    top -= height + gap;
  }
  script.line("unset multiplot");
  return script;
}

}  // namespace sinewright::plot
