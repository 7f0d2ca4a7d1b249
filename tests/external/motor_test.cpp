#include "drive/motor.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "check.h"
#include "drive/motor_curve.h"
#include "friction/gear_cone.h"

using namespace sinewright;
using namespace sinewright::drive;
using namespace sinewright::friction;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {

constexpr double pi = std::numbers::pi;
constexpr double rpm = 2 * pi / 60;

model::Motor motor(double resistance, double constant, double drag = 0, double viscous = 0) {
  model::Motor m;
  m.resistance = resistance;
  m.torque_constant = constant;
  m.kinetic_drag = drag;
  m.viscous_drag = viscous;
  return m;
}

// The drag-free motor with a given no-load speed and stall torque at a given voltage.
model::Motor motor_from_ends(double voltage, double no_load_speed, double stall_torque) {
  const double k = voltage / no_load_speed;
  return motor(k * voltage / stall_torque, k);
}

// Behind a driver at full duty on a supply without internal resistance.
ElectricState at_speed(const model::Motor& m, double voltage, double speed, double limit = 0) {
  DriveInput in;
  in.mode = DriverMode::voltage;
  in.commanded_voltage = voltage;
  in.rotor_speed = speed;
  in.resistance = m.resistance;
  in.torque_constant = m.torque_constant;
  in.current_limit = limit;
  return solve_drive(in, voltage, 0);
}

// The reference motor of the rows below: U = 6 V, R = 2.4 ohm, k = 6.5 mN m/A, no-load current 35 mA.
const model::Motor reference = motor(2.4, 6.5e-3, 6.5e-3 * 0.035);

}  // namespace

TEST_CASE("motor: the highest power lies at half no-load speed and half stall torque", "[external][motor]") {
  const std::string source = "university course page on DC motors, lancet.mit.edu/motor/motors4.html";
  struct Row {
    double no_load, stall, power;  // [rpm, N m, W]
  };
  const Row r =
      GENERATE(Row{600, 0.325, 5.105088}, Row{3750, 0.0722, 7.088218425}, Row{92, 1.6, 3.853686988});
  const model::Motor m = motor_from_ends(12, r.no_load * rpm, r.stall);
  const std::string name = std::to_string(int(r.no_load)) + " rpm motor";
  // The first value has seven digits, the others ten.
  check_relative("highest power, " + name, "W", motor_curve(m, 12, m.resistance).highest_power, r.power,
                 {source + ", evaluated", r.no_load == 600 ? 1e-6 : 1e-9});
  check_relative("torque at half no-load speed, " + name, "N m",
                 motor_torque(m, 12, m.resistance, r.no_load * rpm / 2),
                 r.no_load == 600 ? 0.163 : (r.no_load == 92 ? 0.80 : 0.0361), {source, 5e-3});
}

TEST_CASE("motor: a textbook motor with different torque and speed constants, taken apart",
          "[external][motor]") {
  // Kt = 0.12 N m/A, Ke = 12 V/1000 rpm, R = 1.5 ohm, 10 V. The engine has one constant: each answer uses the
  // one that matters for it. (The data contradict energy conservation: Ke is 4.7 % below Kt.)
  const std::string source =
      "textbook-style problem (store.perpetualshade.com/juntos/45751752); evaluated apart";
  const model::Motor by_torque = motor(1.5, 0.12), by_speed = motor(1.5, 12 / (1000 * rpm));
  check_relative("no-load speed", "rpm", motor_curve(by_speed, 10, 1.5).no_load_speed / rpm, 833.333,
                 {source, 1e-5});
  check_relative("stall current", "A", motor_curve(by_torque, 10, 1.5).stall_current, 6.66667,
                 {source, 1e-5});
  check_relative("stall torque", "N m", motor_curve(by_torque, 10, 1.5).stall_torque, 0.8, {source, 1e-5});
  check_relative("speed at 0.6 N m (5 A)", "rpm", current_limit_corner_speed(by_speed, 10, 1.5, 5) / rpm,
                 208.333, {source, 1e-5});
}

