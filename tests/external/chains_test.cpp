// Planar chains against states integrated elsewhere with 30 digits: a Lagrangian form by extrapolation,
// confirmed by a separate Newton–Euler model with constraint multipliers. The equations are those of any
// mechanics textbook; the numbers were computed for this project and are not published.

#include <cmath>
#include <numbers>

#include "../simulation/parts.h"
#include "check.h"

namespace {

using namespace sinewright;
using std::numbers::pi;

constexpr double degree = pi / 180;
const char* const kSource =
    "own integration with 30 digits (extrapolation; checked by Newton–Euler with multipliers)";

struct ChainLink {
  double mass, length;
  bool point = false;             // mass at its end, else spread as a thin rod
  double spring = 0, damper = 0;  // of its joint
};

// Angles are absolute, from straight down, counter-clockwise; a hinge's q is the clockwise turn against its
// parent, and at q = 0 the first link points along x.
model::Scenario chain(const std::vector<ChainLink>& links, const std::vector<double>& start,
                      double tolerance) {
  model::Scenario scenario;
  scenario.gravity = {0, -9.81, 0};
  scenario.model.bodies = {parts::fixed_body("ground")};
  scenario.solver.tolerance = tolerance;
  scenario.solver.max_step = 0.02;
  for (std::size_t i = 0; i < links.size(); ++i) {
    const ChainLink& link = links[i];
    const std::string name = "link " + std::to_string(i + 1);
    const model::Vector3d at = i == 0 ? model::Vector3d(0, 0, 0) : model::Vector3d(links[i - 1].length, 0, 0);
    auto body = link.point ? parts::phalanx(name, static_cast<int>(i), at, link.mass, link.length, 0)
                           : parts::rod(name, static_cast<int>(i), at, link.mass, link.length);
    body.hinge->spring_stiffness = link.spring;
    // The springs are relaxed when the chain hangs straight down.
    body.hinge->spring_rest = i == 0 ? pi / 2 : 0;
    body.hinge->viscous = link.damper;
    scenario.model.bodies.push_back(body);
    const double q = i == 0 ? pi / 2 - start[0] : start[i - 1] - start[i];
    scenario.start_angles.emplace_back(static_cast<int>(i) + 1, q);
  }
  return scenario;
}

std::vector<double> absolute_angles(const parts::Walk& walk) {
  std::vector<double> theta;
  double sum = 0;
  for (std::size_t i = 0; i < walk.system.hinges.size(); ++i)
    theta.push_back(pi / 2 - (sum += walk.angle(i)));
  return theta;
}
std::vector<double> absolute_rates(const parts::Walk& walk) {
  std::vector<double> omega;
  double sum = 0;
  for (std::size_t i = 0; i < walk.system.hinges.size(); ++i) omega.push_back(-(sum += walk.rate(i)));
  return omega;
}

struct Reference {
  double time;
  std::vector<double> theta, omega;
};

double turned(double a, double b) {
  return std::remainder(a - b, 2 * pi);
}

// @param closeness  of angles [rad]; of rates times `rate_scale`.
void compare(const std::string& name, parts::Walk& walk, const Reference& reference, double closeness,
             double rate_scale) {
  walk.to(reference.time);
  const auto theta = absolute_angles(walk);
  const auto omega = absolute_rates(walk);
  for (std::size_t i = 0; i < theta.size(); ++i) {
    const std::string which =
        name + ", link " + std::to_string(i + 1) + ", t = " + std::to_string(reference.time) + " s";
    external::check_absolute("angle: " + which, "rad",
                             reference.theta[i] + turned(theta[i], reference.theta[i]), reference.theta[i],
                             {kSource, closeness});
    external::check_absolute("rate: " + which, "rad/s", omega[i], reference.omega[i],
                             {kSource, closeness * rate_scale});
  }
}

const std::vector<ChainLink> kFinger = {
    {0.020, 0.045, false, 0.02, 1e-4}, {0.010, 0.025, false, 0.01, 5e-5}, {0.006, 0.018, false, 0.005, 2e-5}};
const std::vector<ChainLink> kLooseFinger = {{0.020, 0.045}, {0.010, 0.025}, {0.006, 0.018}};

std::vector<Reference> sprung_finger() {
  return {{0.05,
           {0.6728111660486, 1.487505536979, 1.907210927312},
           {-19.41170208076, -36.08416245234, -49.70135141135}},
          {0.1,
           {-0.3063968562216, -0.5255742109945, -0.6789677821178},
           {-33.13085013993, -10.55789831662, 13.85097940316}},
          {0.2,
           {-0.9117510390276, -1.668950406731, -1.981026788114},
           {7.433260790755, 27.93100106601, 38.44466570439}},
          {0.5,
           {-0.9159972789797, -1.478982942741, -1.701893098609},
           {-1.852529683819, -7.600646529154, -10.32691724024}},
          {1,
           {0.6890875414871, 1.105980829323, 1.275031359598},
           {2.093198814955, 6.160376783087, 8.166288412005}},
          {2,
           {0.4206246486297, 0.6737593585578, 0.7776052250454},
           {0.2929040855077, 1.108051083013, 1.559567565742}}};
}

TEST_CASE("chains: double pendulum of point masses") {
  parts::Walk walk(chain({{1, 1, true}, {1, 1, true}}, {pi / 2, pi / 2}, 1e-7));
  compare("point masses", walk, {1, {-0.6250876998064, -1.034585085680}, {-3.922279572888, -1.303099248696}},
          1e-4, 10);
  compare("point masses", walk, {2, {-0.4829715342518, -1.324048712302}, {3.065288192073, 2.949271547572}},
          1e-4, 10);
  CHECK(std::abs(walk.residual()) < 1e-5 * 9.81);
}

TEST_CASE("chains: double pendulums of uniform rods") {
  parts::Walk equal(chain({{1, 1}, {1, 1}}, {pi / 2, pi / 2}, 1e-7));
  compare("two rods", equal, {1, {-1.207716238191, -0.8143910230913}, {-3.406517532972, -0.5160454721052}},
          1e-4, 10);
  compare("two rods", equal, {2, {-0.08275830682057, 0.4073620749119}, {-0.9611454445460, 11.89895505305}},
          1e-4, 20);
  parts::Walk unequal(chain({{1, 1}, {0.5, 0.8}}, {60 * degree, 30 * degree}, 1e-7));
  compare("two unequal rods", unequal,
          {1, {-0.6657407508518, -1.861832415239}, {-0.9916605364649, -1.067652881132}}, 1e-4, 10);
  compare("two unequal rods", unequal,
          {2, {0.7611863370861, 0.4709595366125}, {2.171525678934, 0.6273950376774}}, 1e-4, 10);
}

TEST_CASE("chains: triple pendulums of uniform rods") {
  const std::vector<ChainLink> rods{{1, 1}, {1, 1}, {1, 1}};
  parts::Walk level(chain(rods, {pi / 2, pi / 2, pi / 2}, 1e-7));
  compare("three rods", level,
          {1,
           {-0.2353469022739, -0.7771528564705, -0.9093720655987},
           {-3.520397963650, -3.242448223850, -0.3984466188341}},
          1e-4, 10);
  compare("three rods", level,
          {2,
           {-0.5184985370790, -1.473958713002, -2.669346016374},
           {1.227955904537, 4.165774105520, -3.569498059943}},
          1e-4, 10);
  parts::Walk fanned(chain(rods, {45 * degree, 30 * degree, 0}, 1e-7));
  compare("three rods, fanned", fanned,
          {1,
           {-0.2569082670911, -0.2477448907210, -0.7688016544576},
           {1.090717152027, -2.266129865989, -4.378809931249}},
          1e-4, 10);
  compare("three rods, fanned", fanned,
          {2,
           {-0.2838473972504, -0.4609165583573, 0.4534003876334},
           {0.8504481195527, 1.364634259452, 2.150430918193}},
          1e-4, 10);
}

TEST_CASE("chains: a finger-size chain with joint springs and dampers") {
  parts::Walk walk(chain(kFinger, {pi / 2, pi / 2, pi / 2}, 1e-7));
  simulation::Stage start(walk.system);
  start.look(walk.state);
  external::check_relative("energy at the start", "J", start.stored_energy(), 0.0246740110027234,
                           {"spring energy k θ²/2", 1e-12});
  for (const Reference& row : sprung_finger()) compare("sprung finger", walk, row, 1e-4, 100);
  // The dampers' losses close the balance.
  CHECK(std::abs(walk.residual()) < 1e-5 * 0.0247);
}

TEST_CASE("chains: the finger-size chain without springs, which is chaotic") {
  parts::Walk walk(chain(kLooseFinger, {pi / 2, pi / 2, pi / 2}, 1e-8));
  compare("loose finger", walk,
          {0.1,
           {0.5260147127089, 0.9492000084488, 1.816862624006},
           {-12.75405051883, -29.76632276566, -18.86347514574}},
          1e-4, 100);
  compare("loose finger", walk,
          {0.2,
           {-1.023639109657, -0.9536824571919, -1.301242028871},
           {-20.24713485957, 9.287534486809, -8.736889331697}},
          1e-4, 100);
}

TEST_CASE("chains: the stepper converges with second order") {
  // Root mean square of all angle errors at the six reference times, over the number of steps, both through
  // the tolerance.
  const auto run = [&](double tolerance) {
    parts::Walk walk(chain(kFinger, {pi / 2, pi / 2, pi / 2}, tolerance));
    double squares = 0;
    for (const Reference& row : sprung_finger()) {
      walk.to(row.time);
      const auto theta = absolute_angles(walk);
      for (std::size_t i = 0; i < theta.size(); ++i) squares += std::pow(theta[i] - row.theta[i], 2);
    }
    const auto& counters = walk.stepper.counters();
    CHECK(static_cast<double>(counters.second_order) > 0.99 * static_cast<double>(counters.steps));
    return std::pair{static_cast<double>(counters.steps), std::sqrt(squares / 18)};
  };
  const auto [steps_coarse, coarse] = run(1e-4);
  const auto [steps_middle, middle] = run(1e-5);
  const auto [steps_fine, fine] = run(1e-6);
  const double first = std::log(coarse / middle) / std::log(steps_middle / steps_coarse);
  const double second = std::log(middle / fine) / std::log(steps_fine / steps_middle);
  CAPTURE(steps_coarse, coarse, steps_middle, middle, steps_fine, fine);
  const external::Outside source{"R. Alexander, SIAM J. Numer. Anal. 14 (1977) 1006 (from memory)", 0.2};
  external::check_absolute("order of convergence, coarse to middle", "1", first, 2, source);
  external::check_absolute("order of convergence, middle to fine", "1", second, 2, source);
}

}  // namespace
