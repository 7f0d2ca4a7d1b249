#include "quantity/quantity.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <memory>
#include <mutex>
#include <optional>

#include <fmt/format.h>
#include <udunits2.h>

#include "quantity/nearest.h"

namespace sinewright {
namespace {

struct UnitRow {
  const char* name;
  const char* definition;  // in units of earlier rows, with a leading factor; empty: a base unit
};

// The complete list: a name that is not here is refused. Prefixes are spelled out instead of registered with
// the library, which would bind them to everything ("kkg", "mmin", "cdegC"). The radian is a base unit, so
// that a torsional stiffness is no torque. Each row uses rows above it only.
constexpr std::array kUnits = {
    UnitRow{"m", ""}, UnitRow{"kg", ""}, UnitRow{"s", ""}, UnitRow{"A", ""}, UnitRow{"K", ""},
    UnitRow{"rad", ""},
    // length
    UnitRow{"km", "1000 m"}, UnitRow{"cm", "0.01 m"}, UnitRow{"mm", "0.001 m"}, UnitRow{"um", "1e-6 m"},
    UnitRow{"nm", "1e-9 m"},
    // mass
    UnitRow{"g", "0.001 kg"}, UnitRow{"mg", "1e-6 kg"},
    // time and frequency
    UnitRow{"ms", "0.001 s"}, UnitRow{"us", "1e-6 s"}, UnitRow{"min", "60 s"}, UnitRow{"h", "3600 s"},
    UnitRow{"Hz", "1 s-1"}, UnitRow{"kHz", "1000 s-1"},
    // angle and turning rate
    UnitRow{"mrad", "0.001 rad"}, UnitRow{"deg", "0.017453292519943295 rad"},
    UnitRow{"rev", "6.283185307179586 rad"}, UnitRow{"rpm", "0.10471975511965977 rad/s"},
    // force, pressure, energy, power
    UnitRow{"N", "1 kg.m.s-2"}, UnitRow{"kN", "1000 N"}, UnitRow{"mN", "0.001 N"}, UnitRow{"uN", "1e-6 N"},
    UnitRow{"Pa", "1 N.m-2"}, UnitRow{"kPa", "1000 Pa"}, UnitRow{"MPa", "1e6 Pa"}, UnitRow{"GPa", "1e9 Pa"},
    UnitRow{"bar", "1e5 Pa"}, UnitRow{"J", "1 N.m"}, UnitRow{"kJ", "1000 J"}, UnitRow{"mJ", "0.001 J"},
    UnitRow{"uJ", "1e-6 J"}, UnitRow{"W", "1 J/s"}, UnitRow{"kW", "1000 W"}, UnitRow{"mW", "0.001 W"},
    // electricity
    UnitRow{"mA", "0.001 A"}, UnitRow{"uA", "1e-6 A"}, UnitRow{"V", "1 W/A"}, UnitRow{"kV", "1000 V"},
    UnitRow{"mV", "0.001 V"}, UnitRow{"Ohm", "1 V/A"}, UnitRow{"kOhm", "1000 Ohm"}, UnitRow{"MOhm", "1e6 Ohm"},
    UnitRow{"mOhm", "0.001 Ohm"}, UnitRow{"H", "1 V.s/A"}, UnitRow{"mH", "0.001 H"}, UnitRow{"uH", "1e-6 H"},
    // temperature on the Celsius scale; differences are in K
    UnitRow{"degC", "K @ 273.15"},
    // a share of one
    UnitRow{"percent", "0.01"}};

struct DimensionRow {
  const char* unit;
  const char* words;
};

constexpr std::array kDimensions = {
    DimensionRow{"1", "a plain number, such as 0.12 (or \"12 %\")"},
    DimensionRow{"m", "a length, such as \"5 mm\""},
    DimensionRow{"m2", "an area, such as \"3 mm²\""},
    DimensionRow{"kg", "a mass, such as \"8 g\""},
    DimensionRow{"s", "a time, such as \"20 ms\""},
    DimensionRow{"Hz", "a frequency, such as \"50 Hz\""},
    DimensionRow{"A", "a current, such as \"0.5 A\""},
    DimensionRow{"K", "a temperature, such as \"23 degC\" or \"296 K\""},
    DimensionRow{"rad", "an angle, such as \"30 deg\""},
    DimensionRow{"rad/s", "a turning rate, such as \"60 rpm\" or \"6 rad/s\""},
    DimensionRow{"rad/s2", "an angular acceleration, such as \"6000 deg/s²\""},
    DimensionRow{"m/s", "a speed, such as \"20 mm/s\""},
    DimensionRow{"m/s2", "an acceleration, such as \"-9.81 m/s²\""},
    DimensionRow{"N", "a force, such as \"5 N\""},
    DimensionRow{"N/m", "a force per length (stiffness, line load), such as \"12 N/m\""},
    DimensionRow{"N.m", "a torque, such as \"20 N·mm\""},
    DimensionRow{"N.m/rad", "a torsional stiffness, such as \"20 N·m/rad\""},
    DimensionRow{"N.m.s/rad", "a rotary viscous coefficient, such as \"1e-6 N·m·s/rad\""},
    DimensionRow{"s/rad", "a damping per turning rate, such as \"0.01 s/rad\""},
    DimensionRow{"s/m", "a damping per speed, such as \"0.5 s/m\""},
    DimensionRow{"Pa", "a stress or modulus, such as \"1700 MPa\""},
    DimensionRow{"kg/m3", "a density, such as \"0.93 g/cm³\""},
    DimensionRow{"kg.m2", "a moment of inertia, such as \"2 g·cm²\""},
    DimensionRow{"A.s", "an electric charge, such as \"450 mA·h\""},
    DimensionRow{"V", "a voltage, such as \"6 V\""},
    DimensionRow{"V/rad", "a gain, such as \"4 V/rad\""},
    DimensionRow{"V.s/rad", "a damping gain, such as \"0.05 V·s/rad\""},
    DimensionRow{"V/rad.s-1", "a gain per time, such as \"20 V/rad/s\""},
    DimensionRow{"A/rad", "a gain, such as \"0.5 A/rad\""},
    DimensionRow{"A.s/rad", "a gain, such as \"0.01 A·s/rad\""},
    DimensionRow{"A/rad.s-1", "a gain per time, such as \"5 A/rad/s\""},
    DimensionRow{"Ohm.s-1", "a gain per time, such as \"2000 V/A/s\""},
    DimensionRow{"s-2", "a gain per time, such as \"40 1/s²\""},
    DimensionRow{"Ohm", "a resistance, such as \"9 Ohm\""},
    DimensionRow{"N.m/A", "a torque constant, such as \"2.4 mN·m/A\""},
    DimensionRow{"K-1", "a share per temperature difference, such as \"0.0039 1/K\""},
    DimensionRow{"m-1", "a number per length, such as \"0.12 1/m\""},
    DimensionRow{"m-3", "a number per volume, such as \"0.4 1/cm³\""},
    DimensionRow{"K/W", "a thermal resistance, such as \"20 K/W\""},
    DimensionRow{"J/K", "a heat capacity, such as \"1.2 J/K\""}};

struct UnitFree {
  void operator()(ut_unit* unit) const { ut_free(unit); }
};
using UnitPtr = std::unique_ptr<ut_unit, UnitFree>;

struct ConverterFree {
  void operator()(cv_converter* converter) const { cv_free(converter); }
};
using ConverterPtr = std::unique_ptr<cv_converter, ConverterFree>;

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
}

// The many ways to write a unit, turned into the ASCII that the library is given.
std::string to_ascii(std::string_view unit) {
  std::string text(unit);
  if (std::all_of(text.begin(), text.end(), [](char c) { return (c & 0x80) == 0 && c != '%' && c != '*'; })) return text;
  replace_all(text, "°C", "degC");
  replace_all(text, "°", "deg");
  replace_all(text, "%", "percent");
  replace_all(text, "\u03a9", "Ohm");  // Greek capital omega
  replace_all(text, "\u2126", "Ohm");  // ohm sign
  replace_all(text, "\u00b5", "u");    // micro sign
  replace_all(text, "\u03bc", "u");    // Greek small mu
  replace_all(text, "·", ".");
  replace_all(text, "⋅", ".");
  replace_all(text, "*", ".");
  replace_all(text, "⁻¹", "^-1");
  replace_all(text, "⁻²", "^-2");
  replace_all(text, "⁻³", "^-3");
  replace_all(text, "²", "^2");
  replace_all(text, "³", "^3");
  return text;
}

// The first name in a unit text that is not known, or what else is wrong; empty when the text may go to the
// library. Refuses what the library would misread: numbers inside ("25 degC" as 25 K), '@', 'since',
// fractions as powers.
struct UnitSyntax {
  std::string unknown;   // a name that is not in the list
  std::string wrong;     // another fault
  bool several = false;  // more than one name or a power
  bool celsius = false;
};

UnitSyntax check_syntax(const std::string& text) {
  UnitSyntax found;
  int names = 0;
  bool wants_name = true;  // at the start, after an operator or an opening bracket
  for (std::size_t i = 0; i < text.size();) {
    const char c = text[i];
    if (is_letter(c)) {
      std::size_t end = i;
      while (end < text.size() && is_letter(text[end])) ++end;
      const std::string name = text.substr(i, end - i);
      const bool known =
          std::any_of(kUnits.begin(), kUnits.end(), [&](const UnitRow& row) { return name == row.name; });
      if (!known) {
        found.unknown = name;
        return found;
      }
      ++names;
      found.celsius = found.celsius || name == "degC";
      i = end;
      std::size_t power = i;  // an integer power follows as m2, m^2, m-2 or m^-2
      if (power < text.size() && text[power] == '^') ++power;
      if (power < text.size() && text[power] == '-') ++power;
      std::size_t digits = power;
      while (digits < text.size() && is_digit(text[digits])) ++digits;
      if (digits > power) {
        if (digits - power > 1) found.wrong = "a power may have one digit";
        found.several = true;
      } else if (power > i) {
        found.wrong = fmt::format("'{}' is not followed by a power", text.substr(i, power - i));
      }
      if (!found.wrong.empty()) return found;
      i = digits;
      wants_name = false;
      continue;
    }
    if (c == ' ') {
      ++i;
    } else if (c == '.' || c == '/') {
      if (wants_name) {
        found.wrong = fmt::format("'{}' stands where a unit name belongs", c);
        return found;
      }
      wants_name = true;
      ++i;
    } else if (c == '1' && i == 0 && text.find('/') == 1) {
      wants_name = false;  // 1/K
      ++i;
    } else if (c == '(' && wants_name) {
      ++i;
    } else if (c == ')' && !wants_name) {
      ++i;
    } else {
      found.wrong = is_digit(c) ? "a number stands inside the unit"
                                : fmt::format("'{}' cannot stand in a unit",
                                              (c & 0x80) != 0 ? std::string("a character outside ASCII")
                                                              : std::string(1, c));
      return found;
    }
  }
  if (wants_name && !text.empty()) found.wrong = "the unit ends where a name belongs";
  found.several = found.several || names > 1 || text.find('/') != std::string::npos;
  return found;
}

// The unit library with our own list. It is not thread-safe, so every call holds the mutex; built on first
// use and kept for the life of the process, because building costs as much as hundreds of conversions.
class UnitLibrary {
 public:
  static UnitLibrary& get() {
    static UnitLibrary library;
    return library;
  }

