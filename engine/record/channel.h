#pragma once

#include <string>
#include <utility>
#include <vector>

#include "simulation/recording.h"

namespace sinewright::record {

// What a run hands over is named where it is made.
using simulation::Channel;
using simulation::Event;
using simulation::Margins;
using simulation::SummaryValue;
using simulation::Verdict;

/// All that is needed to run the same again.
struct Inputs {
  std::string engine_version;
  std::string scenario_path;                               ///< the first of `files`
  std::vector<std::pair<std::string, std::string>> files;  ///< (path as read, content verbatim, text or not)
  std::vector<std::string> overrides;                      ///< "key.path=value" from the command line
  unsigned long long seed = 0;
};

}  // namespace sinewright::record
