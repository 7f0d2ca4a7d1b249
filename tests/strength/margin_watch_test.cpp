// Margins of a run, from the description of the parts to the ranked list. Loads are put into a stage by hand, so that each demand
// can be worked out beside it from statics alone.

#include "strength/margin_watch.h"

#include <cmath>
#include <map>
#include <set>

#include <catch2/catch.hpp>

#include "quantity/invalid_input.h"
#include "../contact/heap_watch.h"
#include "margin_bench.h"

namespace {

using namespace margin_bench;
using Catch::Matchers::Contains;

std::set<std::string> names_of(const strength::PartChecks& parts) {
  std::set<std::string> names;
  for (const auto& check : parts.checks) names.insert(check.name);
  for (const auto& unknown : parts.not_checked) names.insert(unknown.name);
  return names;
}

}  // namespace

TEST_CASE("margins: a model without part data lists everything as not checked, with the keys it lacks", "[margins]") {
  const simulation::System whole(described()), none(bare());
  const strength::PartChecks all = strength::part_checks(whole), left = strength::part_checks(none);
  CHECK(all.not_checked.empty());
  // Flexor: knot, bend, two seats of three; return: its stretch as well; drive: five of the pulley, torque, three of heat; eleven
  // a joint; one person.
  CHECK(all.checks.size() == 2 + 6 + 3 + 6 + 9 + 3 * 11 + 1);
  CHECK(names_of(left) == names_of(all));
  // The force on a person needs no part.
  REQUIRE(left.checks.size() == 1);
  CHECK(left.checks[0].name == "person_force");
  for (const auto& unknown : left.not_checked) {
    CAPTURE(unknown.name);
    CHECK_FALSE(unknown.missing.empty());
  }
  CHECK(left.cautions.empty());
}

TEST_CASE("margins: naming a material without strengths leaves its part unchecked, and says which strength is missing",
          "[margins]") {
  model::Scenario scenario = described();
  for (auto& material : scenario.model.materials)
    if (material.name == "sintered_nylon") material.strength_across = 0, material.bearing_strength = 0;
  std::map<std::string, std::vector<std::string>> missing;
  for (const auto& unknown : strength::part_checks(simulation::System(scenario)).not_checked)
    missing[unknown.name] = unknown.missing;
  using List = std::vector<std::string>;
  CHECK(missing["seat_punching.flexor.pulley"] == List{"materials.sintered_nylon.strength_across"});
  CHECK(missing["eye_bearing.MCP"] == List{"materials.sintered_nylon.bearing_strength"});
  CHECK(missing.count("seat_punching.flexor.end") == 0);  // along the layers
}

