#include "friction/gear_cone.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "friction/argument.h"

namespace sinewright::friction {

GearFriction gear_friction(const model::Gearhead& gearhead, double load_torque) noexcept {
  const double when_driving = 1 / gearhead.forward_efficiency - 1;
  const double when_driven = 1 - gearhead.backward_efficiency;
  const double size = std::abs(load_torque);
  const double sign = load_torque < 0 ? -1.0 : 1.0;
  const double winding = load_torque < 0 ? when_driven : when_driving;
  const double unwinding = load_torque < 0 ? when_driving : when_driven;
  return {winding * size + gearhead.drag, unwinding * size + gearhead.drag, sign * winding, sign * unwinding};
}

double backward_efficiency(double forward) {
  require(forward > 0 && forward <= 1, "forward efficiency", forward, "", "above 0, at most 1");
  return std::max(0.0, 2 - 1 / forward);
}

double backward_efficiency(std::span<const double> forward) {
  double product = 1;
  for (const double stage : forward) product *= backward_efficiency(stage);
  return product;
}

double backward_efficiency_of_equal_stages(double overall_forward, int stages) {
  require(overall_forward > 0 && overall_forward <= 1, "forward efficiency", overall_forward, "",
          "above 0, at most 1");
  require(stages >= 1, "number of gear stages", stages, "", "at least 1");
  return std::pow(backward_efficiency(std::pow(overall_forward, 1.0 / stages)), stages);
}

double forward_output_torque(const model::Gearhead& gearhead, double rotor_torque) noexcept {
  return std::max(0.0, gearhead.forward_efficiency * (gearhead.ratio * rotor_torque - gearhead.drag));
}

double back_drive_torque(const model::Gearhead& gearhead, double rotor_drag) noexcept {
  if (gearhead.backward_efficiency == 0) return std::numeric_limits<double>::infinity();
  return (gearhead.ratio * rotor_drag + gearhead.drag) / gearhead.backward_efficiency;
}

void check_gearhead(const model::Gearhead& gearhead) {
  require(std::isfinite(gearhead.ratio) && gearhead.ratio > 0, "gear ratio", gearhead.ratio, "",
          "finite and > 0");
  require(gearhead.forward_efficiency > 0 && gearhead.forward_efficiency <= 1, "forward efficiency",
          gearhead.forward_efficiency, "", "above 0, at most 1");
  require(gearhead.backward_efficiency >= 0 && gearhead.backward_efficiency <= 1, "backward efficiency",
          gearhead.backward_efficiency, "", "0 (locks) to 1");
  require(std::isfinite(gearhead.drag) && gearhead.drag >= 0, "gearhead drag", gearhead.drag, "N m",
          "finite and >= 0");
}

}  // namespace sinewright::friction
