#pragma once

#include <optional>

#include <Eigen/Core>

#include "friction/washer.h"
#include "model/body.h"

namespace sinewright::friction {

using Eigen::Vector3d;

/// What a hinge carries, taken apart along its pin. All vectors in one frame.
struct HingeLoad {
  Vector3d radial = Vector3d::Zero();   ///< across the pin [N]
  double axial = 0;                     ///< along the pin, signed [N]
  Vector3d tilting = Vector3d::Zero();  ///< moment about the pin's middle, across the pin [N m]
};

/// Takes a joint reaction apart.
/// @param axis    unit vector along the pin.
/// @param force   joint reaction [N], @param moment about the pin centre [N m]; same frame as the axis.
[[nodiscard]] HingeLoad split_hinge_load(const Vector3d& axis, const Vector3d& force,
                                         const Vector3d& moment) noexcept;

/// Dry friction of a hinge: pin and washers, built once from the model.
class HingeFriction {
 public:
  /// @throws InvalidInput if a diameter, coefficient, span or preload is out of range.
  HingeFriction(const std::optional<model::Pin>& pin, const std::optional<model::Washers>& washers);

  /// Friction torque limits under a load: r sin φ times the sum of the bearing loads, plus washers. Allocates
  /// nothing.
  /// @param axis  unit vector along the pin, in the frame of the load.
  [[nodiscard]] TorqueLimit limit(const Vector3d& axis, const HingeLoad& load) const noexcept;

  /// Limits of a hinge that carries nothing: the washers' preload alone.
  [[nodiscard]] TorqueLimit unloaded() const noexcept;

 private:
  TorqueLimit pin_arm_;     // friction circle radius with either coefficient [m]
  TorqueLimit washer_arm_;  // μ r_eff with either coefficient [m]
  double span_ = 0;         // [m]
  double preload_ = 0;      // [N]
};

/// The same in one call.
[[nodiscard]] TorqueLimit hinge_limit(const std::optional<model::Pin>& pin,
                                      const std::optional<model::Washers>& washers, const Vector3d& axis,
                                      const HingeLoad& load);

}  // namespace sinewright::friction
