// One pull shared between two cords: a whiffletree (a bar hinged on a slide) by the law of the lever, a floating pulley (a slide with a
// round guide) by that of the capstan. Derivations: docs/theory/sharing.md.

#include <algorithm>
#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "friction/journal.h"
#include "parts.h"
#include "simulation/static_analysis.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

constexpr int kPalm = 0, kYoke = 1, kBar = 2;
constexpr double kArm1 = 8e-3, kArm2 = 12e-3;  // of the bar

model::Cord cord_between(const std::string& name, std::vector<model::PathPoint> path) {
  model::Cord cord;
  cord.name = name;
  cord.line = 0;
  cord.path = std::move(path);
  return cord;
}

model::Load pull_on_yoke(const model::Course& course) {
  model::Load load;
  load.name = "pull";
  load.body = "yoke";
  load.body_index = kYoke;
  load.direction = -Vector3d::UnitX();
  load.force = course;
  return load;
}

// A bar on a yoke that slides along −x; its ends at (0, arm1) and (0, −arm2) hold two cords that come from far out along x.
model::Scenario whiffletree(double arm1 = kArm1, double arm2 = kArm2, double far = 0.2) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("palm"), parts::sliding("yoke", 0, Vector3d::Zero(), -Vector3d::UnitX(), 0.005),
              parts::phalanx("bar", kYoke, Vector3d::Zero(), 0.002, 0, 1e-7)};
  m.bodies[kYoke].slide->viscous = 2;
  m.bodies[kBar].hinge->viscous = 2e-4;
  m.lines = {parts::stiff_line(12000, 1e-3)};
  m.cords = {cord_between("one", {model::Anchor{kPalm, {far, arm1, 0}}, model::Anchor{kBar, {0, arm1, 0}}}),
             cord_between("two", {model::Anchor{kPalm, {far, -arm2, 0}}, model::Anchor{kBar, {0, -arm2, 0}}})};
  scenario.solver.tolerance = 1e-4;
  scenario.duration = 10;
  return scenario;
}

double tension(const parts::Walk& walk, std::size_t cord) { return walk.stepper.stage().chain[cord].tension.back(); }

// Distance from the pivot of a cord's straight piece at the bar; the cord ends there (or begins, for one that runs to a finger).
double lever(const parts::Walk& walk, std::size_t cord, bool begins = false) {
  auto way = walk.stepper.stage().path[cord].vertices;
  if (begins) std::reverse(way.begin(), way.end());
  const Vector3d along = (way.back() - way[way.size() - 2]).normalized();
  const auto& pivot = walk.stepper.stage().kinematics.pose[static_cast<std::size_t>(walk.system.link_of_body[kBar])].p;
  return along.cross(way.back() - pivot).norm();
}

TEST_CASE("whiffletree: the two tensions are as the other's arm, and add up to the pull") {
  model::Scenario scenario = whiffletree();
  scenario.loads = {pull_on_yoke({{0, 0.2}, {0, 20}})};
  parts::Walk walk(scenario);
  walk.to(2);
  // Exactly: moments about the pivot. The cords have stretched unlike, so the bar has turned and the levers are a little shorter.
  CHECK_THAT(tension(walk, 0) * lever(walk, 0), WithinRel(tension(walk, 1) * lever(walk, 1), 1e-7));
  CHECK_THAT(tension(walk, 0) / tension(walk, 1), WithinRel(kArm2 / kArm1, 1e-5));
  CHECK_THAT(tension(walk, 0) + tension(walk, 1), WithinRel(20, 1e-5));
  CHECK(walk.position(0) > 1e-5);
}

