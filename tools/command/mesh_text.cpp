#include "mesh_text.h"

#include <vector>

#include <fmt/format.h>

namespace sinewright::tool {

namespace {

// A mesh where it is used: for mass with a density, else for touching.
struct Use {
  std::string where;
  const model::Mesh* mesh = nullptr;
  double density = 0;
};

std::vector<Use> uses_of(const model::Scenario& scenario) {
  std::vector<Use> uses;
  const auto see = [&](const std::string& where, const model::Shape& shape, double density) {
    if (const auto* mesh = std::get_if<model::Mesh>(&shape)) uses.push_back({where, mesh, density});
  };
  for (const model::Body& body : scenario.model.bodies) {
    for (const model::Solid& solid : body.solids) see(body.name, solid.shape, solid.density);
    for (const model::ContactShape& shape : body.shapes) see(body.name + "." + shape.name, shape.shape, 0);
  }
  for (const model::Object& object : scenario.objects) {
    for (const model::Solid& solid : object.solids) see(object.name, solid.shape, solid.density);
    see(object.name, object.shape.shape, 0);
  }
  return uses;
}

Eigen::Vector3d size_of(const model::Mesh& mesh) {
  Eigen::Vector3d low = mesh.points.front(), high = low;
  for (const Eigen::Vector3d& p : mesh.points) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  return high - low;
}

}  // namespace

std::string mesh_text(const model::Scenario& scenario) {
  std::string text;
  for (const Use& use : uses_of(scenario)) {
    const model::Mesh& mesh = *use.mesh;
    const Eigen::Vector3d size = 1e3 * size_of(mesh);
    const std::string taken =
        use.density > 0 ? fmt::format("{:.4g} cm³, {:.4g} g", 1e6 * mesh.volume, 1e3 * use.density * mesh.volume)
                        : fmt::format("touches as a hull of {} corners{}", mesh.points.size(),
                                      mesh.inside > 1e-6 ? fmt::format(", up to {:.2g} mm inside the part", 1e3 * mesh.inside) : "");
    text += fmt::format("  {:<14} {}: {} triangles, {:.4g} × {:.4g} × {:.4g} mm; {}\n", use.where, mesh.file, mesh.triangles,
                        size.x(), size.y(), size.z(), taken);
  }
  return text;
}

nlohmann::ordered_json mesh_json(const model::Scenario& scenario) {
  nlohmann::ordered_json list = nlohmann::ordered_json::array();
  for (const Use& use : uses_of(scenario)) {
    const model::Mesh& mesh = *use.mesh;
    nlohmann::ordered_json entry = {{"part", use.where}, {"file", mesh.file}, {"triangles", mesh.triangles}};
    if (use.density > 0) {
      entry["volume"] = {{"value", mesh.volume}, {"unit", "m3"}};
      entry["mass"] = {{"value", use.density * mesh.volume}, {"unit", "kg"}};
    } else {
      entry["hull_corners"] = mesh.points.size();
      entry["hull_inside"] = {{"value", mesh.inside}, {"unit", "m"}};
    }
    list.push_back(entry);
  }
  return list;
}

}  // namespace sinewright::tool
