#include <numbers>

#include <catch2/catch.hpp>

#include "good_files.h"
#include "reading/reading.h"

using namespace sinewright;
using Catch::Matchers::WithinRel;
using Eigen::Vector3d;

namespace {

constexpr double kPi = std::numbers::pi;

model::Scenario good() {
  reading::Source source(good_files::all());
  return reading::read_scenario(source, "scenario.yaml");
}

void check_near(const Vector3d& found, const Vector3d& wanted) {
  CAPTURE(found.transpose(), wanted.transpose());
  CHECK((found - wanted).norm() <= 1e-12 * (1 + wanted.norm()));
}

}  // namespace

TEST_CASE("values: parts come in SI, with their sources") {
  const model::Model model = good().model;
  REQUIRE(model.materials.size() == 2);
  CHECK_THAT(model.materials[0].density, WithinRel(930.0, 1e-12));
  CHECK(model.materials[0].modulus == 1.7e9);
  CHECK(model.materials[0].source == "invented");
  REQUIRE(model.surfaces.size() == 3);
  CHECK(model.surfaces[1].damping == 0.1);
  REQUIRE(model.pairs.size() == 3);
  CHECK(model.surfaces[static_cast<std::size_t>(model.pairs[0].a)].name == "pad");
  CHECK(model.surfaces[static_cast<std::size_t>(model.pairs[0].b)].name == "shell");
  CHECK(model.pairs[0].friction == 0.8);
  REQUIRE(model.lines.size() == 3);
  CHECK(std::get<model::LinearLaw>(model.lines[0].law).axial_stiffness == 4000);
  CHECK_THAT(model.lines[0].damping_time, WithinRel(2e-4, 1e-12));
  const auto& rubber = std::get<model::RubberLaw>(model.lines[1].law);
  CHECK_THAT(rubber.area, WithinRel(kPi * 1e-6, 1e-12));  // from the diameter of 2 mm
  REQUIRE(rubber.terms.size() == 2);
  CHECK(rubber.terms[1] == std::pair<double, double>(-1e4, -2));
  CHECK(rubber.max_stretch == 3);
  const auto& table = std::get<model::TableLaw>(model.lines[2].law);
  CHECK(table.stretch == std::vector<double>{1, 1.5, 2});
  CHECK(table.tension == std::vector<double>{0, 2, 5});
}

