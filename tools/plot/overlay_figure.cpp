// Several records over one time axis: what they have in common, a curve for each.

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include <fmt/format.h>

#include "plot/figures.h"
#include "quantity/invalid_input.h"

namespace sinewright::plot {

namespace {

struct Panel {
  std::string label;
  std::vector<std::vector<double>> values;  // per record
};

// A panel of a channel that all records have; of others nothing.
void add(std::vector<Panel>& panels, const std::vector<Overlaid>& records, const std::string& path, const std::string& label, double factor, int column = 0) {
  Panel panel{label, {}};
  for (const Overlaid& one : records) {
    if (one.record.find(path) < 0) return;
    panel.values.push_back(one.record.column(path, column));
    for (double& value : panel.values.back()) value *= factor;
  }
  panels.push_back(std::move(panel));
}

std::vector<Panel> common_panels(const std::vector<Overlaid>& records) {
  std::vector<Panel> panels;
  const record::Record& first = records.front().record;
  constexpr double degree = 57.29577951308232;
  for (const auto& channel : first.channels)
    if (channel.path.starts_with("/joints/") && channel.path.ends_with("/angle"))
      add(panels, records, channel.path, channel.path.substr(8, channel.path.size() - 8 - 6) + " [deg]", degree);
  for (const auto& channel : first.channels)
    if (channel.path.starts_with("/joints/") && channel.path.ends_with("/position"))
      add(panels, records, channel.path, channel.path.substr(8, channel.path.size() - 8 - 9) + " [mm]", 1e3);
  // The grip is the sum over whatever each record's objects are touched by.
  Panel grip{"normal forces, sum [N]", {}};
  bool all = true;
  for (const Overlaid& one : records) {
    std::vector<double> sum(one.record.time.size(), 0.0);
    bool any = false;
    for (const auto& channel : one.record.channels)
      if (channel.path.starts_with("/contacts/") && channel.path.ends_with("/normal_force")) {
        const auto values = one.record.column(channel.path);
        for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += values[i];
        any = true;
      }
    all = all && any;
    grip.values.push_back(std::move(sum));
  }
  if (all) panels.push_back(std::move(grip));
  for (const auto& channel : first.channels) {
    if (channel.path.starts_with("/cords/") && channel.path.ends_with("/tension"))
      add(panels, records, channel.path, channel.path.substr(7, channel.path.size() - 7 - 8) + ", first span [N]", 1);
    if (channel.path.starts_with("/drives/") && channel.path.ends_with("/current") && channel.path.find("supply_current") == std::string::npos)
      add(panels, records, channel.path, channel.path.substr(8, channel.path.size() - 8 - 8) + ", current [A]", 1);
  }
  return panels;
}

}  // namespace

Script overlay_figure(const std::vector<Overlaid>& records, double from, double to) {
  const std::vector<Panel> panels = common_panels(records);
  if (panels.empty()) throw InvalidInput("the records have no joint, cord, drive or contact in common, so there is nothing to lay over each other");
  constexpr double width = 11, panel_height = 1.55, gap = 0.22, head = 0.8, foot = 0.65, left = 1.1, right = 3.2;
  const double height = head + foot + static_cast<double>(panels.size()) * (panel_height + gap);
  Script script("overlay", "Overlay of " + std::to_string(records.size()) + " records", "design predictions, not certification", width, height);
  // Each record has times of its own.
  for (std::size_t r = 0; r < records.size(); ++r) {
    std::vector<std::string> columns = {"time [s]"};
    for (const Panel& panel : panels) columns.push_back(panel.label);
    std::vector<std::vector<double>> rows;
    for (std::size_t i = 0; i < records[r].record.time.size(); ++i) {
      const double time = records[r].record.time[i];
      if (time < from || time > to) continue;
      rows.push_back({time});
      for (const Panel& panel : panels) rows.back().push_back(panel.values[r][i]);
    }
    script.block("record" + std::to_string(r + 1), columns, rows);
  }
  double last = from;
  for (const Overlaid& one : records) last = std::max(last, std::min(to, one.record.time.back()));
  script.line("set multiplot");
  script.line(fmt::format("set xrange [{:.9g}:{:.9g}]\nset lmargin at screen {:.5f}\nset rmargin at screen {:.5f}\nset key at screen {:.5f}, graph 1 left top Left reverse samplen 2 "
                          "spacing 1.2 noenhanced",
                          from, last, left / width, 1 - right / width, 1 - (right - 0.15) / width));
  double top = height - head;
  for (std::size_t p = 0; p < panels.size(); ++p) {
    script.line(fmt::format("\n# Panel {}\nset tmargin at screen {:.5f}\nset bmargin at screen {:.5f}\nset ylabel {} noenhanced", p + 1, top / height, (top - panel_height) / height,
                            gnuplot_text(panels[p].label)));
    script.line(p + 1 == panels.size() ? "set format x '%g'\nset xlabel 'time [s]'" : "set format x ''\nunset xlabel");
    if (p == 1) script.line("unset label");  // the head is written once
    std::string command;
    for (std::size_t r = 0; r < records.size(); ++r)
      command += fmt::format("{}$record{} using 1:{} with lines {} lc rgb '{}' lw 1.6 dt {}", r ? ", \\\n     " : "plot ", r + 1, p + 2,
                             p == 0 ? "title " + gnuplot_text(shortened(records[r].name, 34)) : "notitle", color(r), r % 4 + 1);
    script.line(command);
    top -= panel_height + gap;
  }
  script.line("unset multiplot");
  return script;
}

std::vector<std::filesystem::path> draw_overlay(const std::vector<std::filesystem::path>& record_files, const std::filesystem::path& folder, const DrawOptions& options) {
  std::vector<Overlaid> records;
  double from = options.from;
  for (const auto& file : record_files) {
    records.push_back({file.stem().string(), record::read_record(file)});
    if (records.back().record.time.size() < 2) throw InvalidInput(fmt::format("{}: the record holds too few samples to draw: two are needed", file.string()));
    if (!(records.back().record.time.back() > from && options.to > from))
      throw InvalidInput(fmt::format("{}: no two samples lie between {:g} s and {:g} s", file.string(), options.from, options.to));
  }
  for (std::size_t r = 1; r < records.size(); ++r)
    for (std::size_t q = 0; q < r; ++q)
      if (records[r].name == records[q].name) records[r].name = record_files[r].string();  // two folders may hold one name
  make_folder(folder);
  return draw(overlay_figure(records, from, options.to), folder, options.formats);
}

}  // namespace sinewright::plot
