#include "quantity/quantity.h"

#include <cmath>
#include <numbers>
#include <thread>
#include <vector>

#include <catch2/catch.hpp>

using namespace sinewright;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;

namespace {

struct Row {
  const char* text;
  const char* expected;
  double si;
};

struct Refused {
  const char* text;
  const char* expected;
  const char* phrase;
};

}  // namespace

TEST_CASE("quantity: text with a unit becomes SI", "[units]") {
  constexpr double kPi = std::numbers::pi;
  const auto row = GENERATE_COPY(values<Row>({
      {"0.5 mm", "m", 0.5e-3},
      {"0.5mm", "m", 0.5e-3},
      {" +0.5  mm ", "m", 0.5e-3},
      {"-3e-1 cm", "m", -3e-3},
      {"25 µm", "m", 25e-6},
      {"25 \u03bcm", "m", 25e-6},
      {"30 deg", "rad", kPi / 6},
      {"30°", "rad", kPi / 6},
      {"2 rev", "rad", 4 * kPi},
      {"60 rpm", "rad/s", 2 * kPi},
      {"25 degC", "K", 298.15},
      {"25 °C", "K", 298.15},
      {"300 K", "K", 300},
      {"12 N/m", "N/m", 12},
      {"5 N·mm/deg", "N·m/rad", 5e-3 * 180 / kPi},
      {"5 mN·m", "N·m", 5e-3},
      {"5 mN m", "N·m", 5e-3},
      {"5 mN*m", "N.m", 5e-3},
      {"5 N⋅mm", "N·m", 5e-3},
      {"2 g·cm²", "kg·m²", 2e-7},
      {"2 g·cm^2", "kg·m²", 2e-7},
      {"2 g.cm2", "kg·m²", 2e-7},
      {"0.93 g/cm³", "kg/m³", 930},
      {"0.93 g/cm^3", "kg/m³", 930},
      {"1700 MPa", "Pa", 1.7e9},
      {"20 K/W", "K/W", 20},
      {"1.2 J/K", "J/K", 1.2},
      {"0.00393 1/K", "1/K", 0.00393},
      {"-9.81 m/s²", "m/s²", -9.81},
      {"-9.81 m·s⁻²", "m/s²", -9.81},
      {"2 kHz", "Hz", 2000},
      {"9 Ohm", "Ohm", 9},
      {"9 Ω", "Ohm", 9},
      {"9 \u2126", "Ohm", 9},
      {"9 kΩ", "Ohm", 9000},
      {"2.4 mN·m/A", "N·m/A", 2.4e-3},
      {"2.4 mN·m/A", "V·s", 2.4e-3},
      {"4 V/rad", "V/rad", 4},
      {"1e-6 N·m·s/rad", "N·m·s/rad", 1e-6},
      {"1 N·m/(rad/s)", "N·m·s/rad", 1},
      {"0.12", "1", 0.12},
      {"12 %", "1", 0.12},
      {"12 percent", "1", 0.12},
      {".5", "1", 0.5},
  }));
  CAPTURE(row.text, row.expected);
  CHECK_THAT(parse_quantity(row.text, row.expected).si, WithinRel(row.si, 1e-14));
}

TEST_CASE("quantity: the unit is handed back as it was written", "[units]") {
  CHECK(parse_quantity("5 N·mm", "N·m").unit == "N·mm");
  CHECK(parse_quantity("0.2", "1").unit.empty());
}

TEST_CASE("quantity: what cannot be meant is refused and says why", "[errors]") {
  const auto row = GENERATE(values<Refused>({
      {"", "m", "there is no number"},
      {"   ", "m", "there is no number"},
      {"mm", "m", "begins with a number"},
      {"5", "m", "the unit is missing"},
      {"5 N", "m", "measures something else: a force"},
      {"5 kkg", "kg", "'kkg' is not a known unit; the nearest known one is 'kg'"},
      {"5 mmin", "s", "not a known unit"},
      {"5 cdegC", "K", "not a known unit"},
      {"5 mNm", "N·m", "'mNm' is not a known unit"},
      {"5 oz", "kg", "'oz' is not a known unit"},
      {"1,5 mm", "m", "point as decimal sign"},
      {"1 2 mm", "m", "a number stands inside the unit"},
      {"10-3 m", "m", "'-' cannot stand in a unit"},
      {"5 mm @ 3", "m", "'@' cannot stand in a unit"},
      {"5 s since 2000", "s", "'since' is not a known unit"},
      {"5 m^0.5", "m", "cannot be read"},
      {"5 m^", "m", "not followed by a power"},
      {"5 m^12", "m", "one digit"},
      {"5 /m", "m", "stands where a unit name belongs"},
      {"5 N/", "N", "ends where a name belongs"},
      {"5 (N", "N", "cannot be read"},
      {"5 lg(re mm)", "m", "not a known unit"},
      {"0.1 mm/N", "N/m", "measures something else"},
      {"60 rpm", "Hz", "measures something else"},
      {"5 N·m", "N·m/rad", "measures something else: a torque"},
      {"5 N·m/rad", "N·m", "measures something else: a torsional stiffness"},
      {"0.2 rad", "1", "measures something else: an angle"},
      {"5 degC/W", "K/W", "write K for a difference"},
      {"inf m", "m", "infinite"},
      {"-inf m", "m", "infinite"},
      {"nan", "1", "infinite and undefined"},
      {"1e999 m", "m", "too large or too small"},
      {"1e-999 m", "m", "too large or too small"},
      {"+-5 m", "m", "one sign"},
      {"--5 m", "m", "begins with a number"},
      {"0x10 mm", "m", "not a known unit"},
      {"5 mm;", "m", "';' cannot stand in a unit"},
      {"5 m\u00e9", "m", "outside ASCII"},
  }));
  CAPTURE(row.text, row.expected);
  CHECK_THROWS_WITH(parse_quantity(row.text, row.expected), Contains(row.phrase) && Contains("needed:"));
}

