// What a model is made of and costs, against sums by hand.

#include "simulation/bill_of_materials.h"

#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

#include "parts.h"

using namespace sinewright;
using simulation::bill_of;
using simulation::BillLine;
using simulation::BillOfMaterials;
using simulation::Measure;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

namespace {

const BillLine& line(const BillOfMaterials& bill, const std::string& part) {
  for (const BillLine& one : bill.lines)
    if (one.part == part) return one;
  FAIL("no line " << part);
  return bill.lines.front();
}

bool has(const BillOfMaterials& bill, const std::string& part) {
  for (const BillLine& one : bill.lines)
    if (one.part == part) return true;
  return false;
}

// Two phalanges on a knuckle, a flexor straight along the back of them at 10 mm, each part with a price of its own.
model::Model finger() {
  model::Model m;
  m.name = "finger";
  m.currency = "crown";
  model::Material nylon;
  nylon.name = "nylon";
  nylon.price = 0.5e6;
  m.materials = {nylon};
  m.bodies = {parts::fixed_body("knuckle"), parts::fixed_body("bench")};
  for (const auto& [name, parent, at] : {std::tuple{"near", 0, 0.0}, std::tuple{"far", 2, 40e-3}}) {
    model::Body body = parts::rod(name, parent, model::Vector3d(at, 0, 0), 0.01, 40e-3);
    body.mass.reset();
    body.solids = {{model::Box{{20e-3, 0, 0}, {40e-3, 10e-3, 10e-3}}, 930, 0}};
    model::Pin pin;
    pin.diameter = 2e-3;
    pin.price = 0.25;
    body.hinge->pin = pin;
    model::Washers washers;
    washers.inner_diameter = 2.2e-3;
    washers.outer_diameter = 5e-3;
    washers.price = 0.05;
    body.hinge->washers = washers;
    m.bodies.push_back(body);
  }
  m.bodies[0].solids = {{model::Sphere{{0, 0, 0}, 5e-3}, 930, 0}, {model::Sphere{{20e-3, 0, 0}, 5e-3}, 930, 0}};
  m.bodies[1].price = 0;
  m.supplies = {parts::supply(6)};
  m.supplies[0].price = 3;
  m.lines = {parts::stiff_line()};
  m.lines[0].diameter = 0.5e-3;
  m.lines[0].price = 0.2;
  m.drives = {parts::plain_drive(30, 5e-3)};
  m.drives[0].motor.price = 6;
  m.drives[0].gearhead.price = 4;
  m.drives[0].gearhead.name = "train";
  m.drives[0].pulley.price = 1.5;
  model::Cord cord;
  cord.name = "flexor";
  cord.line = 0;
  cord.allowance = 70e-3;
  cord.slack = 5e-3;
  cord.path = {model::PulleyEnd{0, {-30e-3, 10e-3, 0}}, model::Bend{2, {10e-3, 10e-3, 0}, 0, 1}, model::Anchor{3, {30e-3, 10e-3, 0}}};
  m.cords = {cord};
  m.bill = {{"screw", 4, 0.1, "motor"}};
  return m;
}

}  // namespace

