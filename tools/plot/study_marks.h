#pragma once

#include <span>
#include <string>
#include <vector>

#include "plot/gnuplot.h"
#include "plot/study_view.h"

namespace sinewright::plot {

/// How rows are marked in every figure of a study: those that meet all requirements, those that miss one, those that could not be run.
namespace row_mark {
inline const char* const kMet = "points pt 7 ps 0.55 lc rgb '#14507a'";
inline const char* const kMissed = "points pt 6 ps 0.7 lw 1 lc rgb '#d98800'";
inline const char* const kBroken = "points pt 2 ps 0.7 lw 1.4 lc rgb '#982a00'";
inline const char* const kDrawn = "lines lc rgb '#404040' lw 1 dt 2";
}  // namespace row_mark

/// Entries of a legend for the kinds of rows that [first, last) holds.
[[nodiscard]] std::vector<std::string> row_legend(const record::StudyRecord& table, std::uint64_t first, std::uint64_t last);

/// A line at each bound with its words, and a tint where it is not met. A bound outside the extent is named at the frame.
/// @param across  the outcome lies along the page; else up.
void draw_bounds(Script& script, std::span<const Bound> bounds, const Extent& extent, bool across);
/// The entry of a legend for them; empty if there are none.
[[nodiscard]] std::vector<std::string> bound_legend(bool any);

/// Writes an axis of options: their names at 0, 1, …. Names are labels, since gnuplot reads a tic's text as a format.
/// @param width  of the panel [inch]; names that have no room in it are written aslant, which needs `kSlantRoom` more below.
void option_axis(Script& script, const std::vector<std::string>& options, double width);
/// Whether they have no room.
[[nodiscard]] bool slanted(const std::vector<std::string>& options, double width);
inline constexpr double kSlantRoom = 0.6;  ///< [inch]

/// Name of page `page` (from 0) of a figure of several.
[[nodiscard]] std::string page_name(const std::string& name, std::size_t page);

}  // namespace sinewright::plot
