#include "simulation/stage.h"

#include <algorithm>

#include "friction/gear_cone.h"

// Drives and supplies of a stage.

namespace sinewright::simulation {

namespace {

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

void Stage::evaluate_shafts(const State& start, const StageBase&, const std::vector<DriveCommand>& commands) {
  const auto& m = system_.model();
  supply_voltage_ = start.condition.supply_voltage;
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const Shaft& s = system_.shafts[d];
    const model::Drive& data = m.drives[d];
    const double supply_voltage = supply_voltage_[at(data.supply)];
    const DriveCommand& command = commands[d];
    drive::DriveInput& input = drive_input_[d];
    input.rotor_speed = data.gearhead.ratio * v[s.v_rotor];
    input.torque_constant = data.motor.torque_constant;
    input.resistance = drive::winding_resistance(data.motor, start.temperature[d].winding);
    input.current_limit = command.current_limit;
    input.commanded_voltage = 0;
    command_voltage_by_v_[d] = 0;
    switch (command.kind) {
      case DriveCommand::Kind::off:
        input.mode = command.leads == model::Leads::open ? drive::DriverMode::open : drive::DriverMode::shorted;
        break;
      case DriveCommand::Kind::voltage:
        input.mode = drive::DriverMode::voltage;
        input.commanded_voltage = voltage_at(command, time_);
        break;
      case DriveCommand::Kind::angle: {
        input.mode = drive::DriverMode::voltage;
        const double u = command.angle.gain * (command.angle.angle - q[s.q_rotor]) - command.angle.damping * v[s.v_rotor];
        input.commanded_voltage = std::clamp(u, -supply_voltage, supply_voltage);
        if (input.commanded_voltage == u) command_voltage_by_v_[d] = -(command.angle.gain * a_ + command.angle.damping);
        break;
      }
    }
    if (start.condition.winding_open[d]) {
      input.mode = drive::DriverMode::open;
      command_voltage_by_v_[d] = 0;
    }
  }
  // Drives on one supply are solved together; a drive stands in for its supply when it is the first that names it.
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const int shared = m.drives[d].supply;
    bool first = true;
    for (std::size_t e = 0; e < d; ++e) first = first && m.drives[e].supply != shared;
    if (!first) continue;
    const model::Supply& source = m.supplies[at(shared)];
    std::size_t count = 0;
    for (std::size_t e = d; e < system_.shafts.size(); ++e)
      if (m.drives[e].supply == shared) gathered_input_[count++] = drive_input_[e];
    drive::solve_supply({gathered_input_.data(), count}, supply_voltage_[at(shared)], source.resistance,
                        {gathered_state_.data(), count}, source.current_limit);
    SupplyResult& given = supply[at(shared)];
    given = {gathered_state_[0].supply_voltage, 0};
    count = 0;
    for (std::size_t e = d; e < system_.shafts.size(); ++e) {
      if (m.drives[e].supply != shared) continue;
      electric_[e] = gathered_state_[count++];
      given.current += electric_[e].supply_current;
    }
    // A drive that speeds up lets the voltage of the others rise.
    for (std::size_t e = d; e < system_.shafts.size(); ++e)
      for (std::size_t f = d; f < system_.shafts.size(); ++f) {
        if (e == f || m.drives[e].supply != shared || m.drives[f].supply != shared) continue;
        rows_.A(system_.shafts[e].v_rotor, system_.shafts[f].v_rotor) -=
            m.drives[e].gearhead.ratio * m.drives[e].motor.torque_constant * electric_[e].current_by_voltage *
            electric_[f].voltage_by_speed * m.drives[f].gearhead.ratio;
      }
  }

  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const Shaft& s = system_.shafts[d];
    const model::Drive& data = m.drives[d];
    const double n = data.gearhead.ratio;
    const double k = data.motor.torque_constant;
    ShaftResult& result = shaft[d];
    result.electric = electric_[d];
    result.motor_torque = n * k * electric_[d].current;
    double torque_by_v = n * k * electric_[d].current_by_speed * n;
    if (command_voltage_by_v_[d] != 0 && !electric_[d].limited)
      torque_by_v += n * k * command_voltage_by_v_[d] / drive_input_[d].resistance;
    const double viscous = n * n * data.motor.viscous_drag;
    const double rotor_inertia = n * n * data.motor.rotor_inertia;

