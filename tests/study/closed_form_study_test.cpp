// Whole studies on a winch whose answers have closed forms: the pulley that gives a motor's greatest power, and how the tension behind a
// guide varies with friction and current.

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "folder.h"
#include "study/findings.h"
#include "study/kept.h"
#include "study/study.h"

namespace {

using namespace sinewright;

constexpr double kVoltage = 6, kResistance = 7, kConstant = 2.4e-3, kRatio = 150;  // supply and winding together
constexpr double kGuide = 0.04;                                                   // [m]
// Tangents from (±80, 40) mm to the guide: each takes off acos(40 / 89.4) from the way round.
const double kTurning = 2 * std::numbers::pi - 2 * (std::acos(40 / std::hypot(80.0, 40.0)) + std::atan2(80.0, 40.0));

// An arm on a pin without friction, a cord over a round guide about the pin, a motor and gearhead without losses.
const std::string kModel =
    "sinewright: model\nname: winch\n"
    "supplies:\n  bench: {voltage: 6 V, resistance: 1 Ohm}\n"
    "motors:\n  plain: {resistance: 6 Ohm, torque_constant: 2.4 mN·m/A, rotor_inertia: 1e-5 g·cm², static_drag: 0 mN·m, kinetic_drag: 0 mN·m, "
    "viscous_drag: 0 N·m·s/rad, resistance_slope: 0 1/K, reference_temperature: 20 degC, winding_to_housing: 20 K/W, housing_to_ambient: 60 K/W, "
    "winding_capacity: 0.6 J/K, housing_capacity: 4 J/K, source: invented}\n"
    "gearheads:\n  ideal: {ratio: 150, forward_efficiency: 1, backward_efficiency: 1, drag: 0 mN·m, output_inertia: 1e-4 g·cm², source: invented}\n"
    "lines:\n  stiff: {diameter: 1e-6 mm, axial_stiffness: 200 kN, damping_time: 0.2 ms, source: invented}\n"
    "bodies:\n  frame:\n    fixed: {at: [0 mm, 0 mm, 0 mm]}\n"
    "  arm:\n    hinge: {name: pin, parent: frame, at: [0 mm, 0 mm, 0 mm]}\n"
    "    mass: {mass: 1 g, center: [20 mm, 0 mm, 0 mm], inertia: [1 g·cm², 1 g·cm², 1 g·cm²]}\n"
    "drives:\n  winch: {body: frame, supply: bench, motor: plain, gearhead: ideal, pulley: {radius: 3.5 mm}}\n"
    "cords:\n  rope:\n    line: stiff\n    channel: {friction: 0, source: invented}\n    path:\n"
    "      - {pulley: winch, at: [-80 mm, 40 mm, 0 mm]}\n"
    "      - {guide: [0 mm, 0 mm, 0 mm], in: frame, axis: [0, 0, 1], radius: 40 mm, side: [0, -1, 0]}\n";
const std::string kToArm = "      - {anchor: [80 mm, 40 mm, 0 mm], in: arm}\n";
const std::string kToFrame = "      - {anchor: [80 mm, 40 mm, 0 mm], in: frame}\n";

const std::string kScenario =
    "sinewright: scenario\nname: pull\nmodel: winch.yaml\ngravity: [0 m/s², 0 m/s², 0 m/s²]\nduration: 0.5 s\n"
    "timeline:\n  - {at: 0 s, drive: winch, voltage: 6 V}\n";

record::StudyRecord run(const Folder& folder, const std::string& model_end, const std::string& scenario_end, const std::string& study) {
  (void)folder.write("winch.yaml", kModel + model_end);
  (void)folder.write("pull.yaml", kScenario + scenario_end);
  const auto file = folder.write("study.yaml", "sinewright: study\nname: winch\nruns:\n  pull: {scenario: pull.yaml}\n" + study);
  reading::Source source;
  const model::Study read = reading::read_study(source, file);
  study::StudyOptions options;
  options.journal = folder.path / "journal";
  const study::StudyTable table = study::run_study(source, read, options);
  REQUIRE(table.complete);
  return study::record_of(read, table);
}

}  // namespace

