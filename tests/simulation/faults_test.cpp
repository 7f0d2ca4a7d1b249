// Faults on the timeline, each against what must follow.

#include <cmath>
#include <limits>
#include <numeric>
#include <string>

#include <catch2/catch.hpp>

#include "controlled.h"
#include "simulation/faults.h"

namespace {

using namespace sinewright;
using namespace sinewright::controlled;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

constexpr double kForever = std::numeric_limits<double>::infinity();
constexpr double kLength = 0.1, kEA = 60;  // of the elastic cord below [m], [N]

// A pulley that winds an elastic cord which is tied to the knuckle: nothing else moves. While it winds, dM = −r dφ M/L, so that
// the material left is M = L exp(−r φ/L) and the tension EA (exp(r φ/L) − 1).
model::Scenario elastic_cord(const model::Drive& drive) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line(kEA)};
  m.drives = {drive};
  m.drives[0].motor.viscous_drag = 2e-5;  // without it the rotor would swing
  m.bodies = {parts::fixed_body("knuckle")};
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = {model::PulleyEnd{0, Vector3d::Zero()}, model::Anchor{0, Vector3d(kLength, 0, 0)}};
  m.cords = {cord};
  scenario.duration = 1;
  return scenario;
}

// One phalanx with a spring, which the motor winds up to half a radian, within a minute.
constexpr double kWinding = 0.052;  // [V]
model::Scenario spring_finger() {
  auto scenario = finger();
  auto& m = scenario.model;
  m.bodies.pop_back();
  m.bodies[1].hinge->spring_stiffness = 0.05;
  m.bodies[1].hinge->viscous = 1e-4;
  m.drives[0].motor.viscous_drag = 2e-5;
  m.drives[0].gearhead.ratio = 30;
  m.cords[0].path = parts::constant_arm_path({8e-3}, {0.045});
  scenario.timeline = {{0, 0, model::CommandVoltage{kWinding, 0}}};
  scenario.duration = 1;
  return scenario;
}

std::size_t row_at(const Seen& seen, double time) {
  std::size_t i = 0;
  while (i + 1 < seen.time.size() && seen.time[i] < time) ++i;
  return i;
}

const simulation::Event* event_of(const Seen& seen, const std::string& kind) {
  for (const auto& event : seen.result.events)
    if (event.kind == kind) return &event;
  return nullptr;
}

}  // namespace

TEST_CASE("faults: after the cord broke the phalanx swings on its spring as if it were alone, and the motor runs free", "[analytic]") {
  auto scenario = spring_finger();
  scenario.record_interval = 1e-9;
  scenario.solver.tolerance = 1e-5;
  const double when = 60;
  scenario.duration = when + 0.3;
  scenario.faults = {{when, kForever, model::CordBroken{0, -1}}};
  const Seen seen = run(scenario);
  const auto& angle = seen.first.at("/joints/proximal/angle");
  const std::size_t at = row_at(seen, when);
  REQUIRE(seen.time[at] == when);
  const double start = angle[at], start_rate = seen.first.at("/joints/proximal/rate")[at];
  REQUIRE(start > 0.3);
  REQUIRE(std::abs(start_rate) < 1e-3);
  const double inertia = 0.01 * 0.045 * 0.045 / 3, w0 = std::sqrt(0.05 / inertia), decay = 1e-4 / (2 * inertia), w = std::sqrt(w0 * w0 - decay * decay);
  double worst = 0;
  for (std::size_t i = at; i < seen.time.size(); ++i) {
    const double t = seen.time[i] - when;
    const double alone = std::exp(-decay * t) * (start * std::cos(w * t) + (start_rate + decay * start) / w * std::sin(w * t));
    worst = std::max(worst, std::abs(angle[i] - alone));
  }
  CAPTURE(worst, start);
  CHECK(worst < 2e-3 * start);
  // The motor: only its own viscous drag is left, n k i = n² c φ', i = (u − k n φ')/R.
  const model::Drive& drive = scenario.model.drives[0];
  const double kn = gain_of(drive), viscous = drive.gearhead.ratio * drive.gearhead.ratio * 2e-5;
  CHECK_THAT(seen.first.at("/drives/flexor/shaft_speed").back(), WithinRel(kn * kWinding / (viscous * 1 + kn * kn), 1e-3));
  for (std::size_t i = at + 1; i < seen.time.size(); ++i) {
    REQUIRE(seen.first.at("/cords/flexor/tension")[i] == 0);
    REQUIRE(seen.first.at("/cords/flexor/slack")[i] == 0);
    REQUIRE(seen.first.at("/cords/flexor/condition")[i] == 2);
  }
  // What it let go of: T² L/(2 EA λ) with the tension of the moment before.
  const double tension = seen.first.at("/cords/flexor/tension")[at], way = seen.first.at("/cords/flexor/path_length")[at];
  CHECK_THAT(seen.first.at("/energy/cord_faults").back(), WithinRel(tension * tension * way / (2 * 12000 * (1 + tension / 12000)), 1e-6));
  CHECK(seen.first.at("/energy/cord_faults")[at] == 0);
  CHECK(number(seen, "energy_residual") < 0.005);
  REQUIRE(event_of(seen, "fault"));
  CHECK(event_of(seen, "fault")->time == when);
  CHECK_THAT(event_of(seen, "fault")->detail, Contains("breaks in span") && Contains("mJ let go"));
  CHECK(event_of(seen, "taut") == nullptr);
}

