// Sensors look on at a run: they take samples at their own times, change nothing, and what they are wrong by adds up.

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

#include <catch2/catch.hpp>

#include "../contact/heap_watch.h"
#include "parts.h"
#include "simulation/run.h"
#include "simulation/sensor_watch.h"

namespace {

using namespace sinewright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using model::Vector3d;
using simulation::TipCause;

constexpr double kPulleyRadius = 5e-3;
constexpr double kTurn = 2 * std::numbers::pi;
constexpr std::array<double, 2> kArm = {8e-3, 5e-3}, kSpring = {0.03, 0.02}, kLength = {0.045, 0.03};

// Two phalanges with springs at the joints, a cord of constant arms and a motor; nothing rubs.
model::Scenario finger() {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.supplies = {parts::supply(6, 0.4)};
  m.lines = {parts::stiff_line(12000, 1e-3)};
  auto drive = parts::plain_drive(100, kPulleyRadius);
  drive.motor.viscous_drag = 1e-6;
  m.drives = {drive};
  m.bodies = {parts::fixed_body("knuckle")};
  for (std::size_t i = 0; i < 2; ++i) {
    auto body = parts::rod(i == 0 ? "proximal" : "distal", static_cast<int>(i), Vector3d(i == 0 ? 0 : kLength[0], 0, 0), 0.01, kLength[i]);
    body.hinge->viscous = 2e-4;
    body.hinge->spring_stiffness = kSpring[i];
    m.bodies.push_back(body);
  }
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.path = parts::constant_arm_path({kArm[0], kArm[1]}, {kLength[0], kLength[1]});
  m.cords = {cord};
  scenario.duration = 0.6;
  scenario.timeline = {{0.0, 0, model::CommandVoltage{2}}, {0.3, 0, model::CommandVoltage{-2}}};
  return scenario;
}

model::Potentiometer pot() {
  model::Potentiometer p;
  p.range = 3 * kTurn;
  p.at_zero = 0.25 * kTurn;
  p.feed = 3.3;
  p.bits = 12;
  p.noise = {1e-3, 5};
  return p;
}

model::Sensor sensor_of(decltype(model::Sensor::kind) kind, double period = 1e-3) {
  model::Sensor sensor;
  sensor.kind = std::move(kind);
  sensor.period = period;
  return sensor;
}

struct Rows {
  std::vector<simulation::Channel> channels;
  std::vector<double> time;
  std::map<std::string, std::vector<double>> first;  // first column of each channel
  simulation::RunResult result;
};

Rows rows_of(const model::Scenario& scenario) {
  const simulation::System system(scenario);
  Rows rows;
  rows.channels = simulation::channels(system);
  simulation::RunListener listener;
  listener.row = [&](double time, std::span<const double> row) {
    rows.time.push_back(time);
    std::size_t at = 0;
    for (const auto& channel : rows.channels) {
      rows.first[channel.path].push_back(row[at]);
      at += static_cast<std::size_t>(channel.width());
    }
    REQUIRE(at == row.size());
  };
  rows.result = simulation::run(system, listener);
  REQUIRE(rows.result.complete);
  return rows;
}

double number(const Rows& rows, const std::string& key) {
  for (const auto& value : rows.result.summary)
    if (value.key == key) return value.value;
  FAIL("no " << key);
  return 0;
}

const std::string kSensor = "/drives/flexor/sensor/";

}  // namespace

TEST_CASE("sensing: a run with sensors has the same bits as one without, whatever their period") {
  const Rows without = rows_of(finger());
  for (const double period : {3.1e-5, 1e-3, 0.7}) {
    auto scenario = finger();
    scenario.model.drives[0].sensor = sensor_of(pot(), period);
    scenario.model.drives[0].current_sense.emplace();
    scenario.model.drives[0].current_sense->high = 1;
    scenario.model.drives[0].current_sense->period = period;
    const Rows with = rows_of(scenario);
    CHECK(with.time == without.time);
    for (const auto& [path, values] : without.first) {
      CAPTURE(path, period);
      CHECK(with.first.at(path) == values);
    }
    CHECK(with.first.size() > without.first.size());
    CHECK(with.result.iterations == without.result.iterations);
  }
}

