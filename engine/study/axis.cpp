#include "study/axis.h"

#include <cmath>

#include <fmt/format.h>

#include "strength/iso_286.h"

namespace sinewright::study {

namespace {

[[noreturn]] void refuse(const model::Variable& variable, const std::string& what, const std::string& needed) {
  throw InvalidInput(fmt::format("{}:{}:{}: {}: {}\n  needed: {}", variable.place.file, variable.place.line, variable.place.column,
                                 variable.name, what, needed));
}

Distribution between(const model::Variable& variable, double low, double high) {
  const double middle = 0.5 * (low + high);
  switch (variable.law) {
    case model::Law::uniform: return Uniform{low, high};
    case model::Law::triangular: return Triangular{low, middle, high};
    case model::Law::normal: break;
  }
  return TruncatedNormal{middle, 0.5 * (high - low) / variable.sigmas, low, high};
}

}  // namespace

Axis resolve(const model::Variable& variable, const std::function<Quantity(const std::string&)>& nominal) {
  Axis axis{variable, {}, false};
  std::string& unit = axis.variable.unit;
  if (const auto* options = std::get_if<model::Options>(&variable.spread)) {
    Choices choices;
    for (std::size_t i = 0; i < options->names.size(); ++i) choices.values.push_back(static_cast<double>(i));
    axis.distribution = choices;
  } else if (const auto* range = std::get_if<model::Between>(&variable.spread)) {
    axis.logarithmic = range->logarithmic;
    axis.distribution = range->logarithmic ? between(variable, std::log(range->low), std::log(range->high))
                                           : between(variable, range->low, range->high);
  } else if (const auto* around = std::get_if<model::Around>(&variable.spread)) {
    const Quantity written = nominal(variable.keys.front());
    if (around->relative) {
      unit = written.unit;
      const double value = from_si(written.si, unit), half = around->half * std::abs(value);
      if (half == 0) refuse(variable, "the files give 0, of which a share is nothing", "'plus_minus' as a number with its unit");
      axis.distribution = between(variable, value - half, value + half);
    } else {
      if (!same_dimension(written.unit, unit))
        refuse(variable, fmt::format("plus_minus is given in '{}', the files give '{}'", unit, written.unit), "the same dimension");
      const double value = from_si(written.si, unit);
      axis.distribution = between(variable, value - around->half, value + around->half);
    }
  } else if (const auto* iso = std::get_if<model::IsoClass>(&variable.spread)) {
    const Quantity written = nominal(variable.keys.front());
    if (!same_dimension(written.unit, "m")) refuse(variable, fmt::format("an ISO 286 class on a value in '{}'", written.unit), "a length");
    unit = written.unit;
    const strength::SizeLimits limits = strength::iso_limits(written.si, iso->name);
    axis.distribution = between(variable, from_si(limits.lower, unit), from_si(limits.upper, unit));
  } else if (const auto* normal = std::get_if<model::MeanAndDeviation>(&variable.spread)) {
    axis.distribution = Normal{normal->mean, normal->deviation};
  } else {
    axis.distribution = measured(std::get<model::Measured>(variable.spread).values);
  }
  check(axis.distribution);
  return axis;
}

double value_at(const Axis& axis, double u) {
  const double value = quantile(axis.distribution, u);
  return axis.logarithmic ? std::exp(value) : value;
}

std::vector<double> grid_values(const Axis& axis) {
  std::vector<double> values;
  if (const auto* options = axis.options()) {
    for (std::size_t i = 0; i < options->names.size(); ++i) values.push_back(static_cast<double>(i));
    return values;
  }
  const auto* range = std::get_if<model::Between>(&axis.variable.spread);
  if (range == nullptr) refuse(axis.variable, "a grid has no steps for this", "'from' and 'to', 'values' or 'options'");
  for (int i = 0; i < range->steps; ++i) {
    const double share = static_cast<double>(i) / (range->steps - 1);
    values.push_back(range->logarithmic ? range->low * std::pow(range->high / range->low, share)
                                        : range->low + share * (range->high - range->low));
  }
  values.back() = range->high;
  return values;
}

SearchVariable search_variable(const Axis& axis) {
  if (const auto* options = axis.options()) {
    // A list of values is written in some order; named options are not.
    if (axis.variable.ordered) return OrderedChoice{options->names.size()};
    return FreeChoice{options->names.size()};
  }
  const auto* range = std::get_if<model::Between>(&axis.variable.spread);
  if (range == nullptr) refuse(axis.variable, "an optimiser cannot choose this", "'from' and 'to', 'values' or 'options'");
  return axis.logarithmic ? Range{std::log(range->low), std::log(range->high)} : Range{range->low, range->high};
}

double from_search(const Axis& axis, double number) {
  return axis.logarithmic ? std::exp(number) : number;
}

std::string shown(const Axis& axis, double value) {
  if (std::isnan(value)) return "—";
  if (const auto* options = axis.options()) return options->names.at(static_cast<std::size_t>(value));
  return fmt::format("{:.5g}{}{}", value, axis.variable.unit.empty() ? "" : " ", axis.variable.unit);
}

}  // namespace sinewright::study
