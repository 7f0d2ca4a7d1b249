#pragma once

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include <catch2/catch.hpp>

/// Comparison of a number of ours with one from outside. Each is also written as one line of a table, tab
/// between the columns, to the file that the environment variable SINEWRIGHT_VALIDATION names (appended;
/// docs/validation.md is made from it): test, quantity, unit, reference, ours, error, tolerance, kind of
/// tolerance, source.
namespace sinewright::external {

/// Where a reference value comes from, and how close ours must be.
struct Outside {
  std::string source;
  double tolerance = 0;
};

namespace detail {

inline void record(const std::string& quantity, const std::string& unit, double reference, double ours,
                   double error, double tolerance, const char* kind, const std::string& source) {
  const char* path = std::getenv("SINEWRIGHT_VALIDATION");
  if (path == nullptr) return;
  std::FILE* file = std::fopen(path, "a");
  if (file == nullptr) {
    FAIL_CHECK("cannot write to " << path);
    return;
  }
  std::fprintf(file, "%s\t%s\t%s\t%.13g\t%.13g\t%.2g\t%.2g\t%s\t%s\n",
               Catch::getResultCapture().getCurrentTestName().c_str(), quantity.c_str(), unit.c_str(),
               reference, ours, error, tolerance, kind, source.c_str());
  std::fclose(file);
}

}  // namespace detail

/// Requires |ours − reference| <= tolerance · |reference|.
inline void check_relative(const std::string& quantity, const std::string& unit, double ours,
                           double reference, const Outside& outside) {
  INFO(quantity << " [" << unit << "], " << outside.source);
  // WithinRel would scale by the larger of both numbers, and take a failing 0.
  const double error = std::abs(ours - reference) / std::abs(reference);
  CAPTURE(ours, reference, outside.tolerance);
  CHECK(error <= outside.tolerance);
  detail::record(quantity, unit, reference, ours, error, outside.tolerance, "relative", outside.source);
}

/// Requires |ours − reference| <= tolerance, in the quantity's own unit.
inline void check_absolute(const std::string& quantity, const std::string& unit, double ours,
                           double reference, const Outside& outside) {
  INFO(quantity << " [" << unit << "], " << outside.source);
  const double error = std::abs(ours - reference);
  CAPTURE(ours, reference, outside.tolerance);
  CHECK(error <= outside.tolerance);
  detail::record(quantity, unit, reference, ours, error, outside.tolerance, "absolute", outside.source);
}

}  // namespace sinewright::external