TEST_CASE("sensing: samples stand at whole multiples of the period, whatever the steps") {
  auto scenario = finger();
  scenario.model.drives[0].sensor = sensor_of(pot(), 1.7e-3);
  scenario.record_interval = 1e-9;
  for (const double tolerance : {1e-2, 1e-4}) {
    scenario.solver.tolerance = tolerance;
    const Rows rows = rows_of(scenario);
    double missed = 0;
    for (std::size_t i = 0; i < rows.time.size(); ++i) {
      const double t = rows.first.at(kSensor + "sample_time")[i];
      const double number = std::round(t / 1.7e-3);
      missed = std::max(missed, std::abs(t - number * 1.7e-3));
      CHECK(t <= rows.time[i]);
      CHECK(rows.time[i] - t < 1.7e-3 * (1 + 1e-9));
    }
    CHECK(missed == 0);
  }
}

TEST_CASE("sensing: the noise of a sample does not depend on tolerance, record or what else is sampled") {
  const auto noise_at = [](double tolerance, double interval, bool current) {
    auto scenario = finger();
    scenario.model.drives[0].sensor = sensor_of(pot());
    scenario.solver.tolerance = tolerance;
    scenario.record_interval = interval;
    if (current) scenario.model.drives[0].current_sense.emplace().high = 1;
    const Rows rows = rows_of(scenario);
    std::map<double, double> noise;
    for (std::size_t i = 0; i < rows.time.size(); ++i)
      noise[rows.first.at(kSensor + "sample_time")[i]] =
          rows.first.at(kSensor + "signal_angle")[i] - rows.first.at(kSensor + "track_angle")[i];
    return noise;
  };
  const auto one = noise_at(1e-3, 1e-3, false), other = noise_at(1e-5, 1e-9, true);
  long compared = 0;
  double largest = 0;
  for (const auto& [time, value] : one) {
    const auto found = other.find(time);
    if (found == other.end()) continue;
    ++compared;
    largest = std::max(largest, std::abs(value));
    CHECK_THAT(found->second, WithinAbs(value, 1e-13));
  }
  CHECK(compared > 30);
  CHECK(largest > 1e-3);
}

TEST_CASE("sensing: samples of a coarse run lie as near to a fine run as its tolerance says") {
  const auto shaft_at = [](double tolerance) {
    auto scenario = finger();
    scenario.model.drives[0].sensor = sensor_of(pot(), 6.3e-3);  // longer than the steps: anywhere within one
    scenario.solver.tolerance = tolerance;
    const Rows rows = rows_of(scenario);
    std::map<double, double> shaft;
    for (std::size_t i = 0; i < rows.time.size(); ++i)
      shaft[rows.first.at(kSensor + "sample_time")[i]] = rows.first.at(kSensor + "shaft_angle")[i];
    return shaft;
  };
  const auto coarse = shaft_at(1e-3), fine = shaft_at(1e-6);
  double worst = 0, travel = 0;
  long compared = 0;
  for (const auto& [time, angle] : coarse)
    if (const auto found = fine.find(time); found != fine.end())
      worst = std::max(worst, std::abs(found->second - angle)), travel = std::max(travel, angle), ++compared;
  CAPTURE(worst, travel, compared);
  CHECK(compared > 70);
  CHECK(travel > 0.5);
  CHECK(worst < 0.5e-3);  // the scale of a shaft angle times the tolerance
}

