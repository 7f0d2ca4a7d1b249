#pragma once

#include <chrono>
#include <string>

namespace sinewright::tool {

/// A bar with the remaining time, on a terminal only; silent in a pipe. Redraws at most ten times a second.
class ProgressBar {
 public:
  ProgressBar(std::string title, bool wanted);
  ~ProgressBar();  ///< clears the line
  ProgressBar(const ProgressBar&) = delete;
  ProgressBar& operator=(const ProgressBar&) = delete;

  void show(double share);

 private:
  std::string title_;
  bool active_ = false;
  std::chrono::steady_clock::time_point start_, drawn_;
};

}  // namespace sinewright::tool
