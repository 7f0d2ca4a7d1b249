#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "plot/gnuplot.h"

namespace sinewright::plot {

/// Panels of one size in rows on a page, below the heading and a legend that holds for all of them. Lengths in inches.
struct Sheet {
  std::size_t columns = 1, rows = 1;
  double panel_width = 4, panel_height = 2.2;
  double left = 1.0;          ///< before the first panel of a row, for what is written at its axis
  double between = 0.9;       ///< from panel to panel
  double right = 0.3;         ///< after the last one
  double above = 0.15;        ///< over each panel
  double below = 0.65;        ///< under each panel
  std::vector<std::string> legend;  ///< plot elements that stand for a kind: "with points pt 7 title 'x'"
  std::size_t legend_columns = 4;

  [[nodiscard]] double head() const;  ///< height of heading and legend
  [[nodiscard]] double width() const;
  [[nodiscard]] double height() const;
};

/// Begins panel number `number`, counted along the rows: its frame, and nothing left of the one before. Before the first comes the legend.
void open_panel(Script& script, const Sheet& sheet, std::size_t number);
/// Plots the elements, each without its comma. An empty list leaves an empty frame; both ranges must be set.
void plot_panel(Script& script, const std::vector<std::string>& elements);
void close_sheet(Script& script);

/// What a panel shows, above it; needs room there.
void title_panel(Script& script, const std::string& title);
/// Some words in the middle of an otherwise empty panel.
void say_in_panel(Script& script, const std::string& words);

}  // namespace sinewright::plot