TEST_CASE("sensing: between two states the shaft is taken on a cubic that does not turn round", "[analytic]") {
  auto scenario = finger();
  scenario.model.drives[0].sensor = sensor_of(pot(), 0.37e-3);
  const simulation::System system(scenario);
  simulation::Stage stage(system);
  simulation::State state = simulation::start_state(system);
  stage.look(state);
  const double w = 40, size = 0.8, h = kTurn / 2 / w / 16;  // half a swing in sixteen steps of 5 ms
  const auto set = [&](double t) {
    state.time = t;
    state.q[system.shafts[0].q_output] = -size * std::cos(w * t);
    state.v[system.shafts[0].v_output] = size * w * std::sin(w * t);
  };
  set(0);
  simulation::Sensing sensing(system);
  sensing.begin(stage, state);
  double worst = 0;
  for (int i = 1; i <= 16; ++i) {
    set(i * h);
    sensing.advance(stage, state, {false});
    const auto& now = sensing.angles()[0];
    worst = std::max(worst, std::abs(now.shaft + size * std::cos(w * now.time)));
  }
  // Hermite's remainder h⁴/384 max|x⁗|; a straight line may be off by h²/8 max|x″|, 850 times more.
  CHECK(worst < std::pow(h * w, 4) / 384 * size * 1.0001);
  CHECK(worst > 1e-7);

  // A shaft that was turning and stands at the end of a step in which it did not advance: it never left its place.
  set(16 * h);
  state.v[system.shafts[0].v_output] = 30;
  sensing.begin(stage, state);
  const double place = state.q[system.shafts[0].q_output];
  state.time += 5e-3;
  state.v[system.shafts[0].v_output] = 0;
  sensing.advance(stage, state, {false});
  CHECK(sensing.angles()[0].shaft == place);
  CHECK(sensing.angles()[0].time > 16 * h);
}

TEST_CASE("sensing: after a reversal the reading lags by the whole play, and the play's error is half of it") {
  auto scenario = finger();
  auto p = pot();
  p.noise.rms = 0;
  p.bits = 24;
  auto sensor = sensor_of(p);
  sensor.fit = {0.05, 2, 1e-2};  // r = 0.025 + 0.005
  scenario.model.drives[0].sensor = sensor;
  const Rows rows = rows_of(scenario);
  CHECK_THAT(number(rows, "sensor_error.flexor.fit"), WithinRel(0.03, 1e-9));
  double before = 0, after = 0;
  for (std::size_t i = 0; i < rows.time.size(); ++i) {
    const double lag = rows.first.at(kSensor + "shaft_angle")[i] - rows.first.at(kSensor + "reading")[i];
    if (rows.time[i] < 0.3) before = lag;
    if (rows.time[i] < 0.55) after = lag;
  }
  CHECK_THAT(before, WithinAbs(0.03, 3e-6));
  CHECK_THAT(after, WithinAbs(-0.03, 3e-6));
}

TEST_CASE("sensing: on the rotor's side the gear's play is part of the error, on the shaft it is not") {
  auto scenario = finger();
  auto& drive = scenario.model.drives[0];
  drive.gearhead.backlash = 0.04;
  drive.gearhead.torsional_stiffness = 50;
  model::RelativeEncoder encoder{1000};
  drive.sensor = sensor_of(encoder);
  CHECK(number(rows_of(scenario), "sensor_error.flexor.fit") < 1e-12);
  drive.sensor->seat = model::Sensor::Seat::rotor;
  const Rows rows = rows_of(scenario);
  CHECK(number(rows, "sensor_error.flexor.fit") > 0.02 * 0.99);
  CHECK(number(rows, "sensor_error.flexor.quantisation") < kTurn / 1000 / 100);  // the gear ratio makes its steps finer
}

