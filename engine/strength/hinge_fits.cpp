#include "strength/hinge_fits.h"

#include <algorithm>
#include <cstddef>

#include "model/overloaded.h"
#include "strength/iso_286.h"

namespace sinewright::strength {

namespace {

RingMaterial ring(const model::Material& material) {
  return {material.modulus, material.poisson, material.thermal_expansion.value_or(0)};
}

PressEnd end_of(const InterferenceFit& fit, const model::PressFit& press,
                const std::vector<double>& temperatures) {
  PressEnd end;
  for (const double temperature : temperatures) end.states.push_back(press_state(fit, press, temperature));
  end.press_in_force = slip_force(fit, end.states.front().pressure, press.kinetic_friction);
  return end;
}

PressFitReport press_report(const model::PressFit& press, const SizeLimits& pin, double diameter,
                            const model::Model& model) {
  const model::Material& hub = model.materials[static_cast<std::size_t>(press.hub_material)];
  const model::Material& shaft = model.materials[static_cast<std::size_t>(press.pin_material)];
  PressFitReport report;
  report.hub_material = hub.name;
  report.pin_material = shaft.name;
  const Known strength = hub_strength(press, model);
  if (strength.missing.empty()) report.hub_strength = strength.value;
  report.hole = limits_of(press.hole, diameter);
  report.range = fit_range(report.hole, pin);

  std::vector<double> temperatures{size_temperature};
  if (!press.temperature) {
    report.missing.push_back("temperature");
  } else if (!hub.thermal_expansion || !shaft.thermal_expansion) {
    for (const model::Material* material : {&hub, &shaft})
      if (!material->thermal_expansion) {
        const std::string key = "materials." + material->name + ".thermal_expansion";
        if (std::find(report.missing.begin(), report.missing.end(), key) == report.missing.end())
          report.missing.push_back(key);
      }
  } else {
    temperatures.push_back(press.temperature->lower);
    temperatures.push_back(press.temperature->upper);
  }
  if (!press.remaining_share) report.missing.push_back("remaining_share");
  if (!report.hub_strength) report.missing.push_back("hub_strength");

  report.loosest = end_of(lug_fit(press, diameter, report.range.smallest_interference(), model), press, temperatures);
  report.tightest = end_of(lug_fit(press, diameter, report.range.largest_interference(), model), press, temperatures);
  return report;
}

}  // namespace

InterferenceFit lug_fit(const model::PressFit& press, double diameter, double interference, const model::Model& model) {
  return {.diameter = diameter,
          .hub_diameter = press.hub_diameter,
          .length = press.length,
          .interference = interference,
          .shaft = ring(model.materials[static_cast<std::size_t>(press.pin_material)]),
          .hub = ring(model.materials[static_cast<std::size_t>(press.hub_material)])};
}

PressState press_state(const InterferenceFit& fit, const model::PressFit& press, double temperature) {
  const double rise = temperature - size_temperature;
  PressState state;
  state.temperature = temperature;
  state.interference = interference_at(fit, rise);
  state.pressure = fit_pressure(fit, rise);
  state.hoop_stress = hoop_stress(fit, state.pressure).hub_bore;
  state.equivalent_stress = hub_equivalent_stress(fit, state.pressure);
  state.pull_out_force = slip_force(fit, state.pressure, press.static_friction);
  state.slip_torque = slip_torque(fit, state.pressure, press.static_friction);
  if (press.remaining_share) {
    InterferenceFit crept = fit;
    // Only what presses can creep away.
    if (crept.interference > 0)
      crept.interference = relaxed_pressure(crept.interference, *press.remaining_share);
    const double pressure = fit_pressure(crept, rise);
    state.crept_pressure = pressure;
    state.crept_pull_out_force = slip_force(fit, pressure, press.static_friction);
    state.crept_slip_torque = slip_torque(fit, pressure, press.static_friction);
  }
  return state;
}

Known hub_strength(const model::PressFit& press, const model::Model& model) {
  if (press.hub_strength) return {*press.hub_strength, {}};
  return PartStrength(model, {press.hub_material, press.hub_layers}, "hub").tension();
}

SizeLimits limits_of(const model::TolerancedSize& size, double nominal) {
  return std::visit(overloaded{[&](const model::IsoClass& iso) { return iso_limits(nominal, iso.name); },
                               [](const model::SizeBetween& between) {
                                 return SizeLimits{between.lower, between.upper};
                               },
                               [](const model::ProcessSize& process) {
                                 return process_limits(process.nominal, process.lower_deviation,
                                                       process.upper_deviation);
                               }},
                    size);
}

double PressFitReport::largest_stress() const noexcept {
  double largest = 0;
  for (const PressEnd* end : {&loosest, &tightest})
    for (const PressState& state : end->states) largest = std::max(largest, state.equivalent_stress);
  return largest;
}

std::vector<HingeFits> hinge_fits(const model::Model& model) {
  std::vector<HingeFits> hinges;
  for (const model::Body& body : model.bodies) {
    if (!body.hinge) continue;
    HingeFits fits;
    fits.hinge = body.hinge->name;
    if (const auto& pin = body.hinge->pin) {
      fits.diameter = pin->diameter;
      if (const auto& given = pin->fit) {
        fits.pin = limits_of(given->pin, pin->diameter);
        if (given->running_hole) {
          fits.running_hole = limits_of(*given->running_hole, pin->diameter);
          fits.running = fit_range(*fits.running_hole, *fits.pin);
        }
        if (given->press) fits.press = press_report(*given->press, *fits.pin, pin->diameter, model);
      }
    }
    hinges.push_back(std::move(fits));
  }
  return hinges;
}

}  // namespace sinewright::strength
