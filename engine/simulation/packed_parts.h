#pragma once

#include <optional>
#include <string>
#include <vector>

#include "dynamics/tree.h"
#include "simulation/system.h"

namespace sinewright::simulation {

/// Something that takes up room, told of under one name.
struct PackedPart {
  enum class Kind {
    print,  ///< solids and contact shapes of a body
    shaft,  ///< motor, gearhead, pulley or sensor of a drive
    thing,  ///< what a body or a drive `occupies`
  };
  Kind kind = Kind::print;
  std::string name;   ///< "palm", "flexor.motor", "palm.battery"
  std::string part;   ///< "print", "motor", "battery"
  int body = -1;      ///< index into Model::bodies; it is fixed in it
  int drive = -1;     ///< of a drive's part
  std::vector<model::Shape> shapes;  ///< body frame; touching at most by their hulls where they come from STL files
  model::Surroundings inside;        ///< of what is no print
  std::size_t solids = 0;            ///< of a print: how many of its shapes, the first ones, are filled; the rest only touches
};

struct PackedParts {
  std::vector<PackedPart> parts;
  std::vector<std::string> not_described;  ///< keys that lack: "drives.flexor.shaft"
};

/// All that a model says to take up room, cords left out. The parts of a drive stand in line on its shaft:
///
///     sensor on the shaft | gap | pulley | gap | gearhead | motor | sensor on the rotor
///
/// A pulley without an outline is a cylinder of the groove's radius plus the flange's height, as long as its bore.
[[nodiscard]] PackedParts packed_parts(const model::Model& model);

/// The shape of an outline whose near face stands at `from` along the shaft, in the frame of the drive: z along the shaft, y up.
/// A can with flats becomes a prism whose 48 sides go round the circle outside, at most 0.22 % of the radius beyond it.
[[nodiscard]] model::Shape outline_shape(const model::Outline& outline, double from);

/// A straight piece of a cord, or a chord of its way round a guide, in the world [m].
struct CordPiece {
  Eigen::Vector3d from = Eigen::Vector3d::Zero(), to = Eigen::Vector3d::Zero();
  int body_from = -1, body_to = -1;  ///< that carry the path's points at its ends
  int point = 0;                     ///< index of the path's point before it
  int body_before = -1, body_after = -1;  ///< of a chord: that carry the path's points on either side of the guide, else −1
};

/// A cord's way in a posture. Chords round guides span 7.5° at most: they cut inside the arc by 0.22 % of its radius at most.
[[nodiscard]] std::vector<CordPiece> cord_pieces(const System& system, const dynamics::Kinematics& kinematics, std::size_t cord);

/// Per link: the link with which it moves as one piece, −1 for what stands still.
[[nodiscard]] std::vector<int> rigid_groups(const System& system);

/// Poses with every joint at the given coordinates.
[[nodiscard]] dynamics::Kinematics kinematics_at(const System& system, const VectorXd& q);

/// Hinges of each finger, from the base out along the first branch. Bars that ride on slides are no fingers.
[[nodiscard]] std::vector<std::vector<int>> finger_chains(const System& system);

/// "index" of a finger that is seated in a hand; else the name of its first body.
[[nodiscard]] std::string finger_name(const System& system, const std::vector<int>& chain);

}  // namespace sinewright::simulation
