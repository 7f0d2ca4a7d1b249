#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "plot/gnuplot.h"
#include "plot/study_view.h"

namespace sinewright::plot {

/// Of a grid of one or two keys: a panel for each outcome, over the key with most values; a curve for each value of the other.
[[nodiscard]] std::vector<Script> curve_figures(const StudyView& view);
/// A panel for each outcome and key, with every row as a point. @param median  whether a line through the middle is drawn, too.
/// @param first,last  rows.
[[nodiscard]] std::vector<Script> scatter_figures(const StudyView& view, std::uint64_t first, std::uint64_t last, bool median);
/// Of a grid: each outcome over two keys, a field for each pair of values; with more keys the mean over the others.
[[nodiscard]] std::vector<Script> study_map_figures(const StudyView& view);
/// How each outcome is spread over the made things.
[[nodiscard]] std::vector<Script> distribution_figures(const StudyView& view);
/// The yield over where each bound is put.
[[nodiscard]] std::vector<Script> yield_figures(const StudyView& view);
/// What goes with failing.
[[nodiscard]] Script cause_figure(const StudyView& view);
/// Shares of variance.
[[nodiscard]] std::vector<Script> index_figures(const StudyView& view);
/// Elementary effects.
[[nodiscard]] std::vector<Script> effect_figures(const StudyView& view);
/// How the search went on.
[[nodiscard]] Script progress_figure(const StudyView& view);
/// Of several goals: what stands against what.
[[nodiscard]] std::vector<Script> front_figures(const StudyView& view);

/// All figures that the study's kind has data for. Files are named after what they show; of one that needs several pages the later ones
/// have a number.
[[nodiscard]] std::vector<Script> study_figures(const StudyView& view);

/// Draws them into a folder, which is made if needed. @returns the files written.
/// @throws InvalidInput (gnuplot is missing, the folder does not fit), record::RecordError.
std::vector<std::filesystem::path> draw_study(const std::filesystem::path& table_file, const std::filesystem::path& folder,
                                              const std::vector<std::string>& formats);

}  // namespace sinewright::plot