TEST_CASE("motor: power balance of an ideal 12 V motor at part load", "[external][motor]") {
  const std::string source = "textbook-style problem (homeworklib.com, question 1976071); evaluated apart";
  const model::Motor m = motor_from_ends(12, 3800 * rpm, 0.030);
  const double speed = 2500 * rpm;
  const ElectricState s = at_speed(m, 12, speed);
  check_relative("torque constant", "N m/A", m.torque_constant, 0.0301556, {source, 1e-5});
  check_relative("torque at 2500 rpm", "mN m", 1e3 * m.torque_constant * s.current, 10.26316, {source, 1e-5});
  check_relative("current", "A", s.current, 0.340339, {source, 1e-5});
  check_relative("back-EMF", "V", s.motor_voltage - m.resistance * s.current, 7.89474, {source, 1e-5});
  check_relative("electrical power", "W", s.supply_voltage * s.supply_current, 4.08407, {source, 1e-5});
  check_relative("shaft power", "W", m.torque_constant * s.current * speed, 2.68690, {source, 1e-5});
  check_relative("copper loss", "W", m.resistance * s.current * s.current, 1.39718, {source, 1e-5});
}

TEST_CASE("motor: a motor with viscous drag has the speed, torque and time constant of the textbook",
          "[external][motor]") {
  const std::string source = "textbook-style problem (chat.pavlok.com/aprender/32810904); evaluated apart";
  const model::Motor m = motor(11.2, 0.028, 0, 4.1e-5);
  const MotorCurve c = motor_curve(m, 30, 11.2);
  check_relative("no-load speed", "rad/s", c.no_load_speed, 675.676, {source, 1e-4});
  check_relative("stall torque", "N m", c.stall_torque, 0.075, {source, 1e-4});
  check_relative("time constant", "s", run_up_time_constant(m, 11.2, 1.2e-4), 1.08108, {source, 1e-4});
}

TEST_CASE("motor: the whole curve of a small motor with no-load current", "[external][motor]") {
  const std::string source =
      "standard relations of the permanent-magnet motor, motor handbooks (from memory)";
  const MotorCurve c = motor_curve(reference, 6, 2.4);
  check_relative("no-load speed", "rad/s", c.no_load_speed, 910.153846154, {source, 1e-10});
  check_relative("no-load speed", "rpm", c.no_load_speed / rpm, 8691.32901537, {source, 1e-10});
  check_relative("no-load current", "A", c.no_load_current, 0.035, {source, 1e-10});
  check_relative("stall current", "A", c.stall_current, 2.5, {source, 1e-10});
  check_relative("stall torque", "mN m", 1e3 * c.stall_torque, 16.0225, {source, 1e-10});
  check_relative("speed constant", "rpm/V", 1 / reference.torque_constant / rpm, 1469.12255162,
                 {source, 1e-10});
  check_relative("speed-torque slope", "rpm/(mN m)", c.speed_slope / rpm / 1e3, 542.445249828,
                 {source, 1e-10});
  check_relative("highest power", "W", c.highest_power, 3.645735, {source, 1e-6});
  check_relative("highest efficiency", "1", c.highest_efficiency, 0.777356808676, {source, 1e-10});
  check_relative("current there", "A", c.current_at_highest_efficiency, 0.295803989155, {source, 1e-10});
  check_relative("torque there", "mN m", 1e3 * c.torque_at_highest_efficiency, 1.69522592951,
                 {source, 1e-10});
}

TEST_CASE("motor: behind a gear 100:1 of efficiency 0.65 the same motor stalls at 1.04 N m",
          "[external][motor][gear]") {
  const std::string source =
      "standard relations of the permanent-magnet motor, motor handbooks (from memory)";
  const MotorCurve c = motor_curve(reference, 6, 2.4);
  model::Gearhead g;
  g.ratio = 100;
  g.forward_efficiency = 0.65;
  const double stall = forward_output_torque(g, c.stall_torque);
  check_relative("stall torque at the output", "N m", stall, 1.0414625, {source, 1e-10});
  // The cone that the solver uses must balance there too: load and friction together are the motor's torque.
  CHECK_THAT(stall + gear_friction(g, stall).winding,
             Catch::Matchers::WithinRel(100 * c.stall_torque, 1e-12));
  check_relative("no-load speed at the output", "rad/s", c.no_load_speed / g.ratio, 9.10153846154,
                 {source, 1e-10});
}