TEST_CASE("faults: a cord off its pulley comes free by what its turns were longer, and then pulls on the shaft", "[analytic]") {
  const double shaft = 2e-3, radius = 5e-3, when = 100, voltage = 0.3;  // seven seconds pass until the motor has wound 1/e nearer
  auto scenario = elastic_cord(parts::plain_drive(30, radius));
  scenario.record_interval = 1e-9;
  scenario.timeline = {{0, 0, model::CommandVoltage{voltage, 0}}};
  scenario.faults = {{when, kForever, model::CordOffPulley{0, shaft, std::nullopt}}};
  scenario.duration = 900;
  const Seen seen = run(scenario);
  const auto& tension = seen.first.at("/cords/flexor/tension");
  const std::size_t at = row_at(seen, when);
  const double torque = gain_of(scenario.model.drives[0]) * voltage;  // R = 1
  CHECK_THAT(tension[at], WithinRel(torque / radius, 1e-4));
  const double angle = seen.shaft[at];
  CHECK_THAT(angle, WithinRel(kLength / radius * std::log1p(torque / radius / kEA), 1e-3));
  // Now the same turns of a thinner drum.
  const double before = kLength * kEA / (kEA + tension[at]), free = (radius - shaft) * angle, after = before + free;
  REQUIRE(after < kLength);  // still taut
  const double expected = kEA * (kLength / after - 1);
  CHECK_THAT(tension[at + 1], WithinRel(expected, 0.02));  // the motor has wound on a little
  const auto energy = [&](double material) { return material * kEA / 2 * std::pow(kLength / material - 1, 2); };
  CHECK_THAT(seen.first.at("/energy/cord_faults").back(), WithinRel(energy(before) - energy(after), 1e-3));
  CHECK_THAT(tension.back(), WithinRel(torque / shaft, 1e-3));
  CHECK_THAT(seen.shaft.back(), WithinRel(angle + kLength / shaft * std::log((1 + torque / shaft / kEA) / (kLength / after)), 2e-3));
  CHECK(number(seen, "energy_residual") < 0.005);
  CHECK_THAT(event_of(seen, "fault")->detail, Contains("jumps off the pulley") && Contains("mm come free"));
}

TEST_CASE("faults: a stated slack comes free all the same, and a cord that goes slack by it pulls again once it is wound in", "[analytic]") {
  auto scenario = elastic_cord(parts::plain_drive(30));
  scenario.timeline = {{0, 0, model::CommandVoltage{0.3, 0}}};
  scenario.faults = {{0.5, kForever, model::CordOffPulley{0, 2e-3, 0.03}}};
  scenario.duration = 100;
  scenario.record_interval = 1e-9;
  const Seen seen = run(scenario);
  const std::size_t at = row_at(seen, 0.5);
  const double stretched = kLength - kLength * kEA / (kEA + seen.first.at("/cords/flexor/tension")[at]);
  CHECK(seen.first.at("/cords/flexor/tension")[at + 1] == 0);
  CHECK_THAT(seen.first.at("/cords/flexor/slack")[at + 1], WithinAbs(0.03 - stretched - 2e-3 * (seen.shaft[at + 1] - seen.shaft[at]), 1e-9));
  CHECK(seen.first.at("/cords/flexor/tension").back() > 1);
  CHECK(event_of(seen, "slack") != nullptr);
}

