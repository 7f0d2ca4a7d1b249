// Pendulum periods by the complete elliptic integral, and the states of benchmark A01.

#include <cmath>
#include <numbers>

#include "../simulation/parts.h"
#include "check.h"

namespace {

using namespace sinewright;
using external::check_absolute;
using external::check_relative;
using std::numbers::pi;

constexpr double g = 9.81;
constexpr double degree = pi / 180;

// A point mass on a massless link, `from_below` away from hanging straight down. A hinge at q points along
// (cos q, −sin q), so q = 90 deg − angle.
model::Scenario pendulum(double length, double from_below, double tolerance) {
  model::Scenario scenario;
  scenario.gravity = {0, -g, 0};
  scenario.model.bodies = {parts::fixed_body("ground"), parts::phalanx("bob", 0, {0, 0, 0}, 1.0, length, 0)};
  scenario.start_angles = {{1, pi / 2 - from_below}};
  scenario.solver.tolerance = tolerance;
  scenario.duration = 10;
  return scenario;
}

// Time of the first passage through the lowest point: a quarter of the period.
double quarter(double length, double from_below, double tolerance) {
  parts::Walk walk(pendulum(length, from_below, tolerance));
  double before = walk.angle(0), time_before = 0, found = 0;
  const double limit = 10 * std::sqrt(length / g);
  while (found == 0 && walk.state.time < limit) {
    walk.to(walk.state.time + 1e-9 + limit / 20, [&] {
      const double now = walk.angle(0);
      if (found == 0 && now >= pi / 2)
        found = time_before + (walk.state.time - time_before) * (pi / 2 - before) / (now - before);
      before = now;
      time_before = walk.state.time;
    });
  }
  return found;
}

TEST_CASE("pendulum: the period grows with the amplitude by the complete elliptic integral") {
  // T / T0 = (2/π) K(sin(A/2)); formula from mechanics textbooks (from memory), numbers computed to 15
  // digits.
  const std::pair<double, double> rows[] = {
      {5, 1.00047617248599},   {10, 1.00190718814322}, {30, 1.01740879759596},  {45, 1.0399733431968},
      {60, 1.07318200714936},  {90, 1.1803405990161},  {120, 1.37288050061835}, {150, 1.76220372950376},
      {170, 2.43936271967388}, {179, 3.90106516038909}};
  for (const auto& [amplitude, ratio] : rows) {
    const double small = 2 * pi * std::sqrt(1.0 / g);
    const double ours = 4 * quarter(1.0, amplitude * degree, 1e-7) / small;
    // The agreement is the tolerance's own error; near the upright position it grows with the exponential
    // instability.
    check_relative(
        "period / small-swing period, from " + std::to_string(static_cast<int>(amplitude)) + " deg", "1",
        ours, ratio,
        {"complete elliptic integral, pendulum chapter of mechanics textbooks (from memory)", 1e-5});
  }
}

TEST_CASE("pendulum: the published period of a half-metre pendulum swinging 90 deg") {
  const double period = 4 * quarter(0.5, 90 * degree, 1e-7);
  check_relative("period", "s", period, 1.6744,
                 {"Code_Aster validation manual V5.02.100, after Haag 1952 (truncated series)", 1e-4});
  check_relative("period", "s", period, 1.67431709791, {"complete elliptic integral (from memory)", 1e-5});
}

TEST_CASE("pendulum: benchmark A01 passes through the states given by Jacobi functions") {
  parts::Walk walk(pendulum(1.0, pi / 2, 1e-7));
  const struct {
    double time, x, y;
  } rows[] = {{0.25, 0.953664612211401, -0.300871745791588},
              {0.5, 0.391048791550546, -0.920369948785192},
              {1, -0.986291751131875, -0.165010853125541},
              {2, 0.793566195343322, -0.608483930443792},
              {10, 0.275087462576117, -0.961419205099125}};
  double most_pull = 0, most_speed = 0;
  for (const auto& row : rows) {
    walk.to(row.time, [&] {
      most_pull = std::max(most_pull, walk.stepper.stage().hinge[0].radial_reaction);
      most_speed = std::max(most_speed, std::abs(walk.rate(0)));
    });
    const std::string at = " at t = " + std::to_string(row.time) + " s";
    const external::Outside source{
        "multibody benchmark problem A01 (IFToMM library), states by Jacobi elliptic functions", 1e-4};
    check_absolute("x" + at, "m", std::cos(walk.angle(0)), row.x, source);
    check_absolute("y" + at, "m", -std::sin(walk.angle(0)), row.y, source);
  }
  check_relative("speed at the bottom", "m/s", most_speed, 4.42944691807002, {"energy: sqrt(2 g l)", 1e-5});
  check_relative("pull at the bottom", "N", most_pull, 29.43, {"Newton's second law: 3 m g", 1e-4});
  CHECK(std::abs(walk.residual()) < 1e-5 * g);
}

}  // namespace