// Torque falls in a straight line with speed, so under a cord force F a pulley of radius r turns at ω0 (1 − F r / M_stall) and lifts at
// r times that: most at F r = M_stall / 2, half of stall, where the power F v = M_stall ω0 / 4 (any textbook on motors, from memory).
TEST_CASE("study: the best pulley takes the motor to half of its stall torque, where its power peaks", "[study]") {
  const Folder folder;
  const double force = 50;  // 40 N at 50 mm over an arm of 40 mm
  const double stall = kRatio * kConstant * kVoltage / kResistance, no_load = kVoltage / (kConstant * kRatio);
  const auto table = run(folder, kToArm,
                         "loads:\n  weight: {on: arm, at: [50 mm, 0 mm, 0 mm], direction: [0, 1, 0], follows_body: true, force: 40 N}\n",
                         "vary:\n  radius: {key: model.drives.winch.pulley.radius, from: 1 mm, to: 5.5 mm}\n"
                         "optimise: {maximise: [pull.final_angle.pin], runs: 120}\n");
  REQUIRE(table.best.size() == 1);
  const double radius = table.varied[0].values[table.best[0]], angle = table.outcomes[0].values[table.best[0]];
  CHECK(radius == Approx(stall / (2 * force)).epsilon(5e-3));  // the top is flat: 0.5 % beside it costs 1/40000
  // What was wound in at the end is the speed times the time, but for the start, which takes well below a millisecond; it lifts, and
  // stretches the cord.
  const double stretch = force * (0.16 + kGuide * kTurning) / 200e3;
  const auto speed = [&](double lifted) { return (lifted * kGuide + stretch) / 0.5; };
  CHECK(speed(angle) * force == Approx(stall * no_load / 4).epsilon(1e-4));
  // And every other pulley is on the curve.
  for (std::uint64_t row = 0; row < table.designs; ++row) {
    const double r = table.varied[0].values[row];
    if (force * r > 0.95 * stall) continue;  // nearly at rest
    CHECK(speed(table.outcomes[0].values[row]) == Approx(r * no_load * (1 - force * r / stall)).epsilon(1e-3));
  }
}

// At rest the current limit I and the friction μ of the guide give T = k N I / r · exp(−μ θ), a product of two independent factors, whose
// variance-based shares have closed forms: with means m and variances s², V = (sA² + mA²)(sB² + mB²) − mA² mB²,
// S_A = sA² mB² / V, total share of A = sA² (sB² + mB²) / V.
TEST_CASE("study: the shares of current and friction in the tension behind a guide are those of the capstan law", "[study]") {
  const Folder folder;
  const auto table = run(folder, kToFrame, "",
                         "vary:\n  limit: {key: model.drives.winch.current_limit, from: 0.2 A, to: 0.6 A}\n"
                         "  friction: {key: model.cords.rope.channel.friction, from: 0.05, to: 0.45}\n"
                         "outcomes: [pull.tip_tension.rope, pull.tension.rope]\nsensitivity: {base: 128}\n");
  const double pull = kConstant * kRatio / 3.5e-3;  // tension for each ampere
  for (std::uint64_t row = 0; row < table.designs; ++row) {
    const double first = pull * table.varied[0].values[row];
    CHECK(table.outcomes[1].values[row] == Approx(first).epsilon(1e-3));
    CHECK(table.outcomes[0].values[row] == Approx(first * std::exp(-kTurning * table.varied[1].values[row])).epsilon(1e-3));
  }
  const double mean_a = 0.4, var_a = 0.4 * 0.4 / 12;
  const auto moment = [&](double k) { return (std::exp(-k * kTurning * 0.05) - std::exp(-k * kTurning * 0.45)) / (k * kTurning * 0.4); };
  const double mean_b = moment(1), var_b = moment(2) - mean_b * mean_b;
  const double all = (var_a + mean_a * mean_a) * (var_b + mean_b * mean_b) - mean_a * mean_a * mean_b * mean_b;
  const auto findings = study::findings_of(table);
  const auto& keys = findings.sensitivity.at(0).keys;
  CHECK(keys[0].first == Approx(var_a * mean_b * mean_b / all).margin(0.02));
  CHECK(keys[0].total == Approx(var_a * (var_b + mean_b * mean_b) / all).margin(0.02));
  CHECK(keys[1].first == Approx(var_b * mean_a * mean_a / all).margin(0.02));
  CHECK(keys[1].total == Approx(var_b * (var_a + mean_a * mean_a) / all).margin(0.02));
  CHECK(findings.sensitivity.at(0).mean == Approx(pull * mean_a * mean_b).epsilon(0.01));
}
