#include <Eigen/Geometry>

#include "reading/describe_packing.h"
#include "reading/mesh_file.h"

namespace sinewright::reading {
namespace {

Bounds share() {
  return {0, 1, true, false, "above 0, up to 1"};
}

struct Turn {
  double by = 0;
  Vector3d about = Vector3d::UnitZ();
};

template <class S>
Kind<WrittenForm> as_shape(const Record<S>& record) {
  return turned_into<WrittenForm, S>(record.kind(),
                                     [](S value, const Node&) { return WrittenForm(model::Shape(value)); });
}

const std::string kSource = "where the numbers come from: a publication, a measurement, or 'invented'";

model::TensionLaw read_table(const std::vector<std::pair<double, double>>& rows, const Node& node) {
  model::TableLaw law;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto [stretch, tension] = rows[i];
    const Node& row = *node.children[i];
    if (i == 0 && (stretch != 1 || tension != 0))
      throw not_allowed(row, "first row: [1, 0 N]", "a relaxed cord pulls nothing");
    if (i > 0 && stretch <= rows[i - 1].first)
      throw not_allowed(*row.children[0], "stretch rising from row to row");
    if (i > 0 && tension <= rows[i - 1].second)
      throw not_allowed(*row.children[1], "tension rising from row to row");
    law.stretch.push_back(stretch);
    law.tension.push_back(tension);
  }
  return law;
}

}  // namespace

Kind<Matrix3d> turned() {
  Record<Turn> record("turned", "An orientation: a turn from the surrounding axes, by the right-hand rule.");
  record.need("by", &Turn::by, quantity("rad"), "angle of the turn")
      .may("about", &Turn::about, direction(), Absent{"[0, 0, 1]"}, "axis of the turn");
  return turned_into<Matrix3d, Turn>(record.kind(), [](const Turn& turn, const Node&) -> Matrix3d {
    return Eigen::AngleAxisd(turn.by, turn.about).toRotationMatrix();
  });
}

Kind<model::MassProperties> mass_properties() {
  using model::MassProperties;
  Record<MassProperties> record("mass", "Mass properties as numbers.");
  record.need("mass", &MassProperties::mass, quantity("kg", positive()), "mass")
      .may("center", &MassProperties::center, vector3("m"), Absent{"the origin"},
           "centre of mass, body frame")
      .need("inertia", &MassProperties::inertia, inertia(),
            "moments of inertia about the centre of mass, body axes; products of inertia are entries of the "
            "matrix, "
            "xy = -∫ x y dm");
  return record.kind();
}

Kind<WrittenForm> shape(const std::string& key) {
  if (key == "stl")
    return turned_into<WrittenForm, WrittenMesh>(mesh_shape(), [](WrittenMesh value, const Node&) { return WrittenForm(value); });
  if (key == "sphere") {
    using model::Sphere;
    Record<Sphere> record("sphere", "A ball.");
    record.may("center", &Sphere::center, vector3("m"), Absent{"the origin"}, "centre, body frame")
        .need("radius", &Sphere::radius, quantity("m", positive()), "radius");
    return as_shape(record);
  }
  if (key == "capsule") {
    using model::Capsule;
    Record<Capsule> record("capsule", "All points within `radius` of the line between two points.");
    record.need("from", &Capsule::from, vector3("m"), "one end of the line, body frame")
        .need("to", &Capsule::to, vector3("m"), "other end of the line, body frame")
        .need("radius", &Capsule::radius, quantity("m", positive()), "radius")
        .check([](Capsule& capsule, const Node& node) {
          if ((capsule.to - capsule.from).norm() < 1e-9)
            throw not_allowed(*node.find("to"), "another point than 'from'",
                              "a capsule without length is a sphere");
        });
    return as_shape(record);
  }
  if (key == "cylinder") {
    using model::Cylinder;
    Record<Cylinder> record("cylinder", "A cylinder with flat ends.");
    record
        .may("center", &Cylinder::center, vector3("m"), Absent{"the origin"},
             "middle of the axis, body frame")
        .may("axis", &Cylinder::axis, direction(), Absent{"[0, 0, 1]"}, "direction of the axis, body frame")
        .need("radius", &Cylinder::radius, quantity("m", positive()), "radius")
        .need("length", &Cylinder::length, quantity("m", positive()), "whole length along the axis");
    return as_shape(record);
  }
  if (key == "box") {
    using model::Box;
    Record<Box> record("box", "A box.");
    record.may("center", &Box::center, vector3("m"), Absent{"the origin"}, "middle, body frame")
        .need("size", &Box::size, vector3("m", positive()), "whole edge lengths along the box's own axes")
        .may("turned", &Box::rotation, turned(), Absent{"not turned"}, "the box's axes in the body frame");
    return as_shape(record);
  }
  using model::Hull;
  Record<Hull> record("hull", "The convex hull of points.");
  record
      .need("points", &Hull::points, list_of(vector3("m"), "a list of 4 or more points", 4),
            "corners, body frame")
      .check([](Hull& hull, const Node& node) {
        // Some four of the points must span a volume, or the hull is flat.
        Eigen::Matrix<double, 3, Eigen::Dynamic> spread(3, static_cast<Eigen::Index>(hull.points.size()) - 1);
        for (Eigen::Index i = 0; i < spread.cols(); ++i)
          spread.col(i) = hull.points[static_cast<std::size_t>(i) + 1] - hull.points[0];
        Eigen::FullPivLU<Eigen::MatrixXd> rank{Eigen::MatrixXd(spread)};
        rank.setThreshold(1e-9);
        if (rank.rank() < 3) throw not_allowed(*node.find("points"), "points that do not lie in one plane");
      });
  return as_shape(record);
}