TEST_CASE("bill: counts, lengths and volumes are those of a sum by hand") {
  const BillOfMaterials bill = bill_of(finger());
  CHECK(bill.currency == "crown");
  CHECK(bill.unpriced == 0);
  CHECK(simulation::unpriced_parts(bill).empty());

  const BillLine& pins = line(bill, "pin 2 mm");
  CHECK(pins.count == 2);
  CHECK(pins.used_for == std::vector<std::string>{"near", "far"});
  CHECK(line(bill, "washer 2.2 / 5 mm").count == 4);

  // From −30 mm to 40 + 30 mm, 5 mm of slack, one turn at 5.25 mm, 70 mm to tie the knots.
  const double length = 100e-3 + 5e-3 + 2 * pi * 5.25e-3 + 70e-3;
  const BillLine& cord = line(bill, "cord cord");
  CHECK(cord.measure == Measure::length);
  CHECK(cord.count == 1);
  CHECK_THAT(cord.amount, WithinRel(length, 1e-12));

  // Two boxes of 40 × 10 × 10 mm, and in the knuckle two balls of 5 mm radius.
  const double volume = 2 * 4000e-9 + 2 * 4.0 / 3 * pi * 125e-9;
  const BillLine& nylon = line(bill, "material nylon");
  CHECK(nylon.measure == Measure::volume);
  CHECK(nylon.count == 3);
  CHECK(nylon.used_for == std::vector<std::string>{"knuckle", "near", "far"});
  CHECK_THAT(nylon.amount, WithinRel(volume, 1e-12));

  CHECK(line(bill, "body bench").price() == 0.0);
  CHECK_THAT(line(bill, "screw").price().value(), WithinRel(0.4, 1e-12));
  CHECK(line(bill, "screw").used_for == std::vector<std::string>{"motor"});
  // motor, gearhead, pulley, supply, pins, washers, cord, nylon, screws
  CHECK_THAT(bill.total, WithinRel(6 + 4 + 1.5 + 3 + 2 * 0.25 + 4 * 0.05 + 0.2 * length + 0.5e6 * volume + 0.4, 1e-12));
}

TEST_CASE("bill: every price adds what it says to the total") {
  const double before = bill_of(finger()).total;
  const auto dearer = [&](auto&& change) {
    model::Model m = finger();
    change(m);
    return bill_of(m).total - before;
  };
  CHECK(dearer([](model::Model& m) { *m.drives[0].motor.price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.drives[0].gearhead.price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.drives[0].pulley.price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.supplies[0].price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.bodies[2].hinge->pin->price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.bodies[2].hinge->washers->price += 1; }) == Approx(2));
  CHECK(dearer([](model::Model& m) { *m.bodies[1].price += 1; }) == Approx(1));
  CHECK(dearer([](model::Model& m) { *m.bill[0].price += 1; }) == Approx(4));
  CHECK(dearer([](model::Model& m) { m.cords[0].allowance += 1; }) == Approx(0.2));
  CHECK(dearer([](model::Model& m) { m.bill.push_back({"sensor", 1, 2.5, ""}); }) == Approx(2.5));
}

TEST_CASE("bill: what has no price is listed and counted, and adds nothing") {
  model::Model m = finger();
  m.drives[0].motor.price.reset();
  m.bill.push_back({"sensor", 2, std::nullopt, ""});
  m.materials[0].price.reset();
  const BillOfMaterials bill = bill_of(m);
  CHECK(bill.unpriced == 3);
  CHECK(simulation::unpriced_parts(bill) == "motor motor; material nylon; sensor");
  CHECK(line(bill, "sensor").count == 2);
  CHECK_FALSE(line(bill, "sensor").price());
  const double length = 100e-3 + 5e-3 + 2 * pi * 5.25e-3 + 70e-3;
  CHECK_THAT(bill.total, WithinRel(4 + 1.5 + 3 + 0.5 + 0.2 + 0.2 * length + 0.4, 1e-12));
}

TEST_CASE("bill: a body or joint that is not described is a line without a price, never free") {
  model::Model m = finger();
  m.bodies[1].price.reset();
  m.bodies[2].mass = model::MassProperties{0.003, model::Vector3d::Zero(), 1e-7 * model::Matrix3d::Identity()};
  m.bodies[3].solids[0].material = -1;
  m.bodies[3].hinge->pin.reset();
  m.bodies[3].hinge->washers.reset();
  const BillOfMaterials bill = bill_of(m);
  CHECK(line(bill, "body bench, not described").count == 1);
  CHECK(line(bill, "body near, mass given as a number").count == 1);
  CHECK_THAT(line(bill, "material of 0.93 g/cm³ without a name").amount, WithinRel(4000e-9, 1e-12));
  CHECK(line(bill, "pin that is not described").count == 1);
  CHECK(line(bill, "washer 2.2 / 5 mm").count == 2);  // a joint may do without
  CHECK(bill.unpriced == 4);
  // A price of its own stands for the whole body.
  m.bodies[3].price = 7.0;
  const BillOfMaterials quoted = bill_of(m);
  CHECK(line(quoted, "body far").price() == 7.0);
  CHECK_FALSE(has(quoted, "material of 0.93 g/cm³ without a name"));
}

