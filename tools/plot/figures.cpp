#include "plot/figures.h"

#include <algorithm>

#include <fmt/format.h>

#include "quantity/invalid_input.h"
#include "reading/reading.h"

namespace sinewright::plot {

namespace {

std::string identity_of(const record::Record& record, const model::Scenario& scenario) {
  std::string text = fmt::format("{} · {} · sinewright {}", shortened(scenario.name, 60),
                                 shortened(scenario.model.name, 40), record.inputs.engine_version);
  if (record.outcome == "partial") return text + " · PARTIAL RECORD: the run was cut off";
  if (record.outcome != "complete") text += " · NOT THE WHOLE RUN: " + shortened(record.outcome, 60);
  return text;
}

}  // namespace

void make_folder(const std::filesystem::path& folder) {
  std::error_code error;
  std::filesystem::create_directories(folder, error);
  if (error) throw InvalidInput(fmt::format("{}: the folder cannot be made: {}", folder.string(), error.message()));
}

std::vector<std::filesystem::path> draw_all(const std::filesystem::path& record_file,
                                            const std::filesystem::path& folder, const DrawOptions& options) {
  const record::Record record = record::read_record(record_file);
  reading::Source source(record.inputs.files);
  const model::Scenario scenario =
      reading::read_scenario(source, record.inputs.scenario_path, record.inputs.overrides);
  if (record.time.size() < 2)
    throw InvalidInput(fmt::format("{}: the record holds {} sample{}; needed to draw: two",
                                   record_file.string(), record.time.size(),
                                   record.time.size() == 1 ? "" : "s"));
  const double from = std::max(options.from, record.time.front()),
               to = std::min(options.to, record.time.back());
  const auto shown =
      std::count_if(record.time.begin(), record.time.end(), [&](double t) { return t >= from && t <= to; });
  if (!(from < to) || shown < 2)
    throw InvalidInput(
        fmt::format("{}: no two samples lie between {:g} s and {:g} s; the record goes from {:g} s to {:g} s",
                    record_file.string(), options.from, options.to, record.time.front(), record.time.back()));

  make_folder(folder);

  const Subject subject{record, scenario, identity_of(record, scenario), from, to};
  std::vector<Script> scripts = {posture_figure(subject)};
  const bool joints = std::any_of(scenario.model.bodies.begin(), scenario.model.bodies.end(),
                                  [](const auto& b) { return b.moves(); });
  if (joints) scripts.push_back(angle_figure(subject));
  if (!scenario.model.cords.empty()) scripts.push_back(tension_figure(subject));
  if (!scenario.objects.empty()) scripts.push_back(force_figure(subject));
  if (!scenario.model.drives.empty()) scripts.push_back(drive_figure(subject));
  const bool senses = std::any_of(scenario.model.drives.begin(), scenario.model.drives.end(), [&](const auto& drive) {
    const std::string base = "/drives/" + drive.name;  // a record from before there were sensors has none of their data
    return (drive.sensor && record.find(base + "/sensor/reading") >= 0) || (drive.current_sense && record.find(base + "/current_sense/reading") >= 0);
  });
  if (senses) scripts.push_back(sensing_figure(subject));
  if (!scenario.controllers.empty()) scripts.push_back(control_figure(subject));
  if (!scenario.model.drives.empty() && !record.summary.empty()) scripts.push_back(loss_figure(subject));
  if (!record.margins.values.empty()) scripts.push_back(margin_figure(subject));
  scripts.push_back(energy_figure(subject));
  std::vector<std::filesystem::path> files;
  for (const Script& script : scripts)
    for (auto& file : draw(script, folder, options.formats)) files.push_back(std::move(file));
  return files;
}

}  // namespace sinewright::plot
