#include "friction/gear_cone.h"

#include <array>
#include <cmath>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::friction;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

model::Gearhead gearhead() {
  model::Gearhead g;
  g.ratio = 100;
  g.forward_efficiency = 0.65;
  g.backward_efficiency = 0.5;
  g.drag = 0.01;
  return g;
}

}  // namespace

TEST_CASE("gear: in steady motion the efficiencies are those of the definition", "[analytic][gear]") {
  model::Gearhead g = gearhead();
  g.drag = 0;
  const double load = 0.4;
  const GearFriction f = gear_friction(g, load);
  // Winding: the motor gives load + friction at the output and the load takes `load`.
  CHECK_THAT(load / (load + f.winding), WithinRel(0.65, 1e-14));
  // Unwinding: the load gives `load` and the motor receives load − friction.
  CHECK_THAT((load - f.unwinding) / load, WithinRel(0.5, 1e-14));
}

TEST_CASE("gear: a load the other way round mirrors the cone", "[gear]") {
  const model::Gearhead g = gearhead();
  const double load = GENERATE(0.0, 0.02, 0.7);
  CHECK(gear_friction(g, -load).winding == gear_friction(g, load).unwinding);
  CHECK(gear_friction(g, -load).unwinding == gear_friction(g, load).winding);
}

TEST_CASE("gear: the limits pass through zero load without a jump and end in the drag",
          "[continuity][gear]") {
  const model::Gearhead g = gearhead();
  CHECK(gear_friction(g, 0).winding == g.drag);
  CHECK_THAT(gear_friction(g, -1e-12).winding, WithinAbs(gear_friction(g, 1e-12).winding, 1e-12));
}

TEST_CASE("gear: the slopes agree with differences", "[derivative][gear]") {
  const model::Gearhead g = gearhead();
  const double load = GENERATE(-0.3, 0.3);
  const double h = 1e-6;
  const GearFriction f = gear_friction(g, load);
  const GearFriction up = gear_friction(g, load + h), down = gear_friction(g, load - h);
  CHECK_THAT(f.winding_by_load, WithinRel((up.winding - down.winding) / (2 * h), 1e-8));
  CHECK_THAT(f.unwinding_by_load, WithinRel((up.unwinding - down.unwinding) / (2 * h), 1e-8));
}

TEST_CASE("gear: a loss-free gearhead has its drag alone", "[limits][gear]") {
  model::Gearhead g = gearhead();
  g.forward_efficiency = g.backward_efficiency = 1;
  CHECK(gear_friction(g, 0.8).winding == g.drag);
  CHECK(gear_friction(g, 0.8).unwinding == g.drag);
}

TEST_CASE("gear: backward efficiency from the forward one makes both losses equal", "[analytic][gear]") {
  model::Gearhead g = gearhead();
  g.forward_efficiency = 0.8;
  g.backward_efficiency = backward_efficiency(0.8);
  const GearFriction f = gear_friction(g, 1.7);
  CHECK_THAT(f.winding, WithinRel(f.unwinding, 1e-14));
}

TEST_CASE("gear: stages multiply, and equal stages need only their number", "[analytic][gear]") {
  const std::array stages{0.9, 0.8, 0.95};
  CHECK_THAT(backward_efficiency(stages), WithinRel((2 - 1 / 0.9) * (2 - 1 / 0.8) * (2 - 1 / 0.95), 1e-14));
  const std::array equal{0.85, 0.85, 0.85};
  CHECK_THAT(backward_efficiency_of_equal_stages(std::pow(0.85, 3), 3),
             WithinRel(backward_efficiency(equal), 1e-13));
  CHECK(backward_efficiency(std::array{0.9, 0.45}) == 0);
}

TEST_CASE("gear: output torque and back-drive torque lie on the cone's edges", "[analytic][gear]") {
  const model::Gearhead g = gearhead();
  const double driven = forward_output_torque(g, 0.01);
  CHECK_THAT(driven + gear_friction(g, driven).winding, WithinRel(g.ratio * 0.01, 1e-14));
  const double back = back_drive_torque(g, 2e-4);
  CHECK_THAT(back - gear_friction(g, back).unwinding, WithinRel(g.ratio * 2e-4, 1e-13));
  CHECK(forward_output_torque(g, 1e-6) == 0);  // its own drag holds it
  model::Gearhead locked = g;
  locked.backward_efficiency = 0;
  CHECK(std::isinf(back_drive_torque(locked, 2e-4)));
}

TEST_CASE("gear: efficiencies out of range are refused", "[errors][gear]") {
  CHECK_THROWS_AS(backward_efficiency(0.0), InvalidInput);
  CHECK_THROWS_AS(backward_efficiency(1.01), InvalidInput);
  CHECK_THROWS_AS(backward_efficiency_of_equal_stages(0.5, 0), InvalidInput);
  model::Gearhead g = gearhead();
  g.backward_efficiency = -0.1;
  CHECK_THROWS_AS(check_gearhead(g), InvalidInput);
}
