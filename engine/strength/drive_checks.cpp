#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "drive/thermal.h"
#include "strength/check_list.h"
#include "strength/collar.h"
#include "strength/d_flat.h"
#include "strength/pulley_wall.h"
#include "strength/touch.h"

namespace sinewright::strength {

namespace {

using simulation::Stage;
using simulation::State;

CheckedLoad shaft_torque(std::size_t d) {
  return {"torque on the shaft", "N m",
          [d](const Stage& stage, const State&) { return PartLoad{std::abs(stage.shaft[d].load_torque)}; }};
}

void add_pulley(CheckList& list, std::size_t d) {
  const simulation::System& system = list.system();
  const model::Drive& drive = list.model().drives[d];
  const model::Pulley& pulley = drive.pulley;
  const std::string key = fmt::format("drives.{}.pulley", drive.name);
  const PartStrength part(list.model(), pulley.build, key);
  const model::Bore bore = pulley.bore.value_or(model::Bore{});
  const DFlat flat{bore.diameter, bore.flat_depth, bore.length};
  const auto ring = [pulley, bore](double radius) {
    return PulleyWall{bore.diameter, 2 * radius, bore.length, pulley.wall_eccentricity};
  };
  const auto no_bore = lacking(!pulley.bore, key + ".bore");
  const Size radius{key + ".radius", pulley.radius};
  const auto add = [&](const char* kind, const char* words, const CheckedLoad& load, const Known& capacity, const Size& size,
                       const Demand& demand, const std::vector<std::string>& needs) {
    list.add(fmt::format("{}.{}", kind, drive.name), fmt::format("pulley of {}, {}", drive.name, words), "Pa", load, demand,
             capacity, size, needs);
  };
  // The cord on this pulley; without one nothing pulls.
  int cord = -1;
  for (std::size_t c = 0; c < system.cords.size(); ++c)
    if (system.cords[c].drive == static_cast<int>(d)) cord = static_cast<int>(c);
  const auto pull = [cord](const Stage& stage) {
    return cord < 0 ? 0.0 : stage.chain[static_cast<std::size_t>(cord)].tension.front();
  };

  add("shaft_flat", "flat of the bore", shaft_torque(d), part.bearing(), {key + ".bore.length", bore.length},
      [flat](double length, double torque) { return flat_pressure({flat.shaft_diameter, flat.flat_depth, length}, torque); },
      no_bore);

  const double reach = pulley.bore ? half_chord(flat) : 1;
  const auto splitting = [d, pull, reach](const Stage& stage, const State&) {
    return PartLoad{pull(stage) + 1.5 * std::abs(stage.shaft[d].load_torque) / reach};  // flat_force
  };
  add("pulley_splitting", "wall split", {"cord's pull and the flat's force", "N", splitting}, part.tension(), radius,
      [ring](double r, double force) { return wall_splitting_stress(ring(r), force); }, no_bore);

  if (cord >= 0) {
    // The turns lie side by side, then over each other; what they press spreads at 45° through the wall on either side.
    const model::Cord& wound_cord = list.model().cords[static_cast<std::size_t>(system.cords[static_cast<std::size_t>(cord)].cord)];
    const double cord_diameter = list.model().lines[static_cast<std::size_t>(wound_cord.line)].diameter;
    const double wall = pulley.bore ? remaining_wall(ring(pulley.radius)) : 0, most = bore.length;
    const int q = system.shafts[d].q_output;
    const auto winding = [=, turns = pulley.turns_per_layer](const Stage& stage, const State& state) {
      const double wound = std::max(1.0, state.q[q] / (2 * std::numbers::pi));
      const double beside = turns > 0 ? std::min(wound, std::max(1.0, turns)) : wound;
      const double layers = turns > 0 ? std::ceil(wound / turns - 1e-9) : 1;
      const double width = std::min(beside * cord_diameter + 2 * wall, most);
      return PartLoad{pull(stage) * beside * std::max(1.0, layers) / width};
    };
    add("pulley_winding", "wall squeezed by the winding", {"winding's pull over the width it spreads on", "N/m", winding},
        part.tension(), radius,
        [ring](double r, double load) { return wall_hoop_compression(ring(r), winding_pressure(load, r, 1, 1)); }, no_bore);
  }

  const model::Flange flange = pulley.flange.value_or(model::Flange{});
  const auto sideways = [pull, share = std::sin(flange.fleet_angle)](const Stage& stage, const State&) {
    return PartLoad{share * pull(stage)};
  };
  add("flange", "flange bent", {"cord's sideways push", "N", sideways}, part.tension(), {key + ".flange.thickness", flange.thickness},
      [flange](double thickness, double force) { return flange_root_stress(force, flange.height, thickness, flange.width); },
      lacking(!pulley.flange, key + ".flange"));

  const model::SensorCollar collar = pulley.collar.value_or(model::SensorCollar{});
  const auto sensor = [collar](const Stage&, const State&) { return PartLoad{collar.torque}; };
  add("collar", "sensor collar twisted", {"torque of the sensor", "N m", sensor}, part.shear(),
      {key + ".collar.outer_diameter", collar.outer_diameter},
      [collar](double outer, double torque) { return torsion_shear({outer, collar.inner_diameter}, torque); },
      lacking(!pulley.collar, key + ".collar"));

  const std::string of = "pulley of " + drive.name;
  if (pulley.flange) list.caution_wall(pulley.build, "flange of the " + of, flange.thickness);
  if (pulley.collar) list.caution_wall(pulley.build, "collar of the " + of, (collar.outer_diameter - collar.inner_diameter) / 2);
  if (pulley.bore) {
    list.caution_wall(pulley.build, of, remaining_wall(ring(pulley.radius)));
    list.caution_hole(pulley.build, of, bore.diameter);
  }
}

// Counted as rise over the surroundings; see service_margins.h.
void add_heat(CheckList& list, std::size_t d) {
  const model::Drive& drive = list.model().drives[d];
  const model::Motor& motor = drive.motor;
  const double ambient = list.system().scenario.ambient;
  const std::string motor_key = fmt::format("motors.{}.", motor.name);
  using Heat = drive::ThermalState;
  const auto add = [&](const char* kind, const char* words, double Heat::*node, double limit, const std::string& key) {
    const auto temperature = [d, node](const Stage&, const State& state) { return PartLoad{state.temperature[d].*node}; };
    list.add(fmt::format("{}.{}", kind, drive.name), fmt::format("{} of {}, rise over ambient", words, drive.name), "K",
             {"temperature", "K", temperature}, [ambient](double, double t) { return std::max(0.0, t - ambient); },
             {limit - ambient, lacking(limit == 0, key)}, {},
             lacking(!drive::has_thermal_network(motor), motor_key + "winding_to_housing"));
  };
  add("winding_temperature", "heat of the winding", &Heat::winding, motor.highest_winding_temperature,
      motor_key + "highest_winding_temperature");
  add("housing_temperature", "heat of the housing", &Heat::housing, motor.highest_housing_temperature,
      motor_key + "highest_housing_temperature");
  const bool metal = drive.touch && drive.touch->surface == model::Touch::Surface::metal;
  add("touch_temperature", "touch of the housing", &Heat::housing,
      drive.touch ? burn_threshold(metal ? TouchSurface::bare_metal : TouchSurface::plastic, drive.touch->time) : 0,
      fmt::format("drives.{}.touch", drive.name));
}

}  // namespace

void add_drive(CheckList& list, std::size_t d) {
  const model::Drive& drive = list.model().drives[d];
  const double rating = drive.gearhead.torque_rating;
  add_pulley(list, d);
  list.add("gear_torque." + drive.name, fmt::format("gearhead of {}, output torque", drive.name), "N m", shaft_torque(d), itself,
           {rating, lacking(rating == 0, fmt::format("gearheads.{}.torque_rating", drive.gearhead.name))});
  add_heat(list, d);
}

}  // namespace sinewright::strength
