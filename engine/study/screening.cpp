#include "study/screening.h"

#include <cmath>
#include <numeric>
#include <utility>

#include "quantity/counter_random.h"
#include "study/argument.h"
#include "study/sample_statistics.h"

namespace sinewright::study {

struct ScreeningDesign::Path {
  std::vector<std::size_t> order;  // in which the keys step
  std::vector<double> start, step;
};

ScreeningDesign::ScreeningDesign(std::uint64_t paths, std::size_t keys, std::uint64_t seed, std::size_t levels)
    : paths_(paths), keys_(keys), seed_(seed), levels_(levels) {
  require(paths >= 1, "number of paths", static_cast<double>(paths), "at least 1");
  require(keys >= 1, "number of keys", static_cast<double>(keys), "at least 1");
  require(levels >= 2 && levels % 2 == 0, "number of levels", static_cast<double>(levels), "even, at least 2");
}

ScreeningDesign::Path ScreeningDesign::path(std::uint64_t number) const {
  RandomStream random(seed_, number);
  Path p{std::vector<std::size_t>(keys_), std::vector<double>(keys_), std::vector<double>(keys_)};
  std::iota(p.order.begin(), p.order.end(), std::size_t{0});
  for (std::size_t i = keys_; i > 1; --i) std::swap(p.order[i - 1], p.order[random.below(i)]);
  for (std::size_t i = 0; i < keys_; ++i) {
    const std::uint64_t level = random.below(levels_);
    p.start[i] = (static_cast<double>(level) + 0.5) / static_cast<double>(levels_);
    p.step[i] = level < levels_ / 2 ? 0.5 : -0.5;
  }
  return p;
}

void ScreeningDesign::point(std::uint64_t row, std::span<double> u) const {
  require(u.size() == keys_, "length of a point", static_cast<double>(u.size()), "the number of keys");
  require(row < rows(), "row of a screening", static_cast<double>(row), "below its number of rows");
  const Path p = path(row / (keys_ + 1));
  for (std::size_t i = 0; i < keys_; ++i) u[i] = p.start[i];
  for (std::size_t n = 0; n < row % (keys_ + 1); ++n) u[p.order[n]] += p.step[p.order[n]];
}

ScreeningDesign::Step ScreeningDesign::step(std::uint64_t row) const {
  const std::size_t n = row % (keys_ + 1);
  require(row < rows() && n < keys_, "row of a screening", static_cast<double>(row), "not the last of its path");
  const Path p = path(row / (keys_ + 1));
  return {p.order[n], p.step[p.order[n]]};
}

std::vector<ElementaryEffects> elementary_effects(const ScreeningDesign& design, std::span<const double> outcomes) {
  require(outcomes.size() == design.rows(), "number of outcomes", static_cast<double>(outcomes.size()), "one for each row");
  std::vector<std::vector<double>> effects(design.keys());
  for (std::uint64_t row = 0; row < design.rows(); ++row) {
    if (row % (design.keys() + 1) == design.keys()) continue;
    const auto [key, length] = design.step(row);
    const double effect = (outcomes[row + 1] - outcomes[row]) / length;
    effects[key].push_back(std::isfinite(effect) ? effect : std::nan(""));
  }
  std::vector<ElementaryEffects> result;
  for (std::vector<double>& of_key : effects) {
    const SampleMoments m = sample_moments(of_key);
    for (double& e : of_key) e = std::abs(e);
    result.push_back({m.mean, sample_moments(of_key).mean, m.deviation, m.count, m.missing});
  }
  return result;
}

}  // namespace sinewright::study
