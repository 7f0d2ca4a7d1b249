#pragma once

#include <string>
#include <vector>

#include "model/limit.h"

namespace sinewright::study {

/// The directions in which an object is pulled, world, unit vectors. In a plane: evenly round it, from `first` on, by the right-hand
/// rule about the normal. Over the sphere: a Fibonacci lattice about z, which leaves every direction about the same room (from memory).
[[nodiscard]] std::vector<Eigen::Vector3d> directions_of(const model::Directions& task);

/// What tables and plots call each: "15 deg", or "(0.26, -0.81, 0.52)".
[[nodiscard]] std::vector<std::string> direction_labels(const model::Directions& task);

/// The scenario with a load on the object in a direction, called kPull, and the ramp that makes it rise until the object is lost.
struct Pull {
  model::Scenario scenario;
  model::Ramp ramp;
};
inline constexpr const char* kPull = "pull in a direction";
/// @throws InvalidInput, with `place`, if the object is not there or not free.
[[nodiscard]] Pull pull_in(model::Scenario scenario, const model::Directions& task, const Eigen::Vector3d& direction, const Place& place);

}  // namespace sinewright::study
