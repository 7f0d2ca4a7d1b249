#include "study/distribution.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

#include "study/argument.h"
#include "study/normal.h"

namespace sinewright::study {

namespace {

template <class... Parts>
struct Overloaded : Parts... {
  using Parts::operator()...;
};

void require_finite(double value, const char* what) { require(std::isfinite(value), what, value, "finite"); }

void require_order(double low, double high, const char* what) {
  require_finite(low, what);
  require(std::isfinite(high) && high > low, what, high, "finite and above the lower bound");
}

double weight(const Choices& c, std::size_t i) { return c.weights.empty() ? 1.0 : c.weights[i]; }

double total_weight(const Choices& c) {
  double total = 0;
  for (std::size_t i = 0; i < c.values.size(); ++i) total += weight(c, i);
  return total;
}

// Bounds in standard deviations, turned over if both lie above the mean: shares of a lower tail keep their digits, those of
// an upper tail are differences from 1.
struct Cut {
  double low, high;
  bool turned;
  double below, mass;  // share below `low`, and between the bounds
};

Cut cut(const TruncatedNormal& t) {
  Cut c{(t.low - t.mean) / t.deviation, (t.high - t.mean) / t.deviation, false, 0, 0};
  if (c.low > 0) c = {-c.high, -c.low, true, 0, 0};
  c.below = normal_cumulative(c.low);
  c.mass = normal_cumulative(c.high) - c.below;
  return c;
}

double density(double z) { return std::exp(-0.5 * z * z) / std::sqrt(2 * std::numbers::pi); }

// Mean and variance of the standard normal between the bounds.
std::pair<double, double> moments(const Cut& c) {
  const double a = density(c.low), b = density(c.high);
  const double m = (a - b) / c.mass;
  return {m, 1 + (c.low * a - c.high * b) / c.mass - m * m};
}

}  // namespace

Empirical measured(std::vector<double> values) {
  for (double v : values) require_finite(v, "measured value");
  std::sort(values.begin(), values.end());
  return {std::move(values)};
}

Normal normal_within(double low, double high, double sigmas) {
  require_order(low, high, "upper limit");
  require(std::isfinite(sigmas) && sigmas > 0, "standard deviations between mean and limit", sigmas, "finite and > 0");
  return {0.5 * (low + high), 0.5 * (high - low) / sigmas};
}

void check(const Distribution& distribution) {
  const auto check_normal = [](double m, double s) {
    require_finite(m, "mean");
    require(std::isfinite(s) && s > 0, "standard deviation", s, "finite and > 0");
  };
  std::visit(
      Overloaded{
          [](const Choices& c) {
            require(!c.values.empty(), "number of values", 0, "at least one");
            for (double v : c.values) require_finite(v, "value");
            require(c.weights.empty() || c.weights.size() == c.values.size(), "number of weights",
                    static_cast<double>(c.weights.size()), "one for each value, or none at all");
            for (double w : c.weights) require(std::isfinite(w) && w >= 0, "weight", w, "finite and >= 0");
            require(total_weight(c) > 0, "sum of the weights", total_weight(c), "above 0");
          },
          [](const Uniform& d) { require_order(d.low, d.high, "upper bound"); },
          [&](const Normal& d) { check_normal(d.mean, d.deviation); },
          [](const Triangular& d) {
            require_order(d.low, d.high, "upper bound");
            require(d.mode >= d.low && d.mode <= d.high, "mode", d.mode, "between the bounds");
          },
          [&](const TruncatedNormal& d) {
            check_normal(d.mean, d.deviation);
            require_order(d.low, d.high, "upper bound");
            const double mass = cut(d).mass;
            require(mass >= 1e-12, "share of the normal between the bounds", mass, "at least 1e-12");
          },
          [](const Empirical& d) {
            require(!d.sorted.empty(), "number of measured values", 0, "at least one");
            for (double v : d.sorted) require_finite(v, "measured value");
            require(std::is_sorted(d.sorted.begin(), d.sorted.end()), "order of measured values", 0, "sorted, as measured() does");
          },
      },
      distribution);
}

double quantile(const Distribution& distribution, double u) {
  require(u > 0 && u < 1, "share u of a quantile", u, "between 0 and 1, both left out");
  return std::visit(
      Overloaded{
          [u](const Choices& c) {
            double rest = u * total_weight(c);
            std::size_t last = 0;
            for (std::size_t i = 0; i < c.values.size(); ++i) {
              if (weight(c, i) == 0) continue;  // so that rounding cannot end at a choice that is never made
              last = i;
              rest -= weight(c, i);
              if (rest < 0) break;
            }
            return c.values[last];
          },
          [u](const Uniform& d) { return d.low + u * (d.high - d.low); },
          [u](const Normal& d) { return d.mean + d.deviation * normal_quantile(u); },
          [u](const Triangular& d) {
            const double range = d.high - d.low, rise = d.mode - d.low, fall = d.high - d.mode;
            return u * range < rise ? d.low + std::sqrt(u * range * rise) : d.high - std::sqrt((1 - u) * range * fall);
          },
          [u](const TruncatedNormal& d) {
            const Cut c = cut(d);
            const double z = normal_quantile(c.below + (c.turned ? 1 - u : u) * c.mass);
            return std::clamp(d.mean + d.deviation * (c.turned ? -z : z), d.low, d.high);  // rounding only
          },
          [u](const Empirical& d) {
            const double rank = u * static_cast<double>(d.sorted.size() - 1);
            const auto i = static_cast<std::size_t>(rank);
            if (i + 1 >= d.sorted.size()) return d.sorted.back();
            return d.sorted[i] + (rank - static_cast<double>(i)) * (d.sorted[i + 1] - d.sorted[i]);
          },
      },
      distribution);
}

double mean(const Distribution& distribution) {
  return std::visit(
      Overloaded{
          [](const Choices& c) {
            double sum = 0;
            for (std::size_t i = 0; i < c.values.size(); ++i) sum += weight(c, i) * c.values[i];
            return sum / total_weight(c);
          },
          [](const Uniform& d) { return 0.5 * (d.low + d.high); },
          [](const Normal& d) { return d.mean; },
          [](const Triangular& d) { return (d.low + d.mode + d.high) / 3; },
          [](const TruncatedNormal& d) {
            const Cut c = cut(d);
            const double m = moments(c).first;
            return d.mean + d.deviation * (c.turned ? -m : m);
          },
          [](const Empirical& d) {  // each piece between two neighbours is as likely as the others, and uniform
            if (d.sorted.size() == 1) return d.sorted[0];
            double sum = 0;
            for (std::size_t i = 0; i + 1 < d.sorted.size(); ++i) sum += 0.5 * (d.sorted[i] + d.sorted[i + 1]);
            return sum / static_cast<double>(d.sorted.size() - 1);
          },
      },
      distribution);
}

double deviation(const Distribution& distribution) {
  const double m = mean(distribution);
  return std::visit(
      Overloaded{
          [m](const Choices& c) {
            double sum = 0;
            for (std::size_t i = 0; i < c.values.size(); ++i) sum += weight(c, i) * (c.values[i] - m) * (c.values[i] - m);
            return std::sqrt(sum / total_weight(c));
          },
          [](const Uniform& d) { return (d.high - d.low) / std::sqrt(12); },
          [](const Normal& d) { return d.deviation; },
          [](const Triangular& d) {
            const double a = d.mode - d.low, b = d.high - d.mode;
            return std::sqrt((a * a + a * b + b * b) / 18);
          },
          [](const TruncatedNormal& d) { return d.deviation * std::sqrt(std::max(0.0, moments(cut(d)).second)); },
          [m](const Empirical& d) {
            if (d.sorted.size() == 1) return 0.0;
            double sum = 0;
            for (std::size_t i = 0; i + 1 < d.sorted.size(); ++i) {
              const double a = d.sorted[i] - m, b = d.sorted[i + 1] - m;
              sum += (a * a + a * b + b * b) / 3;
            }
            return std::sqrt(sum / static_cast<double>(d.sorted.size() - 1));
          },
      },
      distribution);
}

}  // namespace sinewright::study