    load_by_v_.setZero();
    for (std::size_t c = 0; c < system_.cords.size(); ++c) {
      const CordSystem& cord = system_.cords[c];
      if (cord.drive != static_cast<int>(d)) continue;
      const double angle = q[s.q_output];
      for (int i = 0; i < cord_reach_[c].size(); ++i)
        load_by_v_[cord_reach_[c].v[at(i)]] += pulley_of(start, c).radius(angle) * tension_by_v_[c](i, 0);
      load_by_v_[s.v_output] += a_ * chain[c].tension[0] * pulley_of(start, c).radius_slope(angle);
    }
    const double pull = result.load_torque;  // of the cord on the pulley
    result.stored = 0;
    if (s.v_rotor == s.v_output) {
      rows_.r[s.v_output] += (rotor_inertia + data.gearhead.output_inertia) * rate_[s.v_output] + pull;
      rows_.A(s.v_output, s.v_output) += (rotor_inertia + data.gearhead.output_inertia) / a_;
    } else {
      // Gear torsion with play: τ = k (twist ∓ half the backlash) outside the play, nothing inside.
      const double twist = q[s.q_rotor] - q[s.q_output];
      const double half = data.gearhead.backlash / 2;
      const double bend = twist > half ? twist - half : (twist < -half ? twist + half : 0.0);
      const double torque = data.gearhead.torsional_stiffness * bend;
      const double stiffness = bend != 0 ? a_ * data.gearhead.torsional_stiffness : 0.0;
      result.load_torque = torque;
      result.stored = 0.5 * torque * bend;
      rows_.r[s.v_output] += data.gearhead.output_inertia * rate_[s.v_output] + pull - torque;
      rows_.r[s.v_rotor] += rotor_inertia * rate_[s.v_rotor] + torque;
      rows_.A(s.v_output, s.v_output) += data.gearhead.output_inertia / a_ + stiffness;
      rows_.A(s.v_output, s.v_rotor) -= stiffness;
      rows_.A(s.v_rotor, s.v_rotor) += rotor_inertia / a_ + stiffness;
      rows_.A(s.v_rotor, s.v_output) -= stiffness;
      load_by_v_.setZero();
      load_by_v_[s.v_rotor] = stiffness;
      load_by_v_[s.v_output] = -stiffness;
    }
    rows_.r[s.v_rotor] += viscous * v[s.v_rotor] - result.motor_torque;
    rows_.A(s.v_rotor, s.v_rotor) += viscous - torque_by_v;

    const auto cone = friction::gear_friction(data.gearhead, result.load_torque);
    const bool stuck = start.mode[at(s.row)] == solver::Mode::sticks;
    const double brushes = n * (stuck ? data.motor.static_drag : data.motor.kinetic_drag);
    solver::FrictionRow& row = rows_.row[at(s.row)];
    row.index = s.v_rotor;
    row.plus = cone.winding + brushes;
    row.minus = cone.unwinding + brushes;
    rows_.plus_by_v.row(s.row) = cone.winding_by_load * load_by_v_.transpose();
    rows_.minus_by_v.row(s.row) = cone.unwinding_by_load * load_by_v_.transpose();
    const double limit = v[s.v_rotor] >= 0 ? cone.winding : cone.unwinding;
    const double whole = limit + brushes;
    result.cone_share = whole > 0 ? (limit - data.gearhead.drag) / whole : 0;
    result.gear_drag_share = whole > 0 ? data.gearhead.drag / whole : 0;
  }
}

}  // namespace sinewright::simulation
