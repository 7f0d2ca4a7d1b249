#include "drive/force_by_current.h"

#include <algorithm>

namespace sinewright::drive {

double wanted_tension(const model::ForceByCurrent& known, double force, double angle) {
  return std::max(0.0, force / known.share + known.return_at_zero + known.return_per_angle * angle);
}

double current_for(const model::ForceByCurrent& known, double tension, bool raising) {
  const double load = tension * known.radius, lost = known.drag + known.ratio * known.brush_drag;
  const double torque = raising ? load / known.forward_efficiency + lost : known.backward_efficiency * load - lost;
  return std::clamp(torque / (known.ratio * known.torque_constant), -known.highest_current, known.highest_current);
}

}  // namespace sinewright::drive
