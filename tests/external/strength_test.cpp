#include <array>
#include <string>
#include <utility>
#include <vector>

#include <catch2/catch.hpp>

#include "check.h"
#include "strength/cord_capacity.h"
#include "strength/knot_seat.h"
#include "strength/lug.h"
#include "strength/pin.h"

using namespace sinewright::strength;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {

std::string mm(double diameter) {
  std::string text = std::to_string(1e3 * diameter);
  return text.substr(0, text.find('.') + 2) + " mm";
}

double mean_shear(double diameter, double force) {
  return pin_mean_shear({.diameter = diameter}, force);
}

}  // namespace

TEST_CASE("pin: published double-shear strengths of hardened dowels mean one shear strength",
          "[external][pin]") {
  struct Row {
    double diameter, force, stress;  // [m, N, MPa]
  };
  for (const Row& row : std::vector<Row>{{3e-3, 14.8e3, 1047},
                                         {4e-3, 26.4e3, 1050},
                                         {5e-3, 41.2e3, 1049},
                                         {6e-3, 59.4e3, 1050},
                                         {8e-3, 105e3, 1044},
                                         {10e-3, 165e3, 1050}}) {
    // The stress is given in whole MPa: half of one is 5e-4.
    check_relative("mean shear at the published strength, dowel " + mm(row.diameter), "MPa",
                   1e-6 * mean_shear(row.diameter, row.force), row.stress,
                   {"ASME B18.8.5M, as on abcdocz.com 1381538", 5e-4});
  }
}

TEST_CASE("pin: published double-shear strengths of slotted spring pins go with the section",
          "[external][pin]") {
  // Referred to the full section, which a slotted tube only has a share of. That share is not quite constant
  // over the published sizes: they spread by 3.4 %.
  const std::vector<std::pair<double, double>> pins{{1.5e-3, 1.58e3}, {2e-3, 2.82e3},  {2.5e-3, 4.38e3},
                                                    {3e-3, 6.32e3},   {4e-3, 11.24e3}, {5e-3, 17.54e3},
                                                    {6e-3, 26.04e3}};
  const double of_the_smallest = mean_shear(1e-3, 0.7e3);
  for (const auto& [diameter, force] : pins) {
    check_relative("mean shear against that of the 1 mm pin, spring pin " + mm(diameter), "1",
                   mean_shear(diameter, force) / of_the_smallest, 1,
                   {"DIN 1481 / ISO 8752 table, as on vogelsangfastener.com", 0.034});
  }
}

TEST_CASE("pin: shear, bending and bearing of a clevis joint", "[external][pin]") {
  const PinJoint joint{.diameter = 2e-3, .eye_width = 5e-3, .cheek_width = 3e-3, .gap = 0.2e-3};
  const sinewright::external::Outside source{
      "knuckle-joint model of Shigley and Norton (from memory); evaluated apart", 1e-10};
  check_relative("mean shear, 100 N on a 2 mm pin", "MPa", 1e-6 * pin_mean_shear(joint, 100), 15.9154943092,
                 source);
  check_relative("peak shear, 100 N on a 2 mm pin", "MPa", 1e-6 * pin_peak_shear(joint, 100), 21.2206590789,
                 source);
  check_relative("bending moment, eye 5, cheeks 3, gaps 0.2 mm", "N mm", 1e3 * pin_bending_moment(joint, 100),
                 147.5, source);
  check_relative("bending stress, eye 5, cheeks 3, gaps 0.2 mm", "MPa", 1e-6 * pin_bending_stress(joint, 100),
                 187.802832848, source);
  check_relative("bearing in the eye", "MPa", 1e-6 * eye_bearing_pressure(joint, 100), 10, source);
  check_relative("bearing in a cheek", "MPa", 1e-6 * cheek_bearing_pressure(joint, 100), 25.0 / 3, source);
}

TEST_CASE("lug: tear-out along the pull and at 40 degrees", "[external][lug]") {
  const EdgeHole hole{.diameter = 2e-3, .edge_distance = 3e-3, .thickness = 4e-3};
  const sinewright::external::Outside source{"lug practice of aircraft, Bruhn (from memory); evaluated apart",
                                             1e-9};
  check_relative("tear-out stress, planes along the pull", "MPa", 1e-6 * tear_out_stress(hole, 60), 3.75,
                 source);
  check_relative("tear-out stress, planes at 40 deg", "MPa",
                 1e-6 * tear_out_stress(hole, 60, tear_out_at_40_deg), 3.357273593, source);
}

TEST_CASE("knot seat: pull-through of a knot in a printed wall", "[external][knot-seat]") {
  const KnotSeat seat{.knot_diameter = 2.4e-3, .hole_diameter = 1.2e-3, .wall = 2e-3};
  const sinewright::external::Outside source{"elementary statics, evaluated apart", 1e-9};
  check_relative("punching shear, 60 N", "MPa", 1e-6 * punching_shear(seat, 60), 3.978873577, source);
  check_relative("pressure on the ring, 60 N", "MPa", 1e-6 * seat_pressure(seat, 60), 17.68388257, source);
}

TEST_CASE("cord: the bend rule at D = d is as far from a knot as published knots differ",
          "[external][cord]") {
  check_absolute(
      "share left in a bend over its own diameter, beside an overhand knot", "1", bend_efficiency(1e-3, 1e-3),
      0.45, {"overhand knot, Outward Bound Ropes, Knots, and Hitches p. 18 (online.flipbuilder.com)", 0.1});
}

TEST_CASE("cord: the table of knots says what was published", "[external][cord]") {
  struct Published {
    const char* knot;
    double low, high;
    const char* source;
  };
  const char* const books = "Knots in Use p. 9 (flipbuilder.com); rope notes of thoughtfullyprepping";
  const std::vector<Published> published{
      {"overhand", 0.45, 0.45, "Outward Bound Ropes, Knots, and Hitches p. 18 (online.flipbuilder.com)"},
      {"figure-8 loop", 0.72, 0.80, books},
      {"bowline", 0.70, 0.75, books},
      {"double fisherman", 0.65, 0.70, books},
      {"clove hitch", 0.60, 0.65, books},
      {"reef", 0.50, 0.50, books},
      {"bowline", 0, 0.40, "Yachting Monthly, rope test of November 2017, p. 73 (issuhub.com 7295)"}};
  REQUIRE(published_knots().size() == published.size());
  for (std::size_t i = 0; i < published.size(); ++i) {
    const KnotFigure& ours = published_knots()[i];
    CHECK(ours.knot == published[i].knot);
    const std::string what = std::string(ours.knot) + " in " + std::string(ours.cord);
    check_absolute("knot efficiency, high end, " + what, "1", ours.high, published[i].high,
                   {published[i].source, 0});
    check_absolute("knot efficiency, low end, " + what, "1", ours.low, published[i].low,
                   {published[i].source, 0});
  }
}
