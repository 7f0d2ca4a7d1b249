#include "reading/describe.h"

namespace sinewright::reading {
namespace {

using model::EndEvent;
using model::RampEnd;

// Quantities of unlike kinds under one key ("rate") need the kind of the rise, so each rise is a record of its own.
struct WrittenRamp : model::Ramp {
  std::string load, object, drive;
  Vector3d direction = Vector3d::UnitX();
};

Kind<RampEnd> ramp_end() {
  const auto record = [](const std::string& name, const std::string& about, const std::string& key, const std::string& what,
                         EndEvent event, const std::string& more, const std::string& unit, const std::string& standard,
                         const std::string& meaning) {
    Record<RampEnd> made(name, about);
    made.need(key, &RampEnd::subject, text(), what + ", or any")
        .may(more, &RampEnd::more_than, quantity(unit, positive()), Default{standard}, meaning)
        .check([event](RampEnd& end, const Node&) {
          end.event = event;
          if (end.subject == "any") end.subject.clear();
        });
    return made.kind();
  };
  Record<RampEnd> margin("end_margin_falls", "The ramp ends when a margin falls below a value.");
  margin.need("margin_falls", &RampEnd::subject, text(), "a margin by its name, or any")
      .may("below", &RampEnd::more_than, number(positive()), Default{"1"}, "capacity / demand")
      .check([](RampEnd& end, const Node&) {
        end.event = EndEvent::margin_falls;
        end.more_than = 1 / end.more_than;  // demand / capacity rises with the load, as what the other ends watch
        if (end.subject == "any") end.subject.clear();
      });
  return by_key<RampEnd>(
      {{"shaft_turns", record("end_shaft_turns", "The ramp ends when an output shaft has turned.", "shaft_turns", "a drive",
                              EndEvent::shaft_turns, "more_than", "rad", "0.5 deg", "since the ramp began, either way")},
       {"joint_moves", record("end_joint_moves", "The ramp ends when a joint has moved.", "joint_moves", "a joint",
                              EndEvent::joint_moves, "more_than", "rad", "0.2 deg", "since the ramp began, either way")},
       {"object_leaves", record("end_object_leaves", "The ramp ends when an object has no contact left or has moved.",
                                "object_leaves", "an object", EndEvent::object_leaves, "more_than", "m", "20 mm",
                                "way since the ramp began")},
       {"motor_stalls", record("end_motor_stalls", "The ramp ends when a shaft that was turning under power stands.",
                               "motor_stalls", "a drive", EndEvent::motor_stalls, "longer_than", "s", "20 ms",
                               "at rest")},
       {"margin_falls", margin.kind()}});
}

Kind<model::Ramp> ramp() {
  const auto start = [](const std::string& name, const std::string& about, const std::string& unit,
                        const std::string& per_second) {
    Record<WrittenRamp> record(name, about);
    record.may("start", &WrittenRamp::start, quantity("s", not_negative()), Default{"0 s"}, "when the rise begins")
        .may("from", &WrittenRamp::from, quantity(unit), Default{"0 " + unit}, "value until then")
        .need("rate", &WrittenRamp::rate, quantity(per_second, positive()), "of the first run; later ones take half of it")
        .need("most", &WrittenRamp::most, quantity(unit), "where the rise ends")
        .may("halvings", &WrittenRamp::halvings,
             whole_number(1, 12),
             Default{"5"}, "of the rate, at most")
        .need("until", &WrittenRamp::until, ramp_end(), "the event that ends it")
        .check([](WrittenRamp& value, const Node& node) {
          if (value.most <= value.from) throw not_allowed(*node.find("most"), "most > from");
        });
    return record;
  };
  Record<WrittenRamp> load = start("ramp_of_load", "The force of a load rises.", "N", "N/s");
  load.need("load", &WrittenRamp::load, text(), "a load of the scenario").check([](WrittenRamp& value, const Node&) {
    value.what = model::RiseOfLoad{value.load};
  });
  Record<WrittenRamp> object = start("ramp_of_displacement", "An object is moved, whatever it takes.", "m", "m/s");
  object.need("displace", &WrittenRamp::object, text(), "an object of the scenario")
      .need("direction", &WrittenRamp::direction, direction(), "in the world")
      .may("answer", &WrittenRamp::peak_force, word<bool>({{"displacement", false}, {"peak_force", true}}),
           Default{"displacement"}, "how far it got, or the greatest force that the contacts held against it")
      .check([](WrittenRamp& value, const Node&) {
        value.what = model::RiseOfDisplacement{value.object, value.direction};
      });
  Record<WrittenRamp> voltage = start("ramp_of_voltage", "The voltage of a drive rises.", "V", "V/s");
  voltage.need("drive", &WrittenRamp::drive, text(), "a drive of the model").check([](WrittenRamp& value, const Node&) {
    value.what = model::RiseOfVoltage{value.drive};
  });
  return turned_into<model::Ramp, WrittenRamp>(
      by_key<WrittenRamp>({{"load", load.kind()}, {"displace", object.kind()}, {"drive", voltage.kind()}}),
      [](const WrittenRamp& value, const Node&) { return static_cast<const model::Ramp&>(value); });
}

Kind<model::Search> search() {
  struct WrittenSearch : model::Search {
    Quantity low, high;
  };
  const Kind<Quantity> end = any_quantity("a number with the unit of the key, such as \"5 N\"");
  Record<WrittenSearch> record("search", "The last value of a key at which the scenario's requirements hold.");
  record.need("key", &WrittenSearch::key, text(), "path of a number of scenario or model, as in --set")
      .need("from", &WrittenSearch::low, end, "one end of the bracket")
      .need("to", &WrittenSearch::high, end, "the other end, above it")
      .may("samples", &WrittenSearch::samples,
           whole_number(3, 101),
           Default{"9"}, "runs over the bracket, before it is narrowed down")
      .may("spacing", &WrittenSearch::logarithmic, word<bool>({{"linear", false}, {"logarithmic", true}}), Default{"linear"},
           "of the samples")
      .check([](WrittenSearch& value, const Node& node) {
        const Node& to = *node.find("to");
        if (!same_dimension(value.low.unit, value.high.unit)) throw not_allowed(to, "the dimension of from");
        value.unit = value.low.unit;
        value.from = from_si(value.low.si, value.unit);
        value.to = from_si(value.high.si, value.unit);
        if (value.to <= value.from) throw not_allowed(to, "to > from");
        if (value.logarithmic && value.from <= 0)
          throw not_allowed(*node.find("from"), "> 0 with logarithmic spacing");
        if (value.key.find('=') != std::string::npos || value.key.empty())
          throw not_allowed(*node.find("key"), "a path such as duration, without '='");
      });
  return turned_into<model::Search, WrittenSearch>(
      record.kind(), [](const WrittenSearch& value, const Node&) { return static_cast<const model::Search&>(value); });
}

Kind<model::Directions> directions() {
  using model::Directions;
  struct Written : Directions {
    std::optional<Vector3d> asked;
  };
  Record<Written> record("directions",
                         "The force on a free object up to which a grasp holds it, by a ramp in each of many directions. The force keeps its "
                         "direction in the world; weight and whatever else the scenario says act beside it.");
  record.need("object", &Written::object, text(), "a free object of the scenario")
      .may("at", &Written::at, vector3("m"), Absent{"the origin"}, "where it pulls, in the object's frame")
      .may("plane", &Written::asked, turned_into<std::optional<Vector3d>, Vector3d>(direction(), [](const Vector3d& n, const Node&) { return std::optional(n); }),
           Absent{"evenly over the whole sphere"}, "normal of the plane in which the directions lie, in the world")
      .may("first", &Written::first, direction(), Absent{"[1, 0, 0]"},
           "the first direction of a plane; the others follow by the right-hand rule about its normal")
      .may("count", &Written::count, whole_number(3, 1000), Default{"24"}, "how many directions")
      .may("start", &Written::start, quantity("s", not_negative()), Default{"0 s"}, "when the force begins to rise from 0")
      .need("rate", &Written::rate, quantity("N/s", positive()), "of the first run; later ones take half of it")
      .need("most", &Written::most, quantity("N", positive()), "where the rise ends; a direction that holds so much has no limit")
      .may("more_than", &Written::more_than, quantity("m", positive()), Default{"5 mm"},
           "way of the object since the force began by which it counts as lost; having no contact left is another")
      .may("halvings", &Written::halvings, whole_number(1, 12), Default{"5"}, "of the rate, at most")
      .check([](Written& value, const Node& node) {
        value.plane = value.asked;
        if (!value.plane) {
          if (const Node* first = node.find("first"); first != nullptr)
            throw not_allowed(*first, "a 'plane' beside it", "over the sphere the directions are spread evenly");
          return;
        }
        const Vector3d across = value.first - *value.plane * value.plane->dot(value.first);
        if (across.norm() < 1e-6) {
          const Node* at = node.find("first");
          throw not_allowed(at != nullptr ? *at : *node.find("plane"), "a first direction that does not stand on the plane",
                            "give 'first', a direction in the plane");
        }
        value.first = across.normalized();
      });
  return turned_into<Directions, Written>(record.kind(), [](const Written& value, const Node&) { return static_cast<const Directions&>(value); });
}

Kind<model::MapAxis> map_axis() {
  using model::MapAxis;
  Record<MapAxis> record("map_axis", "One way of going through variants: each value is given to all keys.");
  record.need("name", &MapAxis::name, text(), "shown in tables and plots")
      .need("set", &MapAxis::keys, list_of(text(), "a list of 1 or more key paths", 1), "as in --set, without '='")
      .need("to", &MapAxis::values, list_of(text(), "a list of 1 or more values", 1), "the values, each as one text")
      .may("labels", &MapAxis::labels, list_of(text(), "a list of texts", 1), Absent{"the values themselves"}, "what tables and plots call each value")
      .check([](MapAxis& axis, const Node& node) {
        if (axis.labels.empty()) axis.labels = axis.values;
        if (axis.labels.size() != axis.values.size()) throw not_allowed(*node.find("labels"), "as many as 'to' has values");
      });
  return record.kind();
}

}  // namespace

Kind<LimitFile> limit_file() {
  struct Written : LimitFile {
    std::string scenario;
    std::vector<std::string> change;
    std::variant<model::Ramp, model::Search, model::Directions> task;
    std::vector<model::MapAxis> map;
    double tolerance = 0;
  };
  using Task = std::variant<model::Ramp, model::Search, model::Directions>;
  Record<Written> record("limit_file", "At which value something happens, or a requirement ceases to hold.");
  add_heading(record, "limit", true);
  record.need("scenario", &Written::scenario, text(), "the scenario file, relative to the folder of this file")
      .may("change", &Written::change, list_of(text(), "a list of changes"), Absent{"none"},
           "values of the scenario that differ, each as 'key.path=value'; 'model.…' reaches the model")
      .one_of("task", "ramp", &Written::task,
              turned_into<Task, model::Ramp>(ramp(), [](const model::Ramp& value, const Node&) { return Task(value); }),
              "one run in which something rises until an event")
      .one_of("task", "search", &Written::task,
              turned_into<Task, model::Search>(search(), [](const model::Search& value, const Node&) { return Task(value); }),
              "many runs that bracket a value")
      .one_of("task", "directions", &Written::task,
              turned_into<Task, model::Directions>(directions(), [](const model::Directions& value, const Node&) { return Task(value); }),
              "ramps of a force on an object in many directions")
      .may("map", &Written::map, list_of(map_axis(), "a list of 1 or 2 axes", 1, 2), Absent{"a single limit"},
           "the same for each of several variants")
      .may("tolerance", &Written::tolerance, number({0, 0.1, true, false, "above 0, up to 0.1"}), Default{"0.005"},
           "relative: how little the answer may move when a ramp's rate is halved; half the width of a search's last bracket")
      .check([](Written& value, const Node& node) {
        const Node* task = node.find("ramp");
        if (task == nullptr) task = node.find("search");
        if (task == nullptr) task = node.find("directions");
        if (std::holds_alternative<model::Directions>(value.task) && value.map.size() > 1)
          throw not_allowed(*node.find("map")->children[1], "one axis beside 'directions'", "the directions are the other");
        value.study = {value.name, value.about, value.scenario, value.change, value.task, value.map, value.tolerance, task->place()};
      });
  return turned_into<LimitFile, Written>(record.kind(),
                                         [](const Written& value, const Node&) { return static_cast<const LimitFile&>(value); });
}

}  // namespace sinewright::reading
