#include "simulation/system.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/mass_properties.h"
#include "quantity/invalid_input.h"
#include "simulation/state.h"

namespace sinewright::simulation {

namespace {

using dynamics::JointKind;
using dynamics::Link;

// Force at which the tangential stiffness of a contact is taken: a light fingertip press.
constexpr double reference_contact_force = 5.0;  // [N]

model::MassProperties total_mass(const std::optional<model::MassProperties>& given,
                                 const std::vector<model::Solid>& solids) {
  std::vector<model::MassProperties> parts;
  if (given) parts.push_back(*given);
  for (const model::Solid& solid : solids) parts.push_back(geometry::mass_of(solid));
  return parts.empty() ? model::MassProperties{} : geometry::combine(parts);
}

Link link_of(const model::Body& body, const std::vector<int>& link_of_body) {
  Link link;
  if (body.hinge) {
    link.kind = JointKind::hinge;
    link.parent = link_of_body[static_cast<std::size_t>(body.hinge->parent)];
    link.at = body.hinge->at;
    link.axis = body.hinge->pin_axis.normalized();
    link.seat = body.hinge->seat;
    link.mass = total_mass(body.mass, body.solids);
  } else if (body.slide) {
    link.kind = JointKind::slide;
    link.parent = link_of_body[static_cast<std::size_t>(body.slide->parent)];
    link.at = body.slide->at;
    link.axis = body.slide->axis.normalized();
    link.seat = body.slide->seat;
    link.mass = total_mass(body.mass, body.solids);
  } else {
    link.kind = JointKind::fixed;
    link.at = body.fixed->at;
    link.seat = body.fixed->rotation;
  }
  return link;
}

Link link_of(const model::Object& object) {
  Link link;
  link.at = object.at;
  link.seat = object.rotation;
  if (std::holds_alternative<model::HeldFixed>(object.hold)) {
    link.kind = JointKind::fixed;
  } else if (std::holds_alternative<model::HeldOnPath>(object.hold)) {
    link.kind = JointKind::prescribed;
  } else {
    link.kind = JointKind::free;
    link.mass = total_mass(object.mass, object.solids);
  }
  return link;
}

const model::SurfacePair& pair_of(const model::Model& m, int a, int b) {
  for (const model::SurfacePair& pair : m.pairs)
    if ((pair.a == a && pair.b == b) || (pair.a == b && pair.b == a)) return pair;
  throw InvalidInput(fmt::format(
      "no friction is given between the surfaces '{}' and '{}'\n  needed: an entry in friction_pairs for the two",
      m.surfaces[static_cast<std::size_t>(a)].name, m.surfaces[static_cast<std::size_t>(b)].name));
}

}  // namespace

double value_at(const model::Course& course, double time) {
  if (course.time.empty()) return 0;
  const auto after = std::upper_bound(course.time.begin(), course.time.end(), time);
  if (after == course.time.begin()) return course.value.front();
  if (after == course.time.end()) return course.value.back();
  const auto i = static_cast<std::size_t>(after - course.time.begin());
  const double share = (time - course.time[i - 1]) / (course.time[i] - course.time[i - 1]);
  return course.value[i - 1] + share * (course.value[i] - course.value[i - 1]);
}

int hinge_of_body(const System& system, int body) {
  for (std::size_t i = 0; i < system.hinges.size(); ++i)
    if (system.hinges[i].body == body) return static_cast<int>(i);
  return -1;
}

bool rides_on_slide(const model::Model& model, int body) {
  for (int b = body; b >= 0; b = model.bodies[static_cast<std::size_t>(b)].parent())
    if (model.bodies[static_cast<std::size_t>(b)].slide) return true;
  return false;
}

bool returns(const System& system, std::size_t cord) {
  const CordSystem& c = system.cords[cord];
  if (c.drive >= 0) return false;
  for (int s = 0; s < c.path.span_count(); ++s) {
    const auto [from, to] = c.path.span_bodies(s);
    if (rides_on_slide(system.model(), from) || rides_on_slide(system.model(), to)) return false;
  }
  return true;
}

System::System(model::Scenario given) : scenario(std::move(given)) {
  const model::Model& m = scenario.model;

  for (std::size_t i = 0; i < m.bodies.size(); ++i) {
    const model::Body& body = m.bodies[i];
    const int link = tree.add(link_of(body, link_of_body));
    link_of_body.push_back(link);
    const int v = tree.links[static_cast<std::size_t>(link)].v;
    if (body.slide)
      slides.push_back({static_cast<int>(i), link, v, body.slide->slideway ? n_rows++ : -1,
                        friction::SlideFriction(body.slide->slideway)});
    if (!body.hinge) continue;
    const bool rubs = body.hinge->pin || body.hinge->washers;
    hinges.push_back({static_cast<int>(i), link, v, rubs ? n_rows++ : -1,
                      friction::HingeFriction(body.hinge->pin, body.hinge->washers)});
  }
  for (const model::Object& object : scenario.objects) link_of_object.push_back(tree.add(link_of(object)));

  n_q = tree.n_q;
  n_v = tree.n_v;
  for (const model::Drive& drive : m.drives) {
    Shaft shaft;
    shaft.v_output = shaft.v_rotor = n_v++;
    shaft.q_output = shaft.q_rotor = n_q++;
    if (drive.gearhead.backlash > 0) {
      shaft.v_rotor = n_v++;
      shaft.q_rotor = n_q++;
    }
    shaft.row = n_rows++;
    shafts.push_back(shaft);
  }

  start_q = VectorXd::Zero(n_q);
  for (const auto* places : {&scenario.start_angles, &scenario.start_places})
    for (const auto& [body, at] : *places)
      start_q[tree.links[static_cast<std::size_t>(link_of_body[static_cast<std::size_t>(body)])].q] = at;
  for (std::size_t i = 0; i < scenario.objects.size(); ++i) {
    const Link& link = tree.links[static_cast<std::size_t>(link_of_object[i])];
    if (link.kind != JointKind::free) continue;
    start_q.segment<3>(link.q) = scenario.objects[i].at;
    start_q.segment<4>(link.q + 3) = Eigen::Quaterniond(scenario.objects[i].rotation).coeffs();
  }

  // Guides are passed in the sense that the straight finger shows.
  dynamics::Kinematics straight(tree);
  VectorXd q0 = start_q;
  for (const HingeJoint& hinge : hinges) q0[tree.links[static_cast<std::size_t>(hinge.link)].q] = 0;
  for (const SlideJoint& slide : slides) q0[tree.links[static_cast<std::size_t>(slide.link)].q] = 0;
  dynamics::update(tree, Vector3d::Zero(), q0, VectorXd::Zero(n_v), straight);
  const auto pose_of = [&](int body) {
    const auto& pose = straight.pose[static_cast<std::size_t>(link_of_body[static_cast<std::size_t>(body)])];
    return geometry::BodyPose{&pose.R, &pose.p};
  };
  for (std::size_t i = 0; i < m.cords.size(); ++i) {
    const model::Cord& cord = m.cords[i];
    const model::Line& line = m.lines[static_cast<std::size_t>(cord.line)];
    const auto* pulley = std::get_if<model::PulleyEnd>(&cord.path.front());
    std::optional<drive::CordPulley> winder;
    if (pulley) winder.emplace(m.drives[static_cast<std::size_t>(pulley->drive)].pulley, line.diameter);
    cords.push_back({static_cast<int>(i), pulley ? pulley->drive : -1, geometry::CordPath(cord, m.drives, pose_of),
                     friction::TensionFunction(line.law), line.damping_time, winder});
  }

  int entry = static_cast<int>(account_count);
  for (const CordSystem& cord : cords) {
    bend_entry.push_back(entry);
    entry += cord.path.node_count();
  }
  hinge_entry = entry;
  slide_entry = entry + static_cast<int>(hinges.size());
  charge_entry = slide_entry + static_cast<int>(slides.size());
  ledger_size = charge_entry + static_cast<int>(m.supplies.size());

  for (std::size_t o = 0; o < scenario.objects.size(); ++o) {
    const model::Object& object = scenario.objects[o];
    for (std::size_t b = 0; b < m.bodies.size(); ++b) {
      const model::Body& body = m.bodies[b];
      // Two things that never move tell nothing by touching.
      if (body.fixed && std::holds_alternative<model::HeldFixed>(object.hold)) continue;
      for (const model::ContactShape& shape : body.shapes) {
        std::string name = body.shapes.size() > 1 ? body.name + "." + shape.name : body.name;
        if (scenario.objects.size() > 1) name += "@" + object.name;
        const double radius = contact::effective_radius(shape.shape, object.shape.shape);
        const auto& pair = pair_of(m, shape.surface, object.shape.surface);
        contacts.push_back({std::move(name), static_cast<int>(b), -1, static_cast<int>(o), link_of_body[b],
                            link_of_object[o], contact::ShapePair(shape.shape, object.shape.shape),
                            contact::combine(m.surfaces[static_cast<std::size_t>(shape.surface)],
                                             m.surfaces[static_cast<std::size_t>(object.shape.surface)], pair.friction,
                                             radius, reference_contact_force),
                            contact::bounding_sphere(shape.shape), contact::bounding_sphere(object.shape.shape)});
      }
    }
  }
  add_object_contacts();
}

void System::add_object_contacts() {
  const model::Model& m = scenario.model;
  const auto& objects = scenario.objects;
  for (std::size_t i = 0; i < objects.size(); ++i)
    for (std::size_t j = i + 1; j < objects.size(); ++j) {
      if (!model::moves_freely(objects[i].hold) && !model::moves_freely(objects[j].hold)) continue;
      const bool second_rides = objects[i].feet.empty() && (!objects[j].feet.empty() || !model::moves_freely(objects[i].hold));
      const std::size_t r = second_rides ? j : i, o = second_rides ? i : j;
      const model::Object &rider = objects[r], &object = objects[o];
      std::vector<std::pair<std::string, model::Shape>> shapes;
      for (std::size_t f = 0; f < rider.feet.size(); ++f)
        shapes.emplace_back(fmt::format("{}.foot{}@{}", rider.name, f + 1, object.name), rider.feet[f]);
      if (shapes.empty()) shapes.emplace_back(fmt::format("{}@{}", rider.name, object.name), rider.shape.shape);
      const auto surface = [&](const model::Object& of) -> const model::Surface& {
        return m.surfaces[static_cast<std::size_t>(of.shape.surface)];
      };
      const auto& pair = pair_of(m, rider.shape.surface, object.shape.surface);
      for (auto& [name, shape] : shapes)
        contacts.push_back({name, -1, static_cast<int>(r), static_cast<int>(o), link_of_object[r], link_of_object[o],
                            contact::ShapePair(shape, object.shape.shape),
                            contact::combine(surface(rider), surface(object), pair.friction,
                                             contact::effective_radius(shape, object.shape.shape), reference_contact_force),
                            contact::bounding_sphere(shape), contact::bounding_sphere(object.shape.shape)});
    }
}

}  // namespace sinewright::simulation
