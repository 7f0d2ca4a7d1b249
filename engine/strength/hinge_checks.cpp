#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "strength/bearing.h"
#include "strength/check_list.h"
#include "strength/hinge_fits.h"
#include "strength/lug.h"
#include "strength/pin.h"
#include "strength/tear_out.h"

namespace sinewright::strength {

namespace {

using simulation::Stage;
using simulation::State;

// A hinge with its key and what its checks are called.
struct Named {
  const model::Hinge& hinge;
  std::string key;
  [[nodiscard]] std::string name(const char* kind) const { return fmt::format("{}.{}", kind, hinge.name); }
  [[nodiscard]] std::string words(const char* what) const { return fmt::format("{} at {}", what, hinge.name); }
};

CheckedLoad across_the_pin(std::size_t j) {
  return {"force across the pin", "N", [j](const Stage& stage, const State&) { return PartLoad{stage.hinge[j].radial_reaction}; }};
}

void add_pin_and_lugs(CheckList& list, std::size_t j, const Named& joint) {
  const model::Hinge& hinge = joint.hinge;
  const std::string pin_key = joint.key + ".pin", lug_key = joint.key + ".lug";
  const model::Pin pin = hinge.pin.value_or(model::Pin{});
  const model::Lug lug = hinge.lug.value_or(model::Lug{});
  const PartStrength of_pin(list.model(), pin.build, pin_key), of_lug(list.model(), lug.build, lug_key);

  const auto no_pin = lacking(!hinge.pin, pin_key);
  const auto of_the_pin = [&](bool absent, const char* key) {
    return hinge.pin ? lacking(absent, pin_key + "." + key) : no_pin;
  };
  const auto no_eye = of_the_pin(pin.eye_width == 0, "eye_width"), no_cheek = of_the_pin(pin.cheek_width == 0, "cheek_width"),
             no_gap = of_the_pin(pin.gap < 0, "gap"), no_lug = lacking(!hinge.lug, lug_key);
  const auto add = [&](const char* kind, const char* words, bool described, const Known& capacity, const Size& size,
                       const Demand& demand, const std::vector<std::string>& needs) {
    list.add(joint.name(kind), joint.words(words), "Pa", across_the_pin(j), demand, described ? capacity : Known{}, size, needs);
  };
  const bool has_pin = hinge.pin.has_value(), has_lug = hinge.lug.has_value();
  const Size diameter{pin_key + ".diameter", pin.diameter};

  // Mean shear asks for nothing but the diameter; widths of 1 stand in, so that the law has a whole joint.
  add("pin_shear", "pin sheared", has_pin, of_pin.shear(), diameter,
      [gap = std::max(0.0, pin.gap)](double d, double force) { return pin_peak_shear({d, 1, 1, gap}, force); }, no_pin);
  add("pin_bending", "pin bent", has_pin, of_pin.tension(), diameter,
      [pin](double d, double force) { return pin_bending_stress({d, pin.eye_width, pin.cheek_width, pin.gap}, force); },
      joined({no_eye, no_cheek, no_gap}));
  add("eye_bearing", "inner lug pressed by the pin", has_lug, of_lug.bearing(), {pin_key + ".eye_width", pin.eye_width},
      [pin](double width, double force) { return bearing_pressure(force, pin.diameter, width); }, joined({no_eye, no_lug}));
  add("cheek_bearing", "outer lugs pressed by the pin", has_lug, of_lug.bearing(), {pin_key + ".cheek_width", pin.cheek_width},
      [pin](double width, double force) { return bearing_pressure(force / 2, pin.diameter, width); },
      joined({no_cheek, no_lug}));
  const double hole = hinge.bushings ? hinge.bushings->outer_diameter : pin.diameter + pin.radial_clearance;
  add("lug_tension", "lug torn beside its hole", has_lug, of_lug.tension(), {lug_key + ".width", lug.width},
      [=](double width, double force) { return net_section_stress({{hole, lug.edge, pin.eye_width}, width}, force); },
      joined({no_eye, no_lug}));
  add("lug_tear_out", "lug's end torn out", has_lug, of_lug.shear(), {lug_key + ".edge", lug.edge},
      [=](double edge, double force) { return tear_out_stress({hole, edge, pin.eye_width}, force); }, joined({no_eye, no_lug}));
  if (!has_lug) return;
  list.caution_wall(lug.build, joint.words("lug"), std::min((lug.width - hole) / 2, lug.edge - hole / 2));
  list.caution_hole(lug.build, joint.words("lug"), hole);
  if (pin.cheek_width > 0) list.caution_wall(lug.build, joint.words("outer lugs"), pin.cheek_width);
}

// What the pin's press fits in the two outer lugs must hold; docs/theory/strength/interference-fit.md.
void add_press(CheckList& list, std::size_t j, const Named& joint) {
  const std::string key = joint.key + ".pin.fit.press";
  const model::Pin pin = joint.hinge.pin.value_or(model::Pin{});
  const bool described = pin.fit && pin.fit->press;
  std::vector<std::string> needs = lacking(!described, key), needs_creep = needs;
  PressState loosest, tightest;
  InterferenceFit lug;
  double friction = 0;
  Known strength;
  if (described) {
    const model::PressFit& press = *pin.fit->press;
    const FitRange range = fit_range(limits_of(press.hole, pin.diameter), limits_of(pin.fit->pin, pin.diameter));
    const double ambient = list.system().scenario.ambient;
    lug = lug_fit(press, pin.diameter, range.smallest_interference(), list.model());
    loosest = press_state(lug, press, ambient);
    tightest = press_state(lug_fit(press, pin.diameter, range.largest_interference(), list.model()), press, ambient);
    friction = press.static_friction;
    strength = hub_strength(press, list.model());
    for (const int material : {press.hub_material, press.pin_material}) {
      const model::Material& of = list.model().materials[static_cast<std::size_t>(material)];
      if (!of.thermal_expansion) needs.push_back(fmt::format("materials.{}.thermal_expansion", of.name));
    }
    list.caution_wall({press.hub_material}, joint.words("outer lugs round the pin"), (press.hub_diameter - pin.diameter) / 2);
    needs_creep = joined({needs, lacking(!press.remaining_share, key + ".remaining_share")});
  }

  // The most that the inner lug can drag at the pin: its friction, in any direction.
  const double share = std::sin(std::atan(pin.friction.static_coefficient));
  const auto slips = [&](const char* kind, const char* words, CheckedLoad load, double arm) {
    PartCheck check;
    check.name = joint.name(kind);
    check.check = joint.words(words);
    check.unit = check.load_unit = load.unit;
    check.load_name = std::move(load.name);
    check.load = std::move(load.of);
    check.demand = itself;
    check.capacity = [lug, friction, arm, pressure = loosest.crept_pressure.value_or(0)](double length) mutable {
      lug.length = length;
      return 2 * slip_force(lug, pressure, friction) * arm;
    };
    check.size_key = key + ".length";
    check.size = lug.length;
    list.add(std::move(check), needs_creep);
  };
  const double radius = pin.diameter / 2;
  const auto turning = [j, arm = share * radius](const Stage& stage, const State&) {
    return PartLoad{arm * stage.hinge[j].radial_reaction};
  };
  const auto along = [j, share](const Stage& stage, const State&) {
    return PartLoad{std::min(std::abs(stage.hinge[j].axial_reaction), share * stage.hinge[j].radial_reaction)};
  };
  slips("press_turning", "pin turned in the outer lugs", {"friction of the inner lug", "N m", turning}, radius);
  slips("press_pull_out", "pin pushed out of the outer lugs", {"drag along the pin", "N", along}, 1);
  list.add(joint.name("press_stress"), joint.words("outer lugs split by the pressed pin"), "Pa",
           {"tightest interference", "m", [at = tightest.interference](const Stage&, const State&) { return PartLoad{at}; }},
           [stress = tightest.equivalent_stress](double, double) { return stress; }, strength, {}, needs);
}

void add_washers(CheckList& list, std::size_t j, const Named& joint) {
  // The flanges of bushings rub where washers would.
  const auto& bushings = joint.hinge.bushings;
  const std::string key = bushings ? "bushings." + bushings->name : joint.key + ".washers";
  const std::string size_key = key + (bushings ? ".flange_diameter" : ".outer_diameter");
  const bool described = joint.hinge.washers.has_value();
  const model::Washers washers = joint.hinge.washers.value_or(model::Washers{});
  const PartStrength part(list.model(), washers.build, key);
  const auto add = [&](const char* kind, const char* words, const char* unit, const CheckedLoad& load, const Known& capacity,
                       const Demand& demand) {
    list.add(joint.name(kind), joint.words(words), unit, load, demand, described ? capacity : Known{},
             {size_key, washers.outer_diameter}, lacking(!described, key));
  };
  // The face that the axial force presses: preload and half of it, or all of it once the other face is free.
  const auto face = [j, preload = washers.preload](const Stage& stage) {
    const double axial = std::abs(stage.hinge[j].axial_reaction);
    return std::max(preload + axial / 2, axial);
  };
  const auto pressing = [face](const Stage& stage, const State&) { return PartLoad{face(stage)}; };
  const auto rubbing = [face, v = list.system().hinges[j].v](const Stage& stage, const State& state) {
    return PartLoad{face(stage) * std::abs(state.v[v])};
  };
  add("washer_pressure", bushings ? "flange of the bushing pressed" : "washer pressed", "Pa", {"force along the pin", "N", pressing}, part.bearing(),
      [washers](double outer, double force) { return annulus_pressure(force, outer, washers.inner_diameter); });
  add("washer_speed", bushings ? "flange of the bushing, pressure × speed" : "washer, pressure × speed", "Pa.m/s", {"force along the pin × turning rate", "N.rad/s", rubbing},
      part.pressure_velocity(),
      [washers](double outer, double load) { return washer_pressure_velocity(load, 1, outer, washers.inner_diameter); });
}

}  // namespace

void add_hinge(CheckList& list, std::size_t j) {
  const model::Body& body = list.model().bodies[static_cast<std::size_t>(list.system().hinges[j].body)];
  const Named joint{*body.hinge, fmt::format("bodies.{}.hinge", body.name)};
  add_pin_and_lugs(list, j, joint);
  add_press(list, j, joint);
  add_washers(list, j, joint);
}

}  // namespace sinewright::strength
