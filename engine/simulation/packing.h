#pragma once

#include <optional>
#include <string>
#include <vector>

#include "contact/containment.h"
#include "simulation/packed_parts.h"

namespace sinewright::simulation {

/// Two things that come near or into each other.
struct Closeness {
  std::string a, b;
  double straight = 0;         ///< gap with the joints straight [m], negative: overlap; infinite: beyond PackingReport::seen
  double smallest = 0;         ///< over all postures looked at [m]
  std::string posture;         ///< where that is
  Eigen::Vector3d where = Eigen::Vector3d::Zero();  ///< half-way between the nearest points there, world [m]
  bool when_straight = false;  ///< `posture` is the straight one
};

/// How a part lies in the prints around it.
struct Wall {
  std::string part;
  std::vector<std::string> inside;  ///< bodies whose prints are looked at; empty: none of them is described
  contact::Containment lies;
};

/// How a cord leaves its pulley as the path draws it.
struct CordExit {
  std::string cord, drive;
  double radius = 0;        ///< of the path's first point from the shaft's axis [m]
  double wanted = 0;        ///< groove radius + half the cord [m]
  double off_middle = 0;    ///< of that point from the pulley's middle, along the shaft [m]
  double half_length = 0;   ///< of the pulley [m], 0: not described
  double fleet_angle = 0;   ///< of the cord's first span out of the pulley's plane [rad]
  double off_tangent = 0;   ///< between the span's direction in that plane and the groove's tangent [rad]
  std::optional<double> allowed_fleet_angle;  ///< of the flange [rad]
};

struct PackingPosture {
  std::string name;  ///< "straight", "PIP 45 deg", "finger closing 50 %"
  VectorXd q;
};

struct PackingReport {
  double clearance = 0;                ///< [m]
  double seen = 0;                     ///< pairs further apart than this are not told of [m]
  std::vector<PackingPosture> postures;
  PackedParts parts;
  std::vector<Closeness> collisions;   ///< deepest first
  std::vector<Closeness> narrow;       ///< gaps from 0 to the clearance, smallest first
  std::optional<Closeness> nearest;    ///< of the rest
  std::vector<Wall> walls;
  std::vector<CordExit> exits;
};

/// Does all that the model says to take up room fit into each other?
///
/// Gaps are those of contact/closest_points.h, cords counting as rods of their lines' diameter from point to point. Looked at are the
/// straight posture, each joint alone over its range, each finger closing alone, and all fingers closing together, in `steps` postures
/// each; between and beside these nothing is known. Never a collision are:
///
/// - prints that do not move against each other, or hang on each other by a joint (lugs are not described);
/// - a part and the prints that `inside` names for it; motor, gearhead, pulley and sensor of one drive;
/// - a cord and the prints that move with either end of the span (its channel is drawn there) or hang on those by a joint (lugs), and
///   its own pulley;
/// - what Packing::may_touch says.
///
/// Laws and limits: docs/theory/packing.md.
[[nodiscard]] PackingReport packing(const System& system, int steps);

}  // namespace sinewright::simulation
