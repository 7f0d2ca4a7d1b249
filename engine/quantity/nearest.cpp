#include "quantity/nearest.h"

#include <algorithm>

namespace sinewright {
namespace {

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

}  // namespace

int edit_distance(std::string_view a, std::string_view b) {
  std::vector<int> before(b.size() + 1), previous(b.size() + 1), row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) previous[j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = static_cast<int>(i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const int change = lower(a[i - 1]) == lower(b[j - 1]) ? 0 : 1;
      row[j] = std::min({previous[j] + 1, row[j - 1] + 1, previous[j - 1] + change});
      const bool swapped =
          i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) && lower(a[i - 2]) == lower(b[j - 1]);
      if (swapped) row[j] = std::min(row[j], before[j - 2] + 1);
    }
    std::swap(before, previous);
    std::swap(previous, row);
  }
  return previous[b.size()];
}

std::string nearest(std::string_view name, const std::vector<std::string>& known, int furthest) {
  std::string best;
  int best_distance = furthest + 1;
  if (name.size() > 100) return best;  // a key that long is no misspelling, and the distance is quadratic
  for (const std::string& candidate : known) {
    if (candidate.size() > 100) continue;
    const int distance = edit_distance(name, candidate);
    if (distance < best_distance) {
      best = candidate;
      best_distance = distance;
    }
  }
  return best;
}

std::string nearest(std::string_view name, const std::vector<std::string>& known) {
  return nearest(name, known, std::max(1, static_cast<int>(name.size()) / 3 + 1));
}

}  // namespace sinewright
