#pragma once

#include <stdexcept>
#include <string>

namespace sinewright {

/// Where in the user's text a value stands; line and column count from 1, 0 means unknown.
struct Place {
  std::string file;
  int line = 0;
  int column = 0;
};

/// The user's input cannot be used. The message is complete and fit to print: place, key, what was found,
/// what is needed, what to try. The command line ends with exit code 2.
class InvalidInput : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

}  // namespace sinewright
