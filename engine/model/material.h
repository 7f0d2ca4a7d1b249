#pragma once

#include <optional>
#include <string>

#include "model/bill.h"

namespace sinewright::model {

/// How the stress that governs lies to the layers of a printed part. `weaker`: not known, so the lower strength counts.
enum class Layers { weaker, along, across };

/// What a part is made of, for its margins.
struct Build {
  int material = -1;  ///< index into Model::materials; −1: not described
  Layers layers = Layers::weaker;
};

/// A bulk material. Strengths and limits of 0 are not given; what would need them is then not checked.
struct Material {
  std::string name;
  double density = 0;   ///< [kg/m³]
  double modulus = 0;   ///< Young's modulus [Pa]
  double poisson = 0;   ///< [–]
  std::optional<double> thermal_expansion;  ///< linear [1/K]
  std::string source;   ///< where the numbers come from
  double strength = 0;           ///< in tension, along the layers of a print [Pa]
  double strength_across = 0;    ///< in tension, across the layers [Pa]; 0: a material without layers
  double shear_strength = 0;     ///< along the layers [Pa]; 0: strength / √3
  double bearing_strength = 0;   ///< pressure that a hole's wall or a flat bears [Pa]
  double pressure_velocity = 0;  ///< limit of pressure × rubbing speed [Pa m/s]
  double least_wall = 0;         ///< thinnest wall that the process makes soundly [m]
  double least_hole = 0;         ///< smallest hole that the process leaves open [m]
  Price price = std::nullopt;    ///< [1/m³], of the volume of solids made of it
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
