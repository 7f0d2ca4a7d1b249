// Laws that must hold along whole runs of a finger with everything in it.

#include "simulation/run.h"

#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"
#include "parts.h"
#include "simulation/summary.h"

namespace {

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Vector3d;
using simulation::Account;

// A finger of two phalanges with pins that are not parallel, flexor and rubber return, stops, washers, pins,
// and a motor.
model::Scenario finger() {
  model::Scenario scenario;
  scenario.gravity = {0, -9.81, 0};
  auto& m = scenario.model;
  m.surfaces = {{"rubber", 2e6, 0.49, 0.5, "invented"}, {"wood", 1e9, 0.3, 0.1, "invented"}};
  m.pairs = {{0, 1, 0.6, "invented"}};
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {{"braid", 0.5e-3, model::LinearLaw{9000}, 1e-3, "invented"},
             {"rubber", 2e-3, model::RubberLaw{3e-6, {{3e5, 2.0}, {1e3, 5.0}}, 4.0}, 2e-3, "invented"}};
  auto drive = parts::plain_drive(100, 4e-3);
  drive.motor.resistance = 8;
  drive.motor.torque_constant = 4e-3;
  drive.motor.static_drag = 4e-5;
  drive.motor.kinetic_drag = 3e-5;
  drive.motor.viscous_drag = 1e-9;
  drive.gearhead.forward_efficiency = 0.65;
  drive.gearhead.backward_efficiency = 0.4;
  drive.gearhead.drag = 1e-3;
  drive.current_limit = 0.35;
  drive.pulley.turns_per_layer = 5;
  m.drives = {drive};

  m.bodies = {parts::fixed_body("knuckle")};
  const double lengths[] = {45e-3, 30e-3};
  for (int i = 0; i < 2; ++i) {
    auto body = parts::rod(i == 0 ? "proximal" : "distal", i, Vector3d(i == 0 ? 0.0 : lengths[0], 0, 0),
                           i == 0 ? 0.012 : 0.007, lengths[i]);
    auto& hinge = *body.hinge;
    hinge.pin_axis = i == 0 ? Vector3d(0.05, 0.02, 1).normalized() : Vector3d(-0.04, 0.1, 1).normalized();
    hinge.pin = model::Pin{2e-3, {0.2, 0.16}, 6e-3};
    hinge.washers = parts::washers_for(2e-4, 1.2);
    hinge.stops = model::EndStops{0, 1.5, 15, 0.02};
    hinge.viscous = 2e-6;
    body.shapes = {{"pad", model::Capsule{{6e-3, -1e-3, 0}, {lengths[i] - 6e-3, -1e-3, 0}, 7e-3}, 0}};
    m.bodies.push_back(body);
  }
  model::Cord flexor;
  flexor.name = "flexor";
  flexor.line = 0;
  flexor.channel.kinetic = 0.12;
  flexor.channel.static_ratio = 1.1;
  flexor.path = {model::PulleyEnd{0, {-34e-3, -12e-3, 0}},   model::Bend{0, {-10e-3, -9e-3, 1e-3}, 2e-3, 1},
                 model::Bend{1, {10e-3, -9e-3, 0}, 2e-3, 1}, model::Bend{1, {37e-3, -6e-3, 1e-3}, 2e-3, 1},
                 model::Bend{2, {7e-3, -6e-3, 0}, 2e-3, 1},  model::Anchor{2, {15e-3, -3e-3, 0}}};
  model::Cord back;
  back.name = "return";
  back.line = 1;
  back.channel.kinetic = 0.15;
  back.channel.static_ratio = 1.1;
  back.pretension = 2.5;
  back.path = {model::Anchor{0, {-20e-3, 5e-3, 0}},
               model::Guide{0, {0, 0, 0}, Vector3d::UnitZ(), 5e-3, {0, 1, 0}, 1},
               model::Bend{1, {22e-3, 5e-3, 1e-3}, 4e-3, 1},
               model::Guide{1, {45e-3, 0, 0}, Vector3d::UnitZ(), 4e-3, {0, 1, 0}, 1},
               model::Anchor{2, {14e-3, 4e-3, 0}}};
  m.cords = {flexor, back};

  model::Object bar;
  bar.name = "bar";
  bar.at = {32e-3, -28e-3, 0};
  bar.shape = {"bar", model::Cylinder{{0, 0, 0}, Vector3d::UnitZ(), 12e-3, 60e-3}, 1};
  scenario.objects = {bar};
  scenario.timeline = {{0.0, 0, model::CommandVoltage{6}},
                       {0.6, 0, model::CommandOff{model::Leads::open}},
                       {0.9, 0, model::CommandVoltage{-6}}};
  scenario.duration = 1.4;
  return scenario;
}

TEST_CASE("run: tension ratios stay in their cones and contact friction in its own, all along") {
  const simulation::System system(finger());
  parts::Walk walk(finger());
  walk.voltage(6);
  double worst = 0, worst_contact = 0;
  long looked = 0;
  const auto look = [&] {
    const auto& stage = walk.stepper.stage();
    for (std::size_t c = 0; c < stage.chain.size(); ++c) {
      const auto& channel = walk.system.model().cords[c].channel;
      const auto& tension = stage.chain[c].tension;
      for (std::size_t k = 0; k + 1 < tension.size(); ++k) {
        if (tension[k] <= 0 && tension[k + 1] <= 0) continue;
        REQUIRE(std::min(tension[k], tension[k + 1]) > 0);
        const double limit = channel.kinetic * channel.static_ratio * stage.path[c].turning_angle[k];
        worst = std::max(worst, std::abs(std::log(tension[k] / tension[k + 1])) - limit);
        ++looked;
      }
    }
    for (const auto& contact : stage.contact)
      worst_contact = std::max(worst_contact, contact.tangent_force.norm() - 0.6 * contact.normal_force);
  };
  walk.to(0.6, look);
  walk.off(model::Leads::open);
  walk.to(0.9, look);
  walk.voltage(-6);
  walk.to(1.4, look);
  CHECK(looked > 1000);
  CHECK(worst < 1e-9);
  CHECK(worst_contact <= 1e-12);
}

TEST_CASE("run: energy in is energy stored plus energy lost, and every loss is a loss") {
  const double tolerance = GENERATE(1e-3, 1e-4);
  auto scenario = finger();
  scenario.solver.tolerance = tolerance;
  parts::Walk walk(scenario);
  walk.voltage(6);
  double most_in = 0, worst = 0;
  std::string negative;
  const auto look = [&] {
    most_in = std::max(most_in, simulation::energy_in(walk.totals.energy));
    worst = std::max(worst, std::abs(walk.residual()));
    for (std::size_t a = static_cast<std::size_t>(Account::supply_resistance);
         a < static_cast<std::size_t>(Account::wound_cord); ++a)
      if (walk.totals.energy[static_cast<int>(a)] < -1e-9) negative = simulation::ledger_names[a];
    for (int a = static_cast<int>(simulation::account_count); a < walk.system.ledger_size; ++a)
      if (walk.totals.energy[a] < -1e-9) negative = "a bend or hinge";
  };
  walk.to(0.6, look);
  walk.off(model::Leads::open);
  walk.to(0.9, look);
  walk.voltage(-6);
  walk.to(1.4, look);
  CHECK(negative == "");
  CHECK(worst < 5e-3 * most_in);
}

TEST_CASE("run: the residual goes down with the tolerance") {
  const auto residual = [](double tolerance) {
    auto scenario = finger();
    scenario.solver.tolerance = tolerance;
    parts::Walk walk(scenario);
    walk.voltage(6);
    double worst = 0;
    walk.to(0.5, [&] { worst = std::max(worst, std::abs(walk.residual())); });
    return worst;
  };
  // Where sticking and sliding change, steps are of first order, and their length goes with the square root of the tolerance.
  const double coarse = residual(1e-2), middle = residual(1e-4), fine = residual(1e-6);
  CAPTURE(coarse, middle, fine);
  CHECK(middle < coarse / 5);
  CHECK(fine < middle / 5);
}

TEST_CASE("run: the same scenario gives the same bits") {
  std::vector<std::vector<double>> first, second;
  for (auto* rows : {&first, &second}) {
    simulation::RunListener listener;
    listener.row = [&](double, std::span<const double> row) { rows->emplace_back(row.begin(), row.end()); };
    const auto result = simulation::run(simulation::System(finger()), listener);
    REQUIRE(result.complete);
  }
  CHECK(first.size() > 100);
  CHECK(first == second);
}

TEST_CASE("run: a step allocates nothing once the first few are done") {
  if (!HeapWatch::works()) return;
  parts::Walk walk(finger());
  walk.voltage(6);
  walk.to(0.05);
  std::size_t requests = 0;
  long steps = 0;
  while (walk.state.time < 0.6) {
    const HeapWatch watch;
    walk.stepper.step(walk.state, walk.commands, 0.6);
    requests += watch.requests();
    ++steps;
  }
  CHECK(walk.stepper.stage().contact[0].normal_force + walk.stepper.stage().contact[1].normal_force > 1);
  CHECK(steps > 50);
  CHECK(requests == 0);
}

TEST_CASE("run: halving the tolerance moves no force or angle at the end by more than one per cent") {
  const auto end = [](double tolerance) {
    auto scenario = finger();
    scenario.solver.tolerance = tolerance;
    parts::Walk walk(scenario);
    walk.voltage(6);
    walk.to(0.6);
    const auto& stage = walk.stepper.stage();
    return std::array<double, 5>{walk.angle(0), walk.angle(1), stage.contact[0].normal_force,
                                 stage.contact[1].normal_force, stage.chain[0].tension[0]};
  };
  const auto whole = end(1e-3), half = end(5e-4);
  for (std::size_t i = 0; i < whole.size(); ++i) {
    CAPTURE(i, whole[i], half[i]);
    CHECK(std::abs(whole[i] - half[i]) < 0.01 * std::abs(half[i]) + 1e-9);
  }
}

TEST_CASE("run: a finger with non-parallel pins swings and conserves energy") {
  auto scenario = finger();
  auto& m = scenario.model;
  scenario.objects.clear();
  scenario.timeline.clear();
  m.cords.clear();
  m.drives.clear();
  for (std::size_t i = 1; i <= 2; ++i) {
    auto& hinge = *m.bodies[i].hinge;
    hinge.pin.reset();
    hinge.washers.reset();
    hinge.stops.reset();
    hinge.viscous = 0;
    hinge.pin_axis = i == 1 ? Vector3d(0.4, 0.3, 1).normalized() : Vector3d(-0.6, 0.5, 1).normalized();
  }
  scenario.solver.tolerance = 1e-5;
  parts::Walk walk(scenario);
  double worst = 0, most = 0;
  walk.to(2, [&] {
    worst = std::max(worst, std::abs(walk.residual()));
    most = std::max(most, dynamics::kinetic_energy(walk.system.tree, walk.stepper.stage().kinematics));
  });
  CHECK(most > 1e-3);
  CHECK(worst < 1e-3 * most);
}

TEST_CASE("run: cautions say once for each cord that its law or its path is beyond its limits") {
  const auto cautions = [](const model::Scenario& scenario) {
    std::vector<simulation::Event> found;
    for (const auto& event : simulation::run(simulation::System(scenario)).events)
      if (event.kind == "caution") found.push_back(event);
    return found;
  };
  auto scenario = finger();
  scenario.duration = 0.5;
  CHECK(cautions(scenario).empty());

  // At rest the return cord is stretched to 2.9 times its length, with the finger closed beyond 3.
  std::get<model::RubberLaw>(scenario.model.lines[1].law).max_stretch = 3;
  auto found = cautions(scenario);
  REQUIRE(found.size() == 1);
  CHECK(found[0].subject == "return");
  CHECK(found[0].detail.find("beyond the data of its law (3)") != std::string::npos);
  CHECK(found[0].time > 0.01);

  scenario = finger();
  scenario.duration = 0.1;
  scenario.model.cords[0].path = {model::PulleyEnd{0, {-34e-3, -9e-3, 0}}, model::Bend{1, {10e-3, -9e-3, 0}, 2e-3, 1},
                                  model::Anchor{0, {-30e-3, -9.5e-3, 0}}};
  found = cautions(scenario);
  REQUIRE(found.size() == 1);
  CHECK(found[0].subject == "flexor");
  CHECK(found[0].detail.find("in proximal") != std::string::npos);
}

TEST_CASE("run: a listener sees every step and can end the run, which then counts as complete") {
  long seen = 0;
  double last = -1;
  std::vector<double> rows;
  simulation::RunListener listener;
  listener.row = [&](double time, std::span<const double>) { rows.push_back(time); };
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    CHECK(state.time > last);
    CHECK(stage.q == state.q);
    last = state.time;
    ++seen;
    return state.time > 0.3;
  };
  const auto result = simulation::run(simulation::System(finger()), listener);
  CHECK(result.complete);
  CHECK(result.cut_short);
  CHECK(seen == result.counters.steps + 1);
  CHECK(result.end.time == last);
  CHECK(rows.back() == last);
  CHECK(last < 0.35);
}