  UnitLibrary(const UnitLibrary&) = delete;
  UnitLibrary& operator=(const UnitLibrary&) = delete;

  ~UnitLibrary() { ut_free_system(system_); }

  // SI value of `number` in `unit` (ASCII, checked), or nothing if the dimension is not that of `expected`.
  std::optional<double> convert(double number, const std::string& unit, const std::string& expected) {
    const std::lock_guard lock(mutex_);
    // A model has some hundred quantities in a dozen units, and a study reads it again and again.
    const auto pair = std::make_pair(unit, expected);
    auto found = converters_.find(pair);
    if (found == converters_.end()) {
      constexpr std::size_t most = 1000;  // of texts without end, such as a fuzzer's, not all are kept
      if (converters_.size() >= most) converters_.clear();
      const UnitPtr from = parse(unit), to = parse(expected);
      const bool fits = from && to && same(from.get(), to.get());
      found = converters_.emplace(pair, fits ? ut_get_converter(from.get(), to.get()) : nullptr).first;
    }
    if (!found->second) return std::nullopt;
    return cv_convert_double(found->second.get(), number);
  }

  std::optional<double> to_coherent(double number, const std::string& unit) {
    const std::lock_guard lock(mutex_);
    const UnitPtr from = parse(unit);
    if (!from) return std::nullopt;
    const UnitPtr si = coherent(from.get());
    return convert(number, from.get(), si.get());
  }

