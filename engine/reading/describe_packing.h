#pragma once

#include "reading/describe.h"

/// What the packing check needs: sizes, places, and what may touch.
namespace sinewright::reading {

[[nodiscard]] Kind<model::Outline> outline();
[[nodiscard]] Kind<model::ShaftSeat> shaft_seat();
[[nodiscard]] Kind<Named<WrittenOccupied>> occupies();
[[nodiscard]] Kind<std::vector<Name>> surroundings();
[[nodiscard]] Kind<WrittenPacking> packing();

/// `outline` of a part.
template <class T, class C>
void add_outline(Record<T>& record, std::optional<model::Outline> C::*member, const std::string& absent = "not described") {
  record.may("outline", member, outline(), Absent{absent}, "what it takes up; for the packing check");
}

}  // namespace sinewright::reading
