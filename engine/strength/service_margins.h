#pragma once

#include <string>

#include "strength/margin.h"

namespace sinewright::strength {

/// Margin of a temperature, counted as rise over the surroundings [K].
///
///     capacity = limit − ambient,  demand = max(0, temperature − ambient)
///
/// The rise is what the heat makes, so the ratio tells by how much the loss may grow (resistances constant).
/// A ratio of absolute temperatures would look safe at any load. An ambient above the limit gives a capacity
/// below 0, which does not hold.
/// @param limit        allowed temperature [K], > 0.
/// @param temperature  reached [K], > 0.
/// @param ambient      [K], > 0.
/// @throws InvalidInput if a temperature is out of range.
[[nodiscard]] Margin temperature_margin(std::string check, double limit, double temperature, double ambient);

/// Margin of a rubber cord's stretch, counted as strain: (λ_break − 1) / (λ − 1), demand 0 while slack.
///
/// @param breaking_stretch  λ_break, length at break over free length [–], > 1.
/// @param stretch           λ, largest of the run [–], > 0.
[[nodiscard]] Margin stretch_margin(double breaking_stretch, double stretch);

/// Margin of a gearhead's output torque [N m].
///
/// @param rated_torque  what its teeth bear for the time in question [N m], > 0.
/// @param torque        largest output torque of the run, either sign.
[[nodiscard]] Margin gear_torque_margin(double rated_torque, double torque);

}  // namespace sinewright::strength
