#include "study/sample_statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "study/argument.h"

namespace sinewright::study {

namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kMostBins = 200;  // more than a figure can show

}  // namespace

SampleMoments sample_moments(std::span<const double> values) {
  SampleMoments m;
  m.least = m.greatest = m.mean = m.deviation = kNone;
  double sum = 0;
  for (double v : values) {
    if (std::isnan(v)) {
      ++m.missing;
      continue;
    }
    ++m.count;
    sum += v;
    m.least = std::fmin(m.least, v);  // fmin and fmax pass over NaN
    m.greatest = std::fmax(m.greatest, v);
  }
  if (m.count == 0) return m;
  m.mean = sum / static_cast<double>(m.count);
  if (m.count == 1) return m;
  double squares = 0;
  for (double v : values)
    if (!std::isnan(v)) squares += (v - m.mean) * (v - m.mean);
  m.deviation = std::sqrt(squares / static_cast<double>(m.count - 1));
  return m;
}

std::vector<double> sorted_numbers(std::span<const double> values) {
  std::vector<double> numbers;
  for (double v : values)
    if (!std::isnan(v)) numbers.push_back(v);
  std::sort(numbers.begin(), numbers.end());
  return numbers;
}

double sample_quantile(std::span<const double> sorted, double u) {
  require(u >= 0 && u <= 1, "share u of a quantile", u, "0 to 1");
  if (sorted.empty()) return kNone;
  const double rank = u * static_cast<double>(sorted.size() - 1);
  const auto i = static_cast<std::size_t>(rank);
  if (i + 1 >= sorted.size()) return sorted.back();
  return sorted[i] + (rank - static_cast<double>(i)) * (sorted[i + 1] - sorted[i]);
}

Histogram histogram(std::span<const double> values, std::size_t bins) {
  std::vector<double> sorted = sorted_numbers(values);
  // Runs that gave an infinite outcome have no place on an axis.
  std::erase_if(sorted, [](double v) { return !std::isfinite(v); });
  Histogram h;
  if (sorted.empty()) return h;
  h.low = sorted.front();
  h.high = sorted.back();
  if (h.low == h.high) {
    h.counts = {sorted.size()};
    return h;
  }
  if (bins == 0) {
    const double n = static_cast<double>(sorted.size());
    const double width = 2 * (sample_quantile(sorted, 0.75) - sample_quantile(sorted, 0.25)) / std::cbrt(n);
    const double wanted = width > 0 ? (h.high - h.low) / width : std::sqrt(n);
    bins = static_cast<std::size_t>(std::ceil(std::clamp(wanted, 1.0, kMostBins)));
  }
  h.counts.assign(bins, 0);
  for (double v : sorted) {
    const auto bin = static_cast<std::size_t>((v - h.low) / (h.high - h.low) * static_cast<double>(bins));
    ++h.counts[std::min(bin, bins - 1)];
  }
  return h;
}

}  // namespace sinewright::study
