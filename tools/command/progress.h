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

  /// @param note  said after the share, for instance "12 of 80, 3.1 a second".
  void show(double share, const std::string& note = "");

 private:
  std::string title_;
  bool active_ = false;
  std::chrono::steady_clock::time_point start_, drawn_;
};

}  // namespace sinewright::tool