TEST_CASE("run: absurd stiffness or force ends with a clear outcome and what was recorded") {
  simulation::RunListener listener;
  const auto outcome_of = [&](model::Scenario scenario) {
    std::size_t rows = 0, steps = 0;
    bool finite = true;
    listener.progress = [&](double time) {
      if (++steps > 200000)
        throw std::runtime_error("neither goes on nor ends, at t = " + std::to_string(time) + " s");
    };
    listener.row = [&](double, std::span<const double> row) {
      ++rows;
      for (const double x : row) finite = finite && std::isfinite(x);
    };
    simulation::RunResult result;
    CHECK_NOTHROW(result = simulation::run(simulation::System(std::move(scenario)), listener));
    CAPTURE(result.outcome, rows);
    CHECK(finite);
    CHECK(rows >= 1);
    if (!result.complete) {
      CHECK(result.outcome.find("t = ") != std::string::npos);
      CHECK(result.outcome.find("likely causes") != std::string::npos);
      CHECK(result.end.q.allFinite());
    }
    return result.complete;
  };
  auto stiff = finger();
  stiff.model.lines[0].law = model::LinearLaw{1e18};
  outcome_of(stiff);
  auto hard = finger();
  hard.model.bodies[1].hinge->stops->stiffness = 1e16;
  outcome_of(hard);
  auto thrown = finger();
  model::Load load;
  load.name = "blow";
  load.body_index = 2;
  load.at = {0.02, 0, 0};
  load.force = {{0, 0.2, 0.2001}, {0, 0, 1e14}};
  thrown.loads = {load};
  outcome_of(thrown);
  auto undefined = finger();
  load.force = {{0, 0.1, 0.2}, {0, 0, std::numeric_limits<double>::quiet_NaN()}};
  undefined.loads = {load};
  CHECK_FALSE(outcome_of(undefined));
}

