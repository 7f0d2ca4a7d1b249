#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "plot/figures.h"
#include "plot/study_figures.h"
#include "quantity/quantity.h"

namespace sinewright::tool {

namespace {

double time_from(const std::string& option, const std::string& text) {
  try {
    return parse_quantity(text, "s").si;
  } catch (const QuantityProblem& problem) {
    throw InvalidInput(fmt::format("{} '{}' is no time\n  needed: {}\n  hint:   {}", option, text, problem.needed, problem.hint));
  }
}

}  // namespace

int plot_command(const std::vector<std::string>& records, const PlotOptions& shown, const CommonOptions& options) {
  namespace fs = std::filesystem;
  if (!options.set.empty()) throw InvalidInput("plot draws what a record holds; --set belongs to 'sinewright run'");
  const std::string& record = records.front();
  fs::path folder = options.out;
  if (folder.empty()) folder = fs::path(record).replace_extension();
  if (folder == fs::path(record)) folder += "-figures";
  if (records.size() > 1 && options.out.empty()) folder += "-overlay";
  plot::DrawOptions draw;
  draw.formats = shown.formats;
  if (!shown.from.empty()) draw.from = time_from("--from", shown.from);
  if (!shown.to.empty()) draw.to = time_from("--to", shown.to);
  if (records.size() > 1)
    for (const std::string& one : records)
      if (const char* what = !fs::is_regular_file(one) ? nullptr : record::is_limit(one) ? "record of a limit" : record::is_study(one) ? "table of a study" : nullptr)
        throw InvalidInput(fmt::format("{} is the {}, which cannot be laid over others\n  needed: records of runs, or this one alone", one, what));
  const bool limit = record::is_limit(record), study = record::is_study(record);
  if ((limit || study) && (!shown.from.empty() || !shown.to.empty()))
    throw InvalidInput(fmt::format("the {} has no stretch of time to show: leave --from and --to out", limit ? "record of a limit" : "table of a study"));
  const auto files = records.size() > 1 ? plot::draw_overlay({records.begin(), records.end()}, folder, draw)
                     : limit            ? plot::draw_limit(record, folder, draw.formats)
                     : study            ? plot::draw_study(record, folder, draw.formats)
                                        : plot::draw_all(record, folder, draw);
  if (options.json) {
    nlohmann::ordered_json json;
    for (const auto& file : files) json["files"].push_back(file.string());
    fmt::print("{}\n", json.dump(2));
  } else if (!options.quiet) {
    for (const auto& file : files)
      if (file.extension() != ".gp") fmt::print("{}\n", file.string());
  }
  return done;
}

}  // namespace sinewright::tool
