#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/model.h"
#include "strength/hinge_play.h"

namespace sinewright::strength {

/// A value at the tightest and at the loosest sizes.
struct PlayRange {
  double tightest = 0;
  double loosest = 0;
};

/// What one hinge lets a fingertip do, from the middle to either side. What the model does not describe is
/// empty, never zero.
struct HingeShare {
  std::string hinge;
  double reach = 0;                   ///< pin to fingertip, across the pin, finger straight [m]
  std::optional<PlayRange> radial;    ///< bore − pin, on the diameter [m], ≥ 0
  std::optional<double> axial;        ///< between the cheeks, washers put in [m]
  std::optional<PlayRange> tilt;      ///< sideways [rad]
  std::optional<PlayRange> sideways;  ///< at the tip [m]
  std::optional<PlayRange> flexion;   ///< at the tip, across the straight finger [m]
  std::vector<std::string> missing;   ///< keys that would have to be given
};

/// The hinges' shares together.
struct PlaySum {
  TipPlay tightest;
  TipPlay loosest;
  std::vector<std::string> without;  ///< hinges that are not described: the sum is then too small
};

/// Play of one fingertip: a hinged body that carries no other.
struct FingertipPlay {
  std::string body;
  std::optional<double>
      tip;  ///< its place on the body's x axis [m]; none: the body has neither shape nor solid
  std::vector<HingeShare> hinges;            ///< from the fixed body outward; empty without a tip
  std::optional<PlaySum> sideways, flexion;  ///< none: no hinge is described
};

/// Play of every fingertip of a model by the laws of hinge_play.h.
///
/// The tip is where the body's shapes and solids end along its x axis. The radial clearance is that of the
/// pin's fit, otherwise pin.radial_clearance; a pin that may also be loose in the outer lugs adds that
/// clearance to the loosest. The bore guides over pin.bearing_span, the faces over washers.outer_diameter,
/// with washers.axial_clearance between them. Values left at 0 count as not described. Pins need not be
/// parallel, but the parts are added as if they were: an upper bound.
/// @throws InvalidInput as those laws do.
[[nodiscard]] std::vector<FingertipPlay> finger_play(const model::Model& model);

}  // namespace sinewright::strength
