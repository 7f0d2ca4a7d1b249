#pragma once

#include <cstddef>

namespace sinewright {

/// Counts the heap requests of this program (malloc, and with it operator new) since it was made.
class HeapWatch {
 public:
  HeapWatch();
  [[nodiscard]] std::size_t requests() const;

  /// False where a sanitizer has taken malloc's place and nothing can be counted.
  static bool works();

 private:
  std::size_t before_;
};

}  // namespace sinewright
