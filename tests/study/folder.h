#pragma once

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>

#include <unistd.h>

/// A folder of its own for a test's files, gone at the end.
struct Folder {
  std::filesystem::path path;
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "sinewright-study-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for the test: " + name);
    path = name;
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder() { std::filesystem::remove_all(path); }
  [[nodiscard]] std::filesystem::path write(const std::string& name, const std::string& text) const {
    std::ofstream(path / name) << text;
    return path / name;
  }
};