TEST_CASE("sensing: a relative encoder loses its zero with its power, an absolute one only its whole turns") {
  auto scenario = finger();
  scenario.timeline = {{0.0, 0, model::CommandVoltage{3}}, {0.4, 0, model::CommandOff{model::Leads::shorted}},
                       {0.6, 0, model::CommandVoltage{3}}};
  scenario.duration = 0.8;
  scenario.record_interval = 1e-9;
  auto& drive = scenario.model.drives[0];
  const auto at = [](const Rows& rows, double time, const std::string& leaf) {
    double last = 0;
    for (std::size_t i = 0; i < rows.time.size() && rows.time[i] <= time; ++i) last = rows.first.at(kSensor + leaf)[i];
    return last;
  };
  drive.sensor = sensor_of(model::RelativeEncoder{1000});
  drive.sensor->power = model::Sensor::Power::with_drive;
  Rows rows = rows_of(scenario);
  const double step = kTurn / 1000, shaft = at(rows, 0.59, "shaft_angle");
  CHECK(at(rows, 0.2, "powered") == 1);
  CHECK(at(rows, 0.5, "powered") == 0);
  CHECK(at(rows, 0.7, "powered") == 1);
  CHECK(at(rows, 0.59, "sample_time") <= 0.4);  // no samples without power
  CHECK_THAT(at(rows, 0.35, "reading"), WithinAbs(at(rows, 0.35, "shaft_angle"), step));
  // The shaft crept back a little while it was braked; the zero is where the power came on.
  const double lost = at(rows, 0.79, "shaft_angle") - at(rows, 0.79, "reading");
  CHECK(shaft > 1);
  double stood = 0;
  for (std::size_t i = 0; i < rows.time.size() && rows.time[i] <= 0.6; ++i) stood = rows.first.at("/drives/flexor/shaft_angle")[i];
  CHECK_THAT(lost, WithinAbs(stood, step));

  drive.sensor->power = model::Sensor::Power::always;
  rows = rows_of(scenario);
  CHECK_THAT(at(rows, 0.79, "reading"), WithinAbs(at(rows, 0.79, "shaft_angle"), step));

  drive.sensor = sensor_of(model::AbsoluteEncoder{12, std::numbers::pi});
  drive.sensor->power = model::Sensor::Power::with_drive;
  drive.sensor->turns = 4;  // so that whole turns pass
  rows = rows_of(scenario);
  CHECK_THAT(at(rows, 0.35, "reading"), WithinAbs(at(rows, 0.35, "shaft_angle"), step));
  const double off_by = at(rows, 0.79, "shaft_angle") - at(rows, 0.79, "reading"), whole = off_by / (kTurn / 4);
  CHECK(std::round(whole) >= 1);
  CHECK_THAT(whole, WithinAbs(std::round(whole), 1e-2));
}

TEST_CASE("sensing: the current is read through its low-pass, gain and offset") {
  auto scenario = finger();
  scenario.timeline = {{0.0, 0, model::CommandVoltage{2}}};
  auto& sense = scenario.model.drives[0].current_sense.emplace();
  sense.low = -1;
  sense.high = 1;
  sense.bits = 16;
  sense.gain_error = 0.05;
  sense.offset = 0.01;
  sense.period = 2e-3;
  const Rows rows = rows_of(scenario);
  const double reading = rows.first.at("/drives/flexor/current_sense/reading").back(),
               current = rows.first.at("/drives/flexor/current_sense/current_then").back();
  CHECK(current > 1e-3);
  CHECK_THAT(reading, WithinAbs(1.05 * current + 0.01, 2.0 / 65536));
}

