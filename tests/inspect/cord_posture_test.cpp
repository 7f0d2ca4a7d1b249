#include <Eigen/Geometry>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>

#include "fingers.h"

using namespace sinewright;
using namespace sinewright::inspected;
using simulation::cord_posture;
using simulation::CordPosture;
using simulation::posture;
using simulation::System;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::vector<double> arms = {8e-3, 6e-3, 4e-3};
const std::vector<double> lengths = {45e-3, 25e-3};

// A finger in space: base turned, pins askew, children seated askew, a flexor over bends and an oblique guide, none of them
// in one plane.
model::Scenario askew() {
  model::Scenario scenario = flexed_chain(arms, lengths);
  auto& m = scenario.model;
  const auto turned = [](double angle, const Vector3d& axis) {
    return Eigen::AngleAxisd(angle, axis.normalized()).toRotationMatrix();
  };
  m.bodies[0].fixed->at = {0.01, -0.02, 0.03};
  m.bodies[0].fixed->rotation = turned(0.7, {1, 2, -1});
  m.bodies[1].hinge->pin_axis = Vector3d(0.2, -0.1, 1).normalized();
  m.bodies[2].hinge->pin_axis = Vector3d(-0.3, 0.2, 1).normalized();
  m.bodies[3].hinge->pin_axis = Vector3d(0.1, 0.4, 1).normalized();
  m.bodies[2].hinge->seat = turned(0.3, {1, 0.2, 0});
  m.bodies[3].hinge->seat = turned(-0.2, {1, 0, 0.5});
  m.cords[0].channel.kinetic = 0.15;
  m.cords[0].path = {model::PulleyEnd{0, {-34e-3, -12e-3, 3e-3}},
                     model::Bend{0, {-10e-3, -9e-3, 2e-3}, 2e-3, 1},
                     model::Bend{1, {10e-3, -9e-3, 4e-3}, 2e-3, 1},
                     model::Bend{1, {33e-3, -7e-3, -1e-3}, 2e-3, 1},
                     model::Guide{1, {45e-3, 0, 0}, Vector3d(-0.3, 0.2, 1).normalized(), 6e-3, {0, -1, 0}, 1},
                     model::Bend{2, {12e-3, -2e-3, 1e-3}, 2e-3, 1},
                     model::Bend{2, {20e-3, -4e-3, 2e-3}, 2e-3, 1},
                     model::Anchor{3, {11e-3, -3e-3, -2e-3}}};
  return scenario;
}

double path_length(const System& system, const std::vector<double>& angles) {
  return cord_posture(system, posture(system, angles), 0).path_length;
}

}  // namespace

TEST_CASE("cord posture: the arm of a guide round the pin is the guide's radius") {
  const System system(flexed_chain(arms, lengths));
  const double straight = path_length(system, {0, 0, 0});
  for (const auto& angles : std::vector<std::vector<double>>{
           {0, 0, 0}, {20 * degree, 0, 0}, {10 * degree, 50 * degree, 80 * degree}, {85 * degree, 85 * degree, 85 * degree}}) {
    const CordPosture p = cord_posture(system, posture(system, angles), 0);
    double way = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      CAPTURE(i, angles[i]);
      CHECK_THAT(p.arm[static_cast<int>(i)], WithinRel(arms[i], 1e-10));
      way += arms[i] * angles[i];
    }
    CHECK_THAT(straight - p.path_length, WithinAbs(way, 1e-12));
  }
}

TEST_CASE("cord posture: a cord on the back of the pins has negative arms") {
  model::Scenario scenario = flexed_chain(arms, lengths);
  for (auto& point : scenario.model.cords[0].path) {
    if (auto* guide = std::get_if<model::Guide>(&point)) guide->side = -guide->side;
    if (auto* bend = std::get_if<model::Bend>(&point)) bend->at.y() = -bend->at.y();
    if (auto* anchor = std::get_if<model::Anchor>(&point)) anchor->at.y() = -anchor->at.y();
    if (auto* pulley = std::get_if<model::PulleyEnd>(&point)) pulley->at.y() = -pulley->at.y();
  }
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0.3, 0.9, 0.4}), 0);
  for (int i = 0; i < 3; ++i) CHECK_THAT(p.arm[i], WithinRel(-arms[static_cast<std::size_t>(i)], 1e-10));
}

TEST_CASE("cord posture: in space the arm is the central difference of the path length") {
  const System system(askew());
  const double h = 1e-5;
  for (const auto& angles : std::vector<std::vector<double>>{
           {0, 0, 0}, {0.4, 0.2, 0.1}, {0.1, 0.9, 0.6}, {1.3, 0.4, 1.1}, {-0.2, 0.5, -0.1}}) {
    const CordPosture p = cord_posture(system, posture(system, angles), 0);
    for (std::size_t i = 0; i < 3; ++i) {
      auto more = angles, less = angles;
      more[i] += h;
      less[i] -= h;
      CAPTURE(i, angles);
      const double difference = -(path_length(system, more) - path_length(system, less)) / (2 * h);
      CHECK_THAT(p.arm[static_cast<int>(i)], WithinAbs(difference, 1e-9));
      CHECK(std::abs(difference) > 1e-3);
    }
  }
}

TEST_CASE("cord posture: without friction the torque per newton is the arm, in every posture") {
  model::Scenario scenario = askew();
  scenario.model.cords[0].channel.kinetic = 0;
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0.7, 0.4, 1.0}), 0);
  for (double ratio : p.ratio) CHECK(ratio == 1);
  for (int i = 0; i < 3; ++i) CHECK_THAT(p.torque[i], WithinRel(p.arm[i], 1e-12));
}

