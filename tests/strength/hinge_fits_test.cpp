#include "strength/hinge_fits.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "quantity/invalid_input.h"
#include "strength/iso_286.h"

using namespace sinewright;
using namespace sinewright::strength;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double digits = 1e-15;  // [m]: differences of sizes of some mm

model::Material material(const char* name, double modulus, double poisson, double expansion) {
  model::Material made;
  made.name = name;
  made.modulus = modulus;
  made.poisson = poisson;
  made.thermal_expansion = expansion;
  return made;
}

// A steel pin of 2 mm in nylon lugs of 6 mm, 3 mm long.
model::Model pinned(model::TolerancedSize pin, model::TolerancedSize hole) {
  model::Model m;
  m.materials = {material("nylon", 1.7e9, 0.4, 1.1e-4), material("steel", 207e9, 0.29, 1.2e-5)};
  model::Body knuckle, proximal;
  knuckle.fixed = model::Fixed{};
  model::Hinge hinge;
  hinge.name = "MCP";
  hinge.parent = 0;
  hinge.pin = model::Pin{2e-3, {0.2, 0.16}, 8e-3, 0};
  model::PressFit press;
  press.hole = hole;
  press.length = 3e-3;
  press.hub_diameter = 6e-3;
  press.hub_material = 0;
  press.pin_material = 1;
  press.static_friction = 0.25;
  press.kinetic_friction = 0.2;
  press.remaining_share = 0.5;
  press.temperature = model::SizeBetween{278.15, 313.15};
  hinge.pin->fit = model::Fit{pin, model::IsoClass{"F8"}, press};
  proximal.hinge = hinge;
  m.bodies = {knuckle, proximal};
  return m;
}

model::PressFit& press_of(model::Model& m) { return *m.bodies[1].hinge->pin->fit->press; }

HingeFits fits_of(const model::Model& m) { return hinge_fits(m).at(0); }

}  // namespace

TEST_CASE("hinge fits: a pressed steel pin in nylon by hand", "[analytic][hinge-fits]") {
  // Pin 2.002 to 2.008 mm, hole 1.970 to 1.985 mm: 17 to 38 µm. Compliance of the hub
  // (2 mm / 1.7 GPa) (40/32 + 0.4) = 1.941176 µm/MPa, of the pin (2 mm / 207 GPa) (1 − 0.29) = 0.006860 µm/MPa;
  // 38 / 1.948036 = 19.507 MPa, 17 / 1.948036 = 8.7268 MPa.
  const HingeFits fits =
      fits_of(pinned(model::SizeBetween{2.002e-3, 2.008e-3}, model::SizeBetween{1.970e-3, 1.985e-3}));
  const PressFitReport& press = fits.press.value();
  CHECK_FALSE(press.may_be_loose());
  CHECK_THAT(press.range.smallest_interference(), WithinAbs(17e-6, digits));
  CHECK_THAT(press.range.largest_interference(), WithinAbs(38e-6, digits));
  REQUIRE(press.tightest.states.size() == 3);
  const PressState& tight = press.tightest.states[0];
  CHECK_THAT(tight.temperature, WithinAbs(293.15, 1e-12));
  CHECK_THAT(tight.pressure, WithinRel(19.5068e6, 1e-5));
  CHECK_THAT(tight.hoop_stress, WithinRel(1.25 * 19.5068e6, 1e-5));
  CHECK_THAT(tight.equivalent_stress, WithinRel(19.5068e6 * std::sqrt(1.5625 + 1.25 + 1), 1e-5));
  const double area = std::numbers::pi * 2e-3 * 3e-3;
  CHECK_THAT(press.tightest.press_in_force, WithinRel(0.2 * 19.5068e6 * area, 1e-5));
  CHECK_THAT(tight.pull_out_force, WithinRel(0.25 * 19.5068e6 * area, 1e-5));
  CHECK_THAT(tight.slip_torque, WithinRel(0.25 * 19.5068e6 * area * 1e-3, 1e-5));
  CHECK_THAT(tight.crept_pull_out_force.value(), WithinRel(0.5 * tight.pull_out_force, 1e-12));
  CHECK_THAT(tight.crept_slip_torque.value(), WithinRel(0.5 * tight.slip_torque, 1e-12));
  CHECK_THAT(press.loosest.states[0].pressure, WithinRel(8.72674e6, 1e-5));
}

