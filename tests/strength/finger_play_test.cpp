#include "strength/finger_play.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <vector>

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

model::Body phalanx(const char* body, const char* joint, int parent, double at, double clearance, double axial) {
  model::Body made;
  made.name = body;
  model::Hinge hinge;
  hinge.name = joint;
  hinge.parent = parent;
  hinge.at = {at, 0, 0};
  hinge.pin = model::Pin{2e-3, {0.2, 0.16}, 8e-3, clearance};
  model::Washers washers;
  washers.inner_diameter = 2.2e-3;
  washers.outer_diameter = 5e-3;
  washers.axial_clearance = axial;
  hinge.washers = washers;
  made.hinge = hinge;
  return made;
}

// Pins at 0, 45 and 70 mm, tip at 90 mm.
model::Model three_hinges() {
  model::Model m;
  model::Body knuckle;
  knuckle.name = "knuckle";
  knuckle.fixed = model::Fixed{};
  m.bodies = {knuckle, phalanx("proximal", "MCP", 0, 0, 0.10e-3, 0.2e-3),
              phalanx("middle", "PIP", 1, 45e-3, 0.06e-3, 0.1e-3),
              phalanx("distal", "DIP", 2, 25e-3, 0.04e-3, 0.02e-3)};
  m.bodies[3].solids.push_back({model::Capsule{{4e-3, 0, 0}, {13e-3, 0, 0}, 7e-3}, 1000});
  return m;
}

// A pin of exactly 2 mm in holes with the given limits [m].
model::Fit fit_with(double smallest_hole, double largest_hole) {
  model::Fit fit;
  fit.pin = model::SizeBetween{2e-3, 2e-3};
  fit.running_hole = model::SizeBetween{smallest_hole, largest_hole};
  return fit;
}

constexpr double digits = 1e-15;  // [m]: sums of micrometres and of some 0.1 m, rounded

}  // namespace

TEST_CASE("finger play: three hinges add up to what a hand calculation gives", "[analytic][finger-play]") {
  const auto tips = finger_play(three_hinges());
  REQUIRE(tips.size() == 1);
  const FingertipPlay& tip = tips[0];
  CHECK(tip.body == "distal");
  CHECK_THAT(tip.tip.value(), WithinAbs(20e-3, digits));
  REQUIRE(tip.hinges.size() == 3);
  CHECK(tip.hinges[0].hinge == "MCP");
  CHECK_THAT(tip.hinges[0].reach, WithinAbs(90e-3, digits));
  CHECK_THAT(tip.hinges[1].reach, WithinAbs(45e-3, digits));
  CHECK_THAT(tip.hinges[2].reach, WithinAbs(20e-3, digits));
  // MCP: bore 0.1/8 = 0.0125, faces 0.2/5 = 0.04: 90 × 0.0125 + 0.1   = 1.225 mm
  // PIP: bore 0.06/8 = 0.0075, faces 0.1/5 = 0.02: 45 × 0.0075 + 0.05 = 0.3875 mm
  // DIP: bore 0.04/8 = 0.005, faces 0.02/5 = 0.004: 20 × 0.004 + 0.01 = 0.09 mm
  CHECK_THAT(tip.hinges[0].sideways.value().loosest, WithinAbs(1.225e-3, digits));
  CHECK_THAT(tip.hinges[1].sideways.value().loosest, WithinAbs(0.3875e-3, digits));
  CHECK_THAT(tip.hinges[2].tilt.value().loosest, WithinAbs(0.004, 1e-14));
  CHECK_THAT(tip.hinges[2].sideways.value().loosest, WithinAbs(0.09e-3, digits));
  CHECK_THAT(tip.sideways.value().loosest.worst_case, WithinAbs(1.7025e-3, digits));
  CHECK_THAT(tip.sideways->loosest.root_sum_square,
             WithinAbs(1e-3 * std::sqrt(1.500625 + 0.15015625 + 0.0081), digits));
  // Flexion: half of 0.10, 0.06 and 0.04 mm.
  CHECK_THAT(tip.flexion.value().loosest.worst_case, WithinAbs(0.10e-3, digits));
  CHECK_THAT(tip.flexion->loosest.root_sum_square, WithinAbs(1e-3 * std::sqrt(0.0025 + 0.0009 + 0.0004), digits));
  // One clearance each: tightest and loosest are the same.
  CHECK(tip.sideways->tightest.worst_case == tip.sideways->loosest.worst_case);
  CHECK(tip.sideways->without.empty());
}

