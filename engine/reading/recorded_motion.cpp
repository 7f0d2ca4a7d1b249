#include "reading/recorded_motion.h"

#include <cmath>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "quantity/quantity.h"
#include "reading/complaint.h"

namespace sinewright::reading {
namespace {

struct Cell {
  std::string text;
  int column = 1;  // of its first character
};

// Cells without the blanks and quotes round them.
std::vector<Cell> cells_of(std::string_view line, char separator) {
  std::vector<Cell> cells;
  std::size_t begin = 0;
  for (;;) {
    const std::size_t end = std::min(line.find(separator, begin), line.size());
    std::size_t from = begin, to = end;
    while (from < to && (line[from] == ' ' || line[from] == '"')) ++from;
    while (to > from && (line[to - 1] == ' ' || line[to - 1] == '"' || line[to - 1] == '\r')) --to;
    cells.push_back({std::string(line.substr(from, to - from)), static_cast<int>(from) + 1});
    if (end == line.size()) return cells;
    begin = end + 1;
  }
}

struct Table {
  const std::string& file;
  char separator = ',';
  std::string time_unit, angle_unit;

  [[nodiscard]] InvalidInput wrong(int line, int column, const std::string& what, const std::string& needed, const std::string& hint = "") const {
    return complaint({file, line, column}, what, needed, hint);
  }
  std::string unit_of(const Cell& cell, int line, const char* expected) const {
    const std::size_t open = cell.text.find('['), close = cell.text.find(']');
    const std::string unit = open == std::string::npos || close == std::string::npos || close < open ? "" : cell.text.substr(open + 1, close - open - 1);
    if (unit.empty() || !same_dimension(unit, expected))
      throw wrong(line, cell.column, fmt::format("the head '{}' is not allowed", cell.text),
                  fmt::format("a name and a unit in brackets, as in '{} [{}]'", std::string(expected) == "s" ? "time" : "shaft",
                              std::string(expected) == "s" ? "s" : "deg"));
    return unit;
  }
  double number_of(const Cell& cell, int line, const std::string& unit) const {
    try {
      const double value = parse_quantity(cell.text, "1").si;
      return to_si(value, unit);
    } catch (const QuantityProblem&) {
      throw wrong(line, cell.column, fmt::format("'{}' is not a number", cell.text), "a number without a unit; the head has the unit");
    }
  }
};

}  // namespace

model::SetRecorded recorded_motion(const Source::File& file, const std::string& name) {
  Table table{file.path, ',', "", ""};
  model::SetRecorded motion;
  motion.file = name;
  int number = 0;
  bool headed = false;
  for (std::size_t begin = 0; begin < file.text.size();) {
    const std::size_t end = std::min(file.text.find('\n', begin), file.text.size());
    std::string_view line = std::string_view(file.text).substr(begin, end - begin);
    begin = end + 1;
    ++number;
    if (number == 1 && line.starts_with("\xEF\xBB\xBF")) line.remove_prefix(3);
    if (line.empty() || line == "\r" || line.front() == '#') continue;
    if (!headed)
      for (const char separator : {';', '\t', ','})
        if (line.find(separator) != std::string_view::npos) {
          table.separator = separator;
          break;
        }
    const std::vector<Cell> cells = cells_of(line, table.separator);
    if (cells.size() != 2)
      throw table.wrong(number, 1, fmt::format("a line with {} column{}", cells.size(), cells.size() == 1 ? "" : "s"), "two columns: time and angle of the shaft");
    if (!headed) {
      table.time_unit = table.unit_of(cells[0], number, "s");
      table.angle_unit = table.unit_of(cells[1], number, "rad");
      headed = true;
      continue;
    }
    const double time = table.number_of(cells[0], number, table.time_unit), angle = table.number_of(cells[1], number, table.angle_unit);
    if (!motion.time.empty() && time <= motion.time.back())
      throw table.wrong(number, cells[0].column, fmt::format("the time '{}' is not allowed", cells[0].text), "a time after the one before");
    motion.time.push_back(time);
    motion.angle.push_back(angle);
  }
  if (motion.time.size() < 2) throw table.wrong(0, 0, "the motion has no two points", "a head and two lines or more");
  return motion;
}

}  // namespace sinewright::reading
