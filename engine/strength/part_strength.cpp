#include "strength/part_strength.h"

#include <fmt/format.h>

#include <algorithm>
#include <numbers>

namespace sinewright::strength {

using model::Material;

PartStrength::PartStrength(const model::Model& model, const model::Build& build, const std::string& part)
    : material_(build.material < 0 ? nullptr : &model.materials[static_cast<std::size_t>(build.material)]),
      layers_(build.layers),
      missing_(part + ".material") {}

Known PartStrength::known(double Material::*value, const char* key) const {
  if (material_ == nullptr) return {0, {missing_}};
  if (material_->*value > 0) return {material_->*value, {}};
  return {0, {fmt::format("materials.{}.{}", material_->name, key)}};
}

Known PartStrength::tension() const {
  Known along = known(&Material::strength, "strength");
  if (!along.missing.empty() || layers_ == model::Layers::along) return along;
  if (layers_ == model::Layers::across) return known(&Material::strength_across, "strength_across");
  if (material_->strength_across > 0) along.value = std::min(along.value, material_->strength_across);
  return along;
}

Known PartStrength::shear() const {
  const bool alone = material_ != nullptr && material_->shear_strength > 0 && material_->strength == 0;
  if (alone && layers_ != model::Layers::across) return {material_->shear_strength, {}};
  Known directed = tension();
  if (!directed.missing.empty()) return directed;
  const double along = material_->shear_strength > 0 ? material_->shear_strength : material_->strength / std::numbers::sqrt3;
  directed.value = along * directed.value / material_->strength;
  return directed;
}

Known PartStrength::bearing() const {
  return known(&Material::bearing_strength, "bearing_strength");
}

Known PartStrength::pressure_velocity() const {
  return known(&Material::pressure_velocity, "pressure_velocity");
}

}  // namespace sinewright::strength