TEST_CASE("whiffletree: it turns until both cords pull, by the difference of their slack over the bar's length") {
  constexpr double slack = 6e-3;
  model::Scenario scenario = whiffletree(kArm1, kArm2, 0.5);
  scenario.model.lines[0] = parts::stiff_line(1e6, 1e-3);
  scenario.model.cords[0].slack = slack;
  scenario.loads = {pull_on_yoke({{0}, {2}})};
  parts::Walk walk(scenario);
  double slack_until = 0;
  walk.to(4, [&] {
    if (tension(walk, 0) == 0) slack_until = walk.state.time;
  });
  CHECK(slack_until > 1e-3);
  CHECK(slack_until < 0.1);
  // End one has come the slack's length nearer, end two not: (arm1 + arm2) sin β = slack; the pivot between them by the arms.
  const double turned = std::asin(slack / (kArm1 + kArm2));
  CHECK_THAT(std::abs(walk.angle(0)), WithinAbs(turned, 2e-3));
  CHECK_THAT(walk.position(0), WithinAbs(slack * kArm2 / (kArm1 + kArm2), 2e-5));
  CHECK_THAT(tension(walk, 0) * lever(walk, 0), WithinRel(tension(walk, 1) * lever(walk, 1), 1e-6));
  CHECK_THAT(tension(walk, 0) / tension(walk, 1), WithinRel(kArm2 / kArm1, 2e-3));  // the cords lean a little
}

TEST_CASE("whiffletree: a rubbing pivot lets the shares differ up to the friction circle, and no further") {
  constexpr double mu = 0.3, pin = 4e-3;
  model::Scenario scenario = whiffletree();
  auto& m = scenario.model;
  m.bodies[kBar].hinge->pin = model::Pin{};
  m.bodies[kBar].hinge->pin->diameter = pin;
  m.bodies[kBar].hinge->pin->friction = {mu, mu};
  const double circle = friction::friction_circle_radius(mu, pin / 2);
  // The cord one gives way thirty times more readily than the other: the bar turns all along.
  m.lines.push_back(parts::stiff_line(400, 1e-3));
  m.cords[0].line = 1;
  scenario.loads = {pull_on_yoke({{0, 2}, {0, 4}})};
  parts::Walk walk(scenario);
  int sliding = 0;
  walk.to(2, [&] {
    if (walk.state.time < 1 || walk.rate(0) == 0) return;
    ++sliding;
    const double reaction = walk.stepper.stage().hinge[0].radial_reaction;
    const double out = tension(walk, 0) * lever(walk, 0) - tension(walk, 1) * lever(walk, 1);
    // The stiff cord draws the bar's other end after it, against friction and a little drag of the bar.
    CHECK_THAT(std::abs(out) - 2e-4 * std::abs(walk.rate(0)), WithinRel(circle * reaction, 1e-3));
    CHECK_THAT(tension(walk, 1) / tension(walk, 0), WithinRel((lever(walk, 0) + circle) / (lever(walk, 1) - circle), 1e-2));
  });
  CHECK(sliding > 20);
}

TEST_CASE("whiffletree: a drive's cord to the yoke carries the sum at stall") {
  model::Scenario scenario = whiffletree();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.drives = {parts::lossy_drive()};
  m.cords.push_back(cord_between("draw", {model::PulleyEnd{0, {-0.05, 0, 0}}, model::Anchor{kYoke, {-5e-3, 0, 0}}}));
  parts::Walk walk(scenario);
  walk.voltage(0.3);
  walk.to(20);
  CHECK(walk.state.v.cwiseAbs().maxCoeff() < 1e-8);
  CHECK(tension(walk, 2) > 1);
  // The bar has turned, and the cords lean, by what they stretched.
  CHECK_THAT(tension(walk, 2), WithinRel(tension(walk, 0) + tension(walk, 1), 1e-6));
  CHECK(std::abs(walk.residual()) < 2e-3 * walk.account(simulation::Account::supply));
}

