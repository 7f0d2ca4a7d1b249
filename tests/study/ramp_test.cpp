// Ramps reach the closed forms of back-drive and stall loads, and say so when an answer depends on the rate.

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "../simulation/parts.h"
#include "study/ramp.h"

namespace {

using namespace sinewright;
using model::Vector3d;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

using parts::kBackward, parts::kBrushes, parts::kForward, parts::kGearDrag, parts::kPulley, parts::kRatio;

constexpr double kLength = 0.04;
// Margins want a cord with a diameter; this one adds nothing to the pulley's radius.
model::Line thin_line(double stiffness) {
  model::Line line = parts::stiff_line(stiffness, 1e-3);
  line.diameter = 1e-12;
  return line;
}
const std::vector<double> kArms = {9e-3, 7e-3, 5e-3};
// A turn that counts as a start: the rotor, 1e-3 kg m² at the output, must be brought to it, for which the load rises on by
// a part that goes with the third root of it [rad].
constexpr double kStarts = 1e-5;
constexpr double kAccuracy = 5e-3;  // what is promised: half a percent

// A straight finger of n phalanges without weight, its cord over guides of constant arm.
model::Scenario finger(std::size_t joints, double capstan) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {thin_line(12000)};
  m.drives = {parts::lossy_drive()};
  m.bodies = {parts::fixed_body("knuckle")};
  for (std::size_t i = 0; i < joints; ++i) {
    auto body = parts::rod("phalanx" + std::to_string(i), static_cast<int>(i), {i == 0 ? 0 : kLength, 0, 0}, 0.01, kLength);
    body.hinge->viscous = 2e-4;
    m.bodies.push_back(body);
  }
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.channel.kinetic = capstan;
  cord.path = parts::constant_arm_path({kArms.begin(), kArms.begin() + static_cast<std::ptrdiff_t>(joints)},
                                       std::vector<double>(joints, kLength));
  cord.pretension = 0.01;
  m.cords = {cord};
  return scenario;
}

// Turning angle of the guides and bends up to the joint, from the geometry alone.
double turning_up_to(const model::Scenario& scenario, std::size_t joint) {
  const simulation::System system(scenario);
  simulation::Stage stage(system);
  stage.look(simulation::start_state(system));
  double sum = 0;
  // Nodes run guide, bend, bend, guide, … from the drive to the tip; the span that leaves guide `joint` turns that joint.
  for (std::size_t k = 0; k < 3 * joint + 1; ++k) sum += stage.path[0].turning_angle[k];
  return sum;
}

model::Load load_on(const std::string& body, int index, const Vector3d& at) {
  model::Load load;
  load.name = "pull";
  load.body = body;
  load.body_index = index;
  load.at = at;
  load.direction = {0, 1, 0};
  load.follows_body = true;
  return load;
}

model::Ramp rise(double most, model::RampEnd until, double start = 0) {
  model::Ramp ramp;
  ramp.what = model::RiseOfLoad{"pull"};
  ramp.start = start;
  ramp.most = most;
  ramp.rate = most / 4;
  ramp.until = std::move(until);
  return ramp;
}

TEST_CASE("ramp: the back-drive load of one joint is the gear's holding tension and the capstan loss over the arm") {
  const double capstan = GENERATE(0.0, 0.12);
  model::Scenario scenario = finger(1, capstan);
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  // The joint pulls cord out over the guide: the tension grows from the drive to the tip by exp(mu theta).
  const double tension = (kRatio * kBrushes + kGearDrag) / kBackward / kPulley;
  const double force = tension * std::exp(capstan * turning_up_to(scenario, 0)) * kArms[0] / kLength;
  const auto answer = study::answer_ramp(scenario, rise(2 * force, {model::EndEvent::shaft_turns, "flexor", kStarts}), 1e-3, {});
  REQUIRE(answer.found);
  CHECK(answer.settled);
  CHECK_THAT(answer.value, WithinRel(force, kAccuracy));
  CHECK(answer.subject == "flexor");
}

