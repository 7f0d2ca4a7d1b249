#include "simulation/stepper.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "quantity/invalid_input.h"

namespace sinewright::simulation {

namespace {

constexpr double gamma = 1 - 1 / std::numbers::sqrt2;
constexpr double rest = (1 - gamma) / gamma;  // extrapolation from the first stage to the second stage's base

// Position errors of these sizes times the tolerance are let pass in one step.
constexpr double hinge_scale = 0.2;         // [rad]
constexpr double shaft_scale = 0.5;         // [rad]
constexpr double place_scale = 0.01;        // [m], objects and slides
constexpr double material_scale = 2e-3;     // [m], cord that slips past a node
constexpr double worth_repeating = 6;       // error up to which a rejected step is tried again shorter
constexpr int most_repeats = 3;
constexpr int most_velocity_repeats = 10;
constexpr double energy_tolerance = 10;  // [1/s]: of the energy turned over, times the tolerance, may get lost in first-order steps
constexpr int most_energy_repeats = 2;
constexpr double short_step = 1000;      // times the shortest allowed step: only what cannot be solved asks for less
constexpr double least_energy = 1e-4;   // [J], counts as turned over from the start
constexpr int failures_before_holding = 1;  // Newton with all derivatives failed: take it that there is no solution
constexpr double tiny_step = 100;          // steps this many times the shortest allowed one ...
constexpr long most_tiny_steps = 20000;    // ... may come so often in a row
constexpr double velocity_per_position = 50;  // [1/s]: velocity scale = position scale × this

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

State start_state(const System& system) {
  State state;
  state.q = system.start_q;
  state.v = VectorXd::Zero(system.n_v);
  state.mode.assign(at(system.n_rows), solver::Mode::sticks);
  state.spring.assign(system.contacts.size(), Vector3d::Zero());
  for (const model::Supply& supply : system.model().supplies) state.condition.supply_voltage.push_back(supply.voltage);
  state.condition.winding_open.assign(system.shafts.size(), false);
  state.condition.cords.resize(system.cords.size());
  for (std::size_t d = 0; d < system.shafts.size(); ++d)
    state.temperature.push_back({system.scenario.ambient, system.scenario.ambient});

  dynamics::Kinematics kinematics(system.tree);
  for (std::size_t o = 0; o < system.scenario.objects.size(); ++o)
    kinematics.prescribed[at(system.link_of_object[o])].position = system.scenario.objects[o].at;
  dynamics::update(system.tree, system.scenario.gravity, state.q, state.v, kinematics);
  const auto pose = [&](int body) {
    const auto& p = kinematics.pose[at(system.link_of_body[at(body)])];
    return geometry::BodyPose{&p.R, &p.p};
  };
  for (const CordSystem& cord : system.cords) {
    const model::Cord& data = system.model().cords[at(cord.cord)];
    geometry::PathGeometry geometry = cord.path.make_geometry();
    cord.path.evaluate(pose, geometry);
    double whole = 0;
    for (std::size_t i = 0; i < geometry.length.size(); ++i) {
      if (!(geometry.length[i] > 0)) {
        const auto [from, to] = cord.path.span_bodies(static_cast<int>(i));
        throw InvalidInput(fmt::format(
            "cord '{}': its span from '{}' to '{}' has no length in the start posture\n  needed: two points apart; where a guide stands "
            "next to it, a 'side' that points from the guide's axis to where the cord lies",
            data.name, system.model().bodies[at(from)].name, system.model().bodies[at(to)].name));
      }
      whole += geometry.length[i];
    }
    const double stretch = data.pretension > 0 ? cord.law.stretch(data.pretension) : whole / (whole + data.slack);
    friction::ChainState chain;
    for (double length : geometry.length) {
      chain.material.push_back(length / stretch);
      chain.stretch.push_back(stretch);
    }
    chain.slip.assign(at(cord.path.node_count()), friction::Slip::stick);
    state.cords.push_back(std::move(chain));
  }
  return state;
}

Stepper::Stepper(const System& system)
    : system_(system),
      first_stage_(system),
      second_stage_(system),
      memory_(first_stage_.make_memory()),
      first_(start_state(system)),
      second_(first_),
      guess_(VectorXd::Zero(system.n_v)),
      first_power_(Ledger::Zero(system.ledger_size)),
      second_power_(Ledger::Zero(system.ledger_size)),
      report_{0, false, Ledger::Zero(system.ledger_size)},
      position_scale_(VectorXd::Constant(system.n_v, hinge_scale)),
      acceleration_(VectorXd::Zero(system.n_v)),
      last_acceleration_(VectorXd::Zero(system.n_v)) {
  base_.q = first_.q;
  base_.v = first_.v;
  base_.cords = first_.cords;
  base_.spring = first_.spring;
  for (const Shaft& shaft : system.shafts) position_scale_[shaft.v_output] = position_scale_[shaft.v_rotor] = shaft_scale;
  for (const dynamics::Link& link : system.tree.links)
    if (link.kind == dynamics::JointKind::free) position_scale_.segment<3>(link.v + 3).setConstant(place_scale);
  for (const SlideJoint& slide : system.slides) position_scale_[slide.v] = place_scale;
  restart_step_ = std::min(1e-4, system.scenario.solver.max_step);
  next_ = restart_step_;
  const double resolution = 1e-3 * system.scenario.solver.tolerance * hinge_scale * velocity_per_position;
  first_stage_.set_resolution(resolution);
  second_stage_.set_resolution(resolution);
  first_stage_.look(first_);
  first_stage_.remember(memory_);
  stored_ = first_stage_.stored_energy();
}

// e = γ h (k₂ − k₁), what separates the second-order result from the first-order one, against the tolerance.
double Stepper::stage_error(const State& from, const StageBase& base, const State& first, double h) const {
  const double tolerance = system_.scenario.solver.tolerance;
  double worst = 0;
  for (int i = 0; i < system_.n_v; ++i) {
    const double velocity = (second_stage_.v[i] - base.v[i]) - (first.v[i] - from.v[i]);
    const double position = gamma * h * (second_stage_.v[i] - first.v[i]);
    const double scale = tolerance * position_scale_[i];
    worst = std::max(worst, std::max(std::abs(position), std::abs(velocity) / velocity_per_position) / scale);
  }
  for (std::size_t c = 0; c < base.cords.size(); ++c) {
    double shift = 0;  // error of the material that has passed each node
    // Where the surplus of a slack cord lies is arbitrary, no error.
    const auto& tension = second_stage_.chain[c].tension;
    if (std::any_of(tension.begin(), tension.end(), [](double t) { return t <= 0; })) continue;
    for (std::size_t s = 0; s < base.cords[c].material.size(); ++s) {
      shift += (second_stage_.chain[c].material[s] - base.cords[c].material[s]) -
               (first.cords[c].material[s] - from.cords[c].material[s]);
      worst = std::max(worst, std::abs(shift) / (tolerance * material_scale));
    }
  }
  return worst;
}

// A cord that breaks loose at a bend whose static coefficient exceeds the kinetic one passes a piece of itself at once.
bool Stepper::broke_loose(const State& before, const State& after) const {
  for (std::size_t c = 0; c < system_.cords.size(); ++c) {
    if (system_.model().cords[at(system_.cords[c].cord)].channel.static_ratio <= 1) continue;
    for (std::size_t k = 0; k < after.cords[c].slip.size(); ++k)
      if (before.cords[c].slip[k] == friction::Slip::stick && after.cords[c].slip[k] != friction::Slip::stick) return true;
  }
  return false;
}

void Stepper::advance_temperatures(State& state, double h) {
  const auto& m = system_.model();
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const model::Motor& motor = m.drives[d].motor;
    if (!drive::has_thermal_network(motor)) continue;
    const ShaftResult& r = stage().shaft[d];
    // All friction of motor and gear is taken to heat the housing.
    const double rubbing = -r.friction_torque * stage().v[system_.shafts[d].v_rotor];
    const auto heat = drive::copper_loss(motor, r.electric.current, state.temperature[d].winding);
    state.temperature[d] =
        drive::thermal_step(motor, state.temperature[d], heat, rubbing, system_.scenario.ambient, h);
  }
}

const StepReport& Stepper::step(State& state, const std::vector<DriveCommand>& commands, double until) {
  const model::SolverSettings& settings = system_.scenario.solver;
  const double left = until - state.time;
  double h = std::min({next_, settings.max_step, left});
  // A sliver before a breakpoint is not worth a step of its own.
  if (left - h < 0.05 * h) h = left;

  Stage::Result result;
  int repeats = 0, velocity_repeats = 0, energy_repeats = 0, failures = 0;
  first_stage_.hold(nullptr);
  second_stage_.hold(nullptr);
  for (;; h *= 0.5) {
    if (h < settings.min_step && h < left) {
      throw SimulationError(describe_failure(state, result));
    }
    const double a = gamma * h;
    base_.q = state.q;
    base_.v = state.v;
    base_.cords = state.cords;
    base_.spring = state.spring;
    guess_ = state.v + a * acceleration_;
    result = first_stage_.solve(state, base_, commands, a, state.time + a, guess_);
    if (!result.solved) {
      ++counters_.unsolved;
      if (++failures == failures_before_holding) {
        first_stage_.hold(&memory_);
        second_stage_.hold(&memory_);
        h *= 2;  // once more at this length
      }
      continue;
    }
    first_.temperature = state.temperature;
    first_.condition = state.condition;
    first_stage_.store(first_);
    first_stage_.powers(base_, first_power_);

    // How far the first stage, as a backward-Euler step, may be off: half the change of velocity over it in position, half
    // the change of acceleration since the last step in velocity (a joint that bounces off its stop turns round in such a
    // step, and its rebound must not be damped away).
    double position_error = 0, velocity_error = 0;
    for (int i = 0; i < system_.n_v; ++i) {
      const double change = first_.v[i] - state.v[i];
      const double scale = 0.5 / (settings.tolerance * position_scale_[i]);
      position_error = std::max(position_error, scale * a * std::abs(change));
      velocity_error = std::max(velocity_error, scale * std::abs(change - a * last_acceleration_[i]) / velocity_per_position);
    }
    // A velocity that jumps (a joint that jams under its own friction) does so in a step of any length.
    const bool may_shorten = h > short_step * settings.min_step;
    const double euler_error =
        may_shorten && velocity_repeats < most_velocity_repeats ? std::max(position_error, velocity_error) : position_error;
    const bool mode_changed = first_.mode != state.mode || broke_loose(state, first_);

    bool take_both = false;
    double error = 0;
    if (!mode_changed) {
      base_.q = state.q;
      dynamics::advance(system_.tree, (1 - gamma) * h, first_.v, base_.q);
      for (const Shaft& s : system_.shafts) {
        base_.q[s.q_output] += (1 - gamma) * h * first_.v[s.v_output];
        if (s.v_rotor != s.v_output) base_.q[s.q_rotor] += (1 - gamma) * h * first_.v[s.v_rotor];
      }
      base_.v = state.v + rest * (first_.v - state.v);
      for (std::size_t c = 0; c < state.cords.size(); ++c) {
        for (std::size_t s = 0; s < state.cords[c].material.size(); ++s) {
          const auto extrapolate = [](double from, double to) { return from + rest * (to - from); };
          base_.cords[c].material[s] = extrapolate(state.cords[c].material[s], first_.cords[c].material[s]);
          base_.cords[c].stretch[s] = extrapolate(state.cords[c].stretch[s], first_.cords[c].stretch[s]);
        }
      }
      for (std::size_t i = 0; i < state.spring.size(); ++i)
        base_.spring[i] = state.spring[i] + rest * (first_.spring[i] - state.spring[i]);
      guess_ = state.v + (first_.v - state.v) / gamma;
      const Stage::Result second = second_stage_.solve(first_, base_, commands, a, state.time + h, guess_);
      if (second.solved) {
        error = stage_error(state, base_, first_, h);
        const bool same_modes = second_stage_.mode == first_.mode;
        take_both = same_modes && error <= 1;
        if (take_both) second_stage_.powers(base_, second_power_);
        // Not much too long: a shorter whole step is worth more than the first stage of this one.
        // (Not for ever: an error that does not shrink with the step is a jump, which is the first stage's business.)
        if (same_modes && error > 1 && error < worth_repeating && repeats++ < most_repeats) {
          h *= 2 * 0.85 / std::sqrt(error);  // the loop halves it
          ++counters_.rejected;
          continue;
        }
      }
    }
    if (!take_both && euler_error > 1) {
      ++velocity_repeats;
      ++counters_.rejected;
      continue;
    }

    // A first-order step damps: energy gets lost that no law takes. What may get lost so goes by time.
    report_.step = take_both ? h : a;
    if (take_both) {
      report_.energy = h * ((1 - gamma) * first_power_ + gamma * second_power_);
    } else {
      report_.energy = a * first_power_;
    }
    const double stored = (take_both ? second_stage_ : first_stage_).stored_energy();
    const double imbalance = energy_gained(report_.energy) - (stored - stored_);
    const double turned_over = turned_over_ + energy_in(report_.energy);
    const double share = energy_tolerance * settings.tolerance * std::max(turned_over, least_energy) * report_.step;
    const double rounding = 1e-12 * (std::abs(stored) + turned_over);
    if (!take_both && std::abs(imbalance) > share + rounding && energy_repeats < most_energy_repeats &&
        may_shorten) {
      ++energy_repeats;
      ++counters_.rejected;
      continue;
    }
    turned_over_ = turned_over;
    stored_ = stored;

    report_.second_order = took_both_ = take_both;
    last_acceleration_ = (took_both_ ? second_stage_.v - base_.v : first_.v - state.v) / a;
    // Where a mode changed, the acceleration of this step says nothing about the next.
    if (mode_changed) {
      acceleration_.setZero();
    } else {
      acceleration_ = last_acceleration_;
    }
    if (take_both) {
      second_stage_.store(second_);
      second_.temperature = state.temperature;
      second_.condition = state.condition;
      if (h == left) second_.time = until;  // exactly, whatever rounding made of the sum
      std::swap(state, second_);
      ++counters_.second_order;
      last_error_ = 0;
      const double factor = std::clamp(0.85 / std::sqrt(std::max(error, 1e-12)), 0.3, 3.0);
      next_ = h * factor;
    } else {
      std::swap(state, first_);
      if (mode_changed) ++counters_.mode_changes;
      // The error of a whole step counts unless a shorter one had the same: a second stage that finds another way of slipping
      // again and again leaves an error that no step length brings down.
      const bool jumps = error > 1 && error > 0.5 * last_error_ && last_error_ > 0;
      last_error_ = error;
      next_ = h * std::clamp(0.85 / std::sqrt(std::max({euler_error, error > 1 && !jumps ? error : 0.0, 1e-12})), 0.3, 1.5);
      // What happens at an instant is no reason to go on in smaller steps than before.
      for (int i = 0; i < energy_repeats; ++i) next_ *= 2;
    }
    ++counters_.steps;
    tiny_ = report_.step < tiny_step * settings.min_step ? tiny_ + 1 : 0;
    if (tiny_ > most_tiny_steps)
      throw SimulationError(fmt::format(
          "t = {:.6g} s: {} steps in a row were shorter than {:.1e} s; the run would not end in any useful time\n  likely causes: a "
          "stiffness or speed far beyond the parts' size, or masses far too small",
          state.time, most_tiny_steps, tiny_step * settings.min_step));
    if (failures >= failures_before_holding) ++counters_.held;
    stage().remember(memory_);
    advance_temperatures(state, report_.step);
    return report_;
  }
}

std::string Stepper::describe_failure(const State& state, const Stage::Result& result) const {
  std::string where = "no velocity could be found";
  if (result.worst >= 0) {
    where = fmt::format("last correction {:.3g} at velocity {}", result.residual, result.worst);
    for (const HingeJoint& joint : system_.hinges)
      if (joint.v == result.worst)
        where = fmt::format("the velocity of joint {} would not settle (last correction {:.3g} rad/s)",
                            system_.model().bodies[at(joint.body)].hinge->name, result.residual);
    for (const SlideJoint& joint : system_.slides)
      if (joint.v == result.worst)
        where = fmt::format("the velocity of slide {} would not settle (last correction {:.3g})",
                            system_.model().bodies[at(joint.body)].slide->name, result.residual);
    for (std::size_t d = 0; d < system_.shafts.size(); ++d)
      if (system_.shafts[d].v_output == result.worst || system_.shafts[d].v_rotor == result.worst)
        where = fmt::format("the speed of drive {} would not settle (last correction {:.3g} rad/s)",
                            system_.model().drives[d].name, result.residual);
    for (std::size_t o = 0; o < system_.link_of_object.size(); ++o) {
      const auto& link = system_.tree.links[at(system_.link_of_object[o])];
      if (link.kind == dynamics::JointKind::free && result.worst >= link.v && result.worst < link.v + 6)
        where = fmt::format("the velocity of object {} would not settle (last correction {:.3g})",
                            system_.scenario.objects[o].name, result.residual);
    }
  }
  for (std::size_t c = 0; c < first_stage_.chain.size(); ++c)
    if (!first_stage_.chain[c].solved)
      where = fmt::format("no consistent slip pattern was found for cord {} (first tension {:.4g} N)",
                          system_.model().cords[at(system_.cords[c].cord)].name, first_stage_.chain[c].tension[0]);
  return fmt::format(
      "t = {:.6g} s: no step down to {:.1e} s could be solved; {}\n  likely causes: a force or stiffness far beyond the "
      "parts' size, a cord point inside a guide, or masses far too small",
      state.time, system_.scenario.solver.min_step, where);
}

}  // namespace sinewright::simulation