TEST_CASE("whiffletree: a bar that draws the yoke of another shares one pull among three, by both lever ratios") {
  model::Scenario scenario = whiffletree(10e-3, 20e-3, 0.2);
  auto& m = scenario.model;
  const int second = static_cast<int>(m.bodies.size());
  // The second yoke slides in front of the first bar's end two, which draws it.
  m.bodies.push_back(parts::sliding("yoke2", 0, {0.05, -20e-3, 0}, -Vector3d::UnitX(), 0.005));
  m.bodies.push_back(parts::phalanx("bar2", second, Vector3d::Zero(), 0.002, 0, 1e-7));
  m.bodies[3].slide->viscous = 2;
  m.bodies[4].hinge->viscous = 2e-4;
  m.cords[1] = cord_between("link", {model::Anchor{kBar, {0, -20e-3, 0}}, model::Anchor{second, Vector3d::Zero()}});
  m.cords.push_back(cord_between("two", {model::Anchor{kPalm, {0.2, -14e-3, 0}}, model::Anchor{second + 1, {0, 6e-3, 0}}}));
  m.cords.push_back(cord_between("three", {model::Anchor{kPalm, {0.2, -23e-3, 0}}, model::Anchor{second + 1, {0, -3e-3, 0}}}));
  scenario.loads = {pull_on_yoke({{0, 0.2}, {0, 30}})};
  parts::Walk walk(scenario);
  walk.to(3);
  CHECK_THAT(tension(walk, 0), WithinRel(20, 1e-3));  // 30 N · 20/(10 + 20)
  CHECK_THAT(tension(walk, 1), WithinRel(10, 1e-3));
  CHECK_THAT(tension(walk, 2), WithinRel(10.0 * 3 / 9, 1e-3));
  CHECK_THAT(tension(walk, 3), WithinRel(10.0 * 6 / 9, 1e-3));
}

// Two one-joint fingers with springs, each on a guide of its own radius, pulled through the bar.
constexpr double kReel = 7e-3;

model::Scenario two_fingers() {
  model::Scenario scenario = whiffletree(10e-3, 10e-3);
  auto& m = scenario.model;
  m.cords.clear();
  const double y[] = {10e-3, -10e-3};
  for (int f = 0; f < 2; ++f) {
    const std::string name = f == 0 ? "first" : "second";
    const int body = static_cast<int>(m.bodies.size());
    m.bodies.push_back(parts::rod(name, kPalm, {0.06, y[f], 0}, 0.01, 0.04));
    m.bodies.back().hinge->spring_stiffness = 0.02;
    m.bodies.back().hinge->viscous = 1e-3;
    // Over the guide round the pin on the palm side, from behind.
    m.cords.push_back(cord_between(name, {model::Anchor{kBar, {0, y[f], 0}},
                                          model::Bend{kPalm, {0.04, y[f], 0}, 1e-3, 1},
                                          model::Guide{kPalm, {0.06, y[f], 0}, Vector3d::UnitZ(), kReel, {0, -1, 0}, 1},
                                          model::Anchor{body, {0.03, 0, 0}}}));
  }
  scenario.loads = {pull_on_yoke({{0, 1}, {0, 3}})};
  return scenario;
}

TEST_CASE("whiffletree: when one finger is blocked the other goes on closing, twice as far for the same pull of the yoke") {
  model::Scenario scenario = two_fingers();
  scenario.model.bodies[3].hinge->stops = model::EndStops{-0.1, 0.1, 500, 0.01};
  parts::Walk walk(scenario);
  double first_at_block = 0, second_at_block = 0, yoke_at_block = 0;
  walk.to(3, [&] {
    if (yoke_at_block == 0 && walk.stepper.stage().hinge[1].stop_torque < 0) {
      first_at_block = walk.angle(1);
      second_at_block = walk.angle(2);
      yoke_at_block = walk.position(0);
    }
  });
  REQUIRE(yoke_at_block > 0);
  CHECK_THAT(second_at_block, WithinRel(first_at_block, 5e-2));
  CHECK_THAT(walk.angle(1), WithinAbs(0.1, 2e-3));
  CHECK(walk.angle(2) > 0.4);
  // The bar's ends go by ± arm sin β: with end one held, end two goes twice the way of the yoke.
  const double way = kReel * (walk.angle(2) - second_at_block);
  CHECK_THAT(way, WithinRel(2 * (walk.position(0) - yoke_at_block), 3e-2));
  // The blocked one still pulls its share.
  const auto& chain = walk.stepper.stage().chain;
  CHECK_THAT(chain[0].tension[0] * lever(walk, 0, true), WithinRel(chain[1].tension[0] * lever(walk, 1, true), 1e-5));
  CHECK(chain[0].tension[0] > 1);
}

