#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/control.h"
#include "model/fault.h"
#include "model/model.h"
#include "quantity/invalid_input.h"

namespace sinewright::model {

/// A value over time: linear between the points, constant before the first and after the last.
struct Course {
  std::vector<double> time;   ///< [s], strictly increasing
  std::vector<double> value;  ///< SI
};

struct HeldFixed {};

struct HeldFree {};

/// A free object tied to its start pose by springs and dampers, in world axes.
struct HeldBySpring {
  Vector3d stiffness = Vector3d::Zero();            ///< [N/m] along x, y, z
  double damping_time = 0;                          ///< damping = stiffness × this [s]
  double turning_stiffness = 0;                     ///< [N m/rad], about every axis
};

/// The object's origin follows a prescribed path (displacement from the start pose) without turning, whatever it takes.
struct HeldOnPath {
  std::vector<double> time;             ///< [s], strictly increasing
  std::vector<Vector3d> displacement;   ///< world axes [m]; monotone piecewise cubic in between
};

/// A free object that hangs on an elastic string, or stands under one: the string pulls and never pushes.
struct HeldByString {
  Vector3d from = Vector3d::Zero();  ///< its upper end, world [m]
  Vector3d at = Vector3d::Zero();    ///< where it is tied, object frame [m]
  std::optional<double> length;      ///< unstretched [m]; none: the distance at the start
  double stiffness = 0;              ///< [N/m]
  double damping_time = 0;           ///< damping = stiffness × this [s]
};

using Hold = std::variant<HeldFixed, HeldFree, HeldBySpring, HeldByString, HeldOnPath>;

/// True when it goes where forces send it.
[[nodiscard]] inline bool moves_freely(const Hold& hold) {
  return !std::holds_alternative<HeldFixed>(hold) && !std::holds_alternative<HeldOnPath>(hold);
}

/// A thing to be grasped.
struct Object {
  std::string name;
  Vector3d at = Vector3d::Zero();             ///< start position of the object frame in the world [m]
  Matrix3d rotation = Matrix3d::Identity();   ///< start orientation: object axes in the world, as columns
  ContactShape shape;                         ///< in the object frame
  std::vector<Sphere> feet;                   ///< what touches other objects in place of the shape; same surface
  std::optional<MassProperties> mass;         ///< a free or spring-held object has this, or solids, or both
  std::vector<Solid> solids;
  Hold hold = HeldFixed{};
  Vector3d split_normal = Vector3d::UnitY();  ///< world direction normal to the plane of the split-cylinder reading
};

/// A force on a body or object.
struct Load {
  std::string name;
  std::string body;                       ///< name of a body or object
  int body_index = -1;                    ///< into Model::bodies, or −1
  int object_index = -1;                  ///< into Scenario::objects, or −1
  Vector3d at = Vector3d::Zero();         ///< point of application, body frame [m]
  Vector3d direction = Vector3d::UnitY(); ///< unit vector
  bool follows_body = false;              ///< direction given in the body's frame (else in the world's)
  Course force;                           ///< [N]
};

/// A torque on a body or object.
struct Twist {
  std::string name;
  int body_index = -1;                    ///< into Model::bodies, or −1
  int object_index = -1;                  ///< into Scenario::objects, or −1
  Vector3d axis = Vector3d::UnitZ();      ///< unit vector
  bool follows_body = false;              ///< axis given in the body's frame (else in the world's)
  Course torque;                          ///< right-handed about the axis [N m]
};

struct CommandVoltage {
  double voltage = 0;  ///< [V], positive winds the cord in
  double over = 0;     ///< time in which it gets there, linearly, from the voltage that stands (none: from 0); 0: at once [s]
};
struct CommandCurrentLimit {
  double current = 0;  ///< [A]
};
/// A plain position loop: voltage = gain (angle − φ) − damping φ̇, within what the supply gives.
struct CommandAngle {
  double angle = 0;    ///< of the output shaft [rad]
  double gain = 0;     ///< [V/rad]
  double damping = 0;  ///< [V s/rad]
};
struct CommandOff {
  Leads leads = Leads::open;
};
/// The last six need a controller.
using Command = std::variant<CommandVoltage, CommandCurrentLimit, CommandAngle, CommandOff, SetPosition, SetSpeed, SetCurrent, SetForce, SetRecorded, AskHold>;

struct TimelineEntry {
  double time = 0;  ///< [s]
  int drive = -1;   ///< index into Model::drives
  Command command;
};

/// A bound on one number of the summary.
struct Requirement {
  std::string quantity;              ///< a key of the summary, for instance "grip_force"
  std::optional<double> at_least;    ///< SI
  std::optional<double> at_most;     ///< SI
  std::string unit;                  ///< as the user wrote it, checked against the summary's unit
  Place place;                       ///< for the message if the key is unknown or the unit does not fit
};

struct SolverSettings {
  double tolerance = 1e-3;   ///< relative accuracy aimed at, see docs/numerics.md [–]
  double max_step = 0.02;    ///< [s]
  double min_step = 1e-9;    ///< [s]
};

/// What happens to a model over time.
struct Scenario {
  std::string name;
  std::string about;
  Model model;
  Vector3d gravity = Vector3d(0, -9.81, 0);         ///< world [m/s²]
  double ambient = 296.15;                          ///< [K]
  double duration = 0;                              ///< [s]
  std::vector<std::pair<int, double>> start_angles; ///< (body index of the hinged body, q [rad]); others start at 0
  std::vector<std::pair<int, double>> start_places; ///< (body index of the sliding body, q [m]); others start at 0
  std::vector<Object> objects;
  std::vector<Controller> controllers;              ///< at most one a drive
  std::vector<TimelineEntry> timeline;              ///< sorted by time
  std::vector<FaultEntry> faults;                   ///< sorted by time
  double safe_grip = 1;                             ///< grip force below which a hand at rest counts as safe [N]
  std::vector<Load> loads;
  std::vector<Twist> twists;
  std::vector<Requirement> requirements;
  SolverSettings solver;
  double record_interval = 1e-3;                    ///< [s]
};

}  // namespace sinewright::model