TEST_CASE("motor: a driver limit of 0.5 A caps the torque up to the corner speed", "[external][motor]") {
  const std::string source = "U = R I + k w; evaluated apart";
  const double corner = current_limit_corner_speed(reference, 6, 2.4, 0.5);
  check_relative("corner speed", "rpm", corner / rpm, 7051.788248, {source, 1e-9});
  const ElectricState below = at_speed(reference, 6, 0.999 * corner, 0.5);
  const ElectricState above = at_speed(reference, 6, 1.001 * corner, 0.5);
  CHECK(below.limited);
  CHECK_FALSE(above.limited);
  check_relative("net torque below it", "mN m", 1e3 * (6.5e-3 * below.current - reference.kinetic_drag),
                 3.0225, {source, 1e-9});
}

TEST_CASE("gear: backward efficiency is 2 - 1/eta, and nothing from 0.5 down", "[external][gear]") {
  const std::string source = "Niemann; Roloff and Matek, worm gears (from memory)";
  const std::array<double, 7> forward{0.95, 0.9, 0.85, 0.8, 0.7, 0.6, 0.55};
  const std::array<double, 7> backward{0.947368, 0.888889, 0.823529, 0.75, 0.571429, 0.333333, 0.181818};
  for (std::size_t i = 0; i < forward.size(); ++i) {
    // Six decimals are given.
    check_absolute("backward efficiency of " + std::to_string(forward[i]).substr(0, 4), "1",
                   backward_efficiency(forward[i]), backward[i], {source, 6e-7});
  }
  CHECK(backward_efficiency(0.5) == 0);
}

TEST_CASE("gear: worm reducers lock where drive makers say they do", "[external][gear]") {
  // seva-tec.de, FAQ 2.1.3: locks below eta = 0.45, doubtful to 0.55, no lock above. js-technik.ch: the limit
  // is 0.5.
  CHECK(backward_efficiency(0.44) == 0);
  CHECK(backward_efficiency(0.56) > 0);
}

TEST_CASE("gear: the rule comes near the exact screw, on the low side", "[external][gear]") {
  // Inclined plane, lead angle 10 deg, friction angle 5 deg: tan(g)/tan(g+r) and tan(g-r)/tan(g) (Shigley,
  // from memory).
  const std::string source = "inclined-plane theory, Shigley, power screws (from memory)";
  const double g = 10 * pi / 180, r = 5 * pi / 180;
  const double forward = std::tan(g) / std::tan(g + r);
  const double ours = backward_efficiency(forward);
  check_relative("rule, from the screw's forward efficiency", "1", ours, 0.4803846164, {source, 1e-9});
  check_relative("rule against the exact screw", "1", ours, 0.4961728669, {source, 0.033});
  CHECK(ours < std::tan(g - r) / std::tan(g));
}

TEST_CASE("gear: the rule comes near a measured gearbox", "[external][gear]") {
  check_absolute("backward efficiency at 89.0 % forward", "1", backward_efficiency(0.89), 0.853,
                 {"Matsuki et al., IEEE/ASME Trans. Mechatronics 24 (2019) 2661, measured", 0.03});
}

TEST_CASE("gear: trains of stages are back-driven as the product of their stages", "[external][gear]") {
  const std::string source = "2 - 1/eta per stage, evaluated apart";
  const std::vector<double> four(4, 0.9), three(3, 0.85);
  check_relative("4 stages of 0.9", "1", backward_efficiency(four), 0.624295077, {source, 1e-9});
  check_relative("3 stages of 0.85", "1", backward_efficiency(three), 0.558518217, {source, 1e-9});
  check_relative("4 stages, overall 0.6561", "1", backward_efficiency_of_equal_stages(0.6561, 4), 0.624295077,
                 {source, 1e-9});
  // The trap: the overall efficiency put into the one-stage rule.
  check_relative("4 stages as if one", "1", backward_efficiency(0.6561), 0.4758420972, {source, 1e-9});
  check_relative("3 stages as if one", "1", backward_efficiency(0.614125), 0.3716670059, {source, 1e-9});
}