TEST_CASE("whiffletree: fingers that press carry the pull by the law of the lever, whatever their posture") {
  for (const double arm1 : {10e-3, 7e-3}) {
    model::Scenario scenario = two_fingers();
    auto& m = scenario.model;
    std::get<model::Anchor>(m.cords[0].path.front()).at.y() = arm1;
    std::get<model::Bend>(m.cords[0].path[1]).at.y() = arm1;
    // Both fingers stand against stops at unlike angles: what they press with is the tension times the guide's radius, less the spring.
    m.bodies[3].hinge->stops = model::EndStops{-0.1, 0.1, 500, 0.01};
    m.bodies[4].hinge->stops = model::EndStops{-0.1, 0.4, 500, 0.01};
    scenario.loads = {pull_on_yoke({{0, 1}, {0, 12}})};
    parts::Walk walk(scenario);
    walk.to(4);
    const auto& stage = walk.stepper.stage();
    const double one = stage.chain[0].tension[0], two = stage.chain[1].tension[0];
    CHECK_THAT(one * lever(walk, 0, true), WithinRel(two * lever(walk, 1, true), 1e-6));
    CHECK_THAT(-stage.hinge[1].stop_torque, WithinRel(kReel * one - 0.02 * walk.angle(1), 1e-4));
    CHECK_THAT(-stage.hinge[2].stop_torque, WithinRel(kReel * two - 0.02 * walk.angle(2), 1e-4));
  }
}

// A yoke with a round guide of which the cord covers half a turn: a bend between two guides on one axis, for a guide alone takes less
// than half a turn. Leg two ends on a jaw that a spring holds.
constexpr double kRadius = 5e-3;

model::Scenario floating_pulley(double mu, double jaw_stiffness) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("palm"), parts::sliding("yoke", 0, Vector3d::Zero(), -Vector3d::UnitX(), 0.005),
              parts::sliding("jaw", 0, {0.1, -kRadius, 0}, -Vector3d::UnitX(), 0.005)};
  m.bodies[kYoke].slide->viscous = 2;
  m.bodies[2].slide->viscous = 2;
  m.bodies[2].slide->spring_stiffness = jaw_stiffness;
  m.lines = {parts::stiff_line(12000, 1e-3)};
  model::Cord cord = cord_between("shared", {model::Anchor{kPalm, {0.1, kRadius, 0}},
                                             model::Guide{kYoke, Vector3d::Zero(), Vector3d::UnitZ(), kRadius, Vector3d(-1, 1, 0), 1},
                                             model::Bend{kYoke, {-kRadius, 0, 0}, kRadius, 1},
                                             model::Guide{kYoke, Vector3d::Zero(), Vector3d::UnitZ(), kRadius, Vector3d(-1, -1, 0), 1},
                                             model::Anchor{2, Vector3d::Zero()}});
  cord.channel.kinetic = mu;
  m.cords = {cord};
  scenario.solver.tolerance = 1e-4;
  scenario.duration = 10;
  return scenario;
}

TEST_CASE("floating pulley: without friction both legs carry half the pull") {
  model::Scenario scenario = floating_pulley(0, 500);
  scenario.loads = {pull_on_yoke({{0, 0.5}, {0, 8}})};
  parts::Walk walk(scenario);
  walk.to(3);
  const auto& chain = walk.stepper.stage().chain[0];
  double turn = 0;
  for (double angle : walk.stepper.stage().path[0].turning_angle) turn += angle;
  CHECK_THAT(turn, WithinRel(pi, 1e-9));
  CHECK_THAT(chain.tension.front(), WithinRel(chain.tension.back(), 1e-12));
  CHECK_THAT(chain.tension.front(), WithinRel(4, 1e-7));
  // The jaw follows twice the way of the pulley, but for the cord's stretch.
  CHECK_THAT(walk.position(1), WithinRel(4.0 / 500, 1e-6));
  CHECK_THAT(walk.position(1), WithinRel(2 * walk.position(0), 2e-2));
}

