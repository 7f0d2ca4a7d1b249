// A cord round several guides whose axes are not parallel: what friction takes is the capstan product over the true turning angles,
// summed along the space curve.

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "../simulation/parts.h"
#include "check.h"

namespace {

using namespace sinewright;
using external::check_absolute;
using external::check_relative;
using model::Vector3d;

const char* const kSource =
    "Euler-Eytelwein, formula in Singh, J. Elasticity 151 (2022) 321, eq. 1; angles summed over a fine polyline, apart from the engine's";
constexpr double kMu = 0.13;

const std::vector<model::Guide> kGuides = {
    {0, {0.000, 0.000, 0.000}, Vector3d(0, 0, 1), 6e-3, {0, 1, 0}, 1},
    {0, {0.030, -0.020, 0.004}, Vector3d(1, 0.3, 0.2).normalized(), 4e-3, {0, -1, 0}, 1},
    {0, {0.034, 0.004, 0.030}, Vector3d(0.2, 1, -0.4).normalized(), 5e-3, {0.3, 0, 1}, 1},
    {0, {0.070, 0.010, 0.012}, Vector3d(0.5, -0.2, 1).normalized(), 8e-3, {1, 0.4, 0}, 1}};
// Between two guides stands a point: three corners of their own.
const std::vector<Vector3d> kCorners = {{0.020, 0.002, 0.002}, {0.032, -0.012, 0.016}, {0.052, 0.010, 0.034}};

// A cord from a jaw that a load draws, over all guides and corners, to a jaw on a spring.
model::Scenario spatial(double load) {
  model::Scenario scenario;
  scenario.gravity.setZero();
  auto& m = scenario.model;
  m.bodies = {parts::fixed_body("frame"), parts::sliding("drawn", 0, {-0.040, -0.020, 0}, {-1, -0.5, 0}, 0.01),
              parts::sliding("sprung", 0, {0.075, -0.030, -0.010}, {-0.1, 1, 0.5}, 0.01)};
  m.bodies[1].slide->viscous = 5;
  m.bodies[2].slide->viscous = 5;
  m.bodies[2].slide->spring_stiffness = 300;
  m.lines = {parts::stiff_line(12000, 1e-3)};
  model::Cord cord;
  cord.name = "cord";
  cord.line = 0;
  cord.channel.kinetic = kMu;
  cord.path.emplace_back(model::Anchor{1, Vector3d::Zero()});
  for (std::size_t i = 0; i < kGuides.size(); ++i) {
    cord.path.emplace_back(kGuides[i]);
    if (i < kCorners.size()) cord.path.emplace_back(model::Bend{0, kCorners[i], 2e-3, 1});
  }
  cord.path.emplace_back(model::Anchor{2, Vector3d::Zero()});
  m.cords = {cord};
  model::Load pull;
  pull.name = "pull";
  pull.body = "drawn";
  pull.body_index = 1;
  pull.direction = Vector3d(-1, -0.5, 0).normalized();
  pull.force = {{0, 1}, {0, load}};
  scenario.loads = {pull};
  scenario.solver.tolerance = 1e-4;
  return scenario;
}

// The curve as a fine polyline: straight pieces, and on each guide the helix between the two points where the cord touches down and lifts off.
std::vector<Vector3d> curve(const std::vector<Vector3d>& vertices, int pieces) {
  std::vector<Vector3d> points = {vertices[0]};
  std::size_t k = 1;
  for (std::size_t i = 0; i < kGuides.size(); ++i) {
    const Vector3d axis = kGuides[i].axis, center = kGuides[i].at, from = vertices[k] - center, to = vertices[k + 1] - center;
    const Vector3d x = (from - axis * axis.dot(from)).normalized(), y = axis.cross(x);
    double angle = std::atan2(to.dot(y), to.dot(x));
    // Of the two ways round, the one that carries the arriving cord on.
    if (angle * (vertices[k] - points.back()).dot(y) < 0) angle += angle > 0 ? -2 * std::numbers::pi : 2 * std::numbers::pi;
    for (int n = 0; n <= pieces; ++n) {
      const double share = static_cast<double>(n) / pieces, a = share * angle;
      points.push_back(center + kGuides[i].radius * (std::cos(a) * x + std::sin(a) * y) +
                       axis * (axis.dot(from) + share * axis.dot(to - from)));
    }
    k += 2;
    points.push_back(vertices[k++]);
  }
  return points;
}

double turned(const std::vector<Vector3d>& points) {
  double sum = 0;
  Vector3d before = Vector3d::Zero();
  for (std::size_t i = 1; i < points.size(); ++i) {
    const Vector3d chord = points[i] - points[i - 1];
    if (before.norm() > 0) sum += std::atan2(before.cross(chord).norm(), before.dot(chord));
    before = chord;
  }
  return sum;
}

TEST_CASE("spatial guides: while the cord slides round guides in planes that are not parallel, its ends are as exp(mu times all turning)") {
  parts::Walk walk(spatial(12));
  int sliding = 0;
  double ratio = 0, angle = 0, net = 0;
  walk.to(1.2, [&] {
    const auto& chain = walk.stepper.stage().chain[0];
    for (friction::Slip slip : walk.state.cords[0].slip)
      if (slip != friction::Slip::toward_first) return;
    ++sliding;
    double turning = 0;
    for (double a : walk.stepper.stage().path[0].turning_angle) turning += a;
    ratio = chain.tension.front() / chain.tension.back();
    CHECK_THAT(ratio, Catch::Matchers::WithinRel(std::exp(kMu * turning), 1e-9));
    // A polyline of n pieces has an error in proportion to 1/n²: from two of them the limit.
    const auto& vertices = walk.stepper.stage().path[0].vertices;
    const double coarse = turned(curve(vertices, 1000)), fine = turned(curve(vertices, 2000));
    angle = fine + (fine - coarse) / 3;
    CHECK_THAT(turning, Catch::Matchers::WithinRel(angle, 1e-9));
    const Vector3d first = vertices[1] - vertices[0], last = vertices.back() - vertices[vertices.size() - 2];
    net = std::atan2(first.cross(last).norm(), first.dot(last));
  });
  CHECK(sliding > 20);
  check_relative("T_out / T_in over four guides and three corners, mu = 0.13", "1", ratio, std::exp(kMu * angle), {kSource, 1e-9});
  // Neither the net change of direction nor the angles about the axes would do.
  CHECK(angle > 2 * net);
  CHECK(std::abs(ratio / std::exp(kMu * net) - 1) > 0.2);
}

TEST_CASE("spatial guides: at rest the ends may be anywhere between, and paid out they are the other way round") {
  model::Scenario scenario = spatial(12);
  scenario.loads[0].force = {{0, 1, 2, 3, 6}, {0, 12, 11, 11, 0.5}};
  parts::Walk walk(scenario);
  double lowest = 1e9, resting = 0;
  int back = 0;
  walk.to(6, [&] {
    const auto& stage = walk.stepper.stage();
    const auto& chain = stage.chain[0];
    for (std::size_t k = 0; k + 1 < chain.tension.size(); ++k) {
      const double most = std::exp(kMu * stage.path[0].turning_angle[k]) * (1 + 1e-9);
      CHECK(chain.tension[k] <= chain.tension[k + 1] * most);
      CHECK(chain.tension[k + 1] <= chain.tension[k] * most);
    }
    const double ratio = chain.tension.front() / chain.tension.back();
    if (walk.state.time > 2 && walk.state.time < 3) resting = ratio;
    lowest = std::min(lowest, ratio);
    bool all = true;
    double turning = 0;
    for (friction::Slip slip : walk.state.cords[0].slip) all = all && slip == friction::Slip::toward_last;
    for (double a : stage.path[0].turning_angle) turning += a;
    if (all && chain.tension.front() > 0.1) {
      ++back;
      CHECK_THAT(1 / ratio, Catch::Matchers::WithinRel(std::exp(kMu * turning), 1e-9));
    }
  });
  CHECK(resting > 1);
  CHECK(lowest < 1);
  CHECK(back > 20);
}

}  // namespace
