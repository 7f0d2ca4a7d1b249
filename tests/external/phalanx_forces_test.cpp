// Contact forces of fingers with one cord and friction-free contacts, against f = J⁻ᵀ T⁻ᵀ t.

#include <cmath>
#include <numbers>

#include "../simulation/parts.h"
#include "check.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using std::numbers::pi;

constexpr double degree = pi / 180;
const char* const kSource =
    "Birglen & Gosselin, IEEE Trans. Robotics & Automation 20 (2004) 211 (formula from memory); numbers "
    "computed";

struct Grasp {
  std::vector<double> length;         // of the phalanges but the last [m]
  std::vector<double> contact;        // k, distance of each contact from its own pin [m]
  std::vector<double> angle;          // of the joints [rad]; the first is free to choose
  std::vector<double> arm;            // of the cord at each joint [m]
  std::vector<double> spring_torque;  // negative opens [N m]
  double tension = 0;                 // of the cord [N]
};

struct Outcome {
  std::vector<double> force, contact, angle, torque, gap;
  double tension = 0;
  bool at_rest = true;
};

// Drives the finger from just touching three fixed balls into them, by a motor at stall whose torque is
// known.
Outcome grasp(const Grasp& grasp, double seconds = 5.0) {
  const std::size_t n = grasp.arm.size();
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.surfaces = {{"hard", 3e9, 0.3, 0.1, "invented"}};
  m.pairs = {{0, 0, 0.0, "invented"}};
  m.supplies = {parts::supply(12)};
  m.lines = {parts::stiff_line(12000, 1e-3)};
  m.drives = {parts::plain_drive()};
  m.bodies = {parts::fixed_body("knuckle")};
  std::vector<double> length = grasp.length;
  length.push_back(25e-3);
  constexpr double radius = 1e-3, ball = 4e-3;
  Vector3d pin(0, 0, 0);
  double flexed = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const int parent = static_cast<int>(i);
    auto body = parts::rod("phalanx " + std::to_string(i + 1), parent,
                           Vector3d(i == 0 ? 0.0 : length[i - 1], 0, 0), 0.01, length[i]);
    body.hinge->viscous = 2e-4;
    if (grasp.spring_torque[i] != 0) {  // soft and far from rest: nearly constant
      body.hinge->spring_stiffness = 1e-3;
      body.hinge->spring_rest = grasp.angle[i] + grasp.spring_torque[i] / 1e-3;
    }
    body.shapes = {{"bar", model::Capsule{{0, 0, 0}, {length[i], 0, 0}, radius}, 0}};
    m.bodies.push_back(body);
    scenario.start_angles.emplace_back(parent + 1, grasp.angle[i]);
    flexed += grasp.angle[i];
    const Vector3d along(std::cos(flexed), -std::sin(flexed), 0),
        palm(-std::sin(flexed), -std::cos(flexed), 0);
    model::Object object;
    object.name = "ball " + std::to_string(i + 1);
    object.at = pin + grasp.contact[i] * along + (radius + ball) * palm;
    object.shape = {"ball", model::Sphere{{0, 0, 0}, ball}, 0};
    scenario.objects.push_back(object);
    pin += length[i] * along;
  }
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = parts::constant_arm_path(grasp.arm, length);
  m.cords = {cord};
  scenario.solver.tolerance = 1e-4;

  parts::Walk walk(scenario);
  // Stall torque at the output: ratio · k · U / R = tension · pulley radius.
  walk.voltage(grasp.tension * 5e-3 / (30 * 0.01));
  walk.to(seconds);

  Outcome outcome;
  const auto& stage = walk.stepper.stage();
  outcome.tension = stage.chain[0].tension.front();
  for (std::size_t i = 0; i < n; ++i) {
    outcome.angle.push_back(walk.angle(i));
    const auto& data = *m.bodies[i + 1].hinge;
    outcome.torque.push_back(-data.spring_stiffness * (walk.angle(i) - data.spring_rest) +
                             outcome.tension * grasp.arm[i]);
    outcome.at_rest = outcome.at_rest && std::abs(walk.rate(i)) < 1e-4;
    // Candidates come ball by ball, phalanx by phalanx.
    const auto& contact = stage.contact[i * n + i];
    for (std::size_t j = 0; j < n; ++j)
      if (j != i) CHECK(stage.contact[i * n + j].normal_force == 0);
    outcome.force.push_back(contact.normal_force);
    outcome.gap.push_back(contact.closest.gap);
    const auto& pose = stage.kinematics.pose[i + 1];
    outcome.contact.push_back((pose.R.transpose() * (contact.point - pose.p)).x());
  }
  return outcome;
}

