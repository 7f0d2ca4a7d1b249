// Several drives on one supply, in a run.

#include <catch2/catch.hpp>

#include "parts.h"

using namespace sinewright;
using parts::Walk;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// n equal motors, each pulling on a cord that is tied to the same fixed body: they stall at once.
model::Scenario tied(int n, double resistance, double limit) {
  model::Scenario scenario;
  model::Model& m = scenario.model;
  m.supplies = {parts::supply(6, resistance)};
  m.supplies[0].current_limit = limit;
  m.lines = {parts::stiff_line(12000, 1e-3)};
  m.bodies = {parts::fixed_body("bench")};
  for (int i = 0; i < n; ++i) {
    m.drives.push_back(parts::plain_drive());
    m.drives.back().name = "d" + std::to_string(i);
    m.drives.back().motor.kinetic_drag = m.drives.back().motor.static_drag = 1e-4;
    model::Cord cord;
    cord.name = m.drives.back().name;
    cord.line = 0;
    cord.path = {model::PulleyEnd{i, {0, 0, 0.01 * i}}, model::Anchor{0, {0.1, 0, 0.01 * i}}};
    m.cords.push_back(cord);
  }
  scenario.duration = 1;
  return scenario;
}

}  // namespace

TEST_CASE("shared supply: stalled motors get what Ohm's law and the supply's limit leave them", "[analytic]") {
  const int n = GENERATE(1, 3, 5);
  const double limit = GENERATE(0.0, 4.0);
  Walk walk(tied(n, 0.5, limit));
  for (int i = 0; i < n; ++i) walk.voltage(6, static_cast<std::size_t>(i));
  walk.to(0.5);
  const double all = n * 6 / (1 + n * 0.5);  // winding 1 ohm
  const double drawn = limit > 0 ? std::min(all, limit) : all;
  CAPTURE(n, limit);
  const simulation::Stage& stage = walk.stepper.stage();
  for (int i = 0; i < n; ++i) {
    CHECK_THAT(walk.state.v[walk.system.shafts[static_cast<std::size_t>(i)].v_output], WithinAbs(0, 1e-6));
    CHECK_THAT(stage.shaft[static_cast<std::size_t>(i)].electric.current, WithinRel(drawn / n, 1e-9));
  }
  CHECK_THAT(stage.supply[0].current, WithinRel(drawn, 1e-9));
  CHECK_THAT(stage.supply[0].voltage, WithinRel(drawn / n, 1e-9));  // what each winding of 1 ohm sees
  // The books close, and what the limit keeps back is lost in the supply.
  CHECK_THAT(walk.residual(), WithinAbs(0, 2e-3 * walk.account(simulation::Account::supply)));
  const double lost = 6 * drawn - drawn * drawn / n;
  const double before = walk.account(simulation::Account::supply_resistance);
  walk.to(0.6);
  CHECK_THAT((walk.account(simulation::Account::supply_resistance) - before) / 0.1, WithinRel(lost, 1e-6));
}

TEST_CASE("shared supply: two motors wind in more slowly than one") {
  const auto wound = [](int n) {
    Walk walk(tied(n, 0.5, 0));
    for (int i = 0; i < n; ++i) walk.voltage(6, static_cast<std::size_t>(i));
    walk.to(2e-3);
    return walk.shaft(0);
  };
  CHECK(wound(2) < 0.9 * wound(1));
}