TEST_CASE("run: without power and with shorted leads a moving rotor brakes, with open leads it coasts") {
  const auto angle_after = [](model::Leads leads) {
    auto scenario = finger();
    scenario.objects.clear();
    parts::Walk walk(scenario);
    walk.voltage(6);
    walk.to(0.1);
    const double before = walk.shaft();
    walk.off(leads);
    walk.to(0.4);
    return walk.shaft() - before;
  };
  const double coasted = angle_after(model::Leads::open), braked = angle_after(model::Leads::shorted);
  CAPTURE(coasted, braked);
  CHECK(coasted > 0);
  CHECK(braked < 0.8 * coasted);
}

TEST_CASE(
    "run: at power-off the grip slides down to what gear and brushes hold, and stays; shorted leads keep no "
    "less") {
  // Brushes and drag alone back-drive at (n·brushes + drag)/η_b over the pulley radius; below that nothing
  // moves any more.
  const auto end = [](model::Leads leads, double backward) {
    auto scenario = finger();
    auto& drive = scenario.model.drives[0];
    drive.gearhead.backward_efficiency = backward;
    drive.motor.kinetic_drag = 2.5e-4;
    drive.motor.static_drag = 3e-4;
    parts::Walk walk(scenario);
    walk.voltage(6);
    walk.to(0.6);
    const auto& stage = walk.stepper.stage();
    const auto grip = [&] {
      return walk.stepper.stage().contact[0].normal_force + walk.stepper.stage().contact[1].normal_force;
    };
    const double before = grip(), tension = stage.chain[0].tension[0];
    REQUIRE(before > 1);
    REQUIRE(tension > 10);
    walk.off(leads);
    walk.to(2.6);
    CHECK(walk.state.v[walk.system.shafts[0].v_output] == 0);
    const double radius = walk.system.cords[0].pulley->radius(walk.shaft());
    const double holds = backward > 0 ? (100 * 3e-4 + 1e-3) / backward / radius : tension;
    CHECK(walk.stepper.stage().chain[0].tension[0] <= std::max(holds, 0.0) * (1 + 1e-3));
    return grip() / before;
  };
  // A gear that locks keeps everything but what the finger gives by itself.
  CHECK(end(model::Leads::open, 0) > 0.95);
  // One that does not lets the rotor run back; open leads let it overshoot, shorted ones brake it.
  const double open = end(model::Leads::open, 0.1), shorted = end(model::Leads::shorted, 0.1);
  CAPTURE(open, shorted);
  CHECK(open > 0.05);
  CHECK(shorted > open + 0.02);
  CHECK(shorted < 0.95);
}

