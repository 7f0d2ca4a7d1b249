#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "reading/complaint.h"
#include "reading/resolve.h"

namespace sinewright::reading {
namespace {

// Two parts of one name in one map are refused when the file is parsed; here the files meet.
template <class T, class Keep>
void gather(const Named<T>& entries, const std::string& what, std::map<std::string, const Node*>& seen,
            Keep keep) {
  for (const Entry<T>& entry : entries) {
    const auto [first, fresh] = seen.emplace(entry.name, entry.node);
    if (!fresh) {
      // Fingers that are made from one file bring its parts along each time.
      const bool of_finger = !root_of(*entry.node).scope.empty() || !root_of(*first->second).scope.empty();
      if (of_finger && same_content(*entry.node, *first->second)) continue;
      const Place other = first->second->key_place();
      throw complaint(entry.node->key_place(),
                      fmt::format("{} is a {} that exists already", entry.node->path(), what),
                      "a name of its own", fmt::format("the other one is at {}:{}", other.file, other.line));
    }
    keep(entry);
  }
}

struct WrittenGathered {
  std::vector<const Entry<WrittenPair>*> pairs;
  std::vector<Built<model::Bushing>> bushings;
  std::vector<model::Motor> motors;
  std::vector<model::Gearhead> gearheads;
};

template <class T>
auto keep_in(std::vector<T>& list) {
  return [&list](const Entry<T>& entry) { list.push_back(entry.value), list.back().name = entry.name; };
}

WrittenGathered gather_parts(const ModelFile& file, const std::vector<PartsFile>& parts,
                             model::Model& model) {
  WrittenGathered gathered;
  std::vector<const WrittenParts*> all;
  for (const PartsFile& part : parts) all.push_back(&part);
  all.push_back(&file);
  std::map<std::string, const Node*> materials, surfaces, pairs, bushings, lines, motors, gearheads;
  for (const WrittenParts* one : all) {
    gather(one->materials, "material", materials, keep_in(model.materials));
    gather(one->surfaces, "surface", surfaces, keep_in(model.surfaces));
    gather(one->friction_pairs, "friction pair", pairs,
           [&](const Entry<WrittenPair>& entry) { gathered.pairs.push_back(&entry); });
    gather(one->bushings, "bushing", bushings, keep_in(gathered.bushings));
    gather(one->lines, "line", lines, keep_in(model.lines));
    gather(one->motors, "motor", motors, keep_in(gathered.motors));
    gather(one->gearheads, "gearhead", gearheads, keep_in(gathered.gearheads));
  }
  return gathered;
}

void resolve_pairs(const WrittenGathered& gathered, model::Model& model) {
  const std::vector<std::string> known = names_of(model.surfaces);
  for (const Entry<WrittenPair>* entry : gathered.pairs) {
    model::SurfacePair pair{find_name(entry->value.between[0], "surface", known),
                            find_name(entry->value.between[1], "surface", known), entry->value.friction,
                            entry->value.source};
    for (std::size_t i = 0; i < model.pairs.size(); ++i) {
      const model::SurfacePair& other = model.pairs[i];
      if ((other.a == pair.a && other.b == pair.b) || (other.a == pair.b && other.b == pair.a))
        throw complaint(
            entry->node->key_place(),
            fmt::format("{} gives the friction between {} and {} a second time", entry->node->path(),
                        known[static_cast<std::size_t>(pair.a)], known[static_cast<std::size_t>(pair.b)]),
            "one friction for each two surfaces",
            fmt::format("the first one is {}", gathered.pairs[i]->node->path()));
    }
    model.pairs.push_back(pair);
  }
}

// Name of the body that carries a body; null: it is fixed.
const Name* parent_of(const WrittenBody& body) {
  return body.hinge ? &body.hinge->parent_name : body.slide ? &body.slide->parent_name : nullptr;
}

// Entries in an order in which every parent stands before its children, otherwise as written.
std::vector<const Entry<WrittenBody>*> parents_first(const Named<WrittenBody>& bodies) {
  std::vector<std::string> known = names_of(bodies);
  std::vector<const Entry<WrittenBody>*> order;
  std::vector<bool> placed(bodies.size(), false);
  std::vector<int> parent(bodies.size(), -1);
  for (std::size_t i = 0; i < bodies.size(); ++i)
    if (const Name* carrier = parent_of(bodies[i].value)) parent[i] = find_name(*carrier, "body", known);
  while (order.size() < bodies.size()) {
    const std::size_t before = order.size();
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      if (placed[i] || (parent[i] >= 0 && !placed[static_cast<std::size_t>(parent[i])])) continue;
      placed[i] = true;
      order.push_back(&bodies[i]);
    }
    if (order.size() > before) continue;
    const auto stuck =
        static_cast<std::size_t>(std::find(placed.begin(), placed.end(), false) - placed.begin());
    const Name& name = *parent_of(bodies[stuck].value);
    throw not_allowed(*name.node, "a parent that hangs, in the end, on a fixed body",
                      "these parents go round in a circle");
  }
  return order;
}

model::Fit resolve_fit(const WrittenFit& written, const std::vector<std::string>& materials) {
  model::Fit fit = written;
  if (const auto& press = written.written_press) {
    fit.press = *press;
    fit.press->hub_material = find_name(press->hub_name, "material", materials);
    fit.press->pin_material = find_name(press->pin_name, "material", materials);
  }
  return fit;
}

// What a part is made of, its material looked up.
template <class Part>
model::Build build_of(const Built<Part>& part, const model::Model& model) {
  if (!part.material) return {-1, part.layers};
  return {find_name(*part.material, "material", names_of(model.materials)), part.layers};
}

// Puts bushings into a hinge: what rubs is theirs, how hard the faces are pressed stays the washers'.
void fit_bushings(const Name& name, const std::vector<model::Bushing>& known, model::Hinge& hinge) {
  if (name.text == "none") return;
  const model::Bushing& bushing = known[static_cast<std::size_t>(find_name(name, "bushing", names_of(known)))];
  if (!hinge.pin) throw not_allowed(*name.node, "a pin that runs in the bushings", "describe 'pin' as well");
  if (bushing.bore < hinge.pin->diameter)
    throw not_allowed(*name.node, fmt::format("a bore of at least {:g} mm", 1e3 * hinge.pin->diameter),
                      fmt::format("'{}' has {:g} mm, and the pin runs in it", name.text, 1e3 * bushing.bore));
  if (hinge.lug && std::min(hinge.lug->width, 2 * hinge.lug->edge) <= bushing.outer_diameter)
    throw not_allowed(*name.node, "a sleeve that leaves something of the lug: outer_diameter < width and 2 × edge",
                      fmt::format("'{}' is {:g} mm thick outside", name.text, 1e3 * bushing.outer_diameter));
  hinge.pin->friction = bushing.friction;
  model::Washers faces = hinge.washers.value_or(model::Washers{});
  faces.inner_diameter = bushing.bore;
  faces.outer_diameter = bushing.flange_diameter;
  faces.friction = bushing.flange_friction;
  faces.build = bushing.build;
  faces.price.reset();
  hinge.washers = faces;
  hinge.bushings = bushing;
}

void resolve_bodies(const ModelFile& file, const WrittenGathered& gathered, const Forms& forms, model::Model& model) {
  const std::vector<std::string> surfaces = names_of(model.surfaces), materials = names_of(model.materials);
  std::vector<model::Bushing> bushings;
  for (const Built<model::Bushing>& written : gathered.bushings) {
    bushings.push_back(written);
    bushings.back().build = build_of(written, model);
  }
  std::map<std::string, const Node*> joints;
  std::vector<std::string> placed;
  for (const Entry<WrittenBody>* entry : parents_first(file.bodies)) {
    const WrittenBody& written = entry->value;
    model::Body body;
    body.name = entry->name;
    if (written.hinge) {
      body.hinge = *written.hinge;
      if (body.hinge->pin) body.hinge->pin->build = build_of(*written.hinge->written_pin, model);
      if (body.hinge->lug) body.hinge->lug->build = build_of(*written.hinge->written_lug, model);
      if (body.hinge->washers) body.hinge->washers->build = build_of(*written.hinge->written_washers, model);
      if (const auto& name = written.hinge->bushing_name) fit_bushings(*name, bushings, *body.hinge);
      body.hinge->parent = find_name(written.hinge->parent_name, "body", placed);
      if (const auto& pin = written.hinge->written_pin; pin && pin->written_fit)
        body.hinge->pin->fit = resolve_fit(*pin->written_fit, materials);
    }
    if (written.slide) {
      body.slide = *written.slide;
      body.slide->parent = find_name(written.slide->parent_name, "body", placed);
    }
    if (const Name* joint = written.hinge ? &written.hinge->joint : written.slide ? &written.slide->joint : nullptr)
      if (!joints.emplace(joint->text, joint->node).second)
        throw not_allowed(*joint->node, "a joint name of its own", "another body's joint has this name");
    body.fixed = written.fixed;
    body.mass = written.mass;
    body.price = written.price;
    body.solids = resolve_solids(written.solids, model.materials, forms);
    for (const Entry<WrittenShape>& shape : written.shapes)
      body.shapes.push_back(
          {shape.name, forms(shape.value.shape), find_name(shape.value.surface, "surface", surfaces)});
    model.bodies.push_back(std::move(body));
    placed.push_back(entry->name);
  }
}

void resolve_drives(const ModelFile& file, const WrittenGathered& gathered, model::Model& model) {
  const std::vector<std::string> bodies = names_of(model.bodies);
  for (const Entry<model::Supply>& supply : file.supplies) {
    model.supplies.push_back(supply.value);
    model.supplies.back().name = supply.name;
  }
  const std::vector<std::string> supplies = names_of(model.supplies), motors = names_of(gathered.motors),
                                 gearheads = names_of(gathered.gearheads);
  for (const Entry<WrittenDrive>& entry : file.drives) {
    const WrittenDrive& written = entry.value;
    model::Drive drive;
    drive.name = entry.name;
    drive.body = find_name(written.body, "body", bodies);
    drive.supply = find_name(written.supply, "supply", supplies);
    drive.current_limit = written.current_limit;
    drive.motor = gathered.motors[static_cast<std::size_t>(find_name(written.motor, "motor", motors))];
    drive.gearhead =
        gathered.gearheads[static_cast<std::size_t>(find_name(written.gearhead, "gearhead", gearheads))];
    drive.pulley = written.pulley;
    drive.pulley.build = build_of(written.pulley, model);
    if (drive.pulley.knot_seat) drive.pulley.knot_seat->build = build_of(*written.pulley.written_seat, model);
    drive.touch = written.touch;
    drive.sensor = written.sensor;
    drive.current_sense = written.current_sense;
    model.drives.push_back(std::move(drive));
  }
}

// Positions of body frames in the world with every joint at zero.
struct RestPose {
  Matrix3d rotation = Matrix3d::Identity();
  Vector3d origin = Vector3d::Zero();
};

std::vector<RestPose> rest_poses(const model::Model& model) {
  std::vector<RestPose> poses;
  for (const model::Body& body : model.bodies) {
    if (body.fixed) {
      poses.push_back({body.fixed->rotation, body.fixed->at});
      continue;
    }
    const RestPose parent = poses[static_cast<std::size_t>(body.parent())];
    const Matrix3d& seat = body.hinge ? body.hinge->seat : body.slide->seat;
    const Vector3d& at = body.hinge ? body.hinge->at : body.slide->at;
    poses.push_back({parent.rotation * seat, parent.origin + parent.rotation * at});
  }
  return poses;
}

bool is_guide(const WrittenPoint& point) {
  return std::holds_alternative<model::Guide>(point.point);
}
bool is_anchor(const WrittenPoint& point) {
  return std::holds_alternative<model::Anchor>(point.point);
}
bool is_pulley(const WrittenPoint& point) {
  return std::holds_alternative<model::PulleyEnd>(point.point);
}

void check_order(const std::vector<WrittenPoint>& path) {
  for (std::size_t i = 0; i < path.size(); ++i) {
    const Node& node = *path[i].node;
    const bool first = i == 0, last = i + 1 == path.size();
    if (first && !is_anchor(path[i]) && !is_pulley(path[i]))
      throw not_allowed(node, "a pulley or an anchor at the start of the path");
    if (last && !is_anchor(path[i])) throw not_allowed(node, "an anchor at the end of the path");
    if (!first && is_pulley(path[i])) throw not_allowed(node, "a pulley only at the start of the path");
    if (!first && !last && is_anchor(path[i]))
      throw not_allowed(node, "an anchor only at an end of the path");
    if (!first && is_guide(path[i]) && is_guide(path[i - 1]))
      throw not_allowed(node, "a bend or an anchor between two guides", "put a bend between the two guides");
  }
}

void resolve_cords(const ModelFile& file, model::Model& model) {
  const std::vector<std::string> lines = names_of(model.lines), bodies = names_of(model.bodies),
                                 drives = names_of(model.drives);
  const std::vector<RestPose> poses = rest_poses(model);
  std::vector<std::string> wound(model.drives.size());  // the cord on each drive
  for (const Entry<WrittenCord>& entry : file.cords) {
    const WrittenCord& written = entry.value;
    check_order(written.path);
    model::Cord cord;
    cord.name = entry.name;
    cord.line = find_name(written.line, "line", lines);
    cord.channel = written.channel;
    cord.pretension = written.pretension;
    cord.slack = written.slack;
    cord.lump_bends = written.lump_bends;
    cord.knot = written.knot;
    cord.allowance = written.allowance;
    Vector3d before = Vector3d::Zero();
    for (std::size_t i = 0; i < written.path.size(); ++i) {
      model::PathPoint point = written.path[i].point;
      int body = -1;
      if (auto* end = std::get_if<model::PulleyEnd>(&point)) {
        end->drive = find_name(written.path[i].drive, "drive", drives);
        const auto drive = static_cast<std::size_t>(end->drive);
        body = model.drives[drive].body;
        if (!wound[drive].empty())
          throw not_allowed(*written.path[i].drive.node, "a drive with a free pulley",
                            fmt::format("the cord '{}' is wound on it already", wound[drive]));
        wound[drive] = entry.name;
      } else {
        body = find_name(written.path[i].in, "body", bodies);
        if (auto* bend = std::get_if<model::Bend>(&point)) bend->body = body;
        if (auto* guide = std::get_if<model::Guide>(&point)) guide->body = body;
        if (auto* anchor = std::get_if<model::Anchor>(&point)) {
          anchor->body = body;
          if (anchor->seat) anchor->seat->build = build_of(*written.path[i].seat, model);
        }
      }
      const RestPose& pose = poses[static_cast<std::size_t>(body)];
      const Vector3d here = pose.origin + pose.rotation * written.path[i].at;
      // A guide's point lies on its axis, not on the cord. Below a micrometre no cord has a direction.
      const bool both_points = i > 0 && !is_guide(written.path[i]) && !is_guide(written.path[i - 1]);
      if (both_points && (here - before).norm() < 1e-6)
        throw not_allowed(*written.path[i].node, "another place than the point before it",
                          "with all joints at zero the two points coincide");
      before = here;
      cord.path.push_back(point);
    }
    if (const auto& in_line = written.in_line) {
      // Without a body that is still there, the point counts in the frame of the one that carries the drive now.
      const int body = in_line->body ? find_name(*in_line->body, "body", bodies)
                                     : model.drives[static_cast<std::size_t>(std::get<model::PulleyEnd>(cord.path.front()).drive)].body;
      const RestPose& pose = poses[static_cast<std::size_t>(body)];
      cord.lead = model::Lead{static_cast<int>(in_line->lead_points), body,
                              in_line->body ? in_line->at : Vector3d(pose.rotation.transpose() * (in_line->at - pose.origin))};
    }
    model.cords.push_back(std::move(cord));
  }
}

}  // namespace