TEST_CASE("margins: each demand is what statics says of the load", "[margins][analytic]") {
  Bench bench(described());
  bench.load(1);
  bench.watch.look(bench.stage, bench.state);
  const auto margins = bench.margins();
  const auto area = [](double outer, double inner) { return pi / 4 * (outer * outer - inner * inner); };
  const double c = std::sqrt(0.5e-3 * 2.5e-3);  // half chord of the flat
  const double wall = 3.5e-3 - 1.5e-3 - 0.1e-3, bottom = 3.5e-3;
  const double squeeze = 60 / (0.5e-3 + 2 * wall) / bottom;
  const double hole = 2.05e-3;
  // Press fit at MCP, 17 to 38 µm at 20 °C; at 23 °C nylon has outgrown steel by (110 − 11.7) ppm × 2 mm × 3 K = 0.59 µm. Creep halves
  // what was pressed. Ring factor of 6 mm about 2 mm: 40 / 32.
  const double outgrown = 98.3e-6 * 2e-3 * 3, compliance = 2e-3 * ((1.25 + 0.4) / 1700e6 + (1 - 0.29) / 207e9);
  const double crept = (8.5e-6 - outgrown) / compliance, tight = (38e-6 - outgrown) / compliance;
  const double drag = 80 * 0.2 / std::sqrt(1.04);  // of the inner lug at the pin
  const double slip = 2 * 0.25 * crept * pi * 2e-3 * 3e-3;
  // name: demand, capacity
  const std::map<std::string, std::pair<double, double>> by_hand = {
      {"cord_knot.flexor", {60, 240 * 0.45}},
      {"cord_knot.return", {5, 20}},
      {"cord_bend.return", {5, 40 * (1 - 0.5 / std::sqrt(2 * 3e-3 / 2e-3 - 1))}},
      {"stretch.return", {1, 4}},
      {"seat_punching.flexor.pulley", {60 / (pi * 1.5e-3 * 0.5e-3), 42e6 / std::sqrt(3)}},
      {"seat_pressure.flexor.pulley", {60 / area(1.5e-3, 0.7e-3), 72e6}},
      {"seat_tear_out.flexor.pulley", {60 / (2 * 0.5e-3 * (3.2e-3 - 0.35e-3)), 42e6 / std::sqrt(3)}},
      {"seat_punching.flexor.end", {40 / (pi * 1.5e-3 * 2e-3), 48e6 / std::sqrt(3)}},
      {"seat_pressure.flexor.end", {40 / area(1.5e-3, 0.7e-3), 72e6}},
      {"seat_tear_out.flexor.end", {40 / (2 * 2e-3 * (3e-3 - 0.35e-3)), 48e6 / std::sqrt(3)}},
      {"seat_punching.return.start", {5 / (pi * 4.5e-3 * 2.5e-3), 48e6 / std::sqrt(3)}},
      {"seat_pressure.return.end", {5 / area(4.5e-3, 2.4e-3), 72e6}},
      {"seat_tear_out.return.end", {5 / (2 * 2.5e-3 * (3.5e-3 - 1.2e-3)), 48e6 / std::sqrt(3)}},
      {"shaft_flat.flexor", {3 * 0.2 / (10e-3 * c * c), 72e6}},
      {"pulley_splitting.flexor", {(60 + 1.5 * 0.2 / c) / (2 * wall * 10e-3), 42e6}},
      {"pulley_winding.flexor", {2 * squeeze * 3.5 * 3.5 / (3.5 * 3.5 - 1.6 * 1.6), 42e6}},
      {"flange.flexor", {6 * 60 * std::sin(pi / 36) * 1e-3 / (3e-3 * 1e-6), 42e6}},
      {"collar.flexor", {2e-3 * 2.2e-3 / (pi / 32 * (std::pow(4.4e-3, 4) - std::pow(3e-3, 4))), 42e6 / std::sqrt(3)}},
      {"gear_torque.flexor", {0.2, 0.25}},
      {"winding_temperature.flexor", {40, 110 - 23}},
      {"housing_temperature.flexor", {20, 80 - 23}},
      {"touch_temperature.flexor", {20, 65 - 23}},
      {"pin_shear.MCP", {4.0 / 3 * 40 / (pi / 4 * 4e-6), 500e6 / std::sqrt(3)}},
      {"pin_bending.MCP", {32 * 40 * (1.75e-3 + 0.6e-3 + 1.5e-3) / (pi * 8e-9), 500e6}},
      {"eye_bearing.MCP", {80 / (2e-3 * 7e-3), 72e6}},
      {"cheek_bearing.MCP", {40 / (2e-3 * 3e-3), 72e6}},
      {"lug_tension.MCP", {80 / ((6e-3 - hole) * 7e-3), 48e6}},
      {"lug_tear_out.MCP", {80 / (2 * 7e-3 * (3e-3 - hole / 2)), 48e6 / std::sqrt(3)}},
      {"washer_pressure.MCP", {3 / area(5e-3, 2.2e-3), 40e6}},
      {"washer_speed.MCP", {3 * 10 / (pi * (5e-3 - 2.2e-3)), 0.1e6}},
      {"press_turning.MCP", {drag * 1e-3, slip * 1e-3}},
      {"press_pull_out.MCP", {3, slip}},
      {"press_stress.MCP", {tight * std::sqrt(1.25 * 1.25 + 1.25 + 1), 48e6}},
      {"person_force", {35, 140}},
  };
  for (const auto& [name, hand] : by_hand) {
    CAPTURE(name);
    REQUIRE(margins.count(name) == 1);
    CHECK(margins.at(name).demand == Approx(hand.first).epsilon(1e-9));
    CHECK(margins.at(name).capacity == Approx(hand.second).epsilon(1e-9));
    CHECK(margins.at(name).ratio == Approx(hand.second / hand.first).epsilon(1e-9));
  }
  // The tightest bend that bears the most: radius 1.5 mm to the centre line, so D/d = 5, under 58 N; the pulley (D/d = 14) under
  // 60 N loses less.
  CHECK(margins.at("cord_bend.flexor").capacity == Approx(240 * (1 - 0.5 / std::sqrt(5.0))));
  CHECK(margins.at("cord_bend.flexor").demand == Approx(58));
  CHECK_THAT(margins.at("cord_bend.flexor").load, Contains("bend"));
  // Each kind of margin is worked out above at least once.
  for (const auto& [name, value] : margins) {
    const std::string kind = name.substr(0, name.find('.'));
    CAPTURE(kind);
    CHECK((kind == "cord_bend" || std::any_of(by_hand.begin(), by_hand.end(), [&](const auto& hand) {
             return hand.first.substr(0, hand.first.find('.')) == kind;
           })));
  }
}