TEST_CASE("finger play: a described fit goes before the pin's radial clearance", "[finger-play]") {
  model::Model m = three_hinges();
  m.bodies[1].hinge->pin->fit = fit_with(2.02e-3, 2.06e-3);
  const FingertipPlay tip = finger_play(m).at(0);
  CHECK_THAT(tip.hinges[0].radial.value().tightest, WithinAbs(20e-6, digits));
  CHECK_THAT(tip.hinges[0].radial->loosest, WithinAbs(60e-6, digits));
  CHECK_THAT(tip.flexion.value().tightest.worst_case, WithinAbs(10e-6 + 30e-6 + 20e-6, digits));
  CHECK_THAT(tip.flexion->loosest.worst_case, WithinAbs(30e-6 + 30e-6 + 20e-6, digits));
  CHECK_THAT(tip.hinges[0].sideways.value().tightest, WithinAbs(90e-3 * 20e-6 / 8e-3 + 0.1e-3, digits));
}

TEST_CASE("finger play: a pin that binds has no negative play", "[finger-play]") {
  model::Model m = three_hinges();
  m.bodies[1].hinge->pin->fit = fit_with(1.99e-3, 2.01e-3);
  const HingeShare share = finger_play(m).at(0).hinges[0];
  CHECK(share.radial.value().tightest == 0);
  CHECK_THAT(share.radial->loosest, WithinAbs(10e-6, digits));
}

TEST_CASE("finger play: a pin loose in its outer lugs adds that clearance to the loosest", "[finger-play]") {
  model::Model m = three_hinges();
  m.materials.resize(1);
  m.materials[0].modulus = 1.7e9;
  model::Fit fit = fit_with(2.02e-3, 2.06e-3);
  fit.press = model::PressFit{};
  fit.press->hole = model::SizeBetween{1.99e-3, 2.005e-3};
  fit.press->length = 3e-3;
  fit.press->hub_diameter = 6e-3;
  fit.press->hub_material = fit.press->pin_material = 0;
  m.bodies[1].hinge->pin->fit = fit;
  const HingeShare share = finger_play(m).at(0).hinges[0];
  CHECK_THAT(share.radial.value().tightest, WithinAbs(20e-6, digits));
  CHECK_THAT(share.radial->loosest, WithinAbs(65e-6, digits));
}

TEST_CASE("finger play: a hinge without data is named, not taken for play-free", "[finger-play]") {
  model::Model m = three_hinges();
  const double all = finger_play(m).at(0).sideways.value().loosest.worst_case;
  m.bodies[2].hinge->pin->radial_clearance = 0;
  m.bodies[3].hinge->washers.reset();
  const FingertipPlay tip = finger_play(m).at(0);
  CHECK_FALSE(tip.hinges[1].radial);
  CHECK_FALSE(tip.hinges[1].flexion);
  CHECK(tip.hinges[1].missing == std::vector<std::string>{"pin.fit.running_hole or pin.radial_clearance"});
  CHECK(tip.hinges[2].flexion);
  CHECK_FALSE(tip.hinges[2].sideways);
  CHECK(tip.hinges[2].missing == std::vector<std::string>{"washers.axial_clearance"});
  CHECK(tip.sideways.value().without == std::vector<std::string>{"PIP", "DIP"});
  CHECK(tip.flexion.value().without == std::vector<std::string>{"PIP"});
  CHECK(tip.sideways->loosest.worst_case < all);

  for (model::Body& body : m.bodies)
    if (body.hinge) body.hinge->pin.reset();
  const FingertipPlay nothing = finger_play(m).at(0);
  CHECK_FALSE(nothing.sideways);
  CHECK_FALSE(nothing.flexion);
  CHECK(nothing.hinges.size() == 3);
}