TEST_CASE("bill: a sensor that a drive describes is bought with it") {
  const auto with = [](auto kind, model::Price price) {
    model::Model m = finger();
    m.drives[0].sensor = model::Sensor{};
    m.drives[0].sensor->kind = kind;
    m.drives[0].sensor->price = price;
    return bill_of(m);
  };
  model::Potentiometer track;
  track.range = 1.5 * pi;
  const BillOfMaterials bill = with(track, 2.5);
  CHECK(line(bill, "potentiometer of 270 deg").price() == 2.5);
  CHECK(line(bill, "potentiometer of 270 deg").used_for == std::vector<std::string>{"flexor"});
  CHECK_THAT(bill.total - bill_of(finger()).total, WithinRel(2.5, 1e-12));
  CHECK(line(with(model::RelativeEncoder{28}, 1.0), "encoder of 28 counts a turn").count == 1);
  CHECK(with(model::AbsoluteEncoder{12, 0}, std::nullopt).unpriced == 1);
}

TEST_CASE("bill: two bushings a joint are bought in place of two washers") {
  model::Model m = finger();
  model::Bushing bushing;
  bushing.name = "flanged";
  bushing.price = 4.5;
  const double washers = bill_of(m).total;
  m.bodies[2].hinge->bushings = m.bodies[3].hinge->bushings = bushing;
  const BillOfMaterials bill = bill_of(m);
  CHECK(line(bill, "bushing flanged").count == 4);
  CHECK_FALSE(has(bill, "washer 2.2 / 5 mm"));
  CHECK_THAT(bill.total - washers, WithinRel(4 * 4.5 - 4 * 0.05, 1e-12));
}

TEST_CASE("bill: parts of different size or price are different lines") {
  model::Model m = finger();
  m.bodies[2].hinge->washers->price = 0.06;
  m.bodies[3].hinge->pin->eye_width = 6e-3;
  m.bodies[3].hinge->pin->cheek_width = 2.5e-3;
  m.bodies[3].hinge->pin->gap = 0.6e-3;
  const BillOfMaterials bill = bill_of(m);
  int washers = 0;
  for (const BillLine& one : bill.lines) washers += one.part == "washer 2.2 / 5 mm";
  CHECK(washers == 2);
  CHECK(line(bill, "pin 2 mm").count == 1);
  CHECK(line(bill, "pin 2 mm, 12.2 mm long").count == 1);
}

TEST_CASE("bill: a stretched cord is cut to its free length") {
  model::Model m = finger();
  // EA = 10 N: under 5 N it is half as long again.
  m.lines.push_back({"gum", 2e-3, model::LinearLaw{10}, 0, "invented"});
  model::Cord cord;
  cord.name = "return";
  cord.line = 1;
  cord.pretension = 5;
  cord.path = {model::Anchor{0, {-20e-3, 5e-3, 0}}, model::Anchor{3, {20e-3, 5e-3, 0}}};
  m.cords.push_back(cord);
  CHECK_THAT(line(bill_of(m), "cord gum").amount, WithinRel(80e-3 / 1.5, 1e-12));
}

TEST_CASE("bill: the length of a cord is that of the straight finger, wherever a scenario begins") {
  model::Scenario scenario;
  scenario.model = finger();
  scenario.start_angles = {{2, 0.5}, {3, 0.7}};
  const BillOfMaterials straight = bill_of(scenario.model), bent = bill_of(simulation::System(scenario));
  CHECK(line(bent, "cord cord").amount == line(straight, "cord cord").amount);
  CHECK(bent.total == straight.total);
}