TEST_CASE("values: bodies come with parents first, joints and solids resolved") {
  const model::Model model = good().model;
  REQUIRE(model.bodies.size() == 4);
  CHECK(model.bodies[0].name == "knuckle");
  CHECK(model.bodies[1].name == "phalanx");
  CHECK(model.bodies[2].name == "tip");
  REQUIRE(model.bodies[0].fixed);
  check_near(model.bodies[0].fixed->at, Vector3d(1e-3, 2e-3, 3e-3));
  const model::Hinge& mcp = *model.bodies[1].hinge;
  CHECK(mcp.name == "MCP");
  CHECK(mcp.parent == 0);
  CHECK(model.bodies[2].hinge->parent == 1);
  check_near(mcp.pin_axis, Vector3d::UnitZ());
  check_near(mcp.seat * Vector3d::UnitX(), Vector3d(std::cos(kPi / 18), std::sin(kPi / 18), 0));
  CHECK(mcp.pin->friction.static_coefficient == 0.2);
  CHECK(mcp.pin->friction.kinetic_coefficient == 0.16);
  CHECK_THAT(mcp.pin->bearing_span, WithinRel(7e-3, 1e-12));
  CHECK_THAT(mcp.pin->radial_clearance, WithinRel(5e-5, 1e-12));
  const model::Fit& fit = mcp.pin->fit.value();
  CHECK(std::get<model::IsoClass>(fit.pin).name == "m6");
  const auto& running = std::get<model::ProcessSize>(fit.running_hole.value());
  CHECK_THAT(running.nominal, WithinRel(2.05e-3, 1e-12));
  CHECK_THAT(running.lower_deviation, WithinRel(-2e-5, 1e-12));
  CHECK_THAT(running.upper_deviation, WithinRel(2e-5, 1e-12));
  const model::PressFit& press = fit.press.value();
  CHECK_THAT(std::get<model::SizeBetween>(press.hole).lower, WithinRel(1.97e-3, 1e-12));
  CHECK_THAT(std::get<model::SizeBetween>(press.hole).upper, WithinRel(1.98e-3, 1e-12));
  CHECK_THAT(press.length, WithinRel(3e-3, 1e-12));
  CHECK_THAT(press.hub_diameter, WithinRel(6e-3, 1e-12));
  CHECK(model.materials.at(static_cast<std::size_t>(press.hub_material)).name == "nylon");
  const model::Material& metal = model.materials.at(static_cast<std::size_t>(press.pin_material));
  CHECK(metal.name == "metal");
  CHECK_THAT(metal.thermal_expansion.value(), WithinRel(1.2e-5, 1e-12));
  CHECK_FALSE(model.materials[0].thermal_expansion);
  CHECK(press.static_friction == 0.3);
  CHECK(press.kinetic_friction == 0.15);
  CHECK_THAT(press.remaining_share.value(), WithinRel(0.5, 1e-12));
  CHECK(press.hub_layers == model::Layers::across);
  CHECK_THAT(press.hub_strength.value(), WithinRel(42e6, 1e-12));
  CHECK_THAT(press.temperature.value().lower, WithinRel(278.15, 1e-12));
  CHECK_THAT(press.temperature->upper, WithinRel(313.15, 1e-12));
  CHECK(mcp.washers->law == model::WasherLaw::uniform_pressure);
  CHECK(mcp.washers->preload == 1);
  CHECK(mcp.washers->axial_clearance == 0);
  CHECK_THAT(mcp.stops->lower, WithinRel(-kPi / 36, 1e-12));
  CHECK_THAT(mcp.stops->upper, WithinRel(kPi / 2, 1e-12));
  CHECK(mcp.stops->damping == 0.01);
  CHECK_THAT(mcp.spring_stiffness, WithinRel(2e-3 * 180 / kPi, 1e-12));
  CHECK_THAT(mcp.spring_rest, WithinRel(-kPi / 18, 1e-12));
  const model::Slide& draw = *model.bodies[3].slide;
  CHECK(draw.name == "DRAW");
  CHECK(draw.parent == 2);
  CHECK(model.bodies[3].parent() == 2);
  check_near(draw.at, Vector3d(-20e-3, -5e-3, 0));
  check_near(draw.axis, -Vector3d::UnitX());
  check_near(draw.seat * Vector3d::UnitX(), Vector3d(std::cos(kPi / 30), std::sin(kPi / 30), 0));
  CHECK(draw.slideway->friction.static_coefficient == 0.26);
  CHECK(draw.slideway->friction.kinetic_coefficient == 0.18);
  CHECK_THAT(draw.slideway->length, WithinRel(12e-3, 1e-12));
  CHECK(draw.slideway->preload == 0.4);
  CHECK_THAT(draw.stops->lower, WithinRel(-1e-3, 1e-12));
  CHECK_THAT(draw.stops->upper, WithinRel(14e-3, 1e-12));
  CHECK_THAT(draw.stops->stiffness, WithinRel(2e4, 1e-12));
  CHECK(draw.stops->damping == 5);
  CHECK(draw.viscous == 0.02);
  CHECK(draw.spring_stiffness == 30);
  CHECK_THAT(draw.spring_rest, WithinRel(2.5e-3, 1e-12));
  const model::Hinge& pip = *model.bodies[2].hinge;
  CHECK_FALSE(pip.pin);
  CHECK_FALSE(pip.stops);
  CHECK(pip.spring_stiffness == 0);
  CHECK_THAT(model.bodies[2].mass->mass, WithinRel(5e-3, 1e-12));
  CHECK_THAT(model.bodies[2].mass->inertia(1, 1), WithinRel(2e-7, 1e-12));
  REQUIRE(model.bodies[1].solids.size() == 3);
  CHECK_THAT(model.bodies[1].solids[0].density, WithinRel(930.0, 1e-12));
  CHECK_THAT(model.bodies[1].solids[1].density, WithinRel(1000.0, 1e-12));
  CHECK(std::get<model::Hull>(model.bodies[1].solids[1].shape).points.size() == 4);
  const auto& box = std::get<model::Box>(model.bodies[2].shapes[1].shape);
  check_near(box.rotation * Vector3d::UnitX(), Vector3d::UnitY());
}

TEST_CASE("values: inertia of six numbers is xx yy zz xy yz zx") {
  good_files::Texts texts = good_files::all();
  const std::string old_text = "inertia: [1 g·cm², 2 g·cm², 2 g·cm²]";
  std::string& text = texts[1].second;
  text.replace(text.find(old_text), old_text.size(),
               "inertia: [10 kg·m², 11 kg·m², 12 kg·m², 1 kg·m², 2 kg·m², 3 kg·m²]");
  reading::Source source(texts);
  const auto inertia = reading::read_model(source, "model.yaml").bodies[2].mass->inertia;
  CHECK(inertia(0, 1) == 1);
  CHECK(inertia(1, 2) == 2);
  CHECK(inertia(2, 0) == 3);
  CHECK(inertia == inertia.transpose());
}

