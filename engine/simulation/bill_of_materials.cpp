#include "simulation/bill_of_materials.h"

#include <algorithm>
#include <numbers>

#include <fmt/format.h>

#include "geometry/mass_properties.h"
#include "model/overloaded.h"
#include "simulation/static_analysis.h"

namespace sinewright::simulation {

namespace {

constexpr double mm(double metres) { return 1e3 * metres; }

std::string of_material(const model::Model& m, const model::Build& build) {
  return build.material < 0 ? std::string() : ", " + m.materials[static_cast<std::size_t>(build.material)].name;
}

// Adds to the line of the same part, or begins one.
void put(BillOfMaterials& bill, const std::string& part, const std::string& used_for, int count, Measure measure, double amount,
         model::Price unit_price) {
  const auto same = [&](const BillLine& line) { return line.part == part && line.measure == measure && line.unit_price == unit_price; };
  auto line = std::find_if(bill.lines.begin(), bill.lines.end(), same);
  if (line == bill.lines.end()) line = bill.lines.insert(bill.lines.end(), {part, {}, 0, measure, 0, unit_price});
  if (!used_for.empty() && (line->used_for.empty() || line->used_for.back() != used_for)) line->used_for.push_back(used_for);
  line->count += count;
  line->amount += amount;
}

void put_pieces(BillOfMaterials& bill, const std::string& part, const std::string& used_for, int count, model::Price price) {
  put(bill, part, used_for, count, Measure::piece, count, price);
}

std::string sensor_part(const model::Sensor& sensor) {
  return std::visit(overloaded{
                        [](const model::Potentiometer& p) { return fmt::format("potentiometer of {:g} deg", 180 / std::numbers::pi * p.range); },
                        [](const model::RelativeEncoder& e) { return fmt::format("encoder of {} counts a turn", e.counts_per_turn); },
                        [](const model::AbsoluteEncoder& e) { return fmt::format("absolute encoder of {} bits", e.bits); }},
                    sensor.kind);
}

void add_drives(BillOfMaterials& bill, const model::Model& m) {
  for (const model::Drive& drive : m.drives) {
    put_pieces(bill, "motor " + drive.motor.name, drive.name, 1, drive.motor.price);
    put_pieces(bill, "gearhead " + drive.gearhead.name, drive.name, 1, drive.gearhead.price);
    put_pieces(bill, fmt::format("pulley of radius {:g} mm{}", mm(drive.pulley.radius), of_material(m, drive.pulley.build)), drive.name, 1,
               drive.pulley.price);
    if (drive.sensor) put_pieces(bill, sensor_part(*drive.sensor), drive.name, 1, drive.sensor->price);
  }
  for (const model::Supply& supply : m.supplies) put_pieces(bill, "supply " + supply.name, "", 1, supply.price);
}

// A pin flush with the outer lugs, where their widths are described.
std::string pin_part(const model::Model& m, const model::Pin& pin) {
  const bool whole = pin.eye_width > 0 && pin.cheek_width > 0 && pin.gap >= 0;
  const double length = pin.eye_width + 2 * pin.cheek_width + 2 * pin.gap;
  return fmt::format("pin {:g} mm{}{}", mm(pin.diameter), whole ? fmt::format(", {:g} mm long", mm(length)) : "", of_material(m, pin.build));
}

void add_hinges(BillOfMaterials& bill, const model::Model& m) {
  const auto each = [&](auto&& add) {
    for (const model::Body& body : m.bodies)
      if (body.hinge) add(*body.hinge);
  };
  each([&](const model::Hinge& hinge) {
    if (hinge.pin)
      put_pieces(bill, pin_part(m, *hinge.pin), hinge.name, 1, hinge.pin->price);
    else
      put_pieces(bill, "pin that is not described", hinge.name, 1, std::nullopt);
  });
  each([&](const model::Hinge& hinge) {
    if (hinge.bushings)
      put_pieces(bill, "bushing " + hinge.bushings->name, hinge.name, 2, hinge.bushings->price);
    else if (const auto& washers = hinge.washers)
      put_pieces(bill, fmt::format("washer {:g} / {:g} mm{}", mm(washers->inner_diameter), mm(washers->outer_diameter), of_material(m, washers->build)),
                 hinge.name, 2, washers->price);
  });
}

double cut_length(const System& system, std::size_t c) {
  const CordSystem& cord = system.cords[c];
  const model::Cord& data = system.model().cords[static_cast<std::size_t>(cord.cord)];
  const VectorXd straight = posture(system, std::vector<double>(system.hinges.size(), 0.0));
  const double path = cord_posture(system, straight, c).path_length / cord.law.stretch(data.pretension);
  const double turn = cord.pulley ? 2 * std::numbers::pi * cord.pulley->radius(0) : 0;
  return path + data.slack + turn + data.allowance;
}

void add_cords(BillOfMaterials& bill, const System& system) {
  const model::Model& m = system.model();
  for (std::size_t c = 0; c < system.cords.size(); ++c) {
    const model::Cord& cord = m.cords[static_cast<std::size_t>(system.cords[c].cord)];
    const model::Line& line = m.lines[static_cast<std::size_t>(cord.line)];
    put(bill, "cord " + line.name, cord.name, 1, Measure::length, cut_length(system, c), line.price);
  }
}

double volume_of(const model::Shape& shape) { return geometry::mass_of({shape, 1}).mass; }

// The volume that a body takes of each material, and of each density that has no material.
void add_solids(BillOfMaterials& bill, const model::Model& m, const model::Body& body) {
  std::vector<std::string> seen;  // one body counts once however many solids it has of a material
  for (const model::Solid& solid : body.solids) {
    const auto* material = solid.material < 0 ? nullptr : &m.materials[static_cast<std::size_t>(solid.material)];
    const std::string part = material ? "material " + material->name : fmt::format("material of {:g} g/cm³ without a name", 1e-3 * solid.density);
    const bool first = std::find(seen.begin(), seen.end(), part) == seen.end();
    if (first) seen.push_back(part);
    put(bill, part, body.name, first ? 1 : 0, Measure::volume, volume_of(solid.shape), material ? material->price : std::nullopt);
  }
}

void add_bodies(BillOfMaterials& bill, const model::Model& m) {
  for (const model::Body& body : m.bodies) {
    if (body.price) {
      put_pieces(bill, "body " + body.name, "", 1, body.price);
      continue;
    }
    add_solids(bill, m, body);
    if (body.mass)
      put_pieces(bill, fmt::format("body {}, mass given as a number", body.name), "", 1, std::nullopt);
    else if (body.solids.empty())
      put_pieces(bill, fmt::format("body {}, not described", body.name), "", 1, std::nullopt);
  }
}

}  // namespace

BillOfMaterials bill_of(const System& system) {
  const model::Model& m = system.model();
  BillOfMaterials bill{m.currency, {}, 0, 0};
  add_drives(bill, m);
  add_hinges(bill, m);
  add_cords(bill, system);
  add_bodies(bill, m);
  for (const model::BillItem& item : m.bill) put_pieces(bill, item.name, item.used_for, item.count, item.price);
  for (const BillLine& line : bill.lines) {
    if (const model::Price price = line.price())
      bill.total += *price;
    else
      ++bill.unpriced;
  }
  return bill;
}

BillOfMaterials bill_of(const model::Model& model) {
  model::Scenario idle;
  idle.model = model;
  return bill_of(System(std::move(idle)));
}

std::string unpriced_parts(const BillOfMaterials& bill) {
  std::string parts;
  for (const BillLine& line : bill.lines)
    if (!line.unit_price) parts += (parts.empty() ? "" : "; ") + line.part;
  return parts;
}

}  // namespace sinewright::simulation
