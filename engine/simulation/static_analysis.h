#pragma once

#include <optional>
#include <vector>

#include "geometry/cord_path.h"
#include "simulation/state.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// What follows from geometry, friction and drive data alone, without running anything. Laws: docs/theory/static-analysis.md.

/// One cord in one posture.
struct CordPosture {
  double path_length = 0;              ///< [m]
  std::vector<double> span_length;     ///< [m]
  std::vector<double> turning_angle;   ///< per bend [rad]
  VectorXd arm;                        ///< per hinge: −∂L/∂q, positive flexes [m]
  VectorXd draw;                       ///< per slide: −∂L/∂x, positive: the cord pulls it along its axis [–]
  std::vector<double> ratio;           ///< per span: tension / tension where it is pulled, while it is pulled in [–]. It is pulled at
                                       ///< its first span, or where it meets a sliding body; bends of that body do not count
  VectorXd torque;                     ///< per hinge: torque per newton of that tension, with that friction [m]
  std::vector<bool> guide_touched;     ///< per bend: false for a guide that the cord does not reach
};
[[nodiscard]] CordPosture cord_posture(const System& system, const VectorXd& q, std::size_t cord);

/// Start posture with the hinges set to these angles [rad].
[[nodiscard]] VectorXd posture(const System& system, const std::vector<double>& angles);

/// The return cords against hinge friction in one posture; the drives' cords, and cords to what slides, slack.
struct OpeningPosture {
  VectorXd torque;           ///< per hinge: what the return cords turn it open with, no friction in their channels [N m]
  VectorXd least_torque;     ///< the same with full capstan friction on the way from the nearer anchor [N m]
  VectorXd friction;         ///< per hinge: static friction of pin and washers under the return cords' own pull [N m]
  std::vector<bool> returned;   ///< per hinge: a return cord acts on it in this posture
  std::vector<double> tension;  ///< per cord in system order, 0 for those that do not return [N]
};
[[nodiscard]] OpeningPosture opening_posture(const System& system, const VectorXd& q);

/// Tensions of the drives' cords and of the cords that they pull by way of sliding bodies: balance of the slides, and of the
/// hinges that ride on them, without friction and weight. The slides stand as `q` says.
/// @param driven  per drive: tension of its cord [N].
/// @returns per cord, where it is pulled; 0 for return cords [N]. None if balance alone does not determine them, or asks a cord to push.
[[nodiscard]] std::optional<std::vector<double>> shared_tensions(const System& system, const VectorXd& q,
                                                                 const std::vector<double>& driven);

/// What a drive can do at its supply, cold.
struct DriveStatics {
  double stall_current = 0;     ///< at the supply's voltage through both resistances, before the limit [A]
  double driven_current = 0;    ///< the same or the driver's limit, whichever is less [A]
  double no_load_speed = 0;     ///< of the output shaft [rad/s]
  double stall_torque = 0;      ///< at the output, forward efficiency and all drag taken off [N m]
  double stall_tension = 0;     ///< of the cord on the bare pulley [N]
  double back_drive_torque = 0; ///< at the output, power off, leads open [N m]; infinite: locks
  double back_drive_tension = 0;  ///< [N]
  double closing_speed = 0;     ///< of the cord at no load [m/s]
};
[[nodiscard]] DriveStatics drive_statics(const System& system, std::size_t drive);

/// Static estimate of the normal forces of the phalanges on an object that each touches with the middle of its first
/// contact shape, from the moment balance of every hinge, f = J⁻ᵀ τ. No friction at contacts or hinges, no weight.
/// A negative force means that this phalanx would lift off.
struct GripEstimate {
  std::vector<int> hinge;      ///< hinges of one finger, from the base out
  VectorXd distance;           ///< of each contact from its own joint [m]
  VectorXd torque;             ///< joint torques [N m]
  VectorXd force;              ///< [N]
};
/// @param torque  per hinge, flexion positive [N m].
/// @returns one estimate a finger (chain of hinges from a fixed body, without what rides on slides); a branching chain is taken
/// along its first branch.
[[nodiscard]] std::vector<GripEstimate> grip_estimate(const System& system, const VectorXd& q, const VectorXd& torque);

}  // namespace sinewright::simulation