TEST_CASE("sensing: free closing of two sprung joints with constant arms is a straight line", "[analytic]") {
  const simulation::System system(finger());
  const simulation::FreeClosing closing(system, 0, false);
  CHECK(closing.imbalance() < 1e-7);
  // Least ½ Σ k q² with Σ r q = x, by Lagrange: q_i = x (r_i/k_i) / Σ r²/k.
  const double sum = kArm[0] * kArm[0] / kSpring[0] + kArm[1] * kArm[1] / kSpring[1];
  for (const double drawn : {0.0, 0.2e-3, 2e-3, 6e-3, 9e-3}) {
    CAPTURE(drawn);
    for (std::size_t i = 0; i < 2; ++i) CHECK_THAT(closing.angle(drawn, i), WithinAbs(drawn * kArm[i] / kSpring[i] / sum, 1e-6));
  }
  const double q1 = closing.angle(6e-3, 0), q2 = closing.angle(6e-3, 1);
  const auto tip = simulation::tip_place(system, 0);  // no shapes: the anchor
  const Vector3d at(kLength[0] * std::cos(q1) + tip.at.x() * std::cos(q1 + q2) + tip.at.y() * std::sin(q1 + q2),
                    -kLength[0] * std::sin(q1) - tip.at.x() * std::sin(q1 + q2) + tip.at.y() * std::cos(q1 + q2), 0);
  CHECK((closing.tip(6e-3) - at).norm() < 1e-5);  // straight lines between the points of the table
  CHECK((closing.tip(-1) - closing.tip(0)).norm() == 0);
}

TEST_CASE("sensing: free closing stops at the stops, one joint after the other", "[analytic]") {
  auto scenario = finger();
  for (std::size_t i = 1; i <= 2; ++i) scenario.model.bodies[i].hinge->stops = model::EndStops{0, 0.5, 10, 0};
  const simulation::System system(scenario);
  const simulation::FreeClosing closing(system, 0, false);
  // The first joint to its stop has the larger r/k: x = 0.5 Σ(r²/k) / (r/k).
  const double sum = kArm[0] * kArm[0] / kSpring[0] + kArm[1] * kArm[1] / kSpring[1];
  const double corner = 0.5 * sum / (kArm[0] / kSpring[0]);
  CHECK_THAT(closing.end(), WithinAbs(0.5 * (kArm[0] + kArm[1]), 1e-8));
  const double beyond = 0.5 * (corner + closing.end());
  CHECK_THAT(closing.angle(beyond, 0), WithinAbs(0.5, 1e-9));
  CHECK_THAT(closing.angle(beyond, 1), WithinAbs((beyond - 0.5 * kArm[0]) / kArm[1], 1e-5));
}

TEST_CASE("sensing: with weight the joints of a free closing share the cord's pull as their moments say", "[analytic]") {
  auto scenario = finger();
  scenario.gravity = {0, -9.81, 0};
  const simulation::System system(scenario);
  const simulation::FreeClosing closing(system, 0, true);
  CHECK(closing.imbalance() < 1e-7);
  double least = 1e9, most = 0;
  long looked = 0;
  for (const double drawn : closing.drawn()) {
    const double q1 = closing.angle(drawn, 0), q2 = closing.angle(drawn, 1);
    if (drawn < 2e-3 || q1 > 1.2) continue;  // the weight alone draws the first part, later the cord leaves its guides
    // k q = weight + r T at both joints, with the same T.
    const double half = 0.5 * kLength[1] * std::cos(q1 + q2), mg = 0.01 * 9.81;
    const double first = (kSpring[0] * q1 - mg * (1.5 * kLength[0] * std::cos(q1) + half)) / kArm[0];
    const double second = (kSpring[1] * q2 - mg * half) / kArm[1];
    CHECK_THAT(first, WithinAbs(second, 1e-4));
    least = std::min(least, first);
    most = std::max(most, first);
    ++looked;
  }
  CHECK(looked > 20);
  CHECK(least > 0);
  CHECK(most > 2);
}