TEST_CASE("ramp: the load at which the gearhead's margin is used up is its rating over the arm") {
  const double capstan = GENERATE(0.0, 0.12);
  model::Scenario scenario = finger(1, capstan);
  const double holds = (kRatio * kBrushes + kGearDrag) / kBackward, rating = 0.5 * holds;
  scenario.model.drives[0].gearhead.torque_rating = rating;
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  const double force = rating / kPulley * std::exp(capstan * turning_up_to(scenario, 0)) * kArms[0] / kLength;
  for (const std::string margin : {"", "gear_torque.flexor"}) {
    const auto answer = study::answer_ramp(scenario, rise(2 * force, {model::EndEvent::margin_falls, margin, 1}), 1e-3, {});
    REQUIRE(answer.found);
    CHECK(answer.settled);
    CHECK_THAT(answer.value, WithinRel(force, kAccuracy));
    CHECK_THAT(answer.subject, Contains("gearhead"));
  }
  // A margin of 2 is used up at half of it, and one that is lost before the rise begins at its first value.
  const auto half = study::answer_ramp(scenario, rise(2 * force, {model::EndEvent::margin_falls, "", 0.5}), 1e-3, {});
  CHECK_THAT(half.value, WithinRel(0.5 * force, kAccuracy));
  scenario.model.drives[0].gearhead.torque_rating = 1e-9;
  auto late = rise(2 * force, {model::EndEvent::margin_falls, "", 1}, 0.1);
  late.from = 0.25 * force;
  CHECK_THAT(study::answer_ramp(scenario, late, 1e-3, {}).value, WithinRel(late.from, 0.02));
  CHECK_THROWS_WITH(study::answer_ramp(scenario, rise(1, {model::EndEvent::margin_falls, "pin_shear.MCP", 1}), 1e-3, {"f.yaml", 3, 4}),
                    Contains("f.yaml:3:4") && Contains("gear_torque.flexor"));
}

TEST_CASE("ramp: three joints held by stops in one line are back-driven by the load on the first, the others stay") {
  // A pull at the end of the first phalanx bends only the first joint open; the cord tension of the others rests on their stops.
  const double capstan = GENERATE(0.0, 0.12);
  model::Scenario scenario = finger(3, capstan);
  for (std::size_t i = 2; i <= 3; ++i) scenario.model.bodies[i].hinge->stops = model::EndStops{-0.5, 0, 200, 0.01};
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  const double tension = (kRatio * kBrushes + kGearDrag) / kBackward / kPulley;
  const double force = tension * std::exp(capstan * turning_up_to(scenario, 0)) * kArms[0] / kLength;
  const auto answer = study::answer_ramp(scenario, rise(2 * force, {model::EndEvent::shaft_turns, "", kStarts}), 1e-3, {});
  REQUIRE(answer.found);
  CHECK_THAT(answer.value, WithinRel(force, kAccuracy));
}

TEST_CASE("ramp: a stalled motor bears the fingertip load at which the weakest joint leaves its stop") {
  // Straight finger, all joints wound against their upper stops at 0; a pull on the tip loads every joint over its lever. Which
  // joint opens first follows from arm over lever; its cord is then pulled back over the guides that lie before it.
  const std::size_t joints = GENERATE(std::size_t{1}, std::size_t{3});
  const double capstan = GENERATE(0.0, 0.12);
  model::Scenario scenario = finger(joints, capstan);
  // What counts as motion (0.1 mrad) must be more than the give of a relieved stop (0.3 N m / 20000 N m/rad) and so little that the
  // cord, softer here, pulls hardly more for it: over its last span of 1 cm alone, 500 N × 5e-7 m / 1 cm = 0.025 N of 11 N.
  scenario.model.lines = {thin_line(500)};
  for (std::size_t i = 1; i <= joints; ++i) scenario.model.bodies[i].hinge->stops = model::EndStops{-0.8, 0, 20000, 0.01};
  scenario.timeline = {{0, 0, model::CommandVoltage{0.25, 1}}};  // slowly: no momentum beyond the motor's own torque
  scenario.loads = {load_on("phalanx" + std::to_string(joints - 1), static_cast<int>(joints), {kLength, 0, 0})};
  // Wound: T R = eta_f (n (k i − brushes) − drag), 1 ohm, k = 0.01.
  const double current = 0.25;  // the driver chops, so the supply does not sag
  const double wound = kForward * (kRatio * (0.01 * current - kBrushes) - kGearDrag) / kPulley;
  double force = 1e300;
  for (std::size_t j = 0; j < joints; ++j) {
    // Tension behind the guide, as wound (lost on the way out). To move the joint against its cord the whole string up to the
    // drive is stretched, whose end the gear holds: the span's tension needs no more than the wound one to begin.
    const double lost = std::exp(-capstan * turning_up_to(scenario, j));
    force = std::min(force, wound * lost * kArms[j] / (kLength * static_cast<double>(joints - j)));
  }
  CAPTURE(wound, force);
  auto ramp = rise(2 * force, {model::EndEvent::joint_moves, "", 1e-4}, 2);
  const auto answer = study::answer_ramp(scenario, ramp, 1e-3, {});
  REQUIRE(answer.found);
  CHECK_THAT(answer.value, WithinRel(force, kAccuracy));
}

