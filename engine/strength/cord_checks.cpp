#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "simulation/observe.h"
#include "strength/bearing.h"
#include "strength/check_list.h"
#include "strength/cord_capacity.h"
#include "strength/knot_seat.h"
#include "strength/tear_out.h"

namespace sinewright::strength {

namespace {

using simulation::Stage;
using simulation::State;

std::size_t at(int i) {
  return static_cast<std::size_t>(i);
}

void add_seat(CheckList& list, const std::string& end, const std::string& where, const std::string& key, const std::string& cord,
              const std::optional<model::KnotSeat>& described, const CheckedLoad& tension) {
  const model::KnotSeat seat = described.value_or(model::KnotSeat{});
  const PartStrength part(list.model(), seat.build, key);
  const auto add = [&](const char* kind, const char* words, const Known& capacity, const Size& size, const Demand& demand,
                       std::vector<std::string> needs = {}) {
    if (!described) needs = {key};
    list.add(fmt::format("{}.{}.{}", kind, cord, end), fmt::format("knot seat of {} in the {}, {}", cord, where, words), "Pa",
             tension, demand, described ? capacity : Known{}, size, needs);
  };
  add("seat_punching", "punched out", part.shear(), {key + ".wall", seat.wall},
      [seat](double wall, double load) { return punching_shear({seat.knot, seat.hole, wall}, load); });
  add("seat_pressure", "pressed in", part.bearing(), {key + ".knot", seat.knot},
      [seat](double knot, double load) { return seat_pressure({knot, seat.hole, seat.wall}, load); });
  add("seat_tear_out", "torn out", part.shear(), {key + ".edge", seat.edge},
      [seat](double edge, double load) { return tear_out_stress({seat.hole, edge, seat.wall}, load); },
      lacking(seat.edge == 0, key + ".edge"));
  if (!described) return;
  list.caution_wall(seat.build, "knot seat in the " + where, seat.wall);
  list.caution_hole(seat.build, "knot seat in the " + where, seat.hole);
}

void add_knot(CheckList& list, std::size_t c, const model::Cord& cord, const model::Line& line, const std::string& breaking_key) {
  PartCheck knot;
  knot.name = "cord_knot." + cord.name;
  knot.check = cord.name + " at its knot";
  knot.unit = knot.load_unit = knot.size_unit = "N";
  knot.load_name = "tension of " + cord.name;
  knot.places = {"its start", "its end"};
  knot.load = [c](const Stage& stage, const State&) {
    const double first = stage.chain[c].tension.front(), last = stage.chain[c].tension.back();
    return first >= last ? PartLoad{first, 1, 0} : PartLoad{last, 1, 1};
  };
  knot.demand = itself;
  knot.capacity = [share = cord.knot ? cord.knot->efficiency : 1](double force) { return knotted_capacity(force, share); };
  knot.size_key = breaking_key;
  knot.size = line.breaking_force;
  list.add(std::move(knot), joined({lacking(line.breaking_force == 0, breaking_key),
                                    lacking(!cord.knot, fmt::format("cords.{}.knot", cord.name))}));
}

// The pulley first, then every node; a place's share of the breaking force follows from its radius to the cord's inner side.
void add_bend(CheckList& list, std::size_t c, const model::Cord& cord, const model::Line& line, const std::string& breaking_key) {
  const simulation::CordSystem& system = list.system().cords[c];
  PartCheck bent;
  bent.name = "cord_bend." + cord.name;
  bent.check = cord.name + " over its tightest bend";
  bent.unit = bent.load_unit = bent.size_unit = "N";
  bent.load_name = "tension of " + cord.name;
  std::vector<double> share;
  bent.places.push_back(system.drive < 0 ? "its start" : "the pulley");
  share.push_back(system.drive < 0 ? 1 : bend_efficiency(2 * list.model().drives[at(system.drive)].pulley.radius, line.diameter));
  const auto& nodes = system.path.nodes();
  const std::vector<std::string> names = simulation::node_names(list.system(), c);
  for (std::size_t k = 0; k < nodes.size(); ++k) {
    bent.places.push_back(names[k]);
    share.push_back(bend_efficiency(std::max(0.0, 2 * nodes[k].radius - line.diameter), line.diameter));
  }
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
  std::vector<std::string> missing = lacking(line.breaking_force == 0, breaking_key);
  for (std::size_t i = 0; i < cord.path.size(); ++i)
    if (const auto* bend = std::get_if<model::Bend>(&cord.path[i]); bend != nullptr && bend->radius == 0)
      missing.push_back(fmt::format("cords.{}.path.{}.radius", cord.name, i));
  list.add(std::move(bent), std::move(missing));
}

}  // namespace

void add_cord(CheckList& list, std::size_t c) {
  const model::Model& model = list.model();
  const model::Cord& cord = model.cords[at(list.system().cords[c].cord)];
  const model::Line& line = model.lines[at(cord.line)];
  const std::string breaking_key = fmt::format("lines.{}.breaking_force", line.name);
  add_knot(list, c, cord, line, breaking_key);
  add_bend(list, c, cord, line, breaking_key);
  if (!std::holds_alternative<model::LinearLaw>(line.law)) {
    const auto longest = [c](const Stage& stage, const State&) {
      return PartLoad{*std::max_element(stage.chain[c].stretch.begin(), stage.chain[c].stretch.end())};
    };
    const Known capacity{line.breaking_stretch - 1,
                         lacking(line.breaking_stretch == 0, fmt::format("lines.{}.breaking_stretch", line.name))};
    list.add("stretch." + cord.name, "stretch of " + cord.name, "1", {"length over free length", "1", longest},
             [](double, double length) { return std::max(0.0, length - 1); }, capacity);
  }
  const CheckedLoad first{"tension of " + cord.name, "N",
                          [c](const Stage& stage, const State&) { return PartLoad{stage.chain[c].tension.front()}; }};
  const CheckedLoad last{"tension of " + cord.name, "N",
                         [c](const Stage& stage, const State&) { return PartLoad{stage.chain[c].tension.back()}; }};
  if (const auto* start = std::get_if<model::Anchor>(&cord.path.front()))
    add_seat(list, "start", model.bodies[at(start->body)].name, fmt::format("cords.{}.path.0.seat", cord.name), cord.name,
             start->seat, first);
  if (const auto* start = std::get_if<model::PulleyEnd>(&cord.path.front())) {
    const model::Drive& drive = model.drives[at(start->drive)];
    add_seat(list, "pulley", "pulley", fmt::format("drives.{}.pulley.knot_seat", drive.name), cord.name, drive.pulley.knot_seat,
             first);
  }
  if (const auto* end = std::get_if<model::Anchor>(&cord.path.back()))
    add_seat(list, "end", model.bodies[at(end->body)].name, fmt::format("cords.{}.path.{}.seat", cord.name, cord.path.size() - 1),
             cord.name, end->seat, last);
}

}  // namespace sinewright::strength
