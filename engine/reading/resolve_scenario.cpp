#include <algorithm>
#include <limits>
#include <type_traits>

#include <fmt/format.h>

#include "quantity/quantity.h"
#include "reading/complaint.h"
#include "reading/describe.h"
#include "reading/resolve.h"

namespace sinewright::reading {
namespace {

// One joint of the model as `start:` sees it.
struct StartJoint {
  int body = -1;
  std::string name;
  bool slides = false;
  const std::optional<model::EndStops>* stops = nullptr;
  bool given = false;

  [[nodiscard]] std::string range() const {
    const char* unit = slides ? "mm" : "deg";
    return fmt::format("{} within the end stops, {:.6g} {} to {:.6g} {}", slides ? "a position" : "an angle",
                       from_si((*stops)->lower, unit), unit, from_si((*stops)->upper, unit), unit);
  }
};

void resolve_start(const ScenarioFile& file, model::Scenario& scenario) {
  std::vector<StartJoint> joints;
  for (std::size_t i = 0; i < scenario.model.bodies.size(); ++i) {
    const model::Body& body = scenario.model.bodies[i];
    if (body.hinge) joints.push_back({static_cast<int>(i), body.hinge->name, false, &body.hinge->stops});
    if (body.slide) joints.push_back({static_cast<int>(i), body.slide->name, true, &body.slide->stops});
  }
  for (const Entry<Quantity>& entry : file.start) {
    const auto found = std::find_if(joints.begin(), joints.end(), [&](const StartJoint& joint) { return joint.name == entry.name; });
    if (found == joints.end()) throw unknown_name_key(*entry.node, "joint", names_of(joints));
    found->given = true;
    const double value = quantity(found->slides ? "m" : "rad").read(*entry.node);
    (found->slides ? scenario.start_places : scenario.start_angles).emplace_back(found->body, value);
    const auto& stops = *found->stops;
    if (stops && (value < stops->lower || value > stops->upper)) throw not_allowed(*entry.node, found->range());
  }
  for (const StartJoint& joint : joints) {
    const auto& stops = *joint.stops;
    if (!joint.given && stops && (stops->lower > 0 || stops->upper < 0))
      throw complaint({file.place.file, 0, 0}, fmt::format("start.{} is missing", joint.name), joint.range(),
                      fmt::format("without it the joint starts at 0 {}", joint.slides ? "mm" : "deg"));
  }
}

void resolve_objects(const ScenarioFile& file, const Forms& forms, model::Scenario& scenario) {
  const std::vector<std::string> surfaces = names_of(scenario.model.surfaces),
                                 bodies = names_of(scenario.model.bodies);
  for (const Entry<WrittenObject>& entry : file.objects) {
    const WrittenObject& written = entry.value;
    if (std::find(bodies.begin(), bodies.end(), entry.name) != bodies.end())
      throw complaint(entry.node->key_place(), fmt::format("{}: the name is not allowed", entry.node->path()),
                      "a name that no body of the model has", "");
    model::Object object;
    object.name = entry.name;
    object.at = written.at;
    object.rotation = written.rotation;
    object.shape = {entry.name, forms(written.shape), find_name(written.surface, "surface", surfaces)};
    object.mass = written.mass;
    object.solids = resolve_solids(written.solids, scenario.model.materials, forms);
    object.feet = written.feet;
    object.hold = written.hold;
    object.split_normal = written.split_normal;
    scenario.objects.push_back(std::move(object));
  }
}

bool friction_known(const model::Model& model, int a, int b) {
  return std::any_of(model.pairs.begin(), model.pairs.end(), [&](const model::SurfacePair& pair) {
    return (pair.a == a && pair.b == b) || (pair.a == b && pair.b == a);
  });
}

// Whatever can touch needs a friction: each surface of a body with that of each object.
void check_pairs(const ScenarioFile& file, const model::Scenario& scenario) {
  const model::Model& model = scenario.model;
  for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
    const int own = scenario.objects[i].shape.surface;
    const Name& name = file.objects[i].value.surface;
    for (const model::Body& body : model.bodies)
      for (const model::ContactShape& shape : body.shapes)
        if (!friction_known(model, shape.surface, own))
          throw complaint(
              name.node->place(),
              fmt::format("{} = {} is not allowed: its friction against {} is not given", name.node->path(),
                          name.text, model.surfaces[static_cast<std::size_t>(shape.surface)].name),
              fmt::format("an entry in friction_pairs between {} and {}",
                          model.surfaces[static_cast<std::size_t>(shape.surface)].name, name.text),
              fmt::format("the shape {} of {} is covered with {}", shape.name, body.name,
                          model.surfaces[static_cast<std::size_t>(shape.surface)].name));
  }
}

// And each surface of an object with that of another that it can meet.
void check_object_pairs(const ScenarioFile& file, const model::Scenario& scenario) {
  const model::Model& model = scenario.model;
  for (std::size_t i = 0; i < scenario.objects.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      const model::Object &one = scenario.objects[i], &other = scenario.objects[j];
      if (!model::moves_freely(one.hold) && !model::moves_freely(other.hold)) continue;
      if (friction_known(model, one.shape.surface, other.shape.surface)) continue;
      const Name& name = file.objects[i].value.surface;
      const std::string& against = model.surfaces[static_cast<std::size_t>(other.shape.surface)].name;
      throw complaint(name.node->place(),
                      fmt::format("{} = {} is not allowed: its friction against {} is not given", name.node->path(), name.text, against),
                      fmt::format("an entry in friction_pairs between {} and {}", against, name.text),
                      fmt::format("the object {} is covered with {}, and the two may touch", other.name, against));
    }
}

// What firmware knows of a drive, to make a force: the model's data where nothing else is said.
model::ForceByCurrent known_to(const WrittenForce& written, const model::Model& model, int index) {
  const model::Drive& drive = model.drives[static_cast<std::size_t>(index)];
  double cord = 0;  // diameter
  for (const model::Cord& c : model.cords)
    if (const auto* end = std::get_if<model::PulleyEnd>(&c.path.front()); end && end->drive == index) cord = model.lines[static_cast<std::size_t>(c.line)].diameter;
  return {written.radius.value_or(drive.pulley.radius + cord / 2),
          drive.gearhead.ratio,
          written.torque_constant.value_or(drive.motor.torque_constant),
          written.forward_efficiency.value_or(drive.gearhead.forward_efficiency),
          written.backward_efficiency.value_or(drive.gearhead.backward_efficiency),
          written.drag.value_or(drive.gearhead.drag),
          written.brush_drag.value_or(drive.motor.kinetic_drag),
          written.return_at_zero,
          written.return_per_angle,
          written.highest_current.value_or(drive.current_limit > 0 ? drive.current_limit : model::no_limit),
          written.share};
}

void resolve_controllers(const ScenarioFile& file, const Beside& beside_file, model::Scenario& scenario) {
  const std::vector<std::string> drives = names_of(scenario.model.drives);
  for (const Entry<WrittenController>& entry : file.controllers) {
    const auto found = std::find(drives.begin(), drives.end(), entry.name);
    if (found == drives.end()) throw unknown_name_key(*entry.node, "drive", drives);
    model::Controller controller;
    controller.drive = static_cast<int>(found - drives.begin());
    controller.period = entry.value.period;
    const auto supply = static_cast<std::size_t>(scenario.model.drives[static_cast<std::size_t>(controller.drive)].supply);
    controller.voltage_limit = entry.value.voltage_limit.value_or(scenario.model.supplies[supply].voltage);
    controller.speed_filter = entry.value.speed_filter;
    controller.brown_out = entry.value.brown_out;
    controller.boot_time = entry.value.boot_time;
    if (const auto* loops = std::get_if<WrittenLoops>(&entry.value.program)) {
      model::Loops made = loops->loops;
      if (loops->force) made.force = known_to(*loops->force, scenario.model, controller.drive);
      controller.program = std::move(made);
    }
    if (const auto* hold = std::get_if<model::HoldRoutine>(&entry.value.program)) controller.program = *hold;
    if (const auto* library = std::get_if<WrittenLibrary>(&entry.value.program)) {
      model::OwnFirmware own{beside_file(library->file), library->file.node->place(), {}};
      for (const Entry<Quantity>& given : entry.value.parameters)
        own.parameters.push_back({given.name, given.value.si, given.value.unit, given.node->place()});
      controller.program = std::move(own);
    }
    controller.stall = entry.value.stall;
    controller.heat = entry.value.heat;
    scenario.controllers.push_back(std::move(controller));
  }
}

// A controller that is not there, or lacks the loop, can be asked for nothing.
void check_asked(const WrittenCommand& written, const model::Command& command, int drive, const model::Scenario& scenario) {
  const bool position = std::holds_alternative<model::SetPosition>(command) || std::holds_alternative<model::SetRecorded>(command);
  const bool hold = std::holds_alternative<model::AskHold>(command);
  const bool speed = std::holds_alternative<model::SetSpeed>(command), current = std::holds_alternative<model::SetCurrent>(command);
  const bool force = std::holds_alternative<model::SetForce>(command);
  if (!position && !speed && !current && !force && !hold) return;
  const std::string loop = position ? "position" : speed ? "speed" : current ? "current" : "force";
  const std::string wanted = hold ? "a hold routine" : force ? "'force' among its loops" : fmt::format("a {} loop", loop);
  const std::string& name = scenario.model.drives[static_cast<std::size_t>(drive)].name;
  const auto found = std::find_if(scenario.controllers.begin(), scenario.controllers.end(), [&](const auto& c) { return c.drive == drive; });
  if (found == scenario.controllers.end())
    throw not_allowed(*written.drive.node, fmt::format("a drive with an entry in 'controllers', with {}", wanted),
                      "without a controller a drive takes voltage, current_limit, angle and off");
  if (std::holds_alternative<model::OwnFirmware>(found->program)) return;  // it may answer to anything
  const auto* loops = std::get_if<model::Loops>(&found->program);
  const bool there = hold ? !loops
                          : loops && ((position && loops->position) || (speed && loops->speed) || (current && loops->current) || (force && loops->force));
  if (there) return;
  throw not_allowed(*written.drive.node, fmt::format("a controller of {} with {}", name, wanted),
                    hold || !loops ? "a controller has either loops or a hold routine" : fmt::format("add controllers.{}.loops.{}", name, loop));
}

// What a fault strikes must be there, and be of a kind that can fail so.
model::Fault resolve_fault(const WrittenFault& written, const model::Model& model) {
  const auto drive = [&] { return find_name(written.on, "drive", names_of(model.drives)); };
  const auto sensor = [&](int d) -> const model::Sensor& {
    const model::Drive& of = model.drives[static_cast<std::size_t>(d)];
    if (!of.sensor) throw not_allowed(*written.on.node, "a drive with a sensor", fmt::format("{} has none", of.name));
    return *of.sensor;
  };
  const auto cord = [&] { return find_name(written.on, "cord", names_of(model.cords)); };
  model::Fault fault = written.fault;
  if (auto* stuck = std::get_if<model::SensorStuck>(&fault)) {
    stuck->drive = drive();
    static_cast<void>(sensor(stuck->drive));
  } else if (auto* wire = std::get_if<model::SensorWireOff>(&fault)) {
    wire->drive = drive();
    if (std::holds_alternative<model::RelativeEncoder>(sensor(wire->drive).kind))
      throw not_allowed(*written.on.node, "a drive whose sensor says its angle at every sample",
                        "a relative encoder without its wire counts no edges: that is sensor_stuck");
  } else if (auto* dip = std::get_if<model::SupplyDip>(&fault)) {
    dip->supply = find_name(written.on, "supply", names_of(model.supplies));
  } else if (auto* dead = std::get_if<model::MotorDead>(&fault)) {
    dead->drive = drive();
  } else if (auto* broken = std::get_if<model::CordBroken>(&fault)) {
    broken->cord = cord();
    if (written.body) {
      broken->body = find_name(*written.body, "body", names_of(model.bodies));
      const auto& path = model.cords[static_cast<std::size_t>(broken->cord)].path;
      const bool there = std::any_of(path.begin(), path.end(), [&](const model::PathPoint& point) {
        return std::visit([&](const auto& p) {
          if constexpr (std::is_same_v<std::decay_t<decltype(p)>, model::PulleyEnd>)
            return model.drives[static_cast<std::size_t>(p.drive)].body == broken->body;
          else
            return p.body == broken->body;
        }, point);
      });
      if (!there) throw not_allowed(*written.body->node, "a body through which the cord runs");
    }
  } else {
    auto& off = std::get<model::CordOffPulley>(fault);
    off.cord = cord();
    const auto* end = std::get_if<model::PulleyEnd>(&model.cords[static_cast<std::size_t>(off.cord)].path.front());
    if (!end) throw not_allowed(*written.on.node, "a cord that a drive winds");
    const model::Pulley& pulley = model.drives[static_cast<std::size_t>(end->drive)].pulley;
    if (!written.radius && !pulley.bore)
      throw missing(*written.on.node->parent, "radius", "the radius of the shaft", "the pulley's bore is not described");
    off.radius = written.radius ? *written.radius : pulley.bore->diameter / 2;
    if (off.radius >= pulley.radius)
      throw not_allowed(written.radius ? *written.on.node->parent->find("radius") : *written.on.node,
                        fmt::format("a shaft thinner than the pulley, {:g} mm", 1e3 * pulley.radius));
    off.slack = written.slack;
  }
  return fault;
}

void resolve_timeline(const ScenarioFile& file, const Motions& motions, model::Scenario& scenario) {
  const std::vector<std::string> drives = names_of(scenario.model.drives);
  for (const WrittenCommand& written : file.timeline) {
    if (written.time > file.duration) {
      const Node& item = written.fault ? *written.fault->on.node->parent->parent : *written.drive.node->parent;
      const Node& at = *item.find("at");
      throw not_allowed(at, fmt::format("a time from 0 s to the duration, {:g} s", file.duration));
    }
    if (written.fault) {
      scenario.faults.push_back({written.time, written.lasts.value_or(std::numeric_limits<double>::infinity()), resolve_fault(*written.fault, scenario.model)});
      continue;
    }
    const int drive = find_name(written.drive, "drive", drives);
    const model::Command command = written.recorded ? model::Command(motions(*written.recorded)) : written.command;
    check_asked(written, command, drive, scenario);
    scenario.timeline.push_back({written.time, drive, command});
  }
  std::stable_sort(
      scenario.timeline.begin(), scenario.timeline.end(),
      [](const model::TimelineEntry& a, const model::TimelineEntry& b) { return a.time < b.time; });
  std::stable_sort(scenario.faults.begin(), scenario.faults.end(), [](const auto& a, const auto& b) { return a.time < b.time; });
}

void resolve_loads(const ScenarioFile& file, model::Scenario& scenario) {
  const std::vector<std::string> bodies = names_of(scenario.model.bodies),
                                 objects = names_of(scenario.objects);
  std::vector<std::string> both = bodies;
  both.insert(both.end(), objects.begin(), objects.end());
  for (const Entry<WrittenLoad>& entry : file.loads) {
    const WrittenLoad& written = entry.value;
    model::Load load;
    load.name = entry.name;
    load.body = written.on.text;
    const int index = find_name(written.on, "body or object", both);
    const int n_bodies = static_cast<int>(bodies.size());
    (index < n_bodies ? load.body_index : load.object_index) = index < n_bodies ? index : index - n_bodies;
    load.at = written.at;
    load.follows_body = written.follows_body;
    if (written.weight) {
      const double g = scenario.gravity.norm();
      if (g == 0)
        throw not_allowed(*entry.node->find("weight"), "a gravity that is not zero",
                          "give 'force' and 'direction' instead");
      load.direction = scenario.gravity / g;
      load.force = {{0}, {*written.weight * g}};
    } else {
      load.direction = *written.direction;
      load.force = written.force;
    }
    scenario.loads.push_back(std::move(load));
  }
}

void resolve_twists(const ScenarioFile& file, model::Scenario& scenario) {
  std::vector<std::string> both = names_of(scenario.model.bodies);
  const int n_bodies = static_cast<int>(both.size());
  for (const std::string& object : names_of(scenario.objects)) both.push_back(object);
  for (const Entry<WrittenTwist>& entry : file.twists) {
    model::Twist twist;
    twist.name = entry.name;
    const int index = find_name(entry.value.on, "body or object", both);
    (index < n_bodies ? twist.body_index : twist.object_index) = index < n_bodies ? index : index - n_bodies;
    twist.axis = entry.value.axis;
    twist.follows_body = entry.value.follows_body;
    twist.torque = entry.value.torque;
    scenario.twists.push_back(std::move(twist));
  }
}

}  // namespace

model::Scenario resolve_scenario(const ScenarioFile& file, model::Model model, const Forms& forms, const Motions& motions, const Beside& beside_file) {
  model::Scenario scenario;
  scenario.name = file.name;
  scenario.about = file.about;
  scenario.model = std::move(model);
  scenario.gravity = file.gravity;
  scenario.ambient = file.ambient;
  scenario.duration = file.duration;
  scenario.solver = file.solver;
  scenario.record_interval = file.record_interval;
  scenario.safe_grip = file.safe_grip;
  resolve_start(file, scenario);
  resolve_objects(file, forms, scenario);
  check_pairs(file, scenario);
  check_object_pairs(file, scenario);
  resolve_controllers(file, beside_file, scenario);
  resolve_timeline(file, motions, scenario);
  resolve_loads(file, scenario);
  resolve_twists(file, scenario);
  scenario.requirements = requirements_of(file.require);
  return scenario;
}

}  // namespace sinewright::reading
