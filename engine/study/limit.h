#pragma once

#include <functional>
#include <string>
#include <vector>

#include "model/limit.h"
#include "reading/reading.h"
#include "study/ramp.h"
#include "study/search.h"

namespace sinewright::study {

/// What the answers go over: the axes of the map, and the directions if there are any.
struct ResultAxis {
  std::string name;
  std::vector<std::string> labels;
};

/// One variant: which value of each axis, and its limit.
struct Point {
  std::vector<std::size_t> place;      ///< index into the labels of each axis; empty without any
  std::vector<std::string> overrides;  ///< what the axes set
  Answer answer;
};

struct LimitResult {
  std::string quantity;  ///< what the limit is one of: "force of pull", or a key
  std::string unit;      ///< of every answer's value and error; empty: none
  std::vector<ResultAxis> axes;
  std::vector<Point> points;  ///< the last axis varies fastest
};

/// The point with the least answer; null: none was found.
[[nodiscard]] const Point* least(const LimitResult& result);

/// Does what a limit file asks. The result does not depend on the number of threads, to the bit.
/// @param overrides  from the command line, for the scenario ("model.…" reaches the model); they come last.
/// @param progress   called with the number of runs done so far, from any thread, one at a time.
/// @throws InvalidInput where a file, a value or a name does not fit.
[[nodiscard]] LimitResult find_limit(reading::Source& source, const model::LimitStudy& study,
                                     const std::vector<std::string>& overrides = {}, int threads = 0,
                                     const std::function<void(int runs)>& progress = {});

}  // namespace sinewright::study