TEST_CASE("hinge fits: warmth and cold change the interference, creep leaves less for warmth to take",
          "[analytic][hinge-fits]") {
  const HingeFits fits =
      fits_of(pinned(model::SizeBetween{2.002e-3, 2.008e-3}, model::SizeBetween{1.970e-3, 1.985e-3}));
  const auto& states = fits.press.value().loosest.states;
  REQUIRE(states.size() == 3);
  // (12 − 110) ppm/K × 2 mm = −0.196 µm/K: +2.94 µm at 5 °C, −3.92 µm at 40 °C.
  CHECK_THAT(states[1].interference, WithinAbs(19.94e-6, 1e-14));
  CHECK_THAT(states[2].interference, WithinAbs(13.08e-6, 1e-14));
  // After creep 8.5 µm are left at 20 °C; at 40 °C 8.5 − 3.92 = 4.58 µm.
  CHECK_THAT(states[2].crept_pressure.value() / states[2].pressure, WithinRel(4.58 / 13.08, 1e-9));
  // Just under 8.5 / 0.196 = 43.4 K of warming leaves nothing; 45 K does.
  model::Model hot = pinned(model::SizeBetween{2.002e-3, 2.008e-3}, model::SizeBetween{1.970e-3, 1.985e-3});
  press_of(hot).temperature->upper = 293.15 + 45;
  const PressState warm = fits_of(hot).press.value().loosest.states[2];
  CHECK(warm.pressure > 0);
  CHECK(warm.crept_pressure.value() == 0);
  press_of(hot).temperature->upper = 293.15 + 43;
  CHECK(fits_of(hot).press.value().loosest.states[2].crept_pressure.value() > 0);
}

TEST_CASE("hinge fits: a class, its limits and the process that makes them agree", "[hinge-fits]") {
  // m6 up to 3 mm: +2 to +8 µm; H7: 0 to +10 µm; F8: +6 to +20 µm.
  const HingeFits iso = fits_of(pinned(model::IsoClass{"m6"}, model::IsoClass{"H7"}));
  const HingeFits limits =
      fits_of(pinned(model::SizeBetween{2.002e-3, 2.008e-3}, model::SizeBetween{2e-3, 2.010e-3}));
  const HingeFits process = fits_of(
      pinned(model::ProcessSize{2.005e-3, -3e-6, 3e-6}, model::ProcessSize{2e-3, 0, 10e-6}));
  for (const HingeFits* other : {&limits, &process}) {
    const PressState& a = iso.press.value().tightest.states.at(2);
    const PressState& b = other->press.value().tightest.states.at(2);
    CHECK_THAT(a.interference, WithinAbs(b.interference, digits));
    CHECK_THAT(a.slip_torque, WithinRel(b.slip_torque, 1e-8));
    CHECK_THAT(iso.running.value().smallest_clearance, WithinAbs(other->running.value().smallest_clearance, digits));
    CHECK_THAT(iso.running->largest_clearance, WithinAbs(other->running->largest_clearance, digits));
  }
  CHECK_THAT(iso.running.value().smallest_clearance, WithinAbs(-2e-6, digits));
  CHECK_THAT(iso.running->largest_clearance, WithinAbs(18e-6, digits));
}