TEST_CASE("values: what takes up room, where the shaft sits and what may touch") {
  const model::Model model = good().model;
  const model::Drive& drive = model.drives.at(0);
  const model::Outline motor = drive.motor.outline.value(), gearhead = drive.gearhead.outline.value();
  CHECK(motor.round);
  CHECK_THAT(motor.length, WithinRel(15e-3, 1e-12));
  CHECK_THAT(motor.width, WithinRel(12e-3, 1e-12));
  CHECK_THAT(motor.height, WithinRel(10e-3, 1e-12));
  CHECK_FALSE(gearhead.round);
  CHECK(gearhead.height == gearhead.width);  // a block without a height is square
  CHECK_FALSE(drive.pulley.outline);
  const model::ShaftSeat shaft = drive.shaft.value();
  check_near(shaft.at, Vector3d(-30e-3, -2.75e-3, 0));
  check_near(shaft.axis, Vector3d::UnitZ());
  check_near(shaft.up, Vector3d::UnitX());  // what is written, less its part along the axis
  CHECK_THAT(shaft.gap, WithinRel(0.5e-3, 1e-12));
  CHECK(drive.inside.value().empty());
  const model::Body& tip = model.bodies.at(2);
  REQUIRE(tip.occupies.size() == 1);
  CHECK(tip.occupies[0].name == "weight");
  CHECK_THAT(std::get<model::Sphere>(tip.occupies[0].shape).radius, WithinRel(2e-3, 1e-12));
  CHECK(tip.occupies[0].inside.value() == std::vector<int>{1});
  const model::Packing& packing = model.packing;
  CHECK_THAT(packing.clearance, WithinRel(0.3e-3, 1e-12));
  CHECK_THAT(packing.wrist.value(), WithinRel(-80e-3, 1e-12));
  CHECK(packing.palm == std::vector<int>{1, 0});
  using Of = model::PartName::Of;
  REQUIRE(packing.may_touch.size() == 3);
  const auto is = [](const model::PartName& name, Of of, int index, const std::string& part) {
    return name.of == of && name.index == index && name.part == part;
  };
  CHECK(is(packing.may_touch[0].first, Of::body, 2, "weight"));
  CHECK(is(packing.may_touch[0].second, Of::drive, 0, "motor"));
  CHECK(is(packing.may_touch[1].first, Of::cord, 1, ""));
  CHECK(is(packing.may_touch[1].second, Of::body, 0, "print"));
  CHECK(is(packing.may_touch[2].first, Of::drive, 0, ""));
  CHECK(is(packing.may_touch[2].second, Of::body, 1, ""));
}

TEST_CASE("values: a shaft along y has its heights along x, any other along y") {
  good_files::Texts texts = good_files::all();
  const std::string old_text = "axis: [0, 0, 3], up: [1, 0, 1]";
  std::string& text = texts[1].second;
  const std::size_t at = text.find(old_text);
  text.replace(at, old_text.size(), "axis: [0, -1, 0]");
  reading::Source along_y(texts);
  check_near(reading::read_model(along_y, "model.yaml").drives[0].shaft->up, Vector3d::UnitX());
  text.replace(at, std::string("axis: [0, -1, 0]").size(), "axis: [3, 4, 0]");
  reading::Source slanting(texts);
  check_near(reading::read_model(slanting, "model.yaml").drives[0].shaft->up, Vector3d(-0.8, 0.6, 0));
}

TEST_CASE("values: drives and cords are resolved") {
  const model::Model model = good().model;
  REQUIRE(model.drives.size() == 1);
  const model::Drive& drive = model.drives[0];
  CHECK(drive.body == 0);
  CHECK(drive.supply == 0);
  CHECK(drive.current_limit == 0.6);
  CHECK(drive.motor.name == "micro");
  CHECK_THAT(drive.motor.rotor_inertia, WithinRel(2e-8, 1e-12));
  CHECK_THAT(drive.motor.reference_temperature, WithinRel(293.15, 1e-12));
  CHECK_THAT(drive.motor.resistance_slope, WithinRel(0.00393, 1e-12));
  CHECK_THAT(drive.motor.highest_winding_temperature, WithinRel(383.15, 1e-12));
  CHECK(drive.gearhead.torsional_stiffness == 5);
  CHECK(drive.pulley.turns_per_layer == 0);
  REQUIRE(model.cords.size() == 2);
  const model::Cord& flexor = model.cords[0];
  CHECK(flexor.line == 0);
  CHECK_THAT(flexor.channel.kinetic, WithinRel(0.12, 1e-12));
  CHECK(flexor.channel.reference_line_load == 2000);
  CHECK_THAT(flexor.channel.groove_angle, WithinRel(kPi / 3, 1e-12));
  CHECK_THAT(flexor.slack, WithinRel(5e-4, 1e-12));
  REQUIRE(flexor.path.size() == 4);
  CHECK(std::get<model::PulleyEnd>(flexor.path[0]).drive == 0);
  CHECK(std::get<model::Bend>(flexor.path[1]).body == 0);
  CHECK(std::get<model::Bend>(flexor.path[1]).friction_factor == 1);
  CHECK(std::get<model::Bend>(flexor.path[2]).friction_factor == 1.5);
  CHECK(std::get<model::Bend>(flexor.path[2]).radius == 0);
  CHECK(std::get<model::Anchor>(flexor.path[3]).body == 2);
  CHECK(model.cords[1].lump_bends);
  CHECK(model.cords[1].pretension == 2);
  const auto& guide = std::get<model::Guide>(model.cords[1].path[1]);
  CHECK_THAT(guide.radius, WithinRel(5e-3, 1e-12));
  check_near(guide.side, Vector3d::UnitY());
}

