#include "reading/describe.h"

namespace sinewright::reading {
namespace {

bool is_text(const Node& node) {
  return node.kind == Node::Kind::text;
}
bool is_map(const Node& node) {
  return node.kind == Node::Kind::map;
}
bool is_list(const Node& node) {
  return node.kind == Node::Kind::list;
}

struct PathPlace {
  double at = 0;
  Vector3d by = Vector3d::Zero();
};

Kind<model::Hold> hold() {
  using model::HeldBySpring;
  using model::Hold;
  struct BySpring {
    HeldBySpring spring;
  };
  struct OnPath {
    std::vector<PathPlace> path;
  };
  using model::HeldByString;
  struct ByString {
    HeldByString string;
  };
  Record<HeldBySpring> spring("spring_hold",
                              "A free object tied to its start pose by springs and dampers, in world axes.");
  spring.need("stiffness", &HeldBySpring::stiffness, vector3("N/m", not_negative()), "along x, y and z")
      .may("damping_time", &HeldBySpring::damping_time, quantity("s", not_negative()), Default{"0 s"},
           "damping = stiffness × this")
      .may("turning_stiffness", &HeldBySpring::turning_stiffness, quantity("N.m/rad", not_negative()),
           Default{"0 N·m/rad"}, "about every axis");
  Record<HeldByString> string("string_hold", "A free object that hangs on an elastic string, which pulls and never pushes.");
  string.need("from", &HeldByString::from, vector3("m"), "upper end of the string, in the world")
      .may("at", &HeldByString::at, vector3("m"), Absent{"the origin"}, "where it is tied, in the object's frame")
      .may("length", &HeldByString::length, quantity("m", positive()), Absent{"as far as its ends are apart at the start"},
           "unstretched")
      .need("stiffness", &HeldByString::stiffness, quantity("N/m", positive()), "force per stretch")
      .may("damping_time", &HeldByString::damping_time, quantity("s", not_negative()), Default{"0 s"},
           "damping = stiffness × this");
  Record<PathPlace> place("path_place", "Where a guided object is at a time.");
  place.need("at", &PathPlace::at, quantity("s", not_negative()), "time")
      .need("by", &PathPlace::by, vector3("m"), "displacement from the start pose, world axes");
  Record<BySpring> by_spring("held_by_spring", "Held by springs.");
  by_spring.need("spring", &BySpring::spring, spring.kind(), "the springs");
  Record<ByString> by_string("held_by_string", "Hung on a string.");
  by_string.need("string", &ByString::string, string.kind(), "the string");
  Record<OnPath> on_path(
      "held_on_path",
      "The object follows a path without turning, whatever it takes; monotone cubic in between.");
  on_path
      .need("path", &OnPath::path, list_of(place.kind(), "a list of 2 or more places", 2),
            "times strictly rising")
      .check([](OnPath& value, const Node& node) {
        for (std::size_t i = 1; i < value.path.size(); ++i)
          if (value.path[i].at <= value.path[i - 1].at)
            throw not_allowed(*node.find("path")->children[i]->find("at"), "a time after the one before");
      });
  const Kind<Hold> words =
      word<Hold>({{"fixed", Hold(model::HeldFixed{})}, {"free", Hold(model::HeldFree{})}});
  const Kind<Hold> maps =
      by_key<Hold>({{"spring", turned_into<Hold, BySpring>(
                                   by_spring.kind(),
                                   [](const BySpring& value, const Node&) { return Hold(value.spring); })},
                    {"string", turned_into<Hold, ByString>(
                                   by_string.kind(),
                                   [](const ByString& value, const Node&) { return Hold(value.string); })},
                    {"path", turned_into<Hold, OnPath>(on_path.kind(), [](const OnPath& value, const Node&) {
                       model::HeldOnPath path;
                       for (const PathPlace& at : value.path) {
                         path.time.push_back(at.at);
                         path.displacement.push_back(at.by);
                       }
                       return Hold(path);
                     })}});
  return any_of<Hold>({{is_text, words}, {is_map, maps}},
                      "fixed, free, or a map with the key spring, string or path");
}

Kind<WrittenObject> object() {
  using model::Sphere;
  Record<Sphere> foot("foot", "A ball that touches other objects; it has no mass.");
  foot.need("center", &Sphere::center, vector3("m"), "in the object's frame")
      .need("radius", &Sphere::radius, quantity("m", positive()), "radius");
  Record<WrittenObject> record("object", "A thing to be grasped. Things touch each other, too: a fixed box is a table.");
  add_shapes(record, &WrittenObject::shape);
  record.need("surface", &WrittenObject::surface, name_of("surface"), "what covers it")
      .may("at", &WrittenObject::at, vector3("m"), Absent{"the origin"},
           "start position of the object frame in the world")
      .may("turned", &WrittenObject::rotation, turned(), Absent{"not turned"},
           "start orientation in the world")
      .need("hold", &WrittenObject::hold, hold(), "what holds it")
      .may("mass", &WrittenObject::mass, mass_properties(), Absent{"none"},
           "mass as numbers; an object that can move has this, or solids, or both")
      .may("solids", &WrittenObject::solids, list_of(solid(), "a list of solids", 1), Absent{"none"},
           "primitives and parts that give mass")
      .may("feet", &WrittenObject::feet, list_of(foot.kind(), "a list of feet", 1), Absent{"its shape stands on others"},
           "small balls on which it stands on other objects, in place of its shape: a flat face would touch at one point only. "
           "Fingers touch the shape")
      .may("split_normal", &WrittenObject::split_normal, direction(), Absent{"[0, 1, 0]"},
           "world direction normal to the plane of the split-cylinder reading")
      .check([](WrittenObject& value, const Node& node) {
        if (model::moves_freely(value.hold) && !value.mass && value.solids.empty())
          throw missing(node, "mass", "an object that can move has 'mass', or 'solids', or both");
        const auto* string = std::get_if<model::HeldByString>(&value.hold);
        if (string && !string->length && (value.at + value.rotation * string->at - string->from).norm() < 1e-6)
          throw not_allowed(*node.find("hold")->find("string")->find("from"), "a place apart from where the string is tied",
                            "a string has a length");
      });
  return record.kind();
}

Kind<WrittenCommand> command() {
  const auto start = [](const std::string& name, const std::string& about) {
    Record<WrittenCommand> record(name, about);
    record.need("at", &WrittenCommand::time, quantity("s", not_negative()), "when")
        .need("drive", &WrittenCommand::drive, name_of("drive"), "which drive");
    return record;
  };
  Record<WrittenCommand> voltage = start("command_voltage", "Drive with a voltage.");
  voltage.need("voltage", &WrittenCommand::value, quantity("V"), "positive winds the cord in")
      .may("over", &WrittenCommand::over, quantity("s", not_negative()), Default{"0 s"},
           "time in which the voltage gets there, linearly, from the one that stands; 0: at once")
      .check([](WrittenCommand& c, const Node&) { c.command = model::CommandVoltage{c.value, c.over}; });
  Record<WrittenCommand> limit = start("command_current_limit", "Change the driver's current limit.");
  limit.need("current_limit", &WrittenCommand::value, quantity_or_none("A", positive(), 0), "the new limit")
      .check([](WrittenCommand& c, const Node&) { c.command = model::CommandCurrentLimit{c.value}; });
  Record<WrittenCommand> angle =
      start("command_angle", "Hold an angle of the output shaft by a plain position loop.");
  angle
      .need("angle", &WrittenCommand::value, quantity("rad"),
            "of the output shaft; positive winds the cord in")
      .need("gain", &WrittenCommand::gain, quantity("V/rad", positive()), "voltage per angle error")
      .may("damping", &WrittenCommand::damping, quantity("V.s/rad", not_negative()), Default{"0 V·s/rad"},
           "voltage per turning rate")
      .check([](WrittenCommand& c, const Node&) {
        c.command = model::CommandAngle{c.value, c.gain, c.damping};
      });
  Record<WrittenCommand> off = start("command_off", "Switch the power off.");
  off.need("off", &WrittenCommand::leads,
           word<model::Leads>({{"open", model::Leads::open}, {"shorted", model::Leads::shorted}}),
           "the motor's leads: open, or shorted, which brakes")
      .check([](WrittenCommand& c, const Node&) { c.command = model::CommandOff{c.leads}; });
  std::vector<std::pair<std::string, Kind<WrittenCommand>>> kinds = {{"voltage", voltage.kind()},
                                                                    {"current_limit", limit.kind()},
                                                                    {"angle", angle.kind()},
                                                                    {"off", off.kind()}};
  for (auto& kind : controller_commands()) kinds.push_back(std::move(kind));
  kinds.emplace_back("fault", fault_entry());
  return by_key<WrittenCommand>(std::move(kinds));
}

Kind<model::Course> course(const std::string& unit) {
  using model::Course;
  using Row = std::pair<double, double>;
  const std::string words = "a constant, or a list of pairs [time, value] with times strictly rising";
  const Kind<Course> constant = turned_into<Course, double>(quantity(unit), [](double value, const Node&) {
    return Course{{0}, {value}};
  });
  const Kind<Course> rows = turned_into<Course, std::vector<Row>>(
      list_of(pair_of(quantity("s", not_negative()), quantity(unit), "a pair: [time, value]"), words, 1),
      [](const std::vector<Row>& values, const Node& node) {
        Course made;
        for (std::size_t i = 0; i < values.size(); ++i) {
          if (i > 0 && values[i].first <= values[i - 1].first)
            throw not_allowed(*node.children[i]->children[0], "a time after the one before");
          made.time.push_back(values[i].first);
          made.value.push_back(values[i].second);
        }
        return made;
      });
  return any_of<Course>({{is_list, rows}, {is_text, constant}}, words);
}

Kind<WrittenLoad> load() {
  Record<WrittenLoad> record(
      "load", "A force on a body or object; linear between the given times, constant outside.");
  record.need("on", &WrittenLoad::on, name_of("body or object"), "what it acts on")
      .may("at", &WrittenLoad::at, vector3("m"), Absent{"the origin"},
           "point of application, in the frame of what it acts on")
      .may("direction", &WrittenLoad::direction, direction(),
           Absent{"needed with force; gravity's with weight"}, "of the force")
      .may("follows_body", &WrittenLoad::follows_body, yes_no(), Default{"false"},
           "the direction is in the frame of what it acts on, else in the world")
      .one_of("force", "force", &WrittenLoad::force, course("N"), "the force")
      .one_of("force", "weight", &WrittenLoad::weight, quantity("kg", positive()), "a mass that hangs there")
      .check([](WrittenLoad& value, const Node& node) {
        if (!value.weight && !value.direction)
          throw missing(node, "direction", "a direction, because 'force' is given");
        if (value.weight && value.direction)
          throw not_allowed(*node.find("direction"), "no direction beside 'weight'",
                            "a weight pulls along gravity");
        if (value.weight && value.follows_body)
          throw not_allowed(*node.find("follows_body"), "false beside 'weight'",
                            "gravity does not turn with the body");
      });
  return record.kind();
}

Kind<WrittenTwist> twist() {
  Record<WrittenTwist> record("twist", "A torque on a body or object; linear between the given times, constant outside.");
  record.need("on", &WrittenTwist::on, name_of("body or object"), "what it acts on")
      .need("axis", &WrittenTwist::axis, direction(), "about which it turns, by the right-hand rule")
      .may("follows_body", &WrittenTwist::follows_body, yes_no(), Default{"false"},
           "the axis is in the frame of what it acts on, else in the world")
      .need("torque", &WrittenTwist::torque, course("N.m"), "the torque");
  return record.kind();
}

}  // namespace

Kind<ScenarioFile> scenario_file() {
  using model::SolverSettings;
  Record<SolverSettings> solver("solver", "How exactly the run is computed.");
  solver
      .may("tolerance", &SolverSettings::tolerance, number({0, 0.1, true, false, "above 0, up to 0.1"}),
           Default{"1e-3"}, "relative accuracy aimed at")
      .may("max_step", &SolverSettings::max_step, quantity("s", positive()), Default{"20 ms"}, "longest step")
      .may("min_step", &SolverSettings::min_step, quantity("s", positive()), Default{"1e-9 s"},
           "shortest step before the run stops with an error")
      .check([](SolverSettings& value, const Node& node) {
        if (value.min_step >= value.max_step) {
          const Node* at = node.find("min_step");
          throw not_allowed(at != nullptr ? *at : *node.find("max_step"), "min_step < max_step");
        }
      });
  struct Recording {
    double interval = 0;
  };
  Record<Recording> recording("record", "What is written to the record.");
  recording.may("interval", &Recording::interval, quantity("s", positive()), Default{"1 ms"},
                "time between two rows");
  const Kind<double> interval = turned_into<double, Recording>(
      recording.kind(), [](const Recording& value, const Node&) { return value.interval; });

  Record<ScenarioFile> record("scenario_file", "What happens to a model over time.");
  add_heading(record, "scenario", true);
  record.need("model", &ScenarioFile::model, text(), "the model file, relative to the folder of this file")
      .may(
          "change", &ScenarioFile::change, list_of(text(), "a list of changes"), Absent{"none"},
          "values of the model that differ in this scenario, each as 'key.path=value' in the manner of --set")
      .need("duration", &ScenarioFile::duration, quantity("s", positive()), "simulated time")
      .may("gravity", &ScenarioFile::gravity, vector3("m/s2"), Absent{"[0 m/s², -9.81 m/s², 0 m/s²]"},
           "world axes")
      .may("ambient", &ScenarioFile::ambient, quantity("K", positive()), Default{"23 degC"},
           "temperature of the surroundings")
      .may("start", &ScenarioFile::start, by_name_of(any_quantity("an angle, such as \"30 deg\"; of a slide a length"), "joint", false),
           Absent{"all angles and positions 0"}, "angles of hinges and positions of slides at the start, by joint")
      .may("objects", &ScenarioFile::objects, named(object(), "object"), Absent{"none"},
           "things to be grasped")
      .may("controllers", &ScenarioFile::controllers, by_name_of(controller(), "drive", true), Absent{"none"},
           "firmware, by the drive that it runs")
      .may("timeline", &ScenarioFile::timeline, list_of(command(), "a list of commands"), Absent{"no power"},
           "commands to the drives, and faults, in any order")
      .may("safe_grip", &ScenarioFile::safe_grip, quantity("N", positive()), Default{"1 N"},
           "after a fault the hand counts as safe once it grips with less than this and stands still, or once no motor carries current")
      .may("loads", &ScenarioFile::loads, named(load(), "load"), Absent{"none"}, "forces from outside")
      .may("twists", &ScenarioFile::twists, named(twist(), "twist"), Absent{"none"}, "torques from outside")
      .may("solver", &ScenarioFile::solver, solver.kind(), Absent{"the defaults"}, "accuracy and steps")
      .may("record", &ScenarioFile::record_interval, interval, Absent{"every 1 ms"},
           "how often a row is written")
      .may("require", &ScenarioFile::require, list_of(requirement(), "a list of requirements"),
           Absent{"none"}, "what the run must reach");
  return record.kind();
}

}  // namespace sinewright::reading
