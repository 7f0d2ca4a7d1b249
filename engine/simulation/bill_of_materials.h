#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/model.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// What a part is counted in.
enum class Measure { piece, length, volume };

/// Parts of one kind, however many places they go to.
struct BillLine {
  std::string part;                   ///< "motor micro_6v", "washer 2.2 / 5 mm, cast_nylon", "cord braid_05"
  std::vector<std::string> used_for;  ///< drives, joints, cords or bodies
  int count = 0;                      ///< pieces; of a volume: how many bodies share it
  Measure measure = Measure::piece;
  double amount = 0;  ///< of all pieces together: their number, [m] or [m³]
  model::Price unit_price;
  [[nodiscard]] model::Price price() const { return unit_price ? model::Price(amount * *unit_price) : std::nullopt; }
};

struct BillOfMaterials {
  std::string currency;
  std::vector<BillLine> lines;  ///< drives, supplies, hinges, cords, bodies, the model's own list
  double total = 0;             ///< of the lines that have a price
  int unpriced = 0;             ///< lines that have none
};

/// Counts what a model is made of, and what that costs.
///
/// - Each drive takes a motor, a gearhead, a pulley and the sensor that it describes; each joint a pin, and two washers or two bushings where they are described.
/// - A cord is cut, without tension, to (path at the straight finger) / (stretch at its pretension) + slack + one turn round the bare
///   pulley that winds it + allowance. What the pulley takes in later comes from the path.
/// - A body costs its price; without one the volume of its solids by their materials. A solid without a material, a mass given as a
///   number and a body of which nothing is said are lines without a price.
///
/// Lines of the same part and price are one. What is in and what is left out: docs/user-guide/parts.md.
[[nodiscard]] BillOfMaterials bill_of(const System& system);
/// The same from a model alone. @throws InvalidInput as System.
[[nodiscard]] BillOfMaterials bill_of(const model::Model& model);

/// The parts without a price, for messages: "pulley of radius 3.5 mm, body knuckle"; empty if each has one.
[[nodiscard]] std::string unpriced_parts(const BillOfMaterials& bill);

}  // namespace sinewright::simulation