Kind<WrittenSolid> solid() {
  Record<WrittenSolid> record("solid",
                              "A primitive or part filled with one density, adding to the mass of its body.");
  add_shapes(record, &WrittenSolid::shape);
  record.one_of("density", "material", &WrittenSolid::material, name_of("material"), "gives the density")
      .one_of("density", "density", &WrittenSolid::density, quantity("kg/m3", positive()),
              "density as a number");
  return record.kind();
}

Kind<unsigned long long> seed() {
  return turned_into<unsigned long long, int>(whole_number(0, 1000000000), [](int value, const Node&) {
    return static_cast<unsigned long long>(value);
  });
}

Kind<model::DryFriction> dry_friction() {
  using model::DryFriction;
  Record<DryFriction> record("dry_friction", "Coulomb coefficients of a dry sliding pair.");
  record.need("static", &DryFriction::static_coefficient, number(not_negative()), "coefficient at rest")
      .need("kinetic", &DryFriction::kinetic_coefficient, number(not_negative()), "coefficient while sliding")
      .check([](DryFriction& friction, const Node& node) {
        if (friction.static_coefficient < friction.kinetic_coefficient)
          throw not_allowed(*node.find("static"), "static >= kinetic",
                            "a pair at rest holds at least as much as a sliding one");
      });
  return record.kind();
}

Kind<model::Material> material() {
  using model::Material;
  Record<Material> record("material", "A bulk material.");
  record.need("density", &Material::density, quantity("kg/m3", positive()), "density")
      .need("modulus", &Material::modulus, quantity("Pa", positive()), "Young's modulus")
      .need("poisson", &Material::poisson, number({0, 0.5, false, true, "from 0, below 0.5"}),
            "Poisson's ratio")
      .may("thermal_expansion", &Material::thermal_expansion, quantity("K-1"), Absent{"not described"},
           "linear, for press fits that get warm or cold")
      .may("strength", &Material::strength, quantity("Pa", positive()), Absent{"stresses are not checked"},
           "in tension, along the layers of a print")
      .may("strength_across", &Material::strength_across, quantity("Pa", positive()),
           Absent{"a material without layers"}, "in tension, across the layers; needed where a part says so")
      .may("shear_strength", &Material::shear_strength, quantity("Pa", positive()), Absent{"strength / √3"},
           "along the layers; across them it is lower as the strength is")
      .may("bearing_strength", &Material::bearing_strength, quantity("Pa", positive()),
           Absent{"pressures are not checked"}, "pressure that the wall of a hole, a seat or a flat bears")
      .may("pressure_velocity", &Material::pressure_velocity, quantity("Pa.m/s", positive()),
           Absent{"not checked"}, "limit of pressure × rubbing speed, of washers")
      .may("least_wall", &Material::least_wall, quantity("m", positive()), Absent{"no warning"},
           "thinnest wall that the process makes soundly; thinner ones are warned of")
      .may("least_hole", &Material::least_hole, quantity("m", positive()), Absent{"no warning"},
           "smallest hole that the process leaves open; smaller ones are warned of")
      .may("price", &Material::price, quantity("m-3", not_negative()), Absent{"no price"},
           "per volume of the solids made of it, in the model's currency")
      .need("source", &Material::source, text(), kSource)
      .check([](Material& value, const Node& node) {
        if (value.strength_across > 0 && value.strength == 0)
          throw missing(node, "strength", "the strength along the layers, because the one across them is given");
      });
  return record.kind();
}

