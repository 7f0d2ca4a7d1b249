// A grasp that is held for an hour.

#include <algorithm>
#include <array>
#include <cmath>

#include <catch2/catch.hpp>

#include "../simulation/parts.h"
#include "reading/reading.h"
#include "simulation/run.h"

using namespace sinewright;
using Catch::Matchers::WithinRel;

TEST_CASE("an hour: a hold routine that holds without current keeps every joint and the shaft to the bit", "[scenarios]") {
  reading::Source source;
  const simulation::System system(reading::read_scenario(
      source, SINEWRIGHT_SOURCE_DIR "/scenarios/hold-routine.yaml",
      {"duration=3600 s", "timeline=[{at: 0.1 s, drive: flexor, hold: grasp}]", "loads.pull.force=0 N", "controllers.flexor.hold.watch=1 s", "solver.max_step=1 s"}));
  simulation::RunListener listener;
  std::vector<double> early, late;
  double current = 0, last = 0;
  listener.step = [&](const simulation::Stage& stage, const simulation::State& state) {
    last = state.time;
    if (state.time < 10) return false;
    std::vector<double> now = {state.q[system.shafts[0].q_output]};
    for (const auto& hinge : system.hinges) now.push_back(state.q[system.tree.links[static_cast<std::size_t>(hinge.link)].q]);
    if (early.empty()) early = now;
    late = now;
    current = std::max(current, std::abs(stage.shaft[0].electric.current));
    return false;
  };
  const auto result = simulation::run(system, listener);
  REQUIRE(result.complete);
  CHECK(last == 3600);
  CHECK(current == 0);
  CHECK(early[0] > 3);
  CHECK(early == late);
  double grip = 0;
  for (const auto& value : result.summary)
    if (value.key == "held_force") grip = value.value;
  CHECK(grip > 5);
  CHECK(result.counters.steps > 3600);  // it did look every second
}

namespace {

// Whether coordinates hover or creep: how far they went from where they were first, and by how much their means over the two halves of
// the time after that differ.
class Drift {
 public:
  explicit Drift(double begin, double end) : begin_(begin), middle_((begin + end) / 2) {}

  void look(double time, const Eigen::VectorXd& q) {
    if (time < begin_) return;
    if (first_.size() == 0) {
      first_ = q;
      sum_[0] = sum_[1] = Eigen::VectorXd::Zero(q.size());
    }
    farthest_ = std::max(farthest_, (q - first_).cwiseAbs().maxCoeff());
    const std::size_t half = time < middle_ ? 0 : 1;
    sum_[half] += q - first_;
    ++count_[half];
  }
  [[nodiscard]] double farthest() const { return farthest_; }
  [[nodiscard]] double creep() const { return (sum_[1] / count_[1] - sum_[0] / count_[0]).cwiseAbs().maxCoeff(); }

 private:
  double begin_, middle_;
  Eigen::VectorXd first_;
  std::array<Eigen::VectorXd, 2> sum_;
  std::array<double, 2> count_{};
  double farthest_ = 0;
};

// A ball, its weight 3 mm off its middle, between a fixed plate and a jaw that a cord draws; the drive is off and its gear train holds.
// Two points carry it, so each share follows from the balance of moments.
constexpr double kRadius = 10e-3, kOffset = 3e-3, kMass = 0.05, g = 9.81;

model::Scenario held_ball() {
  model::Scenario scenario;
  auto& m = scenario.model;
  m.surfaces = {{"pad", 4e6, 0.4, 5, "invented"}, {"shell", 2e9, 0.4, 5, "invented"}};
  m.pairs = {{0, 1, 0.4, "invented"}};
  m.supplies = {parts::supply(6)};
  m.lines = {parts::stiff_line(500, 1e-3)};
  m.drives = {parts::lossy_drive()};
  m.drives[0].gearhead.drag = 0.05;  // holds 17 N of cord
  m.bodies = {parts::fixed_body("plate"), parts::sliding("jaw", 0, {2 * kRadius, 0, 0}, -model::Vector3d::UnitX(), 0.02)};
  m.bodies[1].slide->viscous = 20;
  const auto plate = [](double x) {
    model::Box box;
    box.center = {x, 0, 0};
    box.size = {10e-3, 60e-3, 60e-3};
    return box;
  };
  m.bodies[0].shapes = {{"face", plate(-5e-3), 0}};
  m.bodies[1].shapes = {{"face", plate(5e-3), 0}};
  model::Cord cord;
  cord.name = "draw";
  cord.line = 0;
  cord.pretension = 8;
  cord.path = {model::PulleyEnd{0, {-0.08, 0, 0}}, model::Anchor{1, {0, 0, 0}}};
  m.cords = {cord};
  model::Object ball;
  ball.name = "ball";
  ball.at = {kRadius, 0, 0};
  ball.shape = {"ball", model::Sphere{model::Vector3d::Zero(), kRadius}, 1};
  ball.mass = model::MassProperties{kMass, {kOffset, 0, 0}, 2e-6 * model::Matrix3d::Identity()};
  ball.hold = model::HeldFree{};
  scenario.objects = {ball};
  scenario.duration = 3600;
  scenario.solver.max_step = 1;
  return scenario;
}

}  // namespace

