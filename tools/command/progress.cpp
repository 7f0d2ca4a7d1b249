#include "progress.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>

namespace sinewright::tool {

ProgressBar::ProgressBar(std::string title, bool wanted)
    : title_(std::move(title)), active_(wanted && isatty(STDERR_FILENO) != 0), start_(std::chrono::steady_clock::now()),
      drawn_(start_) {}

ProgressBar::~ProgressBar() {
  if (active_) fmt::print(stderr, "\r\x1b[K");
}

void ProgressBar::show(double share, const std::string& note) {
  if (!active_) return;
  const auto now = std::chrono::steady_clock::now();
  if (now - drawn_ < std::chrono::milliseconds(100)) return;
  drawn_ = now;
  share = std::clamp(share, 0.0, 1.0);
  const double spent = std::chrono::duration<double>(now - start_).count();
  const double left = share > 0 ? spent * (1 - share) / share : 0;
  constexpr int width = 30;
  const int full = static_cast<int>(share * width);
  fmt::print(stderr, "\r{} [{:#>{}}{:.>{}}] {:3.0f} %{}{}, {:.0f} s left\x1b[K", title_, "", full, "", width - full,
             100 * share, note.empty() ? "" : ", ", note, left);
  std::fflush(stderr);
}

}  // namespace sinewright::tool