Kind<model::Surface> surface() {
  using model::Surface;
  Record<Surface> record("surface",
                         "What covers a contact shape. Two surfaces in contact act as springs in series.");
  record.need("modulus", &Surface::modulus, quantity("Pa", positive()), "Young's modulus of the covering")
      .need("poisson", &Surface::poisson, number({0, 0.5, false, true, "from 0, below 0.5"}),
            "Poisson's ratio")
      .need("damping", &Surface::damping, quantity("s/m", not_negative()),
            "Hunt–Crossley coefficient c in N = N_elastic (1 + c × approach speed)")
      .need("source", &Surface::source, text(), kSource);
  return record.kind();
}

Kind<WrittenPair> friction_pair() {
  Record<WrittenPair> record("friction_pair", "Coulomb friction between two surfaces.");
  record
      .need("between", &WrittenPair::between,
            list_of(name_of("surface"), "a list of two surface names", 2, 2),
            "the two surfaces, in any order")
      .need("friction", &WrittenPair::friction, number(not_negative()), "Coulomb coefficient")
      .need("source", &WrittenPair::source, text(), kSource);
  return record.kind();
}

Kind<Built<model::Bushing>> bushing() {
  using model::Bushing;
  Record<Built<Bushing>> record("bushing",
                                "A kind of flanged plain bushing. Two of them, one from either side, line the hole of the inner lug: the "
                                "pin runs in their bores, and their flanges rub on the outer lugs where washers would.");
  record.need("bore", &Bushing::bore, quantity("m", positive()), "diameter of the bore")
      .need("outer_diameter", &Bushing::outer_diameter, quantity("m", positive()), "of the sleeve: the hole that the lug needs")
      .need("flange_diameter", &Bushing::flange_diameter, quantity("m", positive()), "of the flange")
      .need("friction", &Bushing::friction, dry_friction(), "of the bore against the pin")
      .need("flange_friction", &Bushing::flange_friction, dry_friction(), "of the flange against the outer lug")
      .may("material", &Built<Bushing>::material, name_of("material"), Absent{"not checked"},
           "what it is made of; for the margins of its flange")
      .need("source", &Bushing::source, text(), kSource)
      .check([](Built<Bushing>& value, const Node& node) {
        if (value.outer_diameter <= value.bore) throw not_allowed(*node.find("outer_diameter"), "outer_diameter > bore");
        if (value.flange_diameter <= value.outer_diameter)
          throw not_allowed(*node.find("flange_diameter"), "flange_diameter > outer_diameter");
      });
  add_price(record, &Bushing::price);
  return record.kind();
}

