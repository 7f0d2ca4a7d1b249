#include "simulation/stage.h"

// Forces, energies and powers of a solved stage.

namespace sinewright::simulation {

namespace {

using dynamics::Force;
using dynamics::JointKind;

constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

}  // namespace

Force Stage::net_force(int link) const {
  const model::MassProperties& mass = system_.tree.links[at(link)].mass;
  const Vector3d center = kinematics.pose[at(link)] * mass.center;
  Force net;
  net.force = external_[at(link)].force + mass.mass * system_.scenario.gravity;
  net.moment = external_[at(link)].moment - center.cross(external_[at(link)].force);
  return net;
}

double Stage::stored_energy() const {
  const auto& m = system_.model();
  double energy = dynamics::kinetic_energy(system_.tree, kinematics) +
                  dynamics::potential_energy(system_.tree, system_.scenario.gravity, kinematics) + object_energy_;
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const model::Hinge& data = *m.bodies[at(system_.hinges[i].body)].hinge;
    const double bent = q[system_.tree.links[at(system_.hinges[i].link)].q] - data.spring_rest;
    energy += 0.5 * data.spring_stiffness * bent * bent + hinge[i].stop_energy;
  }
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const model::Slide& data = *m.bodies[at(system_.slides[i].body)].slide;
    const double drawn = q[system_.tree.links[at(system_.slides[i].link)].q] - data.spring_rest;
    energy += 0.5 * data.spring_stiffness * drawn * drawn + slide[i].stop_energy;
  }
  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const model::Drive& data = m.drives[d];
    const Shaft& s = system_.shafts[d];
    const double rotor = data.gearhead.ratio * v[s.v_rotor];
    energy += 0.5 * data.motor.rotor_inertia * rotor * rotor +
              0.5 * data.gearhead.output_inertia * v[s.v_output] * v[s.v_output] + shaft[d].stored;
  }
  for (std::size_t c = 0; c < chain.size(); ++c)
    for (std::size_t s = 0; s < chain[c].tension.size(); ++s)
      energy += chain[c].material[s] * system_.cords[c].law.energy(chain[c].stretch[s]);
  for (const ContactResult& result : contact) energy += result.elastic_energy;
  return energy;
}

void Stage::powers(const StageBase& base, Ledger& p) const {
  const auto& m = system_.model();
  p.setZero();
  const auto account = [&](Account which) -> double& { return p[static_cast<int>(which)]; };
  account(Account::loads) = load_power_;
  account(Account::object_damping) = object_damping_power_;

  for (std::size_t d = 0; d < system_.shafts.size(); ++d) {
    const model::Drive& data = m.drives[d];
    const Shaft& s = system_.shafts[d];
    const ShaftResult& r = shaft[d];
    account(Account::winding) += drive_input_[d].resistance * r.electric.current * r.electric.current + r.electric.driver_loss;
    const double speed = v[s.v_rotor];
    const double rubbing = -r.friction_torque * speed;
    account(Account::gear_cone) += r.cone_share * rubbing;
    account(Account::gear_drag) += r.gear_drag_share * rubbing;
    account(Account::motor_drag) += (1 - r.cone_share - r.gear_drag_share) * rubbing +
                                    data.gearhead.ratio * data.gearhead.ratio * data.motor.viscous_drag * speed * speed;
  }
  for (std::size_t i = 0; i < supply.size(); ++i) {
    p[system_.charge_entry + static_cast<int>(i)] = supply[i].current;
    account(Account::supply) += supply_voltage_[i] * supply[i].current;
    // In its resistance, and beyond its limit in whatever keeps that.
    account(Account::supply_resistance) += (supply_voltage_[i] - supply[i].voltage) * supply[i].current;
  }

  for (std::size_t c = 0; c < chain.size(); ++c) {
    const friction::ChainSolution& s = chain[c];
    const CordSystem& cord = system_.cords[c];
    const double viscous = cord.damping_time > 0 ? cord.law.slope(1) * cord.damping_time / a_ : 0;
    // What material carries past a point: T λ − w(λ) per unit of unstretched length.
    const auto carried = [&](std::size_t i) { return s.tension[i] * s.stretch[i] - cord.law.energy(s.stretch[i]); };
    for (std::size_t k = 0; k < s.passed.size(); ++k) {
      const double loss = s.passed[k] * (carried(k) - carried(k + 1)) / a_;
      p[system_.bend_entry[c] + static_cast<int>(k)] = loss;
      account(Account::cord_bends) += loss;
    }
    account(Account::wound_cord) += s.wound * cord.law.energy(s.stretch[0]) / a_;
    if (viscous > 0) {
      for (std::size_t i = 0; i < s.tension.size(); ++i) {
        // A cord that shortens fast can be stretched and yet carry nothing: its viscous part eats up the elastic one.
        if (s.stretch[i] <= 1) continue;
        const double material = s.material[i] + (i == 0 ? s.wound : 0.0);
        account(Account::cord_hysteresis) += (s.tension[i] - cord.law.tension(s.stretch[i])) * material *
                                             (s.stretch[i] - base.cords[c].stretch[i]) / a_;
      }
    }
  }
  for (std::size_t i = 0; i < system_.hinges.size(); ++i) {
    const double rate = v[system_.hinges[i].v];
    const double rubbing = -hinge[i].friction_torque * rate;
    p[system_.hinge_entry + static_cast<int>(i)] = rubbing;
    account(Account::hinge_friction) += rubbing;
    account(Account::hinge_viscous) += m.bodies[at(system_.hinges[i].body)].hinge->viscous * rate * rate;
    account(Account::end_stops) += hinge[i].stop_loss;
  }
  for (std::size_t i = 0; i < system_.slides.size(); ++i) {
    const double rate = v[system_.slides[i].v];
    const double rubbing = -slide[i].friction_force * rate;
    p[system_.slide_entry + static_cast<int>(i)] = rubbing;
    account(Account::slide_friction) += rubbing;
    account(Account::slide_viscous) += m.bodies[at(system_.slides[i].body)].slide->viscous * rate * rate;
    account(Account::end_stops) += slide[i].stop_loss;
  }
  for (std::size_t i = 0; i < contact.size(); ++i) {
    const ContactResult& r = contact[i];
    if (r.normal_force <= 0 && r.elastic_force <= 0) continue;
    const double closing = -r.closest.normal.dot(r.velocity);
    account(Account::contact_damping) += (r.normal_force - r.elastic_force) * closing;
    const double spring_rate = system_.contacts[i].law.tangential_stiffness *
                               0.5 * (r.spring.squaredNorm() - base.spring[i].squaredNorm()) / a_;
    account(Account::contact_friction) -= r.tangent_force.dot(r.velocity) + spring_rate;
    if (system_.tree.links[at(system_.contacts[i].link_a)].kind == JointKind::prescribed)
      account(Account::prescribed_motion) -= r.force.dot(kinematics.velocity[at(system_.contacts[i].link_a)].at(r.point));
    if (system_.tree.links[at(system_.contacts[i].link_b)].kind == JointKind::prescribed) {
      const Vector3d object_velocity = kinematics.velocity[at(system_.contacts[i].link_b)].at(r.point);
      account(Account::prescribed_motion) += r.force.dot(object_velocity);  // the contact pushes the object with −force
    }
  }
}

}  // namespace sinewright::simulation
