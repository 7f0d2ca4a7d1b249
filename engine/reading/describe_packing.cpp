#include "reading/describe_packing.h"

namespace sinewright::reading {
namespace {

using model::Outline;
using model::ShaftSeat;

// A name with its kind before it: a drive and its cord often share one.
Kind<Name> part_name() {
  const std::string words =
      "what may touch: bodies.NAME, drives.NAME or cords.NAME, or one part of it, such as bodies.palm.battery, bodies.palm.print, "
      "drives.flexor.motor";
  Kind<Name> kind;
  kind.shown = {words, {{"type", "string"}, {"pattern", "^(bodies|drives|cords)\\.[A-Za-z]"}}, {}};
  kind.read = [words](const Node& node) {
    if (node.kind != Node::Kind::text || node.text.empty()) throw not_allowed(node, words);
    // "bodies.palm" of a finger in a hand is "bodies.index.palm" there.
    const std::size_t dot = node.text.find('.');
    if (dot == std::string::npos) return Name{node.text, &node};
    return Name{node.text.substr(0, dot + 1) + root_of(node).scope + node.text.substr(dot + 1), &node};
  };
  return kind;
}

}  // namespace

Kind<Outline> outline() {
  struct Written : Outline {
    double diameter = 0, flats = 0;
  };
  Record<Written> record("outline",
                         "What a bought part takes up, shaft left out: a block, or a round can. For the packing check alone.");
  record.need("length", &Outline::length, quantity("m", positive()), "along the shaft")
      .one_of("across", "width", &Outline::width, quantity("m", positive()), "of a block, across the shaft")
      .one_of("across", "diameter", &Written::diameter, quantity("m", positive()), "of a can")
      .may("height", &Outline::height, quantity("m", positive()), Absent{"as the width"},
           "of a block, across shaft and width; it lies along the shaft's 'up'")
      .may("flats", &Written::flats, quantity("m", positive()), Absent{"round"},
           "of a can that is flattened on two sides: their distance, along the shaft's 'up'")
      .check([](Written& value, const Node& node) {
        const Node *height = node.find("height"), *flats = node.find("flats");
        if (value.diameter > 0) {
          if (height != nullptr)
            throw complaint(height->key_place(), height->path() + " is not allowed beside diameter", "'flats' of a can, 'height' of a block", "");
          value.round = true;
          value.width = value.diameter;
          value.height = flats != nullptr ? value.flats : value.diameter;
          if (value.height > value.width) throw not_allowed(*flats, "at most the diameter");
        } else {
          if (flats != nullptr)
            throw complaint(flats->key_place(), flats->path() + " is not allowed beside width", "'flats' of a can, 'height' of a block", "");
          if (height == nullptr) value.height = value.width;
        }
      });
  return turned_into<Outline, Written>(record.kind(), [](const Written& value, const Node&) { return Outline(value); });
}

Kind<ShaftSeat> shaft_seat() {
  struct Written : ShaftSeat {
    std::optional<Vector3d> wanted_up;
  };
  Record<Written> record("drive_shaft",
                         "Where the shaft sits, in the frame of the drive's body. From 'at' on along 'axis' stand half the pulley, the "
                         "gap, the gearhead, the motor and a sensor on the rotor; the other way half the pulley, the gap and a sensor "
                         "on the shaft. For the packing check alone.");
  record.need("at", &ShaftSeat::at, vector3("m"), "middle of the pulley, on the shaft's axis")
      .need("axis", &ShaftSeat::axis, direction(), "from the pulley towards gearhead and motor")
      .may("up", &Written::wanted_up, direction(), Absent{"the body's y, or its x for a shaft along y"},
           "where the heights and flats of the outlines point; only its part across the axis counts")
      .may("gap", &ShaftSeat::gap, quantity("m", not_negative()), Default{"0.5 mm"}, "on either side of the pulley")
      .check([](Written& value, const Node& node) {
        const auto across = [&](const Vector3d& v) { return Vector3d(v - v.dot(value.axis) * value.axis); };
        Vector3d up = across(value.wanted_up.value_or(Vector3d::UnitY()));
        if (up.norm() < 1e-6) {
          if (value.wanted_up) throw not_allowed(*node.find("up"), "a direction away from the axis, not along it");
          up = across(Vector3d::UnitX());
        }
        value.up = up.normalized();
      });
  return turned_into<ShaftSeat, Written>(record.kind(), [](const Written& value, const Node&) { return ShaftSeat(value); });
}

Kind<std::vector<Name>> surroundings() {
  return list_of(name_of("body"), "a list of bodies, [] for none");
}

Kind<Named<WrittenOccupied>> occupies() {
  Record<WrittenOccupied> record("occupied",
                                 "A thing that takes up room: a battery, a board, the head of a screw. For the packing check alone; it "
                                 "weighs nothing and touches no object.");
  add_shapes(record, &WrittenOccupied::shape);
  record.may("inside", &WrittenOccupied::inside, surroundings(), Absent{"as the drive, or all that do not move against it"},
             "bodies whose prints are hollowed out for it; [] stands free");
  return named(record.kind(), "occupied");
}

Kind<WrittenPacking> packing() {
  Record<WrittenPacking> record("packing", "How 'inspect --packing' looks at the model. No run gives another number because of it.");
  record
      .may("clearance", &WrittenPacking::clearance, quantity("m", not_negative()), Default{"0.5 mm"},
           "gaps below this are listed as narrow")
      .may("may_touch", &WrittenPacking::may_touch, list_of(list_of(part_name(), "a list of 2 parts", 2, 2), "a list of pairs"),
           Absent{"none"}, "pairs that are meant to touch or to lie in each other; no collision is seen between them")
      .may("wrist", &WrittenPacking::wrist, quantity("m"), Absent{"where the hand ends at the back"},
           "where the hand begins along the world's x, for its length")
      .may("palm", &WrittenPacking::palm, list_of(name_of("body"), "a list of bodies", 1), Absent{"all that do not move"},
           "bodies whose prints and parts count for the breadth and the thickness of the hand");
  return record.kind();
}

}  // namespace sinewright::reading
