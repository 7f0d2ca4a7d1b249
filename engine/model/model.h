#pragma once

#include <string>
#include <vector>

#include "model/bill.h"
#include "model/body.h"
#include "model/cord.h"
#include "model/drive.h"
#include "model/material.h"
#include "model/packing.h"

namespace sinewright::model {

/// A finger or hand: what it is made of, without time. Parts refer to each other by index; a parent stands before its
/// children in `bodies`.
struct Model {
  std::string name;
  std::string about;
  std::string currency = "unit";  ///< of all prices
  std::vector<Material> materials;
  std::vector<Surface> surfaces;
  std::vector<SurfacePair> pairs;
  std::vector<Line> lines;
  std::vector<Supply> supplies;
  std::vector<Body> bodies;
  std::vector<Drive> drives;
  std::vector<Cord> cords;
  std::vector<BillItem> bill;  ///< what is bought beside all that
  Packing packing;
};

}  // namespace sinewright::model
