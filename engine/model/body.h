#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/bill.h"
#include "model/fit.h"
#include "model/material.h"
#include "model/packing.h"
#include "model/shape.h"

namespace sinewright::model {

/// Mass properties in the body frame.
struct MassProperties {
  double mass = 0;                        ///< [kg]
  Vector3d center = Vector3d::Zero();     ///< centre of mass [m]
  Matrix3d inertia = Matrix3d::Zero();    ///< about the centre of mass, body axes [kg m²]
};

/// A primitive or part filled with one density, adding to the mass of its body.
struct Solid {
  Shape shape;
  double density = 0;  ///< [kg/m³]
  int material = -1;   ///< index into Model::materials; −1: its density was given as a number
};

/// Coefficients of a dry sliding pair; static >= kinetic.
struct DryFriction {
  double static_coefficient = 0;   ///< [–]
  double kinetic_coefficient = 0;  ///< [–]
};

/// A metal pin pressed into the outer lugs and running free in the inner one.
struct Pin {
  double diameter = 0;        ///< [m]
  DryFriction friction;       ///< of pin against the inner lug's bore
  double bearing_span = 0;    ///< distance of the two ends of the bore, over which a tilting moment is carried [m];
                              ///< 0: tilting moments add nothing to the friction
  double radial_clearance = 0;  ///< data for the play estimate [m], on the diameter; 0: not given
  std::optional<Fit> fit = std::nullopt;  ///< sizes of pin and holes; its running hole goes before radial_clearance
  Build build = {};
  double eye_width = 0;    ///< of the inner lug, along the pin [m]; 0: not described, as the next two
  double cheek_width = 0;  ///< of each outer lug [m]
  double gap = -1;         ///< between inner and outer lug on each side, washer and play [m]; −1: not described
  Price price = std::nullopt;
};

/// The inner lug about its pin, at its rounded end. Its thickness is the pin's eye width.
struct Lug {
  double width = 0;  ///< across the finger at the hole [m]
  double edge = 0;   ///< from the hole's centre to the end [m]
  Build build = {};
};

enum class WasherLaw { uniform_pressure, uniform_wear };

/// Two equal washers, one on either side of the inner lug.
struct Washers {
  double inner_diameter = 0;  ///< [m]
  double outer_diameter = 0;  ///< [m]
  DryFriction friction;
  double preload = 0;         ///< axial force that presses each washer when nothing pulls sideways [N]
  double axial_clearance = 0; ///< data for the play estimate [m]
  WasherLaw law = WasherLaw::uniform_wear;
  Build build = {};
  Price price = std::nullopt;  ///< of one
};

/// A kind of flanged plain bushing from the catalogue. Two of them, one from either side, line the hole of the inner lug: the
/// pin runs in their bores, and their flanges rub on the outer lugs where washers would.
struct Bushing {
  std::string name;
  double bore = 0;             ///< [m]
  double outer_diameter = 0;   ///< of the sleeve, hence the lug's hole [m]
  double flange_diameter = 0;  ///< [m]
  DryFriction friction;         ///< of the bore against the pin
  DryFriction flange_friction;  ///< of the flange against the outer lug
  Build build = {};
  std::string source;
  Price price = std::nullopt;  ///< of one
};

/// A one-sided elastic stop at either end of the joint's range. Of a slide: metres for radians, newtons for newton metres.
struct EndStops {
  double lower = 0;      ///< [rad]
  double upper = 0;      ///< [rad]
  double stiffness = 0;  ///< [N m/rad]
  double damping = 0;    ///< torque = stiffness·depth·(1 + damping·rate), never pulling [s/rad]
};

/// How a body hangs on its parent. The child's frame origin lies on the pin. Flexion is positive and turns the child by
/// −q (right-hand rule) about the pin axis, so that with the pin along z the tip of a finger along x moves toward −y.
struct Hinge {
  std::string name;
  int parent = -1;                         ///< index into Model::bodies
  Vector3d at = Vector3d::Zero();          ///< pin centre in the parent's frame [m]
  Vector3d pin_axis = Vector3d::UnitZ();   ///< unit vector in the parent's frame
  Matrix3d seat = Matrix3d::Identity();    ///< child's axes in the parent's frame at q = 0, as columns
  std::optional<Pin> pin;
  std::optional<Lug> lug = std::nullopt;                  ///< for its margins
  std::optional<Washers> washers;
  std::optional<Bushing> bushings = std::nullopt;  ///< the kind of both; pin->friction and washers are then what they make them
  std::optional<EndStops> stops;
  double viscous = 0;                      ///< [N m s/rad]
  double spring_stiffness = 0;             ///< a torsion spring at the joint [N m/rad]
  double spring_rest = 0;                  ///< angle at which that spring is relaxed [rad]
};

/// Two straight faces or bores that guide a sliding body and rub. The body bears on the two ends of their common length.
struct Slideway {
  DryFriction friction;
  double length = 0;   ///< distance of the two ends, over which a tilting moment is carried [m]; 0: tilting moments add nothing
  double preload = 0;  ///< normal force that is there without any load, in sum over all faces [N]
};

/// A body that slides along an axis of its parent without turning against it. Positive is along the axis.
struct Slide {
  std::string name;
  int parent = -1;                         ///< index into Model::bodies
  Vector3d at = Vector3d::Zero();          ///< the body's origin in the parent's frame at position 0 [m]
  Vector3d axis = Vector3d::UnitX();       ///< unit vector in the parent's frame
  Matrix3d seat = Matrix3d::Identity();    ///< child's axes in the parent's frame, as columns
  std::optional<Slideway> slideway;
  std::optional<EndStops> stops;           ///< in metres and newtons
  double viscous = 0;                      ///< [N s/m]
  double spring_stiffness = 0;             ///< [N/m]
  double spring_rest = 0;                  ///< position at which that spring is relaxed [m]
};

/// A body that does not move in the world.
struct Fixed {
  Vector3d at = Vector3d::Zero();          ///< origin of the body frame in the world [m]
  Matrix3d rotation = Matrix3d::Identity();
};

/// A palm, knuckle, phalanx, or a part of a mechanism such as a bar that shares a pull. Exactly one of `hinge`, `slide` and
/// `fixed` is set.
struct Body {
  std::string name;
  std::optional<Hinge> hinge;
  std::optional<Slide> slide = std::nullopt;
  std::optional<Fixed> fixed;
  std::optional<MassProperties> mass;  ///< given by numbers; a moving body has this, or solids, or both (they add up)
  std::vector<Solid> solids;
  std::vector<ContactShape> shapes;    ///< what can touch objects
  Price price = std::nullopt;          ///< of the whole body, in place of what its solids cost
  std::vector<Occupied> occupies;      ///< what sits in it, for the packing check alone

  [[nodiscard]] bool moves() const { return hinge || slide; }
  /// Index of the body that carries it, −1 for a fixed one.
  [[nodiscard]] int parent() const { return hinge ? hinge->parent : slide ? slide->parent : -1; }
};

}  // namespace sinewright::model
