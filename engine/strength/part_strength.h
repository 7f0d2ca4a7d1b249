#pragma once

#include <string>
#include <vector>

#include "model/model.h"

namespace sinewright::strength {

/// A number that the model may not give, with the keys that it then lacks.
struct Known {
  double value = 0;                  ///< 0 if something is missing
  std::vector<std::string> missing;  ///< keys
};

/// What the material of a part bears in the direction in which the part is built.
class PartStrength {
 public:
  /// @param part  key of the part; `part`.material is what is missing without a material.
  PartStrength(const model::Model& model, const model::Build& build, const std::string& part);

  /// Along or across the layers as the part says, else the lower of the two [Pa].
  [[nodiscard]] Known tension() const;

  /// shear_strength, or strength / √3 (von Mises); across the layers lower in the same proportion as the strength [Pa].
  [[nodiscard]] Known shear() const;

  [[nodiscard]] Known bearing() const;            ///< [Pa]
  [[nodiscard]] Known pressure_velocity() const;  ///< [Pa m/s]

 private:
  [[nodiscard]] Known known(double model::Material::*value, const char* key) const;

  const model::Material* material_ = nullptr;  // in the model, which must outlive this
  model::Layers layers_;
  std::string missing_;
};

}  // namespace sinewright::strength