TEST_CASE("hinge fits: p6 in H7 holds above 3 mm and may be loose below", "[hinge-fits]") {
  model::Model m = pinned(model::IsoClass{"p6"}, model::IsoClass{"H7"});
  const PressFitReport small = fits_of(m).press.value();
  CHECK(small.may_be_loose());
  CHECK_FALSE(small.is_loose());
  CHECK_THAT(small.range.largest_clearance, WithinAbs(4e-6, digits));
  const PressState& loose = small.loosest.states[0];
  CHECK(loose.pressure == 0);
  CHECK(loose.pull_out_force == 0);
  CHECK(loose.crept_pressure.value() == 0);
  CHECK(small.tightest.states[0].pressure > 0);
  m.bodies[1].hinge->pin->diameter = 4e-3;  // +12 to +20 µm in 0 to +12 µm: line to line at the loosest
  CHECK(fits_of(m).press->may_be_loose());
  CHECK_THAT(fits_of(m).press->range.largest_clearance, WithinAbs(0, digits));
  press_of(m).hole = model::IsoClass{"H6"};
  CHECK_FALSE(fits_of(m).press->may_be_loose());
}

TEST_CASE("hinge fits: sizes that never press are said to be loose", "[hinge-fits]") {
  const PressFitReport press = fits_of(pinned(model::IsoClass{"g6"}, model::IsoClass{"H7"})).press.value();
  CHECK(press.is_loose());
  CHECK(press.tightest.states[0].pressure == 0);
}

TEST_CASE("hinge fits: creep does not turn a clearance into less of one", "[hinge-fits]") {
  model::Model m = pinned(model::IsoClass{"p6"}, model::IsoClass{"H7"});
  // Cold closes the 4 µm of clearance after 20.4 K; creep has nothing to take from it before.
  press_of(m).temperature->lower = 293.15 - 30;
  const PressState cold = fits_of(m).press.value().loosest.states.at(1);
  CHECK(cold.pressure > 0);
  CHECK_THAT(cold.crept_pressure.value(), WithinRel(cold.pressure, 1e-12));
}

TEST_CASE("hinge fits: what is not given is named and not guessed", "[hinge-fits]") {
  model::Model m = pinned(model::IsoClass{"m6"}, model::IsoClass{"H7"});
  CHECK(fits_of(m).press.value().missing == std::vector<std::string>{"hub_strength"});
  m.materials[1].thermal_expansion.reset();
  CHECK(fits_of(m).press->missing ==
        std::vector<std::string>{"materials.steel.thermal_expansion", "hub_strength"});
  CHECK(fits_of(m).press->tightest.states.size() == 1);
  press_of(m).temperature.reset();
  press_of(m).remaining_share.reset();
  press_of(m).hub_strength = 40e6;
  CHECK(fits_of(m).press->missing == std::vector<std::string>{"temperature", "remaining_share"});
  CHECK_FALSE(fits_of(m).press->tightest.states[0].crept_pressure);

  m.bodies[1].hinge->pin->fit->running_hole.reset();
  CHECK_FALSE(fits_of(m).running);
  m.bodies[1].hinge->pin->fit.reset();
  CHECK_FALSE(fits_of(m).pin);
  CHECK_FALSE(fits_of(m).press);
  m.bodies[1].hinge->pin.reset();
  CHECK(fits_of(m).diameter == 0);
}

TEST_CASE("hinge fits: every class that a file may name has limits", "[hinge-fits]") {
  for (const std::string_view name : model::hole_classes) CHECK(iso_limits(2e-3, name).upper > 0);
  for (const std::string_view name : model::shaft_classes) CHECK(iso_limits(2e-3, name).upper > 0);
  CHECK(iso_limits(model::largest_iso_size, "H7").upper > 0);
  // And none is left out.
  for (const char letter : std::string("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"))
    for (int grade = 1; grade <= 18; ++grade) {
      const std::string name = letter + std::to_string(grade);
      bool known = true;
      try {
        (void)iso_limits(2e-3, name);
      } catch (const InvalidInput&) {
        known = false;
      }
      bool listed = false;
      for (const std::string_view other : model::hole_classes) listed = listed || other == name;
      for (const std::string_view other : model::shaft_classes) listed = listed || other == name;
      CAPTURE(name);
      CHECK(known == listed);
    }
}
