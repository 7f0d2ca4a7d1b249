#pragma once

#include <string>
#include <vector>

namespace sinewright::tool {

/// Exit codes of every command.
enum ExitCode : int {
  done = 0,
  requirement_failed = 1,
  bad_input = 2,
  could_not_go_on = 3,
};

/// Options that every command understands.
struct CommonOptions {
  std::string out;
  bool json = false;
  bool quiet = false;
  int threads = 0;
  std::vector<std::string> set;
};

int run_command(const std::string& scenario, const CommonOptions& options);

}  // namespace sinewright::tool