TEST_CASE(
    "run: a suddenly driven cord is wound past the quasi-static stall tension, the more the heavier the "
    "rotor") {
  const auto scenario_with = [](double rotor_inertia) {
    auto scenario = finger();
    scenario.model.drives[0].motor.rotor_inertia = rotor_inertia;
    scenario.solver.tolerance = 1e-4;
    return scenario;
  };
  constexpr double limit = 0.1;  // [A]
  const auto sudden = [&](double rotor_inertia) {
    parts::Walk walk(scenario_with(rotor_inertia));
    walk.commands[0].current_limit = limit;
    walk.voltage(6);
    walk.to(1.5);
    CHECK(walk.state.v[walk.system.shafts[0].v_output] == 0);
    return walk.stepper.stage().chain[0].tension[0];
  };
  // The current comes up over ten seconds in small steps.
  parts::Walk slow(scenario_with(1e-9));
  slow.commands[0].kind = simulation::DriveCommand::Kind::voltage;
  slow.commands[0].voltage = 6;
  for (int i = 1; i <= 1000; ++i) {
    slow.commands[0].current_limit = limit * i / 1000;
    slow.to(0.01 * i);
  }
  slow.to(12);
  // η_f (n (k i − brushes) − drag) / R: the gear's cone acts on the load; drag and brushes are taken off
  // before. It went there by small starts and stops, so the brushes' drag lies between the static and the
  // kinetic one.
  const double radius = slow.system.cords[0].pulley->radius(slow.shaft());
  const auto stall = [&](double brushes) { return 0.65 * (100 * (4e-3 * limit - brushes) - 1e-3) / radius; };
  const double quasi_static = stall(3e-5);
  CHECK(slow.stepper.stage().chain[0].tension[0] > 0.999 * stall(4e-5));
  CHECK(slow.stepper.stage().chain[0].tension[0] < 1.02 * quasi_static);
  const double light = sudden(1e-9), heavy = sudden(2e-8);
  CAPTURE(quasi_static, light, heavy);
  CHECK(light > 1.05 * quasi_static);
  CHECK(heavy > 1.10 * light);
}