TEST_CASE("faults: a supply dip scales the stalled current, for as long as it lasts", "[analytic]") {
  auto scenario = bare_shaft();
  scenario.model.supplies[0].resistance = 0.5;
  scenario.model.drives[0].motor.static_drag = scenario.model.drives[0].motor.kinetic_drag = 1;  // it never turns
  scenario.timeline = {{0.0, 0, model::CommandVoltage{6, 0}}};
  scenario.faults = {{0.1, 0.2, model::SupplyDip{0, 2.5}}, {0.2, 0.02, model::SupplyDip{0, 1}}};
  scenario.record_interval = 1e-9;
  const Seen seen = run(scenario);
  for (std::size_t i = 1; i < seen.time.size(); ++i) {
    const double t = seen.time[i];
    const double open = t <= 0.1 || t > 0.1 + 0.2 ? 6 : t > 0.2 && t <= 0.2 + 0.02 ? 1 : 2.5;
    REQUIRE_THAT(seen.first.at("/drives/flexor/current")[i], WithinRel(open / 1.5, 1e-9));
  }
  // Open-circuit voltage × current over time, and nothing else.
  const double charge = number(seen, "charge.battery");
  CHECK_THAT(charge, WithinRel((6 * 0.3 + 2.5 * 0.18 + 1 * 0.02) / 1.5, 1e-9));
  CHECK_THAT(number(seen, "energy_supplied"), WithinRel((36 * 0.3 + 6.25 * 0.18 + 0.02) / 1.5, 1e-9));
  CHECK(number(seen, "energy_residual") < 1e-9);
}

TEST_CASE("faults: a dead motor turns as one with open leads does") {
  auto scenario = spring_finger();
  scenario.model.drives[0].motor.viscous_drag = 1e-6;
  auto dead = scenario, off = scenario;
  dead.faults = {{0.4, kForever, model::MotorDead{0}}};
  off.timeline.push_back({0.4, 0, model::CommandOff{model::Leads::open}});
  const Seen a = run(dead), b = run(off);
  CHECK(a.shaft == b.shaft);
  CHECK(a.time == b.time);
  CHECK(a.shaft.back() < 0.2 * *std::max_element(a.shaft.begin(), a.shaft.end()));  // driven back by the spring
  dead.faults[0].lasts = 0.1;
  const Seen again = run(dead);
  CHECK(again.first.at("/drives/flexor/current").back() != 0);
  CHECK(event_of(again, "fault-over") != nullptr);
}

TEST_CASE("faults: a stuck sensor says one thing, and the loop goes after it") {
  auto scenario = finger();
  model::Potentiometer pot;
  pot.range = 18;
  pot.at_zero = 2;
  pot.feed = 3.3;
  pot.bits = 12;
  model::Sensor sensor;
  sensor.kind = pot;
  scenario.model.drives[0].sensor = sensor;
  scenario.controllers = {controller_of(position_loop(6), 1e-3)};
  scenario.timeline = {{0.0, 0, model::SetPosition{1.0, model::MoveMinimumJerk{0.3}}}};
  scenario.record_interval = 1e-9;
  const auto reading_in = [](const Seen& seen, double from, double to) {
    std::vector<double> values;
    for (std::size_t i = 0; i < seen.time.size(); ++i)
      if (seen.time[i] > from && seen.time[i] <= to) values.push_back(seen.first.at("/drives/flexor/sensor/reading")[i]);
    return values;
  };
  scenario.faults = {{0.1005, 0.4, model::SensorStuck{0, std::nullopt}}};
  const Seen stuck = run(scenario);
  const auto values = reading_in(stuck, 0.102, 0.5);
  CHECK(*std::min_element(values.begin(), values.end()) == *std::max_element(values.begin(), values.end()));
  CHECK_THAT(values.front(), WithinAbs(stuck.first.at("/drives/flexor/sensor/reading")[row_at(stuck, 0.1)], 1e-12));
  CHECK(stuck.shaft[row_at(stuck, 0.5)] > 1.4);  // it sees itself far behind
  const auto after = reading_in(stuck, 0.503, 0.6);
  CHECK_THAT(after.back(), WithinAbs(stuck.shaft.back(), 18.0 / 4096));

  const auto said = [&](const model::Fault& fault) {
    scenario.faults = {{0.1005, kForever, fault}};
    return reading_in(run(scenario), 0.102, 0.6);
  };
  for (const double value : said(model::SensorStuck{0, 0.5})) REQUIRE_THAT(value, WithinAbs(0.5, 18.0 / 8192));
  using Reads = model::SensorWireOff::Reads;
  for (const double value : said(model::SensorWireOff{0, Reads::low})) REQUIRE_THAT(value, WithinAbs(-2, 18.0 / 8192 + 1e-12));
  for (const double value : said(model::SensorWireOff{0, Reads::high})) REQUIRE_THAT(value, WithinAbs(16, 18.0 / 8192 + 1e-12));
  auto anything = said(model::SensorWireOff{0, Reads::floating});
  anything.erase(std::unique(anything.begin(), anything.end()), anything.end());  // a sample stands in several rows
  REQUIRE(anything.size() > 450);
  const double mean = std::accumulate(anything.begin(), anything.end(), 0.0) / static_cast<double>(anything.size());
  CHECK_THAT(mean, WithinAbs(7, 1));  // the middle of the range; 500 samples of a spread of 5.2
  CHECK(*std::min_element(anything.begin(), anything.end()) < -1.5);
  CHECK(*std::max_element(anything.begin(), anything.end()) > 15.5);
  auto again = said(model::SensorWireOff{0, Reads::floating});
  again.erase(std::unique(again.begin(), again.end()), again.end());
  CHECK(again == anything);
}