TEST_CASE("values: prices count per piece, metre and cubic metre, and none is not nothing") {
  const model::Model model = good().model;
  CHECK(model.currency == "crown");
  CHECK_THAT(model.materials[0].price.value(), WithinRel(0.5e6, 1e-12));
  CHECK_FALSE(model.materials[1].price);
  CHECK_THAT(model.lines[0].price.value(), WithinRel(0.12, 1e-12));
  CHECK_FALSE(model.lines[1].price);
  CHECK(model.drives[0].motor.price == 6.0);
  CHECK(model.drives[0].gearhead.price == 4.0);
  CHECK(model.drives[0].pulley.price == 1.5);
  CHECK(model.supplies[0].price == 3.5);
  CHECK(model.bodies[0].price == 0.0);
  CHECK_FALSE(model.bodies[1].price);
  CHECK(model.bodies[1].hinge->pin->price == 0.2);
  CHECK(model.bodies[1].hinge->washers->price == 0.05);
  CHECK(model.bodies[1].solids[0].material == 0);
  CHECK(model.bodies[1].solids[1].material == -1);
  CHECK_THAT(model.cords[0].allowance, WithinRel(0.06, 1e-12));
  CHECK(model.cords[1].allowance == 0);
  REQUIRE(model.bill.size() == 2);
  CHECK(model.bill[0].name == "screw");
  CHECK(model.bill[0].count == 4);
  CHECK(model.bill[0].price == 0.1);
  CHECK(model.bill[0].used_for == "motor");
  CHECK(model.bill[1].count == 1);
  CHECK_FALSE(model.bill[1].price);
}

TEST_CASE("values: bushings take the place of the washers and give the friction, but not what presses the faces") {
  reading::Source source(good_files::all());
  const auto hinge = [&](const std::string& bushing) {
    return reading::read_model(source, "model.yaml", {"bodies.phalanx.hinge.bushings=" + bushing}).bodies[1].hinge.value();
  };
  const model::Hinge fitted = hinge("flanged");
  CHECK(fitted.bushings.value().name == "flanged");
  CHECK(fitted.bushings->price == 4.5);
  CHECK(fitted.pin->friction.static_coefficient == 0.12);
  CHECK(fitted.pin->friction.kinetic_coefficient == 0.1);
  CHECK_THAT(fitted.washers->inner_diameter, WithinRel(2e-3, 1e-12));
  CHECK_THAT(fitted.washers->outer_diameter, WithinRel(5.5e-3, 1e-12));
  CHECK(fitted.washers->friction.static_coefficient == 0.18);
  CHECK(fitted.washers->friction.kinetic_coefficient == 0.15);
  CHECK(fitted.washers->build.material == 0);
  CHECK(fitted.washers->preload == 1);
  CHECK(fitted.washers->law == model::WasherLaw::uniform_pressure);
  const model::Hinge without = hinge("none");
  CHECK_FALSE(without.bushings);
  CHECK(without.pin->friction.kinetic_coefficient == 0.16);
  CHECK(without.washers->friction.kinetic_coefficient == 0.2);
}

TEST_CASE("values: a controller comes with its loops, its gains in the units of the loop below, and what it is asked for") {
  const model::Scenario scenario = good();
  REQUIRE(scenario.controllers.size() == 1);
  const model::Controller& controller = scenario.controllers[0];
  CHECK(controller.drive == 0);
  CHECK(controller.period == 1e-3);
  CHECK(controller.voltage_limit == 5);
  const auto& loops = std::get<model::Loops>(controller.program);
  CHECK(loops.position->gain == 20);
  CHECK(loops.position->integral == 3);
  CHECK(loops.position->derivative == 0.1);
  CHECK(loops.position->derivative_filter == 4e-3);
  CHECK_THAT(loops.position->limit, WithinRel(600 * kPi / 180, 1e-12));
  CHECK(loops.speed->gain == 0.02);
  CHECK(loops.speed->limit == 0.4);
  CHECK(loops.current->integral == 2000);
  CHECK(loops.current->limit == model::no_limit);
  CHECK(loops.feed_forward.speed == 0.2);
  CHECK_THAT(loops.feed_forward.friction, WithinRel(0.05, 1e-12));
  CHECK_THAT(loops.feed_forward.return_per_angle, WithinRel(0.003, 1e-12));
  CHECK(loops.anti_windup == model::Loops::AntiWindup::none);
  CHECK(controller.speed_filter == 5e-3);
  CHECK(controller.stall->current == 0.3);
  CHECK(controller.stall->time == 0.4);
  CHECK_THAT(controller.heat->highest, WithinRel(363.15, 1e-12));
  CHECK_THAT(controller.heat->ambient, WithinRel(297.15, 1e-12));
  REQUIRE(scenario.objects[3].feet.size() == 2);
  check_near(scenario.objects[3].feet[0].center, Vector3d(3e-3, -5e-3, 0));
  const auto& string = std::get<model::HeldByString>(scenario.objects[4].hold);
  check_near(string.from, Vector3d(0, 0.3, 0));
  check_near(string.at, Vector3d(0, 8e-3, 0));
  CHECK_THAT(string.length.value(), WithinRel(0.095, 1e-12));
  CHECK(string.stiffness == 2000);
  REQUIRE(scenario.twists.size() == 1);
  CHECK(scenario.twists[0].object_index == 3);
  CHECK(scenario.twists[0].body_index == -1);
  CHECK(scenario.twists[0].follows_body);
  check_near(scenario.twists[0].axis, Vector3d::UnitY());
  CHECK_THAT(scenario.twists[0].torque.value[1], WithinRel(0.03, 1e-12));
  REQUIRE(scenario.timeline.size() == 9);
  const auto& trapezoid = std::get<model::SetPosition>(scenario.timeline[4].command);
  CHECK_THAT(trapezoid.angle, WithinRel(200 * kPi / 180, 1e-12));
  CHECK_THAT(std::get<model::MoveTrapezoid>(trapezoid.move).acceleration, WithinRel(4000 * kPi / 180, 1e-12));
  CHECK(std::get<model::MoveMinimumJerk>(std::get<model::SetPosition>(scenario.timeline[5].command).move).time == 0.1);
  CHECK(std::get<model::SetSpeed>(scenario.timeline[6].command).speed < 0);
  CHECK(std::get<model::SetCurrent>(scenario.timeline[7].command).current == 0.2);
  const auto& recorded = std::get<model::SetRecorded>(scenario.timeline[8].command);
  CHECK(recorded.file == "motion.csv");
  CHECK(recorded.time == std::vector<double>{0, 0.2, 0.4505});
  REQUIRE(recorded.angle.size() == 3);
  CHECK_THAT(recorded.angle[1], WithinRel(kPi / 2, 1e-12));
  CHECK_THAT(recorded.angle[2], WithinRel(-kPi / 6, 1e-12));
}

