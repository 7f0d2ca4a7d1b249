#include "strength/margin_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include "drive/thermal.h"
#include "simulation/observe.h"
#include "strength/bearing.h"
#include "strength/collar.h"
#include "strength/cord_capacity.h"
#include "strength/d_flat.h"
#include "strength/knot_seat.h"
#include "strength/lug.h"
#include "strength/person_force.h"
#include "strength/pin.h"
#include "strength/pulley_wall.h"
#include "strength/tear_out.h"
#include "strength/touch.h"

namespace sinewright::strength {

namespace {

using simulation::Stage;
using simulation::State;

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

// Collects the checks; each names the keys that it lacks, and goes to the other list if there are any.
class Collector {
 public:
  explicit Collector(const simulation::System& system) : system_(system) {}

  [[nodiscard]] const model::Model& model() const { return system_.model(); }
  [[nodiscard]] const simulation::System& system() const { return system_; }

  void add(PartCheck check, std::vector<std::string> missing) {
    std::sort(missing.begin(), missing.end());
    missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
    if (missing.empty())
      parts_.checks.push_back(std::move(check));
    else
      parts_.not_checked.push_back({std::move(check.name), std::move(check.check), std::move(missing)});
  }

  // Thinner or narrower than the process makes: said, not judged.
  void caution_wall(const model::Build& build, const std::string& what, double wall) {
    caution(build, what, "wall", wall, &model::Material::least_wall);
  }
  void caution_hole(const model::Build& build, const std::string& what, double hole) {
    caution(build, what, "hole", hole, &model::Material::least_hole);
  }

  [[nodiscard]] PartChecks take() { return std::move(parts_); }

 private:
  void caution(const model::Build& build, const std::string& what, const char* feature, double size,
               double model::Material::*least) {
    if (build.material < 0) return;
    const model::Material& material = model().materials[at(build.material)];
    if (size >= material.*least) return;
    parts_.cautions.push_back(fmt::format("{}: {} of {:.4g} mm, {} prints {:.4g} mm at least", what, feature, 1e3 * size,
                                          material.name, 1e3 * material.*least));
  }

  const simulation::System& system_;
  PartChecks parts_;
};

// What a material bears in a part; a strength that is not given is named in `missing`, with the key of the part.
class Strengths {
 public:
  Strengths(const model::Model& model, const model::Build& build, const std::string& part) : layers_(build.layers) {
    if (build.material < 0)
      missing_ = part + ".material";
    else
      material_ = &model.materials[at(build.material)];
  }

  [[nodiscard]] double tension(std::vector<std::string>& missing) const {
    if (!has(&model::Material::strength, "strength", missing)) return 0;
    const double along = material_->strength, across = material_->strength_across;
    if (layers_ == model::Layers::along) return along;
    if (layers_ == model::Layers::across) return has(&model::Material::strength_across, "strength_across", missing) ? across : 0;
    return across > 0 ? std::min(along, across) : along;
  }

  // √3: von Mises. Across the layers shear is weaker as tension is.
  [[nodiscard]] double shear(std::vector<std::string>& missing) const {
    const bool alone = material_ != nullptr && material_->shear_strength > 0 && material_->strength == 0;
    if (alone && layers_ != model::Layers::across) return material_->shear_strength;
    const double directed = tension(missing);
    if (directed == 0) return 0;
    const double along = material_->shear_strength > 0 ? material_->shear_strength : material_->strength / std::numbers::sqrt3;
    return along * directed / material_->strength;
  }

  [[nodiscard]] double bearing(std::vector<std::string>& missing) const {
    return has(&model::Material::bearing_strength, "bearing_strength", missing) ? material_->bearing_strength : 0;
  }
  [[nodiscard]] double pressure_velocity(std::vector<std::string>& missing) const {
    return has(&model::Material::pressure_velocity, "pressure_velocity", missing) ? material_->pressure_velocity : 0;
  }

 private:
  bool has(double model::Material::*value, const char* key, std::vector<std::string>& missing) const {
    if (material_ == nullptr)
      missing.push_back(missing_);
    else if (material_->*value > 0)
      return true;
    else
      missing.push_back(fmt::format("materials.{}.{}", material_->name, key));
    return false;
  }

