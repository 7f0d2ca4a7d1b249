#include "plot/study_map.h"

#include <algorithm>
#include <cmath>

#include "plot/study_view.h"

namespace sinewright::plot {

namespace {

constexpr std::size_t kMostCells = 60;  // along an axis

std::vector<double> evenly(const std::vector<double>& values, std::size_t most) {
  if (values.size() <= most) return values;
  std::vector<double> some;
  for (std::size_t i = 0; i < most; ++i) some.push_back(values[i * (values.size() - 1) / (most - 1)]);
  return some;
}

}  // namespace

std::optional<StudyMap> map_of(const record::StudyRecord& table) {
  if (table.varied.size() < 2) return std::nullopt;
  std::vector<std::vector<double>> values;
  std::vector<std::size_t> order;
  for (std::size_t k = 0; k < table.varied.size(); ++k) values.push_back(different_values(table.varied[k].values)), order.push_back(k);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const auto rank = [&](std::size_t k) { return std::pair(values[k].size() < 2, !table.varied[k].options.empty()); };
    return rank(a) != rank(b) ? rank(a) < rank(b) : values[a].size() > values[b].size();
  });
  StudyMap map;
  map.key_x = order.at(0), map.key_y = order.at(1);
  map.all_x = values[map.key_x].size(), map.all_y = values[map.key_y].size();
  map.x = evenly(values[map.key_x], kMostCells), map.y = evenly(values[map.key_y], kMostCells);
  if (map.x.size() < 2 || map.y.size() < 2) return std::nullopt;
  map.cells.assign(map.x.size() * map.y.size(), {std::vector<double>(table.outcomes.size(), 0.0), std::vector<double>(table.outcomes.size(), 0.0), 0, 0});
  const auto place = [](const std::vector<double>& list, double value) {
    const auto found = std::lower_bound(list.begin(), list.end(), value);
    return found != list.end() && *found == value ? static_cast<std::size_t>(found - list.begin()) : list.size();
  };
  for (std::uint64_t row = 0; row < table.rows(); ++row) {
    const std::size_t i = place(map.x, table.varied[map.key_x].values[row]), j = place(map.y, table.varied[map.key_y].values[row]);
    if (i == map.x.size() || j == map.y.size()) continue;
    StudyMap::Cell& cell = map.cells[j * map.x.size() + i];
    ++cell.rows;
    cell.met += passes(table, row);
    for (std::size_t c = 0; c < table.outcomes.size(); ++c)
      if (std::isfinite(table.outcomes[c].values[row])) cell.sum[c] += table.outcomes[c].values[row], cell.count[c] += 1;
  }
  return map;
}

}  // namespace sinewright::plot
