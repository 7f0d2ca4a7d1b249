#pragma once

#include <optional>
#include <string>

namespace sinewright::model {

/// A bulk material.
struct Material {
  std::string name;
  double density = 0;   ///< [kg/m³]
  double modulus = 0;   ///< Young's modulus [Pa]
  double poisson = 0;   ///< [–]
  std::optional<double> thermal_expansion;  ///< linear [1/K]
  std::string source;   ///< where the numbers come from
};

/// What covers a contact shape. Two surfaces in contact act as springs in series.
struct Surface {
  std::string name;
  double modulus = 0;  ///< Young's modulus of the covering [Pa]
  double poisson = 0;  ///< [–]
  double damping = 0;  ///< Hunt–Crossley coefficient c in N = N_elastic (1 + c δ̇) [s/m]
  std::string source;
};

/// Coulomb friction between two surfaces.
struct SurfacePair {
  int a = -1, b = -1;       ///< indices into Model::surfaces
  double friction = 0;      ///< Coulomb coefficient [–]
  std::string source;
};

}  // namespace sinewright::model
