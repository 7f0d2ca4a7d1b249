#pragma once

#include <numbers>
#include <string>
#include <vector>

#include "../simulation/parts.h"
#include "simulation/static_analysis.h"

/// Fingers for the static analysis, built without any file. All data invented.
namespace sinewright::inspected {

using model::Vector3d;
inline constexpr double pi = std::numbers::pi;
inline constexpr double degree = pi / 180;

/// A chain of phalanges along x from a fixed knuckle, without cords and drives.
/// @param length  of every phalanx but the last [m].
inline model::Scenario chain(const std::vector<double>& length) {
  model::Scenario scenario;
  scenario.duration = 1;
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("knuckle")};
  for (std::size_t i = 0; i <= length.size(); ++i)
    m.bodies.push_back(parts::rod("phalanx " + std::to_string(i + 1), static_cast<int>(i),
                                  Vector3d(i == 0 ? 0.0 : length[i - 1], 0, 0), 0.01, i < length.size() ? length[i] : 25e-3));
  return scenario;
}

/// The same with a flexor over guides of the given arms, wound by the plain drive.
inline model::Scenario flexed_chain(const std::vector<double>& arm, const std::vector<double>& length) {
  model::Scenario scenario = chain(length);
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line()};
  m.drives = {parts::plain_drive()};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = parts::constant_arm_path(arm, length);
  m.cords = {cord};
  return scenario;
}

}  // namespace sinewright::inspected