TEST_CASE("run: a voltage that is asked for over a time gets there linearly, from the one that stands") {
  model::Scenario scenario;
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("knuckle")};
  m.supplies = {parts::supply(6)};
  auto drive = parts::plain_drive();
  drive.motor.static_drag = drive.motor.kinetic_drag = 1;  // the rotor stands: the current is voltage over resistance
  m.drives = {drive};
  scenario.duration = 4;
  scenario.timeline = {{0.5, 0, model::CommandVoltage{1, 1}}, {2, 0, model::CommandVoltage{3, 0.5}}, {3, 0, model::CommandVoltage{-1, 0}}};
  const simulation::System system(scenario);
  const auto asked = [](double t) {
    return t <= 0.5 ? 0 : t <= 1.5 ? t - 0.5 : t <= 2 ? 1 : t <= 2.5 ? 1 + 4 * (t - 2) : t <= 3 ? 3.0 : -1.0;
  };
  simulation::RunListener listener;
  int looked = 0;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    if (state.time > 0) {
      CHECK(std::abs(stage.shaft[0].electric.current - asked(state.time)) < 1e-9);
      ++looked;
    }
    return false;
  };
  CHECK(simulation::run(system, listener).complete);
  CHECK(looked > 20);
}

}  // namespace

TEST_CASE("verdicts: what was reached is told in the unit of the demand") {
  const auto text = [](const std::string& key, double value, const std::string& unit, const std::string& asked, double bound) {
    model::Requirement requirement;
    requirement.quantity = key;
    requirement.at_most = bound;
    requirement.unit = asked;
    return simulation::reached_text(simulation::judge({requirement}, {{key, value, unit, ""}}).at(0));
  };
  CHECK(text("off_turn", std::numbers::pi / 6, "rad", "deg", 1) == "30 deg");
  CHECK(text("remaining", 0.0123, "1", "%", 1) == "1.23 %");
  CHECK(text("count", 4, "1", "", 5) == "4");
  CHECK(text("housing", 300, "K", "degC", 350) == "26.85 degC");
  CHECK(text("release_time", std::nan(""), "s", "s", 1) == "did not occur");
}
