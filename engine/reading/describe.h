#pragma once

#include "reading/record.h"
#include "reading/written.h"

/// Pieces of description that several file kinds share.
namespace sinewright::reading {

[[nodiscard]] Kind<Matrix3d> turned();
[[nodiscard]] Kind<model::MassProperties> mass_properties();
[[nodiscard]] Kind<WrittenSolid> solid();
[[nodiscard]] Kind<WrittenForm> shape(const std::string& key);

/// The keys sphere, capsule, cylinder, box, hull, stl, of which exactly one must be there.
template <class T>
void add_shapes(Record<T>& record, WrittenForm T::*member) {
  record.one_of("shape", "sphere", member, shape("sphere"), "a ball")
      .one_of("shape", "capsule", member, shape("capsule"), "a rod with round ends")
      .one_of("shape", "cylinder", member, shape("cylinder"), "a cylinder with flat ends")
      .one_of("shape", "box", member, shape("box"), "a box")
      .one_of("shape", "hull", member, shape("hull"), "the convex hull of points")
      .one_of("shape", "stl", member, shape("stl"), "a part from an STL file");
}

template <class T>
void add_heading(Record<T>& record, const std::string& file_kind, bool needs_name) {
  record.need("sinewright", &Heading::file_kind, word<std::string>({{file_kind, file_kind}}),
              "the kind of file");
  if (needs_name)
    record.need("name", &Heading::name, text(), "shown in reports");
  else
    record.may("name", &Heading::name, text(), Absent{"none"}, "shown in reports");
  record.may("about", &Heading::about, text(), Absent{"none"}, "what it is and where it comes from");
}

/// What one piece costs.
template <class T, class C>
void add_price(Record<T>& record, model::Price C::*member, const std::string& about = "of one, in the model's currency") {
  record.may("price", member, number(not_negative()), Absent{"no price"}, about);
}

/// Of random numbers.
[[nodiscard]] Kind<unsigned long long> seed();

/// static and kinetic coefficient of a dry pair.
[[nodiscard]] Kind<model::DryFriction> dry_friction();

/// What tells a drive's angle, and what reads its current.
[[nodiscard]] Kind<model::Sensor> sensor();
[[nodiscard]] Kind<model::CurrentSense> current_sense();

/// Firmware of a drive, and what the timeline can ask of it.
[[nodiscard]] Kind<WrittenController> controller();
[[nodiscard]] std::vector<std::pair<std::string, Kind<WrittenCommand>>> controller_commands();

/// Something that fails on the timeline.
[[nodiscard]] Kind<WrittenCommand> fault_entry();

/// A bound on one number of a summary.
[[nodiscard]] Kind<WrittenRequirement> requirement();
[[nodiscard]] std::vector<model::Requirement> requirements_of(const std::vector<WrittenRequirement>& list);

[[nodiscard]] Kind<model::Material> material();
[[nodiscard]] Kind<model::Surface> surface();
[[nodiscard]] Kind<WrittenPair> friction_pair();
[[nodiscard]] Kind<Built<model::Bushing>> bushing();
[[nodiscard]] Kind<model::Line> line();
[[nodiscard]] Kind<model::Motor> motor();
[[nodiscard]] Kind<model::Gearhead> gearhead();

template <class T>
void add_parts(Record<T>& record) {
  record
      .may("materials", &WrittenParts::materials, named(material(), "material"), Absent{"none"},
           "bulk materials")
      .may("surfaces", &WrittenParts::surfaces, named(surface(), "surface"), Absent{"none"},
           "what covers the shapes that can touch")
      .may("friction_pairs", &WrittenParts::friction_pairs, named(friction_pair(), "friction pair"),
           Absent{"none"}, "friction between two surfaces")
      .may("bushings", &WrittenParts::bushings, named(bushing(), "bushing"), Absent{"none"}, "kinds of flanged plain bushing")
      .may("lines", &WrittenParts::lines, named(line(), "line"), Absent{"none"}, "kinds of cord")
      .may("motors", &WrittenParts::motors, named(motor(), "motor"), Absent{"none"}, "brushed motors")
      .may("gearheads", &WrittenParts::gearheads, named(gearhead(), "gearhead"), Absent{"none"}, "gearheads");
}

}  // namespace sinewright::reading
