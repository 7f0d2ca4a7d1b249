#include <cmath>
#include <cstdio>
#include <string>
#include <utility>
#include <vector>

#include <catch2/catch.hpp>

#include "check.h"
#include "friction/tension_law.h"

using namespace sinewright;
using namespace sinewright::friction;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {

using Data = std::vector<std::pair<double, double>>;  // (stretch, nominal stress [MPa])

// L. R. G. Treloar, Trans. Faraday Soc. 40 (1944) 59: uniaxial tension of natural rubber with 8 % sulphur, in
// two independent digitisations of the published curve. A: src/datasets.jl of the public repository
// TRACER-LULab/Hyperelastics.jl.
const Data set_a{{1.4273, 0.2856}, {1.6163, 0.3833}, {1.882, 0.4658},  {2.1596, 0.5935}, {2.4383, 0.6609},
                 {3.0585, 0.8409}, {3.6153, 1.006},  {4.1206, 1.2087}, {4.852, 1.5617},  {5.4053, 1.915},
                 {5.7925, 2.2985}, {6.1803, 2.6519}, {6.4787, 3.0205}, {6.6627, 3.3816}, {6.936, 3.7351},
                 {7.133, 4.0812},  {7.1769, 4.4501}, {7.2712, 4.8414}, {7.4425, 5.2026}, {7.512, 5.5639}};
// B: Treloar_1944/UT/stress_stretch.txt of the public repository Chongran-Zhao/Hyperelastic-fitting.
const Data set_b{{1.02, 0.0255}, {1.125, 0.1344}, {1.24, 0.2256}, {1.39, 0.3169}, {1.585, 0.4081},
                 {1.90, 0.5003}, {2.18, 0.5886},  {2.42, 0.6769}, {3.02, 0.8633}, {3.57, 1.0497},
                 {4.03, 1.2263}, {4.76, 1.5892},  {5.36, 1.9522}, {5.75, 2.3152}, {6.15, 2.6879},
                 {6.40, 3.0411}, {6.60, 3.4139},  {6.85, 3.7769}, {7.05, 4.1300}, {7.15, 4.4930},
                 {7.25, 4.8658}, {7.40, 5.2287},  {7.50, 5.5917}, {7.60, 6.3176}};

// With an area of 1 mm² tension in N is nominal stress in MPa.
TensionFunction rubber(std::vector<std::pair<double, double>> terms) {
  return TensionFunction(model::RubberLaw{1e-6, std::move(terms), 7.6});
}

TensionFunction ogden_1972() {
  return rubber({{0.63e6, 1.3}, {0.0012e6, 5.0}, {-0.01e6, -2.0}});
}

std::string at(double stretch) {
  char text[32];
  std::snprintf(text, sizeof text, " at stretch %g", stretch);
  return text;
}

}  // namespace

TEST_CASE("rubber: neo-Hookean stress with Treloar's modulus", "[external][rubber]") {
  // G about 4 kgf/cm² = 0.39 MPa for the 8 % sulphur rubber at low stretch.
  const std::string source = "Treloar 1944, G of about 0.39 MPa (from memory); evaluated apart";
  const TensionFunction law = rubber({{0.39e6, 2.0}});
  check_relative("nominal stress at stretch 1.5", "MPa", law.tension(1.5), 0.411666667,
                 {source, 1e-8});  // 9 digits
  check_relative("nominal stress at stretch 2", "MPa", law.tension(2), 0.6825, {source, 1e-9});
  check_relative("nominal stress at stretch 3", "MPa", law.tension(3), 1.126666667, {source, 1e-9});
}

TEST_CASE("rubber: Ogden's three terms give the stresses evaluated apart", "[external][rubber]") {
  const std::string source = "R. W. Ogden 1972, constants of table 1 (from memory); evaluated apart";
  const TensionFunction law = ogden_1972();
  const Data expected{{1.2, 0.205157924242}, {1.5, 0.401616978898}, {2, 0.602721615587}, {3, 0.879926097595},
                      {4, 1.207970935688},   {5, 1.736666444541},   {6, 2.610802894524}, {7, 3.995221638891}};
  for (const auto& [stretch, stress] : expected) {
    // Twelve decimals are given: up to 2.5e-12 relative at the smallest value.
    check_relative("nominal stress" + at(stretch), "MPa", law.tension(stretch), stress, {source, 1e-11});
  }
  check_relative("initial shear modulus", "MPa", law.initial_slope() / 3, 0.4225, {source, 1e-12});
}

