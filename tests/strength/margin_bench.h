#pragma once

// The demo finger forced open, with what its margins need described or taken away, and loads put in by hand.

#include <map>
#include <numbers>
#include <string>
#include <vector>

#include "reading/reading.h"
#include "simulation/run.h"
#include "strength/margin_watch.h"

namespace margin_bench {

using namespace sinewright;
constexpr double pi = std::numbers::pi;

inline model::Scenario read(const std::string& name, const std::vector<std::string>& overrides = {}) {
  reading::Source source;
  return reading::read_scenario(source, SINEWRIGHT_SOURCE_DIR "/scenarios/" + name, overrides);
}

// Everything of the demo finger is described.
inline model::Scenario described() { return read("forced-open.yaml", {"require=[]"}); }

// The same with all that is only there for margins taken away.
inline model::Scenario bare() {
  model::Scenario scenario = read("forced-open.yaml", {"require=[]"});
  model::Model& m = scenario.model;
  for (auto& material : m.materials) {
    model::Material plain;
    plain.name = material.name;
    plain.density = material.density, plain.modulus = material.modulus, plain.poisson = material.poisson;
    material = plain;
  }
  for (auto& line : m.lines) line.breaking_force = line.breaking_stretch = 0;
  for (auto& body : m.bodies) {
    if (!body.hinge) continue;
    body.hinge->lug.reset();
    body.hinge->pin->build = body.hinge->washers->build = {};
    body.hinge->pin->eye_width = body.hinge->pin->cheek_width = 0;
    body.hinge->pin->gap = -1;
    body.hinge->pin->fit.reset();
  }
  for (auto& drive : m.drives) {
    drive.pulley = {drive.pulley.radius, drive.pulley.turns_per_layer, {}, {}, 0, {}, {}, {}};
    drive.touch.reset();
    drive.gearhead.torque_rating = drive.motor.highest_winding_temperature = drive.motor.highest_housing_temperature = 0;
  }
  for (auto& cord : m.cords) {
    cord.knot.reset();
    for (auto& point : cord.path)
      if (auto* anchor = std::get_if<model::Anchor>(&point)) anchor->seat.reset();
  }
  return scenario;
}

constexpr std::size_t flexor = 0, rubber = 1;

// A system at rest with loads put in by hand.
struct Bench {
  explicit Bench(model::Scenario scenario)
      : system(std::move(scenario)), stage(system), state(simulation::start_state(system)), watch(system) {
    stage.look(state);
    for (auto& chain : stage.chain) {
      std::fill(chain.tension.begin(), chain.tension.end(), 0.0);
      std::fill(chain.stretch.begin(), chain.stretch.end(), 1.0);
    }
    for (auto& hinge : stage.hinge) hinge.radial_reaction = hinge.axial_reaction = 0;
    for (auto& shaft : stage.shaft) shaft.load_torque = 0;
  }
  // The loads of the hand calculation, times a factor.
  void load(double by) {
    auto& chain = stage.chain;
    std::fill(chain[flexor].tension.begin(), chain[flexor].tension.end(), 58.0 * by);
    chain[flexor].tension.front() = 60 * by;
    chain[flexor].tension.back() = 40 * by;
    std::fill(chain[rubber].tension.begin(), chain[rubber].tension.end(), 5.0 * by);
    chain[rubber].stretch[1] = 1 + by;
    for (auto& hinge : stage.hinge) {
      hinge.radial_reaction = 80 * by;
      hinge.axial_reaction = -3 * by;
    }
    stage.shaft[0].load_torque = -0.2 * by;
    for (std::size_t j = 0; j < system.hinges.size(); ++j) state.v[system.hinges[j].v] = -10 * by;
    state.temperature[0] = {system.scenario.ambient + 40 * by, system.scenario.ambient + 20 * by};
    if (!stage.contact.empty()) stage.contact[1].normal_force = 35 * by;
  }
  [[nodiscard]] std::map<std::string, simulation::MarginValue> margins() const {
    std::map<std::string, simulation::MarginValue> by_name;
    for (const auto& value : watch.report().values) by_name[value.name] = value;
    return by_name;
  }
  [[nodiscard]] std::map<std::string, strength::NeededSize> sizes_for(double ratio) const {
    std::map<std::string, strength::NeededSize> by_name;
    for (const auto& size : watch.sizes_for(ratio)) by_name[size.name] = size;
    return by_name;
  }
  simulation::System system;
  simulation::Stage stage;
  simulation::State state;
  strength::MarginWatch watch;
};

}  // namespace margin_bench
