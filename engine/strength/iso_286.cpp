#include "strength/iso_286.h"

#include <array>
#include <charconv>
#include <cstddef>
#include <system_error>

#include <fmt/format.h>

#include "quantity/invalid_input.h"
#include "strength/argument.h"

namespace sinewright::strength {

namespace {

constexpr double micrometre = 1e-6;  // [m]
constexpr int lowest_grade = 5;
constexpr int highest_grade = 11;

// One row a size range, IT5 to IT11 [µm]. ISO 286-1, table 1.
constexpr std::array<std::array<int, 7>, 3> tolerances{{
    {4, 6, 10, 14, 25, 40, 60},  // up to 3 mm
    {5, 8, 12, 18, 30, 48, 75},  // over 3, up to 6 mm
    {6, 9, 15, 22, 36, 58, 90},  // over 6, up to 10 mm
}};

// The deviation nearest to the nominal size, per size range [µm], and where the rest of the tolerance lies.
struct Zone {
  char letter;
  int grade;  // 0: any
  std::array<int, 3> deviation;
  bool above;  // the tolerance extends from the deviation upward
};
constexpr std::array<Zone, 7> zones{{
    {'H', 0, {0, 0, 0}, true},
    {'F', 8, {6, 10, 13}, true},
    {'h', 0, {0, 0, 0}, false},
    {'g', 6, {-2, -4, -5}, false},
    {'f', 8, {-6, -10, -13}, false},
    {'m', 6, {2, 4, 6}, true},
    {'p', 6, {6, 12, 15}, true},
}};

std::size_t size_range(double nominal) {
  // A nanometre, so that 3 mm does not fall into the next range by the rounding of a conversion of units.
  constexpr double rounding = 1e-9;
  require(nominal > 0 && nominal <= 0.010 + rounding, "nominal size", nominal, "m",
          "above 0, at most 0.01 m");
  return nominal <= 0.003 + rounding ? 0 : nominal <= 0.006 + rounding ? 1 : 2;
}

const Zone& find_zone(std::string_view tolerance_class, int& grade) {
  if (tolerance_class.size() >= 2) {
    const char* const first = tolerance_class.data() + 1;
    const char* const last = tolerance_class.data() + tolerance_class.size();
    const auto [end, error] = std::from_chars(first, last, grade);
    if (error == std::errc{} && end == last && grade >= lowest_grade && grade <= highest_grade) {
      for (const Zone& zone : zones)
        if (zone.letter == tolerance_class[0] && (zone.grade == 0 || zone.grade == grade)) return zone;
    }
  }
  throw InvalidInput(
      fmt::format("tolerance class '{}' is not known\n"
                  "  needed: H5 to H11, F8, h5 to h11, g6, f8, m6 or p6",
                  tolerance_class));
}

}  // namespace

double standard_tolerance(double nominal, int grade) {
  require(grade >= lowest_grade && grade <= highest_grade, "tolerance grade", grade, "", "5 to 11");
  return tolerances[size_range(nominal)][static_cast<std::size_t>(grade - lowest_grade)] * micrometre;
}

SizeLimits iso_limits(double nominal, std::string_view tolerance_class) {
  int grade = 0;
  const Zone& zone = find_zone(tolerance_class, grade);
  const double near = nominal + zone.deviation[size_range(nominal)] * micrometre;
  const double tolerance = standard_tolerance(nominal, grade);
  return zone.above ? SizeLimits{near, near + tolerance} : SizeLimits{near - tolerance, near};
}

}  // namespace sinewright::strength