TEST_CASE("values: without a limit of its own a controller may ask for the supply's voltage, and a lone position loop gives volts") {
  good_files::Texts texts = good_files::all();
  for (auto& [name, text] : texts) {
    if (name != "scenario.yaml") continue;
    const auto begin = text.find("controllers:"), end = text.find("timeline:");
    text.replace(begin, end - begin, "controllers: {flexor: {period: 2 ms, loops: {position: {gain: 4 V/rad}}}}\n");
    text.erase(text.find("  - {at: 1.8 s"), text.find("  - {at: 1.9 s") - text.find("  - {at: 1.8 s"));
  }
  reading::Source source(texts);
  const model::Scenario scenario = reading::read_scenario(source, "scenario.yaml");
  CHECK(scenario.controllers.at(0).voltage_limit == scenario.model.supplies.at(0).voltage);
  CHECK(std::get<model::Loops>(scenario.controllers[0].program).position->gain == 4);
}

TEST_CASE("values: scenarios come with a sorted timeline, objects and loads") {
  const model::Scenario scenario = good();
  CHECK(scenario.duration == 2);
  CHECK_THAT(scenario.ambient, WithinRel(298.15, 1e-12));
  REQUIRE(scenario.start_angles.size() == 1);
  CHECK(scenario.start_angles[0].first == 1);
  CHECK_THAT(scenario.start_angles[0].second, WithinRel(kPi / 36, 1e-12));
  REQUIRE(scenario.start_places.size() == 1);
  CHECK(scenario.start_places[0].first == 3);
  CHECK_THAT(scenario.start_places[0].second, WithinRel(1.5e-3, 1e-12));
  REQUIRE(scenario.objects.size() == 5);
  check_near(scenario.objects[0].rotation * Vector3d::UnitZ(), -Vector3d::UnitY());
  CHECK(std::holds_alternative<model::HeldFixed>(scenario.objects[0].hold));
  CHECK(std::get<model::HeldBySpring>(scenario.objects[1].hold).damping_time == 0.01);
  const auto& path = std::get<model::HeldOnPath>(scenario.objects[2].hold);
  CHECK(path.time == std::vector<double>{0, 1});
  check_near(path.displacement[1], Vector3d(0, 5e-3, 0));
  REQUIRE(scenario.timeline.size() == 9);
  CHECK(scenario.timeline[0].time == 0.1);
  CHECK(std::get<model::CommandVoltage>(scenario.timeline[0].command).voltage == 6);
  CHECK(std::get<model::CommandCurrentLimit>(scenario.timeline[1].command).current ==
        0);  // none; written order kept
  CHECK_THAT(std::get<model::CommandAngle>(scenario.timeline[2].command).angle,
             WithinRel(300 * kPi / 180, 1e-12));
  CHECK(std::get<model::CommandOff>(scenario.timeline[3].command).leads == model::Leads::shorted);
  REQUIRE(scenario.loads.size() == 3);
  CHECK(scenario.loads[0].body_index == 2);
  CHECK(scenario.loads[0].object_index == -1);
  CHECK(scenario.loads[0].follows_body);
  CHECK(scenario.loads[0].force.value == std::vector<double>{0, 20});
  check_near(scenario.loads[0].direction, Vector3d::UnitY());
  check_near(scenario.loads[1].direction, -Vector3d::UnitY());
  CHECK_THAT(scenario.loads[1].force.value[0], WithinRel(0.2 * 9.81, 1e-12));
  CHECK(scenario.loads[2].object_index == 1);
  CHECK(scenario.solver.tolerance == 1e-4);
  CHECK_THAT(scenario.record_interval, WithinRel(2e-3, 1e-12));
  REQUIRE(scenario.requirements.size() == 1);
  CHECK(scenario.requirements[0].at_least == 5.0);
  CHECK(scenario.requirements[0].at_most == 50.0);
  CHECK(scenario.requirements[0].unit == "N");
  CHECK(scenario.requirements[0].place.line == 58 + 11);
}

