#include "strength/hinge_play.h"

#include <cmath>
#include <vector>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinRel;

namespace {

HingePlay hinge(double reach) {
  return {.bore_clearance = 0.1e-3,
          .bore_length = 8e-3,
          .axial_clearance = 0.2e-3,
          .face_diameter = 5e-3,
          .reach = reach};
}

}  // namespace

TEST_CASE("hinge play: a tilted pin touches the bore's ends on opposite sides", "[analytic][hinge-play]") {
  // At the limit, the pin's centre line is off the bore's by half the clearance at each end.
  HingePlay h = hinge(0);
  h.face_diameter = 0;
  CHECK_THAT(std::tan(sideways_tilt(h)) * h.bore_length / 2,
             WithinRel(h.bore_clearance / 2, 1e-4));  // small angle
}

TEST_CASE("hinge play: the stop that comes first limits the tilt", "[hinge-play]") {
  HingePlay h = hinge(0);
  CHECK_THAT(sideways_tilt(h), WithinRel(0.1 / 8, 1e-14));  // bore: 12.5 mrad, faces: 40 mrad
  h.axial_clearance = 0.02e-3;
  CHECK_THAT(sideways_tilt(h), WithinRel(0.02 / 5, 1e-14));
  h.face_diameter = 0;
  CHECK_THAT(sideways_tilt(h), WithinRel(0.1 / 8, 1e-14));
}

TEST_CASE("hinge play: no clearance leaves no play", "[limits][hinge-play]") {
  const std::vector<HingePlay> hinges{{.bore_length = 8e-3, .face_diameter = 5e-3, .reach = 0.08}};
  CHECK(sideways_play(hinges).worst_case == 0);
  CHECK(flexion_play(hinges).worst_case == 0);
  CHECK(sideways_play({}).worst_case == 0);
}

TEST_CASE("hinge play: three hinges add up sideways by their reach", "[analytic][hinge-play]") {
  const std::vector<HingePlay> hinges{hinge(80e-3), hinge(40e-3), hinge(20e-3)};
  // 12.5 mrad · 80, 40, 20 mm and 0.1 mm each: 1.1, 0.6, 0.35 mm.
  CHECK_THAT(sideways_play(hinges).worst_case, WithinRel(2.05e-3, 1e-13));
  CHECK_THAT(sideways_play(hinges).root_sum_square, WithinRel(std::sqrt(1.21 + 0.36 + 0.1225) * 1e-3, 1e-13));
}

TEST_CASE("hinge play: in the plane of flexion each bore gives half its clearance",
          "[analytic][hinge-play]") {
  const std::vector<HingePlay> hinges{hinge(80e-3), hinge(40e-3), hinge(20e-3)};
  CHECK_THAT(flexion_play(hinges).worst_case, WithinRel(0.15e-3, 1e-13));
  CHECK_THAT(flexion_play(hinges).root_sum_square, WithinRel(std::sqrt(3.0) * 0.05e-3, 1e-13));
}

TEST_CASE("hinge play: with one hinge the sum and the root of squares agree", "[limits][hinge-play]") {
  const std::vector<HingePlay> one{hinge(80e-3)};
  CHECK_THAT(sideways_play(one).root_sum_square, WithinRel(sideways_play(one).worst_case, 1e-14));
}

TEST_CASE("hinge play: bad clearances and lengths are refused", "[errors][hinge-play]") {
  const auto refused = [](auto change) {
    std::vector<HingePlay> hinges{hinge(80e-3)};
    change(hinges[0]);
    CHECK_THROWS_AS(sideways_play(hinges), InvalidInput);
  };
  refused([](HingePlay& h) { h.bore_clearance = -1e-4; });
  refused([](HingePlay& h) { h.bore_length = 0; });
  refused([](HingePlay& h) { h.axial_clearance = std::nan(""); });
  refused([](HingePlay& h) { h.face_diameter = -1e-3; });
  refused([](HingePlay& h) { h.reach = -1e-3; });
  CHECK_THROWS_AS(flexion_play(std::vector<HingePlay>{{.bore_clearance = std::nan("")}}), InvalidInput);
}