TEST_CASE("finger play: without shapes and solids nothing says where the finger ends", "[finger-play]") {
  model::Model m = three_hinges();
  m.bodies[3].solids.clear();
  const FingertipPlay tip = finger_play(m).at(0);
  CHECK_FALSE(tip.tip);
  CHECK_FALSE(tip.sideways);
}

TEST_CASE("finger play: the tip is the far end of every kind of shape", "[finger-play]") {
  const double c = std::cos(0.5), s = std::sin(0.5);
  Eigen::Matrix3d turned;
  turned << c, -s, 0, s, c, 0, 0, 0, 1;
  const std::vector<std::pair<model::Shape, double>> ends = {
      {model::Sphere{{10e-3, 1e-3, 0}, 5e-3}, 15e-3},
      {model::Capsule{{12e-3, 0, 0}, {3e-3, 0, 0}, 4e-3}, 16e-3},
      {model::Cylinder{{10e-3, 0, 0}, {c, s, 0}, 2e-3, 6e-3}, 10e-3 + 3e-3 * c + 2e-3 * s},
      {model::Box{{10e-3, 0, 0}, {6e-3, 4e-3, 2e-3}, turned}, 10e-3 + 3e-3 * c + 2e-3 * s},
      {model::Hull{{{0, 0, 0}, {18e-3, 5e-3, 0}, {0, 1e-3, 0}, {0, 0, 1e-3}}}, 18e-3}};
  for (const auto& [shape, end] : ends) {
    model::Model m = three_hinges();
    m.bodies[3].solids = {{shape, 1000}};
    CHECK_THAT(finger_play(m).at(0).tip.value(), WithinAbs(end, digits));
  }
}

TEST_CASE("finger play: a turned seat and a side pin change the reach", "[finger-play]") {
  model::Model m = three_hinges();
  // The distal body stands at a right angle to the middle one: tip 20 mm aside of a pin 70 mm out.
  m.bodies[3].hinge->seat << 0, -1, 0, 1, 0, 0, 0, 0, 1;
  CHECK_THAT(finger_play(m).at(0).hinges[0].reach, WithinAbs(std::hypot(70e-3, 20e-3), digits));
  // A pin along x: only the 20 mm across it count.
  m.bodies[1].hinge->pin_axis = Eigen::Vector3d::UnitX();
  CHECK_THAT(finger_play(m).at(0).hinges[0].reach, WithinAbs(20e-3, digits));
}

TEST_CASE("finger play: each finger of a hand has a tip of its own", "[finger-play]") {
  model::Model m = three_hinges();
  m.bodies.push_back(phalanx("thumb", "IP", 0, 0, 0.1e-3, 0.2e-3));
  m.bodies.back().shapes.push_back({"pad", model::Sphere{{30e-3, 0, 0}, 5e-3}, 0});
  const auto tips = finger_play(m);
  REQUIRE(tips.size() == 2);
  CHECK(tips[1].body == "thumb");
  REQUIRE(tips[1].hinges.size() == 1);
  CHECK_THAT(tips[1].hinges[0].reach, WithinAbs(35e-3, digits));
}

TEST_CASE("finger play: the sums are those of the laws for hinges", "[finger-play]") {
  const std::vector<HingePlay> plays = {{0.10e-3, 8e-3, 0.2e-3, 5e-3, 90e-3},
                                        {0.06e-3, 8e-3, 0.1e-3, 5e-3, 45e-3},
                                        {0.04e-3, 8e-3, 0.02e-3, 5e-3, 20e-3}};
  const FingertipPlay tip = finger_play(three_hinges()).at(0);
  CHECK_THAT(tip.sideways.value().loosest.worst_case, WithinRel(sideways_play(plays).worst_case, 1e-13));
  CHECK_THAT(tip.sideways->loosest.root_sum_square, WithinRel(sideways_play(plays).root_sum_square, 1e-13));
  CHECK_THAT(tip.flexion.value().loosest.root_sum_square, WithinRel(flexion_play(plays).root_sum_square, 1e-13));
}
