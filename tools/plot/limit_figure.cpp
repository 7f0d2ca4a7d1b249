// A limit: every run that was made for it and the answer; of a map, the answers over its axes.

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "plot/figures.h"
#include "quantity/invalid_input.h"

namespace sinewright::plot {

namespace {

// Tics by number, for axis values are texts of any kind.
std::string tics(const std::vector<std::string>& values) {
  std::string list;
  for (std::size_t i = 0; i < values.size(); ++i)
    list += fmt::format("{}{} {}", i ? ", " : "", gnuplot_text(shortened(values[i], 24)), i);
  return "(" + list + ")";
}

std::string label_of(const record::LimitRecord& record) {
  return record.quantity + (record.unit.empty() || record.unit == "1" ? "" : " [" + record.unit + "]");
}

void search_lines(Script& script, const record::LimitRecord& record) {
  std::string command;
  const record::KeptLimit& limit = record.limits.front();
  std::vector<std::vector<double>> holds, fails;
  for (const auto& run : limit.runs) (run.holds ? holds : fails).push_back({run.value, run.holds ? 1.0 : 0.0});
  const auto add = [&](const char* name, const char* title, const std::vector<std::vector<double>>& rows, std::size_t tone, int point) {
    if (rows.empty()) return;
    script.block(name, {record.quantity, "1: the requirements hold"}, rows);
    command += fmt::format(", \\\n     ${} using 1:2 with points pt {} ps 1.2 lc rgb '{}' title '{}'", name, point, color(tone), title);
  };
  add("holds", "requirements hold", holds, 0, 7);
  add("fails", "do not hold", fails, 1, 6);
  script.line(fmt::format("set xlabel {} noenhanced", gnuplot_text(label_of(record))));
  if (record.logarithmic) script.line("set logscale x");
  script.line("set yrange [-0.35:1.35]\nset ytics ('no' 0, 'yes' 1)\nset ylabel 'requirements hold'\nset key at screen 0.96, screen 0.845 right center horizontal Right samplen 1.5");
  if (limit.found)
    script.line(fmt::format("set arrow 1 from {0:.12g}, graph 0 to {0:.12g}, graph 1 nohead lw 1.5 dt 2\n"
                            "set label 1 {1} at {0:.12g}, 0.5 offset 1,0 noenhanced",
                            limit.value, gnuplot_text(fmt::format("{:.4g} ± {:.2g}", limit.value, limit.error))));
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
}

void ramp_lines(Script& script, const record::LimitRecord& record) {
  const record::KeptLimit& limit = record.limits.front();
  std::vector<std::vector<double>> rows;
  for (const auto& run : limit.runs)
    if (run.holds) rows.push_back({run.rate / limit.runs.front().rate, run.value});
  script.line("set xlabel 'rate of the rise, as part of the first'\nset logscale x 2\nset key bottom right noenhanced");
  script.line(fmt::format("set ylabel {} noenhanced", gnuplot_text(label_of(record))));
  if (rows.empty()) {
    script.line("set label 1 'the event did not come' at graph 0.5, graph 0.5 center\nset xrange [0.1:1]\nset yrange [0:1]\nplot NaN notitle");
    return;
  }
  double low = rows.front()[1], high = low;
  for (const auto& row : rows) low = std::min(low, row[1]), high = std::max(high, row[1]);
  // No less than 5 % of the answer in height, else the smallest change would look like a big one.
  const double room = std::max(0.2 * (high - low), 0.025 * std::abs(high));
  script.block("runs", {"rate / first rate", label_of(record)}, rows);
  script.line(fmt::format("set yrange [{:.12g}:{:.12g}]\nset xrange [{:.6g}:1.3]", low - room, high + room, 0.75 * rows.back()[0]));
  script.line(fmt::format("plot $runs using 1:2 with linespoints lw 2 pt 7 ps 1.2 lc rgb '{}' title {}", color(0),
                          gnuplot_text(fmt::format("{:.4g} ± {:.2g}{}", limit.value, limit.error, limit.settled ? "" : ", NOT SETTLED"))));
}

void map_lines(Script& script, const record::LimitRecord& record) {
  // The longer axis lies along the page, the shorter one makes the curves.
  const bool two = record.axes.size() > 1;
  const bool turned = two && record.axes[1].second.size() > record.axes[0].second.size();
  const auto& [name, values] = record.axes[turned ? 1 : 0];
  const auto& curve_axis = record.axes[two && !turned ? 1 : 0];
  const std::size_t curves = two ? curve_axis.second.size() : 1, inner = two ? record.axes[1].second.size() : 1;
  std::string command;
  double most = 0;
  for (std::size_t c = 0; c < curves; ++c) {
    std::vector<std::vector<double>> rows;
    for (std::size_t r = 0; r < values.size(); ++r) {
      const record::KeptLimit& limit = record.limits[turned ? c * inner + r : r * inner + c];
      if (!limit.found) continue;
      rows.push_back({static_cast<double>(r), limit.value, std::isfinite(limit.error) ? limit.error : 0});
      most = std::max(most, limit.value + rows.back()[2]);
    }
    if (rows.empty()) continue;
    const std::string block = fmt::format("curve{}", c + 1);
    script.block(block, {"place on " + name, label_of(record), "error"}, rows);
    command += fmt::format(", \\\n     ${0} using 1:2:3 with yerrorbars pt 7 ps 1 lw 2 lc rgb '{1}' notitle, ${0} using 1:2 with lines lw 2 lc rgb '{1}' {2}",
                           block, color(c), two ? "title " + gnuplot_text(curve_axis.first + " " + curve_axis.second[c]) : "notitle");
  }
  script.line(fmt::format("set xlabel {} noenhanced\nset ylabel {} noenhanced\nset xtics {}\nset xrange [-0.5:{}]", gnuplot_text(name),
                          gnuplot_text(label_of(record)), tics(values), static_cast<double>(values.size()) - 0.5));
  if (command.empty()) {
    script.line("set label 1 'no limit was found' at graph 0.5, graph 0.5 center\nset yrange [0:1]\nplot NaN notitle");
    return;
  }
  script.line(fmt::format("set yrange [0:{:.6g}]\nset key at screen 0.96, screen 0.845 right center horizontal Right samplen 1.5 noenhanced", 1.15 * most));
  script.line("plot " + command.substr(command.find_first_not_of(", \\\n")));
}

}  // namespace

Script limit_figure(const record::LimitRecord& record) {
  if (record.method == "directions") return record.in_plane ? direction_figure(record) : sphere_figure(record);
  Script script("limit", shortened(record.name, 80), "sinewright " + record.inputs.engine_version + " · design prediction, not certification", 9, 5.5);
  script.line("set lmargin at screen 0.11\nset rmargin at screen 0.96\nset tmargin at screen 0.80\nset bmargin at screen 0.14");
  if (!record.axes.empty())
    map_lines(script, record);
  else if (record.method == "search")
    search_lines(script, record);
  else
    ramp_lines(script, record);
  return script;
}

Script limit_map_figure(const record::LimitRecord& record) {
  const auto& [row_name, row_values] = record.axes.at(0);
  const auto& [column_name, column_values] = record.axes.at(1);
  const std::size_t rows = row_values.size(), columns = column_values.size();
  constexpr double cell_width = 0.62, cell_height = 0.5;
  const double width = std::max(6.5, 2.6 + cell_width * static_cast<double>(columns)), height = 2.1 + cell_height * static_cast<double>(rows);
  Script script("limit-map", shortened(record.name, 80), "sinewright " + record.inputs.engine_version + " · design prediction, not certification",
                width, height);
  std::vector<std::vector<double>> fields;
  std::size_t none = 0;
  for (std::size_t r = 0; r < rows; ++r)
    for (std::size_t c = 0; c < columns; ++c) {
      const record::KeptLimit& limit = record.limits[r * columns + c];
      if (limit.found)
        fields.push_back({static_cast<double>(c), static_cast<double>(r), limit.value});
      else
        ++none;
    }
  script.line(fmt::format("set lmargin at screen {:.4f}\nset rmargin at screen {:.4f}\nset tmargin at screen {:.4f}\nset bmargin at screen {:.4f}",
                          1.1 / width, 1 - 1.15 / width, 1 - 0.95 / height, 0.8 / height));
  script.line(fmt::format("set xlabel {} noenhanced\nset ylabel {} noenhanced\nset xtics {} scale 0\nset ytics {} scale 0", gnuplot_text(column_name),
                          gnuplot_text(row_name), tics(column_values), tics(row_values)));
  script.line(fmt::format("set xrange [-0.5:{}]\nset yrange [-0.5:{}]\nunset grid\nset key off", static_cast<double>(columns) - 0.5,
                          static_cast<double>(rows) - 0.5));
  if (none > 0)
    script.line(fmt::format("set label 1 'empty: no limit found ({} of {})' at graph 1, screen {:.4f} right font ',10'", none, rows * columns, 0.25 / height));
  if (fields.empty()) {
    script.line("plot NaN notitle");
    return script;
  }
  // One hue from dark to light, so that it reads without colours, too; the numbers say the rest.
  script.line(fmt::format("set palette defined (0 '#1d3f5e', 0.5 '#7ba3bd', 1 '#f2f0e6')\nset cblabel {} noenhanced offset 1,0",
                          gnuplot_text(label_of(record))));
  double low = fields.front()[2], high = low;
  for (const auto& field : fields) low = std::min(low, field[2]), high = std::max(high, field[2]);
  if (high <= low) high = low + std::max(1e-12, std::abs(low));
  script.line(fmt::format("set cbrange [{:.6g}:{:.6g}]", low, high));
  script.block("fields", {"place on " + column_name, "place on " + row_name, label_of(record)}, fields);
  const double half = low + 0.45 * (high - low);
  script.line(fmt::format("plot $fields using 1:2:3 with image pixels, \\\n"
                          "     $fields using 1:2:($3 < {0:.6g} ? sprintf('%.3g', $3) : '') with labels tc rgb '#ffffff' font ',11', \\\n"
                          "     $fields using 1:2:($3 < {0:.6g} ? '' : sprintf('%.3g', $3)) with labels tc rgb '#20282d' font ',11'", half));
  return script;
}

std::vector<std::filesystem::path> draw_limit(const std::filesystem::path& record_file, const std::filesystem::path& folder,
                                              const std::vector<std::string>& formats) {
  const record::LimitRecord record = record::read_limit(record_file);
  make_folder(folder);
  auto files = draw(limit_figure(record), folder, formats);
  if (record.axes.size() == 2) {
    const auto more = draw(limit_map_figure(record), folder, formats);
    files.insert(files.end(), more.begin(), more.end());
  }
  return files;
}

}  // namespace sinewright::plot