// Forces from the tip inward: torque_i = Σ_{j >= i} f_j (k_j + Σ_{m = i}^{j-1} l_m cos(θ_{m+1} + … + θ_j)).
std::vector<double> balance(const std::vector<double>& length, const std::vector<double>& contact,
                            const std::vector<double>& angle, const std::vector<double>& torque) {
  const std::size_t n = torque.size();
  std::vector<double> force(n);
  for (std::size_t i = n; i-- > 0;) {
    double rest = torque[i];
    for (std::size_t j = i + 1; j < n; ++j) {
      double lever = contact[j];
      for (std::size_t k = i; k < j; ++k) {
        double between = 0;
        for (std::size_t s = k + 1; s <= j; ++s) between += angle[s];
        lever += length[k] * std::cos(between);
      }
      rest -= force[j] * lever;
    }
    force[i] = rest / contact[i];
  }
  return force;
}

struct Row {
  const char* name;
  Grasp grasp;
  std::vector<double> force;      // of the row, at its exact geometry
  bool published_posture = true;  // compare with it, too, although the contacts give a little
};

void check_row(const Row& row) {
  // The formula at the row's own numbers gives the row: no slip of the pen in either.
  std::vector<double> torque;
  for (std::size_t i = 0; i < row.grasp.arm.size(); ++i)
    torque.push_back(row.grasp.tension * row.grasp.arm[i] + row.grasp.spring_torque[i]);
  const auto exact = balance(row.grasp.length, row.grasp.contact, row.grasp.angle, torque);
  for (std::size_t i = 0; i < exact.size(); ++i)
    CHECK_THAT(exact[i], Catch::Matchers::WithinRel(row.force[i], 1e-10));

  const Outcome outcome = grasp(row.grasp);
  CHECK(outcome.at_rest);
  CHECK_THAT(outcome.tension, Catch::Matchers::WithinRel(row.grasp.tension, 1e-4));
  const auto expected = balance(row.grasp.length, outcome.contact, outcome.angle, outcome.torque);
  for (std::size_t i = 0; i < expected.size(); ++i) {
    const std::string which = std::string(row.name) + ", phalanx " + std::to_string(i + 1);
    external::check_relative("contact force at the posture reached, " + which, "N", outcome.force[i],
                             expected[i], {kSource, 1e-3});
    // The contacts give by some hundredths of a millimetre, so the posture is not exactly the row's.
    if (!row.published_posture) continue;
    external::check_relative("contact force, " + which, "N", outcome.force[i], row.force[i], {kSource, 1e-2});
  }
}

TEST_CASE("phalanx forces: two phalanges, one cord") {
  const Row rows[] = {
      {"R = 0.2, 30 deg",
       {{45e-3}, {22.5e-3, 12.5e-3}, {0.5, 30 * degree}, {10e-3, 2e-3}, {0, 0}, 20},
       {1.5685485268907, 3.2}},
      {"R = 0.3, 60 deg, return spring",
       {{45e-3}, {22.5e-3, 20e-3}, {0.5, 60 * degree}, {10e-3, 3e-3}, {0, -0.010}, 30},
       {5.77777777777778, 4.0}},
      {"equal forces",
       {{45e-3}, {22.5e-3, 12.5e-3}, {0.5, 30 * degree}, {10e-3, 1.68984815757436e-3}, {0, 0}, 20},
       {2.70375705211897, 2.70375705211897}},
      {"R = 0.3, 90 deg",
       {{60e-3}, {30e-3, 20e-3}, {0.5, 90 * degree}, {10e-3, 3e-3}, {0, 0}, 25},
       {5.83333333333333, 3.75}}};
  for (const Row& row : rows) check_row(row);
}

