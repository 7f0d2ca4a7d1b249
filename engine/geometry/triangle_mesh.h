#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include <Eigen/Core>

#include "quantity/invalid_input.h"

namespace sinewright::geometry {

/// A triangle of a mesh or hull: indices into the points, counter-clockwise seen from outside.
using Triangle = std::array<std::size_t, 3>;

/// A surface made of triangles that share their corners.
struct TriangleMesh {
  std::vector<Eigen::Vector3d> points;  ///< each place once, in whatever unit the file has
  std::vector<Triangle> triangles;      ///< in the order of the file
};

/// Why a mesh cannot be used, in pieces, so that a reader can put place and key in front.
class MeshProblem : public InvalidInput {
 public:
  MeshProblem(std::string trouble_text, std::string needed_text, std::string hint_text)
      : InvalidInput(trouble_text + "\n  needed: " + needed_text + (hint_text.empty() ? "" : "\n  hint:   " + hint_text)),
        trouble(std::move(trouble_text)),
        needed(std::move(needed_text)),
        hint(std::move(hint_text)) {}

  std::string trouble;  ///< what is wrong, where in the file or mesh
  std::string needed;   ///< what would do
  std::string hint;     ///< what to try
};

}  // namespace sinewright::geometry