  const model::Material* material_ = nullptr;
  model::Layers layers_;
  std::string missing_;
};

using LoadOf = std::function<PartLoad(const Stage&, const State&)>;

LoadOf first_tension(std::size_t cord) {
  return [cord](const Stage& stage, const State&) { return PartLoad{stage.chain[cord].tension.front()}; };
}
LoadOf last_tension(std::size_t cord) {
  return [cord](const Stage& stage, const State&) { return PartLoad{stage.chain[cord].tension.back()}; };
}

std::function<double(double)> fixed(double capacity) {
  return [capacity](double) { return capacity; };
}
double itself(double, double load) {
  return load;
}

void add_seat(Collector& all, const std::string& end, const std::string& where, const std::string& key, const std::string& cord,
              const std::optional<model::KnotSeat>& described, const LoadOf& tension) {
  const auto check = [&](const char* kind, const char* words) {
    PartCheck c;
    c.name = fmt::format("{}.{}.{}", kind, cord, end);
    c.check = fmt::format("knot seat of {} in the {}, {}", cord, where, words);
    c.unit = "Pa";
    c.load_name = "tension of " + cord;
    c.load_unit = "N";
    c.load = tension;
    return c;
  };
  PartCheck punching = check("seat_punching", "punched out"), pressure = check("seat_pressure", "pressed in"),
            tear_out = check("seat_tear_out", "torn out");
  if (!described) {
    for (PartCheck* c : {&punching, &pressure, &tear_out}) all.add(std::move(*c), {key});
    return;
  }
  const model::KnotSeat seat = *described;
  const Strengths of(all.model(), seat.build, key);
  std::vector<std::string> missing;
  punching.capacity = fixed(of.shear(missing));
  punching.demand = [seat](double wall, double load) { return punching_shear({seat.knot, seat.hole, wall}, load); };
  punching.size_key = key + ".wall";
  punching.size = seat.wall;
  all.add(std::move(punching), missing);

  missing.clear();
  pressure.capacity = fixed(of.bearing(missing));
  pressure.demand = [seat](double knot, double load) { return seat_pressure({knot, seat.hole, seat.wall}, load); };
  pressure.size_key = key + ".knot";
  pressure.size = seat.knot;
  all.add(std::move(pressure), missing);

  missing.clear();
  if (seat.edge == 0) missing.push_back(key + ".edge");
  tear_out.capacity = fixed(of.shear(missing));
  tear_out.demand = [seat](double edge, double load) { return tear_out_stress({seat.hole, edge, seat.wall}, load); };
  tear_out.size_key = key + ".edge";
  tear_out.size = seat.edge;
  all.add(std::move(tear_out), missing);
  all.caution_wall(seat.build, "knot seat in the " + where, seat.wall);
  all.caution_hole(seat.build, "knot seat in the " + where, seat.hole);
}

void add_cord(Collector& all, std::size_t c) {
  const simulation::System& system = all.system();
  const model::Cord& cord = all.model().cords[at(system.cords[c].cord)];
  const model::Line& line = all.model().lines[at(cord.line)];
  const std::string breaking_key = fmt::format("lines.{}.breaking_force", line.name);
  {
    PartCheck knot;
    knot.name = "cord_knot." + cord.name;
    knot.check = cord.name + " at its knot";
    knot.unit = knot.load_unit = "N";
    knot.load_name = "tension of " + cord.name;
    knot.places = {"its start", "its end"};
    knot.load = [c](const Stage& stage, const State&) {
      const double first = stage.chain[c].tension.front(), last = stage.chain[c].tension.back();
      return first >= last ? PartLoad{first, 1, 0} : PartLoad{last, 1, 1};
    };
    knot.demand = itself;
    std::vector<std::string> missing;
    if (line.breaking_force == 0) missing.push_back(breaking_key);
    if (!cord.knot) missing.push_back(fmt::format("cords.{}.knot", cord.name));
    knot.capacity = [share = cord.knot ? cord.knot->efficiency : 1](double force) { return knotted_capacity(force, share); };
    knot.size_key = breaking_key;
    knot.size = line.breaking_force;
    knot.size_unit = "N";
    all.add(std::move(knot), missing);
  }
  {
    // The pulley first, then every node; a place's share of the breaking force follows from its radius to the cord's inner side.
    PartCheck bent;
    bent.name = "cord_bend." + cord.name;
    bent.check = cord.name + " over its tightest bend";
    bent.unit = bent.load_unit = "N";
    bent.load_name = "tension of " + cord.name;
    std::vector<std::string> missing;
    if (line.breaking_force == 0) missing.push_back(breaking_key);
    std::vector<double> share;
    const int drive = system.cords[c].drive;
    bent.places.push_back(drive < 0 ? "its start" : "the pulley");
    share.push_back(drive < 0 ? 1 : bend_efficiency(2 * all.model().drives[at(drive)].pulley.radius, line.diameter));
    const auto& nodes = system.cords[c].path.nodes();
    const std::vector<std::string> names = simulation::node_names(system, c);
    for (std::size_t k = 0; k < nodes.size(); ++k) {
      bent.places.push_back(names[k]);
      share.push_back(bend_efficiency(std::max(0.0, 2 * nodes[k].radius - line.diameter), line.diameter));
    }
    for (std::size_t i = 0; i < cord.path.size(); ++i)
      if (const auto* bend = std::get_if<model::Bend>(&cord.path[i]); bend != nullptr && bend->radius == 0)
        missing.push_back(fmt::format("cords.{}.path.{}.radius", cord.name, i));
    bent.load = [c, share](const Stage& stage, const State&) {
      const auto& tension = stage.chain[c].tension;
      PartLoad worst{tension.front(), share[0], 0};
      for (std::size_t k = 1; k < share.size(); ++k) {
        const double pull = std::max(tension[k - 1], tension[k]);
        if (pull * worst.share > worst.value * share[k]) worst = {pull, share[k], static_cast<int>(k)};
      }
      return worst;
    };
    bent.demand = itself;
    bent.capacity = [](double force) { return force; };
    bent.size_key = breaking_key;
    bent.size = line.breaking_force;
    bent.size_unit = "N";
    all.add(std::move(bent), missing);
  }
  if (!std::holds_alternative<model::LinearLaw>(line.law)) {
    PartCheck stretch;
    stretch.name = "stretch." + cord.name;
    stretch.check = "stretch of " + cord.name;
    stretch.unit = stretch.load_unit = "1";
    stretch.load_name = "length over free length";
    stretch.load = [c](const Stage& stage, const State&) {
      return PartLoad{*std::max_element(stage.chain[c].stretch.begin(), stage.chain[c].stretch.end())};
    };
    stretch.demand = [](double, double length) { return std::max(0.0, length - 1); };
    stretch.capacity = fixed(line.breaking_stretch - 1);
    std::vector<std::string> missing;
    if (line.breaking_stretch == 0) missing.push_back(fmt::format("lines.{}.breaking_stretch", line.name));
    all.add(std::move(stretch), missing);
  }
  if (const auto* start = std::get_if<model::Anchor>(&cord.path.front()))
    add_seat(all, "start", all.model().bodies[at(start->body)].name, fmt::format("cords.{}.path.0.seat", cord.name), cord.name,
             start->seat, first_tension(c));
  if (const auto* start = std::get_if<model::PulleyEnd>(&cord.path.front())) {
    const model::Drive& drive = all.model().drives[at(start->drive)];
    add_seat(all, "pulley", "pulley", fmt::format("drives.{}.pulley.knot_seat", drive.name), cord.name, drive.pulley.knot_seat,
             first_tension(c));
  }
  if (const auto* end = std::get_if<model::Anchor>(&cord.path.back()))
    add_seat(all, "end", all.model().bodies[at(end->body)].name,
             fmt::format("cords.{}.path.{}.seat", cord.name, cord.path.size() - 1), cord.name, end->seat, last_tension(c));
}

void add_pulley(Collector& all, std::size_t d) {
  const simulation::System& system = all.system();
  const model::Drive& drive = all.model().drives[d];
  const model::Pulley& pulley = drive.pulley;
  const std::string key = fmt::format("drives.{}.pulley", drive.name);
  const Strengths of(all.model(), pulley.build, key);
  const int q = system.shafts[d].q_output;
  const model::Bore bore = pulley.bore.value_or(model::Bore{});
  const DFlat flat{bore.diameter, bore.flat_depth, bore.length};
  const auto check = [&](const char* kind, const char* words) {
    PartCheck c;
    c.name = fmt::format("{}.{}", kind, drive.name);
    c.check = fmt::format("pulley of {}, {}", drive.name, words);
    c.unit = "Pa";
    return c;
  };
  const auto bore_missing = [&] { return pulley.bore ? std::vector<std::string>{} : std::vector<std::string>{key + ".bore"}; };
  // The cord on this pulley; without one nothing pulls.
  int cord = -1;
  for (std::size_t c = 0; c < system.cords.size(); ++c)
    if (system.cords[c].drive == static_cast<int>(d)) cord = static_cast<int>(c);
  const double cord_diameter =
      cord < 0 ? 0 : all.model().lines[at(all.model().cords[at(system.cords[at(cord)].cord)].line)].diameter;
  const auto pull = [cord](const Stage& stage) { return cord < 0 ? 0.0 : stage.chain[at(cord)].tension.front(); };

  {
    PartCheck c = check("shaft_flat", "flat of the bore");
    c.load_name = "torque on the shaft";
    c.load_unit = "N m";
    c.load = [d](const Stage& stage, const State&) { return PartLoad{std::abs(stage.shaft[d].load_torque)}; };
    c.demand = [flat](double length, double torque) {
      return flat_pressure({flat.shaft_diameter, flat.flat_depth, length}, torque);
    };
    std::vector<std::string> missing = bore_missing();
    c.capacity = fixed(of.bearing(missing));
    c.size_key = key + ".bore.length";
    c.size = bore.length;
    all.add(std::move(c), missing);
  }
  const auto ring = [pulley, bore](double radius) {
    return PulleyWall{bore.diameter, 2 * radius, bore.length, pulley.wall_eccentricity};
  };
  {
    PartCheck c = check("pulley_splitting", "wall split");
    c.load_name = "cord's pull and the flat's force";
    c.load_unit = "N";
    const double reach = pulley.bore ? half_chord(flat) : 1;
    c.load = [d, pull, reach](const Stage& stage, const State&) {
      return PartLoad{pull(stage) + 1.5 * std::abs(stage.shaft[d].load_torque) / reach};  // flat_force
    };
    c.demand = [ring](double radius, double force) { return wall_splitting_stress(ring(radius), force); };
    std::vector<std::string> missing = bore_missing();
    c.capacity = fixed(of.tension(missing));
    c.size_key = key + ".radius";
    c.size = pulley.radius;
    all.add(std::move(c), missing);
  }
  if (cord >= 0) {
    // The turns lie side by side, then over each other; what they press spreads at 45° through the wall on either side.
    PartCheck c = check("pulley_winding", "wall squeezed by the winding");
    c.load_name = "winding's pull over the width it spreads on";
    c.load_unit = "N/m";
    const double wall = pulley.bore ? remaining_wall(ring(pulley.radius)) : 0, most = bore.length;
    c.load = [=, turns = pulley.turns_per_layer](const Stage& stage, const State& state) {
      const double wound = std::max(1.0, state.q[q] / (2 * std::numbers::pi));
      const double beside = turns > 0 ? std::min(wound, std::max(1.0, turns)) : wound;
      const double layers = turns > 0 ? std::ceil(wound / turns - 1e-9) : 1;
      const double width = std::min(beside * cord_diameter + 2 * wall, most);
      return PartLoad{pull(stage) * beside * std::max(1.0, layers) / width};
    };
    c.demand = [ring](double radius, double load) {
      return wall_hoop_compression(ring(radius), winding_pressure(load, radius, 1, 1));
    };
    std::vector<std::string> missing = bore_missing();
    c.capacity = fixed(of.tension(missing));
    c.size_key = key + ".radius";
    c.size = pulley.radius;
    all.add(std::move(c), missing);
  }
  {
    PartCheck c = check("flange", "flange bent");
    c.load_name = "cord's sideways push";
    c.load_unit = "N";
    const model::Flange flange = pulley.flange.value_or(model::Flange{});
    c.load = [pull, share = std::sin(flange.fleet_angle)](const Stage& stage, const State&) {
      return PartLoad{share * pull(stage)};
    };
    c.demand = [flange](double thickness, double force) {
      return flange_root_stress(force, flange.height, thickness, flange.width);
    };
    std::vector<std::string> missing;
    if (!pulley.flange) missing.push_back(key + ".flange");
    c.capacity = fixed(of.tension(missing));
    c.size_key = key + ".flange.thickness";
    c.size = flange.thickness;
    all.add(std::move(c), missing);
    if (pulley.flange) all.caution_wall(pulley.build, "flange of the pulley of " + drive.name, flange.thickness);
  }
  {
    PartCheck c = check("collar", "sensor collar twisted");
    c.load_name = "torque of the sensor";
    c.load_unit = "N m";
    const model::SensorCollar collar = pulley.collar.value_or(model::SensorCollar{});
    c.load = [collar](const Stage&, const State&) { return PartLoad{collar.torque}; };
    c.demand = [collar](double outer, double torque) { return torsion_shear({outer, collar.inner_diameter}, torque); };
    std::vector<std::string> missing;
    if (!pulley.collar) missing.push_back(key + ".collar");
    c.capacity = fixed(of.shear(missing));
    c.size_key = key + ".collar.outer_diameter";
    c.size = collar.outer_diameter;
    all.add(std::move(c), missing);
    if (pulley.collar)
      all.caution_wall(pulley.build, "collar of the pulley of " + drive.name,
                       (collar.outer_diameter - collar.inner_diameter) / 2);
  }
  if (pulley.bore) {
    all.caution_wall(pulley.build, "pulley of " + drive.name, remaining_wall(ring(pulley.radius)));
    all.caution_hole(pulley.build, "pulley of " + drive.name, bore.diameter);
  }
}

void add_drive(Collector& all, std::size_t d) {
  const model::Drive& drive = all.model().drives[d];
  const double ambient = all.system().scenario.ambient;
  {
    PartCheck c;
    c.name = "gear_torque." + drive.name;
    c.check = fmt::format("gearhead of {}, output torque", drive.name);
    c.unit = c.load_unit = "N m";
    c.load_name = "torque on the shaft";
    c.load = [d](const Stage& stage, const State&) { return PartLoad{std::abs(stage.shaft[d].load_torque)}; };
    c.demand = itself;
    c.capacity = fixed(drive.gearhead.torque_rating);
    std::vector<std::string> missing;
    if (drive.gearhead.torque_rating == 0) missing.push_back(fmt::format("gearheads.{}.torque_rating", drive.gearhead.name));
    all.add(std::move(c), missing);
  }
  // Counted as rise over the surroundings; see service_margins.h.
  const auto heat = [&](const char* kind, const char* words, double drive::ThermalState::*node, double limit,
                        const std::string& key) {
    PartCheck c;
    c.name = fmt::format("{}.{}", kind, drive.name);
    c.check = fmt::format("{} of {}, rise over ambient", words, drive.name);
    c.unit = c.load_unit = "K";
    c.load_name = "temperature";
    c.load = [d, node](const Stage&, const State& state) { return PartLoad{state.temperature[d].*node}; };
    c.demand = [ambient](double, double temperature) { return std::max(0.0, temperature - ambient); };
    c.capacity = fixed(limit - ambient);
    std::vector<std::string> missing;
    if (limit == 0) missing.push_back(key);
    if (!drive::has_thermal_network(drive.motor))
      missing.push_back(fmt::format("motors.{}.winding_to_housing", drive.motor.name));
    all.add(std::move(c), missing);
  };
  using Heat = drive::ThermalState;
  heat("winding_temperature", "heat of the winding", &Heat::winding, drive.motor.highest_winding_temperature,
       fmt::format("motors.{}.highest_winding_temperature", drive.motor.name));
  heat("housing_temperature", "heat of the housing", &Heat::housing, drive.motor.highest_housing_temperature,
       fmt::format("motors.{}.highest_housing_temperature", drive.motor.name));
  const bool metal = drive.touch && drive.touch->surface == model::Touch::Surface::metal;
  heat("touch_temperature", "touch of the housing", &Heat::housing,
       drive.touch ? burn_threshold(metal ? TouchSurface::bare_metal : TouchSurface::plastic, drive.touch->time) : 0,
       fmt::format("drives.{}.touch", drive.name));
}

void add_hinge(Collector& all, std::size_t j) {
  const model::Body& body = all.model().bodies[at(all.system().hinges[j].body)];
  const model::Hinge& hinge = *body.hinge;
  const std::string key = fmt::format("bodies.{}.hinge", body.name);
  const model::Pin pin = hinge.pin.value_or(model::Pin{});
  const PinJoint joint{pin.diameter, pin.eye_width, pin.cheek_width, pin.gap};
  const auto check = [&](const char* kind, const char* words) {
    PartCheck c;
    c.name = fmt::format("{}.{}", kind, hinge.name);
    c.check = fmt::format("{} at {}", words, hinge.name);
    c.unit = "Pa";
    c.load_name = "force across the pin";
    c.load_unit = "N";
    c.load = [j](const Stage& stage, const State&) { return PartLoad{stage.hinge[j].radial_reaction}; };
    return c;
  };
  enum Width { none = 0, eye = 1, cheek = 2, gap = 4 };
  const auto needs = [&](int widths) {
    if (!hinge.pin) return std::vector<std::string>{key + ".pin"};
    std::vector<std::string> missing;
    if ((widths & eye) && pin.eye_width == 0) missing.push_back(key + ".pin.eye_width");
    if ((widths & cheek) && pin.cheek_width == 0) missing.push_back(key + ".pin.cheek_width");
    if ((widths & gap) && pin.gap < 0) missing.push_back(key + ".pin.gap");
    return missing;
  };
  const auto sized = [](PinJoint with, double diameter) {
    with.diameter = diameter;
    return with;
  };
  const Strengths of_pin(all.model(), pin.build, key + ".pin");
  {
    PartCheck c = check("pin_shear", "pin sheared");
    // Mean shear asks for nothing but the diameter; widths of 1 stand in, so that the law has a whole joint.
    c.demand = [joint](double diameter, double force) {
      return pin_peak_shear({diameter, 1, 1, joint.gap >= 0 ? joint.gap : 0}, force);
    };
    std::vector<std::string> missing = needs(none);
    c.capacity = fixed(hinge.pin ? of_pin.shear(missing) : 0);
    c.size_key = key + ".pin.diameter";
    c.size = pin.diameter;
    all.add(std::move(c), missing);
  }
  {
    PartCheck c = check("pin_bending", "pin bent");
    c.demand = [joint, sized](double diameter, double force) { return pin_bending_stress(sized(joint, diameter), force); };
    std::vector<std::string> missing = needs(eye | cheek | gap);
    c.capacity = fixed(hinge.pin ? of_pin.tension(missing) : 0);
    c.size_key = key + ".pin.diameter";
    c.size = pin.diameter;
    all.add(std::move(c), missing);
  }

  const model::Lug lug = hinge.lug.value_or(model::Lug{});
  const Strengths of_lug(all.model(), lug.build, key + ".lug");
  const auto lug_needs = [&](int widths) {
    std::vector<std::string> missing = needs(widths);
    if (!hinge.lug) missing.push_back(key + ".lug");
    return missing;
  };
  {
    PartCheck c = check("eye_bearing", "inner lug pressed by the pin");
    c.demand = [pin](double width, double force) { return bearing_pressure(force, pin.diameter, width); };
    std::vector<std::string> missing = lug_needs(eye);
    c.capacity = fixed(hinge.lug ? of_lug.bearing(missing) : 0);
    c.size_key = key + ".pin.eye_width";
    c.size = pin.eye_width;
    all.add(std::move(c), missing);
  }
  {
    PartCheck c = check("cheek_bearing", "outer lugs pressed by the pin");
    c.demand = [pin](double width, double force) { return bearing_pressure(force / 2, pin.diameter, width); };
    std::vector<std::string> missing = lug_needs(cheek);
    c.capacity = fixed(hinge.lug ? of_lug.bearing(missing) : 0);
    c.size_key = key + ".pin.cheek_width";
    c.size = pin.cheek_width;
    all.add(std::move(c), missing);
  }
  const double hole = pin.diameter + pin.radial_clearance;
  {
    PartCheck c = check("lug_tension", "lug torn beside its hole");
    c.demand = [=](double width, double force) { return net_section_stress({{hole, lug.edge, pin.eye_width}, width}, force); };
    std::vector<std::string> missing = lug_needs(eye);
    c.capacity = fixed(hinge.lug ? of_lug.tension(missing) : 0);
    c.size_key = key + ".lug.width";
    c.size = lug.width;
    all.add(std::move(c), missing);
  }
  {
    PartCheck c = check("lug_tear_out", "lug's end torn out");
    c.demand = [=](double edge, double force) { return tear_out_stress({hole, edge, pin.eye_width}, force); };
    std::vector<std::string> missing = lug_needs(eye);
    c.capacity = fixed(hinge.lug ? of_lug.shear(missing) : 0);
    c.size_key = key + ".lug.edge";
    c.size = lug.edge;
    all.add(std::move(c), missing);
  }
  if (hinge.lug) {
    all.caution_wall(lug.build, "lug at " + hinge.name, std::min((lug.width - hole) / 2, lug.edge - hole / 2));
    all.caution_hole(lug.build, "lug at " + hinge.name, hole);
    if (pin.cheek_width > 0) all.caution_wall(lug.build, "outer lugs at " + hinge.name, pin.cheek_width);
  }

  const model::Washers washers = hinge.washers.value_or(model::Washers{});
  const Strengths of_washer(all.model(), washers.build, key + ".washers");
  // The face that the axial force presses: preload and half of it, or all of it once the other face is free.
  const auto face = [j, preload = washers.preload](const Stage& stage) {
    const double axial = std::abs(stage.hinge[j].axial_reaction);
    return std::max(preload + axial / 2, axial);
  };
  {
    PartCheck c = check("washer_pressure", "washer pressed");
    c.load_name = "force along the pin";
    c.load = [face](const Stage& stage, const State&) { return PartLoad{face(stage)}; };
    c.demand = [washers](double outer, double force) { return annulus_pressure(force, outer, washers.inner_diameter); };
    std::vector<std::string> missing;
    if (!hinge.washers) missing.push_back(key + ".washers");
    c.capacity = fixed(hinge.washers ? of_washer.bearing(missing) : 0);
    c.size_key = key + ".washers.outer_diameter";
    c.size = washers.outer_diameter;
    all.add(std::move(c), missing);
  }
  {
    PartCheck c = check("washer_speed", "washer, pressure × speed");
    c.unit = "Pa.m/s";
    c.load_name = "force along the pin × turning rate";
    c.load_unit = "N.rad/s";
    c.load = [face, v = all.system().hinges[j].v](const Stage& stage, const State& state) {
      return PartLoad{face(stage) * std::abs(state.v[v])};
    };
    c.demand = [washers](double outer, double load) { return washer_pressure_velocity(load, 1, outer, washers.inner_diameter); };
    std::vector<std::string> missing;
    if (!hinge.washers) missing.push_back(key + ".washers");
    c.capacity = fixed(hinge.washers ? of_washer.pressure_velocity(missing) : 0);
    c.size_key = key + ".washers.outer_diameter";
    c.size = washers.outer_diameter;
    all.add(std::move(c), missing);
  }
}

void add_person(Collector& all) {
  PartCheck c;
  c.name = "person_force";
  c.check = "force on a person, if a hand is gripped";
  c.unit = c.load_unit = "N";
  c.load_name = "normal force";
  for (const auto& contact : all.system().contacts) c.places.push_back(contact.name);
  c.load = [](const Stage& stage, const State&) {
    PartLoad most;
    for (std::size_t i = 0; i < stage.contact.size(); ++i)
      if (stage.contact[i].normal_force > most.value) most = {stage.contact[i].normal_force, 1, static_cast<int>(i)};
    return most;
  };
  c.demand = itself;
  c.capacity = fixed(hand_force_limit);
  std::vector<std::string> missing;
  if (c.places.empty()) missing.push_back("objects that a shape can touch, in the scenario");
  all.add(std::move(c), missing);
}

}  // namespace

PartChecks part_checks(const simulation::System& system) {
  Collector all(system);
  for (std::size_t c = 0; c < system.cords.size(); ++c) add_cord(all, c);
  for (std::size_t d = 0; d < system.shafts.size(); ++d) {
    add_pulley(all, d);
    add_drive(all, d);
  }
  for (std::size_t j = 0; j < system.hinges.size(); ++j) add_hinge(all, j);
  add_person(all);
  return all.take();
}

}  // namespace sinewright::strength
