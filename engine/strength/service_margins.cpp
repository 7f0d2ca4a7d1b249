#include "strength/service_margins.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "strength/argument.h"

namespace sinewright::strength {

Margin temperature_margin(std::string check, double limit, double temperature, double ambient) {
  require_positive(limit, "temperature limit", "K");
  require_positive(temperature, "temperature", "K");
  require_positive(ambient, "ambient temperature", "K");
  return make_margin(std::move(check), limit - ambient, std::max(0.0, temperature - ambient), "K");
}

Margin stretch_margin(double breaking_stretch, double stretch) {
  require(std::isfinite(breaking_stretch) && breaking_stretch > 1, "stretch at break", breaking_stretch, "",
          "finite and above 1");
  require_positive(stretch, "stretch", "");
  return make_margin("return cord stretch", breaking_stretch - 1, std::max(0.0, stretch - 1), "1");
}

Margin gear_torque_margin(double rated_torque, double torque) {
  require_positive(rated_torque, "rated torque of the gearhead", "N m");
  require_finite(torque, "gearhead torque", "N m");
  return make_margin("gearhead torque", rated_torque, std::abs(torque), "N m");
}

}  // namespace sinewright::strength