TEST_CASE("quantity: the message has what is needed and a hint apart", "[errors]") {
  try {
    (void)parse_quantity("5 kkg", "kg");
    FAIL("accepted");
  } catch (const QuantityProblem& problem) {
    CHECK(problem.needed == "a mass, such as \"8 g\"");
    CHECK(problem.hint == "'kkg' is not a known unit; the nearest known one is 'kg'");
  }
}

TEST_CASE("quantity: from SI and back is the identity", "[units]") {
  const std::string unit = GENERATE("mm", "deg", "degC", "N·mm/deg", "rpm", "g·cm²", "%", "kPa", "");
  const double si = GENERATE(0.0, 1.0, -273.15, 1e-6);
  CAPTURE(unit, si);
  const double shown = from_si(si, unit);
  CHECK(parse_any_quantity(std::to_string(0) + (unit.empty() ? "" : " ") + unit).unit == unit);
  const double zero = parse_any_quantity("0 " + unit).si, one = parse_any_quantity("1 " + unit).si;
  // Both directions are affine in the number: si = zero + (one − zero) shown, to a few roundings of the
  // offset.
  CHECK(std::abs(zero + (one - zero) * shown - si) <= 1e-12 * (std::abs(si) + std::abs(zero)));
}

TEST_CASE("quantity: from SI gives the usual numbers", "[units]") {
  CHECK_THAT(from_si(std::numbers::pi / 6, "deg"), WithinRel(30.0, 1e-14));
  CHECK_THAT(from_si(298.15, "degC"), WithinRel(25.0, 1e-12));
  CHECK_THAT(from_si(0.12, "%"), WithinRel(12.0, 1e-14));
  CHECK(from_si(3.5, "1") == 3.5);
  CHECK_THROWS_AS(from_si(1, "furlong"), InvalidInput);
}

TEST_CASE("quantity: any dimension is read when none is expected", "[units]") {
  CHECK_THAT(parse_any_quantity("5 mN").si, WithinRel(5e-3, 1e-14));
  CHECK(parse_any_quantity("0.5").si == 0.5);
  CHECK_THROWS_WITH(parse_any_quantity("5 kkg"), Contains("not a known unit"));
}

TEST_CASE("quantity: same dimension does not take reciprocals", "[units]") {
  CHECK(same_dimension("mm/N", "m/N"));
  CHECK_FALSE(same_dimension("mm/N", "N/m"));
  CHECK_FALSE(same_dimension("N·m", "N·m/rad"));
  CHECK_FALSE(same_dimension("1", "rad"));
  CHECK(same_dimension("%", "1"));
  CHECK(same_dimension("", "1"));
  CHECK_FALSE(same_dimension("furlong", "m"));
}

TEST_CASE("quantity: every listed unit reads, and no prefix binds to another name", "[units]") {
  for (const KnownUnit& unit : known_units()) {
    CAPTURE(unit.name);
    CHECK_NOTHROW(parse_any_quantity("1 " + unit.name));
    CHECK_THROWS_AS(parse_any_quantity("1 T" + unit.name), InvalidInput);
  }
}

TEST_CASE("quantity: many threads read at once", "[threads]") {
  std::vector<std::thread> threads;
  std::vector<int> wrong(8, 0);
  for (int t = 0; t < 8; ++t)
    threads.emplace_back([t, &wrong] {
      for (int i = 0; i < 2000; ++i)
        if (std::abs(parse_quantity("5 N·mm/deg", "N·m/rad").si - 5e-3 * 180 / std::numbers::pi) > 1e-12)
          ++wrong[t];
    });
  for (std::thread& thread : threads) thread.join();
  CHECK(wrong == std::vector<int>(8, 0));
}

TEST_CASE("quantity: to SI and back, whatever the unit", "[quantity]") {
  CHECK(to_si(2.5, "mm") == Approx(0.0025));
  CHECK(to_si(30, "deg") == Approx(0.5235987756));
  CHECK(to_si(25, "degC") == Approx(298.15));
  CHECK(to_si(3, "1") == 3);
  for (const char* unit : {"m", "rad", "N m", "Pa", "K", "J", "rad/s", "N", "A", "s", "m3"}) {
    CAPTURE(unit);
    CHECK(to_si(from_si(0.7, display_unit(unit)), display_unit(unit)) == Approx(0.7));
  }
  CHECK(display_unit("N m") == "N·mm");
  CHECK(display_unit("A") == "A");
}
