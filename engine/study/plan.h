#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "study/axis.h"
#include "study/point_set.h"
#include "study/screening.h"
#include "study/sensitivity.h"

namespace sinewright::study {

/// Which designs a study runs that decides on all of them beforehand. Any row on any machine, in any order.
class Plan {
 public:
  /// @param groups  correlation of each group; points of sensitivity and screening must be independent, so that they take none.
  /// @throws InvalidInput if the kind of study cannot use an axis; an optimisation has no such plan.
  Plan(const model::StudyKind& kind, std::vector<Axis> axes, std::vector<std::pair<std::string, double>> groups);

  [[nodiscard]] std::uint64_t rows() const { return rows_; }
  /// One value for each axis, in its unit or as the index of an option.
  [[nodiscard]] std::vector<double> values(std::uint64_t row) const;

 private:
  struct Grid {
    std::vector<std::vector<double>> values;  // per axis
    std::vector<std::size_t> sizes;
  };
  using Points = std::variant<Grid, RandomPoints, SobolPoints, LatinHypercube, SensitivityDesign, ScreeningDesign>;
  [[nodiscard]] Points points_of(const model::StudyKind& kind);
  [[nodiscard]] Points spread(model::Points points, int runs, std::uint64_t seed);
  void require_independent(const char* kind) const;

  std::vector<Axis> axes_;
  std::vector<std::pair<double, std::vector<std::size_t>>> groups_;  // correlation and members; a coordinate of its own after the axes
  std::uint64_t rows_ = 0;
  Points points_;
};

}  // namespace sinewright::study