TEST_CASE("sensing: the parts of the tip's error add up to the whole") {
  auto scenario = finger();
  scenario.gravity = {0, -9.81, 0};
  auto sensor = sensor_of(pot());
  sensor.fit.backlash = 0.03;
  scenario.model.drives[0].sensor = sensor;
  scenario.model.lines = {parts::stiff_line(300, 1e-3)};
  scenario.model.bodies[1].hinge->washers = parts::washers_for(3e-3);
  const simulation::System system(scenario);
  parts::Walk walk(scenario);
  simulation::SensorWatch watch(system);
  simulation::Stage first(system);
  first.look(walk.state);
  watch.begin(first, walk.state);
  walk.voltage(2);
  double worst = 0, largest = 0;
  const simulation::FreeClosing closing(system, 0, false);
  walk.to(0.3, [&] {
    watch.look(walk.stepper.stage(), walk.state, {false});
    const auto& tip = watch.tip(0)->now();
    double way = 0, sum = 0;
    for (double l : walk.stepper.stage().path[0].length) way += l;
    for (double part : tip.along) sum += part;
    const Vector3d direction = closing.tip_slope(closing.start_way() - way).normalized();
    worst = std::max(worst, std::abs(sum - (tip.told - tip.truth).dot(direction)));
    largest = std::max(largest, (tip.told - tip.truth).norm());
  });
  CHECK(largest > 1e-3);
  CHECK(worst < 1e-15);
  for (std::size_t i = 0; i < simulation::tip_cause_count; ++i) {
    CAPTURE(simulation::tip_cause_names[i]);
    const bool none = static_cast<TipCause>(i) == TipCause::track;  // a straight track
    CHECK((watch.tip(0)->part(static_cast<TipCause>(i)).worst > 1e-9) == !none);
  }
}

TEST_CASE("sensing: a perfect sensor on a slow stiff finger without friction tells the tip where it is") {
  auto scenario = finger();
  scenario.model.lines = {parts::stiff_line(1e6, 1e-3)};
  scenario.timeline = {{0.0, 0, model::CommandVoltage{1.5, 2}}};
  scenario.duration = 2;
  auto p = pot();
  p.bits = 24;
  p.noise.rms = 0;
  scenario.model.drives[0].sensor = sensor_of(p, 1e-5);
  const auto error = [](const model::Scenario& s) { return number(rows_of(s), "tip_error.flexor"); };
  const double exact = error(scenario);
  const double travel = number(rows_of(scenario), "shaft_angle.flexor");
  CHECK(travel > 0.5);
  CHECK(exact < 2e-4);
  // Each cause on its own shows, and under its own name.
  auto soft = scenario;
  soft.model.lines = {parts::stiff_line(100, 1e-3)};
  const Rows stretched = rows_of(soft);
  CHECK(number(stretched, "tip_error.flexor.stretch") > 10 * exact);
  CHECK(number(stretched, "tip_error.flexor.stretch") > 0.8 * number(stretched, "tip_error.flexor"));
  auto rubbing = scenario;
  rubbing.model.bodies[1].hinge->washers = parts::washers_for(8e-3);
  const Rows rubbed = rows_of(rubbing);
  CHECK(number(rubbed, "tip_error.flexor.friction") > 10 * exact);
  CHECK(number(rubbed, "tip_error.flexor.friction") > 0.8 * number(rubbed, "tip_error.flexor"));
}

TEST_CASE("sensing: the tip's error does not depend on where the steps end") {
  // A sample that is seldom taken of a finger that closes fast: nearly all of the error is the sample's age.
  auto scenario = finger();
  scenario.duration = 0.3;
  scenario.timeline = {{0.0, 0, model::CommandVoltage{4, 0}}};
  auto p = pot();
  p.noise.rms = 0;
  scenario.model.drives[0].sensor = sensor_of(p, 4e-3);
  const Rows coarse = rows_of(scenario);
  scenario.solver.max_step = 3e-4;
  const Rows fine = rows_of(scenario);
  CHECK(fine.result.counters.steps > 2 * coarse.result.counters.steps);
  for (const char* key : {"tip_error.flexor.age", "tip_error_rms.flexor.age", "tip_error.flexor"}) {
    CAPTURE(key);
    CHECK(number(fine, key) > 1e-4);
    CHECK_THAT(number(coarse, key), WithinRel(number(fine, key), 5e-3));
  }
}

