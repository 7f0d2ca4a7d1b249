#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "model/scenario.h"
#include "plot/gnuplot.h"
#include "record/limit_file.h"
#include "record/reader.h"

namespace sinewright::plot {

/// What every figure needs: the record, and the scenario read again from the record's own inputs.
struct Subject {
  const record::Record& record;
  const model::Scenario& scenario;
  std::string identity;  ///< scenario, model, engine version; says so if the record is partial
  double from = 0;       ///< stretch of time shown [s], within the record
  double to = 0;
};

[[nodiscard]] Script posture_figure(const Subject& subject);
[[nodiscard]] Script tension_figure(const Subject& subject);
[[nodiscard]] Script angle_figure(const Subject& subject);
[[nodiscard]] Script force_figure(const Subject& subject);
[[nodiscard]] Script drive_figure(const Subject& subject);
[[nodiscard]] Script sensing_figure(const Subject& subject);
[[nodiscard]] Script control_figure(const Subject& subject);
[[nodiscard]] Script loss_figure(const Subject& subject);
[[nodiscard]] Script margin_figure(const Subject& subject);
[[nodiscard]] Script energy_figure(const Subject& subject);

[[nodiscard]] Script limit_figure(const record::LimitRecord& record);
/// Of a pull in many directions, with all that a map adds to it: those of a plane as closed curves, those of the sphere (of the first
/// variant) on its two halves.
[[nodiscard]] Script direction_figure(const record::LimitRecord& record);
[[nodiscard]] Script sphere_figure(const record::LimitRecord& record);
/// Of a limit with two axes: every value in a field of its own, darker where it is lower.
[[nodiscard]] Script limit_map_figure(const record::LimitRecord& record);

/// A record under the name that its curves go by.
struct Overlaid {
  std::string name;
  record::Record record;
};

/// What several records have in common over one time axis: joint angles, sum of normal forces, tensions, currents.
/// @throws InvalidInput if that is nothing.
[[nodiscard]] Script overlay_figure(const std::vector<Overlaid>& records, double from, double to);

struct DrawOptions {
  std::vector<std::string> formats = {"png", "svg", "pdf"};
  double from = 0;    ///< [s]; the figures over time begin here
  double to = 1e300;  ///< [s]; and end here
};

/// Draws all figures that the record has data for into a folder, which is made if needed.
/// @returns the files written.
/// @throws InvalidInput (gnuplot is missing, folder or stretch of time do not fit), record::RecordError.
std::vector<std::filesystem::path> draw_all(const std::filesystem::path& record_file,
                                            const std::filesystem::path& folder,
                                            const DrawOptions& options = {});

/// Draws the overlay of several records. @throws as draw_all.
std::vector<std::filesystem::path> draw_overlay(const std::vector<std::filesystem::path>& record_files, const std::filesystem::path& folder,
                                                const DrawOptions& options = {});

/// @throws InvalidInput if the folder cannot be made.
void make_folder(const std::filesystem::path& folder);

/// Draws the record of a limit.
std::vector<std::filesystem::path> draw_limit(const std::filesystem::path& record_file, const std::filesystem::path& folder,
                                              const std::vector<std::string>& formats);

}  // namespace sinewright::plot
