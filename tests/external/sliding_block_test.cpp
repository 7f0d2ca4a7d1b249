// Coulomb's block, as its rotational likeness: a flywheel of 1 kg m² whose washers rub with a constant
// torque. Metres, newtons and kilograms become radians, newton metres and kilogram square metres; the closed
// forms stay.

#include <cmath>
#include <numbers>

#include "../simulation/parts.h"
#include "check.h"

namespace {

using namespace sinewright;
using external::check_relative;
using std::numbers::pi;

constexpr double g = 9.81;
const char* const kSource = "motion at constant deceleration, dynamics textbooks (from memory)";

model::Scenario flywheel(double friction, double spring = 0) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto body = parts::phalanx("wheel", 0, {0, 0, 0}, 1.0, 0, 1.0);
  body.hinge->washers = parts::washers_for(friction);
  body.hinge->spring_stiffness = spring;
  scenario.model.bodies = {parts::fixed_body("ground"), body};
  scenario.solver.tolerance = 1e-6;
  return scenario;
}

void spin(parts::Walk& walk, double rate) {
  walk.state.v[0] = rate;
  walk.state.mode[0] = solver::Mode::slides_plus;
  walk.begin();
}

TEST_CASE("sliding block: stops after v0/(mu g) and v0²/(2 mu g), and then stands") {
  const struct {
    double v0, mu, time, way;
  } rows[] = {{2, 0.3, 0.67957866123004, 0.67957866123004},
              {1, 0.15, 0.67957866123004, 0.33978933061502},
              {0.5, 0.2, 0.25484199796126, 0.063710499490316}};
  for (const auto& row : rows) {
    parts::Walk walk(flywheel(row.mu * g));
    spin(walk, row.v0);
    double stopped = 0, last_rate = row.v0, last_time = 0;
    walk.to(1.0, [&] {
      if (stopped == 0 && walk.rate(0) == 0) stopped = last_time + last_rate / (row.mu * g);
      last_rate = walk.rate(0);
      last_time = walk.state.time;
    });
    check_relative("time to stop", "s", stopped, row.time, {kSource, 1e-6});
    check_relative("way to stop", "m", walk.angle(0), row.way, {kSource, 1e-5});
    const double stands = walk.angle(0);
    walk.to(10.0);
    CHECK(walk.angle(0) == stands);
    check_relative("energy rubbed away", "J", walk.account(simulation::Account::hinge_friction),
                   row.v0 * row.v0 / 2, {"conservation of energy", 1e-5});
  }
}

TEST_CASE("sliding block: shot up an incline it turns, slides back and returns slower") {
  // 20 deg, mu = 0.3: friction mu g cos, weight along the slope g sin.
  const double slope = 20 * pi / 180;
  model::Scenario scenario = flywheel(0.3 * g * std::cos(slope));
  model::Load weight;
  weight.name = "weight";
  weight.body = "wheel";
  weight.body_index = 1;
  weight.at = {1, 0, 0};
  weight.direction = {0, 1, 0};
  weight.follows_body = true;
  weight.force = {{0}, {g * std::sin(slope)}};
  scenario.loads = {weight};
  parts::Walk walk(scenario);
  spin(walk, 2);
  double top = 0, top_time = 0, returned = 0, speed = 0, before = 0, time_before = 0;
  walk.to(2.0, [&] {
    if (walk.angle(0) > top) {
      top = walk.angle(0);
      top_time = walk.state.time;
    }
    if (returned == 0 && walk.angle(0) <= 0) {
      const double share = before / (before - walk.angle(0));
      returned = time_before + share * (walk.state.time - time_before);
      // Uniformly accelerated: speed at the crossing from the one now.
      speed = -walk.rate(0) - 0.58970222305188 * (walk.state.time - returned);
    }
    before = walk.angle(0);
    time_before = walk.state.time;
  });
  check_relative("highest point", "m", top, 0.32675824996697, {kSource, 1e-5});
  check_relative("time at the highest point", "s", top_time, 0.32675824996697, {kSource, 1e-2});
  check_relative("time from the highest point to the return", "s", returned - 0.32675824996697,
                 1.0527176296906, {kSource, 1e-4});
  check_relative("speed of return", "m/s", speed, 0.62078992647443, {kSource, 1e-4});
}

TEST_CASE("sliding block: a mass on a spring loses 2F/k a half swing and stops for good off centre") {
  model::Scenario scenario = flywheel(0.981, 100);
  scenario.start_angles = {{1, 0.1}};
  parts::Walk walk(scenario);
  const char* source =
      "loss of 2F/k a half swing (same type of problem: Code_Aster validation manual V5.01.100); numbers "
      "computed";
  std::vector<double> turning;
  std::vector<double> times;
  double rate_before = 0;
  walk.to(3.0, [&] {
    const double rate = walk.rate(0);
    if (rate_before != 0 && rate * rate_before <= 0) {
      turning.push_back(walk.angle(0));
      times.push_back(walk.state.time);
    }
    rate_before = rate != 0 ? rate : 0;
    if (rate == 0 && walk.state.mode[0] != solver::Mode::sticks) rate_before = 0;
  });
  const double expected[] = {-0.08038, 0.06076, -0.04114, 0.02152, -0.0019};
  REQUIRE(turning.size() == 5);
  for (std::size_t i = 0; i < 5; ++i) {
    external::check_absolute("turning point " + std::to_string(i + 1), "m", turning[i], expected[i],
                             {source, 1e-5});
    check_relative("time of turning point " + std::to_string(i + 1), "s", times[i],
                   static_cast<double>(i + 1) * pi / 10, {source, 5e-3});
  }
  // |k x| = 0.19 N < F: it stays.
  const double stands = walk.angle(0);
  walk.to(100.0);
  CHECK(walk.angle(0) == stands);
}

}  // namespace
