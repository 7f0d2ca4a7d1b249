#include <fmt/format.h>

#include "reading/describe.h"
#include "reading/describe_fit.h"
#include "reading/describe_packing.h"

namespace sinewright::reading {
namespace {

// What a part is made of.
template <class T, class Part>
void add_material(Record<T>& record, std::optional<Name> Part::*member) {
  record.may("material", member, name_of("material"), Absent{"not checked"}, "what it is made of; for its margins");
}
template <class T, class Part>
void add_build(Record<T>& record, std::optional<Name> Part::*material, model::Layers Part::*layers) {
  add_material(record, material);
  record.may("layers", layers,
             word<model::Layers>({{"along", model::Layers::along}, {"across", model::Layers::across}}),
             Absent{"the weaker of the two"}, "whether the stress that governs acts along or across the printed layers");
}

Kind<WrittenPin> pin() {
  using model::Pin;
  Record<WrittenPin> record("pin",
                            "A metal pin pressed into the outer lugs and running free in the inner one.");
  record.need("diameter", &Pin::diameter, quantity("m", positive()), "diameter")
      .need("friction", &Pin::friction, dry_friction(), "of the pin against the inner lug's bore")
      .may("bearing_span", &Pin::bearing_span, quantity("m", not_negative()), Default{"0 mm"},
           "distance of the two ends of the bore, over which a tilting moment is carried; 0: tilting moments "
           "add "
           "nothing to the friction")
      .may("radial_clearance", &Pin::radial_clearance, quantity("m", not_negative()), Default{"0 mm"},
           "on the diameter; data for the play estimate; 0: not given")
      .may("fit", &WrittenPin::written_fit, fit(), Absent{"not described"},
           "sizes of pin and holes, for fits and play; no part in the mechanics")
      .may("eye_width", &Pin::eye_width, quantity("m", positive()), Absent{"not checked"},
           "width of the inner lug along the pin; for its margins")
      .may("cheek_width", &Pin::cheek_width, quantity("m", positive()), Absent{"not checked"},
           "width of each outer lug along the pin; for its margins")
      .may("gap", &Pin::gap, quantity("m", not_negative()), Absent{"not checked"},
           "between inner and outer lug on each side, washer and play; for its margins")
      .check([](WrittenPin& value, const Node& node) {
        if (value.written_fit) check_sizes(*value.written_fit, value.diameter, *node.find("fit"));
      });
  add_material(record, &Built<Pin>::material);
  add_price(record, &Pin::price);
  return record.kind();
}

Kind<Built<model::Lug>> lug() {
  using model::Lug;
  Record<Built<Lug>> record(
      "lug", "The inner lug about its pin, pulled towards its rounded end. Its thickness is the pin's eye_width. The outer lugs "
             "are taken to be of the same material.");
  record.need("width", &Lug::width, quantity("m", positive()), "across the finger at the hole, whole")
      .need("edge", &Lug::edge, quantity("m", positive()), "from the hole's centre to the end");
  add_build(record, &Built<Lug>::material, &Built<Lug>::layers);
  return record.kind();
}

Kind<Built<model::KnotSeat>> knot_seat() {
  using model::KnotSeat;
  Record<Built<KnotSeat>> record("knot_seat",
                                 "The wall through which a cord passes and on whose rim its stopper knot sits.");
  record.need("knot", &KnotSeat::knot, quantity("m", positive()), "diameter of the knot drawn tight")
      .need("hole", &KnotSeat::hole, quantity("m", positive()), "diameter of the hole")
      .need("wall", &KnotSeat::wall, quantity("m", positive()), "thickness of the wall that the cord passes")
      .may("edge", &KnotSeat::edge, quantity("m", positive()), Absent{"not checked"},
           "from the hole's centre to the edge towards which the cord may tear it out");
  add_build(record, &Built<KnotSeat>::material, &Built<KnotSeat>::layers);
  record.check([](Built<KnotSeat>& value, const Node& node) {
    if (value.knot <= value.hole)
      throw not_allowed(*node.find("knot"), "knot > hole", "a knot no larger than its hole slips through");
    if (value.edge > 0 && value.edge <= value.hole / 2)
      throw not_allowed(*node.find("edge"), "edge > hole / 2", "otherwise the hole cuts the edge");
  });
  return record.kind();
}

Kind<Built<model::Washers>> washers() {
  using model::Washers;
  Record<Built<Washers>> record("washers", "Two equal washers, one on either side of the inner lug.");
  record.need("inner_diameter", &Washers::inner_diameter, quantity("m", positive()), "of the rubbing ring")
      .need("outer_diameter", &Washers::outer_diameter, quantity("m", positive()), "of the rubbing ring")
      .need("friction", &Washers::friction, dry_friction(), "of the rubbing faces")
      .may("preload", &Washers::preload, quantity("N", not_negative()), Default{"0 N"},
           "axial force on each washer when nothing pulls sideways")
      .may("axial_clearance", &Washers::axial_clearance, quantity("m", not_negative()), Default{"0 mm"},
           "data for the play estimate")
      .may("law", &Washers::law,
           word<model::WasherLaw>({{"uniform_wear", model::WasherLaw::uniform_wear},
                                   {"uniform_pressure", model::WasherLaw::uniform_pressure}}),
           Default{"uniform_wear"}, "run-in faces wear evenly, new ones carry even pressure")
      .check([](Built<Washers>& value, const Node& node) {
        if (value.outer_diameter <= value.inner_diameter)
          throw not_allowed(*node.find("outer_diameter"), "outer_diameter > inner_diameter");
      });
  add_material(record, &Built<Washers>::material);
  add_price(record, &Washers::price);
  return record.kind();
}

Kind<model::EndStops> stops(Record<WrittenStops> record) {
  record
      .check([](WrittenStops& value, const Node& node) {
        value.lower = value.range[0];
        value.upper = value.range[1];
        if (value.lower >= value.upper)
          throw not_allowed(*node.find("range")->children[1], "an upper end above the lower one");
      });
  return turned_into<model::EndStops, WrittenStops>(
      record.kind(), [](const WrittenStops& value, const Node&) { return value; });
}

Kind<model::EndStops> hinge_stops() {
  Record<WrittenStops> record("stops", "A one-sided elastic stop at either end of the joint's range.");
  record
      .need("range", &WrittenStops::range, list_of(quantity("rad"), "a list of 2 angles: lower, upper", 2, 2),
            "lower and upper end")
      .need("stiffness", &model::EndStops::stiffness, quantity("N.m/rad", positive()), "torque per depth")
      .may("damping", &model::EndStops::damping, quantity("s/rad", not_negative()), Default{"0 s/rad"},
           "torque = stiffness × depth × (1 + damping × rate), never pulling");
  return stops(std::move(record));
}

Kind<model::EndStops> slide_stops() {
  Record<WrittenStops> record("slide_stops", "A one-sided elastic stop at either end of the slide's range.");
  record
      .need("range", &WrittenStops::range, list_of(quantity("m"), "a list of 2 positions: lower, upper", 2, 2),
            "lower and upper end")
      .need("stiffness", &model::EndStops::stiffness, quantity("N/m", positive()), "force per depth")
      .may("damping", &model::EndStops::damping, quantity("s/m", not_negative()), Default{"0 s/m"},
           "force = stiffness × depth × (1 + damping × speed), never pulling");
  return stops(std::move(record));
}

// A spring at a joint is written as a map and kept as two numbers.
template <class T>
void take_spring(T& value) {
  if (!value.spring) return;
  value.spring_stiffness = value.spring->stiffness;
  value.spring_rest = value.spring->rest;
}

Kind<WrittenSlide> slide() {
  using model::Slide, model::Slideway;
  Record<Slideway> slideway("slideway",
                            "Two straight faces or bores that guide the body and rub. The body bears on the two ends of their "
                            "common length, and they take what the load has across the axis.");
  slideway.need("friction", &Slideway::friction, dry_friction(), "of the faces")
      .may("length", &Slideway::length, quantity("m", not_negative()), Default{"0 mm"},
           "distance of the two ends, over which a tilting moment is carried; 0: tilting moments add nothing to the friction")
      .may("preload", &Slideway::preload, quantity("N", not_negative()), Default{"0 N"},
           "normal force without any load, such as that of a tight fit, in sum over all faces");
  Record<WrittenSpring> spring("slide_spring", "A spring between the body and its parent, along the axis.");
  spring.need("stiffness", &WrittenSpring::stiffness, quantity("N/m", positive()), "force per way")
      .may("rest", &WrittenSpring::rest, quantity("m"), Default{"0 mm"}, "position at which it is relaxed");
  Record<WrittenSlide> record("slide",
                              "A body that slides along an axis of its parent and does not turn against it: the yoke of a bar "
                              "or pulley that shares a pull, or a jaw. Positions count along the axis.");
  record.need("name", &WrittenSlide::joint, name_of("joint"), "name of the slide, among those of the joints")
      .need("parent", &WrittenSlide::parent_name, name_of("body"), "the body that guides it")
      .need("at", &Slide::at, vector3("m"), "the body's origin at position 0, in the parent's frame; the middle of the slideway")
      .need("axis", &Slide::axis, direction(), "along which it slides, in the parent's frame")
      .may("turned", &Slide::seat, turned(), Absent{"not turned"}, "the body's axes in the parent's frame")
      .may("slideway", &Slide::slideway, slideway.kind(), Absent{"no friction"}, "what guides it, and its friction")
      .may("stops", &Slide::stops, slide_stops(), Absent{"no end stops"}, "end stops")
      .may("viscous", &Slide::viscous, quantity("N.s/m", not_negative()), Default{"0 N·s/m"}, "viscous force per speed")
      .may("spring", &WrittenSlide::spring, spring.kind(), Absent{"no spring"}, "a spring along the axis")
      .check([](WrittenSlide& value, const Node& node) {
        require_name(*node.find("name"), node.find("name")->text);
        value.name = value.joint.text;
        take_spring(value);
      });
  return record.kind();
}

Kind<WrittenHinge> hinge() {
  using model::Hinge;
  Record<WrittenSpring> spring("joint_spring", "A torsion spring at the joint.");
  spring.need("stiffness", &WrittenSpring::stiffness, quantity("N.m/rad", positive()), "torque per angle")
      .may("rest", &WrittenSpring::rest, quantity("rad"), Default{"0 deg"}, "angle at which it is relaxed");
  Record<WrittenHinge> record("hinge",
                              "How a body hangs on its parent. The body's frame origin lies on the pin. "
                              "Flexion is positive and turns the body "
                              "by minus the angle (right-hand rule) about the pin axis: with the pin along z "
                              "the tip of a finger along x moves "
                              "toward -y.");
  record.need("name", &WrittenHinge::joint, name_of("joint"), "name of the joint, for instance MCP")
      .need("parent", &WrittenHinge::parent_name, name_of("body"), "the body that carries the pin")
      .need("at", &Hinge::at, vector3("m"), "centre of the pin, in the parent's frame")
      .may("pin_axis", &Hinge::pin_axis, direction(), Absent{"[0, 0, 1]"},
           "direction of the pin, in the parent's frame")
      .may("turned", &Hinge::seat, turned(), Absent{"not turned"},
           "the body's axes in the parent's frame at angle 0")
      .may("pin", &WrittenHinge::written_pin, pin(), Absent{"no pin friction"}, "the pin and its friction")
      .may("washers", &WrittenHinge::written_washers, washers(), Absent{"no washer friction"}, "washers and their friction")
      .may("bushings", &WrittenHinge::bushing_name, name_of("bushing"), Absent{"none"},
           "the kind of two flanged bushings, or none; they give the friction in place of the pin's and the washers' own, and "
           "are bought in place of the washers, whose preload, clearance and law still hold")
      .may("lug", &WrittenHinge::written_lug, lug(), Absent{"not checked"}, "the lug about the pin, for its margins")
      .may("stops", &Hinge::stops, hinge_stops(), Absent{"no end stops"}, "end stops")
      .may("viscous", &Hinge::viscous, quantity("N.m.s/rad", not_negative()), Default{"0 N·m·s/rad"},
           "viscous torque per rate")
      .may("spring", &WrittenHinge::spring, spring.kind(), Absent{"no spring"},
           "a torsion spring at the joint")
      .check([](WrittenHinge& value, const Node& node) {
        require_name(*node.find("name"), node.find("name")->text);
        value.name = value.joint.text;
        if (value.written_pin) value.pin = *value.written_pin;
        take_spring(value);
        value.washers = value.written_washers;
        value.lug = value.written_lug;
        if (value.lug && !value.pin)
          throw not_allowed(*node.find("lug"), "a pin that goes through the lug", "describe 'pin' as well");
        const double hole = value.pin ? value.pin->diameter + value.pin->radial_clearance : 0;
        if (value.lug && value.lug->width <= hole)
          throw not_allowed(*node.find("lug")->find("width"), "more than the pin's diameter and clearance");
        if (value.lug && value.lug->edge <= hole / 2)
          throw not_allowed(*node.find("lug")->find("edge"), "more than half the pin's diameter and clearance");
        if (value.pin && value.washers && value.washers->inner_diameter < value.pin->diameter)
          throw not_allowed(*node.find("washers")->find("inner_diameter"), "at least the diameter of the pin",
                            "the washers sit on the pin");
      });
  return record.kind();
}

Kind<WrittenBody> body() {
  Record<model::Fixed> fixed("fixed", "A body that does not move in the world.");
  fixed
      .may("at", &model::Fixed::at, vector3("m"), Absent{"the origin"},
           "origin of the body frame in the world")
      .may("turned", &model::Fixed::rotation, turned(), Absent{"not turned"}, "the body's axes in the world");
  Record<WrittenShape> shape("contact_shape", "A shape that can touch objects.");
  add_shapes(shape, &WrittenShape::shape);
  shape.need("surface", &WrittenShape::surface, name_of("surface"), "what covers it");
  Record<WrittenBody> record(
      "body",
      "A palm, knuckle or phalanx. Frame: x from the knuckle to the tip, y to the back of the "
      "hand, z along the pin.");
  record.one_of("support", "hinge", &WrittenBody::hinge, hinge(), "hangs on another body by a pin")
      .one_of("support", "slide", &WrittenBody::slide, slide(), "slides on another body")
      .one_of("support", "fixed", &WrittenBody::fixed, fixed.kind(), "stands still in the world")
      .may("mass", &WrittenBody::mass, mass_properties(), Absent{"none"},
           "mass as numbers; adds to the solids")
      .may("solids", &WrittenBody::solids, list_of(solid(), "a list of solids", 1), Absent{"none"},
           "primitives and parts that give mass")
      .may("shapes", &WrittenBody::shapes, named(shape.kind(), "shape"), Absent{"touches nothing"},
           "what can touch objects")
      .may("price", &WrittenBody::price, number(not_negative()), Absent{"that of its solids, by volume"},
           "of the whole body, in the model's currency; 0 for what is there anyway, such as the bench")
      .may("occupies", &WrittenBody::occupies, occupies(), Absent{"nothing"}, "what sits in the body, in its frame")
      .check([](WrittenBody& value, const Node& node) {
        if (!value.fixed && !value.mass && value.solids.empty())
          throw missing(node, "mass",
                        fmt::format("a {} body has 'mass', or 'solids', or both", value.hinge ? "hinged" : "sliding"));
        for (const Entry<WrittenOccupied>& entry : value.occupies)
          if (entry.name == "print")
            throw complaint(entry.node->key_place(), entry.node->path() + " has the name of the body's own solids", "another name", "");
      });
  return record.kind();
}

Kind<WrittenDrive> drive() {
  using model::Bore;
  Record<Bore> bore("bore", "The pulley's bore on the D-shaped shaft.");
  bore.need("diameter", &Bore::diameter, quantity("m", positive()), "of the shaft")
      .need("flat_depth", &Bore::flat_depth, quantity("m", positive()), "taken off the round; half the diameter at most")
      .need("length", &Bore::length, quantity("m", positive()), "engaged along the shaft")
      .check([](Bore& value, const Node& node) {
        if (value.flat_depth > value.diameter / 2)
          throw not_allowed(*node.find("flat_depth"), "at most half the diameter",
                            "the depth taken off, not the size across the flat");
      });
  using model::Flange;
  Record<Flange> flange("flange", "The rim that keeps the cord on the pulley, as a cantilever.");
  flange.need("thickness", &Flange::thickness, quantity("m", positive()), "at its root")
      .need("height", &Flange::height, quantity("m", positive()), "from the groove's bottom to where the cord pushes")
      .need("width", &Flange::width, quantity("m", positive()), "length of the rim that shares the push")
      .need("fleet_angle", &Flange::fleet_angle,
            quantity("rad", {0, 1.5707963267948966, true, false, "above 0 deg, up to 90 deg"}),
            "largest angle of the cord out of the pulley's plane: it pushes with the sine of it");
  using model::SensorCollar;
  Record<SensorCollar> collar("sensor_collar", "A thin ring on the pulley that turns the sensor; of the pulley's material.");
  collar.need("outer_diameter", &SensorCollar::outer_diameter, quantity("m", positive()), "outside")
      .need("inner_diameter", &SensorCollar::inner_diameter, quantity("m", positive()), "inside")
      .need("torque", &SensorCollar::torque, quantity("N.m", positive()), "largest that the sensor asks for")
      .check([](SensorCollar& value, const Node& node) {
        if (value.outer_diameter <= value.inner_diameter)
          throw not_allowed(*node.find("outer_diameter"), "outer_diameter > inner_diameter");
      });
  using model::Pulley;
  Record<WrittenPulley> pulley("pulley", "The pulley on the output shaft.");
  pulley
      .need("radius", &Pulley::radius, quantity("m", positive()),
            "of the bare groove; the cord's centre runs half a cord diameter further out")
      .may("turns_per_layer", &Pulley::turns_per_layer, number(positive()),
           Absent{"the radius does not grow"}, "windings side by side before the next layer")
      .may("bore", &Pulley::bore, bore.kind(), Absent{"not checked"}, "on the D-shaped shaft; for its margins")
      .may("wall_eccentricity", &Pulley::wall_eccentricity, quantity("m", not_negative()), Default{"0 mm"},
           "of bore and groove, or how much else thins the wall between them at one place; for its margins")
      .may("knot_seat", &WrittenPulley::written_seat, knot_seat(), Absent{"not checked"},
           "where the cord's knot sits; for its margins")
      .may("flange", &Pulley::flange, flange.kind(), Absent{"not checked"}, "for its margin")
      .may("collar", &Pulley::collar, collar.kind(), Absent{"not checked"}, "for its margin");
  add_build(pulley, &Built<Pulley>::material, &Built<Pulley>::layers);
  add_price(pulley, &Pulley::price);
  add_outline(pulley, &Pulley::outline, "from radius, flange height and bore length");
  pulley.check([](WrittenPulley& value, const Node& node) {
    value.knot_seat = value.written_seat;
    if (!value.bore || value.radius - value.bore->diameter / 2 - value.wall_eccentricity > 0) return;
    const Node* thinned = node.find("wall_eccentricity");
    throw not_allowed(thinned != nullptr ? *thinned : *node.find("bore")->find("diameter"),
                      "a wall between bore and groove: radius > diameter / 2 + wall_eccentricity");
  });
  using model::Touch;
  Record<Touch> touch("touch", "What a hand may touch of the drive: the motor's housing.");
  touch
      .need("surface", &Touch::surface,
            word<Touch::Surface>({{"metal", Touch::Surface::metal}, {"plastic", Touch::Surface::plastic}}),
            "what the skin touches")
      .need("time", &Touch::time, quantity("s", positive()), "how long");
  Record<WrittenDrive> record(
      "drive",
      "Motor, gearhead and pulley on one shaft, seated in a body. A positive shaft angle winds "
      "the cord in.");
  record.need("body", &WrittenDrive::body, name_of("body"), "the body that carries the drive")
      .need("supply", &WrittenDrive::supply, name_of("supply"), "what feeds it")
      .need("motor", &WrittenDrive::motor, name_of("motor"), "the motor")
      .need("gearhead", &WrittenDrive::gearhead, name_of("gearhead"), "the gearhead")
      .may("current_limit", &WrittenDrive::current_limit, quantity_or_none("A", positive(), 0),
           Default{"none"}, "of the driver")
      .need("pulley", &WrittenDrive::pulley, pulley.kind(), "the pulley")
      .may("touch", &WrittenDrive::touch, touch.kind(), Absent{"not checked"}, "for the margin of its touch temperature")
      .may("sensor", &WrittenDrive::sensor, sensor(), Absent{"none"}, "what tells the angle of the shaft or the rotor")
      .may("current_sense", &WrittenDrive::current_sense, current_sense(), Absent{"none"}, "what reads the motor's current")
      .may("shaft", &WrittenDrive::shaft, shaft_seat(), Absent{"not placed"}, "where the shaft sits; for the packing check")
      .may("inside", &WrittenDrive::inside, surroundings(), Absent{"all that do not move against it"},
           "bodies whose prints are hollowed out for the drive's parts; [] stands free; for the packing check")
      .may("occupies", &WrittenDrive::occupies, occupies(), Absent{"nothing"},
           "what it takes up beside motor, gearhead, pulley and sensor; origin at the shaft's 'at', y along its 'up', z along its 'axis'")
      .check([](WrittenDrive& value, const Node& node) {
        const auto& ring = value.pulley.collar;
        if (!value.sensor || !ring || value.sensor->fit.friction_torque <= ring->torque) return;
        throw not_allowed(*node.find("sensor")->find("fit")->find("friction_torque"),
                          "at most pulley.collar.torque, the largest torque that the sensor asks of its collar");
      })
      .check([](WrittenDrive& value, const Node& node) {
        for (const Entry<WrittenOccupied>& entry : value.occupies)
          for (const char* taken : {"motor", "gearhead", "pulley", "sensor"})
            if (entry.name == taken)
              throw complaint(entry.node->key_place(), entry.node->path() + " has the name of a part of every drive",
                              "a name of its own", "the size of that part is its 'outline'");
        if (!value.occupies.empty() && !value.shaft)
          throw missing(node, "shaft", "where the shaft sits, because 'occupies' counts from there");
      });
  return record.kind();
}

Kind<model::ChannelFriction> channel() {
  using model::ChannelFriction;
  Record<ChannelFriction> record("channel",
                                 "How a cord slides in its channel: data of the cord-channel pair.");
  record
      .need("friction", &ChannelFriction::kinetic, number(not_negative()),
            "Coulomb coefficient while sliding (at the reference line load)")
      .may("static_ratio", &ChannelFriction::static_ratio, number({1, 100, false, false, ">= 1"}),
           Default{"1"}, "static / kinetic coefficient")
      .may("load_exponent", &ChannelFriction::load_exponent, number({0, 1, true, false, "above 0, up to 1"}),
           Default{"1"}, "n in F ∝ Nⁿ: the coefficient is friction × (line load / reference_line_load)^(n−1)")
      .may("reference_line_load", &ChannelFriction::reference_line_load, quantity("N/m", positive()),
           Absent{"not needed"},
           "tension / bend radius at which `friction` holds; needed when load_exponent is not 1")
      .may("highest", &ChannelFriction::highest, number(positive()), Absent{"not needed"},
           "cap of the coefficient at low load; needed when load_exponent is not 1")
      .may("bending_loss", &ChannelFriction::bending_loss, number({1, 100, false, false, ">= 1"}),
           Default{"1"}, "tension ratio that each bend costs through bending stiffness alone")
      .may("groove_angle", &ChannelFriction::groove_angle,
           quantity("rad", {0, 3.14159265358979323846, true, false, "above 0 deg, up to 180 deg"}),
           Absent{"a round or flat channel"}, "included angle of a V groove")
      .need("source", &ChannelFriction::source, text(),
            "where the numbers come from: a publication, a measurement, or 'invented'")
      .check([](ChannelFriction& value, const Node& node) {
        if (value.load_exponent == 1) return;
        if (value.reference_line_load == 0)
          throw missing(node, "reference_line_load", "a line load, because load_exponent is not 1");
        if (value.highest == 0)
          throw missing(node, "highest", "a plain number, because load_exponent is not 1");
        if (value.highest < value.kinetic) throw not_allowed(*node.find("highest"), "highest >= friction");
      });
  return record.kind();
}

Kind<WrittenPoint> path_point() {
  const std::string in_about = "the body it is fixed in";
  const std::string factor_about = "multiplies the coefficient here";
  Record<WrittenPoint> pulley("path_pulley",
                              "The cord is wound on a drive's pulley. Only at the start of a path.");
  pulley.need("pulley", &WrittenPoint::drive, name_of("drive"), "the drive")
      .need("at", &WrittenPoint::at, vector3("m"),
            "where the cord leaves the pulley, in the frame of the drive's body")
      .check([](WrittenPoint& value, const Node& node) {
        value.node = &node;
        value.point = model::PulleyEnd{-1, value.at};
      });
  Record<WrittenPoint> bend("path_bend",
                            "A place where the channel turns. The corner is rounded by an inscribed arc.");
  bend.need("bend", &WrittenPoint::at, vector3("m"),
            "corner of the channel's centre line, in the body's frame")
      .need("in", &WrittenPoint::in, name_of("body"), in_about)
      .may("radius", &WrittenPoint::radius, quantity("m", not_negative()), Default{"0 mm"},
           "of the arc; 0: a sharp corner")
      .may("friction_factor", &WrittenPoint::friction_factor, number(not_negative()), Default{"1"},
           factor_about)
      .check([](WrittenPoint& value, const Node& node) {
        value.node = &node;
        value.point = model::Bend{-1, value.at, value.radius, value.friction_factor};
      });
  Record<WrittenPoint> guide(
      "path_guide",
      "A round cylinder that the cord may wrap around. Its neighbours in the path are no guides.");
  guide.need("guide", &WrittenPoint::at, vector3("m"), "a point on the cylinder's axis, in the body's frame")
      .need("in", &WrittenPoint::in, name_of("body"), in_about)
      .may("axis", &WrittenPoint::axis, direction(), Absent{"[0, 0, 1]"},
           "direction of the axis, in the body's frame")
      .need("radius", &WrittenPoint::radius, quantity("m", positive()),
            "from the axis to the cord's centre line")
      .need("side", &WrittenPoint::side, direction(),
            "from the axis to where the cord passes, in the body's frame")
      .may("friction_factor", &WrittenPoint::friction_factor, number(not_negative()), Default{"1"},
           factor_about)
      .check([](WrittenPoint& value, const Node& node) {
        value.node = &node;
        if (value.side.cross(value.axis).norm() < 1e-6)
          throw not_allowed(*node.find("side"), "a direction away from the axis, not along it");
        value.point = model::Guide{-1, value.at, value.axis, value.radius, value.side, value.friction_factor};
      });
  Record<WrittenPoint> anchor("path_anchor", "The cord is tied to a body. Only at either end of a path.");
  anchor.need("anchor", &WrittenPoint::at, vector3("m"), "the point, in the body's frame")
      .need("in", &WrittenPoint::in, name_of("body"), in_about)
      .may("seat", &WrittenPoint::seat, knot_seat(), Absent{"not checked"}, "where the cord's knot sits; for its margins")
      .check([](WrittenPoint& value, const Node& node) {
        value.node = &node;
        value.point = model::Anchor{-1, value.at, value.seat};
      });
  return by_key<WrittenPoint>(
      {{"pulley", pulley.kind()}, {"bend", bend.kind()}, {"guide", guide.kind()}, {"anchor", anchor.kind()}});
}

Kind<WrittenCord> cord() {
  using model::Knot;
  Record<Knot> knot("knot", "The stopper knots at a cord's ends.");
  knot.need("name", &Knot::name, text(), "which knot")
      .need("efficiency", &Knot::efficiency, number({0, 1, true, false, "above 0, up to 1"}),
            "share of the line's breaking force that the knotted cord bears; no value fits all, tie and pull some");
  Record<WrittenCord> record("cord",
                             "A cord in its channel, from the pulley or first anchor to the last anchor.");
  record.need("line", &WrittenCord::line, name_of("line"), "the kind of cord")
      .need("channel", &WrittenCord::channel, channel(), "friction in the channel")
      .need("path", &WrittenCord::path, list_of(path_point(), "a list of 2 or more points", 2),
            "pulley or anchor, then bends and guides, then an anchor")
      .may("pretension", &WrittenCord::pretension, quantity("N", not_negative()), Default{"0 N"},
           "uniform tension at the start posture; not together with slack")
      .may("slack", &WrittenCord::slack, quantity("m", not_negative()), Default{"0 mm"},
           "surplus length at the start posture")
      .may("lump_bends", &WrittenCord::lump_bends, yes_no(), Default{"false"},
           "one friction node a body instead of one a bend: faster, less exact")
      .may("knot", &WrittenCord::knot, knot.kind(), Absent{"not checked"}, "at the ends; for its margin")
      .may("allowance", &WrittenCord::allowance, quantity("m", not_negative()), Default{"0 mm"},
           "what is cut beyond path and winding: knots, tails, dead turns; for the bill of materials")
      .check([](WrittenCord& value, const Node& node) {
        if (value.pretension > 0 && value.slack > 0)
          throw not_allowed(*node.find("slack"), "pretension or slack, not both",
                            "a cord under tension has no slack");
      });
  return record.kind();
}

Kind<WrittenFinger> finger() {
  Record<WrittenPlace> place("finger_drive", "Where a drive of a finger sits in the hand, in place of what the finger's own file says.");
  place
      .may("body", &WrittenPlace::body, name_of("body"), Absent{"that of the finger's file"},
           "the body of this file that carries the drive; wants 'lead' for the cord that the drive winds")
      .may("lead", &WrittenPlace::lead, list_of(path_point(), "a list of 1 or more points", 1), Absent{"straight, as in the finger's file"},
           "the way of its cord from the pulley to the finger, in the names of this file: the pulley, then bends and guides; it takes the "
           "place of the pulley at the start of the cord's path")
      .may("shaft", &WrittenPlace::shaft, shaft_seat(), Absent{"not placed, or as in the finger's file where the drive stays"},
           "where the shaft sits, in the frame of the body that carries it now; for the packing check")
      .may("inside", &WrittenPlace::inside, surroundings(), Absent{"all that do not move against it"},
           "bodies of this file whose prints are hollowed out for the drive's parts; for the packing check");
  Record<WrittenFinger> record("finger",
                               "A finger from a model file of its own, seated in this one. Its bodies, joints, drives, cords and supplies get "
                               "its name and a dot before theirs: index.proximal, index.MCP. Materials, lines, motors and the like keep "
                               "their names.");
  record.need("model", &WrittenFinger::model, text(), "the finger's model file, relative to the folder of this file")
      .may("at", &WrittenFinger::at, vector3("m"), Absent{"the origin"}, "where the origin of the finger's world lies in this one's")
      .may("turned", &WrittenFinger::turned, turned(), Absent{"not turned"}, "the axes of the finger's world in this one's")
      .may("supply", &WrittenFinger::supply, name_of("supply"), Absent{"the finger's own supplies"},
           "the supply of this file that feeds all its drives, in place of its own")
      .may("leave_out", &WrittenFinger::leave_out, list_of(name_of("body"), "a list of names of bodies"), Absent{"nothing"},
           "bodies of the finger's file that the hand does without, by their names there: for instance its stand-in for a palm")
      .may("drives", &WrittenFinger::drives, by_name_of(place.kind(), "drive", true), Absent{"as in the finger's file"},
           "where its drives really sit, by their names in the finger's file");
  return record.kind();
}

}  // namespace

Kind<ModelFile> model_file() {
  using model::Supply;
  Record<Supply> supply("supply",
                        "A voltage source with internal resistance, shared by the drives that name it.");
  supply.need("voltage", &Supply::voltage, quantity("V", positive()), "open-circuit voltage")
      .may("resistance", &Supply::resistance, quantity("Ohm", not_negative()), Default{"0 Ohm"},
           "internal resistance")
      .may("current_limit", &Supply::current_limit, quantity_or_none("A", positive(), 0), Default{"none"},
           "that it gives to all its drives together; its voltage falls as far as it must when they ask for more")
      .may("charge", &Supply::charge, quantity("A.s", positive()), Absent{"not given"},
           "that it gives before it is empty, such as 450 mA·h; for runs_per_charge in the summary");
  add_price(supply, &Supply::price);
  using model::BillItem;
  Record<BillItem> item("bill_item", "Something bought of which the physics knows nothing: screws, a sensor, a driver board.");
  item.may("count", &BillItem::count, whole_number(1, 1000000), Default{"1"}, "pieces")
      .may("used_for", &BillItem::used_for, text(), Absent{"not said"}, "where it goes");
  add_price(item, &BillItem::price);
  Record<ModelFile> record("model_file", "A finger or hand: what it is made of, without time.");
  add_heading(record, "model", true);
  record.may("use", &ModelFile::use, list_of(text(), "a list of parts files"), Absent{"none"},
             "parts files, relative to the folder of this file")
      .may("currency", &ModelFile::currency, text(), Default{"unit"}, "of all prices, those of the parts files among them; a word for tables");
  add_parts(record);
  record
      .may("supplies", &ModelFile::supplies, named(supply.kind(), "supply"), Absent{"none"},
           "voltage sources")
      .may("bodies", &ModelFile::bodies, named(body(), "body"), Absent{"only those of the fingers"},
           "palm, knuckles and phalanges, in any order")
      .may("drives", &ModelFile::drives, named(drive(), "drive"), Absent{"none"}, "motors that wind cords")
      .may("cords", &ModelFile::cords, named(cord(), "cord"), Absent{"none"}, "cords")
      .may("fingers", &ModelFile::fingers, named(finger(), "finger"), Absent{"none"}, "fingers from files of their own, which make this a hand")
      .may("bill", &ModelFile::bill, named(item.kind(), "bill item"), Absent{"nothing more"},
           "what is bought beside all that, for the bill of materials")
      .may("packing", &ModelFile::packing, packing(), Absent{"as its defaults"}, "for the packing check")
      .check([](ModelFile& value, const Node& node) {
        if (value.bodies.empty() && value.fingers.empty())
          throw missing(node, "bodies", "palm, knuckles and phalanges", "a hand that is all fingers needs none; this file has no 'fingers' either");
      });
  return record.kind();
}

}  // namespace sinewright::reading
