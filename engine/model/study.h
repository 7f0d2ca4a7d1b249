#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/fit.h"
#include "model/scenario.h"
#include "quantity/invalid_input.h"

namespace sinewright::model {

/// Named ways of which one is taken; each sets what it sets.
struct Options {
  std::vector<std::string> names;
  std::vector<std::vector<std::string>> changes;  ///< per name: "key.path=value" each
};

/// How a number is distributed between its limits.
enum class Law { uniform, normal, triangular };

/// From one number to another. In the variable's unit, as all numbers here.
struct Between {
  double low = 0, high = 0;
  bool logarithmic = false;
  int steps = 5;  ///< of a grid
};
/// Round the value that the files give.
struct Around {
  double half = 0;        ///< what it may differ either way
  bool relative = false;  ///< `half` is a share of the value
};
/// A normal distribution without limits.
struct MeanAndDeviation {
  double mean = 0, deviation = 0;
};
/// As measured; the distribution is that of the list.
struct Measured {
  std::vector<double> values;
};
/// An IsoClass stands round the value that the files give, as its nominal size.
using Spread = std::variant<Options, Between, Around, IsoClass, MeanAndDeviation, Measured>;

/// One thing that a study varies.
struct Variable {
  std::string name;
  std::vector<std::string> keys;  ///< all get the same value; "model.…" in all runs, "<run>.…" in one; empty for options
  std::string unit;               ///< of every number of the spread, as written; empty: none. Around and IsoClass: the file's own
  Spread spread;
  bool ordered = false;           ///< options that stand in an order, such as ratios; by that a search can go up and down
  Law law = Law::uniform;         ///< of Between, Around and IsoClass
  double sigmas = 3;              ///< of a normal law: limits lie at mean ± sigmas × deviation, and nothing lies beyond them
  std::string group;              ///< whose members are correlated; empty: independent
  Place place;
};

/// Where the points of a study are put.
enum class Points { random, sobol, latin_hypercube };

struct GridStudy {};
struct SampleStudy {
  Points points = Points::sobol;
  int runs = 0;
  unsigned long long seed = 1;
};
/// What share of the made things meets the requirements.
struct ToleranceStudy {
  Points points = Points::random;  ///< the intervals of a yield are those of independent points
  int runs = 0;
  unsigned long long seed = 1;
  double confidence = 0.95;
};
/// Variance-based indices.
struct SensitivityStudy {
  int base = 0;  ///< rows of the base sample; the study makes base × (variables + 2) designs
  unsigned long long seed = 1;
  double confidence = 0.95;
};
/// Elementary effects.
struct ScreeningStudy {
  int paths = 0;
  int levels = 4;
  unsigned long long seed = 1;
};
struct Goal {
  std::string outcome;
  bool maximise = false;
};
/// The best design found is made with tolerances.
struct Robustness {
  ToleranceStudy sample;
  std::vector<Variable> vary;
};
struct OptimiseStudy {
  std::vector<Goal> goals;  ///< one, or several for a Pareto front
  int runs = 0;             ///< at most
  unsigned long long seed = 1;
  std::optional<Robustness> robustness;
};
using StudyKind = std::variant<GridStudy, SampleStudy, ToleranceStudy, SensitivityStudy, ScreeningStudy, OptimiseStudy>;

/// A scenario that every design goes through, or a limit that is found for it.
struct StudyRun {
  std::string name;
  std::string scenario;             ///< path; empty: a limit
  std::string limit;                ///< path
  std::vector<std::string> change;  ///< as --set
};

/// Many designs, each put through the same runs.
struct Study {
  std::string name;
  std::string about;
  std::vector<StudyRun> runs;
  std::vector<Variable> vary;
  std::vector<std::pair<std::string, double>> groups;  ///< correlation between any two variables of a group
  std::vector<std::string> outcomes;                   ///< "<run>.<key of the summary>", "<run>" of a limit, or "cost"
  std::vector<Requirement> requirements;               ///< on outcomes, beside those that the scenarios state
  StudyKind kind;
  Place place;           ///< of the kind's key, for messages
  Place outcomes_place;  ///< of 'outcomes', or of the kind's key
};

}  // namespace sinewright::model