TEST_CASE("rubber: Ogden's fit lies within 0.1 MPa of Treloar's curve up to stretch 7.05",
          "[external][rubber]") {
  const TensionFunction law = ogden_1972();
  for (const auto& [stretch, stress] : set_b) {
    if (stretch > 7.05) continue;
    check_absolute("nominal stress" + at(stretch), "MPa", law.tension(stretch), stress,
                   {"Treloar 1944, uniaxial tension, digitisation B", 0.1});
  }
  // Beyond, the three terms miss the upturn: 1.2 MPa too low at the last point. A known limit of the fit, so
  // that a law that hits this point is not Ogden's.
  CHECK_THAT(6.3176 - law.tension(7.6), Catch::Matchers::WithinAbs(1.2, 0.05));
}

TEST_CASE("rubber: Ogden's fit agrees with the other digitisation as far as the two agree",
          "[external][rubber]") {
  const TensionFunction law = ogden_1972();
  // The fit's own 0.1 MPa (against B) and the 5 % by which the two digitisations typically differ.
  for (const auto& [stretch, stress] : set_a) {
    if (stretch > 7.05) continue;
    check_absolute("nominal stress" + at(stretch), "MPa", law.tension(stretch), stress,
                   {"Treloar 1944, uniaxial tension, digitisation A", 0.1 + 0.05 * stress});
  }
}

TEST_CASE("rubber: a table of one digitisation foretells the other", "[external][rubber]") {
  model::TableLaw table{{1}, {0}};
  for (const auto& [stretch, stress] : set_b) {
    table.stretch.push_back(stretch);
    table.tension.push_back(stress);
  }
  const TensionFunction law(table);
  // A lies on average about 4 % below B and at most 15 % (at stretch 1.43), between B's points by straight
  // lines; the cubic bulges half a percent further there.
  double sum = 0;
  for (const auto& [stretch, stress] : set_a) {
    sum += 1 - stress / law.tension(stretch);
    check_absolute("A over B" + at(stretch), "1", stress / law.tension(stretch), 1,
                   {"Treloar 1944, digitisation A against a table of B", 0.16});
  }
  CHECK(sum / static_cast<double>(set_a.size()) == Approx(0.04).margin(0.01));
}

TEST_CASE("rubber: least squares on Treloar's curve find the moduli found apart", "[external][rubber]") {
  // Both laws are linear in their moduli, so that the engine's law with unit modulus is the basis function.
  const std::string source = "least squares on Treloar 1944, digitisation B, computed apart";
  const auto neo_hookean = [](double highest) {
    const TensionFunction unit = rubber({{1e6, 2.0}});
    double fy = 0, ff = 0;
    for (const auto& [stretch, stress] : set_b) {
      if (stretch > highest) continue;
      fy += unit.tension(stretch) * stress;
      ff += unit.tension(stretch) * unit.tension(stretch);
    }
    return fy / ff;
  };
  check_relative("neo-Hookean G up to stretch 2.0", "MPa", neo_hookean(2.0), 0.332687, {source, 1e-5});
  check_relative("neo-Hookean G up to stretch 4.1", "MPa", neo_hookean(4.1), 0.305803, {source, 1e-5});

  // Mooney–Rivlin as two Ogden terms: (2 C10, 2) and (−2 C01, −2).
  const TensionFunction first = rubber({{2e6, 2.0}}), second = rubber({{-2e6, -2.0}});
  double aa = 0, ab = 0, bb = 0, ay = 0, by = 0;
  for (const auto& [stretch, stress] : set_b) {
    if (stretch > 4.1) continue;
    const double a = first.tension(stretch), b = second.tension(stretch);
    aa += a * a;
    ab += a * b;
    bb += b * b;
    ay += a * stress;
    by += b * stress;
  }
  const double determinant = aa * bb - ab * ab;
  check_relative("Mooney-Rivlin C10 up to stretch 4.1", "MPa", (ay * bb - by * ab) / determinant, 0.141377,
                 {source, 1e-4});
  check_relative("Mooney-Rivlin C01 up to stretch 4.1", "MPa", (by * aa - ay * ab) / determinant, 0.033907,
                 {source, 1e-4});
}