  std::optional<double> from_coherent(double si_value, const std::string& unit) {
    const std::lock_guard lock(mutex_);
    const UnitPtr to = parse(unit);
    if (!to) return std::nullopt;
    const UnitPtr si = coherent(to.get());
    return convert(si_value, si.get(), to.get());
  }

  bool same(const std::string& a, const std::string& b) {
    const std::lock_guard lock(mutex_);
    const UnitPtr one = parse(a), other = parse(b);
    return one && other && same(one.get(), other.get());
  }

 private:
  UnitLibrary() {
    ut_set_error_message_handler(ut_ignore);
    system_ = ut_new_system();
    for (const UnitRow& row : kUnits) {
      const std::string definition = row.definition;
      const UnitPtr unit(definition.empty() ? ut_new_base_unit(system_)
                                            : ut_parse(system_, definition.c_str(), UT_ASCII));
      // As symbols, because names are taken without regard to case, where "h" and "H" are one.
      if (!unit || ut_map_symbol_to_unit(row.name, UT_ASCII, unit.get()) != UT_SUCCESS)
        throw std::logic_error(fmt::format("the list of units has a bad row: {}", row.name));
    }
  }

  // A syntax error gives a null pointer with status "success": only the pointer tells.
  UnitPtr parse(const std::string& text) {
    if (text.empty() || text == "1") return UnitPtr(ut_get_dimensionless_unit_one(system_));
    return UnitPtr(ut_parse(system_, text.c_str(), UT_ASCII));
  }