TEST_CASE("ramp: an answer that depends on the rate is flagged, one that does not is not") {
  // No friction holds the joint but a viscous one: how far the load has risen when it has turned by half a radian grows with the rate.
  model::Scenario scenario = finger(1, 0);
  scenario.model.cords.clear();
  scenario.model.bodies[1].hinge->viscous = 0.05;
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  auto ramp = rise(20, {model::EndEvent::joint_moves, "", 0.5});
  ramp.halvings = 3;
  const auto answer = study::answer_ramp(scenario, ramp, 5e-3, {});
  REQUIRE(answer.found);
  CHECK_FALSE(answer.settled);
  CHECK_THAT(answer.note, Contains("NOT SETTLED"));
  // c θ = ∫ F l dt = l r t²/2, so F = sqrt(2 c θ r / l): every halving takes a factor √2.
  const double last_rate = ramp.rate / 8;
  CHECK_THAT(answer.value, WithinRel(std::sqrt(2 * 0.05 * 0.5 * last_rate / kLength), 2e-2));
  CHECK(answer.probes.size() == 4);
}

TEST_CASE("ramp: a rise that ends before the event finds nothing and says what to do") {
  model::Scenario scenario = finger(1, 0);
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  const auto answer = study::answer_ramp(scenario, rise(1e-3, {model::EndEvent::shaft_turns, "", 1e-2}), 1e-3, {});
  CHECK_FALSE(answer.found);
  CHECK_THAT(answer.note, Contains("give a higher 'most'"));
}

TEST_CASE("ramp: names that are not there are refused with the known ones") {
  model::Scenario scenario = finger(1, 0);
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  CHECK_THROWS_WITH(study::answer_ramp(scenario, rise(1, {model::EndEvent::joint_moves, "thumb", 1e-2}), 1e-3, {"f.yaml", 3, 4}),
                    Contains("f.yaml:3:4") && Contains("'thumb'") && Contains("phalanx0"));
  auto ramp = rise(1, {model::EndEvent::joint_moves, "", 1e-2});
  ramp.what = model::RiseOfLoad{"push"};
  CHECK_THROWS_WITH(study::answer_ramp(scenario, ramp, 1e-3, {}), Contains("no load 'push'") && Contains("pull"));
}

TEST_CASE("ramp: a rising voltage turns the shaft when the motor overcomes its drags and the cord") {
  model::Scenario scenario = finger(1, 0);
  scenario.model.cords[0].pretension = 0.01;
  model::Ramp ramp;
  ramp.what = model::RiseOfVoltage{"flexor"};
  ramp.most = 0.01;
  ramp.rate = 0.0005;
  ramp.until = {model::EndEvent::shaft_turns, "flexor", 1e-3};
  const auto answer = study::answer_ramp(scenario, ramp, 2e-3, {});
  REQUIRE(answer.found);
  // n (k i − brushes) = drag + T R / eta_f; the free joint follows, so the cord stays at its hundredth of a newton or less.
  const double least = ((kGearDrag + 0.01 * kPulley / kForward) / kRatio + kBrushes) / 0.01;  // 1 ohm
  CHECK(answer.value >= least);
  CHECK_THAT(answer.value, WithinRel(least, 0.05));  // the rotor must be brought to a milliradian, at the slowest rate
}

TEST_CASE("ramp: a motor that lifts a rising load stalls where its torque, less gear and brushes, is used up") {
  model::Scenario scenario = finger(1, 0);
  scenario.model.bodies[1].hinge->viscous = 0.05;  // slows it down, so that the guide stays wrapped
  scenario.timeline = {{0, 0, model::CommandVoltage{0.25, 0}}};
  scenario.loads = {load_on("phalanx0", 1, {kLength, 0, 0})};
  const double wound = kForward * (kRatio * (0.01 * 0.25 - kBrushes) - kGearDrag) / kPulley;
  const double force = wound * kArms[0] / kLength;
  auto ramp = rise(1.1 * force, {model::EndEvent::motor_stalls, "flexor", 0.02}, 0.3);
  ramp.from = 0.9 * force;
  ramp.rate = 0.1 * force;
  const auto answer = study::answer_ramp(scenario, ramp, 2e-3, {});
  REQUIRE(answer.found);
  CHECK(answer.settled);
  CHECK_THAT(answer.value, WithinRel(force, kAccuracy));
}

}  // namespace
