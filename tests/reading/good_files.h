#pragma once

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

/// The good files that the tests break one line at a time.
namespace good_files {

inline std::string text(const std::string& name) {
  std::ifstream in(std::string(SINEWRIGHT_SOURCE_DIR) + "/tests/reading/good/" + name, std::ios::binary);
  if (!in) throw std::runtime_error("no such test file: " + name);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

using Texts = std::vector<std::pair<std::string, std::string>>;

inline Texts all() {
  return {{"parts.yaml", text("parts.yaml")},
          {"model.yaml", text("model.yaml")},
          {"scenario.yaml", text("scenario.yaml")},
          {"limit.yaml", text("limit.yaml")},
          {"study.yaml", text("study.yaml")},
          {"motion.csv", text("motion.csv")},
          {"box.stl", text("box.stl")}};
}

}  // namespace good_files
