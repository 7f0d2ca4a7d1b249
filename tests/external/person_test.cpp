#include <string>
#include <vector>

#include <catch2/catch.hpp>

#include "check.h"
#include "strength/person_force.h"
#include "strength/touch.h"

using namespace sinewright::strength;
using sinewright::external::check_absolute;
using sinewright::external::check_relative;

namespace {
double celsius(double kelvin) {
  return kelvin - 273.15;
}
constexpr double exact = 1e-9;  // [°C]: the offset rounds at 1e-13
}  // namespace

TEST_CASE("person: pressure and force limits on the hand", "[external][person]") {
  struct Row {
    const char* name;
    HandSpot spot;
    double dominant, other;  // [N/cm²]
  };
  const sinewright::external::Outside source{"ISO/TS 15066:2016, table A.2, secondary copy", 1e-14};
  for (const Row& row : std::vector<Row>{{"forefinger pad", HandSpot::forefinger_pad, 300, 270},
                                         {"forefinger end joint", HandSpot::forefinger_end_joint, 280, 220},
                                         {"thenar", HandSpot::thenar, 200, 200},
                                         {"palm", HandSpot::palm, 260, 260},
                                         {"back of hand", HandSpot::back_of_hand, 200, 190}}) {
    const std::string name = row.name;
    check_relative("pressure limit, dominant hand, " + name, "N/cm2",
                   1e-4 * hand_pressure_limit(row.spot, true), row.dominant, source);
    check_relative("pressure limit, other hand, " + name, "N/cm2",
                   1e-4 * hand_pressure_limit(row.spot, false), row.other, source);
  }
  check_relative("force limit, lasting contact", "N", hand_force_limit, 140, source);
  check_relative("force limit, short contact", "N", hand_force_limit * transient_factor, 280, source);
}

TEST_CASE("person: speed limit of a light finger in a short contact", "[external][person]") {
  check_relative("effective mass of a hand", "kg", hand_effective_mass, 0.6,
                 {"ISO/TS 15066, table A.3, secondary copy", 0});
  check_relative("stiffness of a hand", "N/mm", 1e-3 * hand_stiffness, 75,
                 {"ISO/TS 15066, table A.3, secondary copy", 1e-14});
  check_relative("speed limit, 0.1 kg, 280 N", "m/s", transient_speed_limit(280, 0.1), 3.492214,
                 {"ISO/TS 15066, A.3.4 (from memory); evaluated apart", 1e-5});
}

TEST_CASE("person: burn thresholds of a long touch", "[external][person]") {
  struct Row {
    const char* name;
    TouchSurface surface;
    double one_minute;  // [°C]
  };
  for (const Row& row : std::vector<Row>{{"bare metal", TouchSurface::bare_metal, 51},
                                         {"ceramic", TouchSurface::ceramic, 56},
                                         {"plastic", TouchSurface::plastic, 60}}) {
    const std::string name = row.name;
    const sinewright::external::Outside source{"ISO 13732-1 and EN 563 (from memory)", exact};
    check_absolute("burn threshold, 1 min, " + name, "degC", celsius(burn_threshold(row.surface, 60)),
                   row.one_minute, source);
    check_absolute("burn threshold, 10 min, " + name, "degC", celsius(burn_threshold(row.surface, 600)), 48,
                   {row.surface == TouchSurface::bare_metal ? "EN ISO 13732-1, secondary copy"
                                                            : "ISO 13732-1 and EN 563 (from memory)",
                    exact});
    check_absolute("burn threshold, 8 h, " + name, "degC", celsius(burn_threshold(row.surface, 8 * 3600)), 43,
                   source);
  }
}

TEST_CASE("person: burn thresholds of a short touch lie in the published bands", "[external][person]") {
  const std::string source = "ISO 13732-1, figures (from memory, low confidence), band";
  check_absolute("burn threshold, 1 s, bare metal", "degC",
                 celsius(burn_threshold(TouchSurface::bare_metal, 1)), 67.5, {source, 2.5 + exact});
  check_absolute("burn threshold, 10 s, bare metal", "degC",
                 celsius(burn_threshold(TouchSurface::bare_metal, 10)), 57.5, {source, 2.5 + exact});
  check_absolute("burn threshold, 1 s, plastic", "degC", celsius(burn_threshold(TouchSurface::plastic, 1)),
                 89, {source, 4 + exact});
}

TEST_CASE("person: touch limits of medical equipment", "[external][person]") {
  struct Row {
    const char* name;
    double time, metal, plastic;  // [s, °C, °C]
  };
  for (const Row& row : std::vector<Row>{{"below 1 s", 0.5, 74, 86},
                                         {"1 to 10 s", 5, 56, 71},
                                         {"10 s to 1 min", 30, 51, 60},
                                         {"above 1 min", 120, 48, 48}}) {
    const std::string name = row.name;
    const std::string memory = "IEC 60601-1, table 23 (from memory)";
    check_absolute("touch limit, metal, " + name, "degC",
                   celsius(medical_touch_limit(TouchSurface::bare_metal, row.time)), row.metal,
                   {memory, exact});
    check_absolute("touch limit, plastic, " + name, "degC",
                   celsius(medical_touch_limit(TouchSurface::plastic, row.time)), row.plastic,
                   {row.time < 10 ? "IEC 60601-1, table 23, as in elsmar.com thread 54107" : memory, exact});
  }
}