TEST_CASE("sensing: the smallest motion is the step times the tip's travel for a shaft angle") {
  auto scenario = finger();
  auto p = pot();
  p.noise.rms = 0;
  auto sensor = sensor_of(p);
  sensor.fit.backlash = 0.02;
  scenario.model.drives[0].sensor = sensor;
  // One joint: the tip goes (distance from the pin) × (pulley radius / arm) for each radian of shaft.
  scenario.model.bodies.resize(2);
  scenario.model.bodies[1].hinge->stops = model::EndStops{0, 1.2, 10, 0};  // the arm is constant as far as the cord lies on its guide
  scenario.model.cords[0].path = parts::constant_arm_path({kArm[0]}, {kLength[0]});
  const simulation::System system(scenario);
  const simulation::TipEstimate tip(system, 0);
  const double reach = simulation::tip_place(system, 0).at.norm();
  const double travel = reach * 5e-3 / kArm[0], step = 3 * kTurn / 4096;
  CHECK_THAT(tip.steps().largest, WithinRel(travel * step, 1e-3));
  CHECK_THAT(tip.steps().smallest, WithinRel(travel * step, 1e-3));
  CHECK_THAT(tip.steps().largest_reversed, WithinRel(travel * (step + 0.02), 1e-3));
}

TEST_CASE("sensing: the turn that is lost after a reversal is the cord's stretch by twice the friction", "[analytic]") {
  auto scenario = finger();
  constexpr double friction = 5e-3, stiffness = 400;
  scenario.model.bodies.resize(2);
  scenario.model.bodies[1].hinge->washers = parts::washers_for(friction);
  scenario.model.bodies[1].hinge->stops = model::EndStops{0, 1.2, 10, 0};
  scenario.model.cords[0].path = parts::constant_arm_path({kArm[0]}, {kLength[0]});
  scenario.model.lines = {parts::stiff_line(stiffness, 1e-3)};
  // A motor that turns slowly, so that nothing swings.
  scenario.timeline = {{0.0, 0, model::CommandVoltage{0.3, 0.5}}, {3.0, 0, model::CommandVoltage{-0.2, 0.5}}};
  scenario.duration = 5;
  auto p = pot();
  p.noise.rms = 0;
  p.bits = 20;
  scenario.model.drives[0].sensor = sensor_of(p);
  const Rows rows = rows_of(scenario);
  const simulation::System system(scenario);
  const simulation::FreeClosing closing(system, 0, false);
  const double most = *std::max_element(rows.first.at("/joints/proximal/angle").begin(), rows.first.at("/joints/proximal/angle").end());
  CHECK(most > 0.2);
  // The cord between pulley and anchor at the reversal.
  const double length = closing.start_way() - kArm[0] * most;
  const double lost = 2 * friction / kArm[0] * length / stiffness / kPulleyRadius + 3 * kTurn / (1 << 20);
  CAPTURE(most, length);
  CHECK_THAT(number(rows, "lost_turn.flexor"), WithinRel(lost, 0.03));
}

TEST_CASE("sensing: a look allocates nothing") {
  if (!HeapWatch::works()) return;
  auto scenario = finger();
  scenario.model.drives[0].sensor = sensor_of(pot(), 1e-4);
  scenario.model.drives[0].current_sense.emplace().high = 1;
  const simulation::System system(scenario);
  parts::Walk walk(scenario);
  simulation::SensorWatch watch(system);
  simulation::Stage first(system);
  first.look(walk.state);
  watch.begin(first, walk.state);
  walk.voltage(2);
  const std::vector<bool> off = {false};
  std::size_t requests = 0;
  walk.to(0.2, [&] {
    const HeapWatch heap;
    watch.look(walk.stepper.stage(), walk.state, off);
    requests += heap.requests();
  });
  CHECK(watch.sensing().angles()[0].time > 0.19);
  CHECK(requests == 0);
}
