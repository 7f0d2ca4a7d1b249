#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sinewright::study {

/// How a design ended. The numbers stand in files.
enum class State {
  met = 0,     ///< all requirements
  missed = 1,  ///< a requirement
  invalid = 2, ///< the values make no model, scenario or limit file that can be read
  stopped = 3  ///< a run could not go on
};

/// One row of a study, as it came out.
struct DesignResult {
  long long index = 0;
  State state = State::met;
  std::vector<double> outcomes;    ///< SI, in the order of the columns; NaN: did not occur, or not reached
  std::vector<double> shortfalls;  ///< per requirement: what is missing as a share of the bound, 0 if met; infinite: no value
  std::string reason;              ///< of a state other than met, one line
};

/// The result as one line of text that comes back to the last bit: "index state n m outcomes… shortfalls… reason", blanks between;
/// the reason is the rest, its line breaks made blanks.
[[nodiscard]] std::string line_of(const DesignResult& result);
[[nodiscard]] DesignResult result_from(std::string_view line);

}  // namespace sinewright::study
