#include "study/plan.h"

#include <fmt/format.h>

#include "model/overloaded.h"
#include "study/shared_factor.h"

namespace sinewright::study {

Plan::Plan(const model::StudyKind& kind, std::vector<Axis> axes, std::vector<std::pair<std::string, double>> groups)
    : axes_(std::move(axes)), points_(Grid{}) {
  for (const auto& [name, correlation] : groups) {
    std::vector<std::size_t> members;
    for (std::size_t i = 0; i < axes_.size(); ++i)
      if (axes_[i].variable.group == name) members.push_back(i);
    if (members.size() > 1) groups_.emplace_back(correlation, members);
  }
  points_ = points_of(kind);
}

void Plan::require_independent(const char* kind) const {
  if (groups_.empty()) return;
  const model::Variable& member = axes_[groups_.front().second.front()].variable;
  throw InvalidInput(fmt::format("{}:{}:{}: {}: {} needs variables that are independent\n  needed: no group", member.place.file,
                                 member.place.line, member.place.column, member.name, kind));
}

Plan::Points Plan::spread(model::Points points, int runs, std::uint64_t seed) {
  rows_ = static_cast<std::uint64_t>(runs);
  const std::size_t dimensions = axes_.size() + groups_.size();
  switch (points) {
    case model::Points::sobol: return SobolPoints(dimensions, seed);
    case model::Points::latin_hypercube: return LatinHypercube(rows_, dimensions, seed);
    case model::Points::random: break;
  }
  return RandomPoints(dimensions, seed);
}

Plan::Points Plan::points_of(const model::StudyKind& kind) {
  return std::visit(
      overloaded{[&](const model::GridStudy&) -> Points {
                   require_independent("a grid");
                   Grid grid;
                   for (const Axis& axis : axes_) {
                     grid.values.push_back(grid_values(axis));
                     grid.sizes.push_back(grid.values.back().size());
                   }
                   rows_ = grid_rows(grid.sizes);
                   return grid;
                 },
                 [&](const model::SampleStudy& sample) { return spread(sample.points, sample.runs, sample.seed); },
                 [&](const model::ToleranceStudy& sample) { return spread(sample.points, sample.runs, sample.seed); },
                 [&](const model::SensitivityStudy& study) -> Points {
                   require_independent("a sensitivity study");
                   SensitivityDesign design(static_cast<std::uint64_t>(study.base), axes_.size(), study.seed);
                   rows_ = design.rows();
                   return design;
                 },
                 [&](const model::ScreeningStudy& study) -> Points {
                   require_independent("a screening study");
                   ScreeningDesign design(static_cast<std::uint64_t>(study.paths), axes_.size(), study.seed,
                                          static_cast<std::size_t>(study.levels));
                   rows_ = design.rows();
                   return design;
                 },
                 [&](const model::OptimiseStudy&) -> Points { throw InvalidInput("an optimisation decides on its designs as it goes"); }},
      kind);
}

std::vector<double> Plan::values(std::uint64_t row) const {
  std::vector<double> values(axes_.size());
  if (const auto* grid = std::get_if<Grid>(&points_)) {
    const auto place = grid_place(grid->sizes, row);
    for (std::size_t i = 0; i < values.size(); ++i) values[i] = grid->values[i][place[i]];
    return values;
  }
  std::vector<double> u(axes_.size() + groups_.size());
  std::visit(overloaded{[](const Grid&) {}, [&](const auto& points) { points.point(row, u); }}, points_);
  for (std::size_t g = 0; g < groups_.size(); ++g) {
    const auto& [correlation, members] = groups_[g];
    std::vector<double> own;
    for (const std::size_t i : members) own.push_back(u[i]);
    share_factor(u[axes_.size() + g], correlation, own);
    for (std::size_t m = 0; m < members.size(); ++m) u[members[m]] = own[m];
  }
  for (std::size_t i = 0; i < values.size(); ++i) values[i] = value_at(axes_[i], u[i]);
  return values;
}

}  // namespace sinewright::study
