#pragma once

#include <optional>
#include <string>
#include <vector>

#include "simulation/packed_parts.h"

namespace sinewright::simulation {

/// One phalanx of a finger: from its own pin to the next, or to the tip.
struct PhalanxSize {
  std::string body;
  double length = 0;   ///< [m]
  double breadth = 0;  ///< of its solids and shapes along the body's z [m], 0: it has none
};

struct FingerSize {
  std::string name;                    ///< "index" of "index.proximal"; the first body's name where names have no dot
  std::vector<PhalanxSize> phalanges;  ///< from the base out
  double length = 0;                   ///< their sum [m]
  bool tip = true;                     ///< false: the last body has neither solids nor shapes, so its own length is missing
};

/// Outer size of what is built, with all joints straight, along the world's axes: x to the fingertips, y to the back of the hand,
/// z across.
struct HandSize {
  Eigen::Vector3d low = Eigen::Vector3d::Zero(), high = Eigen::Vector3d::Zero();  ///< of everything [m]
  double length = 0;                ///< from the wrist to the farthest end [m]
  std::optional<double> breadth;    ///< of Packing::palm with what sits in it, z [m]; none: nothing of that is described
  std::optional<double> thickness;  ///< the same, y [m]
  std::vector<FingerSize> fingers;
};

/// @param parts  of the same system's model.
/// @param q      posture, all joints straight.
[[nodiscard]] HandSize hand_size(const System& system, const std::vector<PackedPart>& parts, const VectorXd& q);

/// A published measure of people: mean and standard deviation where it gives one.
struct HandMeasure {
  const char* what;
  double mean = 0;       ///< [m]
  double deviation = 0;  ///< [m], 0: not given
};

/// Hand length (wrist crease to the tip of the middle finger) and breadth (across the knuckles, thumb left out) of 1774 men and 2208
/// women. Gordon et al., 1988 Anthropometric Survey of U.S. Army Personnel, Natick/TR-89/044 (1989); values from memory.
inline constexpr HandMeasure hand_length_men{"hand length, men", 0.1938, 0.0098};
inline constexpr HandMeasure hand_length_women{"hand length, women", 0.1805, 0.0097};
inline constexpr HandMeasure hand_breadth_men{"hand breadth, men", 0.0904, 0.0042};
inline constexpr HandMeasure hand_breadth_women{"hand breadth, women", 0.0794, 0.0038};

/// Mean lengths of the bones of 66 adults, and of the soft tip beyond the last. Buryanov and Kotiuk, Proportions of hand segments,
/// Int. J. Morphol. 28 (2010) 755. A thumb has a metacarpal in place of the proximal phalanx, and no middle one: its two phalanges
/// stand under middle and distal.
struct HumanFinger {
  const char* name;
  double proximal, middle, distal, pulp;  ///< [m]
  [[nodiscard]] double length() const { return proximal + middle + distal + pulp; }
};
inline constexpr HumanFinger human_fingers[] = {{"index", 39.78e-3, 22.38e-3, 15.82e-3, 3.84e-3},
                                                {"middle", 44.63e-3, 26.33e-3, 17.40e-3, 3.95e-3},
                                                {"ring", 41.37e-3, 25.65e-3, 17.30e-3, 3.95e-3},
                                                {"little", 32.57e-3, 18.11e-3, 15.96e-3, 3.73e-3},
                                                {"thumb", 46.22e-3, 31.57e-3, 21.67e-3, 5.67e-3}};

/// The human finger of that name; the index finger for any other.
[[nodiscard]] const HumanFinger& human_finger(const std::string& name);

/// Share of people below a value, if they are distributed normally.
[[nodiscard]] double share_below(const HandMeasure& measure, double value);

}  // namespace sinewright::simulation