TEST_CASE("values: a study, every way to vary once") {
  reading::Source source(good_files::all());
  const model::Study study = reading::read_study(source, "study.yaml");
  REQUIRE(study.runs.size() == 2);
  CHECK(study.runs[0].name == "grasp");
  CHECK(study.runs[0].scenario == "scenario.yaml");
  CHECK(study.runs[0].change == std::vector<std::string>{"duration=1 s"});
  CHECK(study.runs[1].limit == "limit.yaml");
  REQUIRE(study.vary.size() == 8);
  const auto spread = [&]<class T>(std::size_t i, const T*) { return std::get<T>(study.vary[i].spread); };
  const auto radius = spread(0, static_cast<model::Between*>(nullptr));
  CHECK(study.vary[0].name == "radius");
  CHECK(study.vary[0].unit == "mm");
  CHECK_THAT(radius.low, WithinRel(3.0, 1e-12));
  CHECK_THAT(radius.high, WithinRel(8.0, 1e-12));
  CHECK(radius.logarithmic);
  CHECK(radius.steps == 4);
  CHECK(study.vary[0].law == model::Law::uniform);
  const auto friction = spread(1, static_cast<model::Around*>(nullptr));
  CHECK(friction.relative);
  CHECK_THAT(friction.half, WithinRel(0.2, 1e-12));
  CHECK(study.vary[1].law == model::Law::triangular);
  CHECK(study.vary[1].group == "print");
  const auto resistance = spread(2, static_cast<model::Around*>(nullptr));
  CHECK_FALSE(resistance.relative);
  CHECK_THAT(resistance.half, WithinRel(0.5, 1e-12));
  CHECK(study.vary[2].unit == "Ohm");
  CHECK(study.vary[2].law == model::Law::normal);
  CHECK(study.vary[2].sigmas == 2);
  CHECK(spread(3, static_cast<model::IsoClass*>(nullptr)).name == "h7");
  const auto limit = spread(4, static_cast<model::MeanAndDeviation*>(nullptr));
  CHECK_THAT(limit.mean, WithinRel(0.5, 1e-12));
  CHECK_THAT(limit.deviation, WithinRel(0.01, 1e-12));  // in A, as the mean
  const auto ambient = spread(5, static_cast<model::Measured*>(nullptr));
  REQUIRE(ambient.values.size() == 3);
  CHECK_THAT(ambient.values[1], WithinRel(25.0, 1e-12));
  const auto line = spread(6, static_cast<model::Options*>(nullptr));
  CHECK(line.changes[0] == std::vector<std::string>{"model.cords.flexor.line=braid"});
  const auto way = spread(7, static_cast<model::Options*>(nullptr));
  CHECK(way.names == std::vector<std::string>{"as_drawn", "warm"});
  CHECK(way.changes[1] == std::vector<std::string>{"grasp.ambient=40 degC"});
  CHECK(study.groups == std::vector<std::pair<std::string, double>>{{"print", 0.8}});
  CHECK(study.outcomes == std::vector<std::string>{"grasp.grip_force", "hold", "cost"});
  REQUIRE(study.requirements.size() == 1);
  CHECK(study.requirements[0].at_least == 1.0);
  const auto& optimise = std::get<model::OptimiseStudy>(study.kind);
  REQUIRE(optimise.goals.size() == 2);
  CHECK_FALSE(optimise.goals[0].maximise);
  CHECK(optimise.goals[1].maximise);
  CHECK(optimise.runs == 100);
  REQUIRE(optimise.robustness);
  CHECK(optimise.robustness->sample.points == model::Points::latin_hypercube);
  CHECK_THAT(optimise.robustness->sample.confidence, WithinRel(0.9, 1e-12));
  CHECK(optimise.robustness->vary.at(0).name == "radius");
}

