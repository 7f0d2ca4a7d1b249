#include "simulation/detour.h"

#include <algorithm>

#include "simulation/static_analysis.h"

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

WayToFinger way(const System& system, std::size_t c, const VectorXd& q, double tension) {
  const CordSystem& cord = system.cords[c];
  const CordPosture posture = cord_posture(system, q, c);
  WayToFinger result;
  result.path_length = posture.path_length;
  std::size_t mouth = 0;
  for (const auto& node : cord.path.nodes()) {
    if (system.model().bodies[at(node.body)].hinge) break;
    result.turning += posture.turning_angle[mouth++];
  }
  result.ratio = posture.ratio[mouth];
  for (std::size_t s = 0; s < posture.span_length.size(); ++s)
    result.stretch += posture.span_length[s] * (1 - 1 / cord.law.stretch(tension * posture.ratio[s]));
  return result;
}

// The scenario as it would be with every drive in line with its finger.
model::Scenario with_drives_in_line(model::Scenario scenario) {
  for (model::Cord& cord : scenario.model.cords) {
    if (!cord.lead) continue;
    auto end = std::get<model::PulleyEnd>(cord.path.front());
    scenario.model.drives[at(end.drive)].body = cord.lead->body;
    end.at = cord.lead->at;
    cord.path.erase(cord.path.begin(), cord.path.begin() + cord.lead->points);
    cord.path.insert(cord.path.begin(), end);
    cord.lead.reset();
  }
  return scenario;
}

}  // namespace

std::vector<Detour> detours(const System& system, const std::vector<double>& angles) {
  std::vector<Detour> list;
  const auto& cords = system.model().cords;
  if (std::none_of(cords.begin(), cords.end(), [](const model::Cord& cord) { return cord.lead.has_value(); })) return list;
  const System in_line(with_drives_in_line(system.scenario));
  const VectorXd q = posture(system, angles);
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    if (!cords[at(system.cords[c].cord)].lead) continue;
    const double tension = drive_statics(system, at(system.cords[c].drive)).stall_tension;
    list.push_back({c, tension, way(system, c, q, tension), way(in_line, c, q, tension)});
  }
  return list;
}

}  // namespace sinewright::simulation