TEST_CASE("margins: every one falls below 1 when its load is large enough, and holds under a small one", "[margins]") {
  model::Scenario scenario = described();
  Bench small(scenario);
  small.load(0.01);
  small.watch.look(small.stage, small.state);
  for (const auto& [name, value] : small.margins()) {
    CAPTURE(name);
    CHECK(value.ratio > 1);
    CHECK(std::isnan(value.lost_at));
  }
  // The loads of these are data.
  scenario.model.drives[0].pulley.collar->torque = 5;
  for (auto& body : scenario.model.bodies)
    if (body.hinge) body.hinge->pin->fit->press->hole = model::SizeBetween{0.9 * body.hinge->pin->diameter, 0.99 * body.hinge->pin->diameter};
  Bench large(scenario);
  large.load(1e4);
  large.watch.look(large.stage, large.state);
  for (const auto& [name, value] : large.margins()) {
    CAPTURE(name);
    CHECK(value.ratio < 1);
    CHECK(value.lost_at == 0);
    CHECK_FALSE(value.lost_load.empty());
  }
}

TEST_CASE("margins: a winding presses with its turns side by side and its layers over each other", "[margins]") {
  // 4 turns a layer. 6 turns: 4 side by side in 2 layers, over 4 cord diameters and the wall on both sides.
  Bench bench(described());
  bench.load(1);
  bench.state.q[bench.system.shafts[0].q_output] = 6 * 2 * pi;
  bench.watch.look(bench.stage, bench.state);
  const double line_load = 60.0 * 4 * 2 / (4 * 0.5e-3 + 2 * 1.9e-3);
  CHECK(bench.margins().at("pulley_winding.flexor").demand ==
        Approx(2 * line_load / 3.5e-3 * 3.5 * 3.5 / (3.5 * 3.5 - 1.6 * 1.6)));
}

TEST_CASE("margins: the instant that governs is kept with its posture and outside loads, and the first one below 1",
          "[margins]") {
  Bench bench(described());
  const auto look = [&](double time, double by) {
    bench.load(by);
    bench.state.time = time;
    for (std::size_t j = 0; j < 3; ++j) {
      const auto link = static_cast<std::size_t>(bench.system.hinges[j].link);
      bench.state.q[bench.system.tree.links[link].q] = 0.1 * time + static_cast<double>(j);
    }
    bench.watch.look(bench.stage, bench.state);
  };
  look(1.0, 0.5);  // 30 N: holds
  look(1.7, 1.2);
  look(2.0, 2.0);  // worst
  look(2.5, 1.0);
  const auto seat = bench.margins().at("seat_punching.flexor.pulley");
  CHECK(seat.time == 2.0);
  CHECK(seat.demand == Approx(120 / (pi * 1.5e-3 * 0.5e-3)));
  CHECK(seat.posture == std::vector<double>{0.2, 1.2, 2.2});
  CHECK_THAT(seat.load, Contains("tension of flexor 120 N") && Contains("pull 20.8 N"));  // 26 N × 0.8 on its way up
  CHECK(seat.lost_at == 1.7);
  CHECK_THAT(seat.lost_load, Contains("72 N"));
  const auto values = bench.watch.report().values;
  for (std::size_t i = 1; i < values.size(); ++i) CHECK(values[i - 1].ratio <= values[i].ratio);
}

