#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/shape.h"

namespace sinewright::model {

/// What a bought part takes up in line with its shaft: a block, or a round can that may be flattened on two sides.
struct Outline {
  double length = 0;   ///< along the shaft [m]
  double width = 0;    ///< of a round can its diameter [m]
  double height = 0;   ///< across the width, along ShaftSeat::up [m]; of a can with flats the distance of these, else its diameter
  bool round = false;
};

/// Where the shaft of a drive sits in the drive's body. Along it stand, from `at` on in the direction of `axis`: half the pulley, a
/// gap, the gearhead, the motor, and a sensor on the rotor; the other way half the pulley, a gap and a sensor on the shaft.
struct ShaftSeat {
  Vector3d at = Vector3d::Zero();       ///< middle of the pulley on the shaft's axis [m], body frame
  Vector3d axis = Vector3d::UnitZ();    ///< from the pulley to the motor, unit vector, body frame
  Vector3d up = Vector3d::UnitY();      ///< heights of the outlines lie along it; unit vector at a right angle to `axis`, body frame
  double gap = 0;                       ///< on either side of the pulley [m]
};

/// Bodies whose prints are hollowed out for a part; none given: all that do not move against it.
using Surroundings = std::optional<std::vector<int>>;

/// A thing that takes up room: a battery, a board, a screw head.
struct Occupied {
  std::string name;
  Shape shape;          ///< in the frame of its body, or of its drive: origin at ShaftSeat::at, y along `up`, z along `axis`
  Surroundings inside;  ///< of a body's
};

/// What may touch: all of a body, drive or cord, or one part of it.
struct PartName {
  enum class Of { body, drive, cord };
  Of of = Of::body;
  int index = -1;    ///< into Model::bodies, drives or cords
  std::string part;  ///< empty: all of it; "print" for the solids and contact shapes of a body
};

/// How the packing check looks at a model; no part in the mechanics.
struct Packing {
  double clearance = 0.5e-3;  ///< pairs with a smaller gap are listed [m]
  std::vector<std::pair<PartName, PartName>> may_touch;
  std::optional<double> wrist;           ///< where the hand begins along the world's x [m]; none: where it ends at the back
  std::vector<int> palm;                 ///< bodies whose breadth is the hand's; empty: all that do not move
};

}  // namespace sinewright::model
