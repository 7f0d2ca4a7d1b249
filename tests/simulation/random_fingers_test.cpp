// Random but valid fingers and scenarios: every run ends, with a balanced energy ledger and finite numbers.

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <random>

#include "simulation/run.h"

namespace {

using namespace sinewright;
using Eigen::Vector3d;

// mt19937_64 is the same everywhere; the standard distributions are not, so numbers are made from its bits by hand.
class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  double between(double low, double high) { return low + (high - low) * static_cast<double>(engine_() >> 11) * 0x1p-53; }
  double spread(double low, double high) { return low * std::pow(high / low, between(0, 1)); }  // even in the logarithm
  bool chance(double p) { return between(0, 1) < p; }
  int upto(int n) { return static_cast<int>(between(0, n)); }

 private:
  std::mt19937_64 engine_;
};

model::Scenario random_scenario(unsigned seed) {
  Dice dice(seed);
  model::Scenario s;
  s.name = "random finger " + std::to_string(seed);
  model::Model& m = s.model;
  m.surfaces = {{"pad", dice.spread(0.5e6, 20e6), 0.48, dice.between(0, 3), ""}, {"object", dice.spread(20e6, 5e9), 0.35, dice.between(0, 1), ""}};
  m.pairs = {{0, 1, dice.between(0, 1.2), ""}};
  m.lines.push_back({"braid", 0.5e-3, model::LinearLaw{dice.spread(500, 10000)}, dice.chance(0.5) ? dice.spread(1e-4, 3e-3) : 0.0, ""});
  if (dice.chance(0.5)) {
    m.lines.push_back({"return", 2e-3, model::RubberLaw{3e-6, {{dice.spread(0.2e6, 1e6), dice.between(1.5, 3)}}, 4}, dice.spread(1e-3, 1e-2), ""});
  } else {
    m.lines.push_back({"return", 1e-3, model::LinearLaw{dice.spread(5, 50)}, 1e-3, ""});
  }
  m.supplies = {{"battery", dice.between(3, 9), dice.between(0, 1)}};

  model::Body knuckle;
  knuckle.name = "knuckle";
  knuckle.fixed = model::Fixed{};
  m.bodies.push_back(knuckle);
  const int phalanges = 1 + dice.upto(4);
  std::vector<double> length, depth;
  for (int i = 0; i < phalanges; ++i) {
    length.push_back(dice.between(0.015, 0.05));
    depth.push_back(dice.between(0.0025, 0.009));
    model::Body body;
    body.name = "phalanx" + std::to_string(i);
    model::Hinge hinge;
    hinge.name = "joint" + std::to_string(i);
    hinge.parent = i;
    if (i > 0) hinge.at = {length[static_cast<std::size_t>(i) - 1], 0, 0};
    hinge.pin_axis = Vector3d(dice.between(-0.1, 0.1), dice.between(-0.1, 0.1), 1).normalized();
    if (dice.chance(0.9)) {
      const double kinetic = dice.between(0.02, 0.3);
      hinge.pin = model::Pin{dice.between(1e-3, 3e-3), {kinetic * dice.between(1, 1.4), kinetic}, dice.chance(0.5) ? 6e-3 : 0.0, 0};
    }
    if (dice.chance(0.8)) {
      const double kinetic = dice.between(0.05, 0.3);
      hinge.washers = model::Washers{2.2e-3, 5e-3, {kinetic * dice.between(1, 1.4), kinetic}, dice.between(0, 2), 0,
                                     dice.chance(0.5) ? model::WasherLaw::uniform_wear : model::WasherLaw::uniform_pressure};
    }
    hinge.stops = model::EndStops{0, dice.between(0.8, 1.7), dice.spread(2, 50), dice.between(0, 0.05)};
    hinge.viscous = dice.chance(0.7) ? dice.spread(1e-7, 1e-4) : 0.0;
    body.hinge = hinge;
    body.solids.push_back({model::Capsule{{0.002, 0, 0}, {length.back() - 0.002, 0, 0}, dice.between(0.005, 0.009)}, dice.between(700, 1500)});
    if (dice.chance(0.9)) body.shapes.push_back({"pad", model::Capsule{{0.004, 0, 0}, {length.back() - 0.004, 0, 0}, dice.between(0.005, 0.009)}, 0});
    m.bodies.push_back(body);
  }

  model::Drive drive;
  drive.name = "drive";
  drive.body = 0;
  drive.supply = 0;
  drive.current_limit = dice.chance(0.7) ? dice.between(0.2, 1.5) : 0.0;
  drive.motor = {"motor", dice.between(3, 15), dice.between(1.5e-3, 5e-3), dice.spread(3e-9, 4e-8), 0, 0, 0, 0.00393, 293.15, 30, 40, 0.5, 4, 0, 0, ""};
  drive.motor.kinetic_drag = dice.between(0, 2e-4);
  drive.motor.static_drag = drive.motor.kinetic_drag * dice.between(1, 2);
  const double eta = dice.between(0.3, 0.95);
  drive.gearhead = {"gears", dice.between(30, 300), eta, dice.between(0, eta), dice.between(0, 4e-3), 5e-8, 0, 0, 0, ""};
  if (dice.chance(0.2)) {
    drive.gearhead.backlash = dice.between(0.01, 0.1);
    drive.gearhead.torsional_stiffness = dice.spread(1, 50);
  }
  drive.pulley = {dice.between(2e-3, 6e-3), dice.chance(0.5) ? dice.between(1, 5) : 0.0};
  m.drives.push_back(drive);

  model::Cord flexor;
  flexor.name = "flexor";
  flexor.line = 0;
  flexor.channel.kinetic = dice.chance(0.1) ? 0.0 : dice.between(0.02, 0.3);
  flexor.channel.static_ratio = dice.between(1, 1.3);
  flexor.channel.bending_loss = dice.chance(0.2) ? dice.between(1, 1.05) : 1.0;
  flexor.slack = dice.chance(0.3) ? dice.between(0, 3e-3) : 0.0;
  flexor.lump_bends = dice.chance(0.2);
  flexor.path.push_back(model::PulleyEnd{0, {-0.03, -0.010, 0}});
  flexor.path.push_back(model::Bend{0, {-0.008, -depth[0], dice.between(-1e-3, 1e-3)}, 2e-3, 1});
  for (int i = 0; i < phalanges; ++i) {
    const auto k = static_cast<std::size_t>(i);
    flexor.path.push_back(model::Bend{i + 1, {std::min(0.008, 0.3 * length[k]), -depth[k], 0}, 2e-3, 1});
    if (i + 1 == phalanges) break;
    flexor.path.push_back(model::Bend{i + 1, {length[k] - 0.005, -depth[k + 1], 0}, 2e-3, dice.between(0.5, 1.5)});
  }
  flexor.path.push_back(model::Anchor{phalanges, {0.7 * length.back(), -0.001, 0}});
  m.cords.push_back(flexor);

  if (dice.chance(0.9)) {
    model::Cord back;
    back.name = "return";
    back.line = 1;
    back.channel.kinetic = dice.between(0, 0.25);
    back.pretension = dice.between(0.1, 4);
    back.path.push_back(model::Anchor{0, {-0.02, 0.004, 0}});
    for (int i = 0; i < phalanges; ++i) {
      const auto k = static_cast<std::size_t>(i);
      const double at = i == 0 ? 0.0 : length[k - 1];
      if (dice.chance(0.6)) back.path.push_back(model::Guide{i, {at, 0, 0}, {0, 0, 1}, dice.between(0.002, 0.004), {0, 1, 0}, 1});
      if (i + 1 < phalanges) back.path.push_back(model::Bend{i + 1, {0.5 * length[k], 0.0045, 0}, 3e-3, 1});
    }
    back.path.push_back(model::Anchor{phalanges, {0.6 * length.back(), 0.0045, 0}});
    m.cords.push_back(back);
  }

  s.gravity = Vector3d(0, dice.between(-9.81, 9.81), dice.between(-9.81, 9.81));
  s.duration = dice.between(0.4, 1.2);
  if (dice.chance(0.8)) {
    model::Object object;
    object.name = "object";
    object.at = {dice.between(0.015, 0.05), dice.between(-0.05, -0.03), 0};
    object.shape.surface = 1;
    const double radius = dice.between(0.008, 0.018);
    switch (dice.upto(3)) {
      case 0: object.shape.shape = model::Sphere{Vector3d::Zero(), radius}; break;
      case 1: object.shape.shape = model::Cylinder{Vector3d::Zero(), {0, 0, 1}, radius, 0.06}; break;
      default: object.shape.shape = model::Box{Vector3d::Zero(), {2 * radius, 1.5 * radius, 0.05}, Eigen::Matrix3d::Identity()}; break;
    }
    object.mass = model::MassProperties{dice.between(0.02, 0.3), Vector3d::Zero(), Vector3d(1, 1, 1).asDiagonal() * dice.spread(5e-6, 1e-4)};
    switch (dice.upto(3)) {
      case 0: object.hold = model::HeldFixed{}; break;
      case 1: object.hold = model::HeldFree{}; break;
      default: object.hold = model::HeldBySpring{Vector3d(1, 1, 1) * dice.spread(200, 2e4), dice.spread(1e-4, 1e-2), dice.spread(0.1, 5)}; break;
    }
    s.objects.push_back(object);
  }
  s.timeline.push_back({dice.between(0, 0.05), 0, model::CommandVoltage{dice.between(2, 9)}});
  if (dice.chance(0.7)) {
    const double later = dice.between(0.1, s.duration);
    switch (dice.upto(3)) {
      case 0: s.timeline.push_back({later, 0, model::CommandOff{dice.chance(0.5) ? model::Leads::open : model::Leads::shorted}}); break;
      case 1: s.timeline.push_back({later, 0, model::CommandVoltage{-dice.between(1, 6)}}); break;
      default: s.timeline.push_back({later, 0, model::CommandAngle{dice.between(0, 6), dice.between(1, 20), dice.between(0, 0.5)}}); break;
    }
  }
  if (dice.chance(0.4)) {
    model::Load load;
    load.name = "push";
    load.body_index = phalanges;
    load.body = m.bodies.back().name;
    load.at = {length.back(), 0, 0};
    load.direction = Vector3d(dice.between(-1, 1), dice.between(-1, 1), dice.between(-0.3, 0.3)).normalized();
    load.follows_body = dice.chance(0.5);
    load.force = {{0.1, 0.5 * s.duration, s.duration}, {0, dice.between(0, 8), dice.between(0, 8)}};
    s.loads.push_back(load);
  }
  return s;
}

