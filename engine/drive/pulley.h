#pragma once

#include "model/drive.h"

namespace sinewright::drive {

/// A pulley with a cord of known diameter d on it.
///
///     r(φ) = R + d/2 + d · max(0, φ) / (2π · turns_per_layer)
///
/// The cord runs on the bare groove up to shaft angle 0 and then grows over itself as an even spiral. A real
/// layer is a step of about d each `turns_per_layer` turns; the spiral follows the steps' upper corners, at
/// most one d above them.
class CordPulley {
 public:
  /// @throws InvalidInput if the radius or the cord diameter is out of range.
  CordPulley(const model::Pulley& pulley, double cord_diameter);

  /// Radius at which the cord leaves at shaft angle φ [rad]: dL/dφ [m].
  [[nodiscard]] double radius(double shaft_angle) const noexcept;

  /// dr/dφ [m/rad]; 0 for φ < 0.
  [[nodiscard]] double radius_slope(double shaft_angle) const noexcept;

  /// Length of cord wound in between two shaft angles: the exact integral of r; negative when unwound [m].
  [[nodiscard]] double wound_length(double from, double to) const noexcept;

 private:
  double bare_ = 0;    // R + d/2 [m]
  double growth_ = 0;  // dr/dφ for φ > 0 [m/rad]
};

}  // namespace sinewright::drive
