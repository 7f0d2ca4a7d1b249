#include "report/thinning.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace sinewright::report {

namespace {

// Deviation of a row from the line between two others, in parts of what is allowed.
double off_line(const std::vector<double>& time, const std::vector<double>& values, double allowed, std::size_t a, std::size_t b, std::size_t row) {
  if (std::isnan(values[row]) || std::isnan(values[a]) || std::isnan(values[b])) return 0;  // ends of values are kept, see below
  const double share = (time[row] - time[a]) / (time[b] - time[a]);
  const double off = std::abs(values[row] - (values[a] + share * (values[b] - values[a])));
  return allowed > 0 ? off / allowed : off > 0 ? 1e300 : 0;
}

}  // namespace

Thinned thin_out(const std::vector<double>& time, const std::vector<Column>& columns, const std::vector<std::size_t>& wanted,
                 double bound, std::size_t most) {
  const std::size_t n = time.size();
  std::set<std::size_t> anyway = {0, n - 1};
  for (const std::size_t row : wanted) anyway.insert(std::min(row, n - 1));
  std::vector<double> range;
  for (const Column& column : columns) {
    std::size_t low = n, high = n;
    for (std::size_t i = 0; i < n; ++i) {
      const double v = column.values[i];
      if (i > 0 && std::isnan(v) != std::isnan(column.values[i - 1])) anyway.insert({i - 1, i});
      if (std::isnan(v)) continue;
      if (low == n || v < column.values[low]) low = i;
      if (high == n || v > column.values[high]) high = i;
    }
    range.push_back(low == n ? 0 : column.values[high] - column.values[low]);
    if (low < n) anyway.insert({low, high});
  }
  const auto allowed = [&](std::size_t c, double share) { return std::max(share * range[c], columns[c].least_bound); };
  Thinned thinned;
  for (;; bound *= 2) {
    std::vector<char> kept(n, 0);
    for (const std::size_t row : anyway) kept[row] = 1;
    // Each stretch is split at its worst row until none is off.
    std::vector<std::pair<std::size_t, std::size_t>> stretches;
    for (auto it = anyway.begin(); std::next(it) != anyway.end(); ++it) stretches.emplace_back(*it, *std::next(it));
    std::size_t count = anyway.size();
    while (!stretches.empty() && (count <= most || bound >= 1)) {
      const auto [a, b] = stretches.back();
      stretches.pop_back();
      double worst = 1;
      std::size_t at = n;
      for (std::size_t c = 0; c < columns.size(); ++c) {
        const double most_off = allowed(c, bound);
        for (std::size_t row = a + 1; row < b; ++row)
          if (const double off = off_line(time, columns[c].values, most_off, a, b, row); off > worst) worst = off, at = row;
      }
      if (at == n) continue;
      kept[at] = 1;
      ++count;
      stretches.emplace_back(a, at);
      stretches.emplace_back(at, b);
    }
    if (count > most && bound < 1 && anyway.size() < most) continue;
    for (std::size_t i = 0; i < n; ++i)
      if (kept[i]) thinned.rows.push_back(i);
    thinned.bound = thinned.rows.size() == n ? 0 : bound;
    break;
  }
  for (std::size_t k = 1; k < thinned.rows.size(); ++k)
    for (std::size_t row = thinned.rows[k - 1] + 1; row < thinned.rows[k]; ++row)
      for (std::size_t c = 0; c < columns.size(); ++c)
        thinned.found = std::max(thinned.found, thinned.bound * off_line(time, columns[c].values, allowed(c, thinned.bound), thinned.rows[k - 1], thinned.rows[k], row));
  return thinned;
}

}  // namespace sinewright::report