TEST_CASE("an hour: a ball between two points hovers within a nanometre and does not creep, and each point carries what statics says", "[scenarios]") {
  // Contacts are elastic while they stick, so the ball is held by stiff springs and is resolved to so much; it has no row of dry
  // friction of its own, as joints and shafts have.
  parts::Walk walk(held_ball());
  walk.to(60);
  const auto object = walk.system.tree.links[static_cast<std::size_t>(walk.system.link_of_object[0])];
  const double shaft = walk.shaft();
  Drift drift(60, 3600);
  int steps = 0;
  walk.to(3600, [&] {
    ++steps;
    drift.look(walk.state.time, walk.state.q);
  });
  CHECK(steps >= 3540);
  CHECK(std::abs(walk.state.q[object.q + 1]) < 1e-4);  // it hangs there, and did not fall
  CHECK(drift.farthest() < 1e-9);
  CHECK(drift.creep() < 1e-11);
  CHECK(walk.shaft() == shaft);

  const auto& stage = walk.stepper.stage();
  const auto& plate = stage.contact[0];
  const auto& jaw = stage.contact[1];
  const auto& pose = stage.kinematics.pose[static_cast<std::size_t>(walk.system.link_of_object[0])];
  const double tension = stage.chain[0].tension[0];
  const double weight = kMass * g, span = jaw.point.x() - plate.point.x(), lever = (pose * model::Vector3d(kOffset, 0, 0)).x() - plate.point.x();
  // The forces are those on the bodies, so their friction points down.
  CHECK_THAT(-jaw.force.y(), WithinRel(weight * lever / span, 1e-6));
  CHECK_THAT(-plate.force.y(), WithinRel(weight * (1 - lever / span), 1e-6));
  CHECK_THAT(lever / span, WithinRel((kRadius + kOffset) / (2 * kRadius), 1e-2));
  CHECK_THAT(jaw.normal_force, WithinRel(tension, 1e-6));
  CHECK_THAT(plate.normal_force, WithinRel(tension, 1e-6));
}

TEST_CASE("an hour: with the power off a finger keeps its bits, and the bottle in it hovers within a nanometre and does not creep", "[scenarios]") {
  reading::Source source;
  model::Scenario scenario = reading::read_scenario(source, SINEWRIGHT_SOURCE_DIR "/scenarios/grasp-free.yaml", {"duration=3600 s", "solver.max_step=1 s"});
  const simulation::System system(scenario);
  simulation::RunListener listener;
  std::vector<double> early, late;
  Drift drift(60, 3600);
  listener.step = [&](const simulation::Stage&, const simulation::State& state) {
    drift.look(state.time, state.q);
    if (state.time < 60) return false;
    late = {state.q[system.shafts[0].q_output]};
    for (const auto& hinge : system.hinges) late.push_back(state.q[system.tree.links[static_cast<std::size_t>(hinge.link)].q]);
    if (early.empty()) early = late;
    return false;
  };
  const auto result = simulation::run(system, listener);
  REQUIRE(result.complete);
  REQUIRE(early.size() == 4);
  CHECK(early == late);
  CHECK(drift.farthest() < 1e-9);
  CHECK(drift.creep() < 1e-12);
  for (const auto& value : result.summary)
    if (value.key == "held_force") CHECK(value.value > 10);
}