TEST_CASE("phalanx forces: three phalanges, one cord") {
  const Row rows[] = {{"R = 0.35, 0.2",
                       {{45e-3, 25e-3},
                        {22.5e-3, 12.5e-3, 9e-3},
                        {0.4, 20 * degree, 20 * degree},
                        {10e-3, 3.5e-3, 0.7e-3},
                        {0, 0, 0},
                        30},
                       {0.703864509970725, 2.33476776966576, 2.33333333333333}},
                      {"R = 0.4, 0.25, return springs",
                       {{45e-3, 25e-3},
                        {22.5e-3, 12.5e-3, 9e-3},
                        {0.4, 45 * degree, 45 * degree},
                        {10e-3, 4e-3, 1e-3},
                        {0, -0.005, -0.002},
                        30},
                       {4.6015180503277, 2.56022447261704, 3.11111111111111}}};
  for (const Row& row : rows) check_row(row);
}

TEST_CASE("phalanx forces: with hand-like equal arms the middle phalanx lifts off") {
  // 8, 6, 4 mm and 30 N: the balance would need −20 N at the middle phalanx.
  Grasp hand{{45e-3, 25e-3},
             {22.5e-3, 12.5e-3, 9e-3},
             {0.4, 30 * degree, 20 * degree},
             {8e-3, 6e-3, 4e-3},
             {0, 0, 0},
             30};
  const auto wanted = balance(hand.length, hand.contact, hand.angle, {0.24, 0.18, 0.12});
  external::check_relative("contact force that would be needed, proximal", "N", wanted[0], 20.6143628706616,
                           {kSource, 1e-10});
  external::check_relative("contact force that would be needed, middle", "N", wanted[1], -20.2584698876242,
                           {kSource, 1e-10});
  external::check_relative("contact force that would be needed, distal", "N", wanted[2], 13.3333333333333,
                           {kSource, 1e-10});
  // Without friction the finger does not stay: the middle phalanx leaves its ball, and the tip slides on
  // along its own until one force alone balances all three joints.
  const Outcome end = grasp(hand);
  CHECK(end.at_rest);
  CHECK(end.force[1] == 0);
  CHECK(end.gap[1] > 1e-3);
  CHECK(end.force[2] > 1);
  double lever = 0, angle = 0;
  for (std::size_t i = 3; i-- > 0;) {
    lever = (i == 2 ? end.contact[2] : lever + hand.length[i] * std::cos(angle));
    angle += end.angle[i];
    const double moment = end.force[2] * lever + (i == 0 ? end.force[0] * end.contact[0] : 0);
    CHECK_THAT(moment, Catch::Matchers::WithinRel(end.torque[i], 1e-3));
  }
}

TEST_CASE("phalanx forces: steeply falling arms let all three phalanges press on a small thing") {
  // 9, 5, 2 mm, both outer joints bent 60 deg; no published row, the same formula.
  Grasp steep{{45e-3, 25e-3},
              {22.5e-3, 12.5e-3, 9e-3},
              {0.4, 60 * degree, 60 * degree},
              {9e-3, 5e-3, 2e-3},
              {0, 0, 0},
              30};
  const auto wanted = balance(steep.length, steep.contact, steep.angle, {0.27, 0.15, 0.06});
  for (const double f : wanted) CHECK(f > 0.5);
  // The middle force is a small difference of large ones, so it moves much with the little that the contacts
  // give.
  check_row({"steeply falling arms", steep, wanted, false});
}

}  // namespace