int find_name(const Name& name, const std::string& what, const std::vector<std::string>& known) {
  const auto found = std::find(known.begin(), known.end(), name.text);
  if (found == known.end()) throw unknown_name(*name.node, what, known);
  return static_cast<int>(found - known.begin());
}

std::vector<model::Solid> resolve_solids(const std::vector<WrittenSolid>& solids,
                                         const std::vector<model::Material>& materials, const Forms& forms) {
  const std::vector<std::string> known = names_of(materials);
  std::vector<model::Solid> resolved;
  for (const WrittenSolid& solid : solids) {
    const int material = solid.material ? find_name(*solid.material, "material", known) : -1;
    const double density = material < 0 ? solid.density : materials[static_cast<std::size_t>(material)].density;
    resolved.push_back({forms(solid.shape), density, material});
  }
  return resolved;
}

model::Model resolve_model(const ModelFile& file, const std::vector<PartsFile>& parts, const Forms& forms) {
  model::Model model;
  model.name = file.name;
  model.about = file.about;
  model.currency = file.currency;
  const WrittenGathered gathered = gather_parts(file, parts, model);
  resolve_pairs(gathered, model);
  resolve_bodies(file, gathered, forms, model);
  resolve_drives(file, gathered, model);
  resolve_cords(file, model);
  resolve_packing(file, forms, model);
  for (const Entry<model::BillItem>& item : file.bill) {
    model.bill.push_back(item.value);
    model.bill.back().name = item.name;
  }
  return model;
}

}  // namespace sinewright::reading
