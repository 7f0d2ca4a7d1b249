#pragma once

#include <optional>
#include <string>

#include "model/bill.h"
#include "model/cord.h"
#include "model/packing.h"
#include "model/sensor.h"
#include "model/shape.h"

namespace sinewright::model {

/// A voltage source with internal resistance, shared by the drives that name it.
struct Supply {
  std::string name;
  double voltage = 0;     ///< open-circuit [V]
  double resistance = 0;  ///< internal [Ω]
  double current_limit = 0;  ///< that it gives to all its drives together [A], 0: none
  double charge = 0;      ///< that it gives before it is empty [C], 0: not given
  Price price = std::nullopt;
};

/// A brushed motor with permanent magnets; inductance is neglected (electrical time constant far below the mechanical one).
struct Motor {
  std::string name;
  double resistance = 0;              ///< of the winding at `reference_temperature` [Ω]
  double torque_constant = 0;         ///< k [N m/A] = [V s/rad]
  double rotor_inertia = 0;           ///< [kg m²]
  double static_drag = 0;             ///< brushes and cogging, at rest [N m]
  double kinetic_drag = 0;            ///< brushes, turning [N m]
  double viscous_drag = 0;            ///< [N m s/rad]
  double resistance_slope = 0.00393;  ///< copper: relative change of resistance [1/K]
  double reference_temperature = 293.15;  ///< [K]
  double winding_to_housing = 0;      ///< thermal resistance [K/W]
  double housing_to_ambient = 0;      ///< thermal resistance [K/W]
  double winding_capacity = 0;        ///< [J/K]
  double housing_capacity = 0;        ///< [J/K]
  double highest_winding_temperature = 0;  ///< rating [K], 0: not given
  double highest_housing_temperature = 0;  ///< rating [K], 0: not given
  std::string source;
  Price price = std::nullopt;
  std::optional<Outline> outline = std::nullopt;
};

struct Gearhead {
  std::string name;
  double ratio = 1;                ///< rotor turns per output turn
  double forward_efficiency = 1;   ///< (0, 1]: output torque / (ratio × input torque) when the motor drives
  double backward_efficiency = 1;  ///< [0, 1]: the same quotient's inverse when the output drives; 0 locks
  double drag = 0;                 ///< constant torque, referred to the output shaft [N m]
  double output_inertia = 0;       ///< gears and pulley, at the output [kg m²]
  double backlash = 0;             ///< at the output, whole play [rad]
  double torsional_stiffness = 0;  ///< at the output [N m/rad]; needed when backlash > 0
  double torque_rating = 0;        ///< [N m], 0: not given
  std::string source;
  Price price = std::nullopt;
  std::optional<Outline> outline = std::nullopt;
};

/// The pulley's bore on the D-shaped shaft.
struct Bore {
  double diameter = 0;    ///< [m]
  double flat_depth = 0;  ///< taken off the round [m], at most half the diameter
  double length = 0;      ///< engaged along the shaft [m]
};

/// The rim that keeps the cord on the pulley.
struct Flange {
  double thickness = 0;    ///< at its root [m]
  double height = 0;       ///< from the groove's bottom to where the cord pushes [m]
  double width = 0;        ///< length of the rim that shares the push [m]
  double fleet_angle = 0;  ///< of the cord out of the pulley's plane, at most [rad]
};

/// A thin ring on the pulley that turns a sensor.
struct SensorCollar {
  double outer_diameter = 0;  ///< [m]
  double inner_diameter = 0;  ///< [m]
  double torque = 0;          ///< that turns the sensor, at most [N m]
};

struct Pulley {
  double radius = 0;           ///< of the bare groove [m]; the cord's centre runs at radius + cord diameter / 2
  double turns_per_layer = 0;  ///< windings side by side before the next layer; 0: the radius does not grow
  // For its margins:
  Build build = {};
  std::optional<Bore> bore = std::nullopt;
  double wall_eccentricity = 0;  ///< of bore and groove, or how much else thins the wall at one place [m]
  std::optional<KnotSeat> knot_seat = std::nullopt;
  std::optional<Flange> flange = std::nullopt;
  std::optional<SensorCollar> collar = std::nullopt;
  Price price = std::nullopt;
  std::optional<Outline> outline = std::nullopt;  ///< none: what flange and bore say
};

/// What a hand may touch of a drive, and for how long.
struct Touch {
  enum class Surface { metal, plastic };
  Surface surface = Surface::metal;
  double time = 0;  ///< [s]
};

/// Motor, gearhead and pulley on one shaft axis, seated in a body. Positive shaft angle winds the cord in.
struct Drive {
  std::string name;
  int body = -1;        ///< index into Model::bodies
  int supply = -1;      ///< index into Model::supplies
  double current_limit = 0;  ///< of the driver [A], 0: none
  Motor motor;
  Gearhead gearhead;
  Pulley pulley;
  std::optional<Touch> touch = std::nullopt;
  std::optional<Sensor> sensor = std::nullopt;
  std::optional<CurrentSense> current_sense = std::nullopt;
  std::optional<ShaftSeat> shaft = std::nullopt;  ///< where all this sits, as the three below for the packing check alone
  Surroundings inside = std::nullopt;             ///< of all its parts
  std::vector<Occupied> occupies = {};            ///< what it takes up beside motor, gearhead, pulley and sensor
};

}  // namespace sinewright::model