TEST_CASE("margins: bushings widen the hole of the lug, and their flanges are what is pressed", "[margins][analytic]") {
  Bench bench(read("forced-open.yaml", {"require=[]", "model.bodies.proximal.hinge.bushings=flanged_2"}));
  bench.load(1);
  bench.watch.look(bench.stage, bench.state);
  const auto margins = bench.margins();
  const double hole = 3.5e-3;  // the sleeve
  CHECK(margins.at("lug_tension.MCP").demand == Approx(80 / ((6e-3 - hole) * 7e-3)));
  CHECK(margins.at("lug_tear_out.MCP").demand == Approx(80 / (2 * 7e-3 * (3e-3 - hole / 2))));
  CHECK(margins.at("washer_pressure.MCP").demand == Approx(3 / (pi / 4 * (5e-3 * 5e-3 - 2e-3 * 2e-3))));
  CHECK(margins.at("washer_pressure.MCP").capacity == Approx(60e6));
  CHECK_THAT(margins.at("washer_pressure.MCP").check, Contains("flange of the bushing"));
  CHECK(bench.sizes_for(2).at("washer_pressure.MCP").key == "bushings.flanged_2.flange_diameter");
  CHECK(margins.at("lug_tension.PIP").demand == Approx(80 / ((6e-3 - 2.05e-3) * 6e-3)));
  CHECK_THAT(margins.at("washer_pressure.PIP").check, Contains("washer"));
}

TEST_CASE("margins: watching a step allocates nothing", "[margins][no-heap]") {
  if (!HeapWatch::works()) return;
  Bench bench(described());
  bench.load(1);
  const HeapWatch watch;
  for (int i = 1; i < 100; ++i) {
    bench.state.time = 0.01 * i;
    bench.stage.chain[flexor].tension.front() = i;  // a new worst instant each time
    bench.watch.look(bench.stage, bench.state);
  }
  const auto during = watch.requests();
  CHECK(during == 0);
  const std::vector<double> one(100);
  CHECK(watch.requests() > 0);  // the count does count
}

TEST_CASE("margins: the size for a margin is the one that statics gives", "[margins][analytic]") {
  Bench bench(described());
  bench.load(1);
  bench.watch.look(bench.stage, bench.state);
  const auto sizes = bench.sizes_for(2);
  CHECK(sizes.at("seat_punching.flexor.pulley").needed == Approx(2 * 60 / (pi * 1.5e-3 * 42e6 / std::sqrt(3))));
  CHECK(sizes.at("seat_punching.flexor.pulley").key == "drives.flexor.pulley.knot_seat.wall");
  CHECK(sizes.at("seat_punching.flexor.pulley").present == 0.5e-3);
  CHECK(sizes.at("cord_knot.flexor").needed == Approx(2 * 60 / 0.45));
  CHECK(sizes.at("shaft_flat.flexor").needed == Approx(2 * 3 * 0.2 / (72e6 * 1.25e-6)));
  CHECK(sizes.at("pin_bending.MCP").needed == Approx(std::cbrt(2 * 32 * 40 * 3.85e-3 / (pi * 500e6))));
  CHECK(sizes.at("lug_tension.MCP").needed == Approx(2.05e-3 + 2 * 80 / (7e-3 * 48e6)));
  CHECK(sizes.count("gear_torque.flexor") == 0);  // no dimension of the model helps it
  CHECK_THROWS_AS(bench.watch.sizes_for(0), InvalidInput);
}

TEST_CASE("margins: a size that is said to reach a margin reaches it, and a smaller one does not", "[margins]") {
  Bench bench(described());
  bench.load(1);
  bench.watch.look(bench.stage, bench.state);
  const auto sizes = bench.sizes_for(2);
  // The pulley: wall = (pull + force of the flat) · 2 / (2 · length · strength), about a bore of 1.5 mm and 0.1 mm of eccentricity.
  const double force = 60 + 1.5 * 0.2 / std::sqrt(0.5e-3 * 2.5e-3);
  CHECK(sizes.at("pulley_splitting.flexor").key == "drives.flexor.pulley.radius");
  CHECK(sizes.at("pulley_splitting.flexor").needed == Approx(1.6e-3 + force / (10e-3 * 42e6)));
  std::size_t reached = 0;
  for (const auto& check : strength::part_checks(bench.system).checks) {
    const auto of = sizes.find(check.name);
    CHECK((of != sizes.end()) == !check.size_key.empty());
    if (of == sizes.end() || std::isnan(of->second.needed)) continue;
    CAPTURE(check.name);
    const auto load = check.load(bench.stage, bench.state);
    const auto ratio = [&](double size) { return check.capacity(size) * load.share / check.demand(size, load.value); };
    const double needed = of->second.needed;
    CHECK(ratio(needed) >= 2);
    if (needed <= check.size * 0.011) continue;  // the smallest that is looked for
    CHECK(ratio(needed) == Approx(2).epsilon(1e-5));
    CHECK(ratio(0.9999 * needed) < 2);
    ++reached;
  }
  CHECK(reached > 40);
}

