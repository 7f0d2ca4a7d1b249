#include "parts_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

#include "quantity/quantity.h"
#include "simulation/bill_of_materials.h"

namespace sinewright::tool {

namespace {

using nlohmann::ordered_json;
using simulation::BillLine;
using simulation::Measure;

// How a measure is shown, and called in SI.
struct MeasureUnit {
  const char* shown;
  const char* si;
};
MeasureUnit unit_of(Measure measure) {
  if (measure == Measure::length) return {"m", "m"};
  if (measure == Measure::volume) return {"cm³", "m3"};
  return {"", "1"};
}

using Row = std::array<std::string, 6>;

// What does not fit into a column is counted; --json has it all.
std::string some_of(const std::vector<std::string>& names) {
  constexpr std::size_t widest = 60;
  const std::string all = fmt::format("{}", fmt::join(names, ", "));
  if (all.size() <= widest) return all;
  std::string some;
  std::size_t shown = 0;
  while (shown < names.size() && some.size() + names[shown].size() + 2 < widest - 14) some += names[shown++] + ", ";
  return fmt::format("{}and {} more", some, names.size() - shown);
}

Row row_of(const BillLine& line) {
  const MeasureUnit unit = unit_of(line.measure);
  const bool pieces = line.measure == Measure::piece;
  Row row = {line.part, some_of(line.used_for), std::to_string(line.count), "", "no price", ""};
  if (!pieces) row[3] = fmt::format("{:.3f} {}", from_si(line.amount, unit.shown), unit.shown);
  if (!line.unit_price) return row;
  // A price per cm³ is a millionth of the one per m³.
  row[4] = pieces ? fmt::format("{:.2f}", *line.unit_price)
                  : fmt::format("{:.4g} per {}", *line.unit_price / from_si(1, unit.shown), unit.shown);
  row[5] = fmt::format("{:.2f}", *line.price());
  return row;
}

std::string table(const std::vector<Row>& rows) {
  std::array<std::size_t, 6> width{};
  for (const Row& row : rows)
    for (std::size_t c = 0; c < row.size(); ++c)
      // Units with a ³ have a byte more than they are wide.
      width[c] = std::max(width[c], row[c].size() - static_cast<std::size_t>(row[c].find("³") != std::string::npos));
  std::string text;
  for (const Row& row : rows) {
    std::string line = "  ";
    for (std::size_t c = 0; c < row.size(); ++c)
      line += c < 2 ? fmt::format("{:<{}}  ", row[c], width[c]) : fmt::format("{:>{}}  ", row[c], width[c]);
    text += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
  }
  return text;
}

ordered_json json_of(const BillLine& line) {
  const MeasureUnit unit = unit_of(line.measure);
  ordered_json json = {{"part", line.part}, {"used_for", line.used_for}, {"count", line.count}};
  json["measure"] = line.measure == Measure::piece ? ordered_json(nullptr) : ordered_json{{"value", line.amount}, {"unit", unit.si}};
  json["unit_price"] = line.unit_price ? ordered_json(*line.unit_price) : ordered_json(nullptr);
  json["price"] = line.unit_price ? ordered_json(*line.price()) : ordered_json(nullptr);
  return json;
}

}  // namespace

PartsPage parts_page(const model::Model& model) {
  const simulation::BillOfMaterials bill = simulation::bill_of(model);
  std::vector<Row> rows = {{"part", "used for", "count", "measure", "unit price", "price"}};
  ordered_json lines = ordered_json::array();
  for (const BillLine& line : bill.lines) {
    rows.push_back(row_of(line));
    lines.push_back(json_of(line));
  }
  rows.push_back({bill.unpriced == 0 ? "total" : "total of the lines with a price", "", "", "", "", fmt::format("{:.2f}", bill.total)});

  PartsPage page;
  page.text = fmt::format("{}: bill of materials, prices in {}\n\n{}", model.name, bill.currency, table(rows));
  if (bill.unpriced > 0)
    page.text += fmt::format("\nCAUTION: the total lacks {} of {} lines, which have no price: {}\n", bill.unpriced, bill.lines.size(),
                             simulation::unpriced_parts(bill));
  page.text += "\nCord is measured without tension, material as the volume of the solids. Estimated from the prices that the model's files give;\n"
               "no offer, and without shipping, supports, spoilt prints and least orders.\n";
  page.json = {{"model", model.name}, {"currency", bill.currency}, {"lines", lines}, {"total", bill.total}, {"unpriced", bill.unpriced}};
  return page;
}

}  // namespace sinewright::tool
