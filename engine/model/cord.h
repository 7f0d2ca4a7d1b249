#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/bill.h"
#include "model/material.h"
#include "model/shape.h"

namespace sinewright::model {

/// Tension laws give the tension [N] as a function of the stretch λ = length / unstretched length. Slack below λ = 1.

/// T = EA (λ − 1).
struct LinearLaw {
  double axial_stiffness = 0;  ///< EA [N]
};

/// T = A₀ Σ μᵢ (λ^(αᵢ−1) − λ^(−αᵢ/2−1)), incompressible uniaxial Ogden rubber; one term with α = 2 is neo-Hookean.
struct RubberLaw {
  double area = 0;                                   ///< unstretched cross-section A₀ [m²]
  std::vector<std::pair<double, double>> terms;      ///< (μᵢ [Pa], αᵢ [–])
  double max_stretch = 0;                            ///< law is valid up to here [–]
};

/// Measured table, monotone piecewise-cubic between the points, continued linearly beyond the last.
struct TableLaw {
  std::vector<double> stretch;  ///< increasing, begins at 1
  std::vector<double> tension;  ///< increasing, begins at 0 [N]
};

using TensionLaw = std::variant<LinearLaw, RubberLaw, TableLaw>;

/// A kind of cord from the catalogue.
struct Line {
  std::string name;
  double diameter = 0;       ///< [m]
  TensionLaw law;
  double damping_time = 0;   ///< τ: viscous tension is (dT/dλ at λ = 1) τ dλ/dt [s]
  std::string source;
  double breaking_force = 0;    ///< of the straight cord [N], 0: not given
  double breaking_stretch = 0;  ///< of rubber: length at break over free length [–], 0: not given
  Price price = std::nullopt;   ///< [1/m], of the cord without tension
};

/// A stopper knot at either end of a cord.
struct Knot {
  std::string name;
  double efficiency = 0;  ///< share of the breaking force that the knotted cord bears, (0, 1]
};

/// The wall through which a cord passes and on whose rim its knot sits.
struct KnotSeat {
  double knot = 0;  ///< diameter of the knot drawn tight [m]; above the hole's
  double hole = 0;  ///< diameter [m]
  double wall = 0;  ///< thickness [m]
  double edge = 0;  ///< hole's centre to the nearest edge, along the pull [m]; 0: not described
  Build build = {};
};

/// How one cord slides in its channel: data of the cord-channel pair.
struct ChannelFriction {
  double kinetic = 0;             ///< Coulomb coefficient μ at the reference line load [–]
  double static_ratio = 1;        ///< μ_static / μ_kinetic, >= 1
  double load_exponent = 1;       ///< n in F ∝ Nⁿ: μ = kinetic (p / reference_line_load)^(n−1), p = T / R [–]
  double reference_line_load = 0; ///< [N/m]; needed when load_exponent differs from 1
  double highest = 0;             ///< cap on μ at low load; needed when load_exponent differs from 1 [–]
  double bending_loss = 1;        ///< tension ratio that each bend costs through bending stiffness alone, >= 1 [–]
  double groove_angle = 0;        ///< included angle of a V groove [rad]; 0 means a round or flat channel
  std::string source;
};

/// A place where the channel turns: a point fixed in a body. Lengths go through the point itself; its radius sets line
/// load and bending stress. Where the rounding of a mouth matters for the moment arm, use a guide.
struct Bend {
  int body = -1;
  Vector3d at = Vector3d::Zero();  ///< [m], body frame
  double radius = 0;               ///< [m]; 0 means a sharp corner
  double friction_factor = 1;      ///< multiplies μ at this bend (1: as the channel)
};

/// A cylinder fixed in a body that the cord may wrap around, on the side of `side`. Its neighbours in a path are points.
struct Guide {
  int body = -1;
  Vector3d at = Vector3d::Zero();      ///< a point on the axis [m], body frame
  Vector3d axis = Vector3d::UnitZ();   ///< unit vector, body frame
  double radius = 0;                   ///< to the cord's centre line [m]
  Vector3d side = Vector3d::Zero();    ///< body-frame direction from the axis to where the cord passes
  double friction_factor = 1;
};

/// The cord is tied to a body here. Only at either end of a path.
struct Anchor {
  int body = -1;
  Vector3d at = Vector3d::Zero();  ///< [m], body frame
  std::optional<KnotSeat> seat = std::nullopt;    ///< for its margins
};

/// The cord is wound on the pulley of a drive and leaves it at a fixed point. Only at the start of a path.
struct PulleyEnd {
  int drive = -1;                  ///< index into Model::drives
  Vector3d at = Vector3d::Zero();  ///< point where the cord leaves the pulley, in the frame of the drive's body [m]
};

using PathPoint = std::variant<Bend, Guide, Anchor, PulleyEnd>;

/// A cord of a finger whose drive sits elsewhere in the hand than the finger's own file says. Its first points lead there.
struct Lead {
  int points = 0;                  ///< of the path, the pulley's among them
  int body = -1;                   ///< that would carry the drive in line with the finger
  Vector3d at = Vector3d::Zero();  ///< where the cord would leave the pulley there [m], in that body's frame
};

struct Cord {
  std::string name;
  int line = -1;                  ///< index into Model::lines
  ChannelFriction channel;
  std::vector<PathPoint> path;    ///< from the pulley or first anchor to the last anchor
  double pretension = 0;          ///< uniform tension at the start posture [N]; exclusive with slack
  double slack = 0;               ///< surplus length at the start posture [m]
  std::optional<Knot> knot = std::nullopt;       ///< at its ends, for its margins
  bool lump_bends = false;        ///< one friction node a body instead of one a bend
  std::optional<Lead> lead = std::nullopt;
  double allowance = 0;           ///< cut longer by this, for knots, tails and dead turns [m]; no part in the mechanics
};

}  // namespace sinewright::model
