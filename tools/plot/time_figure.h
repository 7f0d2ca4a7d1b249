#pragma once

#include <string>
#include <utility>
#include <vector>

#include "plot/figures.h"

namespace sinewright::plot {

/// A curve over the record's times, in the unit that its panel shows.
struct Curve {
  std::string name;
  std::vector<double> values;
  std::string color;
  int dash = 1;
};

/// A limit, drawn as a thin dashed line across its panel.
struct Level {
  std::string name;
  double value = 0;
  std::string color;
};

/// Stretches of time in which something holds.
struct Bar {
  std::string kind;  ///< named in the legend once
  std::string color;
  std::vector<std::pair<double, double>> when;  ///< [s]
};

/// Bars of one thing, one above the other.
struct BarRow {
  std::string name;
  std::vector<Bar> bars;
};

/// One of the panels that stand above each other. It holds curves, or rows of bars.
struct Panel {
  std::string label;  ///< of the vertical axis, with the unit
  std::vector<Curve> curves;
  bool from_zero = false;
  double least_span =
      0;  ///< the axis covers at least this much, so that rounding noise does not fill a panel
  std::vector<Level> levels = {};
  std::vector<BarRow> rows = {};
};

/// A figure with time to the right, and commands and first contacts marked.
[[nodiscard]] Script time_figure(const Subject& subject, const std::string& name, const std::string& title,
                                 const std::vector<Panel>& panels);

}  // namespace sinewright::plot
