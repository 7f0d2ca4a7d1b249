#include "simulation/detour.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "../simulation/parts.h"
#include "simulation/static_analysis.h"

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Vector3d;

namespace {

constexpr double right_angle = std::numbers::pi / 2;
constexpr double rubbing = 0.2, factor = 0.5, stiffness = 3000;

// A finger on a palm. In line the cord comes straight along x; led, it goes 30 mm along z, then turns into the old way at the place of
// the old pulley, 40 mm before the mouth of the phalanx.
model::Scenario led_finger() {
  model::Scenario scenario;
  model::Model& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line(stiffness)};
  m.bodies = {parts::fixed_body("palm"), parts::rod("phalanx", 0, {0, 0, 0}, 0.01, 0.05)};
  m.drives = {parts::plain_drive()};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.channel.kinetic = rubbing;
  cord.path = {model::PulleyEnd{0, {-0.05, -0.01, 0.03}}, model::Bend{0, {-0.05, -0.01, 0}, 2e-3, factor},
               model::Bend{0, {-0.02, -0.01, 0}, 2e-3, 1}, model::Bend{1, {0.01, -0.01, 0}, 2e-3, 1},
               model::Anchor{1, {0.03, -0.01, 0}}};
  cord.lead = model::Lead{2, 0, {-0.05, -0.01, 0}};
  m.cords = {cord};
  scenario.duration = 1;
  return scenario;
}

}  // namespace

TEST_CASE("detour: a right angle costs what the capstan law says, and the longer cord stretches by Hooke's law", "[analytic]") {
  const simulation::System system(led_finger());
  const auto list = simulation::detours(system, {0.0});
  REQUIRE(list.size() == 1);
  const simulation::Detour& d = list.front();
  CHECK_THAT(d.led.turning, WithinAbs(right_angle, 1e-12));
  CHECK_THAT(d.in_line.turning, WithinAbs(0, 1e-12));
  const double ratio = std::exp(-rubbing * factor * right_angle);
  CHECK_THAT(d.led.ratio, WithinRel(ratio, 1e-12));
  CHECK_THAT(d.in_line.ratio, WithinRel(1.0, 1e-12));
  CHECK_THAT(d.gain(), WithinRel(ratio, 1e-12));
  CHECK_THAT(d.led.path_length - d.in_line.path_length, WithinRel(0.03, 1e-12));
  // T = EA (l / l0 - 1): a stretched length l is l T / (EA + T) longer than at rest.
  const double T = simulation::drive_statics(system, 0).stall_tension;
  CHECK_THAT(d.tension, WithinRel(T, 1e-14));
  const auto longer = [](double length, double tension) { return length * tension / (stiffness + tension); };
  CHECK_THAT(d.in_line.stretch, WithinRel(longer(0.08, T), 1e-12));
  CHECK_THAT(d.led.stretch, WithinRel(longer(0.03, T) + longer(0.08, ratio * T), 1e-12));
}

TEST_CASE("detour: a cord that is not led is not in the list") {
  model::Scenario scenario = led_finger();
  scenario.model.cords[0].lead.reset();
  CHECK(simulation::detours(simulation::System(scenario), {0.0}).empty());
}