TEST_CASE("floating pulley: the legs are in the ratio exp(mu pi) while the cord runs round it, and between its bounds at rest") {
  constexpr double mu = 0.12;
  const double most = std::exp(mu * pi);
  model::Scenario scenario = floating_pulley(mu, 500);
  scenario.loads = {pull_on_yoke({{0, 1, 1.5, 2.5, 3}, {0, 8, 7.5, 7.5, 3}})};
  parts::Walk walk(scenario);
  int running = 0, back = 0;
  double lowest = 1e9;
  walk.to(4, [&] {
    const auto& chain = walk.stepper.stage().chain[0];
    const double one = chain.tension.front(), two = chain.tension.back();
    if (!(two > 0.05)) return;
    // Drawn in, the pulley feeds leg one, whose end stands still, from leg two, which gives way: one pulls more.
    CHECK(one <= two * most * (1 + 1e-9));
    CHECK(two <= one * most * (1 + 1e-9));
    lowest = std::min(lowest, one / two);
    const auto& slip = walk.state.cords[0].slip;
    const bool slides = std::all_of(slip.begin(), slip.end(), [&](friction::Slip s) { return s == slip.front() && s != friction::Slip::stick; });
    if (!slides) return;
    if (walk.state.time < 1) {
      ++running;
      CHECK_THAT(one / two, WithinRel(most, 1e-9));
    }
    if (walk.state.time > 2.5) {
      ++back;
      CHECK_THAT(two / one, WithinRel(most, 1e-9));
    }
  });
  CHECK(running > 10);
  CHECK(back > 10);
  CHECK(lowest < 1);
  CHECK(std::abs(walk.residual()) < 2e-3 * walk.account(simulation::Account::loads));
}

TEST_CASE("shared tensions: statics gives the bar's shares and the pulley's halves, and says when balance is not enough") {
  {
    const simulation::System system(whiffletree());
    const auto shares = simulation::shared_tensions(system, system.start_q, {});
    REQUIRE(shares);
    CHECK((*shares)[0] == 0);  // nothing pulls
  }
  model::Scenario scenario = whiffletree();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6)};
  m.drives = {parts::plain_drive()};
  m.cords.push_back(cord_between("draw", {model::PulleyEnd{0, {-0.05, 0, 0}}, model::Anchor{kYoke, {-5e-3, 0, 0}}}));
  {
    const simulation::System system(scenario);
    const auto shares = simulation::shared_tensions(system, system.start_q, {10});
    REQUIRE(shares);
    CHECK_THAT((*shares)[0], WithinRel(10 * kArm2 / (kArm1 + kArm2), 1e-12));
    CHECK_THAT((*shares)[1], WithinRel(10 * kArm1 / (kArm1 + kArm2), 1e-12));
    CHECK((*shares)[2] == 10);
    CHECK_THAT(simulation::cord_posture(system, system.start_q, 2).draw[0], WithinRel(1, 1e-12));
    CHECK_FALSE(simulation::returns(system, 0));
  }
  m.bodies[kYoke].slide->spring_stiffness = 200;
  m.bodies[kYoke].slide->spring_rest = -5e-3;  // draws it back with 1 N
  {
    const simulation::System system(scenario);
    const auto shares = simulation::shared_tensions(system, system.start_q, {10});
    REQUIRE(shares);
    CHECK_THAT((*shares)[0] + (*shares)[1], WithinRel(9, 1e-12));
    CHECK_FALSE(simulation::shared_tensions(system, system.start_q, {0.5}));  // less than the spring: the cords would have to push
  }
  m.cords.push_back(cord_between("third", {model::Anchor{kPalm, {0.2, 0, 0}}, model::Anchor{kBar, Vector3d::Zero()}}));
  CHECK_FALSE(simulation::shared_tensions(simulation::System(scenario), simulation::System(scenario).start_q, {10}));
}

}  // namespace
