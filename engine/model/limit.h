#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/scenario.h"
#include "quantity/invalid_input.h"

namespace sinewright::model {

/// The force of a named load.
struct RiseOfLoad {
  std::string load;
};
/// The displacement of a named object from its start pose, whatever it takes.
struct RiseOfDisplacement {
  std::string object;
  Vector3d direction = Vector3d::UnitX();  ///< world, unit vector
};
/// The voltage of a drive.
struct RiseOfVoltage {
  std::string drive;
};
using Rise = std::variant<RiseOfLoad, RiseOfDisplacement, RiseOfVoltage>;

enum class EndEvent { shaft_turns, joint_moves, object_leaves, motor_stalls, margin_falls };

/// Until what a ramp goes on.
struct RampEnd {
  EndEvent event = EndEvent::shaft_turns;
  std::string subject;   ///< drive, joint, object or margin; empty: any
  double more_than = 0;  ///< turn or motion since the ramp began [rad], way of the object [m], time at rest of a stall [s],
                         ///< demand / capacity of a margin [–]
};

/// One run in which a quantity rises slowly until something happens.
struct Ramp {
  Rise what;
  double start = 0;  ///< [s]
  double from = 0;   ///< value until then, SI
  double rate = 0;   ///< SI per second, > 0
  double most = 0;   ///< where the rise ends, SI, above `from`
  RampEnd until;
  bool peak_force = false;  ///< of a displacement: the answer is the greatest force against it up to the event, not the way
  int halvings = 5;         ///< of the rate, at most
};

/// The force on a free object up to which a grasp holds it, in many directions.
struct Directions {
  std::string object;
  Vector3d at = Vector3d::Zero();       ///< where it pulls, object frame [m]
  std::optional<Vector3d> plane;        ///< normal of the plane of the directions, world, unit; none: over the whole sphere
  Vector3d first = Vector3d::UnitX();   ///< the first direction of a plane, world, unit, across the normal
  int count = 24;
  double start = 0;      ///< [s]
  double rate = 0;       ///< [N/s] of the first run, > 0
  double most = 0;       ///< where the rise ends [N]
  double more_than = 0;  ///< a way of the object by which it counts as lost [m]; or it has no contact left
  int halvings = 5;      ///< of the rate, at most
};

/// The last value of a key at which the scenario's requirements hold.
struct Search {
  std::string key;         ///< as in --set
  double from = 0, to = 0; ///< in `unit`
  std::string unit;        ///< as written; empty: none
  int samples = 9;
  bool logarithmic = false;
};

/// One way of going through variants: every value is given to all keys.
struct MapAxis {
  std::string name;
  std::vector<std::string> keys;
  std::vector<std::string> values;
  std::vector<std::string> labels;  ///< what tables and plots call each value, as many as values
};

struct LimitStudy {
  std::string name;
  std::string about;
  std::string scenario;             ///< path
  std::vector<std::string> change;  ///< as --set, before every run
  std::variant<Ramp, Search, Directions> task;
  std::vector<MapAxis> map;         ///< none, one or two
  double tolerance = 5e-3;          ///< relative
  Place place;                      ///< of the task, for messages
};

}  // namespace sinewright::model
