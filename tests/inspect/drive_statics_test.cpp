#include <catch2/catch.hpp>
#include <cmath>

#include "fingers.h"

using namespace sinewright;
using namespace sinewright::inspected;
using simulation::drive_statics;
using simulation::DriveStatics;
using simulation::System;
using Catch::Matchers::WithinRel;

namespace {

// 6 V, 2.4 Ω, 6.5 mN m/A, no-load current 35 mA; gear train 100:1 of efficiency 0.65. Invented.
model::Scenario with_motor() {
  model::Scenario scenario = flexed_chain({8e-3}, {});
  auto& drive = scenario.model.drives[0];
  drive.motor.resistance = 2.4;
  drive.motor.torque_constant = 6.5e-3;
  drive.motor.static_drag = 4e-4;
  drive.motor.kinetic_drag = 0.035 * 6.5e-3;
  drive.gearhead.ratio = 100;
  drive.gearhead.forward_efficiency = 0.65;
  drive.gearhead.backward_efficiency = 0.4;
  drive.pulley.radius = 5e-3;
  scenario.model.lines[0].diameter = 1e-3;
  return scenario;
}

DriveStatics statics(const model::Scenario& scenario) { return drive_statics(System(scenario), 0); }

}  // namespace

TEST_CASE("drive statics: stall and no load of a motor on a stiff supply") {
  const DriveStatics s = statics(with_motor());
  CHECK_THAT(s.stall_current, WithinRel(2.5, 1e-12));
  CHECK_THAT(s.driven_current, WithinRel(2.5, 1e-12));
  // 100 · 0.65 · (6.5e-3 · 2.5 − 2.275e-4)
  CHECK_THAT(s.stall_torque, WithinRel(1.0414625, 1e-12));
  // (6 − 2.4 · 0.035) / 6.5e-3 / 100
  CHECK_THAT(s.no_load_speed, WithinRel(9.10153846153846, 1e-12));
  // The cord's centre runs at 5.5 mm.
  CHECK_THAT(s.stall_tension, WithinRel(1.0414625 / 5.5e-3, 1e-12));
  CHECK_THAT(s.closing_speed, WithinRel(9.10153846153846 * 5.5e-3, 1e-12));
}

TEST_CASE("drive statics: the driver's limit caps torque but not speed") {
  model::Scenario scenario = with_motor();
  scenario.model.drives[0].current_limit = 0.5;
  const DriveStatics s = statics(scenario);
  CHECK_THAT(s.stall_current, WithinRel(2.5, 1e-12));
  CHECK(s.driven_current == 0.5);
  CHECK_THAT(s.stall_torque / (100 * 0.65), WithinRel(3.0225e-3, 1e-12));  // at the rotor
  CHECK_THAT(s.no_load_speed, WithinRel(9.10153846153846, 1e-12));
  scenario.model.drives[0].current_limit = 4;
  CHECK_THAT(statics(scenario).driven_current, WithinRel(2.5, 1e-12));
  scenario.model.drives[0].current_limit = 0.02;  // less than the drag takes
  CHECK(statics(scenario).stall_torque == 0);
}

TEST_CASE("drive statics: the supply's resistance and the winding's temperature count") {
  model::Scenario scenario = with_motor();
  scenario.model.supplies[0].resistance = 0.6;
  const DriveStatics s = statics(scenario);
  CHECK_THAT(s.stall_current, WithinRel(2.0, 1e-12));
  CHECK_THAT(s.no_load_speed, WithinRel((6 - 3.0 * 0.035) / 6.5e-3 / 100, 1e-12));
  scenario.model.drives[0].motor.resistance_slope = 0.004;  // copper, from memory; reference 20 °C
  scenario.ambient = 293.15 + 25;
  CHECK_THAT(statics(scenario).stall_current, WithinRel(6 / (2.4 * 1.1 + 0.6), 1e-12));
}

TEST_CASE("drive statics: the gear's drag is taken off at the output") {
  model::Scenario scenario = with_motor();
  scenario.model.drives[0].gearhead.drag = 0.08;
  const DriveStatics s = statics(scenario);
  // 0.65 (100 · 0.0160225 − 0.08)
  CHECK_THAT(s.stall_torque, WithinRel(0.65 * (1.60225 - 0.08), 1e-12));
  // Seen from the rotor the drag is 0.8 mN m more: the current that carries both, then the speed.
  const double current = (2.275e-4 + 8e-4) / 6.5e-3;
  CHECK_THAT(s.no_load_speed, WithinRel((6 - 2.4 * current) / 6.5e-3 / 100, 1e-12));
  // Power off, by hand: the load's torque less the gear's loss turns drag of gear and brushes.
  CHECK_THAT(s.back_drive_torque, WithinRel((100 * 4e-4 + 0.08) / 0.4, 1e-12));
  CHECK_THAT(s.back_drive_tension, WithinRel(0.3 / 5.5e-3, 1e-12));
}

TEST_CASE("drive statics: a gear train that cannot be turned back holds any load") {
  model::Scenario scenario = with_motor();
  CHECK_THAT(statics(scenario).back_drive_torque, WithinRel(0.1, 1e-12));
  scenario.model.drives[0].gearhead.backward_efficiency = 0;
  CHECK(std::isinf(statics(scenario).back_drive_torque));
  CHECK(std::isinf(statics(scenario).back_drive_tension));
}