  // The library calls reciprocals convertible; we do not.
  static bool same(const ut_unit* a, const ut_unit* b) {
    if (ut_are_convertible(a, b) == 0) return false;
    const UnitPtr quotient(ut_divide(a, b));
    return quotient && ut_is_dimensionless(quotient.get()) != 0;
  }

  static std::optional<double> convert(double number, ut_unit* from, ut_unit* to) {
    const ConverterPtr converter(ut_get_converter(from, to));
    if (!converter) return std::nullopt;
    return cv_convert_double(converter.get(), number);
  }

  // The product of base units that a unit is a multiple of.
  static UnitPtr coherent(const ut_unit* unit) {
    struct Found {
      ut_unit* unit = nullptr;
    } found;
    ut_visitor visitor{};
    visitor.visit_basic = [](const ut_unit* u, void* out) {
      static_cast<Found*>(out)->unit = ut_clone(u);
      return UT_SUCCESS;
    };
    visitor.visit_product = [](const ut_unit* u, int, const ut_unit* const*, const int*, void* out) {
      static_cast<Found*>(out)->unit = ut_clone(u);
      return UT_SUCCESS;
    };
    visitor.visit_galilean = [](const ut_unit*, double, const ut_unit* underlying, double, void* out) {
      static_cast<Found*>(out)->unit = ut_clone(underlying);
      return UT_SUCCESS;
    };
    visitor.visit_timestamp = [](const ut_unit*, const ut_unit*, double, void*) { return UT_BAD_ARG; };
    visitor.visit_logarithmic = [](const ut_unit*, double, const ut_unit*, void*) { return UT_BAD_ARG; };
    ut_accept_visitor(unit, &visitor, &found);
    return UnitPtr(found.unit);
  }

  ut_system* system_ = nullptr;
  std::map<std::pair<std::string, std::string>, ConverterPtr> converters_;  // null: of another dimension, or unreadable
  std::mutex mutex_;
};

std::string_view trim(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

struct Split {
  double number = 0;
  std::string_view unit;
};

// Splits the number off by ourselves; the unit library must never see it.
Split split_number(std::string_view text, const std::string& needed) {
  const auto fail = [&](std::string hint) -> QuantityProblem {
    return QuantityProblem(std::string(text), needed, std::move(hint));
  };
  const std::string_view all = trim(text);
  if (all.empty()) throw fail("there is no number here");
  std::string_view rest = all;
  if (rest.front() == '+') {
    rest.remove_prefix(1);
    if (rest.empty() || rest.front() == '-' || rest.front() == '+') throw fail("one sign is enough");
  }
  Split split;
  const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), split.number);
  if (error == std::errc::result_out_of_range) throw fail("the number is too large or too small to be held");
  if (error != std::errc{}) throw fail("a quantity begins with a number");
  if (!std::isfinite(split.number)) throw fail("infinite and undefined numbers are not accepted");
  const std::string_view after = rest.substr(static_cast<std::size_t>(end - rest.data()));
  if (after.size() > 1 && after[0] == ',' && is_digit(after[1])) throw fail("write a point as decimal sign");
  split.unit = trim(after);
  return split;
}

std::string read_unit(std::string_view written, std::string_view text, const std::string& needed) {
  const std::string ascii = to_ascii(written);
  const UnitSyntax syntax = check_syntax(ascii);
  const auto fail = [&](std::string hint) -> QuantityProblem {
    return QuantityProblem(std::string(text), needed, std::move(hint));
  };
  if (!syntax.unknown.empty()) {
    std::vector<std::string> names;
    for (const UnitRow& row : kUnits) names.emplace_back(row.name);
    const std::string near = nearest(syntax.unknown, names, 2);
    throw fail(
        fmt::format("'{}' is not a known unit{}", syntax.unknown,
                    near.empty() ? std::string() : fmt::format("; the nearest known one is '{}'", near)));
  }
  if (!syntax.wrong.empty())
    throw fail(fmt::format("the unit '{}' cannot be read: {}", written, syntax.wrong));
  if (syntax.celsius && syntax.several)
    throw fail("degC is a point on a scale and cannot be part of another unit: write K for a difference");
  return ascii;
}

}  // namespace

