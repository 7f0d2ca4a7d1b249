#include <catch2/catch.hpp>
#include <cmath>

#include "fingers.h"

using namespace sinewright;
using namespace sinewright::inspected;
using simulation::opening_posture;
using simulation::OpeningPosture;
using simulation::posture;
using simulation::System;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double stiffness = 40;     // EA [N]
constexpr double pretension = 3;     // [N]
const double mu = 0.2;
const std::vector<double> arms = {5e-3, 4e-3, 3e-3};

// A return cord over guides on the back of the pins, from the knuckle to the tip, and a flexor that must not count.
model::Scenario with_return_cord(const std::vector<double>& arm, const std::vector<double>& length) {
  model::Scenario scenario = flexed_chain(arm, length);
  auto& m = scenario.model;
  m.lines.push_back({"return line", 1e-3, model::LinearLaw{stiffness}, 0, "invented"});
  model::Cord cord;
  cord.name = "return";
  cord.line = 1;
  cord.channel.kinetic = mu;
  cord.channel.static_ratio = 1.5;
  cord.pretension = pretension;
  cord.path = parts::constant_arm_path(arm, length, -1);
  for (auto& point : cord.path) {
    if (auto* guide = std::get_if<model::Guide>(&point)) guide->side = -guide->side;
    if (auto* bend = std::get_if<model::Bend>(&point)) bend->at.y() = -bend->at.y();
    if (auto* anchor = std::get_if<model::Anchor>(&point)) anchor->at.y() = -anchor->at.y();
  }
  m.cords.push_back(cord);
  return scenario;
}

// T = EA (L / L₀ − 1), L₀ from the pretension in the straight posture.
double tension_at(const System& system, const std::vector<double>& arm, const std::vector<double>& angles) {
  const std::vector<double> straight(angles.size(), 0.0);
  double length = simulation::cord_posture(system, posture(system, straight), 1).path_length;
  const double unstretched = length / (1 + pretension / stiffness);
  for (std::size_t i = 0; i < arm.size(); ++i) length += arm[i] * angles[i];
  return stiffness * (length / unstretched - 1);
}

}  // namespace

TEST_CASE("opening posture: the torque is the return cord's tension times its arm") {
  const System system(with_return_cord(arms, {45e-3, 25e-3}));
  for (const auto& angles : std::vector<std::vector<double>>{{0, 0, 0}, {0.3, 0.9, 0.5}, {1.2, 1.25, 1.1}}) {
    const OpeningPosture o = opening_posture(system, posture(system, angles));
    const double tension = tension_at(system, arms, angles);
    REQUIRE(o.tension.size() == 2);
    CHECK(o.tension[0] == 0);  // the flexor is slack
    CHECK_THAT(o.tension[1], WithinRel(tension, 1e-10));
    for (std::size_t i = 0; i < 3; ++i) CHECK_THAT(o.torque[static_cast<int>(i)], WithinRel(tension * arms[i], 1e-10));
  }
}

TEST_CASE("opening posture: the least torque has lost friction from the nearer anchor on") {
  const System system(with_return_cord(arms, {45e-3, 25e-3}));
  const std::vector<double> angles = {0.3, 0.9, 0.5};
  const auto q = posture(system, angles);
  const OpeningPosture o = opening_posture(system, q);
  const auto turn = simulation::cord_posture(system, q, 1).turning_angle;
  REQUIRE(turn.size() == 7);
  const double tension = tension_at(system, arms, angles);
  // Span s has bends 0 … s − 1 before it and the others behind it. Guides are
  // fixed in the parents, so the child of joint i is pulled by span 3i + 1.
  const auto left = [&](std::size_t span) {
    double before = 0, after = 0;
    for (std::size_t k = 0; k < 7; ++k) (k < span ? before : after) += mu * turn[k];
    return std::exp(-std::min(before, after));
  };
  CHECK(left(0) == 1);  // at the anchors nothing is lost
  CHECK(left(7) == 1);
  for (std::size_t i = 0; i < 3; ++i) {
    const double expected = tension * arms[i] * left(3 * i + 1);
    CHECK_THAT(o.least_torque[static_cast<int>(i)], WithinRel(expected, 1e-10));
    // The last joint is pulled by the span at the anchor, which has lost nothing.
    CHECK((o.least_torque[static_cast<int>(i)] < 0.95 * o.torque[static_cast<int>(i)]) == (i < 2));
  }
}

TEST_CASE("opening posture: friction is that of the pin under the cord's pull and of the washers' preload, static") {
  model::Scenario scenario = with_return_cord({5e-3}, {});
  auto& hinge = *scenario.model.bodies[1].hinge;
  hinge.washers = parts::washers_for(4e-4, 1.5);
  const System washers_only(scenario);
  CHECK_THAT(opening_posture(washers_only, posture(washers_only, {0.7})).friction[0], WithinRel(6e-4, 1e-12));

  hinge.pin = model::Pin{2e-3, {0.3, 0.2}, 0, 0};
  const System both(scenario);
  const OpeningPosture o = opening_posture(both, posture(both, {0.7}));
  // The joint holds one cord's pull, T; friction circle r μ / √(1 + μ²) with the static coefficient.
  const double circle = 1e-3 * 0.3 / std::sqrt(1 + 0.09);
  CHECK_THAT(o.friction[0], WithinRel(6e-4 + circle * o.tension[1], 1e-10));
}

TEST_CASE("opening posture: a slack return cord opens nothing") {
  model::Scenario scenario = with_return_cord({5e-3}, {});
  auto& cord = scenario.model.cords[1];
  cord.pretension = 0;
  cord.slack = 3e-3;  // taken up at 0.6 rad
  const System system(scenario);
  const OpeningPosture loose = opening_posture(system, posture(system, {0.5}));
  CHECK(loose.tension[1] == 0);
  CHECK(loose.torque[0] == 0);
  const OpeningPosture tight = opening_posture(system, posture(system, {0.7}));
  CHECK(tight.tension[1] > 0);
  CHECK_THAT(tight.torque[0], WithinRel(tight.tension[1] * 5e-3, 1e-10));
}
