#include "plot/figures.h"

#include <fmt/format.h>

#include "quantity/invalid_input.h"
#include "reading/reading.h"

namespace sinewright::plot {

std::vector<std::filesystem::path> draw_all(const std::filesystem::path& record_file, const std::filesystem::path& folder,
                                            const std::vector<std::string>& formats) {
  const record::Record record = record::read_record(record_file);
  reading::Source source(record.inputs.files);
  const model::Scenario scenario = reading::read_scenario(source, record.inputs.scenario_path, record.inputs.overrides);
  std::string identity = fmt::format("{} · {} · sinewright {}", scenario.name, scenario.model.name, record.inputs.engine_version);
  if (record.outcome != "complete") identity += fmt::format(" · not the whole run: {}", record.outcome.substr(0, 60));
  if (record.time.size() < 2) throw InvalidInput(record_file.string() + ": the record holds fewer than two samples; nothing to draw");

  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error) throw InvalidInput(fmt::format("{}: the folder cannot be made: {}", folder.string(), error.message()));

  const Subject subject{record, scenario, identity};
  std::vector<Script> scripts = {posture_figure(subject), angle_figure(subject)};
  if (!scenario.model.cords.empty()) scripts.push_back(tension_figure(subject));
  if (!scenario.objects.empty()) scripts.push_back(force_figure(subject));
  if (!scenario.model.drives.empty()) scripts.push_back(drive_figure(subject));
  if (!record.summary.empty()) scripts.push_back(loss_figure(subject));
  scripts.push_back(energy_figure(subject));
  std::vector<std::filesystem::path> files;
  for (const Script& script : scripts)
    for (auto& file : draw(script, folder, formats)) files.push_back(std::move(file));
  return files;
}

}  // namespace sinewright::plot
