#pragma once

#include <optional>
#include <string>

namespace sinewright::model {

/// What a price counts in; all prices of a model share the model's currency. Money is no physical quantity: a price is a
/// plain number, per piece, per metre or per cubic metre. Without one nothing is known; it is not free.
using Price = std::optional<double>;

/// Something bought of which the physics knows nothing: screws, a sensor, a driver board.
struct BillItem {
  std::string name;
  int count = 1;
  Price price = std::nullopt;  ///< each
  std::string used_for;
};

}  // namespace sinewright::model
