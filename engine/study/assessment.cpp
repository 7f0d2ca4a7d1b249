#include "study/assessment.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace sinewright::study {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

}  // namespace

double violation(const Assessment& a) {
  double sum = 0;
  for (double f : a.objectives)
    if (!std::isfinite(f)) return kInfinite;
  for (double c : a.violations) {
    if (std::isnan(c)) return kInfinite;
    sum += std::max(0.0, c);
  }
  return sum;
}

bool dominates(const Assessment& a, const Assessment& b) {
  const double missed_a = violation(a), missed_b = violation(b);
  if (missed_a != missed_b) return missed_a < missed_b;
  if (missed_a > 0) return false;
  bool better = false;
  for (std::size_t i = 0; i < a.objectives.size(); ++i) {
    if (a.objectives[i] > b.objectives[i]) return false;
    better = better || a.objectives[i] < b.objectives[i];
  }
  return better;
}

std::vector<std::size_t> front_numbers(std::span<const Assessment> designs) {
  const std::size_t n = designs.size();
  std::vector<std::vector<std::size_t>> below(n);  // those that a design dominates
  std::vector<std::size_t> above(n, 0);            // by how many others it is dominated
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      if (dominates(designs[i], designs[j])) {
        below[i].push_back(j);
        ++above[j];
      }
  std::vector<std::size_t> number(n, 0), front;
  for (std::size_t i = 0; i < n; ++i)
    if (above[i] == 0) front.push_back(i);
  for (std::size_t f = 0; !front.empty(); ++f) {
    std::vector<std::size_t> next;
    for (std::size_t i : front) {
      number[i] = f;
      for (std::size_t j : below[i])
        if (--above[j] == 0) next.push_back(j);
    }
    front = std::move(next);
  }
  return number;
}

std::vector<double> crowding_distances(std::span<const Assessment> designs) {
  const std::size_t n = designs.size();
  std::vector<double> distance(n, 0);
  if (n == 0) return distance;
  std::vector<std::size_t> order(n);
  for (std::size_t k = 0; k < designs[0].objectives.size(); ++k) {
    // A failed run must not put NaN into the order.
    const auto value = [&](std::size_t i) {
      const double f = designs[i].objectives[k];
      return std::isnan(f) ? kInfinite : f;
    };
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t i, std::size_t j) { return value(i) < value(j); });
    const double range = value(order.back()) - value(order.front());
    distance[order.front()] = distance[order.back()] = kInfinite;
    if (!(range > 0) || !std::isfinite(range)) continue;
    for (std::size_t r = 1; r + 1 < n; ++r) distance[order[r]] += (value(order[r + 1]) - value(order[r - 1])) / range;
  }
  return distance;
}

}  // namespace sinewright::study
