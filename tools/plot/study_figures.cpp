#include "plot/study_figures.h"

#include <iterator>

#include <fmt/format.h>

#include "plot/figures.h"
#include "quantity/invalid_input.h"

namespace sinewright::plot {

namespace {

void add(std::vector<Script>& all, std::vector<Script> some) {
  std::move(some.begin(), some.end(), std::back_inserter(all));
}

}  // namespace

std::vector<Script> study_figures(const StudyView& view) {
  const record::StudyRecord& table = view.table;
  std::vector<Script> scripts;
  if (table.kind == "grid" && table.varied.size() <= 2)
    add(scripts, curve_figures(view));
  else if (table.kind != "optimise")
    add(scripts, scatter_figures(view, 0, table.rows(), true));
  if (table.kind == "grid") add(scripts, study_map_figures(view));
  if (table.kind == "sensitivity") add(scripts, index_figures(view));
  if (table.kind == "screening") add(scripts, effect_figures(view));
  if (table.kind == "optimise") {
    scripts.push_back(progress_figure(view));
    add(scripts, scatter_figures(view, 0, table.designs, false));
    add(scripts, front_figures(view));
  }
  if (view.findings.yield) {
    add(scripts, distribution_figures(view));
    add(scripts, yield_figures(view));
    scripts.push_back(cause_figure(view));
  }
  return scripts;
}

std::vector<std::filesystem::path> draw_study(const std::filesystem::path& table_file, const std::filesystem::path& folder, const std::vector<std::string>& formats) {
  const record::StudyRecord table = record::read_study(table_file);
  if (table.rows() == 0) throw InvalidInput(fmt::format("{}: the table has no rows, so there is nothing to draw", table_file.string()));
  make_folder(folder);
  const study::Findings findings = study::findings_of(table);
  std::vector<std::filesystem::path> files;
  for (const Script& script : study_figures({table, findings, identity_of(table)}))
    for (auto& file : draw(script, folder, formats)) files.push_back(std::move(file));
  return files;
}

}  // namespace sinewright::plot
