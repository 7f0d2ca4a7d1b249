#include "drive/motor.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "friction/argument.h"

namespace sinewright::drive {
namespace {

// A drive in mode `voltage` as the supply sees it, mirrored so that the command is positive:
//   V <= from       I_s = 0             (brakes, or takes nothing)
//   from < V <= to  I_s = (V − e) / R   (full duty)
//   V > to          I_s = power / V     (chops)
struct Load {
  bool draws = false;  // false: takes nothing at any supply voltage
  double emf = 0;      // e = ± k ω [V]
  double from = 0;     // [V]
  double to = 0;       // [V]
  double power = 0;    // [W]
};

Load load_of(const DriveInput& in) {
  Load load;
  if (in.mode != DriverMode::voltage) return load;
  const double mirror = in.commanded_voltage < 0 ? -1.0 : 1.0;
  load.emf = mirror * in.torque_constant * in.rotor_speed;
  load.from = std::max(load.emf, 0.0);
  load.to = mirror * in.commanded_voltage;
  if (in.current_limit > 0) load.to = std::min(load.to, load.emf + in.resistance * in.current_limit);
  load.draws = load.to > load.from;
  load.power = load.to * (load.to - load.emf) / in.resistance;
  return load;
}

struct SupplyPoint {
  double voltage = 0;                                       // V_s
  double slope = std::numeric_limits<double>::infinity();   // of what is zero there, by V; infinite where V_s is held
  double scale = 0;                                         // the same by a drive's draw
};

// What the drives draw together in a range of V without break points: power/V + conductance V − offset.
struct Draw {
  double power = 0, conductance = 0, offset = 0;
  [[nodiscard]] double at(double voltage) const { return power / voltage + conductance * voltage - offset; }
};

// The draw right below `high`, and where that range ends.
Draw draw_below(std::span<const DriveInput> input, double high, double& low) {
  Draw draw;
  low = 0;
  for (const DriveInput& in : input) {
    const Load load = load_of(in);
    if (!load.draws) continue;
    if (load.to < high) low = std::max(low, load.to);
    if (load.from < high) low = std::max(low, load.from);
    if (load.from >= high) continue;
    if (load.to < high) {
      draw.power += load.power;
    } else {
      draw.conductance += 1 / in.resistance;
      draw.offset += load.emf / in.resistance;
    }
  }
  return draw;
}

// The highest V up to `high` with  own V − source + scale · draw(V) = 0. In each range V solves
// (own + scale conductance) V² − (source + scale offset) V + scale power = 0, of which the larger root counts; 0 if there is none.
SupplyPoint highest_point(std::span<const DriveInput> input, double high, double own, double source, double scale) {
  // A solution that sits on a break point may fall on the wrong side of it by rounding, seen from both sides.
  const double slip = 1e-13 * high;
  while (high > 0) {
    double low = 0;
    const Draw draw = draw_below(input, high, low);
    const double a = own + scale * draw.conductance;
    const double b = source + scale * draw.offset;
    const double discriminant = b * b - 4 * a * scale * draw.power;
    if (a > 0 && discriminant >= 0) {
      const double root = (b + std::sqrt(discriminant)) / (2 * a);
      if (root > 0 && root >= low - slip && root <= high + slip) {
        const double voltage = std::clamp(root, low, high);
        return {voltage, a - scale * draw.power / (voltage * voltage), scale};
      }
    }
    high = low;
  }
  return {};
}

// V_s = U₀ − R_s Σ I_s; if that asks for more than the limit, the highest V_s below at which the limit is enough.
SupplyPoint supply_point(std::span<const DriveInput> input, double open_voltage, double resistance, double limit) {
  SupplyPoint point;
  point.voltage = open_voltage;
  if (resistance > 0) point = highest_point(input, open_voltage, 1, open_voltage, resistance);
  if (limit <= 0 || point.voltage <= 0) return point;
  double low = 0;
  const double drawn = draw_below(input, point.voltage * (1 + 1e-13), low).at(point.voltage);
  return drawn > limit ? highest_point(input, point.voltage, 0, limit, 1) : point;
}

}  // namespace

double winding_resistance(const model::Motor& motor, double temperature) noexcept {
  return motor.resistance * (1 + motor.resistance_slope * (temperature - motor.reference_temperature));
}

double rebased_resistance_slope(double slope, double temperature, double new_temperature) noexcept {
  return slope / (1 + slope * (new_temperature - temperature));
}

void solve_supply(std::span<const DriveInput> input, double open_voltage, double internal_resistance,
                  std::span<ElectricState> state, double supply_limit) noexcept {
  assert(input.size() == state.size());
  const SupplyPoint supply = supply_point(input, open_voltage, internal_resistance, supply_limit);
  const double voltage = supply.voltage;
  double total = 0;
  for (std::size_t j = 0; j < input.size(); ++j) {
    const DriveInput& in = input[j];
    ElectricState& out = state[j];
    out = ElectricState{};
    out.supply_voltage = voltage;
    const double emf = in.torque_constant * in.rotor_speed;
    if (in.mode == DriverMode::open) {
      out.motor_voltage = emf;
      continue;
    }
    if (in.mode == DriverMode::shorted) {
      out.current = -emf / in.resistance;
      out.current_by_speed = -in.torque_constant / in.resistance;
      continue;
    }
    const bool full_duty = std::abs(in.commanded_voltage) > voltage;
    const double wanted = std::clamp(in.commanded_voltage, -voltage, voltage);
    out.current = (wanted - emf) / in.resistance;
    out.motor_voltage = wanted;
    if (in.current_limit > 0 && std::abs(out.current) >= in.current_limit) {
      out.limited = true;
      out.current = std::copysign(in.current_limit, out.current);
      out.motor_voltage = in.resistance * out.current + emf;
    } else {
      // This drive's back-EMF e feeds back on the supply where it is at full duty and drawing: dV_s/de = (scale / R) / slope.
      double sag = 0;
      if (full_duty && wanted * out.current > 0 && supply.slope > 0) sag = supply.scale / in.resistance / supply.slope;
      out.current_by_speed = in.torque_constant * (sag - 1) / in.resistance;
      const double direction = in.commanded_voltage < 0 ? -1.0 : 1.0;
      out.voltage_by_speed = direction * in.torque_constant * sag;
      if (full_duty) out.current_by_voltage = direction / in.resistance;
    }
    const double taken = out.motor_voltage * out.current;
    if (taken > 0) {
      out.supply_current = taken / voltage;
    } else {
      out.driver_loss = -taken;
      // A supply that is shorted down to 0 V by reversed motors: shared out below.
      if (voltage == 0 && (internal_resistance > 0 || supply_limit > 0)) out.supply_current = std::abs(out.current);
    }
    total += out.supply_current;
  }
  if (voltage == 0 && total > 0) {
    // The supply gives at most U₀/R_s, and no more than its limit; what the motors carry beyond that circulates in the drivers.
    double most = internal_resistance > 0 ? open_voltage / internal_resistance : supply_limit;
    if (supply_limit > 0) most = std::min(most, supply_limit);
    const double share = std::min(1.0, most / total);
    for (ElectricState& out : state) out.supply_current *= share;
  }
}

ElectricState solve_drive(const DriveInput& input, double open_voltage, double internal_resistance, double supply_limit) noexcept {
  ElectricState state;
  solve_supply(std::span(&input, 1), open_voltage, internal_resistance, std::span(&state, 1), supply_limit);
  return state;
}

void check_motor(const model::Motor& motor) {
  using friction::require;
  const auto not_negative = [](double x) { return std::isfinite(x) && x >= 0; };
  require(std::isfinite(motor.resistance) && motor.resistance > 0, "winding resistance", motor.resistance,
          "ohm", "finite and > 0");
  require(std::isfinite(motor.torque_constant) && motor.torque_constant > 0, "torque constant",
          motor.torque_constant, "N m/A", "finite and > 0");
  require(std::isfinite(motor.rotor_inertia) && motor.rotor_inertia > 0, "rotor inertia", motor.rotor_inertia,
          "kg m^2", "finite and > 0");
  require(not_negative(motor.kinetic_drag), "kinetic drag of the motor", motor.kinetic_drag, "N m",
          "finite and >= 0");
  require(std::isfinite(motor.static_drag) && motor.static_drag >= motor.kinetic_drag,
          "static drag of the motor", motor.static_drag, "N m", "finite and at least the kinetic drag");
  require(not_negative(motor.viscous_drag), "viscous drag of the motor", motor.viscous_drag, "N m s/rad",
          "finite and >= 0");
  require(not_negative(motor.resistance_slope), "resistance slope", motor.resistance_slope, "1/K",
          "finite and >= 0");
}

}  // namespace sinewright::drive