TEST_CASE("values: the number that stands at a key, wherever it is written") {
  reading::Source source(good_files::all());
  const auto at = [&](const std::string& key, const std::vector<std::string>& overrides = {}) {
    return reading::written_quantity(source, "scenario.yaml", overrides, key);
  };
  CHECK_THAT(at("model.drives.flexor.pulley.radius").value().si, WithinRel(3e-3, 1e-12));
  CHECK(at("model.drives.flexor.pulley.radius")->unit == "mm");
  CHECK_THAT(at("model.lines.braid.diameter").value().si, WithinRel(0.5e-3, 1e-12));  // in the parts file
  CHECK_THAT(at("duration").value().si, WithinRel(2.0, 1e-12));
  CHECK_THAT(at("duration", {"duration=3 s"}).value().si, WithinRel(3.0, 1e-12));
  CHECK_THAT(at("model.cords.flexor.path.1.radius", {"model.cords.flexor.path.1.radius=3 mm"}).value().si, WithinRel(3e-3, 1e-12));
  CHECK_FALSE(at("model.drives.flexor.motor"));          // a name
  CHECK_FALSE(at("model.drives.flexor.pulley.collar"));  // not there
}

TEST_CASE("values: what a file leaves out is the default of the model types") {
  good_files::Texts texts = good_files::all();
  texts[2].second = "sinewright: scenario\nname: t\nmodel: model.yaml\nduration: 1 s\n";
  reading::Source source(texts);
  const model::Scenario read = reading::read_scenario(source, "scenario.yaml");
  const model::Scenario plain;
  CHECK(read.gravity == plain.gravity);
  CHECK_THAT(read.ambient, WithinRel(plain.ambient, 1e-12));
  CHECK(read.solver.tolerance == plain.solver.tolerance);
  CHECK_THAT(read.solver.max_step, WithinRel(plain.solver.max_step, 1e-12));
  CHECK(read.solver.min_step == plain.solver.min_step);
  CHECK(read.record_interval == plain.record_interval);
  CHECK(read.timeline.empty());
}

TEST_CASE("values: a scenario reads the same from the texts that a source handed out") {
  const std::string path = std::string(SINEWRIGHT_SOURCE_DIR) + "/tests/reading/good/scenario.yaml";
  reading::Source disk;
  const model::Scenario first = reading::read_scenario(disk, path);
  good_files::Texts texts;
  for (const reading::Source::File& file : disk.handed_out()) texts.emplace_back(file.path, file.text);
  REQUIRE(texts.size() == 5);  // the last two are the digest of the STL file and the recorded motion
  CHECK(texts[0].second == good_files::text("scenario.yaml"));
  CHECK(texts[1].second == good_files::text("model.yaml"));
  CHECK(texts[2].second == good_files::text("parts.yaml"));
  reading::Source recorded(texts);
  const model::Scenario second = reading::read_scenario(recorded, texts[0].first);
  CHECK(second.model.bodies.size() == first.model.bodies.size());
  CHECK(second.timeline.size() == first.timeline.size());
  REQUIRE(recorded.handed_out().size() == 5);
  for (std::size_t i = 0; i < texts.size(); ++i) CHECK(recorded.handed_out()[i].text == texts[i].second);
}

namespace {

model::Drive drive_with(const std::string& keys) {
  good_files::Texts texts = good_files::all();
  const std::string pulley = "pulley: {radius: 3 mm, price: 1.5}";
  std::string& model = texts[1].second;
  const auto at = model.find(pulley);
  REQUIRE(at != std::string::npos);
  model.insert(at + pulley.size(), ", " + keys);
  reading::Source source(texts);
  return reading::read_scenario(source, "scenario.yaml").model.drives.at(0);
}

TEST_CASE("values: directions of a limit, their first one turned into the plane") {
  good_files::Texts texts = good_files::all();
  texts.push_back({"hold.yaml",
                           "sinewright: limit\nname: x\nscenario: scenario.yaml\ndirections:\n  {object: ball, at: [1 mm, 0 mm, 0 mm], plane: [0, 0, 2], "
                           "first: [0, 3, 4], count: 36, start: 0.5 s, rate: 5 N/s, most: 40 N, more_than: 2 mm, halvings: 4}\n"});
  texts.push_back({"plain.yaml", "sinewright: limit\nname: x\nscenario: scenario.yaml\ndirections: {object: ball, rate: 5 N/s, most: 40 N}\n"});
  reading::Source source(texts);
  const model::LimitStudy study = reading::read_limit(source, "hold.yaml");
  const auto& task = std::get<model::Directions>(study.task);
  CHECK(task.object == "ball");
  check_near(task.at, Vector3d(1e-3, 0, 0));
  REQUIRE(task.plane);
  check_near(*task.plane, Vector3d::UnitZ());
  check_near(task.first, Vector3d::UnitY());
  CHECK(task.count == 36);
  CHECK(task.start == 0.5);
  CHECK(task.rate == 5);
  CHECK(task.most == 40);
  CHECK_THAT(task.more_than, WithinRel(2e-3, 1e-12));
  CHECK(task.halvings == 4);
  CHECK(study.place.line == 5);
  const auto standard = std::get<model::Directions>(reading::read_limit(source, "plain.yaml").task);
  CHECK_FALSE(standard.plane);
  CHECK(standard.count == 24);
  CHECK(standard.start == 0);
  CHECK_THAT(standard.more_than, WithinRel(5e-3, 1e-12));
}

}  // namespace

