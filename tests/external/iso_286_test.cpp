#include "strength/iso_286.h"

#include <array>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "check.h"

using namespace sinewright::strength;
using sinewright::external::check_absolute;

namespace {

// Deviations are whole micrometres; a size of some millimetres, subtracted again, errs by 1e-12 µm.
constexpr double exact = 1e-9;  // [µm]

// The largest size of each range, and one inside it.
constexpr std::array<std::array<double, 2>, 3> sizes{{{3e-3, 2e-3}, {6e-3, 4e-3}, {10e-3, 8e-3}}};

std::string mm(double size) {
  return std::to_string(static_cast<int>(1e3 * size + 0.5)) + " mm";
}

}  // namespace

TEST_CASE("ISO 286: standard tolerances IT5 to IT11 up to 10 mm", "[external][iso-286]") {
  constexpr std::array<std::array<double, 7>, 3> published{
      {{4, 6, 10, 14, 25, 40, 60}, {5, 8, 12, 18, 30, 48, 75}, {6, 9, 15, 22, 36, 58, 90}}};  // [µm]
  for (std::size_t range = 0; range < 3; ++range) {
    for (std::size_t i = 0; i < 7; ++i) {
      const int grade = 5 + static_cast<int>(i);
      for (const double size : sizes[range]) {
        check_absolute("IT" + std::to_string(grade) + ", " + mm(size), "um",
                       1e6 * standard_tolerance(size, grade), published[range][i],
                       {"ISO 286-1, table 1, as on mechguru.com", exact});
      }
    }
  }
}

TEST_CASE("ISO 286: limits of the usual classes up to 10 mm", "[external][iso-286]") {
  struct Published {
    const char* name;
    std::array<std::array<double, 2>, 3> deviation;  // upper, lower [µm]
    const char* source;
  };
  const std::vector<Published> classes{
      {"H7", {{{10, 0}, {12, 0}, {15, 0}}}, "JIS B 0401 / ISO 286-2, as on deepri.com"},
      {"m6", {{{8, 2}, {12, 4}, {15, 6}}}, "JIS B 0401 / ISO 286-2, as on deepri.com and nutbolt.org"},
      {"p6", {{{12, 6}, {20, 12}, {24, 15}}}, "JIS B 0401 extract, as on docs.steelcam.org"},
      {"g6", {{{-2, -8}, {-4, -12}, {-5, -14}}}, "JIS B 0401 extract, as on docs.steelcam.org"},
      {"f8", {{{-6, -20}, {-10, -28}, {-13, -35}}}, "JIS B 0401 extract, as on docs.steelcam.org"},
      {"F8", {{{20, 6}, {28, 10}, {35, 13}}}, "ISO 286-2 (from memory), mirror of f8"}};
  for (const Published& published : classes) {
    for (std::size_t range = 0; range < 3; ++range) {
      for (const double size : sizes[range]) {
        const std::string what = std::string(published.name) + " deviation, " + mm(size);
        const SizeLimits limits = iso_limits(size, published.name);
        check_absolute("upper " + what, "um", 1e6 * (limits.upper - size), published.deviation[range][0],
                       {published.source, exact});
        check_absolute("lower " + what, "um", 1e6 * (limits.lower - size), published.deviation[range][1],
                       {published.source, exact});
      }
    }
  }
}

TEST_CASE("ISO 286: clearances of the usual fits up to 10 mm", "[external][iso-286]") {
  struct Fit {
    const char* hole;
    const char* pin;
    std::array<std::array<double, 2>, 3> clearance;  // smallest, largest [µm]; negative: interference
  };
  // H7/p6 up to 3 mm may be loose: a transition fit there.
  const std::vector<Fit> fits{{"H7", "g6", {{{2, 18}, {4, 24}, {5, 29}}}},
                              {"H7", "p6", {{{-12, 4}, {-20, 0}, {-24, 0}}}},
                              {"H7", "m6", {{{-8, 8}, {-12, 8}, {-15, 9}}}},
                              {"F8", "m6", {{{-2, 18}, {-2, 24}, {-2, 29}}}}};
  for (const Fit& fit : fits) {
    for (std::size_t range = 0; range < 3; ++range) {
      for (const double size : sizes[range]) {
        const std::string what = std::string(fit.hole) + "/" + fit.pin + " clearance, " + mm(size);
        const FitRange ours = fit_range(iso_limits(size, fit.hole), iso_limits(size, fit.pin));
        check_absolute("smallest " + what, "um", 1e6 * ours.smallest_clearance, fit.clearance[range][0],
                       {"from the published limits", exact});
        check_absolute("largest " + what, "um", 1e6 * ours.largest_clearance, fit.clearance[range][1],
                       {"from the published limits", exact});
      }
    }
  }
}