TEST_CASE("cord posture: the turning angle of a guide between two points is known") {
  // P at (−2s, s), Q at (2s, s) when straight, guide of radius s between them on the far side: the half-line from P to its
  // touching point is seen from the pin under acos(1/√5), and bending the joint takes its angle off.
  const System system(flexed_chain({8e-3}, {}));
  for (double q : {0.0, 0.5, 1.2}) {
    const CordPosture p = cord_posture(system, posture(system, {q}), 0);
    REQUIRE(p.turning_angle.size() == 1);
    CHECK_THAT(p.turning_angle[0], WithinAbs(pi + 2 * std::atan(0.5) - 2 * std::acos(1 / std::sqrt(5.0)) - q, 1e-12));
    CHECK(p.guide_touched[0]);
  }
}

TEST_CASE("cord posture: tension falls by exp(−μθ) from bend to bend and the torque with it") {
  model::Scenario scenario = flexed_chain(arms, lengths);
  auto& cord = scenario.model.cords[0];
  const double mu = 0.17;
  cord.channel.kinetic = mu;
  cord.channel.static_ratio = 1.3;  // does not matter while the cord slides
  std::get<model::Bend>(cord.path[2]).friction_factor = 2.5;
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0.5, 0.8, 0.3}), 0);
  REQUIRE(p.turning_angle.size() == 7);  // guide, bend, bend, guide, bend, bend, guide
  REQUIRE(p.ratio.size() == 8);
  CHECK(p.ratio[0] == 1);
  double passed = 0;
  for (std::size_t k = 0; k < 7; ++k) {
    CHECK(p.turning_angle[k] > 0);
    passed += mu * p.turning_angle[k] * (k == 1 ? 2.5 : 1.0);
    CHECK_THAT(p.ratio[k + 1], WithinRel(std::exp(-passed), 1e-12));
  }
  CHECK(p.ratio.back() < 0.5);
  // A guide fixed in the parent: the child is pulled by the span behind it (docs/theory/cord-path.md).
  for (std::size_t i = 0; i < 3; ++i)
    CHECK_THAT(p.torque[static_cast<int>(i)], WithinRel(arms[i] * p.ratio[3 * i + 1], 1e-10));
}

TEST_CASE("cord posture: between two bends the torque is the span's tension times its distance from the pin") {
  model::Scenario scenario = flexed_chain({8e-3}, {});
  auto& cord = scenario.model.cords[0];
  cord.channel.kinetic = 0.25;
  cord.path = {model::PulleyEnd{0, {-30e-3, -2e-3, 0}}, model::Bend{0, {-10e-3, -9e-3, 0}, 2e-3, 1},
               model::Bend{1, {10e-3, -9e-3, 0}, 2e-3, 1}, model::Anchor{1, {25e-3, -2e-3, 0}}};
  const System system(scenario);
  const double q = 0.6;
  const CordPosture p = cord_posture(system, posture(system, {q}), 0);
  const Vector3d from(-10e-3, -9e-3, 0);
  const Vector3d to(std::cos(q) * 10e-3 - std::sin(q) * 9e-3, -std::sin(q) * 10e-3 - std::cos(q) * 9e-3, 0);
  const Vector3d first = from - Vector3d(-30e-3, -2e-3, 0), second = to - from;
  const double distance = std::abs(from.cross(second).z()) / second.norm();
  const double turn = std::acos(first.dot(second) / (first.norm() * second.norm()));
  CHECK_THAT(p.arm[0], WithinRel(distance, 1e-12));
  CHECK_THAT(p.torque[0], WithinRel(std::exp(-0.25 * turn) * distance, 1e-12));
}

TEST_CASE("cord posture: a V groove raises the exponent by 1/sin(α/2)") {
  model::Scenario scenario = flexed_chain({8e-3}, {});
  auto& channel = scenario.model.cords[0].channel;
  channel.kinetic = 0.1;
  channel.groove_angle = 60 * degree;
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0.4}), 0);
  CHECK_THAT(p.ratio[1], WithinRel(std::exp(-0.1 * p.turning_angle[0] / 0.5), 1e-12));
}

TEST_CASE("cord posture: a load-dependent coefficient is taken at its reference load") {
  model::Scenario scenario = flexed_chain({8e-3}, {});
  auto& channel = scenario.model.cords[0].channel;
  channel.kinetic = 0.1;
  channel.load_exponent = 0.8;
  channel.reference_line_load = 1000;
  channel.highest = 0.4;
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0.4}), 0);
  CHECK_THAT(p.ratio[1], WithinRel(std::exp(-0.1 * p.turning_angle[0]), 1e-12));
}

TEST_CASE("cord posture: a guide that the cord passes at a distance is not touched") {
  model::Scenario scenario = flexed_chain({8e-3}, {});
  auto& path = scenario.model.cords[0].path;
  std::get<model::PulleyEnd>(path[0]).at = {-20e-3, -15e-3, 0};
  std::get<model::Anchor>(path[2]).at = {20e-3, -15e-3, 0};
  const System system(scenario);
  const CordPosture p = cord_posture(system, posture(system, {0}), 0);
  CHECK_FALSE(p.guide_touched[0]);
  CHECK(p.turning_angle[0] == 0);
  CHECK_THAT(p.path_length, WithinRel(40e-3, 1e-12));
  CHECK_THAT(p.arm[0], WithinRel(15e-3, 1e-12));
}