TEST_CASE("values: a drive has no sensor unless one is written") {
  CHECK_FALSE(good().model.drives.at(0).sensor);
  CHECK_FALSE(good().model.drives.at(0).current_sense);
}

TEST_CASE("values: a potentiometer comes with all that lies between shaft and reading") {
  const auto sensor = drive_with(
      "sensor: {potentiometer: {range: 270 deg, at_zero: 30 deg, dead_band: 90 deg, linearity: {table: [[0 %, 1 %], [0.5, -0.02]]}, "
      "resistance: 10 kOhm, load: 1 MOhm, feed: 3.3 V, reference: 2.5 V, bits: 12, noise: {rms: 1 mV, seed: 4}, ripple: {amplitude: "
      "20 mV, frequency: 1 kHz}}, turns: 0.5, fit: {backlash: 2 deg, torsional_stiffness: 3 N·m/rad, friction_torque: 1 mN·m}, period: "
      "2 ms, price: 2.5}").sensor;
  REQUIRE(sensor);
  CHECK(sensor->seat == model::Sensor::Seat::shaft);
  CHECK(sensor->power == model::Sensor::Power::always);
  CHECK(sensor->turns == 0.5);
  CHECK(sensor->period == 2e-3);
  CHECK(sensor->price == 2.5);
  CHECK_THAT(sensor->fit.backlash, WithinRel(2 * kPi / 180, 1e-12));
  CHECK(sensor->fit.torsional_stiffness == 3);
  CHECK_THAT(sensor->fit.friction_torque, WithinRel(1e-3, 1e-12));
  const auto& p = std::get<model::Potentiometer>(sensor->kind);
  CHECK_THAT(p.range, WithinRel(1.5 * kPi, 1e-12));
  CHECK_THAT(p.at_zero, WithinRel(kPi / 6, 1e-12));
  CHECK_THAT(p.dead_band.value(), WithinRel(kPi / 2, 1e-12));
  const auto& table = std::get<model::TableLinearity>(p.linearity);
  CHECK(table.position == std::vector<double>{0, 0.5});
  CHECK(table.error == std::vector<double>{0.01, -0.02});
  CHECK(p.resistance == 1e4);
  CHECK(p.load == 1e6);
  CHECK(p.feed == 3.3);
  CHECK(p.reference == 2.5);
  CHECK(p.bits == 12);
  CHECK_THAT(p.noise.rms, WithinRel(1e-3, 1e-12));
  CHECK(p.noise.seed == 4);
  CHECK_THAT(p.ripple.amplitude, WithinRel(0.02, 1e-12));
  CHECK_THAT(p.ripple.frequency, WithinRel(1000.0, 1e-12));
}

TEST_CASE("values: a plain potentiometer is straight, ratiometric and without noise") {
  const auto sensor = drive_with("sensor: {potentiometer: {range: 270 deg, feed: 3.3 V, bits: 10, reference: ratiometric}, period: 1 ms}").sensor;
  const auto& p = std::get<model::Potentiometer>(sensor.value().kind);
  CHECK(std::get<model::SineLinearity>(p.linearity).error == 0);
  CHECK_FALSE(p.reference);
  CHECK_FALSE(p.dead_band);
  CHECK(p.noise.rms == 0);
  CHECK(sensor->fit.backlash == 0);
}

TEST_CASE("values: encoders and current sense come as written") {
  const auto relative = drive_with("sensor: {encoder: {counts_per_turn: 28}, seat: rotor, power: with_drive, period: 1 ms}").sensor;
  CHECK(std::get<model::RelativeEncoder>(relative.value().kind).counts_per_turn == 28);
  CHECK(relative->seat == model::Sensor::Seat::rotor);
  CHECK(relative->power == model::Sensor::Power::with_drive);
  const auto absolute = drive_with("sensor: {encoder: {bits: 12}, period: 1 ms}").sensor;
  CHECK(std::get<model::AbsoluteEncoder>(absolute.value().kind).bits == 12);
  CHECK_THAT(std::get<model::AbsoluteEncoder>(absolute->kind).at_zero, WithinRel(kPi, 1e-12));
  const auto sense = drive_with(
      "current_sense: {range: [-1 A, 2 A], bits: 8, gain_error: 3 %, offset: 5 mA, noise: {rms: 2 mA}, time_constant: 4 ms, period: 500 us}")
      .current_sense;
  REQUIRE(sense);
  CHECK(sense->low == -1);
  CHECK(sense->high == 2);
  CHECK(sense->bits == 8);
  CHECK_THAT(sense->gain_error, WithinRel(0.03, 1e-12));
  CHECK_THAT(sense->offset, WithinRel(5e-3, 1e-12));
  CHECK_THAT(sense->noise.rms, WithinRel(2e-3, 1e-12));
  CHECK_THAT(sense->time_constant, WithinRel(4e-3, 1e-12));
  CHECK_THAT(sense->period, WithinRel(5e-4, 1e-12));
}
