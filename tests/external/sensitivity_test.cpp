#include <cmath>
#include <functional>
#include <numbers>

#include <catch2/catch.hpp>

#include "check.h"
#include "study/distribution.h"
#include "study/sensitivity.h"

using namespace sinewright::study;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {

SensitivityResult studied(std::uint64_t base_points, std::size_t keys, const std::function<double(const std::vector<double>&)>& law) {
  const SensitivityDesign design(base_points, keys, 1);
  std::vector<double> y, u(keys);
  for (std::uint64_t row = 0; row < design.rows(); ++row) {
    design.point(row, u);
    y.push_back(law(u));
  }
  return sensitivity(y, keys);
}

double ishigami(const std::vector<double>& u, double a, double b) {
  const Uniform angle{-std::numbers::pi, std::numbers::pi};
  const double x1 = quantile(angle, u[0]), x2 = quantile(angle, u[1]), x3 = quantile(angle, u[2]);
  return std::sin(x1) + a * std::pow(std::sin(x2), 2) + b * std::pow(x3, 4) * std::sin(x1);
}

// Both indices, and that the interval told with each is not far off: one width of it about the index holds the truth.
void check_index(const std::string& name, const SensitivityIndex& ours, double first, double total, double tolerance,
                 const std::string& source) {
  check_absolute("first-order index, " + name, "1", ours.first, first, {source, tolerance});
  check_absolute("total index, " + name, "1", ours.total, total, {source, tolerance});
  CHECK(std::abs(ours.first - first) <= ours.first_interval.high - ours.first_interval.low);
  CHECK(std::abs(ours.total - total) <= ours.total_interval.high - ours.total_interval.low);
}

}  // namespace

// Estimates: the tolerances are what a study may expect of 4096 base points.
TEST_CASE("sensitivity: Ishigami's function, a = 7, b = 0.1", "[external][sensitivity]") {
  const std::string source = "Saltelli et al. 2008, Global Sensitivity Analysis, ch. 4; closed form";
  const auto s = studied(4096, 3, [](const auto& u) { return ishigami(u, 7, 0.1); });
  check_relative("mean, 4096 base points", "1", s.mean, 3.5, {source, 2e-3});
  check_relative("variance, 4096 base points", "1", s.variance, 13.8445879407193, {source, 5e-3});
  check_index("x1", s.keys[0], 0.313905191147811, 0.557588855209959, 0.01, source);
  check_index("x2", s.keys[1], 0.442411144790041, 0.442411144790041, 0.01, source);
  check_index("x3", s.keys[2], 0, 0.243683664062148, 0.01, source);
}

TEST_CASE("sensitivity: Ishigami's function, a = 7, b = 0.05", "[external][sensitivity]") {
  const std::string source = "closed form of Saltelli et al. 2008, ch. 4; evaluated apart";
  const auto s = studied(4096, 3, [](const auto& u) { return ishigami(u, 7, 0.05); });
  check_relative("variance, 4096 base points", "1", s.variance, 8.91694244035, {source, 5e-3});
  check_index("x1", s.keys[0], 0.218518564427, 0.313105356351, 0.01, source);
  check_index("x2", s.keys[1], 0.686894643649, 0.686894643649, 0.01, source);
  check_index("x3", s.keys[2], 0, 0.0945867919243, 0.01, source);
}

TEST_CASE("sensitivity: Sobol's g function of eight keys", "[external][sensitivity]") {
  const std::string source = "Saltelli and Sobol 1995 (formula from memory); evaluated apart";
  const std::vector<double> a{0, 1, 4.5, 9, 99, 99, 99, 99};
  const auto s = studied(4096, 8, [&](const auto& u) {
    double product = 1;
    for (std::size_t i = 0; i < a.size(); ++i) product *= (std::abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
    return product;
  });
  const std::vector<double> first{0.7161921689, 0.1790480422, 0.02367577418, 0.007161921689, 7.161921689e-5};
  const std::vector<double> total{0.7871441267, 0.2421981928, 0.03431691015, 0.01046038707, 1.049490519e-4};
  check_relative("variance, 4096 base points", "1", s.variance, 0.465424431902, {source, 5e-3});
  for (std::size_t i = 0; i < 8; ++i) {
    const std::size_t k = std::min<std::size_t>(i, 4);
    check_index("x" + std::to_string(i + 1), s.keys[i], first[k], total[k], k < 2 ? 0.01 : k < 4 ? 2e-3 : 3e-4, source);
  }
}
