#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/model.h"
#include "strength/interference_fit.h"
#include "strength/part_strength.h"
#include "strength/size_limits.h"

namespace sinewright::strength {

/// Temperature at which sizes hold [K]: 20 °C, as in ISO 1 (from memory).
inline constexpr double size_temperature = 293.15;

/// Limits of a size as the model gives it. Classes count on the nominal size.
/// @param nominal  diameter of the pin [m].
/// @throws InvalidInput if the class or the size is out of the table.
[[nodiscard]] SizeLimits limits_of(const model::TolerancedSize& size, double nominal);

/// What one lug's press fit does with one interference at one temperature.
struct PressState {
  double temperature = 0;                ///< [K]
  double interference = 0;               ///< on the diameter, at that temperature [m]; negative: clearance
  double pressure = 0;                   ///< [Pa]
  double hoop_stress = 0;                ///< at the hub's bore [Pa]
  double equivalent_stress = 0;          ///< von Mises, at the hub's bore [Pa]
  double pull_out_force = 0;             ///< fresh, with static friction [N]
  double slip_torque = 0;                ///< fresh, with static friction [N m]
  std::optional<double> crept_pressure;  ///< [Pa]; none: the share that remains is not described
  std::optional<double> crept_pull_out_force;  ///< [N]
  std::optional<double> crept_slip_torque;     ///< [N m]
};

/// The fit of one outer lug, made with an interference on the diameter [m].
/// @param diameter  of the pin, nominal [m].
[[nodiscard]] InterferenceFit lug_fit(const model::PressFit& press, double diameter, double interference,
                                      const model::Model& model);

/// What that fit does at a temperature [K].
[[nodiscard]] PressState press_state(const InterferenceFit& fit, const model::PressFit& press, double temperature);

/// The stress that the lug bears round its hole [Pa]: hub_strength, or its material's in the direction of its layers.
[[nodiscard]] Known hub_strength(const model::PressFit& press, const model::Model& model);

/// The same fit made with the smallest or with the largest interference that the sizes allow.
struct PressEnd {
  double press_in_force = 0;       ///< with kinetic friction, at the temperature of the sizes [N]
  std::vector<PressState> states;  ///< at the temperature of the sizes, then at the lowest and highest in use
};

/// The pin in each of the two outer lugs.
struct PressFitReport {
  SizeLimits hole;  ///< [m]
  FitRange range;   ///< [m], at the temperature of the sizes
  PressEnd loosest;
  PressEnd tightest;
  std::optional<double> hub_strength;  ///< [Pa]
  std::string hub_material, pin_material;
  std::vector<std::string> missing;  ///< keys without which something is left out

  /// Some sizes leave no interference as the parts are made.
  [[nodiscard]] bool may_be_loose() const noexcept { return range.largest_clearance >= 0; }
  /// No sizes give any.
  [[nodiscard]] bool is_loose() const noexcept { return range.smallest_clearance >= 0; }
  /// Largest equivalent stress of both ends and all temperatures [Pa].
  [[nodiscard]] double largest_stress() const noexcept;
};

/// Sizes of one hinge and what follows from them.
struct HingeFits {
  std::string hinge;
  double diameter = 0;                     ///< of the pin, nominal [m]; 0: there is no pin
  std::optional<SizeLimits> pin;           ///< [m]
  std::optional<SizeLimits> running_hole;  ///< [m]
  std::optional<FitRange> running;         ///< hole − pin in the inner lug [m]
  std::optional<PressFitReport> press;
};

/// Every hinge of the model, in its order; one without data has none of the optional parts.
///
/// A warmer or colder fit: δ + (α_pin − α_hub) d ΔT. A crept one has lost interference in proportion to the
/// pressure, and the change of temperature comes on top in full: k δ + (α_pin − α_hub) d ΔT.
/// Laws: interference_fit.h, iso_286.h. @throws InvalidInput as they do.
[[nodiscard]] std::vector<HingeFits> hinge_fits(const model::Model& model);

}  // namespace sinewright::strength