Kind<model::Line> line() {
  using model::Line;
  using model::RubberLaw;
  using Term = std::pair<double, double>;
  Record<RubberLaw> rubber(
      "rubber",
      "Incompressible rubber (Ogden): T = A Σ μ (λ^(α−1) − λ^(−α/2−1)), λ the stretch. One term "
      "with α = 2 is neo-Hookean.");
  struct WrittenTerm {
    double modulus = 0, exponent = 0;
  };
  Record<WrittenTerm> term("rubber_term", "One term of the rubber law.");
  term.need("modulus", &WrittenTerm::modulus, quantity("Pa"), "μ")
      .need("exponent", &WrittenTerm::exponent, number(), "α, not 0; μ α must be positive")
      .check([](WrittenTerm& t, const Node& node) {
        if (!(t.modulus * t.exponent > 0))
          throw not_allowed(*node.find("exponent"), "modulus × exponent > 0",
                            "otherwise the term softens the cord at once");
      });
  const Kind<Term> as_pair = turned_into<Term, WrittenTerm>(
      term.kind(), [](const WrittenTerm& t, const Node&) { return Term(t.modulus, t.exponent); });
  rubber
      .may("area", &RubberLaw::area, quantity("m2", positive()),
           Absent{"of a full circle with the line's diameter"}, "unstretched cross-section A")
      .need("terms", &RubberLaw::terms, list_of(as_pair, "a list of terms", 1, 6), "the terms of the sum")
      .need("max_stretch", &RubberLaw::max_stretch, number({1, 1e3, true, false, "> 1"}),
            "the law is valid up to this stretch");
  const Kind<double> axial = quantity("N", positive());

  Record<Line> record("line", "A kind of cord. Exactly one tension law.");
  record.need("diameter", &Line::diameter, quantity("m", positive()), "outer diameter")
      .one_of(
          "law", "axial_stiffness", &Line::law,
          turned_into<model::TensionLaw, double>(
              axial, [](double value, const Node&) { return model::TensionLaw(model::LinearLaw{value}); }),
          "EA in T = EA (λ − 1)")
      .one_of(
          "law", "rubber", &Line::law,
          turned_into<model::TensionLaw, RubberLaw>(
              rubber.kind(), [](const RubberLaw& value, const Node&) { return model::TensionLaw(value); }),
          "a rubber law")
      .one_of("law", "table", &Line::law,
              turned_into<model::TensionLaw, std::vector<Term>>(
                  list_of(pair_of(number(positive()), quantity("N", not_negative()),
                                  "a pair: [stretch, tension]"),
                          "a list of pairs [stretch, tension], at least 2, both rising, from [1, 0 N]", 2),
                  read_table),
              "measured points [stretch, tension]")
      .may("damping_time", &Line::damping_time, quantity("s", not_negative()), Default{"0 s"},
           "τ: the viscous tension is (dT/dλ at λ = 1) τ dλ/dt")
      .may("breaking_force", &Line::breaking_force, quantity("N", positive()), Absent{"not checked"},
           "at which the straight cord breaks")
      .may("breaking_stretch", &Line::breaking_stretch, number({1, 1e3, true, false, "> 1"}), Absent{"not checked"},
           "of an elastic cord: length at which it breaks over free length")
      .may("price", &Line::price, quantity("m-1", not_negative()), Absent{"no price"},
           "per length of the cord without tension, in the model's currency")
      .need("source", &Line::source, text(), kSource)
      .check([](Line& value, const Node&) {
        if (auto* law = std::get_if<RubberLaw>(&value.law); law != nullptr && law->area == 0)
          law->area = 0.25 * 3.14159265358979323846 * value.diameter * value.diameter;
      });
  return record.kind();
}

Kind<model::Motor> motor() {
  using model::Motor;
  Record<Motor> record("motor", "A brushed motor with permanent magnets. Inductance is neglected.");
  record
      .need("resistance", &Motor::resistance, quantity("Ohm", positive()),
            "of the winding at the reference temperature")
      .need("torque_constant", &Motor::torque_constant, quantity("N.m/A", positive()),
            "torque per current, equal to the voltage per turning rate")
      .need("rotor_inertia", &Motor::rotor_inertia, quantity("kg.m2", positive()),
            "moment of inertia of the rotor")
      .may("static_drag", &Motor::static_drag, quantity("N.m", not_negative()), Default{"0 N·m"},
           "torque of brushes and cogging at rest")
      .may("kinetic_drag", &Motor::kinetic_drag, quantity("N.m", not_negative()), Default{"0 N·m"},
           "torque of the brushes while turning")
      .may("viscous_drag", &Motor::viscous_drag, quantity("N.m.s/rad", not_negative()),
           Default{"0 N·m·s/rad"}, "drag torque per turning rate")
      .may("resistance_slope", &Motor::resistance_slope, quantity("K-1", not_negative()),
           Default{"0.00393 1/K"}, "relative change of resistance with temperature; the default is copper's")
      .may("reference_temperature", &Motor::reference_temperature, quantity("K", positive()),
           Default{"20 degC"}, "at which the resistance is given")
      .need("winding_to_housing", &Motor::winding_to_housing, quantity("K/W", positive()),
            "thermal resistance")
      .need("housing_to_ambient", &Motor::housing_to_ambient, quantity("K/W", positive()),
            "thermal resistance")
      .need("winding_capacity", &Motor::winding_capacity, quantity("J/K", positive()),
            "heat capacity of the winding")
      .need("housing_capacity", &Motor::housing_capacity, quantity("J/K", positive()),
            "heat capacity of the housing")
      .may("highest_winding_temperature", &Motor::highest_winding_temperature, quantity("K", positive()),
           Absent{"no rating"}, "rated limit of the winding")
      .may("highest_housing_temperature", &Motor::highest_housing_temperature, quantity("K", positive()),
           Absent{"no rating"}, "rated limit of the housing, or of the part that holds it")
      .need("source", &Motor::source, text(), kSource)
      .check([](Motor& value, const Node& node) {
        if (value.static_drag < value.kinetic_drag) {
          const Node* at = node.find("static_drag");
          throw not_allowed(at != nullptr ? *at : *node.find("kinetic_drag"), "static_drag >= kinetic_drag",
                            "");
        }
      });
  add_price(record, &Motor::price);
  add_outline(record, &Motor::outline);
  return record.kind();
}

