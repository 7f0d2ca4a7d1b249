#include "plot/study_marks.h"

#include <algorithm>

#include <fmt/format.h>

namespace sinewright::plot {

std::vector<std::string> row_legend(const record::StudyRecord& table, std::uint64_t first, std::uint64_t last) {
  bool met = false, missed = false, broken = false;
  for (std::uint64_t row = first; row < last; ++row) {
    met = met || passes(table, row);
    missed = missed || table.states[row] == record::RowState::missed;
    broken = broken || !ran(table, row);
  }
  std::vector<std::string> entries;
  if (met && (missed || broken || !table.requirements.empty())) entries.push_back(fmt::format("with {} title 'meets all requirements'", row_mark::kMet));
  if (missed) entries.push_back(fmt::format("with {} title 'misses a requirement'", row_mark::kMissed));
  if (broken) entries.push_back(fmt::format("with {} title 'no valid model, or could not go on'", row_mark::kBroken));
  return entries;
}

std::vector<std::string> bound_legend(bool any) {
  if (!any) return {};
  return {"with boxes fs solid 1 noborder lc rgb '#fbe3d6' title 'not allowed by a requirement'"};
}

void draw_bounds(Script& script, std::span<const Bound> bounds, const Extent& extent, bool across) {
  std::size_t outside = 0, inside = 0;
  for (const Bound& bound : bounds) {
    if (bound.value < extent.low || bound.value > extent.high) {
      // The whole panel lies on one side of it.
      const bool below = bound.value < extent.low;
      const std::string words = fmt::format("{} ({})", bound.text, (below == bound.at_least) ? "all shown meet it" : "none shown meets it");
      script.line(fmt::format("set label {} at graph 0.98, graph {:.3f} right font ',9' tc rgb '#982a00' noenhanced front", gnuplot_text(words),
                              0.94 - 0.1 * static_cast<double>(outside++)));
      continue;
    }
    const char* edge = bound.at_least ? "0" : "1";
    if (across) {
      script.line(fmt::format("set object rectangle from first {0:.10g}, graph 0 to graph {1}, graph 1 fc rgb '#fbe3d6' fs solid 1 noborder behind\n"
                              "set arrow from first {0:.10g}, graph 0 to first {0:.10g}, graph 1 nohead lw 1.4 lc rgb '#982a00' front\n"
                              "set label {2} at first {0:.10g}, graph {3:.3f} {4} offset {5},0 font ',9' tc rgb '#982a00' noenhanced front",
                              bound.value, edge, gnuplot_text(bound.text), 0.955 - 0.075 * static_cast<double>(inside), bound.at_least ? "left" : "right",
                              bound.at_least ? "0.4" : "-0.4"));
    } else {
      script.line(fmt::format("set object rectangle from graph 0, first {0:.10g} to graph 1, graph {1} fc rgb '#fbe3d6' fs solid 1 noborder behind\n"
                              "set arrow from graph 0, first {0:.10g} to graph 1, first {0:.10g} nohead lw 1.2 lc rgb '#982a00' front\n"
                              "set label {2} at graph 0.985, first {0:.10g} right offset 0,{3} font ',9' tc rgb '#982a00' noenhanced front",
                              bound.value, edge, gnuplot_text(bound.text), bound.at_least ? "-0.5" : "0.5"));
    }
    ++inside;
  }
}

bool slanted(const std::vector<std::string>& options, double width) {
  constexpr double letter = 0.065;  // [inch]
  const double room = width / static_cast<double>(std::min<std::size_t>(12, std::max<std::size_t>(1, options.size())));
  return std::any_of(options.begin(), options.end(), [&](const std::string& option) { return letter * static_cast<double>(character_count(option) + 1) > room; });
}

void option_axis(Script& script, const std::vector<std::string>& options, double width) {
  const char* way = slanted(options, width) ? "right rotate by 35 offset 0.6,-0.7" : "center offset 0,-0.8";
  constexpr std::size_t longest = 14;
  script.line(fmt::format("set xrange [-0.6:{:.4g}]\nset xtics 1 scale 0\nset format x ''", static_cast<double>(options.size()) - 0.4));
  // More names than fit are left to the table.
  const std::size_t step = (options.size() + 11) / 12;
  for (std::size_t i = 0; i < options.size(); i += step)
    script.line(fmt::format("set label {} at first {}, graph 0 {} font ',9' noenhanced", gnuplot_text(shortened(options[i], longest)), i, way));
}

std::string page_name(const std::string& name, std::size_t page) {
  return page == 0 ? name : fmt::format("{}-{}", name, page + 1);
}

}  // namespace sinewright::plot