TEST_CASE("margins: a requirement on one that cannot be checked is refused with the missing keys", "[margins]") {
  model::Scenario scenario = read("forced-open.yaml", {"require=[{quantity: margin.seat_punching.return.end, at_least: 1}]"});
  std::get<model::Anchor>(scenario.model.cords[rubber].path.back()).seat.reset();
  const simulation::System system(scenario);
  CHECK_THROWS_WITH(strength::MarginWatch(system),
                    Contains("margin.seat_punching.return.end") && Contains("cords.return.path.6.seat"));
}

TEST_CASE("margins: walls and holes below what prints are warned of", "[margins]") {
  const auto cautions = strength::part_checks(simulation::System(described())).cautions;
  REQUIRE(cautions.size() == 1);
  CHECK_THAT(cautions[0], Contains("knot seat in the pulley") && Contains("wall of 0.5 mm") && Contains("0.7 mm"));
}

TEST_CASE("margins: each wall and hole of a printed part is held against what prints", "[margins]") {
  model::Scenario scenario = described();
  for (auto& material : scenario.model.materials)
    if (material.name == "sintered_nylon") material.least_wall = material.least_hole = 20e-3;
  std::set<std::string> found;
  for (const auto& caution : strength::part_checks(simulation::System(scenario)).cautions)
    found.insert(caution.substr(0, caution.find(" mm")));
  std::set<std::string> expected = {
      "knot seat in the pulley: wall of 0.5",       "knot seat in the pulley: hole of 0.7",      "knot seat in the distal: wall of 2",
      "knot seat in the distal: hole of 0.7",       "knot seat in the distal: wall of 2.5",      "knot seat in the distal: hole of 2.4",
      "knot seat in the knuckle: wall of 2.5",      "knot seat in the knuckle: hole of 2.4",     "flange of the pulley of flexor: wall of 1",
      "collar of the pulley of flexor: wall of 0.7", "pulley of flexor: wall of 1.9",            "pulley of flexor: hole of 3"};
  for (const std::string joint : {"MCP", "PIP", "DIP"}) {
    const bool small = joint == "DIP";
    const std::string cheek = joint == "MCP" ? "3" : small ? "2" : "2.5";
    expected.insert("lug at " + joint + ": wall of " + (small ? "1.725" : "1.975"));
    expected.insert("lug at " + joint + ": hole of " + (small ? "1.55" : "2.05"));
    expected.insert("outer lugs at " + joint + ": wall of " + cheek);
    expected.insert("outer lugs round the pin at " + joint + ": wall of " + (small ? "1.75" : "2"));
  }
  CHECK(found == expected);
}

TEST_CASE("margins: forced open, the first pulley's knot seat goes first; with a better seat the gearhead does",
          "[margins][scenarios]") {
  struct Case {
    const char *file, *first;
  };
  double gear = 0;
  for (const Case& c :
       {Case{"forced-open.yaml", "seat_punching.flexor.pulley"}, Case{"forced-open-strong.yaml", "gear_torque.flexor"}}) {
    CAPTURE(c.file);
    const simulation::System system(read(c.file));
    strength::MarginWatch watch(system);
    simulation::RunListener listener;
    strength::attach(watch, listener);
    const auto result = simulation::run(system, listener);
    REQUIRE(result.complete);
    for (const auto& verdict : result.verdicts) CHECK(verdict.met);
    const auto margins = watch.report().values;
    REQUIRE(margins.size() > 10);
    CHECK(margins[0].name == c.first);
    CHECK(margins[0].ratio < 1);
    CHECK(margins[0].lost_at > 1.2);  // while somebody pulls
    // Nothing is below 1 before the first of the list is.
    for (const auto& margin : margins)
      if (!std::isnan(margin.lost_at)) CHECK(margin.lost_at >= margins[0].lost_at);
    const auto summary = [&](const std::string& key) {
      for (const auto& value : result.summary)
        if (value.key == key) return value.value;
      return std::nan("");
    };
    CHECK(summary("margin.least") == margins[0].ratio);
    CHECK(summary(std::string("margin.") + c.first) == margins[0].ratio);
    // The part does not change the run.
    if (gear != 0) CHECK(summary("margin.gear_torque.flexor") == gear);
    gear = summary("margin.gear_torque.flexor");
  }
}
