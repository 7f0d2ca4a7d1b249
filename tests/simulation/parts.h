#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/scenario.h"
#include "simulation/observe.h"
#include "simulation/stepper.h"

/// Small models for tests, built without any file, and a walk through time that keeps the books. All data
/// invented.
namespace sinewright::parts {

using model::Matrix3d;
using model::Vector3d;

inline model::Body fixed_body(const std::string& name) {
  model::Body body;
  body.name = name;
  body.fixed.emplace();
  return body;
}

/// A phalanx along x on a pin along z; its hinge is named after it.
inline model::Body phalanx(const std::string& name, int parent, const Vector3d& at, double mass,
                           double center, double inertia) {
  model::Body body;
  body.name = name;
  model::Hinge& hinge = body.hinge.emplace();
  hinge.name = name;
  hinge.parent = parent;
  hinge.at = at;
  body.mass = {mass, Vector3d(center, 0, 0), Vector3d(0.1 * inertia, inertia, inertia).asDiagonal()};
  return body;
}

/// A thin uniform rod from its pin.
inline model::Body rod(const std::string& name, int parent, const Vector3d& at, double mass, double length) {
  return phalanx(name, parent, at, mass, length / 2, mass * length * length / 12);
}

/// A body that slides along an axis of its parent; its slide is named after it.
inline model::Body sliding(const std::string& name, int parent, const Vector3d& at, const Vector3d& axis, double mass) {
  model::Body body;
  body.name = name;
  model::Slide& slide = body.slide.emplace();
  slide.name = name;
  slide.parent = parent;
  slide.at = at;
  slide.axis = axis;
  body.mass = {mass, Vector3d::Zero(), 1e-6 * mass * model::Matrix3d::Identity()};
  return body;
}

inline model::Line stiff_line(double axial_stiffness = 12000, double damping_time = 0) {
  return {"cord", 0, model::LinearLaw{axial_stiffness}, damping_time, "invented"};
}

/// A motor without any loss of its own but its winding.
inline model::Drive plain_drive(double ratio = 30, double pulley_radius = 5e-3) {
  model::Drive drive;
  drive.name = "flexor";
  drive.body = 0;
  drive.supply = 0;
  drive.motor.name = "motor";
  drive.motor.resistance = 1;
  drive.motor.resistance_slope = 0;
  drive.motor.torque_constant = 0.01;
  drive.motor.rotor_inertia = 1e-7;
  drive.gearhead.ratio = ratio;
  drive.gearhead.output_inertia = 1e-7;
  drive.pulley.radius = pulley_radius;
  return drive;
}

/// Losses that a closed form can carry.
constexpr double kPulley = 5e-3, kForward = 0.7, kBackward = 0.6, kGearDrag = 2e-3, kBrushes = 1e-5, kRatio = 100;

/// A drive with these losses.
inline model::Drive lossy_drive() {
  model::Drive drive = plain_drive(kRatio, kPulley);
  drive.motor.static_drag = drive.motor.kinetic_drag = kBrushes;
  drive.gearhead.forward_efficiency = kForward;
  drive.gearhead.backward_efficiency = kBackward;
  drive.gearhead.drag = kGearDrag;
  return drive;
}
inline model::Supply supply(double voltage, double resistance = 0) {
  return {"battery", voltage, resistance};
}

/// Cord over a guide of radius `arm` round the pin of every joint, on the palm side, coming from the back on
/// either side of it: the arm is constant as long as the joint is bent less than the wrap, which is about 100
/// deg when straight.
/// @param length  of every phalanx from its pin to the next [m], as many as arms (the last one is not used).
inline std::vector<model::PathPoint> constant_arm_path(const std::vector<double>& arm,
                                                       const std::vector<double>& length, int drive = 0) {
  const auto size = [](double r) { return std::max(r, 1.5e-3); };
  std::vector<model::PathPoint> path;
  for (std::size_t i = 0; i < arm.size(); ++i) {
    const int parent = static_cast<int>(i), child = parent + 1;
    const double pin = i == 0 ? 0.0 : length[i - 1], s = size(arm[i]);
    const Vector3d before(pin - 2 * s, s, 0), after(2 * s, s, 0);
    if (i == 0) {
      if (drive >= 0) {
        path.emplace_back(model::PulleyEnd{drive, before});
      } else {
        path.emplace_back(model::Anchor{0, before});
      }
    } else {
      path.emplace_back(model::Bend{parent, before, 2e-3, 1});
    }
    path.emplace_back(model::Guide{parent, {pin, 0, 0}, Vector3d::UnitZ(), arm[i], {0, -1, 0}, 1});
    if (i + 1 < arm.size()) {
      path.emplace_back(model::Bend{child, after, 2e-3, 1});
    } else {
      path.emplace_back(model::Anchor{child, after});
    }
  }
  return path;
}

/// Two washers whose preload alone gives this kinetic friction torque, whatever else loads the hinge
/// radially: uniform wear, mean radius 2 mm, M = 2 μ N r.
inline model::Washers washers_for(double torque, double static_ratio = 1) {
  model::Washers washers;
  washers.inner_diameter = 2e-3;
  washers.outer_diameter = 6e-3;
  washers.friction = {0.2 * static_ratio, 0.2};
  washers.preload = torque / (2 * 0.2 * 2e-3);
  return washers;
}

/// Takes a system through time step by step and keeps its ledger.
struct Walk {
  explicit Walk(model::Scenario scenario)
      : system(std::move(scenario)),
        stepper(system),
        state(simulation::start_state(system)),
        commands(system.shafts.size()) {
    for (std::size_t d = 0; d < commands.size(); ++d) commands[d].current_limit = system.model().drives[d].current_limit;
    begin();
  }
  Walk(const Walk&) = delete;
  Walk& operator=(const Walk&) = delete;