QuantityProblem::QuantityProblem(const std::string& text, std::string needed_text, std::string hint_text)
    : InvalidInput(
          fmt::format("\"{}\" is not allowed\n  needed: {}\n  hint:   {}", text, needed_text, hint_text)),
      needed(std::move(needed_text)),
      hint(std::move(hint_text)) {}

Quantity parse_quantity(std::string_view text, std::string_view expected) {
  const std::string needed = describe_dimension(expected);
  const Split split = split_number(text, needed);
  const std::string wanted = to_ascii(expected);
  if (split.unit.empty() && wanted != "1")
    throw QuantityProblem(std::string(text), needed, "the unit is missing");
  const std::string unit = read_unit(split.unit, text, needed);
  const std::optional<double> si = UnitLibrary::get().convert(split.number, unit, wanted);
  if (!si) {
    const bool readable = UnitLibrary::get().to_coherent(1, unit).has_value();
    throw QuantityProblem(
        std::string(text), needed,
        readable ? fmt::format("'{}' measures something else: {}", split.unit, describe_dimension(unit))
                 : fmt::format("the unit '{}' cannot be read", split.unit));
  }
  return {*si, std::string(split.unit)};
}

Quantity parse_any_quantity(std::string_view text) {
  const std::string needed = "a number with its unit, such as \"5 N\"";
  const Split split = split_number(text, needed);
  const std::string unit = read_unit(split.unit, text, needed);
  const std::optional<double> si = UnitLibrary::get().to_coherent(split.number, unit);
  if (!si)
    throw QuantityProblem(std::string(text), needed, fmt::format("the unit '{}' cannot be read", split.unit));
  return {*si, std::string(split.unit)};
}

double from_si(double si, std::string_view unit) {
  const std::string needed = "a unit, such as \"mm\"";
  const std::string ascii = unit == "1" ? std::string() : read_unit(trim(unit), unit, needed);
  const std::optional<double> value = UnitLibrary::get().from_coherent(si, ascii);
  if (!value) throw QuantityProblem(std::string(unit), needed, "this unit cannot be read");
  return *value;
}

double to_si(double value, std::string_view unit) {
  return parse_any_quantity(unit == "1" ? fmt::format("{}", value) : fmt::format("{} {}", value, unit)).si;
}

std::string display_unit(std::string_view si_unit) {
  static constexpr std::array<std::array<std::string_view, 2>, 10> kShown = {{{"m", "mm"}, {"rad", "deg"}, {"rad/s", "deg/s"}, {"m/s", "mm/s"}, {"N m", "N·mm"},
                                                                              {"N.m", "N·mm"}, {"Pa", "MPa"}, {"J", "mJ"}, {"K", "degC"}, {"m3", "mm3"}}};
  for (const auto& [from, to] : kShown)
    if (from == si_unit) return std::string(to);
  return std::string(si_unit);
}

bool same_dimension(std::string_view unit, std::string_view expected) {
  const auto readable = [](const std::string& text) {
    if (text.empty() || text == "1") return true;
    const UnitSyntax syntax = check_syntax(text);
    return syntax.unknown.empty() && syntax.wrong.empty() && !(syntax.celsius && syntax.several);
  };
  const std::string a = to_ascii(trim(unit)), b = to_ascii(trim(expected));
  return readable(a) && readable(b) && UnitLibrary::get().same(a, b);
}

std::string si_unit(std::string_view unit) {
  for (const DimensionRow& row : kDimensions)
    if (same_dimension(unit, row.unit)) return row.unit;
  return fmt::format("SI of {}", unit);
}

std::string describe_dimension(std::string_view unit) {
  const std::string ascii = to_ascii(unit);
  for (const DimensionRow& row : kDimensions)
    if (ascii == row.unit) return row.words;  // the usual case, without the library
  for (const DimensionRow& row : kDimensions)
    if (same_dimension(unit, row.unit)) return row.words;
  return fmt::format("a quantity in {} or a multiple", unit);
}

std::vector<KnownUnit> known_units() {
  std::vector<KnownUnit> rows;
  for (const UnitRow& row : kUnits) rows.push_back({row.name, row.definition});
  return rows;
}

}  // namespace sinewright
