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
  const auto& [name, values] = record.axes.front();
  const std::size_t n = record.axes.size() > 1 ? record.axes[1].second.size() : 1;
  std::string command;
  double most = 0;
  for (std::size_t c = 0; c < n; ++c) {
    std::vector<std::vector<double>> rows;
    for (std::size_t r = 0; r < values.size(); ++r) {
      const record::KeptLimit& limit = record.limits[r * n + c];
      if (!limit.found) continue;
      rows.push_back({static_cast<double>(r), limit.value, std::isfinite(limit.error) ? limit.error : 0});
      most = std::max(most, limit.value + rows.back()[2]);
    }
    if (rows.empty()) continue;
    const std::string block = fmt::format("curve{}", c + 1);
    script.block(block, {"place on " + name, label_of(record), "error"}, rows);
    command += fmt::format(", \\\n     ${0} using 1:2:3 with yerrorbars pt 7 ps 1 lw 2 lc rgb '{1}' notitle, ${0} using 1:2 with lines lw 2 lc rgb '{1}' {2}",
                           block, color(c), n > 1 ? "title " + gnuplot_text(record.axes[1].first + " " + record.axes[1].second[c]) : "notitle");
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

std::vector<std::filesystem::path> draw_limit(const std::filesystem::path& record_file, const std::filesystem::path& folder,
                                              const std::vector<std::string>& formats) {
  const record::LimitRecord record = record::read_limit(record_file);
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error) throw InvalidInput(fmt::format("{}: the folder cannot be made: {}", folder.string(), error.message()));
  return draw(limit_figure(record), folder, formats);
}

}  // namespace sinewright::plot
