// What the press fits of the pins must hold in a run; docs/theory/strength/interference-fit.md.

#include <cmath>

#include <catch2/catch.hpp>

#include "margin_bench.h"

namespace {

using namespace margin_bench;

model::PressFit& press_of(model::Scenario& scenario, std::size_t joint) {
  for (auto& body : scenario.model.bodies)
    if (body.hinge && joint-- == 0) return *body.hinge->pin->fit->press;
  throw std::out_of_range("joint");
}

model::Material& material(model::Scenario& scenario, const std::string& name) {
  for (auto& m : scenario.model.materials)
    if (m.name == name) return m;
  throw std::out_of_range(name);
}

// A margin under 80 N across each pin and some force along it.
simulation::MarginValue margin(const model::Scenario& scenario, const std::string& name, double along = 3) {
  Bench bench(scenario);
  bench.load(1);
  for (auto& hinge : bench.stage.hinge) hinge.axial_reaction = along;
  bench.watch.look(bench.stage, bench.state);
  return bench.margins().at(name);
}

std::vector<std::string> missing(const model::Scenario& scenario, const std::string& name) {
  for (const auto& unknown : strength::part_checks(simulation::System(scenario)).not_checked)
    if (unknown.name == name) return unknown.missing;
  return {};
}

using List = std::vector<std::string>;
const double drag = 80 * std::sin(std::atan(0.2));  // of the inner lug, at the most

}  // namespace

TEST_CASE("press margins: the inner lug drags a pin along by no more than its friction", "[margins][press][analytic]") {
  CHECK(margin(described(), "press_pull_out.PIP", -15).demand == Approx(15));
  CHECK(margin(described(), "press_pull_out.PIP", 15).demand == Approx(15));
  CHECK(margin(described(), "press_pull_out.PIP", -16).demand == Approx(drag));
  CHECK(margin(described(), "press_pull_out.PIP", 500).demand == Approx(drag));
  // Sliding wholly along or wholly round asks the same of the same grip.
  CHECK(margin(described(), "press_pull_out.PIP", 500).ratio == Approx(margin(described(), "press_turning.PIP", 500).ratio));
}

TEST_CASE("press margins: the sizes that grip least decide whether a pin turns, those that grip most what the lug bears",
          "[margins][press][analytic]") {
  model::Scenario scenario = described();
  scenario.ambient = 293.15;
  model::PressFit& press = press_of(scenario, 0);
  press.hole = model::SizeBetween{1.970e-3, 1.985e-3};  // m6: 17 to 38 µm
  const double turning = margin(scenario, "press_turning.MCP").capacity, stress = margin(scenario, "press_stress.MCP").demand;
  press.hole = model::SizeBetween{1.980e-3, 1.985e-3};  // 17 to 28 µm
  CHECK(margin(scenario, "press_turning.MCP").capacity == Approx(turning));
  CHECK(margin(scenario, "press_stress.MCP").demand == Approx(stress * 28 / 38));
  press.hole = model::SizeBetween{1.970e-3, 1.975e-3};  // 27 to 38 µm
  CHECK(margin(scenario, "press_turning.MCP").capacity == Approx(turning * 27 / 17));
  CHECK(margin(scenario, "press_stress.MCP").demand == Approx(stress));
  press.remaining_share = 1;  // no creep: twice the grip, and the new lug's stress as before
  CHECK(margin(scenario, "press_turning.MCP").capacity == Approx(2 * turning * 27 / 17));
  CHECK(margin(scenario, "press_stress.MCP").demand == Approx(stress));
}

TEST_CASE("press margins: warmth takes the grip of a crept fit, and then the pin turns at once", "[margins][press]") {
  // 8.5 µm are left of 17 µm; nylon outgrows the steel pin by 0.1966 µm a kelvin, so all is gone after 43.2 K.
  model::Scenario scenario = described();
  scenario.ambient = 293.15 + 43;
  CHECK(margin(scenario, "press_turning.MCP").capacity > 0);
  CHECK(margin(scenario, "press_turning.MCP").capacity < 0.01 * margin(described(), "press_turning.MCP").capacity);
  scenario.ambient = 293.15 + 44;
  CHECK(margin(scenario, "press_turning.MCP").capacity == 0);
  CHECK(margin(scenario, "press_turning.MCP").ratio == 0);
  CHECK(margin(scenario, "press_turning.MCP").lost_at == 0);
}

TEST_CASE("press margins: a transition fit holds nothing, since some pairs of parts are loose", "[margins][press]") {
  model::Scenario scenario = described();
  press_of(scenario, 2).hole = model::IsoClass{"H7"};  // the pin is p6
  CHECK(margin(scenario, "press_turning.DIP").ratio == 0);
  CHECK(margin(scenario, "press_pull_out.DIP").ratio == 0);
  CHECK(margin(scenario, "press_stress.DIP").ratio > 1);  // the tightest pair still presses
}

TEST_CASE("press margins: the lug bears what its material does along its layers, unless a strength is given",
          "[margins][press]") {
  model::Scenario scenario = described();
  model::PressFit& press = press_of(scenario, 0);
  const auto capacity = [&] { return margin(scenario, "press_stress.MCP").capacity; };
  CHECK(capacity() == 48e6);
  press.hub_layers = model::Layers::across;
  CHECK(capacity() == 42e6);
  press.hub_layers = model::Layers::weaker;
  CHECK(capacity() == 42e6);
  press.hub_strength = 30e6;
  CHECK(capacity() == 30e6);
  CHECK(margin(scenario, "press_stress.MCP").ratio < 1);
}

TEST_CASE("press margins: what is not described is named, and what does not need it is still checked", "[margins][press]") {
  const std::string press = "bodies.proximal.hinge.pin.fit.press";
  model::Scenario scenario = described();
  press_of(scenario, 0).remaining_share.reset();
  CHECK(missing(scenario, "press_turning.MCP") == List{press + ".remaining_share"});
  CHECK(missing(scenario, "press_pull_out.MCP") == List{press + ".remaining_share"});
  CHECK(missing(scenario, "press_stress.MCP").empty());

  scenario = described();
  material(scenario, "sintered_nylon").strength = 0;
  CHECK(missing(scenario, "press_stress.MCP") == List{"materials.sintered_nylon.strength"});
  CHECK(missing(scenario, "press_turning.MCP").empty());

  scenario = described();
  material(scenario, "steel").thermal_expansion.reset();
  for (const char* kind : {"press_turning.MCP", "press_pull_out.MCP", "press_stress.MCP"})
    CHECK(missing(scenario, kind) == List{"materials.steel.thermal_expansion"});

  scenario = described();
  scenario.model.bodies.at(2).hinge->pin->fit->press.reset();
  for (const char* kind : {"press_turning.MCP", "press_pull_out.MCP", "press_stress.MCP"})
    CHECK(missing(scenario, kind) == List{press});
}

TEST_CASE("press margins: the length of contact that a margin asks for grows with it", "[margins][press][analytic]") {
  Bench bench(described());
  bench.load(1);
  bench.watch.look(bench.stage, bench.state);
  const auto turning = bench.margins().at("press_turning.MCP");
  bool found = false;
  for (const auto& size : bench.watch.sizes_for(5)) {
    CHECK(size.name.substr(0, 12) != "press_stress");  // no dimension: a thicker lug is stiffer and presses harder
    if (size.name != "press_turning.MCP") continue;
    found = true;
    CHECK(size.key == "bodies.proximal.hinge.pin.fit.press.length");
    CHECK(size.present == 3e-3);
    CHECK(size.needed == Approx(3e-3 * 5 / turning.ratio));
  }
  CHECK(found);
}