  /// Takes the present state as the start of the books; call again after changing it.
  void begin() {
    simulation::Stage first(system);
    first.look(state);
    totals.energy = simulation::Ledger::Zero(system.ledger_size);
    totals.stored_at_start = first.stored_energy();
  }
  void voltage(double volts, std::size_t drive = 0) {
    commands[drive].kind = simulation::DriveCommand::Kind::voltage;
    commands[drive].voltage = volts;
    stepper.restart();
  }
  void off(model::Leads leads, std::size_t drive = 0) {
    commands[drive].kind = simulation::DriveCommand::Kind::off;
    commands[drive].leads = leads;
    stepper.restart();
  }
  /// @param each  called after every step.
  template <class Each>
  void to(double time, Each&& each) {
    while (state.time < time) {
      const auto& report = stepper.step(state, commands, time);
      totals.energy += report.energy;
      totals.step = report.step;
      each();
    }
  }
  void to(double time) {
    to(time, [] {});
  }

  [[nodiscard]] double angle(std::size_t hinge) const {
    return state.q[system.tree.links[static_cast<std::size_t>(system.hinges[hinge].link)].q];
  }
  [[nodiscard]] double rate(std::size_t hinge) const { return state.v[system.hinges[hinge].v]; }
  [[nodiscard]] double position(std::size_t slide) const {
    return state.q[system.tree.links[static_cast<std::size_t>(system.slides[slide].link)].q];
  }
  [[nodiscard]] double speed(std::size_t slide) const { return state.v[system.slides[slide].v]; }
  [[nodiscard]] double shaft(std::size_t drive = 0) const { return state.q[system.shafts[drive].q_output]; }
  [[nodiscard]] double residual() const { return simulation::energy_residual(stepper.stage(), totals); }
  [[nodiscard]] double account(simulation::Account which) const {
    return totals.energy[static_cast<int>(which)];
  }

  simulation::System system;
  simulation::Stepper stepper;
  simulation::State state;
  std::vector<simulation::DriveCommand> commands;
  simulation::Totals totals;
};

}  // namespace sinewright::parts