TEST_CASE("faults: a relative encoder that works again has lost what passed meanwhile") {
  auto scenario = bare_shaft();
  model::Sensor sensor;
  sensor.kind = model::RelativeEncoder{4096};
  scenario.model.drives[0].sensor = sensor;
  scenario.timeline = {{0.0, 0, model::CommandVoltage{3, 0}}};
  scenario.faults = {{0.2, 0.1, model::SensorStuck{0, std::nullopt}}};
  scenario.record_interval = 1e-9;
  const Seen seen = run(scenario);
  const double lost = seen.shaft[row_at(seen, 0.3)] - seen.shaft[row_at(seen, 0.2)];
  REQUIRE(lost > 0.5);
  CHECK_THAT(seen.shaft.back() - seen.first.at("/drives/flexor/sensor/reading").back(), WithinAbs(lost, 5e-3 + 1e-3 * seen.first.at("/drives/flexor/shaft_speed").back()));
}

TEST_CASE("faults: a cord gives way where it is loaded most for its strength") {
  model::Cord cord;
  cord.path = {model::PulleyEnd{0, Vector3d::Zero()}, model::Bend{}, model::Bend{}, model::Anchor{}};
  const std::vector<bool> all(3, true);
  const auto place = [&](std::vector<double> tension, const std::vector<bool>& among) { return simulation::weakest_place(cord, tension, among); };
  CHECK(place({10, 8, 7}, all).span == 0);
  CHECK_FALSE(place({10, 8, 7}, all).at_knot);
  cord.knot = model::Knot{"stopper", 0.6};
  CHECK(place({10, 8, 7}, all).span == 2);  // 7/0.6 is more than 10
  CHECK(place({10, 8, 7}, all).at_knot);
  CHECK(place({12, 8, 7}, all).span == 0);
  CHECK(place({12, 8, 7}, {false, true, false}).span == 1);
  cord.path.front() = model::Anchor{};
  CHECK(place({7, 8, 10}, all).span == 2);
  CHECK(place({9, 8, 7}, all).at_knot);
  CHECK(place({9, 8, 7}, all).span == 0);
}

TEST_CASE("faults: the time to a safe state runs from the fault until no motor carries current, or until the grip is gone and all stands") {
  auto scenario = spring_finger();
  const auto safe_after = [&] { return number(run(scenario), "safe_after_fault"); };
  scenario.faults = {{0.4, kForever, model::MotorDead{0}}};
  CHECK(safe_after() == 0);
  scenario.faults = {{0.4, kForever, model::SupplyDip{0, 4}}};
  CHECK(std::isnan(number(run([&] {
                            auto moving = scenario;
                            moving.timeline[0].command = model::CommandVoltage{5.9, 0};
                            moving.model.bodies[1].hinge->spring_stiffness = 0;
                            moving.faults = {{0.1, kForever, model::CordBroken{0, -1}}};
                            return moving;
                          }()),
                          "safe_after_fault")));  // the motor runs free for ever
  scenario.timeline.push_back({0.63, 0, model::CommandOff{model::Leads::open}});
  scenario.faults = {{0.4, kForever, model::CordBroken{0, -1}}};
  CHECK_THAT(safe_after(), WithinAbs(0.23, 1e-9));
  // It switches on again later: not safe for good.
  scenario.timeline.push_back({0.8, 0, model::CommandVoltage{1, 0}});
  CHECK(std::isnan(safe_after()));
  scenario.faults.clear();
  for (const auto& value : run(scenario).result.summary) CHECK(value.key != "safe_after_fault");
}