// Runs it, and returns its energy residual.
double check_run(const model::Scenario& scenario) {
  const simulation::System system(scenario);
  bool finite = true;
  simulation::RunListener listener;
  listener.row = [&](double, std::span<const double> row) {
    for (const double value : row) finite = finite && std::isfinite(value);
  };
  const auto result = simulation::run(system, listener);
  CAPTURE(result.outcome);
  CHECK(result.complete);
  CHECK(finite);
  for (const auto& value : result.summary)
    if (value.key == "energy_residual") return value.value;
  FAIL("the summary has no energy residual");
  return 0;
}

// Every run ends with finite numbers and a residual below 2 %. The user is told to tighten the tolerance where it is not
// (docs/user-guide/run.md); one run in five hundred may need that here.
void check_runs(unsigned first, unsigned count) {
  unsigned tightened = 0;
  for (unsigned seed = first; seed < first + count; ++seed) {
    CAPTURE(seed);
    auto scenario = random_scenario(seed);
    double residual = check_run(scenario);
    if (residual >= 0.02) {
      ++tightened;
      scenario.solver.tolerance /= 10;
      residual = check_run(scenario);
    }
    CHECK(residual < 0.02);
  }
  CHECK(tightened <= count / 500);
}

}  // namespace

TEST_CASE("random fingers: every run ends with finite numbers and a balanced ledger", "[random]") { check_runs(1, 100); }

TEST_CASE("random fingers: two thousand of them", "[random][slow][.]") { check_runs(1, 2000); }
