#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "model/material.h"

namespace sinewright::model {

/// Classes of ISO 286 that the engine knows; their limits stand in strength/iso_286.h.
inline constexpr std::array<std::string_view, 8> hole_classes{"H5", "H6",  "H7",  "H8",
                                                              "H9", "H10", "H11", "F8"};
inline constexpr std::array<std::string_view, 11> shaft_classes{"h5",  "h6", "h7", "h8", "h9", "h10",
                                                                "h11", "g6", "f8", "m6", "p6"};
inline constexpr double largest_iso_size = 0.010;  ///< nominal size up to which they are known [m]

/// A size by its class, on the nominal diameter of the pin.
struct IsoClass {
  std::string name;  ///< "m6"
};

/// A size by the smallest and largest that a part may have.
struct SizeBetween {
  double lower = 0;  ///< [m]
  double upper = 0;  ///< [m]
};

/// A size by what a process makes of a nominal size.
struct ProcessSize {
  double nominal = 0;          ///< [m]
  double lower_deviation = 0;  ///< [m], either sign
  double upper_deviation = 0;  ///< [m], at least the lower one
};

using TolerancedSize = std::variant<IsoClass, SizeBetween, ProcessSize>;

/// How a pin sits in the outer lugs. Materials are indices into Model::materials.
struct PressFit {
  TolerancedSize hole;
  double length = 0;        ///< of the contact in one lug [m]
  double hub_diameter = 0;  ///< outside diameter of the lug round the hole [m]
  int hub_material = -1;
  Layers hub_layers = Layers::weaker;
  int pin_material = -1;
  double static_friction = 0;              ///< pin against hole, for pulling out and turning [–]
  double kinetic_friction = 0;             ///< the same, for pressing in [–]
  std::optional<double> remaining_share;   ///< of the pressure, after the hub has crept, in (0, 1]
  std::optional<double> hub_strength;      ///< stress that the hub bears round the hole [Pa]; none: its material's
  std::optional<SizeBetween> temperature;  ///< lowest and highest in use [K]
};

/// Sizes of a hinge's pin and of its holes: data for fits and play, no part in the mechanics. Sizes hold at
/// 20 °C.
struct Fit {
  TolerancedSize pin;
  std::optional<TolerancedSize> running_hole;  ///< the inner lug's
  std::optional<PressFit> press;               ///< in the outer lugs
};

}  // namespace sinewright::model
