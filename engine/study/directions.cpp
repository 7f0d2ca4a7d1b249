#include "study/directions.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

namespace sinewright::study {

using Eigen::Vector3d;
using std::numbers::pi;

std::vector<Vector3d> directions_of(const model::Directions& task) {
  std::vector<Vector3d> list;
  for (int i = 0; i < task.count; ++i) {
    if (task.plane) {
      const double angle = 2 * pi * i / task.count;
      list.push_back(std::cos(angle) * task.first + std::sin(angle) * task.plane->cross(task.first));
    } else {
      const double golden = pi * (3 - std::sqrt(5.0));
      const double z = 1 - (2.0 * i + 1) / task.count, across = std::sqrt(1 - z * z);
      list.emplace_back(across * std::cos(golden * i), across * std::sin(golden * i), z);
    }
  }
  return list;
}

std::vector<std::string> direction_labels(const model::Directions& task) {
  std::vector<std::string> labels;
  const auto directions = directions_of(task);
  for (std::size_t i = 0; i < directions.size(); ++i) {
    const auto entry = [&](int axis) { return std::abs(directions[i][axis]) < 5e-3 ? 0.0 : directions[i][axis]; };
    labels.push_back(task.plane ? fmt::format("{:.4g} deg", 360.0 * static_cast<double>(i) / task.count)
                                : fmt::format("({:.2f}, {:.2f}, {:.2f})", entry(0), entry(1), entry(2)));
  }
  return labels;
}

Pull pull_in(model::Scenario scenario, const model::Directions& task, const Vector3d& direction, const Place& place) {
  const auto refuse = [&](const std::string& what, const std::string& needed) {
    throw InvalidInput(fmt::format("{}:{}:{}: {}\n  needed: {}", place.file, place.line, place.column, what, needed));
  };
  std::vector<std::string> free;
  int index = -1;
  for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
    const model::Object& object = scenario.objects[i];
    const bool moves = std::holds_alternative<model::HeldFree>(object.hold);
    if (moves) free.push_back(object.name);
    if (object.name != task.object) continue;
    index = static_cast<int>(i);
    if (!moves) refuse(fmt::format("the object '{}' is held by something else than the grasp", task.object), "an object with 'hold: free'");
  }
  if (index < 0)
    refuse(fmt::format("there is no object '{}' in the scenario", task.object),
           "one of: " + (free.empty() ? std::string("(it has no free object)") : fmt::format("{}", fmt::join(free, ", "))));
  model::Load load;
  load.name = kPull;
  load.body = task.object;
  load.object_index = index;
  load.at = task.at;
  load.direction = direction;
  scenario.loads.push_back(std::move(load));
  model::Ramp ramp;
  ramp.what = model::RiseOfLoad{kPull};
  ramp.start = task.start;
  ramp.rate = task.rate;
  ramp.most = task.most;
  ramp.until = {model::EndEvent::object_leaves, task.object, task.more_than};
  ramp.halvings = task.halvings;
  return {std::move(scenario), ramp};
}

}  // namespace sinewright::study
