#include <fmt/format.h>

#include <filesystem>
#include <nlohmann/json.hpp>

#include "commands.h"
#include "plot/figures.h"
#include "quantity/invalid_input.h"

namespace sinewright::tool {

int plot_command(const std::string& record, const std::vector<std::string>& formats, const CommonOptions& options) {
  namespace fs = std::filesystem;
  fs::path folder = options.out;
  if (folder.empty()) folder = fs::path(record).replace_extension();
  if (folder == fs::path(record)) folder += "-plots";
  if (!options.set.empty()) throw InvalidInput("plot draws what a record holds; --set belongs to 'sinewright run'");
  const auto files = plot::draw_all(record, folder, formats);
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