Kind<model::Gearhead> gearhead() {
  using model::Gearhead;
  Record<Gearhead> record("gearhead", "A reducing gearhead.");
  record.need("ratio", &Gearhead::ratio, number(positive()), "rotor turns per output turn")
      .need("forward_efficiency", &Gearhead::forward_efficiency, number(share()),
            "output torque / (ratio × input torque) while the motor drives")
      .need("backward_efficiency", &Gearhead::backward_efficiency,
            number({0, 1, false, false, "from 0 to 1"}),
            "ratio × input torque / output torque while the output drives; 0 locks. Often near 2 − 1/η for "
            "each stage, "
            "then multiplied")
      .may("drag", &Gearhead::drag, quantity("N.m", not_negative()), Default{"0 N·m"},
           "constant torque, referred to the output shaft")
      .may("output_inertia", &Gearhead::output_inertia, quantity("kg.m2", not_negative()), Default{"0 kg·m²"},
           "gears and pulley, at the output")
      .may("backlash", &Gearhead::backlash, quantity("rad", not_negative()), Default{"0 deg"},
           "whole play at the output")
      .may("torsional_stiffness", &Gearhead::torsional_stiffness, quantity("N.m/rad", positive()),
           Absent{"rigid"}, "at the output; needed with backlash")
      .may("torque_rating", &Gearhead::torque_rating, quantity("N.m", positive()), Absent{"no rating"},
           "rated limit of the output torque")
      .need("source", &Gearhead::source, text(), kSource)
      .check([](Gearhead& value, const Node& node) {
        if (value.backlash > 0 && value.torsional_stiffness == 0)
          throw missing(node, "torsional_stiffness", "a torsional stiffness, because backlash is given");
      });
  add_price(record, &Gearhead::price);
  add_outline(record, &Gearhead::outline);
  return record.kind();
}

Kind<PartsFile> parts_file() {
  Record<PartsFile> record("parts_file", "A file of parts that models use by name.");
  add_heading(record, "parts", false);
  add_parts(record);
  return record.kind();
}

Kind<WrittenRequirement> requirement() {
  const Kind<Quantity> bound = any_quantity("a number with the unit of the quantity, such as \"5 N\"");
  Record<WrittenRequirement> record(
      "requirement", "A bound on one number of the summary; a run that breaks it exits with 1.");
  record
      .need("quantity", &WrittenRequirement::quantity, text(),
            "a key of the summary, for instance grip_force")
      .may("at_least", &WrittenRequirement::at_least, bound, Absent{"no lower bound"}, "lower bound")
      .may("at_most", &WrittenRequirement::at_most, bound, Absent{"no upper bound"}, "upper bound")
      .check([](WrittenRequirement& value, const Node& node) {
        if (!value.at_least && !value.at_most)
          throw missing(node, "at_least", "'at_least', 'at_most' or both");
        if (value.at_least && value.at_most) {
          if (!same_dimension(value.at_least->unit, value.at_most->unit))
            throw not_allowed(*node.find("at_most"), "the dimension of at_least");
          if (value.at_least->si > value.at_most->si)
            throw not_allowed(*node.find("at_most"), "at_most >= at_least");
        }
        value.place = node.find("quantity")->place();
      });
  return record.kind();
}

std::vector<model::Requirement> requirements_of(const std::vector<WrittenRequirement>& list) {
  std::vector<model::Requirement> requirements;
  for (const WrittenRequirement& written : list) {
    model::Requirement requirement;
    requirement.quantity = written.quantity;
    if (written.at_least) requirement.at_least = written.at_least->si;
    if (written.at_most) requirement.at_most = written.at_most->si;
    requirement.unit = written.at_least ? written.at_least->unit : written.at_most->unit;
    requirement.place = written.place;
    requirements.push_back(std::move(requirement));
  }
  return requirements;
}

}  // namespace sinewright::reading
